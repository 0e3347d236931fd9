// SPDX-License-Identifier: GPL-3.0-or-later
// What the reviewer's questions turned up, beside what people said of it.
#include "core/analysis/review_checks.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace sealwalk::report::detail {

namespace {

/// The longest first: "Weaver and Holt" before "Weaver".
struct LongestFirst
{
    bool operator()(const std::string& a, const std::string& b) const
    {
        return a.size() != b.size() ? a.size() > b.size() : a < b;
    }
};

/// What people typed that may stand in an answer, where the analysis does not mark it. A place is named at
/// the beginning alone; it may be a word like "leak".
std::set<std::string, LongestFirst> typedIn(const model::Job& job)
{
    std::set<std::string, LongestFirst> words;
    for (const model::Reading& reading : job.readings) {
        words.insert(reading.by);
        words.insert(reading.reason);
    }
    words.insert(job.setup.noCheckAfterReason);
    for (const model::Calibration& check : job.calibrations)
        words.insert(check.leak.serial);
    for (const model::MeasurementVoid& mark : job.voidMeasurements)
        words.insert(mark.reason);
    for (const model::Sheet& sheet : job.sketch.sheets)
        words.insert(sheet.name);
    words.erase(std::string());
    return words;
}

/// The first of each that stands between the answer's own words.
std::string withTyped(std::string answer, const std::set<std::string, LongestFirst>& words)
{
    for (const std::string& word : words) {
        const std::size_t at = answer.find(word);
        if (at == std::string::npos)
            continue;
        const std::size_t end = at + word.size();
        const auto isOneOf = [](std::string_view signs, char c) {
            return signs.find(c) != std::string_view::npos;
        };
        const bool isWhole = (at == 0 || isOneOf(" (", answer[at - 1])) &&
                             (end == answer.size() || isOneOf(" .,:;)", answer[end]));
        const std::size_t open = answer.rfind(kTypedBegin, at);
        const bool isMarked = open != std::string::npos && answer.find(kTypedEnd, open) > at;
        if (isWhole && !isMarked)
            answer.replace(at, word.size(), typed(word));
    }
    return answer;
}

/// "At far flange, …": the place of a check, which people name.
std::string withPlace(std::string answer, const model::Job& job)
{
    constexpr std::string_view kAt = "At ";
    for (const model::Calibration& check : job.calibrations) {
        const std::string begin = std::string(kAt) + check.place;
        const char next = answer.size() > begin.size() ? answer[begin.size()] : ' ';
        if (!check.place.empty() && answer.starts_with(begin) && (next == ',' || next == ':'))
            return answer.replace(kAt.size(), check.place.size(), typed(check.place));
    }
    return answer;
}

} // namespace

std::vector<analysis::ReviewCheck> openQuestions(const Ground& ground)
{
    const bool wasSent = std::ranges::any_of(ground.job.review, [](const model::ReviewEntry& entry) {
        return entry.step == model::ReviewStep::Submitted;
    });
    if (!wasSent)
        return {}; // remarks made before are no review
    analysis::ReviewOptions options;
    options.people = ground.options.people;
    options.lastJob = ground.options.lastJob;
    options.carried = ground.options.carried;
    options.now = ground.options.asOf;
    auto checks = analysis::reviewChecks(ground.job, ground.object, ground.left, options);
    const bool isSigned = ground.job.state == model::JobState::Signed;
    std::erase_if(checks, [&](const analysis::ReviewCheck& check) {
        // The comparison has a section of its own; qualifications are of the history and of today.
        return check.state == analysis::CheckState::InOrder || check.word == analysis::kComparisonCheck ||
               (isSigned && check.word == analysis::kQualifiedCheck);
    });
    return checks;
}

Section questionsSection(const Ground& ground)
{
    Section section{
        "Review questions that are not in order", "worked out from the record when this was printed", {}};
    if (ground.questions.empty())
        return section;
    const auto words = typedIn(ground.job);
    ReportTable table;
    table.columns = {{"Question", 2.4}, {"What the record says", 3.8}, {"What was said of it", 2.9}};
    for (const analysis::ReviewCheck& check : ground.questions) {
        std::string said;
        for (const analysis::GivenWord& given : check.words)
            said += fmt::format("{}{}: {}", said.empty() ? "" : "; ", typed(given.by),
                                typed(inPrint(given.text)));
        for (std::size_t i = 0; i < check.matters.size(); ++i) {
            const analysis::ReviewMatter& matter = check.matters[i];
            const bool first = i == 0;
            const bool stops = matter.state == analysis::CheckState::Stops;
            table.rows.push_back({{first ? check.question : std::string()},
                                  {asSentence(withTyped(withPlace(matter.says, ground.job), words)),
                                   stops ? "stops a signature" : ""},
                                  {!first         ? std::string()
                                   : said.empty() ? "nothing"
                                                  : said}});
        }
    }
    section.blocks.emplace_back(std::move(table));
    return section;
}

} // namespace sealwalk::report::detail
