// SPDX-License-Identifier: GPL-3.0-or-later
// For five metres away: state, called number, last value. Nothing else. Lies over the page; keys stay with
// the field, and a finger or a click leaves the view: what lies beneath is not seen and must not be hit.
#pragma once

#include "core/analysis/point_finding.h"
#include "ui/spray/state_bar.h"

#include <QString>
#include <QWidget>

namespace sealwalk::ui {

struct DistanceShown
{
    StateShown state;
    QString number;
    QString place;
    QString caption; ///< over the value: "17 stored · mbar·l/s He"
    QString value;   ///< what is being typed, else the last stored value
    bool typing = false;
    analysis::Verdict stand = analysis::Verdict::NoAnswer;
    QString standWord;
};

class DistanceView : public QWidget
{
    Q_OBJECT

public:
    explicit DistanceView(QWidget* parent);
    void show(const DistanceShown& shown);
    /// The quarter of the state, once, with each sound.
    void flash();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    DistanceShown m_shown;
    bool m_flashes = false;
};

} // namespace sealwalk::ui
