// SPDX-License-Identifier: GPL-3.0-or-later
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

} // namespace sealwalk::ui
