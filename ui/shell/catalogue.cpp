// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/catalogue.h"

#include <cstring>

namespace sealwalk::ui {

QString Catalogue::translate(const char* context, const char* text, const char* comment, int count) const
{
    QString found = QTranslator::translate(context, text, comment, count);
    if (found.isEmpty() && context != nullptr)
        if (const char* bare = std::strrchr(context, ':'))
            found = QTranslator::translate(bare + 1, text, comment, count);
    if (found.isEmpty())
        found = QTranslator::translate("sealwalk::ui", text, comment, count);
    return found;
}

} // namespace sealwalk::ui
