// SPDX-License-Identifier: GPL-3.0-or-later
// The report as it comes on paper: looked at, printed, or written as PDF.
#pragma once

#include "core/base/result.h"
#include "core/report/report_content.h"
#include "ui/render/report_pdf.h"
#include "ui/shell/report_languages.h"

#include <QDialog>

#include <functional>
#include <memory>
#include <vector>

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
    /// @param options    the paper and language it opens with, and where its pictures are found
    /// @param languages  to choose from; where there is one only, nothing is asked
    ReportDialog(std::shared_ptr<const report::ReportContent> content, render::PdfOptions options,
                 std::vector<ReportLanguage> languages, QWidget* parent = nullptr);

    [[nodiscard]] render::ReportView& view() const { return *m_view; }
    /// With the paper and the language that were chosen.
    [[nodiscard]] const render::PdfOptions& options() const { return m_options; }
    /// Puts the pages on a printer that was set up, on its paper where that is A4 or Letter.
    void printOn(QPrinter& printer) const;

signals:
    void pdfWanted();
    void languageChosen(const QString& code);
    void printed();

private:
    void choosePaper(int index);
    void chooseLanguage(int index);
    void choosePrinter();
    void showPage();

    std::shared_ptr<const report::ReportContent> m_content;
    render::PdfOptions m_options;
    render::ReportView* m_view;
    std::vector<ReportLanguage> m_languages;
    QComboBox* m_paper;
    QComboBox* m_language;
    QLabel* m_page;
};

} // namespace sealwalk::ui
