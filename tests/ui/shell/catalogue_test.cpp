// SPDX-License-Identifier: GPL-3.0-or-later
// Property: whatever the window can say in English it can say in German.
#include "tests/support/german.h"
#include "ui/session/job_session.h"
#include "ui/sketch/draw_tool.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/path_tool.h"
#include "ui/sketch/place_tools.h"
#include "ui/sketch/repeat_tool.h"
#include "ui/sketch/select_tool.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/underlay_tools.h"

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <memory>
#include <set>

namespace sealwalk::ui {
namespace {

TEST(Catalogue, HasAGermanTextForEachEnglishOne)
{
    const tests::German german;
    EXPECT_GT(german.size(), 2000);
    EXPECT_EQ(german.open().join(QLatin1Char('\n')).toStdString(), "");
}

// Regression: texts handed through a function that lupdate does not know never came into the catalogue.
TEST(Catalogue, EveryWayToItIsSeenByLupdate)
{
    // A function that hands on a variable text: what it is given must stand as QT_TRANSLATE_NOOP, or the
    // function be called tr.
    const tests::German german;
    static const QRegularExpression own(QStringLiteral("^(?:static )?QString (\\w+)\\(const char\\* ?\\w+"),
                                        QRegularExpression::MultilineOption);
    for (QDirIterator at(QStringLiteral(SEALWALK_SOURCE_DIR "/ui"), {QStringLiteral("*.cpp")}, QDir::Files,
                         QDirIterator::Subdirectories);
         at.hasNext();) {
        QFile file(at.next());
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(file.readAll());
        const QRegularExpressionMatch found = own.match(text);
        if (!found.hasMatch() || !text.contains(QLatin1String("QCoreApplication::translate")) ||
            found.captured(1) == QLatin1String("tr"))
            continue;
        const QRegularExpression call(found.captured(1) + QStringLiteral("\\(\"([^\"]+)\""));
        for (auto given = call.globalMatch(text); given.hasNext();) {
            const QString words = given.next().captured(1);
            EXPECT_TRUE(german.knows(words)) << file.fileName().toStdString() << ": " << words.toStdString();
        }
    }
}

std::set<QString> guidance()
{
    JobSession session;
    SketchDesk desk(session);
    std::vector<std::unique_ptr<Tool>> tools;
    tools.push_back(std::make_unique<SelectTool>(desk));
    tools.push_back(std::make_unique<RingTool>(desk));
    tools.push_back(std::make_unique<BoxTool>(desk));
    tools.push_back(std::make_unique<PathTool>(desk, PathTool::Line::Closed));
    tools.push_back(std::make_unique<PathTool>(desk, PathTool::Line::Open));
    tools.push_back(std::make_unique<SpotTool>(desk));
    tools.push_back(std::make_unique<RepeatTool>(desk));
    tools.push_back(std::make_unique<AddPointTool>(desk));
    tools.push_back(std::make_unique<SplitTool>(desk));
    tools.push_back(std::make_unique<UnderlayTool>(desk));
    tools.push_back(std::make_unique<ScaleTool>(desk));
    std::set<QString> said;
    for (const auto& tool : tools) {
        said.insert(tool->title());
        for (const KeyHint& hint : tool->hints())
            said.insert(hint.does);
    }
    return said;
}

TEST(Catalogue, GuidesTheHandInGerman)
{
    const std::set<QString> english = guidance();
    ASSERT_GT(english.size(), 25u);
    const tests::InGerman german;
    const std::set<QString> same = [&] {
        std::set<QString> both;
        for (const QString& text : guidance())
            if (english.contains(text))
                both.insert(text);
        return both;
    }();
    for (const QString& text : same)
        EXPECT_EQ(text, QStringLiteral("Ring")); // one word in both languages
}

TEST(Catalogue, SaysEditsInGerman)
{
    const tests::InGerman german;
    EXPECT_EQ(editSentence("Clamped flange unlocked"), QStringLiteral("Clamped flange entsperrt."));
    EXPECT_EQ(editWords("3 joints moved"), QStringLiteral("3 Fügestellen verschoben"));
    EXPECT_EQ(editWords("100 % port drawn, 8 points laid"),
              QStringLiteral("100 % port gezeichnet, 8 Punkte gelegt"));
    EXPECT_EQ(editWords("point 7 moved; \"left of %1\" was said of its old place"),
              QStringLiteral("Punkt 7 verschoben; „left of %1“ galt für den alten Ort"));
    EXPECT_EQ(reminderWords("bonnet of the valve"), QStringLiteral("Haube des Ventils"));
}

} // namespace
} // namespace sealwalk::ui
