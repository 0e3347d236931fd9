// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

namespace sealwalk {

int exitStatus(ErrorCode code)
{
    constexpr int kBadInput = 2;
    constexpr int kMachineFailed = 3;
    return code == ErrorCode::MachineFailed ? kMachineFailed : kBadInput;
}

Error Error::in(std::string_view where) const
{
    return {code, std::string(where) + ": " + message};
}

} // namespace sealwalk
