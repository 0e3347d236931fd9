// SPDX-License-Identifier: GPL-3.0-or-later
// A calibration, background watch or pressure rise that proves nothing is made void, with a reason.
#pragma once

#include "core/base/error.h"
#include "core/model/measurement.h"

#include <QString>

class QWidget;

namespace sealwalk::ui {

class JobSession;

/// Asks why, and stores it. By value: while it asks, another window's work may have replaced the job. Nothing
/// happens when it is void already, the job is not open for work, or the question is left.
/// @param what  "pressure rise, as left, 2026-03-11 16:00"
Status askAndVoid(JobSession& session, Uuid measurement, const QString& what, QWidget* parent);

/// "Void: gauge not zeroed – T. Weaver, 2026-03-11 16:40. It stays on record and counts for nothing."
QString voidText(const model::MeasurementVoid& mark);

} // namespace sealwalk::ui
