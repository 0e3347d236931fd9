// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verification.h"

#include "core/exchange/signing.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

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

void checkKeys(exchange::Verification& result, const std::vector<model::Person>& people)
{
    for (exchange::CheckedSignature& checked : result.signatures) {
        if (!checked.ok)
            continue;
        const model::Signature& signature = checked.signature;
        const auto known = std::find_if(people.begin(), people.end(), [&](const model::Person& person) {
            return person.id == signature.person;
        });
        if (known == people.end()) {
            result.notes.push_back(
                fmt::format("{} is not among the people of this history; ask them whether their "
                            "key is {}",
                            signature.name, exchange::PublicKey::parse(signature.publicKey)->shortText()));
        } else if (known->publicKey != signature.publicKey) {
            checked.ok = false;
            checked.says =
                fmt::format("the signature of {} was made with another key than {} has in this history",
                            signature.name, known->name);
            result.problems.push_back(checked.says);
        }
    }
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
    if (console.json)
        for (const std::string& note : result.notes)
            console.note("note: " + note);
    for (const std::string& note : result.notes)
        text += "\n  note: " + note;
    console.answer(document, text);
    return result.ok() ? Verdict::Yes : Verdict::No;
}

} // namespace sealwalk::cli
