// SPDX-License-Identifier: GPL-3.0-or-later
// What names what. Ids are UUIDs, so that records keep their identity when they move to another history.
#pragma once

#include "core/base/uuid.h"

namespace sealwalk::model {

using ObjectId = Id<struct ObjectIdTag>;
using SheetId = Id<struct SheetIdTag>;
using JointId = Id<struct JointIdTag>;
using PointId = Id<struct PointIdTag>;
using JobId = Id<struct JobIdTag>;
using RoundId = Id<struct RoundIdTag>;
using ReadingId = Id<struct ReadingIdTag>;
using CalibrationId = Id<struct CalibrationIdTag>;
using BackgroundId = Id<struct BackgroundIdTag>;
using RiseTestId = Id<struct RiseTestIdTag>;
using MeasurementId = Id<struct MeasurementIdTag>; ///< a calibration, background watch or pressure rise
using RepairId = Id<struct RepairIdTag>;
using JudgementId = Id<struct JudgementIdTag>;
using ConcessionId = Id<struct ConcessionIdTag>;
using ReviewId = Id<struct ReviewIdTag>;
using SignatureId = Id<struct SignatureIdTag>;
using PersonId = Id<struct PersonIdTag>;

} // namespace sealwalk::model
