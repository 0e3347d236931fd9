// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"
#include "tests/ui/render/sample_map.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/sheet_view.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QElapsedTimer>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

namespace sealwalk::render {
namespace {

struct Shown
{
    test::SampleJob sample = test::sampleJob();
    SheetView view;

    explicit Shown(std::size_t sheet = 0)
    {
        view.resize(572, 570);
        view.setContent(sample.map(sheet));
        view.show();
    }
};

// Property: the middle of every stretch belongs to its own point.
TEST(SheetView, FindsEveryPointAtItsPlace)
{
    for (const std::size_t sheet : {0U, 1U}) {
        Shown shown(sheet);
        for (const report::MapStretch& stretch : shown.view.content()->stretches)
            EXPECT_EQ(shown.view.pointAt(shown.view.toView(stretch.place)), stretch.point) << stretch.number;
    }
}

// Property: a click names the point under it, empty paper none.
TEST(SheetView, ClickNamesThePoint)
{
    Shown shown;
    std::optional<model::PointId> clicked;
    int empty = 0;
    QObject::connect(&shown.view, &SheetView::pointClicked, &shown.view,
                     [&](model::PointId p) { clicked = p; });
    QObject::connect(&shown.view, &SheetView::emptyClicked, &shown.view, [&] { ++empty; });
    const report::MapStretch* leak = shown.view.content()->stretchOf(shown.sample.point(17));
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, shown.view.toView(leak->place).toPoint());
    ASSERT_TRUE(clicked.has_value());
    EXPECT_EQ(*clicked, shown.sample.point(17));
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, shown.view.toView({640, 500}).toPoint());
    EXPECT_EQ(empty, 1);
}

// Property: the place under the cursor stays under the cursor while zooming.
TEST(SheetView, ZoomsAtTheCursor)
{
    Shown shown;
    const QPointF cursor(400, 150);
    const geometry::Point before = shown.view.toSheet(cursor);
    QWheelEvent wheel(cursor, shown.view.mapToGlobal(cursor), {}, QPoint(0, 240), Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&shown.view, &wheel);
    const geometry::Point after = shown.view.toSheet(cursor);
    EXPECT_NEAR(before.x, after.x, 1e-6);
    EXPECT_NEAR(before.y, after.y, 1e-6);
    QTest::keyClick(&shown.view, Qt::Key_0);
    EXPECT_TRUE(shown.view.rect().contains(shown.view.toView({0, 0}).toPoint()));
}

// Property: keys alone reach every point, in order of number.
TEST(SheetView, KeysStepThroughThePoints)
{
    Shown shown;
    std::vector<int> seen;
    int activated = 0;
    QObject::connect(&shown.view, &SheetView::pointClicked, &shown.view,
                     [&](model::PointId p) { seen.push_back(shown.view.content()->stretchOf(p)->number); });
    QObject::connect(&shown.view, &SheetView::pointActivated, &shown.view, [&] { ++activated; });
    for (int i = 0; i < 29; ++i)
        QTest::keyClick(&shown.view, Qt::Key_PageDown);
    ASSERT_EQ(seen.size(), 29U);
    for (int i = 0; i < 29; ++i)
        EXPECT_EQ(seen[static_cast<std::size_t>(i)], i + 1);
    QTest::keyClick(&shown.view, Qt::Key_Return);
    EXPECT_EQ(activated, 1);
}

// Property: assistive technology reads what the plate says.
TEST(SheetView, SpeaksItsPoints)
{
    Shown shown;
    shown.view.setSelected(shown.sample.point(17));
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&shown.view);
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->role(), QAccessible::List);
    ASSERT_EQ(list->childCount(), 29);
    bool found = false;
    for (int i = 0; i < list->childCount(); ++i) {
        QAccessibleInterface* child = list->child(i);
        ASSERT_NE(child, nullptr);
        EXPECT_EQ(list->indexOfChild(child), i);
        const QString said = child->text(QAccessible::Name);
        if (!said.startsWith(QStringLiteral("point 17, leak, 4.6e-4 millibar litre per second")))
            continue;
        EXPECT_TRUE(said.contains(QStringLiteral("95 % range"))) << said.toStdString();
        EXPECT_TRUE(said.endsWith(QStringLiteral("over the limit"))) << said.toStdString();
        found = true;
        EXPECT_TRUE(child->state().selected);
        EXPECT_FALSE(child->rect().isEmpty());
    }
    EXPECT_TRUE(found);
}

// Property: other answers on the same sheet neither move nor rescale a map that still fits in; another sheet
// is fitted anew, and so is this one when the window changes.
TEST(SheetView, StaysAsItIsWhileAnswersCome)
{
    Shown shown;
    const QPoint before = shown.view.toView({600.0, 600.0}).toPoint();
    const double scale = shown.view.pixelsPerMillimetre();
    test::SampleJob other = shown.sample;
    for (analysis::PointFinding& finding : other.findings)
        if (finding.number == 3)
            finding.finding = analysis::Finding::Clear;
    shown.view.setContent(other.map());
    EXPECT_DOUBLE_EQ(shown.view.pixelsPerMillimetre(), scale);
    EXPECT_LE((shown.view.toView({600.0, 600.0}).toPoint() - before).manhattanLength(), 2);
    shown.view.setContent(other.map(1));
    EXPECT_NE(shown.view.pixelsPerMillimetre(), scale);
    shown.view.setContent(other.map());
    EXPECT_NEAR(shown.view.pixelsPerMillimetre(), scale, 0.01 * scale);
    shown.view.resize(900, 900);
    EXPECT_GT(shown.view.pixelsPerMillimetre(), 1.2 * scale);
}

// Property: the same answers once more change nothing, also where labels crowd.
TEST(SheetView, TheSameAnswersLeaveItAsItIs)
{
    for (const int points : {40, 200, 600}) {
        const test::SampleJob crowd = test::crowdedJob(points);
        SheetView view;
        view.resize(700, 600);
        view.setContent(crowd.map());
        const double scale = view.pixelsPerMillimetre();
        const QPointF place = view.toView({100.0, 100.0});
        view.setContent(crowd.map());
        EXPECT_DOUBLE_EQ(view.pixelsPerMillimetre(), scale) << points;
        EXPECT_LE((view.toView({100.0, 100.0}) - place).manhattanLength(), 1.0) << points;
    }
}

// Property: what no longer fits in makes the map smaller, though it was fitted before.
TEST(SheetView, MakesRoomForMoreLabels)
{
    Shown shown;
    shown.view.resize(300, 300); // where labels take much of the room
    test::SampleJob quiet = shown.sample;
    for (analysis::PointFinding& finding : quiet.findings) {
        analysis::PointFinding clear;
        clear.point = finding.point;
        clear.number = finding.number;
        clear.finding = analysis::Finding::Clear;
        finding = clear;
    }
    shown.view.setContent(quiet.map());
    const double roomy = shown.view.pixelsPerMillimetre();
    shown.view.setContent(shown.sample.map());
    EXPECT_LT(shown.view.pixelsPerMillimetre(), roomy);
    Shown anew;
    anew.view.resize(300, 300);
    EXPECT_NEAR(shown.view.pixelsPerMillimetre(), anew.view.pixelsPerMillimetre(), 0.06 * roomy)
        << "as if it had been fitted to them";
}

// Property: selection, flag, helium and every theme paint over the same map.
TEST(SheetView, PaintsWhatIsChosen)
{
    Shown shown;
    const QImage plain = shown.view.grab().toImage();
    shown.view.setSelected(shown.sample.point(27));
    shown.view.setCurrent(shown.sample.point(17));
    shown.view.setPlume(
        Plume{{{210, 300}, {290, 300}, {330, 560}, {170, 560}}, QStringLiteral("helium of 17")});
    const QImage chosen = shown.view.grab().toImage();
    const QColor accent = Theme::named(ThemeName::Paper).colour(Role::Accent);
    EXPECT_GT(test::like(chosen, chosen.rect(), accent), test::like(plain, plain.rect(), accent) + 500);
    for (const ThemeName name : {ThemeName::Paper, ThemeName::Slate, ThemeName::Hall}) {
        setThemeFor(shown.view, name);
        test::keep(shown.view.grab().toImage(), QStringLiteral("view-%1").arg(static_cast<int>(name)));
    }
}

// Regression: a thread ran over the numbers of the points on its way.
TEST(SheetView, NumbersStandAboveThreads)
{
    Shown shown;
    const auto place = [&](int number) {
        return shown.view.toView(shown.view.content()->stretchOf(shown.sample.point(number))->place);
    };
    const auto covered = [&](const std::vector<Thread>& threads) {
        shown.view.setThreads(threads);
        return shown.view.grab().toImage();
    };
    const QImage plain = covered({});
    // From each point of the door to each other: hardly a number that none crosses.
    std::vector<Thread> threads;
    for (int from = 1; from <= 24; ++from)
        for (int to = 1; to <= 24; ++to)
            if (from != to)
                threads.push_back({shown.sample.point(from), shown.sample.point(to), 1.0, {}});
    const QImage crossed = covered(threads);
    const QColor ink = Theme::named(ThemeName::Paper).colour(Role::Ink);
    int before = 0;
    int after = 0;
    for (int number = 1; number <= 24; ++number) {
        const QRect near = QRectF(place(number) - QPointF(30, 12), QSizeF(60, 24)).toRect();
        before += test::like(plain, near, ink);
        after += test::like(crossed, near, ink);
    }
    EXPECT_GT(before, 100);
    EXPECT_GE(after, before * 6 / 10);
}

// Property: 2,000 points pan and select at 50 frames a second or better. The layer is painted anew only on
// zoom.
TEST(SheetView, IsSmoothWithTwoThousandPoints)
{
    const test::SampleJob crowd = test::crowdedJob(2000);
    SheetView view;
    view.resize(1000, 700);
    QElapsedTimer clock;
    clock.start();
    view.setContent(crowd.map());
    const double layout = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    QImage target(view.size(), QImage::Format_ARGB32_Premultiplied);
    clock.restart();
    view.render(&target);
    const double first = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    constexpr int kFrames = 40;
    clock.restart();
    for (int i = 0; i < kFrames; ++i) {
        view.setSelected(crowd.point(1 + i * 37));
        view.setCurrent(crowd.point(1 + i * 37));
        view.render(&target);
    }
    const double frame = static_cast<double>(clock.nsecsElapsed()) / 1e6 / kFrames;
    clock.restart();
    constexpr int kZooms = 10;
    for (int i = 0; i < kZooms; ++i) {
        view.zoomBy(1.2, QPointF(500, 350));
        view.render(&target);
    }
    const double zoom = static_cast<double>(clock.nsecsElapsed()) / 1e6 / kZooms;
    test::keep(target, QStringLiteral("crowd-zoomed"));
    view.fit();
    test::keep(view.grab().toImage(), QStringLiteral("crowd"));
    std::cout << "2000 points: fit and layout " << layout << " ms, first paint " << first << " ms, frame "
              << frame << " ms, zoom step " << zoom << " ms\n";
    RecordProperty("frame_ms", std::to_string(frame));
    EXPECT_LT(frame, 20.0);
}

// Property: limit and smallest detectable leak stand where the scale puts them.
TEST(DecadeRuler, PaintsBothWays)
{
    report::MapScale scale;
    scale.limit = millibarLitresPerSecond(1e-6);
    scale.smallestDetectable = millibarLitresPerSecond(2.4e-9);
    DecadeRuler level(Qt::Horizontal);
    level.resize(430, 62);
    level.setScale(scale);
    level.setValue(millibarLitresPerSecond(4.6e-4));
    const QImage image = level.grab().toImage();
    test::keep(image, QStringLiteral("ruler-level"));
    EXPECT_GT(test::like(image, image.rect(), Theme::current().heat(1.0), 20), 20);
    EXPECT_GT(test::like(image, image.rect(), Theme::current().heat(0.5), 20), 20);
    EXPECT_TRUE(level.accessibleDescription().contains(QStringLiteral("4.6e\u22124")));
    DecadeRuler upright(Qt::Vertical);
    upright.resize(116, 420);
    upright.setScale(scale);
    setThemeFor(upright, ThemeName::Slate);
    const QImage tall = upright.grab().toImage();
    test::keep(tall, QStringLiteral("ruler-upright"));
    const QColor night = Theme::named(ThemeName::Slate).heat(0.5);
    EXPECT_GT(test::like(tall, QRect(0, 150, 40, 120), night, 20), 5);
}

} // namespace
} // namespace sealwalk::render
