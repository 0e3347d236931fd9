// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/record_watch.h"

#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "ui/session/job_session.h"

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

namespace {

constexpr std::chrono::seconds kPatience(5);
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
    m_again.setSingleShot(true);
    m_again.setInterval(kPatience);
    connect(&m_again, &QTimer::timeout, this, [this] {
        m_unchecked.clear();
        next();
    });
    connect(&session, &JobSession::historyChanged, this, &RecordWatch::forget);
}

void RecordWatch::setPatience(std::chrono::milliseconds patience)
{
    m_again.setInterval(patience);
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

std::string RecordWatch::whyNotChecked(model::JobId job) const
{
    const auto unchecked = m_unchecked.find(job);
    return unchecked == m_unchecked.end() ? std::string() : unchecked->second;
}

void RecordWatch::forget()
{
    ++m_round;
    m_known.clear();
    m_unchecked.clear();
    m_wanted.clear();
    emit told();
}

void RecordWatch::next()
{
    if (m_work.isBusy() || !m_session.hasHistory())
        return;
    std::vector<model::JobId> batch;
    for (const model::JobId job : m_wanted)
        if (batch.size() < kAtOnce && !m_known.contains(job) && !m_unchecked.contains(job))
            batch.push_back(job);
    if (batch.empty())
        return;
    m_work.request([file = m_session.historyFile(), batch, round = m_round] {
        std::vector<Checked> answers;
        const auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadOnly);
        for (const model::JobId job : batch) {
            const auto checked =
                store ? transfer::verifyIn(*store, job) : Result<exchange::Verification>(fail(store.error()));
            // A file that is away or locked says nothing of the job; a record that cannot be read any more
            // does.
            if (!checked && !(store && checked.error().code == ErrorCode::DamagedFile))
                answers.push_back({job, checked.error().message, false});
            else if (!checked)
                answers.push_back({job, checked.error().message});
            else
                answers.push_back(
                    {job, checked->problems.empty() ? std::string() : checked->problems.front()});
        }
        return std::pair{round, std::move(answers)};
    });
}

void RecordWatch::take(std::vector<Checked> checked)
{
    bool isAnyWrong = false;
    std::vector<model::JobId> unchecked;
    for (Checked& one : checked) {
        if (!one.isChecked) {
            m_unchecked[one.job] = std::move(one.wrong);
            if (m_toldUnchecked.insert(one.job).second)
                unchecked.push_back(one.job);
            continue;
        }
        m_toldUnchecked.erase(one.job);
        isAnyWrong = isAnyWrong || !one.wrong.empty();
        m_known[one.job] = std::move(one.wrong);
    }
    if (!m_unchecked.empty() && !m_again.isActive())
        m_again.start();
    for (const model::JobId job : unchecked)
        emit couldNotCheck(job);
    if (isAnyWrong)
        emit told();
}

} // namespace sealwalk::ui
