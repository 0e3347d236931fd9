// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/call_panel.h"

#include "core/analysis/job_findings.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/theme.h"
#include "ui/spray/call_head.h"
#include "ui/spray/entry_field.h"
#include "ui/spray/key_legend.h"
#include "ui/spray/last_time.h"
#include "ui/spray/live_trace.h"
#include "ui/spray/read_back.h"
#include "ui/spray/spray_feed.h"
#include "ui/spray/spray_words.h"
#include "ui/spray/state_bar.h"
#include "ui/spray/touch_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>
#include <initializer_list>

namespace sealwalk::ui {

namespace {

constexpr int kLeastTrace = 40; // px: its sentence, or a curve that can be read
constexpr int kGapLines = 2;

} // namespace

CallPanel::CallPanel(JobSession& session, SprayController& controller, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_controller(controller)
    , m_last(new LastTime(session, this))
    , m_head(new CallHead(this))
    , m_gap(new QSpacerItem(0, render::kGapBlock))
    , m_state(new StateBar(this))
    , m_caption(new QLabel(this))
    , m_unit(new QLabel(this))
    , m_field(new EntryField(this))
    , m_readBack(new ReadBack(this))
    , m_gaps(new QLabel(this))
    , m_ruler(new render::DecadeRuler(Qt::Horizontal, this))
    , m_trace(new LiveTrace(session, controller, this))
    , m_legend(new KeyLegend(this))
    , m_strip(new TouchStrip(controller, this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(render::kGapBlock, render::kGapNear, render::kGapBlock, render::kGapNear);
    column->setSpacing(0);
    column->addWidget(m_head);
    column->addItem(m_gap);
    column->addWidget(m_state);
    column->addSpacing(render::kGapNear);
    auto* over = new QHBoxLayout;
    over->addWidget(m_caption);
    over->addStretch();
    over->addWidget(m_unit);
    column->addLayout(over);
    column->addSpacing(render::kGapHair);
    column->addWidget(m_field);
    column->addWidget(m_readBack);
    column->addWidget(m_gaps);
    column->addWidget(m_ruler);
    column->addSpacing(render::kGapTight);
    column->addWidget(m_trace, 1);
    column->addStretch();
    column->addWidget(m_legend);
    column->addWidget(m_strip);
    m_strip->hide();
    m_gaps->setObjectName(QStringLiteral("gapLine"));
    m_gaps->setAccessibleName(tr("Lacking on this reading"));
    m_gaps->setProperty("role", QStringLiteral("gap"));
    m_gaps->setWordWrap(true);
    m_gaps->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_gaps->setFont(render::font(render::TextSize::Caption));
    // Its room is kept: what stands below does not jump as it comes and goes.
    m_gaps->setFixedHeight(kGapLines * QFontMetrics(m_gaps->font()).lineSpacing());
    m_caption->setBuddy(m_field);
    m_field->setObjectName(QStringLiteral("sprayField"));
    setFocusProxy(m_field);

    connect(m_field, &EntryField::typedChanged, &m_controller, [this](const QString& text) {
        const bool isShut = m_session.hasJob() && !m_session.job().isOpenForWork();
        if (isShut && !text.isEmpty() && m_controller.prompt() == SprayController::Prompt::None) {
            m_field->clear();
            m_controller.refuse(tr("The job takes no more readings."));
        } else if (m_controller.prompt() != SprayController::Prompt::None &&
                   m_controller.prompt() != SprayController::Prompt::Jump)
            runDigit(text.right(1).toInt());
        else
            m_controller.setTyped(text.toStdString());
    });
    connect(m_field, &EntryField::enterPressed, &m_controller, &SprayController::enter);
    connect(m_field, &EntryField::exponentStepped, &m_controller, &SprayController::stepExponent);
    connect(m_field, &EntryField::command, this, &CallPanel::runCommand);
    connect(m_field, &EntryField::lettersRefused, &m_controller,
            [this] { m_controller.refuse(tr("Esc clears the number first.")); });
    connect(m_head, &CallHead::loggerWanted, this, &CallPanel::loggerWanted);
    const auto showLogger = [this] { m_head->setLogger(m_session.logger()); };
    connect(&m_session, &JobSession::loggerChanged, this, showLogger);
    showLogger();
    connect(m_last, &LastTime::changed, this, &CallPanel::refresh);
    connect(m_trace, &LiveTrace::feedWanted, this, &CallPanel::feedWanted);
    connect(m_legend, &KeyLegend::pressed, this, &CallPanel::runKey);
    connect(&m_controller, &SprayController::changed, this, &CallPanel::refresh);
    connect(&m_controller, &SprayController::offerChanged, this, &CallPanel::refresh);
    connect(&m_controller, &SprayController::ticked, this, &CallPanel::refreshClock);
    connect(&m_session, &JobSession::findingsChanged, this, &CallPanel::refresh);
    refresh();
}

void CallPanel::setTouch(bool on)
{
    m_touch = on;
    m_strip->setVisible(on);
    fitHeight();
    layout()->activate(); // a finger may come before the next turn of the event loop
}

void CallPanel::fitHeight()
{
    const auto least = [](const QWidget* widget) {
        return std::max(widget->minimumHeight(), widget->sizeHint().height());
    };
    const auto setLow = [this](bool isLow) {
        m_head->setLow(isLow);
        m_state->setLow(isLow);
        m_field->setLow(isLow);
        m_gap->changeSize(0, isLow ? render::kGapTight : render::kGapBlock);
        const int edge = isLow ? render::kGapTight : render::kGapNear;
        layout()->setContentsMargins(render::kGapBlock, edge, render::kGapBlock, edge);
        layout()->invalidate();
    };
    setLow(false);
    int kept = 3 * render::kGapBlock + 4 * render::kGapNear;
    for (const QWidget* always :
         std::initializer_list<const QWidget*>{m_head, m_state, m_caption, m_field, m_readBack})
        kept += least(always);
    if (m_touch)
        kept += least(m_strip);
    setLow(height() < kept);
    m_gaps->setVisible(height() >= kept + m_gaps->height());
    kept += m_gaps->height();
    m_ruler->setVisible(height() >= kept + least(m_ruler));
    kept += least(m_ruler);
    const int legend = m_legend->sizeHint().height();
    m_legend->setVisible(!m_touch && height() >= kept + legend);
    m_trace->setVisible(!m_touch && height() >= kept + legend + kLeastTrace);
}

void CallPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitHeight();
}

void CallPanel::runKey(int key)
{
    if (key == Qt::Key_Return)
        m_controller.enter();
    else
        runCommand(key, Qt::NoModifier, QString(QChar(key)));
    m_field->setFocus();
}

void CallPanel::runDigit(int digit)
{
    m_field->clear();
    // A gloved finger has no letters; to it "other" is an answer.
    if (!m_touch && m_controller.wantsWords(digit))
        emit wordsWanted();
    else
        m_controller.choose(digit);
}

void CallPanel::runCommand(int key, Qt::KeyboardModifiers modifiers, const QString& text)
{
    using Prompt = SprayController::Prompt;
    if (key == Qt::Key_Escape) {
        m_controller.escape();
        return;
    }
    const bool isOnlyLooking =
        key == Qt::Key_J || key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_Z || key == Qt::Key_Q;
    if (m_session.hasJob() && !m_session.job().isOpenForWork() && !isOnlyLooking) {
        m_controller.refuse(tr("The job takes no more readings."));
        return;
    }
    if (m_controller.hasNumberBeneath() && key != Qt::Key_D) { // it would be lost
        m_controller.refuse(tr("Esc goes back to the number first."));
        return;
    }
    if (text == QStringLiteral("+")) {
        m_controller.overRange();
        return;
    }
    switch (key) {
    case Qt::Key_Space:
        m_controller.toggleSpray();
        break;
    case Qt::Key_N:
        m_controller.noResponse();
        break;
    case Qt::Key_C:
        m_controller.correctLast();
        break;
    case Qt::Key_J:
        m_controller.startPrompt(Prompt::Jump);
        break;
    case Qt::Key_S:
        m_controller.startPrompt(Prompt::SkipReason);
        break;
    case Qt::Key_V:
        if (m_controller.prompt() == Prompt::None && !m_controller.aimAtLast())
            m_controller.refuse(
                tr("Nothing that was stored here stands in this round; J calls an older point first."));
        else
            m_controller.startPrompt(Prompt::VoidReason);
        break;
    case Qt::Key_A:
        m_controller.startPrompt(Prompt::NoAccessReason);
        break;
    case Qt::Key_X:
        m_controller.startPrompt(Prompt::NotTestedReason);
        break;
    case Qt::Key_K:
        m_controller.confirm();
        break;
    case Qt::Key_O:
        m_controller.startPrompt(Prompt::OtherCondition);
        break;
    case Qt::Key_B:
        m_controller.askBackground();
        break;
    case Qt::Key_D:
        m_controller.firstRise();
        break;
    case Qt::Key_H:
        m_controller.takeHighest();
        break;
    case Qt::Key_L:
        m_controller.takeAdvice();
        break;
    case Qt::Key_Q:
        emit repeatWanted();
        break;
    case Qt::Key_I:
        m_controller.goOnAnyway();
        break;
    case Qt::Key_R:
        m_controller.setCondition(model::Condition::AtRest);
        break;
    case Qt::Key_F:
        m_controller.setCondition(model::Condition::Flexed);
        break;
    case Qt::Key_T:
        m_controller.setCondition(model::Condition::Taped);
        break;
    case Qt::Key_G:
        m_controller.setCondition(model::Condition::Bagged);
        break;
    case Qt::Key_Up:
        m_controller.look(-1);
        break;
    case Qt::Key_Down:
        m_controller.look(1);
        break;
    case Qt::Key_M:
        if ((modifiers & Qt::ShiftModifier) == 0)
            emit remarkWanted();
        break;
    case Qt::Key_W:
        emit shieldWanted();
        break;
    case Qt::Key_P:
        emit orderWanted();
        break;
    case Qt::Key_Z:
        emit distanceWanted();
        break;
    default:
        m_controller.refuse(tr("This key does nothing here; F1 shows the keys."));
        break;
    }
}

report::ShownUnit CallPanel::displayUnit() const
{
    const model::Setup& setup = m_session.job().setup;
    return report::shownUnit(setup, setup.detectorUnit);
}

QString CallPanel::caption() const
{
    using Prompt = SprayController::Prompt;
    switch (m_controller.prompt()) {
    case Prompt::Jump:
        return tr("Go to point number");
    case Prompt::VoidReason:
        return m_controller.targetInWords().isEmpty()
                   ? tr("Why is the last reading void?")
                   : tr("Why is the reading %1 void?").arg(m_controller.targetInWords());
    case Prompt::VoidRunReason:
        return tr("Why are all these readings void?");
    case Prompt::NoAccessReason:
        return tr("Why can it not be reached?");
    case Prompt::NotTestedReason:
        return tr("Why is it not tested?");
    case Prompt::OtherCondition:
        return tr("Condition of the joint");
    case Prompt::SkipReason:
        return tr("Why does it come later?");
    case Prompt::None:
        break;
    }
    if (m_controller.field() == SprayController::Field::Background)
        return tr("Background, no helium given");
    if (m_controller.field() == SprayController::Field::Delay)
        return m_controller.offeredDelay()
                   ? tr("First rise: seconds after helium on; Enter alone takes %1")
                         .arg(QLocale().toString(*m_controller.offeredDelay(), 'f', 1))
                   : tr("First rise: seconds after helium on");
    if (m_controller.field() == SprayController::Field::RangeEnd)
        return tr("The highest this detector can show; stored as above it");
    if (m_controller.field() == SprayController::Field::PaperTime)
        return m_controller.paperTimeOffered()
                   ? tr("Time on the paper, as 1432; Enter alone takes %1, at the usual pace")
                         .arg(QString::fromStdString(m_controller.paperTimeOffered()->timeOfDay()))
                   : tr("Time on the paper, as 1432");
    if (m_controller.isCorrecting())
        return tr("Instead of %1: what was really shown").arg(m_controller.targetInWords());
    return tr("Highest value while spraying, as the detector shows it");
}

/// What was left out is no answer: it has a reason instead.
QString CallPanel::finishedWords() const
{
    const model::Job& job = m_session.job();
    int leftOut = 0;
    for (const model::Reading* reading : job.standing(m_controller.round()))
        if (reading->outcome == model::Outcome::NotTested ||
            reading->outcome == model::Outcome::NotAccessible)
            ++leftOut;
    const auto checks = job.standingCalibrations();
    const bool isClosed = std::any_of(checks.begin(), checks.end(), [](const model::Calibration* check) {
        return check->moment == model::CalibrationMoment::After;
    });
    if (!checks.empty() && !isClosed && job.setup.noCheckAfterReason.empty() && job.isOpenForWork())
        return (leftOut == 0 ? QString() : tr("%n left out; ", nullptr, leftOut)) +
               tr("the check with the reference leak afterwards is due: Prepare, Alt+1");
    const auto& walk = m_controller.walk();
    if (leftOut == 0 && std::ranges::any_of(walk, &analysis::WalkStep::isReadLater))
        return tr("every point of it has an answer, here or in a later round");
    return leftOut == 0 ? tr("every point of it has an answer")
                        : tr("every point of it has an answer, or a reason: %n left out", nullptr, leftOut);
}

void CallPanel::refresh()
{
    const auto& call = m_controller.call();
    if (!m_session.hasJob()) {
        m_head->setCall({}, tr("No job is open"), {}, {});
    } else if (!call) {
        const auto open = m_controller.leftOpen();
        m_head->setCall({}, m_controller.isFinished() ? tr("Round done") : tr("No points yet"),
                        open ? tr("Enter goes on with round %1: %n call(s) left", nullptr, open->left)
                                   .arg(open->round->number)
                        : m_controller.isFinished() ? finishedWords()
                                                    : tr("Sketch lays them (Alt+2)"),
                        {});
    } else {
        const model::Sketch& sketch = m_session.job().sketch;
        const model::TestPoint* point = sketch.point(call->point);
        const model::Joint* joint = point == nullptr ? nullptr : sketch.joint(point->joint);
        m_head->setCall(
            QString::number(call->number), joint == nullptr ? QString() : QString::fromStdString(joint->name),
            point == nullptr ? QString() : render::inWords(model::placeText(sketch, *point)), chips());
    }
    m_caption->setText(caption());
    refreshField();
    QStringList choices = m_controller.choices();
    for (qsizetype i = 0; i < choices.size(); ++i)
        choices[i] = QString::number(i + 1) + QLatin1Char(' ') + choices[i];
    std::optional<analysis::PointFinding> finding;
    if (const auto reading = m_controller.readingSoFar())
        finding = analysis::readingFinding(m_session.job(), m_session.object(), *reading);
    if (finding)
        m_ruler->setValue(finding->asRead, report::rangeOf(*finding, m_ruler->scale().gas));
    else
        m_ruler->setValue({});
    if (m_session.hasJob())
        m_readBack->setFinding(finding, report::shownUnit(m_session.job().setup));
    m_field->setHint(feedHint());
    if (!m_controller.question().isEmpty())
        m_readBack->setSentence(m_controller.question());
    else if (!choices.isEmpty())
        m_readBack->setSentence(choices.join(QStringLiteral("   ")));
    refreshLegend();
    refreshClock();
}

QStringList CallPanel::chips() const
{
    // What bears on the reading first: a narrow panel leaves the last ones out.
    QStringList chips{conditionWord(m_controller.condition())};
    if (m_controller.isCorrecting()) // seen before it is stored
        chips << tr("because “%1”, M: other")
                     .arg(m_controller.remark().isEmpty() ? SprayController::typedWrong()
                                                          : m_controller.remark());
    if (m_controller.isTranscribing())
        chips << tr("from paper");
    if (const QString off = m_controller.isCorrecting() ? QString() : m_controller.shielded(); !off.isEmpty())
        chips << tr("taped off: %1").arg(off.count(QLatin1Char(',')) < 2
                                             ? off
                                             : off.section(QLatin1Char(','), 0, 1) + QStringLiteral(" …"));
    if (m_controller.isConfirming())
        chips << tr("confirms");
    else if (m_controller.hasReading() && !m_controller.isCorrecting())
        chips << tr("has a reading");
    if (const auto delay = m_controller.delay())
        chips << tr("first rise %1 s").arg(QLocale().toString(inSeconds(*delay), 'f', 1));
    if (!m_controller.remark().isEmpty() && !m_controller.isCorrecting())
        chips << tr("remark: %1").arg(m_controller.remark());
    if (const QString last = m_last->words(m_controller.call()->point);
        !last.isEmpty() && !m_controller.isCorrecting())
        chips << last;
    chips << tr("%1 % He").arg(m_session.job().setup.heliumShare.si() * 100.0, 0, 'f', 0);
    return chips;
}

void CallPanel::refreshField()
{
    using Takes = EntryField::Takes;
    using Field = SprayController::Field;
    const Takes takes =
        m_controller.prompt() != SprayController::Prompt::None || m_controller.field() == Field::PaperTime
            ? Takes::Digits
        : m_controller.field() == Field::Delay ? Takes::Seconds
                                               : Takes::Rate;
    m_unit->setText(!m_session.hasJob() || takes == Takes::Digits ? QString()
                    : takes == Takes::Seconds                     ? tr("s")
                                              : QString::fromStdString(displayUnit().symbol) + tr(", He"));
    m_field->setTakes(takes);
    m_field->setOffered(takes == Takes::Rate ? std::optional(m_controller.offeredExponent()) : std::nullopt);
    m_field->setEnabled(m_session.hasJob());
    if (m_field->text().toStdString() != m_controller.typed())
        m_field->setText(QString::fromStdString(m_controller.typed()));
}

std::optional<LeakRate> CallPanel::feedLevel() const
{
    if (m_controller.feed() == nullptr)
        return std::nullopt;
    const auto level = m_controller.feed()->levelNow();
    return level ? std::optional(LeakRate::fromSi(level->rate)) : std::nullopt;
}

QString CallPanel::rateText(std::optional<LeakRate> rate) const
{
    if (!rate || !m_session.hasJob())
        return {};
    return render::inFigures(report::screenRate(displayUnit().number(*rate)));
}

/// What the feed saw, in the empty field: Enter stores it. Or the number that stands aside.
QString CallPanel::feedHint() const
{
    if (m_controller.hasNumberBeneath())
        return tr("%1 waits").arg(render::inFigures(m_controller.beneath().readBack));
    if (const auto rate = m_controller.offered(); rate && m_controller.offer().wasLost)
        return tr("feed saw %1, then was lost · Enter").arg(rateText(rate));
    if (const auto rate = m_controller.offered())
        return tr("feed saw %1 · Enter stores it").arg(rateText(rate));
    if (m_controller.offer().sawNoRise && m_controller.machine().state() == CallState::Read &&
        m_controller.prompt() == SprayController::Prompt::None)
        return tr("feed saw no rise · N: no response");
    return {};
}

void CallPanel::refreshClock()
{
    const SprayMachine& machine = m_controller.machine();
    if (const QString gaps = m_controller.gapsSoFar(); gaps != m_gaps->text())
        m_gaps->setText(gaps);
    StateShown shown;
    shown.state = machine.state();
    shown.progress = machine.progress(m_controller.now());
    shown.word = stateWord(machine.state());
    shown.hint = stateHint(machine.state());
    const QLocale locale;
    const auto secondsText = [&](double value) { return tr("%1 s").arg(locale.toString(value, 'f', 1)); };
    switch (machine.state()) {
    case CallState::Go: {
        const auto level = rateText(feedLevel());
        shown.figure = level.isEmpty() ? rateText(m_controller.background()) : level;
        shown.figureHint = m_controller.feed() != nullptr && m_controller.feed()->isAtZero()
                               ? tr("zeroed? no background")
                           : !level.isEmpty()          ? tr("background now")
                           : m_controller.background() ? m_controller.isBackgroundFresh()
                                                             ? tr("background")
                                                             : tr("background as before; B changes it")
                                                       : tr("no background typed: B");
        break;
    }
    case CallState::Spray:
        shown.figure = secondsText(machine.left(m_controller.now()));
        shown.figureHint = tr("of %1 left").arg(secondsText(machine.times().dwell));
        break;
    case CallState::Read:
        shown.figure = secondsText(machine.sprayed(m_controller.now()).value_or(0.0));
        shown.figureHint = tr("sprayed");
        if (m_controller.offered())
            shown.hint = tr("Enter takes the feed's highest, or type");
        break;
    case CallState::Wait:
        shown.figure = secondsText(machine.left(m_controller.now()));
        shown.figureHint = tr("or I to go on anyway");
        if (m_controller.isTooEarly())
            shown.hint = tr("not yet: helium still clears");
        if (machine.left(m_controller.now()) <= 0.0 && !machine.isClear()) {
            shown.hint = tr("the background is not back yet");
            shown.figure = rateText(feedLevel());
        }
        break;
    case CallState::Hold:
        if (m_controller.isHeldByFeed()) {
            shown.hint = tr("the feed is lost: type values, Space goes on");
            break;
        }
        shown.figure = rateText(feedLevel());
        shown.figureHint = tr("or I to go on anyway");
        break;
    }
    if (m_controller.isNotStored()) {
        shown = {CallState::Hold,
                 0.0,
                 tr("NOT STORED"),
                 m_controller.isTryingAgain() ? tr("another program writes; tried again")
                                              : tr("Enter tries again"),
                 {},
                 {}};
    } else if (m_session.hasJob() && !m_session.job().isOpenForWork()) {
        shown = {CallState::Hold, 0.0, tr("SHUT"), tr("the job takes no more readings"), {}, {}};
    } else if (m_controller.isTranscribing()) {
        shown = {CallState::Read,
                 0.0,
                 tr("PAPER"),
                 tr("B background, value, D first rise, Enter, time, Enter"),
                 {},
                 {}};
    } else if (m_session.hasJob() && !m_controller.call() && machine.state() == CallState::Go) {
        shown.word = tr("DONE");
        shown.hint = tr("J calls a point again");
        shown.figureHint.clear();
    }
    m_state->show(shown);
}

void CallPanel::refreshLegend()
{
    using model::Condition;
    const auto condition = m_controller.condition();
    const auto key = [](const QString& cap, const QString& word, int code, bool on = false) {
        return LegendKey{cap, word, code, on};
    };
    m_legend->setKeys({
        {key(tr("Space"), tr("spray"), Qt::Key_Space), key(tr("Enter"), tr("store"), Qt::Key_Return),
         key(QStringLiteral("N"), tr("no response"), Qt::Key_N),
         key(QStringLiteral("+"), tr("over range"), Qt::Key_Plus)},
        {key(QStringLiteral("B"), tr("background"), Qt::Key_B),
         key(QStringLiteral("V"), tr("void"), Qt::Key_V),
         // While helium is on nothing is put off; the moment of the first rise is what must not be missed.
         m_controller.machine().isAsking() ? key(QStringLiteral("D"), tr("first rise"), Qt::Key_D)
                                           : key(QStringLiteral("S"), tr("skip"), Qt::Key_S),
         key(QStringLiteral("A"), tr("no access"), Qt::Key_A)},
        {key(QStringLiteral("R"), tr("at rest"), Qt::Key_R, condition == Condition::AtRest),
         key(QStringLiteral("F"), tr("flexed"), Qt::Key_F, condition == Condition::Flexed),
         key(QStringLiteral("T"), tr("taped"), Qt::Key_T, condition == Condition::Taped),
         key(QStringLiteral("G"), tr("bagged"), Qt::Key_G, condition == Condition::Bagged),
         key(QStringLiteral("O"), tr("other …"), Qt::Key_O)},
    });
}

} // namespace sealwalk::ui
