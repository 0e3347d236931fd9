// SPDX-License-Identifier: GPL-3.0-or-later
// How large a thing must be for a finger in a glove, on the screen at hand.
#pragma once

class QAbstractButton;
class QScreen;

namespace sealwalk::ui {

/// Published: 20 mm for gloved fingers, 3 mm apart.
inline constexpr double kGloveMillimetres = 20.0;
inline constexpr double kGloveGapMillimetres = 3.0;

/// Logical pixels of a length on a screen with so many logical pixels to the inch. Screens that tell nonsense
/// about their size (projectors, virtual ones) are taken between 60 and 200 to the inch.
int pixelsOf(double millimetres, double dotsPerInch);
int pixelsOn(const QScreen* screen, double millimetres);

/// Makes an ordinary button so high; 0: as the program's style has it, which else has the last word.
void setTargetHeight(QAbstractButton& button, int pixels);

/// True when a touch screen is connected.
bool hasTouchScreen();

} // namespace sealwalk::ui
