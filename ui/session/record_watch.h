// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the signed jobs somebody looks at are still what was signed: checked beside the window, a few at a
// time, and kept until the history changes.
#pragma once

#include "core/model/ids.h"
#include "ui/session/newest_wins.h"

#include <QObject>

#include <map>
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
    /// Forgets all answers: the history is another, or somebody else wrote to it.
    void forget();

signals:
    void told(); ///< something that is wrong was found, or what was known was forgotten

private:
    struct Checked
    {
        model::JobId job;
        std::string wrong;
    };
    void next();
    void take(std::vector<Checked> checked);

    JobSession& m_session;
    std::vector<model::JobId> m_wanted;
    std::map<model::JobId, std::string> m_known;
    unsigned m_round = 0; ///< answers of before the last forget() do not count
    NewestWins<std::pair<unsigned, std::vector<Checked>>> m_work;
};

} // namespace sealwalk::ui
