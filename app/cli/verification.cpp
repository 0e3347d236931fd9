// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verification.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace sealwalk::cli {

namespace {

nlohmann::ordered_json signatureDocument(const exchange::CheckedSignature& checked)
{
    nlohmann::ordered_json document;
    document["name"] = checked.signature.name;
    document["role"] = checked.signature.role;
    document["at"] = checked.signature.at.text();
    document["statement"] = checked.signature.statement;
    document["public_key"] = checked.signature.publicKey;
    document["ok"] = checked.ok;
    document["says"] = checked.says;
    return document;
}

} // namespace

std::string counted(std::size_t number, const char* thing)
{
    return fmt::format("{} {}{}", number, thing, number == 1 ? "" : "s");
}

Verdict answerVerification(const Console& console, const exchange::Verification& result,
                           const std::string& done)
{
    nlohmann::ordered_json document;
    document["ok"] = result.ok();
    document["signatures"] = nlohmann::ordered_json::array();
    document["problems"] = nlohmann::ordered_json::array();
    std::string text = done;
    for (const exchange::CheckedSignature& checked : result.signatures) {
        document["signatures"].push_back(signatureDocument(checked));
        if (checked.ok)
            text += "\n  " + checked.says;
    }
    for (const auto* list : {&result.problems, &result.form}) {
        for (const std::string& problem : *list) {
            document["problems"].push_back(problem);
            text += "\n  problem: " + problem;
        }
    }
    document["notes"] = result.notes;
    for (const std::string& note : result.notes)
        text += "\n  note: " + note;
    console.answer(document, text);
    return result.ok() ? Verdict::Yes : Verdict::No;
}

} // namespace sealwalk::cli
