// SPDX-License-Identifier: GPL-3.0-or-later
// The bottom of the review: what can be claimed, and the three ways out - send for review, send back, approve
// and lock.
#pragma once

#include "core/base/error.h"
#include "core/model/job.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace sealwalk::ui {

class DecisionBar : public QWidget
{
    Q_OBJECT

public:
    explicit DecisionBar(QWidget* parent = nullptr);

    struct Shown
    {
        model::JobState state = model::JobState::Open;
        bool ready = false; ///< nothing stops, every word was given
        QString verdict;    ///< "Cannot be signed yet: 3 stops are open"
        QString byWhom;     ///< in whose name it would be sent back; empty: nobody is named yet
        QString turns;      ///< what was said when it was last sent for review and sent back; empty: nothing
        QString claim;
        QString certificate; ///< of a signed job: who, when, fingerprint, whether unchanged
        bool certificateHolds = true;
    };
    void show(const Shown& shown);
    /// Somebody who was not there the time before is chosen: who was just added is about to sign.
    void setPeople(const std::vector<model::Person>& people);
    /// `with`: what is being done, on the button meanwhile.
    void setBusy(bool busy, const QString& with = {});
    /// After a refusal: the passphrase goes, the sentence stands beneath.
    void refuse(const QString& sentence);
    void clearAfterSuccess();

signals:
    void submitWanted(const QString& text);
    void sendBackWanted(const QString& remark);
    void approveWanted(sealwalk::model::PersonId person, const QString& passphrase);
    void peopleWanted(); ///< somebody to be added, or a key to be looked after

private:
    void refresh();

    Shown m_shown;
    bool m_busy = false;
    QString m_busyWith;
    QLabel* m_verdict;
    QLabel* m_turns;
    QLabel* m_claim;
    QLabel* m_refusal;
    QLabel* m_missing; ///< what approving waits for
    QPlainTextEdit* m_remarks;
    QWidget* m_saying; ///< the remarks, and what was remarked before
    QPushButton* m_submit;
    QPushButton* m_sendBack;
    QLabel* m_byWhom; ///< beneath it: no key vouches for a name, so it is the one at the window
    QWidget* m_returning;
    QComboBox* m_person;
    QPushButton* m_people;
    QLineEdit* m_passphrase;
    QPushButton* m_approve;
    QWidget* m_signing;
};

} // namespace sealwalk::ui
