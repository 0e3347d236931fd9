// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_page.h"

#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/sheet_view.h"
#include "ui/render/theme.h"
#include "ui/session/map_options.h"
#include "ui/spray/advice_card.h"
#include "ui/spray/call_panel.h"
#include "ui/spray/distance_view.h"
#include "ui/spray/entry_field.h"
#include "ui/spray/key_legend.h"
#include "ui/spray/paper_dialog.h"
#include "ui/spray/plan_dialog.h"
#include "ui/spray/presenter.h"
#include "ui/spray/say_aloud.h"
#include "ui/spray/spray_words.h"
#include "ui/spray/state_bar.h"
#include "ui/spray/touch_pad.h"
#include "ui/spray/touch_size.h"
#include "ui/spray/touch_strip.h"
#include "ui/spray/walk_line.h"
#include "ui/spray/walk_panel.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/page_tabs.h"

#include <QDate>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kCallWidth = 476;
constexpr int kWalkWidth = 286;
constexpr int kWordsWidth = 420; // px, of a dialog for a sentence
constexpr int kLineNeeds = 300; // px of height: lower, the call has it all

} // namespace

SprayPage::SprayPage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_controller(new SprayController(session, this))
    , m_call(new CallPanel(session, *m_controller, this))
    , m_sheetPart(makeSheetPart())
    , m_walk(new WalkPanel(session, *m_controller, this))
    , m_walkLine(new WalkLine(*m_controller, this))
    , m_distance(new DistanceView(this))
    , m_pad(new TouchPad(*m_controller, this))
    , m_presenter(new Presenter(*m_controller, this))
{
    m_walk->setFixedWidth(kWalkWidth);

    m_start = new QWidget(this);
    m_startText = new QLabel(m_start);
    m_startText->setWordWrap(true);
    m_startText->setFont(render::font(render::TextSize::Title));
    m_startButton = new QPushButton(m_start);
    m_startButton->setDefault(true);
    m_startButton->setObjectName(QStringLiteral("startRound"));
    auto* start = new QVBoxLayout(m_start);
    start->setContentsMargins(render::kGapFar, render::kGapFar, render::kGapFar, render::kGapFar);
    start->setSpacing(render::kGapBlock);
    start->addWidget(m_startText);
    start->addWidget(m_startButton, 0, Qt::AlignLeft);
    start->addStretch();

    m_callPart = new QWidget(this);
    auto* callColumn = new QVBoxLayout(m_callPart);
    callColumn->setContentsMargins(0, 0, 0, 0);
    callColumn->setSpacing(0);
    callColumn->addWidget(m_start, 1);
    callColumn->addWidget(m_call, 1);
    callColumn->addWidget(m_walkLine);
    auto* body = new QWidget(this);
    auto* row = new QHBoxLayout(body);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(m_callPart);
    row->addWidget(m_sheetPart, 1);
    row->addWidget(m_walk);
    m_tabs =
        new PageTabs(body, {{tr("Call"), m_callPart}, {tr("Sheet"), m_sheetPart}}, render::kPartsNeed, this);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(m_tabs);
    connect(m_tabs, &PageTabs::turned, this, [this](const QWidget* part) {
        if (part == m_callPart)
            focusProxy()->setFocus();
        else
            m_sheet->setFocus();
    });

    connect(m_startButton, &QPushButton::clicked, this, &SprayPage::startRound);
    connect(m_sheet, &render::SheetView::pointClicked, this, [this](model::PointId point) {
        m_controller->callSelected(point);
        m_tabs->bringUp(m_call);
        m_call->setFocus();
    });
    // Chosen here, by Ctrl+K say; what other stages look at does not move the call.
    connect(&m_session, &JobSession::selectionChanged, this, [this](model::PointId point) {
        const auto& call = m_controller->call();
        if (isVisible() && (!call || call->point != point))
            m_controller->callSelected(point);
    });
    connect(m_controller, &SprayController::failed, this, [this](const Error& error) {
        refreshClock();
        emit failed(error);
    });
    connect(m_call, &CallPanel::distanceWanted, this, &SprayPage::toggleDistance);
    connect(m_call, &CallPanel::feedWanted, this, &SprayPage::feedWanted);
    connect(m_call, &CallPanel::loggerWanted, this, &SprayPage::loggerWanted);
    connect(m_call, &CallPanel::orderWanted, this, &SprayPage::changeOrder);
    connect(m_walk, &WalkPanel::orderWanted, this, &SprayPage::changeOrder);
    connect(m_walkLine, &WalkLine::orderWanted, this, &SprayPage::changeOrder);
    connect(m_call, &CallPanel::remarkWanted, this, &SprayPage::askRemark);
    connect(m_call, &CallPanel::shieldWanted, this, &SprayPage::askShields);
    connect(m_pad, &TouchPad::shieldWanted, this, &SprayPage::askShields);
    connect(m_call, &CallPanel::wordsWanted, this, &SprayPage::askWords);
    connect(m_controller, &SprayController::changed, this, &SprayPage::refresh);
    connect(m_controller, &SprayController::ticked, this, &SprayPage::refreshClock);
    connect(m_controller, &SprayController::soundWanted, this, &SprayPage::onSound);
    connect(m_controller, &SprayController::advised, this, [this] {
        if (m_controller->advice() && isVisible() && !m_walk->isVisible()) // no room for its card
            emit noteRequested(Severity::Caution, m_controller->advice()->because);
    });
    connect(m_call, &CallPanel::repeatWanted, this, &SprayPage::repeatCall);
    connect(&m_walk->legend(), &KeyLegend::pressed, m_call, &CallPanel::runKey);
    connect(m_walk, &WalkPanel::keyPressed, m_call, &CallPanel::runKey);
    connect(m_presenter, &Presenter::distanceWanted, this, &SprayPage::toggleDistance);
    m_call->field().installEventFilter(m_presenter);
    m_call->field().installEventFilter(m_pad);
    connect(m_pad, &TouchPad::opened, this, &SprayPage::placePad);
    connect(&m_call->touchStrip(), &TouchStrip::digitsWanted, m_pad, &TouchPad::openDigits);
    connect(&m_call->field(), &EntryField::touched, m_pad, &TouchPad::touchField);
    connect(&m_call->touchStrip(), &TouchStrip::conditionsWanted, m_pad, &TouchPad::openConditions);
    connect(m_controller, &SprayController::settled, this, &SprayPage::noteSettled);
    connect(m_controller, &SprayController::said, this,
            [this](SprayController::Weight weight, const QString& text) {
                emit noteRequested(weight == SprayController::Weight::Error     ? Severity::Error
                                   : weight == SprayController::Weight::Warning ? Severity::Caution
                                                                                : Severity::News,
                                   text);
            });
    for (const auto signal : {&JobSession::findingsChanged, &JobSession::sketchChanged,
                              &JobSession::setupChanged, &JobSession::recordsChanged, &JobSession::jobChanged,
                              &JobSession::roundChanged, &JobSession::stateChanged})
        connect(&m_session, signal, this, &SprayPage::refreshMap);
    refreshMap();
}

QWidget* SprayPage::makeSheetPart()
{
    auto* part = new QWidget(this);
    m_sheet = new render::SheetView(part);
    UnderlayImages::showBeneath(*m_sheet, m_session);
    m_sheet->setFocusPolicy(Qt::ClickFocus);
    m_sheetTitle = new QLabel(part);
    m_sheetTitle->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart,
                                     render::kGapNear);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_sheetTitle);
    column->addWidget(m_sheet, 1);
    return part;
}

void SprayPage::refresh()
{
    const bool hasRound = m_session.currentRound() != nullptr;
    m_call->setVisible(hasRound);
    m_start->setVisible(!hasRound);
    placeWalkLine();
    setFocusProxy(hasRound ? static_cast<QWidget*>(m_call) : m_startButton);
    if (!hasRound) {
        const bool hasPoints = m_session.hasJob() && !m_session.job().sketch.activePoints().empty();
        const bool hasLimit = m_session.hasJob() && m_session.job().setup.pointLimit.has_value();
        const auto count = m_session.hasJob() ? m_session.job().sketch.activePoints().size() : 0;
        m_startText->setText(
            !m_session.hasJob() ? tr("No job is open. History opens or starts one.")
            : !hasPoints        ? tr("No points yet: Sketch lays them.")
            : !hasLimit
                ? tr("No limit yet. What counts as tight is agreed before the first reading.")
                : tr("The walk over %n points, as found, has not begun.", nullptr, static_cast<int>(count)));
        if (hasPoints && hasLimit) { // what is missing is said before the first reading, not after the last
            const model::Job& job = m_session.job();
            QStringList missing;
            if (job.setup.cautions.empty())
                missing << tr(
                    "The cautions in Prepare are not ticked as read: helium, vacuum, height, permits.");
            if (job.standingCalibrations().empty())
                missing << tr(
                    "No check with a reference leak yet: without one no reading becomes a leak rate.");
            if (job.standingBackgrounds().empty())
                missing << tr("The background was not watched yet: what cannot be seen is not known.");
            if (!missing.isEmpty())
                m_startText->setText(m_startText->text() + QStringLiteral("\n\n") +
                                     missing.join(QLatin1Char('\n')));
        }
        m_startButton->setText(!hasPoints  ? tr("Go to Sketch")
                               : !hasLimit ? tr("Go to Prepare")
                                           : tr("Begin the walk"));
        m_startButton->setVisible(m_session.hasJob());
    }
    if (const auto& call = m_controller->call(); call && m_sheet->content() != nullptr) {
        const model::TestPoint* point = m_session.job().sketch.point(call->point);
        const model::Joint* joint = point == nullptr ? nullptr : m_session.job().sketch.joint(point->joint);
        if (joint != nullptr && joint->sheet != m_sheet->content()->sheet)
            refreshMap(); // the call moved on to another sheet
        else
            m_sheet->setCurrent(call->point);
    } else {
        m_sheet->setCurrent(std::nullopt);
    }
    refreshClock();
}

void SprayPage::refreshMap()
{
    if (!m_session.hasJob() || m_session.job().sketch.sheets.empty()) {
        m_sheet->setContent(std::make_shared<report::MapContent>());
        m_sheetTitle->clear();
        refresh();
        return;
    }
    const model::Sketch& sketch = m_session.job().sketch;
    const auto& call = m_controller->call();
    const model::TestPoint* point = call ? sketch.point(call->point) : nullptr;
    const model::Joint* joint = point == nullptr ? nullptr : sketch.joint(point->joint);
    const model::SheetId sheet = joint == nullptr ? sketch.sheets.front().id : joint->sheet;
    report::MapOptions options = mapOptions(m_session);
    options.judged = false;
    auto content = std::make_shared<report::MapContent>(
        report::mapOf(m_session.job(), m_session.object(), sheet, m_session.findings(), options));
    std::size_t index = 0;
    while (index < sketch.sheets.size() && sketch.sheets[index].id != sheet)
        ++index;
    m_sheetTitle->setText(tr("<b>%1</b>&nbsp; sheet %2 of %3 · %4 He, on the chamber")
                              .arg(render::inWords(content->title).toHtmlEscaped())
                              .arg(index + 1)
                              .arg(sketch.sheets.size())
                              .arg(QString::fromStdString(options.unit)));
    m_call->ruler().setScale(content->scale);
    m_sheet->setContent(std::move(content));
    refresh();
}

void SprayPage::refreshClock()
{
    if (!m_distance->isVisible())
        return;
    DistanceShown shown;
    const SprayMachine& machine = m_controller->machine();
    shown.state.state = machine.state();
    shown.state.progress = machine.progress(m_controller->now());
    shown.state.word = stateWord(machine.state());
    if (machine.state() == CallState::Spray || machine.state() == CallState::Wait)
        shown.state.figure = QLocale().toString(machine.left(m_controller->now()), 'f', 0);
    if (const auto& call = m_controller->call()) {
        shown.number = QString::number(call->number);
        const model::Sketch& sketch = m_session.job().sketch;
        if (const model::TestPoint* point = sketch.point(call->point)) {
            const model::Joint* joint = sketch.joint(point->joint);
            shown.place =
                (joint == nullptr ? QString() : QString::fromStdString(joint->name) + QLatin1Char('\n')) +
                render::inWords(model::placeText(sketch, *point)) + QLatin1Char('\n') +
                conditionWord(m_controller->condition());
        }
    }
    if (!m_controller->typed().empty()) {
        shown.value = render::inFigures(m_controller->entered().readBack);
        shown.typing = true;
    } else if (const model::Reading* last = m_controller->lastStored()) {
        const model::Setup& setup = m_session.job().setup;
        const model::TestPoint* point = m_session.job().sketch.point(last->point);
        shown.caption = tr("%1 stored · %2 He, as shown")
                            .arg(point == nullptr ? 0 : point->number)
                            .arg(QString::fromStdString(report::shownUnit(setup, setup.detectorUnit).symbol));
        shown.value = last->peak ? render::inFigures(report::screenRate(
                                       report::shownUnit(setup, setup.detectorUnit).number(*last->peak)))
                                 : outcomeWord(last->outcome);
        if (const auto* finding = m_session.finding(last->point)) {
            shown.stand = finding->verdict;
            shown.standWord = finding->verdict == analysis::Verdict::Over         ? tr("over the limit")
                              : finding->verdict == analysis::Verdict::Within     ? tr("within")
                              : finding->verdict == analysis::Verdict::CannotSay  ? tr("cannot say")
                              : finding->verdict == analysis::Verdict::NotCounted ? tr("not counted")
                                                                                  : QString();
        }
    }
    if (m_controller->isNotStored()) {
        shown.state = {CallState::Hold, 0.0, tr("NOT STORED"), {}, {}, {}};
        shown.stand = analysis::Verdict::Over;
        shown.standWord = tr("not on disk");
    }
    m_distance->show(shown);
}

void SprayPage::startRound()
{
    if (!m_session.hasJob())
        return;
    if (m_session.job().sketch.activePoints().empty()) {
        emit sketchWanted();
        return;
    }
    if (!m_session.job().setup.pointLimit) {
        emit prepareWanted();
        return;
    }
    const Status opened = m_session.openRound(model::RoundKind::AsFound, {});
    if (!opened)
        emit failed(opened.error());
    m_call->setFocus();
}

void SprayPage::toggleDistance()
{
    const bool shown = m_distance->isVisible();
    m_distance->setParent(window()); // nothing else on the screen; a parent change hides it
    m_distance->setGeometry(window()->rect());
    m_distance->raise();
    m_distance->setVisible(!shown);
    refreshClock();
}

void SprayPage::changeOrder()
{
    if (m_session.currentRound() == nullptr)
        return;
    PlanDialog dialog(m_session, this);
    if (dialog.exec() == QDialog::Accepted && dialog.order() != m_session.currentRound()->points) {
        if (const Status stored = m_session.orderRound(dialog.order()); stored)
            m_controller->followOrder();
        else
            emit failed(stored.error());
    }
    m_call->setFocus();
}

std::optional<QString> SprayPage::askAbout(const QString& title, const QString& question,
                                           const QString& standing)
{
    const auto call = m_controller->call();
    const EntryUnderWay before = m_controller->underWay();
    m_controller->setDialogOpen(true);
    QInputDialog dialog(this);
    dialog.setWindowTitle(title);
    dialog.setLabelText(question);
    dialog.setTextValue(standing);
    dialog.resize(dialog.sizeHint().expandedTo(QSize(kWordsWidth, 0)));
    const bool taken = dialog.exec() == QDialog::Accepted;
    const QString text = dialog.textValue().trimmed();
    m_controller->setDialogOpen(false);
    m_call->setFocus();
    if (!taken)
        return std::nullopt;
    const EntryUnderWay now = m_controller->underWay();
    if (now.about.called == before.about.called && now.about.corrects == before.about.corrects &&
        now.about.round == before.about.round)
        return text;
    if (!text.isEmpty())
        m_controller->refuse(
            tr("“%1” was not kept: point %2 is called no more.").arg(text).arg(call ? call->number : 0));
    return std::nullopt;
}

void SprayPage::askRemark()
{
    const auto text =
        askAbout(tr("Remark"), m_controller->isCorrecting() ? tr("Why it is corrected:")
                                                            : tr("Remark on the reading that comes:"));
    if (text)
        m_controller->remark(*text);
}

void SprayPage::askShields()
{
    if (m_controller->isCorrecting()) {
        m_controller->refuse(
            tr("A correction keeps what was taped off then; make the reading void and spray again."));
        return;
    }
    const auto text =
        askAbout(tr("Taped or bagged off"),
                 tr("Points no helium reaches while others are sprayed, as 38, 40-42; empty: none.\n"
                    "It stays until it is said otherwise."),
                 m_controller->allShielded());
    if (text)
        m_controller->shield(*text);
}

/// "Other" alone tells a reviewer nothing; left empty the question stands as it was.
void SprayPage::askWords()
{
    const auto text = askAbout(tr("Reason"), m_call->caption());
    if (text && !text->isEmpty())
        m_controller->chooseInWords(*text);
}

QString SprayPage::unstoredInWords() const
{
    return m_controller->waitingInWords();
}

void SprayPage::setTouchStrip(bool on)
{
    const int target = on ? pixelsOn(screen(), kGloveMillimetres) : 0;
    m_call->setTouch(on);
    m_pad->setActive(on);
    m_walk->setTargetHeight(target);
    m_walkLine->setTargetHeight(target);
    setTargetHeight(*m_startButton, target);
    placeCall();
    placePad();
}

void SprayPage::setPresenterKeys(const PresenterKeys& keys)
{
    m_presenter->setKeys(keys);
}

bool SprayPage::setTranscribing(bool on)
{
    if (!on) {
        m_controller->setTranscribing(false);
        return false;
    }
    PaperDialog dialog(this);
    if (m_session.hasJob())
        dialog.proposeDay(m_session.job().opened);
    const bool starts = dialog.exec() == QDialog::Accepted;
    m_controller->setTranscribing(starts, dialog.day(), dialog.dwell());
    m_call->setFocus();
    return starts;
}

void SprayPage::repeatCall()
{
    const QString sentence = m_controller->callInWords();
    emit noteRequested(Severity::News, sentence);
    if (!sayAloud(*m_call, sentence))
        emit soundRequested(SpraySound::Attention);
}

void SprayPage::onSound(SpraySound sound)
{
    m_call->stateBar().flash();
    m_distance->flash();
    emit soundRequested(sound);
}

/// Over the sheet; where there is none, over the foot of the page.
void SprayPage::placePad()
{
    m_pad->layout()->activate();
    const QSize wanted = m_pad->sizeHint();
    if (m_sheetPart->isVisible()) {
        const QRect room = m_sheetPart->geometry();
        m_pad->setGeometry(QRect(room.left(), room.bottom() + 1 - std::min(wanted.height(), room.height()),
                                 room.width(), std::min(wanted.height(), room.height())));
    } else {
        const int height = std::min(wanted.height(), this->height());
        m_pad->setGeometry(0, this->height() - height, width(), height);
    }
}

/// As wide as designed; wider where the fields of the strip need it, on a screen with many dots to the inch.
void SprayPage::placeCall()
{
    m_callPart->setFixedWidth(
        width() >= render::kPartsNeed ? std::max(kCallWidth, m_call->minimumSizeHint().width()) : width());
}

void SprayPage::placeWalkLine()
{
    m_walkLine->setVisible(m_session.currentRound() != nullptr && width() < render::kListsNeed &&
                           height() >= kLineNeeds);
}

void SprayPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_walk->setVisible(width() >= render::kListsNeed);
    placeWalkLine();
    placeCall();
    m_distance->setGeometry(m_distance->parentWidget()->rect());
    placePad();
}

void SprayPage::hideEvent(QHideEvent* event)
{
    m_distance->hide(); // it lies over the whole window, other stages too
    QWidget::hideEvent(event);
}

void SprayPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    focusProxy()->setFocus();
}

} // namespace sealwalk::ui
