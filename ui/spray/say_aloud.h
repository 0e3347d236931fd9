// SPDX-License-Identifier: GPL-3.0-or-later
// A sentence for the ear: read by a screen reader, and spoken where the desktop has a speech program.
#pragma once

class QString;
class QWidget;

namespace sealwalk::ui {

/// Tells assistive technology that `speaker` has something to say, and hands the sentence to the desktop's
/// speech dispatcher when there is one. False when nobody speaks: the caller then gives a sound.
bool sayAloud(QWidget& speaker, const QString& sentence);

} // namespace sealwalk::ui
