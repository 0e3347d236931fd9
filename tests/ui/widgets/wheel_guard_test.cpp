// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/wheel_guard.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <QtTest>

namespace sealwalk::ui {

namespace {

void turnWheelOver(QWidget* widget)
{
    const QPointF middle = widget->rect().center();
    QWheelEvent down(middle, widget->mapToGlobal(middle), QPoint(), QPoint(0, -120), Qt::NoButton,
                     Qt::NoModifier, Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&down); // only what a person turned goes on to a parent
    qApp->notify(widget, &down);
}

} // namespace

// Regression: the wheel over the column of Prepare turned "Display shows" from mbar·l/s to mol/s in passing,
// kept it at once, and stopped scrolling there.
TEST(WheelGuard, ScrollsPastChoicesAndNumbers)
{
    WheelGuard guard;
    qApp->installEventFilter(&guard);
    QScrollArea area;
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    auto* first = new QLineEdit(page);
    column->addWidget(first);
    auto* unit = new QComboBox(page);
    auto* connected = new QComboBox(page);
    connected->setEditable(true);
    for (QComboBox* choice : {unit, connected}) {
        choice->addItems({QStringLiteral("mbar·l/s"), QStringLiteral("Pa·m³/s"), QStringLiteral("mol/s")});
        column->addWidget(choice);
    }
    auto* turns = new QSpinBox(page);
    turns->setValue(50);
    column->addWidget(turns);
    column->addSpacing(2000);
    area.setWidget(page);
    area.resize(300, 200);
    area.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&area));
    first->setFocus();
    for (QWidget* field : {static_cast<QWidget*>(unit), static_cast<QWidget*>(connected),
                           static_cast<QWidget*>(turns)}) {
        const int before = area.verticalScrollBar()->value();
        turnWheelOver(field);
        EXPECT_GT(area.verticalScrollBar()->value(), before) << field->metaObject()->className();
        EXPECT_FALSE(field->hasFocus()) << field->metaObject()->className();
    }
    EXPECT_EQ(unit->currentIndex(), 0);
    EXPECT_EQ(connected->currentIndex(), 0);
    EXPECT_EQ(turns->value(), 50);
}

} // namespace sealwalk::ui
