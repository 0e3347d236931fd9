// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/point_pairs.h"

namespace sealwalk::exchange {

std::string pairsSetting(model::JobId before, model::JobId after)
{
    return std::string(kSamePoints) + before.text() + " " + after.text();
}

std::string deniedSetting(model::JobId before, model::JobId after)
{
    return std::string(kOtherPoints) + before.text() + " " + after.text();
}

std::string pairsText(const std::vector<PointPair>& pairs)
{
    std::string text;
    for (const PointPair& pair : pairs)
        text += pair.first.text() + " " + pair.second.text() + "\n";
    return text;
}

Result<std::vector<PointPair>> readPairs(std::string_view text)
{
    std::vector<PointPair> pairs;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        if (line.empty())
            continue;
        const std::size_t blank = line.find(' ');
        const auto before = model::PointId::parse(line.substr(0, blank));
        const auto after = model::PointId::parse(blank == std::string_view::npos ? std::string_view()
                                                                                 : line.substr(blank + 1));
        if (!before || !after)
            return fail(ErrorCode::DamagedFile, "\"" + std::string(line) + "\" is not a pair of points");
        pairs.emplace_back(*before, *after);
    }
    return pairs;
}

} // namespace sealwalk::exchange
