// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/ordinary_user.h"

#include "core/base/contract.h"

#include <unistd.h>

namespace sealwalk::tests {

OrdinaryUser::OrdinaryUser()
{
    constexpr uid_t kNobody = 65534;
    if (::getuid() != 0)
        return;
    // The real id counts for access(2).
    SEALWALK_EXPECT(::setresuid(kNobody, kNobody, 0) == 0);
    m_changed = true;
}

OrdinaryUser::~OrdinaryUser()
{
    if (m_changed)
        SEALWALK_EXPECT(::setresuid(0, 0, 0) == 0);
}

} // namespace sealwalk::tests
