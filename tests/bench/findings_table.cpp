// SPDX-License-Identifier: GPL-3.0-or-later
// Prints how well the source search does on invented surveys whose leaks are known: one row per workshop and
// severity, with the plain readings and the local-maximum rule beside it. `findings_table [surveys per row]
// [first seed] [words]`; only rows whose name begins with one of the words are made.
#include "core/analysis/sources.h"
#include "tests/support/survey_score.h"
#include "tests/support/survey_workshop.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <functional>
#include <string>
#include <vector>

namespace {

using namespace sealwalk;
using namespace sealwalk::tests;

struct Row
{
    std::string name;
    std::function<World(std::uint64_t)> make;
};

std::vector<Row> allRows()
{
    std::vector<Row> rows;
    for (const double reach : {0.6, 1.0, 1.6}) {
        for (const Workshop workshop : allWorkshops())
            rows.push_back({fmt::format("{} x{}", nameOf(workshop), reach),
                            [=](std::uint64_t seed) { return makeWorkshop(workshop, seed, reach); }});
    }
    for (const double severity : {0.12, 0.4, 1.0}) {
        rows.push_back({fmt::format("worlds {}", severity), [=](std::uint64_t seed) {
                            const auto airs = allAirs();
                            return makeWorld(airs[seed % airs.size()], seed / airs.size(), severity);
                        }});
    }
    return rows;
}

} // namespace

int main(int argc, char** argv)
{
    const int surveys = argc > 1 ? std::atoi(argv[1]) : 300;
    const auto first = static_cast<std::uint64_t>(argc > 2 ? std::atoll(argv[2]) : 1000);
    const std::vector<std::string> words(argv + std::min(argc, 3), argv + argc);
    fmt::print("{}\n", scoreHeader());
    for (const Row& row : allRows()) {
        if (!words.empty() && std::ranges::none_of(words, [&](const std::string& word) {
                return row.name.rfind(word, 0) == 0;
            }))
            continue;
        Score ours;
        Score plain;
        Score maxima;
        for (int i = 0; i < surveys; ++i) {
            const World world = row.make(first + static_cast<std::uint64_t>(i));
            const auto sources = analysis::findSources(world.survey);
            if (!sources) {
                fmt::print("{}: {}\n", row.name, sources.error().message);
                return 1;
            }
            ours.add(world, sources->findings);
            plain.add(world, plainReadings(world.survey));
            maxima.add(world, localMaxima(world.survey));
        }
        fmt::print("{}\n{}\n{}\n", ours.row(row.name), plain.row("  plain readings"),
                   maxima.row("  local maxima"));
        std::fflush(stdout);
    }
    return 0;
}
