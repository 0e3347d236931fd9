// SPDX-License-Identifier: GPL-3.0-or-later
// Beside the maps of reports and files.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> reportPictures()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "The band swells by 0.5 mm for each decade above the smallest detectable leak."),
        QT_TRANSLATE_NOOP("Core", "Teeth: over the limit; few teeth: cannot say; no teeth: within."),
        QT_TRANSLATE_NOOP("Core", "One flat colour for each stretch sprayed; nothing is drawn between joints."),
        QT_TRANSLATE_NOOP("Core", "leak, over the limit"),
        QT_TRANSLATE_NOOP("Core", "leak, limit: cannot say"),
        QT_TRANSLATE_NOOP("Core", "shared by two neighbours"),
        QT_TRANSLATE_NOOP("Core", "echo of a larger leak, as read"),
        QT_TRANSLATE_NOOP("Core", "echo, taken out"),
        QT_TRANSLATE_NOOP("Core", "masked by a larger leak"),
        QT_TRANSLATE_NOOP("Core", "leak within the limit"),
        QT_TRANSLATE_NOOP("Core", "clear: no response"),
        QT_TRANSLATE_NOOP("Core", "void: reading not used"),
        QT_TRANSLATE_NOOP("Core", "tab T on a mark: temporary repair"),
        QT_TRANSLATE_NOOP("Core", "seal on a mark: conceded"),
        QT_TRANSLATE_NOOP("Core", "other source, trapped gas"),
        QT_TRANSLATE_NOOP("Core", "Leak map"),
        QT_TRANSLATE_NOOP("Core", "as read"),
        QT_TRANSLATE_NOOP("Core", "invented data"),
        QT_TRANSLATE_NOOP("Core", "opened %1"),
    };
    return kAll;
}

} // namespace sealwalk::render
