// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_note.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStringList>
#include <QSysInfo>

#include <cerrno>
#include <csignal>

namespace sealwalk::ui {

namespace {

constexpr qint64 kLongestNote = 200; // bytes

/// The machine by eight digits, and where it tells none, by "0".
QString machine()
{
    const QString id = QString::fromLatin1(QSysInfo::machineUniqueId().left(8));
    return id.isEmpty() ? QStringLiteral("0") : id;
}

/// A process number says nothing across a restart of the machine.
QString boot()
{
    const QString id = QString::fromLatin1(QSysInfo::bootUniqueId());
    return id.isEmpty() ? QStringLiteral("0") : id;
}

QString prefixOf(const QFileInfo& history)
{
    return history.fileName() + QStringLiteral(".spraying-") + machine() + QLatin1Char('-');
}

QFileInfo infoOf(const std::filesystem::path& history)
{
    return QFileInfo(QString::fromStdString(history.string()));
}

QString ownNote(const std::filesystem::path& history)
{
    const QFileInfo file = infoOf(history);
    return file.dir().filePath(prefixOf(file) + QString::number(QCoreApplication::applicationPid()));
}

bool runsStill(qint64 process, const QString& bootedAs)
{
    if (process <= 0 || bootedAs != boot() || process == QCoreApplication::applicationPid())
        return false;
    return ::kill(static_cast<pid_t>(process), 0) == 0 || errno == EPERM;
}

} // namespace

void keepSprayNote(const std::filesystem::path& history, const SprayNote& note)
{
    QSaveFile file(ownNote(history));
    if (!file.open(QIODevice::WriteOnly))
        return;
    const QStringList words{boot(), QString::fromStdString(note.job.text()), QString::number(note.number),
                            QString::fromStdString(note.at.text())};
    file.write(words.join(QLatin1Char(' ')).toUtf8());
    (void)file.commit();
}

void dropSprayNote(const std::filesystem::path& history)
{
    (void)QFile::remove(ownNote(history));
}

std::optional<SprayNote> takeSprayNote(const std::filesystem::path& history, model::JobId job)
{
    const QFileInfo beside = infoOf(history);
    const QString prefix = prefixOf(beside);
    std::optional<SprayNote> latest;
    for (const QString& name : beside.dir().entryList(QDir::Files)) {
        if (!name.startsWith(prefix)) // no name pattern: the history's own may hold any sign
            continue;
        QFile file(beside.dir().filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const QStringList words = QString::fromUtf8(file.read(kLongestNote)).split(QLatin1Char(' '));
        if (words.size() != 4 || words[1].toStdString() != job.text() ||
            runsStill(name.mid(prefix.size()).toLongLong(), words[0]))
            continue;
        (void)file.remove();
        const auto at = Timestamp::parse(words[3].toStdString());
        if (at && (!latest || latest->at < *at))
            latest = SprayNote{job, words[2].toInt(), *at};
    }
    return latest;
}

} // namespace sealwalk::ui
