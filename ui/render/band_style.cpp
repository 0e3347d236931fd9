// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/band_style.h"

#include "ui/render/tokens.h"

#include <algorithm>

namespace sealwalk::render {

namespace {

constexpr double kPrintPlateMm = 4.2;

double number(const QJsonObject& group, const char* key)
{
    return group[QLatin1String(key)].toDouble();
}

} // namespace

BandStyle BandStyle::screen()
{
    const QJsonObject band = tokens()[u"band"].toObject();
    BandStyle style;
    style.body = number(band, "bodyPx");
    style.swell = number(band, "swellPxPerDecadeAboveDetectable");
    style.bodyMost = number(band, "bodyMaxPx");
    style.casing = number(band, "casingPx");
    style.gap = number(band, "gapBetweenStretchesPx");
    style.tooth = number(band, "toothPx");
    return style;
}

BandStyle BandStyle::print(double unitsPerMillimetre)
{
    const QJsonObject band = tokens()[u"band"].toObject()[u"print"].toObject();
    const BandStyle onScreen = screen();
    BandStyle style;
    style.body = number(band, "bodyMm") * unitsPerMillimetre;
    style.swell = number(band, "swellMmPerDecade") * unitsPerMillimetre;
    style.bodyMost = number(band, "bodyMaxMm") * unitsPerMillimetre;
    style.tooth = number(band, "toothMm") * unitsPerMillimetre;
    style.unit = style.body / onScreen.body;
    style.casing = onScreen.casing * style.unit;
    style.gap = onScreen.gap * style.unit;
    style.plate = kPrintPlateMm * unitsPerMillimetre;
    style.text = 10.0 * style.unit;
    return style;
}

BandStyle BandStyle::scaled(double factor) const
{
    BandStyle style = *this;
    for (double* length : {&style.body, &style.swell, &style.bodyMost, &style.casing, &style.gap,
                           &style.tooth, &style.plate, &style.text, &style.unit})
        *length *= factor;
    return style;
}

double BandStyle::width(const report::MapScale& scale, std::optional<LeakRate> rate) const
{
    if (!rate)
        return body;
    return std::min(bodyMost, body + swell * scale.decadesAboveDetectable(*rate));
}

} // namespace sealwalk::render
