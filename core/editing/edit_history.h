// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo of a sketch over a whole session: one gesture, one step.
#pragma once

#include "core/editing/edit.h"

namespace sealwalk::editing {

class EditHistory
{
public:
    [[nodiscard]] bool canUndo() const { return !m_undo.empty(); }
    [[nodiscard]] bool canRedo() const { return !m_redo.empty(); }
    /// What the next undo or redo takes back or brings again; empty when there is none.
    [[nodiscard]] std::string undoText() const { return m_undo.empty() ? "" : m_undo.back().what; }
    [[nodiscard]] std::string redoText() const { return m_redo.empty() ? "" : m_redo.back().what; }

    /// Applies and remembers. An edit that changes nothing is not remembered. On failure nothing changes,
    /// here or in the sketch.
    Status perform(model::Sketch& sketch, const Edit& edit, const PointSet& withReadings = {});
    /// Takes the last edit back. With nothing to take back: ErrorCode::NotFound.
    Status undo(model::Sketch& sketch, const PointSet& withReadings = {});
    Status redo(model::Sketch& sketch, const PointSet& withReadings = {});

    /// The same in two halves, for callers that store the sketch between applying and remembering:
    /// the edit to apply next, and then what its application answered.
    [[nodiscard]] const Edit* nextUndo() const { return m_undo.empty() ? nullptr : &m_undo.back(); }
    [[nodiscard]] const Edit* nextRedo() const { return m_redo.empty() ? nullptr : &m_redo.back(); }
    void performed(Edit inverse);
    void undone(Edit inverse);
    void redone(Edit inverse);

    /// Forgets everything, as when another sketch is opened.
    void clear();

private:
    std::vector<Edit> m_undo;
    std::vector<Edit> m_redo;
};

} // namespace sealwalk::editing
