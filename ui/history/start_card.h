// SPDX-License-Identifier: GPL-3.0-or-later
// One way to begin: icon, what it is, one key.
#pragma once

#include <QAbstractButton>

namespace sealwalk::ui {

class StartCard : public QAbstractButton
{
    Q_OBJECT

public:
    StartCard(const QString& icon, const QString& title, const QString& below, Qt::Key key, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_icon;
    QString m_below;
    QString m_key;
};

} // namespace sealwalk::ui
