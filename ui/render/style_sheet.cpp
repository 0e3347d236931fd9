// SPDX-License-Identifier: GPL-3.0-or-later
// Palette and style sheet of the Fusion style, from the tokens.
#include "ui/render/theme.h"

#include <QRegularExpression>

namespace sealwalk::render {

namespace {

struct Placeholder
{
    const char* name;
    Role role;
};

constexpr Placeholder kPlaceholders[] = {
    {"window", Role::Window},
    {"panel", Role::Panel},
    {"field", Role::Field},
    {"sheet", Role::Sheet},
    {"line", Role::Line},
    {"edge", Role::Edge},
    {"ink", Role::Ink},
    {"inkSoft", Role::InkSoft},
    {"inkFaint", Role::InkFaint},
    {"disabled", Role::Disabled},
    {"accent", Role::Accent},
    {"onAccent", Role::OnAccent},
    {"accentWash", Role::AccentWash},
    {"over", Role::Over},
    {"overWash", Role::OverWash},
    {"unsure", Role::Unsure},
    {"unsureWash", Role::UnsureWash},
};

// Dynamic properties the sheet knows: kind="primary" on buttons, wrong=true on fields,
// role="title|head|caption| soft|strong" on labels, ground="panel|field|sheet" on plain widgets.
constexpr const char* kSheet = R"(
QWidget { color: @ink; font-size: 12px; }
QMainWindow, QDialog { background: @panel; }
QLineEdit QToolButton { min-height: 0; min-width: 0; padding: 0; margin: 0; border: 0; background: transparent; }
QMenuBar { background: @window; border: 0; padding: 0 8px; }
QMenuBar::item { padding: 4px 10px; background: transparent; }
QMenuBar[isNarrow="true"] { padding: 0 2px; }
QMenuBar[isNarrow="true"]::item { padding: 4px; }
QMenuBar::item:selected { background: @accentWash; }
QMenu { background: @field; border: 1px solid @edge; padding: 4px 0; }
QMenu::item { padding: 4px 24px 4px 24px; }
QMenu::item:selected { background: @accentWash; color: @ink; }
QMenu::item:disabled { color: @disabled; }
QMenu::separator { height: 1px; background: @line; margin: 4px 0; }
QToolTip { background: @field; color: @ink; border: 1px solid @edge; padding: 4px; }
QLabel[role="caption"] { font-size: 11px; color: @inkFaint; }
QLabel[role="soft"] { color: @inkSoft; }
QLabel[role="strong"] { font-size: 13px; font-weight: 700; }
QLabel[role="title"] { font-size: 16px; font-weight: 700; }
QLabel[role="title-wrong"] { font-size: 16px; font-weight: 700; color: @over; }
QLabel[role="head"] { font-size: 20px; font-weight: 700; }
QLabel[role="wrong"] { color: @over; }
QLabel[role="faint"] { color: @inkFaint; }
QLabel[role="lead"] { font-size: 16px; }
QLabel[role="mark"] { font-size: 34px; font-weight: 700; }
QLabel[role="gap"] { font-size: 11px; color: @unsure; }
QLabel[role="corner"] { font-size: 11px; color: @inkSoft; }
QLabel[role="corner-wrong"] { font-size: 11px; font-weight: 700; color: @over; }
*[ground="window"] { background: @window; }
*[ground="panel"] { background: @panel; }
*[ground="field"] { background: @field; }
*[ground="sheet"] { background: @sheet; }
QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QAbstractSpinBox {
  background: @field; border: 1px solid @edge; border-radius: 3px; padding: 0 7px; min-height: 28px;
  selection-background-color: @accent; selection-color: @onAccent; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus, QAbstractSpinBox:focus {
  border: 2px solid @accent; padding: 0 6px; min-height: 26px; }
QLineEdit[wrong="true"] { border: 2px solid @over; padding: 0 6px; min-height: 26px; }
QLineEdit:disabled, QComboBox:disabled, QAbstractSpinBox:disabled { color: @disabled; border-color: @line; background: @panel; }
QPlainTextEdit, QTextEdit { padding: 4px 6px; }
QComboBox[role="corner"] { font-size: 11px; min-height: 18px; padding: 0 5px; }
QComboBox[role="corner"]:focus { min-height: 16px; padding: 0 4px; }
QPushButton[role="small"] { min-height: 18px; padding: 0 8px; font-size: 11px; }
QToolButton[role="switch"] { border-radius: 0; padding: 0 10px; }
#noteLine { background: @window; border: 0; border-top: 1px solid @line; }
#noteLine[severity="caution"] { background: @unsureWash; }
#noteLine[severity="error"] { background: @overWash; }
#keyCard { border: 1px solid @edge; }
QFrame[role="line"] { background: @line; border: 0; }
QFrame[role="caution"] { background: @unsureWash; border: 1px solid @unsure; }
QComboBox::drop-down { width: 20px; border: 0; }
QComboBox::down-arrow { image: url(:/sealwalk/icons/drop-down.svg); width: 10px; height: 10px; }
QAbstractSpinBox { padding-right: 22px; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 20px; border: 0; background: transparent; subcontrol-origin: border; }
QAbstractSpinBox::up-button { subcontrol-position: top right; }
QAbstractSpinBox::down-button { subcontrol-position: bottom right; }
QAbstractSpinBox::up-arrow { image: url(:/sealwalk/icons/step-up.svg); width: 8px; height: 8px; }
QAbstractSpinBox::down-arrow { image: url(:/sealwalk/icons/drop-down.svg); width: 8px; height: 8px; }
QDateEdit::drop-down { width: 20px; border: 0; subcontrol-origin: border; subcontrol-position: center right; }
QDateEdit::down-arrow { image: url(:/sealwalk/icons/drop-down.svg); width: 10px; height: 10px; }
QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }
QComboBox QAbstractItemView { background: @field; border: 1px solid @edge; selection-background-color: @accentWash; selection-color: @ink; }
QPushButton, QToolButton { background: @field; border: 1px solid @edge; border-radius: 3px; padding: 0 12px; min-height: 28px; }
QToolButton { padding: 0 6px; }
QPushButton:hover, QToolButton:hover { background: @accentWash; }
QPushButton:pressed, QToolButton:pressed { background: @accentWash; border-color: @accent; }
QPushButton:focus, QToolButton:focus { outline: none; border: 2px solid @accent; padding: 0 11px; min-height: 26px; }
QToolButton:focus { padding: 0 5px; }
QPushButton:checked, QToolButton:checked { background: @ink; color: @field; border-color: @ink; font-weight: 700; }
QPushButton:disabled, QToolButton:disabled { color: @disabled; border-color: @line; background: @panel; }
QPushButton[kind="primary"] { background: @accent; color: @onAccent; border-color: @accent; font-weight: 700; }
QPushButton[kind="primary"]:focus { border: 2px solid @ink; }
QPushButton[kind="primary"]:disabled { background: @panel; color: @disabled; border-color: @line; }
QToolButton[kind="flat"] { background: transparent; border-color: transparent; }
QToolButton[kind="flat"]:hover { background: @accentWash; }
QToolButton[kind="flat"]:checked { background: @ink; color: @field; }
QToolButton[kind="flat"]:focus { border: 2px solid @accent; }
QToolButton[kind="caption"] { background: transparent; border-color: transparent; min-height: 16px; padding: 0 2px; color: @inkSoft; }
QToolButton[kind="caption"]:hover { background: @accentWash; }
QToolButton[kind="caption"][isMissing="true"] { color: @unsure; font-weight: 700; }
QCheckBox, QRadioButton { spacing: 6px; }
QCheckBox::indicator, QTableView::indicator, QListView::indicator { width: 12px; height: 12px; border: 1px solid @edge; border-radius: 2px; background: @field; }
QCheckBox::indicator:focus { border: 2px solid @accent; }
QCheckBox:disabled, QRadioButton:disabled { color: @disabled; }
QCheckBox::indicator:disabled { border-color: @line; background: @panel; }
QCheckBox::indicator:checked:disabled { background: @disabled; border-color: @disabled; }
QCheckBox::indicator:checked, QTableView::indicator:checked, QListView::indicator:checked { background: @ink; border-color: @ink;
  image: url(:/sealwalk/icons/%tick%.svg); }
QRadioButton::indicator { width: 12px; height: 12px; border: 1px solid @edge; border-radius: 7px; background: @field; }
QRadioButton::indicator:checked { border-color: @ink; background: qradialgradient(cx: 0.5, cy: 0.5, radius: 0.5, fx: 0.5, fy: 0.5,
  stop: 0 @ink, stop: 0.55 @ink, stop: 0.65 @field, stop: 1 @field); }
QCheckBox:focus, QRadioButton:focus { border: 1px solid @accent; border-radius: 2px; }
QTableView, QTreeView, QListView { background: @field; border: 1px solid @line; gridline-color: @line; alternate-background-color: @field;
  selection-background-color: @accentWash; selection-color: @ink; outline: 0; }
QTableView:focus, QTreeView:focus, QListView:focus { border: 2px solid @accent; }
QTableView::item, QTreeView::item, QListView::item { padding: 0 6px; border-bottom: 1px solid @line; }
QTableView::item:selected, QTreeView::item:selected, QListView::item:selected { background: @accentWash; color: @ink; }
QHeaderView { background: @field; border: 0; }
QHeaderView::section { background: @field; color: @inkFaint; font-size: 11px; border: 0; border-bottom: 1px solid @edge; padding: 0 6px; min-height: 22px; }
QTableCornerButton::section { background: @field; border: 0; }
QTabBar { background: transparent; }
QTabBar::tab { background: transparent; border: 1px solid transparent; border-bottom: 0; color: @inkSoft; padding: 0 12px; min-height: 26px; }
QTabBar::tab:selected { background: @sheet; border-color: @edge; color: @ink; font-weight: 700; }
QTabBar::tab:focus { border: 2px solid @accent; border-bottom: 0; }
QTabWidget::pane { border: 0; border-top: 1px solid @edge; }
QSplitter::handle { background: @edge; }
QSplitter::handle:horizontal { width: 1px; }
QSplitter::handle:vertical { height: 1px; }
QScrollArea { background: transparent; border: 0; }
QScrollBar:vertical { background: @panel; width: 12px; margin: 0; }
QScrollBar:horizontal { background: @panel; height: 12px; margin: 0; }
QScrollBar::handle { background: @edge; border: 3px solid @panel; min-height: 24px; min-width: 24px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QProgressBar { background: @panel; border: 1px solid @edge; border-radius: 0; text-align: center; min-height: 10px; }
QProgressBar::chunk { background: @accent; }
QSlider::groove:horizontal { height: 4px; background: @line; }
QSlider::sub-page:horizontal { background: @accent; }
QSlider::handle:horizontal { width: 9px; margin: -6px 0; background: @field; border: 1px solid @edge; }
QSlider:focus { border: 1px solid @accent; }
QGroupBox { border: 1px solid @line; margin-top: 18px; }
QGroupBox::title { subcontrol-origin: margin; left: 0; color: @inkSoft; }
)";

} // namespace

QPalette Theme::palette() const
{
    QPalette p;
    const auto set = [&](QPalette::ColorRole role, Role own) { p.setColor(role, colour(own)); };
    set(QPalette::Window, Role::Panel);
    set(QPalette::WindowText, Role::Ink);
    set(QPalette::Base, Role::Field);
    set(QPalette::AlternateBase, Role::Panel);
    set(QPalette::Text, Role::Ink);
    set(QPalette::Button, Role::Field);
    set(QPalette::ButtonText, Role::Ink);
    set(QPalette::BrightText, Role::Over);
    set(QPalette::ToolTipBase, Role::Field);
    set(QPalette::ToolTipText, Role::Ink);
    set(QPalette::PlaceholderText, Role::InkFaint);
    set(QPalette::Highlight, Role::Accent);
    set(QPalette::HighlightedText, Role::OnAccent);
    set(QPalette::Link, Role::Accent);
    set(QPalette::LinkVisited, Role::Accent);
    set(QPalette::Light, Role::Field);
    set(QPalette::Midlight, Role::Panel);
    set(QPalette::Mid, Role::Line);
    set(QPalette::Dark, Role::Edge);
    set(QPalette::Shadow, Role::Edge);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, colour(Role::Disabled));
    return p;
}

QString Theme::styleSheet() const
{
    QString sheet = QString::fromUtf8(kSheet);
    for (const Placeholder& row : kPlaceholders) {
        // Whole words only: "@ink" is the beginning of "@inkSoft".
        const QRegularExpression word(QStringLiteral("@%1\\b").arg(QLatin1String(row.name)));
        sheet.replace(word, colour(row.role).name());
    }
    sheet.replace(QLatin1String("%tick%"),
                  isDark() ? QLatin1String("tick-dark") : QLatin1String("tick-light"));
    return sheet;
}

} // namespace sealwalk::render
