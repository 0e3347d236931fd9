// SPDX-License-Identifier: GPL-3.0-or-later
// How maps of the open job are drawn: in its unit, down to what could be seen.
#pragma once

#include "core/report/map_builder.h"
#include "ui/session/job_session.h"

namespace sealwalk::ui {

/// For the job as it stands now; only with a job.
report::MapOptions mapOptions(const JobSession& session);

} // namespace sealwalk::ui
