// SPDX-License-Identifier: GPL-3.0-or-later
// What is usually forgotten when joints are drawn. Common practice of the trade, no published list.
#pragma once

#include "core/model/job.h"

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::editing {

/// One thing to look for.
struct Reminder
{
    std::string_view what; ///< "valve seat, tested across"
    std::string_view name; ///< what the joint would be called: "Valve seat"
    model::JointKind kind; ///< what it would be drawn as
    bool isSetup = false;  ///< belongs to the test set-up
    bool onSketch = false; ///< a joint whose name tells of it is drawn already
    bool isAbsent = false; ///< somebody said that the object has none, model::kNotThere
};

/// What goes with a kind of joint.
std::vector<Reminder> reminders(model::JointKind kind);

/// A reminder's name as the window says it.
using NameInWindow = std::function<std::string(std::string_view)>;

/// What the joints of the sketch bring to mind, and what every object and set-up has: each thing once, those
/// still missing first. What is drawn is known by its name, in English or as `named` says it; of the test
/// set-up by its kind too.
std::vector<Reminder> reminders(const model::Sketch& sketch, const NameInWindow& named = {});

/// The same for a job, with what was said in it not to be there.
std::vector<Reminder> reminders(const model::Job& job, const NameInWindow& named = {});

} // namespace sealwalk::editing
