// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/caution_words.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

// For the translators only: the core's sentences, word for word. A test compares the two.
[[maybe_unused]] constexpr const char* kForTranslators[] = {
    QT_TRANSLATE_NOOP("Caution", "Helium takes the place of air"),
    QT_TRANSLATE_NOOP(
        "Caution", "It has no smell and gives no warning; it gathers under roofs, in hoods and bags. "
                   "Ventilate, use an oxygen alarm in small rooms and pits, never put your head in a bag."),
    QT_TRANSLATE_NOOP("Caution", "Inside a chamber is a confined space"),
    QT_TRANSLATE_NOOP(
        "Caution",
        "Entry needs a permit, a gas test, an attendant, rescue, and gas, vent and power locked out."),
    QT_TRANSLATE_NOOP("Caution", "Glass under vacuum can burst inwards"),
    QT_TRANSLATE_NOOP("Caution",
                      "Wear eye and face protection, keep guards on, do not knock, tighten or scratch."),
    QT_TRANSLATE_NOOP("Caution", "Lids and doors are held by tonnes"),
    QT_TRANSLATE_NOOP("Caution", "Never loosen a clamp or bolt before the object is fully vented."),
    QT_TRANSLATE_NOOP("Caution", "Venting can overpressure a chamber"),
    QT_TRANSLATE_NOOP("Caution", "Use a regulator and a relief valve, and stay with it until it is done."),
    QT_TRANSLATE_NOOP("Caution", "A gas cylinder is a weapon when it falls"),
    QT_TRANSLATE_NOOP("Caution",
                      "Chain it upright, cap it to move it, fit the right regulator, open slowly."),
    QT_TRANSLATE_NOOP("Caution", "Feedthroughs and pumps carry dangerous voltages"),
    QT_TRANSLATE_NOOP("Caution", "Isolate, lock, prove dead before touching; that is for qualified people."),
    QT_TRANSLATE_NOOP("Caution", "Baked parts burn, cold parts burn too"),
    QT_TRANSLATE_NOOP(
        "Caution", "Keep helium jets off hot glass and ceramic; cryogens also take the oxygen from the air."),
    QT_TRANSLATE_NOOP("Caution", "Solvents burn, poison and spoil seals"),
    QT_TRANSLATE_NOOP(
        "Caution", "Keep them from hot pumps and switchgear, ventilate; they also plug leaks for a while."),
    QT_TRANSLATE_NOOP("Caution", "Process residue may be toxic, may catch fire, may radiate"),
    QT_TRANSLATE_NOOP("Caution", "Ask what was run before you open or touch; mind the pump exhaust."),
    QT_TRANSLATE_NOOP("Caution", "A ladder and a hose do not go together"),
    QT_TRANSLATE_NOOP("Caution", "Use a platform and a second person; mind the door and the hoist."),
    QT_TRANSLATE_NOOP("Caution", "Welds and pressure parts are for licensed people"),
    QT_TRANSLATE_NOOP("Caution", "Repairs there follow local law and are inspected again."),
};

QString translated(std::string_view text)
{
    return QCoreApplication::translate("Caution", std::string(text).c_str());
}

} // namespace

QString cautionTitle(const model::Caution& caution)
{
    return translated(caution.title);
}

QString cautionText(const model::Caution& caution)
{
    return translated(caution.text);
}

} // namespace sealwalk::ui
