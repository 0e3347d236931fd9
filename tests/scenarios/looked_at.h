// SPDX-License-Identifier: GPL-3.0-or-later
// A job file opened again and asked what its job says: corrected values, verdicts, what stands as found and
// as left.
#pragma once

#include "core/analysis/corrected_rate.h"
#include "core/analysis/point_finding.h"
#include "core/exchange/job_file.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::scenarios {

/// A line of a scenario's table. `corrected` in mbar·l/s helium on the chamber; none: no response.
struct Row
{
    int round = 1; ///< its number
    int point = 0;
    std::optional<double> corrected = {};
    analysis::Verdict verdict = analysis::Verdict::Within;
    model::Condition condition = model::Condition::AtRest;
    std::string detail = {};
};

class LookedAt
{
public:
    explicit LookedAt(const std::string& bytes); ///< of a job file

    [[nodiscard]] const model::Job& job() const { return m_file.record.job; }
    [[nodiscard]] const model::TestObject& object() const { return m_file.record.object; }
    [[nodiscard]] const std::vector<analysis::PointFinding>& found() const { return m_found; }
    [[nodiscard]] const std::vector<analysis::PointFinding>& left() const { return m_left; }
    [[nodiscard]] const analysis::PointFinding& found(int point) const { return of(m_found, point); }
    [[nodiscard]] const analysis::PointFinding& left(int point) const { return of(m_left, point); }
    /// The finding of a round by itself.
    [[nodiscard]] const analysis::PointFinding& in(int round, int point) const;

    /// Each row against the reading of its round, point and condition that stands: the corrected value within
    /// the two digits of the table, the range about it, the verdict; where there was no response, a bound.
    void expectRows(const std::vector<Row>& rows) const;
    /// The file is whole, its signatures hold, and the job is signed.
    void expectSigned() const;
    /// As left every point is clear but those named.
    void expectClearExcept(const std::vector<int>& points) const;

private:
    [[nodiscard]] const analysis::PointFinding& of(const std::vector<analysis::PointFinding>& all,
                                                   int point) const;

    std::string m_bytes;
    exchange::JobFile m_file;
    std::vector<std::vector<analysis::PointFinding>> m_byRound;
    std::vector<analysis::PointFinding> m_found;
    std::vector<analysis::PointFinding> m_left;
};

/// The job file of a scenario as it was kept in tests/data/scenarios, to be looked at as well; with
/// SEALWALK_KEEP_SCENARIOS in the environment `bytes` are put there first.
std::string keptFile(const std::string& name, const std::string& bytes);

} // namespace sealwalk::scenarios
