// SPDX-License-Identifier: GPL-3.0-or-later
// What joins phrases of a report, whatever they are: tried when nothing else fits.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> reportJoints()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "%1: %2"),
        QT_TRANSLATE_NOOP("Core", "%1 to %2"),
        QT_TRANSLATE_NOOP("Core", "%1 (%2), %3"),
        QT_TRANSLATE_NOOP("Core", "%1 → %2"),
        QT_TRANSLATE_NOOP("Core", "%1 × %2"),
        QT_TRANSLATE_NOOP("Core", "%1, job %2"),
        QT_TRANSLATE_NOOP("Core", "%1 helium"),
        QT_TRANSLATE_NOOP("Core", "%1 air"),
    };
    return kAll;
}

} // namespace sealwalk::render
