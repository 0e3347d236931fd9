// SPDX-License-Identifier: GPL-3.0-or-later
// From belief to a stated range: what no curve fit sees is added, and it is decided whether the record
// carries the difference between leak and outgassing.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_ensemble.h"

namespace sealwalk::analysis {

struct RangeOptions
{
    bool temperatureLogged = false;
    double volumeUncertainty = 0.0; ///< relative, standard
};

/// In Pa over the length of the record.
struct LeakRange
{
    double low = 0.0;
    double middle = 0.0;
    double high = 0.0;
    double thermal = 0.0; ///< standard uncertainty for the room's temperature, part of the above
    double rise = 0.0;    ///< of the whole record
    RiseVerdict verdict = RiseVerdict::NotSeparable;
};

LeakRange leakRange(const CompressedRise& rise, const RisePosterior& posterior, const RangeOptions& options);

/// The pressure falls by more than noise, gauge and room explain: no gas coming in does that.
bool fallsBeyondDoubt(const CompressedRise& rise, const RangeOptions& options);

/// How much longer the test would have to run until it separates, if the sources go on as now believed: the
/// record is carried on without noise as the weightiest readings have it and judged again, until half their
/// belief is content. At least as long again, for a law seen in part is known badly; nothing when even six
/// times the length would not do.
std::optional<Duration> enoughLonger(const CompressedRise& rise, const RisePosterior& posterior,
                                     const RangeOptions& options);

} // namespace sealwalk::analysis
