// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/touch_size.h"

#include <QAbstractButton>
#include <QInputDevice>
#include <QScreen>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr double kMillimetresPerInch = 25.4;
constexpr double kLeastDotsPerInch = 60.0;
constexpr double kMostDotsPerInch = 200.0;
constexpr double kUsualDotsPerInch = 96.0;

} // namespace

int pixelsOf(double millimetres, double dotsPerInch)
{
    const double density = std::isfinite(dotsPerInch) && dotsPerInch > 0.0
                               ? std::clamp(dotsPerInch, kLeastDotsPerInch, kMostDotsPerInch)
                               : kUsualDotsPerInch;
    return static_cast<int>(std::lround(millimetres * density / kMillimetresPerInch));
}

int pixelsOn(const QScreen* screen, double millimetres)
{
    return pixelsOf(millimetres, screen == nullptr ? kUsualDotsPerInch : screen->physicalDotsPerInch());
}

void setTargetHeight(QAbstractButton& button, int pixels)
{
    button.setStyleSheet(pixels > 0 ? QStringLiteral("min-height: %1px").arg(pixels) : QString());
}

bool hasTouchScreen()
{
    const auto devices = QInputDevice::devices();
    return std::any_of(devices.begin(), devices.end(), [](const QInputDevice* device) {
        return device->type() == QInputDevice::DeviceType::TouchScreen;
    });
}

} // namespace sealwalk::ui
