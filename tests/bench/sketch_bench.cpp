// SPDX-License-Identifier: GPL-3.0-or-later
// Drawing on a sheet of 2,000 points: what a hand waits for. Reference: blitting one finished picture of the
// same size, which no repaint can be quicker than. Aim: 20 ms a frame while panning, zooming and dragging.
#include "core/editing/edit.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/sketch/canvas.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_page.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>
#include <QWheelEvent>

#include <memory>

namespace {

using namespace sealwalk;

constexpr int kColumns = 25;
constexpr int kRows = 10;
constexpr int kPointsEach = 8;
constexpr double kApart = 300.0; ///< mm

model::Sketch largeSketch()
{
    model::Sketch sketch;
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sheet.name = "Large";
    sketch.sheets.push_back(sheet);
    for (int i = 0; i < kColumns * kRows; ++i) {
        model::Joint joint;
        joint.id = model::JointId::create();
        joint.sheet = sheet.id;
        joint.name = "Port";
        joint.kind = static_cast<model::JointKind>(i % 11);
        joint.shape = geometry::Ring{{kApart * (i % kColumns), kApart * (i / kColumns)}, 100.0};
        sketch.joints.push_back(joint);
        for (int p = 0; p < kPointsEach; ++p)
            sketch.points.push_back({model::PointId::create(),
                                     ++sketch.lastNumber,
                                     joint.id,
                                     static_cast<double>(p) / kPointsEach,
                                     {},
                                     false});
    }
    return sketch;
}

/// A page with the large sketch on it, in a window.
class Table
{
public:
    Table()
    {
        (void)m_session.openHistory(m_folder.filePath(QStringLiteral("h.sealwalk")).toStdString(), true);
        model::TestObject object;
        object.id = model::ObjectId::create();
        object.name = "Bench";
        (void)m_session.createObject(object);
        if (const auto job = m_session.createJob(object.id, "bench"))
            (void)m_session.openJob(*job);
        page = std::make_unique<ui::SketchPage>(m_session);
        page->resize(1366, 644);
        page->show();
        (void)QTest::qWaitForWindowExposed(page.get());
        const model::Sketch sketch = largeSketch();
        page->desk().commit(editing::difference(m_session.job().sketch, sketch, "bench"));
        page->desk().setSheet(sketch.sheets.front().id);
        page->canvas().fit();
        page->canvas().repaint();
    }

    ui::SketchCanvas& canvas() const { return page->canvas(); }
    void moveHand(QPointF to, Qt::MouseButtons buttons) const
    {
        QMouseEvent move(QEvent::MouseMove, to, canvas().mapToGlobal(to), Qt::NoButton, buttons, {});
        QApplication::sendEvent(&canvas(), &move);
    }

    std::unique_ptr<ui::SketchPage> page;

private:
    QTemporaryDir m_folder;
    ui::JobSession m_session;
};

void onePictureBlitted(benchmark::State& state)
{
    QPixmap target(984, 576);
    QPixmap picture(1384, 976);
    picture.fill(Qt::white);
    for (auto _ : state) {
        QPainter painter(&target);
        painter.drawPixmap(-200, -200, picture);
    }
}
BENCHMARK(onePictureBlitted)->Unit(benchmark::kMillisecond);

void pan(benchmark::State& state)
{
    const Table table;
    QTest::mousePress(&table.canvas(), Qt::MiddleButton, {}, QPoint(500, 300));
    int i = 0;
    for (auto _ : state) {
        table.moveHand(QPointF(500.0 + (++i % 100), 300.0), Qt::MiddleButton);
        table.canvas().repaint();
    }
}
BENCHMARK(pan)->Unit(benchmark::kMillisecond);

void zoom(benchmark::State& state)
{
    const Table table;
    const QPointF at(500.0, 300.0);
    int i = 0;
    for (auto _ : state) {
        QWheelEvent wheel(at, table.canvas().mapToGlobal(at), {}, {0, ++i % 10 < 5 ? 120 : -120},
                          Qt::NoButton, {}, Qt::NoScrollPhase, false);
        QApplication::sendEvent(&table.canvas(), &wheel);
        table.canvas().repaint();
    }
}
BENCHMARK(zoom)->Unit(benchmark::kMillisecond);

void dragAJoint(benchmark::State& state)
{
    const Table table;
    const QPoint rim = table.canvas().view().toScreen({10.0 * kApart + 70.7, 4.0 * kApart + 70.7}).toPoint();
    QTest::mousePress(&table.canvas(), Qt::LeftButton, {}, rim);
    int i = 0;
    for (auto _ : state) {
        table.moveHand(rim + QPointF(10.0 + (++i % 50), 10.0), Qt::LeftButton);
        table.canvas().repaint();
    }
}
BENCHMARK(dragAJoint)->Unit(benchmark::kMillisecond);

void gestureStoredAndUndone(benchmark::State& state)
{
    const Table table;
    table.page->desk().choose({table.page->desk().sketch().joints.front().id});
    for (auto _ : state) {
        QTest::keyClick(&table.canvas(), Qt::Key_Right);
        table.page->desk().undo();
    }
}
BENCHMARK(gestureStoredAndUndone)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    render::applyTheme(application, render::ThemeName::Paper);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
