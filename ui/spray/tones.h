// SPDX-License-Identifier: GPL-3.0-or-later
// The sounds of the spray stage, made by rule instead of stored: short, plain, and told apart by their course
// even through hearing protection.
#pragma once

#include "ui/spray/spray_sound.h"

#include <cstdint>
#include <span>
#include <vector>

namespace sealwalk::ui {

/// Samples per second of everything here.
inline constexpr int kSampleRate = 44'100;

/// One note: a pitch held for a while, then silence.
struct Note
{
    double hertz = 1000.0; ///< 600 … 1800: below, hall noise covers it; above, worn hearing misses it
    double lasts = 0.1;    ///< s, sounding
    double rest = 0.0;     ///< s, silent afterwards
    double fadesTo = 1.0;  ///< share of the loudness left at its end: 1 an even tone, near 0 a bell
    double overtone = 0.0; ///< share of the octave above in it
};

/// The notes of a sound, at most 0.4 s in all.
std::span<const Note> notesOf(SpraySound sound);

/// The sound as signed 16-bit samples, one channel, kSampleRate; starts and ends in silence.
std::vector<std::int16_t> samplesOf(SpraySound sound);

} // namespace sealwalk::ui
