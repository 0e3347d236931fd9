// SPDX-License-Identifier: GPL-3.0-or-later
// The report as it comes on paper: looked at, printed, or written as PDF.
#pragma once

#include "core/base/result.h"
#include "core/report/report_content.h"
#include "ui/render/report_pdf.h"

#include <QDialog>

#include <functional>
#include <memory>

class QComboBox;
class QLabel;
class QPrinter;

namespace sealwalk::render {
class ReportView;
}

namespace sealwalk::ui {

class ReportDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param options  the paper it opens with, and where its pictures are found
    ReportDialog(std::shared_ptr<const report::ReportContent> content, render::PdfOptions options,
                 QWidget* parent = nullptr);

    [[nodiscard]] render::ReportView& view() const { return *m_view; }
    /// With the paper that was chosen.
    [[nodiscard]] const render::PdfOptions& options() const { return m_options; }
    /// Puts the pages on a printer that was set up, on its paper where that is A4 or Letter.
    void printOn(QPrinter& printer) const;

signals:
    void pdfWanted();
    void printed();

private:
    void choosePaper(int index);
    void choosePrinter();
    void showPage();

    std::shared_ptr<const report::ReportContent> m_content;
    render::PdfOptions m_options;
    render::ReportView* m_view;
    QComboBox* m_paper;
    QLabel* m_page;
};

} // namespace sealwalk::ui
