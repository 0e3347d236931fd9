// SPDX-License-Identifier: GPL-3.0-or-later
// One object entered twice: said to be one, everything asked of it takes the jobs of both entries.
#include "core/storage/history_store.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using namespace model;
using storage::HistoryStore;
using storage::ObjectRow;

/// The history with another entry of the sample object, and a job on that with points of its own.
struct EnteredTwice : OpenedHistory
{
    explicit EnteredTwice(const std::filesystem::path& file)
        : OpenedHistory(file)
    {
        second = enter("Coating chamber 2");
        other = *store.createJob(second, "at the other computer", moment(2000));
        other.sketch = sampleSketch(9);
        for (TestPoint& point : other.sketch.points)
            point.id = PointId::create();
        for (Joint& joint : other.sketch.joints)
            joint.id = JointId::create();
        for (TestPoint& point : other.sketch.points)
            point.joint = other.sketch.joints.front().id;
        other.sketch.lastNumber = 9;
        EXPECT_TRUE(store.saveSketch(other.id, other.sketch, 1));
    }

    ObjectId enter(const char* name)
    {
        TestObject object = sampleObject();
        object.id = ObjectId::create();
        object.name = name;
        object.tag = name;
        EXPECT_TRUE(store.addObject(object));
        return object.id;
    }

    [[nodiscard]] std::vector<ObjectRow> rows(const std::string& typed = {}) const
    {
        return *store.objects(typed);
    }

    ObjectId first = sampleObject().id;
    ObjectId second;
    Job other;
};

std::vector<int> numbersOf(const std::vector<storage::JobRow>& rows)
{
    std::vector<int> numbers;
    for (const storage::JobRow& row : rows)
        numbers.push_back(row.number);
    return numbers;
}

// Property: until somebody says so nothing is taken together, whatever the names.
TEST(OneObject, EntriesAreApartUntilAPersonSaysOtherwise)
{
    const ScratchFolder folder;
    EnteredTwice history(folder / "a.sealwalk");
    EXPECT_EQ(history.rows().size(), 2U);
    EXPECT_EQ(numbersOf(*history.store.jobsOf(history.first)), std::vector{1});
    EXPECT_FALSE(*history.store.areOneObject(history.first, history.second));
    EXPECT_FALSE(*history.store.saidOfEntry(history.second));
}

// Property: whichever entry is asked for, the answer is about both; the records themselves stay.
TEST(OneObject, IsAskedForByEitherEntry)
{
    const ScratchFolder folder;
    EnteredTwice history(folder / "a.sealwalk");
    const Job before = *history.store.job(history.other.id);
    ASSERT_TRUE(history.store.sayOneObject(history.second, history.first));
    for (const ObjectId asked : {history.first, history.second})
        EXPECT_EQ(numbersOf(*history.store.jobsOf(asked)), (std::vector{2, 1})) << "newest first";
    EXPECT_TRUE(*history.store.areOneObject(history.second, history.first));
    const std::vector<ObjectRow> rows = history.rows();
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].id, history.first);
    EXPECT_EQ(rows[0].jobs, 2);
    EXPECT_EQ(rows[0].lastOpened, before.opened);
    EXPECT_TRUE(rows[0].has(history.second));
    EXPECT_EQ(history.rows("coating chamber").size(), 1U) << "found by what the other entry is called";
    EXPECT_EQ(history.store.job(history.other.id), before);
    EXPECT_EQ(history.store.object(history.second)->name, "Coating chamber 2");
    EXPECT_EQ(history.store.check(), std::vector<std::string>{});
}

// Property: a number is never given twice on one object, also where two entries counted for themselves.
TEST(OneObject, CountsOnBehindTheHighestNumberOfBoth)
{
    const ScratchFolder folder;
    EnteredTwice history(folder / "a.sealwalk");
    ASSERT_EQ(history.store.job(history.job.id)->sketch.lastNumber, 4);
    ASSERT_TRUE(history.store.sayOneObject(history.second, history.first));
    EXPECT_EQ(history.store.job(history.job.id)->sketch.lastNumber, 9);
    const Job next = *history.store.createJob(history.first, "next year", moment(3000));
    EXPECT_EQ(next.sketch.points, history.store.job(history.other.id)->sketch.points)
        << "the latest sketch of either entry";
    EXPECT_EQ(next.sketch.lastNumber, 9);
    EXPECT_EQ(next.object, history.first);
}

// Property: a temporary repair of one entry is open for the other, until a job of either makes it good.
TEST(OneObject, KnowsTheOpenRepairsOfBoth)
{
    const ScratchFolder folder;
    EnteredTwice history(folder / "a.sealwalk");
    Repair held;
    held.id = RepairId::create();
    held.points = {history.job.sketch.points[0].id};
    held.action = "sealant";
    held.at = moment(10);
    held.permanent = false;
    held.due = moment(100);
    held.owner = "Ada";
    held.by = "Ada";
    ASSERT_TRUE(history.store.putRepair(history.job.id, held));
    EXPECT_TRUE(history.store.openTemporaryRepairs(history.second)->empty());
    ASSERT_TRUE(history.store.sayOneObject(history.second, history.first));
    ASSERT_EQ(history.store.openTemporaryRepairs(history.second)->size(), 1U);
    EXPECT_EQ(history.rows().at(0).openTemporaryRepairs, 1);

    Repair welded = held;
    welded.id = RepairId::create();
    welded.points = {history.other.sketch.points[0].id};
    welded.action = "welded";
    welded.permanent = true;
    welded.due = std::nullopt;
    welded.makesGood = {held.id};
    ASSERT_TRUE(history.store.putRepair(history.other.id, welded));
    EXPECT_TRUE(history.store.openTemporaryRepairs(history.first)->empty());
    EXPECT_EQ(history.rows().at(0).openTemporaryRepairs, 0);
    ASSERT_TRUE(history.store.sayTwoObjects(history.second));
    EXPECT_EQ(history.store.openTemporaryRepairs(history.first)->size(), 1U) << "a weld on another object";
}

// Property: a concession that ends is told for either entry, until a job of either deals with it.
TEST(OneObject, KnowsTheConcessionsOfBoth)
{
    const ScratchFolder folder;
    EnteredTwice history(folder / "a.sealwalk");
    Concession leave;
    leave.points = {history.job.sketch.points[1].id};
    leave.grantedBy = "Owner";
    leave.until = moment(500);
    leave.reason = "spare part ordered";
    leave.by = "Ada";
    leave.at = moment(20);
    ASSERT_TRUE(history.store.addConcession(history.job.id, leave));
    EXPECT_TRUE(history.store.concessionsEndingBy(moment(600), history.second)->empty());
    ASSERT_TRUE(history.store.sayOneObject(history.second, history.first));
    EXPECT_EQ(history.store.concessionsEndingBy(moment(600), history.second)->size(), 1U);
}

// Property: three entries, said in any order, are one; taking one out leaves the others together.
TEST(OneObject, TakesOneEntryOutOfThree)
{
    struct Case
    {
        const char* what;
        int out; ///< which entry is taken out
    };
    for (const Case& each : {Case{"the head", 0}, Case{"the middle", 1}, Case{"the last", 2}}) {
        SCOPED_TRACE(each.what);
        const ScratchFolder folder;
        EnteredTwice history(folder / "a.sealwalk");
        const std::vector<ObjectId> entries{history.first, history.second, history.enter("Third")};
        ASSERT_TRUE(history.store.sayOneObject(entries[2], entries[1])); // third under second …
        ASSERT_TRUE(history.store.sayOneObject(entries[2], entries[0])); // … and so both under first
        ASSERT_TRUE(history.store.sayOneObject(entries[0], entries[1])) << "known already";
        ASSERT_EQ(history.rows().size(), 1U);
        EXPECT_EQ(history.rows()[0].others.size(), 2U);
        ASSERT_TRUE(history.store.sayTwoObjects(entries[static_cast<std::size_t>(each.out)]));
        EXPECT_EQ(history.rows().size(), 2U);
        for (int one = 0; one < 3; ++one)
            for (int two = 0; two < one; ++two)
                EXPECT_EQ(*history.store.areOneObject(entries[static_cast<std::size_t>(one)],
                                                      entries[static_cast<std::size_t>(two)]),
                          one != each.out && two != each.out);
        EXPECT_TRUE(*history.store.saidOfEntry(entries[1]));
    }
}

// Property
TEST(OneObject, RefusesWhatCannotBe)
{
    const ScratchFolder folder;
    EnteredTwice history(folder / "a.sealwalk");
    const Status itself = history.store.sayOneObject(history.first, history.first);
    ASSERT_FALSE(itself);
    EXPECT_EQ(itself.error().code, ErrorCode::BadInput);
    const Status unknown = history.store.sayOneObject(ObjectId::create(), history.first);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::NotFound);
    EXPECT_FALSE(history.store.sayTwoObjects(ObjectId::create()));
    EXPECT_EQ(history.rows().size(), 2U);
}

} // namespace
} // namespace sealwalk::tests
