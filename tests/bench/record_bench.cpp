// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody waits for around the record, in a history of 50, 500 and 5,000 jobs: the window from nothing
// to usable beside the same window on an empty history, in the same run; two jobs compared; the report of a
// job of 200 points. Aims: 1.3 times the empty one; 200 ms; 2 s.
//     xvfb-run build/release/bench/bench_record [most jobs]
#include "tests/bench/generated_history.h"
#include "tests/support/jobs.h"
#include "ui/history/compare_work.h"
#include "ui/render/report_pdf.h"
#include "ui/render/theme.h"
#include "ui/session/job_report.h"
#include "ui/session/job_session.h"
#include "ui/shell/compose_pages.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <functional>
#include <vector>

namespace {

using namespace sealwalk;
using Clock = std::chrono::steady_clock;
using storage::HistoryStore;

constexpr int kReportPoints = 200;
constexpr int kPointsEach = 8;

double millisecondsSince(Clock::time_point begin)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

double median(std::vector<double> spans)
{
    std::nth_element(spans.begin(), spans.begin() + static_cast<std::ptrdiff_t>(spans.size() / 2),
                     spans.end());
    return spans[spans.size() / 2];
}

template <class Answer>
Answer must(Answer answer)
{
    if (!answer) {
        fmt::print(stderr, "{}\n", answer.error().message);
        std::exit(1);
    }
    return answer;
}

/// One job of 200 points on 25 ports: most are quiet, every ninth answers, one in forty strongly.
model::Job longJob(model::ObjectId object, int number, const Timestamp& opened)
{
    model::Job job;
    job.id = model::JobId::create();
    job.object = object;
    job.number = number;
    job.opened = opened;
    job.setup.purpose = "a long walk";
    job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    const model::SheetId sheet = tests::addSheet(job.sketch, "Ports");
    for (int i = 0; i < kReportPoints / kPointsEach; ++i)
        tests::addJoint(job.sketch, sheet, static_cast<model::JointKind>(i % 5),
                        fmt::format("Port {}", i + 1),
                        geometry::Ring{{400.0 * (i % 5), 400.0 * (i / 5)}, 100.0}, kPointsEach);
    for (model::Joint& joint : job.sketch.joints)
        joint.requiredConditions.clear();
    std::int64_t at = opened.utcMilliseconds;
    job.calibrations.push_back(tests::systemCheck({at, 60}, 1.0));
    job.backgrounds.push_back(tests::quietWatch({at, 60}));
    model::Round round;
    round.id = model::RoundId::create();
    round.number = 1;
    round.by = "B. Ench";
    round.opened = opened;
    for (const model::TestPoint& point : job.sketch.points)
        round.points.push_back(point.id);
    for (int i = 0; i < kReportPoints; ++i) {
        model::Reading reading;
        reading.id = model::ReadingId::create();
        reading.sequence = i + 1;
        reading.round = round.id;
        reading.point = round.points[static_cast<std::size_t>(i)];
        reading.at = Timestamp{at += 40'000, 60};
        reading.background = millibarLitresPerSecond(1e-10);
        reading.peak = millibarLitresPerSecond(i % 40 == 0 ? 6e-7 : i % 9 == 0 ? 8e-9 : 1.1e-10);
        reading.dwell = seconds(6.0);
        reading.by = round.by;
        job.readings.push_back(reading);
    }
    job.rounds.push_back(round);
    return job;
}

/// From nothing to a window that shows the jobs of the history and takes keys.
double start(const std::filesystem::path& file, int jobs, const QString& settingsFile)
{
    const auto begin = Clock::now();
    ui::JobSession session;
    ui::ShellSettings settings(settingsFile);
    ui::MainWindow window(session, settings);
    ui::composePages(window);
    window.resize(1366, 740);
    window.show();
    ui::openAtStart(window, QString::fromStdString(file.string()));
    if (!QTest::qWaitForWindowExposed(&window))
        std::exit(1);
    const auto* list = window.findChild<QAbstractItemView*>(QStringLiteral("jobs"));
    if (!QTest::qWaitFor([&] { return list->model()->rowCount() >= std::min(jobs, 1); }))
        std::exit(1);
    QCoreApplication::processEvents();
    return millisecondsSince(begin);
}

struct Measured
{
    double emptyStart = 0.0;
    double start = 0.0;
    double compare = 0.0;
    double report = 0.0;
};

Measured measure(const std::filesystem::path& home, const std::filesystem::path& file, int jobs)
{
    const QString settings = QString::fromStdString((home / "window.ini").string());
    std::vector<double> empty;
    std::vector<double> full;
    for (int i = 0; i < 9; ++i) { // in turn, so that both meet the same machine
        empty.push_back(start(home / "empty.sealwalk", 0, settings));
        full.push_back(start(file, jobs, settings));
    }
    const auto store = must(HistoryStore::open(file, HistoryStore::Mode::ReadOnly));
    const auto rows = must(store->jobs("long"));
    std::vector<double> compare;
    for (int i = 0; i < 9; ++i) {
        const auto begin = Clock::now();
        const auto both = must(ui::workOutComparison(file, (*rows)[1].id, (*rows)[0].id));
        const auto comparison = analysis::compare({&(*both)->before.job.sketch, (*both)->before.asFound},
                                                  {&(*both)->after.job.sketch, (*both)->after.asFound}, {});
        if (comparison.points.size() != kReportPoints)
            std::exit(1);
        compare.push_back(millisecondsSince(begin));
    }
    std::vector<double> report;
    for (int i = 0; i < 5; ++i) {
        const auto begin = Clock::now();
        const auto prepared = must(ui::prepareReport(file, (*rows)[0].id));
        if (render::reportPdf((*prepared)->content, {}).empty())
            std::exit(1);
        report.push_back(millisecondsSince(begin));
    }
    return {median(empty), median(full), median(compare), median(report)};
}

} // namespace

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    const int most = argc > 1 ? std::atoi(argv[1]) : 5000;
    const QTemporaryDir folder;
    const std::filesystem::path home(folder.path().toStdString());
    render::applyTheme(application, render::ThemeName::Paper);
    must(HistoryStore::open(home / "empty.sealwalk", HistoryStore::Mode::Create));
    const std::filesystem::path file = home / "full.sealwalk";
    const model::TestObject object = tests::generatedObject(10'007);
    {
        auto store = must(HistoryStore::open(file, HistoryStore::Mode::Create));
        for (int year = 0; year < 2; ++year)
            must(store->importJob(object, longJob(object.id, 90'001 + year, tests::moment(year * 525'600)),
                                  {}));
    }
    fmt::print("median times in ms; both jobs compared and the reported one have {} points\n"
               "{:>6} {:>12} {:>10} {:>6} {:>10} {:>10}\n",
               kReportPoints, "jobs", "empty start", "start", "ratio", "compare", "report");
    int made = 0;
    for (const int jobs : {50, 500, 5000}) {
        if (jobs > most)
            break;
        {
            auto store = must(HistoryStore::open(file, HistoryStore::Mode::ReadWrite));
            tests::grow(*store, made, jobs);
        }
        made = jobs;
        const Measured got = measure(home, file, jobs);
        fmt::print("{:>6} {:>12.0f} {:>10.0f} {:>6.2f} {:>10.0f} {:>10.0f}\n", jobs, got.emptyStart,
                   got.start, got.start / got.emptyStart, got.compare, got.report);
    }
    return 0;
}
