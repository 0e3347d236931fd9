// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/sources.h"

#include "core/analysis/block_findings.h"
#include "core/analysis/survey_blocks.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>
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

/// The blocks know nothing of one another, so the cores share them.
std::vector<Sources> searchSideBySide(const std::vector<SurveyBlock>& blocks)
{
    std::vector<Sources> parts(blocks.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t at = next++; at < blocks.size(); at = next++)
            parts[at] = blockFindings(blocks[at].survey, lightEffort());
    };
    constexpr unsigned kMostThreads = 8;
    std::vector<std::jthread> helpers;
    for (unsigned i = 1; i < std::min(std::thread::hardware_concurrency(), kMostThreads); ++i)
        helpers.emplace_back(work);
    work();
    helpers.clear(); // joins
    return parts;
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
    const std::vector<Sources> parts = searchSideBySide(blocks);
    for (std::size_t b = 0; b < blocks.size(); ++b) {
        for (std::size_t i = 0; i < blocks[b].own.size(); ++i)
            sources.findings[blocks[b].own[i]] = parts[b].findings[i];
        if (parts[b].spread.known && !sources.spread.known)
            sources.spread = parts[b].spread;
    }
    return sources;
}

} // namespace sealwalk::analysis
