// SPDX-License-Identifier: GPL-3.0-or-later
// The design tokens as read from the program's resources.
#pragma once

#include <QJsonObject>

namespace sealwalk::render {

/// The whole token document; read once.
const QJsonObject& tokens();

} // namespace sealwalk::render
