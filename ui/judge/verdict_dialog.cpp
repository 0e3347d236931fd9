// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/verdict_dialog.h"

#include "core/analysis/answered.h"
#include "ui/judge/findings_model.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/date_field.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace sealwalk::ui {

namespace {

constexpr int kDaysOfConcession = 180;
constexpr int kLeastWidth = 460; // px

QString wordOf(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

bool isOf(const QString& word, analysis::Finding finding)
{
    return word == wordOf(model::name(finding));
}

/// The causes as they are chosen: longer than the words of tables.
QString causeWord(analysis::Finding finding)
{
    return finding == analysis::Finding::OtherSource
               ? VerdictDialog::tr("another source: test set-up, helium from elsewhere")
           : finding == analysis::Finding::VirtualLeak ? VerdictDialog::tr("virtual leak: gas trapped inside")
                                                       : findingWord(finding);
}

QString doesToTheSums(analysis::Finding finding)
{
    switch (finding) {
    case analysis::Finding::Leak:
    case analysis::Finding::Shared:
        return VerdictDialog::tr("Its rate counts among the located leaks of the balance and the load.");
    case analysis::Finding::Permeation:
        return VerdictDialog::tr("Gas through sound material: no leak to repair, so it is not counted among "
                                 "the located leaks; the pressure rise holds it as not located.");
    case analysis::Finding::Echo:
    case analysis::Finding::Masked:
        return VerdictDialog::tr("Counted at the leak it belongs to, not here.");
    case analysis::Finding::OtherSource:
        return VerdictDialog::tr(
            "Not the object's: not counted as its leak. A leak of the set-up is closed, and what was "
            "read through it sprayed again.");
    case analysis::Finding::VirtualLeak:
        return VerdictDialog::tr("Helium from outside does not size it: not among the located leaks. Its gas "
                                 "is part of the pressure rise and stands there as not located.");
    default:
        return VerdictDialog::tr("Not counted.");
    }
}

} // namespace

VerdictDialog::VerdictDialog(const analysis::PointFinding& finding, QWidget* parent)
    : VerdictDialog(finding, {}, parent)
{}

VerdictDialog::VerdictDialog(const analysis::PointFinding& finding, const Surroundings& around,
                             QWidget* parent)
    : QDialog(parent)
    , m_finding(finding)
    , m_word(new QComboBox(this))
    , m_of(new QComboBox(this))
    , m_sums(new QLabel(this))
    , m_verdict(new QComboBox(this))
    , m_reason(new QLineEdit(this))
    , m_concede(new QCheckBox(tr("Accepted above the limit, by concession"), this))
    , m_grantedBy(new QLineEdit(this))
    , m_until(new DateField(tr("Until"), this))
    , m_complaint(makeBelowField(this))
    , m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setWindowTitle(tr("Verdict on point %1").arg(finding.number));
    using analysis::Finding;
    using analysis::Verdict;
    for (const Finding word : {Finding::Leak, Finding::Permeation, Finding::Echo, Finding::OtherSource,
                               Finding::VirtualLeak, Finding::Clear, Finding::Masked})
        m_word->addItem(causeWord(word), wordOf(model::name(word)));
    std::vector<Verdict> verdicts{Verdict::Over, Verdict::CannotSay, Verdict::Within};
    if (around.isSetup)
        verdicts.push_back(Verdict::NotCounted);
    for (const Verdict verdict : verdicts)
        m_verdict->addItem(verdictWord(verdict), wordOf(model::name(verdict)));
    m_word->setCurrentIndex(std::max(0, m_word->findData(wordOf(model::name(finding.finding)))));
    m_verdict->setCurrentIndex(std::max(0, m_verdict->findData(wordOf(model::name(finding.verdict)))));
    m_verdict->setPlaceholderText(tr("choose"));
    m_of->addItem(tr("as worked out"));
    for (const auto& [point, number] : around.leaks) {
        m_of->addItem(tr("point %1").arg(number), QString::fromStdString(point.text()));
    }
    m_of->setObjectName(QStringLiteral("verdictOf"));
    m_word->setObjectName(QStringLiteral("verdictFinding"));
    m_verdict->setObjectName(QStringLiteral("verdictLimit"));
    m_sums->setObjectName(QStringLiteral("verdictSums"));
    m_sums->setWordWrap(true);
    m_sums->setProperty("role", QStringLiteral("caption"));
    setMinimumWidth(kLeastWidth);
    m_until->setDate(QDate::currentDate().addDays(kDaysOfConcession));
    m_until->field()->setObjectName(QStringLiteral("concededUntil"));
    m_complaint->setObjectName(QStringLiteral("verdictComplaint"));
    m_grantedBy->setObjectName(QStringLiteral("grantedBy"));
    m_reason->setObjectName(QStringLiteral("verdictReason"));

    auto* form = new QFormLayout(this);
    form->addRow(
        new QLabel(tr("Computed: %1, %2. Both stay in the record.")
                       .arg(findingWord(finding.overruled ? finding.overruled->finding : finding.finding),
                            verdictWord(finding.overruled ? finding.overruled->verdict : finding.verdict)),
                   this));
    form->addRow(tr("&Finding"), m_word);
    form->addRow(QString(), m_sums);
    form->addRow(tr("&Of the leak at"), m_of);
    form->addRow(tr("&Verdict"), m_verdict);
    form->addRow(tr("&Reason"), m_reason);
    form->addRow(m_concede);
    form->addRow(tr("&Granted by"), m_grantedBy);
    form->addRow(tr("&Until"), m_until);
    form->addRow(m_complaint);
    form->addRow(m_buttons);
    for (QLineEdit* field : {m_reason, m_grantedBy})
        connect(field, &QLineEdit::textChanged, this, &VerdictDialog::refresh);
    connect(m_word, &QComboBox::currentIndexChanged, this, &VerdictDialog::refresh);
    connect(m_word, &QComboBox::currentIndexChanged, this, &VerdictDialog::proposeVerdict);
    connect(m_verdict, &QComboBox::activated, this, [this] { m_isVerdictChosen = true; });
    connect(m_of, &QComboBox::currentIndexChanged, this, [this] { m_isLeakNamed = true; });
    connect(m_concede, &QCheckBox::toggled, this, &VerdictDialog::refresh);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &VerdictDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    refresh();
}

void VerdictDialog::refresh()
{
    const auto finding = model::fromName<analysis::Finding>(m_word->currentData().toString().toStdString());
    m_sums->setText(finding ? doesToTheSums(*finding) : QString());
    m_of->setEnabled(isOwed() && m_of->count() > 1);
    const bool concede = m_concede->isChecked();
    m_grantedBy->setEnabled(concede);
    m_until->setEnabled(concede);
    const bool named = !concede || !m_grantedBy->text().trimmed().isEmpty();
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(!m_reason->text().trimmed().isEmpty() && named);
}

void VerdictDialog::proposeVerdict()
{
    if (m_isVerdictChosen)
        return;
    const QString word = m_word->currentData().toString();
    const bool isElsewhere =
        isOf(word, analysis::Finding::OtherSource) || isOf(word, analysis::Finding::VirtualLeak);
    const bool stands = word == wordOf(model::name(m_finding.finding));
    int proposed = std::max(0, m_verdict->findData(wordOf(model::name(m_finding.verdict))));
    if (isElsewhere && !stands) // the set-up's own leak is not judged by the object's limit
        proposed = isOf(word, analysis::Finding::OtherSource)
                       ? m_verdict->findData(wordOf(model::name(analysis::Verdict::NotCounted)))
                       : -1;
    m_verdict->setCurrentIndex(proposed);
}

bool VerdictDialog::isOwed() const
{
    const auto word = model::fromName<analysis::Finding>(m_word->currentData().toString().toStdString());
    return word && analysis::isOwedWord(*word);
}

std::vector<model::PointId> VerdictDialog::owedTo() const
{
    const auto point = model::PointId::parse(m_of->currentData().toString().toStdString());
    return isOwed() && m_isLeakNamed && point ? std::vector{*point} : std::vector<model::PointId>();
}

QString VerdictDialog::concessionComplaint() const
{
    if (m_until->isWrong())
        return tr("Not a date; write it as 2026-03-01.");
    if (!m_until->date())
        return tr("A concession needs the day until which it holds.");
    if (*m_until->date() <= QDate::currentDate())
        return tr("A concession holds until a day after today.");
    return {};
}

VerdictDialog::Complaint VerdictDialog::whyNot() const
{
    if (m_verdict->currentIndex() < 0)
        return {tr("Choose the verdict: the one worked out supposed a leak here."), m_verdict};
    if (isOf(m_word->currentData().toString(), analysis::Finding::OtherSource) &&
        m_verdict->currentData().toString() == wordOf(model::name(analysis::Verdict::Over)))
        return {
            tr("What comes from elsewhere is not over the limit of this point: choose within, or cannot say "
               "until it is sprayed again."),
            m_verdict};
    if (m_verdict->currentData().toString() == wordOf(model::name(analysis::Verdict::NotCounted)) &&
        !isOf(m_word->currentData().toString(), analysis::Finding::OtherSource))
        return {tr("“Not counted” goes with another source: what is the object's own counts."), m_verdict};
    if (m_concede->isChecked())
        return {concessionComplaint(), m_until->field()};
    if (!judgement())
        return {tr("This verdict stands already: nothing was stored. Choose another one, or Cancel."),
                m_verdict};
    return {QString(), m_verdict};
}

void VerdictDialog::accept()
{
    m_until->commit(); // Enter and the button's key leave the cursor where it is
    const Complaint complaint = whyNot();
    for (QWidget* field : {static_cast<QWidget*>(m_verdict), static_cast<QWidget*>(m_until->field())})
        showComplaint(m_complaint, field, QString());
    showComplaint(m_complaint, complaint.at, complaint.text);
    if (complaint.text.isEmpty())
        QDialog::accept();
    else
        complaint.at->setFocus();
}

std::optional<model::Judgement> VerdictDialog::judgement() const
{
    const std::string word = m_word->currentData().toString().toStdString();
    const std::string verdict = m_verdict->currentData().toString().toStdString();
    const std::vector<model::PointId> of = owedTo();
    const bool stands = word == model::name(m_finding.finding) && verdict == model::name(m_finding.verdict) &&
                        (of.empty() || of == m_finding.of);
    if (stands || verdict.empty())
        return std::nullopt;
    model::Judgement judgement;
    judgement.point = m_finding.point;
    judgement.finding = word;
    judgement.verdict = verdict;
    judgement.of = of;
    judgement.reason = m_reason->text().trimmed().toStdString();
    return judgement;
}

std::optional<model::Concession> VerdictDialog::concession() const
{
    if (!m_concede->isChecked())
        return std::nullopt;
    model::Concession concession;
    concession.points = {m_finding.point};
    concession.grantedBy = m_grantedBy->text().trimmed().toStdString();
    concession.reason = m_reason->text().trimmed().toStdString();
    if (const auto until =
            Timestamp::parseDate(m_until->date().value_or(QDate()).toString(Qt::ISODate).toStdString()))
        concession.until = *until;
    return concession;
}

} // namespace sealwalk::ui
