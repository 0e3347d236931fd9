// SPDX-License-Identifier: GPL-3.0-or-later
// The call: number, state, field, read-back, keys. Shows the controller; hands keys on to it.
#pragma once

#include "core/report/shown_unit.h"
#include "ui/spray/spray_controller.h"

#include <QWidget>

class QLabel;
class QSpacerItem;

namespace sealwalk::render {
class DecadeRuler;
}

namespace sealwalk::ui {

class CallHead;
class EntryField;
class KeyLegend;
class LastTime;
class LiveTrace;
class ReadBack;
class StateBar;
class TouchStrip;

class CallPanel : public QWidget
{
    Q_OBJECT

public:
    CallPanel(JobSession& session, SprayController& controller, QWidget* parent = nullptr);
    [[nodiscard]] EntryField& field() const { return *m_field; }
    [[nodiscard]] TouchStrip& touchStrip() const { return *m_strip; }
    [[nodiscard]] StateBar& stateBar() const { return *m_state; }
    /// Fields for fingers in place of the key legend.
    void setTouch(bool on);
    [[nodiscard]] render::DecadeRuler& ruler() const { return *m_ruler; }
    [[nodiscard]] LiveTrace& trace() const { return *m_trace; }

    /// What the field asks for now.
    [[nodiscard]] QString caption() const;

signals:
    void remarkWanted();
    void shieldWanted(); ///< which points are taped off
    void wordsWanted();  ///< "other" was chosen: the reason in words
    void orderWanted();  ///< to look at the order of the walk and change it
    void distanceWanted();
    void feedWanted();   ///< to set one up
    void repeatWanted(); ///< the call aloud
    void loggerWanted(); ///< who is logging is to be changed

public slots:
    /// As if the key had been pressed in the field.
    void runKey(int key);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    /// In a low window the trace goes first, then the key legend; call, state and field never.
    void fitHeight();
    void refresh();
    void refreshClock();
    [[nodiscard]] QString finishedWords() const;
    [[nodiscard]] QStringList chips() const;
    void refreshField();
    void refreshLegend();
    void runCommand(int key, Qt::KeyboardModifiers modifiers, const QString& text);
    void runDigit(int digit);
    [[nodiscard]] QString feedHint() const;
    /// The level of the feed now; none unless it is live.
    [[nodiscard]] std::optional<LeakRate> feedLevel() const;
    /// As the detector shows it; empty for none.
    [[nodiscard]] QString rateText(std::optional<LeakRate> rate) const;
    /// What the detector's display says; only with a job.
    [[nodiscard]] report::ShownUnit displayUnit() const;

    JobSession& m_session;
    SprayController& m_controller;
    LastTime* m_last;
    CallHead* m_head;
    QSpacerItem* m_gap; ///< between head and state
    StateBar* m_state;
    QLabel* m_caption;
    QLabel* m_unit;
    EntryField* m_field;
    ReadBack* m_readBack;
    QLabel* m_gaps; ///< what a reviewer would miss
    render::DecadeRuler* m_ruler;
    LiveTrace* m_trace;
    KeyLegend* m_legend;
    TouchStrip* m_strip;
    bool m_touch = false;
};

} // namespace sealwalk::ui
