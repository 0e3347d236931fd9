// SPDX-License-Identifier: GPL-3.0-or-later
// A tool turns movements of the hand into an edit. It never changes the sketch: it answers a verdict, and
// while the gesture lasts the canvas shows what the pending edit would do.
#pragma once

#include "core/editing/edit.h"
#include "ui/sketch/sheet_view.h"
#include "ui/sketch/sizes.h"
#include "ui/sketch/snap.h"

#include <QKeyEvent>
#include <QString>

#include <optional>
#include <vector>

namespace sealwalk::ui {

class SketchDesk;

/// Where the hand is.
struct Hand
{
    geometry::Point place; ///< mm on the sheet, as it is
    double reach = 5.0;    ///< mm that a finger's breadth of the screen covers
    double grid = 1.0;     ///< mm, of whole sizes at this zoom
    Qt::KeyboardModifiers keys;
    bool byKeys = false; ///< stands where the arrows put it, to the millimetre: nothing draws it aside
    [[nodiscard]] bool shift() const { return keys.testFlag(Qt::ShiftModifier); }
    [[nodiscard]] bool control() const { return keys.testFlag(Qt::ControlModifier); }
    [[nodiscard]] bool alt() const { return keys.testFlag(Qt::AltModifier); }
};

enum class VerdictKind
{
    Nothing, ///< not for this tool
    Changed, ///< look at the preview again
    Commit,  ///< the gesture is over: carry the edit out
    Revert,  ///< the gesture is given up
    Done,    ///< the tool lays itself down
};

struct Verdict
{
    VerdictKind kind = VerdictKind::Nothing;
    std::optional<Result<editing::Edit>> edit; ///< with Commit
    std::vector<model::JointId> choose;        ///< chosen after the commit; empty: as before
};

struct KeyHint
{
    QString keys;
    QString does;
};

/// What an arrow key moves by, mm.
double stepOf(Qt::KeyboardModifiers keys);

class Tool
{
public:
    explicit Tool(SketchDesk& desk)
        : m_desk(desk)
    {}
    virtual ~Tool() = default;
    Tool(const Tool&) = delete;
    Tool& operator=(const Tool&) = delete;

    // What it is
    [[nodiscard]] virtual QString title() const = 0;
    [[nodiscard]] virtual std::vector<KeyHint> hints() const = 0;
    [[nodiscard]] virtual Qt::CursorShape cursor(const Hand&) const { return Qt::CrossCursor; }

    // What the hand does
    virtual Verdict press(const Hand&) { return {}; }
    virtual Verdict move(const Hand&, bool pressed) = 0;
    virtual Verdict release(const Hand&) { return {}; }
    virtual Verdict doubleClick(const Hand&) { return {}; }
    virtual Verdict key(const QKeyEvent&, const Hand&) { return {}; }
    /// Enter.
    virtual Verdict confirm(const Hand&) { return {}; }
    /// Esc: gives the gesture up; with nothing to give up, Done.
    virtual Verdict cancel() { return {VerdictKind::Done, std::nullopt, {}}; }

    // Sizes that can be typed at this moment, and what was typed
    [[nodiscard]] virtual std::vector<Size> sizes() const { return {}; }
    virtual Verdict typed(const std::vector<double>&, const SizeEntry&, const Hand&) { return {}; }

    // What is to be shown
    /// The edit the gesture would make if it ended now; none: nothing to show.
    [[nodiscard]] const std::optional<Result<editing::Edit>>& pending() const { return m_pending; }
    [[nodiscard]] const std::vector<Guide>& guides() const { return m_guides; }
    /// Where figures being typed that stand on no dimension line are shown; none: at the hand.
    [[nodiscard]] virtual std::optional<geometry::Point> sizesPlace() const { return std::nullopt; }
    /// What a screen reader hears of the tool's own choice, such as a node.
    [[nodiscard]] virtual QString spoken() const { return {}; }
    /// Whether the sizes are those of the chosen joint, and stand on its dimension lines.
    [[nodiscard]] virtual bool sizesAreOfChosen() const { return false; }
    /// The shape the sizes belong to, when it is not the chosen joint's.
    [[nodiscard]] virtual std::optional<geometry::Shape> sizedShape() const { return std::nullopt; }

protected:
    [[nodiscard]] SketchDesk& desk() const { return m_desk; }
    Verdict changed() const { return {VerdictKind::Changed, std::nullopt, {}}; }
    /// Ends the gesture with its pending edit.
    Verdict commitPending(std::vector<model::JointId> choose = {});
    Verdict revert();
    /// Lays points on what was just drawn; done where it has some. Null: nothing was drawn.
    [[nodiscard]] Verdict layOn(const model::Joint* joint) const;

    std::optional<Result<editing::Edit>> m_pending;
    std::vector<Guide> m_guides;

private:
    SketchDesk& m_desk;
};

} // namespace sealwalk::ui
