// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/trace_name.h"

#include "core/storage/packing.h"
#include "core/storage/picture_name.h"

#include <algorithm>

namespace sealwalk::storage {
namespace {

constexpr std::string_view kMark = "sha256:";
constexpr std::size_t kDigits = 64;

std::string digestOf(const Trace& trace)
{
    const std::string bytes = packDoubles(trace.times) + packFloats(trace.values);
    return pictureName({bytes.begin(), bytes.end()});
}

} // namespace

std::string tellingName(std::string_view name, const Trace& trace)
{
    const std::string before = name.empty() ? "" : std::string(name) + " ";
    return before + std::string(kMark) + digestOf(trace);
}

bool isTelling(std::string_view name)
{
    if (name.size() < kMark.size() + kDigits)
        return false;
    const std::string_view end = name.substr(name.size() - kMark.size() - kDigits);
    return end.starts_with(kMark) && std::all_of(end.begin() + kMark.size(), end.end(), [](char digit) {
               return (digit >= '0' && digit <= '9') || (digit >= 'a' && digit <= 'f');
           });
}

bool holdsWhatItSays(const NamedTrace& trace)
{
    return trace.name.ends_with(std::string(kMark) + digestOf(trace.trace));
}

} // namespace sealwalk::storage
