// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/feed_profiles.h"

#include <QSettings>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr const char* kArray = "feeds";
constexpr const char* kUsed = "feedInUse";

QString text(std::string_view words)
{
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

void write(QSettings& settings, const char* key, const std::string& value)
{
    settings.setValue(QLatin1String(key), QString::fromStdString(value));
}

std::string read(const QSettings& settings, const char* key)
{
    return settings.value(QLatin1String(key)).toString().toStdString();
}

/// The number kept, or what stands there when it is none.
void readNumber(const QSettings& settings, const char* key, double& value)
{
    bool good = false;
    const double number = settings.value(QLatin1String(key)).toString().toDouble(&good);
    if (good)
        value = number;
}

void readNumber(const QSettings& settings, const char* key, int& value)
{
    bool good = false;
    const int number = settings.value(QLatin1String(key)).toString().toInt(&good);
    if (good)
        value = number;
}

void writeProfile(QSettings& settings, const feed::FeedProfile& profile)
{
    const feed::FeedSource& source = profile.source;
    const feed::LineFormat& format = profile.format;
    write(settings, "name", profile.name);
    settings.setValue(QStringLiteral("source"), text(feed::wordOf(source.kind)));
    write(settings, "device", source.device);
    settings.setValue(QStringLiteral("baud"), source.baud);
    settings.setValue(QStringLiteral("dataBits"), source.dataBits);
    settings.setValue(QStringLiteral("parity"), text(feed::wordOf(source.parity)));
    settings.setValue(QStringLiteral("stopBits"), source.stopBits);
    write(settings, "host", source.host);
    settings.setValue(QStringLiteral("port"), source.port);
    write(settings, "path", source.path);
    settings.setValue(QStringLiteral("speed"), QString::number(source.speed, 'g', 17));
    settings.setValue(QStringLiteral("linesPerSecond"), QString::number(source.linesPerSecond, 'g', 17));
    settings.setValue(QStringLiteral("byPattern"), format.byPattern);
    settings.setValue(QStringLiteral("separator"), text(feed::wordOf(format.separator)));
    settings.setValue(QStringLiteral("column"), format.column);
    write(settings, "pattern", format.pattern);
    settings.setValue(QStringLiteral("timeColumn"), format.timeColumn.value_or(0));
    settings.setValue(QStringLiteral("meaning"), text(feed::wordOf(format.meaning)));
    write(settings, "unit", format.unit);
    settings.setValue(QStringLiteral("factor"), QString::number(format.factor, 'g', 17));
    settings.setValue(QStringLiteral("offset"), QString::number(format.offset, 'g', 17));
    settings.setValue(QStringLiteral("decadesPerVolt"), QString::number(format.decadesPerVolt, 'g', 17));
    settings.setValue(QStringLiteral("exponentAtZero"), QString::number(format.exponentAtZero, 'g', 17));
}

feed::FeedProfile readProfile(const QSettings& settings)
{
    feed::FeedProfile profile;
    feed::FeedSource& source = profile.source;
    feed::LineFormat& format = profile.format;
    profile.name = read(settings, "name");
    source.kind = feed::sourceKind(read(settings, "source")).value_or(source.kind);
    source.device = read(settings, "device");
    readNumber(settings, "baud", source.baud);
    readNumber(settings, "dataBits", source.dataBits);
    source.parity = feed::parity(read(settings, "parity")).value_or(source.parity);
    readNumber(settings, "stopBits", source.stopBits);
    source.host = read(settings, "host");
    readNumber(settings, "port", source.port);
    source.path = read(settings, "path");
    readNumber(settings, "speed", source.speed);
    readNumber(settings, "linesPerSecond", source.linesPerSecond);
    format.byPattern = settings.value(QStringLiteral("byPattern")).toBool();
    format.separator = feed::separator(read(settings, "separator")).value_or(format.separator);
    readNumber(settings, "column", format.column);
    format.pattern = read(settings, "pattern");
    int timeColumn = 0;
    readNumber(settings, "timeColumn", timeColumn);
    if (timeColumn > 0)
        format.timeColumn = timeColumn;
    format.meaning = feed::meaning(read(settings, "meaning")).value_or(format.meaning);
    format.unit = read(settings, "unit");
    readNumber(settings, "factor", format.factor);
    readNumber(settings, "offset", format.offset);
    readNumber(settings, "decadesPerVolt", format.decadesPerVolt);
    readNumber(settings, "exponentAtZero", format.exponentAtZero);
    return profile;
}

} // namespace

std::vector<feed::FeedProfile> loadProfiles(QSettings& settings)
{
    std::vector<feed::FeedProfile> profiles;
    const int count = settings.beginReadArray(QLatin1String(kArray));
    for (int i = 0; i < count; ++i) {
        settings.setArrayIndex(i);
        feed::FeedProfile profile = readProfile(settings);
        if (feed::checkProfile(profile))
            profiles.push_back(std::move(profile));
    }
    settings.endArray();
    std::sort(profiles.begin(), profiles.end(),
              [](const feed::FeedProfile& a, const feed::FeedProfile& b) { return a.name < b.name; });
    return profiles;
}

void saveProfiles(QSettings& settings, const std::vector<feed::FeedProfile>& profiles)
{
    settings.remove(QLatin1String(kArray));
    settings.beginWriteArray(QLatin1String(kArray), static_cast<int>(profiles.size()));
    for (std::size_t i = 0; i < profiles.size(); ++i) {
        settings.setArrayIndex(static_cast<int>(i));
        writeProfile(settings, profiles[i]);
    }
    settings.endArray();
}

std::optional<feed::FeedProfile> lastUsedProfile(QSettings& settings)
{
    const std::string name = settings.value(QLatin1String(kUsed)).toString().toStdString();
    for (const feed::FeedProfile& profile : loadProfiles(settings))
        if (profile.name == name)
            return profile;
    return std::nullopt;
}

void rememberUsedProfile(QSettings& settings, const QString& name)
{
    settings.setValue(QLatin1String(kUsed), name);
}

} // namespace sealwalk::ui
