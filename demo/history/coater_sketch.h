// SPDX-License-Identifier: GPL-3.0-or-later
// The invented box coater: what it is, and its 62 points on three sheets.
#pragma once

#include "core/model/sketch.h"
#include "core/model/test_object.h"
#include "demo/history/chance.h"

namespace sealwalk::demo {

model::TestObject coater(Chance& chance);
model::Sketch coaterSketch(Chance& chance);

} // namespace sealwalk::demo
