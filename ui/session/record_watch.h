// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the signed jobs somebody looks at are still what was signed: checked beside the window, a few at a
// time, and kept until the history changes.
#pragma once

#include "core/model/ids.h"
#include "ui/session/newest_wins.h"

#include <QObject>
#include <QTimer>

#include <chrono>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace sealwalk::ui {

class JobSession;

class RecordWatch : public QObject
{
    Q_OBJECT

public:
    explicit RecordWatch(JobSession& session, QObject* parent = nullptr);

    /// Checks these, the first ones first, as far as they have not been checked; who asks names all it shows.
    void look(const std::vector<model::JobId>& jobs);
    /// What is wrong with a job, the core's sentence; empty: nothing, or it is not known yet.
    [[nodiscard]] std::string wrongWith(model::JobId job) const;
    /// Why a job could not be checked, which says nothing of the job; it is tried again. Empty: it could, or
    /// was not tried yet.
    [[nodiscard]] std::string whyNotChecked(model::JobId job) const;
    /// How long it waits before it tries again; 5 s when nobody says otherwise.
    void setPatience(std::chrono::milliseconds patience);
    /// Forgets all answers: the history is another, or somebody else wrote to it.
    void forget();

signals:
    void told(); ///< something that is wrong was found, or what was known was forgotten
    void couldNotCheck(model::JobId job); ///< said once, however often it is tried again

private:
    struct Checked
    {
        model::JobId job;
        std::string wrong;
        bool isChecked = true; ///< false: `wrong` says why not
    };
    void next();
    void take(std::vector<Checked> checked);

    JobSession& m_session;
    std::vector<model::JobId> m_wanted;
    std::map<model::JobId, std::string> m_known;
    std::map<model::JobId, std::string> m_unchecked;
    std::set<model::JobId> m_toldUnchecked;
    QTimer m_again;
    unsigned m_round = 0; ///< answers of before the last forget() do not count
    NewestWins<std::pair<unsigned, std::vector<Checked>>> m_work;
};

} // namespace sealwalk::ui
