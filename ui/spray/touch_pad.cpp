// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/touch_pad.h"

#include "ui/render/theme.h"
#include "ui/spray/spray_words.h"
#include "ui/spray/touch_field.h"
#include "ui/spray/touch_size.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

#include <utility>

namespace sealwalk::ui {

namespace {

using Prompt = SprayController::Prompt;

constexpr int kPadColumns = 3;

QString titleOf(Prompt prompt, const QString& target)
{
    switch (prompt) {
    case Prompt::VoidReason:
        return target.isEmpty() ? TouchPad::tr("The last reading is void, because …")
                                : TouchPad::tr("The reading %1 is void, because …").arg(target);
    case Prompt::VoidRunReason:
        return TouchPad::tr("All readings of the run are void, because …");
    case Prompt::NoAccessReason:
        return TouchPad::tr("It cannot be reached, because …");
    case Prompt::NotTestedReason:
        return TouchPad::tr("It is not tested, because …");
    case Prompt::OtherCondition:
        return TouchPad::tr("Condition of the joint");
    case Prompt::SkipReason:
        return TouchPad::tr("It comes later, because …");
    case Prompt::Jump:
    case Prompt::None:
        break;
    }
    return {};
}

} // namespace

TouchPad::TouchPad(SprayController& controller, QWidget* parent)
    : QFrame(parent)
    , m_controller(controller)
    , m_title(new QLabel(this))
{
    setObjectName(QStringLiteral("touchPad"));
    setProperty("ground", QStringLiteral("field"));
    setAutoFillBackground(true);
    setFrameShape(QFrame::StyledPanel);
    m_title->setProperty("role", QStringLiteral("title"));
    m_title->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    const int gap = pixelsOn(screen(), kGloveGapMillimetres);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap);
    column->addWidget(m_title);
    hide();
    connect(&m_controller, &SprayController::changed, this, &TouchPad::refresh);
}

void TouchPad::setActive(bool active)
{
    m_active = active;
    if (!active)
        shut();
}

void TouchPad::openDigits()
{
    open(Shows::Digits);
}

void TouchPad::touchField()
{
    if (m_active && m_prompt == SprayController::Prompt::None)
        openDigits();
}

void TouchPad::openConditions()
{
    open(Shows::Conditions);
}

void TouchPad::shut()
{
    m_shows = Shows::Nothing;
    m_prompt = Prompt::None;
    hide();
}

void TouchPad::open(Shows shows)
{
    m_shows = shows;
    clear();
    if (shows == Shows::Digits)
        showDigits();
    else if (shows == Shows::Conditions)
        showChoices(tr("Condition of the joint"), conditions());
    setAccessibleName(m_title->text());
    m_fields->show(); // children that come later do not show by themselves
    emit opened();
    show();
    raise();
}

void TouchPad::refresh()
{
    if (!m_active)
        return;
    const SprayController::Field field = m_controller.field();
    if (std::exchange(m_field, field) != field && field == SprayController::Field::Delay) {
        open(Shows::Digits);
        return;
    }
    const Prompt prompt = m_controller.prompt();
    if (prompt == m_prompt) {
        if (m_shows == Shows::Digits && isVisible())
            setAccessibleDescription(QString::fromStdString(m_controller.typed()));
        return;
    }
    const Prompt before = std::exchange(m_prompt, prompt);
    if (prompt == Prompt::None) {
        // Answered, perhaps by keys: digits that went on would no longer be a point number.
        if (m_shows == Shows::Choices || before == Prompt::Jump)
            shut();
        return;
    }
    if (prompt == Prompt::Jump) {
        open(Shows::Digits);
        return;
    }
    std::vector<Choice> choices;
    const QStringList words = m_controller.choices();
    for (int i = 0; i < words.size(); ++i)
        choices.push_back({words[i], [this, i] { m_controller.choose(i + 1); }});
    if (prompt == Prompt::VoidReason) { // what else keeps a value from coming
        choices.push_back({tr("no access …"), [this] { m_controller.startPrompt(Prompt::NoAccessReason); }});
        choices.push_back({tr("skip …"), [this] { m_controller.startPrompt(Prompt::SkipReason); }});
        choices.push_back({tr("jump …"), [this] { m_controller.startPrompt(Prompt::Jump); }});
        choices.push_back({tr("over range"), [this] {
                               m_controller.escape();
                               m_controller.overRange();
                               if (m_controller.field() == SprayController::Field::RangeEnd)
                                   openDigits();
                           }});
    }
    if (prompt == Prompt::NoAccessReason)
        choices.push_back(
            {tr("not tested …"), [this] { m_controller.startPrompt(Prompt::NotTestedReason); }});
    m_shows = Shows::Choices;
    clear();
    showChoices(titleOf(prompt, m_controller.targetInWords()), choices);
    setAccessibleName(m_title->text());
    m_fields->show(); // children that come later do not show by themselves
    emit opened();
    show();
    raise();
}

std::vector<TouchPad::Choice> TouchPad::conditions()
{
    using enum model::Condition;
    std::vector<Choice> choices;
    for (const model::Condition condition : {AtRest, Flexed, Taped, Bagged, Hot, Cold})
        choices.push_back({conditionWord(condition), [this, condition] {
                               shut();
                               m_controller.setCondition(condition);
                           }});
    choices.push_back({tr("other …"), [this] { m_controller.startPrompt(Prompt::OtherCondition); }});
    choices.push_back({tr("background …"), [this] {
                           if (m_controller.field() != SprayController::Field::Background)
                               m_controller.askBackground();
                           open(Shows::Digits);
                       }});
    choices.push_back({tr("taped off …"), [this] {
                           shut();
                           emit shieldWanted();
                       }});
    choices.push_back({tr("confirm"), [this] {
                           shut();
                           m_controller.confirm();
                       }});
    return choices;
}

void TouchPad::clear()
{
    if (m_fields == nullptr)
        return;
    m_fields->hide();
    m_fields->deleteLater(); // one of them may be the one whose touch brought us here
    m_fields = nullptr;
}

TouchField* TouchPad::add(int row, int column, const QString& word, std::function<void()> does)
{
    if (m_fields == nullptr) {
        m_fields = new QWidget(this);
        auto* grid = new QGridLayout(m_fields);
        grid->setContentsMargins(0, 0, 0, 0);
        grid->setSpacing(pixelsOn(screen(), kGloveGapMillimetres));
        layout()->addWidget(m_fields);
    }
    auto* field = new TouchField({}, m_fields);
    field->setWords(word);
    field->setObjectName(QStringLiteral("pad ") + word);
    static_cast<QGridLayout*>(m_fields->layout())->addWidget(field, row, column);
    connect(field, &QAbstractButton::clicked, this, [does = std::move(does)] { does(); });
    return field;
}

void TouchPad::showChoices(const QString& title, const std::vector<Choice>& choices)
{
    m_title->setText(title);
    int at = 0;
    for (const Choice& choice : choices) {
        add(at / kPadColumns, at % kPadColumns, choice.word, choice.does);
        ++at;
    }
    add((at + kPadColumns - 1) / kPadColumns, 0, tr("Cancel"), [this] { cancel(); });
}

void TouchPad::cancel()
{
    const bool digits = m_shows == Shows::Digits;
    const bool asked = m_controller.prompt() != Prompt::None;
    shut();
    if (!digits) {
        if (asked)
            m_controller.escape();
        return;
    }
    while (!m_controller.typed().empty() || m_controller.prompt() != Prompt::None)
        m_controller.escape();
    if (SprayController::isSideQuestion(m_controller.field()))
        m_controller.escape();
}

bool TouchPad::eventFilter(QObject* watched, QEvent* event)
{
    if (isVisible() && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        cancel();
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

void TouchPad::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        cancel();
    else
        QFrame::keyPressEvent(event);
}

void TouchPad::append(const QString& text)
{
    m_controller.setTyped((QString::fromStdString(m_controller.typed()) + text).toStdString());
}

void TouchPad::enterAndShut()
{
    const bool wasDelay = m_controller.field() == SprayController::Field::Delay;
    m_controller.enter();
    // A question or a refusal keeps the number, and with it the pad.
    const SprayController::Field field = m_controller.field();
    if (wasDelay ? field != SprayController::Field::Delay
                 : m_controller.typed().empty() && field == SprayController::Field::Peak)
        shut();
}

void TouchPad::showDigits()
{
    m_title->setText(
        m_prompt == Prompt::Jump                                     ? tr("Go to point number")
        : m_controller.field() == SprayController::Field::Background ? tr("Background, no helium given")
        : m_controller.field() == SprayController::Field::Delay ? tr("First rise, seconds after helium on")
                                                                : tr("What the detector shows"));
    for (int digit = 1; digit <= 9; ++digit) {
        const QString text = QString::number(digit);
        add(2 - (digit - 1) / 3, (digit - 1) % 3, text, [this, text] { append(text); });
    }
    add(3, 1, QStringLiteral("0"), [this] { append(QStringLiteral("0")); });
    add(0, 3, tr("back"), [this] {
        std::string typed = m_controller.typed();
        if (!typed.empty())
            typed.pop_back();
        m_controller.setTyped(typed);
    });
    if (m_prompt != Prompt::Jump) {
        add(1, 3, QStringLiteral("."), [this] { append(QStringLiteral(".")); });
        add(2, 3, QStringLiteral("e") + QChar(0x2212), [this] { append(QStringLiteral("-")); });
    }
    add(3, 3, tr("Enter"), [this] { enterAndShut(); })->setWanted(true);
    add(3, 0, tr("Cancel"), [this] { cancel(); });
}

} // namespace sealwalk::ui
