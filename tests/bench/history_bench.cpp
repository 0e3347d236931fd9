// SPDX-License-Identifier: GPL-3.0-or-later
// A generated history at 50, 500 and 5,000 jobs of 200 readings each: how long it takes to open it, to search
// it, to open a job in it and to store a reading; search beside SQLite's full-text index over the same words.
//     bench_history [most jobs]
#include "core/storage/history_store.h"
#include "tests/bench/generated_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <functional>
#include <random>

namespace {

using namespace sealwalk;
using namespace sealwalk::tests;
using storage::HistoryStore;

/// The median over `times` runs, ms.
double median(int times, const std::function<void(int)>& work)
{
    std::vector<double> spans;
    for (int i = 0; i < times; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work(i);
        spans.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
    }
    std::nth_element(spans.begin(), spans.begin() + times / 2, spans.end());
    return spans[static_cast<std::size_t>(times) / 2];
}

/// The same words in a trigram index, asked for the same part of a word.
double fullTextMedian(const std::filesystem::path& file, const std::string& word)
{
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
    database.exec("CREATE VIRTUAL TABLE temp.full_text USING fts5 (words, tokenize = 'trigram')");
    database.exec("INSERT INTO temp.full_text (rowid, words) SELECT job, words FROM job_summary");
    return median(21, [&](int) {
        SQLite::Statement select(
            database, "SELECT job.uuid, job.number, object.name, setup.purpose, job.opened FROM "
                      "temp.full_text AS f JOIN job ON job.id = f.rowid JOIN object ON object.id = "
                      "job.object JOIN setup ON setup.job = job.id WHERE f.words MATCH ? ORDER BY "
                      "job.opened DESC");
        select.bind(1, "\"" + word + "\"");
        while (select.executeStep()) {
        }
    });
}

void measure(const std::filesystem::path& file, int jobs)
{
    std::mt19937 random(1);
    const auto fail = [](const auto& answer) {
        if (!answer) {
            fmt::print(stderr, "{}\n", answer.error().message);
            std::exit(1);
        }
    };
    const double open =
        median(21, [&](int) { fail(HistoryStore::open(file, HistoryStore::Mode::ReadWrite)); });
    auto store = HistoryStore::open(file, HistoryStore::Mode::ReadWrite);
    fail(store);
    const auto rows = store->jobs();
    fail(rows);
    const double all = median(11, [&](int) { fail(store->jobs()); });
    const double objects = median(11, [&](int) { fail(store->objects()); });
    const double one = median(21, [&](int i) { fail(store->jobs(fmt::format("hall {} brook", i % 23))); });
    const double rare = median(21, [&](int i) { fail(store->jobs(fmt::format("t-{:05}", i * 35))); });
    const double job = median(31, [&](int) { fail(store->job((*rows)[random() % rows->size()].id)); });
    const model::Job target = *store->job(rows->front().id);
    const double reading = median(101, [&](int i) {
        fail(store->addReading(
            target.id,
            sampleReading(target.rounds[0].id,
                          target.sketch.points[static_cast<std::size_t>(i % kGeneratedPoints)].id)));
    });
    const double fullText = fullTextMedian(file, "t-00035");
    fmt::print("{:>6} {:>9} {:>8.1f} {:>8.2f} {:>10.2f} {:>10.2f} {:>10.2f} {:>10.2f} {:>10.2f} {:>10.2f} "
               "{:>10.2f}\n",
               jobs, jobs * kGeneratedReadings, static_cast<double>(std::filesystem::file_size(file)) / 1e6,
               open, all, objects, one, rare, fullText, job, reading);
}

} // namespace

int main(int argc, char** argv)
{
    const int most = argc > 1 ? std::atoi(argv[1]) : 5000;
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "bench.sealwalk";
    fmt::print(
        "median times in ms\n{:>6} {:>9} {:>8} {:>8} {:>10} {:>10} {:>10} {:>10} {:>10} {:>10} {:>10}\n",
        "jobs", "readings", "MB", "open", "all jobs", "objects", "2 words", "rare word", "full text",
        "open job", "+ reading");
    int made = 0;
    for (const int jobs : {50, 500, 5000}) {
        if (jobs > most)
            break;
        {
            auto store = HistoryStore::open(file, HistoryStore::Mode::Create);
            if (!store)
                return 1;
            grow(*store, made, jobs);
        }
        made = jobs;
        measure(file, jobs);
    }
    return 0;
}
