// SPDX-License-Identifier: GPL-3.0-or-later
// Defects and actions to choose from at a repair. The record keeps the English word.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> repairPatterns()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "nothing seen"),
        QT_TRANSLATE_NOOP("Core", "nick"),
        QT_TRANSLATE_NOOP("Core", "scratch across the seal"),
        QT_TRANSLATE_NOOP("Core", "scratch along the seal"),
        QT_TRANSLATE_NOOP("Core", "flat"),
        QT_TRANSLATE_NOOP("Core", "dirt"),
        QT_TRANSLATE_NOOP("Core", "fibre or hair"),
        QT_TRANSLATE_NOOP("Core", "crack"),
        QT_TRANSLATE_NOOP("Core", "pore"),
        QT_TRANSLATE_NOOP("Core", "over-tightened"),
        QT_TRANSLATE_NOOP("Core", "loose"),
        QT_TRANSLATE_NOOP("Core", "hardened seal"),
        QT_TRANSLATE_NOOP("Core", "wrong size"),
        QT_TRANSLATE_NOOP("Core", "cracked ceramic"),
        QT_TRANSLATE_NOOP("Core", "cracked weld"),
        QT_TRANSLATE_NOOP("Core", "clean and re-seat seal"),
        QT_TRANSLATE_NOOP("Core", "replace seal"),
        QT_TRANSLATE_NOOP("Core", "replace metal gasket"),
        QT_TRANSLATE_NOOP("Core", "re-tighten"),
        QT_TRANSLATE_NOOP("Core", "polish seat along the seal"),
        QT_TRANSLATE_NOOP("Core", "grease thinly"),
        QT_TRANSLATE_NOOP("Core", "replace clamp"),
        QT_TRANSLATE_NOOP("Core", "replace hose"),
        QT_TRANSLATE_NOOP("Core", "re-weld"),
        QT_TRANSLATE_NOOP("Core", "re-braze"),
        QT_TRANSLATE_NOOP("Core", "fill with epoxy"),
        QT_TRANSLATE_NOOP("Core", "tape or putty"),
        QT_TRANSLATE_NOOP("Core", "blank off"),
        QT_TRANSLATE_NOOP("Core", "lock valve"),
    };
    return kAll;
}

} // namespace sealwalk::render
