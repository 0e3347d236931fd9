// SPDX-License-Identifier: GPL-3.0-or-later
// The decade ruler: a growing wedge in the colours of the map; hatched below what can be seen, toothed over
// the limit. Legend, entry check and scale in one.
#pragma once

#include "core/report/map_content.h"
#include "ui/render/band_style.h"
#include "ui/render/theme.h"

#include <QWidget>

#include <optional>

class QPainter;

namespace sealwalk::render {

struct RulerParts
{
    bool words = true;                            ///< "limit", "smallest detectable"
    bool unit = true;                             ///< at the head of an upright ruler
    std::optional<LeakRate> value;                ///< marked with a pointer
    std::optional<report::ShownGas::Range> range; ///< its 95 %, of the gas shown: a bar beside the wedge
};

/// Level ruler in a box at least 52 units high: words above, decades below.
void paintLevelRuler(QPainter& painter, const Theme& theme, const report::MapScale& scale,
                     const QRectF& where, const BandStyle& style, const RulerParts& parts = {});

/// Upright ruler in a box at least 110 units wide: wedge at the left, decades at its right.
void paintUprightRuler(QPainter& painter, const Theme& theme, const report::MapScale& scale,
                       const QRectF& where, const BandStyle& style, const RulerParts& parts = {});

class DecadeRuler : public QWidget
{
    Q_OBJECT

public:
    explicit DecadeRuler(Qt::Orientation orientation, QWidget* parent = nullptr);
    void setScale(const report::MapScale& scale);
    /// A value to point at, with its 95 % range of the gas shown if it has one; none: no pointer.
    void setValue(std::optional<LeakRate> value, std::optional<report::ShownGas::Range> range = {});
    [[nodiscard]] const report::MapScale& scale() const { return m_scale; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Qt::Orientation m_orientation;
    report::MapScale m_scale;
    RulerParts m_parts;
};

} // namespace sealwalk::render
