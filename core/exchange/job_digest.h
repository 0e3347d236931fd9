// SPDX-License-Identifier: GPL-3.0-or-later
// What a signature covers: one SHA-256 over a job's canonical JSON and the list of its pictures.
#pragma once

#include "core/base/result.h"
#include "core/exchange/job_json.h"

#include <string>
#include <tuple>
#include <vector>

namespace sealwalk::exchange {

/// A picture as the job file names it.
struct PictureName
{
    std::string sha256; ///< 64 lower-case hexadecimal digits
    std::string extension;

    bool operator==(const PictureName&) const = default;
    /// In order of member names.
    bool operator<(const PictureName& other) const
    {
        return std::tie(sha256, extension) < std::tie(other.sha256, other.extension);
    }
    [[nodiscard]] std::string memberName() const; ///< pictures/<sha256>.<extension>
};

/// The SHA-256 of every picture a job refers to, sorted, each once.
std::vector<std::string> picturesOf(const model::Job& job);

/// The digest of a job as it stands, hexadecimal: SHA-256 over the lines "sealwalk-job-digest-1", the SHA-256
/// of the canonical jobToJson(), and `pictures` as member names in order, each ended by a line feed.
/// Signatures, the state and numbers of the history are outside; see jobToJson().
Result<std::string> jobDigest(const model::TestObject& object, const model::Job& job,
                              std::vector<PictureName> pictures);

/// The same over a document as it was read from a file.
Result<std::string> documentDigest(const nlohmann::json& document, std::vector<PictureName> pictures);

} // namespace sealwalk::exchange
