// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/record_watch.h"

#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "ui/session/job_session.h"

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

namespace {

constexpr std::size_t kAtOnce = 8; // answers come soon, and no list waits for a long one

} // namespace

RecordWatch::RecordWatch(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_work([this](std::pair<unsigned, std::vector<Checked>> answer) {
        if (answer.first == m_round)
            take(std::move(answer.second));
        next();
    })
{
    connect(&session, &JobSession::historyChanged, this, &RecordWatch::forget);
}

void RecordWatch::look(const std::vector<model::JobId>& jobs)
{
    m_wanted = jobs;
    next();
}

std::string RecordWatch::wrongWith(model::JobId job) const
{
    const auto known = m_known.find(job);
    return known == m_known.end() ? std::string() : known->second;
}

void RecordWatch::forget()
{
    ++m_round;
    m_known.clear();
    m_wanted.clear();
    emit told();
}

void RecordWatch::next()
{
    if (m_work.isBusy() || !m_session.hasHistory())
        return;
    std::vector<model::JobId> batch;
    for (const model::JobId job : m_wanted)
        if (batch.size() < kAtOnce && !m_known.contains(job))
            batch.push_back(job);
    if (batch.empty())
        return;
    m_work.request([file = m_session.historyFile(), batch, round = m_round] {
        std::vector<Checked> answers;
        const auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadOnly);
        for (const model::JobId job : batch) {
            const auto checked =
                store ? transfer::verifyIn(*store, job) : Result<exchange::Verification>(fail(store.error()));
            answers.push_back({job, !checked                    ? checked.error().message
                                    : checked->problems.empty() ? std::string()
                                                                : checked->problems.front()});
        }
        return std::pair{round, std::move(answers)};
    });
}

void RecordWatch::take(std::vector<Checked> checked)
{
    bool isAnyWrong = false;
    for (Checked& one : checked) {
        isAnyWrong = isAnyWrong || !one.wrong.empty();
        m_known[one.job] = std::move(one.wrong);
    }
    if (isAnyWrong)
        emit told();
}

} // namespace sealwalk::ui
