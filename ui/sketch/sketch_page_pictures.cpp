// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the page that open dialogs: pictures, reminders, print.
#include "core/editing/sheets.h"
#include "ui/render/core_words.h"
#include "ui/render/picture_file.h"
#include "ui/session/beside.h"
#include "ui/session/job_session.h"
#include "ui/sketch/blank_print.h"
#include "ui/sketch/canvas.h"
#include "ui/sketch/reminder_dialog.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_page.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/choose_file.h"

#include <QFileInfo>
#include <QInputDialog>
#include <QPrintDialog>
#include <QPrinter>

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
    if (dialog.exec() != QDialog::Accepted || !dialog.wanted())
        return;
    const editing::Reminder& wanted = *dialog.wanted();
    m_desk->setKindFor(geometry::Spot{}, wanted.kind);
    const bool hose = wanted.kind == model::JointKind::Hose;
    takeTool(hose ? ToolId::Hose : ToolId::Spot);
    m_desk->setNextName(std::string(wanted.name), wanted.isSetup);
    m_desk->say(Severity::News, hose ? tr("Click along the hose, Enter ends it.")
                                     : tr("Click where it is; V, R or B instead for another shape."));
}

void SketchPage::printSheet()
{
    if (m_desk->sheetInView() == nullptr) {
        m_desk->say(Severity::Caution, tr("There is no sheet to print yet."));
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageMargins(QMarginsF(15.0, 12.0, 12.0, 12.0), QPageLayout::Millimeter);
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print the blank sheet"));
    if (dialog.exec() != QDialog::Accepted)
        return;
    const JobSession& session = m_desk->session();
    const BlankSheet blank{
        &m_desk->sketch(), m_desk->sheet(),
        tr("%1, job %2").arg(QString::fromStdString(session.object().name)).arg(session.job().number),
        QString::fromStdString(session.job().setup.detectorUnit)};
    printBlank(printer, blank, m_images);
    m_desk->say(Severity::News, tr("Sent to print."));
}

} // namespace sealwalk::ui
