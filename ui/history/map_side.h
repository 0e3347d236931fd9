// SPDX-License-Identifier: GPL-3.0-or-later
// One of the two maps of Compare with what is to be known of its job.
#pragma once

#include "ui/history/compare_work.h"

#include <QWidget>

class QLabel;

namespace sealwalk::render {
class SheetView;
}

namespace sealwalk::ui {

class JobSession;

class MapSide : public QWidget
{
    Q_OBJECT

public:
    /// @param session  whose history holds the pictures under the sheets
    explicit MapSide(JobSession& session, QWidget* parent = nullptr);

    /// The sheet of that id or name in the job, on the object's scale, so that years compare by eye.
    /// @param blinking  at the scale and place of the map before
    void showSheet(const ComparedJobs& jobs, const ComparedJob& side, bool left, const model::Sheet& sheet,
                   bool blinking = false);
    /// The same, with the map of `core` laid over it as narrow lines.
    void showLaidOver(const ComparedJobs& jobs, const ComparedJob& side, const ComparedJob& core, bool left,
                      const model::Sheet& sheet);
    void select(std::optional<model::PointId> point);
    [[nodiscard]] render::SheetView& view() const { return *m_view; }

signals:
    void pointChosen(sealwalk::model::PointId point);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    /// As much as has room; the whole as a tip.
    void setFacts(const QString& facts);
    void fitFacts();

    QString m_allFacts;
    QLabel* m_title = nullptr;
    QLabel* m_facts = nullptr;
    render::SheetView* m_view = nullptr;
};

} // namespace sealwalk::ui
