// SPDX-License-Identifier: GPL-3.0-or-later
// The two jobs of the demo, from opening to where they stand.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"
#include "demo/history/chance.h"

namespace sealwalk::demo {

/// The yearly check of 2025: two leaks repaired, one of them only for now, sent back once; ready for its
/// approval.
model::Job jobOf2025(const model::TestObject& object, const model::Sketch& sketch, Chance& chance);

/// The fault search of 2026, in progress after its first round.
model::Job jobOf2026(const model::TestObject& object, const model::Sketch& sketch, Chance& chance);

} // namespace sealwalk::demo
