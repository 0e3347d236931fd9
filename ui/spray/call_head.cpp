// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/call_head.h"

#include "ui/render/theme.h"
#include "ui/widgets/below_field.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QToolButton>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr int kHeight = 104;
constexpr int kLowHeight = 50; // in a low window: half as large, all in two lines
constexpr int kLoggerHeight = 20;
constexpr double kNumberWidth = 150.0;
constexpr double kChipHeight = 20.0;
constexpr double kLeastChip = 60.0; // less of a chip says nothing

} // namespace

CallHead::CallHead(QWidget* parent)
    : QWidget(parent)
    , m_logger(new QToolButton(this))
{
    setFixedHeight(kHeight);
    setAccessibleName(tr("Called point"));
    m_logger->setObjectName(QStringLiteral("logger"));
    m_logger->setProperty("kind", QStringLiteral("caption"));
    m_logger->setFocusPolicy(Qt::NoFocus); // the keys belong to the field; Ctrl+L is the key for it
    m_logger->setToolTip(tr("Stands on every reading; a click or Ctrl+L changes it"));
    m_logger->setCursor(Qt::PointingHandCursor);
    connect(m_logger, &QToolButton::clicked, this, &CallHead::loggerWanted);
    setLogger({});
}

void CallHead::setLogger(const QString& name)
{
    m_logger->setText(name.isEmpty() ? tr("Nobody is logging: Ctrl+L") : tr("Logging: %1").arg(name));
    m_logger->setAccessibleName(m_logger->text());
    setStyleProperty(m_logger, "isMissing", name.isEmpty() ? QStringLiteral("true") : QString());
    placeLogger();
}

/// In the corner, above the joint's name; in a low window at the end of the second line.
void CallHead::placeLogger()
{
    m_logger->ensurePolished();
    const QSize wanted(std::min(m_logger->sizeHint().width(), width()), kLoggerHeight);
    m_logger->setGeometry(width() - wanted.width(), height() < kHeight ? height() - kLoggerHeight - 2 : 0,
                          wanted.width(), wanted.height());
}

void CallHead::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeLogger();
}

QSize CallHead::sizeHint() const
{
    return {440, height()};
}

void CallHead::setLow(bool isLow)
{
    setFixedHeight(isLow ? kLowHeight : kHeight);
    placeLogger();
    update();
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
    const double shrink = static_cast<double>(height()) / kHeight;
    const double most = kNumberWidth * shrink;
    // Four digits shrink rather than push the place off.
    number = render::fontOfPixels(static_cast<double>(TextSize::Call) * shrink *
                                      std::min(1.0, kNumberWidth / std::max(1.0, width)),
                                  render::Weight::Bold);
    painter.setFont(number);
    const double right = std::min(most, width * shrink) + render::kGapFar;
    painter.drawText(QRectF(0, 0, most, height()), Qt::AlignLeft | Qt::AlignVCenter, m_number);

    const double room = this->width() - right;
    const auto line = [&](TextSize size, render::Weight weight, double top, double wide,
                          const QString& text) {
        painter.setFont(render::font(size, weight));
        painter.setPen(theme.colour(Role::Ink));
        const QString fitted = QFontMetricsF(painter.font()).elidedText(text, Qt::ElideRight, wide);
        painter.drawText(QRectF(right, top, wide, 26), Qt::AlignLeft | Qt::AlignVCenter, fitted);
    };
    const bool isLow = height() < kHeight;
    line(TextSize::Head, render::Weight::Bold, isLow ? 0 : 20, room, m_joint);
    if (m_chips.isEmpty() && !isLow) { // a sentence, with the room of the chips
        painter.setFont(render::font(TextSize::Title));
        painter.setPen(theme.colour(Role::Ink));
        painter.drawText(QRectF(right, 48, room, height() - 48.0),
                         Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_place);
    } else {
        line(TextSize::Title, render::Weight::Normal, isLow ? 24 : 44,
             isLow ? room - m_logger->width() - render::kGapNear : room, m_place);
    }

    double left = right + 0.5;
    if (isLow) // beside the joint's name
        left += QFontMetricsF(render::font(TextSize::Head, render::Weight::Bold)).horizontalAdvance(m_joint) +
                render::kGapBlock;
    painter.setFont(render::font(TextSize::Text));
    const QFontMetricsF metrics(painter.font());
    for (const QString& chip : m_chips) {
        // The last one, a remark, may be longer than there is room for.
        const double inside = this->width() - 1.0 - left - 2 * render::kGapNear;
        const QString fitted = metrics.elidedText(chip, Qt::ElideRight, inside);
        if (metrics.horizontalAdvance(chip) > inside && inside < kLeastChip)
            break;
        const QRectF box(left, isLow ? 3.5 : 75.5, metrics.horizontalAdvance(fitted) + 2 * render::kGapNear,
                         kChipHeight);
        painter.setPen(theme.colour(Role::Ink));
        painter.setBrush(theme.colour(Role::Field));
        painter.drawRoundedRect(box, kChipHeight / 2, kChipHeight / 2);
        painter.drawText(box, Qt::AlignCenter, fitted);
        left = box.right() + render::kGapNear;
    }
}

} // namespace sealwalk::ui
