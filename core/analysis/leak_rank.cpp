// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/leak_rank.h"

#include "core/analysis/answered.h"

namespace sealwalk::analysis {

namespace {

int standing(const PointFinding& finding)
{
    constexpr int kSized = 3;
    constexpr int kUnsized = 2;
    if (sizeOf(finding))
        return kSized;
    if (isUnsizedLeak(finding))
        return kUnsized;
    return finding.bound ? 1 : 0;
}

LeakRate figureOf(const PointFinding& finding)
{
    if (const auto size = sizeOf(finding))
        return *size;
    return (isUnsizedLeak(finding) ? finding.asRead : finding.bound).value_or(LeakRate());
}

} // namespace

std::optional<LeakRate> sizeOf(const PointFinding& finding)
{
    return finding.rate ? finding.rate : finding.atLeast;
}

bool isUnsizedLeak(const PointFinding& finding)
{
    return isLeakWord(finding.finding) && !sizeOf(finding);
}

bool isRanked(const PointFinding& finding)
{
    return standing(finding) > 0;
}

bool outweighs(const PointFinding& a, const PointFinding& b)
{
    if (standing(a) != standing(b))
        return standing(a) > standing(b);
    return figureOf(a) > figureOf(b);
}

} // namespace sealwalk::analysis
