// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/jobs.h"

#include "core/base/contract.h"

#include <algorithm>

namespace sealwalk::tests {

namespace {

constexpr std::int64_t kFirstMoment = 1'780'000'000'000; // any fixed moment
constexpr std::int64_t kBetweenReadings = 20'000;

} // namespace

model::SheetId addSheet(model::Sketch& sketch, const std::string& name)
{
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sheet.name = name;
    sheet.seenFrom = "the front";
    sketch.sheets.push_back(sheet);
    return sheet.id;
}

model::JointId addJoint(model::Sketch& sketch, model::SheetId sheet, model::JointKind kind,
                        const std::string& name, const geometry::Shape& shape, int points)
{
    model::Joint joint;
    joint.id = model::JointId::create();
    joint.sheet = sheet;
    joint.kind = kind;
    joint.name = name;
    joint.shape = shape;
    sketch.joints.push_back(joint);
    const geometry::Path path = geometry::outline(shape);
    for (int i = 0; i < points; ++i) {
        model::TestPoint point;
        point.id = model::PointId::create();
        point.number = ++sketch.lastNumber;
        point.joint = joint.id;
        point.along = path.isClosed() ? static_cast<double>(i) / points : (i + 0.5) / points;
        sketch.points.push_back(point);
    }
    return joint.id;
}

model::Job ringJob(int points)
{
    model::Job job;
    job.id = model::JobId::create();
    job.number = 1;
    job.object = model::ObjectId::create();
    job.opened = Timestamp{kFirstMoment, 60};
    job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    addJoint(job.sketch, addSheet(job.sketch), model::JointKind::OringSeal, "Port",
             geometry::Ring{{0, 0}, 100.0}, points);
    model::Round round;
    round.id = model::RoundId::create();
    round.opened = job.opened;
    for (const model::TestPoint& point : job.sketch.points)
        round.points.push_back(point.id);
    job.rounds.push_back(round);
    return job;
}

model::PointId pointNumbered(const model::Job& job, int number)
{
    const model::TestPoint* point = job.sketch.pointNumbered(number);
    SEALWALK_EXPECT(point != nullptr);
    return point->id;
}

model::ReadingId addValue(model::Job& job, int point, double peak, double background,
                          model::Condition condition)
{
    model::Reading reading;
    reading.id = model::ReadingId::create();
    reading.sequence = static_cast<std::int64_t>(job.readings.size()) + 1;
    reading.round = job.rounds.front().id;
    reading.point = pointNumbered(job, point);
    reading.at = Timestamp{kFirstMoment + reading.sequence * kBetweenReadings, 60};
    reading.condition = condition;
    reading.peak = millibarLitresPerSecond(peak);
    reading.background = millibarLitresPerSecond(background);
    reading.dwell = seconds(6.0);
    reading.by = "T. Tester";
    job.readings.push_back(reading);
    return reading.id;
}

model::Calibration systemCheck(const Timestamp& at, double factor)
{
    model::Calibration check;
    check.id = model::CalibrationId::create();
    check.at = at;
    check.leak.serial = "RL-1";
    check.leak.value = millibarLitresPerSecond(1e-7 * factor);
    check.leak.certificateDate = at;
    check.leak.certificateTemperature = check.roomTemperature;
    check.background = millibarLitresPerSecond(1e-10);
    check.shown = millibarLitresPerSecond(1.001e-7);
    check.response = seconds(2.0);
    check.place = "far flange";
    check.by = "T. Tester";
    return check;
}

model::BackgroundWatch quietWatch(const Timestamp& at)
{
    constexpr int kReadings = 40;
    constexpr double kSpacing = 2.0;
    model::BackgroundWatch watch;
    watch.id = model::BackgroundId::create();
    watch.at = at;
    watch.source = "typed";
    watch.by = "T. Tester";
    for (int i = 0; i < kReadings; ++i) {
        watch.times.push_back(kSpacing * i);
        watch.values.push_back(millibarLitresPerSecond(1e-10 + (i % 2 == 0 ? 2e-11 : -2e-11)));
    }
    return watch;
}

void calibrate(model::Job& job, double factor)
{
    Timestamp first = job.opened;
    for (const model::Reading& reading : job.readings)
        first = std::min(first, reading.at);
    const Timestamp before{first.utcMilliseconds - 600'000, first.offsetMinutes};
    job.calibrations.push_back(systemCheck(before, factor));
    job.backgrounds.push_back(quietWatch(before));
}

} // namespace sealwalk::tests
