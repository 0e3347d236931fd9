// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/compose_pages.h"

#include "ui/history/history_page.h"
#include "ui/judge/judge_page.h"
#include "ui/prepare/prepare_page.h"
#include "ui/shell/corner.h"
#include "ui/shell/feeding.h"
#include "ui/shell/logger_dialog.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"
#include "ui/shell/reporting.h"
#include "ui/signoff/signoff_page.h"
#include "ui/sketch/sketch_page.h"
#include "ui/spray/sound_player.h"
#include "ui/spray/spray_page.h"

#include <memory>

namespace sealwalk::ui {

namespace {

Stage stageOf(analysis::CheckPlace place)
{
    switch (place) {
    case analysis::CheckPlace::Prepare:
        return Stage::Prepare;
    case analysis::CheckPlace::Sketch:
        return Stage::Sketch;
    case analysis::CheckPlace::Spray:
        return Stage::Spray;
    case analysis::CheckPlace::Judge:
        return Stage::Judge;
    case analysis::CheckPlace::History:
        return Stage::History;
    }
    return Stage::Judge;
}

} // namespace

void composePages(MainWindow& window)
{
    HistoryPage& history = window.historyPage();
    window.addPage(Stage::History, &history);
    QObject::connect(&history, &HistoryPage::jobFileWanted, &window, [&window] { chooseAndOpen(window); });
    QObject::connect(&history, &HistoryPage::demoWanted, &window, [&window] { openDemo(window); });
    QObject::connect(&history, &HistoryPage::pictureWanted, &window, [&window] { startFromPicture(window); });

    auto* prepare = new PreparePage(window.session(), &window);
    window.addPage(Stage::Prepare, prepare);
    QObject::connect(prepare, &PreparePage::goOn, &window, [&window] {
        const bool points =
            window.session().hasJob() && !window.session().job().sketch.activePoints().empty();
        window.showStage(points ? Stage::Spray : Stage::Sketch);
    });

    auto* sketch = new SketchPage(window.session(), &window);
    window.addPage(Stage::Sketch, sketch);
    QObject::connect(sketch, &SketchPage::nameWanted, &window, [&window] { askWhoIsLogging(window); });

    auto* spray = new SprayPage(window.session(), &window);
    window.addPage(Stage::Spray, spray);
    spray->setTouchStrip(window.settings().touchStrip());
    spray->setPresenterKeys(window.settings().presenter());
    QObject::connect(&window, &MainWindow::touchStripChanged, spray, &SprayPage::setTouchStrip);
    QObject::connect(&window, &MainWindow::presenterChanged, spray, &SprayPage::setPresenterKeys);
    QObject::connect(spray, &SprayPage::soundRequested, &window,
                     [&window, player = std::make_shared<SoundPlayer>()](SpraySound sound) {
                         if (window.settings().soundsOn())
                             player->play(sound);
                     });
    QObject::connect(spray, &SprayPage::failed, &window, [&window](const Error& error) {
        if (error.code == ErrorCode::Busy || error.code == ErrorCode::ReadOnly)
            window.corner().onNotStored(Timestamp::now()); // no box for it, but it is not on disk
    });
    QObject::connect(spray, &SprayPage::sketchWanted, &window,
                     [&window] { window.showStage(Stage::Sketch); });
    QObject::connect(spray, &SprayPage::loggerWanted, &window, [&window] { askWhoIsLogging(window); });
    QObject::connect(spray, &SprayPage::prepareWanted, &window,
                     [&window] { window.showStage(Stage::Prepare); });

    joinFeed(window, *spray);

    auto* judge = new JudgePage(window.session(), &window);
    window.addPage(Stage::Judge, judge);
    QObject::connect(judge, &JudgePage::sprayWanted, &window, [&window] { window.showStage(Stage::Spray); });
    QObject::connect(judge, &JudgePage::nameWanted, &window, [&window] { askWhoIsLogging(window); });

    auto* signoff = new SignoffPage(window.session(), &window);
    window.addPage(Stage::SignOff, signoff);
    QObject::connect(signoff, &SignoffPage::reportWanted, &window, [&window] { showReport(window); });
    QObject::connect(signoff, &SignoffPage::nameWanted, &window, [&window] { askWhoIsLogging(window); });
    QObject::connect(signoff, &SignoffPage::placeWanted, &window,
                     [&window](analysis::CheckPlace place) { window.showStage(stageOf(place)); });

    window.showStage(Stage::History);
}

} // namespace sealwalk::ui
