// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fit_screen.h"

#include <QBoxLayout>
#include <QDialog>
#include <QDialogButtonBox>
#include <QEvent>
#include <QFileDialog>
#include <QFontMetrics>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kTitleBar = 28; // not known before a window is shown; desktops have 20 to 30

/// The row of buttons at the foot, taken out of `column`; nothing when it has none.
QLayoutItem* takeButtons(QLayout& column)
{
    for (int i = column.count() - 1; i >= 0; --i) {
        QLayoutItem* item = column.itemAt(i);
        if (item->spacerItem() != nullptr)
            continue;
        bool isRow = qobject_cast<QDialogButtonBox*>(item->widget()) != nullptr;
        if (const QLayout* row = item->layout())
            for (int each = 0; each < row->count(); ++each)
                isRow = isRow || qobject_cast<QPushButton*>(row->itemAt(each)->widget()) != nullptr;
        return isRow ? column.takeAt(i) : nullptr;
    }
    return nullptr;
}

/// Least size of the content, wrapped text included.
QSize leastOf(QLayout& layout, int width)
{
    QSize least = layout.totalMinimumSize();
    if (layout.hasHeightForWidth())
        least.setHeight(
            std::max(least.height(), layout.totalMinimumHeightForWidth(std::max(width, least.width()))));
    return least;
}

/// At least as wide as its title with the signs beside it, or the desktop cuts the title in its middle.
void makeRoomForTitle(QDialog& dialog, int room)
{
    constexpr int kSigns = 150; // the icon, three buttons and air
    QFont font = dialog.font();
    font.setBold(true);
    const int wanted = std::min(QFontMetrics(font).horizontalAdvance(dialog.windowTitle()) + kSigns, room);
    QLayout* layout = dialog.layout();
    // Qt's small questions take their size from what is in them, whatever is asked of the dialog itself.
    auto* inside = layout->sizeConstraint() == QLayout::SetDefaultConstraint
                       ? nullptr
                       : dialog.findChild<QLabel*>(QString(), Qt::FindDirectChildrenOnly);
    if (inside == nullptr) {
        dialog.setMinimumWidth(std::max(dialog.minimumWidth(), wanted));
        return;
    }
    const QMargins margins = layout->contentsMargins();
    inside->setMinimumWidth(std::max(inside->minimumWidth(), wanted - margins.left() - margins.right()));
}

void letScroll(QDialog& dialog)
{
    auto* area = new QScrollArea(&dialog);
    auto* content = new QWidget(area);
    content->setLayout(dialog.layout()); // takes it, and what it holds, off the dialog
    const QMargins margins = content->layout()->contentsMargins();
    QLayoutItem* buttons = takeButtons(*content->layout());
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->viewport()->setAutoFillBackground(false);
    content->setAutoFillBackground(false);
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(area, 1);
    if (buttons == nullptr)
        return;
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(margins.left(), 0, margins.right(), margins.bottom());
    column->addLayout(foot);
    if (QLayout* row = buttons->layout()) {
        foot->addLayout(row);
    } else {
        foot->addWidget(buttons->widget());
        delete buttons;
    }
}

} // namespace

QSize roomOn(const QWidget& window)
{
    const QScreen* screen = window.screen();
    return screen == nullptr ? window.size() : screen->availableSize() - QSize(0, kTitleBar);
}

bool boundToScreen(QWidget& window)
{
    const QSize before = window.size();
    const QSize bounded = before.boundedTo(roomOn(window)).expandedTo(window.minimumSize());
    if (bounded == before)
        return false;
    window.resize(bounded);
    if (const QScreen* screen = window.screen(); !screen->availableGeometry().contains(window.geometry()))
        window.move(screen->availableGeometry().topLeft());
    return true;
}

void FitScreen::fit(QDialog& dialog, QSize room)
{
    QLayout* layout = dialog.layout();
    if (layout == nullptr)
        return;
    // What the style adds to a field is not known before it was applied.
    const auto children = dialog.findChildren<QWidget*>();
    for (QWidget* child : children)
        child->ensurePolished();
    makeRoomForTitle(dialog, room.width());
    layout->invalidate();
    const QSize least = leastOf(*layout, room.width()).expandedTo(dialog.minimumSize());
    const QSize wanted =
        (dialog.testAttribute(Qt::WA_Resized) ? dialog.size() : dialog.sizeHint()).expandedTo(least);
    if (least.width() <= room.width() && least.height() <= room.height()) {
        if (wanted.width() > room.width() || wanted.height() > room.height())
            dialog.resize(wanted.boundedTo(room));
        return;
    }
    QWidget* focused = dialog.focusWidget();
    letScroll(dialog);
    if (focused != nullptr)
        focused->setFocus();
    const int bar = dialog.style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, &dialog);
    const QSize size = (wanted + QSize(bar, 0)).boundedTo(room);
    dialog.setMinimumSize(0, size.height()); // else two thirds of the screen is all it gets
    dialog.resize(size);
}

bool FitScreen::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::Polish)
        return false;
    auto* dialog = qobject_cast<QDialog*>(watched);
    // Qt's own have their ways with a small screen.
    if (dialog == nullptr || qobject_cast<QMessageBox*>(watched) != nullptr ||
        qobject_cast<QFileDialog*>(watched) != nullptr)
        return false;
    fit(*dialog, roomOn(*dialog));
    return false;
}

} // namespace sealwalk::ui
