// SPDX-License-Identifier: GPL-3.0-or-later
// From the record of a job to its report. The wording claims no more than was tested.
#pragma once

#include "core/analysis/point_matching.h"
#include "core/model/job.h"
#include "core/model/test_object.h"
#include "core/report/report_content.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::report {

/// What checking a signature said, for the people who read the paper.
struct SignatureSays
{
    model::SignatureId signature;
    bool ok = false;
    std::string says;
};

struct ReportOptions
{
    std::string unit;                  ///< of leak rate; empty: the job's
    std::optional<model::Job> lastJob; ///< the latest earlier job of the object
    analysis::KnownPairs known;        ///< what was said of points drawn anew since then
    Timestamp asOf; ///< the moment its due dates are looked at: the approval of a signed job, else `now`
    std::vector<model::Repair> carried; ///< temporary repairs of earlier jobs, not made good by then
    /// Findings of summarise(), where the caller has worked them out already; empty: worked out here.
    std::vector<analysis::PointFinding> found;
    std::vector<analysis::PointFinding> left;
    std::string digest;                            ///< of the job as it stands, hexadecimal; empty: not known
    std::vector<SignatureSays> signatures;         ///< one per signature of the job
    std::vector<model::Person> people;             ///< of the history, for their qualifications
    std::vector<model::PersonEntry> personEntries; ///< of the history: who added whom
    std::vector<std::string> problems;             ///< what checking the record complained of
    Timestamp now;                                 ///< of printing
    bool marksTyped = false; ///< what people typed stands between the marks of typed_words.h
};

ReportContent reportOf(const model::Job& job, const model::TestObject& object, const ReportOptions& options);

/// As inPrint(), with a capital in front and a full stop behind.
std::string asSentence(const std::string& words);

} // namespace sealwalk::report
