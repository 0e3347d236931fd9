// SPDX-License-Identifier: GPL-3.0-or-later
// The Prepare page over a fresh job, driven by its own fields and dialogs.
#pragma once

#include "core/storage/history_store.h"
#include "ui/prepare/prepare_page.h"
#include "ui/prepare/verdict_box.h"
#include "ui/session/job_session.h"
#include "ui/widgets/quantity_edit.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDate>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTimer>
#include <QtTest>

#include <functional>
#include <memory>

namespace sealwalk::ui {

class PreparePageTest : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(session.openHistory(m_folder.filePath(QStringLiteral("p.sealwalk")).toStdString(), true));
        model::TestObject object;
        object.id = model::ObjectId::create();
        object.name = "Box coater 2";
        object.volume = litres(480);
        ASSERT_TRUE(session.createObject(object));
        objectId = object.id;
        page = std::make_unique<PreparePage>(session);
        ASSERT_TRUE(session.createJob(object.id, "fault search"));
        page->resize(1366, 644);
        page->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    }

    [[nodiscard]] QuantityEdit* edit(const char* name) const
    {
        for (QuantityEdit* candidate : page->findChildren<QuantityEdit*>())
            if (candidate->field()->accessibleName() == QString::fromUtf8(name))
                return candidate;
        ADD_FAILURE() << "no field " << name;
        return nullptr;
    }

    void type(const char* name, const char* text) const
    {
        const QuantityEdit* field = edit(name);
        ASSERT_NE(field, nullptr);
        field->field()->setFocus();
        field->field()->selectAll();
        QTest::keyClicks(field->field(), QString::fromUtf8(text));
        QTest::keyClick(field->field(), Qt::Key_Return);
    }

    /// Presses the button and lets `act` work in the dialog that opens.
    void inDialog(const char* button, const std::function<void(QDialog&)>& act)
    {
        bool came = false;
        QTimer::singleShot(0, page.get(), [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            came = true;
            act(*dialog);
            if (dialog->isVisible()) {
                ADD_FAILURE() << "the dialog did not take its entries";
                dialog->reject();
            }
        });
        page->findChild<QPushButton*>(QString::fromLatin1(button))->click();
        EXPECT_TRUE(came) << button;
    }

    static void typeIn(QDialog& dialog, const char* name, const QString& text)
    {
        for (QLineEdit* field : dialog.findChildren<QLineEdit*>())
            if (field->accessibleName() == QString::fromUtf8(name)) {
                field->setFocus();
                field->selectAll();
                QTest::keyClicks(field, text);
                QTest::keyClick(field, Qt::Key_Tab);
                return;
            }
        ADD_FAILURE() << "no field " << name;
    }

    static void store(QDialog& dialog) { dialog.findChild<QPushButton*>(QStringLiteral("store"))->click(); }

    [[nodiscard]] std::string verdict() const
    {
        return page->findChild<VerdictBox*>()->sentence().toStdString();
    }

    void enterCalibration()
    {
        inDialog("enterCheck", [](QDialog& dialog) {
            typeIn(dialog, "certified value", QStringLiteral("1e-7"));
            typeIn(dialog, "date of the certificate", QDate::currentDate().toString(Qt::ISODate));
            typeIn(dialog, "shown with the leak shut", QStringLiteral("1e-9"));
            typeIn(dialog, "shown with the leak open", QStringLiteral("6.3e-8"));
            typeIn(dialog, "response to 63 %", QStringLiteral("2.4"));
            store(dialog);
        });
    }

    void enterBackground()
    {
        inDialog("enterBackground", [](QDialog& dialog) {
            QString lines;
            for (int i = 0; i < 30; ++i)
                lines += i % 2 == 0 ? QStringLiteral("1.1e-9\n") : QStringLiteral("9e-10\n");
            dialog.findChild<QPlainTextEdit*>()->setPlainText(lines);
            store(dialog);
        });
    }

    model::ObjectId objectId;
    QTemporaryDir m_folder;
    JobSession session;
    std::unique_ptr<PreparePage> page;
};

} // namespace sealwalk::ui
