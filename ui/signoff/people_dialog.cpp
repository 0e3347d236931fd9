// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/people_dialog.h"

#include "ui/render/core_words.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/signoff/passphrase_dialog.h"
#include "ui/signoff/person_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr QSize kFirstSize(680, 360);

QString roleWord(const std::string& role)
{
    if (role == "reviewer")
        return PeopleDialog::tr("reviewer");
    if (role == "technician")
        return PeopleDialog::tr("technician");
    return role == "both" ? PeopleDialog::tr("both") : QString::fromStdString(role);
}

QString keyWord(const model::Person& person)
{
    if (!person.active)
        return PeopleDialog::tr("left; signs no more");
    return person.publicKey.empty() ? PeopleDialog::tr("no key yet")
                                    : QString::fromStdString(person.publicKey.substr(0, 8)) + u'…';
}

/// "2026-03-01, by Ines Marl": who added them, where the history knows it.
QString sinceWord(const model::Person& person, const std::vector<model::PersonEntry>& entries)
{
    const QString since = QString::fromStdString(person.since.date());
    for (const model::PersonEntry& entry : entries)
        if (entry.person == person.id && entry.what == model::kPersonAdded && !entry.by.empty())
            return PeopleDialog::tr("%1, by %2").arg(since, QString::fromStdString(entry.by));
    return since;
}

} // namespace

PeopleDialog::PeopleDialog(JobSession& session, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_signing(session)
    , m_table(new QTableWidget(0, 5, this))
    , m_add(new QPushButton(tr("&New person …"), this))
    , m_passphrase(new QPushButton(tr("New &passphrase …"), this))
    , m_left(new QPushButton(this))
    , m_onePerson(new QCheckBox(tr("&One person keeps this history: who tests may approve too"), this))
    , m_says(new QLabel(this))
    , m_close(new QPushButton(tr("Close"), this))
{
    setWindowTitle(tr("People who sign"));
    resize(kFirstSize);
    m_table->setHorizontalHeaderLabels({tr("Name"), tr("Role"), tr("Qualification"), tr("Since"), tr("Key")});
    m_table->setAccessibleName(tr("people of this history"));
    m_table->setObjectName(QStringLiteral("people"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
    m_add->setObjectName(QStringLiteral("addPerson"));
    m_passphrase->setObjectName(QStringLiteral("newPassphrase"));
    m_left->setObjectName(QStringLiteral("personLeft"));
    m_onePerson->setObjectName(QStringLiteral("onePerson"));
    m_says->setWordWrap(true);
    m_says->setMinimumHeight(m_says->fontMetrics().height() *
                             2); // a sentence must not push the buttons about
    m_says->setAlignment(Qt::AlignTop | Qt::AlignLeft);

    auto* lost =
        new QLabel(tr("A lost passphrase cannot be brought back: mark its person as left and add them anew "
                      "under a name that tells the two apart. What was signed stays valid."),
                   this);
    lost->setWordWrap(true);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_add, m_passphrase, m_left}) {
        button->setAutoDefault(false);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    buttons->addWidget(m_close);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_table, 1);
    column->addWidget(lost);
    column->addWidget(m_onePerson);
    column->addWidget(m_says);
    column->addLayout(buttons);

    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &PeopleDialog::refresh);
    connect(m_add, &QPushButton::clicked, this, &PeopleDialog::addPerson);
    connect(m_passphrase, &QPushButton::clicked, this, &PeopleDialog::newPassphrase);
    connect(m_left, &QPushButton::clicked, this, &PeopleDialog::changeLeft);
    connect(m_close, &QPushButton::clicked, this, &PeopleDialog::reject);
    connect(m_onePerson, &QCheckBox::toggled, this, &PeopleDialog::changeOnePerson);
    connect(&m_signing, &Signing::busyChanged, this, &PeopleDialog::refresh);
    connect(&m_signing, &Signing::finished, this, &PeopleDialog::onFinished);
    fill();
    m_table->setFocus();
}

void PeopleDialog::fill()
{
    const int row = std::max(0, m_table->currentRow());
    auto people = m_session.people();
    if (!people) {
        say(render::inSentence(people.error()), true);
        return;
    }
    m_people = std::move(*people);
    const auto entries = m_session.personEntries();
    if (!entries) {
        say(render::inSentence(entries.error()), true);
        return;
    }
    m_table->setRowCount(static_cast<int>(m_people.size()));
    for (int i = 0; i < m_table->rowCount(); ++i) {
        const model::Person& person = m_people[static_cast<std::size_t>(i)];
        const QString cells[] = {QString::fromStdString(person.name), roleWord(person.role),
                                 QString::fromStdString(person.qualification), sinceWord(person, *entries),
                                 keyWord(person)};
        for (int column = 0; column < m_table->columnCount(); ++column)
            m_table->setItem(i, column, new QTableWidgetItem(cells[column]));
    }
    m_table->setCurrentCell(std::min(row, m_table->rowCount() - 1), 0);
    const QSignalBlocker quiet(m_onePerson);
    m_onePerson->setChecked(m_signing.isOnePersonHistory());
    refresh();
}

const model::Person* PeopleDialog::chosen() const
{
    const int row = m_table->currentRow();
    return row < 0 || row >= static_cast<int>(m_people.size()) ? nullptr
                                                               : &m_people[static_cast<std::size_t>(row)];
}

void PeopleDialog::refresh()
{
    const model::Person* person = chosen();
    const bool busy = m_signing.isBusy();
    m_add->setEnabled(!busy);
    m_passphrase->setEnabled(!busy && person != nullptr && !person->sealedKey.empty());
    m_left->setEnabled(!busy && person != nullptr);
    m_left->setText(person == nullptr || person->active ? tr("&Has left") : tr("&Is back"));
    m_onePerson->setEnabled(!busy);
    m_close->setEnabled(!busy);
    if (busy)
        say(tr("The key is being sealed …"), false);
}

void PeopleDialog::say(const QString& sentence, bool isRefusal)
{
    QPalette palette = this->palette();
    if (isRefusal)
        palette.setColor(QPalette::WindowText, render::Theme::of(this).colour(render::Role::Over));
    m_says->setPalette(palette);
    m_says->setText(sentence);
}

void PeopleDialog::addPerson()
{
    PersonDialog dialog(m_signing.isOnePersonHistory(), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    m_done = tr("%1 can sign now.").arg(QString::fromStdString(dialog.person().name));
    m_signing.createPerson(dialog.person(), dialog.passphrase(), dialog.onePersonHistory());
}

void PeopleDialog::newPassphrase()
{
    const model::Person* person = chosen();
    if (person == nullptr)
        return;
    PassphraseDialog dialog(QString::fromStdString(person->name), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    m_done = tr("The passphrase of %1 is changed.").arg(QString::fromStdString(person->name));
    m_signing.changePassphrase(person->id, dialog.old(), dialog.passphrase());
}

void PeopleDialog::changeLeft()
{
    if (chosen() == nullptr)
        return;
    model::Person person = *chosen();
    person.active = !person.active;
    const QString name = QString::fromStdString(person.name);
    if (const Status stored = m_session.putPerson(person); !stored)
        say(render::inSentence(stored.error()), true);
    else
        say(person.active ? tr("%1 signs here again.").arg(name)
                          : tr("%1 signs here no more; what was signed stays valid.").arg(name),
            false);
    fill();
}

void PeopleDialog::changeOnePerson(bool one)
{
    if (const Status stored = m_signing.setOnePersonHistory(one); !stored)
        say(render::inSentence(stored.error()), true);
    else
        say(one ? tr("Who tests may approve too; the signed statement says so.")
                : tr("Who tested does not approve: a second person does."),
            false);
    fill();
}

void PeopleDialog::onFinished(const std::optional<Error>& problem)
{
    if (problem)
        say(render::inSentence(*problem), true);
    else
        say(m_done, false);
    fill();
}

void PeopleDialog::reject()
{
    if (!m_signing.isBusy())
        QDialog::reject();
}

} // namespace sealwalk::ui
