// SPDX-License-Identifier: GPL-3.0-or-later
// The line under the sheet: the keys of the tool in hand, and where the hand is.
#pragma once

#include "ui/sketch/tool.h"

#include <QWidget>

namespace sealwalk::ui {

class GestureLine : public QWidget
{
    Q_OBJECT

public:
    explicit GestureLine(QWidget* parent = nullptr);

    void setTool(const QString& title, const std::vector<KeyHint>& hints);
    /// Sizes being typed take the place of the hints; empty: none are.
    void setTyping(const QString& text);
    /// mm on the sheet.
    void setHand(double x, double up);
    [[nodiscard]] QSize sizeHint() const override { return {400, 30}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_title;
    std::vector<KeyHint> m_hints;
    QString m_typing;
    QString m_hand;
};

} // namespace sealwalk::ui
