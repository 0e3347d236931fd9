// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/job_dialog.h"

#include "ui/widgets/heading.h"
#include "ui/widgets/moment_field.h"
#include "ui/widgets/person_field.h"

#include <QComboBox>
#include <QFocusEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 480;

} // namespace

JobDialog::JobDialog(const std::vector<storage::ObjectRow>& objects, model::ObjectId chosen,
                     const QString& logger, const QStringList& people, QWidget* parent)
    : QDialog(parent)
{
    setObjectName(QStringLiteral("jobDialog"));
    setWindowTitle(tr("New job"));
    setMinimumWidth(kWidth);
    m_object = new QComboBox(this);
    m_object->setAccessibleName(tr("test object"));
    for (const storage::ObjectRow& row : objects) {
        const QString name = QString::fromStdString(row.name);
        m_object->addItem(row.tag.empty() ? name
                                          : name + QStringLiteral("  ") + QString::fromStdString(row.tag));
        m_ids.push_back(row.id);
        if (row.has(chosen))
            m_object->setCurrentIndex(m_object->count() - 1);
    }
    m_purpose = new QComboBox(this);
    m_purpose->setObjectName(QStringLiteral("purpose"));
    m_purpose->setEditable(true);
    m_purpose->setCompleter(nullptr); // it would swallow the Enter that starts the job
    m_purpose->setAccessibleName(tr("purpose"));
    m_purpose->addItems(
        {tr("fault search"), tr("acceptance"), tr("yearly check"), tr("after repair"), tr("after rebuild")});
    m_logger = new PersonField(tr("who is logging"), this);
    m_logger->setKnown(people);
    m_logger->setPerson(logger);
    m_begun = new MomentField(tr("begun"), this);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 12, 20, 16);
    auto* head = new Heading(windowTitle(), {}, this);
    column->addWidget(head);
    const auto sayWhatComesAlong = [this, head, objects] {
        const auto row = std::find_if(objects.begin(), objects.end(),
                                      [this](const auto& each) { return each.id == object(); });
        const bool isFirst = row == objects.end() || row->jobs == 0;
        head->setAside(isFirst ? tr("the first one of this object") : tr("takes the sketch of the last job"));
    };
    connect(m_object, &QComboBox::currentIndexChanged, this, sayWhatComesAlong);
    sayWhatComesAlong();
    column->addWidget(formRow(tr("Test object"), {m_object}, this));
    column->addWidget(formRow(tr("Purpose"), {m_purpose}, this));
    column->addWidget(formRow(tr("Who is logging"), {m_logger}, this));
    column->addWidget(formRow(tr("Begun"), {m_begun}, this));
    column->addSpacing(12);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    auto* cancel = new QPushButton(tr("Cancel"), this);
    cancel->setAutoDefault(false);
    auto* start = new QPushButton(tr("Start job"), this);
    start->setObjectName(QStringLiteral("store"));
    start->setProperty("kind", QStringLiteral("primary"));
    start->setDefault(true);
    buttons->addWidget(cancel);
    buttons->addWidget(start);
    column->addLayout(buttons);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(start, &QPushButton::clicked, this, &JobDialog::tryAccept);
    m_purpose->setFocus();
    m_purpose->lineEdit()->selectAll();
    m_purpose->lineEdit()->installEventFilter(this);
}

/// The list of purposes, opened and left, takes the selection along: what is typed then would be added to what
/// was only offered.
bool JobDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::FocusIn && watched == m_purpose->lineEdit() &&
        static_cast<QFocusEvent*>(event)->reason() == Qt::PopupFocusReason)
        QTimer::singleShot(0, m_purpose->lineEdit(), &QLineEdit::selectAll);
    return QDialog::eventFilter(watched, event);
}

void JobDialog::offerPurpose(const std::function<QString(model::ObjectId)>& ofLastJob)
{
    const auto offer = [this, ofLastJob] {
        if (m_purpose->lineEdit()->isModified())
            return;
        if (const QString last = ofLastJob(object()); !last.isEmpty())
            m_purpose->setEditText(last);
        else
            m_purpose->setCurrentIndex(0);
        m_purpose->lineEdit()->selectAll();
    };
    connect(m_purpose, &QComboBox::activated, this, [this] { m_purpose->lineEdit()->setModified(true); });
    connect(m_object, &QComboBox::activated, this, offer);
    offer();
}

void JobDialog::tryAccept()
{
    m_begun->commit();
    if (m_begun->isWrong())
        m_begun->field()->setFocus();
    else
        accept();
}

std::optional<Timestamp> JobDialog::begun() const
{
    return m_begun->isTyped() ? std::optional(m_begun->moment()) : std::nullopt;
}

model::ObjectId JobDialog::object() const
{
    const int index = m_object->currentIndex();
    return index < 0 ? model::ObjectId() : m_ids[static_cast<std::size_t>(index)];
}

QString JobDialog::purpose() const
{
    return m_purpose->currentText().trimmed();
}

QString JobDialog::logger() const
{
    return m_logger->person();
}

} // namespace sealwalk::ui
