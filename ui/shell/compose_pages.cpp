// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/compose_pages.h"

#include "ui/history/history_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"
#include "ui/sketch/sketch_page.h"
#include "ui/spray/spray_page.h"

namespace sealwalk::ui {

void composePages(MainWindow& window)
{
    HistoryPage& history = window.historyPage();
    window.addPage(Stage::History, &history);
    QObject::connect(&history, &HistoryPage::jobFileWanted, &window, [&window] { chooseAndOpen(window); });

    window.addPage(Stage::Sketch, new SketchPage(window.session(), &window));

    auto* spray = new SprayPage(window.session(), &window);
    window.addPage(Stage::Spray, spray);
    QObject::connect(spray, &SprayPage::sketchWanted, &window, [&window] { window.showStage(Stage::Sketch); });
    QObject::connect(spray, &SprayPage::prepareWanted, &window, [&window] { window.showStage(Stage::Prepare); });

    window.showStage(Stage::History);
}

} // namespace sealwalk::ui
