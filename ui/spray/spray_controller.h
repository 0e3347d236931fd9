// SPDX-License-Identifier: GPL-3.0-or-later
// One call after the other: what is called, what is typed, what a key does. Draws nothing.
#pragma once

#include "core/analysis/spray_timing.h"
#include "core/analysis/walk.h"
#include "core/quantities/entered_number.h"
#include "ui/session/job_session.h"
#include "ui/spray/spray_machine.h"
#include "ui/spray/spray_sound.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <optional>
#include <vector>

namespace sealwalk::ui {

class SprayController : public QObject
{
    Q_OBJECT

public:
    /// What the next keys mean.
    enum class Prompt
    {
        None,
        VoidReason,     ///< 1 … 5
        NoAccessReason, ///< 1 … 5
        OtherCondition, ///< 1 … 9
        Jump,           ///< a point number, then Enter
        SkipReason,     ///< 1 … 4
    };
    enum class Field
    {
        Peak,
        Background
    };
    enum class Weight
    {
        News,
        Warning,
        Error
    };

    explicit SprayController(JobSession& session, QObject* parent = nullptr);

    // What is shown
    [[nodiscard]] const std::vector<analysis::WalkStep>& walk() const { return m_walk; }
    [[nodiscard]] const std::optional<analysis::WalkStep>& call() const { return m_call; }
    [[nodiscard]] const SprayMachine& machine() const { return m_machine; }
    [[nodiscard]] const analysis::SprayTiming& timing() const { return m_timing; }
    [[nodiscard]] double now() const; ///< seconds of the controller's steady clock
    [[nodiscard]] Prompt prompt() const { return m_prompt; }
    [[nodiscard]] Field field() const { return m_field; }
    [[nodiscard]] model::Condition condition() const { return m_condition; }
    [[nodiscard]] const std::string& typed() const { return m_typed; }
    [[nodiscard]] EnteredNumber entered() const { return readEntered(m_typed); }
    /// Offered for a mantissa without exponent; taken by a second Enter.
    [[nodiscard]] int offeredExponent() const { return m_exponent; }
    /// The value as it would be stored now, in the detector's unit; none when it is not one yet.
    [[nodiscard]] std::optional<LeakRate> value() const;
    [[nodiscard]] std::optional<LeakRate> background() const { return m_background; }
    /// A question that a second Enter answers with yes.
    [[nodiscard]] const QString& question() const { return m_question; }
    [[nodiscard]] bool isCorrecting() const { return m_corrects.has_value(); }
    [[nodiscard]] int done() const;
    [[nodiscard]] bool isFinished() const { return !m_walk.empty() && !m_call; }
    [[nodiscard]] const model::Reading* lastStored() const;
    /// Words behind the digits of the present prompt, in order.
    [[nodiscard]] QStringList choices() const;

    // Keys and clicks
    void setTyped(const std::string& typed);
    void stepExponent(int by);
    void enter();
    void toggleSpray();
    void noResponse();
    void overRange();
    void startPrompt(Prompt prompt);
    void choose(int digit); ///< 1-based
    void correctLast();
    void askBackground();
    void setCondition(model::Condition condition);
    void markRise();
    void goOnAnyway();
    void look(int by); ///< back and forth in the walk
    void callPoint(model::PointId point);
    void remark(const QString& text); ///< on the reading that is stored next
    void escape();
    /// Says why something cannot be done, with the dull sound.
    void refuse(const QString& sentence);

signals:
    void changed();
    void ticked(); ///< ten times a second while a clock runs
    void said(sealwalk::ui::SprayController::Weight weight, const QString& text);
    void soundWanted(sealwalk::ui::SpraySound sound);

private:
    void reload();
    void setCall(std::optional<analysis::WalkStep> step);
    void advance();
    void storeDraft(ReadingDraft draft);
    [[nodiscard]] ReadingDraft draftOf(model::Outcome outcome) const;
    void enterNumber();
    void enterBackground();
    void voidLast(const QString& reason);
    void tick();
    void clearEntry();
    void keepTrackOfSpray(bool running);
    void resumeAfterStop();
    [[nodiscard]] std::string trackName() const;

    JobSession& m_session;
    std::vector<analysis::WalkStep> m_walk;
    std::optional<analysis::WalkStep> m_call;
    std::vector<model::PointId> m_skipped;
    SprayMachine m_machine;
    analysis::SprayTiming m_timing;
    QElapsedTimer m_clock;
    QTimer m_ticker;
    Prompt m_prompt = Prompt::None;
    Field m_field = Field::Peak;
    model::Condition m_condition = model::Condition::AtRest;
    std::string m_conditionDetail;
    std::string m_typed;
    int m_exponent = -9;
    bool m_exponentOffered = false; ///< the first Enter on a bare mantissa was given
    std::optional<LeakRate> m_background;
    std::optional<model::ReadingId> m_corrects;
    std::optional<Timestamp> m_sprayedAt;
    std::string m_remark;
    QString m_question;
    bool m_questionAnswered = false;
};

} // namespace sealwalk::ui
