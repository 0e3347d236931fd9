// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/shown_unit.h"

#include "core/analysis/job_view.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/rate_text.h"

namespace sealwalk::report {

namespace {

struct Spoken
{
    LeakRateUnit unit;
    const char* words;
};

constexpr Spoken kSpoken[] = {
    {LeakRateUnit::MillibarLitrePerSecond, "millibar litre per second"},
    {LeakRateUnit::PascalCubicMetrePerSecond, "pascal cubic metre per second"},
    {LeakRateUnit::TorrLitrePerSecond, "torr litre per second"},
    {LeakRateUnit::AtmosphereCubicCentimetrePerSecond, "atmosphere cubic centimetre per second"},
    {LeakRateUnit::StandardCubicCentimetrePerSecond, "standard cubic centimetre per second"},
    {LeakRateUnit::StandardCubicCentimetrePerMinute, "standard cubic centimetre per minute"},
    {LeakRateUnit::StandardLitrePerMinute, "standard litre per minute"},
    {LeakRateUnit::Lusec, "lusec"},
    {LeakRateUnit::MolePerSecond, "mole per second"},
    {LeakRateUnit::MoleculePerSecond, "molecules per second"},
    {LeakRateUnit::GramPerYear, "gram per year"},
    {LeakRateUnit::KilogramPerSecond, "kilogram per second"},
};

} // namespace

std::string ShownUnit::print(LeakRate rate) const
{
    return printRate(number(rate));
}

std::string ShownUnit::printWithUnit(LeakRate rate) const
{
    return print(rate) + ' ' + symbol;
}

FlowBasis flowBasis(const model::Setup& setup)
{
    FlowBasis basis;
    basis.gas = setup.roomTemperature;
    basis.molarMass = flow::propertiesOf(flow::Gas::Helium).molarMass;
    return basis;
}

ShownUnit shownUnit(const model::Setup& setup, const std::string& unit)
{
    ShownUnit shown;
    shown.gas = ShownGas(setup);
    const Result<LeakRateUnit> known = leakRateUnit(unit.empty() ? setup.unit : unit);
    if (!known)
        return shown;
    FlowBasis basis = flowBasis(setup);
    if (shown.gas.isAir())
        basis.molarMass = flow::propertiesOf(flow::Gas::Air).molarMass;
    const Result<double> factor = numberIn(LeakRate::fromSi(1.0), *known, basis);
    if (!factor)
        return shown;
    shown.perSi = *factor;
    shown.symbol = unitOf(*known).symbol;
    for (const Spoken& row : kSpoken)
        if (row.unit == *known)
            shown.spoken = row.words;
    return shown;
}

std::optional<LeakRate> worstDetectable(const model::Job& job, const model::TestObject& object)
{
    std::optional<LeakRate> worst;
    constexpr double kUsualDwell = 8.0; // s, when none was recorded
    Duration dwell = seconds(kUsualDwell);
    for (const model::Reading& reading : job.readings)
        if (reading.dwell) {
            dwell = *reading.dwell;
            break;
        }
    for (const analysis::PlaceSensitivity& place : analysis::sensitivities(job, object, dwell))
        if (place.smallestDetectable && (!worst || *place.smallestDetectable > *worst))
            worst = place.smallestDetectable;
    return worst;
}

std::optional<LeakRate> worstDetectable(const model::Job& job, const model::TestObject& object,
                                        std::span<const analysis::PointFinding> answered)
{
    std::optional<LeakRate> worst = worstDetectable(job, object);
    for (const analysis::PointFinding& finding : answered)
        worst = std::max(worst, finding.smallestDetectable); // none is less than any
    return worst;
}

MapOptions mapOptions(const ShownUnit& unit)
{
    MapOptions options;
    options.shownPerSi = unit.perSi;
    options.unit = unit.symbol;
    options.spokenUnit = unit.spoken;
    options.gas = unit.gas;
    return options;
}

} // namespace sealwalk::report
