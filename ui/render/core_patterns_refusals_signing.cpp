// SPDX-License-Identifier: GPL-3.0-or-later
// People, keys, signatures and the turns of a review.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> signingRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "%1 of the %2 signatures before that of %3 are missing"),
        QT_TRANSLATE_NOOP("Core", "the approval by %1 of %2 is covered by no valid signature"),
        QT_TRANSLATE_NOOP("Core", "%1 is no longer active here and cannot sign"),
        QT_TRANSLATE_NOOP("Core", "%1 has no signing key yet"),
        QT_TRANSLATE_NOOP("Core", "%1 no longer signs in this history"),
        QT_TRANSLATE_NOOP("Core", "%1 made readings of this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 made measurements for this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 declared measurements of this job void; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 declared readings of this job void; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 gave a verdict in this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 entered a concession in this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 logged a repair in this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 did a repair in this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 sent this job for review; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "%1 sent this job for review; somebody else has to send it back"),
        QT_TRANSLATE_NOOP("Core", "%1 granted a concession in this job; somebody else has to approve it"),
        QT_TRANSLATE_NOOP("Core", "say first who is logging; it stands under a name"),
        QT_TRANSLATE_NOOP("Core",
                          "signing key of %1: its public half is not the one this person is known by"),
        QT_TRANSLATE_NOOP("Core", "name, role or statement is not UTF-8 text"),
        QT_TRANSLATE_NOOP("Core", "the job is marked \"%1\", but after its review it is \"%2\""),
        QT_TRANSLATE_NOOP("Core", "the machine offers no random numbers for signing keys"),
        QT_TRANSLATE_NOOP("Core", "the signing key asks for a passphrase check outside 1 to 16 passes over 8 "
                                  "KiB to 1 GiB; it is damaged or not ours"),
        QT_TRANSLATE_NOOP("Core", "the passphrase check needs %1 MiB of free memory"),
        QT_TRANSLATE_NOOP("Core", "the passphrase does not open this signing key"),
        QT_TRANSLATE_NOOP("Core", "the passphrase is too short; use at least %1 characters"),
        QT_TRANSLATE_NOOP("Core",
                          "the stored signing key is damaged or of another kind; sealwalk-key-1 is right"),
        QT_TRANSLATE_NOOP("Core", "a person needs a name"),
        QT_TRANSLATE_NOOP("Core", "%1 has a signing key already; to sign with another one, add the person "
                                  "anew under a name that tells the two apart"),
        QT_TRANSLATE_NOOP("Core", "job %1 is %2: %3"),
        QT_TRANSLATE_NOOP("Core", "submitted"),
        QT_TRANSLATE_NOOP("Core", "returned"),
        QT_TRANSLATE_NOOP("Core", "signed"),
        QT_TRANSLATE_NOOP("Core", "it cannot be submitted again"),
        QT_TRANSLATE_NOOP("Core", "only a submitted job can be sent back"),
        QT_TRANSLATE_NOOP("Core", "only a submitted job can be approved"),
        QT_TRANSLATE_NOOP("Core", "amendments are for signed jobs; change the record itself"),
        QT_TRANSLATE_NOOP("Core", "what is known since goes in as an amendment, which is signed too"),
        QT_TRANSLATE_NOOP("Core", "job %1 has no signature yet; an approval is signed"),
        QT_TRANSLATE_NOOP("Core", "a signature that closes a job goes with an approval"),
        QT_TRANSLATE_NOOP("Core",
                          "something was stored in the history since job %1 was looked at; look again"),
        QT_TRANSLATE_NOOP("Core", "a signed job takes amendments and their signatures only"),
        QT_TRANSLATE_NOOP("Core", "an amendment says what is known now"),
        QT_TRANSLATE_NOOP("Core", "this person is not known in this history; add them first"),
        QT_TRANSLATE_NOOP("Core", "another history was opened meanwhile; nothing of %1 was kept"),
        QT_TRANSLATE_NOOP("Core", "signing key of %1"),
        QT_TRANSLATE_NOOP("Core", "public key"),
        QT_TRANSLATE_NOOP("Core", "signature"),
        QT_TRANSLATE_NOOP("Core", "no job is open"),
        QT_TRANSLATE_NOOP("Core", "the findings are still being worked out; wait until they are shown"),
        QT_TRANSLATE_NOOP("Core", "signed by %1, key %2"),
        QT_TRANSLATE_NOOP("Core", "nobody has signed this job"),
        QT_TRANSLATE_NOOP("Core", "the signature of %1 is broken: who, when, the statement, the digest, the "
                                  "key or the signature itself was changed"),
        QT_TRANSLATE_NOOP("Core", "the job, its object or its pictures were changed after %1 signed"),
        QT_TRANSLATE_NOOP("Core", "the amendment by %1 of %2 is not signed"),
        QT_TRANSLATE_NOOP("Core", "the last %1 of %2 turns of the review came after the last signature"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 is not among the people of this history; ask them whether their key is %2"),
        QT_TRANSLATE_NOOP("Core",
                          "the signature of %1 was made with another key than %2 has in this history"),
        QT_TRANSLATE_NOOP("Core", "%1 is called %2 in this history now"),
        QT_TRANSLATE_NOOP("Core",
                          "the object's tag, place, volume, limits, pumps, scale or note were changed "
                          "since this was signed; the signature keeps what they were"),
        QT_TRANSLATE_NOOP("Core", "the detector's traces of %1 readings are not in this history"),
        QT_TRANSLATE_NOOP("Core",
                          "the detector's trace \"%1\" does not hold what its name says and was left out"),
        QT_TRANSLATE_NOOP("Core", "detector's traces that are missing here stay so: the job is submitted or "
                                  "signed and takes no more"),
        QT_TRANSLATE_NOOP("Core", "%1 of the detector's traces came along, which were missing here"),
        QT_TRANSLATE_NOOP("Core", "the detector's traces of %1 readings were kept without a digest: whether "
                                  "they were changed cannot be told"),
        QT_TRANSLATE_NOOP("Core", "when this was signed the object was called \"%1\"; now it is \"%2\""),
    };
    return kAll;
}

} // namespace sealwalk::render
