// SPDX-License-Identifier: GPL-3.0-or-later
// Result<T>: a value or the Error that explains its absence. Stands in for std::expected of C++23.
#pragma once

#include "core/base/error.h"

#include <tl/expected.hpp>

#include <utility>

namespace sealwalk {

template <class T>
using Result = tl::expected<T, Error>;

using Status = Result<void>;

/// `return fail(ErrorCode::BadInput, "...")` from any function that answers a Result.
[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code, std::string message)
{
    return tl::unexpected<Error>(Error{code, std::move(message)});
}

/// Passes an error of one Result on as that of another.
[[nodiscard]] inline tl::unexpected<Error> fail(Error error)
{
    return tl::unexpected<Error>(std::move(error));
}

} // namespace sealwalk
