// SPDX-License-Identifier: GPL-3.0-or-later
// Finds the text face. Its package also holds a monospaced sister that names itself by the same family, and
// Qt 6.4 then takes either of the two; so the text face is loaded from its files under a name of its own.
#include "ui/render/theme.h"

#include <QDirIterator>
#include <QFile>
#include <QFontDatabase>
#include <QtEndian>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr const char* kFallback = "DejaVu Sans";
constexpr qsizetype kDirectoryStart = 12;
constexpr qsizetype kDirectoryEntry = 16;

quint32 number(const QByteArray& font, qsizetype at)
{
    return at + 4 <= font.size() ? qFromBigEndian<quint32>(font.constData() + at) : 0;
}

/// The font with its first letter changed wherever its name table says B612; empty when it has none.
QByteArray renamed(QByteArray font)
{
    for (qsizetype at = kDirectoryStart; at + kDirectoryEntry <= font.size(); at += kDirectoryEntry) {
        if (font.mid(at, 4) != "name")
            continue;
        const auto offset = static_cast<qsizetype>(number(font, at + 8));
        const auto length = static_cast<qsizetype>(number(font, at + 12));
        if (offset + length > font.size())
            return {};
        QByteArray names = font.mid(offset, length);
        names.replace("B612", "S612");
        names.replace(QByteArray("\0B\0006\0001\0002", 8), QByteArray("\0S\0006\0001\0002", 8));
        return font.replace(offset, length, names);
    }
    return {};
}

QString fileNamed(const QString& name)
{
    const QString usual = QStringLiteral("/usr/share/fonts/opentype/b612/") + name;
    if (QFile::exists(usual))
        return usual;
    for (const QString& root :
         {QStringLiteral("/usr/share/fonts"), QStringLiteral("/usr/local/share/fonts")}) {
        QDirIterator files(root, {name}, QDir::Files, QDirIterator::Subdirectories);
        if (files.hasNext())
            return files.next();
    }
    return {};
}

QString loaded()
{
    QString family;
    for (const char* name : {"B612-Regular.otf", "B612-Bold.otf"}) {
        QFile file(fileNamed(QLatin1String(name)));
        if (!file.open(QIODevice::ReadOnly))
            return QLatin1String(kFallback);
        const int id = QFontDatabase::addApplicationFontFromData(renamed(file.readAll()));
        const QStringList families = QFontDatabase::applicationFontFamilies(id);
        if (families.isEmpty())
            return QLatin1String(kFallback);
        family = families.front();
    }
    return family;
}

} // namespace

QString fontFamily()
{
    static const QString family = loaded();
    return family;
}

QFont fontOfPixels(double pixels, Weight weight)
{
    QFont result;
    result.setFamilies({fontFamily(), QLatin1String(kFallback), QStringLiteral("Sans Serif")});
    result.setPixelSize(std::max(1, static_cast<int>(std::lround(pixels))));
    result.setWeight(weight == Weight::Bold ? QFont::Bold : QFont::Normal);
    return result;
}

QFont font(TextSize size, Weight weight)
{
    return fontOfPixels(static_cast<int>(size), weight);
}

} // namespace sealwalk::render
