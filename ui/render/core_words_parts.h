// SPDX-License-Identifier: GPL-3.0-or-later
// What the words of the screen are made with, for those of a report. Inner header of core_words.
#pragma once

#include "ui/render/pattern_set.h"

#include <QString>

#include <optional>

namespace sealwalk::render::detail {

const PatternSet& ordinaryWords();
const PatternSet& wordsOfRepairs();
/// A refusal with or without what stands in front of it; nothing when it is none.
std::optional<QString> refusalInWords(const QString& text);
/// "17, 38 and 60".
QString numbersInWords(const QString& text);

} // namespace sealwalk::render::detail
