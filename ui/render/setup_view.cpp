// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/setup_view.h"

#include "ui/render/setup_painter.h"

#include <QPainter>

#include <cmath>
#include <utility>

namespace sealwalk::render {

namespace {

constexpr int kLikedWidth = 396;

} // namespace

SetupView::SetupView(QWidget* parent)
    : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Set-up"));
}

void SetupView::setSketch(report::SetupSketch sketch)
{
    m_sketch = std::move(sketch);
    setAccessibleDescription(QString::fromStdString(m_sketch.spoken()));
    updateGeometry();
    update();
}

int SetupView::heightForWidth(int width) const
{
    return static_cast<int>(std::ceil(LaidSetup(m_sketch, width).height()));
}

QSize SetupView::sizeHint() const
{
    return {kLikedWidth, heightForWidth(kLikedWidth)};
}

void SetupView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    LaidSetup(m_sketch, width()).paint(painter, Theme::of(this), {});
}

} // namespace sealwalk::render
