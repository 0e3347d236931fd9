// SPDX-License-Identifier: GPL-3.0-or-later
// main() of test programs with widgets: no display, C locale, and every warning of Qt is a failure.
#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>

#include <iostream>

namespace {

void onMessage(QtMsgType type, const QMessageLogContext& /*context*/, const QString& text)
{
    std::cerr << text.toStdString() << '\n';
    // The offscreen platform says this for every window, and of every list that pops up, and means no harm.
    for (const char* harmless :
         {"propagateSizeHints", "not support raise()", "not support grabbing the keyboard"})
        if (text.contains(QLatin1String(harmless)))
            return;
    if (type == QtWarningMsg || type == QtCriticalMsg)
        ADD_FAILURE() << "Qt warned: " << text.toStdString();
}

} // namespace

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    QLocale::setDefault(QLocale::c());
    QStandardPaths::setTestModeEnabled(true);
    const QApplication application(argc, argv);
    qInstallMessageHandler(onMessage);
    return RUN_ALL_TESTS();
}
