// SPDX-License-Identifier: GPL-3.0-or-later
// Helium outside the chamber: how much the nozzle gives, how little of it arrives, and where else it goes.
#pragma once

#include "core/quantities/kinds.h"

namespace sealwalk::flow {

/// Diffusion of helium in air at 20 °C and 1 atm, m²/s. CRC Handbook, Diffusion in Gases (after Marrero and
/// Mason 1972): 0.697 cm²/s.
inline constexpr double kHeliumInAirDiffusion = 6.97e-5;
/// Helium in natural air, mole fraction. U.S. Standard Atmosphere 1962/1976.
inline constexpr double kNaturalHelium = 5.24e-6;
/// Mole fraction at a distance x from the tip is spread·q/(D·x): 1/(4 pi) for pure diffusion, the cautious
/// default.
inline constexpr double kDiffusionSpread = 0.079577471545947673;
/// Kinematic viscosity of air at 20 °C and 1 atm, m²/s, textbook value.
inline constexpr double kAirKinematicViscosity = 1.511e-5;

/// Spray volume flow of `perSecond` bubbles of this diameter in a glass of water.
PumpingSpeed bubbleFlow(double perSecond, Length bubble);
/// Diameter at which a bubble leaves a nozzle slowly fed (Tate): surface tension N/m, density kg/m³.
Length detachedBubble(Length bore, double surfaceTension, double density);

/// Mole fraction of helium at `distance` (above zero) from the tip, at most 1. `flow` at room state.
double concentrationAt(PumpingSpeed flow, Length distance, double spread = kDiffusionSpread);
/// Where the mole fraction has fallen to `fraction`, above 0.
Length distanceFor(double fraction, PumpingSpeed flow, double spread = kDiffusionSpread);
/// Spread of a laminar round jet, (1 + 2 Sc)/(8 pi Sc), and of a plume with Sc = 1, 1/(3 pi). Similarity
/// solutions of Schlichting and Yih, from memory.
double laminarJetSpread(double schmidt);
double laminarPlumeSpread();
double schmidtNumber();
/// g (1 - M_He/M_air), m/s², upwards.
double reducedGravity();
/// Beyond it buoyancy carries the helium and not the jet: momentum^(3/4)/buoyancy^(1/2).
Length jetToPlumeLength(PumpingSpeed flow, Length bore);
/// Reynolds number of helium in the bore; a jet is laminar below about 2000. `flow` at room state and 1 atm.
double jetReynolds(PumpingSpeed flow, Length bore, Temperature temperature);
/// Mole fraction on the axis of a turbulent jet, beyond ten bores; decay 5 ± 1 (Chen and Rodi 1980, from
/// memory).
double turbulentJetFraction(Length distance, Length bore, double decay = 5.0);

/// Helium in a mixed room, mole fraction above natural, after `time` of spraying; `changes` of air per
/// second, 0 or more.
double roomExcess(PumpingSpeed flow, Volume room, double changes, Duration time);
/// The same after a long time; `changes` above 0.
double roomExcessSteady(PumpingSpeed flow, Volume room, double changes);
/// What another leak shows from helium in the room: its rate at pure helium times the mole fraction.
LeakRate strayResponse(LeakRate pureHelium, double excess);
/// Helium that enters with the air of all leaks, laminar; molecular ones show sqrt(M_air/M_He) times it.
LeakRate naturalBackground(LeakRate air);
LeakRate naturalBackgroundMolecular(LeakRate air);

} // namespace sealwalk::flow
