// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/sketch/table.h"

#include "ui/session/job_session.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QTest>

namespace sealwalk::ui {

DrawingTable::DrawingTable(bool withSheet)
    : m_session(std::make_unique<JobSession>())
{
    EXPECT_TRUE(m_session->openHistory(m_folder.filePath(QStringLiteral("h.sealwalk")).toStdString(), true));
    model::TestObject object;
    object.id = model::ObjectId::create();
    object.name = "Box coater";
    EXPECT_TRUE(m_session->createObject(object).has_value());
    const auto job = m_session->createJob(object.id, "yearly");
    EXPECT_TRUE(job.has_value());
    EXPECT_TRUE(m_session->openJob(*job).has_value());
    m_page = std::make_unique<SketchPage>(*m_session);
    QObject::connect(m_page.get(), &SketchPage::noteRequested, m_page.get(),
                     [this](Severity, const QString& text) { m_note = text; });
    m_page->resize(1366, 644);
    m_page->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(m_page.get()));
    if (withSheet) {
        key(Qt::Key_T, Qt::ControlModifier);
        EXPECT_EQ(sketch().sheets.size(), 1u);
        canvas().setFocus();
    }
}

QPoint DrawingTable::at(double x, double up)
{
    return canvas().view().toScreen({x, up}).toPoint();
}

void DrawingTable::drag(double x1, double up1, double x2, double up2, Qt::KeyboardModifiers keys)
{
    const QPoint a = at(x1, up1);
    const QPoint b = at(x2, up2);
    QTest::mousePress(&canvas(), Qt::LeftButton, keys, a);
    for (int i = 1; i <= 4; ++i) {
        const QPoint to = a + (b - a) * i / 4;
        QMouseEvent move(QEvent::MouseMove, to, canvas().mapToGlobal(to), Qt::NoButton, Qt::LeftButton, keys);
        QApplication::sendEvent(&canvas(), &move);
    }
    QTest::mouseRelease(&canvas(), Qt::LeftButton, keys, b);
}

void DrawingTable::click(double x, double up, Qt::KeyboardModifiers keys)
{
    hover(x, up);
    QTest::mouseClick(&canvas(), Qt::LeftButton, keys, at(x, up));
    QTest::qWait(QApplication::doubleClickInterval() / 20);
}

void DrawingTable::hover(double x, double up)
{
    const QPoint to = at(x, up);
    QMouseEvent move(QEvent::MouseMove, to, canvas().mapToGlobal(to), Qt::NoButton, Qt::NoButton, {});
    QApplication::sendEvent(&canvas(), &move);
}

void DrawingTable::key(Qt::Key key, Qt::KeyboardModifiers keys)
{
    QWidget* target = QApplication::focusWidget();
    QTest::keyClick(target != nullptr ? target : m_page.get(), key, keys);
}

void DrawingTable::type(const char* text)
{
    QTest::keyClicks(&canvas(), QString::fromLatin1(text));
}

void DrawingTable::commit(const Result<editing::Edit>& edit)
{
    EXPECT_TRUE(m_page->desk().commit(edit)) << m_note.toStdString();
}

} // namespace sealwalk::ui
