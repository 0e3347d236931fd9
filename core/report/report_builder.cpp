// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report_builder.h"

#include "core/analysis/claim.h"
#include "core/analysis/job_balance.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/round_summary.h"
#include "core/base/clock_zone.h"
#include "core/base/folded.h"
#include "core/report/content_texts.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

namespace detail {

std::string withWord(std::string_view word, const std::string& words)
{
    return folded(words).find(folded(word)) == std::string::npos ? std::string(word) + ' ' + typed(words)
                                                                 : typed(words);
}

std::string Ground::rate(std::optional<LeakRate> value) const
{
    return value ? unit.print(*value) : "–";
}

std::string Ground::below(std::optional<LeakRate> value, std::optional<LeakRate> low,
                          std::optional<LeakRate> high) const
{
    return value && low && high ? printRange(unit.number(*value), unit.number(*low), unit.number(*high))
                                : std::string();
}

std::string Ground::number(model::PointId point) const
{
    const model::TestPoint* known = job.sketch.point(point);
    return known == nullptr ? "?" : std::to_string(known->number);
}

std::string Ground::numbers(std::span<const model::PointId> points) const
{
    std::vector<int> all;
    for (const model::PointId id : points)
        if (const model::TestPoint* point = job.sketch.point(id))
            all.push_back(point->number);
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    std::string text;
    for (const int n : all)
        text += (text.empty() ? "" : ", ") + std::to_string(n);
    return text;
}

std::string Ground::jointName(model::PointId point) const
{
    const model::Joint* joint = job.sketch.jointOf(point);
    return joint == nullptr ? std::string() : typed(joint->name);
}

std::string Ground::place(model::PointId point) const
{
    const model::TestPoint* known = job.sketch.point(point);
    if (known == nullptr)
        return {};
    // Worked out where nobody named it.
    return known->place.empty() ? model::placeText(job.sketch, *known) : typed(known->place);
}

std::string Ground::when(const Timestamp& at) const
{
    if (!at.isSet())
        return "not recorded";
    const std::string told = at.date() + ' ' + at.timeOfDay().substr(0, 5);
    // The zone of the job stands once, with its dates; another one wherever it is.
    return at.offsetMinutes == job.opened.offsetMinutes ? told : told + ' ' + zoneText(at);
}

namespace {

std::string counted(std::size_t count, const char* one, const char* many)
{
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::size_t howMany(const Ground& ground, analysis::Verdict verdict)
{
    return static_cast<std::size_t>(
        std::count_if(ground.left.begin(), ground.left.end(), [&](const analysis::PointFinding& f) {
            return f.verdict == verdict && !f.concession;
        }));
}

std::string openEnds(std::size_t unsure, std::size_t unanswered)
{
    std::string text;
    if (unsure > 0)
        text += ", " + counted(unsure, "point cannot be judged", "points cannot be judged");
    if (unanswered > 0)
        text += ", " + counted(unanswered, "has no answer", "have no answer");
    return text;
}

/// What an acceptance hangs on: nobody can follow "with conditions" alone.
std::string conditionsOf(const Ground& ground, std::size_t unsure)
{
    const auto where = [&](const auto& is) {
        return static_cast<std::size_t>(std::ranges::count_if(ground.left, is));
    };
    const std::size_t conceded = where([](const analysis::PointFinding& f) { return f.concession; });
    const std::size_t held = where([](const analysis::PointFinding& f) { return f.temporaryRepair; });
    const std::size_t leftOut = where([](const analysis::PointFinding& f) {
        return f.finding == analysis::Finding::NotTested || f.finding == analysis::Finding::NotAccessible;
    });
    std::string text = openEnds(unsure, 0);
    if (conceded > 0)
        text += ", " + counted(conceded, "point by concession", "points by concession");
    if (held > 0)
        text += ", " + counted(held, "point held by a temporary repair", "points held by temporary repairs");
    if (leftOut > 0)
        text +=
            ", " + counted(leftOut, "point left out with its reason", "points left out with their reasons");
    return text.empty() ? text : ":" + text.substr(1);
}

bool isRepaired(const Ground& ground, model::PointId id)
{
    return std::any_of(
        ground.job.repairs.begin(), ground.job.repairs.end(), [&](const model::Repair& repair) {
            return std::find(repair.points.begin(), repair.points.end(), id) != repair.points.end();
        });
}

/// What the job came to, first: points within the limit as left that were over it, or could not be said and
/// were repaired. A leak of the test set-up is no leak of the object.
std::string mendedText(const Ground& ground)
{
    std::vector<model::PointId> over;
    std::vector<model::PointId> ofSetup;
    std::vector<model::PointId> unsaid;
    std::vector<model::PointId> unsaidOfSetup;
    for (const analysis::PointFinding& left : ground.left) {
        if (left.verdict != analysis::Verdict::Within)
            continue;
        const auto found = std::find_if(ground.found.begin(), ground.found.end(),
                                        [&](const auto& f) { return f.point == left.point; });
        if (found == ground.found.end())
            continue;
        if (found->verdict == analysis::Verdict::Over)
            (ground.job.sketch.isOfSetup(left.point) ? ofSetup : over).push_back(left.point);
        else if (found->verdict == analysis::Verdict::CannotSay && isRepaired(ground, left.point))
            (ground.job.sketch.isOfSetup(left.point) ? unsaidOfSetup : unsaid).push_back(left.point);
    }
    std::string text;
    const auto add = [&](const char* says, const std::vector<model::PointId>& points) {
        if (!points.empty())
            text += fmt::format("{}{}: {} {}.", text.empty() ? "" : " ", says,
                                points.size() == 1 ? "point" : "points", ground.numbers(points));
    };
    add("Found over the limit and within it after the work done", over);
    add("Could not be said as found, repaired and within the limit since", unsaid);
    add("Of the test set-up, found over the limit and within it after the work done", ofSetup);
    add("Of the test set-up, could not be said as found, repaired and within the limit since", unsaidOfSetup);
    if (const auto missed = analysis::missedPressure(ground.job, ground.object))
        text += fmt::format("{}The base pressure wanted, {} mbar, was not reached: {} mbar.",
                            text.empty() ? "" : " ", printRate(inMillibars(missed->wanted), missed->digits),
                            printRate(inMillibars(missed->reached), missed->digits));
    return text;
}

} // namespace

Statement statementOf(const Ground& ground)
{
    const analysis::Claim claim = analysis::claimOf(ground.job, ground.left, ground.job.setup.unit);
    const std::size_t over = howMany(ground, analysis::Verdict::Over);
    const std::size_t unsure = howMany(ground, analysis::Verdict::CannotSay);
    const std::size_t unanswered = howMany(ground, analysis::Verdict::NoAnswer);
    Statement statement;
    if (over > 0) {
        statement.verdict = analysis::Verdict::Over;
        statement.headline = "Not accepted: " + counted(over, "leak over the limit", "leaks over the limit") +
                             openEnds(unsure, unanswered);
    } else if (ground.job.readings.empty()) {
        statement.headline = "Nothing was sprayed: nothing is claimed";
    } else if (!ground.job.setup.pointLimit) {
        statement.headline = "No limit was set: nothing is accepted or rejected";
    } else if (claim.outcome == analysis::ClaimOutcome::NoResult ||
               claim.outcome == analysis::ClaimOutcome::Reject) {
        statement.verdict = analysis::Verdict::CannotSay;
        statement.headline = "No result yet" + (openEnds(unsure, unanswered).empty()
                                                    ? std::string(": the record is not complete")
                                                    : ":" + openEnds(unsure, unanswered).substr(1));
    } else if (claim.outcome == analysis::ClaimOutcome::AcceptWithConditions) {
        statement.verdict = unsure > 0 ? analysis::Verdict::CannotSay : analysis::Verdict::Within;
        statement.headline = "Accepted with conditions" + conditionsOf(ground, unsure);
    } else {
        statement.verdict = analysis::Verdict::Within;
        const std::size_t outside = howMany(ground, analysis::Verdict::NotCounted);
        statement.headline =
            fmt::format("Accepted: all {} points within the limit", ground.left.size() - outside);
        if (outside > 0)
            statement.headline += fmt::format("; {} of the test set-up not counted", outside);
        else if (const auto ofSetup = std::ranges::count_if(
                     ground.left, [&](const auto& f) { return ground.job.sketch.isOfSetup(f.point); });
                 ofSetup > 0) // nobody should take them for the object's
            statement.headline += fmt::format("; {} of them of the test set-up", ofSetup);
    }
    const auto judged =
        static_cast<std::size_t>(std::ranges::count_if(ground.left, [](const analysis::PointFinding& f) {
            return f.judgedByPerson && f.verdict != analysis::Verdict::NotCounted; // those are told already
        }));
    const bool isAnswer = over > 0 || claim.outcome == analysis::ClaimOutcome::Accept ||
                          claim.outcome == analysis::ClaimOutcome::AcceptWithConditions;
    if (judged > 0 && isAnswer) // nobody should take a person's word for what was worked out
        statement.headline += "; " + counted(judged, "point judged by a person", "points judged by a person");
    const std::string mended = mendedText(ground);
    statement.text = mended + (mended.empty() ? "" : " ") + inPrint(claim.text());
    for (const model::ReviewEntry& entry : ground.job.review)
        if (entry.step == model::ReviewStep::Amendment)
            statement.text += fmt::format(" Amended {} by {}: “{}”", entry.at.date(), typed(entry.by),
                                          typed(inPrint(entry.text)));
    const std::size_t within = howMany(ground, analysis::Verdict::Within);
    const std::size_t counting = ground.left.size() - howMany(ground, analysis::Verdict::NotCounted);
    // One floor on the page: what is said to have shown nothing above it is not claimed below it.
    std::optional<LeakRate> floor = ground.detectable;
    for (const analysis::PointFinding& finding : ground.left)
        if (finding.finding == analysis::Finding::Clear && finding.bound)
            floor = std::max(floor.value_or(LeakRate()), *finding.bound);
    if (ground.job.setup.pointLimit && !ground.left.empty())
        statement.text +=
            fmt::format(" {} of {} points are within {}. Nothing is claimed for other places, other "
                        "conditions{}.",
                        within, counting, ground.unit.print(*ground.job.setup.pointLimit),
                        floor ? ", or below " + ground.unit.print(*floor) : "");
    // Whether a signed job's tester was qualified is not worked out any more.
    const auto open = std::ranges::count_if(ground.questions, [&](const analysis::ReviewCheck& check) {
        return ground.job.state != model::JobState::Signed || check.word != analysis::kQualifiedCheck;
    });
    if (open > 0)
        statement.text += open == 1
                              ? " One question of the review is not in order; it stands below with what "
                                "was said of it."
                              : fmt::format(" {} questions of the review are not in order; they stand "
                                            "below with what was said of them.",
                                            open);
    return statement;
}

} // namespace detail

std::string asSentence(const std::string& words)
{
    std::string text = inPrint(words);
    if (text.empty())
        return text;
    if (text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (text.back() != '.' && text.back() != '!' && text.back() != '?')
        text += '.';
    return text;
}

ReportContent reportOf(const model::Job& job, const model::TestObject& object, const ReportOptions& asked)
{
    ReportOptions options = asked;
    if (!options.asOf.isSet())
        options.asOf = options.now;
    const std::string unit = options.unit.empty() ? job.setup.unit : options.unit;
    detail::Ground ground{job, object, options, shownUnit(job.setup, unit), {}, {}, {}, false};
    ground.found = options.found;
    ground.left = options.left;
    if (ground.found.empty() || ground.left.empty()) {
        std::vector<std::vector<analysis::PointFinding>> byRound; // worked out once for both
        for (const model::Round& round : job.rounds)
            byRound.push_back(analysis::jobFindings(job, object, round.id,
                                                    options.asOf.isSet() ? options.asOf : Timestamp::now()));
        ground.found = analysis::summarise(job, byRound, analysis::Standing::AsFound);
        ground.left = analysis::summarise(job, byRound, analysis::Standing::AsLeft);
    }
    for (std::vector<analysis::PointFinding>* findings : {&ground.found, &ground.left})
        analysis::markHeld(*findings, options.carried);
    ground.detectable = worstDetectable(job, object, ground.left);
    ground.repaired = std::any_of(job.rounds.begin(), job.rounds.end(), [](const model::Round& round) {
        return round.kind == model::RoundKind::AfterRepair;
    });

    ground.questions = detail::openQuestions(ground);

    ReportContent content;
    content.title = "Leak test report";
    content.subtitle = fmt::format("{}{} · job {}{}{}", typed(object.name),
                                   object.tag.empty() ? "" : ", " + typed(object.tag), job.number,
                                   job.openedAs > 0 && job.openedAs != job.number
                                       ? fmt::format(" (opened and signed as {})", job.openedAs)
                                       : std::string(),
                                   object.invented ? " · all data invented" : "");
    content.date = options.now.isSet() ? "printed " + options.now.date() : std::string();
    if (options.now.isSet() && options.asOf.date() != options.now.date())
        content.date += ", repairs and due dates as of " + options.asOf.date();
    // On every page: a page may be read without the one that has the signatures.
    content.state = job.state == model::JobState::Signed
                        ? (options.problems.empty() ? "signed" : "NOT AS SIGNED")
                        : fmt::format("draft, job {}", model::name(job.state));
    content.footer.push_back(fmt::format("Leak rates in {}, helium, at 100 % helium outside at 1 bar, {:.0f} "
                                         "°C, on the chamber, unless marked \"air\".",
                                         ground.unit.symbol, inDegreesCelsius(job.setup.roomTemperature)));
    content.footer.push_back(options.digest.empty()
                                 ? std::string("no digest")
                                 : fmt::format("Job SHA-256 {} · {}",
                                               typed(options.digest.substr(0, 16) + " … " +
                                                     options.digest.substr(options.digest.size() - 8)),
                                               content.state));
    content.statement = detail::statementOf(ground);

    const auto add = [&](Section section) {
        if (!section.blocks.empty())
            content.sections.push_back(std::move(section));
    };
    add(detail::setupSection(ground));
    add(detail::decisionSection(ground));
    add(detail::balanceSection(ground));
    add(detail::signatureSection(ground));
    for (Section& section : detail::mapSections(ground))
        add(std::move(section));
    add(detail::repairSection(ground));
    for (Section& section : detail::riseSections(ground))
        add(std::move(section));
    add(detail::setupSketchSection(ground));
    add(detail::calibrationSection(ground));
    add(detail::pointsSection(ground));
    add(detail::untestedSection(ground));
    add(detail::voidSection(ground));
    add(detail::decisionsByPeopleSection(ground));
    add(detail::comparisonSection(ground));
    add(detail::readingsSection(ground));
    add(detail::questionsSection(ground));
    add(detail::reviewSection(ground));
    add(detail::cautionSection(ground));
    if (!options.marksTyped)
        eachText(content, [](std::string& text) { text = withoutMarks(std::move(text)); });
    return content;
}

} // namespace sealwalk::report
