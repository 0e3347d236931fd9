// SPDX-License-Identifier: GPL-3.0-or-later
// Eight fields of glove size in place of trace and key legend: a round without keyboard or mouse.
#pragma once

#include "ui/spray/spray_controller.h"

#include <QElapsedTimer>
#include <QWidget>

namespace sealwalk::ui {

class TouchField;

class TouchStrip : public QWidget
{
    Q_OBJECT

public:
    explicit TouchStrip(SprayController& controller, QWidget* parent = nullptr);

signals:
    void digitsWanted();
    void conditionsWanted();

private:
    void refresh();
    TouchField* add(int row, int column, const QString& icon, const char* name, void (TouchStrip::*does)());
    void spray();
    void store() { m_controller.enter(); }
    void noResponse() { m_controller.noResponse(); }
    void value();
    void condition() { emit conditionsWanted(); }
    void voidOrSkip() { m_controller.startPrompt(SprayController::Prompt::VoidReason); }
    void exponentUp();
    void correct();

    SprayController& m_controller;
    TouchField* m_spray;
    TouchField* m_store;
    TouchField* m_noResponse;
    TouchField* m_value;
    TouchField* m_condition;
    TouchField* m_void;
    TouchField* m_exponent;
    TouchField* m_correct;
    QElapsedTimer m_sinceGoOn; ///< a wait is only left by two touches
};

} // namespace sealwalk::ui
