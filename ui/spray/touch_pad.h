// SPDX-License-Identifier: GPL-3.0-or-later
// What the touch strip opens: digits, or up to nine choices as a pad of three by three. Lies over the sheet
// until it is answered; nothing scrolls.
#pragma once

#include "ui/spray/spray_controller.h"

#include <QFrame>

#include <functional>
#include <vector>

class QGridLayout;
class QLabel;

namespace sealwalk::ui {

class TouchField;

class TouchPad : public QFrame
{
    Q_OBJECT

public:
    explicit TouchPad(SprayController& controller, QWidget* parent = nullptr);

    void openDigits();
    void openConditions();
    /// The entry field was touched: digits, when fingers are the way.
    void touchField();
    /// Choices open by themselves while this is on, whatever asked for them.
    void setActive(bool active);
    void shut();
    /// As its field "Cancel", and Esc in the pad or in the entry field (whose events it filters).
    void cancel();
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void shieldWanted(); ///< which points are taped off is to be asked for
    void opened();       ///< to be given a place: its size depends on what it shows

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Choice
    {
        QString word;
        std::function<void()> does;
    };
    enum class Shows
    {
        Nothing,
        Digits,
        Conditions,
        Choices
    };

    void refresh();
    void showChoices(const QString& title, const std::vector<Choice>& choices);
    void showDigits();
    TouchField* add(int row, int column, const QString& word, std::function<void()> does);
    void clear();
    void append(const QString& text);
    void open(Shows shows);
    void enterAndShut();
    [[nodiscard]] std::vector<Choice> conditions();

    SprayController& m_controller;
    QLabel* m_title;
    QWidget* m_fields = nullptr; ///< built anew for each question
    bool m_active = false;
    Shows m_shows = Shows::Nothing;
    SprayController::Prompt m_prompt = SprayController::Prompt::None;
    SprayController::Field m_field = SprayController::Field::Peak; ///< asked for when last told
};

} // namespace sealwalk::ui
