// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/sheets.h"

#include "ui/render/sheet_view.h"
#include "ui/render/theme.h"
#include "ui/sketch/canvas.h"

namespace sealwalk::ui {

void zoomSheets(QWidget& window, double factor)
{
    for (auto* sheet : window.findChildren<render::SheetView*>())
        if (sheet->isVisible())
            sheet->zoomBy(factor);
    for (auto* canvas : window.findChildren<SketchCanvas*>())
        if (canvas->isVisible())
            canvas->zoom(factor);
}

void fitSheets(QWidget& window)
{
    for (auto* sheet : window.findChildren<render::SheetView*>())
        if (sheet->isVisible())
            sheet->fit();
    for (auto* canvas : window.findChildren<SketchCanvas*>())
        if (canvas->isVisible())
            canvas->fit();
}

void dressSheets(QWidget& part, bool inPaper)
{
    const auto dress = [inPaper](QWidget& sheet) {
        if (inPaper)
            render::setThemeFor(sheet, render::ThemeName::Paper);
        else
            render::clearThemeFor(sheet);
    };
    for (auto* sheet : part.findChildren<render::SheetView*>())
        dress(*sheet);
    for (auto* canvas : part.findChildren<SketchCanvas*>())
        dress(*canvas);
}

} // namespace sealwalk::ui
