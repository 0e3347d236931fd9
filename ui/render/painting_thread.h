// SPDX-License-Identifier: GPL-3.0-or-later
// To be had in every thread beside the window's that paints.
#pragma once

#include <QEventLoop>

namespace sealwalk::render {

/// Qt remembers fonts for each thread and throws them out by a timer; a thread it did not start itself has
/// timers only once it has an event loop, even if that never runs.
class PaintingThread
{
private:
    QEventLoop m_loop;
};

} // namespace sealwalk::render
