// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/tones.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace sealwalk::ui {

namespace {

constexpr double kEdge = 0.006; // s; a tone that starts at once clicks
constexpr double kLoudness = 0.7;

constexpr std::array kStored{Note{880.0, 0.09, 0.02}, Note{1320.0, 0.13}};
constexpr std::array kStoredOver{Note{700.0, 0.10, 0.02}, Note{1500.0, 0.10, 0.02}, Note{700.0, 0.12}};
constexpr std::array kGo{Note{850.0, 0.40, 0.0, 0.08, 0.35}};
constexpr std::array kDwellOver{Note{1180.0, 0.10, 0.06}, Note{1180.0, 0.10}};
constexpr std::array kHold{Note{640.0, 0.09, 0.05}, Note{640.0, 0.09, 0.05}, Note{640.0, 0.09}};
constexpr std::array kFeedLost{Note{1600.0, 0.10, 0.02}, Note{1130.0, 0.10, 0.02}, Note{800.0, 0.14}};
constexpr std::array kAttention{Note{1400.0, 0.09, 0.02}, Note{900.0, 0.09, 0.02}, Note{1400.0, 0.12}};
constexpr std::array kRefused{Note{620.0, 0.14, 0.0, 0.02}};

void append(std::vector<std::int16_t>& samples, const Note& note)
{
    const auto count = static_cast<std::size_t>(std::lround(note.lasts * kSampleRate));
    for (std::size_t i = 0; i < count; ++i) {
        const double t = static_cast<double>(i) / kSampleRate;
        const double left = note.lasts - t;
        const double edge = std::min({1.0, t / kEdge, left / kEdge});
        const double envelope =
            0.5 * (1.0 - std::cos(std::numbers::pi * edge)) * std::pow(note.fadesTo, t / note.lasts);
        const double phase = 2.0 * std::numbers::pi * note.hertz * t;
        const double wave = (std::sin(phase) + note.overtone * std::sin(2.0 * phase)) / (1.0 + note.overtone);
        samples.push_back(static_cast<std::int16_t>(
            std::lround(kLoudness * envelope * wave * std::numeric_limits<std::int16_t>::max())));
    }
    samples.insert(samples.end(), static_cast<std::size_t>(std::lround(note.rest * kSampleRate)), 0);
}

} // namespace

std::span<const Note> notesOf(SpraySound sound)
{
    switch (sound) {
    case SpraySound::Stored:
        return kStored;
    case SpraySound::StoredOver:
        return kStoredOver;
    case SpraySound::Go:
        return kGo;
    case SpraySound::DwellOver:
        return kDwellOver;
    case SpraySound::Hold:
        return kHold;
    case SpraySound::FeedLost:
        return kFeedLost;
    case SpraySound::Refused:
        return kRefused;
    case SpraySound::Attention:
        return kAttention;
    }
    return kRefused;
}

std::vector<std::int16_t> samplesOf(SpraySound sound)
{
    std::vector<std::int16_t> samples;
    for (const Note& note : notesOf(sound))
        append(samples, note);
    samples.push_back(0);
    return samples;
}

} // namespace sealwalk::ui
