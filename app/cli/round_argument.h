// SPDX-License-Identifier: GPL-3.0-or-later
// The round a command is told of, and times for people.
#pragma once

#include "core/analysis/round_summary.h"
#include "core/base/result.h"
#include "core/exchange/job_json.h"
#include "core/model/job.h"

#include <string>
#include <vector>

namespace sealwalk::cli {

/// A round by number ("1") or UUID; empty: the latest. NotFound when the job has none.
Result<const model::Round*> findRound(const model::Job& job, const std::string& round);

/// What a command's figures are of: a whole job as found or as left, as the screen shows it, or one round.
struct Scope
{
    const model::Round* round = nullptr;
    analysis::Standing standing = analysis::Standing::AsLeft; ///< without a round
    [[nodiscard]] std::string word() const;                   ///< "as left", "as found", "round 2"
    [[nodiscard]] std::vector<analysis::PointFinding> findings(const exchange::JobRecord& record) const;
};

/// `round` empty: the whole job. Both a round and `asFound` are BadInput.
Result<Scope> findScope(const model::Job& job, const std::string& round, bool asFound);

/// "2026-03-17 14:05" of the clock on the wall then.
std::string shortTime(const Timestamp& at);

} // namespace sealwalk::cli
