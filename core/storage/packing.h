// SPDX-License-Identifier: GPL-3.0-or-later
// Lists as one column: ids and numbers as bytes, words as lines.
#pragma once

#include "core/base/uuid.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::storage {

/// Little-endian IEEE 754 doubles, whatever the machine.
std::string packDoubles(std::span<const double> values);
std::vector<double> unpackDoubles(std::string_view bytes);

/// Little-endian IEEE 754 single floats.
std::string packFloats(std::span<const float> values);
std::vector<float> unpackFloats(std::string_view bytes);

Uuid unpackUuid(std::string_view bytes);
void packUuid(std::string& bytes, const Uuid& uuid);

/// Words without line breaks, one a line.
std::string packLines(const std::vector<std::string>& lines);
std::vector<std::string> unpackLines(std::string_view text);

} // namespace sealwalk::storage
