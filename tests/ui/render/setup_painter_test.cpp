// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"
#include "ui/render/report_pdf.h"
#include "ui/render/setup_painter.h"
#include "ui/render/setup_view.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <QPdfDocument>
#include <QTemporaryDir>

#include <cmath>

namespace sealwalk::render {
namespace {

report::SetupSketch fullSketch()
{
    report::SetupSketch sketch;
    sketch.object = {{"Box coater 2", "480 l"}};
    sketch.ownPumps = report::SetupPart{{"own pumps", "210 l/s air"}};
    sketch.leaks = {{{"reference leak RL-11", "4.9e-8 mbar·l/s, at the far flange"}},
                    {{"reference leak RL-12", "1.0e-6 mbar·l/s, place not stated"}, false}};
    sketch.leaksAtInlet = {{{"reference leak RL-13", "2.0e-8 mbar·l/s"}}};
    sketch.connection = {{"foreline, pump in parallel"}};
    sketch.hose = {{"hose, bore 25 mm, 1.2 m long"}};
    sketch.linePressure = report::SetupPart{{"0.005 mbar inside"}};
    sketch.parallelPump = report::SetupPart{{"pump in parallel", "80 l/s helium"}};
    sketch.detector = {{"detector LD-04", "130 l/s helium"}};
    return sketch;
}

QImage drawn(const report::SetupSketch& sketch, int width, const Theme& theme, int margin)
{
    const LaidSetup laid(sketch, width);
    const int height = static_cast<int>(std::ceil(laid.height()));
    return test::painted(width + 2 * margin, height + 2 * margin, theme.colour(Role::Sheet),
                         [&](QPainter& painter) { laid.paint(painter, theme, QPointF(margin, margin)); });
}

// Property: the drawing stays within the width and height it says it needs, in every theme and at the
// narrowest column of the window.
TEST(SetupPainter, StaysInItsRoom)
{
    constexpr int kMargin = 20;
    for (const ThemeName name : {ThemeName::Paper, ThemeName::Slate, ThemeName::Hall})
        for (const int width : {330, 396, 682}) {
            const Theme& theme = Theme::named(name);
            const QImage image = drawn(fullSketch(), width, theme, kMargin);
            test::keep(image, QStringLiteral("setup-%1-%2").arg(static_cast<int>(name)).arg(width));
            const QColor ground = theme.colour(Role::Sheet);
            const int inside = test::unlike(image, image.rect().adjusted(20, 20, -20, -20), ground);
            EXPECT_GT(inside, 1000);
            EXPECT_EQ(test::unlike(image, image.rect(), ground),
                      test::unlike(image, image.rect().adjusted(18, 18, -18, -18), ground))
                << width;
        }
}

// Property: what was not stated is dashed, and a narrower drawing is a higher one.
TEST(SetupPainter, WhatIsNotStatedIsDashed)
{
    report::SetupSketch sketch = fullSketch();
    sketch.linePressure.reset();
    const Theme& theme = Theme::named(ThemeName::Paper);
    const int solid = test::unlike(drawn(sketch, 682, theme, 0), {0, 0, 682, 400}, theme.colour(Role::Sheet));
    sketch.hose.isStated = false;
    sketch.detector.isStated = false;
    const int dashed =
        test::unlike(drawn(sketch, 682, theme, 0), {0, 0, 682, 400}, theme.colour(Role::Sheet));
    EXPECT_LT(dashed, solid - 100);
    EXPECT_GT(LaidSetup(sketch, 300.0).height(), LaidSetup(sketch, 682.0).height());
}

// Property: the widget says in words what it shows, and asks for the height of its words.
TEST(SetupPainter, TheWidgetSpeaks)
{
    SetupView view;
    view.setSketch(fullSketch());
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("480 l")));
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("place not stated")));
    EXPECT_EQ(view.heightForWidth(396), static_cast<int>(std::ceil(LaidSetup(fullSketch(), 396).height())));
}

// Property: in the report every word of the drawing can be searched for.
TEST(SetupPainter, TheReportHoldsItsWords)
{
    const QTemporaryDir folder;
    report::ReportContent content;
    content.title = "Leak test report";
    content.sections.push_back({"Set-up", "", {report::SetupBlock{fullSketch()}}});
    const QString file = folder.filePath(QStringLiteral("r.pdf"));
    ASSERT_TRUE(writeReportPdf(content, file.toStdString()));
    QPdfDocument document;
    ASSERT_EQ(document.load(file), QPdfDocument::Error::None);
    const QString words = document.getAllText(0).text();
    for (const char* word : {"Box coater 2", "480 l", "own pumps", "RL-11", "at the far flange", "RL-13",
                             "foreline", "bore 25 mm", "0.005 mbar", "80 l/s helium", "LD-04"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(word))) << word << "\n" << words.toStdString();
}

} // namespace
} // namespace sealwalk::render
