// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the page that open dialogs: pictures, reminders, print.
#include "core/editing/sheets.h"
#include "ui/render/core_words.h"
#include "ui/render/picture_file.h"
#include "ui/session/beside.h"
#include "ui/session/job_session.h"
#include "ui/sketch/blank_print.h"
#include "ui/sketch/canvas.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/reminder_dialog.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_page.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/choose_file.h"

#include <QEventLoop>
#include <QFileInfo>
#include <QInputDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTimer>

#include <algorithm>
#include <memory>

namespace sealwalk::ui {

void SketchPage::choosePicture(bool onNewSheet)
{
    const QString file =
        chooseFileToOpen(this, tr("Picture underneath"), {},
                         tr("Pictures and drawings (*.png *.jpg *.jpeg *.bmp *.gif *.tif *.tiff "
                            "*.webp *.svg *.pdf);;All files (*)"));
    if (file.isEmpty())
        return;
    const Result<int> pages = render::pagesOf(file);
    if (!pages) {
        m_desk->say(Severity::Caution, render::inSentence(pages.error()));
        return;
    }
    int page = 1;
    if (*pages > 1) {
        bool ok = false;
        page = QInputDialog::getInt(this, tr("Picture underneath"), tr("Page, 1 to %1").arg(*pages), 1, 1,
                                    *pages, 1, &ok);
        if (!ok)
            return;
    }
    usePicture(file, page - 1, onNewSheet);
}

void SketchPage::usePicture(const QString& file, int page, bool onNewSheet)
{
    using Read = Result<render::PictureFile>;
    const auto lay = [this, onNewSheet, file](const Read& read) {
        if (!read) {
            m_desk->say(Severity::Caution, render::inSentence(read.error()));
            return;
        }
        const render::PictureFile& picture = *read;
        const Result<std::string> kept = m_desk->session().addPicture(picture.bytes, picture.extension);
        if (!kept) {
            m_desk->say(Severity::Error, render::inSentence(kept.error()));
            return;
        }
        model::Sheet sheet =
            onNewSheet || m_desk->sheetInView() == nullptr ? model::Sheet{} : *m_desk->sheetInView();
        const bool fresh = sheet.id.isNil();
        if (fresh) {
            sheet.id = model::SheetId::create();
            sheet.name = QFileInfo(file).completeBaseName().toStdString();
            sheet.seenFrom = tr("the front").toStdString();
        }
        // As large as the sheet, in its middle, until two clicks give the true scale.
        model::Underlay underlay;
        underlay.picture = *kept;
        underlay.millimetresPerPixel =
            std::min(sheet.width / picture.size.width(), sheet.height / picture.size.height());
        underlay.corner = {-picture.size.width() * underlay.millimetresPerPixel / 2.0,
                           -picture.size.height() * underlay.millimetresPerPixel / 2.0};
        sheet.underlay = underlay;
        if (m_desk->commit(fresh ? editing::addSheet(m_desk->sketch(), sheet)
                                 : editing::changeSheet(m_desk->sketch(), sheet))) {
            m_desk->setSheet(sheet.id);
            m_canvas->fit();
            takeTool(ToolId::Scale);
            m_desk->say(Severity::News, tr("Click the two ends of a length you know, then type it."));
        }
    };
    runBeside<Read>(
        this, [file, page] { return render::readPicture(file, page); }, lay);
}

void SketchPage::goThroughReminders()
{
    ReminderDialog dialog(*m_desk, this);
    connect(&dialog, &ReminderDialog::nameWanted, this, &SketchPage::nameWanted);
    if (dialog.exec() != QDialog::Accepted || !dialog.wanted())
        return;
    const editing::Reminder& wanted = *dialog.wanted();
    m_desk->setKindFor(geometry::Spot{}, wanted.kind);
    const bool hose = wanted.kind == model::JointKind::Hose;
    takeTool(hose ? ToolId::Hose : ToolId::Spot);
    m_desk->setNextName(reminderName(wanted.name), wanted.isSetup);
    m_desk->say(Severity::News, hose ? tr("Click along the hose, Enter ends it.")
                                     : tr("Click where it is; V, R or B instead for another shape."));
}

namespace {

constexpr int kPicturePatience = 10'000; // ms

/// Pictures of sheets that were not looked at yet are decoded first.
void awaitPictures(UnderlayImages& images, const model::Sketch& sketch,
                   const std::vector<model::SheetId>& sheets)
{
    const auto areThere = [&] {
        return std::all_of(sheets.begin(), sheets.end(), [&](model::SheetId id) {
            const model::Sheet* sheet = sketch.sheet(id);
            return sheet == nullptr || !sheet->underlay || images.find(sheet->underlay->picture) != nullptr;
        });
    };
    if (areThere())
        return;
    QEventLoop loop;
    QTimer::singleShot(kPicturePatience, &loop, &QEventLoop::quit);
    QObject::connect(&images, &UnderlayImages::failed, &loop, &QEventLoop::quit);
    QObject::connect(&images, &UnderlayImages::loaded, &loop, [&] {
        if (areThere())
            loop.quit();
    });
    loop.exec(QEventLoop::ExcludeUserInputEvents);
}

} // namespace

/// The one in view, or all of the object; empty: cancelled.
std::vector<model::SheetId> SketchPage::askSheets()
{
    const auto& all = m_desk->sketch().sheets;
    if (all.size() < 2)
        return {m_desk->sheet()};
    QMessageBox box(QMessageBox::Question, tr("Print the blank sheet"),
                    tr("Print the sheet in view, or all of the job?"), QMessageBox::Cancel, this);
    const QAbstractButton* one = box.addButton(tr("This &sheet"), QMessageBox::AcceptRole);
    auto* every = box.addButton(tr("&All %1 sheets").arg(all.size()), QMessageBox::AcceptRole);
    box.setDefaultButton(every);
    box.exec();
    if (box.clickedButton() == one)
        return {m_desk->sheet()};
    std::vector<model::SheetId> sheets;
    if (box.clickedButton() == static_cast<QAbstractButton*>(every))
        for (const model::Sheet& sheet : all)
            sheets.push_back(sheet.id);
    return sheets;
}

void SketchPage::printSheet()
{
    if (m_desk->sheetInView() == nullptr) {
        m_desk->say(Severity::Caution, tr("There is no sheet to print yet."));
        return;
    }
    const std::vector<model::SheetId> sheets = askSheets();
    if (sheets.empty())
        return;
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageMargins(QMarginsF(15.0, 12.0, 12.0, 12.0), QPageLayout::Millimeter);
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print the blank sheet"));
    if (dialog.exec() != QDialog::Accepted)
        return;
    const JobSession& session = m_desk->session();
    const BlankSheet blank{
        &m_desk->sketch(), sheets,
        tr("%1, job %2").arg(QString::fromStdString(session.object().name)).arg(session.job().number),
        QString::fromStdString(session.job().setup.detectorUnit)};
    awaitPictures(*m_images, m_desk->sketch(), sheets);
    printBlank(printer, blank, m_images);
    m_desk->say(Severity::News, tr("Sent to print."));
}

} // namespace sealwalk::ui
