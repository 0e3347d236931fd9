// SPDX-License-Identifier: GPL-3.0-or-later
// The sign-off stage: exceptions first, evidence beside them, the decision below. Composition only.
#pragma once

#include "core/analysis/review_checks.h"
#include "ui/session/job_session.h"
#include "ui/session/newest_wins.h"
#include "ui/session/signing.h"
#include "ui/signoff/certificate.h"
#include "ui/widgets/note.h"

#include <QWidget>

class QLabel;
class QListView;

namespace sealwalk::ui {

class ChecksModel;
class DecisionBar;
class EvidencePanel;
class PageTabs;

class SignoffPage : public QWidget
{
    Q_OBJECT

public:
    explicit SignoffPage(JobSession& session, QWidget* parent = nullptr);
    /// Asks for an amendment to the signed job that is open.
    void amend();
    /// Looks again who can sign.
    void showPeople();

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void failed(const sealwalk::Error& error);
    /// Where an exception is mended.
    void placeWanted(sealwalk::analysis::CheckPlace place);
    void reportWanted();
    /// What is decided here stands under a name, and nobody is named at this window yet.
    void nameWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();
    void refreshDecision();
    void choose(int row);
    void setAsked(const analysis::ReviewCheck* check);
    void jump(analysis::CheckPlace place, model::PointId point);
    [[nodiscard]] QString turns() const;
    void giveWord(const QString& check, const QString& text, model::PointId point);
    void storeWord(const QString& check, const std::string& word, model::PointId point);
    void submit(const QString& text);
    void sendBack(const QString& remark);
    void openPeople();
    void onSigningFinished(const std::optional<Error>& problem);

    JobSession& m_session;
    Signing* m_signing;
    ChecksModel* m_checks;
    QLabel* m_count;
    QListView* m_list;
    EvidencePanel* m_evidence;
    DecisionBar* m_decision;
    PageTabs* m_tabs = nullptr;
    std::string m_claim;
    bool m_isFilling = false;      ///< the list is made anew: what becomes current was not chosen
    std::string m_asked;           ///< the question whose evidence is shown; empty: none
    bool m_isChosenByHand = false; ///< the question in view
    model::JobId m_chosenIn;

    /// The last job of the object and how many points leak more since; worked out behind the window.
    struct LastJob
    {
        model::JobId comparedTo; ///< the open job it was worked out for
        std::optional<model::Job> job;
        std::optional<int> grown;
        std::optional<int> compared;
    };
    void compareWithLast();
    void checkSignatures();
    LastJob m_last;
    NewestWins<LastJob> m_lastWork;
    std::optional<Certificate> m_certificate; ///< of the signed job shown; none while it is being checked
    NewestWins<Certificate> m_checking;
};

} // namespace sealwalk::ui
