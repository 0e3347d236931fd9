// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the tools and of what acts on the chosen joints, which are no QObjects.
#pragma once

#include <QCoreApplication>

namespace sealwalk::ui {

/// SketchWords::tr("…") is seen by lupdate, which a function of another name would not be.
class SketchWords
{
    Q_DECLARE_TR_FUNCTIONS(SketchWords)
};

} // namespace sealwalk::ui
