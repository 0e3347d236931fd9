// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/shown.h"

#include "core/report/shown_unit.h"
#include "ui/widgets/number_display.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

Unit unitNamed(const std::string& id)
{
    return unitOf(leakRateUnit(id).value_or(LeakRateUnit::MillibarLitrePerSecond));
}

} // namespace

Unit shownUnit(const model::Setup& setup)
{
    return unitNamed(setup.unit);
}

Unit displayUnit(const model::Setup& setup)
{
    return unitNamed(setup.detectorUnit);
}

FlowBasis basisOf(const model::Setup& setup)
{
    return report::flowBasis(setup);
}

double numberShown(LeakRate rate, const Unit& unit, const model::Setup& setup)
{
    return numberIn(rate, unit, basisOf(setup)).value_or(0.0);
}

QString richRate(LeakRate rate, const Unit& unit, const model::Setup& setup)
{
    return rateParts(numberShown(rate, unit, setup)).rich();
}

QString plainRate(LeakRate rate, const Unit& unit, const model::Setup& setup)
{
    return rateParts(numberShown(rate, unit, setup)).plain();
}

QString unitText(const Unit& unit)
{
    return QCoreApplication::translate("Shown", "%1 He").arg(text(unit.symbol));
}

QString joinedNotes(const QStringList& notes)
{
    QString all;
    for (const QString& note : notes)
        all += (all.isEmpty()                    ? QString()
                : all.endsWith(QLatin1Char('.')) ? QStringLiteral(" ")
                                                 : QStringLiteral("; ")) +
               note;
    return all;
}

QString secondsText(Duration time)
{
    const double seconds = inSeconds(time);
    return QCoreApplication::translate("Shown", "%1 s").arg(figureText(seconds, seconds < 10.0 ? 2 : 3));
}

QString text(const std::string& utf8)
{
    return QString::fromStdString(utf8);
}

} // namespace sealwalk::ui
