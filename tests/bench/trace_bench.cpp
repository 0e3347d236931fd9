// SPDX-License-Identifier: GPL-3.0-or-later
// A detector's trace of eight hours at 100 values per second: painted whole, painted as the last minute,
// grown, and read off for a reading. Reference: filling a picture of the same size. Aims: under 16 ms a
// picture, under 64 MiB for the trace.
#include "core/feed/response_figures.h"
#include "core/report/figure.h"
#include "ui/render/figure_painter.h"
#include "ui/render/theme.h"

#include <benchmark/benchmark.h>

#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <cmath>
#include <iostream>
#include <random>

namespace {

using namespace sealwalk;

constexpr int kRate = 100; // values per second
constexpr int kSamples = 8 * 3600 * kRate;
constexpr QSize kPicture(1366, 644);
constexpr double kMebibyte = 1024.0 * 1024.0;

/// Memory of this process in use, MiB.
double residentMebibytes()
{
    QFile file(QStringLiteral("/proc/self/statm"));
    if (!file.open(QIODevice::ReadOnly))
        return 0.0;
    return file.readAll().split(' ').value(1).toDouble() * 4096.0 / kMebibyte;
}

/// A response every half minute over a noisy background, values in Pa·m³/s.
float sampleAt(int i, std::mt19937& random)
{
    std::normal_distribution<float> noise(0.0F, 0.03F);
    const float second = static_cast<float>(i % (30 * kRate)) / kRate;
    const float peak = second < 8.0F ? 1.0F - std::exp(-second) : std::exp(8.0F - second);
    return 1.5e-10F * (1.0F + noise(random)) + 1e-7F * peak;
}

std::shared_ptr<report::LongSeries> eightHours()
{
    auto series = std::make_shared<report::LongSeries>();
    std::mt19937 random(1);
    for (int i = 0; i < kSamples; ++i)
        series->append(static_cast<double>(i) / kRate, sampleAt(i, random));
    return series;
}

const std::shared_ptr<report::LongSeries>& trace()
{
    static const std::shared_ptr<report::LongSeries> kTrace = [] {
        const double before = residentMebibytes();
        auto series = eightHours();
        std::cout << series->size() << " values: " << static_cast<double>(series->bytes()) / kMebibyte
                  << " MiB in the trace, " << residentMebibytes() - before << " MiB more in the process\n";
        return series;
    }();
    return kTrace;
}

report::Figure figureOf(double from, double to)
{
    report::Figure figure;
    figure.x.low = from;
    figure.x.high = to;
    figure.y.logarithmic = true;
    figure.y.low = 1e-11;
    figure.y.high = 1e-6;
    report::Series series;
    series.samples = trace();
    figure.series.push_back(series);
    return figure;
}

void paint(benchmark::State& state, const report::Figure& figure)
{
    QImage image(kPicture, QImage::Format_ARGB32_Premultiplied);
    const render::Theme theme = render::Theme::named(render::ThemeName::Paper);
    for (auto _ : state) {
        QPainter painter(&image);
        paintFigure(painter, theme, figure, QRectF(QPointF(), QSizeF(kPicture)));
    }
}

void fillAPicture(benchmark::State& state)
{
    QImage image(kPicture, QImage::Format_ARGB32_Premultiplied);
    for (auto _ : state) {
        QPainter painter(&image);
        painter.fillRect(image.rect(), Qt::white);
    }
}
BENCHMARK(fillAPicture)->Unit(benchmark::kMillisecond);

void paintEightHours(benchmark::State& state)
{
    paint(state, figureOf(0.0, static_cast<double>(kSamples) / kRate));
}
BENCHMARK(paintEightHours)->Unit(benchmark::kMillisecond);

void paintTheLastMinute(benchmark::State& state)
{
    const double end = static_cast<double>(kSamples) / kRate;
    paint(state, figureOf(end - 60.0, end));
}
BENCHMARK(paintTheLastMinute)->Unit(benchmark::kMillisecond);

void appendEightHours(benchmark::State& state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(eightHours());
}
BENCHMARK(appendEightHours)->Unit(benchmark::kMillisecond);

void readOffASpray(benchmark::State& state)
{
    std::vector<feed::Sample> samples;
    std::mt19937 random(1);
    for (int i = 0; i < 100 * kRate; ++i)
        samples.push_back({static_cast<double>(i) / kRate, static_cast<double>(sampleAt(i, random))});
    for (auto _ : state)
        benchmark::DoNotOptimize(feed::responseFigures(samples, 60.0, 68.0));
}
BENCHMARK(readOffASpray)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
