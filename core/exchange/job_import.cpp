// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_import.h"

#include "core/exchange/canonical_json.h"
#include "core/exchange/job_digest.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace sealwalk::exchange {

using nlohmann::json;

bool isSameJob(const JobRecord& here, const JobRecord& there)
{
    const auto content = [](const JobRecord& record) { return jobToJson(record.object, record.job)["job"]; };
    return content(here) == content(there) &&
           signaturesToJson(here.job.signatures) == signaturesToJson(there.job.signatures);
}

std::vector<std::string> objectDifferences(const model::TestObject& here, const model::TestObject& there)
{
    std::vector<std::string> sentences;
    const auto compare = [&](const char* what, const std::string& own, const std::string& other) {
        if (own != other)
            sentences.push_back(
                fmt::format("the object's {} is \"{}\" here and \"{}\" in the file; it stays as it is "
                            "here",
                            what, own, other));
    };
    compare("name", here.name, there.name);
    compare("tag", here.tag, there.tag);
    compare("place", here.place, there.place);
    json own = objectToJson(here);
    json other = objectToJson(there);
    for (const char* told : {"name", "tag", "place"}) {
        own.erase(told);
        other.erase(told);
    }
    if (own != other)
        sentences.emplace_back(
            "the object's volume, limits, pumps or note differ between here and the file; they "
            "stay as they are here");
    return sentences;
}

std::vector<int> clashingPoints(const model::Sketch& here, const model::Sketch& there)
{
    std::vector<int> numbers;
    for (const model::TestPoint& point : there.points) {
        const model::TestPoint* own = here.pointNumbered(point.number);
        if (own != nullptr && own->id != point.id)
            numbers.push_back(point.number);
    }
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

} // namespace sealwalk::exchange
