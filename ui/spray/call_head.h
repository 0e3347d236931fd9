// SPDX-License-Identifier: GPL-3.0-or-later
// The called number, large, with where it is and in which condition.
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

class QToolButton;

namespace sealwalk::ui {

class CallHead : public QWidget
{
    Q_OBJECT

public:
    explicit CallHead(QWidget* parent = nullptr);

    void setCall(const QString& number, const QString& joint, const QString& place, const QStringList& chips);
    /// Who is logging; empty: nobody said so yet.
    void setLogger(const QString& name);
    /// Two lines instead of four, for a low window.
    void setLow(bool isLow);
    [[nodiscard]] QSize sizeHint() const override;

signals:
    void loggerWanted(); ///< to be changed

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void placeLogger();

    QToolButton* m_logger;
    QString m_number;
    QString m_joint;
    QString m_place;
    QStringList m_chips;
};

} // namespace sealwalk::ui
