// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/distance_view.h"

#include "ui/render/plate_painter.h"
#include "ui/render/theme.h"

#include <QFontMetricsF>
#include <QMouseEvent>
#include <QPainter>
#include <QTimer>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using render::Role;

// Sizes at a window of 768 lines, where 4.41 px are a millimetre on a 14 inch panel; they scale with the
// height. Digits of 29 mm subtend 20 arc-minutes at 5 m.
constexpr double kDesignHeight = 768.0;
constexpr double kWord = 172.0;
constexpr double kNumber = 300.0;
constexpr double kValue = 190.0;
constexpr double kPlace = 40.0;
constexpr double kMostForClock = 0.5; // of the room beside the sign

/// The largest font up to `pixels` in which `text` fits `room`.
QFont fitting(const QString& text, double pixels, double room)
{
    const QFont font = render::fontOfPixels(pixels, render::Weight::Bold);
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    return width <= room ? font : render::fontOfPixels(pixels * room / width, render::Weight::Bold);
}

} // namespace

DistanceView::DistanceView(QWidget* parent)
    : QWidget(parent)
{
    setFocusPolicy(Qt::NoFocus); // the keys belong to the entry field
    setAccessibleName(tr("Distance view"));
    hide();
}

void DistanceView::show(const DistanceShown& shown)
{
    m_shown = shown;
    setAccessibleDescription(
        QStringList{shown.state.word, shown.number, shown.value}.join(QStringLiteral(", ")));
    update();
}

void DistanceView::flash()
{
    m_flashes = true;
    update();
    QTimer::singleShot(kFlashMilliseconds, this, [this] {
        m_flashes = false;
        update();
    });
}

void DistanceView::mousePressEvent(QMouseEvent* event)
{
    event->accept();
}

/// Not before the finger is gone: its release would else fall on what appears beneath it.
void DistanceView::mouseReleaseEvent(QMouseEvent* event)
{
    event->accept();
    hide();
}

void DistanceView::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.colour(Role::Panel));
    const double scale = height() / kDesignHeight;
    const double w = width();
    const double gap = 24 * scale;

    const QRectF top(0, 0, w, height() * 0.27);
    paintStateFilling(painter, *this, top, m_shown.state.state, m_shown.state.progress);
    if (m_flashes)
        painter.fillRect(top, theme.colour(Role::Accent));
    const double sign = top.height() * 0.6;
    paintStateSign(painter, *this, QRectF(gap, top.center().y() - sign / 2, sign, sign), m_shown.state.state);
    const Role ink = m_shown.state.state == CallState::Go ? Role::OnGo : Role::Ink;
    painter.setPen(theme.colour(ink));
    // The clock is read as far as the word is; the word of a language with long ones gives way to it.
    QRectF room(1.5 * gap + sign, 0, w - 2.5 * gap - sign, top.height());
    if (!m_shown.state.figure.isEmpty()) {
        painter.setFont(fitting(m_shown.state.figure, kWord * scale, room.width() * kMostForClock));
        painter.drawText(room, Qt::AlignRight | Qt::AlignVCenter, m_shown.state.figure);
        room.setRight(room.right() - QFontMetricsF(painter.font()).horizontalAdvance(m_shown.state.figure) -
                      gap / 2);
    }
    painter.setFont(fitting(m_shown.state.word, kWord * scale, room.width()));
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, m_shown.state.word);

    painter.setPen(theme.colour(Role::Ink));
    const QRectF middle(gap, top.bottom(), w - 2 * gap, height() * 0.40);
    painter.setFont(fitting(m_shown.number, kNumber * scale, middle.width() * 0.5));
    const double numberWidth = QFontMetricsF(painter.font()).horizontalAdvance(m_shown.number);
    painter.drawText(middle, Qt::AlignLeft | Qt::AlignVCenter, m_shown.number);
    painter.setFont(render::fontOfPixels(kPlace * scale));
    painter.drawText(middle.adjusted(numberWidth + gap, 0, 0, 0), Qt::AlignVCenter | Qt::TextWordWrap,
                     m_shown.place);

    const QRectF bottom(gap, middle.bottom(), w - 2 * gap, height() - middle.bottom() - gap);
    painter.setPen(theme.colour(Role::Line));
    painter.drawLine(bottom.topLeft(), bottom.topRight());
    const double captionHeight = kPlace * 1.3 * scale;
    painter.setFont(render::fontOfPixels(kPlace * 0.8 * scale));
    painter.setPen(theme.colour(Role::InkSoft));
    painter.drawText(QRectF(bottom.left(), bottom.top(), bottom.width(), captionHeight),
                     Qt::AlignLeft | Qt::AlignVCenter, m_shown.caption);
    const QRectF figure = bottom.adjusted(0, captionHeight, 0, 0);
    painter.setFont(fitting(m_shown.value, kValue * scale, figure.width() * 0.6));
    painter.setPen(theme.colour(m_shown.typing ? Role::Accent : Role::Ink));
    painter.drawText(figure, Qt::AlignLeft | Qt::AlignVCenter, m_shown.value);
    painter.setFont(render::fontOfPixels(kPlace * scale, render::Weight::Bold));
    if (m_shown.standWord.isEmpty())
        return;
    painter.setPen(render::verdictColour(theme, m_shown.stand));
    const double words = figure.width() * 0.22;
    painter.drawText(QRectF(figure.right() - words, figure.top(), words, figure.height()),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_shown.standWord);
    const double glyph = kValue * 0.6 * scale;
    render::paintLimitGlyph(
        painter, theme, m_shown.stand,
        QRectF(figure.right() - words - gap - glyph, figure.center().y() - glyph / 2, glyph, glyph));
}

} // namespace sealwalk::ui
