// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/repair_words.h"

#include "core/base/folded.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace sealwalk::analysis {

namespace {

constexpr std::array<std::string_view, 15> kDefects{"nothing seen",
                                                    "nick",
                                                    "scratch across the seal",
                                                    "scratch along the seal",
                                                    "flat",
                                                    "dirt",
                                                    "fibre or hair",
                                                    "crack",
                                                    "pore",
                                                    "over-tightened",
                                                    "loose",
                                                    "hardened seal",
                                                    "wrong size",
                                                    "cracked ceramic",
                                                    "cracked weld"};

constexpr std::array<std::string_view, 14> kActions{"clean and re-seat seal",
                                                    "replace seal",
                                                    "replace metal gasket",
                                                    "re-tighten",
                                                    "polish seat along the seal",
                                                    "grease thinly",
                                                    "replace clamp",
                                                    "replace hose",
                                                    "re-weld",
                                                    "re-braze",
                                                    "fill with epoxy",
                                                    "tape or putty",
                                                    "blank off",
                                                    "lock valve"};

struct Caution
{
    std::string_view word; ///< found in the action
    std::string_view sentence;
};

// common practice, no source, unless a source is named
constexpr std::array<Caution, 14> kCautions{{
    {"grease", "Vacuum-compatible grease only, and sparingly: a seal that passes only because it is wet is "
               "not repaired."},
    {"polish", "Polish along the seal line, never across it, and never a knife edge; keep the grit out."},
    {"epoxy",
     "Let a filler cure fully before pumping and before helium; ventilate, and mind the maker's sheet."},
    {"fill", "Let a filler cure fully before pumping and before helium."},
    {"tape", "Tape and putty prove the place or keep pumps alive; they are no repair."},
    {"weld", "Hot work needs its permit, a vented and purged vessel and qualified people; pressure parts "
             "follow the local code."},
    {"braze", "Hot work needs its permit and qualified people; heat may open the neighbours."},
    {"tighten", "Tighten in sequence and small steps to the stated torque; never glass under vacuum."},
    {"gasket", "Never use a metal gasket twice; look at both edges."},
    {"seal", "Wipe without lint; solvents need ventilation and no flame, and elastomers take them up."},
    {"hose", "Support the weight, keep the bend; spray it at rest and moved."},
    {"valve", "Tag it and tell operations."},
    {"blank", "Tag it and tell operations."},
    {"clean", "Solvents: ventilate, no flame, gloves."},
}};

constexpr std::string_view kAlways = "Vent fully before anything is loosened: lids and flanges are held by "
                                     "great force. Site rules and licensed people "
                                     "come first.";

bool contains(std::string_view text, std::string_view word)
{
    return text.find(word) != std::string_view::npos;
}

/// Whether a word of the text begins so, whatever its capitals: "tap" is in "Taped over", not in "adaptor".
bool hasWord(std::string_view text, std::string_view beginning)
{
    const std::string words = folded(text);
    for (std::size_t at = words.find(beginning); at != std::string::npos; at = words.find(beginning, at + 1))
        if (at == 0 || std::isalnum(static_cast<unsigned char>(words[at - 1])) == 0)
            return true;
    return false;
}

/// Closed with something that cures. The filler of a weld or a braze is metal and does not.
bool isFilled(std::string_view action)
{
    if (contains(folded(action), "weld") || contains(folded(action), "braz") ||
        contains(folded(action), "solder"))
        return false;
    return hasWord(action, "epoxy") || hasWord(action, "fill") || hasWord(action, "sealant");
}

} // namespace

std::span<const std::string_view> defectWords()
{
    return kDefects;
}

std::span<const std::string_view> actionWords()
{
    return kActions;
}

bool holdsForATime(std::string_view action)
{
    // "blank flange seal" is a seal; what is shut off is blanked, or blanked off.
    constexpr std::array<std::string_view, 6> kForATime{"tape", "taping",    "putty",
                                                        "lock", "blank off", "blanked"};
    return isFilled(action) || std::any_of(kForATime.begin(), kForATime.end(),
                                           [&](std::string_view word) { return hasWord(action, word); });
}

std::optional<int> usualCureHours(std::string_view action)
{
    constexpr int kFillerCures = 24;
    return isFilled(action) ? std::optional(kFillerCures) : std::nullopt;
}

std::vector<std::string> repairCautions(std::string_view action)
{
    std::vector<std::string> sentences{std::string(kAlways)};
    for (const Caution& caution : kCautions)
        if (contains(action, caution.word))
            sentences.emplace_back(caution.sentence);
    return sentences;
}

bool isTightenedAgain(const model::Sketch& sketch, std::span<const model::Repair> repairs,
                      const std::vector<model::PointId>& points, std::string_view action)
{
    if (!contains(action, "tighten"))
        return false;
    const auto areOfOneJoint = [&sketch](model::PointId a, model::PointId b) {
        const model::TestPoint* one = sketch.point(a);
        const model::TestPoint* other = sketch.point(b);
        return a == b || (one != nullptr && other != nullptr && one->joint == other->joint);
    };
    return std::any_of(repairs.begin(), repairs.end(), [&](const model::Repair& repair) {
        return contains(repair.action, "tighten") &&
               std::any_of(points.begin(), points.end(), [&](model::PointId point) {
                   return std::any_of(repair.points.begin(), repair.points.end(),
                                      [&](model::PointId before) { return areOfOneJoint(point, before); });
               });
    });
}

std::vector<model::PointId> disturbedBy(const model::Sketch& sketch,
                                        const std::vector<model::PointId>& repaired)
{
    std::vector<model::PointId> disturbed;
    const auto add = [&](model::PointId point) {
        const auto known = [&](const std::vector<model::PointId>& list) {
            return std::find(list.begin(), list.end(), point) != list.end();
        };
        if (!known(repaired) && !known(disturbed))
            disturbed.push_back(point);
    };
    for (const model::PointId id : repaired) {
        const model::Joint* joint = sketch.jointOf(id);
        if (joint == nullptr)
            continue;
        const auto row = sketch.pointsOn(joint->id);
        const std::size_t n = row.size();
        const bool closed = geometry::outline(joint->shape).isClosed();
        for (std::size_t i = 0; i < n; ++i) {
            if (row[i]->id != id)
                continue;
            if (closed || i > 0)
                add(row[(i + n - 1) % n]->id);
            if (closed || i + 1 < n)
                add(row[(i + 1) % n]->id);
            if (closed && n > 3)
                add(row[(i + n / 2) % n]->id);
        }
    }
    return disturbed;
}

} // namespace sealwalk::analysis
