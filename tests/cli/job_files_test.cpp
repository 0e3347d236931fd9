// SPDX-License-Identifier: GPL-3.0-or-later
// pack, unpack, verify and table as a user runs them.
#include "core/exchange/files.h"
#include "core/exchange/job_file.h"
#include "core/storage/history_store.h"
#include "tests/support/process.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

namespace sealwalk::tests {
namespace {

namespace fs = std::filesystem;
using exchange::JobFile;
using nlohmann::json;
using storage::HistoryStore;

constexpr std::uint64_t kSeed = 31;

class JobFiles : public testing::Test
{
protected:
    void SetUp() override
    {
        std::string pattern = (fs::temp_directory_path() / "sealwalk-cli-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        m_folder = pattern;
        m_reviewer = exchange::testPerson("Rhea Quill", "reviewer");
        m_file = exchange::signedFile(kSeed, m_reviewer);
        auto store = HistoryStore::open(path("a.sealwalk"), HistoryStore::Mode::Create);
        ASSERT_TRUE(store.has_value()) << store.error().message;
        ASSERT_TRUE(store->putPerson(m_reviewer).has_value());
        const Status taken = store->importJob(m_file.record.object, m_file.record.job, m_file.pictures);
        ASSERT_TRUE(taken.has_value()) << taken.error().message;
        m_number = std::to_string(m_file.record.job.number);
    }
    void TearDown() override
    {
        fs::permissions(m_folder, fs::perms::owner_all, fs::perm_options::add);
        fs::remove_all(m_folder);
    }

    [[nodiscard]] std::string path(const std::string& name) const { return (m_folder / name).string(); }
    [[nodiscard]] ProcessResult cli(std::vector<std::string> arguments, const std::string& history) const
    {
        arguments.insert(arguments.end(), {"--history", path(history), "--json"});
        return runCli(std::move(arguments));
    }
    [[nodiscard]] std::size_t jobsIn(const std::string& history) const
    {
        return HistoryStore::open(path(history), HistoryStore::Mode::ReadOnly)->jobs()->size();
    }

    fs::path m_folder;
    model::Person m_reviewer;
    JobFile m_file;
    std::string m_number;
};

void expectOneLine(const ProcessResult& result, int status, const std::string& says)
{
    EXPECT_EQ(result.status, status) << result.out << result.err;
    EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
    EXPECT_NE(result.err.find(says), std::string::npos) << result.err;
    EXPECT_EQ(result.out, "");
}

TEST_F(JobFiles, GoFromOneHistoryToAnotherAndStayWhole)
{
    const ProcessResult packed = cli({"pack", m_number, "-o", path("j.sealjob")}, "a.sealwalk");
    ASSERT_EQ(packed.status, 0) << packed.err;
    EXPECT_TRUE(json::parse(packed.out)["ok"].get<bool>());
    EXPECT_EQ(json::parse(packed.out)["signatures"][0]["name"], "Rhea Quill");

    const ProcessResult verified = cli({"verify", path("j.sealjob")}, "a.sealwalk");
    EXPECT_EQ(verified.status, 0) << verified.out << verified.err;
    EXPECT_EQ(verified.err, "") << "the key is known here";

    const ProcessResult unpacked = cli({"unpack", path("j.sealjob")}, "b.sealwalk");
    ASSERT_EQ(unpacked.status, 0) << unpacked.err;
    EXPECT_NE(unpacked.out.find("not among the people"), std::string::npos) << unpacked.out;
    EXPECT_EQ(cli({"verify", m_number}, "b.sealwalk").status, 0);

    ASSERT_EQ(cli({"pack", m_number, "-o", path("k.sealjob")}, "b.sealwalk").status, 0);
    EXPECT_EQ(exchange::readFile(path("j.sealjob")).value(), exchange::readFile(path("k.sealjob")).value())
        << "the same bytes, two histories on";
}

TEST_F(JobFiles, TheSameJobTwiceIsSaidAndNothingDoubled)
{
    ASSERT_EQ(cli({"pack", m_number, "-o", path("j.sealjob")}, "a.sealwalk").status, 0);
    const ProcessResult again = runCli({"unpack", path("j.sealjob"), "--history", path("a.sealwalk")});
    EXPECT_EQ(again.status, 0) << again.err;
    EXPECT_NE(again.out.find("already, as number " + m_number + "; nothing was added"), std::string::npos)
        << again.out;
    EXPECT_EQ(jobsIn("a.sealwalk"), 1U);

    JobFile other = exchange::unsignedFile(kSeed);
    other.record.job.readings.back().by = "somebody else";
    ASSERT_TRUE(exchange::writeFile(path("other.sealjob"), exchange::packJobFile(other).value()).has_value());
    const ProcessResult differs = cli({"unpack", path("other.sealjob")}, "a.sealwalk");
    EXPECT_EQ(differs.status, 1) << differs.out << differs.err;
    EXPECT_NE(differs.out.find("went on in both places"), std::string::npos) << differs.out;
    EXPECT_EQ(jobsIn("a.sealwalk"), 1U);
}

TEST_F(JobFiles, AJobThatWentOnElsewhereComesBack)
{
    JobFile before = exchange::unsignedFile(kSeed); // not yet submitted
    before.record.job.readings.pop_back();
    std::erase_if(before.record.job.voids, [&](const model::VoidMark& mark) {
        return before.record.job.reading(mark.reading) == nullptr;
    });
    ASSERT_TRUE(
        exchange::writeFile(path("early.sealjob"), exchange::packJobFile(before).value()).has_value());
    ASSERT_EQ(cli({"unpack", path("early.sealjob")}, "b.sealwalk").status, 0);
    ASSERT_EQ(cli({"pack", m_number, "-o", path("late.sealjob")}, "a.sealwalk").status, 0);
    const ProcessResult on = runCli({"unpack", path("late.sealjob"), "--history", path("b.sealwalk")});
    EXPECT_EQ(on.status, 0) << on.out << on.err;
    EXPECT_NE(on.out.find("went on: 1 reading, "), std::string::npos) << on.out;
    EXPECT_EQ(cli({"verify", m_number}, "b.sealwalk").status, 0);
    const ProcessResult behind = runCli({"unpack", path("early.sealjob"), "--history", path("b.sealwalk")});
    EXPECT_EQ(behind.status, 0) << behind.out;
    EXPECT_NE(behind.out.find("further on here by 1 reading"), std::string::npos) << behind.out;
    ASSERT_EQ(cli({"pack", m_number, "-o", path("again.sealjob")}, "b.sealwalk").status, 0);
    EXPECT_EQ(exchange::readFile(path("late.sealjob")).value(),
              exchange::readFile(path("again.sealjob")).value());
}

TEST_F(JobFiles, ClashesOfNumbersAndNamesAreSaid)
{
    // Another job with the same number, on the same object under another name, where point 1 is another
    // place.
    JobFile other = exchange::unsignedFile(kSeed);
    model::Job& job = other.record.job;
    job = model::Job{};
    job.id = model::JobId::create();
    job.number = m_file.record.job.number;
    job.object = other.record.object.id;
    job.opened = {1'780'000'000'000, 0};
    job.sketch = m_file.record.job.sketch;
    for (model::Sheet& sheet : job.sketch.sheets)
        sheet.underlay.reset();
    const int clashing = job.sketch.points.front().number;
    job.sketch.points.front().id = model::PointId::create();
    const model::TestPoint dropped = job.sketch.points.back();
    job.sketch.points.pop_back(); // its number lives on in the older job only
    other.record.object.name = "A name it had elsewhere";
    other.pictures.clear();
    ASSERT_TRUE(exchange::writeFile(path("o.sealjob"), exchange::packJobFile(other).value()).has_value());

    const ProcessResult result = runCli({"unpack", path("o.sealjob"), "--history", path("a.sealwalk")});
    ASSERT_EQ(result.status, 0) << result.err;
    for (const std::string& says :
         {"the object's name is \"" + m_file.record.object.name + "\" here and \"A name it had elsewhere\"",
          "point numbers " + std::to_string(clashing) + " mean other places",
          "number " + m_number + " is taken here"})
        EXPECT_NE(result.out.find(says), std::string::npos) << says << "\nin\n" << result.out;
    EXPECT_EQ(jobsIn("a.sealwalk"), 2U);
    EXPECT_EQ(cli({"verify", job.id.text()}, "a.sealwalk").status, 0);
    ASSERT_EQ(cli({"pack", job.id.text(), "-o", path("p.sealjob")}, "a.sealwalk").status, 0);
    EXPECT_EQ(exchange::readJobFile(exchange::readFile(path("p.sealjob")).value())->record.job.number,
              m_file.record.job.number)
        << "the number it was opened under goes on with it";

    // Regression: only the latest job was looked at, and a number of an older one could come to mean two
    // places.
    job.id = model::JobId::create();
    job.number += 7;
    job.opened = {1'790'000'000'000, 0};
    job.sketch.points.push_back(dropped);
    job.sketch.points.back().id = model::PointId::create();
    ASSERT_TRUE(exchange::writeFile(path("t.sealjob"), exchange::packJobFile(other).value()).has_value());
    const ProcessResult third = runCli({"unpack", path("t.sealjob"), "--history", path("a.sealwalk")});
    ASSERT_EQ(third.status, 0) << third.err;
    const std::string both = "point numbers " + std::to_string(std::min(clashing, dropped.number)) + ", " +
                             std::to_string(std::max(clashing, dropped.number)) +
                             " mean other places in this job than in job " + m_number;
    EXPECT_NE(third.out.find(both), std::string::npos) << both << "\nin\n" << third.out;
}

TEST_F(JobFiles, AWholeHistoryIsMergedOnceAndWhatIsThereStays)
{
    const JobFile second = exchange::unsignedFile(kSeed + 1);
    {
        auto store = HistoryStore::open(path("a.sealwalk"), HistoryStore::Mode::ReadWrite);
        ASSERT_TRUE(store->importJob(second.record.object, second.record.job, second.pictures).has_value());
    }
    ASSERT_EQ(cli({"pack", m_number, "-o", path("j.sealjob")}, "a.sealwalk").status, 0);
    ASSERT_EQ(cli({"unpack", path("j.sealjob")}, "b.sealwalk").status, 0);
    const ProcessResult merged = runCli({"unpack", path("a.sealwalk"), "--history", path("b.sealwalk")});
    EXPECT_EQ(merged.status, 0) << merged.err;
    EXPECT_NE(merged.out.find("2 jobs from"), std::string::npos) << merged.out;
    EXPECT_NE(merged.out.find("nothing was added"), std::string::npos) << merged.out;
    EXPECT_EQ(jobsIn("b.sealwalk"), 2U);
    EXPECT_EQ(cli({"unpack", path("a.sealwalk")}, "b.sealwalk").status, 0);
    EXPECT_EQ(jobsIn("b.sealwalk"), 2U);
    EXPECT_EQ(cli({"verify", second.record.job.id.text()}, "b.sealwalk").status, 0);
}

TEST_F(JobFiles, AChangedFileIsNotTakenIn)
{
    ASSERT_EQ(cli({"pack", m_number, "-o", path("j.sealjob")}, "a.sealwalk").status, 0);
    std::string bytes = exchange::readFile(path("j.sealjob")).value();
    bytes[bytes.find("job.json") + 100] ^= 1;
    ASSERT_TRUE(exchange::writeFile(path("t.sealjob"), bytes).has_value());
    const ProcessResult verified = cli({"verify", path("t.sealjob")}, "a.sealwalk");
    EXPECT_EQ(verified.status, 1);
    EXPECT_FALSE(json::parse(verified.out)["ok"].get<bool>());
    EXPECT_NE(json::parse(verified.out)["problems"][0].get<std::string>().find("job.json"),
              std::string::npos);
    expectOneLine(cli({"unpack", path("t.sealjob")}, "b.sealwalk"), 2, "job.json");
    EXPECT_FALSE(fs::exists(path("b.sealwalk"))) << "nothing was written";

    // A forger who packs it right still cannot sign it.
    JobFile forged = m_file;
    forged.record.job.readings[0].by = "somebody else";
    ASSERT_TRUE(exchange::writeFile(path("f.sealjob"), exchange::packJobFile(forged).value()).has_value());
    const ProcessResult refused = cli({"unpack", path("f.sealjob")}, "b.sealwalk");
    EXPECT_EQ(refused.status, 1);
    EXPECT_NE(refused.out.find("changed after Rhea Quill"), std::string::npos) << refused.out;
    EXPECT_FALSE(fs::exists(path("b.sealwalk")));
}

TEST_F(JobFiles, AKeyThatIsNotThePersonsOwnIsNoticed)
{
    // Somebody makes a key of their own and signs in the reviewer's name.
    model::Person impostor = exchange::testPerson("Rhea Quill", "reviewer");
    impostor.id = m_reviewer.id;
    const JobFile forged = exchange::signedFile(kSeed + 100, impostor);
    ASSERT_TRUE(exchange::writeFile(path("f.sealjob"), exchange::packJobFile(forged).value()).has_value());
    const ProcessResult result = cli({"verify", path("f.sealjob")}, "a.sealwalk");
    EXPECT_EQ(result.status, 1);
    EXPECT_NE(result.out.find("another key than Rhea Quill has"), std::string::npos) << result.out;
    EXPECT_EQ(cli({"unpack", path("f.sealjob")}, "a.sealwalk").status, 1);
    EXPECT_EQ(jobsIn("a.sealwalk"), 1U);
}

TEST_F(JobFiles, BadInputGetsOneSentence)
{
    ASSERT_EQ(cli({"pack", m_number, "-o", path("j.sealjob")}, "a.sealwalk").status, 0);
    const std::string good = exchange::readFile(path("j.sealjob")).value();
    ASSERT_TRUE(exchange::writeFile(path("text.sealjob"), "no zip at all").has_value());
    ASSERT_TRUE(exchange::writeFile(path("short.sealjob"), good.substr(0, good.size() / 2)).has_value());

    expectOneLine(cli({"unpack", path("none.sealjob")}, "b.sealwalk"), 2, "there is no such file");
    expectOneLine(cli({"unpack", path("text.sealjob")}, "b.sealwalk"), 2, "not a zip");
    expectOneLine(cli({"unpack", path("short.sealjob")}, "b.sealwalk"), 2, "truncated");
    expectOneLine(cli({"unpack", m_folder.string()}, "b.sealwalk"), 2, "this is a folder");
    expectOneLine(cli({"verify", path("none.sealjob")}, "a.sealwalk"), 2, "there is no such file");
    expectOneLine(cli({"verify", path("text.sealjob")}, "a.sealwalk"), 2, "not a zip");
    EXPECT_EQ(cli({"verify", path("short.sealjob")}, "a.sealwalk").status, 1);
    expectOneLine(cli({"verify", "99999"}, "a.sealwalk"), 2, "99999");
    expectOneLine(cli({"pack", "99999", "-o", path("x.sealjob")}, "a.sealwalk"), 2, "99999");
    expectOneLine(cli({"pack", m_number, "-o", path("no/such/folder/x")}, "a.sealwalk"), 2, "does not exist");
    expectOneLine(cli({"pack", m_number, "-o", path("x.sealjob")}, "none.sealwalk"), 2, "none.sealwalk");
    expectOneLine(cli({"table", m_number}, "a.sealwalk"), 2, "--csv");
    expectOneLine(cli({"table", m_number, "--csv", path("x.csv"), "--unit", "furlong"}, "a.sealwalk"), 2,
                  "furlong");
    expectOneLine(cli({"table", m_number, "--csv", path("x.csv"), "--unit", "g/yr"}, "a.sealwalk"), 2,
                  "--unit");
    EXPECT_FALSE(fs::exists(path("x.sealjob")));
    EXPECT_FALSE(fs::exists(path("x.csv")));
    EXPECT_FALSE(fs::exists(path("b.sealwalk")));
}

TEST_F(JobFiles, AFullDiskIsTheMachinesFailure)
{
    expectOneLine(cli({"pack", m_number, "-o", "/dev/full"}, "a.sealwalk"), 3, "No space left");
    expectOneLine(cli({"table", m_number, "--csv", "/dev/full"}, "a.sealwalk"), 3, "No space left");
    expectOneLine(cli({"table", m_number, "--xlsx", "/dev/full"}, "a.sealwalk"), 3, "No space left");
}

TEST_F(JobFiles, TablesHoldEveryReading)
{
    const ProcessResult result = cli(
        {"table", m_number, "--csv", path("r.csv"), "--xlsx", path("t.xlsx"), "--readings"}, "a.sealwalk");
    ASSERT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(json::parse(result.out)["written"], json::array({path("r.csv"), path("t.xlsx")}));
    const std::string csv = exchange::readFile(path("r.csv")).value();
    EXPECT_EQ(csv.substr(0, 20), "reading,round,point,");
    for (const model::Reading& reading : m_file.record.job.readings)
        EXPECT_NE(csv.find(reading.at.text()), std::string::npos);
    EXPECT_EQ(exchange::readFile(path("t.xlsx")).value().substr(0, 2), "PK");
}

} // namespace
} // namespace sealwalk::tests
