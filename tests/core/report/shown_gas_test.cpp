// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_view.h"
#include "core/analysis/leak_balance.h"
#include "core/analysis/uncertainty.h"
#include "core/report/shown_unit.h"

#include <gtest/gtest.h>

#include <cmath>

namespace sealwalk::report {
namespace {

model::Setup asAir()
{
    model::Setup setup;
    setup.gasBasis = model::GasBasis::Air;
    return setup;
}

// Property: as helium nothing is changed.
TEST(ShownGas, heliumIsShownAsMeasured)
{
    const ShownGas gas{model::Setup{}};
    EXPECT_EQ(gas.ofHelium(millibarLitresPerSecond(3.2e-7)), millibarLitresPerSecond(3.2e-7));
    EXPECT_EQ(gas.symbol(), "He");
}

// Published: Graham's law, sqrt(4.0026/28.965) = 0.3717 for a molecular leak (molar masses: IUPAC 2021; ISO 2533
// for air).
TEST(ShownGas, aFineLeakPassesAirByGrahamsLaw)
{
    const ShownGas gas{asAir()};
    const LeakRate fine = millibarLitresPerSecond(1e-13);
    EXPECT_NEAR(gas.ofHelium(fine) / fine, 0.3717, 0.02);
}

// Property: order is kept, and the way back ends where it began.
TEST(ShownGas, asAirIsMonotoneAndTurnsBack)
{
    const ShownGas gas{asAir()};
    LeakRate before;
    for (double decade = -12.0; decade <= -1.0; decade += 0.25) {
        const LeakRate helium = millibarLitresPerSecond(std::pow(10.0, decade));
        const LeakRate air = gas.ofHelium(helium);
        EXPECT_GT(air, before) << decade;
        EXPECT_NEAR(gas.toHelium(air) / helium, 1.0, 1e-6) << decade;
        before = air;
    }
}

// Property: the range is the one that the balance gives the same leak, worked out there by another way.
TEST(ShownGas, rangeAgreesWithTheBalance)
{
    const ShownGas gas{asAir()};
    for (const double rate : {1e-9, 3e-7, 2e-5, 1e-3}) {
        const double own = 0.2;
        const LeakRate helium = millibarLitresPerSecond(rate);
        const analysis::LocatedLeak leak{"point 1", helium, 0.0, own};
        const auto balance = analysis::balanceLeaks(std::span(&leak, 1), std::nullopt,
                                                    analysis::channelConditions(asAir()));
        ASSERT_TRUE(balance) << balance.error().message;
        const double spread = std::exp(2.0 * analysis::logSpread(own));
        const ShownGas::Range range = gas.range(helium, helium / spread, helium * spread);
        EXPECT_NEAR(range.low / balance->leaks.front().low, 1.0, 0.02) << rate;
        EXPECT_NEAR(range.high / balance->leaks.front().high, 1.0, 0.02) << rate;
    }
}

// Regression: figures that are air already (balance, pressure rise) are not turned a second time.
TEST(ShownGas, whatIsAirAlreadyIsLeft)
{
    const ShownUnit unit = shownUnit(asAir());
    const LeakRate rate = millibarLitresPerSecond(1e-6);
    EXPECT_NEAR(unit.number(rate), 1e-6, 1e-18);
    EXPECT_LT(unit.ofHelium(rate), 0.9e-6);
    EXPECT_EQ(unit.head(), "mbar·l/s air");
}

} // namespace
} // namespace sealwalk::report
