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

std::string saidBy(const analysis::GivenWord& given)
{
    return fmt::format("{}{}: {}", typed(given.by), given.isObjection ? " does not agree" : "",
                       typed(inPrint(given.text)));
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
    for (analysis::ReviewCheck& check : checks)
        if (isSigned && check.word == analysis::kQualifiedCheck) {
            // Qualifications are of the history and of today; of a signed job its record says whether it was
            // asked.
            check.state =
                check.words.empty() ? analysis::CheckState::InOrder : analysis::CheckState::NeedsWord;
            check.matters = {
                {"Asked at the review; the people of the history may have more on record by now.",
                 check.state,
                 {}}};
        }
    std::erase_if(checks, [&](const analysis::ReviewCheck& check) {
        // The comparison has a section of its own.
        return check.state == analysis::CheckState::InOrder || check.word == analysis::kComparisonCheck;
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
    for (const analysis::ReviewCheck& check : ground.questions)
        for (std::size_t i = 0; i < std::max(check.matters.size(), check.words.size()); ++i) {
            std::vector<Cell> row(table.columns.size());
            if (i == 0)
                row[0] = {check.question};
            if (i < check.matters.size()) {
                const analysis::ReviewMatter& matter = check.matters[i];
                row[1] = {asSentence(withTyped(withPlace(matter.says, ground.job), words)),
                          matter.state == analysis::CheckState::Stops ? "stops a signature" : ""};
            }
            if (i < check.words.size())
                row[2] = {saidBy(check.words[i])};
            else if (check.words.empty() && i == 0)
                row[2] = {"nothing"};
            table.rows.push_back(std::move(row));
        }
    section.blocks.emplace_back(std::move(table));
    return section;
}

} // namespace sealwalk::report::detail
