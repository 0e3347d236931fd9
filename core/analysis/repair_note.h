// SPDX-License-Identifier: GPL-3.0-or-later
// Who repaired and how firmly, as words at the head of a repair's note: read by people in every report, and
// read back by the dialog.
#pragma once

#include <string>
#include <string_view>

namespace sealwalk::analysis {

struct RepairNote
{
    std::string doneBy; ///< who repaired; the record's `by` is who logged it. Empty: the same
    std::string torque; ///< as typed, with its unit: "12 N m in three steps"
    std::string text;   ///< everything else
    bool operator==(const RepairNote&) const = default;
};

/// "Done by A. Fitter | Torque 12 N m | cleaned twice"; parts that are empty are left out.
std::string noteText(const RepairNote& note);
/// The way back; a note written by hand is all text.
RepairNote readNote(std::string_view note);

} // namespace sealwalk::analysis
