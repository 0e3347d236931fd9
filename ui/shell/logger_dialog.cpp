// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/logger_dialog.h"

#include "ui/session/job_session.h"
#include "ui/shell/main_window.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/person_field.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 360;

} // namespace

LoggerDialog::LoggerDialog(JobSession& session, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
{
    setObjectName(QStringLiteral("loggerDialog"));
    setWindowTitle(tr("Who is logging"));
    setMinimumWidth(kWidth);
    m_field = new PersonField(windowTitle(), this);
    QStringList names;
    if (session.hasHistory())
        if (const auto people = session.people())
            for (const model::Person& person : *people)
                names.append(QString::fromStdString(person.name));
    m_field->setKnown(names);
    m_field->setPerson(session.logger());
    auto* column = new QVBoxLayout(this);
    column->addWidget(new Heading(windowTitle(), {}, this));
    column->addWidget(m_field);
    column->addWidget(quietLabel(tr("stands on every reading from now on; Enter keeps it"), this));
    m_field->lineEdit()->selectAll();
    m_field->setFocus();
    connect(m_field->lineEdit(), &QLineEdit::returnPressed, this, [this] {
        if (m_field->person().isEmpty())
            return;
        m_session.setLogger(m_field->person());
        accept();
    });
}

void askWhoIsLogging(MainWindow& window)
{
    LoggerDialog dialog(window.session(), &window);
    if (dialog.exec() == QDialog::Accepted)
        window.say(Severity::News, MainWindow::tr("%1 is logging.").arg(window.session().logger()));
}

} // namespace sealwalk::ui
