// SPDX-License-Identifier: GPL-3.0-or-later
// Qt without a display, for the commands that draw.
#pragma once

#include <memory>

class QApplication;

namespace sealwalk::cli {

/// While it lives, Qt can paint. Needs no screen, whatever the environment says.
class Offscreen
{
public:
    Offscreen();
    ~Offscreen();
    Offscreen(const Offscreen&) = delete;
    Offscreen& operator=(const Offscreen&) = delete;

private:
    std::unique_ptr<QApplication> m_application;
};

} // namespace sealwalk::cli
