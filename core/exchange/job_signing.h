// SPDX-License-Identifier: GPL-3.0-or-later
// Signing a whole job, and saying afterwards whether it is still what was signed.
#pragma once

#include "core/base/result.h"
#include "core/exchange/job_digest.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

/// What a person claims with a signature.
struct Claim
{
    std::string role;      ///< reviewer, tester, witness, amendment
    std::string statement; ///< in words
    Timestamp at;
};

/// Signs `record` as it stands: the approval that goes with the signature must already be in its review.
/// `pictures` are those of picturesOf(), with their extensions. Refused: a person without a key or not active
/// (NotAllowed), a passphrase that does not open the key (WrongPassphrase). Takes the better part of a
/// second. Where the job carries signatures already the statement ends by counting them, so that none but the
/// last can go unnoticed.
Result<model::Signature> signJob(const JobRecord& record, const std::vector<PictureName>& pictures,
                                 const model::Person& person, std::string_view passphrase,
                                 const Claim& claim);

/// A signature looked at again.
struct CheckedSignature
{
    model::Signature signature;
    bool ok = false;
    std::string says;            ///< one sentence: what holds, or what does not
    std::size_t reviewTurns = 0; ///< when ok: the first so many turns of the review are covered, and all else
};

struct Verification
{
    std::vector<std::string>
        problems;                  ///< one sentence each: the content is not what it was, or not to be had
    std::vector<std::string> form; ///< packing or spelling differ from the one form; the content is unchanged
    std::vector<std::string> notes; ///< worth knowing, nothing wrong
    std::vector<CheckedSignature> signatures;

    [[nodiscard]] bool ok() const { return problems.empty() && form.empty(); }
};

/// Whether every signature holds, every approval is covered by one, and the state is what the review says.
/// Whether a key belongs to whom it should is for the caller: only a history knows its people.
Verification verifyRecord(const JobRecord& record, const std::vector<PictureName>& pictures);

/// The same for a document as it was read, so that files of older formats are checked as they were written.
Verification verifyDocument(const nlohmann::json& document, const JobRecord& record,
                            const std::vector<PictureName>& pictures);

/// The object as the last approval was signed with; what an amendment was signed with is no approval. None
/// where nobody approved, or where the text is no object. Whether the signature holds is not asked.
std::optional<model::TestObject> approvedObject(const model::Job& job);

/// What a signature's bytes are made over: the canonical JSON of every field of `signature` but its bytes,
/// with a first key that sets it apart. The object is inside the digest.
std::string signedMessage(const model::Signature& signature);

} // namespace sealwalk::exchange
