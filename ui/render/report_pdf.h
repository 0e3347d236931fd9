// SPDX-License-Identifier: GPL-3.0-or-later
// A report on paper: pages, running head and foot, tables that go on over pages. Text stays text.
#pragma once

#include "core/base/result.h"
#include "core/model/picture.h"
#include "core/report/report_content.h"
#include "ui/render/language.h"

#include <QPageSize>

#include <filesystem>
#include <functional>
#include <stop_token>
#include <string>

class QPagedPaintDevice;

namespace sealwalk::render {

enum class Paper
{
    A4,
    Letter
};

struct PdfOptions
{
    Paper paper = Paper::A4;
    RecordLanguage language; ///< none: English
    /// Finds a picture by its SHA-256; photos that are not found are named instead. May be empty.
    std::function<Result<model::Picture>(const std::string& sha256)> pictures;
    std::stop_token stop; ///< asked between pages; what is given after a stop is not the whole report
};

/// What a printed or written report is called.
QString titleOf(const report::ReportContent& content, const RecordLanguage& language);

/// The report as a PDF document.
std::string reportPdf(const report::ReportContent& content, const PdfOptions& options = {});

/// Writes the report; replaces the file only when all of it was written. Needs a QApplication.
Status writeReportPdf(const report::ReportContent& content, const std::filesystem::path& file,
                      const PdfOptions& options = {});

/// Paints the report into a printer or preview; its pages must have the paper of `options`.
/// @return number of pages
int printReport(const report::ReportContent& content, QPagedPaintDevice& device,
                const PdfOptions& options = {});

} // namespace sealwalk::render
