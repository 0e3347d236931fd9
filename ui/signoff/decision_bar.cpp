// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/decision_bar.h"

#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/widgets/below_field.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kHeight = 118;

QLabel* caption(const QString& text, QWidget* buddy, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setBuddy(buddy);
    return label;
}

} // namespace

DecisionBar::DecisionBar(QWidget* parent)
    : QWidget(parent)
    , m_verdict(new QLabel(this))
    , m_turns(new QLabel(this))
    , m_claim(new QLabel(this))
    , m_refusal(new QLabel(this))
    , m_missing(new QLabel(this))
    , m_remarks(new QPlainTextEdit(this))
    , m_saying(new QWidget(this))
    , m_submit(new QPushButton(tr("Send for review"), this))
    , m_sendBack(new QPushButton(render::icon(QStringLiteral("undo")), tr("Send back"), this))
    , m_byWhom(new QLabel(this))
    , m_returning(new QWidget(this))
    , m_person(new QComboBox(this))
    , m_people(new QPushButton(tr("New person …"), this))
    , m_passphrase(new QLineEdit(this))
    , m_approve(new QPushButton(render::icon(QStringLiteral("sign")), tr("Approve and lock"), this))
    , m_signing(new QWidget(this))
{
    setMinimumHeight(kHeight);
    m_verdict->setProperty("role", QStringLiteral("title"));
    m_verdict->setWordWrap(true);
    m_turns->setObjectName(QStringLiteral("turns"));
    m_turns->setTextFormat(Qt::PlainText);
    m_turns->setWordWrap(true);
    m_turns->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_claim->setWordWrap(true);
    m_claim->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_refusal->setWordWrap(true);
    m_refusal->setProperty("role", QStringLiteral("wrong"));
    m_missing->setWordWrap(true);
    m_missing->setProperty("role", QStringLiteral("caption"));
    m_missing->setObjectName(QStringLiteral("approvalMissing"));
    m_remarks->setObjectName(QStringLiteral("reviewRemarks"));
    m_remarks->setAccessibleName(tr("Remarks that go with the job"));
    m_remarks->setTabChangesFocus(true);
    m_remarks->setFixedHeight(72); // three lines
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_passphrase->setObjectName(QStringLiteral("passphrase"));
    m_passphrase->setAccessibleName(tr("Passphrase of the reviewer's key"));
    m_person->setObjectName(QStringLiteral("reviewer"));
    m_person->setAccessibleName(tr("Reviewer"));
    m_submit->setObjectName(QStringLiteral("submit"));
    m_sendBack->setObjectName(QStringLiteral("sendBack"));
    m_approve->setObjectName(QStringLiteral("approve"));

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(render::kGapBlock, render::kGapNear, render::kGapBlock, render::kGapNear);
    row->setSpacing(render::kGapBlock);
    auto* says = new QVBoxLayout;
    says->addWidget(m_verdict);
    says->addWidget(m_claim);
    says->addStretch();
    row->addLayout(says, 5);
    auto* remarks = new QVBoxLayout(m_saying);
    remarks->setContentsMargins(0, 0, 0, 0);
    remarks->addWidget(caption(tr("Remarks that go with the job"), m_remarks, m_saying));
    remarks->addWidget(m_remarks);
    remarks->addWidget(m_turns);
    remarks->addStretch();
    row->addWidget(m_saying, 4);
    row->addWidget(m_submit, 0, Qt::AlignVCenter);
    m_byWhom->setObjectName(QStringLiteral("sentBackBy"));
    m_byWhom->setTextFormat(Qt::PlainText);
    m_byWhom->setProperty("role", QStringLiteral("caption"));
    m_byWhom->setAlignment(Qt::AlignHCenter);
    auto* returning = new QVBoxLayout(m_returning);
    returning->setContentsMargins(0, 0, 0, 0);
    returning->addStretch();
    returning->addWidget(m_sendBack);
    returning->addWidget(m_byWhom);
    returning->addStretch();
    row->addWidget(m_returning);

    auto* signing = new QGridLayout(m_signing);
    signing->setContentsMargins(0, 0, 0, 0);
    // From the foot of the window up: remarks that grow above must not move the field under a hand that types
    // a passphrase.
    signing->setRowStretch(0, 1);
    signing->addWidget(caption(tr("Reviewer"), m_person, m_signing), 1, 0);
    signing->addWidget(m_person, 1, 1);
    signing->addWidget(m_people, 1, 2);
    signing->addWidget(caption(tr("Passphrase"), m_passphrase, m_signing), 2, 0);
    signing->addWidget(m_passphrase, 2, 1);
    signing->addWidget(m_approve, 2, 2);
    signing->addWidget(m_refusal, 3, 0, 1, 3);
    signing->addWidget(m_missing, 3, 0, 1, 3);
    const int twoLines = 2 * fontMetrics().lineSpacing();
    signing->setRowMinimumHeight(3, twoLines);
    for (QLabel* sentence : {m_refusal, m_missing})
        sentence->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    row->addWidget(m_signing, 5);

    connect(m_submit, &QPushButton::clicked, this,
            [this] { emit submitWanted(m_remarks->toPlainText().trimmed()); });
    connect(m_sendBack, &QPushButton::clicked, this,
            [this] { emit sendBackWanted(m_remarks->toPlainText().trimmed()); });
    connect(m_people, &QPushButton::clicked, this, &DecisionBar::peopleWanted);
    const auto approve = [this] {
        const auto id = model::PersonId::parse(m_person->currentData().toString().toStdString());
        if (id && m_approve->isEnabled())
            emit approveWanted(*id, m_passphrase->text());
    };
    connect(m_approve, &QPushButton::clicked, this, approve);
    connect(m_passphrase, &QLineEdit::returnPressed, this, approve);
    connect(m_passphrase, &QLineEdit::textChanged, this, [this] { refresh(); });
    connect(m_person, &QComboBox::currentIndexChanged, this, [this] {
        m_refusal->clear(); // it was said of another
        refresh();
    });
}

void DecisionBar::show(const Shown& shown)
{
    m_shown = shown;
    refresh();
}

void DecisionBar::setPeople(const std::vector<model::Person>& people)
{
    QString chosen = m_person->currentData().toString();
    QStringList before;
    QStringList added;
    for (int i = 0; i < m_person->count(); ++i)
        before.append(m_person->itemData(i).toString());
    m_person->clear();
    for (const model::Person& person : people) {
        if (!person.active || person.publicKey.empty())
            continue;
        const QString id = QString::fromStdString(person.id.text());
        m_person->addItem(QString::fromStdString(person.name), id);
        if (!before.contains(id))
            added.append(id);
    }
    if (added.size() == 1) // several: another history was opened
        chosen = added.front();
    m_people->setText(m_person->count() == 0 ? tr("New person …") : tr("People …"));
    if (const int index = m_person->findData(chosen); index >= 0)
        m_person->setCurrentIndex(index);
    refresh();
}

void DecisionBar::setBusy(bool busy, const QString& with)
{
    m_busy = busy;
    m_busyWith = with;
    refresh();
}

void DecisionBar::refuse(const QString& sentence)
{
    m_refusal->setText(sentence.left(1).toUpper() + sentence.mid(1) +
                       (sentence.endsWith(QLatin1Char('.')) ? QString() : QStringLiteral(".")));
    m_passphrase->clear(); // after the sentence: it takes the place of what is missing
    m_passphrase->setFocus();
    refresh();
}

void DecisionBar::clearAfterSuccess()
{
    m_passphrase->clear();
    m_remarks->clear();
    m_refusal->clear();
}

void DecisionBar::refresh()
{
    const model::JobState state = m_shown.state;
    const bool isSigned = state == model::JobState::Signed;
    const bool submitted = state == model::JobState::Submitted;
    m_verdict->setText(isSigned ? m_shown.certificate : m_shown.verdict);
    const bool isBroken = isSigned && !m_shown.certificateHolds;
    setStyleProperty(m_verdict, "role", isBroken ? QStringLiteral("title-wrong") : QStringLiteral("title"));
    m_turns->setText(m_shown.turns);
    m_turns->setVisible(!m_shown.turns.isEmpty());
    m_claim->setText(m_shown.claim);
    m_submit->setVisible(state == model::JobState::Open || state == model::JobState::Returned);
    m_submit->setEnabled(!m_busy);
    m_returning->setVisible(submitted);
    m_byWhom->setText(m_shown.byWhom.isEmpty() ? QString() : tr("as %1 (Ctrl+L)").arg(m_shown.byWhom));
    m_sendBack->setEnabled(!m_busy);
    m_saying->setVisible(!isSigned); // what is known later is an amendment
    m_signing->setVisible(submitted);
    m_approve->setEnabled(submitted && m_shown.ready && !m_busy && m_person->count() > 0 &&
                          !m_passphrase->text().isEmpty());
    m_approve->setText(m_busy ? m_busyWith : tr("Approve and lock"));
    const QString why = m_busy                           ? QString()
                        : !m_shown.ready                 ? m_shown.verdict
                        : m_person->count() == 0         ? tr("Nobody here has a key yet: New person …")
                        : m_passphrase->text().isEmpty() ? tr("The reviewer's passphrase signs it.")
                                                         : QString();
    m_missing->setText(why);
    m_missing->setVisible(submitted && !why.isEmpty() && m_refusal->text().isEmpty());
    m_approve->setToolTip(why);
}

} // namespace sealwalk::ui
