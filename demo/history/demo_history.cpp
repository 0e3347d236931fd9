// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/demo_history.h"

#include "core/base/partial_file.h"
#include "core/exchange/job_signing.h"
#include "core/exchange/signing.h"
#include "core/storage/history_store.h"
#include "demo/history/coater_jobs.h"
#include "demo/history/coater_record.h"
#include "demo/history/coater_sketch.h"

#include <array>
#include <system_error>

namespace sealwalk::demo {

using namespace model;

namespace {

constexpr std::uint64_t kSeed = 20260317;
/// The passphrase is in the manual: guessing it need not be made hard.
constexpr exchange::GuessCost kCheap{1, 8U << 20U};

Result<Person> person(const char* name, const char* role, const char* qualification, std::uint8_t seed,
                      Chance& chance)
{
    std::array<std::uint8_t, 32> secret{};
    secret.fill(seed);
    const auto key = exchange::createKeyFromSeed(secret, kDemoPassphrase, kCheap);
    if (!key)
        return fail(key.error());
    Person result;
    result.id = chance.id<PersonId>();
    result.name = name;
    result.role = role;
    result.qualification = qualification;
    result.publicKey = key->publicKey.text();
    result.sealedKey = key->text();
    result.since = on("2025-03-01T08:00:00+01:00");
    return result;
}

Status approve(const TestObject& object, Job& job, const Person& reviewer, Chance& chance)
{
    ReviewEntry approval;
    approval.id = chance.id<ReviewId>();
    approval.step = ReviewStep::Approved;
    approval.by = reviewer.name;
    approval.at = on("2025-03-13T15:05:00+01:00");
    approval.text = "Agreed. The sealant at 56 is to be made good by its date.";
    job.review.push_back(approval);
    exchange::Claim claim;
    claim.role = "reviewer";
    claim.statement = "I have looked at the whole record and agree with it.";
    claim.at = approval.at;
    auto signature = exchange::signJob({object, job}, {}, reviewer, kDemoPassphrase, claim);
    if (!signature)
        return fail(signature.error());
    // Signed once more under an identity that is the same in every run.
    signature->id = chance.id<SignatureId>();
    const auto key = exchange::SealedKey::parse(reviewer.sealedKey);
    if (!key)
        return fail(key.error());
    const auto bytes = exchange::sign(*key, kDemoPassphrase, exchange::signedMessage(*signature));
    if (!bytes)
        return fail(bytes.error());
    signature->value = bytes->text();
    job.signatures.push_back(*signature);
    job.state = JobState::Signed;
    return {};
}

Status fill(storage::HistoryStore& store)
{
    Chance chance(kSeed);
    const TestObject object = coater(chance);
    const Sketch sketch = coaterSketch(chance);
    const auto tester = person(kTester, "technician", "leak testing, level 2 (invented)", 1, chance);
    const auto reviewer = person(kReviewer, "reviewer", "leak testing, level 3 (invented)", 2, chance);
    if (!tester)
        return fail(tester.error());
    if (!reviewer)
        return fail(reviewer.error());
    for (const Person& somebody : {*tester, *reviewer})
        if (const Status put = store.putPerson(somebody, kTester); !put)
            return put;
    Job last = jobOf2025(object, sketch, chance);
    if (const Status signedOff = approve(object, last, *reviewer, chance); !signedOff)
        return signedOff;
    if (const Status taken = store.importJob(object, last, {}); !taken)
        return taken;
    return store.importJob(object, jobOf2026(object, sketch, chance), {});
}

} // namespace

Status writeDemoHistory(const std::filesystem::path& file, const std::stop_token& stop)
{
    std::error_code problem;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, problem)))
        return fail(ErrorCode::BadInput, file.string() + ": is there already; name a new file");
    // Told to stop in the middle, nothing of it is left.
    std::array<PartialFile, 3> partial{PartialFile(file.string()), PartialFile(file.string() + "-wal"),
                                       PartialFile(file.string() + "-shm")};
    Status done;
    {
        auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::Create);
        if (!store)
            return fail(store.error());
        done = fill(*store);
    }
    if (done && stop.stop_requested())
        done = fail(ErrorCode::Cancelled, file.string() + ": not written");
    if (done)
        for (PartialFile& each : partial)
            each.handOver();
    return done;
}

} // namespace sealwalk::demo
