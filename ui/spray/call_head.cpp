// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/call_head.h"

#include "ui/render/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr int kHeight = 104;
constexpr double kNumberWidth = 150.0;
constexpr double kChipHeight = 20.0;

} // namespace

CallHead::CallHead(QWidget* parent)
    : QWidget(parent)
{
    setFixedHeight(kHeight);
    setAccessibleName(tr("Called point"));
}

QSize CallHead::sizeHint() const
{
    return {440, kHeight};
}

void CallHead::setCall(const QString& number, const QString& joint, const QString& place,
                       const QStringList& chips)
{
    m_number = number;
    m_joint = joint;
    m_place = place;
    m_chips = chips;
    setAccessibleName(number.isEmpty() ? tr("No point called") : tr("Called point %1").arg(number));
    setAccessibleDescription((QStringList{joint, place} + chips).join(QStringLiteral(", ")));
    update();
}

void CallHead::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);

    painter.setPen(theme.colour(Role::Ink));
    QFont number = render::font(TextSize::Call, render::Weight::Bold);
    const double width = QFontMetricsF(number).horizontalAdvance(m_number);
    if (width > kNumberWidth) // four digits shrink rather than push the place off
        number = render::fontOfPixels(static_cast<double>(TextSize::Call) * kNumberWidth / width,
                                      render::Weight::Bold);
    painter.setFont(number);
    const double right = std::min(kNumberWidth, width) + render::kGapFar;
    painter.drawText(QRectF(0, 0, kNumberWidth, kHeight), Qt::AlignLeft | Qt::AlignVCenter, m_number);

    const double room = this->width() - right;
    const auto line = [&](TextSize size, render::Weight weight, Role role, double top, const QString& text) {
        painter.setFont(render::font(size, weight));
        painter.setPen(theme.colour(role));
        const QString fitted = QFontMetricsF(painter.font()).elidedText(text, Qt::ElideRight, room);
        painter.drawText(QRectF(right, top, room, 26), Qt::AlignLeft | Qt::AlignVCenter, fitted);
    };
    line(TextSize::Head, render::Weight::Bold, Role::Ink, 10, m_joint);
    line(TextSize::Title, render::Weight::Normal, Role::Ink, 36, m_place);

    painter.setFont(render::font(TextSize::Text));
    const QFontMetricsF metrics(painter.font());
    double left = right + 0.5;
    for (const QString& chip : m_chips) {
        const QRectF box(left, 68.5, metrics.horizontalAdvance(chip) + 2 * render::kGapNear, kChipHeight);
        if (box.right() > this->width())
            break;
        painter.setPen(theme.colour(Role::Ink));
        painter.setBrush(theme.colour(Role::Field));
        painter.drawRoundedRect(box, kChipHeight / 2, kChipHeight / 2);
        painter.drawText(box, Qt::AlignCenter, chip);
        left = box.right() + render::kGapNear;
    }
}

} // namespace sealwalk::ui
