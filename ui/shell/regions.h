// SPDX-License-Identifier: GPL-3.0-or-later
// F6: the keyboard's way from one part of the window to the next.
#pragma once

#include <QList>

class QWidget;

namespace sealwalk::ui {

/// Parts of the window in reading order: visible widgets with the property "region", else the panes of a
/// page's dividers, else the page.
QList<QWidget*> regionsOf(QWidget& window);

/// Puts the focus into the region after (or before) the one that has it, where its work is.
void focusNextRegion(QWidget& window, bool forward);

} // namespace sealwalk::ui
