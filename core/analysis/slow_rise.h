// SPDX-License-Identifier: GPL-3.0-or-later
// What the delay to the first rise says: a leak, a slow path, or helium that permeates through an elastomer.
#pragma once

#include "core/analysis/survey.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Time lag of permeation through a wall of `thickness`: l^2/(6D).
/// @param diffusivity  m²/s; helium in fluoroelastomer at room temperature 1e-10 … 1e-9
/// Source: Daynes (1920), Barrer (1939); Crank, The Mathematics of Diffusion, section 4.3.3.
Duration permeationTimeLag(Length thickness, double diffusivity);

/// Share of its final rate that permeation through a wall has reached `after` the helium came: 0 … 1.
/// Source: Crank, The Mathematics of Diffusion, equation 4.24a differentiated.
double permeationBuildUp(Length thickness, double diffusivity, Duration after);

enum class SlowRise
{
    Prompt,     ///< no delay recorded, or one that fits the response
    SlowPath,   ///< later than a leak answers, sooner than a seal permeates: series leak, or helium that
                ///< drifted
    Suspected,  ///< as late as permeation; a short burst has to tell
    Permeation, ///< as late as permeation, and a short burst got no answer
};

/// Whether a first rise after `delay` is later than a leak where the helium went answers, with a detector
/// that takes `response` to 63 %, and too soon for permeation: a leak in series, or helium that drifted.
bool isLate(Duration delay, Duration response);

/// Whether it is as late as helium through an elastomer: a minute, or ten responses where those are longer.
bool isAsLateAsPermeation(Duration delay, Duration response);

/// Weighs the readings of one point that are not void. `noise` of each tells whether a burst answered.
SlowRise slowRise(const Survey& survey, int point, LeakRate noise);

/// A sentence for the finding; empty for Prompt. `stronger` are points whose leak, larger and prompt, the
/// helium may have drifted to.
std::string slowRiseWords(SlowRise rise, Duration delay, const std::vector<int>& stronger = {});

/// The same for a point that owes its answer to other leaks; empty unless it is late.
std::string lateEchoWords(SlowRise rise, Duration delay);

/// The longest delay recorded at a point; 0 s when there is none.
Duration longestDelay(const Survey& survey, int point);

} // namespace sealwalk::analysis
