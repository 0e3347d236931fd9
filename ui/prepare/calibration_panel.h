// SPDX-License-Identifier: GPL-3.0-or-later
// What the reference leak said: certificate, today, shown, factor.
#pragma once

#include "core/base/error.h"
#include "core/model/ids.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;

namespace sealwalk::ui {

class Heading;
class JobSession;
class RecordsRow;

class CalibrationPanel : public QWidget
{
    Q_OBJECT

public:
    explicit CalibrationPanel(JobSession& session, QWidget* parent = nullptr);
    void refresh();
    void enterCheck();

signals:
    void failed(const sealwalk::Error& error);

private:
    void showCheck(int index);
    void voidCheck();
    void clearRows();
    void addRow(const QString& what, const QString& figure, const QString& remark);

    JobSession& m_session;
    Heading* m_heading = nullptr;
    QWidget* m_table = nullptr;
    QGridLayout* m_grid = nullptr;
    QLabel* m_notes = nullptr;
    RecordsRow* m_records = nullptr;
    QPushButton* m_enter = nullptr;
};

} // namespace sealwalk::ui
