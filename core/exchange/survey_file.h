// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a survey file, format "sealwalk-survey-1" (JSON). Strict: unknown or doubled keys, numbers out of
// range, readings of unknown points and times that run backwards are refused with a sentence that says where.
#pragma once

#include "core/analysis/survey.h"
#include "core/base/result.h"

#include <string>
#include <string_view>

namespace sealwalk::exchange {

/// Reads a survey from JSON text. Joints whose name starts with "set-up" belong to the set-up. Errors:
/// BadInput; NewerVersion for a later format number.
Result<analysis::Survey> parseSurvey(std::string_view text);

/// Reads a survey file. Errors as parseSurvey, with the file named in front; NotFound, MachineFailed.
Result<analysis::Survey> readSurveyFile(const std::string& path);

} // namespace sealwalk::exchange
