// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/repair_note.h"
#include "core/analysis/repair_words.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

// Property: what was written is read back, and a note written by hand is left as it is.
TEST(RepairNote, ComesBackWhole)
{
    for (const RepairNote& note :
         {RepairNote{}, RepairNote{"F. Fitter", "", ""}, RepairNote{"", "12 N m, crosswise", ""},
          RepairNote{"F. Fitter", "12 N m", "cleaned | twice"}, RepairNote{"", "", "found | loose"}})
        EXPECT_EQ(readNote(noteText(note)), note) << noteText(note);
    EXPECT_EQ(noteText({"F. Fitter", "12 N m", "cleaned"}), "Done by F. Fitter | Torque 12 N m | cleaned");
    EXPECT_EQ(noteText(readNote("Torque was not measured | see photo")),
              "Torque was not measured | see photo");
}

// Published: practice of the trade, fillers and locked or blanked parts hold for a time; a filler cures about
// a day at room temperature.
TEST(RepairWords, FillersHoldForATimeAndCure)
{
    for (const std::string_view action : actionWords()) {
        const bool filler = action == "fill with epoxy";
        EXPECT_EQ(usualCureHours(action), filler ? std::optional(24) : std::nullopt) << action;
        EXPECT_EQ(holdsForATime(action),
                  filler || action == "tape or putty" || action == "blank off" || action == "lock valve")
            << action;
    }
}

} // namespace
} // namespace sealwalk::analysis
