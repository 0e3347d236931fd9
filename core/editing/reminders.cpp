// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/reminders.h"

#include "core/base/folded.h"

#include <algorithm>
#include <array>
#include <optional>

namespace sealwalk::editing {

namespace {

using Kind = model::JointKind;

struct Row
{
    std::optional<Kind> with; ///< none: every object
    std::string_view what;
    std::string_view name;
    Kind kind;
    bool isSetup;
    std::string_view tell; ///< a piece of a joint's name, in lower case, that shows it is drawn
};

constexpr std::array kRows{
    Row{Kind::Valve, "valve seat, tested across with the valve shut", "Valve seat", Kind::Valve, false,
        "seat"},
    Row{Kind::Valve, "bonnet of the valve", "Valve bonnet", Kind::MetalGasketFlange, false, "bonnet"},
    Row{Kind::Valve, "bellows inside the valve's stem", "Stem bellows", Kind::Bellows, false, "stem"},
    Row{Kind::Feedthrough, "inner bellows or shaft seal of the feedthrough", "Inner bellows", Kind::Bellows,
        false, "inner"},
    Row{Kind::Feedthrough, "each pin or ceramic, apart from the flange", "Pins", Kind::Feedthrough, false,
        "pin"},
    Row{Kind::OringSeal, "gland or shaft near the door: hinge side, handle", "Handle shaft",
        Kind::Feedthrough, false, "shaft"},
    Row{Kind::OringSeal, "leak-check port between double seals", "Seal interspace", Kind::ThreadedFitting,
        false, "interspace"},
    Row{Kind::Viewport, "clamp ring of the view glass", "View-glass clamp ring", Kind::ClampedFlange, false,
        "clamp"},
    Row{Kind::Hose, "ferrules at both ends of the hose", "Hose ferrule", Kind::BrazedJoint, false, "ferrule"},
    Row{Kind::Bellows, "end cuffs of the bellows", "Bellows cuff", Kind::WeldSeam, false, "cuff"},
    Row{Kind::BrazedJoint, "water circuit: helium inside it, drained and dried", "Water circuit",
        Kind::BrazedJoint, false, "water"},
    Row{Kind::WeldSeam, "crater ends and stops of the weld", "Weld end", Kind::WeldSeam, false, "end"},
    Row{std::nullopt, "relief valve or burst disc", "Relief valve", Kind::Valve, false, "relief"},
    Row{std::nullopt, "water circuit: helium inside it, drained and dried", "Water circuit",
        Kind::BrazedJoint, false, "water"},
    Row{std::nullopt, "gauge and vent fittings, caps and blanks", "Vent fitting", Kind::ThreadedFitting,
        false, "vent"},
    Row{std::nullopt, "test hose of the detector", "Test hose", Kind::Hose, true, "test hose"},
    Row{std::nullopt, "set-up connections: tee, clamps, detector inlet", "Detector inlet",
        Kind::ClampedFlange, true, "detector"},
};

bool isDrawn(const Row& row, const model::Joint& joint, const NameInWindow& named)
{
    if (row.isSetup && joint.isSetup && joint.kind == row.kind)
        return true;
    const std::string name = folded(joint.name);
    return name.find(row.tell) != std::string::npos ||
           (named && name.find(folded(named(row.name))) != std::string::npos);
}

} // namespace

std::vector<Reminder> reminders(model::JointKind kind)
{
    std::vector<Reminder> result;
    for (const Row& row : kRows)
        if (row.with == kind)
            result.push_back({row.what, row.name, row.kind, row.isSetup, false});
    return result;
}

std::vector<Reminder> reminders(const model::Sketch& sketch, const NameInWindow& named)
{
    std::vector<Reminder> result;
    for (const Row& row : kRows) {
        const bool applies =
            !row.with || std::any_of(sketch.joints.begin(), sketch.joints.end(),
                                     [&](const model::Joint& j) { return j.kind == *row.with; });
        const bool known = std::any_of(result.begin(), result.end(),
                                       [&](const Reminder& reminder) { return reminder.what == row.what; });
        if (!applies || known)
            continue;
        const bool drawn = std::any_of(sketch.joints.begin(), sketch.joints.end(),
                                       [&](const model::Joint& joint) { return isDrawn(row, joint, named); });
        result.push_back({row.what, row.name, row.kind, row.isSetup, drawn});
    }
    std::stable_sort(result.begin(), result.end(),
                     [](const Reminder& a, const Reminder& b) { return !a.onSketch && b.onSketch; });
    return result;
}

std::vector<Reminder> reminders(const model::Job& job, const NameInWindow& named)
{
    std::vector<Reminder> result = reminders(job.sketch, named);
    for (Reminder& reminder : result) {
        const auto last = std::find_if(job.review.rbegin(), job.review.rend(), [&](const auto& entry) {
            return (entry.check == model::kNotThere || entry.check == model::kThereAfterAll) &&
                   entry.text == reminder.what;
        });
        reminder.isAbsent =
            !reminder.onSketch && last != job.review.rend() && last->check == model::kNotThere;
    }
    std::stable_sort(result.begin(), result.end(), [](const Reminder& a, const Reminder& b) {
        return !(a.onSketch || a.isAbsent) && (b.onSketch || b.isAbsent);
    });
    return result;
}

} // namespace sealwalk::editing
