// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions in the language of the window.
#pragma once

#include "core/model/cautions.h"

#include <QString>

namespace sealwalk::ui {

QString cautionTitle(const model::Caution& caution);
QString cautionText(const model::Caution& caution);

} // namespace sealwalk::ui
