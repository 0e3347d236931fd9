// SPDX-License-Identifier: GPL-3.0-or-later
// The sections of a report, one function each. Inner header of report_builder.
#pragma once

#include "core/analysis/corrected_rate.h"
#include "core/analysis/job_balance.h"
#include "core/analysis/review_checks.h"
#include "core/report/report_builder.h"
#include "core/report/shown_unit.h"
#include "core/report/typed_words.h"

#include <span>

namespace sealwalk::report::detail {

/// What every section draws on.
struct Ground
{
    const model::Job& job;
    const model::TestObject& object;
    const ReportOptions& options;
    ShownUnit unit;
    std::vector<analysis::PointFinding> found; ///< as found, in order of number
    std::vector<analysis::PointFinding> left;  ///< as left
    std::optional<LeakRate> detectable;        ///< nothing is claimed below it
    bool repaired = false;                     ///< as left differs from as found
    std::vector<analysis::ReviewCheck> questions = {}; ///< openQuestions()

    [[nodiscard]] std::string rate(std::optional<LeakRate> value) const; ///< "–" when none
    /// 95 %, for the small line below a rate: "(2.6–11) × 10⁻⁴"; empty when there is none.
    [[nodiscard]] std::string below(std::optional<LeakRate> value, std::optional<LeakRate> low,
                                    std::optional<LeakRate> high) const;
    [[nodiscard]] std::string number(model::PointId point) const;
    [[nodiscard]] std::string numbers(std::span<const model::PointId> points) const;
    [[nodiscard]] std::string jointName(model::PointId point) const;
    [[nodiscard]] std::string place(model::PointId point) const;
    [[nodiscard]] std::string
    when(const Timestamp& at) const; ///< date and time of day, with its zone where that is not the job's
};

/// "bottle H-204", and no more when somebody typed "Bottle H-204" or "the small bottle"; typed words are
/// marked.
std::string withWord(std::string_view word, const std::string& words);
/// Range of a finding: "3.5 × 10⁻⁴ … 6.0 × 10⁻⁴", "own part below …", "below …", "–".
std::string rangeText(const Ground& ground, const analysis::PointFinding& finding);
/// "echo of 17", "masked by 17", "leak when flexed", "leak, held by a temporary repair".
std::string findingText(const Ground& ground, const analysis::PointFinding& finding);
PlateMark plateMark(const Ground& ground, const analysis::PointFinding& finding);

Statement statementOf(const Ground& ground);
Section setupSection(const Ground& ground);
Section decisionSection(const Ground& ground);
Section balanceSection(const Ground& ground);
Section signatureSection(const Ground& ground);
std::vector<Section> mapSections(const Ground& ground);
std::vector<Section> riseSections(const Ground& ground);
Section setupSketchSection(const Ground& ground);
Section calibrationSection(const Ground& ground);
Section pointsSection(const Ground& ground);
Section readingsSection(const Ground& ground);
Section untestedSection(const Ground& ground);
Section voidSection(const Ground& ground);
Section repairSection(const Ground& ground);
Section decisionsByPeopleSection(const Ground& ground);
Section comparisonSection(const Ground& ground);
/// Questions that are not in order, once the job was sent for review. Left out: the comparison, and of a
/// signed job what the history knows of people by now.
std::vector<analysis::ReviewCheck> openQuestions(const Ground& ground);
Section questionsSection(const Ground& ground);
Section reviewSection(const Ground& ground);
Section cautionSection(const Ground& ground);

} // namespace sealwalk::report::detail
