// SPDX-License-Identifier: GPL-3.0-or-later
// Bytes in any pieces in, whole lines out. Holds at most one line of bounded length, whatever comes.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::feed {

inline constexpr std::size_t kLongestLine = 256; ///< bytes; a detector's line has 10 to 100

struct FeedLine
{
    std::string text; ///< printable: what is no text was made '?'; an over-long line's beginning
    bool isWhole =
        true; ///< false: too long, or cut off when the source ended; its value is not to be trusted
    bool operator==(const FeedLine&) const = default;
};

class LineSplitter
{
public:
    /// The lines that `bytes` ended, in order. CR, LF and CR LF end a line; empty lines are passed over.
    std::vector<FeedLine> take(std::string_view bytes);
    /// The source ended or was lost: what was begun comes out as not whole, if there is any.
    std::vector<FeedLine> finish();
    /// What comes first is the end of a line whose beginning was missed: it is dropped.
    void startInMiddle();

private:
    void endLine(std::vector<FeedLine>& lines);

    std::string m_line;
    bool m_tooLong = false;
    bool m_skipping = false;
};

/// Text that can be shown: bytes that are no UTF-8, and control characters but the tab, become '?'.
std::string printable(std::string_view bytes);

} // namespace sealwalk::feed
