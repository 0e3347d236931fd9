// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/feed_profile.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <utility>

namespace sealwalk::feed {

namespace {

constexpr int kLastPort = 65535;
constexpr int kFastestBaud = 4'000'000;
constexpr double kMostLinesPerSecond = 1000.0;

template <class E, std::size_t n>
using Words = std::array<std::pair<E, std::string_view>, n>;

constexpr Words<SourceKind, 4> kKinds{{{SourceKind::Serial, "serial"},
                                       {SourceKind::Tcp, "tcp"},
                                       {SourceKind::Pipe, "pipe"},
                                       {SourceKind::File, "file"}}};
constexpr Words<Parity, 3> kParities{{{Parity::None, "none"}, {Parity::Even, "even"}, {Parity::Odd, "odd"}}};
constexpr Words<Separator, 4> kSeparators{{{Separator::Blank, "blank"},
                                           {Separator::Comma, "comma"},
                                           {Separator::Semicolon, "semicolon"},
                                           {Separator::Tab, "tab"}}};
constexpr Words<Meaning, 3> kMeanings{{{Meaning::Rate, "rate"},
                                       {Meaning::LinearVolts, "linear volts"},
                                       {Meaning::DecadeVolts, "decades per volt"}}};

template <class E, std::size_t n>
std::string_view word(const Words<E, n>& words, E value)
{
    for (const auto& [known, text] : words)
        if (known == value)
            return text;
    return {};
}

template <class E, std::size_t n>
std::optional<E> value(const Words<E, n>& words, std::string_view text)
{
    for (const auto& [known, name] : words)
        if (name == text)
            return known;
    return std::nullopt;
}

Status refuse(std::string sentence)
{
    return fail(ErrorCode::BadInput, std::move(sentence));
}

Status checkSerial(const FeedSource& source)
{
    if (source.device.empty())
        return refuse("the serial port is missing, such as ttyUSB0");
    if (source.baud < 1 || source.baud > kFastestBaud)
        return refuse(
            fmt::format("{} baud is no speed of a serial port; right is for instance 9600", source.baud));
    if (source.dataBits < 5 || source.dataBits > 8)
        return refuse(fmt::format("{} data bits do not exist; right is 5 to 8", source.dataBits));
    if (source.stopBits < 1 || source.stopBits > 2)
        return refuse(fmt::format("{} stop bits do not exist; right is 1 or 2", source.stopBits));
    return {};
}

Status checkFile(const FeedSource& source)
{
    if (source.path.empty())
        return refuse("the recorded file is missing");
    if (!(source.speed > 0.0) || source.speed > kFastestPlayback)
        return refuse(
            fmt::format("a file is played 0.01 to {:.0f} times as fast as recorded", kFastestPlayback));
    if (!(source.linesPerSecond > 0.0) || source.linesPerSecond > kMostLinesPerSecond)
        return refuse(fmt::format("a file without times is played at up to {:.0f} lines per second",
                                  kMostLinesPerSecond));
    return {};
}

} // namespace

Status checkSource(const FeedSource& source)
{
    switch (source.kind) {
    case SourceKind::Serial:
        return checkSerial(source);
    case SourceKind::Tcp:
        if (source.host.empty())
            return refuse("the network address is missing, such as 192.0.2.7");
        if (source.port < 1 || source.port > kLastPort)
            return refuse(
                fmt::format("{} is no port of a network address; right is 1 to {}", source.port, kLastPort));
        return {};
    case SourceKind::Pipe:
        if (source.path.empty())
            return refuse("the pipe is missing, such as /tmp/detector");
        return {};
    case SourceKind::File:
        return checkFile(source);
    }
    return refuse("the kind of source is not known");
}

Status checkProfile(const FeedProfile& profile)
{
    if (profile.name.empty())
        return refuse("the feed needs a name, such as the detector's");
    if (Status source = checkSource(profile.source); !source)
        return source;
    return checkFormat(profile.format);
}

std::string describe(const FeedSource& source)
{
    switch (source.kind) {
    case SourceKind::Serial:
        return fmt::format("{} at {} baud", source.device, source.baud);
    case SourceKind::Tcp:
        return fmt::format("{}:{}", source.host, source.port);
    case SourceKind::Pipe:
    case SourceKind::File:
        return source.path.substr(source.path.find_last_of('/') + 1);
    }
    return {};
}

std::string_view wordOf(SourceKind kind)
{
    return word(kKinds, kind);
}

std::string_view wordOf(Parity parity)
{
    return word(kParities, parity);
}

std::string_view wordOf(Separator separator)
{
    return word(kSeparators, separator);
}

std::string_view wordOf(Meaning meaning)
{
    return word(kMeanings, meaning);
}

std::optional<SourceKind> sourceKind(std::string_view word)
{
    return value(kKinds, word);
}

std::optional<Parity> parity(std::string_view word)
{
    return value(kParities, word);
}

std::optional<Separator> separator(std::string_view word)
{
    return value(kSeparators, word);
}

std::optional<Meaning> meaning(std::string_view word)
{
    return value(kMeanings, word);
}

} // namespace sealwalk::feed
