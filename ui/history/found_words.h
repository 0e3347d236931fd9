// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the record are English; who types in the window's language finds them too.
#pragma once

#include <QString>

#include <string>
#include <vector>

namespace sealwalk::ui {

/// What to search for when `typed` was typed: the text itself, then each word of the record that reads so in
/// the window's language - what was found, verdicts, kinds of joint, defects and repairs, the state of a job.
std::vector<std::string> searchedFor(const QString& typed);

/// A line of the record as the window writes it: words of the record in its language, what a person typed as
/// it is.
QString recordLineInWords(const std::string& line);

/// `line`, with its beginning left out where `typed` would otherwise stand far behind it.
QString cutAround(const QString& line, const QString& typed);

} // namespace sealwalk::ui
