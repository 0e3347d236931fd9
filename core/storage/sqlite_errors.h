// SPDX-License-Identifier: GPL-3.0-or-later
// The edge of the folder: what SQLite throws inside becomes one sentence outside.
#pragma once

#include "core/base/result.h"

#include <SQLiteCpp/Exception.h>

#include <exception>
#include <filesystem>
#include <new>
#include <utility>

namespace sealwalk::storage {

/// Thrown inside this folder only; `guarded` hands its error on.
struct Refusal : std::exception
{
    explicit Refusal(Error e)
        : error(std::move(e))
    {}
    Refusal(ErrorCode code, std::string message)
        : error{code, std::move(message)}
    {}
    [[nodiscard]] const char* what() const noexcept override { return error.message.c_str(); }
    Error error;
};

/// The sentence for a failure of SQLite on `file`.
Error translated(const SQLite::Exception& failure, const std::filesystem::path& file);

/// Runs `work`, which answers a Result, and turns everything thrown into its error.
template <class Work>
auto guarded(const std::filesystem::path& file, Work&& work) -> decltype(work())
{
    try {
        return work();
    } catch (const Refusal& refusal) {
        return fail(refusal.error);
    } catch (const SQLite::Exception& failure) {
        return fail(translated(failure, file));
    } catch (const std::bad_alloc&) {
        return fail(ErrorCode::MachineFailed, file.string() + ": no memory left for this");
    }
}

} // namespace sealwalk::storage
