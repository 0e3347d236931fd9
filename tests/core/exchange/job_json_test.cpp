// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/canonical_json.h"
#include "core/exchange/job_digest.h"
#include "core/exchange/job_json.h"
#include "tests/support/random_job.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <functional>
#include <tuple>

namespace sealwalk::exchange {
namespace {

using nlohmann::json;

std::string textOf(const json& value)
{
    return canonicalJson(value).value();
}

/// Goes through text, as a file does.
Result<JobRecord> readBack(const json& document)
{
    return parseJson(textOf(document)).and_then([](const json& again) { return jobFromJson(again); });
}

// Property: a job with every field filled at random comes back equal, and its text settles at once.
TEST(JobJson, AnyJobReadsBackAsItself)
{
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        const tests::RandomJob random = tests::randomJob(seed);
        const json document = jobToJson(random.object, random.job);
        const auto back = readBack(document);
        ASSERT_TRUE(back.has_value()) << seed << ": " << back.error().message;
        EXPECT_TRUE(back->object == random.object) << seed;
        EXPECT_TRUE(back->job == random.job) << seed;
        EXPECT_EQ(textOf(jobToJson(back->object, back->job)), textOf(document)) << seed;
    }
}

/// Converts to anything: stands in for a member whose type does not matter.
struct Anything
{
    template <class T>
    operator T&() const;
    template <class T>
    operator T&&() const;
};

/// How many members an aggregate has.
template <class T, class... Given>
constexpr std::size_t members()
{
    if constexpr (requires { T{Given{}..., Anything{}}; })
        return members<T, Given..., Anything>();
    else
        return sizeof...(Given);
}

// A member that is added to the record must be added to the format as well; then its count changes here.
TEST(JobJson, NoMemberOfTheRecordIsForgotten)
{
    EXPECT_EQ(members<model::TestObject>(), 15U);
    EXPECT_EQ(members<model::DecadeScale>(), 2U);
    EXPECT_EQ(members<model::Job>(), 20U);
    EXPECT_EQ(members<model::Setup>(), 37U);
    EXPECT_EQ(members<model::CautionTick>(), 3U);
    EXPECT_EQ(members<model::Instrument>(), 3U);
    EXPECT_EQ(members<model::Sketch>(), 5U);
    EXPECT_EQ(members<model::Sheet>(), 9U);
    EXPECT_EQ(members<model::Underlay>(), 5U);
    EXPECT_EQ(members<model::Joint>(), 13U);
    EXPECT_EQ(members<model::TestPoint>(), 6U);
    EXPECT_EQ(members<geometry::Ring>(), 2U);
    EXPECT_EQ(members<geometry::RoundedRectangle>(), 5U);
    EXPECT_EQ(members<geometry::FreePath>(), 3U);
    EXPECT_EQ(members<geometry::Spot>(), 2U);
    EXPECT_EQ(members<model::Round>(), 9U);
    EXPECT_EQ(members<model::Reading>(), 24U);
    EXPECT_EQ(members<model::VoidMark>(), 4U);
    EXPECT_EQ(members<model::Calibration>(), 14U);
    EXPECT_EQ(members<model::ReferenceLeak>(), 11U);
    EXPECT_EQ(members<model::BackgroundWatch>(), 7U);
    EXPECT_EQ(members<model::RiseTest>(), 11U);
    EXPECT_EQ(members<model::MeasurementVoid>(), 4U);
    EXPECT_EQ(members<model::Repair>(), 16U);
    EXPECT_EQ(members<model::Judgement>(), 9U);
    EXPECT_EQ(members<model::Concession>(), 7U);
    EXPECT_EQ(members<model::ReviewEntry>(), 8U);
    EXPECT_EQ(members<model::Signature>(), 10U);
}

/// Calls `visit` with every value inside `value` that is no container, and its path.
void eachLeaf(json& value, const std::string& path,
              const std::function<void(json&, const std::string&)>& visit)
{
    if (value.is_structured()) {
        for (auto it = value.begin(); it != value.end(); ++it)
            eachLeaf(*it, path + "/" + (value.is_object() ? it.key() : std::string()), visit);
    } else {
        visit(value, path);
    }
}

json changedLeaf(const json& value)
{
    if (value.is_boolean())
        return !value.get<bool>();
    if (value.is_number())
        return value.get<double>() + 1.0;
    return value.get<std::string>() + "x";
}

// Property: no field is forgotten on reading: each changed value gives another record or is refused.
TEST(JobJson, EveryValueCounts)
{
    const tests::RandomJob random = tests::randomJob(31);
    json document = jobToJson(random.object, random.job);
    const json original = document;
    int leaves = 0;
    eachLeaf(document, "", [&](json& leaf, const std::string& path) {
        const json before = leaf;
        leaf = changedLeaf(before);
        const auto read = readBack(document);
        if (read) {
            EXPECT_FALSE(read->object == random.object && read->job == random.job) << path;
            EXPECT_EQ(textOf(jobToJson(read->object, read->job)), textOf(document)) << path;
        } else {
            EXPECT_FALSE(read.error().message.empty()) << path;
        }
        leaf = before;
        ++leaves;
    });
    EXPECT_GT(leaves, 300);
    EXPECT_EQ(document, original);
}

// Property: every key of every object is needed unless it stands for an optional value, and no other is
// taken.
TEST(JobJson, MissingAndUnknownKeysAreNamed)
{
    const tests::RandomJob random = tests::randomJob(31);
    json document = jobToJson(random.object, random.job);
    document["job"]["readings"][0].erase("outcome");
    auto read = jobFromJson(document);
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().message, "job.readings[0]: \"outcome\" is missing");

    document = jobToJson(random.object, random.job);
    document["job"]["setup"]["colour"] = "blue";
    read = jobFromJson(document);
    ASSERT_FALSE(read.has_value());
    EXPECT_NE(read.error().message.find("job.setup: \"colour\" is not known"), std::string::npos)
        << read.error().message;
}

TEST(JobJson, RefusesWrongValuesWithTheirPath)
{
    struct Row
    {
        const char* pointer;
        json value;
        const char* says;
    };
    const Row rows[] = {
        {"/job/readings/0/at", "yesterday", "job.readings[0].at: "},
        {"/job/readings/0/at", "2026-03-01T14:05:09+01:00", "job.readings[0].at: a time is written"},
        {"/job/readings/0/outcome", "fine", "job.readings[0].outcome: \"fine\" is not a reading outcome"},
        {"/job/readings/0/gentle", 1, "job.readings[0].gentle: must be true or false"},
        {"/job/readings/0/by", 1, "job.readings[0].by: must be text"},
        {"/job/readings", json::object(), "job.readings: must be a list"},
        {"/job/sketch/joints/0/shape/shape", "star", "job.sketch.joints[0].shape.shape: \"star\""},
        {"/job/setup/noise_factor", "3", "job.setup.noise_factor: must be a number"},
        {"/job/setup/helium_share", nullptr, "job.setup.helium_share: must be a number"},
        {"/job/number", 1.5, "job.number: must be a whole number"},
        {"/job/number", 3e9, "job.number: "},
        {"/job/number", 3000000000, "job.number: the whole number is too large"},
        {"/job/id", "1B4E28BA-2FA1-41D2-883F-0016D3CCA427", "job.id: a UUID is written in lower case"},
        {"/job/id", "none", "job.id: "},
        {"/job", 3, "job: must be an object"},
        {"/job/setup/kind_limits_pa_m3_per_s", json{{"window", 1}}, "\"window\" is not a joint kind"},
        {"/job/object", "1b4e28ba-2fa1-41d2-883f-0016d3cca427",
         "job.object: the job belongs to another object"},
        {"/job/readings/0/point", "1b4e28ba-2fa1-41d2-883f-0016d3cca427", "job.readings[0]: point"},
        {"/job/readings/0/round", "1b4e28ba-2fa1-41d2-883f-0016d3cca427", "job.readings[0]: round"},
        {"/job/readings/0/corrects", "1b4e28ba-2fa1-41d2-883f-0016d3cca427", "job.readings[0]: it corrects"},
        {"/job/sketch/last_number", 0, "job.sketch: point number"},
        {"/object/name", "", "object.name: "},
    };
    const tests::RandomJob random = tests::randomJob(31);
    const json good = jobToJson(random.object, random.job);
    ASSERT_TRUE(jobFromJson(good).has_value());
    for (const Row& row : rows) {
        json document = good;
        document[json::json_pointer(row.pointer)] = row.value;
        const auto read = jobFromJson(document);
        ASSERT_FALSE(read.has_value()) << row.pointer;
        EXPECT_EQ(read.error().code, ErrorCode::BadInput);
        EXPECT_NE(read.error().message.find(row.says), std::string::npos)
            << row.pointer << " gave " << read.error().message;
    }
}

TEST(JobJson, ANewerFormatIsToldApart)
{
    const tests::RandomJob random = tests::randomJob(31);
    json document = jobToJson(random.object, random.job);
    document["format"] = "sealwalk-job-5";
    document["job"]["something_new"] = true;
    EXPECT_EQ(jobFromJson(document).error().code, ErrorCode::NewerVersion);
    for (const char* other :
         {"sealwalk-job-", "sealwalk-job-x", "sealwalk-job-0", "sealwalk-job-02", "job-2", ""}) {
        document["format"] = other;
        EXPECT_EQ(jobFromJson(document).error().code, ErrorCode::BadInput) << other;
    }
    document.erase("format");
    EXPECT_EQ(jobFromJson(document).error().code, ErrorCode::BadInput);
    EXPECT_EQ(jobFromJson(json(3)).error().code, ErrorCode::BadInput);
}

/// A job with nothing that needs format 3 or 4.
tests::RandomJob withoutSaid()
{
    tests::RandomJob random = tests::randomJob(31);
    random.job.voidMeasurements.clear();
    for (model::Reading& reading : random.job.readings)
        reading.shielded.clear();
    for (model::Judgement& judgement : random.job.judgements)
        judgement.of.clear();
    for (model::BackgroundWatch& watch : random.job.backgrounds)
        watch.swing.reset();
    return random;
}

// Property: each of the four things that format 3 has a place for makes it format 3, and comes back; without
// them the document is the one it always was.
TEST(JobJson, WhatWasSaidMakesItFormatThree)
{
    const tests::RandomJob without = withoutSaid();
    const json plain = jobToJson(without.object, without.job);
    EXPECT_EQ(plain["format"], "sealwalk-job-2");
    const std::string text = plain.dump();
    for (const char* key : {"shielded", "swing_pa_m3_per_s", "\"of\""})
        EXPECT_EQ(text.find(key), std::string::npos) << key;
    ASSERT_FALSE(without.job.readings.empty());
    const model::PointId sprayed = without.job.readings[0].point;
    const auto other = std::ranges::find_if(without.job.sketch.points,
                                            [&](const auto& point) { return point.id != sprayed; });
    ASSERT_NE(other, without.job.sketch.points.end());
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.round = without.job.rounds[0].id;
    judgement.point = sprayed;
    model::BackgroundWatch watch;
    watch.id = model::BackgroundId::create();
    watch.times = {0.0};
    watch.values = {millibarLitresPerSecond(1e-7)};
    const std::vector<std::function<void(model::Job&)>> ways{
        [&](model::Job& job) { job.readings[0].shielded = {other->id}; },
        [&](model::Job& job) {
            judgement.of = {other->id};
            job.judgements.push_back(judgement);
        },
        [&](model::Job& job) {
            judgement.of.clear();
            judgement.verdict = "not counted";
            job.judgements.push_back(judgement);
        },
        [&](model::Job& job) {
            watch.swing = millibarLitresPerSecond(2e-8);
            job.backgrounds.push_back(watch);
        }};
    for (const auto& way : ways) {
        tests::RandomJob with = without;
        way(with.job);
        const json document = jobToJson(with.object, with.job);
        EXPECT_EQ(document["format"], "sealwalk-job-3");
        const auto read = jobFromJson(document);
        ASSERT_TRUE(read) << read.error().message;
        EXPECT_EQ(read->job.readings[0].shielded, with.job.readings[0].shielded);
        EXPECT_EQ(read->job.judgements, with.job.judgements);
        EXPECT_EQ(read->job.backgrounds, with.job.backgrounds);
        json asTwo = document;
        asTwo["format"] = "sealwalk-job-2";
        EXPECT_EQ(jobFromJson(asTwo).error().code, ErrorCode::BadInput);
    }
    const auto refused = [&](const std::function<void(model::Job&)>& way) {
        tests::RandomJob with = without;
        way(with.job);
        const auto read = jobFromJson(jobToJson(with.object, with.job));
        return read ? std::string("taken") : read.error().message;
    };
    EXPECT_NE(refused([&](model::Job& job) { job.readings[0].shielded = {sprayed}; }).find("taped off"),
              std::string::npos);
    EXPECT_NE(refused([&](model::Job& job) {
                  job.readings[0].shielded = {model::PointId::create()};
              }).find("readings[0]"),
              std::string::npos);
    EXPECT_NE(refused([&](model::Job& job) {
                  watch.swing = millibarLitresPerSecond(2e-8);
                  watch.times = {0.0, 1.0};
                  watch.values = {millibarLitresPerSecond(1e-7), millibarLitresPerSecond(1e-7)};
                  job.backgrounds.push_back(watch);
              }).find("goes with one value"),
              std::string::npos);
}

// Property: a void measurement makes it format 4, and comes back; it names one that is there, once.
TEST(JobJson, VoidMeasurementsMakeItFormatFour)
{
    tests::RandomJob random = withoutSaid();
    model::RiseTest rise;
    rise.id = model::RiseTestId::create();
    random.job.riseTests.push_back(rise);
    const model::MeasurementVoid mark{model::MeasurementId(rise.id.uuid()), "the valve was not shut", "Ada",
                                      random.job.opened};
    const std::string digest = jobDigest(random.object, random.job, {}).value();
    random.job.voidMeasurements = {mark};
    const json document = jobToJson(random.object, random.job);
    EXPECT_EQ(document["format"], "sealwalk-job-4");
    const auto read = jobFromJson(document);
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(read->job.voidMeasurements, random.job.voidMeasurements);
    EXPECT_NE(jobDigest(random.object, random.job, {}).value(), digest) << "a signature covers it";
    json asThree = document;
    asThree["format"] = "sealwalk-job-3";
    EXPECT_EQ(jobFromJson(asThree).error().code, ErrorCode::BadInput);
    for (const std::vector<model::MeasurementVoid>& wrong :
         {std::vector{mark, mark},
          std::vector{model::MeasurementVoid{model::MeasurementId::create(), "x", "y", {}}}}) {
        random.job.voidMeasurements = wrong;
        const auto refused = jobFromJson(jobToJson(random.object, random.job));
        ASSERT_FALSE(refused);
        EXPECT_NE(refused.error().message.find("job.void_measurements["), std::string::npos)
            << refused.error().message;
    }
}

// Property: a job that names no party is written as it always was; one that does is of format 2, and one
// content has one document: the other number, or an empty name, is refused.
TEST(JobJson, PartiesMakeItFormatTwo)
{
    tests::RandomJob random = withoutSaid();
    random.job.setup.customer.clear();
    random.job.setup.witness.clear();
    const json plain = jobToJson(random.object, random.job);
    EXPECT_EQ(plain["format"], "sealwalk-job-1");
    EXPECT_FALSE(plain["job"]["setup"].contains("customer"));
    const std::string digest = documentDigest(plain, {}).value();
    random.job.setup.customer = "Fennick Optics";
    const json with = jobToJson(random.object, random.job);
    EXPECT_EQ(with["format"], "sealwalk-job-2");
    EXPECT_EQ(with["job"]["setup"]["customer"], "Fennick Optics");
    EXPECT_FALSE(with["job"]["setup"].contains("witness"));
    EXPECT_EQ(jobFromJson(with)->job.setup, random.job.setup);
    EXPECT_NE(documentDigest(with, {}).value(), digest);
    random.job.setup.customer = "Fennick Optic";
    EXPECT_NE(jobDigest(random.object, random.job, {}).value(), documentDigest(with, {}).value());

    for (const auto& [pointer, value, says] : std::vector<std::tuple<const char*, json, const char*>>{
             {"/format", "sealwalk-job-1", "\"sealwalk-job-2\" is right"},
             {"/format", "sealwalk-job-3", "\"sealwalk-job-2\" is right"},
             {"/job/setup/customer", "", "left out when it is empty"},
             {"/job/setup/customer", 3, "must be text"},
             {"/job/setup/owner", "Fennick Optics", "is not known"}}) {
        json wrong = with;
        wrong[json::json_pointer(pointer)] = value;
        const auto read = jobFromJson(wrong);
        ASSERT_FALSE(read.has_value()) << pointer;
        EXPECT_NE(read.error().message.find(says), std::string::npos) << read.error().message;
    }
    json empty = plain;
    empty["format"] = "sealwalk-job-2";
    EXPECT_EQ(jobFromJson(empty).error().code, ErrorCode::BadInput);
}

TEST(JobJson, AnImportedJobKeepsTheNumberItWasOpenedUnder)
{
    tests::RandomJob random = tests::randomJob(31);
    random.job.openedAs = 7;
    random.job.number = 1204;
    EXPECT_EQ(jobToJson(random.object, random.job)["job"]["number"], 7);
}

TEST(JobJson, TheStateFollowsFromTheReview)
{
    using enum model::ReviewStep;
    const auto after = [](std::initializer_list<model::ReviewStep> steps) {
        std::vector<model::ReviewEntry> review;
        for (const model::ReviewStep step : steps)
            review.push_back({model::ReviewId::create(), step, "", {}, "", std::nullopt, "", ""});
        return stateAfter(review);
    };
    EXPECT_EQ(after({}), model::JobState::Open);
    EXPECT_EQ(after({Remark}), model::JobState::Open);
    EXPECT_EQ(after({Submitted, Remark}), model::JobState::Submitted);
    EXPECT_EQ(after({Submitted, Returned, Answer}), model::JobState::Returned);
    EXPECT_EQ(after({Submitted, Returned, Submitted, Approved}), model::JobState::Signed);
    EXPECT_EQ(after({Submitted, Approved, Amendment}), model::JobState::Signed);
}

// Regression: hundreds of decades, or none, kept whoever drew the object busy for ever.
TEST(JobJson, RefusesNumbersThatCannotBeDrawn)
{
    const tests::RandomJob sample = tests::randomJob(3);
    const JobRecord good{sample.object, sample.job};
    ASSERT_TRUE(checkRecord(good));
    const auto isRefused = [&](auto&& change) {
        JobRecord bad = good;
        change(bad);
        return !checkRecord(bad).has_value();
    };
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.object.scale = {-400, 400}; }));
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.object.scale.decades = 0; }));
    // After it no job could be given a number.
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.job.number = 2147483647; }));
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.object.volume = litres(-1.0); }));
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.job.setup.heliumShare = fraction(-0.5); }));
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.job.sketch.sheets.front().width = 0.0; }));
    EXPECT_TRUE(isRefused([](JobRecord& r) { r.job.sketch.sheets.front().height = 1e300; }));
}

} // namespace
} // namespace sealwalk::exchange
