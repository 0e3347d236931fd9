// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/report_pdf.h"

#include "ui/render/report_pages.h"
#include "ui/render/report_words.h"

#include <QBuffer>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace sealwalk::render {

namespace {

constexpr double kPixelsPerInch = 96.0;
constexpr int kDotsPerInch = 1200;

} // namespace

QString titleOf(const report::ReportContent& content, const RecordLanguage& language)
{
    const RecordWords words(language);
    return inReport(content.title) + QStringLiteral(": ") + inReport(content.subtitle);
}

int printReport(const report::ReportContent& content, QPagedPaintDevice& device, const PdfOptions& options)
{
    const detail::Pages pages(content, options);
    QPainter painter(&device);
    const double factor = device.logicalDpiX() / kPixelsPerInch;
    for (std::size_t page = 0; page < pages.count() && !options.stop.stop_requested(); ++page) {
        if (page > 0)
            device.newPage();
        painter.save();
        painter.scale(factor, factor);
        pages.paint(painter, page);
        painter.restore();
    }
    return static_cast<int>(pages.count());
}

std::string reportPdf(const report::ReportContent& content, const PdfOptions& options)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    {
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setPageSize(QPageSize(options.paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
        writer.setPageMargins(QMarginsF());
        writer.setResolution(kDotsPerInch);
        writer.setTitle(titleOf(content, options.language));
        writer.setCreator(QStringLiteral("Sealwalk"));
        printReport(content, writer, options);
    }
    return bytes.toStdString();
}

Status writeReportPdf(const report::ReportContent& content, const std::filesystem::path& file,
                      const PdfOptions& options)
{
    const QByteArray bytes = QByteArray::fromStdString(reportPdf(content, options));
    QSaveFile out(QString::fromStdString(file.string()));
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.commit())
        return fail(ErrorCode::MachineFailed,
                    "\"" + file.string() + "\" could not be written: " + out.errorString().toStdString());
    return {};
}

} // namespace sealwalk::render
