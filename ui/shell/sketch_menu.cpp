// SPDX-License-Identifier: GPL-3.0-or-later
// What the keys do on the sheet, as commands to be found in the menu.
#include "ui/shell/main_window.h"
#include "ui/shell/menus.h"
#include "ui/sketch/sketch_page.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>

namespace sealwalk::ui {

namespace {

struct Row
{
    const char* text; ///< nullptr: a line between groups
    Qt::Key key = Qt::Key_unknown;
    Qt::KeyboardModifiers modifiers = {};
};

constexpr Row kRows[] = {
    {nullptr},
    {QT_TRANSLATE_NOOP("SketchMenu", "&Copy"), Qt::Key_C, Qt::ControlModifier},
    {QT_TRANSLATE_NOOP("SketchMenu", "Cu&t"), Qt::Key_X, Qt::ControlModifier},
    {QT_TRANSLATE_NOOP("SketchMenu", "&Paste"), Qt::Key_V, Qt::ControlModifier},
    {QT_TRANSLATE_NOOP("SketchMenu", "Select &all"), Qt::Key_A, Qt::ControlModifier},
    {nullptr},
    {QT_TRANSLATE_NOOP("SketchMenu", "&Group"), Qt::Key_G, Qt::ControlModifier},
    {QT_TRANSLATE_NOOP("SketchMenu", "U&ngroup"), Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier},
    {QT_TRANSLATE_NOOP("SketchMenu", "&Lock or unlock"), Qt::Key_L, {}},
    {QT_TRANSLATE_NOOP("SketchMenu", "&Mirror"), Qt::Key_M, {}},
    {QT_TRANSLATE_NOOP("SketchMenu", "Turn l&eft"), Qt::Key_BracketLeft, {}},
    {QT_TRANSLATE_NOOP("SketchMenu", "Turn r&ight"), Qt::Key_BracketRight, {}},
    {nullptr},
    {QT_TRANSLATE_NOOP("SketchMenu", "Retire or &delete"), Qt::Key_Delete, {}},
    {QT_TRANSLATE_NOOP("SketchMenu", "Renum&ber"), Qt::Key_N, {}},
    {QT_TRANSLATE_NOOP("SketchMenu", "Reverse the &sense"), Qt::Key_D, {}},
    {QT_TRANSLATE_NOOP("SketchMenu", "Number from &here"), Qt::Key_D, Qt::ShiftModifier},
    {nullptr},
};

} // namespace

void Menus::buildSketch(QMenu* menu)
{
    for (const Row& row : kRows) {
        if (row.text == nullptr) {
            menu->addSeparator();
            continue;
        }
        const QKeySequence keys(static_cast<int>(row.key) | static_cast<int>(row.modifiers));
        // With Ctrl wherever the keyboard is on the page. A key alone belongs to the sheet, and would be
        // missing from a list or a field; the menu only tells it.
        const bool everywhere = row.modifiers.testFlag(Qt::ControlModifier);
        const QString text = QCoreApplication::translate("SketchMenu", row.text);
        m_needSketch.push_back(
            add(menu, everywhere ? text : text + QLatin1Char('\t') + keys.toString(QKeySequence::NativeText),
                everywhere ? keys : QKeySequence(), [this, &row] {
                    if (auto* page = qobject_cast<SketchPage*>(m_window.page(Stage::Sketch)))
                        page->press(row.key, row.modifiers);
                }));
    }
}

} // namespace sealwalk::ui
