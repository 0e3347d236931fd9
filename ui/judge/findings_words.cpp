// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/findings_model.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FindingWords", text);
}

} // namespace

QString findingWord(analysis::Finding finding)
{
    using enum analysis::Finding;
    switch (finding) {
    case Leak:
        return words(QT_TRANSLATE_NOOP("FindingWords", "leak"));
    case Shared:
        return words(QT_TRANSLATE_NOOP("FindingWords", "shared"));
    case Echo:
        return words(QT_TRANSLATE_NOOP("FindingWords", "echo"));
    case Masked:
        return words(QT_TRANSLATE_NOOP("FindingWords", "masked"));
    case Permeation:
        return words(QT_TRANSLATE_NOOP("FindingWords", "permeation"));
    case Clear:
        return words(QT_TRANSLATE_NOOP("FindingWords", "clear"));
    case BelowDetectable:
        return words(QT_TRANSLATE_NOOP("FindingWords", "below detectable"));
    case Void:
        return words(QT_TRANSLATE_NOOP("FindingWords", "void"));
    case NotAccessible:
        return words(QT_TRANSLATE_NOOP("FindingWords", "not accessible"));
    case NotTested:
        return words(QT_TRANSLATE_NOOP("FindingWords", "not tested"));
    case NotSprayed:
        return words(QT_TRANSLATE_NOOP("FindingWords", "not sprayed"));
    case OtherSource:
        return words(QT_TRANSLATE_NOOP("FindingWords", "other source"));
    case VirtualLeak:
        return words(QT_TRANSLATE_NOOP("FindingWords", "virtual leak"));
    }
    return {};
}

QString verdictWord(analysis::Verdict verdict)
{
    using enum analysis::Verdict;
    switch (verdict) {
    case Over:
        return words(QT_TRANSLATE_NOOP("FindingWords", "over"));
    case CannotSay:
        return words(QT_TRANSLATE_NOOP("FindingWords", "cannot say"));
    case Within:
        return words(QT_TRANSLATE_NOOP("FindingWords", "within"));
    case NoAnswer:
        return words(QT_TRANSLATE_NOOP("FindingWords", "no answer"));
    case NotCounted:
        return words(QT_TRANSLATE_NOOP("FindingWords", "not counted"));
    }
    return {};
}

int gravityOf(const analysis::PointFinding& finding)
{
    const bool story = finding.temporaryRepair || finding.concession || finding.awaitsRetest ||
                       finding.finding == analysis::Finding::Echo ||
                       finding.finding == analysis::Finding::Permeation;
    switch (finding.verdict) {
    case analysis::Verdict::Over:
        return 0;
    case analysis::Verdict::CannotSay:
        return 1;
    case analysis::Verdict::Within:
        return story ? 2 : 4;
    case analysis::Verdict::NotCounted:
        return 2;
    case analysis::Verdict::NoAnswer:
        return 3;
    }
    return 4;
}

} // namespace sealwalk::ui
