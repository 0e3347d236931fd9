// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/samples.h"

namespace sealwalk::tests {

using namespace model;

Timestamp moment(int minute)
{
    constexpr std::int64_t kSomeDay = 1772373600000; // 2026-03-01T14:00:00Z
    return {kSomeDay + minute * 60000LL, 60};
}

TestObject sampleObject()
{
    TestObject object;
    object.id = fixedId<ObjectId>(1);
    object.name = "Älteste Kammer 7";
    object.tag = "T-0042";
    object.place = "Hall 3";
    object.note = "invented";
    object.volume = litres(260.0);
    object.volumeUncertainty = 0.04;
    object.pointLimit = millibarLitresPerSecond(1e-8);
    object.totalLimit = millibarLitresPerSecond(5e-7);
    object.airSpeed = litresPerSecond(180.0);
    object.pumpBlankOff = millibars(2e-7);
    object.wantedPressure = millibars(1e-6);
    object.scale = {-11, 8};
    object.invented = true;
    object.created = moment(-60);
    return object;
}

Sketch sampleSketch(int points)
{
    Sketch sketch;
    Sheet sheet;
    sheet.id = fixedId<SheetId>(2);
    sheet.name = "Door";
    sheet.seenFrom = "the front";
    sketch.sheets.push_back(sheet);
    Joint seal;
    seal.id = fixedId<JointId>(3);
    seal.sheet = sheet.id;
    seal.name = "Door seal";
    seal.shape = geometry::RoundedRectangle{{600.0, 600.0}, 860.0, 1060.0, 110.0, 0.0};
    sketch.joints.push_back(seal);
    for (int n = 1; n <= points; ++n) {
        TestPoint point;
        point.id = fixedId<PointId>(1000 + n);
        point.number = n;
        point.joint = seal.id;
        point.along = (n - 1.0) / points;
        sketch.points.push_back(point);
    }
    sketch.lastNumber = points;
    return sketch;
}

Reading sampleReading(RoundId round, PointId point)
{
    Reading reading;
    reading.id = ReadingId::create();
    reading.round = round;
    reading.point = point;
    reading.at = moment(10);
    reading.background = millibarLitresPerSecond(3e-10);
    reading.peak = millibarLitresPerSecond(5.2e-9);
    reading.entered = "5,2e-9 mbar l/s";
    reading.dwell = seconds(6.0);
    reading.by = "Ada";
    return reading;
}

ReviewEntry reviewEntry(ReviewStep step)
{
    ReviewEntry entry;
    entry.id = ReviewId::create();
    entry.step = step;
    entry.by = "Brook";
    entry.at = moment(90);
    entry.text = "looked at";
    entry.digest = std::string(64, 'a');
    return entry;
}

Signature sampleSignature()
{
    Signature signature;
    signature.id = SignatureId::create();
    signature.person = fixedId<PersonId>(9);
    signature.name = "Brook";
    signature.role = "reviewer";
    signature.statement = "seen and agreed";
    signature.object = R"({"name":"Kammer"})";
    signature.at = moment(91);
    signature.digest = std::string(64, 'b');
    signature.publicKey = std::string(64, 'c');
    signature.value = std::string(128, 'd');
    return signature;
}

Picture samplePicture()
{
    Picture picture;
    picture.sha256 = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"; // FIPS 180-4: "abc"
    picture.extension = "png";
    picture.bytes = {'a', 'b', 'c'};
    return picture;
}

namespace {

Setup wholeSetup()
{
    Setup s;
    s.purpose = "yearly; \"quoted\"\nand on two lines";
    s.procedure = "P-7";
    s.lastTouched = "door hinge";
    s.excluded = "cooling water";
    s.pointLimit = millibarLitresPerSecond(1e-8);
    s.totalLimit = millibarLitresPerSecond(3e-7);
    s.kindLimits = {{JointKind::WeldSeam, millibarLitresPerSecond(1e-9)},
                    {JointKind::OringSeal, millibarLitresPerSecond(2e-8)}};
    s.limitAgreedBy = "Cleo";
    s.unit = "Pa m3/s";
    s.gasBasis = GasBasis::Air;
    s.detector = "detector 4";
    s.connection = "foreline tee";
    s.detectorUnit = "Torr l/s";
    s.rangeTop = millibarLitresPerSecond(1e-3);
    s.rangeBottom = millibarLitresPerSecond(1e-11);
    s.zeroOn = true;
    s.detectorSpeed = litresPerSecond(2.5);
    s.auxiliarySpeed = litresPerSecond(9.0);
    s.hoseDiameter = millimetres(25.0);
    s.hoseLength = metres(1.5);
    s.linePressure = pascals(0.5);
    s.volume = litres(259.0);
    s.heliumShare = fraction(0.9);
    s.heliumShareUncertainty = 0.15;
    s.heliumFlow = 1.5;
    s.heliumBottle = "B 12";
    s.leakPath = millimetres(8.0);
    s.response = seconds(2.25);
    s.noiseFactor = 2.0;
    s.roomTemperature = degreesCelsius(22.5);
    s.objectState = "cleaned";
    s.dried = true;
    s.noCheckAfterReason = "leak broke";
    s.instruments = {{"detector", "4", moment(1000)}, {"gauge", "G 1", std::nullopt}};
    s.cautions = {{"helium-asphyxiation", "Ada", moment(1)}};
    return s;
}

Sketch wholeSketch()
{
    Sketch sketch = sampleSketch(4);
    sketch.revision = 5;
    sketch.lastNumber = 9;
    sketch.sheets[0].width = 1300.5;
    sketch.sheets[0].height = 1400.25;
    sketch.sheets[0].upDirection = 0.1;
    sketch.sheets[0].underlay = Underlay{samplePicture().sha256, {1.5, -2.5}, 0.3, 0.25, 0.5};
    sketch.sheets[0].outlines = {{{{0.1, 0.2}, {3.0, 4.0}}, false, true},
                                 {{{5.0, 6.0}, {7.0, 8.0}, {9.0, 1.0 / 3.0}}, true, false}};
    Sheet plan;
    plan.id = fixedId<SheetId>(20);
    plan.name = "Floor";
    plan.seenFromAbove = true;
    sketch.sheets.push_back(plan);
    Joint& seal = sketch.joints[0];
    seal.clockwise = false;
    seal.start = 0.25;
    seal.locked = true;
    seal.group = "door";
    seal.material = "FKM 5 mm";
    seal.thickness = millimetres(5.0);
    const geometry::Shape shapes[] = {geometry::Ring{{100.0, 200.0}, 52.0},
                                      geometry::FreePath{{{0.0, 0.0}, {640.0, 1e-3}}, false, true},
                                      geometry::Spot{{7.0, 8.0}, 12.5}};
    int n = 30;
    for (const geometry::Shape& shape : shapes) {
        Joint joint;
        joint.id = fixedId<JointId>(n++);
        joint.sheet = plan.id;
        joint.kind = JointKind::Hose;
        joint.name = "Hose " + std::to_string(n);
        joint.shape = shape;
        joint.isSetup = true;
        joint.requiredConditions = {"flexed", "at rest"};
        sketch.joints.push_back(joint);
    }
    sketch.points[3].joint = sketch.joints[3].id;
    sketch.points[3].place = "ferrule";
    sketch.points[3].retired = true;
    return sketch;
}

Calibration wholeCalibration()
{
    Calibration c;
    c.id = fixedId<CalibrationId>(40);
    c.kind = CalibrationKind::DetectorCheck;
    c.moment = CalibrationMoment::After;
    c.at = moment(70);
    c.leak.serial = "L 8";
    c.leak.certificate = "C 77";
    c.leak.value = millibarLitresPerSecond(4.1e-8);
    c.leak.entered = "4,1e-8 mbar l/s";
    c.leak.certificateDate = moment(-500000);
    c.leak.dueDate = moment(500000);
    c.leak.certificateTemperature = degreesCelsius(20.0);
    c.leak.temperatureCoefficient = 0.035;
    c.leak.exponential = false;
    c.leak.lossPerYear = 0.03;
    c.leak.relativeUncertainty = 0.07;
    c.roomTemperature = degreesCelsius(21.0);
    c.shown = millibarLitresPerSecond(2.5e-8);
    c.background = millibarLitresPerSecond(1e-10);
    c.response = seconds(2.0);
    c.cleanUp = seconds(9.0);
    c.place = "far flange";
    c.joints = {fixedId<JointId>(30), fixedId<JointId>(3)};
    c.by = "Ada";
    c.note = "steady";
    return c;
}

std::vector<Reading> wholeReadings(RoundId round)
{
    Reading first = sampleReading(round, fixedId<PointId>(1001));
    first.id = fixedId<ReadingId>(50);
    first.sequence = 1;
    first.condition = Condition::Angle;
    first.conditionDetail = "140°";
    first.delay = seconds(1.5);
    first.cleanUp = seconds(11.0);
    first.gentle = first.confirmed = first.outOfTurn = true;
    first.remark = "steady";
    first.trace = "t-1";
    Reading second = first;
    second.id = fixedId<ReadingId>(51);
    second.sequence = 2;
    second.outcome = Outcome::NotAccessible;
    second.entry = Entry::Transcribed;
    second.reason = "behind frame";
    second.background.reset();
    second.peak.reset();
    second.corrects = first.id;
    return {first, second};
}

Repair wholeRepair()
{
    Repair r;
    r.id = fixedId<RepairId>(60);
    r.points = {fixedId<PointId>(1001)};
    r.disturbed = {fixedId<PointId>(1002), fixedId<PointId>(1003)};
    r.defect = "nick";
    r.action = "filler";
    r.material = "epoxy";
    r.permanent = false;
    r.owner = "Cleo";
    r.due = moment(90000);
    r.sprayableFrom = moment(2000);
    r.by = "Ada";
    r.at = moment(80);
    r.note = "small";
    r.pictures = {samplePicture().sha256};
    r.madeGoodBy = fixedId<RepairId>(61);
    r.makesGood = {fixedId<RepairId>(62), fixedId<RepairId>(63)};
    return r;
}

} // namespace

Job wholeJob()
{
    Job job;
    job.id = fixedId<JobId>(4);
    job.number = 118;
    job.openedAs = 17;
    job.object = sampleObject().id;
    job.opened = moment(0);
    job.state = JobState::Signed;
    job.setup = wholeSetup();
    job.sketch = wholeSketch();
    Round round;
    round.id = fixedId<RoundId>(5);
    round.number = 1;
    round.kind = RoundKind::AfterRepair;
    round.title = "door taped";
    round.points = {fixedId<PointId>(1002), fixedId<PointId>(1001)};
    round.repair = fixedId<RepairId>(60);
    round.by = "Ada";
    round.opened = moment(5);
    round.closed = moment(60);
    job.rounds = {round};
    job.readings = wholeReadings(round.id);
    job.voids = {{fixedId<ReadingId>(51), "detector in stand-by", "Ada", moment(20)}};
    job.calibrations = {wholeCalibration()};
    BackgroundWatch watch;
    watch.id = fixedId<BackgroundId>(41);
    watch.at = moment(2);
    watch.times = {0.0, 1.5, 2.75};
    watch.values = {millibarLitresPerSecond(3e-10), millibarLitresPerSecond(3.1e-10),
                    millibarLitresPerSecond(2.9e-10)};
    watch.source = "typed";
    watch.by = "Ada";
    job.backgrounds = {watch};
    RiseTest rise;
    rise.id = fixedId<RiseTestId>(42);
    rise.moment = TestMoment::Between;
    rise.at = moment(3);
    rise.times = {0.0, 60.0, 120.0};
    rise.pressures = {1e-3, 2e-3, 1.0 / 3.0};
    rise.temperatures = {295.0, 295.1, 295.2};
    rise.basePressure = pascals(4e-4);
    rise.gauge = "G 1";
    rise.source = "rise.csv";
    rise.by = "Ada";
    rise.note = "quiet";
    job.riseTests = {rise};
    job.repairs = {wholeRepair()};
    job.judgements = {{fixedId<JudgementId>(70), fixedId<PointId>(1001), round.id, "permeation", "within",
                       "rises slowly", "Brook", moment(85), {}}};
    job.concessions = {{fixedId<ConcessionId>(71),
                        {fixedId<PointId>(1001), fixedId<PointId>(1004)},
                        "Cleo",
                        moment(99999),
                        "until the next stop",
                        "Brook",
                        moment(86)}};
    ReviewEntry entry = reviewEntry(ReviewStep::Approved);
    entry.id = fixedId<ReviewId>(72);
    entry.point = fixedId<PointId>(1003);
    entry.check = "coverage";
    job.review = {entry};
    job.signatures = {sampleSignature()};
    job.signatures[0].id = fixedId<SignatureId>(73);
    return job;
}

Job wholeJobWithParties()
{
    Job job = wholeJob();
    job.setup.customer = "Fennick Optics";
    job.setup.witness = "Jo Marsh, for the owner";
    return job;
}

Job wholeJobWithSaid()
{
    Job job = wholeJobWithParties();
    job.readings[0].shielded = {fixedId<PointId>(1003), fixedId<PointId>(1004)};
    job.judgements[0].of = {fixedId<PointId>(1004)};
    BackgroundWatch watch;
    watch.id = fixedId<BackgroundId>(43);
    watch.at = moment(4);
    watch.times = {0.0};
    watch.values = {millibarLitresPerSecond(3e-10)};
    watch.swing = millibarLitresPerSecond(1e-11);
    watch.source = "typed";
    watch.by = "Ada";
    job.backgrounds.push_back(watch);
    return job;
}

Job wholeJobWithVoidMeasurement()
{
    Job job = wholeJobWithSaid();
    job.voidMeasurements = {
        {MeasurementId(job.riseTests.front().id.uuid()), "the valve was not shut", "Ada", moment(80)}};
    return job;
}

Person samplePerson()
{
    Person person;
    person.id = fixedId<PersonId>(90);
    person.name = "Brook";
    person.role = "reviewer";
    person.qualification = "level 2";
    person.since = moment(1);
    return person;
}

} // namespace sealwalk::tests
