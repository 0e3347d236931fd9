// SPDX-License-Identifier: GPL-3.0-or-later
// The line at the foot of the window: what happened, what to do now, how far long work has come. Nothing ever
// slides over the work.
#pragma once

#include "ui/widgets/note.h"

#include <QDateTime>
#include <QFrame>
#include <QIcon>
#include <QTimer>

#include <chrono>
#include <deque>
#include <functional>

class QLabel;
class QProgressBar;
class QPushButton;

namespace sealwalk::ui {

class NoteLine : public QFrame
{
    Q_OBJECT

public:
    struct Said
    {
        Severity severity = Severity::News;
        QString text;
        QString aside;
        QDateTime at;
    };

    explicit NoteLine(QWidget* parent = nullptr);

    /// Where the icons of cautions and errors come from; asked again when the theme changes.
    void setIconSource(std::function<QIcon(Severity)> source);
    void refreshIcon();

    /// `aside` is the quieter second half: why, or what now.
    void say(Severity severity, const QString& text, const QString& aside = {});
    /// The error or caution that stands is done with.
    void clear();
    /// What is looked at now is something else: a caution goes once it could be read; an error stays.
    void turnTo();
    /// How long a caution is left for reading.
    void setCautionTime(std::chrono::milliseconds time) { m_cautionTime = time; }
    /// What stands when there is nothing to say: a hint of the page.
    void setResting(const QString& text, const QString& aside = {});

    /// Long work with a bar and Cancel; share below 0: not known how far.
    void showProgress(const QString& what, double share);
    void endProgress();
    /// As if Cancel had been pressed.
    void cancel() { emit cancelled(); }
    [[nodiscard]] bool isWorking() const;

    [[nodiscard]] const std::deque<Said>& lastTen() const { return m_said; }
    [[nodiscard]] Severity severity() const { return m_now.severity; }
    [[nodiscard]] QString text() const;

    /// F2: the last ten, newest first, in a list over the line.
    void openLastTen();

signals:
    void cancelled(); ///< by the button or by cancel()

private:
    void show(const Said& said);

    QLabel* m_icon = nullptr;
    QLabel* m_text = nullptr;
    QLabel* m_aside = nullptr;
    QProgressBar* m_bar = nullptr;
    QPushButton* m_cancel = nullptr;
    std::function<QIcon(Severity)> m_iconSource;
    std::deque<Said> m_said;
    Said m_now;
    Said m_resting;
    QTimer m_fade;
    std::chrono::milliseconds m_cautionTime{8000};
};

} // namespace sealwalk::ui
