// SPDX-License-Identifier: GPL-3.0-or-later
// The line beneath a field: what is wrong with the entry, or a quiet word about it. Takes no room when empty.
#pragma once

#include <QString>

class QLabel;
class QWidget;

namespace sealwalk::ui {

QLabel* makeBelowField(QWidget* parent);
/// Its lines may be wider than the field above them, where the row has the room.
void letWiden(QLabel* below);
/// It keeps the room of two lines while it is empty.
void keepRoom(QLabel* below);
/// In the colour of "over"; also read out as the field's description.
void showComplaint(QLabel* below, QWidget* field, const QString& sentence);
void showHint(QLabel* below, QWidget* field, const QString& text);

/// Sets a dynamic property the style sheet selects by, and has the style take notice.
void setStyleProperty(QWidget* widget, const char* name, const QString& value);

} // namespace sealwalk::ui
