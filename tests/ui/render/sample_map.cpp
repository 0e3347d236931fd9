// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/sample_map.h"

#include <cmath>

namespace sealwalk::test {

namespace {

using analysis::Finding;
using analysis::PointFinding;
using analysis::Verdict;

class Sketcher
{
public:
    explicit Sketcher(SampleJob& sample)
        : m_sample(sample)
    {}

    void sheet(const std::string& name, const std::string& seenFrom)
    {
        model::Sheet made;
        made.id = model::SheetId::create();
        made.name = name;
        made.seenFrom = seenFrom;
        m_sample.job.sketch.sheets.push_back(made);
    }

    void outline(std::vector<geometry::Point> nodes)
    {
        m_sample.job.sketch.sheets.back().outlines.push_back({std::move(nodes), true, false});
    }

    void joint(const std::string& name, model::JointKind kind, const geometry::Shape& shape, int points)
    {
        model::Joint made;
        made.id = model::JointId::create();
        made.sheet = m_sample.job.sketch.sheets.back().id;
        made.kind = kind;
        made.name = name;
        made.shape = shape;
        m_sample.job.sketch.joints.push_back(made);
        const bool closed = geometry::outline(shape).isClosed();
        for (int i = 0; i < points; ++i) {
            const double along = closed ? static_cast<double>(i) / points : (i + 0.5) / points;
            model::TestPoint point;
            point.id = model::PointId::create();
            point.number = ++m_sample.job.sketch.lastNumber;
            point.joint = made.id;
            point.along = along;
            m_sample.job.sketch.points.push_back(point);
        }
    }

private:
    SampleJob& m_sample;
};

PointFinding& find(SampleJob& sample, int number, Finding finding, Verdict verdict, double rate = 0.0)
{
    for (PointFinding& f : sample.findings)
        if (f.number == number) {
            f.finding = finding;
            f.verdict = verdict;
            if (rate > 0.0) {
                f.asRead = millibarLitresPerSecond(rate);
                f.rate = millibarLitresPerSecond(rate);
                f.low = millibarLitresPerSecond(rate * 0.76);
                f.high = millibarLitresPerSecond(rate * 1.31);
            }
            return f;
        }
    return sample.findings.front();
}

void clearAll(SampleJob& sample)
{
    for (const model::TestPoint& point : sample.job.sketch.points) {
        PointFinding finding;
        finding.point = point.id;
        finding.number = point.number;
        finding.finding = Finding::Clear;
        finding.verdict = Verdict::Within;
        finding.bound = millibarLitresPerSecond(2.4e-9);
        sample.findings.push_back(finding);
    }
}

} // namespace

std::shared_ptr<const report::MapContent> SampleJob::map(std::size_t sheet, report::MapOptions options) const
{
    options.smallestDetectable = millibarLitresPerSecond(2.4e-9);
    return std::make_shared<const report::MapContent>(
        report::mapOf(job, object, job.sketch.sheets[sheet].id, findings, options));
}

SampleJob sampleJob()
{
    using geometry::FreePath;
    using geometry::Point;
    using geometry::Ring;
    using geometry::RoundedRectangle;
    using geometry::Spot;
    SampleJob sample;
    sample.object.id = model::ObjectId::create();
    sample.object.name = "Box coater (invented)";
    sample.object.invented = true;
    sample.job.id = model::JobId::create();
    sample.job.number = 164;
    sample.job.object = sample.object.id;
    sample.job.setup.pointLimit = millibarLitresPerSecond(1e-6);

    Sketcher draw(sample);
    draw.sheet("Door", "the front");
    draw.outline({{0, 0}, {1280, 0}, {1280, 1280}, {0, 1280}});
    draw.outline({{0, 860}, {150, 860}, {150, 970}, {0, 970}});
    draw.joint("Door seal", model::JointKind::OringSeal, RoundedRectangle{{640, 640}, 860, 1060, 110, 0}, 24);
    draw.joint("Door viewport", model::JointKind::Viewport, Ring{{640, 855}, 105}, 4);
    draw.joint("Gland, frame", model::JointKind::ThreadedFitting, Spot{{75, 700}, 26}, 1);
    draw.sheet("Rear wall", "outside");
    draw.outline({{0, 0}, {1300, 0}, {1300, 900}, {0, 900}});
    draw.joint("Port A", model::JointKind::ClampedFlange, Ring{{310, 560}, 165}, 8);
    draw.joint("Port B", model::JointKind::ClampedFlange, Ring{{720, 600}, 110}, 4);
    draw.joint("Gauge fitting", model::JointKind::ThreadedFitting, Spot{{1000, 700}, 24}, 1);
    draw.joint("Vent fitting", model::JointKind::Valve, Spot{{1150, 520}, 24}, 1);
    draw.joint("Floor weld", model::JointKind::WeldSeam, FreePath{{{60, 180}, {1240, 180}}, false, false}, 5);
    draw.joint("Foreline hose", model::JointKind::Hose,
               FreePath{{{60, 60}, {400, 90}, {700, 40}, {1100, 80}}, false, true}, 3);

    clearAll(sample);
    const auto value = [&](int number, double rate) {
        find(sample, number, Finding::Leak, Verdict::Within, rate);
    };
    for (const auto& row : {std::pair{2, 4.6e-9},
                            {5, 8.1e-9},
                            {6, 6e-9},
                            {9, 3.9e-9},
                            {12, 5.2e-9},
                            {13, 7.4e-9},
                            {21, 1.2e-8},
                            {22, 9.4e-9},
                            {30, 1.6e-8},
                            {31, 3.3e-8}})
        value(row.first, row.second);
    find(sample, 17, Finding::Leak, Verdict::Over, 4.6e-4);
    for (const auto& row : {std::pair{16, 3.1e-5}, {15, 2.2e-6}, {18, 2.4e-6}})
        find(sample, row.first, Finding::Echo, Verdict::CannotSay, row.second).of = {sample.point(17)};
    find(sample, 29, Finding::Masked, Verdict::CannotSay, 5.8e-6).of = {sample.point(17)};
    find(sample, 27, Finding::Permeation, Verdict::Within, 3e-7);
    find(sample, 38, Finding::Shared, Verdict::Over, 6.2e-6).of = {sample.point(39)};
    find(sample, 39, Finding::Shared, Verdict::Over, 6.2e-6).of = {sample.point(38)};
    find(sample, 34, Finding::NotAccessible, Verdict::NoAnswer);
    find(sample, 35, Finding::Void, Verdict::NoAnswer);
    find(sample, 42, Finding::Leak, Verdict::CannotSay, 1.1e-6);
    find(sample, 43, Finding::BelowDetectable, Verdict::CannotSay);
    find(sample, 46, Finding::Leak, Verdict::Within, 5.6e-8);
    find(sample, 47, Finding::Clear, Verdict::Within).awaitsRetest = true;
    find(sample, 48, Finding::NotSprayed, Verdict::NoAnswer);
    find(sample, 49, Finding::Leak, Verdict::Over, 3.4e-5);
    find(sample, 36, Finding::BelowDetectable, Verdict::CannotSay);

    model::Repair held;
    held.id = model::RepairId::create();
    held.points = {sample.point(46)};
    held.action = "sealant";
    held.permanent = false;
    held.owner = "shift A";
    held.due = Timestamp::parseDate("2026-01-31").value();
    sample.job.repairs.push_back(held);
    return sample;
}

SampleJob crowdedJob(int points)
{
    SampleJob sample;
    sample.object.id = model::ObjectId::create();
    sample.object.name = "Crowd";
    sample.job.id = model::JobId::create();
    sample.job.setup.pointLimit = millibarLitresPerSecond(1e-6);
    Sketcher draw(sample);
    draw.sheet("Crowd", "the front");
    constexpr int kPerRing = 20;
    const int rings = (points + kPerRing - 1) / kPerRing;
    const int columns = static_cast<int>(std::ceil(std::sqrt(rings)));
    for (int i = 0; i < rings; ++i)
        draw.joint("Port " + std::to_string(i + 1), model::JointKind::ClampedFlange,
                   geometry::Ring{{300.0 * (i % columns), 300.0 * static_cast<int>(i / columns)}, 110},
                   std::min(kPerRing, points - i * kPerRing));
    clearAll(sample);
    for (int n = 1; n <= points; ++n) {
        const double rate = std::pow(10.0, -9.0 + (n * 37 % 60) / 10.0);
        switch (n % 16) {
        case 0:
            find(sample, n, Finding::Echo, Verdict::CannotSay, rate);
            break;
        case 1:
            find(sample, n, Finding::Masked, Verdict::CannotSay);
            break;
        case 2:
        case 3:
        case 4:
            find(sample, n, Finding::Leak, rate > 1e-6 ? Verdict::Over : Verdict::Within, rate);
            break;
        case 5:
            find(sample, n, Finding::NotSprayed, Verdict::NoAnswer);
            break;
        case 6:
            find(sample, n, Finding::Void, Verdict::NoAnswer);
            break;
        default:
            break;
        }
    }
    return sample;
}

} // namespace sealwalk::test
