// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/gesture_line.h"

#include "ui/render/theme.h"

#include <QLocale>
#include <QPainter>

#include <cmath>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kSide = 12.0;
constexpr double kKeyHeight = 20.0;

QString figure(double value)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(std::round(value) + 0.0, 'f', 0).replace(QLatin1Char('-'), QChar(0x2212));
}

} // namespace

GestureLine::GestureLine(QWidget* parent)
    : QWidget(parent)
{
    setFixedHeight(30);
    setAccessibleName(tr("Keys of the tool"));
}

void GestureLine::setTool(const QString& title, const std::vector<KeyHint>& hints)
{
    m_title = title;
    m_hints = hints;
    QString spoken = title;
    for (const KeyHint& hint : hints)
        spoken += QStringLiteral("; %1: %2").arg(hint.keys, hint.does);
    setAccessibleDescription(spoken);
    update();
}

void GestureLine::setTyping(const QString& text)
{
    if (text == m_typing)
        return;
    m_typing = text;
    update();
}

void GestureLine::setHand(double x, double up)
{
    m_hand = tr("x %1, up %2 mm").arg(figure(x), figure(up));
    update(QRect(width() - 260, 0, 260, height()));
}

void GestureLine::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(Role::Panel));
    painter.setPen(theme.colour(Role::Line));
    painter.drawLine(0, 0, width(), 0);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFont bold = render::font(render::TextSize::Text, render::Weight::Bold);
    const QFont text = render::font(render::TextSize::Text);
    const QFont key = render::font(render::TextSize::Caption, render::Weight::Bold);
    double x = kSide;
    const auto write = [&](const QFont& font, const QString& what, const QColor& ink) {
        painter.setFont(font);
        painter.setPen(ink);
        const double wide = QFontMetricsF(font).horizontalAdvance(what);
        painter.drawText(QRectF(x, 0.0, wide + 2.0, height()), Qt::AlignVCenter | Qt::AlignLeft, what);
        x += wide;
    };
    const double handWide = QFontMetricsF(text).horizontalAdvance(m_hand);
    const double end = width() - kSide - handWide - 16.0;
    write(bold, m_title, theme.colour(Role::Ink));
    if (!m_typing.isEmpty()) {
        x += 16.0;
        write(text, m_typing, theme.colour(Role::Accent));
    } else {
        for (const KeyHint& hint : m_hints) {
            const double keyWide = QFontMetricsF(key).horizontalAdvance(hint.keys) + 12.0;
            const double wide = 16.0 + keyWide + 6.0 + QFontMetricsF(text).horizontalAdvance(hint.does);
            if (x + wide > end)
                break; // F1 shows the rest
            x += 16.0;
            const QRectF box(x, (height() - kKeyHeight) / 2.0 + 0.5, keyWide, kKeyHeight - 1.0);
            painter.setPen(QPen(theme.colour(Role::Edge), 1.0));
            painter.setBrush(theme.colour(Role::Field));
            painter.drawRoundedRect(box, 2.0, 2.0);
            painter.setFont(key);
            painter.setPen(theme.colour(Role::Ink));
            painter.drawText(box, Qt::AlignCenter, hint.keys);
            x += keyWide + 6.0;
            write(text, hint.does, theme.colour(Role::Ink));
        }
    }
    painter.setFont(text);
    painter.setPen(theme.colour(Role::InkSoft));
    painter.drawText(QRectF(0.0, 0.0, width() - kSide, height()), Qt::AlignVCenter | Qt::AlignRight, m_hand);
}

} // namespace sealwalk::ui
