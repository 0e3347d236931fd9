// SPDX-License-Identifier: GPL-3.0-or-later
// Where a feed's lines come from, as fields.
#pragma once

#include "core/feed/feed_profile.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;
class QStackedWidget;

namespace sealwalk::ui {

class SourceForm : public QWidget
{
    Q_OBJECT

public:
    explicit SourceForm(QWidget* parent = nullptr);
    void setSource(const feed::FeedSource& source);
    [[nodiscard]] feed::FeedSource source() const;

signals:
    void changed();

private:
    void showPage(int index);
    QWidget* makeSerial();
    QWidget* makeTcp();
    QWidget* makePipe();
    QWidget* makeFile();
    QWidget* withBrowse(QLineEdit* field, const QString& title);

    QComboBox* m_kind;
    QStackedWidget* m_pages;
    QComboBox* m_device = nullptr;
    QComboBox* m_baud = nullptr;
    QComboBox* m_bits = nullptr;
    QComboBox* m_parity = nullptr;
    QComboBox* m_stop = nullptr;
    QLineEdit* m_host = nullptr;
    QSpinBox* m_port = nullptr;
    QLineEdit* m_pipe = nullptr;
    QLineEdit* m_file = nullptr;
    QDoubleSpinBox* m_speed = nullptr;
    QDoubleSpinBox* m_pace = nullptr;
};

} // namespace sealwalk::ui
