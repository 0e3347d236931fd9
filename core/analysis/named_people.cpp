// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/named_people.h"

#include "core/base/folded.h"

#include <algorithm>
#include <array>
#include <string>

namespace sealwalk::analysis {
namespace {

std::string trimmed(const std::string& text)
{
    constexpr const char* kBlank = " \t\r\n";
    const std::size_t from = text.find_first_not_of(kBlank);
    return from == std::string::npos ? std::string()
                                     : text.substr(from, text.find_last_not_of(kBlank) - from + 1);
}

/// With every way to put a second name behind the first made a comma.
std::string withCommas(std::string text)
{
    for (char& c : text)
        if (std::string_view(";/()&|+").find(c) != std::string_view::npos)
            c = ',';
    for (const std::string_view word : std::array<std::string_view, 2>{" and ", " und "})
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word))
            text.replace(at, word.size(), ",");
    return text;
}

} // namespace

bool namesPerson(std::string_view field, std::string_view person)
{
    const std::string wanted = trimmed(folded(person));
    const std::string whole = folded(field);
    if (wanted.empty())
        return false;
    if (trimmed(whole) == wanted) // whatever the name is made of
        return true;
    const std::string names = withCommas(whole);
    for (std::size_t from = 0; from <= names.size();) {
        const std::size_t to = std::min(names.find(',', from), names.size());
        if (trimmed(names.substr(from, to - from)) == wanted)
            return true;
        from = to + 1;
    }
    return false;
}

} // namespace sealwalk::analysis
