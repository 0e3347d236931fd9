// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing files by name. The dialog lists folders without opening what is in them: a history that is open
// would lose its locks by being looked into.
#pragma once

#include <QMap>
#include <QString>
#include <QStringList>

class QWidget;

namespace sealwalk::ui {

/// Empty when nothing was chosen. `folder` empty: where the program stands.
QString chooseFileToOpen(QWidget* parent, const QString& title, const QString& folder = {},
                         const QString& filter = {});
QStringList chooseFilesToOpen(QWidget* parent, const QString& title, const QString& folder = {},
                              const QString& filter = {});
/// @param proposed  a folder, or a whole name. Asks before a file is replaced.
/// @param chosen    takes the form that was chosen of `filter`'s
/// @param names     the name each form has, until the person types another
QString chooseFileToWrite(QWidget* parent, const QString& title, const QString& proposed,
                          const QString& filter = {}, QString* chosen = nullptr,
                          const QMap<QString, QString>& names = {});

} // namespace sealwalk::ui
