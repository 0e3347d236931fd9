// SPDX-License-Identifier: GPL-3.0-or-later
// sealwalk: the window. Takes a history file, a job file, or nothing: then the user's own history.
#include "core/storage/history_store.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/shell/catalogue.h"
#include "ui/shell/compose_pages.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"
#include "ui/shell/prompt_painting.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <clocale>

namespace {

using namespace sealwalk;

/// The catalogue of the locale, else the one of `otherwise`, if any.
void install(QTranslator& translator, const QString& catalogue, const QString& folder,
             const QString& otherwise = {})
{
    if (translator.load(QLocale(), catalogue, QStringLiteral("_"), folder) ||
        (!otherwise.isEmpty() && translator.load(otherwise, folder)))
        QApplication::installTranslator(&translator);
}

} // namespace

int main(int argc, char** argv)
{
    ui::paintPromptly();
    QApplication application(argc, argv);
    // Qt takes over the C library's locale; numbers of libraries must not follow it.
    std::setlocale(LC_NUMERIC, "C");
    QApplication::setApplicationName(QStringLiteral("sealwalk"));
    QApplication::setApplicationDisplayName(QString());
    QApplication::setApplicationVersion(QStringLiteral(SEALWALK_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("sealwalk"));

    QCommandLineParser options;
    options.setApplicationDescription(
        QStringLiteral("Find, size, judge and prove the repair of vacuum leaks, joint by joint."));
    options.addHelpOption();
    options.addVersionOption();
    const QCommandLineOption theme(QStringLiteral("theme"),
                                   QStringLiteral("paper, slate or hall for this start"),
                                   QStringLiteral("name"));
    const QCommandLineOption language(QStringLiteral("language"),
                                      QStringLiteral("language and number format, such as de_DE or en_GB"),
                                      QStringLiteral("locale"));
    options.addOptions({theme, language});
    options.addPositionalArgument(QStringLiteral("file"),
                                  QStringLiteral("history or job file; none: your own history"),
                                  QStringLiteral("[file]"));
    options.process(application);
    if (options.isSet(language))
        QLocale::setDefault(QLocale(options.value(language)));

    QTranslator qtWords;
    ui::Catalogue ownWords;
    install(qtWords, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(ownWords, QStringLiteral("sealwalk"), QStringLiteral(":/sealwalk/i18n"),
            QStringLiteral("sealwalk_en"));

    ui::ShellSettings settings;
    if (options.isSet(theme)) {
        const QString word = options.value(theme);
        settings.setTheme(word == QStringLiteral("slate")  ? render::ThemeName::Slate
                          : word == QStringLiteral("hall") ? render::ThemeName::Hall
                                                           : render::ThemeName::Paper);
    }
    render::applyTheme(application, settings.theme());

    ui::JobSession session;
    ui::MainWindow window(session, settings);
    ui::composePages(window);
    window.show();
    ui::openAtStart(window, options.positionalArguments().value(0));
    return QApplication::exec();
}
