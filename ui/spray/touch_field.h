// SPDX-License-Identifier: GPL-3.0-or-later
// One field for a finger: picture, word, and a second word. Acts when touched, once.
#pragma once

#include <QAbstractButton>

namespace sealwalk::ui {

class TouchField : public QAbstractButton
{
    Q_OBJECT

public:
    explicit TouchField(const QString& icon, QWidget* parent = nullptr);
    /// `below` stands small under the word.
    void setWords(const QString& word, const QString& below = {});
    void setIcon(const QString& icon);
    /// The one that is wanted now stands out.
    void setWanted(bool wanted);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_icon;
    QString m_below;
    bool m_wanted = false;
};

} // namespace sealwalk::ui
