// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/typed_words.h"

#include <algorithm>

namespace sealwalk::report {

std::string typed(const std::string& words)
{
    if (words.empty())
        return {};
    std::string text(kTypedBegin);
    text += withoutMarks(words);
    return text += kTypedEnd;
}

std::string typedUnless(const std::string& words, std::span<const std::string_view> own)
{
    return std::find(own.begin(), own.end(), words) == own.end() ? typed(words) : words;
}

std::string withoutMarks(std::string text)
{
    for (const std::string_view mark : {kTypedBegin, kTypedEnd})
        for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at))
            text.erase(at, mark.size());
    return text;
}

} // namespace sealwalk::report
