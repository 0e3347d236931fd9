// SPDX-License-Identifier: GPL-3.0-or-later
// The job file: one job, whole, in one portable, checkable file (.sealjob). JOB_FILE.md describes it.
#pragma once

#include "core/base/result.h"
#include "core/exchange/job_signing.h"
#include "core/model/picture.h"

#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

struct JobFile
{
    JobRecord record; ///< the job with its signatures
    std::vector<model::Picture> pictures;
    bool operator==(const JobFile&) const = default;
};

/// The names of `pictures` for digests.
std::vector<PictureName> namesOf(const std::vector<model::Picture>& pictures);

/// The one file of this content. A signed job's object is written as its last signer saw it. Refused: a
/// picture the job refers to that is not in `file.pictures` or whose bytes do not match its name. Others are
/// left out.
Result<std::string> packJobFile(const JobFile& file);

/// Reads any sound job file, also one that was packed again by another program. ForeignFile: no job file;
/// DamagedFile: bytes do not match checksums or picture names; NewerVersion: a later format; BadInput:
/// content that breaks the format, with member and JSON path.
Result<JobFile> readJobFile(std::string_view bytes);

/// Everything that can be said of a job file: damage, members changed or not in canonical form, packing that
/// is not the one packing, signatures. An error only when this is no job file at all, or a newer one.
Result<Verification> verifyJobFile(std::string_view bytes);

} // namespace sealwalk::exchange
