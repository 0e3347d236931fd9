// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_alone.h"

#include <QCoreApplication>
#include <QStringList>

namespace sealwalk::ui {

namespace {

constexpr qsizetype kNamed = 8; // more are counted

QString tr(const char* text)
{
    return QCoreApplication::translate("sealwalk::ui", text);
}

QString numbered(const QStringList& numbers)
{
    return numbers.size() > kNamed ? tr("%1 of them").arg(numbers.size())
                                   : numbers.join(QStringLiteral(", "));
}

} // namespace

QString aloneWords(const analysis::Comparison& comparison, const model::Job& before, const model::Job& after)
{
    QStringList then;
    QStringList now;
    const auto add = [](QStringList& to, const model::Sketch& sketch, model::PointId id) {
        if (const model::TestPoint* point = sketch.point(id))
            to << QString::number(point->number);
    };
    for (const analysis::ComparedPoint& point : comparison.points) {
        if (point.match.before && !point.match.after)
            add(then, before.sketch, *point.match.before);
        if (point.match.after && !point.match.before)
            add(now, after.sketch, *point.match.after);
    }
    QStringList said;
    if (!then.isEmpty())
        said << tr("Points only in job %1: %2.").arg(before.number).arg(numbered(then));
    if (!now.isEmpty())
        said << tr("Points only in job %1: %2.").arg(after.number).arg(numbered(now));
    return said.join(QLatin1Char(' '));
}

} // namespace sealwalk::ui
