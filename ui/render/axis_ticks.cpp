// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/axis_ticks.h"

#include "core/report/rate_text.h"
#include "ui/render/core_words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

QString plainText(double value, double step)
{
    const double most = std::max(std::abs(value), step);
    if (std::abs(value) < step * 1e-6)
        return QStringLiteral("0");
    if (most < 1e-2 || most >= 1e5)
        return inFigures(report::screenRate(value));
    const int decimals = std::clamp(-static_cast<int>(std::floor(std::log10(step) + 1e-9)), 0, 6);
    return QLocale::c()
        .toString(value, 'f', decimals)
        .replace(u'-', QChar(0x2212))
        .replace(QLatin1Char('.'), decimalSign());
}

std::vector<Tick> decades(const report::Axis& axis, int most)
{
    std::vector<Tick> ticks;
    const int low = static_cast<int>(std::ceil(std::log10(axis.low) - 1e-9));
    const int high = static_cast<int>(std::floor(std::log10(axis.high) + 1e-9));
    const int step = std::max(1, static_cast<int>(std::ceil((high - low + 1.0) / most)));
    for (int e = high; e >= low; e -= step) {
        const QString text = e < 0 ? QStringLiteral("1e\u2212%1").arg(-e) : QStringLiteral("1e%1").arg(e);
        ticks.insert(ticks.begin(), {std::pow(10.0, e), text});
    }
    return ticks;
}

} // namespace

std::vector<Tick> ticksOf(const report::Axis& axis, int most)
{
    std::vector<Tick> ticks;
    if (!axis.ticks.empty()) {
        for (const report::Axis::Tick& tick : axis.ticks)
            ticks.push_back({tick.at, QString::fromStdString(tick.text)});
        return ticks;
    }
    if (axis.logarithmic)
        return decades(axis, most);
    const double rough = (axis.high - axis.low) / std::max(2, most);
    if (!(rough > 0.0) || !std::isfinite(rough))
        return ticks;
    const double decade = std::pow(10.0, std::floor(std::log10(rough)));
    double step = 10.0 * decade;
    for (const double nice : {1.0, 2.0, 5.0})
        if (nice * decade >= rough * 0.999) {
            step = nice * decade;
            break;
        }
    for (double k = std::ceil(axis.low / step - 1e-9); k * step <= axis.high + step * 1e-9; k += 1.0)
        ticks.push_back({k * step, plainText(k * step, step)});
    return ticks;
}

double partOf(const report::Axis& axis, double value)
{
    if (axis.logarithmic)
        return std::log10(std::max(value, axis.low * 1e-6) / axis.low) / std::log10(axis.high / axis.low);
    return (value - axis.low) / (axis.high - axis.low);
}

} // namespace sealwalk::render
