// SPDX-License-Identifier: GPL-3.0-or-later
// The languages a report or map can be written in, whatever language the window is in.
#pragma once

#include "ui/render/language.h"

#include <QString>

#include <vector>

namespace sealwalk::ui {

class ShellSettings;

struct ReportLanguage
{
    QString code; ///< "en", "de"
    QString name; ///< in itself: "English", "Deutsch"
    render::RecordLanguage words;
};

/// English first, then one for each catalogue that the program carries.
const std::vector<ReportLanguage>& reportLanguages();
/// The one that was chosen last; before that the window's, else English.
ReportLanguage reportLanguage(const ShellSettings& settings,
                              const std::vector<ReportLanguage>& languages = reportLanguages());

} // namespace sealwalk::ui
