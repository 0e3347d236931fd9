// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/proposed_file.h"

#include "ui/session/job_session.h"
#include "ui/shell/main_window.h"
#include "ui/shell/shell_settings.h"

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace sealwalk::ui {

namespace {

constexpr auto kFolder = "papers/folder";

/// Tags carry slashes and blanks, which no file name needs.
QString plain(const QString& text)
{
    QString name;
    for (const QChar c : text.trimmed())
        name += c.isLetterOrNumber() || c == QLatin1Char('-') || c == QLatin1Char('.') ? c : QLatin1Char('_');
    return name;
}

} // namespace

QString proposedFile(MainWindow& window, const QString& ending)
{
    const JobSession& session = window.session();
    QString folder = window.settings().store().value(QLatin1String(kFolder)).toString();
    if (folder.isEmpty() || !QFileInfo(folder).isDir())
        folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const model::TestObject& object = session.object();
    const QString name = plain(QString::fromStdString(object.tag.empty() ? object.name : object.tag));
    return QDir(folder).filePath(
        QStringLiteral("%1-job-%2%3").arg(name).arg(session.job().number).arg(ending));
}

void rememberFolder(MainWindow& window, const QString& file)
{
    window.settings().store().setValue(QLatin1String(kFolder), QFileInfo(file).absolutePath());
}

} // namespace sealwalk::ui
