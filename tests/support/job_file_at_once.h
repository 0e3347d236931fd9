// SPDX-License-Identifier: GPL-3.0-or-later
// Job files read and taken in one after the other, as the window does with a thread in between.
#pragma once

#include "ui/session/job_files.h"
#include "ui/session/job_session.h"

namespace sealwalk::tests {

inline Result<transfer::TakenIn> takeJobFile(ui::JobSession& session, const std::filesystem::path& file)
{
    return ui::readJobFile(file).and_then(
        [&](transfer::Checked checked) { return ui::takeIn(session, file, std::move(checked)); });
}

inline Status writeOpenJob(const ui::JobSession& session, const std::filesystem::path& file)
{
    return ui::writeJobFile(session.historyFile(), session.job().id, file);
}

} // namespace sealwalk::tests
