// SPDX-License-Identifier: GPL-3.0-or-later
// What the review's checks share. Inner header of review_checks.
#pragma once

#include "core/analysis/review_checks.h"

#include <functional>
#include <unordered_map>

namespace sealwalk::analysis::detail {

struct ReviewGround
{
    const model::Job& job;
    const model::TestObject& object;
    const std::vector<PointFinding>& findings;
    const ReviewOptions& options;

    [[nodiscard]] std::vector<model::PointId>
    pointsWhere(const std::function<bool(const PointFinding&)>& wanted) const;
    /// "points 3, 17 and 20"; long lists are cut with their count.
    [[nodiscard]] std::string text(const std::vector<model::PointId>& points) const;
};

struct Answer
{
    CheckState state = CheckState::InOrder;
    std::string sentence;
    std::vector<model::PointId> points = {};
    std::vector<Answer> also = {}; ///< what else is open on the question
};

/// One answer of all that is open on a question, the gravest first; `inOrder` when nothing is.
Answer answerOf(std::vector<Answer> open, Answer inOrder);

// By subject; each answers the question of its name.
Answer rightObject(const ReviewGround&);
Answer limitAgreed(const ReviewGround&);
Answer referenceInDate(const ReviewGround&);
Answer checkedBeforeAndAfter(const ReviewGround&);
Answer sensitiveEnough(const ReviewGround&);
Answer backgroundQuiet(const ReviewGround&);
Answer objectDry(const ReviewGround&);
Answer deviationsApproved(const ReviewGround&);
Answer testerQualified(const ReviewGround&);
Answer sheetsReadable(const ReviewGround&);

Answer everyPointHasState(const ReviewGround&);
Answer kindsPresent(const ReviewGround&);
Answer readingsWhole(const ReviewGround&);
Answer responsesConfirmed(const ReviewGround&);
Answer permeationProven(const ReviewGround&);
Answer correctedCompared(const ReviewGround&);
Answer noOutliers(const ReviewGround&);
Answer conditionsCovered(const ReviewGround&);
Answer changesReasoned(const ReviewGround&);

Answer failuresRepaired(const ReviewGround&);
Answer temporaryOwned(const ReviewGround&);
Answer balanceMet(const ReviewGround&);
Answer comparedWithLast(const ReviewGround&);
Answer claimsNoMore(const ReviewGround&);

} // namespace sealwalk::analysis::detail
