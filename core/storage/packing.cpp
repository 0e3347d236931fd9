// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/packing.h"

#include "core/storage/sqlite_errors.h"

#include <algorithm>
#include <bit>
#include <cstdint>

namespace sealwalk::storage {
namespace {

constexpr std::size_t kUuidBytes = 16;

template <class Bits>
void packBits(std::string& bytes, Bits bits)
{
    for (std::size_t i = 0; i < sizeof(Bits); ++i)
        bytes.push_back(static_cast<char>(static_cast<unsigned char>(bits >> (8 * i))));
}

template <class Bits>
Bits unpackBits(const char* bytes)
{
    Bits bits = 0;
    for (std::size_t i = 0; i < sizeof(Bits); ++i)
        bits |= static_cast<Bits>(static_cast<Bits>(static_cast<unsigned char>(bytes[i])) << (8 * i));
    return bits;
}

} // namespace

std::string packDoubles(std::span<const double> values)
{
    std::string bytes;
    bytes.reserve(values.size() * sizeof(double));
    for (const double value : values)
        packBits(bytes, std::bit_cast<std::uint64_t>(value));
    return bytes;
}

std::vector<double> unpackDoubles(std::string_view bytes)
{
    if (bytes.size() % sizeof(double) != 0)
        throw Refusal(ErrorCode::DamagedFile, "a series of numbers in the history is cut short");
    std::vector<double> values(bytes.size() / sizeof(double));
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = std::bit_cast<double>(unpackBits<std::uint64_t>(bytes.data() + i * sizeof(double)));
    return values;
}

std::string packFloats(std::span<const float> values)
{
    std::string bytes;
    bytes.reserve(values.size() * sizeof(float));
    for (const float value : values)
        packBits(bytes, std::bit_cast<std::uint32_t>(value));
    return bytes;
}

std::vector<float> unpackFloats(std::string_view bytes)
{
    if (bytes.size() % sizeof(float) != 0)
        throw Refusal(ErrorCode::DamagedFile, "a trace in the history is cut short");
    std::vector<float> values(bytes.size() / sizeof(float));
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = std::bit_cast<float>(unpackBits<std::uint32_t>(bytes.data() + i * sizeof(float)));
    return values;
}

Uuid unpackUuid(std::string_view bytes)
{
    if (bytes.size() != kUuidBytes)
        throw Refusal(ErrorCode::DamagedFile, "an identity in the history does not have 16 bytes");
    Uuid::Bytes raw{};
    std::transform(bytes.begin(), bytes.end(), raw.begin(),
                   [](char c) { return static_cast<std::uint8_t>(c); });
    return Uuid(raw);
}

void packUuid(std::string& bytes, const Uuid& uuid)
{
    for (const std::uint8_t byte : uuid.bytes())
        bytes.push_back(static_cast<char>(byte));
}

std::string packLines(const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines) {
        if (line.find('\n') != std::string::npos)
            throw Refusal(ErrorCode::BadInput, "a word of a list has a line break: \"" + line + "\"");
        text += line;
        text += '\n';
    }
    return text;
}

std::vector<std::string> unpackLines(std::string_view text)
{
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        if (end == std::string_view::npos)
            throw Refusal(ErrorCode::DamagedFile, "a list of words in the history is cut short");
        lines.emplace_back(text.substr(0, end));
        text.remove_prefix(end + 1);
    }
    return lines;
}

} // namespace sealwalk::storage
