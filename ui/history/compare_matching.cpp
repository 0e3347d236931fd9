// SPDX-License-Identifier: GPL-3.0-or-later
// Points that were drawn anew: what a person says of two of them in the comparison.
#include "core/storage/history_store.h"
#include "core/transfer/known_pairs.h"
#include "ui/history/changes_model.h"
#include "ui/history/compare_page.h"
#include "ui/session/job_session.h"

#include <QTableView>

#include <algorithm>

namespace sealwalk::ui {

void ComparePage::confirm(int row)
{
    const analysis::ComparedPoint* point = m_changes->at(row);
    if (point == nullptr)
        return;
    const auto pair = point->match.isProposal()
                          ? std::optional(analysis::PointPair{*point->match.before, *point->match.after})
                          : markedPair(*point);
    if (!pair) {
        if (point->match.by == analysis::MatchedBy::Nothing)
            emit said(tr("Mark the row of its other place with Space, then Y makes both one."));
        return;
    }
    const Status kept = transfer::sayTheyAreOne(m_session.history(), m_before, m_after, *pair);
    if (!kept) {
        emit failed(kept.error());
        return;
    }
    matchedAnew(row);
    emit said(tr("Kept as one place; both jobs are compared there."));
}

/// `point` and the one row marked beside it, where one has only a place then and the other only one now.
std::optional<analysis::PointPair> ComparePage::markedPair(const analysis::ComparedPoint& point) const
{
    std::optional<model::PointId> then = point.match.before;
    std::optional<model::PointId> now = point.match.after;
    for (const std::size_t which : m_followed) {
        const analysis::PointMatch& other = m_changes->comparison().points[which].match;
        if (other == point.match)
            continue;
        if ((other.before && then) || (other.after && now))
            return std::nullopt;
        then = other.before ? other.before : then;
        now = other.after ? other.after : now;
    }
    return then && now && point.match.by == analysis::MatchedBy::Nothing
               ? std::optional(analysis::PointPair{*then, *now})
               : std::nullopt;
}

void ComparePage::deny(int row)
{
    const analysis::ComparedPoint* point = m_changes->at(row);
    if (point == nullptr || !point->match.isProposal())
        return;
    const Status kept = transfer::sayTheyAreTwo(m_session.history(), m_before, m_after,
                                                {*point->match.before, *point->match.after});
    if (!kept) {
        emit failed(kept.error());
        return;
    }
    matchedAnew(row);
    emit said(tr("Kept as two places; neither is compared with the other."));
}

/// Rows come and go with a pair, so what was followed by its row is let go.
void ComparePage::matchedAnew(int row)
{
    if (!readKnownPairs())
        return;
    m_followed.clear();
    compareAgain();
    m_table->setCurrentIndex(m_changes->index(std::min(row, m_changes->rowCount() - 1), 0));
}

bool ComparePage::readKnownPairs()
{
    auto known = transfer::knownPairs(m_session.history());
    if (!known) {
        emit failed(known.error());
        return false;
    }
    m_known = std::move(*known);
    return true;
}

} // namespace sealwalk::ui
