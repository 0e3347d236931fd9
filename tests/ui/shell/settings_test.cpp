// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/error_text.h"
#include "ui/shell/shell_settings.h"

#include <gtest/gtest.h>

#include <QSplitter>
#include <QTemporaryDir>

namespace sealwalk::ui {

// Property: what was set is there at the next start.
TEST(ShellSettings, RemembersThemeSoundsAndDividers)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("window.ini"));
    const auto page = [] {
        auto splitter = std::make_unique<QSplitter>();
        for (int i = 0; i < 2; ++i)
            splitter->addWidget(new QWidget);
        splitter->resize(400, 100);
        return splitter;
    };
    {
        ShellSettings settings(file);
        EXPECT_EQ(settings.theme(), render::ThemeName::Paper);
        EXPECT_TRUE(settings.soundsOn());
        settings.setTheme(render::ThemeName::Hall);
        settings.setSoundsOn(false);
        QWidget whole;
        auto splitter = page();
        splitter->setParent(&whole);
        splitter->setSizes({300, 95});
        settings.keepDividers(Stage::Judge, whole);
    }
    const ShellSettings settings(file);
    EXPECT_EQ(settings.theme(), render::ThemeName::Hall);
    EXPECT_FALSE(settings.soundsOn());
    QWidget whole;
    auto splitter = page();
    splitter->setParent(&whole);
    splitter->setSizes({100, 295});
    settings.restoreDividers(Stage::Judge, whole);
    EXPECT_NEAR(splitter->sizes().front(), 300, 5);
}

// Property: every kind of failure has a sentence; those that threaten data say so.
TEST(ErrorText, IsASentenceWithARemedy)
{
    const ErrorText text = errorText(Error{ErrorCode::MachineFailed, "the disk is full"});
    EXPECT_EQ(text.sentence, QStringLiteral("The disk is full."));
    EXPECT_FALSE(text.remedy.isEmpty());
    EXPECT_TRUE(text.threatensData);
    EXPECT_FALSE(errorText(Error{ErrorCode::BadInput, "no"}).threatensData);
}

} // namespace sealwalk::ui
