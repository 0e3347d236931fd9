// SPDX-License-Identifier: GPL-3.0-or-later
// A wireless presenter drives a round: four buttons, each learned once by pressing it.
#pragma once

#include "ui/spray/spray_controller.h"

#include <QKeySequence>
#include <QObject>

#include <array>
#include <optional>

class QKeyEvent;

namespace sealwalk::ui {

enum class PresenterButton
{
    Next,
    Back,
    Black,
    Start
};
inline constexpr std::array kPresenterButtons{PresenterButton::Next, PresenterButton::Back,
                                              PresenterButton::Black, PresenterButton::Start};

/// What each button sends; empty: not learned. A presenter is a keyboard to the machine.
struct PresenterKeys
{
    std::array<QKeySequence, kPresenterButtons.size()> keys;

    [[nodiscard]] const QKeySequence& of(PresenterButton button) const
    {
        return keys[static_cast<std::size_t>(button)];
    }
    QKeySequence& of(PresenterButton button) { return keys[static_cast<std::size_t>(button)]; }
    [[nodiscard]] std::optional<PresenterButton> buttonOf(const QKeyEvent& event) const;
    bool operator==(const PresenterKeys&) const = default;
};

/// The key of an event with its modifiers; empty for a modifier alone.
QKeySequence keyOf(const QKeyEvent& event);

class Presenter : public QObject
{
    Q_OBJECT

public:
    explicit Presenter(SprayController& controller, QObject* parent = nullptr);
    void setKeys(const PresenterKeys& keys) { m_keys = keys; }
    void press(PresenterButton button);

    /// Takes the learned keys before the watched widget sees them.
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void distanceWanted();

private:
    void next();
    void back();
    /// True for the second press of the same button within two seconds.
    bool isSecond(PresenterButton button);

    SprayController& m_controller;
    PresenterKeys m_keys;
    std::optional<PresenterButton> m_last;
    double m_lastAt = 0.0; ///< s, on the controller's clock
};

} // namespace sealwalk::ui
