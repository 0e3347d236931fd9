// SPDX-License-Identifier: GPL-3.0-or-later
// Names for controls that Qt puts into others: a screen reader meets them by themselves.
#pragma once

#include <QObject>

namespace sealwalk::ui {

/// Installed on the application. As controls come into sight, the field of an editable list is named as its
/// list, a list without a label of its own says in its description what it is about (Qt on X11 names a list
/// by the value it shows), and the button in a search field says that it clears it.
class SpokenParts : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace sealwalk::ui
