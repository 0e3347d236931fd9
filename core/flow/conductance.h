// SPDX-License-Identifier: GPL-3.0-or-later
// Conductances of apertures, tubes and hoses. Diameters and lengths are above zero, pressures not negative.
// Formulas: Jousten (ed.), Handbook of Vacuum Technology; O'Hanlon, A User's Guide to Vacuum Technology; from
// memory, numbers checked against their own integral equation or textbook coefficients in the tests.
#pragma once

#include "core/flow/gas.h"

#include <span>

namespace sealwalk::flow {

/// A · mean speed / 4, of a thin aperture of `area` m² in molecular flow.
Conductance apertureConductance(Gas gas, Temperature temperature, double area);
/// (pi/12) · mean speed · d³/L, long tube in molecular flow.
Conductance longTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length);
/// Of molecules that enter a tube of this length over radius, the share that leaves at the other end.
/// Santeler, J. Vac. Sci. Technol. A 4 (1986) 338: within 0.7 % of the exact solution.
double transmissionSanteler(double lengthOverRadius);
/// Dushman's older formula, high by up to 12 % near a length of four radii.
double transmissionDushman(double lengthOverRadius);
/// Aperture times transmission (Santeler), any length, molecular flow.
Conductance shortTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length);
/// pi d^4 p/(128 eta L), laminar, `mean` the mean of the end pressures.
Conductance laminarTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length,
                                   Pressure mean);
/// Knudsen's interpolation at the mean pressure. With ends further apart than 3 : 1 use hose.h instead.
Conductance knudsenTubeConductance(Gas gas, Temperature temperature, Length diameter, Length length,
                                   Pressure mean);

/// Length to add to a tube of `diameter` for a bend of `degrees`: 1.33 · d · degrees/180.
Length bendLength(Length diameter, double degrees);

/// 1/(sum of 1/C); every conductance above zero, at least one.
Conductance inSeries(std::span<const Conductance> conductances);
Conductance inParallel(std::span<const Conductance> conductances);
/// What a pump does at the far end of `conductance`.
PumpingSpeed speedThrough(PumpingSpeed pump, Conductance conductance);

} // namespace sealwalk::flow
