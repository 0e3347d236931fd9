// SPDX-License-Identifier: GPL-3.0-or-later
// What the window remembers between starts: theme, size, sounds, who was logging, the dividers of each
// stage. Nothing of the record is in here.
#pragma once

#include "ui/render/theme.h"
#include "ui/shell/stage.h"
#include "ui/spray/presenter.h"

#include <QByteArray>
#include <QSettings>

class QWidget;

namespace sealwalk::ui {

class ShellSettings
{
public:
    /// The user's own settings, or those of `file`.
    explicit ShellSettings(const QString& file = {});

    [[nodiscard]] render::ThemeName theme() const;
    void setTheme(render::ThemeName theme);
    [[nodiscard]] bool soundsOn() const;
    void setSoundsOn(bool on);
    [[nodiscard]] bool sheetStaysPaper() const;
    void setSheetStaysPaper(bool stays);

    /// Code of the language that reports and maps were last written in; empty: never chosen.
    [[nodiscard]] QString reportLanguage() const;
    void setReportLanguage(const QString& code);

    /// Who was logging last; empty when nobody was.
    [[nodiscard]] QString logger() const;
    void setLogger(const QString& name);

    /// The job that was open last in a history, and its object; empty: none was, or it was closed.
    struct LastJob
    {
        QString job;
        QString object;
    };
    [[nodiscard]] LastJob lastJobIn(const QString& history) const;
    void setLastJob(const QString& history, const LastJob& last);

    /// For parts of the window that keep something of their own.
    [[nodiscard]] QSettings& store() { return m_settings; }
    /// On, off, or as the machine: with a touch screen it is on.
    [[nodiscard]] bool touchStrip() const;
    void setTouchStrip(bool on);
    [[nodiscard]] PresenterKeys presenter() const;
    void setPresenter(const PresenterKeys& keys);

    void keepGeometry(const QWidget& window);
    void restoreGeometry(QWidget& window) const;
    /// Every splitter of a page, in the order it was built.
    void keepDividers(Stage stage, const QWidget& page);
    void restoreDividers(Stage stage, QWidget& page) const;

private:
    mutable QSettings m_settings;
};

} // namespace sealwalk::ui
