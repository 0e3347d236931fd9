// SPDX-License-Identifier: GPL-3.0-or-later
// The spray page over a small job, with its clock shortened so that nobody waits.
#pragma once

#include "tests/support/temporary_history.h"
#include "ui/spray/call_panel.h"
#include "ui/spray/entry_field.h"
#include "ui/spray/spray_page.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QTest>

#include <memory>

namespace sealwalk::ui {

class SprayPageTest : public ::testing::Test
{
protected:
    explicit SprayPageTest(int points = 6)
        : m_points(points)
    {}

    void SetUp() override
    {
        history.startJob(m_points);
        page = std::make_unique<SprayPage>(history.session);
        page->resize(1366, 644);
        page->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    }

    [[nodiscard]] SprayController& controller() const { return page->controller(); }
    [[nodiscard]] EntryField& field() const { return page->findChild<CallPanel*>()->field(); }
    [[nodiscard]] int called() const { return controller().call() ? controller().call()->number : 0; }
    [[nodiscard]] const model::Reading& last() const { return history.session.job().readings.back(); }
    [[nodiscard]] std::size_t stored() const { return history.session.job().readings.size(); }
    void press(Qt::Key key) { QTest::keyClick(&field(), key); }
    void type(const QString& keys) { QTest::keyClicks(&field(), keys); }
    void enterValue(const QString& keys)
    {
        type(keys);
        press(Qt::Key_Return);
    }

    tests::TemporaryHistory history;
    std::unique_ptr<SprayPage> page;

private:
    int m_points;
};

} // namespace sealwalk::ui
