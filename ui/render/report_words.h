// SPDX-License-Identifier: GPL-3.0-or-later
// A report in the language that RecordWords says: its sentences, heads, cells and figures, piece by piece.
// What people typed stays as it is where it is marked (core/report/typed_words.h).
#pragma once

#include "core/report/report_content.h"

#include <QString>
#include <QStringList>

#include <string>

namespace sealwalk::render {

/// A text of a report or of a map for a file, without the marks of typed words.
QString inReport(const std::string& text);
/// The same for a whole report. Words on its maps are found when they are painted.
report::ReportContent inReport(report::ReportContent content);

/// Texts of the report with words of the core that no pattern knows.
QStringList unknownIn(report::ReportContent content);

} // namespace sealwalk::render
