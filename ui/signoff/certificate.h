// SPDX-License-Identifier: GPL-3.0-or-later
// What a signed job says under its review: who signed, what they stated, and whether it still is what they
// signed.
#pragma once

#include "core/model/job.h"

#include <QString>

#include <filesystem>

namespace sealwalk::ui {

struct Certificate
{
    model::JobId job;
    bool holds = false;
    QString says;  ///< one line; when it does not hold, what was changed
    QString claim; ///< the signed statement with its fingerprint, and the amendments
};

/// Reads the job from its history and checks every signature; a job of many turns takes a while, so this is
/// for a thread of its own.
Certificate readCertificate(const std::filesystem::path& history, model::JobId job);

} // namespace sealwalk::ui
