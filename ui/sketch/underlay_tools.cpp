// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/underlay_tools.h"

#include "core/editing/sheets.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

namespace sealwalk::ui {

namespace {

bool hasUnderlay(const SketchDesk& desk)
{
    return desk.sheetInView() != nullptr && desk.sheetInView()->underlay.has_value();
}

} // namespace

QString UnderlayTool::title() const
{
    return SketchWords::tr("Picture underneath");
}

std::vector<KeyHint> UnderlayTool::hints() const
{
    return {{SketchWords::tr("drag"), SketchWords::tr("move it")},
            {SketchWords::tr("arrows"), SketchWords::tr("1 mm, Shift 10 mm")},
            {QStringLiteral("U"), SketchWords::tr("another picture")},
            {QStringLiteral("K"), SketchWords::tr("scale it")},
            {SketchWords::tr("Del"), SketchWords::tr("take it away")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Verdict UnderlayTool::shifted(geometry::Vector by)
{
    if (!hasUnderlay(desk()))
        return {};
    model::Sheet sheet = *desk().sheetInView();
    sheet.underlay->corner = sheet.underlay->corner + by;
    m_pending = editing::changeSheet(desk().sketch(), sheet);
    return changed();
}

Verdict UnderlayTool::press(const Hand& hand)
{
    m_from = hand.place;
    return changed();
}

Verdict UnderlayTool::move(const Hand& hand, bool pressed)
{
    return pressed && m_from ? shifted(hand.place - *m_from) : Verdict{};
}

Verdict UnderlayTool::release(const Hand&)
{
    m_from.reset();
    return m_pending ? commitPending() : changed();
}

Verdict UnderlayTool::key(const QKeyEvent& event, const Hand& hand)
{
    const double step = hand.shift() ? 10.0 : 1.0;
    geometry::Vector by;
    if (event.key() == Qt::Key_Left)
        by.x = -step;
    else if (event.key() == Qt::Key_Right)
        by.x = step;
    else if (event.key() == Qt::Key_Up)
        by.y = step;
    else if (event.key() == Qt::Key_Down)
        by.y = -step;
    else if (event.key() == Qt::Key_Delete && hasUnderlay(desk())) {
        model::Sheet sheet = *desk().sheetInView();
        sheet.underlay.reset();
        m_pending = editing::changeSheet(desk().sketch(), sheet);
        return commitPending();
    } else
        return {};
    shifted(by);
    return m_pending ? commitPending() : changed();
}

Verdict UnderlayTool::cancel()
{
    const bool dragging = m_from.has_value();
    m_from.reset();
    if (dragging)
        return revert();
    return {VerdictKind::Done, std::nullopt, {}};
}

QString ScaleTool::title() const
{
    return SketchWords::tr("Scale of the picture");
}

std::vector<KeyHint> ScaleTool::hints() const
{
    if (m_both)
        return {{QStringLiteral("0–9"), SketchWords::tr("type the true length between the clicks, mm")},
                {SketchWords::tr("Enter"), SketchWords::tr("set the scale")},
                {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
    return {{SketchWords::tr("click"), m_a ? SketchWords::tr("the other end of the length")
                                           : SketchWords::tr("one end of a length you know")},
            {SketchWords::tr("Esc"), SketchWords::tr("leave it")}};
}

Verdict ScaleTool::press(const Hand& hand)
{
    if (!hasUnderlay(desk())) {
        desk().say(Severity::Caution,
                   SketchWords::tr("There is no picture under this sheet; press U to choose one."));
        return {VerdictKind::Done, std::nullopt, {}};
    }
    if (!m_a || m_both) {
        m_a = m_b = hand.place;
        m_both = false;
    } else if (geometry::distance(*m_a, hand.place) < hand.reach) {
        desk().say(Severity::Caution,
                   SketchWords::tr("The two clicks lie on one place; click the ends of a length you know, "
                                   "far apart."));
    } else {
        m_b = hand.place;
        m_both = true;
        desk().say(Severity::News, SketchWords::tr("Type the true length in millimetres, then Enter."));
    }
    return changed();
}

Verdict ScaleTool::move(const Hand& hand, bool)
{
    if (!m_a)
        return {};
    if (!m_both)
        m_b = hand.place;
    m_guides = {{*m_a, *m_b}};
    return changed();
}

std::vector<Size> ScaleTool::sizes() const
{
    if (!m_both)
        return {};
    return {{SketchWords::tr("true length"), {}, geometry::distance(*m_a, *m_b)}};
}

Verdict ScaleTool::typed(const std::vector<double>& values, const SizeEntry&, const Hand&)
{
    if (!m_both || values.empty() || !hasUnderlay(desk()))
        return {};
    model::Sheet sheet = *desk().sheetInView();
    const Result<model::Underlay> underlay = editing::scaled(*sheet.underlay, *m_a, *m_b, values.front());
    if (!underlay) {
        m_pending = fail(underlay.error());
        return changed();
    }
    sheet.underlay = *underlay;
    m_pending = editing::changeSheet(desk().sketch(), sheet);
    if (*m_pending)
        (*m_pending)->what = SketchWords::tr("scale of the picture set").toStdString();
    return changed();
}

Verdict ScaleTool::confirm(const Hand&)
{
    if (!m_pending) {
        desk().say(Severity::Caution,
                   m_both ? SketchWords::tr("Type the true length between the two clicks first.")
                          : SketchWords::tr("Click both ends of a length you know first."));
        return changed();
    }
    m_a.reset();
    m_b.reset();
    m_both = false;
    return commitPending();
}

Verdict ScaleTool::cancel()
{
    const bool begun = m_a.has_value();
    m_a.reset();
    m_b.reset();
    m_both = false;
    if (begun)
        return revert();
    return {VerdictKind::Done, std::nullopt, {}};
}

} // namespace sealwalk::ui
