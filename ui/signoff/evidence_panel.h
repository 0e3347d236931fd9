// SPDX-License-Identifier: GPL-3.0-or-later
// What stands behind the chosen question: its answer in full, the point on its sheet, the point's readings.
#pragma once

#include "core/analysis/review_checks.h"
#include "ui/session/job_session.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace sealwalk::render {
class SheetView;
}

namespace sealwalk::ui {

class EvidencePanel : public QWidget
{
    Q_OBJECT

public:
    explicit EvidencePanel(JobSession& session, QWidget* parent = nullptr);
    void setCheck(const analysis::ReviewCheck* check);
    void focusRemark();
    /// The word typed is on disk.
    void clearWord();
    [[nodiscard]] QPushButton& jumpButton() const { return *m_jump; }

signals:
    /// The reviewer's or tester's word on the check shown.
    void wordGiven(const QString& check, const QString& text, sealwalk::model::PointId point);
    /// The reviewer's, that the answer may not stand.
    void objected(const QString& check, const QString& text, sealwalk::model::PointId point);
    /// Asked to add a word where none is typed.
    void wordMissing(bool canBeSaidAgain);
    void jumpWanted(sealwalk::analysis::CheckPlace place, sealwalk::model::PointId point);

private:
    void showPoint(model::PointId point);
    void nameAdding();
    void fillMatters(const std::vector<analysis::ReviewMatter>& matters);
    [[nodiscard]] QString conditionOf(const model::Reading& reading) const;
    void fillReadings(model::PointId point);

    JobSession& m_session;
    QLabel* m_title;
    QLabel* m_answer;
    QListWidget* m_matters; ///< when several things are open: each with its own points
    QLabel* m_given;
    QLabel* m_returned;
    render::SheetView* m_sheet;
    QTableWidget* m_readings;
    QLineEdit* m_word;
    QPushButton* m_add;
    QPushButton* m_object;
    QPushButton* m_jump;
    QString m_sameAgain; ///< what was said before it was sent back, while it wants a word again
    QString m_check;
    analysis::CheckPlace m_place = analysis::CheckPlace::Judge;
    model::PointId m_point;
    bool m_isOfPoint = false; ///< a word given now belongs to it
};

} // namespace sealwalk::ui
