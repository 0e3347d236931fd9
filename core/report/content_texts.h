// SPDX-License-Identifier: GPL-3.0-or-later
// Every text of a report, one after the other: to say it in another language, or to look at it.
#pragma once

#include "core/report/report_content.h"

#include <functional>
#include <string>

namespace sealwalk::report {

/// Maps are not among them: what is written on a map is put into words where it is painted.
void eachText(ReportContent& content, const std::function<void(std::string&)>& visit);
void eachText(Figure& figure, const std::function<void(std::string&)>& visit);
void eachText(BarFigure& figure, const std::function<void(std::string&)>& visit);

} // namespace sealwalk::report
