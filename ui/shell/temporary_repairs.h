// SPDX-License-Identifier: GPL-3.0-or-later
// What earlier jobs left to be made good: temporary repairs, and concessions at their end.
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

/// One sentence that names concessions which have ended or end within a month and about which nothing was
/// done since: with a job those of its object's other jobs, otherwise those of the whole history.
QString endingConcessionsNote(const JobSession& session);

} // namespace sealwalk::ui
