// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/shown.h"

#include <gtest/gtest.h>

namespace sealwalk::ui {
namespace {

// Regression: Prepare did not know what a mole of helium weighs, and showed 0 for every rate in a unit by
// mass.
TEST(PrepareShown, KnowsUnitsByMass)
{
    model::Setup setup;
    setup.unit = "g/yr";
    setup.roomTemperature = degreesCelsius(20.0);
    // p V = m R T / M: 1 Pa·m³/s of helium at 20 °C is 4.0026e-3 / (8.31446 x 293.15) kg/s, 51.8 kg a year.
    EXPECT_NEAR(numberShown(LeakRate::fromSi(1.0), shownUnit(setup), setup), 5.18e4, 0.01e4);
}

} // namespace
} // namespace sealwalk::ui
