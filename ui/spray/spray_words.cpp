// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/spray_words.h"

#include "core/analysis/spray_timing.h"

#include <QCoreApplication>

#include <cmath>

namespace sealwalk::ui {

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("SprayWords", text);
}

} // namespace

QString stateWord(CallState state)
{
    switch (state) {
    case CallState::Go:
        return words(QT_TRANSLATE_NOOP("SprayWords", "GO"));
    case CallState::Spray:
        return words(QT_TRANSLATE_NOOP("SprayWords", "SPRAY"));
    case CallState::Read:
        return words(QT_TRANSLATE_NOOP("SprayWords", "READ"));
    case CallState::Wait:
        return words(QT_TRANSLATE_NOOP("SprayWords", "WAIT"));
    case CallState::Hold:
        return words(QT_TRANSLATE_NOOP("SprayWords", "HOLD"));
    }
    return {};
}

QString stateHint(CallState state)
{
    switch (state) {
    case CallState::Go:
        return words(QT_TRANSLATE_NOOP("SprayWords", "Space starts the spray"));
    case CallState::Spray:
        return words(QT_TRANSLATE_NOOP("SprayWords", "helium on, move along the stretch"));
    case CallState::Read:
        return words(QT_TRANSLATE_NOOP("SprayWords", "type the highest value"));
    case CallState::Wait:
        return words(QT_TRANSLATE_NOOP("SprayWords", "helium of the last point clears"));
    case CallState::Hold:
        return words(QT_TRANSLATE_NOOP("SprayWords", "the background moves"));
    }
    return {};
}

QString conditionWord(model::Condition condition)
{
    switch (condition) {
    case model::Condition::AtRest:
        return words(QT_TRANSLATE_NOOP("SprayWords", "at rest"));
    case model::Condition::Flexed:
        return words(QT_TRANSLATE_NOOP("SprayWords", "flexed"));
    case model::Condition::Extended:
        return words(QT_TRANSLATE_NOOP("SprayWords", "extended"));
    case model::Condition::Angle:
        return words(QT_TRANSLATE_NOOP("SprayWords", "turned"));
    case model::Condition::Hot:
        return words(QT_TRANSLATE_NOOP("SprayWords", "hot"));
    case model::Condition::Cold:
        return words(QT_TRANSLATE_NOOP("SprayWords", "cold"));
    case model::Condition::Wet:
        return words(QT_TRANSLATE_NOOP("SprayWords", "wet"));
    case model::Condition::Dried:
        return words(QT_TRANSLATE_NOOP("SprayWords", "dried"));
    case model::Condition::Open:
        return words(QT_TRANSLATE_NOOP("SprayWords", "open"));
    case model::Condition::HalfOpen:
        return words(QT_TRANSLATE_NOOP("SprayWords", "half open"));
    case model::Condition::Shut:
        return words(QT_TRANSLATE_NOOP("SprayWords", "shut"));
    case model::Condition::Taped:
        return words(QT_TRANSLATE_NOOP("SprayWords", "taped"));
    case model::Condition::Bagged:
        return words(QT_TRANSLATE_NOOP("SprayWords", "bagged"));
    case model::Condition::Other:
        return words(QT_TRANSLATE_NOOP("SprayWords", "other"));
    }
    return {};
}

QString outcomeWord(model::Outcome outcome)
{
    switch (outcome) {
    case model::Outcome::Value:
        return {};
    case model::Outcome::NoResponse:
        return words(QT_TRANSLATE_NOOP("SprayWords", "no response"));
    case model::Outcome::AboveRange:
        return words(QT_TRANSLATE_NOOP("SprayWords", "above range"));
    case model::Outcome::NotAccessible:
        return words(QT_TRANSLATE_NOOP("SprayWords", "no access"));
    case model::Outcome::NotTested:
        return words(QT_TRANSLATE_NOOP("SprayWords", "not tested"));
    }
    return {};
}

const std::vector<model::Condition>& otherConditions()
{
    using enum model::Condition;
    static const std::vector<model::Condition> kOrder{Hot,      Cold, Wet,   Dried, Open,
                                                      HalfOpen, Shut, Angle, Other};
    return kOrder;
}

QStringList choicesFor(SprayController::Prompt prompt)
{
    switch (prompt) {
    case SprayController::Prompt::VoidReason:
    case SprayController::Prompt::VoidRunReason:
        return {words(QT_TRANSLATE_NOOP("SprayWords", "background moved")),
                words(QT_TRANSLATE_NOOP("SprayWords", "drift")),
                words(QT_TRANSLATE_NOOP("SprayWords", "wrong place")),
                words(QT_TRANSLATE_NOOP("SprayWords", "helium low")),
                words(QT_TRANSLATE_NOOP("SprayWords", "other"))};
    case SprayController::Prompt::NoAccessReason:
        return {words(QT_TRANSLATE_NOOP("SprayWords", "covered")),
                words(QT_TRANSLATE_NOOP("SprayWords", "behind the frame")),
                words(QT_TRANSLATE_NOOP("SprayWords", "too hot")),
                words(QT_TRANSLATE_NOOP("SprayWords", "no safe reach")),
                words(QT_TRANSLATE_NOOP("SprayWords", "other"))};
    case SprayController::Prompt::NotTestedReason:
        return {words(QT_TRANSLATE_NOOP("SprayWords", "left out by agreement")),
                words(QT_TRANSLATE_NOOP("SprayWords", "in use")),
                words(QT_TRANSLATE_NOOP("SprayWords", "under repair")),
                words(QT_TRANSLATE_NOOP("SprayWords", "no time left")),
                words(QT_TRANSLATE_NOOP("SprayWords", "other"))};
    case SprayController::Prompt::SkipReason:
        return {words(QT_TRANSLATE_NOOP("SprayWords", "helium hangs there")),
                words(QT_TRANSLATE_NOOP("SprayWords", "in use")),
                words(QT_TRANSLATE_NOOP("SprayWords", "needs a second person")),
                words(QT_TRANSLATE_NOOP("SprayWords", "later"))};
    case SprayController::Prompt::OtherCondition: {
        QStringList result;
        for (const model::Condition condition : otherConditions())
            result << conditionWord(condition);
        return result;
    }
    case SprayController::Prompt::Jump:
    case SprayController::Prompt::None:
        return {};
    }
    return {};
}

std::string bothWords(const std::string& first, const std::string& second)
{
    return first.empty() || second.empty() ? first + second : first + "; " + second;
}

QString timeLeftText(const SprayController& controller)
{
    constexpr double kSecondsPerMinute = 60.0;
    const int open = controller.calls() - controller.done();
    const int minutes = static_cast<int>(
        std::ceil(inSeconds(analysis::walkTime(controller.timing(), open)) / kSecondsPerMinute));
    return open == 0 ? words(QT_TRANSLATE_NOOP("SprayWords", "nothing left to spray"))
                     : QCoreApplication::translate("SprayWords", "about %n min left", nullptr, minutes);
}

} // namespace sealwalk::ui
