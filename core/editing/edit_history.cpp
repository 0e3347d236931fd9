// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/edit_history.h"

#include "core/base/contract.h"

#include <utility>

namespace sealwalk::editing {

Status EditHistory::perform(model::Sketch& sketch, const Edit& edit, const PointSet& withReadings)
{
    Result<Edit> inverse = apply(sketch, edit, withReadings);
    if (!inverse)
        return fail(inverse.error());
    performed(std::move(*inverse));
    return {};
}

Status EditHistory::undo(model::Sketch& sketch, const PointSet& withReadings)
{
    if (m_undo.empty())
        return fail(ErrorCode::NotFound, "there is nothing to undo");
    Result<Edit> inverse = apply(sketch, m_undo.back(), withReadings);
    if (!inverse)
        return fail(inverse.error());
    undone(std::move(*inverse));
    return {};
}

Status EditHistory::redo(model::Sketch& sketch, const PointSet& withReadings)
{
    if (m_redo.empty())
        return fail(ErrorCode::NotFound, "there is nothing to redo");
    Result<Edit> inverse = apply(sketch, m_redo.back(), withReadings);
    if (!inverse)
        return fail(inverse.error());
    redone(std::move(*inverse));
    return {};
}

void EditHistory::performed(Edit inverse)
{
    if (inverse.isEmpty())
        return;
    m_undo.push_back(std::move(inverse));
    m_redo.clear();
}

void EditHistory::undone(Edit inverse)
{
    SEALWALK_EXPECT(!m_undo.empty());
    m_undo.pop_back();
    m_redo.push_back(std::move(inverse));
}

void EditHistory::redone(Edit inverse)
{
    SEALWALK_EXPECT(!m_redo.empty());
    m_redo.pop_back();
    m_undo.push_back(std::move(inverse));
}

void EditHistory::clear()
{
    m_undo.clear();
    m_redo.clear();
}

} // namespace sealwalk::editing
