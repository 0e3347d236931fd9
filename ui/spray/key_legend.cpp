// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/key_legend.h"

#include "ui/render/theme.h"

#include <QAbstractButton>
#include <QFontMetricsF>
#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr int kRowHeight = 30;
constexpr double kCapHeight = 20.0;

/// A key cap and its word; a button for the mouse, never in the way of the keyboard.
class KeyCap : public QAbstractButton
{
public:
    KeyCap(const LegendKey& key, QWidget* parent)
        : QAbstractButton(parent)
        , m_key(key)
    {
        setFocusPolicy(Qt::NoFocus);
        setAccessibleName(key.word + QStringLiteral(" (") + key.cap + QLatin1Char(')'));
        setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
    }

    [[nodiscard]] QSize sizeHint() const override
    {
        const QFontMetricsF word(render::font(TextSize::Strong));
        return {static_cast<int>(capWidth() + render::kGapNear + word.horizontalAdvance(m_key.word)) + 3,
                kRowHeight};
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        const render::Theme& theme = render::Theme::of(this);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF cap(0.5, (height() - kCapHeight) / 2.0 + 0.5, capWidth() - 1, kCapHeight - 1);
        painter.setPen(theme.colour(m_key.isOn ? Role::Ink : Role::Edge));
        painter.setBrush(theme.colour(m_key.isOn ? Role::Ink : Role::Field));
        painter.drawRoundedRect(cap, render::kFieldRadius, render::kFieldRadius);
        painter.setFont(render::font(TextSize::Text, render::Weight::Bold));
        painter.setPen(theme.colour(m_key.isOn ? Role::Field : Role::Ink));
        painter.drawText(cap, Qt::AlignCenter, m_key.cap);
        painter.setFont(render::font(TextSize::Strong));
        painter.setPen(theme.colour(isDown() ? Role::Accent : Role::Ink));
        painter.drawText(QRectF(cap.right() + render::kGapNear, 0, width(), height()), Qt::AlignVCenter,
                         m_key.word);
    }

private:
    [[nodiscard]] double capWidth() const
    {
        const QFontMetricsF metrics(render::font(TextSize::Text, render::Weight::Bold));
        return std::max(kCapHeight, metrics.horizontalAdvance(m_key.cap) + 2 * render::kGapTight + 4);
    }

    LegendKey m_key;
};

} // namespace

KeyLegend::KeyLegend(QWidget* parent)
    : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
}

void KeyLegend::setKeys(const std::vector<std::vector<LegendKey>>& rows)
{
    if (rows == m_rows)
        return;
    m_rows = rows;
    auto* column = static_cast<QVBoxLayout*>(layout());
    while (QLayoutItem* item = column->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // it may be the one whose click brought us here
        delete item;
    }
    for (const auto& row : rows) {
        auto* line = new QWidget(this);
        auto* cells = new QHBoxLayout(line);
        cells->setContentsMargins(0, 0, 0, 0);
        cells->setSpacing(render::kGapNear);
        for (const LegendKey& key : row) {
            auto* cap = new KeyCap(key, line);
            connect(cap, &QAbstractButton::clicked, this, [this, code = key.key] { emit pressed(code); });
            cells->addWidget(cap);
        }
        cells->addStretch();
        column->addWidget(line);
    }
}

} // namespace sealwalk::ui
