// SPDX-License-Identifier: GPL-3.0-or-later
// What earlier jobs of the open job's object left to be made good.
#pragma once

#include <QString>

namespace sealwalk::ui {

class JobSession;

/// One sentence that names the temporary repairs of earlier jobs that are still open, those overdue first;
/// empty when there is none.
QString temporaryRepairsNote(const JobSession& session);

/// One sentence for the start: temporary repairs of the whole history that are past their date; empty when
/// there is none.
QString overdueRepairsNote(const JobSession& session);

} // namespace sealwalk::ui
