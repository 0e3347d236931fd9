// SPDX-License-Identifier: GPL-3.0-or-later
// How maps of the open job are drawn in its unit.
#pragma once

#include "core/report/map_builder.h"
#include "ui/session/job_session.h"

namespace sealwalk::ui {

report::MapOptions mapOptions(const JobSession& session, bool echoesTakenOut);

} // namespace sealwalk::ui
