// SPDX-License-Identifier: GPL-3.0-or-later
// Property: the picture under a sheet is seen on every map of that sheet, and each job shows its own.
#include "core/editing/joints.h"
#include "core/editing/sheets.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/render/sheet_view.h"
#include "ui/sketch/canvas.h"

#include <QBuffer>

namespace sealwalk::ui {
namespace {

class Underlay : public WindowTest
{
protected:
    /// A job on one sheet with a ring of four points, over a page of one colour 1000 mm wide.
    model::JobId jobOver(const QColor& colour)
    {
        const Result<model::JobId> job = session->createJob(objectId, "check");
        EXPECT_TRUE(job);
        QImage page(100, 100, QImage::Format_RGB32);
        page.fill(colour);
        QByteArray png;
        QBuffer buffer(&png);
        buffer.open(QIODevice::WriteOnly);
        page.save(&buffer, "PNG");
        const Result<std::string> picture =
            session->addPicture(std::vector<std::uint8_t>(png.begin(), png.end()), "png");
        EXPECT_TRUE(picture);
        const bool fresh = session->job().sketch.sheets.empty(); // else copied from the job before
        model::Sheet sheet = fresh ? model::Sheet() : session->job().sketch.sheets.front();
        if (fresh)
            sheet.id = model::SheetId::create();
        sheet.name = "Door";
        sheet.underlay = model::Underlay();
        sheet.underlay->picture = *picture;
        sheet.underlay->millimetresPerPixel = 10.0;
        sheet.underlay->corner = {-500.0, -500.0};
        sheet.underlay->opacity = 0.5;
        EXPECT_TRUE(session->edit(*(fresh ? editing::addSheet(session->job().sketch, sheet)
                                          : editing::changeSheet(session->job().sketch, sheet))));
        if (fresh) {
            model::Joint joint;
            joint.id = model::JointId::create();
            joint.sheet = sheet.id;
            joint.name = "Port";
            joint.shape = geometry::Ring{{0.0, 0.0}, 200.0};
            editing::Laying four;
            four.number = 4;
            EXPECT_TRUE(session->edit(*editing::addJoint(session->job().sketch, joint, four)));
        }
        return *job;
    }

    /// The colour in the middle of the ring on the map in view of a page, once it is not the sheet's own.
    QColor seenOn(Stage stage) const
    {
        window->showStage(stage);
        QColor seen;
        const auto look = [&] {
            for (auto* map : window->page(stage)->findChildren<render::SheetView*>()) {
                if (map->content() == nullptr || map->content()->joints.empty() || !map->isVisible())
                    continue;
                const QImage drawn = map->grab().toImage();
                seen = drawn.pixelColor((map->toView({-73.0, 57.0}) * drawn.devicePixelRatio()).toPoint());
                return seen.saturation() > 60; // a sheet is grey
            }
            return false;
        };
        (void)QTest::qWaitFor(look, 3000);
        return seen;
    }
};

TEST_F(Underlay, IsSeenWhereTheSheetIsSprayedAndJudged)
{
    makeObject(QStringLiteral("Oven"));
    jobOver(Qt::green);
    for (const Stage stage : {Stage::Spray, Stage::Judge}) {
        const QColor seen = seenOn(stage);
        EXPECT_GT(seen.green(), seen.red() + 60) << stageTitle(stage).toStdString();
    }
}

TEST_F(Underlay, IsTheJobsOwn)
{
    makeObject(QStringLiteral("Oven"));
    const model::JobId first = jobOver(Qt::green);
    jobOver(Qt::blue);
    const QColor later = seenOn(Stage::Spray);
    EXPECT_GT(later.blue(), later.green() + 60);
    ASSERT_TRUE(session->openJob(first));
    const QColor before = seenOn(Stage::Spray);
    EXPECT_GT(before.green(), before.blue() + 60);
}

} // namespace
} // namespace sealwalk::ui
