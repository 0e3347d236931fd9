// SPDX-License-Identifier: GPL-3.0-or-later
// What every worked example uses. All ten are invented; sites, assets and figures are our own practice
// sheet's, a worked example and no outside source.
#pragma once

#include "tests/scenarios/looked_at.h"
#include "tests/scenarios/technician.h"

#include <gtest/gtest.h>

namespace sealwalk::scenarios {

using analysis::Finding;
using analysis::Verdict;
using model::CalibrationMoment;
using model::Condition;
using model::JointKind;
using model::RoundKind;
using model::TestMoment;

} // namespace sealwalk::scenarios
