// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

namespace sealwalk {

int exitStatus(ErrorCode code)
{
    constexpr int kBadInput = 2;
    constexpr int kMachineFailed = 3;
    switch (code) {
    case ErrorCode::MachineFailed:
    case ErrorCode::ReadOnly: // no permission
    case ErrorCode::Busy:     // the same call may succeed a moment later
        return kMachineFailed;
    default:
        return kBadInput;
    }
}

Error Error::in(std::string_view where) const
{
    return {code, std::string(where) + ": " + message};
}

} // namespace sealwalk
