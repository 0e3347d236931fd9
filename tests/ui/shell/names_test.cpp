// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader finds: every stage and every dialog behind a menu entry or a button with an ellipsis.
#include "core/editing/joints.h"
#include "core/editing/sheets.h"
#include "tests/ui/shell/window_fixture.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QAction>
#include <QComboBox>
#include <QFileDialog>
#include <QMenu>
#include <QPointer>
#include <QScrollBar>
#include <QTabBar>

#include <set>

namespace sealwalk::ui {
namespace {

bool isPartOfAnother(const QWidget& widget)
{
    for (const QWidget* up = widget.parentWidget(); up != nullptr; up = up->parentWidget())
        if (qobject_cast<const QComboBox*>(up) != nullptr ||
            qobject_cast<const QAbstractSpinBox*>(up) != nullptr ||
            qobject_cast<const QScrollBar*>(up) != nullptr || qobject_cast<const QTabBar*>(up) != nullptr ||
            qobject_cast<const QLineEdit*>(up) != nullptr)
            return true;
    return false;
}

bool takesAction(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::Button:
    case QAccessible::ButtonMenu:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::ComboBox:
    case QAccessible::EditableText:
    case QAccessible::SpinBox:
    case QAccessible::Slider:
    case QAccessible::List:
    case QAccessible::Table:
    case QAccessible::Tree:
        return true;
    default:
        return false;
    }
}

/// Every visible control below `part` has a name.
void expectNames(QWidget& part, const std::string& where)
{
    for (QWidget* widget : part.findChildren<QWidget*>()) {
        if (!widget->isVisible() || isPartOfAnother(*widget) || widget->window() != part.window())
            continue;
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
        if (face == nullptr || (!takesAction(face->role()) && (widget->focusPolicy() & Qt::TabFocus) == 0) ||
            widget->inherits("QMenuBar") || widget->inherits("QTabBar") || widget->inherits("QScrollArea") ||
            widget->focusProxy() != nullptr)
            continue;
        EXPECT_FALSE(face->text(QAccessible::Name).trimmed().isEmpty())
            << where << ": " << widget->metaObject()->className() << " " << widget->objectName().toStdString()
            << " in " << widget->parentWidget()->metaObject()->className();
    }
}

class Names : public WindowTest
{
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        makeObject(QStringLiteral("Furnace"));
        ASSERT_TRUE(session->createJob(objectId, "check"));
        session->setLogger(QStringLiteral("T. Tester"));
        model::Sheet sheet;
        sheet.id = model::SheetId::create();
        sheet.name = "Door";
        ASSERT_TRUE(session->edit(*editing::addSheet(session->job().sketch, sheet)));
        model::Joint joint;
        joint.id = model::JointId::create();
        joint.sheet = sheet.id;
        joint.name = "Port";
        joint.shape = geometry::Ring{{600, 600}, 200};
        ASSERT_TRUE(session->edit(
            *editing::addJoint(session->job().sketch, joint, editing::Laying{.number = 6, .first = {}})));
        ASSERT_TRUE(session->openRound(model::RoundKind::AsFound, {}));
        ReadingDraft draft;
        draft.point = session->job().sketch.points.front().id;
        draft.peak = millibarLitresPerSecond(3e-5);
        ASSERT_TRUE(session->store(draft));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !session->findings().empty(); }));
    }

    /// Opens what `open` opens, looks at it, and shuts it; what opens no dialog is left alone.
    void look(const std::string& where, const std::function<void()>& open)
    {
        QTimer watch;
        QObject::connect(&watch, &QTimer::timeout, window.get(), [this, where] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            if (dialog == nullptr)
                return;
            if (qobject_cast<QFileDialog*>(dialog) == nullptr) {
                expectNames(*dialog, where);
                seen.insert(dialog->metaObject()->className());
            }
            dialog->reject();
        });
        watch.start(20);
        open();
        QTest::qWait(30);
    }

    std::set<std::string> seen;
};

TEST_F(Names, StandOnEveryControlOfEveryStage)
{
    emit window->touchStripChanged(false);
    for (const bool touch : {false, true}) {
        emit window->touchStripChanged(touch);
        for (const Stage stage : kStages) {
            window->showStage(stage);
            QTest::qWait(10);
            expectNames(*window, stageKey(stage).toStdString());
        }
    }
}

// Regression: cells that hold nothing were read as nothing; a cell that can be reached says what is not
// there.
TEST_F(Names, StandOnEveryCell)
{
    for (const Stage stage : kStages) {
        window->showStage(stage);
        QTest::qWait(10);
    }
    std::set<std::string> nameless;
    for (const auto* view : window->findChildren<QAbstractItemView*>()) {
        if (view->model() == nullptr || view->inherits("QComboBoxListView") ||
            view->inherits("QHeaderView"))
            continue;
        for (int row = 0; row < view->model()->rowCount(); ++row)
            for (int column = 0; column < view->model()->columnCount(); ++column) {
                const QModelIndex cell = view->model()->index(row, column);
                if ((cell.flags() & Qt::ItemIsSelectable) != 0 &&
                    cell.data(Qt::AccessibleTextRole).toString().trimmed().isEmpty() &&
                    cell.data().toString().trimmed().isEmpty())
                    nameless.insert(view->accessibleName().toStdString() + ", column " +
                                    std::to_string(column));
            }
    }
    for (const std::string& cell : nameless)
        ADD_FAILURE() << cell;
}

TEST_F(Names, StandInEveryDialogOfTheMenus)
{
    for (const QPointer<QAction>& action : [this] {
             QList<QPointer<QAction>> all;
             for (QAction* one : window->findChildren<QAction*>())
                 all.append(one);
             return all;
         }()) {
        if (action.isNull() || !action->isEnabled() || !action->text().endsWith(QStringLiteral("…")))
            continue;
        look("menu " + action->text().toStdString(), [&action] { action->trigger(); });
    }
    EXPECT_GE(seen.size(), 5U);
}

TEST_F(Names, StandInEveryDialogOfThePages)
{
    for (const Stage stage : kStages) {
        window->showStage(stage);
        QTest::qWait(10);
        QList<QPointer<QAbstractButton>> buttons;
        for (QAbstractButton* button : window->page(stage)->findChildren<QAbstractButton*>())
            buttons.append(button);
        for (const QPointer<QAbstractButton>& button : buttons)
            if (!button.isNull() && button->isVisible() && button->isEnabled() &&
                button->text().endsWith(QStringLiteral("…")))
                look(stageKey(stage).toStdString() + " " + button->text().toStdString(),
                     [&button] { button->click(); });
    }
    EXPECT_GE(seen.size(), 5U);
}

} // namespace
} // namespace sealwalk::ui
