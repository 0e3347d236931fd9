// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/report_languages.h"

#include "ui/shell/shell_settings.h"

#include <QCoreApplication>
#include <QDir>
#include <QTranslator>

#include <algorithm>
#include <memory>

namespace sealwalk::ui {

namespace {

constexpr const char* kCarried = ":/sealwalk/i18n";
constexpr const char* kEnglish = "en"; // its catalogue holds plurals only

/// By what the window says: which catalogue was found for it depends on more than its locale.
bool isOfWindow(const ReportLanguage& language)
{
    constexpr const char* kSaid = "limit";
    return language.words != nullptr &&
           language.words->words().translate("Core", kSaid) == QCoreApplication::translate("Core", kSaid);
}

std::vector<ReportLanguage> carried()
{
    std::vector<ReportLanguage> languages{{QLatin1String(kEnglish), QStringLiteral("English"), {}}};
    const QString beginning = QStringLiteral("sealwalk_");
    const QDir catalogues(QLatin1String(kCarried), beginning + QStringLiteral("*.qm"));
    for (const QFileInfo& file : catalogues.entryInfoList(QDir::Files, QDir::Name)) {
        const QString code = file.completeBaseName().mid(beginning.size());
        auto words = std::make_shared<QTranslator>();
        if (code == QLatin1String(kEnglish) || !words->load(file.filePath()))
            continue;
        const QLocale locale(code);
        languages.push_back({code, locale.nativeLanguageName(),
                             std::make_shared<const render::Language>(locale, std::move(words))});
    }
    return languages;
}

} // namespace

const std::vector<ReportLanguage>& reportLanguages()
{
    static const std::vector<ReportLanguage> languages = carried(); // read once: a menu asks at every change
    return languages;
}

ReportLanguage reportLanguage(const ShellSettings& settings, const std::vector<ReportLanguage>& languages)
{
    const auto chosen = std::ranges::find(languages, settings.reportLanguage(), &ReportLanguage::code);
    if (chosen != languages.end())
        return *chosen;
    const auto window = std::ranges::find_if(languages, isOfWindow);
    return window == languages.end() ? languages.front() : *window;
}

} // namespace sealwalk::ui
