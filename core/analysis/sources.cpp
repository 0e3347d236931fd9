// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/sources.h"

#include "core/analysis/block_findings.h"
#include "core/analysis/survey_blocks.h"

#include <fmt/format.h>

#include <cmath>
#include <unordered_set>

namespace sealwalk::analysis {

namespace {

Status check(const Survey& survey)
{
    std::unordered_set<int> numbers;
    for (const SurveyPoint& point : survey.points) {
        if (!std::isfinite(point.x.si()) || !std::isfinite(point.up.si()) ||
            !std::isfinite(point.halfLength.si()))
            return fail(ErrorCode::BadInput, fmt::format("point {}: its place must be finite", point.number));
        if (!numbers.insert(point.number).second)
            return fail(ErrorCode::BadInput, fmt::format("point {} is there twice", point.number));
    }
    for (std::size_t i = 0; i < survey.readings.size(); ++i) {
        const SurveyReading& reading = survey.readings[i];
        if (!numbers.contains(reading.point))
            return fail(ErrorCode::BadInput,
                        fmt::format("a reading names point {}, which does not exist", reading.point));
        if (!std::isfinite(reading.peak.si()) || !std::isfinite(reading.background.si()) ||
            !std::isfinite(reading.start.si()) || !(reading.dwell.si() > 0.0) ||
            !std::isfinite(reading.dwell.si()))
            return fail(
                ErrorCode::BadInput,
                fmt::format("reading {} (point {}): rates and times must be finite, the dwell above 0", i + 1,
                            reading.point));
        if (i > 0 && reading.start < survey.readings[i - 1].start)
            return fail(
                ErrorCode::BadInput,
                fmt::format("reading {} (point {}) starts before the one above it", i + 1, reading.point));
    }
    return {};
}

} // namespace

std::string_view wordOf(SourceVerdict verdict)
{
    switch (verdict) {
    case SourceVerdict::Leak:
        return "leak";
    case SourceVerdict::Shared:
        return "shared";
    case SourceVerdict::Echo:
        return "echo";
    case SourceVerdict::Masked:
        return "masked";
    case SourceVerdict::Permeation:
        return "permeation";
    case SourceVerdict::Clear:
        return "clear";
    case SourceVerdict::Void:
        return "void";
    case SourceVerdict::NotSprayed:
        return "not sprayed";
    }
    return "not sprayed";
}

Result<Sources> findSources(const Survey& survey)
{
    if (const Status status = check(survey); !status)
        return fail(status.error());
    const std::vector<SurveyBlock> blocks = surveyBlocks(survey);
    if (blocks.size() <= 1)
        return blockFindings(survey, SearchEffort());
    Sources sources;
    sources.findings.resize(survey.points.size());
    for (const SurveyBlock& block : blocks) {
        Sources part = blockFindings(block.survey, lightEffort());
        for (std::size_t i = 0; i < block.own.size(); ++i)
            sources.findings[block.own[i]] = std::move(part.findings[i]);
        if (part.spread.known && !sources.spread.known)
            sources.spread = part.spread;
    }
    return sources;
}

} // namespace sealwalk::analysis
