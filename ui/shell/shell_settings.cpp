// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/shell_settings.h"

#include "ui/spray/touch_size.h"

#include <QSplitter>
#include <QStandardPaths>
#include <QWidget>

namespace sealwalk::ui {

namespace {

constexpr const char* kTheme = "theme";
constexpr const char* kSounds = "sounds";
constexpr const char* kPaper = "sheetStaysPaper";
constexpr const char* kTouch = "touchStrip";
constexpr const char* kPresenter = "presenter";
constexpr const char* kLogger = "logger";
constexpr const char* kReportLanguage = "reportLanguage";
constexpr const char* kGeometry = "geometry";
constexpr const char* kLastJob = "lastJob";

QString defaultFile()
{
    return QStandardPaths::writableLocation(QStandardPaths::ConfigLocation) +
           QStringLiteral("/sealwalk/window.ini");
}

QString dividerKey(Stage stage, qsizetype index)
{
    return QStringLiteral("dividers/%1/%2").arg(stageKey(stage)).arg(index);
}

QString wordOf(render::ThemeName theme)
{
    switch (theme) {
    case render::ThemeName::Paper:
        return QStringLiteral("paper");
    case render::ThemeName::Slate:
        return QStringLiteral("slate");
    case render::ThemeName::Hall:
        return QStringLiteral("hall");
    }
    return {};
}

} // namespace

ShellSettings::ShellSettings(const QString& file)
    : m_settings(file.isEmpty() ? defaultFile() : file, QSettings::IniFormat)
{}

render::ThemeName ShellSettings::theme() const
{
    const QString word = m_settings.value(QLatin1String(kTheme)).toString();
    for (const render::ThemeName theme : {render::ThemeName::Slate, render::ThemeName::Hall})
        if (word == wordOf(theme))
            return theme;
    return render::ThemeName::Paper;
}

void ShellSettings::setTheme(render::ThemeName theme)
{
    m_settings.setValue(QLatin1String(kTheme), wordOf(theme));
}

bool ShellSettings::soundsOn() const
{
    return m_settings.value(QLatin1String(kSounds), true).toBool();
}

void ShellSettings::setSoundsOn(bool on)
{
    m_settings.setValue(QLatin1String(kSounds), on);
}

bool ShellSettings::sheetStaysPaper() const
{
    return m_settings.value(QLatin1String(kPaper), false).toBool();
}

void ShellSettings::setSheetStaysPaper(bool stays)
{
    m_settings.setValue(QLatin1String(kPaper), stays);
}

bool ShellSettings::touchStrip() const
{
    return m_settings.value(QLatin1String(kTouch), hasTouchScreen()).toBool();
}

void ShellSettings::setTouchStrip(bool on)
{
    m_settings.setValue(QLatin1String(kTouch), on);
}

PresenterKeys ShellSettings::presenter() const
{
    PresenterKeys keys;
    const QStringList kept = m_settings.value(QLatin1String(kPresenter)).toStringList();
    for (const PresenterButton button : kPresenterButtons)
        keys.of(button) =
            QKeySequence::fromString(kept.value(static_cast<int>(button)), QKeySequence::PortableText);
    return keys;
}

void ShellSettings::setPresenter(const PresenterKeys& keys)
{
    QStringList kept;
    for (const PresenterButton button : kPresenterButtons)
        kept.append(keys.of(button).toString(QKeySequence::PortableText));
    m_settings.setValue(QLatin1String(kPresenter), kept);
}

QString ShellSettings::reportLanguage() const
{
    return m_settings.value(QLatin1String(kReportLanguage)).toString();
}

void ShellSettings::setReportLanguage(const QString& code)
{
    m_settings.setValue(QLatin1String(kReportLanguage), code);
}

QString ShellSettings::logger() const
{
    return m_settings.value(QLatin1String(kLogger)).toString();
}

void ShellSettings::setLogger(const QString& name)
{
    m_settings.setValue(QLatin1String(kLogger), name);
}

ShellSettings::LastJob ShellSettings::lastJobIn(const QString& history) const
{
    const QStringList kept = m_settings.value(QLatin1String(kLastJob)).toStringList();
    return kept.value(0) == history ? LastJob{kept.value(1), kept.value(2)} : LastJob();
}

void ShellSettings::setLastJob(const QString& history, const LastJob& last)
{
    m_settings.setValue(QLatin1String(kLastJob), QStringList{history, last.job, last.object});
}

void ShellSettings::keepGeometry(const QWidget& window)
{
    m_settings.setValue(QLatin1String(kGeometry), window.saveGeometry());
}

void ShellSettings::restoreGeometry(QWidget& window) const
{
    window.restoreGeometry(m_settings.value(QLatin1String(kGeometry)).toByteArray());
}

void ShellSettings::keepDividers(Stage stage, const QWidget& page)
{
    const auto splitters = page.findChildren<QSplitter*>();
    for (qsizetype i = 0; i < splitters.size(); ++i)
        m_settings.setValue(dividerKey(stage, i), splitters.at(i)->saveState());
}

void ShellSettings::restoreDividers(Stage stage, QWidget& page) const
{
    const auto splitters = page.findChildren<QSplitter*>();
    for (qsizetype i = 0; i < splitters.size(); ++i) {
        const QByteArray kept = m_settings.value(dividerKey(stage, i)).toByteArray();
        if (!kept.isEmpty())
            splitters.at(i)->restoreState(kept);
    }
}

} // namespace sealwalk::ui
