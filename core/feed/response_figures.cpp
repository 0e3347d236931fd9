// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/response_figures.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace sealwalk::feed {

namespace {

constexpr double kSigmaOfMedianDistance = 1.4826; // 1 / (inverse normal distribution at 3/4)
constexpr double kNoiseFactor = 4.0;              // three samples beyond it by chance: 3e-14
constexpr double kLeastShare = 0.05;
constexpr std::size_t kInARow = 3;
constexpr double kFallFrom = 0.9;
constexpr double kFallTo = 0.1;

std::span<const Sample> within(std::span<const Sample> samples, double from, double to)
{
    const auto before = [](const Sample& sample, double time) { return sample.time < time; };
    const auto first = std::lower_bound(samples.begin(), samples.end(), from, before);
    const auto behind = std::lower_bound(first, samples.end(), to, before);
    return samples.subspan(static_cast<std::size_t>(first - samples.begin()),
                           static_cast<std::size_t>(behind - first));
}

std::span<const Sample> since(std::span<const Sample> samples, double from)
{
    const auto first = std::lower_bound(samples.begin(), samples.end(), from,
                                        [](const Sample& sample, double time) { return sample.time < time; });
    return samples.subspan(static_cast<std::size_t>(first - samples.begin()));
}

double median(std::vector<double>& values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1)
        return *middle;
    return (*middle + *std::max_element(values.begin(), middle)) / 2.0;
}

/// The first of kInARow samples that all hold; none if there are not so many.
template <class Holds>
std::optional<double> firstOfSeveral(std::span<const Sample> samples, const Holds& holds)
{
    std::size_t inARow = 0;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        inARow = holds(samples[i]) ? inARow + 1 : 0;
        if (inARow == kInARow)
            return samples[i + 1 - kInARow].time;
    }
    return std::nullopt;
}

} // namespace

std::optional<Level> levelOf(std::span<const Sample> samples, double from, double to)
{
    const auto chosen = within(samples, from, to);
    if (chosen.size() < kFewestForLevel)
        return std::nullopt;
    std::vector<double> values(chosen.size());
    std::transform(chosen.begin(), chosen.end(), values.begin(), [](const Sample& s) { return s.rate; });
    Level level;
    level.rate = median(values);
    for (double& value : values)
        value = std::abs(value - level.rate);
    level.noise = kSigmaOfMedianDistance * median(values);
    return level;
}

std::optional<Level> backgroundBefore(std::span<const Sample> samples, double start)
{
    if (const auto level = levelOf(samples, start - kBackgroundWindow, start))
        return level;
    const auto before = within(samples, start - kLongestBackgroundWindow, start);
    if (before.size() < kFewestForLevel)
        return std::nullopt;
    return levelOf(samples, before[before.size() - kFewestForLevel].time, start);
}

double riseThreshold(const Level& background)
{
    return background.rate +
           std::max(kNoiseFactor * background.noise, kLeastShare * std::abs(background.rate));
}

bool isBack(const Level& background, double now)
{
    return now <= riseThreshold(background);
}

std::optional<double> timeToFall(std::span<const Sample> samples, double from, double level)
{
    const auto at =
        firstOfSeveral(since(samples, from), [&](const Sample& sample) { return sample.rate <= level; });
    return at ? std::optional(*at - from) : std::nullopt;
}

std::optional<double> fallTime(std::span<const Sample> samples, double from, const Level& background)
{
    const auto falling = since(samples, from);
    if (falling.empty())
        return std::nullopt;
    const double excess = falling.front().rate - background.rate;
    if (!(excess > 0.0))
        return std::nullopt;
    // ln(rate − background) over time is a straight line. The scatter of a logarithm grows as the excess
    // falls: each sample weighs as the square of its excess.
    double weights = 0.0;
    double times = 0.0;
    double logs = 0.0;
    double timesSquared = 0.0;
    double timesLogs = 0.0;
    std::size_t count = 0;
    for (const Sample& sample : falling) {
        const double share = (sample.rate - background.rate) / excess;
        if (share < kFallTo)
            break;
        if (share > kFallFrom)
            continue;
        const double time = sample.time - from;
        const double weight = share * share;
        const double log = std::log(share);
        weights += weight;
        times += weight * time;
        logs += weight * log;
        timesSquared += weight * time * time;
        timesLogs += weight * time * log;
        ++count;
    }
    const double spread = weights * timesSquared - times * times;
    if (count < kFewestForLevel || !(spread > 0.0))
        return std::nullopt;
    const double slope = (weights * timesLogs - times * logs) / spread;
    return slope < 0.0 ? std::optional(-1.0 / slope) : std::nullopt;
}

ResponseFigures responseFigures(std::span<const Sample> samples, double start, std::optional<double> end)
{
    ResponseFigures figures;
    figures.background = backgroundBefore(samples, start);
    const auto sprayed = since(samples, start);
    if (sprayed.empty())
        return figures;
    figures.highest = *std::max_element(sprayed.begin(), sprayed.end(),
                                        [](const Sample& a, const Sample& b) { return a.rate < b.rate; });
    if (!figures.background)
        return figures;
    const double threshold = riseThreshold(*figures.background);
    if (const auto rise =
            firstOfSeveral(sprayed, [&](const Sample& sample) { return sample.rate > threshold; }))
        figures.delay = *rise - start;
    // Without a rise there is nothing to clear.
    if (!figures.delay || !end)
        return figures;
    const double from = std::max(*end, figures.highest->time);
    if (const auto back = timeToFall(samples, from, threshold))
        figures.cleanUp = from + *back - *end;
    figures.fallTime = fallTime(samples, from, *figures.background);
    return figures;
}

} // namespace sealwalk::feed
