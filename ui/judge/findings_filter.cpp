// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/findings_filter.h"

#include "ui/judge/findings_model.h"

namespace sealwalk::ui {

FindingsFilter::FindingsFilter(QObject* parent)
    : QSortFilterProxyModel(parent)
{
    setSortRole(FindingsModel::SortRole);
    setDynamicSortFilter(true);
}

void FindingsFilter::setShown(Show show)
{
    m_show = show;
    invalidateFilter();
}

void FindingsFilter::setTyped(const QString& text)
{
    m_typed = text.trimmed();
    invalidateFilter();
}

int FindingsFilter::count(Show show) const
{
    int count = 0;
    for (int row = 0; row < sourceModel()->rowCount(); ++row)
        count += isShown(show, row) ? 1 : 0;
    return count;
}

bool FindingsFilter::isShown(Show show, int row, const QModelIndex& parent) const
{
    constexpr int kQuiet = 4; // within, and nothing to tell
    const QModelIndex first = sourceModel()->index(row, 0, parent);
    const int gravity = first.data(FindingsModel::GravityRole).toInt();
    const auto verdict = static_cast<analysis::Verdict>(first.data(FindingsModel::VerdictRole).toInt());
    switch (show) {
    case NeedsDecision:
        return gravity < kQuiet;
    case Over:
        return verdict == analysis::Verdict::Over;
    case CannotSay:
        return verdict == analysis::Verdict::CannotSay;
    case NoAnswer:
        return verdict == analysis::Verdict::NoAnswer;
    case Everything:
        break;
    }
    return true;
}

bool FindingsFilter::filterAcceptsRow(int row, const QModelIndex& parent) const
{
    const bool shown = isShown(m_show, row, parent);
    if (!shown || m_typed.isEmpty())
        return shown;
    for (int column = 0; column < sourceModel()->columnCount(); ++column)
        if (sourceModel()
                ->index(row, column, parent)
                .data()
                .toString()
                .contains(m_typed, Qt::CaseInsensitive))
            return true;
    return false;
}

} // namespace sealwalk::ui
