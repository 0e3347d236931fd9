// SPDX-License-Identifier: GPL-3.0-or-later
// A signed job in its history, bent by SQL: each column of each table that carries it, one at a time.
#include "core/storage/history_store.h"
#include "core/storage/trace_name.h"
#include "tests/support/process.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sqlite3.h>

#include <algorithm>
#include <filesystem>
#include <set>

namespace sealwalk::tests {
namespace {

namespace fs = std::filesystem;
using exchange::JobFile;
using nlohmann::json;
using storage::HistoryStore;

/// A database as someone with a tool for it has it.
class Sql
{
public:
    explicit Sql(const std::string& file)
    {
        EXPECT_EQ(sqlite3_open(file.c_str(), &m_database), SQLITE_OK);
        run("PRAGMA synchronous = OFF");
    }
    Sql(const Sql&) = delete;
    Sql& operator=(const Sql&) = delete;
    ~Sql() { sqlite3_close(m_database); }

    /// The first column of each row.
    std::vector<std::string> run(const std::string& sql)
    {
        std::vector<std::string> result;
        const auto collect = [](void* into, int, char** values, char**) {
            static_cast<std::vector<std::string>*>(into)->emplace_back(values[0] == nullptr ? "" : values[0]);
            return 0;
        };
        char* wrong = nullptr;
        EXPECT_EQ(sqlite3_exec(m_database, sql.c_str(), collect, &result, &wrong), SQLITE_OK)
            << sql << ": " << wrong;
        sqlite3_free(wrong);
        return result;
    }
    std::string one(const std::string& sql)
    {
        const std::vector<std::string> found = run(sql);
        return found.empty() ? std::string() : found.front();
    }
    [[nodiscard]] int changed() const { return sqlite3_changes(m_database); }

private:
    sqlite3* m_database = nullptr;
};

struct Column
{
    std::string table;
    std::string name;
    std::string where; ///< the row that is changed
};

class EveryColumn : public testing::Test
{
protected:
    void SetUp() override
    {
        std::string pattern = (fs::temp_directory_path() / "sealwalk-columns-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        m_folder = pattern;
    }
    void TearDown() override { fs::remove_all(m_folder); }

    [[nodiscard]] std::string path(const std::string& name) const { return (m_folder / name).string(); }
    [[nodiscard]] ProcessResult verify() const
    {
        return runCli({"verify", m_job.text(), "--history", path("a.sealwalk"), "--json"});
    }

    /// The whole history: what it keeps beside its records too.
    [[nodiscard]] ProcessResult check() const
    {
        return runCli({"check", "--history", path("a.sealwalk"), "--json"});
    }

    /// A signed and amended job with two rows or more in every table that carries it, which came from
    /// elsewhere and got another number here: the case in which the number it shows is in no digest.
    void writeHistory()
    {
        const model::Person reviewer = exchange::testPerson("Rhea Quill", "reviewer");
        JobFile file = fullFile();
        model::Job& job = file.record.job;
        doubleUp(job);
        std::vector<storage::NamedTrace> traces;
        for (std::size_t i = 0; i < 2; ++i) {
            const storage::Trace trace{{0.0, 0.5}, {1e-9F, 3e-9F + static_cast<float>(i) * 1e-9F}};
            traces.push_back({storage::tellingName("7", trace), trace});
            job.readings[i].trace = traces.back().name;
        }
        job.review.push_back(exchange::turn(model::ReviewStep::Submitted, "Tess"));
        job.review.push_back(exchange::turn(model::ReviewStep::Approved, reviewer.name));
        job.state = model::JobState::Signed;
        job.signatures = {signature(file, reviewer, "reviewer", "no response above the limit")};
        job.review.push_back(exchange::turn(model::ReviewStep::Amendment, reviewer.name));
        job.signatures.push_back(signature(file, reviewer, "amendment", "the gauge read too high"));
        m_job = job.id;

        auto store = HistoryStore::open(path("a.sealwalk"), HistoryStore::Mode::Create);
        ASSERT_TRUE(store.has_value()) << store.error().message;
        ASSERT_TRUE(store->putPerson(reviewer).has_value());
        model::Job first;
        first.id = model::JobId::create();
        first.number = job.number;
        first.object = job.object;
        first.opened = job.opened;
        ASSERT_TRUE(store->importJob(file.record.object, first, {}).has_value());
        const Status taken = store->importJob(file.record.object, job, file.pictures, traces);
        ASSERT_TRUE(taken.has_value()) << taken.error().message;
        ASSERT_NE(store->job(m_job)->number, job.number);
    }

    static model::Signature signature(const JobFile& file, const model::Person& person, const char* role,
                                      const char* statement)
    {
        return exchange::signJob(file.record, exchange::namesOf(file.pictures), person,
                                 exchange::kTestPassphrase,
                                 {role, statement, file.record.job.review.back().at})
            .value();
    }

    /// The first random job that has something of everything.
    static JobFile fullFile()
    {
        for (std::uint64_t seed = 1;; ++seed) {
            JobFile file = exchange::unsignedFile(seed);
            const model::Job& job = file.record.job;
            const auto& sheets = job.sketch.sheets;
            const bool hasPicture = std::any_of(sheets.begin(), sheets.end(), [](const model::Sheet& sheet) {
                return sheet.underlay.has_value();
            });
            if (hasPicture && sheets.size() > 1 && job.sketch.joints.size() > 1 &&
                job.sketch.points.size() > 1 && job.rounds.size() > 1 && job.readings.size() > 2 &&
                job.voids.size() > 1 && !job.calibrations.empty() && !job.backgrounds.empty() &&
                !job.riseTests.empty() && !job.repairs.empty() && !job.judgements.empty() &&
                !job.concessions.empty() && job.voidMeasurements.size() > 1)
                return file;
        }
    }

    template <class T>
    static void twice(std::vector<T>& records)
    {
        ASSERT_FALSE(records.empty());
        T another = records.back();
        if constexpr (requires { another.id; })
            another.id = decltype(another.id)::create();
        records.push_back(std::move(another));
    }

    static void doubleUp(model::Job& job)
    {
        job.setup.instruments = {{"detector", "D-1", job.opened}, {"gauge", "G-1", std::nullopt}};
        job.setup.cautions = {{"gas", "Tess", job.opened}, {"vacuum", "Tess", job.opened}};
        job.setup.kindLimits = {{model::JointKind::WeldSeam, pascalCubicMetresPerSecond(1e-9)},
                                {model::JointKind::Viewport, pascalCubicMetresPerSecond(1e-10)}};
        twice(job.calibrations);
        twice(job.backgrounds);
        twice(job.riseTests);
        twice(job.repairs);
        twice(job.judgements);
        twice(job.concessions);
    }

    /// Every table that has a column "job", and those that such rows point to.
    static std::vector<std::string> tables(Sql& sql)
    {
        return sql.run("SELECT DISTINCT m.name FROM sqlite_master m JOIN pragma_table_info(m.name) c "
                       "WHERE m.type = 'table' AND c.name = 'job' UNION SELECT 'job' UNION SELECT 'object' "
                       "UNION SELECT 'picture' UNION SELECT 'person'");
    }

    [[nodiscard]] std::vector<Column> columns(Sql& sql) const
    {
        const std::string job = sql.one("SELECT max(id) FROM job");
        std::vector<Column> all;
        for (const std::string& table : tables(sql)) {
            const std::string key = table == "reading"      ? "sequence"
                                    : table == "kind_limit" ? "kind"
                                                            : "rowid";
            const bool ofJob =
                sql.one("SELECT count(*) FROM pragma_table_info('" + table + "') WHERE name = 'job'") == "1";
            const std::string mine = ofJob            ? " WHERE job = " + job
                                     : table == "job" ? " WHERE id = " + job
                                                      : "";
            EXPECT_NE(sql.one("SELECT count(*) FROM " + table + mine), "0") << table << " says nothing";
            for (const std::string& name : sql.run("SELECT name FROM pragma_table_info('" + table + "')")) {
                // The first row; where there is one, one in which the column, or the time of an offset, says
                // something.
                const std::string base = name.ends_with("_offset") ? name.substr(0, name.size() - 7) : name;
                const std::string order = " ORDER BY " + base + " IS NULL, " + key + " LIMIT 1)";
                std::string where = " WHERE " + key + " = (SELECT " + key + " FROM " + table + mine + order;
                if (ofJob)
                    where += " AND job = " + job;
                const bool idle =
                    base != name && sql.one("SELECT " + base + " IS NULL FROM " + table + where) == "1";
                if (!idle) // the offset of a time that is not there
                    all.push_back({table, name, where});
            }
        }
        return all;
    }

    /// Text gains a letter, numbers grow, flags turn, blobs change, nothing becomes something; what rows are
    /// ordered by goes to the other end.
    static std::string changed(const Column& c)
    {
        const std::string& n = c.name;
        if (n == "id" || n == "sequence")
            return "(SELECT max(" + n + ") + 1 FROM " + c.table + ")";
        return "CASE typeof(" + n + ") WHEN 'text' THEN " + n + " || 'x' WHEN 'integer' THEN iif(" + n +
               " IN (0, 1), 1 - " + n + ", " + n + " + 1000) WHEN 'real' THEN " + n +
               " * 1.5 + 1 WHEN 'blob' THEN randomblob(max(length(" + n +
               "), 16)) ELSE iif((SELECT type FROM pragma_table_info('" + c.table + "') WHERE name = '" + n +
               "') = 'BLOB', randomblob(16), 1) END";
    }

    fs::path m_folder;
    model::JobId m_job;
};

/// What says nothing of a job that is signed, and why.
const std::set<std::string> kSaysNothing{
    "round.id",  // rounds go by their number
    "trace.id",  // traces go by their name
    "person.id", // people go by their identity
    // What a person may do from now on. Name and role as they were at a signature stand in the signature.
    "person.role",
    "person.qualification",
    "person.active",
    "person.since",
    "person.since_offset",
    // Opened with the passphrase only, and then compared with the public key.
    "person.sealed_key",
};

/// What may change after a signature, and is told when it did: the object may be renamed, the person too, and
/// somebody unknown here may have signed a job of elsewhere.
bool isToldOnly(const Column& c)
{
    return (c.table == "object" && c.name != "id" && c.name != "uuid") || (c.table == "person") ||
           (c.table == "trace" && (c.name == "name" || c.name == "job"));
}

/// What leaves a job that cannot be read at all, or that is not found under its identity any more: the
/// command answers that instead of naming what was changed.
const std::set<std::string> kCannotBeRead{
    "calibration.kind",  "calibration.moment", "job.id",
    "job.uuid",          "job.object",         "job.state",
    "joint.kind",        "joint.shape",        "joint.required_conditions",
    "kind_limit.kind",   "object.id",          "reading.outcome",
    "reading.condition", "reading.entry",      "repair.pictures",
    "review.step",       "rise_test.moment",   "round.kind",
    "setup.job",         "setup.gas_basis",    "sheet.outlines"};

/// The history's own list says nothing of the record, and is told apart.
bool isOwnList(const Column& c)
{
    return c.table == "job_summary";
}

// Property: every column that says anything of a signed job, changed by SQL, is noticed and named: as wrong,
// or in the few places where a change may be right, in words.
TEST_F(EveryColumn, OfASignedJobCounts)
{
    ASSERT_NO_FATAL_FAILURE(writeHistory());
    const ProcessResult before = verify();
    ASSERT_EQ(before.status, 0) << before.out;
    std::vector<Column> all;
    {
        Sql sql(path("a.sealwalk"));
        all = columns(sql);
        for (const std::string& trigger : sql.run("SELECT name FROM sqlite_master WHERE type = 'trigger'"))
            sql.run("DROP TRIGGER " + trigger);
    }
    EXPECT_GT(all.size(), 280U);
    fs::copy_file(path("a.sealwalk"), path("good"));
    std::set<std::string> unknown = kSaysNothing;
    std::set<std::string> unreadable = kCannotBeRead;
    for (const Column& c : all) {
        const std::string called = c.table + "." + c.name;
        if (unknown.erase(called) > 0)
            continue;
        fs::copy_file(path("good"), path("a.sealwalk"), fs::copy_options::overwrite_existing);
        {
            Sql sql(path("a.sealwalk"));
            sql.run("PRAGMA ignore_check_constraints = 1");
            sql.run("UPDATE " + c.table + " SET " + c.name + " = " + changed(c) + c.where);
            EXPECT_EQ(sql.changed(), 1) << called;
        }
        const ProcessResult result = isOwnList(c) ? check() : verify();
        if (isToldOnly(c)) {
            EXPECT_NE(result.out, before.out) << called;
            continue;
        }
        if (unreadable.erase(called) > 0) {
            EXPECT_EQ(result.status, 2) << called << ": " << result.out;
            EXPECT_NE(result.err, "") << called;
            continue;
        }
        if (result.status != 1) {
            ADD_FAILURE() << called << " answers " << result.status << ": " << result.out << result.err;
            continue;
        }
        const json said = json::parse(result.out, nullptr, false);
        ASSERT_TRUE(said.is_object()) << called << ": " << result.out;
        const json problems = said.value("problems", json::array());
        ASSERT_FALSE(problems.empty()) << called;
        if (isOwnList(c)) {
            EXPECT_NE(problems.dump().find("the history's own list"), std::string::npos)
                << called << problems;
        }
    }
    EXPECT_EQ(unreadable, std::set<std::string>{}) << "can be read by now";
    EXPECT_EQ(unknown, std::set<std::string>{}) << "no longer there";
}

// Regression: the number a job got when its own was taken could be changed to another, together with
// everything else the history shows it by.
TEST_F(EveryColumn, ANumberGivenHereIsTheOneAfterTheHighest)
{
    ASSERT_NO_FATAL_FAILURE(writeHistory());
    {
        Sql sql(path("a.sealwalk"));
        sql.run("DROP TRIGGER job_signed_update");
        sql.run("UPDATE job SET number = number + 40 WHERE id = (SELECT max(id) FROM job)");
        sql.run("UPDATE job_summary SET words = replace(words, 'job ' || (SELECT number - 40 FROM job WHERE "
                "id = job_summary.job), 'job ' || (SELECT number FROM job WHERE id = job_summary.job))");
    }
    const ProcessResult result = verify();
    EXPECT_EQ(result.status, 1);
    EXPECT_NE(result.out.find("stands under another number"), std::string::npos) << result.out;
    const ProcessResult whole = check();
    EXPECT_NE(whole.out.find("stands under another number"), std::string::npos) << whole.out;
}

} // namespace
} // namespace sealwalk::tests
