// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/compose_pages.h"

#include "ui/history/history_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"

namespace sealwalk::ui {

void composePages(MainWindow& window)
{
    HistoryPage& history = window.historyPage();
    window.addPage(Stage::History, &history);
    QObject::connect(&history, &HistoryPage::jobFileWanted, &window, [&window] { chooseAndOpen(window); });
    window.showStage(Stage::History);
}

} // namespace sealwalk::ui
