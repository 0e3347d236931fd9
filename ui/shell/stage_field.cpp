// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/stage_field.h"

#include "ui/render/icon.h"
#include "ui/render/theme.h"

#include <QPainter>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::Theme;

constexpr int kMargin = 12;
constexpr int kIcon = 22;
constexpr int kTextLeft = 43;
constexpr int kThread = 5;
constexpr double kThin = 1.5;
constexpr double kSkip = 3.0;

void paintThread(QPainter& painter, const QRectF& where, const StageProgress& progress, const QColor& ink)
{
    const double middle = where.center().y();
    // Dashes are counted in pen widths.
    QPen dashed(ink, kThin);
    dashed.setCapStyle(Qt::FlatCap);
    dashed.setDashPattern({5.0 / kThin, 4.0 / kThin});
    QPen ladder(ink, where.height());
    ladder.setCapStyle(Qt::FlatCap);
    ladder.setDashPattern({3.0 / where.height(), 3.0 / where.height()});

    double dashedFrom = where.left();
    switch (progress.thread) {
    case StageProgress::Thread::Done:
        painter.fillRect(where, ink);
        return;
    case StageProgress::Thread::Open:
        painter.setPen(ladder);
        painter.drawLine(QPointF(where.left(), middle), QPointF(where.right(), middle));
        return;
    case StageProgress::Thread::UnderWay: {
        QRectF done = where;
        done.setWidth(where.width() * progress.share);
        painter.fillRect(done, ink);
        dashedFrom = done.right() + kSkip;
        break;
    }
    case StageProgress::Thread::NotBegun:
        break;
    }
    painter.setPen(dashed);
    painter.drawLine(QPointF(dashedFrom, middle), QPointF(where.right(), middle));
}

} // namespace

StageField::StageField(Stage stage, QWidget* parent)
    : QAbstractButton(parent)
    , m_stage(stage)
{
    setCheckable(true);
    setObjectName(QStringLiteral("stage-") + stageKey(stage));
    setText(stageTitle(stage));
    setToolTip(tr("%1 (Alt+%2)").arg(stageTitle(stage)).arg(static_cast<int>(stage) + 1));
    setAccessibleName(stageTitle(stage));
    setFocusPolicy(Qt::TabFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setMinimumWidth(kTextLeft + kMargin);
}

void StageField::setProgress(const StageProgress& progress)
{
    if (progress == m_progress)
        return;
    m_progress = progress;
    setAccessibleDescription(progress.text);
    update();
}

QSize StageField::sizeHint() const
{
    return {kWidth, render::kStageStrip};
}

void StageField::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = Theme::of(this);
    const bool chosen = isChecked();
    const bool usable = isEnabled();
    const QColor ink = theme.colour(chosen ? Role::Ink : usable ? Role::OnStrip : Role::StripSoft);
    const QColor soft = theme.colour(chosen ? Role::InkSoft : Role::StripSoft);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.colour(chosen ? Role::Panel : Role::Strip));
    const QFont strong = render::font(render::TextSize::Strong, render::Weight::Bold);
    const int room = width() - kTextLeft - 4;
    if (QFontMetrics(strong).horizontalAdvance(text()) <= room) {
        render::paintIcon(painter, stageIcon(m_stage), QRectF(kMargin, 8, kIcon, kIcon), ink);
        painter.setPen(ink);
        painter.setFont(strong);
        painter.drawText(QRect(kTextLeft, 5, room, 17), Qt::AlignLeft | Qt::AlignVCenter, text());
        painter.setPen(soft);
        const QFont caption = render::font(render::TextSize::Caption);
        painter.setFont(caption);
        const QString second = QFontMetrics(caption).elidedText(m_progress.text, Qt::ElideRight, room);
        painter.drawText(QRect(kTextLeft, 21, room, 15), Qt::AlignLeft | Qt::AlignVCenter, second);
    } else { // the name beneath its icon, whole; how far it is says the thread
        const QFont caption = render::font(render::TextSize::Caption, render::Weight::Bold);
        render::paintIcon(painter, stageIcon(m_stage), QRectF((width() - kIcon) / 2.0, 2, kIcon, kIcon), ink);
        painter.setPen(ink);
        painter.setFont(caption);
        painter.drawText(QRect(0, 23, width(), 14), Qt::AlignCenter,
                         QFontMetrics(caption).elidedText(text(), Qt::ElideRight, width() - 2));
    }

    const QRectF thread(kMargin, height() - 2 - kThread, width() - 2 * kMargin, kThread);
    paintThread(painter, thread, m_progress, theme.colour(chosen ? Role::Accent : Role::StripSoft));
    if (hasFocus()) {
        painter.setPen(QPen(theme.colour(chosen ? Role::Accent : Role::OnStrip), 2));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

} // namespace sealwalk::ui
