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
          RepairNote{"F. Fitter", "12 N m", "cleaned | twice"}, RepairNote{"", "", "found | loose"},
          // Regression: words of a note that begin as a field does were taken for that field.
          RepairNote{"", "", "Torque wrench overdue"}, RepairNote{"F. Fitter", "", "Torque wrench overdue"},
          RepairNote{"F. Fitter", "", "Done by night"}, RepairNote{"", "12 N m", " | odd"}})
        EXPECT_EQ(readNote(noteText(note)), note) << noteText(note);
    EXPECT_EQ(noteText({"F. Fitter", "12 N m", "cleaned"}), "Done by F. Fitter | Torque 12 N m | cleaned");
    EXPECT_EQ(readNote(noteText({"F. Fitter | B. Binder", "", ""})).doneBy, "F. Fitter, B. Binder");
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

// Regression: "blank flange seal" and "block" were proposed as temporary, and a weld with a filler rod could
// not be stored without hours of cure.
TEST(RepairWords, AreFoundAsWordsNotWithinOthers)
{
    struct Case
    {
        const char* action;
        bool isForATime;
        bool cures;
    };
    for (const Case& each :
         {Case{"replace blank flange seal", false, false}, Case{"new valve block", false, false},
          Case{"re-weld with filler rod", false, false}, Case{"braze, filler wire", false, false},
          Case{"taped over", true, false}, Case{"locked open", true, false}, Case{"Blanked off", true, false},
          Case{"filled with epoxy", true, true}, Case{"vacuum sealant from outside", true, true},
          Case{"refilled pump oil", false, false}}) {
        EXPECT_EQ(holdsForATime(each.action), each.isForATime) << each.action;
        EXPECT_EQ(usualCureHours(each.action).has_value(), each.cures) << each.action;
    }
}

} // namespace
} // namespace sealwalk::analysis
