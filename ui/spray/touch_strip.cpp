// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/touch_strip.h"

#include "ui/spray/spray_words.h"
#include "ui/spray/touch_field.h"
#include "ui/spray/touch_size.h"

#include <QGridLayout>

namespace sealwalk::ui {

namespace {

constexpr qint64 kTwiceMilliseconds = 2000;

QString exponentText(int exponent)
{
    return exponent < 0   ? QChar(0x2212) + QString::number(-exponent)
           : exponent > 0 ? QLatin1Char('+') + QString::number(exponent)
                          : QStringLiteral("0");
}

} // namespace

TouchStrip::TouchStrip(SprayController& controller, QWidget* parent)
    : QWidget(parent)
    , m_controller(controller)
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(pixelsOn(screen(), kGloveGapMillimetres));
    m_spray = add(0, 0, QStringLiteral("stage-spray"), "touchSpray", &TouchStrip::spray);
    m_store = add(0, 1, QStringLiteral("sign"), "touchStore", &TouchStrip::store);
    m_noResponse = add(0, 2, QStringLiteral("no-response"), "touchNoResponse", &TouchStrip::noResponse);
    m_value = add(0, 3, QStringLiteral("feed"), "touchValue", &TouchStrip::value);
    m_condition = add(1, 0, QStringLiteral("flex"), "touchCondition", &TouchStrip::condition);
    m_void = add(1, 1, QStringLiteral("void"), "touchVoid", &TouchStrip::voidOrSkip);
    m_exponent = add(1, 2, QStringLiteral("over-range"), "touchExponent", &TouchStrip::exponentUp);
    m_correct = add(1, 3, QStringLiteral("remark"), "touchCorrect", &TouchStrip::correct);
    connect(&m_controller, &SprayController::changed, this, &TouchStrip::refresh);
    connect(&m_controller, &SprayController::offerChanged, this, &TouchStrip::refresh);
    refresh();
}

TouchField* TouchStrip::add(int row, int column, const QString& icon, const char* name,
                            void (TouchStrip::*does)())
{
    auto* field = new TouchField(icon, this);
    field->setObjectName(QLatin1String(name));
    static_cast<QGridLayout*>(layout())->addWidget(field, row, column);
    connect(field, &QAbstractButton::clicked, this, does);
    return field;
}

void TouchStrip::refresh()
{
    const CallState state = m_controller.machine().state();
    const bool typed = !m_controller.typed().empty();
    switch (state) {
    case CallState::Go:
        m_spray->setWords(tr("Spray"), tr("starts"));
        break;
    case CallState::Spray:
        m_spray->setWords(tr("Stop"), tr("helium off"));
        break;
    case CallState::Read:
        m_spray->setWords(tr("Spray"), tr("once more"));
        break;
    case CallState::Wait:
    case CallState::Hold:
        m_spray->setWords(tr("Go on"), tr("touch twice"));
        break;
    }
    m_spray->setWanted(state == CallState::Go && !typed);
    m_store->setWords(tr("Store"), tr("and next"));
    m_store->setWanted(typed || m_controller.offered());
    m_noResponse->setWords(tr("No response"), tr("bound kept"));
    if (m_controller.hasFeed())
        m_value->setWords(tr("Highest"), tr("from feed"));
    else
        m_value->setWords(tr("Value"), tr("digits"));
    m_value->setWanted(state == CallState::Read && !typed && !m_controller.offered());
    m_condition->setWords(tr("Condition"), conditionWord(m_controller.condition()));
    m_void->setWords(tr("Void, skip"), tr("with reason"));
    const EnteredNumber number = m_controller.entered();
    // One place for both: without a number there is no exponent, and with one no other value is asked for.
    m_exponent->setIcon(typed ? QStringLiteral("over-range") : QStringLiteral("stage-prepare"));
    if (typed)
        m_exponent->setWords(
            tr("Exponent +"),
            tr("now %1").arg(exponentText(number.shownExponent.value_or(m_controller.offeredExponent()))));
    else
        m_exponent->setWords(tr("Background"), tr("digits"));
    m_correct->setWords(tr("Correct"), tr("last point"));
}

void TouchStrip::spray()
{
    const CallState state = m_controller.machine().state();
    if (state != CallState::Wait && state != CallState::Hold) {
        m_controller.toggleSpray();
        return;
    }
    if (m_sinceGoOn.isValid() && m_sinceGoOn.elapsed() < kTwiceMilliseconds) {
        m_sinceGoOn.invalidate();
        m_controller.goOnAnyway();
        return;
    }
    m_sinceGoOn.start();
    m_controller.refuse(tr("Helium is still clearing; touch once more within two seconds to go on anyway."));
}

void TouchStrip::value()
{
    if (!m_controller.hasFeed())
        emit digitsWanted();
    else if (m_controller.offered())
        m_controller.takeHighest();
    else
        m_controller.refuse(tr("The feed saw no rise yet; touch the field to type the value."));
}

void TouchStrip::exponentUp()
{
    if (!m_controller.typed().empty()) {
        m_controller.stepExponent(1);
        return;
    }
    if (m_controller.field() != SprayController::Field::Background)
        m_controller.askBackground();
    emit digitsWanted();
}

void TouchStrip::correct()
{
    m_controller.correctLast();
    if (m_controller.isCorrecting())
        emit digitsWanted();
}

} // namespace sealwalk::ui
