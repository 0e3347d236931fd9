// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/checks_model.h"

#include "ui/render/core_words.h"

#include <algorithm>
#include <set>

namespace sealwalk::ui {

using analysis::CheckState;

namespace {

QString answerOf(const analysis::ReviewCheck& check)
{
    const QString gravest = render::inWords(check.answer);
    const auto more = static_cast<int>(check.matters.size()) - 1;
    return more > 0 ? gravest + QLatin1Char(' ') +
                          ChecksModel::tr("(%n more)", "other things open on the question", more)
                    : gravest;
}

/// Sent back with words on it that nothing was done about yet.
bool isRemarked(const analysis::ReviewCheck& check)
{
    return !check.returnedWith.empty() && !check.isSettled();
}

} // namespace

void ChecksModel::setChecks(std::vector<analysis::ReviewCheck> checks, const model::Sketch& sketch)
{
    beginResetModel();
    m_checks = std::move(checks);
    m_sketch = sketch;
    m_rows.clear();
    for (const CheckState state : {CheckState::Stops, CheckState::NeedsWord, CheckState::InOrder}) {
        if (count(state) == 0)
            continue;
        m_rows.push_back({state, std::nullopt});
        for (std::size_t i = 0; i < m_checks.size(); ++i)
            if (m_checks[i].state == state)
                m_rows.push_back({state, i});
    }
    endResetModel();
}

const analysis::ReviewCheck* ChecksModel::check(int row) const
{
    if (row < 0 || row >= rowCount())
        return nullptr;
    const auto& found = m_rows[static_cast<std::size_t>(row)].check;
    return found ? &m_checks[*found] : nullptr;
}

int ChecksModel::count(CheckState state) const
{
    return static_cast<int>(std::count_if(m_checks.begin(), m_checks.end(),
                                          [&](const auto& check) { return check.state == state; }));
}

int ChecksModel::openWords() const
{
    return static_cast<int>(std::count_if(m_checks.begin(), m_checks.end(), [](const auto& check) {
        return check.state == CheckState::NeedsWord && check.wordGiven.empty();
    }));
}

bool ChecksModel::isReady() const
{
    return !m_checks.empty() && analysis::isReadyToSign(m_checks);
}

int ChecksModel::rowOf(std::string_view word) const
{
    for (int row = 0; row < rowCount(); ++row)
        if (const auto* found = check(row); found != nullptr && found->word == word)
            return row;
    return -1;
}

int ChecksModel::nextOpenRow(int row) const
{
    for (int step = 1; step <= rowCount(); ++step) {
        const int candidate = (row + step) % rowCount();
        const auto* found = check(candidate);
        if (found != nullptr && found->state == CheckState::NeedsWord && found->wordGiven.empty())
            return candidate;
    }
    return -1;
}

int ChecksModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QString ChecksModel::headOf(CheckState state) const
{
    switch (state) {
    case CheckState::Stops:
        return tr("Stops a sign-off");
    case CheckState::NeedsWord:
        return tr("Needs a word");
    case CheckState::InOrder:
        return tr("In order");
    }
    return {};
}

QString ChecksModel::asideOf(const analysis::ReviewCheck& check) const
{
    const bool remarked = isRemarked(check);
    constexpr std::size_t most = 3;
    std::set<int> all; // of everything that is open on it
    for (const analysis::ReviewMatter& matter : check.matters)
        for (const model::PointId id : matter.points)
            if (const model::TestPoint* point = m_sketch.point(id))
                all.insert(point->number);
    QStringList numbers;
    for (const int number : all)
        if (numbers.size() < static_cast<qsizetype>(most))
            numbers << QString::number(number);
    if (all.size() > most)
        numbers << QStringLiteral("…");
    if (check.isObjected)
        numbers = {tr("not agreed")};
    else if (remarked)
        numbers = {tr("said before")};
    else if (check.state == CheckState::Stops && !check.wordGiven.empty())
        numbers = {tr("word given")};
    return numbers.join(QLatin1Char(' '));
}

QVariant ChecksModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const analysis::ReviewCheck* found = check(index.row());
    switch (role) {
    case IsHeadRole:
        return found == nullptr;
    case StateRole:
        return static_cast<int>(row.state);
    case QuestionRole:
        return found == nullptr ? headOf(row.state) : render::inWords(found->question);
    case AnswerRole:
        return found == nullptr ? QString() : answerOf(*found);
    case Qt::ToolTipRole: // the row may have cut them
        return found == nullptr
                   ? QVariant()
                   : QVariant(render::inWords(found->question) + QLatin1Char('\n') + answerOf(*found));
    case AsideRole:
        return found == nullptr ? QString::number(count(row.state)) : asideOf(*found);
    case SettledRole:
        return found != nullptr && found->state == CheckState::NeedsWord && !found->wordGiven.empty();
    case RemarkedRole:
        return found != nullptr && isRemarked(*found);
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole: {
        if (found == nullptr)
            return headOf(row.state);
        const QString said =
            tr("%1: %2 %3").arg(headOf(row.state), render::inWords(found->question), answerOf(*found)) +
            (found->isObjected ? QStringLiteral(" (") + tr("not agreed") + QLatin1Char(')') : QString());
        return isRemarked(*found)
                   ? said + QLatin1Char(' ') +
                         tr("Sent back with: %1").arg(QString::fromStdString(found->returnedWith))
                   : said;
    }
    default:
        return {};
    }
}

Qt::ItemFlags ChecksModel::flags(const QModelIndex& index) const
{
    if (!index.isValid())
        return QAbstractListModel::flags(index);
    return check(index.row()) == nullptr ? Qt::ItemIsEnabled : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

} // namespace sealwalk::ui
