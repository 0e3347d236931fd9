// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/sound_player.h"
#include "ui/spray/tones.h"

#include <gtest/gtest.h>

#include <QTest>

#include <cmath>
#include <numbers>
#include <set>
#include <string>

namespace sealwalk::ui {
namespace {

constexpr SpraySound kAll[] = {SpraySound::Stored,    SpraySound::StoredOver, SpraySound::Go,
                               SpraySound::DwellOver, SpraySound::Hold,       SpraySound::FeedLost,
                               SpraySound::Refused,   SpraySound::Attention};

/// Strength of one frequency in samples (Goertzel's recurrence).
double strength(std::span<const std::int16_t> samples, double hertz)
{
    const double turn = 2.0 * std::cos(2.0 * std::numbers::pi * hertz / kSampleRate);
    double before = 0.0;
    double last = 0.0;
    for (const std::int16_t sample : samples) {
        const double next = sample + turn * last - before;
        before = last;
        last = next;
    }
    return before * before + last * last - turn * before * last;
}

/// The strongest frequency between 100 and 4000 Hz, in steps of 10.
double pitchOf(std::span<const std::int16_t> samples)
{
    double best = 100.0;
    for (double hertz = 100.0; hertz <= 4000.0; hertz += 10.0)
        if (strength(samples, hertz) > strength(samples, best))
            best = hertz;
    return best;
}

/// The pitch of each sounding stretch, measured from the samples.
std::vector<double> pitchesOf(SpraySound sound)
{
    const std::vector<std::int16_t> samples = samplesOf(sound);
    std::vector<double> pitches;
    std::size_t at = 0;
    for (const Note& note : notesOf(sound)) {
        const auto length = static_cast<std::size_t>(note.lasts * kSampleRate);
        pitches.push_back(pitchOf(std::span(samples).subspan(at, length)));
        at += length + static_cast<std::size_t>(note.rest * kSampleRate);
    }
    return pitches;
}

// Property: what is heard is what the table of sounds says, measured from the samples themselves.
TEST(Tones, LieBetween600And1800HertzAndLastAtMostTwoFifthsOfASecond)
{
    for (const SpraySound sound : kAll) {
        const auto samples = samplesOf(sound);
        EXPECT_LE(static_cast<double>(samples.size()) / kSampleRate, 0.4 + 1e-3);
        EXPECT_GE(static_cast<double>(samples.size()) / kSampleRate, 0.1);
        for (const double hertz : pitchesOf(sound)) {
            EXPECT_GE(hertz, 600.0);
            EXPECT_LE(hertz, 1800.0);
        }
    }
}

// Property: no click at either end, and loud enough to be heard without being cut off.
TEST(Tones, BeginAndEndInSilence)
{
    for (const SpraySound sound : kAll) {
        const auto samples = samplesOf(sound);
        EXPECT_EQ(samples.front(), 0);
        EXPECT_EQ(samples.back(), 0);
        const auto [low, high] = std::minmax_element(samples.begin(), samples.end());
        EXPECT_GT(*high, 10'000);
        EXPECT_LT(*high, 32'767);
        EXPECT_GT(*low, -32'768);
    }
}

// Property: the course of each is the one given to it, and no two have the same.
TEST(Tones, AreToldApartByTheirCourse)
{
    const auto course = [](SpraySound sound) {
        std::string steps;
        const auto pitches = pitchesOf(sound);
        for (std::size_t i = 1; i < pitches.size(); ++i)
            steps += pitches[i] > pitches[i - 1] + 30.0   ? 'r'
                     : pitches[i] < pitches[i - 1] - 30.0 ? 'f'
                                                          : 'e';
        return steps;
    };
    EXPECT_EQ(course(SpraySound::Stored), "r");
    EXPECT_EQ(course(SpraySound::StoredOver), "rf");
    EXPECT_EQ(course(SpraySound::DwellOver), "e");
    EXPECT_EQ(course(SpraySound::Hold), "ee");
    EXPECT_EQ(course(SpraySound::FeedLost), "ff");
    EXPECT_EQ(course(SpraySound::Attention), "fr");
    EXPECT_EQ(course(SpraySound::Go), "");
    EXPECT_EQ(course(SpraySound::Refused), "");
    // The two single ones: a bell is long, a refusal short and lower.
    EXPECT_GT(samplesOf(SpraySound::Go).size(), 2 * samplesOf(SpraySound::Refused).size());
    EXPECT_GT(pitchesOf(SpraySound::Go).front(), pitchesOf(SpraySound::Refused).front() + 100.0);
}

// Property: a machine without sound loses nothing and waits for nothing.
TEST(SoundPlayer, IsSilentWithoutADevice)
{
    SoundPlayer player("sealwalk-has-no-such-device");
    player.play(SpraySound::Stored);
    ASSERT_TRUE(QTest::qWaitFor([&] { return player.device() != SoundPlayer::Device::Untried; }));
    EXPECT_EQ(player.device(), SoundPlayer::Device::Missing);
}

// Property: every sound goes through the library's own empty device.
TEST(SoundPlayer, PlaysEverySoundThroughADevice)
{
    for (const SpraySound sound : kAll) {
        SoundPlayer player("null");
        player.play(sound);
        ASSERT_TRUE(QTest::qWaitFor([&] { return player.device() != SoundPlayer::Device::Untried; }));
        EXPECT_EQ(player.device(), SoundPlayer::Device::Works);
    }
}

} // namespace
} // namespace sealwalk::ui
