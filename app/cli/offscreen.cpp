// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/offscreen.h"

#include <QApplication>
#include <QLocale>

#include <clocale>
#include <cstdio>

namespace sealwalk::cli {

Offscreen::Offscreen()
{
    static int count = 1;
    static char name[] = "sealwalk-cli";
    static char* arguments[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qunsetenv("QT_SCALE_FACTOR"); // pictures do not depend on somebody's screen
    qputenv("QT_LOGGING_RULES", "qt.qpa.*=false");
    QLocale::setDefault(QLocale::c());
    // What Qt grumbles about an environment without a desktop is not for stderr; failures come as Results.
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
        if (type == QtFatalMsg)
            std::fprintf(stderr, "%s\n", qUtf8Printable(text));
    });
    m_application = std::make_unique<QApplication>(count, arguments);
    std::setlocale(LC_NUMERIC, "C"); // QApplication switches it to the user's
}

Offscreen::~Offscreen() = default;

} // namespace sealwalk::cli
