// SPDX-License-Identifier: GPL-3.0-or-later
// The spray stage: the call at the left, the sheet, the walk at the right. Composition only.
#pragma once

#include "ui/session/job_session.h"
#include "ui/spray/spray_controller.h"
#include "ui/widgets/note.h"

#include <QString>
#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace sealwalk::render {
class SheetView;
class DecadeRuler;
} // namespace sealwalk::render

namespace sealwalk::ui {

class CallPanel;
class DistanceView;
class PageTabs;
class Presenter;
struct PresenterKeys;
class TouchPad;
class WalkLine;
class WalkPanel;

class SprayPage : public QWidget
{
    Q_OBJECT

public:
    explicit SprayPage(JobSession& session, QWidget* parent = nullptr);
    void setTouchStrip(bool on);
    void setPresenterKeys(const PresenterKeys& keys);
    /// Readings from a paper sheet: asks for its day, and is off again when none is given.
    bool setTranscribing(bool on);
    [[nodiscard]] SprayController& controller() { return *m_controller; }
    /// The reading that waits for another program to let go of the history; empty: none does.
    [[nodiscard]] QString unstoredInWords() const;

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void noteSettled(const QString& text);
    void failed(const sealwalk::Error& error);
    void soundRequested(sealwalk::ui::SpraySound sound);
    void sketchWanted();  ///< no points yet
    void prepareWanted(); ///< no limit yet
    void feedWanted();    ///< to set one up
    void loggerWanted();  ///< who is logging is to be changed

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    QWidget* makeSheetPart();
    void refresh();
    void refreshMap();
    void refreshClock();
    void startRound();
    void toggleDistance();
    /// None: cancelled, or what it was asked about is called no more.
    [[nodiscard]] std::optional<QString> askAbout(const QString& title, const QString& question,
                                                  const QString& standing = {});
    void askRemark();
    void askShields();
    void askWords();
    void changeOrder();
    void repeatCall();
    void placePad();
    void placeWalkLine();
    void placeCall();
    void onSound(SpraySound sound);

    JobSession& m_session;
    SprayController* m_controller;
    CallPanel* m_call;
    render::SheetView* m_sheet;
    QWidget* m_sheetPart;
    QLabel* m_sheetTitle;
    WalkPanel* m_walk;
    WalkLine* m_walkLine;
    PageTabs* m_tabs;
    QWidget* m_callPart;
    DistanceView* m_distance;
    TouchPad* m_pad;
    Presenter* m_presenter;
    QWidget* m_start; ///< instead of the call while no round is open
    QLabel* m_startText;
    QPushButton* m_startButton;
};

} // namespace sealwalk::ui
