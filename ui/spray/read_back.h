// SPDX-License-Identifier: GPL-3.0-or-later
// What the typed value would mean on the chamber, before Enter: figure, factor, and how it stands to the
// limit.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/report/shown_unit.h"

#include <QString>
#include <QWidget>

#include <optional>

namespace sealwalk::ui {

class ReadBack : public QWidget
{
    Q_OBJECT

public:
    explicit ReadBack(QWidget* parent = nullptr);
    /// A finding of the value by itself; none clears the line.
    void setFinding(const std::optional<analysis::PointFinding>& finding, const report::ShownUnit& unit);
    /// A question or hint instead of a figure.
    void setSentence(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool m_isSized = false; ///< on the chamber; otherwise as the display shows it
    QString m_rate;
    QString m_unit;
    QString m_range; ///< 95 %, below the figure; empty where the figure is not sized
    QString m_verdict;
    analysis::Verdict m_stand = analysis::Verdict::NoAnswer;
    QString m_sentence;
};

} // namespace sealwalk::ui
