// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/edit_words.h"

#include "ui/render/core_words.h"
#include "ui/render/pattern_set.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <string>

namespace sealwalk::ui {

namespace {

// Patterns of their own and not among those of render::inWords: a name may stand in front of any of them, and
// held against every text of the core "%1 changed" would take in far too much.
constexpr const char* kEdits[] = {
    QT_TRANSLATE_NOOP("SketchEdits", "%1 drawn"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 drawn, %2 point laid"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 drawn, %2 points laid"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 drawn with its flange"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 drawn with its door"),
    QT_TRANSLATE_NOOP("SketchEdits", "row of %1 ports drawn"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 pasted"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 moved"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 turned"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 mirrored"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 copied to %2 in all"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 changed"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 grouped"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 ungrouped"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 locked"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 unlocked"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 deleted"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 retired"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 point laid on %2"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 points laid on %2"),
    QT_TRANSLATE_NOOP("SketchEdits", "point %1 added on %2"),
    QT_TRANSLATE_NOOP("SketchEdits", "stretch of point %1 split, point %2 added"),
    QT_TRANSLATE_NOOP("SketchEdits", "point %1 moved"),
    QT_TRANSLATE_NOOP("SketchEdits", "point %1 moved; \"%2\" was said of its old place"),
    QT_TRANSLATE_NOOP("SketchEdits", "place of point %1 described"),
    QT_TRANSLATE_NOOP("SketchEdits", "point %1 retired"),
    QT_TRANSLATE_NOOP("SketchEdits", "point %1 deleted"),
    QT_TRANSLATE_NOOP("SketchEdits", "point %1 brought back"),
    QT_TRANSLATE_NOOP("SketchEdits", "points numbered from 1 to %1"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 numbered along its walk"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 numbered the other way"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 numbered from another start"),
    QT_TRANSLATE_NOOP("SketchEdits", "sheet \"%1\" added"),
    QT_TRANSLATE_NOOP("SketchEdits", "sheet \"%1\" changed"),
    QT_TRANSLATE_NOOP("SketchEdits", "sheet \"%1\" taken out"),
    QT_TRANSLATE_NOOP("SketchEdits", "%1 joints"),
};

/// Told by their text in reminders().
[[maybe_unused]] constexpr const char* kReminders[] = {
    QT_TRANSLATE_NOOP("SketchEdits", "valve seat, tested across with the valve shut"),
    QT_TRANSLATE_NOOP("SketchEdits", "bonnet of the valve"),
    QT_TRANSLATE_NOOP("SketchEdits", "bellows inside the valve's stem"),
    QT_TRANSLATE_NOOP("SketchEdits", "inner bellows or shaft seal of the feedthrough"),
    QT_TRANSLATE_NOOP("SketchEdits", "each pin or ceramic, apart from the flange"),
    QT_TRANSLATE_NOOP("SketchEdits", "gland or shaft near the door: hinge side, handle"),
    QT_TRANSLATE_NOOP("SketchEdits", "leak-check port between double seals"),
    QT_TRANSLATE_NOOP("SketchEdits", "clamp ring of the view glass"),
    QT_TRANSLATE_NOOP("SketchEdits", "ferrules at both ends of the hose"),
    QT_TRANSLATE_NOOP("SketchEdits", "end cuffs of the bellows"),
    QT_TRANSLATE_NOOP("SketchEdits", "water circuit: helium inside it, drained and dried"),
    QT_TRANSLATE_NOOP("SketchEdits", "crater ends and stops of the weld"),
    QT_TRANSLATE_NOOP("SketchEdits", "relief valve or burst disc"),
    QT_TRANSLATE_NOOP("SketchEdits", "gauge and vent fittings, caps and blanks"),
    QT_TRANSLATE_NOOP("SketchEdits", "test hose of the detector"),
    QT_TRANSLATE_NOOP("SketchEdits", "set-up connections: tee, clamps, detector inlet"),
    QT_TRANSLATE_NOOP("SketchEdits", "Valve seat"),
    QT_TRANSLATE_NOOP("SketchEdits", "Valve bonnet"),
    QT_TRANSLATE_NOOP("SketchEdits", "Stem bellows"),
    QT_TRANSLATE_NOOP("SketchEdits", "Inner bellows"),
    QT_TRANSLATE_NOOP("SketchEdits", "Pins"),
    QT_TRANSLATE_NOOP("SketchEdits", "Handle shaft"),
    QT_TRANSLATE_NOOP("SketchEdits", "Seal interspace"),
    QT_TRANSLATE_NOOP("SketchEdits", "View-glass clamp ring"),
    QT_TRANSLATE_NOOP("SketchEdits", "Hose ferrule"),
    QT_TRANSLATE_NOOP("SketchEdits", "Bellows cuff"),
    QT_TRANSLATE_NOOP("SketchEdits", "Water circuit"),
    QT_TRANSLATE_NOOP("SketchEdits", "Weld end"),
    QT_TRANSLATE_NOOP("SketchEdits", "Relief valve"),
    QT_TRANSLATE_NOOP("SketchEdits", "Vent fitting"),
    QT_TRANSLATE_NOOP("SketchEdits", "Test hose"),
    QT_TRANSLATE_NOOP("SketchEdits", "Detector inlet"),
};

const render::PatternSet& edits()
{
    static const render::PatternSet made = [] {
        render::PatternSet set("SketchEdits");
        set.add(kEdits, render::PatternSet::Takes::Names);
        set.sort();
        return set;
    }();
    return made;
}

QString translated(const char* source)
{
    return QCoreApplication::translate("SketchEdits", source);
}

/// What stands in a place: a name as it is, "3 joints" in words.
QString piece(const QString& text)
{
    static const QRegularExpression several(QStringLiteral("^(\\d+) joints$"));
    const QRegularExpressionMatch found = several.match(text);
    return found.hasMatch() ? translated("%1 joints").arg(found.captured(1))
                            : render::inWords(text.toStdString());
}

} // namespace

QString editWords(std::string_view what)
{
    const QString text = QString::fromUtf8(what.data(), static_cast<qsizetype>(what.size()));
    return edits()
        .said(text, [](const QString& found, bool verbatim) { return verbatim ? found : piece(found); })
        .value_or(text);
}

QString editSentence(std::string_view what)
{
    QString text = editWords(what);
    if (text.isEmpty())
        return text;
    text[0] = text[0].toUpper();
    return text.endsWith(QLatin1Char('.')) ? text : text + QLatin1Char('.');
}

QString reminderWords(std::string_view what)
{
    return translated(std::string(what).c_str());
}

std::string reminderName(std::string_view name)
{
    return translated(std::string(name).c_str()).toStdString();
}

} // namespace sealwalk::ui
