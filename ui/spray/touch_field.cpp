// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/touch_field.h"

#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/spray/touch_size.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr double kIcon = 26.0;
constexpr double kUnderIcon = 6.0;
constexpr double kBelow = 16.0;

/// What icon, word and the words below need, on a screen whose 20 mm are fewer pixels than that.
int heightWithIcon()
{
    const double word = QFontMetricsF(render::font(TextSize::Strong, render::Weight::Bold)).height();
    return static_cast<int>(std::ceil(kIcon + kUnderIcon + word + kBelow + 2.0 * render::kGapTight));
}

} // namespace

TouchField::TouchField(const QString& icon, QWidget* parent)
    : QAbstractButton(parent)
    , m_icon(icon)
{
    setFocusPolicy(Qt::NoFocus); // the keys belong to the entry field
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    const int glove = pixelsOn(screen(), kGloveMillimetres);
    setMinimumHeight(icon.isEmpty() ? glove : std::max(glove, heightWithIcon()));
    setMinimumWidth(glove);
}

QSize TouchField::sizeHint() const
{
    return {std::max(104, minimumWidth()), minimumHeight()};
}

void TouchField::setWords(const QString& word, const QString& below)
{
    if (word == text() && below == m_below)
        return;
    setText(word);
    m_below = below;
    setAccessibleName(below.isEmpty() ? word : word + QStringLiteral(", ") + below);
    update();
}

void TouchField::setIcon(const QString& icon)
{
    m_icon = icon;
    update();
}

void TouchField::setWanted(bool wanted)
{
    if (wanted == m_wanted)
        return;
    m_wanted = wanted;
    update();
}

void TouchField::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Role ground = isDown() ? Role::AccentWash : m_wanted ? Role::Accent : Role::Field;
    const Role ink = !isEnabled() ? Role::Disabled : m_wanted && !isDown() ? Role::OnAccent : Role::Ink;
    painter.setPen(theme.colour(m_wanted ? Role::Accent : Role::Edge));
    painter.setBrush(theme.colour(ground));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), render::kFieldRadius,
                            render::kFieldRadius);

    const bool hasIcon = !m_icon.isEmpty();
    const double below = m_below.isEmpty() ? 0.0 : kBelow;
    const QFont word =
        render::font(hasIcon || text().size() > 2 ? TextSize::Strong : TextSize::Head, render::Weight::Bold);
    const double room = width() - 2.0 * render::kGapTight;
    const QRectF lines =
        QFontMetricsF(word).boundingRect(QRectF(0, 0, room, height()), Qt::TextWordWrap, text());
    const double wordHeight = lines.height();
    double y = (height() - (hasIcon ? kIcon + kUnderIcon : 0.0) - wordHeight - below) / 2.0;
    if (hasIcon) {
        render::paintIcon(painter, m_icon, QRectF((width() - kIcon) / 2.0, y, kIcon, kIcon),
                          theme.colour(ink));
        y += kIcon + kUnderIcon;
    }
    painter.setPen(theme.colour(ink));
    painter.setFont(word);
    painter.drawText(QRectF(render::kGapTight, y, room, wordHeight), Qt::AlignCenter | Qt::TextWordWrap,
                     text());
    painter.setFont(render::font(TextSize::Text));
    painter.drawText(QRectF(0, y + wordHeight, width(), below), Qt::AlignCenter, m_below);
}

} // namespace sealwalk::ui
