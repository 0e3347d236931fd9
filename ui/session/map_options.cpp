// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/map_options.h"

#include "core/report/shown_unit.h"

namespace sealwalk::ui {

report::MapOptions mapOptions(const JobSession& session)
{
    report::MapOptions options = report::mapOptions(report::shownUnit(session.job().setup));
    options.now = Timestamp::now();
    for (const storage::OpenRepair& left : session.repairsLeftOpen())
        options.carried.push_back(left.repair);
    options.smallestDetectable = report::worstDetectable(session.job(), session.object());
    return options;
}

} // namespace sealwalk::ui
