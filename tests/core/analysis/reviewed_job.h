// SPDX-License-Identifier: GPL-3.0-or-later
// A job that answers every question of the review, and how one of them is asked.
#pragma once

#include "core/analysis/job_view.h"
#include "core/analysis/review_checks.h"
#include "core/analysis/round_summary.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <string_view>

namespace sealwalk::analysis {

using tests::addValue;

/// A job that answers every question: four quiet points, all papers in order.
inline model::Job goodJob()
{
    model::Job job = tests::ringJob(4);
    for (model::Sheet& sheet : job.sketch.sheets)
        sheet.seenFrom = "the front";
    job.sketch.joints.front().isSetup = true;
    job.setup.procedure = "LT-7";
    job.setup.limitAgreedBy = "A. Owner";
    job.setup.dried = true;
    for (int point = 1; point <= 4; ++point) {
        addValue(job, point, 1e-10);
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
        job.readings.back().dwell = seconds(8.0);
    }
    tests::calibrate(job);
    job.calibrations.front().leak.certificate = "C-1";
    model::Calibration after = tests::systemCheck(job.readings.back().at, 1.0);
    after.at.utcMilliseconds += 60'000;
    after.moment = model::CalibrationMoment::After;
    after.leak.certificate = "C-1";
    job.calibrations.push_back(after);
    return job;
}

inline model::TestObject object()
{
    model::TestObject made;
    made.name = "Vessel";
    made.tag = "V-1";
    made.volume = litres(100.0);
    return made;
}

inline ReviewOptions options()
{
    ReviewOptions made;
    model::Person tester;
    tester.name = "T. Tester";
    tester.qualification = "level 2";
    made.people.push_back(tester);
    return made;
}

inline ReviewCheck check(const model::Job& job, std::string_view word, const ReviewOptions& with = options())
{
    const auto findings = summarise(job, object(), Standing::AsLeft);
    for (const ReviewCheck& each : reviewChecks(job, object(), findings, with))
        if (each.word == word)
            return each;
    ADD_FAILURE() << "no such check: " << word;
    return {};
}

} // namespace sealwalk::analysis
