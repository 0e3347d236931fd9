// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_splitter.h"

namespace sealwalk::feed {

namespace {

bool isContinuation(unsigned char byte)
{
    return (byte & 0xC0U) == 0x80U;
}

/// Bytes of the well-formed character `text` starts with (RFC 3629: no surrogates, no over-long forms,
/// nothing above U+10FFFF); 0 when it is none.
std::size_t characterLength(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    std::size_t length = 0;
    if (first < 0x80)
        length = 1;
    else if (first >= 0xC2 && first <= 0xDF)
        length = 2;
    else if (first >= 0xE0 && first <= 0xEF)
        length = 3;
    else if (first >= 0xF0 && first <= 0xF4)
        length = 4;
    if (length == 0 || text.size() < length)
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if (!isContinuation(byte(i)))
            return 0;
    if ((first == 0xE0 && byte(1) < 0xA0) || (first == 0xED && byte(1) > 0x9F) ||
        (first == 0xF0 && byte(1) < 0x90) || (first == 0xF4 && byte(1) > 0x8F))
        return 0;
    return length;
}

bool isControl(std::string_view character)
{
    const auto first = static_cast<unsigned char>(character[0]);
    if (character.size() == 1)
        return (first < 0x20 && first != '\t') || first == 0x7F;
    return first == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0; // U+0080 … U+009F
}

} // namespace

std::string printable(std::string_view bytes)
{
    std::string text;
    text.reserve(bytes.size());
    while (!bytes.empty()) {
        const std::size_t length = characterLength(bytes);
        if (length == 0 || isControl(bytes.substr(0, length)))
            text += '?';
        else
            text += bytes.substr(0, length);
        bytes.remove_prefix(length == 0 ? 1 : length);
    }
    return text;
}

std::vector<FeedLine> LineSplitter::take(std::string_view bytes)
{
    std::vector<FeedLine> lines;
    for (const char byte : bytes) {
        if (byte == '\n' || byte == '\r')
            endLine(lines);
        else if (m_line.size() < kLongestLine)
            m_line += byte;
        else
            m_tooLong = true; // the rest is passed over, up to the next end of a line
    }
    return lines;
}

std::vector<FeedLine> LineSplitter::finish()
{
    std::vector<FeedLine> lines;
    m_tooLong = true; // "1.2" may have been meant as "1.2e-9"
    endLine(lines);
    return lines;
}

void LineSplitter::startInMiddle()
{
    m_line.clear();
    m_tooLong = false;
    m_skipping = true;
}

void LineSplitter::endLine(std::vector<FeedLine>& lines)
{
    if (!m_line.empty() && !m_skipping)
        lines.push_back({printable(m_line), !m_tooLong});
    m_skipping = false;
    m_line.clear(); // between CR and LF there is an empty line, which is none
    m_tooLong = false;
}

} // namespace sealwalk::feed
