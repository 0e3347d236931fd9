// SPDX-License-Identifier: GPL-3.0-or-later
// One instrument's feed under a name: where its lines come from and how they are read. The user's own data;
// no instrument's protocol is built in.
#pragma once

#include "core/feed/line_format.h"

#include <string>
#include <string_view>

namespace sealwalk::feed {

enum class SourceKind
{
    Serial, ///< a serial port
    Tcp,    ///< a network address that sends lines
    Pipe,   ///< a named pipe another program writes to
    File,   ///< a recorded file, played back
};

enum class Parity
{
    None,
    Even,
    Odd,
};

struct FeedSource
{
    SourceKind kind = SourceKind::Serial;
    std::string device; ///< serial: port name, such as ttyUSB0
    int baud = 9600;
    int dataBits = 8;
    Parity parity = Parity::None;
    int stopBits = 1;
    std::string host; ///< tcp
    int port = 0;
    std::string path;            ///< pipe and file
    double speed = 1.0;          ///< file: how many times faster than recorded
    double linesPerSecond = 5.0; ///< file without a time column: played at this pace
    bool operator==(const FeedSource&) const = default;
};

struct FeedProfile
{
    std::string name;
    FeedSource source;
    LineFormat format;
    bool operator==(const FeedProfile&) const = default;
};

inline constexpr double kFastestPlayback = 1000.0;

/// One sentence about the first thing that cannot be right.
Status checkSource(const FeedSource& source);
Status checkProfile(const FeedProfile& profile);

/// Where the lines come from, for people: "ttyUSB0 at 9600 baud", "192.0.2.7:4001", "run7.csv".
std::string describe(const FeedSource& source);

/// Words kept in settings. An unknown word gives none.
std::string_view wordOf(SourceKind kind);
std::string_view wordOf(Parity parity);
std::string_view wordOf(Separator separator);
std::string_view wordOf(Meaning meaning);
std::optional<SourceKind> sourceKind(std::string_view word);
std::optional<Parity> parity(std::string_view word);
std::optional<Separator> separator(std::string_view word);
std::optional<Meaning> meaning(std::string_view word);

} // namespace sealwalk::feed
