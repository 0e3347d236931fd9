// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl+L, the change of shift: one field, one Enter.
#pragma once

#include <QDialog>

namespace sealwalk::ui {

class JobSession;
class MainWindow;
class PersonField;

class LoggerDialog : public QDialog
{
    Q_OBJECT

public:
    LoggerDialog(JobSession& session, QWidget* parent);

private:
    JobSession& m_session;
    PersonField* m_field = nullptr;
};

/// Asks who is logging, and says who it is now.
void askWhoIsLogging(MainWindow& window);

} // namespace sealwalk::ui
