// SPDX-License-Identifier: GPL-3.0-or-later
// Invented objects and jobs for tests of the history.
#pragma once

#include "core/model/job.h"
#include "core/model/picture.h"
#include "core/model/test_object.h"

#include <string>

namespace sealwalk::tests {

/// An id that is the same in every run: `n` in its last bytes.
template <class IdType>
IdType fixedId(int n)
{
    Uuid::Bytes bytes{};
    bytes[0] = 0x5e;
    bytes[6] = 0x40;
    bytes[8] = 0x80;
    bytes[14] = static_cast<std::uint8_t>(n / 256);
    bytes[15] = static_cast<std::uint8_t>(n % 256);
    return IdType(Uuid(bytes));
}

Timestamp moment(int minute);
model::TestObject sampleObject();
/// One sheet, two joints, points 1 … `points` on the first joint.
model::Sketch sampleSketch(int points);
/// Every field of every record holds something that is not its default.
model::Job wholeJob();
/// The same, done for somebody and watched by somebody: the fields of version 3.
model::Job wholeJobWithParties();
/// The same, with what was taped off, whose echo a point was taken for, and a background read by eye: the
/// fields of version 4.
model::Job wholeJobWithSaid();
/// The same with a pressure rise that is void.
model::Job wholeJobWithVoidMeasurement();
model::Person samplePerson();
model::Picture samplePicture();
model::Reading sampleReading(model::RoundId round, model::PointId point);
model::ReviewEntry reviewEntry(model::ReviewStep step);
model::Signature sampleSignature();

} // namespace sealwalk::tests
