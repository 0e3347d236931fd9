// SPDX-License-Identifier: GPL-3.0-or-later
// The right column of Prepare, what follows: what can be seen, times, verdict, helium; the set-up drawn.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace sealwalk::render {
class DecadeRuler;
}

namespace sealwalk::ui {

class Heading;
class JobSession;
class SetupPanel;
class VerdictBox;

class OutlookColumn : public QWidget
{
    Q_OBJECT

public:
    explicit OutlookColumn(JobSession& session, QWidget* parent = nullptr);
    void refresh();
    /// "ready to start", "limit missing" … for the stage strip.
    [[nodiscard]] QString progressText() const { return m_progress; }

signals:
    void goOn();

private:
    struct Figure
    {
        QLabel* value = nullptr;
        QLabel* from = nullptr;
    };
    Figure addFigure(QVBoxLayout& column, const QString& name);
    static void showFigure(const Figure& figure, const QString& rich, const QString& from);

    JobSession& m_session;
    Figure m_smallest;
    Figure m_response;
    Figure m_dwell;
    Figure m_wait;
    Figure m_share;
    render::DecadeRuler* m_ruler = nullptr;
    VerdictBox* m_verdict = nullptr;
    Heading* m_walkHeading = nullptr;
    QLabel* m_walk = nullptr;
    QPushButton* m_goOn = nullptr;
    SetupPanel* m_setup = nullptr;
    QString m_progress;
};

} // namespace sealwalk::ui
