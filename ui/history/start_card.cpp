// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/start_card.h"

#include "ui/render/icon.h"
#include "ui/render/theme.h"

#include <QKeySequence>
#include <QPainter>

namespace sealwalk::ui {

namespace {

using render::Role;

constexpr int kWidth = 560;
constexpr int kHeight = 76;
constexpr int kIcon = 32;
constexpr int kKey = 22;

} // namespace

StartCard::StartCard(const QString& icon, const QString& title, const QString& below, Qt::Key key,
                     QWidget* parent)
    : QAbstractButton(parent)
    , m_icon(icon)
    , m_below(below)
    , m_key(QKeySequence(key).toString())
{
    setText(title);
    setAccessibleName(title);
    setAccessibleDescription(below);
    setShortcut(QKeySequence(key));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setFixedHeight(kHeight);
    setMinimumWidth(kWidth / 2);
    setMaximumWidth(kWidth);
}

QSize StartCard::sizeHint() const
{
    return {kWidth, kHeight};
}

void StartCard::paintEvent(QPaintEvent* /*event*/)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool focused = hasFocus();
    painter.setPen(QPen(theme.colour(focused ? Role::Accent : Role::Edge), focused ? 2 : 1));
    painter.setBrush(theme.colour(isDown() || underMouse() ? Role::AccentWash : Role::Field));
    const double inset = focused ? 1.0 : 0.5;
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), render::kFieldRadius,
                            render::kFieldRadius);
    render::paintIcon(painter, m_icon, QRectF(19, (kHeight - kIcon) / 2.0, kIcon, kIcon),
                      theme.colour(Role::Accent));

    const int left = 69;
    const int room = width() - left - 50;
    painter.setPen(theme.colour(Role::Ink));
    painter.setFont(render::font(render::TextSize::Title, render::Weight::Bold));
    painter.drawText(QRect(left, 17, room, 24), Qt::AlignLeft | Qt::AlignVCenter, text());
    painter.setPen(theme.colour(Role::InkSoft));
    painter.setFont(render::font(render::TextSize::Text));
    painter.drawText(QRect(left, 40, room, 18), Qt::AlignLeft | Qt::AlignVCenter, m_below);

    const QRectF key(width() - 19 - kKey, (kHeight - kKey + 2) / 2.0, kKey, kKey - 2);
    painter.setPen(QPen(theme.colour(Role::Edge), 1));
    painter.setBrush(theme.colour(Role::Field));
    painter.drawRoundedRect(key, render::kFieldRadius, render::kFieldRadius);
    painter.setPen(theme.colour(Role::Ink));
    painter.setFont(render::font(render::TextSize::Caption, render::Weight::Bold));
    painter.drawText(key, Qt::AlignCenter, m_key);
}

} // namespace sealwalk::ui
