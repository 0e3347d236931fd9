// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sizes.h"

#include "ui/sketch/sketch_words.h"

#include <QLocale>

#include <algorithm>

namespace sealwalk::ui {

std::vector<Size> sizesOf(const geometry::Shape& shape)
{
    if (const auto* ring = std::get_if<geometry::Ring>(&shape))
        return {{SketchWords::tr("diameter"), QStringLiteral("⌀"), 2.0 * ring->radius}};
    if (const auto* box = std::get_if<geometry::RoundedRectangle>(&shape))
        return {{SketchWords::tr("width"), {}, box->width},
                {SketchWords::tr("height"), {}, box->height},
                {SketchWords::tr("corner radius"), QStringLiteral("r"), box->cornerRadius}};
    return {};
}

geometry::Shape withSizes(const geometry::Shape& shape, const std::vector<double>& values, bool radiusTyped)
{
    geometry::Shape result = shape;
    if (auto* ring = std::get_if<geometry::Ring>(&result); ring != nullptr && !values.empty())
        ring->radius = values[0] / 2.0;
    if (auto* box = std::get_if<geometry::RoundedRectangle>(&result); box != nullptr && values.size() >= 3) {
        box->width = values[0];
        box->height = values[1];
        box->cornerRadius = values[2];
        const double most = std::min(box->width, box->height) / 2.0;
        if (!radiusTyped && most > 0.0)
            box->cornerRadius = std::min(box->cornerRadius, most);
    }
    return result;
}

std::vector<Dimension> dimensionsOf(const geometry::Shape& shape)
{
    if (const auto* ring = std::get_if<geometry::Ring>(&shape)) {
        const geometry::Vector out = ring->radius * geometry::Vector{0.7071, 0.7071};
        return {{Dimension::Side::Across, 0, ring->centre - out, ring->centre + out}};
    }
    if (const auto* r = std::get_if<geometry::RoundedRectangle>(&shape)) {
        const double inset = r->cornerRadius * (1.0 - 0.7071);
        const auto place = [&](double x, double y) {
            return r->centre + geometry::Vector{x, y}.turned(r->rotation);
        };
        const double w = r->width / 2.0;
        const double h = r->height / 2.0;
        return {{Dimension::Side::Below, 0, place(-w, -h), place(w, -h)},
                {Dimension::Side::Right, 1, place(w, -h), place(w, h)},
                {Dimension::Side::Corner, 2, place(w - inset, h - inset),
                 place(w - std::max(r->cornerRadius, inset), h - std::max(r->cornerRadius, inset))}};
    }
    return {};
}

void SizeEntry::begin(std::size_t sizes, std::size_t first)
{
    m_active = sizes > 0;
    m_texts.assign(sizes, {});
    m_current = std::min(first, sizes > 0 ? sizes - 1 : 0);
}

void SizeEntry::clear()
{
    m_active = false;
    m_texts.clear();
    m_current = 0;
}

void SizeEntry::type(QChar character)
{
    if (!m_active)
        return;
    if (character == QLatin1Char(','))
        character = QLatin1Char('.');
    QString& text = m_texts[m_current];
    constexpr int kLongest = 9; // a size has no more digits
    if (text.size() < kLongest && !(character == QLatin1Char('.') && text.contains(character)))
        text += character;
}

void SizeEntry::erase()
{
    if (m_active)
        m_texts[m_current].chop(1);
}

void SizeEntry::next(int step)
{
    if (!m_active)
        return;
    const auto count = static_cast<int>(m_texts.size());
    m_current = static_cast<std::size_t>((static_cast<int>(m_current) + step + count) % count);
}

std::optional<std::vector<double>> SizeEntry::values(const std::vector<Size>& sizes) const
{
    std::vector<double> result;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const QString typed = text(i);
        bool ok = true;
        result.push_back(typed.isEmpty() ? sizes[i].value : QLocale::c().toDouble(typed, &ok));
        if (!ok)
            return std::nullopt;
    }
    return result;
}

} // namespace sealwalk::ui
