// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_digest.h"

#include "core/exchange/canonical_json.h"
#include "core/exchange/digest.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>

namespace sealwalk::exchange {

std::string PictureName::memberName() const
{
    return "pictures/" + sha256 + "." + extension;
}

std::vector<std::string> picturesOf(const model::Job& job)
{
    std::set<std::string> names;
    for (const model::Sheet& sheet : job.sketch.sheets)
        if (sheet.underlay)
            names.insert(sheet.underlay->picture);
    for (const model::Repair& repair : job.repairs)
        names.insert(repair.pictures.begin(), repair.pictures.end());
    return {names.begin(), names.end()};
}

Result<std::string> documentDigest(const nlohmann::json& document, std::vector<PictureName> pictures)
{
    const Result<std::string> text = canonicalJson(document);
    if (!text)
        return fail(text.error());
    std::sort(pictures.begin(), pictures.end());
    // The first line keeps this digest from ever being taken for one of something else.
    std::string lines = "sealwalk-job-digest-1\n" + sha256Hex(*text) + "\n";
    for (const PictureName& picture : pictures)
        lines += picture.memberName() + "\n";
    return sha256Hex(lines);
}

Result<std::string> jobDigest(const model::TestObject& object, const model::Job& job,
                              std::vector<PictureName> pictures)
{
    return documentDigest(jobToJson(object, job), std::move(pictures));
}

} // namespace sealwalk::exchange
