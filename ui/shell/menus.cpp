// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/menus.h"

#include "ui/history/history_page.h"
#include "ui/render/core_words.h"
#include "ui/session/job_session.h"
#include "ui/shell/arriving.h"
#include "ui/shell/corner.h"
#include "ui/shell/destinations.h"
#include "ui/shell/exporting.h"
#include "ui/shell/feeding.h"
#include "ui/shell/logger_dialog.h"
#include "ui/shell/main_window.h"
#include "ui/shell/opening.h"
#include "ui/shell/regions.h"
#include "ui/shell/report_languages.h"
#include "ui/shell/reporting.h"
#include "ui/shell/sheets.h"
#include "ui/signoff/people_dialog.h"
#include "ui/signoff/signoff_page.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/sketch_page.h"
#include "ui/spray/presenter_dialog.h"
#include "ui/spray/spray_page.h"
#include "ui/widgets/note_line.h"

#include <QAction>
#include <QActionGroup>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>

namespace sealwalk::ui {

namespace {

constexpr double kZoomStep = 1.25;

QString plain(const QAction& action)
{
    const QString text = action.text().section(QLatin1Char('\t'), 0, 0); // behind it stands a key
    return QString(text).remove(QLatin1Char('&')).remove(QStringLiteral(" …"));
}

} // namespace

Menus::Menus(MainWindow& window)
    : QObject(&window)
    , m_window(window)
{
    buildFile();
    buildEdit();
    buildView();
    buildJob();
    buildTools();
    buildHelp();
}

QAction* Menus::add(QMenu* menu, const QString& text, const QKeySequence& key, std::function<void()> does)
{
    QAction* action = menu->addAction(text);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, [does = std::move(does)] { does(); });
    m_actions.push_back(action);
    return action;
}

void Menus::buildFile()
{
    QMenu* menu = m_window.menuBar()->addMenu(tr("&File"));
    m_needHistory.push_back(add(menu, tr("New &test object …"),
                                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N),
                                [this] { m_window.historyPage().startNewObject(); }));
    m_needHistory.push_back(add(menu, tr("&New job …"), QKeySequence(Qt::CTRL | Qt::Key_N),
                                [this] { m_window.historyPage().startNewJob(); }));
    add(menu, tr("&Open history or job file …"), QKeySequence(Qt::CTRL | Qt::Key_O),
        [this] { chooseAndOpen(m_window); });
    m_needHistory.push_back(
        add(menu, tr("Take in another h&istory …"), {}, [this] { chooseAndMerge(m_window); }));
    add(menu, tr("New &history file …"), {}, [this] { chooseAndCreateHistory(m_window); });
    menu->addSeparator();
    // One key, one meaning for each stage: a shortcut of the page beside this one would silence both.
    m_needJob.push_back(
        add(menu, tr("&Report as PDF, blank sheet in Sketch …"), QKeySequence(Qt::CTRL | Qt::Key_P), [this] {
            auto* sketch = qobject_cast<SketchPage*>(m_window.page(Stage::Sketch));
            if (m_window.stage() == Stage::Sketch && sketch != nullptr)
                sketch->printSheet();
            else
                chooseAndReport(m_window);
        }));
    m_needJob.push_back(add(menu, tr("&Look at the report, print …"),
                            QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
                            [this] { showReport(m_window); }));
    m_needJob.push_back(add(menu, tr("&Export table or map …"), QKeySequence(Qt::CTRL | Qt::Key_E),
                            [this] { chooseAndExport(m_window); }));
    buildReportLanguages(menu);
    m_needJob.push_back(add(menu, tr("&Write a job file …"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E),
                            [this] { chooseAndPack(m_window); }));
    m_needHistory.push_back(
        add(menu, tr("&Back up the history …"), {}, [this] { chooseAndBackUp(m_window); }));
    menu->addSeparator();
    add(menu, tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), [this] { m_window.close(); });
}

void Menus::buildReportLanguages(QMenu* menu)
{
    const std::vector<ReportLanguage>& languages = reportLanguages();
    if (languages.size() < 2)
        return;
    QMenu* choice = menu->addMenu(tr("Lan&guage of reports and maps"));
    auto* group = new QActionGroup(this);
    for (const ReportLanguage& language : languages) {
        // Not among the commands to go to: there its name alone would say nothing.
        QAction* action = choice->addAction(
            language.name, this, [this, code = language.code] { m_window.chooseReportLanguage(code); });
        action->setCheckable(true);
        group->addAction(action);
        m_reportLanguages[language.code] = action;
    }
}

void Menus::buildEdit()
{
    QMenu* menu = m_window.menuBar()->addMenu(tr("&Edit"));
    // Said also when it went well: the note of the edit itself would still stand, and offer what has been
    // done.
    m_needOpenJob.push_back(add(menu, tr("&Undo"), QKeySequence(Qt::CTRL | Qt::Key_Z), [this] {
        const QString what = editWords(m_window.session().edits().undoText());
        const Status done = m_window.session().undo();
        m_window.say(done ? Severity::News : Severity::Caution, done ? tr("Undone: %1.").arg(what) +
                                                                           QStringLiteral("   ") +
                                                                           tr("Ctrl+Shift+Z brings it again")
                                                                     : render::inSentence(done.error()));
    }));
    m_needOpenJob.push_back(add(menu, tr("&Redo"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), [this] {
        const QString what = editWords(m_window.session().edits().redoText());
        const Status done = m_window.session().redo();
        m_window.say(done ? Severity::News : Severity::Caution,
                     done ? tr("Done again: %1.").arg(what) : render::inSentence(done.error()));
    }));
    buildSketch(menu);
    add(menu, tr("&Find in the list"), QKeySequence(Qt::CTRL | Qt::Key_F), [this] {
        QWidget* page = m_window.page(m_window.stage());
        auto* field = page == nullptr ? nullptr : page->findChild<QLineEdit*>(QStringLiteral("search"));
        if (field != nullptr && field->isVisible()) {
            field->setFocus();
            field->selectAll();
        } else {
            m_window.showStage(Stage::History);
            m_window.historyPage().focusSearch();
        }
    });
}

void Menus::buildView()
{
    QMenu* menu = m_window.menuBar()->addMenu(tr("&View"));
    for (const Stage stage : kStages) {
        QAction* action =
            add(menu, stageTitle(stage),
                QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(stage))),
                [this, stage] { m_window.showStage(stage); });
        action->setData(static_cast<int>(stage));
    }
    menu->addSeparator();
    QMenu* themes = menu->addMenu(tr("&Theme"));
    auto* group = new QActionGroup(this);
    const std::pair<render::ThemeName, QString> names[] = {{render::ThemeName::Paper, tr("&Paper (day)")},
                                                           {render::ThemeName::Slate, tr("&Slate (evening)")},
                                                           {render::ThemeName::Hall, tr("&Hall (dim hall)")}};
    for (const auto& [theme, name] : names) {
        const render::ThemeName wanted = theme;
        QAction* action = add(themes, name, {}, [this, wanted] { m_window.setTheme(wanted); });
        action->setCheckable(true);
        group->addAction(action);
        m_themes[static_cast<int>(theme)] = action;
    }
    add(menu, tr("Ne&xt theme"), QKeySequence(Qt::Key_F9), [this] {
        const int next =
            (static_cast<int>(m_window.settings().theme()) + 1) % static_cast<int>(m_themes.size());
        m_window.setTheme(static_cast<render::ThemeName>(next));
    });
    m_fullScreen = add(menu, tr("&Full screen"), QKeySequence(Qt::Key_F11),
                       [this] { m_window.setWindowState(m_window.windowState() ^ Qt::WindowFullScreen); });
    m_fullScreen->setCheckable(true);
    menu->addSeparator();
    buildSheets(menu);
    menu->addSeparator();
    add(menu, tr("Next &part of the window"), QKeySequence(Qt::Key_F6),
        [this] { focusNextRegion(m_window, true); });
    add(menu, tr("Pre&vious part of the window"), QKeySequence(Qt::SHIFT | Qt::Key_F6),
        [this] { focusNextRegion(m_window, false); });
}

void Menus::buildSheets(QMenu* menu)
{
    add(menu, tr("Sheet &larger"), QKeySequence(Qt::CTRL | Qt::Key_Plus),
        [this] { zoomSheets(m_window, kZoomStep); });
    add(menu, tr("Sheet s&maller"), QKeySequence(Qt::CTRL | Qt::Key_Minus),
        [this] { zoomSheets(m_window, 1.0 / kZoomStep); });
    add(menu, tr("&Whole sheet"), QKeySequence(Qt::CTRL | Qt::Key_0), [this] { fitSheets(m_window); });
    m_paperSheets = add(menu, tr("Sheet sta&ys paper"), {}, [this] {
        m_window.settings().setSheetStaysPaper(!m_window.settings().sheetStaysPaper());
        dressSheets(m_window, m_window.settings().sheetStaysPaper());
        refresh();
    });
    m_paperSheets->setCheckable(true);
    m_touch = add(menu, tr("To&uch strip"), {}, [this] {
        m_window.settings().setTouchStrip(!m_window.settings().touchStrip());
        emit m_window.touchStripChanged(m_window.settings().touchStrip());
        refresh();
    });
    m_touch->setCheckable(true);
}

void Menus::buildJob()
{
    QMenu* menu = m_window.menuBar()->addMenu(tr("&Job"));
    add(menu, tr("Who is &logging …"), QKeySequence(Qt::CTRL | Qt::Key_L),
        [this] { askWhoIsLogging(m_window); });
    m_needOpenJob.push_back(add(menu, tr("&Unit shown"), QKeySequence(Qt::CTRL | Qt::Key_U),
                                [this] { m_window.corner().openUnits(); }));
    m_transcribe = add(menu, tr("Readings from a &paper sheet …"), {}, [this] {
        m_window.showStage(Stage::Spray);
        auto* spray = qobject_cast<SprayPage*>(m_window.page(Stage::Spray));
        if (spray != nullptr)
            spray->setTranscribing(!spray->controller().isTranscribing());
        refresh();
    });
    m_transcribe->setCheckable(true);
    m_needOpenJob.push_back(m_transcribe);
    m_needSignedJob.push_back(add(menu, tr("Add an &amendment …"), {}, [this] {
        m_window.showStage(Stage::SignOff);
        if (auto* page = dynamic_cast<SignoffPage*>(m_window.page(Stage::SignOff)))
            page->amend();
    }));
    menu->addSeparator();
    m_needJob.push_back(add(menu, tr("&Close the job"), {}, [this] {
        m_window.session().closeJob();
        m_window.settings().setLastJob({}, {}); // closed on purpose: the next start does not open it
        m_window.showStage(Stage::History);
    }));
}

void Menus::buildTools()
{
    QMenu* menu = m_window.menuBar()->addMenu(tr("&Tools"));
    add(menu, tr("&Go to …"), QKeySequence(Qt::CTRL | Qt::Key_K), [this] {
        GoTo dialog(destinations(m_window, commands()), &m_window);
        dialog.exec();
    });
    add(menu, tr("&Last ten notes"), QKeySequence(Qt::Key_F2), [this] { m_window.noteLine().openLastTen(); });
    add(menu, tr("&Detector feed …"), QKeySequence(Qt::CTRL | Qt::Key_D), [this] { setUpFeed(m_window); });
    m_sounds = add(menu, tr("&Sounds"), QKeySequence(Qt::Key_F8), [this] {
        const bool on = !m_window.settings().soundsOn();
        m_window.settings().setSoundsOn(on);
        emit m_window.soundsChanged(on);
        m_window.say(Severity::News, on ? tr("Sounds are on.") : tr("Sounds are off."));
        refresh();
    });
    m_sounds->setCheckable(true);
    add(menu, tr("&Presenter …"), {}, [this] {
        PresenterDialog dialog(m_window.settings().presenter(), &m_window);
        if (dialog.exec() != QDialog::Accepted)
            return;
        m_window.settings().setPresenter(dialog.keys());
        emit m_window.presenterChanged(dialog.keys());
    });
    m_needHistory.push_back(add(menu, tr("P&eople who sign …"), {}, [this] {
        PeopleDialog(m_window.session(), &m_window).exec();
        if (auto* page = dynamic_cast<SignoffPage*>(m_window.page(Stage::SignOff)))
            page->showPeople();
    }));
    m_needHistory.push_back(add(menu, tr("&Check the history"), {}, [this] { checkHistory(m_window); }));
}

void Menus::buildHelp()
{
    QMenu* menu = m_window.menuBar()->addMenu(tr("&Help"));
    add(menu, tr("&Keys of this stage"), QKeySequence(Qt::Key_F1), [this] { m_window.toggleKeyCard(); });
    add(menu, tr("&About Sealwalk"), {}, [this] {
        QMessageBox::about(
            &m_window, tr("About Sealwalk"),
            tr("<b>Sealwalk</b><br>Find, size, judge and prove the repair of vacuum leaks, joint by "
               "joint.<br><br>Free software under the GNU General Public License, version 3 or later; "
               "without any warranty. It gives no permission to work: your site's rules, permits and "
               "licensed people come first."));
    });
}

void Menus::refresh()
{
    const JobSession& session = m_window.session();
    for (QAction* action : m_needHistory)
        action->setEnabled(session.hasHistory());
    for (QAction* action : m_needJob)
        action->setEnabled(session.hasJob());
    for (QAction* action : m_needOpenJob)
        action->setEnabled(session.hasJob() && session.job().isOpenForWork());
    for (QAction* action : m_needSketch)
        action->setEnabled(session.hasJob() && session.job().isOpenForWork() &&
                           m_window.stage() == Stage::Sketch);
    for (QAction* action : m_needSignedJob)
        action->setEnabled(session.hasJob() && session.job().state == model::JobState::Signed);
    for (QAction* action : m_actions)
        if (action->data().isValid())
            action->setVisible(m_window.page(static_cast<Stage>(action->data().toInt())) != nullptr);
    m_themes[static_cast<int>(m_window.settings().theme())]->setChecked(true);
    if (const auto chosen = m_reportLanguages.find(reportLanguage(m_window.settings()).code);
        chosen != m_reportLanguages.end())
        chosen->second->setChecked(true);
    m_sounds->setChecked(m_window.settings().soundsOn());
    m_fullScreen->setChecked(m_window.isFullScreen());
    m_paperSheets->setChecked(m_window.settings().sheetStaysPaper());
    m_touch->setChecked(m_window.settings().touchStrip());
    auto* spray = qobject_cast<SprayPage*>(m_window.page(Stage::Spray));
    m_transcribe->setChecked(spray != nullptr && spray->controller().isTranscribing());
}

std::vector<Destination> Menus::commands() const
{
    std::vector<Destination> result;
    for (QAction* action : m_actions)
        if (action->isEnabled() && action->isVisible())
            result.push_back({plain(*action), tr("command"), [action] { action->trigger(); }});
    return result;
}

} // namespace sealwalk::ui
