// SPDX-License-Identifier: GPL-3.0-or-later
// The measures of a shape that stand on its dimension lines and can be typed over.
#pragma once

#include "core/geometry/shape.h"

#include <QString>

#include <optional>
#include <vector>

namespace sealwalk::ui {

/// One measure: "width", 860 mm.
struct Size
{
    QString name; ///< for the gesture line and screen readers
    QString sign; ///< in front of the figure on its plate: "r", "⌀"
    double value = 0.0;
    bool isCount = false;  ///< a number of things, not millimetres
    bool isSigned = false; ///< may be below zero: a place
};

std::vector<Size> sizesOf(const geometry::Shape& shape);
/// The shape with other measures, about the same centre; as many values as sizesOf() answers. A corner radius
/// that no longer fits is made as large as fits, unless it was typed.
geometry::Shape withSizes(const geometry::Shape& shape, const std::vector<double>& values, bool radiusTyped);

/// A measure on a line beside its shape.
struct Dimension
{
    enum class Side
    {
        Below,  ///< a horizontal line under the shape
        Right,  ///< a vertical line at its right
        Corner, ///< a leader from the upper right corner inwards
        Across, ///< a leader from the rim, for rings
    };
    Side side = Side::Below;
    std::size_t size = 0; ///< index into sizesOf()
    geometry::Point from;
    geometry::Point to;
};
std::vector<Dimension> dimensionsOf(const geometry::Shape& shape);

/// Sizes being typed: digits, one after the other with Tab.
class SizeEntry
{
public:
    [[nodiscard]] bool isActive() const { return m_active; }
    [[nodiscard]] std::size_t current() const { return m_current; }
    /// What stands on the plate of a size: typed text, else nothing.
    [[nodiscard]] QString text(std::size_t size) const
    {
        return size < m_texts.size() ? m_texts[size] : QString();
    }
    [[nodiscard]] bool wasTyped(std::size_t size) const { return !text(size).isEmpty(); }

    void begin(std::size_t sizes, std::size_t first);
    void clear();
    void type(QChar character);
    void erase();
    void next(int step);
    /// Typed values, and those of `sizes` where nothing was typed; none while a text is no number.
    [[nodiscard]] std::optional<std::vector<double>> values(const std::vector<Size>& sizes) const;

private:
    bool m_active = false;
    std::size_t m_current = 0;
    std::vector<QString> m_texts;
};

} // namespace sealwalk::ui
