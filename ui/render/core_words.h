// SPDX-License-Identifier: GPL-3.0-or-later
// What the core says, in the language of the window or, under RecordWords, of a record. The core speaks
// English sentences, because the record and the command line are in one language whoever reads them; on the
// screen and on paper they pass through here.
#pragma once

#include "core/base/error.h"
#include "core/report/bars.h"
#include "core/report/figure.h"
#include "ui/render/language.h"

#include <QString>

#include <string>

namespace sealwalk::render {

/// A sentence, phrase or label of the core as the screen writes it: rates with a true minus, in the window's
/// language and with its decimal sign. What no pattern of core_patterns.h knows stays as it is.
QString inWords(const std::string& text);
/// Why something was refused, in the window's language. What was typed is quoted as it was typed; the file,
/// line or field in front (Error::in) stays in front.
QString inWords(const Error& error);
/// A sentence, phrase or label with a capital in front and a full stop behind.
QString inSentence(const std::string& phrase);
QString inSentence(const Error& error);

/// The defect or action of a repair: a word of the core's lists in the window's language, somebody's own
/// words as they are.
QString repairInWords(const std::string& stored);

/// Figures the core wrote, with the decimal sign of the window: "4,6e−7", "2,6–11".
QString inFigures(const std::string& figures);
/// Phrases with commas between, each by itself and its figures plain: what a map's point says to a screen
/// reader.
QString inPhrases(const std::string& list);

/// With every text in the window's language.
report::Figure inWords(report::Figure figure);
report::BarFigure inWords(report::BarFigure figure);

} // namespace sealwalk::render
