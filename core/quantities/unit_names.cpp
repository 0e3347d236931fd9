// SPDX-License-Identifier: GPL-3.0-or-later
// Factors are exact by definition. Sources: NIST SP 811 (2008) appendix B.8 for atm, at, conventional inHg
// and mmHg, psi, Torr, year of 365 days, foot, pound; SI Brochure (2019) for the Avogadro constant.
#include "core/quantities/unit_names.h"

#include <algorithm>

namespace sealwalk::detail {

namespace {

constexpr Dimension kPressure = {1, 0, 0, 0, 0, 0, 0};
constexpr Dimension kLength = {0, 1, 0, 0, 0, 0, 0};
constexpr Dimension kVolume = {0, 3, 0, 0, 0, 0, 0};
constexpr Dimension kTime = {0, 0, 1, 0, 0, 0, 0};
constexpr Dimension kAmount = {0, 0, 0, 1, 0, 0, 0};
constexpr Dimension kMass = {0, 0, 0, 0, 1, 0, 0};
constexpr Dimension kTemperature = {0, 0, 0, 0, 0, 1, 0};
constexpr Dimension kVolumeFlow = {0, 3, -1, 0, 0, 0, 0};
constexpr Dimension kLeakRate = {1, 3, -1, 0, 0, 0, 0};
constexpr Dimension kPressureVolume = {1, 3, 0, 0, 0, 0, 0};
// "std" in front of a volume turns it into an amount, counted in standard cubic metres.
constexpr Dimension kStandard = {0, -3, 0, 0, 0, 0, 1};
constexpr Dimension kStandardAmount = {0, 0, 0, 0, 0, 0, 1};
constexpr Dimension kStandardFlow = {0, 0, -1, 0, 0, 0, 1};

constexpr double kAtm = 101325.0;
constexpr double kTorr = kAtm / 760.0;
constexpr double kGravity = 9.80665;
constexpr double kInch = 0.0254;
constexpr double kFoot = 0.3048;
constexpr double kPound = 0.45359237;
constexpr double kAvogadro = 6.02214076e23;
constexpr double kYear = 365.0 * 86400.0;
// Columns of water are conventional, 1000 kg/m³. Density of mercury in the conventional column, kg/m³.
constexpr double kMercury = 13595.1;
constexpr double kCubicFoot = kFoot * kFoot * kFoot;

constexpr UnitPart kParts[] = {
    {"Pa", kPressure, 1.0},
    {"pa", kPressure, 1.0},
    {"uPa", kPressure, 1e-6},
    {"mPa", kPressure, 1e-3},
    {"hPa", kPressure, 100.0},
    {"hpa", kPressure, 100.0},
    {"kPa", kPressure, 1e3},
    {"kpa", kPressure, 1e3},
    {"MPa", kPressure, 1e6},
    {"bar", kPressure, 1e5},
    {"mbar", kPressure, 100.0},
    {"ubar", kPressure, 0.1},
    {"Torr", kPressure, kTorr},
    {"torr", kPressure, kTorr},
    {"TORR", kPressure, kTorr},
    {"mTorr", kPressure, kTorr / 1000.0},
    {"mtorr", kPressure, kTorr / 1000.0},
    {"uTorr", kPressure, kTorr / 1e6},
    {"micron", kPressure, kTorr / 1000.0},
    {"microns", kPressure, kTorr / 1000.0},
    {"umHg", kPressure, kTorr / 1000.0},
    {"mmHg", kPressure, kMercury* kGravity * 1e-3},
    {"inHg", kPressure, kMercury* kGravity* kInch},
    {"mmH2O", kPressure, kGravity},
    {"cmH2O", kPressure, kGravity * 10.0},
    {"psi", kPressure, kPound* kGravity / (kInch * kInch)},
    {"psia", kPressure, kPound* kGravity / (kInch * kInch)},
    {"PSI", kPressure, kPound* kGravity / (kInch * kInch)},
    {"atm", kPressure, kAtm},
    {"at", kPressure, kGravity * 1e4},
    {"kgf/cm2", kPressure, kGravity * 1e4},
    {"kp/cm2", kPressure, kGravity * 1e4},

    {"m", kLength, 1.0},
    {"cm", kLength, 1e-2},
    {"mm", kLength, 1e-3},
    {"um", kLength, 1e-6},
    {"nm", kLength, 1e-9},
    {"in", kLength, kInch},
    {"inch", kLength, kInch},
    {"ft", kLength, kFoot},
    {"mil", kLength, kInch / 1000.0},

    {"l", kVolume, 1e-3},
    {"L", kVolume, 1e-3},
    {"litre", kVolume, 1e-3},
    {"litres", kVolume, 1e-3},
    {"liter", kVolume, 1e-3},
    {"liters", kVolume, 1e-3},
    {"ml", kVolume, 1e-6},
    {"mL", kVolume, 1e-6},
    {"cc", kVolume, 1e-6},

    {"s", kTime, 1.0},
    {"sec", kTime, 1.0},
    {"ms", kTime, 1e-3},
    {"min", kTime, 60.0},
    {"h", kTime, 3600.0},
    {"hr", kTime, 3600.0},
    {"d", kTime, 86400.0},
    {"week", kTime, 604800.0},
    {"day", kTime, 86400.0},
    {"days", kTime, 86400.0},
    {"yr", kTime, kYear},
    {"a", kTime, kYear},
    {"year", kTime, kYear},
    {"years", kTime, kYear},

    {"lps", kVolumeFlow, 1e-3},
    {"lpm", kVolumeFlow, 1e-3 / 60.0},
    {"cfm", kVolumeFlow, kCubicFoot / 60.0},
    {"CFM", kVolumeFlow, kCubicFoot / 60.0},

    {"W", kLeakRate, 1.0},
    {"mbarl", kPressureVolume, 0.1},
    {"mbarL", kPressureVolume, 0.1},
    {"lusec", kLeakRate, kTorr * 1e-6},
    {"clusec", kLeakRate, kTorr * 1e-8},

    {"mol", kAmount, 1.0},
    {"mmol", kAmount, 1e-3},
    {"umol", kAmount, 1e-6},
    {"nmol", kAmount, 1e-9},
    {"molecule", kAmount, 1.0 / kAvogadro},
    {"molecules", kAmount, 1.0 / kAvogadro},

    {"kg", kMass, 1.0},
    {"g", kMass, 1e-3},
    {"mg", kMass, 1e-6},
    {"ug", kMass, 1e-9},
    {"oz", kMass, kPound / 16.0},
    {"lb", kMass, kPound},

    {"std", kStandard, 1.0},
    {"standard", kStandard, 1.0},
    {"scc", kStandardAmount, 1e-6},
    {"sl", kStandardAmount, 1e-3},
    {"sccs", kStandardFlow, 1e-6},
    {"SCCS", kStandardFlow, 1e-6},
    {"sccm", kStandardFlow, 1e-6 / 60.0},
    {"SCCM", kStandardFlow, 1e-6 / 60.0},
    {"slm", kStandardFlow, 1e-3 / 60.0},
    {"slpm", kStandardFlow, 1e-3 / 60.0},
    {"SLM", kStandardFlow, 1e-3 / 60.0},
    {"SLPM", kStandardFlow, 1e-3 / 60.0},

    {"K", kTemperature, 1.0},
    {"degC", kTemperature, 1.0, 273.15},
    {"degF", kTemperature, 5.0 / 9.0, 459.67},
    {"celsius", kTemperature, 1.0, 273.15},
    {"Celsius", kTemperature, 1.0, 273.15},
    {"kelvin", kTemperature, 1.0},
    {"C", kTemperature, 1.0, 273.15},
    {"F", kTemperature, 5.0 / 9.0, 459.67},

    {"1", kNoDimension, 1.0},
    {"%", kNoDimension, 1e-2},
    {"ppm", kNoDimension, 1e-6},
    {"ppb", kNoDimension, 1e-9},
};

} // namespace

std::optional<UnitPart> findUnitPart(std::string_view spelling)
{
    const auto* found = std::find_if(std::begin(kParts), std::end(kParts),
                                     [&](const UnitPart& part) { return part.spelling == spelling; });
    if (found == std::end(kParts))
        return std::nullopt;
    return *found;
}

} // namespace sealwalk::detail
