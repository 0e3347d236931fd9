// SPDX-License-Identifier: GPL-3.0-or-later
// A job as JSON: what the job file carries, what `show --json` prints, and what digests are taken over.
// The format is described in JOB_FILE.md.
#pragma once

#include "core/base/result.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

inline constexpr std::string_view kJobFormat = "sealwalk-job-1";
/// With customer or witness. Written only for jobs that name one: all others stay readable by, and the same
/// byte for byte as of, programs that know the first format only.
inline constexpr std::string_view kJobFormatWithParties = "sealwalk-job-2";
/// With points taped off while another was sprayed, an echo whose leak a person named, a verdict "not
/// counted", or a background read by eye. Written only for jobs that have one of these.
inline constexpr std::string_view kJobFormatWithSaid = "sealwalk-job-3";
/// With a calibration, a background watch or a pressure rise that is void. Written only for such jobs.
inline constexpr std::string_view kJobFormatWithVoidMeasurements = "sealwalk-job-4";
inline constexpr std::string_view kSignaturesFormat = "sealwalk-signatures-1";

/// A job together with the object it was done on.
struct JobRecord
{
    model::TestObject object;
    model::Job job;
    bool operator==(const JobRecord&) const = default;
};

/// {"format", "object", "job"}: everything but the signatures, the state (the review says it), and what
/// belongs to a history rather than to the job: `number` where `openedAs` differs, and the readings'
/// `sequence`.
nlohmann::json jobToJson(const model::TestObject& object, const model::Job& job);

/// Reads jobToJson()'s document and checks that its parts fit together. Sequences are counted from 1; the
/// state follows from the review; there are no signatures. A later format number is ErrorCode::NewerVersion;
/// every other fault is BadInput and names its JSON path.
Result<JobRecord> jobFromJson(const nlohmann::json& document);

/// {"format", "signatures"}; the order is kept.
nlohmann::json signaturesToJson(const std::vector<model::Signature>& signatures);
Result<std::vector<model::Signature>> signaturesFromJson(const nlohmann::json& document);

/// One test object alone, and its canonical text: what Signature::object holds.
nlohmann::json objectToJson(const model::TestObject& object);
Result<model::TestObject> objectFromJson(const nlohmann::json& document);
Result<std::string> objectText(const model::TestObject& object);
Result<model::TestObject> objectFromText(std::string_view text);

/// The state a job is in after these turns.
model::JobState stateAfter(const std::vector<model::ReviewEntry>& review);

/// Whether the parts of a record refer to one another as they should: identities given once, readings of
/// known rounds and points, corrections of earlier readings, a drawable sketch. The error names what does not
/// fit.
Status checkRecord(const JobRecord& record);

} // namespace sealwalk::exchange
