// SPDX-License-Identifier: GPL-3.0-or-later
// The joints of the sheet in view, with the numbers on them.
#pragma once

#include "core/model/sketch.h"

#include <QString>
#include <QTreeWidget>

namespace sealwalk::ui {

class SketchDesk;

class JointList : public QTreeWidget
{
    Q_OBJECT

public:
    explicit JointList(SketchDesk& desk, QWidget* parent = nullptr);
    void refresh();
    /// Takes what is left over, and asks for little.
    [[nodiscard]] QSize sizeHint() const override { return {200, 64}; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void showChosen();
    void takeChosen();

    SketchDesk& m_desk;
    bool m_refreshing = false;
};

/// "1–24", "1–4, 7": the numbers of active points.
QString numbersText(const std::vector<const model::TestPoint*>& points);

} // namespace sealwalk::ui
