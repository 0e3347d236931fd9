// SPDX-License-Identifier: GPL-3.0-or-later
// When something was measured: now, unless a day and a time are typed, for what was written on paper first.
#pragma once

#include "core/base/timestamp.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace sealwalk::ui {

/// "2026-03-01 14:32", "1.3.2026 1432"; none for anything else.
std::optional<Timestamp> readMoment(const QString& text);

/// "entered 2026-11-29 10:02", so that a record of something earlier tells both moments.
std::string entryWords();

class MomentField : public QWidget
{
    Q_OBJECT

public:
    explicit MomentField(const QString& name, QWidget* parent = nullptr);

    /// The moment typed, else now.
    [[nodiscard]] Timestamp moment() const;
    /// Whether it was typed: then it is not the moment of entry.
    [[nodiscard]] bool isTyped() const { return m_typed.has_value(); }
    /// "entered 2026-11-29 10:02" for what was typed, so that the record tells both; empty otherwise.
    [[nodiscard]] std::string entryWords() const;
    [[nodiscard]] bool isWrong() const { return m_wrong; }
    /// Reads the box as if the cursor had left it.
    void commit();
    [[nodiscard]] QLineEdit* field() const { return m_field; }

private:
    QLineEdit* m_field = nullptr;
    QLabel* m_below = nullptr;
    std::optional<Timestamp> m_typed;
    bool m_wrong = false;
};

} // namespace sealwalk::ui
