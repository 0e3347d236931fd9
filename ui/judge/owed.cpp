// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/owed.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr double kWorthShowing = 0.05;

struct OwedWords
{
    Q_DECLARE_TR_FUNCTIONS(OwedWords)
};

/// A rule that explains more than the reading explains all of it.
QString percent(double share)
{
    return QLocale().toString(100.0 * std::min(share, 1.0), 'f', 0) + QStringLiteral(" %");
}

/// A point that showed nothing owes nothing worth drawing.
bool answered(const analysis::PointFinding& finding)
{
    using analysis::Finding;
    return finding.finding == Finding::Echo || finding.finding == Finding::Masked ||
           finding.finding == Finding::Leak || finding.finding == Finding::Shared;
}

void addThreads(const analysis::PointFinding& debtor, model::PointId only,
                std::vector<render::Thread>& threads)
{
    if (!answered(debtor))
        return;
    for (const analysis::Owed& owed : debtor.owes) {
        const bool wanted = only == model::PointId() || owed.to == only;
        // In the fan of a leak the shares would hide one another; each point tells its own.
        if (owed.to != model::PointId() && wanted && owed.share >= kWorthShowing)
            threads.push_back({owed.to, debtor.point, std::min(owed.share, 1.0),
                               only == model::PointId() ? percent(owed.share) : QString()});
    }
}

} // namespace

std::vector<render::Thread> threadsOf(const std::vector<analysis::PointFinding>& findings,
                                      model::PointId point)
{
    std::vector<render::Thread> threads;
    const auto own = std::ranges::find(findings, point, &analysis::PointFinding::point);
    if (own == findings.end())
        return threads;
    addThreads(*own, {}, threads);
    for (const analysis::PointFinding& other : findings)
        if (other.point != point)
            addThreads(other, point, threads);
    return threads;
}

QString owedText(const analysis::PointFinding& finding, const model::Sketch& sketch)
{
    QStringList parts;
    double sum = 0.0;
    for (const analysis::Owed& owed : finding.owes)
        sum += owed.share;
    const double scale = sum > 1.0 ? 1.0 / sum : 1.0;
    for (const analysis::Owed& owed : finding.owes) {
        if (owed.share * scale < kWorthShowing)
            continue;
        const model::TestPoint* leak = sketch.point(owed.to);
        parts << (leak == nullptr ? OwedWords::tr("%1 what earlier responses and the room left")
                                        .arg(percent(owed.share * scale))
                                  : OwedWords::tr("%1 helium that reached point %2")
                                        .arg(percent(owed.share * scale))
                                        .arg(leak->number));
    }
    return parts.isEmpty() ? QString()
                           : OwedWords::tr("Of its reading: %1.").arg(parts.join(QStringLiteral(", ")));
}

} // namespace sealwalk::ui
