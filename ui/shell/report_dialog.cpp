// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/report_dialog.h"

#include "ui/render/icon.h"
#include "ui/render/report_view.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <utility>

namespace sealwalk::ui {

namespace {

constexpr QSize kSize{900, 700};

QPageSize pageSizeOf(render::Paper paper)
{
    return QPageSize(paper == render::Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
}

} // namespace

ReportDialog::ReportDialog(std::shared_ptr<const report::ReportContent> content, render::PdfOptions options,
                           std::vector<ReportLanguage> languages, QWidget* parent)
    : QDialog(parent)
    , m_content(std::move(content))
    , m_options(std::move(options))
    , m_view(new render::ReportView(this))
    , m_languages(std::move(languages))
    , m_paper(new QComboBox(this))
    , m_language(new QComboBox(this))
    , m_page(new QLabel(this))
{
    setObjectName(QStringLiteral("reportDialog"));
    setWindowTitle(tr("Report"));
    m_view->setAccessibleName(tr("Pages of the report"));
    m_paper->addItem(tr("A4"), static_cast<int>(render::Paper::A4));
    m_paper->addItem(tr("Letter"), static_cast<int>(render::Paper::Letter));
    m_paper->setCurrentIndex(m_paper->findData(static_cast<int>(m_options.paper)));
    m_paper->setAccessibleName(tr("paper"));
    auto* paperLabel = new QLabel(tr("P&aper"), this);
    paperLabel->setBuddy(m_paper);
    m_language->setObjectName(QStringLiteral("language"));
    for (const ReportLanguage& language : m_languages) {
        m_language->addItem(language.name, language.code);
        if (language.words == m_options.language)
            m_language->setCurrentIndex(m_language->count() - 1);
    }
    m_language->setAccessibleName(tr("language of the report"));
    auto* languageLabel = new QLabel(tr("&Language"), this);
    languageLabel->setBuddy(m_language);
    m_language->setVisible(m_languages.size() > 1);
    languageLabel->setVisible(m_languages.size() > 1);
    auto* print = new QPushButton(render::icon(QStringLiteral("print")), tr("&Print …"), this);
    print->setObjectName(QStringLiteral("print"));
    auto* pdf = new QPushButton(render::icon(QStringLiteral("export")), tr("&Write as PDF …"), this);
    pdf->setObjectName(QStringLiteral("pdf"));
    auto* close = new QPushButton(tr("Close (Esc)"), this);
    for (QPushButton* button : {print, pdf, close})
        button->setAutoDefault(false); // Enter must not start a print

    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(12, 8, 12, 8);
    bar->setSpacing(8);
    bar->addWidget(paperLabel);
    bar->addWidget(m_paper);
    bar->addSpacing(12);
    bar->addWidget(languageLabel);
    bar->addWidget(m_language);
    bar->addSpacing(12);
    bar->addWidget(m_page);
    bar->addStretch(1);
    bar->addWidget(print);
    bar->addWidget(pdf);
    bar->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(bar);
    column->addWidget(m_view, 1);

    connect(m_paper, &QComboBox::activated, this, &ReportDialog::choosePaper);
    connect(m_language, &QComboBox::activated, this, &ReportDialog::chooseLanguage);
    connect(m_view, &render::ReportView::pageChanged, this, &ReportDialog::showPage);
    connect(print, &QPushButton::clicked, this, &ReportDialog::choosePrinter);
    connect(pdf, &QPushButton::clicked, this, &ReportDialog::pdfWanted);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_P), this), &QShortcut::activated, this,
            &ReportDialog::choosePrinter);
    connect(new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_S), this), &QShortcut::activated, this,
            &ReportDialog::pdfWanted);
    m_view->setReport(m_content, m_options);
    m_view->setFocus();
    const QSize room = parent == nullptr ? kSize : parent->window()->size();
    resize(kSize.boundedTo(room));
    showPage();
}

void ReportDialog::choosePaper(int index)
{
    m_options.paper = static_cast<render::Paper>(m_paper->itemData(index).toInt());
    m_view->setReport(m_content, m_options);
    showPage();
}

void ReportDialog::chooseLanguage(int index)
{
    const ReportLanguage& chosen = m_languages.at(static_cast<std::size_t>(index));
    m_options.language = chosen.words;
    m_view->setReport(m_content, m_options);
    showPage();
    emit languageChosen(chosen.code);
}

void ReportDialog::showPage()
{
    m_page->setText(tr("page %1 of %2").arg(m_view->currentPage() + 1).arg(m_view->pageCount()));
}

void ReportDialog::choosePrinter()
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(pageSizeOf(m_options.paper));
    printer.setDocName(render::titleOf(*m_content, m_options.language));
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print the report"));
    dialog.setOptions(QAbstractPrintDialog::PrintToFile); // all of it: a part would not be the report
    if (dialog.exec() != QDialog::Accepted)
        return;
    printOn(printer);
    emit printed();
}

void ReportDialog::printOn(QPrinter& printer) const
{
    render::PdfOptions options = m_options;
    const QPageSize::PageSizeId size = printer.pageLayout().pageSize().id();
    if (size == QPageSize::A4 || size == QPageSize::Letter)
        options.paper = size == QPageSize::A4 ? render::Paper::A4 : render::Paper::Letter;
    printer.setFullPage(true); // the pages bring their own margins
    render::printReport(*m_content, printer, options);
}

} // namespace sealwalk::ui
