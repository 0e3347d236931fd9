// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's look, turn by turn, and the signatures that close a job.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/enum_names.h"
#include "core/model/ids.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::model {

enum class ReviewStep
{
    Submitted,
    Returned,
    Approved,
    Remark,
    Answer,
    Amendment
};

template <>
struct EnumNames<ReviewStep>
{
    static constexpr std::string_view what = "step of a review";
    static constexpr std::array<std::pair<ReviewStep, std::string_view>, 6> table{{
        {ReviewStep::Submitted, "submitted"},
        {ReviewStep::Returned, "returned"},
        {ReviewStep::Approved, "approved"},
        {ReviewStep::Remark, "remark"},
        {ReviewStep::Answer, "answer"},
        {ReviewStep::Amendment, "amendment"},
    }};
};

/// One turn of the review. Kept for ever.
struct ReviewEntry
{
    ReviewId id;
    ReviewStep step = ReviewStep::Remark;
    std::string by;
    Timestamp at;
    std::string text;
    std::optional<PointId> point; ///< a remark on one point
    std::string check;            ///< the check of the sign-off list a remark answers; empty: none
    std::string digest;           ///< of the job as it was seen at that moment, hexadecimal
    bool operator==(const ReviewEntry&) const = default;
};

/// The check of an entry that says that the object has none of what is often forgotten: a step of the work,
/// no answer to a question. Its text is that of the reminder.
inline constexpr std::string_view kNotThere = "not there";
/// The same, taken back: the latest of both counts.
inline constexpr std::string_view kThereAfterAll = "there after all";

/// The role of a signature that goes with an approval, whatever else its person does.
inline constexpr std::string_view kApprovalRole = "reviewer";
/// The role of a signature that goes with an amendment.
inline constexpr std::string_view kAmendmentRole = "amendment";

/// An Ed25519 signature (RFC 8032) over the job's digest and the statement.
struct Signature
{
    SignatureId id;
    PersonId person;
    std::string name;      ///< as it stood when signing
    std::string role;      ///< reviewer, tester, witness, amendment
    std::string statement; ///< what is claimed, in words
    std::string object; ///< the test object as it stood when signing, canonical JSON; it may be renamed later
    Timestamp at;
    std::string digest;    ///< hexadecimal SHA-256 the signature covers
    std::string publicKey; ///< hexadecimal, 32 bytes
    std::string value;     ///< hexadecimal, 64 bytes
    bool operator==(const Signature&) const = default;
};

/// Somebody who works in this history. The secret half of the key is sealed by a passphrase.
struct Person
{
    PersonId id;
    std::string name;
    std::string role; ///< technician, reviewer, both
    std::string qualification;
    bool active = true;    ///< a colleague who left keeps old signatures and signs no more
    std::string publicKey; ///< hexadecimal; empty: cannot sign yet
    std::string sealedKey; ///< text form of the sealed secret key; never leaves the history
    Timestamp since;
    bool operator==(const Person&) const = default;
};

/// What was done with a person of a history, and who did it. Kept for ever.
struct PersonEntry
{
    PersonId person;
    std::string what; ///< "added", "left" …, words of the record
    std::string by;   ///< who was logging; empty: nobody had been named
    Timestamp at;
    bool operator==(const PersonEntry&) const = default;
};

/// The word of the entry that a person begins with.
inline constexpr std::string_view kPersonAdded = "added";

} // namespace sealwalk::model
