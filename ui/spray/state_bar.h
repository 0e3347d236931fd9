// SPDX-License-Identifier: GPL-3.0-or-later
// The state of the call: word, sign, filling and seconds; never colour alone.
#pragma once

#include "ui/spray/spray_machine.h"

#include <QString>
#include <QWidget>

class QPainter;

namespace sealwalk::ui {

struct StateShown
{
    CallState state = CallState::Go;
    double progress = 0.0; ///< 0 … 1 of dwell or wait
    QString word;
    QString hint;
    QString figure; ///< "8.0 s", or the background
    QString figureHint;
};

/// Fills `where` as the state asks, without text: shared by the bar and the distance view.
void paintStateFilling(QPainter& painter, const QWidget& widget, const QRectF& where, CallState state,
                       double progress);
/// The sign of a state in a square.
void paintStateSign(QPainter& painter, const QWidget& widget, const QRectF& square, CallState state);

/// How long a flash lasts.
inline constexpr int kFlashMilliseconds = 150;

class StateBar : public QWidget
{
    Q_OBJECT

public:
    explicit StateBar(QWidget* parent = nullptr);
    void show(const StateShown& shown);
    /// Once, for 150 ms, with each sound.
    void flash();
    /// Two thirds as high, for a low window.
    void setLow(bool isLow);
    [[nodiscard]] const StateShown& shown() const { return m_shown; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    StateShown m_shown;
    bool m_flashes = false;
};

} // namespace sealwalk::ui
