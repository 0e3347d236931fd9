// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/signoff_page.h"

#include "core/analysis/claim.h"
#include "core/analysis/comparison.h"
#include "core/analysis/round_summary.h"
#include "core/report/rate_text.h"
#include "core/transfer/earlier_jobs.h"
#include "core/transfer/known_pairs.h"
#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/signoff/amendment_dialog.h"
#include "ui/signoff/checks_delegate.h"
#include "ui/signoff/checks_model.h"
#include "ui/signoff/decision_bar.h"
#include "ui/signoff/evidence_panel.h"
#include "ui/signoff/people_dialog.h"
#include "ui/signoff/person_dialog.h"
#include "ui/signoff/submit_dialog.h"
#include "ui/widgets/name_first.h"
#include "ui/widgets/page_tabs.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kListWidth = 540;

} // namespace

SignoffPage::SignoffPage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_signing(new Signing(session, this))
    , m_checks(new ChecksModel(this))
    , m_count(new QLabel(this))
    , m_list(new QListView(this))
    , m_evidence(new EvidencePanel(session, this))
    , m_decision(new DecisionBar(this))
    , m_lastWork([this](LastJob last) {
        m_last = std::move(last);
        refresh();
    })
    , m_checking([this](Certificate certificate) {
        m_certificate = std::move(certificate);
        refreshDecision();
    })
{
    auto* left = new QWidget(this);
    left->setMaximumWidth(kListWidth);
    auto* title = new QLabel(tr("Review"), left);
    title->setProperty("role", QStringLiteral("title"));
    auto* draft = new QPushButton(render::icon(QStringLiteral("print")), tr("Draft report"), left);
    draft->setObjectName(QStringLiteral("draftReport"));
    auto* head = new QHBoxLayout;
    head->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart, render::kGapNear);
    head->addWidget(title);
    head->addSpacing(render::kGapBlock);
    head->addWidget(m_count, 1);
    head->addWidget(draft);
    auto* leftColumn = new QVBoxLayout(left);
    leftColumn->setContentsMargins(0, 0, 0, 0);
    leftColumn->setSpacing(0);
    leftColumn->addLayout(head);
    setFocusProxy(m_list);
    m_list->setModel(m_checks);
    m_list->setItemDelegate(new ChecksDelegate(m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setAccessibleName(tr("Questions before a signature"));
    m_list->setObjectName(QStringLiteral("checks"));
    leftColumn->addWidget(m_list, 1);

    auto* body = new QWidget(this);
    auto* top = new QHBoxLayout;
    top->setSpacing(0);
    top->addWidget(left, 2);
    top->addWidget(m_evidence, 2);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(top, 1);
    column->addWidget(m_decision);
    m_tabs = new PageTabs(body,
                          {{tr("Questions"), left}, {tr("Answer"), m_evidence}, {tr("Decision"), m_decision}},
                          render::kPartsNeed, this);
    connect(m_tabs, &PageTabs::turned, this,
            [this](QWidget* part) { (part->isAncestorOf(m_list) ? m_list : part)->setFocus(); });
    connect(m_tabs, &PageTabs::narrowed, left,
            [left](bool isNarrow) { left->setMaximumWidth(isNarrow ? QWIDGETSIZE_MAX : kListWidth); });
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(m_tabs);

    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                m_isChosenByHand = !m_isFilling;
                choose(now.row());
            });
    connect(m_list, &QListView::activated, this, [this](const QModelIndex& index) {
        if (const auto* check = m_checks->check(index.row()))
            jump(check->place, check->points.empty() ? model::PointId() : check->points.front());
    });
    connect(m_evidence, &EvidencePanel::wordGiven, this, &SignoffPage::giveWord);
    connect(m_evidence, &EvidencePanel::objected, this,
            [this](const QString& check, const QString& text, model::PointId point) {
                storeWord(check, analysis::objection(text.toStdString()), point);
            });
    connect(m_evidence, &EvidencePanel::wordMissing, this, [this](bool canBeSaidAgain) {
        emit noteRequested(Severity::Caution,
                           canBeSaidAgain
                               ? tr("Type a word, or press the button beside: what was said still stands.")
                               : tr("Type a word on this question first."));
    });
    connect(m_evidence, &EvidencePanel::jumpWanted, this, &SignoffPage::jump);
    connect(m_decision, &DecisionBar::submitWanted, this, &SignoffPage::submit);
    connect(m_decision, &DecisionBar::sendBackWanted, this, &SignoffPage::sendBack);
    connect(m_decision, &DecisionBar::peopleWanted, this, &SignoffPage::openPeople);
    connect(m_decision, &DecisionBar::approveWanted, this,
            [this](model::PersonId person, const QString& passphrase) {
                m_signing->approve(person, passphrase);
            });
    connect(m_signing, &Signing::busyChanged, this, [this] {
        const bool isKey = m_signing->work() == Signing::Work::Key;
        m_decision->setBusy(m_signing->isBusy(), isKey ? tr("Making the key …") : tr("Sealing …"));
    });
    connect(m_signing, &Signing::finished, this, &SignoffPage::onSigningFinished);
    connect(draft, &QPushButton::clicked, this, &SignoffPage::reportWanted);
    const auto key = [this](const QKeySequence& keys, auto act) {
        auto* shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    key(QKeySequence(QStringLiteral("Ctrl+B")), [this] {
        m_tabs->bringUp(m_decision);
        if (auto* button = m_decision->findChild<QPushButton*>(QStringLiteral("sendBack")))
            button->click();
    });
    key(QKeySequence(QStringLiteral("Ctrl+Return")), [this] {
        m_tabs->bringUp(m_decision);
        auto* passphrase = m_decision->findChild<QLineEdit*>(QStringLiteral("passphrase"));
        auto* button = m_decision->findChild<QPushButton*>(QStringLiteral("approve"));
        if (passphrase->isVisible() && passphrase->text().isEmpty()) {
            passphrase->setFocus();
            emit noteRequested(Severity::Caution, tr("The reviewer's passphrase is needed to approve."));
        } else
            button->click();
    });
    auto* remark = new QShortcut(Qt::Key_M, m_list);
    remark->setContext(Qt::WidgetShortcut);
    connect(remark, &QShortcut::activated, this, [this] {
        m_tabs->bringUp(m_evidence);
        m_evidence->focusRemark();
    });
    connect(&m_session, &JobSession::loggerChanged, this, &SignoffPage::refreshDecision);
    connect(&m_session, &JobSession::findingsChanged, this, [this] {
        if (isVisible())
            compareWithLast(); // before the questions are asked: until then they say that it is under way
    });
    connect(&m_session, &JobSession::workingOut, this, [this] {
        if (isVisible())
            refreshDecision();
    });
    for (const auto signal : {&JobSession::findingsChanged, &JobSession::recordsChanged,
                              &JobSession::setupChanged, &JobSession::stateChanged, &JobSession::jobChanged})
        connect(&m_session, signal, this, [this] {
            if (isVisible())
                refresh();
        });
}

void SignoffPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    compareWithLast();
    refresh();
    m_list->setFocus();
}

void SignoffPage::compareWithLast()
{
    if (!m_session.hasJob())
        return;
    const auto known = transfer::knownPairs(m_session.history());
    m_lastWork.request([known = known.value_or(analysis::KnownPairs()),
                        last = transfer::jobBefore(m_session.history(), m_session.job()),
                        object = m_session.object(), sketch = m_session.job().sketch,
                        now = m_session.asLeft(), id = m_session.job().id]() -> LastJob {
        if (!last)
            return {id, std::nullopt, std::nullopt, std::nullopt};
        const auto then = analysis::summarise(*last, object, analysis::Standing::AsLeft);
        const analysis::Comparison comparison =
            analysis::compare({&last->sketch, then}, {&sketch, now}, known);
        return {id, last, comparison.count(analysis::Change::New) + comparison.count(analysis::Change::Grown),
                static_cast<int>(comparison.points.size()) -
                    comparison.count(analysis::Change::NotComparable)};
    });
}

void SignoffPage::showPeople()
{
    if (m_session.hasJob())
        refresh();
}

void SignoffPage::checkSignatures()
{
    if (m_session.job().state == model::JobState::Signed)
        m_checking.request([history = m_session.historyFile(), job = m_session.job().id] {
            return readCertificate(history, job);
        });
}

void SignoffPage::refresh()
{
    if (!m_session.hasJob()) {
        m_checks->setChecks({}, {});
        setAsked(nullptr);
        refreshDecision();
        return;
    }
    // Exceptions stand first; somebody who chose a question stays with it, wherever it moves.
    const auto* chosen = m_checks->check(m_list->currentIndex().row());
    if (chosen == nullptr) // a head asks nothing: the question still shown stays
        chosen = m_checks->check(m_checks->rowOf(m_asked));
    const bool stays = chosen != nullptr && m_isChosenByHand && m_chosenIn == m_session.job().id;
    const std::string word = stays ? std::string(chosen->word) : std::string();
    m_chosenIn = m_session.job().id;
    m_isFilling = true;
    analysis::ReviewOptions options;
    options.people = m_session.people().value_or(std::vector<model::Person>());
    if (m_last.comparedTo == m_session.job().id) {
        options.lastJob = m_last.job;
        options.grownSinceLastJob = m_last.grown;
        options.comparedWithLastJob = m_last.compared;
    }
    options.isComparing = m_last.comparedTo != m_session.job().id || m_lastWork.isBusy();
    for (const storage::OpenRepair& left : m_session.repairsLeftOpen())
        options.carried.push_back(left.repair);
    // A signed record is asked as it was on its day: what fell due later was not open then.
    const auto& signatures = m_session.job().signatures;
    options.now = signatures.empty() ? Timestamp::now() : signatures.front().at;
    m_checks->setChecks(
        analysis::reviewChecks(m_session.job(), m_session.object(), m_session.asLeft(), options),
        m_session.job().sketch);
    m_decision->setPeople(options.people);
    m_claim = analysis::approvalStatement(m_session.recordedJob(), m_session.asLeft(), options.carried,
                                          m_signing->isOnePersonHistory());
    checkSignatures();
    const int row = word.empty() ? 1 : m_checks->rowOf(word);
    m_list->setCurrentIndex(m_checks->index(row < 0 ? 1 : row));
    if (!stays)
        m_list->scrollToTop();
    m_isFilling = false;
    m_isChosenByHand = stays;
    choose(m_list->currentIndex().row());
    m_count->setText(tr("%1 questions, %2 in order")
                         .arg(m_checks->count(analysis::CheckState::Stops) +
                              m_checks->count(analysis::CheckState::NeedsWord) +
                              m_checks->count(analysis::CheckState::InOrder))
                         .arg(m_checks->count(analysis::CheckState::InOrder)));
    refreshDecision();
}

void SignoffPage::refreshDecision()
{
    DecisionBar::Shown shown;
    if (m_session.hasJob()) {
        shown.state = m_session.job().state;
        shown.turns = turns();
        shown.byWhom = m_session.logger();
        const bool workingOut = m_session.isWorkingOut();
        shown.ready = m_checks->isReady() && !workingOut;
        const int stops = m_checks->count(analysis::CheckState::Stops);
        const int words = m_checks->openWords();
        shown.verdict = workingOut  ? tr("Findings are being worked out …")
                        : stops > 0 ? tr("Cannot be signed yet: %n stop(s) open", nullptr, stops)
                        : words > 0 ? tr("%n question(s) want a word", nullptr, words)
                                    : tr("Ready to be signed");
        shown.claim = tr("Statement so far: “%1”").arg(QString::fromStdString(report::onScreen(m_claim)));
        if (shown.state == model::JobState::Signed) {
            const bool isChecked = m_certificate && m_certificate->job == m_session.job().id;
            shown.certificate = isChecked ? m_certificate->says : tr("The signatures are being checked …");
            shown.certificateHolds = !isChecked || m_certificate->holds;
            if (isChecked && m_certificate->holds)
                shown.claim = m_certificate->claim;
        }
    }
    m_decision->show(shown);
    if (auto* report = findChild<QPushButton*>(QStringLiteral("draftReport")))
        report->setText(shown.state == model::JobState::Signed ? tr("Report") : tr("Draft report"));
}

void SignoffPage::setAsked(const analysis::ReviewCheck* check)
{
    m_asked = check == nullptr ? std::string() : std::string(check->word);
    m_evidence->setCheck(check);
}

void SignoffPage::choose(int row)
{
    if (const auto* check = m_checks->check(row); check != nullptr || m_checks->rowCount() == 0)
        setAsked(check); // a heading asks nothing: what was shown stays
}

void SignoffPage::jump(analysis::CheckPlace place, model::PointId point)
{
    if (!point.isNil())
        m_session.select(point);
    emit placeWanted(place);
}

/// What was said when the job last went for review and came back, as long as that is answered.
QString SignoffPage::turns() const
{
    const model::JobState state = m_session.job().state;
    if (state != model::JobState::Submitted && state != model::JobState::Returned)
        return {};
    QStringList said;
    for (const model::ReviewStep step : {model::ReviewStep::Returned, model::ReviewStep::Submitted}) {
        const auto& review = m_session.job().review;
        const auto last = std::find_if(review.rbegin(), review.rend(),
                                       [step](const auto& entry) { return entry.step == step; });
        const bool isAnswered = step == model::ReviewStep::Submitted && state == model::JobState::Returned;
        if (last == review.rend() || last->text.empty() || isAnswered)
            continue;
        const QString how = step == model::ReviewStep::Returned ? tr("Sent back by %1, %2 %3: “%4”")
                                                                : tr("Sent for review by %1, %2 %3: “%4”");
        said << how.arg(last->by.empty() ? tr("somebody unnamed") : QString::fromStdString(last->by),
                        QString::fromStdString(last->at.date()),
                        QString::fromStdString(last->at.timeOfDay().substr(0, 5)),
                        QString::fromStdString(last->text));
    }
    return said.join(QLatin1Char('\n'));
}

void SignoffPage::giveWord(const QString& check, const QString& text, model::PointId point)
{
    const auto* asked = m_checks->check(m_checks->rowOf(check.toStdString()));
    const bool isStop = asked != nullptr && asked->state == analysis::CheckState::Stops;
    storeWord(check, isStop ? analysis::wordOnStop(asked->answer, text.toStdString()) : text.toStdString(),
              point);
}

void SignoffPage::storeWord(const QString& check, const std::string& word, model::PointId point)
{
    if (!isNamed(m_session, *this))
        return;
    const Status stored =
        m_session.remark(m_session.logger().toStdString(), word,
                         point.isNil() ? std::nullopt : std::optional(point), check.toStdString());
    if (!stored) {
        emit failed(stored.error());
        return;
    }
    m_evidence->clearWord();
    // What is said on a stop settles nothing, nor does an objection: it stays in view, with the word.
    const auto* about = m_checks->check(m_checks->rowOf(check.toStdString()));
    if (about != nullptr && (about->state == analysis::CheckState::Stops || about->isObjected))
        return;
    // One answer leads to the next question that wants one; the hands stay where they are.
    const int next = m_checks->nextOpenRow(m_checks->rowOf(check.toStdString()));
    if (next >= 0) {
        m_list->setCurrentIndex(m_checks->index(next));
        m_evidence->focusRemark();
    }
}

void SignoffPage::submit(const QString& text)
{
    if (!isNamed(m_session, *this))
        return;
    if (m_session.isWorkingOut()) {
        emit noteRequested(Severity::Caution,
                           tr("Findings are being worked out; send the job when they are shown."));
        return;
    }
    std::string words = text.toStdString();
    if (m_checks->count(analysis::CheckState::Stops) > 0) {
        SubmitDialog dialog(m_checks->all(), this);
        if (dialog.exec() != QDialog::Accepted)
            return;
        words += (words.empty() ? "" : " ") +
                 analysis::sentWithStops(m_checks->all(), dialog.reason().toStdString());
    }
    const Status stored = m_session.submit(words);
    if (!stored) {
        emit failed(stored.error());
        return;
    }
    m_decision->clearAfterSuccess();
    m_list->setFocus(); // the button pressed is gone; the next key must not press another one
    emit noteRequested(
        Severity::News,
        tr("Sent for review. Until it is returned or signed only words and remarks are added."));
}

void SignoffPage::sendBack(const QString& remark)
{
    if (remark.isEmpty()) {
        emit noteRequested(Severity::Caution,
                           tr("Say in the remarks what is to be done; a job goes back with a reason."));
        return;
    }
    if (!isNamed(m_session, *this))
        return;
    // No passphrase vouches for a name chosen in a list: it is the one at this window who sends it back.
    const Status stored = m_session.sendBack(m_session.logger().toStdString(), remark.toStdString());
    if (!stored) {
        emit failed(stored.error());
        return;
    }
    m_decision->clearAfterSuccess();
    m_list->setFocus();
    emit noteRequested(Severity::News, tr("Sent back by %1 with the remarks.").arg(m_session.logger()));
}

void SignoffPage::openPeople()
{
    const auto people = m_session.people().value_or(std::vector<model::Person>());
    const bool someoneSigns = std::any_of(people.begin(), people.end(), [](const model::Person& person) {
        return person.active && !person.publicKey.empty();
    });
    if (someoneSigns) {
        PeopleDialog(m_session, this).exec();
        showPeople();
        return;
    }
    PersonDialog dialog(m_signing->isOnePersonHistory(), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    m_signing->createPerson(dialog.person(), dialog.passphrase(), dialog.onePersonHistory());
}

void SignoffPage::amend()
{
    if (!m_session.hasJob() || m_session.job().state != model::JobState::Signed) {
        emit noteRequested(Severity::Caution,
                           tr("Amendments are for signed jobs; change the record itself."));
        return;
    }
    AmendmentDialog dialog(m_session, *m_signing, this);
    if (dialog.exec() == QDialog::Accepted)
        emit noteRequested(Severity::News, tr("Amendment signed and added."));
}

void SignoffPage::onSigningFinished(const std::optional<Error>& problem)
{
    if (findChild<AmendmentDialog*>() != nullptr) {
        refresh(); // the dialog says what is wrong
        return;
    }
    if (problem) {
        m_decision->refuse(render::inSentence(*problem));
        return;
    }
    m_decision->clearAfterSuccess();
    m_list->setFocus();
    refresh();
    if (m_session.hasJob() && m_session.job().state == model::JobState::Signed)
        emit noteRequested(Severity::News, tr("Approved and locked."));
}

} // namespace sealwalk::ui
