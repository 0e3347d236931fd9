// SPDX-License-Identifier: GPL-3.0-or-later
// What people did and decided: repairs, concessions, review, signatures.
#include "core/analysis/job_balance.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_rise.h"
#include "core/analysis/limit_change.h"
#include "core/analysis/repair_progress.h"
#include "core/analysis/repair_words.h"
#include "core/analysis/review_checks.h"
#include "core/analysis/walk.h"
#include "core/base/calendar_day.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <unordered_map>

namespace sealwalk::report::detail {

namespace {

const analysis::PointFinding* findingOf(const std::vector<analysis::PointFinding>& all, model::PointId point)
{
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const analysis::PointFinding& f) { return f.point == point; });
    return found == all.end() ? nullptr : &*found;
}

std::string shortly(const Ground& ground, const analysis::PointFinding* f)
{
    if (f == nullptr)
        return "–";
    const std::string when =
        f->condition == model::Condition::AtRest ? "" : fmt::format(", {}", model::name(f->condition));
    if (f->rate)
        return ground.rate(f->rate) + when;
    if (f->atLeast)
        return "at least " + ground.rate(f->atLeast) + when;
    if (f->bound)
        return "below " + ground.rate(f->bound) + when;
    return std::string(model::name(f->finding)) + when;
}

/// The round in which a repaired point was sprayed again.
std::string retestText(const Ground& ground, const model::Repair& repair)
{
    const model::Round* round = analysis::provingRound(ground.job, repair);
    return round == nullptr ? "not sprayed again"
                            : fmt::format("round {}, {}", round->number, round->opened.date());
}

std::string proofText(const Ground& ground, const model::Repair& repair)
{
    const analysis::RepairProgress progress =
        analysis::progressOf(ground.job, repair, ground.left, ground.options.asOf);
    std::string text = analysis::progressWords(progress, repair);
    if (progress.step == analysis::RepairStep::AwaitsRetest)
        text += ": " + ground.numbers(progress.toSpray);
    return text;
}

/// Pressure rise and base pressure on both sides of all repairs.
ReportTable totalsBeforeAndAfter(const Ground& ground)
{
    const auto* before = analysis::riseTestFor(ground.job, analysis::Standing::AsFound);
    const auto* after = analysis::riseTestFor(ground.job, analysis::Standing::AsLeft);
    std::vector<Cell> total{{"Leaks by pressure rise, as air"}};
    std::vector<Cell> base{{"Base pressure"}};
    for (const model::RiseTest* test : {before, after}) {
        if (test == nullptr) {
            total.push_back({"not measured"});
            base.push_back({"not measured"});
            continue;
        }
        const auto rise = analysis::judgeRise(*test, ground.job, ground.object);
        const auto sum = rise ? analysis::totalOf(*rise) : std::nullopt;
        if (!sum)
            total.push_back({"not judged"});
        else if (sum->rate)
            total.push_back({ground.rate(sum->rate), ground.rate(sum->low) + " … " + ground.rate(sum->high)});
        else
            total.push_back({"at most " + ground.rate(sum->high)});
        base.push_back(
            {test->basePressure ? printRate(inMillibars(*test->basePressure)) + " mbar" : "not recorded"});
    }
    ReportTable table;
    table.columns = {{"Before and after", 2.6}, {"Before the repairs", 2.0}, {"After the repairs", 2.0}};
    table.rows = {std::move(total), std::move(base)};
    return table;
}

PictureBlock photosOf(const Ground& ground, const model::Repair& repair)
{
    PictureBlock block;
    for (std::size_t i = 0; i < repair.pictures.size(); ++i)
        block.photos.push_back({repair.pictures[i],
                                fmt::format("Point {}: {}, {}; photo {} of {}", ground.numbers(repair.points),
                                            typedUnless(repair.defect, analysis::defectWords()),
                                            typedUnless(repair.action, analysis::actionWords()), i + 1,
                                            repair.pictures.size())});
    return block;
}

std::string roundText(const Ground& ground, model::RoundId id)
{
    const model::Round* round = ground.job.round(id);
    return round == nullptr ? std::string() : fmt::format("in round {}", round->number);
}

/// What the program made of the readings a person judged otherwise. Another round's may stand in neither
/// list; then it is worked out again.
std::string workedOut(const Ground& ground, const model::Judgement& judgement)
{
    const auto words = [](const analysis::PointFinding& f) {
        return f.overruled ? fmt::format("{}, {}", model::name(f.overruled->finding),
                                         model::name(f.overruled->verdict))
                           : fmt::format("{}, {}", model::name(f.finding), model::name(f.verdict));
    };
    for (const auto* all : {&ground.left, &ground.found}) {
        const analysis::PointFinding* f = findingOf(*all, judgement.point);
        const model::Reading* reading =
            f != nullptr && f->reading ? ground.job.reading(*f->reading) : nullptr;
        if (reading != nullptr && reading->round == judgement.round)
            return words(*f);
    }
    const auto round = analysis::jobFindings(ground.job, ground.object, judgement.round, ground.options.asOf);
    const analysis::PointFinding* f = findingOf(round, judgement.point);
    return f == nullptr ? "–" : words(*f);
}

std::string concededText(const Ground& ground, const model::Concession& concession)
{
    if (!concession.until)
        return "without end";
    const bool hasEnded = ground.options.asOf.isSet() && isPast(*concession.until, ground.options.asOf);
    return (hasEnded ? "ran out on " : "until ") + concession.until->date();
}

/// What stands at the points that were conceded.
std::string concededOf(const Ground& ground, const model::Concession& concession)
{
    std::string text;
    for (const model::PointId point : concession.points)
        if (const analysis::PointFinding* f = findingOf(ground.left, point))
            text += fmt::format("{}{}, {}", text.empty() ? "" : "; ", model::name(f->finding),
                                model::name(f->verdict));
    return text.empty() ? "–" : text;
}

/// The same in every language, like a name.
std::string short8(const std::string& hex)
{
    return typed(hex.size() < 16 ? hex : hex.substr(0, 8) + ' ' + hex.substr(8, 8));
}

/// What checking says, with signers and keys marked: it puts them into its sentences.
std::string withNames(std::string says, const model::Job& job)
{
    constexpr std::string_view kKey = ", key ";
    if (const std::size_t at = says.rfind(kKey); says.starts_with("signed by ") && at != std::string::npos)
        says.replace(at + kKey.size(), std::string::npos, typed(says.substr(at + kKey.size())));
    std::set<std::string> names;
    for (const model::Signature& signature : job.signatures)
        if (!signature.name.empty())
            names.insert(signature.name);
    for (const std::string& name : names)
        if (const std::size_t at = says.find(name);
            at != std::string::npos && says.find(kTypedBegin) >= says.find(kKey)) // one name in a sentence
            says.replace(at, name.size(), typed(name));
    return says;
}

/// Since when a signer belongs to this history, and who added them.
std::string standingOf(const Ground& ground, model::PersonId signer)
{
    const auto& people = ground.options.people;
    const auto known = std::find_if(people.begin(), people.end(),
                                    [&](const model::Person& person) { return person.id == signer; });
    if (known == people.end())
        return people.empty() ? "" : ", not among the people of this history";
    const auto& entries = ground.options.personEntries;
    const auto added = std::find_if(entries.begin(), entries.end(), [&](const model::PersonEntry& entry) {
        return entry.person == signer && entry.what == model::kPersonAdded;
    });
    const std::string since = known->since.isSet() ? ", in this history since " + known->since.date() : "";
    if (added == entries.end())
        return since + ", who added them is not recorded";
    return since + (added->by.empty() ? ", added with nobody logging" : ", added by " + typed(added->by));
}

std::string ofWhom(const Ground& ground, const model::Judgement& judgement)
{
    if (judgement.of.empty())
        return {};
    const bool isMasked = judgement.finding == model::name(analysis::Finding::Masked);
    return (isMasked ? " by " : " of ") + ground.numbers(judgement.of);
}

} // namespace

Section repairSection(const Ground& ground)
{
    Section section{"Repairs", {}, {}};
    ReportTable table;
    table.columns = {{"Points", 1.0},         {"Defect", 1.4},
                     {"What was done", 2.6},  {"Permanent or temporary", 1.8},
                     {"As found", 1.3, true}, {"As left", 1.3, true},
                     {"Re-test", 2.2}};
    table.empty = "No repair was logged in this job.";
    for (const model::Repair& repair : ground.job.repairs) {
        std::string before;
        std::string after;
        for (const model::PointId point : repair.points) {
            before += (before.empty() ? "" : "; ") + shortly(ground, findingOf(ground.found, point));
            after += (after.empty() ? "" : "; ") + shortly(ground, findingOf(ground.left, point));
        }
        std::string permanence = "permanent";
        std::string owner;
        if (!repair.permanent) {
            permanence = repair.madeGoodBy ? "temporary, made good since" : "temporary";
            owner = fmt::format("{}{}", repair.owner.empty() ? "nobody named" : typed(repair.owner),
                                repair.due ? ", due " + repair.due->date() : ", no date");
        }
        const std::string material = repair.material.empty() ? "" : "; " + typed(repair.material);
        table.rows.push_back(
            {{ground.numbers(repair.points), {}, {}, {}, true},
             {repair.defect.empty() ? "not named" : typedUnless(repair.defect, analysis::defectWords())},
             {typedUnless(repair.action, analysis::actionWords()) + material,
              typed(repair.by) + ", " + ground.when(repair.at) +
                  (repair.note.empty() ? "" : "; " + typed(repair.note))},
             {permanence, owner},
             {before},
             {after},
             {retestText(ground, repair), proofText(ground, repair)}});
    }
    section.blocks.emplace_back(std::move(table));
    const auto isTemporary = [](const model::Repair& repair) { return !repair.permanent; };
    if (std::any_of(ground.job.repairs.begin(), ground.job.repairs.end(), isTemporary))
        section.blocks.emplace_back(
            Paragraph{"A temporary repair is to be replaced by a permanent one; below the word stands who "
                      "sees to that, and by when.",
                      Paragraph::Look::Soft});
    for (const model::Repair& repair : ground.options.carried)
        section.blocks.emplace_back(Paragraph{
            fmt::format("Still in place from an earlier job: {} at point {}, {}{}, done {}.",
                        typedUnless(repair.action, analysis::actionWords()), ground.numbers(repair.points),
                        repair.owner.empty() ? "nobody named" : typed(repair.owner),
                        repair.due ? ", due " + repair.due->date() : ", no date", repair.at.date()),
            Paragraph::Look::Strong});
    if (!ground.job.repairs.empty())
        section.blocks.emplace_back(totalsBeforeAndAfter(ground));
    for (const model::Repair& repair : ground.job.repairs)
        if (!repair.pictures.empty())
            section.blocks.emplace_back(photosOf(ground, repair));
    return section;
}

Section decisionsByPeopleSection(const Ground& ground)
{
    Section section{"Verdicts and concessions by people", {}, {}};
    ReportTable table;
    table.columns = {{"Points", 0.8}, {"Decided", 2.1}, {"Worked out", 1.8}, {"Because", 3.4}, {"By", 1.9}};
    for (const model::Judgement& j : ground.job.judgements)
        table.rows.push_back({{ground.number(j.point), {}, {}, {}, true},
                              {j.finding + ofWhom(ground, j) + ", " + j.verdict, roundText(ground, j.round)},
                              {workedOut(ground, j)},
                              {typed(j.reason)},
                              {typed(j.by), ground.when(j.at)}});
    for (const model::Concession& c : ground.job.concessions)
        table.rows.push_back({{ground.numbers(c.points), {}, {}, {}, true},
                              {"accepted above the limit", concededText(ground, c)},
                              {concededOf(ground, c)},
                              {typed(c.reason)},
                              {"granted by " + typed(c.grantedBy), typed(c.by) + ", " + ground.when(c.at)}});
    if (!table.rows.empty())
        section.blocks.emplace_back(std::move(table));
    return section;
}

Section reviewSection(const Ground& ground)
{
    Section section{"Review, turn by turn", {}, {}};
    ReportTable table;
    table.columns = {{"When", 1.5}, {"Who", 1.5}, {"Step", 2.4}, {"Words", 3.7}};
    table.empty = "Not yet submitted.";
    for (const model::ReviewEntry& entry : ground.job.review) {
        std::string about;
        // The program wrote these itself.
        const bool isNotThere = entry.check == model::kNotThere || entry.check == model::kThereAfterAll;
        const bool isOwn =
            entry.check == analysis::kLimitChange || isNotThere || entry.step == model::ReviewStep::Approved;
        if (entry.point)
            about = "on point " + ground.number(*entry.point);
        if (entry.check == analysis::kSkipped || entry.check == analysis::kLimitChange || isNotThere)
            about += (about.empty() ? "" : ", ") + entry.check; // a step of the work, not an answer
        else if (!entry.check.empty())
            about += (about.empty() ? "on \"" : ", on \"") + analysis::reviewQuestion(entry.check) + '"';
        const bool isWord =
            !isOwn && !entry.check.empty() &&
            (entry.step == model::ReviewStep::Remark || entry.step == model::ReviewStep::Answer);
        const auto objected = isWord ? analysis::objectedIn(entry.text) : std::nullopt;
        const std::string& words = objected ? *objected : entry.text;
        table.rows.push_back({{ground.when(entry.at)},
                              {typed(entry.by)},
                              {objected ? "not agreed" : std::string(model::name(entry.step)), about},
                              {isOwn ? inPrint(words) : typed(inPrint(words)),
                               entry.digest.empty() ? "" : "job as seen: " + short8(entry.digest)}});
    }
    section.blocks.emplace_back(std::move(table));
    return section;
}

Section signatureSection(const Ground& ground)
{
    const model::Job& job = ground.job;
    SignatureBlock block;
    for (const model::Signature& s : job.signatures) {
        const auto says = std::find_if(ground.options.signatures.begin(), ground.options.signatures.end(),
                                       [&](const SignatureSays& known) { return known.signature == s.id; });
        block.lines.push_back(
            {s.role, typed(s.name) + ", " + ground.when(s.at),
             fmt::format("key {}, digest {}{}{}", short8(s.publicKey), short8(s.digest),
                         says == ground.options.signatures.end() ? "" : ": " + withNames(says->says, job),
                         standingOf(ground, s.person))});
    }
    const auto has = [&](const char* role) {
        return std::any_of(block.lines.begin(), block.lines.end(),
                           [&](const SignatureLine& line) { return line.role == role; });
    };
    if (!has("tester")) {
        std::vector<std::string> known;
        for (const model::Reading& reading : job.readings)
            if (const std::string by = typed(reading.by);
                !by.empty() && std::find(known.begin(), known.end(), by) == known.end())
                known.push_back(by);
        const std::string names = fmt::format("{}", fmt::join(known, ", "));
        block.lines.insert(block.lines.begin(),
                           {"tester", names.empty() ? "not recorded" : names, "as logged with the readings"});
    }
    // Approvals were once signed in whatever role their person has: technician, both.
    if (std::all_of(job.signatures.begin(), job.signatures.end(), [](const model::Signature& s) {
            return s.role == "tester" || s.role == "witness" || s.role == model::kAmendmentRole;
        }))
        block.lines.push_back({"reviewer", "not yet", ""});
    if (!has("witness"))
        block.lines.push_back({"witness", job.setup.witness.empty() ? "none" : typed(job.setup.witness),
                               job.setup.witness.empty() ? "" : "named with the job, has not signed"});
    Section section{"Signatures", {}, {std::move(block)}};
    if (!job.signatures.empty())
        for (const model::Signature& s : job.signatures)
            section.blocks.emplace_back(
                Paragraph{typed(s.name) + (s.role == model::kAmendmentRole
                                               ? " signed the amendment: " + typed(inPrint(s.statement))
                                               : " signed: " + inPrint(s.statement)),
                          Paragraph::Look::Plain});
    if (!ground.options.digest.empty())
        section.blocks.emplace_back(
            Paragraph{"Digest of this job as printed (SHA-256): " + typed(ground.options.digest),
                      Paragraph::Look::Soft});
    for (const std::string& problem : ground.options.problems)
        section.blocks.emplace_back(
            Paragraph{"Not as signed: " + withNames(problem, job), Paragraph::Look::Strong});
    return section;
}

} // namespace sealwalk::report::detail
