// SPDX-License-Identifier: GPL-3.0-or-later
// What may be claimed of a job: no more than was tested, in the conditions it was tested.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"

#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

enum class ClaimOutcome
{
    Accept,
    AcceptWithConditions, ///< temporary repairs, concessions, points left out with reasons
    Reject,
    NoResult, ///< something decisive is missing
};

struct Claim
{
    ClaimOutcome outcome = ClaimOutcome::NoResult;
    std::vector<std::string> sentences; ///< whole sentences, the first says the most

    [[nodiscard]] std::string text() const; ///< the sentences, one after the other
};

/// From the findings as left. Never says "no leak": what was not seen is bounded by what could have been
/// seen.
/// @param unit  the stable text of the unit figures are written in; an unknown one falls back to mbar l/s
Claim claimOf(const model::Job& job, std::span<const PointFinding> asLeft, const std::string& unit);

/// Marks the points that a temporary repair of an earlier job still holds: a job's own findings do not know
/// of them, its claim has to.
/// @param carried  temporary repairs of earlier jobs of the object that nothing has made good
void markHeld(std::vector<PointFinding>& findings, std::span<const model::Repair> carried);

/// What is signed with an approval: the claim in the job's unit, with what earlier jobs left held by a
/// temporary repair, and that one pair of eyes was enough where the history is set to one person.
std::string approvalStatement(const model::Job& job, std::vector<PointFinding> asLeft,
                              std::span<const model::Repair> carried, bool onePersonHistory);

} // namespace sealwalk::analysis
