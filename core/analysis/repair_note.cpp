// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/repair_note.h"

namespace sealwalk::analysis {

namespace {

constexpr std::string_view kDoneBy = "Done by ";
constexpr std::string_view kTorque = "Torque ";
constexpr std::string_view kBetween = " | ";

/// Takes "<head>…" off the front of `rest`, up to the next mark or its end.
std::string take(std::string_view& rest, std::string_view head)
{
    if (!rest.starts_with(head))
        return {};
    const std::size_t end = rest.find(kBetween);
    const std::string_view part =
        rest.substr(head.size(), end == std::string_view::npos ? end : end - head.size());
    rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + kBetween.size());
    return std::string(part);
}

bool isHeaded(std::string_view text)
{
    return text.starts_with(kDoneBy) || text.starts_with(kTorque) || text.starts_with(kBetween);
}

/// The mark that parts the fields is no part of one.
std::string withoutMarks(std::string text)
{
    for (std::size_t at = text.find(kBetween); at != std::string::npos; at = text.find(kBetween, at))
        text.replace(at, kBetween.size(), ", ");
    return text;
}

} // namespace

std::string noteText(const RepairNote& note)
{
    std::string text;
    const auto add = [&](std::string_view head, const std::string& part) {
        if (part.empty())
            return;
        if (!text.empty())
            text += kBetween;
        text += head;
        text += part;
    };
    add(kDoneBy, withoutMarks(note.doneBy));
    add(kTorque, withoutMarks(note.torque));
    // Words that begin as a head does would be read back as that field; one mark more says that they are not.
    add(isHeaded(note.text) ? kBetween : std::string_view(), note.text);
    return text;
}

RepairNote readNote(std::string_view note)
{
    RepairNote read;
    read.doneBy = take(note, kDoneBy);
    read.torque = take(note, kTorque);
    if (note.starts_with(kBetween))
        note.remove_prefix(kBetween.size());
    read.text = std::string(note);
    return read;
}

} // namespace sealwalk::analysis
