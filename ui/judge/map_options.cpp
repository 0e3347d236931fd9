// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/map_options.h"

#include "core/analysis/job_view.h"
#include "core/analysis/spray_timing.h"
#include "core/quantities/leak_rate_unit.h"

namespace sealwalk::ui {

report::MapOptions mapOptions(const JobSession& session, bool echoesTakenOut)
{
    report::MapOptions options;
    options.echoesTakenOut = echoesTakenOut;
    options.now = Timestamp::now();
    if (const auto unit = leakRateUnit(session.job().setup.unit)) {
        options.shownPerSi = numberIn(pascalCubicMetresPerSecond(1.0), *unit).value_or(options.shownPerSi);
        options.unit = unitOf(*unit).symbol;
    }
    const auto timing = analysis::sprayTiming(session.job(), session.object());
    for (const analysis::PlaceSensitivity& place : analysis::sensitivities(session.job(), timing.dwell))
        if (place.smallestDetectable)
            options.smallestDetectable =
                options.smallestDetectable ? std::max(*options.smallestDetectable, *place.smallestDetectable)
                                           : *place.smallestDetectable;
    return options;
}

} // namespace sealwalk::ui
