// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_job.h"

#include <cmath>
#include <random>
#include <set>
#include <string>

namespace sealwalk::tests {

namespace {

class Maker
{
public:
    explicit Maker(std::uint64_t seed)
        : m_random(seed)
    {}

    std::size_t below(std::size_t n)
    {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(m_random);
    }
    std::size_t between(std::size_t low, std::size_t high) { return low + below(high - low + 1); }
    bool flip() { return below(2) == 0; }
    double real(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }
    double rate() { return std::pow(10.0, real(-14.0, -2.0)); }

    std::string text()
    {
        static const std::vector<std::string> kPieces{"seal", " ",  "ä",  "µ",  "·",    "€", "😀",
                                                      "\"",   "\\", "\n", "\t", "\x01", "/", "12",
                                                      "'",    ",",  ";",  "=",  "<b>"};
        std::string result;
        for (std::size_t i = below(8); i > 0; --i)
            result += kPieces[below(kPieces.size())];
        return result;
    }

    std::string hex(std::size_t digits)
    {
        std::string result;
        for (std::size_t i = 0; i < digits; ++i)
            result.push_back("0123456789abcdef"[below(16)]);
        return result;
    }

    Timestamp time()
    {
        constexpr std::int64_t kYear2100 = 4'102'444'800'000;
        return {std::uniform_int_distribution<std::int64_t>(1, kYear2100)(m_random),
                static_cast<int>(below(2161)) - 1080};
    }

    template <class Tag>
    Id<Tag> id()
    {
        Uuid::Bytes bytes{};
        for (auto& byte : bytes)
            byte = static_cast<std::uint8_t>(below(256));
        return Id<Tag>(Uuid(bytes));
    }

    template <class E>
    E word()
    {
        const auto& table = model::EnumNames<E>::table;
        return table[below(table.size())].first;
    }

    template <class T>
    const T& oneOf(const std::vector<T>& items)
    {
        return items[below(items.size())];
    }

    /// Filled half of the time.
    template <class Make>
    auto maybe(Make make) -> std::optional<decltype(make())>
    {
        if (flip())
            return std::nullopt;
        return make();
    }
    std::optional<LeakRate> maybeRate()
    {
        return maybe([this] { return LeakRate::fromSi(rate()); });
    }
    std::optional<Duration> maybeTime()
    {
        return maybe([this] { return seconds(real(0.0, 100.0)); });
    }
    std::optional<Timestamp> maybeMoment()
    {
        return maybe([this] { return time(); });
    }
    template <class Q>
    std::optional<Q> maybeSi()
    {
        return maybe([this] { return Q::fromSi(real(0.0, 10.0)); });
    }

private:
    std::mt19937_64 m_random;
};

geometry::Point place(Maker& m)
{
    return {m.real(-500.0, 500.0), m.real(-500.0, 500.0)};
}

geometry::FreePath freePath(Maker& m)
{
    geometry::FreePath path;
    path.closed = m.flip();
    path.smooth = m.flip();
    for (std::size_t i = m.between(3, 6); i > 0; --i)
        path.nodes.push_back(place(m));
    return path;
}

geometry::Shape shape(Maker& m)
{
    switch (m.below(4)) {
    case 0:
        return geometry::Ring{place(m), m.real(1.0, 400.0)};
    case 1:
        return geometry::RoundedRectangle{place(m), m.real(50.0, 400.0), m.real(50.0, 400.0),
                                          m.real(0.0, 25.0), m.real(-3.0, 3.0)};
    case 2:
        return freePath(m);
    default:
        return geometry::Spot{place(m), m.real(1.0, 20.0)};
    }
}

void makeObject(Maker& m, model::TestObject& object)
{
    object.id = m.id<model::ObjectIdTag>();
    object.name = "Box " + m.text();
    object.tag = m.text();
    object.place = m.text();
    object.note = m.text();
    object.volume = m.maybeSi<Volume>();
    object.volumeUncertainty = m.real(0.0, 0.5);
    object.pointLimit = m.maybeRate();
    object.totalLimit = m.maybeRate();
    object.airSpeed = m.maybeSi<PumpingSpeed>();
    object.pumpBlankOff = m.maybeSi<Pressure>();
    object.wantedPressure = m.maybeSi<Pressure>();
    object.scale = {static_cast<int>(m.below(12)) - 12, static_cast<int>(m.between(3, 9))};
    object.invented = m.flip();
    object.created = m.time();
}

void makeSetup(Maker& m, model::Setup& setup)
{
    setup.purpose = m.text();
    setup.procedure = m.text();
    setup.lastTouched = m.text();
    setup.excluded = m.text();
    setup.pointLimit = m.maybeRate();
    setup.totalLimit = m.maybeRate();
    for (std::size_t i = m.below(4); i > 0; --i)
        setup.kindLimits[m.word<model::JointKind>()] = LeakRate::fromSi(m.rate());
    setup.limitAgreedBy = m.text();
    setup.unit = "Pa m3/s";
    setup.gasBasis = m.word<model::GasBasis>();
    setup.detector = m.text();
    setup.customer = m.text();
    setup.witness = m.text();
    setup.connection = m.text();
    setup.detectorUnit = "mbar l/s";
    setup.rangeTop = m.maybeRate();
    setup.rangeBottom = m.maybeRate();
    setup.zeroOn = m.flip();
    setup.detectorSpeed = m.maybeSi<PumpingSpeed>();
    setup.auxiliarySpeed = m.maybeSi<PumpingSpeed>();
    setup.hoseDiameter = m.maybeSi<Length>();
    setup.hoseLength = m.maybeSi<Length>();
    setup.linePressure = m.maybeSi<Pressure>();
    setup.volume = m.maybeSi<Volume>();
    setup.heliumShare = fraction(m.real(0.01, 1.0));
    setup.heliumShareUncertainty = m.real(0.0, 0.5);
    setup.heliumFlow = m.maybe([&m] { return m.real(0.0, 10.0); });
    setup.heliumBottle = m.text();
    setup.leakPath = millimetres(m.real(0.1, 20.0));
    setup.response = m.maybeTime();
    setup.noiseFactor = m.real(1.0, 5.0);
    setup.roomTemperature = Temperature::fromSi(m.real(270.0, 320.0));
    setup.objectState = m.text();
    setup.dried = m.flip();
    setup.noCheckAfterReason = m.text();
    for (std::size_t i = m.below(3); i > 0; --i)
        setup.instruments.push_back({m.text(), m.text(), m.maybeMoment()});
    for (std::size_t i = m.below(3); i > 0; --i)
        setup.cautions.push_back({m.text(), m.text(), m.time()});
}

void makeSketch(Maker& m, model::Sketch& sketch, std::vector<std::string>& pictures)
{
    sketch.revision = static_cast<int>(m.between(1, 50));
    for (std::size_t i = m.between(1, 3); i > 0; --i) {
        model::Sheet sheet;
        sheet.id = m.id<model::SheetIdTag>();
        sheet.name = m.text();
        sheet.seenFrom = m.text();
        sheet.width = m.real(100.0, 3000.0);
        sheet.height = m.real(100.0, 3000.0);
        sheet.upDirection = m.real(-3.0, 3.0);
        sheet.seenFromAbove = m.flip();
        if (m.flip()) {
            pictures.push_back(m.hex(64));
            sheet.underlay = model::Underlay{pictures.back(), place(m), m.real(0.01, 5.0), m.real(-3.0, 3.0),
                                             m.real(0.0, 1.0)};
        }
        for (std::size_t k = m.below(3); k > 0; --k)
            sheet.outlines.push_back(freePath(m));
        sketch.sheets.push_back(sheet);
    }
    for (std::size_t i = m.between(1, 6); i > 0; --i) {
        model::Joint joint;
        joint.id = m.id<model::JointIdTag>();
        joint.sheet = m.oneOf(sketch.sheets).id;
        joint.kind = m.word<model::JointKind>();
        joint.name = m.text();
        joint.shape = shape(m);
        joint.clockwise = m.flip();
        joint.start = m.real(0.0, 1.0);
        joint.isSetup = m.flip();
        joint.locked = m.flip();
        joint.group = m.text();
        joint.material = m.text();
        joint.thickness = m.maybeSi<Length>();
        for (std::size_t k = m.below(3); k > 0; --k)
            joint.requiredConditions.emplace_back(model::name(m.word<model::Condition>()));
        sketch.joints.push_back(joint);
        for (std::size_t k = m.between(1, 5); k > 0; --k) {
            model::TestPoint point;
            point.id = m.id<model::PointIdTag>();
            sketch.lastNumber += static_cast<int>(m.between(1, 2));
            point.number = sketch.lastNumber;
            point.joint = joint.id;
            point.along = m.real(0.0, 1.0);
            point.place = m.text();
            point.retired = m.flip();
            sketch.points.push_back(point);
        }
    }
}

std::vector<model::PointId> somePoints(Maker& m, const model::Sketch& sketch, std::size_t atLeast)
{
    // A set, because nothing that lists points lists one twice.
    std::set<model::PointId> points;
    for (std::size_t i = atLeast + m.below(4); i > 0; --i)
        points.insert(m.oneOf(sketch.points).id);
    return {points.begin(), points.end()};
}

void makeMeasurements(Maker& m, model::Job& job)
{
    for (std::size_t i = m.below(4); i > 0; --i) {
        model::Calibration c;
        c.id = m.id<model::CalibrationIdTag>();
        c.kind = m.word<model::CalibrationKind>();
        c.moment = m.word<model::CalibrationMoment>();
        c.at = m.time();
        c.leak = {m.text(),
                  m.text(),
                  LeakRate::fromSi(m.rate()),
                  m.text(),
                  m.time(),
                  m.maybeMoment(),
                  Temperature::fromSi(m.real(280.0, 310.0)),
                  m.real(0.0, 0.1),
                  m.flip(),
                  m.real(0.0, 0.1),
                  m.real(0.0, 0.2)};
        c.roomTemperature = Temperature::fromSi(m.real(280.0, 310.0));
        c.shown = LeakRate::fromSi(m.rate());
        c.background = LeakRate::fromSi(m.rate());
        c.response = m.maybeTime();
        c.cleanUp = m.maybeTime();
        c.place = m.text();
        if (m.flip())
            c.joints.push_back(m.oneOf(job.sketch.joints).id);
        c.by = m.text();
        c.note = m.text();
        job.calibrations.push_back(c);
    }
    for (std::size_t i = m.below(3); i > 0; --i) {
        model::BackgroundWatch watch;
        watch.id = m.id<model::BackgroundIdTag>();
        watch.at = m.time();
        watch.source = m.text();
        watch.by = m.text();
        for (std::size_t k = m.below(6); k > 0; --k) {
            watch.times.push_back((watch.times.empty() ? 0.0 : watch.times.back()) + m.real(0.1, 2.0));
            watch.values.push_back(LeakRate::fromSi(m.rate()));
        }
        job.backgrounds.push_back(watch);
    }
    for (std::size_t i = m.below(3); i > 0; --i) {
        model::RiseTest test;
        test.id = m.id<model::RiseTestIdTag>();
        test.moment = m.word<model::TestMoment>();
        test.at = m.time();
        const bool warm = m.flip();
        for (std::size_t k = m.below(6); k > 0; --k) {
            test.times.push_back((test.times.empty() ? 0.0 : test.times.back()) + m.real(0.1, 2.0));
            test.pressures.push_back(m.real(0.0, 10.0));
            if (warm)
                test.temperatures.push_back(m.real(280.0, 310.0));
        }
        test.basePressure = m.maybeSi<Pressure>();
        test.gauge = m.text();
        test.source = m.text();
        test.by = m.text();
        test.note = m.text();
        job.riseTests.push_back(test);
    }
}

void makeRepairs(Maker& m, model::Job& job, std::vector<std::string>& pictures)
{
    for (std::size_t i = m.below(4); i > 0; --i) {
        model::Repair repair;
        repair.id = m.id<model::RepairIdTag>();
        repair.points = somePoints(m, job.sketch, 1);
        repair.disturbed = somePoints(m, job.sketch, 0);
        repair.defect = m.text();
        repair.action = m.text();
        repair.material = m.text();
        repair.permanent = m.flip();
        repair.owner = m.text();
        repair.due = m.maybeMoment();
        repair.sprayableFrom = m.maybeMoment();
        repair.by = m.text();
        repair.at = m.time();
        repair.note = m.text();
        if (m.flip()) {
            pictures.push_back(m.hex(64));
            repair.pictures.push_back(pictures.back());
        }
        if (!job.repairs.empty() && m.flip())
            repair.madeGoodBy = job.repairs.front().id;
        for (std::size_t k = m.below(3); k > 0; --k)
            repair.makesGood.push_back(m.id<model::RepairIdTag>());
        job.repairs.push_back(repair);
    }
}

void makeReadings(Maker& m, model::Job& job)
{
    for (std::size_t i = m.between(1, 3); i > 0; --i) {
        model::Round round;
        round.id = m.id<model::RoundIdTag>();
        round.number = static_cast<int>(job.rounds.size()) + 1;
        round.kind = m.word<model::RoundKind>();
        round.title = m.text();
        round.points = somePoints(m, job.sketch, 1);
        if (!job.repairs.empty() && m.flip())
            round.repair = m.oneOf(job.repairs).id;
        round.by = m.text();
        round.opened = m.time();
        round.closed = m.maybeMoment();
        job.rounds.push_back(round);
    }
    for (std::size_t i = m.below(30); i > 0; --i) {
        model::Reading r;
        r.id = m.id<model::ReadingIdTag>();
        r.sequence = static_cast<std::int64_t>(job.readings.size()) + 1;
        r.round = m.oneOf(job.rounds).id;
        r.point = m.oneOf(job.sketch.points).id;
        r.at = m.time();
        r.outcome = m.word<model::Outcome>();
        r.condition = m.word<model::Condition>();
        r.conditionDetail = m.text();
        r.background = m.maybeRate();
        r.peak = m.maybeRate();
        r.entered = m.text();
        r.dwell = m.maybeTime();
        r.delay = m.maybeTime();
        r.cleanUp = m.maybeTime();
        r.gentle = m.flip();
        r.confirmed = m.flip();
        r.outOfTurn = m.flip();
        r.entry = m.word<model::Entry>();
        r.by = m.text();
        r.reason = m.text();
        r.remark = m.text();
        r.trace = m.text();
        job.readings.push_back(r);
    }
    // Each reading is corrected or void at most once.
    std::set<model::ReadingId> fallen;
    for (std::size_t i = 1; i < job.readings.size(); ++i) {
        const model::ReadingId earlier = job.readings[m.below(i)].id;
        if (m.below(4) != 0 || !fallen.insert(earlier).second)
            continue;
        if (m.flip())
            job.readings[i].corrects = earlier;
        else
            job.voids.push_back({earlier, m.text(), m.text(), m.time()});
    }
}

void makeDecisions(Maker& m, model::Job& job)
{
    for (std::size_t i = m.below(4); i > 0; --i)
        job.judgements.push_back({m.id<model::JudgementIdTag>(),
                                  m.oneOf(job.sketch.points).id,
                                  m.oneOf(job.rounds).id,
                                  m.text(),
                                  m.text(),
                                  "because " + m.text(),
                                  m.text(),
                                  m.time(),
                                  {}});
    for (std::size_t i = m.below(3); i > 0; --i)
        job.concessions.push_back({m.id<model::ConcessionIdTag>(), somePoints(m, job.sketch, 1), m.text(),
                                   m.maybeMoment(), m.text(), m.text(), m.time()});
    for (std::size_t i = m.below(5); i > 0; --i) {
        model::ReviewEntry entry;
        entry.id = m.id<model::ReviewIdTag>();
        do
            entry.step = m.word<model::ReviewStep>();
        while (entry.step == model::ReviewStep::Approved || entry.step == model::ReviewStep::Amendment);
        entry.by = m.text();
        entry.at = m.time();
        entry.text = m.text();
        entry.point = m.maybe([&] { return m.oneOf(job.sketch.points).id; });
        entry.check = m.text();
        entry.digest = m.hex(64);
        if (entry.step == model::ReviewStep::Submitted)
            job.state = model::JobState::Submitted;
        if (entry.step == model::ReviewStep::Returned)
            job.state = model::JobState::Returned;
        job.review.push_back(entry);
    }
}

/// What only the latest format has a place for. Last, so that the rest is as it was without it.
void makeSaid(Maker& m, model::Job& job)
{
    for (model::Reading& reading : job.readings)
        if (const model::PointId other = m.oneOf(job.sketch.points).id; m.flip() && other != reading.point)
            reading.shielded = {other};
    for (model::Judgement& judgement : job.judgements)
        if (m.flip())
            judgement.of = somePoints(m, job.sketch, 1);
    for (model::BackgroundWatch& watch : job.backgrounds)
        if (watch.values.size() == 1)
            watch.swing = LeakRate::fromSi(m.rate());
}

/// Last of all: what is made before stays as it is for every seed.
void makeVoidMeasurements(Maker& m, model::Job& job)
{
    const auto some = [&](const auto& measurements) {
        for (const auto& each : measurements)
            if (m.below(4) == 0)
                job.voidMeasurements.push_back(
                    {model::MeasurementId(each.id.uuid()), m.text(), m.text(), m.time()});
    };
    some(job.calibrations);
    some(job.backgrounds);
    some(job.riseTests);
}

} // namespace

RandomJob randomJob(std::uint64_t seed)
{
    Maker m(seed);
    RandomJob result;
    std::vector<std::string> pictures;
    makeObject(m, result.object);
    model::Job& job = result.job;
    job.id = m.id<model::JobIdTag>();
    job.number = static_cast<int>(m.between(1, 5000));
    job.object = result.object.id;
    job.opened = m.time();
    makeSetup(m, job.setup);
    makeSketch(m, job.sketch, pictures);
    makeMeasurements(m, job);
    makeRepairs(m, job, pictures);
    makeReadings(m, job);
    makeDecisions(m, job);
    makeSaid(m, job);
    makeVoidMeasurements(m, job);
    for (const std::string& name : pictures)
        result.pictures.push_back({name, "png", {1, 2, 3}});
    return result;
}

} // namespace sealwalk::tests
