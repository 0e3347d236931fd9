// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/key_table.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <iterator>

namespace sealwalk::ui {

namespace {

struct Row
{
    const char* keys;
    const char* does;
};

constexpr Row kEverywhere[] = {
    {"F1", QT_TRANSLATE_NOOP("KeyTable", "this card; again: away")},
    {"Alt+1 … Alt+6", QT_TRANSLATE_NOOP("KeyTable", "stages")},
    {"Ctrl+K", QT_TRANSLATE_NOOP("KeyTable", "go to a point, joint, object or command by typing")},
    {"F6, Shift+F6", QT_TRANSLATE_NOOP("KeyTable", "next, previous part of the window")},
    {"Ctrl+N, Ctrl+Shift+N", QT_TRANSLATE_NOOP("KeyTable", "new job, new test object")},
    {"Ctrl+O", QT_TRANSLATE_NOOP("KeyTable", "open a history or job file")},
    {"Ctrl+P", QT_TRANSLATE_NOOP("KeyTable", "report as PDF; in Sketch the blank sheet on paper")},
    {"Ctrl+Shift+P", QT_TRANSLATE_NOOP("KeyTable", "look at the report, print it")},
    {"Ctrl+E", QT_TRANSLATE_NOOP("KeyTable", "export table or map")},
    {"Ctrl+L", QT_TRANSLATE_NOOP("KeyTable", "who is logging")},
    {"Ctrl+U", QT_TRANSLATE_NOOP("KeyTable", "change the unit shown")},
    {"Ctrl+F", QT_TRANSLATE_NOOP("KeyTable", "filter the list in view")},
    {"Ctrl+Z, Ctrl+Shift+Z", QT_TRANSLATE_NOOP("KeyTable", "undo, redo in the sketch")},
    {"F2", QT_TRANSLATE_NOOP("KeyTable", "the last ten notes")},
    {"F8", QT_TRANSLATE_NOOP("KeyTable", "sounds on or off")},
    {"Ctrl++, Ctrl+−, Ctrl+0", QT_TRANSLATE_NOOP("KeyTable", "sheet larger, smaller, whole")},
    {"Ctrl+M", QT_TRANSLATE_NOOP("KeyTable", "in a narrow window: the parts of the page in turn")},
    {"F9, F11", QT_TRANSLATE_NOOP("KeyTable", "theme, full screen")},
    {"Esc", QT_TRANSLATE_NOOP("KeyTable", "leave the tool, clear the field, cancel the work")},
};

constexpr Row kPrepare[] = {
    {"Enter", QT_TRANSLATE_NOOP("KeyTable", "next empty field")},
    {"Alt+B", QT_TRANSLATE_NOOP("KeyTable", "watch the background")},
    {"Alt+L", QT_TRANSLATE_NOOP("KeyTable", "enter a reference leak")},
    {"Alt+R", QT_TRANSLATE_NOOP("KeyTable", "pressure rise")},
    {"Alt+G", QT_TRANSLATE_NOOP("KeyTable", "go on")},
};

constexpr Row kSketch[] = {
    {"V", QT_TRANSLATE_NOOP("KeyTable", "select")},
    {"R, B", QT_TRANSLATE_NOOP("KeyTable", "ring, rounded rectangle")},
    {"F", QT_TRANSLATE_NOOP("KeyTable", "drawing one: with its flange or door, or without")},
    {"C, W", QT_TRANSLATE_NOOP("KeyTable", "closed path, open path (weld)")},
    {"S, H", QT_TRANSLATE_NOOP("KeyTable", "spot, hose")},
    {"P, O", QT_TRANSLATE_NOOP("KeyTable", "row of the chosen joint; O: circle, or row again")},
    {"U, K", QT_TRANSLATE_NOOP("KeyTable", "picture underneath, scale by two clicks")},
    {"A, X", QT_TRANSLATE_NOOP("KeyTable", "add a point, split the stretch")},
    {"1…9, Tab", QT_TRANSLATE_NOOP("KeyTable", "type a size while a tool is in hand, the next size")},
    {"Enter", QT_TRANSLATE_NOOP("KeyTable", "take the size, lay points, finish the tool")},
    {"arrows", QT_TRANSLATE_NOOP("KeyTable", "move 1 mm; with Shift 10 mm, with Ctrl 100 mm")},
    {"Space", QT_TRANSLATE_NOOP("KeyTable", "a click where the hand is: sets a node, takes a joint")},
    {"Space+drag, wheel", QT_TRANSLATE_NOOP("KeyTable", "move the sheet, zoom at the cursor")},
    {"PgUp, PgDn", QT_TRANSLATE_NOOP("KeyTable", "previous, next joint; with Shift its points")},
    {"E, Shift+E",
     QT_TRANSLATE_NOOP("KeyTable", "next, previous node of a free line: arrows move it, digits place it")},
    {"Ins, Del", QT_TRANSLATE_NOOP("KeyTable", "with a node: a node more, take it out")},
    {"Del", QT_TRANSLATE_NOOP("KeyTable", "retire; without readings: delete")},
    {"N", QT_TRANSLATE_NOOP("KeyTable", "renumber, before the first reading")},
    {"D, Shift+D", QT_TRANSLATE_NOOP("KeyTable", "reverse the sense, start here")},
    {"L, M", QT_TRANSLATE_NOOP("KeyTable", "lock or unlock, mirror")},
    {"[, ]", QT_TRANSLATE_NOOP("KeyTable", "turn by 15°")},
    {"Ctrl+C, Ctrl+X, Ctrl+V", QT_TRANSLATE_NOOP("KeyTable", "copy, cut, paste")},
    {"Ctrl+A", QT_TRANSLATE_NOOP("KeyTable", "select all of the sheet")},
    {"Ctrl+G, Ctrl+Shift+G", QT_TRANSLATE_NOOP("KeyTable", "group, ungroup")},
    {"Ctrl+T", QT_TRANSLATE_NOOP("KeyTable", "new sheet")},
    {"Ctrl+PgUp, Ctrl+PgDn", QT_TRANSLATE_NOOP("KeyTable", "previous, next sheet")},
    {"Ctrl+R", QT_TRANSLATE_NOOP("KeyTable", "rulers on or off")},
};

constexpr Row kSpray[] = {
    {"Space", QT_TRANSLATE_NOOP("KeyTable", "start the spray; again: stop")},
    {"Enter", QT_TRANSLATE_NOOP("KeyTable", "store, next point")},
    {"N", QT_TRANSLATE_NOOP("KeyTable", "no response")},
    {"+", QT_TRANSLATE_NOOP("KeyTable", "over range")},
    {"V 1…5, A 1…5", QT_TRANSLATE_NOOP("KeyTable", "void, not accessible, with reason")},
    {"X 1…5, K", QT_TRANSLATE_NOOP("KeyTable", "not tested, with reason; confirm a response")},
    {"R F T G O", QT_TRANSLATE_NOOP("KeyTable", "at rest, flexed, taped, bagged, other")},
    {"W", QT_TRANSLATE_NOOP("KeyTable", "points taped or bagged off while others are sprayed")},
    {"C", QT_TRANSLATE_NOOP("KeyTable", "correct the last one")},
    {"J, S", QT_TRANSLATE_NOOP("KeyTable", "jump to a number, skip")},
    {"B", QT_TRANSLATE_NOOP("KeyTable", "type the background")},
    {"H", QT_TRANSLATE_NOOP("KeyTable", "take the feed's highest")},
    {"D", QT_TRANSLATE_NOOP("KeyTable", "first rise: spraying now, else typed in seconds")},
    {"Up, Down", QT_TRANSLATE_NOOP("KeyTable", "look back and forth; with a number: its exponent")},
    {"M", QT_TRANSLATE_NOOP("KeyTable", "remark on the reading that comes")},
    {"L, I", QT_TRANSLATE_NOOP("KeyTable", "take the advice, go on anyway")},
    {"Z, Q", QT_TRANSLATE_NOOP("KeyTable", "distance view, say the call again")},
};

constexpr Row kJudge[] = {
    {"Up, Down", QT_TRANSLATE_NOOP("KeyTable", "step through the findings")},
    {"Enter, Esc", QT_TRANSLATE_NOOP("KeyTable", "why, and back")},
    {"Space", QT_TRANSLATE_NOOP("KeyTable", "tick for repair")},
    {"E, F", QT_TRANSLATE_NOOP("KeyTable", "echoes in or out, as found or as left")},
    {"1…9", QT_TRANSLATE_NOOP("KeyTable", "sheets")},
    {"G", QT_TRANSLATE_NOOP("KeyTable", "log repairs for the ticks")},
    {"J", QT_TRANSLATE_NOOP("KeyTable", "a verdict of one's own, a concession")},
    {"T", QT_TRANSLATE_NOOP("KeyTable", "what settles the open points: make it the next round")},
    {"V", QT_TRANSLATE_NOOP("KeyTable", "void the points taken while the background moved")},
    {"R", QT_TRANSLATE_NOOP("KeyTable", "repairs: what is open, before and after")},
};

constexpr Row kSignOff[] = {
    {"Up, Down", QT_TRANSLATE_NOOP("KeyTable", "step through the questions")},
    {"Enter", QT_TRANSLATE_NOOP("KeyTable", "open the place")},
    {"M", QT_TRANSLATE_NOOP("KeyTable", "word on the question, remark on its point")},
    {"Ctrl+B", QT_TRANSLATE_NOOP("KeyTable", "send back")},
    {"Ctrl+Enter", QT_TRANSLATE_NOOP("KeyTable", "approve and lock")},
};

constexpr Row kHistory[] = {
    {"type", QT_TRANSLATE_NOOP("KeyTable", "find objects and jobs")},
    {"Enter", QT_TRANSLATE_NOOP("KeyTable", "open the job")},
    {"Space", QT_TRANSLATE_NOOP("KeyTable", "mark; the second one opens the comparison")},
    {"Shift+Space", QT_TRANSLATE_NOOP("KeyTable", "mark only: three jobs or more for Ctrl+Enter")},
    {"Ctrl+Enter", QT_TRANSLATE_NOOP("KeyTable", "compare the marked jobs")},
    {"Left, Right", QT_TRANSLATE_NOOP("KeyTable", "comparing: swap sides")},
    {"F, 1…9", QT_TRANSLATE_NOOP("KeyTable", "comparing: as found or as left, sheets")},
    {"O", QT_TRANSLATE_NOOP("KeyTable", "comparing: side by side, or laid over one another")},
    {"B", QT_TRANSLATE_NOOP("KeyTable", "comparing: both maps in one place while held")},
    {"C, J, T", QT_TRANSLATE_NOOP("KeyTable", "comparing: changes, worst joints, totals over the years")},
    {"Y, N", QT_TRANSLATE_NOOP(
                 "KeyTable", "comparing: a proposed match, or two marked rows, are the same place, or not")},
};

/// Keys that are called by a word.
constexpr const char* kKeyWords[] = {
    QT_TRANSLATE_NOOP("KeyTable", "Ctrl"),  QT_TRANSLATE_NOOP("KeyTable", "Shift"),
    QT_TRANSLATE_NOOP("KeyTable", "Enter"), QT_TRANSLATE_NOOP("KeyTable", "Esc"),
    QT_TRANSLATE_NOOP("KeyTable", "Space"), QT_TRANSLATE_NOOP("KeyTable", "Del"),
    QT_TRANSLATE_NOOP("KeyTable", "Ins"),   QT_TRANSLATE_NOOP("KeyTable", "PgUp"),
    QT_TRANSLATE_NOOP("KeyTable", "PgDn"),  QT_TRANSLATE_NOOP("KeyTable", "Up"),
    QT_TRANSLATE_NOOP("KeyTable", "Down"),  QT_TRANSLATE_NOOP("KeyTable", "Left"),
    QT_TRANSLATE_NOOP("KeyTable", "Right"), QT_TRANSLATE_NOOP("KeyTable", "arrows"),
    QT_TRANSLATE_NOOP("KeyTable", "drag"),  QT_TRANSLATE_NOOP("KeyTable", "wheel"),
    QT_TRANSLATE_NOOP("KeyTable", "type"),
};

/// "Ctrl+Shift+G" with the words that stand on this keyboard.
QString keysInWords(const char* keys)
{
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{2,}"));
    const QString text = QString::fromUtf8(keys);
    QString said;
    qsizetype done = 0;
    for (auto at = word.globalMatch(text); at.hasNext();) {
        const QRegularExpressionMatch found = at.next();
        said += text.mid(done, found.capturedStart() - done);
        const auto known = std::find_if(std::begin(kKeyWords), std::end(kKeyWords), [&](const char* name) {
            return found.captured() == QLatin1String(name);
        });
        said +=
            known == std::end(kKeyWords) ? found.captured() : QCoreApplication::translate("KeyTable", *known);
        done = found.capturedEnd();
    }
    return said + text.mid(done);
}

template <std::size_t count>
std::vector<KeyLine> lines(const Row (&rows)[count])
{
    std::vector<KeyLine> result;
    for (const Row& row : rows)
        result.push_back({keysInWords(row.keys), QCoreApplication::translate("KeyTable", row.does)});
    return result;
}

} // namespace

std::vector<KeyLine> keysEverywhere()
{
    return lines(kEverywhere);
}

std::vector<KeyLine> keysOf(Stage stage)
{
    switch (stage) {
    case Stage::Prepare:
        return lines(kPrepare);
    case Stage::Sketch:
        return lines(kSketch);
    case Stage::Spray:
        return lines(kSpray);
    case Stage::Judge:
        return lines(kJudge);
    case Stage::SignOff:
        return lines(kSignOff);
    case Stage::History:
        return lines(kHistory);
    }
    return {};
}

} // namespace sealwalk::ui
