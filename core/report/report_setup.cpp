// SPDX-License-Identifier: GPL-3.0-or-later
// What was tested and how: object, limits, instruments, calibration, background, cautions.
#include "core/analysis/background_series.h"
#include "core/analysis/job_view.h"
#include "core/analysis/setup_outlook.h"
#include "core/analysis/spray_timing.h"
#include "core/base/clock_zone.h"
#include "core/model/cautions.h"
#include "core/quantities/number_text.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"
#include "core/report/typed_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <span>

namespace sealwalk::report::detail {

namespace {

constexpr const char* kNotRecorded = "not recorded";

/// What somebody typed.
std::string said(const std::string& text)
{
    return text.empty() ? kNotRecorded : typed(text);
}

/// What somebody chose from the program's own list, which may be said in another language, or typed.
std::string chosen(const std::string& text, std::span<const std::string_view> list)
{
    return text.empty() ? kNotRecorded : typedUnless(text, list);
}

constexpr std::string_view kPurposes[] = {"fault search", "acceptance", "yearly check", "after repair",
                                          "after rebuild"};
constexpr std::string_view kConnections[] = {"at the object, alone", "foreline, pump in parallel",
                                             "foreline, alone"};

/// What stands so already.
std::string orNot(const std::string& text)
{
    return text.empty() ? kNotRecorded : text;
}

template <class Q, class Text>
std::string orNot(const std::optional<Q>& value, Text text)
{
    return value ? text(*value) : std::string(kNotRecorded);
}

std::string joined(const std::set<std::string>& names)
{
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : "; ") + name;
    return text;
}

/// Who took readings, each with the qualification the history knows.
std::string testers(const Ground& ground)
{
    std::set<std::string> names;
    for (const model::Reading& reading : ground.job.readings) {
        if (reading.by.empty())
            continue;
        const auto& people = ground.options.people;
        const auto known = std::find_if(people.begin(), people.end(), [&](const model::Person& person) {
            return person.name == reading.by;
        });
        const bool qualified = known != people.end() && !known->qualification.empty();
        // Kept with the person, not with the job: it may have been entered since.
        const char* asOf = ground.job.state == model::JobState::Signed ? ", as the history says now" : "";
        names.insert(typed(reading.by) + (qualified ? ", " + typed(known->qualification) + asOf
                                                    : ", qualification not recorded"));
    }
    return orNot(joined(names));
}

/// The number of the report and its revision: each submission makes one, and so does each amendment.
std::string reportNumber(const model::Job& job)
{
    const auto count = [&](model::ReviewStep step) {
        return std::count_if(job.review.begin(), job.review.end(),
                             [&](const model::ReviewEntry& entry) { return entry.step == step; });
    };
    const auto submitted = count(model::ReviewStep::Submitted);
    const auto amended = count(model::ReviewStep::Amendment);
    return fmt::format("{}, revision {}: submitted {}, returned {}, amended {}", job.number,
                       submitted + amended, submitted, count(model::ReviewStep::Returned), amended);
}

/// Joints that carry a point; one whose points are all retired is there no more.
std::vector<const model::Joint*> jointsInUse(const model::Sketch& sketch)
{
    std::set<model::JointId> used;
    for (const model::TestPoint* point : sketch.activePoints())
        used.insert(point->joint);
    std::vector<const model::Joint*> joints;
    for (const model::Joint& joint : sketch.joints)
        if (used.contains(joint.id))
            joints.push_back(&joint);
    return joints;
}

std::string kindsOfJoints(const model::Sketch& sketch)
{
    std::map<std::string, int> kinds;
    for (const model::Joint* joint : jointsInUse(sketch))
        ++kinds[std::string(model::name(joint->kind))];
    std::string text;
    for (const auto& [kind, count] : kinds)
        text += (text.empty() ? "" : ", ") + kind + (count == 1 ? "" : fmt::format(" × {}", count));
    return orNot(text);
}

/// Decisions that depart from the limit or the procedure.
std::string deviations(const Ground& ground)
{
    const model::Job& job = ground.job;
    std::vector<model::PointId> leftOut;
    for (const analysis::PointFinding& finding : ground.left)
        if (finding.finding == analysis::Finding::NotTested ||
            finding.finding == analysis::Finding::NotAccessible)
            leftOut.push_back(finding.point);
    const auto hurried = std::count_if(job.readings.begin(), job.readings.end(),
                                       [](const model::Reading& reading) { return reading.outOfTurn; });
    std::string text;
    const auto add = [&text](const std::string& one) { text += (text.empty() ? "" : "; ") + one; };
    if (!job.concessions.empty())
        add(job.concessions.size() == 1
                ? std::string("1 concession, see \"Verdicts and concessions by people\"")
                : fmt::format("{} concessions, see \"Verdicts and concessions by people\"",
                              job.concessions.size()));
    if (!leftOut.empty())
        add(fmt::format("left out, with reasons below: {}", ground.numbers(leftOut)));
    if (hurried > 0)
        add(fmt::format("sprayed before the wait was over: {} of {} readings", hurried, job.readings.size()));
    return text.empty() ? "none recorded" : text;
}

std::string dates(const Ground& ground)
{
    const model::Job& job = ground.job;
    if (job.readings.empty())
        return fmt::format("opened {}, {}; nothing sprayed", ground.when(job.opened), zoneText(job.opened));
    const auto [first, last] =
        std::minmax_element(job.readings.begin(), job.readings.end(),
                            [](const model::Reading& a, const model::Reading& b) { return a.at < b.at; });
    return fmt::format("{} to {}, {}", ground.when(first->at), ground.when(last->at), zoneText(job.opened));
}

std::string kindLimits(const Ground& ground)
{
    std::string text;
    for (const auto& [kind, limit] : ground.job.setup.kindLimits)
        text += fmt::format("{}{} {}", text.empty() ? "" : "; ", model::name(kind), ground.unit.print(limit));
    return text;
}

std::string pumps(const model::Setup& setup)
{
    std::string text = orNot(setup.detectorSpeed, [](PumpingSpeed s) {
        return trimmedText(inLitresPerSecond(s), 3) + " l/s helium at the detector";
    });
    text += setup.auxiliarySpeed                      ? fmt::format("; pump in parallel {} l/s",
                                                                    trimmedText(inLitresPerSecond(*setup.auxiliarySpeed), 3))
            : analysis::isParallelSpeedUnknown(setup) ? "; pump in parallel, its speed not recorded"
                                                      : "; no pump in parallel recorded";
    if (setup.hoseDiameter && setup.hoseLength)
        text += fmt::format("; hose {} mm by {} m", trimmedText(inMillimetres(*setup.hoseDiameter), 3),
                            trimmedText(setup.hoseLength->si(), 3));
    return text;
}

std::string tracer(const model::Setup& setup)
{
    std::string text = fmt::format("helium, {} % at the joint (±{} % relative), atmospheric pressure outside",
                                   trimmedText(setup.heliumShare.si() * 100.0, 3),
                                   trimmedText(setup.heliumShareUncertainty * 100.0, 2));
    if (setup.heliumFlow)
        text += fmt::format(", {} standard l/min", trimmedText(*setup.heliumFlow, 3));
    if (!setup.heliumBottle.empty())
        text += ", " + withWord("bottle", setup.heliumBottle);
    return text;
}

std::string included(const model::Sketch& sketch)
{
    const auto counted = [](std::size_t count, std::string_view thing) {
        return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
    };
    const auto points = sketch.activePoints();
    const auto ofSetup = std::ranges::count_if(
        points, [&](const model::TestPoint* point) { return sketch.isOfSetup(point->id); });
    return fmt::format("{}{} on {} of {}, sketch revision {}", counted(points.size(), "point"),
                       ofSetup > 0 ? fmt::format(", {} of them of the test set-up,", ofSetup) : "",
                       counted(jointsInUse(sketch).size(), "joint"), counted(sketch.sheets.size(), "sheet"),
                       sketch.revision);
}

std::string rounds(const Ground& ground)
{
    std::string text;
    for (const model::Round& round : ground.job.rounds) {
        // Typed in from paper, a round was opened in the program days after it was walked.
        std::string first = round.opened.date();
        std::string last = first;
        if (const auto readings = ground.job.standing(round.id); !readings.empty()) {
            const auto [from, to] = std::ranges::minmax_element(
                readings, [](const auto* a, const auto* b) { return a->at < b->at; });
            first = (*from)->at.date();
            last = (*to)->at.date();
        }
        text += fmt::format("{}round {} {}{} ({})", text.empty() ? "" : "; ", round.number,
                            model::name(round.kind), round.title.empty() ? "" : ", " + typed(round.title),
                            first == last ? first : first + " to " + last);
    }
    return orNot(text);
}

std::string_view sourceWords(analysis::TimingSource source)
{
    switch (source) {
    case analysis::TimingSource::Measured:
        return "measured with the reference leak";
    case analysis::TimingSource::Typed:
        return "typed";
    case analysis::TimingSource::Computed:
        return "volume over pumping speed";
    case analysis::TimingSource::Assumed:
        return "assumed";
    }
    return {};
}

/// What a reading was asked to take; how long it took stands with it.
std::string timing(const Ground& ground)
{
    const analysis::SprayTiming times = analysis::sprayTiming(ground.job, ground.object);
    return fmt::format("time constant {} s, {}; dwell asked for {} s; wait after an answer {} s",
                       trimmedText(times.response.si(), 3), sourceWords(times.source),
                       trimmedText(times.dwell.si(), 3), trimmedText(times.wait.si(), 3));
}

} // namespace

Section setupSection(const Ground& ground)
{
    const model::Job& job = ground.job;
    const model::Setup& setup = job.setup;
    FactList list;
    // What is missing is a finding too, but line by line it hides what was recorded.
    const auto add = [&](std::string label, std::string value) {
        if (value == kNotRecorded)
            list.missing.push_back(std::move(label));
        else
            list.facts.push_back({std::move(label), std::move(value)});
    };
    const std::optional<Volume> volume = setup.volume ? setup.volume : ground.object.volume;
    add("Report", reportNumber(job));
    add("Serial, drawing", said(ground.object.note));
    add("Test object",
        typed(ground.object.name) + (ground.object.tag.empty() ? "" : ", asset " + typed(ground.object.tag)));
    add("Customer", said(setup.customer));
    add("Purpose", chosen(setup.purpose, kPurposes));
    add("Place", said(ground.object.place));
    add("Date", dates(ground));
    add("Volume", orNot(volume, [](Volume v) { return trimmedText(inLitres(v), 4) + " l"; }));
    add("Rounds", rounds(ground));
    add("Included", included(job.sketch));
    add("Excluded", setup.excluded.empty() ? "nothing named" : typed(setup.excluded));
    add("Kinds of joint", kindsOfJoints(job.sketch));
    add("Deviations", deviations(ground));
    add("Limit, one point", orNot(setup.pointLimit, [&](LeakRate q) {
                                return ground.unit.printWithUnit(q) + " helium";
                            }) + (setup.kindLimits.empty() ? "" : "; " + kindLimits(ground)));
    add("Limit, total",
        orNot(setup.totalLimit, [&](LeakRate q) { return ground.unit.printWithUnit(q) + " air"; }));
    add("Base pressure wanted",
        orNot(ground.object.wantedPressure, [](Pressure p) { return printRate(inMillibars(p)) + " mbar"; }));
    add("Limit agreed by", said(setup.limitAgreedBy));
    add("Gas basis", std::string(model::name(setup.gasBasis)));
    add("Procedure", said(setup.procedure));
    add("Technique", "object evacuated, helium sprayed at the joints from outside; "
                     "readings corrected by the reference leak");
    add("Condition", said(setup.objectState) + (setup.dried ? ", dried" : ""));
    add("Room", fmt::format("{} °C", trimmedText(inDegreesCelsius(setup.roomTemperature), 3)));
    add("Tracer gas", tracer(setup));
    add("Last worked on", said(setup.lastTouched));
    add("Detector", said(setup.detector) + (setup.zeroOn ? ", zero on" : ""));
    add("Connected", chosen(setup.connection, kConnections));
    add("Pumping", pumps(setup));
    add("Timing", timing(ground));
    add("Smallest detectable", orNot(worstDetectable(job, ground.object, ground.left), [&](LeakRate q) {
            return ground.unit.print(q) + " at the least sensitive place and moment";
        }));
    add("Tester", testers(ground));
    add("Witness", setup.witness.empty() ? "nobody named" : typed(setup.witness));
    std::string instruments;
    for (const model::Instrument& i : setup.instruments)
        instruments += fmt::format("{}{} {}{}", instruments.empty() ? "" : "; ", typed(i.what),
                                   typed(i.identity), i.due ? ", due " + i.due->date() : "");
    add("Other instruments", orNot(instruments));
    return {"What was tested, and how", {}, {std::move(list)}};
}

Section setupSketchSection(const Ground& ground)
{
    SetupWords words;
    words.rate = [&](LeakRate rate) { return ground.unit.printWithUnit(rate); };
    words.typed = [](const std::string& text) { return typed(text); };
    return {"Set-up",
            "drawn from what was stated, not to scale; dashed: not stated",
            {SetupBlock{setupSketch(ground.job, ground.object, words)}}};
}

namespace {

/// "typed", "typed, at the valve", "detector feed", or a file's name.
std::string sourceText(const std::string& source)
{
    constexpr std::string_view kByHand = "typed";
    if (source == kByHand || source == "detector feed")
        return source;
    const std::string before = std::string(kByHand) + ", ";
    return source.starts_with(before) ? before + typed(source.substr(before.size())) : typed(source);
}

/// What it multiplies by stands below, not to be torn apart in a narrow column.
Cell factorCell(const analysis::CheckView& view)
{
    if (!view.factor)
        return {"not usable"};
    return {trimmedText(view.factor->factor, 3),
            fmt::format("(× {})", trimmedText(1.0 / view.factor->factor, 3))};
}

/// A check "before" begins anew; how far the factor stepped there is no drift, and said all the same.
Cell changeCell(const analysis::CheckView& view)
{
    if (view.change)
        return {fmt::format("{:+.0f} %", view.change->change * 100.0)};
    if (view.step)
        return {fmt::format("{:+.0f} %", view.step->change * 100.0), "before, again"};
    return {"–"};
}

} // namespace

Section calibrationSection(const Ground& ground)
{
    const model::Job& job = ground.job;
    ReportTable table;
    table.columns = {{"When", 1.35},           {"What", 1.7},         {"Reference leak", 2.5},
                     {"That day", 1.15, true}, {"Shown", 1.15, true}, {"Background", 1.15, true},
                     {"Factor", 1.1, true},    {"Change", 0.9, true}, {"Response", 1.05, true}};
    table.empty = "No calibration stands: no reading could be corrected to the chamber.";
    for (const analysis::CheckView& view : analysis::checks(job)) {
        const auto found =
            std::find_if(job.calibrations.begin(), job.calibrations.end(),
                         [&](const model::Calibration& c) { return c.id == view.calibration; });
        if (found == job.calibrations.end())
            continue;
        const model::Calibration& c = *found;
        std::string notes = c.place.empty() ? std::string() : "at " + typed(c.place);
        if (!c.note.empty())
            notes += (notes.empty() ? "" : "; ") + typed(c.note);
        for (const std::string& note : view.notes)
            notes += (notes.empty() ? "" : "; ") + inPrint(note);
        table.rows.push_back(
            {{ground.when(c.at), typed(c.by)},
             {std::string(model::name(c.kind)), std::string(model::name(c.moment))},
             {fmt::format(
                  "{} {} at {} °C, certificate {}", typed(c.leak.serial), ground.unit.print(c.leak.value),
                  trimmedText(inDegreesCelsius(c.leak.certificateTemperature), 3), said(c.leak.certificate)),
              notes + (c.leak.dueDate ? (notes.empty() ? "due " : "; due ") + c.leak.dueDate->date() : "")},
             {ground.rate(view.reference)},
             {ground.rate(c.shown)},
             {ground.rate(c.background)},
             factorCell(view),
             changeCell(view),
             {c.response ? trimmedText(c.response->si(), 2) + " s" : "–",
              c.cleanUp ? "clean-up " + trimmedText(c.cleanUp->si(), 3) + " s" : ""}});
    }
    Section section{"Calibration and background",
                    "factor: shown over true; in brackets what a reading is multiplied by",
                    {std::move(table)}};
    ReportTable watches;
    watches.columns = {{"Background watched", 1.6}, {"Values", 0.8, true}, {"Over", 0.8, true},
                       {"Level", 1, true},          {"Noise", 1, true},    {"Least", 1, true},
                       {"Highest", 1, true},        {"From", 1.4}};
    watches.empty = "No background watch stands: the smallest detectable leak is not known.";
    for (const model::BackgroundWatch* standing : job.standingBackgrounds()) {
        const model::BackgroundWatch& watch = *standing;
        if (watch.values.empty())
            continue;
        const auto summary = analysis::summariseBackground(watch);
        const auto [lowest, highest] = std::minmax_element(watch.values.begin(), watch.values.end());
        const LeakRate swing = watch.swing.value_or(LeakRate());
        watches.rows.push_back(
            {{ground.when(watch.at), typed(watch.by)},
             {watch.swing ? "by eye" : std::to_string(watch.values.size())},
             {watch.swing ? "–" : trimmedText(watch.times.back() - watch.times.front(), 3) + " s"},
             {summary ? ground.rate(summary->level) : "–", watch.swing ? "± " + ground.rate(swing) : ""},
             {summary ? ground.rate(summary->noise) : "–"},
             {watch.swing ? "–" : ground.rate(*lowest)},
             {watch.swing ? "–" : ground.rate(*highest)},
             {sourceText(watch.source)}});
    }
    section.blocks.emplace_back(std::move(watches));
    if (!job.setup.noCheckAfterReason.empty())
        section.blocks.emplace_back(
            Paragraph{"No check afterwards: " + typed(job.setup.noCheckAfterReason), Paragraph::Look::Plain});
    return section;
}

Section cautionSection(const Ground& ground)
{
    Section section{
        "Cautions", "they name hazards; the site's rules, permits and licensed people decide", {}};
    ReportTable table;
    table.columns = {{"Caution", 2.2}, {"What to mind", 4.6}, {"Read by", 1.6}};
    for (const model::Caution& caution : model::cautions()) {
        const auto tick =
            std::find_if(ground.job.setup.cautions.begin(), ground.job.setup.cautions.end(),
                         [&](const model::CautionTick& t) { return t.caution == caution.word; });
        const bool read = tick != ground.job.setup.cautions.end();
        table.rows.push_back({{std::string(caution.title), {}, {}, {}, true},
                              {std::string(caution.text)},
                              {read ? typed(tick->by) : "not ticked", read ? ground.when(tick->at) : ""}});
    }
    section.blocks.emplace_back(std::move(table));
    return section;
}

} // namespace sealwalk::report::detail
