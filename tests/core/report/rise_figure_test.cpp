// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_rise.h"
#include "core/report/rise_figure.h"
#include "core/storage/history_store.h"
#include "demo/history/demo_history.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <filesystem>

namespace sealwalk::report {
namespace {

const Series* named(const Figure& figure, std::string_view beginning)
{
    for (const Series& series : figure.series)
        if (series.name.starts_with(beginning))
            return &series;
    return nullptr;
}

/// Judged records of the demonstration: with a leak, and with none.
std::vector<analysis::RiseSummary> judged()
{
    const auto file = std::filesystem::temp_directory_path() /
                      ("sealwalk-rise-figure-" + std::to_string(::getpid()) + ".sealwalk");
    std::filesystem::remove(file);
    EXPECT_TRUE(demo::writeDemoHistory(file));
    std::vector<analysis::RiseSummary> all;
    {
        const auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadOnly);
        for (const char* number : {"118", "164"}) {
            const model::Job job = store->job(store->findJob(number).value()).value();
            const model::TestObject object = store->object(job.object).value();
            for (const model::RiseTest& test : job.riseTests)
                all.push_back(analysis::judgeRise(test, job, object).value());
        }
    }
    std::filesystem::remove(file);
    return all;
}

// Regression: the report drew the walls from zero and the window from where the pressure began; a leak that
// was not found was a line without a word.
TEST(RiseFigure, ItsPartsAddUpAndAreNamed)
{
    int without = 0;
    const std::vector<analysis::RiseSummary> all = judged();
    ASSERT_EQ(all.size(), 3U);
    for (const analysis::RiseSummary& rise : all) {
        ASSERT_TRUE(rise.separable);
        const Figure figure = riseFigure(rise, {});
        for (const Series& series : figure.series)
            EXPECT_FALSE(series.name.empty());
        const Series* leak = named(figure, "leak");
        const Series* walls = named(figure, "walls");
        const Series* sum = named(figure, "sum");
        ASSERT_TRUE(leak != nullptr && walls != nullptr && sum != nullptr);
        EXPECT_DOUBLE_EQ(leak->y.front(), walls->y.front());
        const double start = rise.curves.start / kPascalsPerMillibar;
        for (std::size_t i = 0; i < sum->y.size(); ++i)
            EXPECT_NEAR(leak->y[i] + walls->y[i] - start, sum->y[i], 1e-9 * sum->y.back());
        without += leak->name == "leak: none found" ? 1 : 0;
        EXPECT_EQ(leak->name == "leak: none found", rise.leakRate <= LeakRate());
    }
    EXPECT_EQ(without, 1);
}

// Property: where nothing is told apart, what the leak may be is hatched and named, also when the best guess
// is none.
TEST(RiseFigure, HatchesWhatCannotBeToldApart)
{
    analysis::RiseSummary rise = judged().front();
    rise.separable = false;
    rise.runOnFor = seconds(600.0);
    Figure figure = riseFigure(rise, {});
    ASSERT_EQ(figure.areas.size(), 1U);
    EXPECT_EQ(figure.areas.front().text, "not separable: run 10 min longer");
    EXPECT_EQ(named(figure, "leak"), nullptr);
    rise.leakRate = {};
    rise.runOnFor.reset();
    figure = riseFigure(rise, {});
    ASSERT_EQ(figure.areas.size(), 1U);
    EXPECT_EQ(figure.areas.front().x.size(), rise.curves.time.size() + 2);
    EXPECT_EQ(figure.areas.front().text, "not separable");
}

} // namespace
} // namespace sealwalk::report
