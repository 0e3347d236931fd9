// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/continuation_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace sealwalk::ui {

namespace {

struct Words
{
    Q_DECLARE_TR_FUNCTIONS(ContinuationWords)
};

} // namespace

QString partInWords(exchange::Part part)
{
    switch (part) {
    case exchange::Part::Head:
        return Words::tr("number, object or day of opening");
    case exchange::Part::Setup:
        return Words::tr("set-up");
    case exchange::Part::Sketch:
        return Words::tr("sketch");
    case exchange::Part::Rounds:
        return Words::tr("rounds");
    case exchange::Part::RoundOrder:
        return Words::tr("order of a round");
    case exchange::Part::ClosedRounds:
        return Words::tr("rounds closed");
    case exchange::Part::Readings:
        return Words::tr("readings");
    case exchange::Part::Voids:
        return Words::tr("void marks");
    case exchange::Part::Calibrations:
        return Words::tr("system checks");
    case exchange::Part::Backgrounds:
        return Words::tr("background watches");
    case exchange::Part::RiseTests:
        return Words::tr("pressure-rise tests");
    case exchange::Part::VoidMeasurements:
        return Words::tr("void marks of measurements");
    case exchange::Part::Repairs:
        return Words::tr("repairs");
    case exchange::Part::Judgements:
        return Words::tr("judgements");
    case exchange::Part::Concessions:
        return Words::tr("concessions");
    case exchange::Part::Submitted:
        return Words::tr("submitted");
    case exchange::Part::Returned:
        return Words::tr("sent back");
    case exchange::Part::Approved:
        return Words::tr("approved");
    case exchange::Part::Remarks:
        return Words::tr("remarks");
    case exchange::Part::Amendments:
        return Words::tr("amendments");
    case exchange::Part::Review:
        return Words::tr("turns of the review");
    case exchange::Part::Signatures:
        return Words::tr("signatures");
    }
    return {};
}

QString aheadInWords(const exchange::Continuation& continuation)
{
    QStringList words;
    for (const exchange::Gain& gain : continuation.added) {
        const bool isTurn = gain.part == exchange::Part::Submitted || gain.part == exchange::Part::Returned ||
                            gain.part == exchange::Part::Approved;
        // "readings: 12": one form for any count.
        words.push_back(
            isTurn ? partInWords(gain.part)
                   : Words::tr("%1: %2", "readings: 12").arg(partInWords(gain.part)).arg(gain.count));
    }
    for (const exchange::Part part : continuation.replaced)
        words.push_back(Words::tr("%1 changed", "set-up changed").arg(partInWords(part)));
    return words.join(QStringLiteral(", "));
}

} // namespace sealwalk::ui
