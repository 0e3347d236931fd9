// SPDX-License-Identifier: GPL-3.0-or-later
// The one field of the call: what is typed, read as a leak rate while it is typed. While it is empty, letters
// are commands; while a number stands in it, they are not.
#pragma once

#include "core/quantities/entered_number.h"

#include <QLineEdit>

#include <optional>

namespace sealwalk::ui {

class EntryField : public QLineEdit
{
    Q_OBJECT

public:
    explicit EntryField(QWidget* parent = nullptr);

    /// Three quarters as high, for a low window.
    void setLow(bool isLow);
    enum class Takes
    {
        Rate,
        Seconds, ///< with a decimal sign, no exponent
        Digits   ///< choices, a point number, a time of day: shown as typed
    };
    void setTakes(Takes takes);
    [[nodiscard]] Takes takes() const { return m_takes; }
    /// What stands there to be read: with the decimal sign of the locale and the exponent that is offered.
    [[nodiscard]] QString shownText() const;
    /// The exponent offered in faint behind a mantissa; none: nothing is offered.
    void setOffered(std::optional<int> exponent);
    /// What stands in the field while nothing is typed.
    void setHint(const QString& hint);
    [[nodiscard]] QSize sizeHint() const override;

signals:
    void typedChanged(const QString& text);
    void enterPressed();
    void touched(); ///< by mouse or finger
    /// A letter, or a key without one: while the field is empty; D at any time.
    void command(int key, Qt::KeyboardModifiers modifiers, const QString& text);
    void lettersRefused(); ///< a letter while a number stands in the field
    void exponentStepped(int by);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] bool belongsToNumber(const QKeyEvent& event) const;

    Takes m_takes = Takes::Rate;
    std::optional<int> m_offered;
    QString m_hint;
};

} // namespace sealwalk::ui
