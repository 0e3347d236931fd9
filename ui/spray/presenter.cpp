// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/presenter.h"

#include <QKeyEvent>

namespace sealwalk::ui {

namespace {

constexpr double kTwiceSeconds = 2.0;

} // namespace

QKeySequence keyOf(const QKeyEvent& event)
{
    switch (event.key()) {
    case 0:
    case Qt::Key_unknown:
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Meta:
        return {};
    default:
        break;
    }
    const Qt::KeyboardModifiers modifiers = event.modifiers() & ~Qt::KeypadModifier;
    return QKeySequence(QKeyCombination(modifiers, static_cast<Qt::Key>(event.key())));
}

std::optional<PresenterButton> PresenterKeys::buttonOf(const QKeyEvent& event) const
{
    const QKeySequence pressed = keyOf(event);
    if (!pressed.isEmpty())
        for (const PresenterButton button : kPresenterButtons)
            if (of(button) == pressed)
                return button;
    return std::nullopt;
}

Presenter::Presenter(SprayController& controller, QObject* parent)
    : QObject(parent)
    , m_controller(controller)
{}

bool Presenter::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
        return QObject::eventFilter(watched, event);
    const auto& key = *static_cast<QKeyEvent*>(event);
    const auto button = m_keys.buttonOf(key);
    // While a number is typed the keyboard is meant: a presenter may send the full stop.
    if (!button || (!m_controller.typed().empty() && !key.text().isEmpty() && key.text().front().isPrint()))
        return QObject::eventFilter(watched, event);
    event->accept();
    if (event->type() == QEvent::KeyPress && !key.isAutoRepeat())
        press(*button);
    return true;
}

bool Presenter::isSecond(PresenterButton button)
{
    const double now = m_controller.now();
    const bool second = m_last == button && now - m_lastAt < kTwiceSeconds;
    m_last = second ? std::nullopt : std::optional(button);
    m_lastAt = now;
    return second;
}

void Presenter::press(PresenterButton button)
{
    switch (button) {
    case PresenterButton::Next:
        next();
        return;
    case PresenterButton::Back:
        back();
        return;
    case PresenterButton::Black:
        if (isSecond(button))
            m_controller.voidLast(tr("voided from the presenter"));
        else if (m_controller.aimAtLast())
            m_controller.refuse(tr("Press the same button within two seconds to void the reading %1.")
                                    .arg(m_controller.targetInWords()));
        else
            m_controller.refuse(tr("Nothing that was stored here stands in this round."));
        return;
    case PresenterButton::Start:
        emit distanceWanted();
        return;
    }
}

void Presenter::next()
{
    switch (m_controller.machine().state()) {
    case CallState::Go:
    case CallState::Spray:
        m_last.reset();
        m_controller.toggleSpray();
        return;
    case CallState::Read:
        m_last.reset();
        m_controller.takeHighestAndStore();
        return;
    case CallState::Wait:
    case CallState::Hold:
        if (isSecond(PresenterButton::Next))
            m_controller.goOnAnyway();
        else
            m_controller.refuse(tr("Press the same button within two seconds to go on anyway."));
        return;
    }
}

void Presenter::back()
{
    m_last.reset();
    switch (m_controller.machine().state()) {
    case CallState::Spray:
        m_controller.markRise();
        return;
    case CallState::Read:
        m_controller.noResponse();
        return;
    case CallState::Wait:
        m_controller.correctLast();
        return;
    case CallState::Go:
    case CallState::Hold:
        m_controller.refuse(tr("Back marks the first rise, says no response, or corrects the last."));
        return;
    }
}

} // namespace sealwalk::ui
