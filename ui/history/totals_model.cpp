// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/totals_model.h"

#include "core/report/course_years.h"
#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/rate_delegate.h"

namespace sealwalk::ui {

namespace {

bool isFigure(int column)
{
    return column == TotalsModel::Sum || column == TotalsModel::Rise || column == TotalsModel::Base;
}

/// A rise of nothing, or one that does not part leak from outgassing, is only a bound.
bool isSized(const analysis::RiseTotal& rise)
{
    return rise.rate && *rise.rate > LeakRate();
}

} // namespace

void TotalsModel::setRows(std::vector<analysis::ObjectTotal> rows, const report::ShownUnit& unit)
{
    beginResetModel();
    m_rows = std::move(rows);
    m_unit = unit;
    endResetModel();
}

int TotalsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int TotalsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString TotalsModel::sumText(const analysis::LeakSum& leaks) const
{
    const auto rate = [&](LeakRate value) { return localised(report::screenRate(m_unit.number(value))); };
    if (leaks.air)
        return leaks.isAtLeast ? tr("at least %1").arg(rate(leaks.air->rate)) : rate(leaks.air->rate);
    const analysis::SumState state = leaks.state();
    if (state == analysis::SumState::Below && leaks.belowAir)
        return tr("below %1").arg(rate(*leaks.belowAir));
    return state == analysis::SumState::NotTested ? tr("not sprayed")
                                                  : render::inWords(std::string(report::sumWord(state)));
}

QString TotalsModel::text(const analysis::ObjectTotal& total, int column) const
{
    const auto rate = [&](LeakRate value) { return localised(report::screenRate(m_unit.number(value))); };
    switch (column) {
    case Job:
        return QString::number(total.job);
    case Date:
        return QString::fromStdString(total.at.date());
    case State:
        return total.standing == analysis::Standing::AsLeft ? tr("as left") : tr("as found");
    case Sprayed:
        return tr("%1 of %2").arg(total.leaks.answered).arg(total.leaks.points);
    case Sum:
        return sumText(total.leaks);
    case Rise:
        if (!total.rise)
            return tr("not recorded");
        return isSized(*total.rise) ? rate(*total.rise->rate) : tr("below %1").arg(rate(total.rise->high));
    case Base:
        return total.basePressure ? localised(report::screenRate(inMillibars(*total.basePressure)))
                                  : tr("not recorded");
    default:
        return {};
    }
}

std::string TotalsModel::rangeOf(const analysis::ObjectTotal& total, int column, bool spoken) const
{
    const auto range = [&](LeakRate value, LeakRate low, LeakRate high) {
        return spoken ? report::plainRange(m_unit.number(low), m_unit.number(high))
                      : report::rangeBeside(m_unit.number(value), m_unit.number(low), m_unit.number(high));
    };
    if (column == Sum && total.leaks.air && total.leaks.air->hasRange())
        return range(total.leaks.air->rate, total.leaks.air->low, total.leaks.air->high);
    if (column == Rise && total.rise && isSized(*total.rise))
        return range(*total.rise->rate, total.rise->low, total.rise->high);
    return {};
}

QVariant TotalsModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const analysis::ObjectTotal& total = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return text(total, index.column());
    case RateDelegate::RangeRole:
        return localised(rangeOf(total, index.column(), false));
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: {
        const std::string range = rangeOf(total, index.column(), true);
        return range.empty() ? text(total, index.column())
                             : tr("%1, 95 % range %2").arg(text(total, index.column()), localised(range));
    }
    case Qt::TextAlignmentRole:
        return isFigure(index.column()) ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    default:
        return {};
    }
}

QVariant TotalsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && isFigure(section))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Job:
        return tr("Job");
    case Date:
        return tr("Date");
    case State:
        return tr("State");
    case Sprayed:
        return tr("Sprayed");
    case Sum:
        return tr("Leaks, %1 air").arg(QString::fromStdString(m_unit.symbol));
    case Rise:
        return tr("Pressure rise");
    case Base:
        return tr("Base, mbar");
    default:
        return {};
    }
}

} // namespace sealwalk::ui
