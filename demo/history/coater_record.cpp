// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/coater_record.h"

#include "core/base/contract.h"
#include "demo/history/spray_walk.h"

#include <charconv>
#include <cmath>

namespace sealwalk::demo {

using namespace model;

Timestamp on(const char* text)
{
    const auto at = Timestamp::parse(text);
    SEALWALK_EXPECT(at.has_value());
    return *at;
}

Timestamp later(const Timestamp& at, double seconds)
{
    Timestamp result = at;
    result.utcMilliseconds += std::llround(seconds * 1000.0);
    return result;
}

Setup coaterSetup(const TestObject& object)
{
    Setup setup;
    setup.customer = "the coating workshop (invented)";
    setup.procedure = "spraying, chamber evacuated (ISO 20485, technique A.3)";
    setup.excluded = "water jacket, not drained";
    setup.pointLimit = object.pointLimit;
    setup.totalLimit = object.totalLimit;
    setup.limitAgreedBy = "the workshop (invented)";
    setup.detector = "LD-04";
    setup.connection = "foreline, pump in parallel";
    setup.rangeTop = millibarLitresPerSecond(1e-2);
    setup.rangeBottom = millibarLitresPerSecond(1e-11);
    setup.detectorSpeed = litresPerSecond(130.0);
    setup.auxiliarySpeed = litresPerSecond(80.0);
    setup.hoseDiameter = millimetres(25.0);
    setup.hoseLength = metres(1.2);
    setup.linePressure = pascals(0.5);
    setup.heliumShare = fraction(1.0);
    setup.heliumFlow = 0.03;
    setup.heliumBottle = "142 bar left";
    setup.roomTemperature = degreesCelsius(21.4);
    setup.objectState = "dry, at room temperature, valves as in BC2-131";
    setup.dried = true;
    return setup;
}

ReferenceLeak referenceLeak(const char* certificate, const char* date, double rate)
{
    ReferenceLeak leak;
    leak.serial = "RL-11";
    leak.certificate = certificate;
    leak.value = millibarLitresPerSecond(rate);
    leak.entered = typed(rate);
    const auto day = Timestamp::parseDate(date);
    SEALWALK_EXPECT(day.has_value());
    leak.certificateDate = *day;
    constexpr double kYear = 365.0 * 86400.0;
    leak.dueDate = later(*day, kYear);
    leak.certificateTemperature = degreesCelsius(23.0);
    return leak;
}

namespace {

/// Aged and brought to the room's temperature, mbar·l/s.
double rateToday(const ReferenceLeak& leak, const Timestamp& at, Temperature room)
{
    constexpr double kYear = 365.25 * 86400.0;
    const double years = at.secondsSince(leak.certificateDate) / kYear;
    const double degrees = (room - leak.certificateTemperature).si();
    return inMillibarLitresPerSecond(leak.value) * std::exp(leak.temperatureCoefficient * degrees) *
           std::pow(1.0 - leak.lossPerYear, years);
}

/// Rounded to three digits, as a display shows it.
LeakRate onDisplay(double rate)
{
    const double digits = std::pow(10.0, std::floor(std::log10(rate)) - 2.0);
    return millibarLitresPerSecond(std::round(rate / digits) * digits);
}

} // namespace

Calibration systemCheck(const Sketch& sketch, const ReferenceLeak& leak, CalibrationMoment moment,
                        const Timestamp& at, Detector& detector, Chance& chance)
{
    Calibration check;
    check.id = chance.id<CalibrationId>();
    check.kind = CalibrationKind::SystemCheck;
    check.moment = moment;
    check.at = at;
    check.leak = leak;
    check.roomTemperature = degreesCelsius(21.4);
    check.background = onDisplay(detector.readOff(detector.level()));
    constexpr double kLongEnough = 60.0; // s
    detector.advance(kLongEnough, rateToday(leak, at, check.roomTemperature));
    check.shown = onDisplay(detector.readOff(detector.level()));
    check.response = seconds(detector.day().response);
    constexpr double kShut = 120.0; // s
    detector.advance(kShut, 0.0);
    check.cleanUp = seconds(14.0);
    check.place = "port D, farthest from the detector";
    check.by = kTester;
    SEALWALK_EXPECT(!sketch.joints.empty());
    return check;
}

BackgroundWatch watch(const Timestamp& at, Detector& detector, Chance& chance)
{
    BackgroundWatch result;
    result.id = chance.id<BackgroundId>();
    result.at = at;
    result.source = "detector feed";
    result.by = kTester;
    constexpr double kLength = 90.0;
    constexpr double kStep = 0.5;
    for (int i = 0; i * kStep <= kLength; ++i) {
        result.times.push_back(i * kStep);
        result.values.push_back(millibarLitresPerSecond(detector.value()));
        detector.advance(kStep, 0.0);
    }
    return result;
}

RiseTest riseTest(const TestObject& object, const Rise& rise, TestMoment moment, const Timestamp& at,
                  Chance& chance)
{
    RiseTest test;
    test.id = chance.id<RiseTestId>();
    test.moment = moment;
    test.at = at;
    test.gauge = "G-3, capacitance";
    test.source = "typed from the chamber's log";
    test.by = kTester;
    const double volume = inLitres(*object.volume);
    // The walls give off gas also while the pumps run.
    constexpr double kWalls = 3.1e-4; // mbar·l/s
    const double base =
        (rise.air + kWalls) / inLitresPerSecond(*object.airSpeed) + inMillibars(*object.pumpBlankOff);
    test.basePressure = millibars(base);
    constexpr int kReadings = 180;
    constexpr double kStep = 10.0;  // s
    constexpr double kNoise = 4e-6; // mbar
    for (int i = 0; i <= kReadings; ++i) {
        const double t = i * kStep;
        const double p = base + rise.air / volume * t + rise.outgassing * (1.0 - std::exp(-t / rise.settles));
        test.times.push_back(t);
        test.pressures.push_back(millibars(std::max(p + kNoise * chance.normal(), 1e-7)).si());
    }
    return test;
}

} // namespace sealwalk::demo
