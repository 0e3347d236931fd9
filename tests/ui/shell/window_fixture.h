// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window over a history of its own, without a display.
#pragma once

#include "ui/session/job_session.h"
#include "ui/shell/compose_pages.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTimer>
#include <QtTest>

#include <functional>
#include <memory>

namespace sealwalk::ui {

class WindowTest : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        render::applyTheme(*qobject_cast<QApplication*>(QApplication::instance()), render::ThemeName::Paper);
        settings = std::make_unique<ShellSettings>(m_folder.filePath(QStringLiteral("window.ini")));
        session = std::make_unique<JobSession>();
        window = std::make_unique<MainWindow>(*session, *settings);
        composePages(*window);
        openHistory(*window, historyFile(), true);
        window->setWindowState(Qt::WindowNoState); // the offscreen display is smaller, but has no edge
        window->resize(1366, 740);
        window->show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }

    void TearDown() override
    {
        window.reset();
        session.reset();
    }

    [[nodiscard]] QString historyFile() const { return m_folder.filePath(QStringLiteral("test.sealwalk")); }

    /// Runs `act` on the next modal dialog, which must come and go before waitForDialogs().
    void onDialog(const std::function<void(QDialog&)>& act)
    {
        ++m_awaited;
        auto* look = new QTimer(window.get());
        QObject::connect(look, &QTimer::timeout, window.get(),
                         [this, look, act, before = QApplication::activeModalWidget()] {
                             auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
                             if (dialog == nullptr || dialog == before)
                                 return;
                             look->deleteLater();
                             act(*dialog);
                             --m_awaited;
                         });
        look->start(5);
    }

    [[nodiscard]] bool waitForDialogs() const
    {
        return QTest::qWaitFor([this] { return m_awaited == 0; }) &&
               QTest::qWaitFor([] { return QApplication::activeModalWidget() == nullptr; });
    }

    void makeObject(const QString& name, const QString& pointLimit = QStringLiteral("1e-6"))
    {
        model::TestObject object;
        object.id = model::ObjectId::create();
        object.name = name.toStdString();
        object.pointLimit = millibarLitresPerSecond(pointLimit.toDouble());
        object.volume = litres(480);
        ASSERT_TRUE(session->createObject(object));
        objectId = object.id;
    }

    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) const
    {
        QWidget* target = QApplication::focusWidget();
        QTest::keyClick(target == nullptr ? window.get() : target, key, modifiers);
    }

    std::unique_ptr<ShellSettings> settings;
    std::unique_ptr<JobSession> session;
    std::unique_ptr<MainWindow> window;
    model::ObjectId objectId;

private:
    int m_awaited = 0;
    QTemporaryDir m_folder;
};

} // namespace sealwalk::ui
