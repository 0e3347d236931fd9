// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"

#include "core/storage/history_store.h"
#include "ui/feed/feed_session.h"
#include "ui/history/history_page.h"
#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/session/record_watch.h"
#include "ui/shell/corner.h"
#include "ui/shell/error_text.h"
#include "ui/shell/key_card.h"
#include "ui/shell/menus.h"
#include "ui/shell/sheets.h"
#include "ui/shell/stage_progress.h"
#include "ui/shell/stage_strip.h"
#include "ui/shell/temporary_repairs.h"
#include "ui/shell/touch_buttons.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/fit_screen.h"
#include "ui/widgets/note_line.h"
#include "ui/widgets/spoken_parts.h"
#include "ui/widgets/wheel_guard.h"

#include <QApplication>
#include <QCloseEvent>
#include <QKeyEvent>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kWalkedMilliseconds = 100;
constexpr QSize kDesigned(1366, 740);
constexpr QSize kLeast(640, 340); // a screen of 1366 x 768 at 200 %, less its bars

QString roundText(const JobSession& session)
{
    const model::Round* round = session.currentRound();
    if (round == nullptr)
        return {};
    const QString kind = round->title.empty() ? render::inWords(std::string(model::name(round->kind)))
                                              : QString::fromStdString(round->title);
    return MainWindow::tr(" · round %1, %2").arg(round->number).arg(kind);
}

QString restingHint(Stage stage)
{
    switch (stage) {
    case Stage::Prepare:
        return MainWindow::tr("Every field is kept as you leave it. F1 shows the keys of a stage.");
    case Stage::Sketch:
        return MainWindow::tr("Points keep their number for life. F1 shows the keys of the tools.");
    case Stage::Spray:
        return MainWindow::tr("Stored means on disk. F1 shows the keys.");
    case Stage::Judge:
        return MainWindow::tr("Enter shows why; Space ticks for repair.");
    case Stage::SignOff:
        return MainWindow::tr("Exceptions first; Enter opens the place.");
    case Stage::History:
        return MainWindow::tr("Enter opens a job; in the list Space marks it, and two marked jobs are "
                              "compared; Shift+Space marks more.");
    }
    return {};
}

} // namespace

MainWindow::MainWindow(JobSession& session, ShellSettings& settings, QWidget* parent)
    : QMainWindow(parent)
    , m_session(session)
    , m_settings(settings)
{
    qApp->installEventFilter(new SpokenParts(this));
    qApp->installEventFilter(new WheelGuard(this));
    qApp->installEventFilter(new FitScreen(this));
    qApp->installEventFilter(new TouchButtons([this] { return m_settings.touchStrip(); }, this));
    if (m_session.logger().isEmpty())
        m_session.setLogger(m_settings.logger());
    build();
    listen();
    refresh();
}

MainWindow::~MainWindow() = default;

void MainWindow::build()
{
    setMinimumSize(kLeast);
    resize(kDesigned);
    setWindowIcon(QIcon(QStringLiteral(":/sealwalk/icons/app-mark.svg")));
    auto* centre = new QWidget(this);
    m_strip = new StageStrip(centre);
    m_pages = new QStackedWidget(centre);
    m_note = new NoteLine(centre);
    m_note->setIconSource([](Severity severity) {
        return render::icon(QStringLiteral("caution"),
                            severity == Severity::Error ? render::Role::Over : render::Role::Unsure);
    });
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_strip);
    column->addWidget(m_pages, 1);
    column->addWidget(m_note);
    setCentralWidget(centre);
    m_history = new HistoryPage(m_session, m_pages);
    m_feed = new FeedSession(this);
    m_watch = new RecordWatch(m_session, this);
    m_menus = new Menus(*this);
    m_corner = new Corner(m_session, this);
    menuBar()->setCornerWidget(m_corner, Qt::TopRightCorner);
    m_settings.restoreGeometry(*this); // perhaps of another screen, or another scaling
    if (boundToScreen(*this))
        setWindowState(windowState() | Qt::WindowMaximized);
}

void MainWindow::listen()
{
    connect(m_strip, &StageStrip::stageChosen, this, &MainWindow::showStage);
    connect(m_corner, &Corner::notStored, this,
            [this](const QString& sentence) { say(Severity::Error, sentence); });
    connect(m_history, &HistoryPage::jobOpened, this, &MainWindow::showStageOfWork);
    connect(&m_session, &JobSession::loggerChanged, this,
            [this] { m_settings.setLogger(m_session.logger()); });
    connect(&m_session, &JobSession::jobChanged, this, &MainWindow::onJobChanged);
    connect(m_watch, &RecordWatch::told, this, &MainWindow::tellWrong);
    connect(m_watch, &RecordWatch::couldNotCheck, this, [this](model::JobId job) {
        if (m_session.hasJob() && m_session.job().id == job)
            say(Severity::Caution,
                tr("Whether job %1 is as it was signed could not be checked: %2")
                    .arg(m_session.job().number)
                    .arg(render::inWords(m_watch->whyNotChecked(job))),
                tr("It is tried again."));
    });
    connect(&m_session, &JobSession::storedOnDisk, m_corner, &Corner::onStored);
    for (const auto signal :
         {&JobSession::historyChanged, &JobSession::sketchChanged, &JobSession::setupChanged,
          &JobSession::roundChanged, &JobSession::recordsChanged, &JobSession::stateChanged,
          &JobSession::findingsChanged})
        connect(&m_session, signal, this, &MainWindow::refresh);
    // Only how far the walk is, once the entry itself is drawn; what the reading says comes with its finding.
    m_walked.setSingleShot(true);
    m_walked.setInterval(kWalkedMilliseconds);
    connect(&m_session, &JobSession::readingStored, &m_walked, qOverload<>(&QTimer::start));
    connect(&m_walked, &QTimer::timeout, this,
            [this] { m_strip->setProgress(Stage::Spray, progressOf(Stage::Spray, m_session)); });
}

void MainWindow::addPageWidget(Stage stage, QWidget* page)
{
    m_byStage[stage] = page;
    m_pages->addWidget(page);
    m_strip->addStage(stage);
    m_settings.restoreDividers(stage, *page);
    dressSheets(*page, m_settings.sheetStaysPaper());
    refresh();
}

QWidget* MainWindow::page(Stage stage) const
{
    const auto found = m_byStage.find(stage);
    return found == m_byStage.end() ? nullptr : found->second;
}

void MainWindow::showStage(Stage stage)
{
    QWidget* wanted = page(stage);
    if (wanted == nullptr)
        return;
    if (stage != Stage::History && !m_session.hasJob()) {
        say(Severity::Caution, tr("No job is open."), tr("Open one in History, or start one with Ctrl+N."));
        return;
    }
    // Leaving a field is finishing it: what was typed is taken before the page goes out of sight.
    if (QWidget* focused = QApplication::focusWidget(); focused != nullptr && m_pages->isAncestorOf(focused))
        focused->clearFocus();
    m_stage = stage;
    m_seen.insert(stage);
    m_pages->setCurrentWidget(wanted);
    m_strip->setCurrent(stage);
    m_note->setResting(restingHint(stage));
    m_note->turnTo();
    refresh();
    wanted->setFocus(Qt::OtherFocusReason);
}

void MainWindow::showStageOfWork()
{
    if (!m_session.hasJob()) {
        showStage(Stage::History);
        return;
    }
    const model::Job& job = m_session.job();
    Stage wanted = Stage::Judge;
    if (job.isOpenForWork()) {
        if (job.readings.empty())
            wanted =
                !job.setup.pointLimit || job.standingCalibrations().empty() ? Stage::Prepare : Stage::Spray;
        else if (progressOf(Stage::Spray, m_session).thread != StageProgress::Thread::Done)
            wanted = Stage::Spray;
        if (wanted == Stage::Spray && job.sketch.activePoints().empty())
            wanted = Stage::Sketch;
    } else if (job.state == model::JobState::Submitted) {
        wanted = Stage::SignOff;
    }
    for (const Stage candidate : {wanted, Stage::Judge, Stage::Prepare, Stage::History})
        if (page(candidate) != nullptr) {
            showStage(candidate);
            return;
        }
}

void MainWindow::onJobChanged()
{
    refresh();
    if (m_session.hasJob())
        m_settings.setLastJob(QString::fromStdString(m_session.historyFile().string()),
                              {QString::fromStdString(m_session.job().id.text()),
                               QString::fromStdString(m_session.object().id.text())});
    const QString repairs = temporaryRepairsNote(m_session);
    QStringList left{repairs, m_session.hasJob() ? endingConcessionsNote(m_session) : QString()};
    left.removeAll(QString());
    if (!left.isEmpty())
        say(Severity::Caution, left.join(QLatin1Char(' ')),
            repairs.isEmpty() ? QString() : tr("It will be asked for at sign-off."));
    if (!m_session.hasJob() && m_stage != Stage::History)
        showStage(Stage::History);
}

QString MainWindow::wrongWithJob() const
{
    return m_session.hasJob() ? render::inWords(m_watch->wrongWith(m_session.job().id)) : QString();
}

void MainWindow::tellWrong()
{
    refresh();
    const QString wrong = wrongWithJob();
    if (wrong.isEmpty() || m_toldWrong == m_session.job().id)
        return;
    m_toldWrong = m_session.job().id;
    say(Severity::Error, tr("Job %1 is not as it was signed: %2").arg(m_session.job().number).arg(wrong),
        tr("Ask who keeps the history; a back-up may have it as it was."));
}

void MainWindow::refresh()
{
    const bool open = m_session.hasJob();
    if (open) {
        const QString object = QString::fromStdString(m_session.object().name);
        const QString job = tr("job %1").arg(m_session.job().number);
        if (m_session.job().state == model::JobState::Signed)
            m_watch->look({m_session.job().id});
        const QString wrong = wrongWithJob();
        m_strip->setObjectAndJob(m_session.object().invented ? tr("%1 (invented data)").arg(object) : object,
                                 tr("Job %1").arg(m_session.job().number) + roundText(m_session), wrong);
        setWindowTitle(QStringLiteral("%1 – %2 – Sealwalk")
                           .arg(object, wrong.isEmpty() ? job : tr("%1, not as signed").arg(job)));
    } else {
        m_strip->setObjectAndJob(tr("No job open"), tr("start in History"));
        setWindowTitle(QStringLiteral("Sealwalk"));
    }
    for (const auto& [stage, widget] : m_byStage) {
        m_strip->setProgress(stage, progressOf(stage, m_session));
        m_strip->setUsable(stage, open || stage == Stage::History);
    }
    m_corner->refresh();
    m_menus->refresh();
}

void MainWindow::say(Severity severity, const QString& text, const QString& aside)
{
    m_note->say(severity, text, aside);
}

void MainWindow::settle(const QString& text)
{
    if (m_note->text() == text)
        m_note->clear();
}

void MainWindow::report(const Error& error)
{
    const ErrorText text = errorText(error);
    if (error.code == ErrorCode::Cancelled) {
        say(Severity::News, text.sentence, text.remedy);
        return;
    }
    say(Severity::Error, text.sentence, text.remedy);
    if (!text.threatensData)
        return;
    m_corner->onNotStored(Timestamp::now());
    QMessageBox::critical(this, tr("Not stored"), text.sentence + QStringLiteral("\n\n") + text.remedy);
}

void MainWindow::chooseReportLanguage(const QString& code)
{
    m_settings.setReportLanguage(code);
    m_menus->refresh();
}

void MainWindow::setTheme(render::ThemeName theme)
{
    m_settings.setTheme(theme);
    if (auto* application = qobject_cast<QApplication*>(QApplication::instance()))
        render::applyTheme(*application, theme);
    dressSheets(*this, m_settings.sheetStaysPaper());
    m_note->refreshIcon();
    m_corner->refreshIcon();
    m_menus->refresh();
}

void MainWindow::toggleKeyCard()
{
    QWidget* shown = m_pages->currentWidget();
    if (shown == nullptr)
        return;
    if (auto* card = shown->findChild<KeyCard*>()) {
        card->leave();
        delete card; // the key may come again before the event loop does
    } else {
        new KeyCard(m_stage, shown);
    }
}

/// Esc that no page had a use for cancels the work that goes on.
void MainWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_note->isWorking())
        m_note->cancel();
    else
        QMainWindow::keyPressEvent(event);
}

/// Asks when something was entered that is not on disk yet.
bool MainWindow::mayClose()
{
    for (const auto& inWords : m_unstored) {
        const QString words = inWords();
        if (words.isEmpty())
            continue;
        QMessageBox box(QMessageBox::Warning, tr("Not stored yet"),
                        tr("The reading %1 is not stored: another program holds the history. It is stored as "
                           "soon as that "
                           "program lets go, if this window stays open.")
                            .arg(words),
                        QMessageBox::NoButton, this);
        QPushButton* stay = box.addButton(tr("&Stay open"), QMessageBox::RejectRole);
        box.addButton(tr("&Close without it"), QMessageBox::DestructiveRole);
        box.setDefaultButton(stay);
        box.exec();
        // It may have been stored while this was read.
        if ((box.clickedButton() == stay || box.clickedButton() == nullptr) && !inWords().isEmpty())
            return false;
    }
    return true;
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!mayClose()) {
        event->ignore();
        return;
    }
    if (QWidget* focused = QApplication::focusWidget())
        focused->clearFocus();
    m_settings.keepGeometry(*this);
    for (const Stage stage : m_seen) // a page that was never laid out has dividers of no meaning
        m_settings.keepDividers(stage, *m_byStage.at(stage));
    QMainWindow::closeEvent(event);
}

void MainWindow::resizeEvent(QResizeEvent* event)
{
    if (const bool narrow = width() < render::kPartsNeed; narrow != m_narrow) {
        m_narrow = narrow;
        m_corner->setNarrow(narrow);
        setStyleProperty(menuBar(), "isNarrow", narrow ? QStringLiteral("true") : QString());
        menuBar()->setCornerWidget(m_corner, Qt::TopRightCorner); // measures it anew
    }
    QMainWindow::resizeEvent(event);
}

void MainWindow::changeEvent(QEvent* event)
{
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::WindowStateChange && m_menus != nullptr)
        m_menus->refresh();
}

} // namespace sealwalk::ui
