// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/say_aloud.h"

#include <QAccessible>
#include <QLocale>
#include <QProcess>
#include <QStandardPaths>
#include <QWidget>

namespace sealwalk::ui {

bool sayAloud(QWidget& speaker, const QString& sentence)
{
    speaker.setAccessibleDescription(sentence);
    if (QAccessible::isActive()) {
        QAccessibleEvent alert(&speaker, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
    // The speech dispatcher's own client; a dependency for one sentence would be too much.
    static const QString kSpeaker = QStandardPaths::findExecutable(QStringLiteral("spd-say"));
    if (kSpeaker.isEmpty())
        return QAccessible::isActive();
    return QProcess::startDetached(kSpeaker, {QStringLiteral("--cancel"), QStringLiteral("--language"),
                                              QLocale().bcp47Name().left(2), QStringLiteral("--"), sentence});
}

} // namespace sealwalk::ui
