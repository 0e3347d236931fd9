// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/walk_line.h"

#include "ui/render/theme.h"
#include "ui/spray/spray_controller.h"
#include "ui/spray/spray_words.h"
#include "ui/spray/touch_size.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace sealwalk::ui {

namespace {

constexpr int kComing = 3; // as many as one remembers

/// The numbers that follow the called point in the walk.
QStringList comingNumbers(const SprayController& controller)
{
    QStringList numbers;
    bool isPast = !controller.call().has_value();
    for (const analysis::WalkStep& step : controller.walk()) {
        if (isPast && !step.isDone() && numbers.size() < kComing)
            numbers << QString::number(step.number);
        isPast = isPast || step.point == controller.call()->point;
    }
    return numbers;
}

} // namespace

WalkLine::WalkLine(const SprayController& controller, QWidget* parent)
    : QWidget(parent)
    , m_controller(controller)
    , m_text(new QLabel(this))
    , m_order(new QPushButton(tr("Order …  P"), this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(render::kGapApart, 0, render::kGapApart, render::kGapTight);
    row->addWidget(m_text, 1);
    m_order->setAccessibleName(tr("Change the order of the walk"));
    m_order->setFocusPolicy(Qt::NoFocus);
    row->addWidget(m_order);
    connect(m_order, &QPushButton::clicked, this, &WalkLine::orderWanted);
    connect(&m_controller, &SprayController::changed, this, &WalkLine::refresh);
    refresh();
}

void WalkLine::setTargetHeight(int pixels)
{
    ui::setTargetHeight(*m_order, pixels);
}

void WalkLine::refresh()
{
    QStringList parts{tr("<b>%1</b> of %2").arg(m_controller.done()).arg(m_controller.calls()),
                      timeLeftText(m_controller)};
    if (const QStringList coming = comingNumbers(m_controller); !coming.isEmpty())
        parts << tr("then %1").arg(coming.join(QStringLiteral(", ")));
    m_text->setText(parts.join(QStringLiteral(" · ")));
}

} // namespace sealwalk::ui
