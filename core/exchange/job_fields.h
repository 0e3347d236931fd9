// SPDX-License-Identifier: GPL-3.0-or-later
// How each part of a job is spelt in JSON: key names, with their SI unit where there is one. These names are
// the job file's format; JOB_FILE.md lists them. Sources of core/exchange only.
#pragma once

#include "core/exchange/json_fields.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

namespace sealwalk::exchange {

// job_fields_sketch.cpp
void describe(Fields& f, geometry::FreePath& path);
void describe(Fields& f, model::Underlay& underlay);
void describe(Fields& f, model::Sheet& sheet);
void describe(Fields& f, model::Joint& joint);
void describe(Fields& f, model::TestPoint& point);
void describe(Fields& f, model::Sketch& sketch);

/// "shape" names the kind; the other keys are that kind's own.
template <>
struct Codec<geometry::Shape>
{
    static nlohmann::json write(const geometry::Shape& shape);
    static void read(const nlohmann::json& from, geometry::Shape& into, const Place& place,
                     Complaints& complaints);
};

// job_fields_measurement.cpp
void describe(Fields& f, model::ReferenceLeak& leak);
void describe(Fields& f, model::Calibration& calibration);
void describe(Fields& f, model::BackgroundWatch& watch);
void describe(Fields& f, model::RiseTest& test);
void describe(Fields& f, model::MeasurementVoid& mark);
void describe(Fields& f, model::Reading& reading); ///< all but `sequence`, which its place in the list gives
void describe(Fields& f, model::VoidMark& mark);
void describe(Fields& f, model::Round& round);

// job_fields_review.cpp
void describe(Fields& f, model::Repair& repair);
void describe(Fields& f, model::Judgement& judgement);
void describe(Fields& f, model::Concession& concession);
void describe(Fields& f, model::ReviewEntry& entry);
void describe(Fields& f, model::Signature& signature); ///< all but `object`, a document of its own

// job_fields_job.cpp
void describe(Fields& f, model::DecadeScale& scale);
void describe(Fields& f, model::TestObject& object);
void describe(Fields& f, model::CautionTick& tick);
void describe(Fields& f, model::Instrument& instrument);
void describe(Fields& f, model::Setup& setup);
void describe(Fields& f, model::Job& job); ///< all but `state`, which `review` gives, and `signatures`

} // namespace sealwalk::exchange
