// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/coater_truth.h"

#include "core/base/contract.h"
#include "core/flow/air_equivalent.h"

#include <map>

namespace sealwalk::demo {

using namespace model;

namespace {

constexpr int kDoorLeak = 17;
constexpr int kWindow = 27;
constexpr double kWindowRing = 2.5; // mm

/// A leak `shift` mm along the outline from the middle of the point's stretch.
TrueLeak leakAt(const Sketch& sketch, int number, double rate, double shift = 0.0)
{
    const TestPoint* point = sketch.pointNumbered(number);
    SEALWALK_EXPECT(point != nullptr);
    const Joint* joint = sketch.joint(point->joint);
    SEALWALK_EXPECT(joint != nullptr);
    const geometry::Path path = geometry::outline(joint->shape);
    TrueLeak leak;
    leak.nearest = point->id;
    leak.sheet = joint->sheet;
    leak.place = path.at(point->along * path.length() + shift).place;
    leak.rate = rate;
    return leak;
}

/// Small ones within the limit that a coater of its age has; a tenth smaller a year before.
const std::map<int, double> kSmall{{2, 5.6e-9},  {5, 8.1e-9},  {9, 2.0e-8},  {12, 7.4e-9},
                                   {21, 1.2e-8}, {51, 9.1e-8}, {53, 4.1e-8}, {59, 2.9e-8}};
constexpr double kYearBefore = 0.9;

std::vector<TrueLeak> everyYear(const Sketch& sketch, double share)
{
    std::vector<TrueLeak> leaks;
    double shift = -18.0; // mm; leaks do not sit in the middle of a stretch
    for (const auto& small : kSmall) {
        const Joint* joint = sketch.joint(sketch.pointNumbered(small.first)->joint);
        const bool isSpot = std::holds_alternative<geometry::Spot>(joint->shape);
        leaks.push_back(leakAt(sketch, small.first, small.second * share, isSpot ? 0.0 : shift));
        shift = shift > 15.0 ? -18.0 : shift + 7.0;
    }
    TrueLeak window = leakAt(sketch, kWindow, 1.9e-6 * share);
    window.permeates = kWindowRing;
    leaks.push_back(window);
    return leaks;
}

std::vector<TrueLeak> common2025(const Sketch& sketch)
{
    std::vector<TrueLeak> leaks = everyYear(sketch, kYearBefore);
    leaks.push_back(leakAt(sketch, kDoorLeak, 2.9e-8, 10.0));
    leaks.push_back(leakAt(sketch, 33, 4.0e-7, 12.0));
    leaks.push_back(leakAt(sketch, 48, 9.0e-7));
    return leaks;
}

} // namespace

std::vector<TrueLeak> leaksOf2025(const Sketch& sketch)
{
    std::vector<TrueLeak> leaks = common2025(sketch);
    leaks.push_back(leakAt(sketch, 40, 2.2e-5, -20.0));
    leaks.push_back(leakAt(sketch, 56, 8.8e-6, 5.0));
    return leaks;
}

std::vector<TrueLeak> leaksAfterRepair(const Sketch& sketch)
{
    std::vector<TrueLeak> leaks = common2025(sketch);
    leaks.push_back(leakAt(sketch, 56, 5.2e-8, 5.0));
    return leaks;
}

std::vector<TrueLeak> leaksOf2026(const Sketch& sketch)
{
    std::vector<TrueLeak> leaks = everyYear(sketch, 1.0);
    leaks.push_back(leakAt(sketch, kDoorLeak, 4.6e-4, 10.0));
    leaks.push_back(leakAt(sketch, 29, 1.5e-6)); // hides behind what rises from here to the door leak
    leaks.push_back(leakAt(sketch, 33, 6.0e-8, 12.0));
    const double halfway =
        geometry::outline(sketch.joint(sketch.pointNumbered(38)->joint)->shape).length() / 8.0;
    leaks.push_back(leakAt(sketch, 38, 6.2e-6, halfway)); // where the stretches of 38 and 39 meet
    leaks.push_back(leakAt(sketch, 48, 1.1e-6));
    leaks.push_back(leakAt(sketch, 56, 5.6e-8, 5.0));
    leaks.push_back(leakAt(sketch, 58, 1.9e-4, 30.0)); // not sprayed: what the balance misses
    TrueLeak hose = leakAt(sketch, 60, 3.4e-5, -40.0);
    hose.onlyFlexed = true;
    leaks.push_back(hose);
    return leaks;
}

double airThrough(const std::vector<TrueLeak>& leaks)
{
    double sum = 0.0;
    for (const TrueLeak& leak : leaks) {
        if (leak.onlyFlexed || leak.permeates > 0.0)
            continue;
        const auto air = flow::airEquivalent(millibarLitresPerSecond(leak.rate));
        SEALWALK_EXPECT(air.has_value());
        sum += inMillibarLitresPerSecond(air->rate);
    }
    return sum;
}

} // namespace sealwalk::demo
