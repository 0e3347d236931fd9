// SPDX-License-Identifier: GPL-3.0-or-later
// Shapes as one line of words and numbers, exact and readable: "ring 120.5 300 52".
#pragma once

#include "core/geometry/shape.h"

#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::storage {

/// ring x y radius | rectangle x y width height corner rotation | path open|closed straight|smooth x y x y …
/// | spot x y radius; the shortest digits that read back as the same numbers.
std::string shapeText(const geometry::Shape& shape);
geometry::Shape shapeFromText(std::string_view text);

/// Outlines, one a line.
std::string outlinesText(const std::vector<geometry::FreePath>& outlines);
std::vector<geometry::FreePath> outlinesFromText(std::string_view text);

} // namespace sealwalk::storage
