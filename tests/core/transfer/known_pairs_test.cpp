// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/known_pairs.h"
#include "core/transfer/report_facts.h"
#include "core/transfer/take_in.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using analysis::MatchedBy;

/// The sketch drawn anew: the same places under other identities, numbers and names.
model::Sketch drawnAnew(model::Sketch sketch, int firstNumber)
{
    for (model::Sheet& sheet : sketch.sheets)
        sheet.name += " new";
    for (model::Joint& joint : sketch.joints)
        joint.name += " new";
    for (model::TestPoint& point : sketch.points) {
        point.id = model::PointId::create();
        point.number = firstNumber++;
    }
    return sketch;
}

MatchedBy firstMatchedBy(const model::Sketch& before, const model::Sketch& after,
                         const analysis::KnownPairs& known)
{
    for (const analysis::PointMatch& match : analysis::matchPoints(before, after, known))
        if (match.after == after.points.front().id)
            return match.by;
    return MatchedBy::Nothing;
}

// Regression: a pair said in the compare view was not known to the report, the command line and the sign-off,
// nor to any other two jobs of the same object.
TEST(KnownPairs, HoldForEveryJobWithThePointsAndThroughTheSketchInBetween)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const model::Sketch first = opened.job.sketch;
    const model::Sketch second = drawnAnew(first, 200);
    const model::Sketch third = drawnAnew(second, 400);
    EXPECT_EQ(firstMatchedBy(first, third, {}), MatchedBy::Nothing);

    const model::JobId one = opened.job.id;
    const model::JobId two = model::JobId::create();
    const model::JobId three = model::JobId::create();
    const auto front = [](const model::Sketch& sketch) { return sketch.points.front().id; };
    ASSERT_TRUE(transfer::sayTheyAreOne(opened.store, one, two, {front(first), front(second)}));
    ASSERT_TRUE(transfer::sayTheyAreOne(opened.store, three, two, {front(third), front(second)}));
    const auto known = transfer::knownPairs(opened.store);
    ASSERT_TRUE(known) << known.error().message;
    for (const auto& [before, after] : {std::pair{&first, &second}, std::pair{&second, &first},
                                        std::pair{&first, &third}, std::pair{&third, &first}})
        EXPECT_EQ(firstMatchedBy(*before, *after, *known), MatchedBy::Person);
    const auto facts = transfer::reportFacts(opened.store, one, moment(9000));
    ASSERT_TRUE(facts) << facts.error().message;
    EXPECT_EQ(facts->options.known.same.size(), 3U) << "first to second, second to third, first to third";
}

TEST(KnownPairs, TwoPlacesAreNotProposedWhicheverStandsLeft)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const model::Sketch first = opened.job.sketch;
    model::Sketch second = first;
    for (model::TestPoint& point : second.points)
        point.id = model::PointId::create();
    ASSERT_EQ(firstMatchedBy(first, second, {}), MatchedBy::Number);
    for (const model::TestPoint& point : first.points)
        ASSERT_TRUE(transfer::sayTheyAreTwo(opened.store, opened.job.id, model::JobId::create(),
                                            {point.id, second.points.front().id}));
    const auto known = transfer::knownPairs(opened.store);
    ASSERT_TRUE(known) << known.error().message;
    EXPECT_EQ(firstMatchedBy(first, second, *known), MatchedBy::Nothing);
    EXPECT_NE(firstMatchedBy(second, first, *known), MatchedBy::Person);
}

// Regression: a history merged from another laptop came without them.
TEST(KnownPairs, ComeWithAMergedHistory)
{
    const ScratchFolder folder;
    OpenedHistory from(folder / "a.sealwalk");
    OpenedHistory to(folder / "b.sealwalk");
    const model::JobId one = model::JobId::create();
    const model::JobId two = model::JobId::create();
    const analysis::PointPair here{model::PointId::create(), model::PointId::create()};
    const analysis::PointPair there{model::PointId::create(), model::PointId::create()};
    ASSERT_TRUE(transfer::sayTheyAreOne(to.store, one, two, here));
    for (const analysis::PointPair& pair : {here, there})
        ASSERT_TRUE(transfer::sayTheyAreOne(from.store, one, two, pair));
    ASSERT_TRUE(transfer::sayTheyAreTwo(from.store, one, two, there));
    ASSERT_TRUE(transfer::takeInAll(to.store, from.store));
    const auto known = transfer::knownPairs(to.store);
    ASSERT_TRUE(known) << known.error().message;
    EXPECT_EQ(known->same, (std::vector{here, there}));
    EXPECT_EQ(known->apart, std::vector{there});
}

TEST(KnownPairs, DamagedTextIsSaid)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(opened.store.putSetting("same points a b", "no pair"));
    const auto known = transfer::knownPairs(opened.store);
    ASSERT_FALSE(known);
    EXPECT_EQ(known.error().code, ErrorCode::DamagedFile);
}

// Property: who takes in another history takes in what was said there of entries that are one; what was said
// here of an entry stands, also that it is another object.
TEST(SameObjects, ComeAlongWithAnotherHistory)
{
    for (const bool isDenied : {false, true}) {
        const ScratchFolder folder;
        OpenedHistory there(folder / "there.sealwalk");
        model::TestObject again = sampleObject();
        again.id = model::ObjectId::create();
        again.name = "entered again";
        ASSERT_TRUE(there.store.addObject(again));
        ASSERT_TRUE(there.store.createJob(again.id, "other", moment(50)));
        ASSERT_TRUE(there.store.sayOneObject(again.id, sampleObject().id));
        auto here = openAt(folder / "here.sealwalk", storage::HistoryStore::Mode::Create);
        if (isDenied) {
            ASSERT_TRUE(here.addObject(sampleObject()));
            ASSERT_TRUE(here.addObject(again));
            ASSERT_TRUE(here.sayOneObject(again.id, sampleObject().id));
            ASSERT_TRUE(here.sayTwoObjects(again.id));
        }
        const auto answers = transfer::takeInAll(here, there.store);
        ASSERT_TRUE(answers) << answers.error().message;
        ASSERT_EQ(answers->size(), 2U);
        EXPECT_EQ(here.objects()->size(), isDenied ? 2U : 1U);
        for (const transfer::TakenIn& one : *answers) {
            EXPECT_EQ(one.number, here.job(one.job)->number) << "regression: it was 0 for what came";
            EXPECT_EQ(one.object, here.object(here.job(one.job)->object)->name);
        }
    }
}

} // namespace
} // namespace sealwalk::tests
