// SPDX-License-Identifier: GPL-3.0-or-later
// A small signed job with one picture, for tests of signatures and job files.
#pragma once

#include "core/exchange/digest.h"
#include "core/exchange/job_file.h"
#include "core/exchange/signing.h"
#include "tests/support/random_job.h"

#include <algorithm>
#include <string>

namespace sealwalk::exchange {

inline constexpr const char* kTestPassphrase = "grease sparingly";

inline model::Person testPerson(const std::string& name, const std::string& role)
{
    model::Person person;
    person.id = model::PersonId::create();
    person.name = name;
    person.role = role;
    const SealedKey key = createKey(kTestPassphrase, GuessCost::minimum()).value();
    person.publicKey = key.publicKey.text();
    person.sealedKey = key.text();
    return person;
}

inline model::ReviewEntry turn(model::ReviewStep step, const std::string& by)
{
    model::ReviewEntry entry;
    entry.id = model::ReviewId::create();
    entry.step = step;
    entry.by = by;
    entry.at = {1'770'000'000'000, 60};
    return entry;
}

/// A consistent job of `seed` whose pictures are named by their bytes; not signed.
inline JobFile unsignedFile(std::uint64_t seed)
{
    tests::RandomJob random = tests::randomJob(seed);
    JobFile file{{random.object, random.job}, {}};
    const auto addPicture = [&file](std::string& name) {
        const std::string bytes = "not really a png: " + name;
        name = sha256Hex(bytes);
        file.pictures.push_back({name, "png", {bytes.begin(), bytes.end()}});
    };
    for (model::Sheet& sheet : file.record.job.sketch.sheets)
        if (sheet.underlay)
            addPicture(sheet.underlay->picture);
    for (model::Repair& repair : file.record.job.repairs)
        for (std::string& name : repair.pictures)
            addPicture(name);
    std::sort(file.pictures.begin(), file.pictures.end(),
              [](const model::Picture& a, const model::Picture& b) { return a.sha256 < b.sha256; });
    return file;
}

/// The same after submission, approval and one signature by `person`.
inline JobFile signedFile(std::uint64_t seed, const model::Person& person)
{
    JobFile file = unsignedFile(seed);
    model::Job& job = file.record.job;
    job.review.push_back(turn(model::ReviewStep::Submitted, "Tess"));
    job.review.push_back(turn(model::ReviewStep::Approved, person.name));
    job.state = model::JobState::Signed;
    job.signatures.push_back(signJob(file.record, namesOf(file.pictures), person, kTestPassphrase,
                                     {"reviewer", "no response above the limit at these points", job.opened})
                                 .value());
    return file;
}

} // namespace sealwalk::exchange
