// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/state_bar.h"

#include "ui/render/theme.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QTimer>

#include <cmath>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr int kHeight = 78;
constexpr int kLowHeight = 54; // in a low window
constexpr double kStripe = 12.0;
constexpr double kHintGap = 12.0; // between the two small texts

struct Look
{
    Role ground;
    Role ink;
    Role edge;
};

Look lookOf(CallState state)
{
    switch (state) {
    case CallState::Go:
        return {Role::GoFill, Role::OnGo, Role::GoFill};
    case CallState::Spray:
        return {Role::AccentWash, Role::Ink, Role::Accent};
    case CallState::Read:
        return {Role::AccentWash, Role::Ink, Role::Accent};
    case CallState::Wait:
        return {Role::Field, Role::Ink, Role::Edge};
    case CallState::Hold:
        return {Role::UnsureWash, Role::Ink, Role::Unsure};
    }
    return {Role::Field, Role::Ink, Role::Edge};
}

/// Upright stripes that run out to the right as the wait runs down.
void paintStripes(QPainter& painter, const QRectF& where, const QColor& colour, double progress)
{
    const double right = where.right() - where.width() * progress;
    for (double x = where.left(); x < right; x += 2 * kStripe)
        painter.fillRect(QRectF(x, where.top(), std::min(kStripe, right - x), where.height()), colour);
}

} // namespace

void paintStateFilling(QPainter& painter, const QWidget& widget, const QRectF& where, CallState state,
                       double progress)
{
    const render::Theme& theme = render::Theme::of(&widget);
    const Look look = lookOf(state);
    painter.save();
    QPainterPath clip;
    clip.addRoundedRect(where, render::kFieldRadius, render::kFieldRadius);
    painter.setClipPath(clip);
    painter.fillRect(where, theme.colour(look.ground));
    if (state == CallState::Spray) {
        QColor fill = theme.colour(Role::CallFill);
        fill.setAlphaF(0.35F);
        painter.fillRect(QRectF(where.left(), where.top(), where.width() * progress, where.height()), fill);
    } else if (state == CallState::Wait) {
        QColor stripe = theme.colour(Role::InkFaint);
        stripe.setAlphaF(0.30F);
        paintStripes(painter, where, stripe, progress);
    }
    painter.restore();
    painter.setPen(QPen(theme.colour(look.edge), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(where.adjusted(1, 1, -1, -1), render::kFieldRadius, render::kFieldRadius);
}

void paintStateSign(QPainter& painter, const QWidget& widget, const QRectF& square, CallState state)
{
    const QColor ink = render::Theme::of(&widget).colour(lookOf(state).ink);
    const double w = square.width();
    const QPointF c = square.center();
    painter.setPen(QPen(ink, w * 0.09));
    painter.setBrush(Qt::NoBrush);
    switch (state) {
    case CallState::Go:
        painter.drawEllipse(c, w * 0.34, w * 0.34);
        break;
    case CallState::Spray: {
        painter.setBrush(ink);
        painter.setPen(Qt::NoPen);
        painter.drawPolygon(QPolygonF{{c.x() - w * 0.26, c.y() - w * 0.34},
                                      {c.x() + w * 0.38, c.y()},
                                      {c.x() - w * 0.26, c.y() + w * 0.34}});
        break;
    }
    case CallState::Read:
        painter.drawLine(QPointF(c.x(), c.y() - w * 0.36), QPointF(c.x(), c.y() + w * 0.36));
        for (const double end : {-0.36, 0.36})
            painter.drawLine(QPointF(c.x() - w * 0.16, c.y() + w * end),
                             QPointF(c.x() + w * 0.16, c.y() + w * end));
        break;
    case CallState::Wait:
        painter.drawPolygon(QPolygonF{{c.x() - w * 0.24, c.y() - w * 0.36},
                                      {c.x() + w * 0.24, c.y() - w * 0.36},
                                      {c.x() - w * 0.24, c.y() + w * 0.36},
                                      {c.x() + w * 0.24, c.y() + w * 0.36}});
        break;
    case CallState::Hold:
        for (const double side : {-0.14, 0.14})
            painter.drawLine(QPointF(c.x() + w * side, c.y() - w * 0.34),
                             QPointF(c.x() + w * side, c.y() + w * 0.34));
        break;
    }
}

StateBar::StateBar(QWidget* parent)
    : QWidget(parent)
{
    setFixedHeight(kHeight);
    setAccessibleName(tr("State of the call"));
}

void StateBar::show(const StateShown& shown)
{
    m_shown = shown;
    setAccessibleName(shown.word);
    setAccessibleDescription(shown.hint + QStringLiteral(", ") + shown.figure);
    update();
}

void StateBar::setLow(bool isLow)
{
    setFixedHeight(isLow ? kLowHeight : kHeight);
}

void StateBar::flash()
{
    m_flashes = true;
    update();
    QTimer::singleShot(kFlashMilliseconds, this, [this] {
        m_flashes = false;
        update();
    });
}

void StateBar::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF all = rect();
    paintStateFilling(painter, *this, all, m_shown.state, m_shown.progress);
    if (m_flashes)
        painter.fillRect(all.adjusted(2, 2, -2, -2), theme.colour(Role::Accent));
    const bool isLow = height() < kHeight;
    const double sign = isLow ? 32 : 40;
    paintStateSign(painter, *this, QRectF(12, all.center().y() - sign / 2, sign, sign), m_shown.state);

    const Look look = lookOf(m_shown.state);
    painter.setPen(theme.colour(look.ink));
    const double left = 60;
    const double room = all.width() - left - render::kGapApart;
    const QRectF upper(left, isLow ? 2 : 6, room, isLow ? 30 : 40);
    painter.setFont(render::fontOfPixels(isLow ? 26 : 34, render::Weight::Bold));
    painter.drawText(upper, Qt::AlignLeft | Qt::AlignVCenter, m_shown.word);
    painter.drawText(upper, Qt::AlignRight | Qt::AlignVCenter, m_shown.figure);
    // What it is of stands whole; the hint has the rest.
    const QRectF lower(left, upper.bottom(), room, isLow ? 18 : 22);
    painter.setFont(render::font(TextSize::Strong));
    painter.drawText(lower, Qt::AlignRight | Qt::AlignVCenter, m_shown.figureHint);
    const QFontMetricsF metrics(painter.font());
    const double taken = metrics.horizontalAdvance(m_shown.figureHint);
    painter.drawText(
        lower, Qt::AlignLeft | Qt::AlignVCenter,
        metrics.elidedText(m_shown.hint, Qt::ElideRight, room - (taken > 0.0 ? taken + kHintGap : 0.0)));
}

} // namespace sealwalk::ui
