// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/german.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/render/report_view.h"
#include "ui/shell/report_dialog.h"

#include <QComboBox>
#include <QDir>
#include <QPdfDocument>
#include <QPrinter>
#include <QPushButton>

namespace sealwalk::ui {

// Property: the report is looked at by keys alone; on another paper it is laid out anew, and what comes from
// a printer are the pages that were seen.
TEST_F(WindowTest, TheReportIsLookedAtAndPrinted)
{
    makeObject(QStringLiteral("Oven"));
    ASSERT_TRUE(session->createJob(objectId, "yearly").has_value());
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("printed.pdf"));
    int pages = 0;
    onDialog([&](QDialog& found) {
        auto* dialog = qobject_cast<ReportDialog*>(&found);
        ASSERT_NE(dialog, nullptr);
        render::ReportView& view = dialog->view();
        ASSERT_GT(view.pageCount(), 1);
        EXPECT_EQ(view.currentPage(), 0);
        QTest::keyClick(&view, Qt::Key_PageDown);
        EXPECT_EQ(view.currentPage(), 1);
        QTest::keyClick(&view, Qt::Key_End);
        EXPECT_EQ(view.currentPage(), view.pageCount() - 1);
        const double fitting = view.zoom();
        QTest::keyClick(&view, Qt::Key_Plus, Qt::ControlModifier);
        EXPECT_GT(view.zoom(), fitting);
        QTest::keyClick(&view, Qt::Key_0, Qt::ControlModifier);
        EXPECT_DOUBLE_EQ(view.zoom(), fitting);

        auto* paper = dialog->findChild<QComboBox*>();
        paper->setCurrentIndex(paper->findData(static_cast<int>(render::Paper::Letter)));
        emit paper->activated(paper->currentIndex());
        EXPECT_EQ(dialog->options().paper, render::Paper::Letter);
        pages = view.pageCount();

        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        printer.setPageSize(QPageSize(QPageSize::Letter));
        dialog->printOn(printer);
        dialog->reject();
    });
    key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(waitForDialogs());
    QPdfDocument document;
    ASSERT_EQ(document.load(file), QPdfDocument::Error::None);
    EXPECT_EQ(document.pageCount(), pages);
    const QSizeF letter(612.0, 792.0); // pt
    EXPECT_NEAR(document.pagePointSize(0).width(), letter.width(), 1.0);
    EXPECT_NEAR(document.pagePointSize(0).height(), letter.height(), 1.0);
}

namespace {

std::vector<ReportLanguage> languages()
{
    const QLocale locale(QLocale::German, QLocale::Germany);
    return {{QStringLiteral("en"), QStringLiteral("English"), {}},
            {QStringLiteral("de"), QStringLiteral("Deutsch"),
             std::make_shared<const render::Language>(locale, std::make_shared<const tests::German>())}};
}

QString firstPageOf(const ReportDialog& dialog, const QString& file)
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(file);
    dialog.printOn(printer);
    QPdfDocument document;
    EXPECT_EQ(document.load(file), QPdfDocument::Error::None);
    return document.getAllText(0).text();
}

} // namespace

// Property: a report is looked at and printed in the language that was chosen, whatever the window's is.
TEST_F(WindowTest, TheReportIsInTheLanguageThatWasChosen)
{
    auto content = std::make_shared<report::ReportContent>();
    content->title = "Leak test report";
    content->statement.headline = "Nothing was sprayed: nothing is claimed";
    const QTemporaryDir folder;
    ReportDialog dialog(content, {}, languages());
    auto* language = dialog.findChild<QComboBox*>(QStringLiteral("language"));
    ASSERT_NE(language, nullptr);
    EXPECT_EQ(language->currentData().toString(), QStringLiteral("en"));
    EXPECT_TRUE(firstPageOf(dialog, folder.filePath(QStringLiteral("en.pdf")))
                    .contains(QStringLiteral("Leak test report")));
    QString chosen;
    QObject::connect(&dialog, &ReportDialog::languageChosen, [&](const QString& code) { chosen = code; });
    language->setCurrentIndex(1);
    emit language->activated(1);
    EXPECT_EQ(chosen, QStringLiteral("de"));
    const QString german = firstPageOf(dialog, folder.filePath(QStringLiteral("de.pdf")));
    EXPECT_TRUE(german.contains(QStringLiteral("Bericht über die Dichtheitsprüfung")));
    EXPECT_TRUE(german.contains(QStringLiteral("Seite 1 von 1")));
    EXPECT_FALSE(german.contains(QStringLiteral("Leak test report")));
}

// Property: the language of reports is the one chosen last, before that the window's.
TEST_F(WindowTest, TheLanguageOfReportsIsRemembered)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("window.ini"));
    EXPECT_EQ(reportLanguage(ShellSettings(file), languages()).code, QStringLiteral("en"));
    {
        const tests::InGerman german;
        EXPECT_EQ(reportLanguage(ShellSettings(file), languages()).code, QStringLiteral("de"));
        ShellSettings kept(file);
        kept.setReportLanguage(QStringLiteral("en"));
        EXPECT_EQ(reportLanguage(kept, languages()).code, QStringLiteral("en"));
    }
    ShellSettings(file).setReportLanguage(QStringLiteral("de"));
    EXPECT_EQ(reportLanguage(ShellSettings(file), languages()).code, QStringLiteral("de"));
}

} // namespace sealwalk::ui
