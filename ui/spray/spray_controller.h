// SPDX-License-Identifier: GPL-3.0-or-later
// One call after the other: what is called, what is typed, what a key does. Draws nothing.
#pragma once

#include "core/analysis/earlier_delay.h"
#include "core/analysis/slips.h"
#include "core/analysis/spray_timing.h"
#include "core/analysis/walk.h"
#include "core/quantities/entered_number.h"
#include "ui/session/job_session.h"
#include "ui/spray/entry_under_way.h"
#include "ui/spray/spray_advice.h"
#include "ui/spray/spray_machine.h"
#include "ui/spray/spray_sound.h"

#include <QDate>
#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <memory>
#include <optional>
#include <unordered_set>
#include <vector>

namespace sealwalk::ui {

class FeedSession;
class SprayFeed;

/// What a live feed offers for the reading that is asked for.
struct FeedOffer
{
    std::optional<LeakRate> peak; ///< the highest since helium; none when nothing rose
    std::optional<LeakRate> background;
    std::optional<Duration> delay;
    std::optional<Duration> cleanUp;
    bool sawNoRise = false; ///< it looked, and nothing came above the background
    bool wasLost = false;   ///< values are missing; the peak is the highest of those that came
    bool atZero = false;    ///< the display showed zero or below before: there is no background to tell
    bool operator==(const FeedOffer&) const = default;
};

class SprayController : public QObject
{
    Q_OBJECT

public:
    /// What the next keys mean.
    enum class Prompt
    {
        None,
        VoidReason,      ///< 1 … 5
        NoAccessReason,  ///< 1 … 5
        OtherCondition,  ///< 1 … 9
        Jump,            ///< a point number, then Enter
        NotTestedReason, ///< 1 … 5
        SkipReason,      ///< 1 … 4
        VoidRunReason,   ///< 1 … 5, for the run of the advice
    };
    enum class Field
    {
        Peak,
        Background,
        Delay,    ///< helium on to first rise
        RangeEnd, ///< of the detector, for a reading above it
        PaperTime ///< when the reading on the paper was taken
    };
    /// Asked beside the entry, and back to it afterwards.
    static constexpr bool isSideQuestion(Field field)
    {
        return field == Field::Background || field == Field::Delay || field == Field::RangeEnd;
    }
    enum class Weight
    {
        News,
        Warning,
        Error
    };

    explicit SprayController(JobSession& session, QObject* parent = nullptr);
    ~SprayController() override;

    /// Listens to a detector's feed from now on; it must outlive the controller.
    void setFeed(FeedSession& feed);

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
    [[nodiscard]] int calls() const; ///< of the round
    [[nodiscard]] int done() const;  ///< of those
    /// Whether the called point has a reading in the present condition.
    [[nodiscard]] bool hasReading() const;
    /// Why a point of the round was put off; empty: it was not.
    [[nodiscard]] QString skipReason(model::PointId point) const;
    /// Helium on to first rise, of the reading that comes: typed, or stamped.
    [[nodiscard]] std::optional<Duration> delay() const;
    /// A number stands aside for what is asked now; Esc, or the answer, brings it back.
    [[nodiscard]] bool hasNumberBeneath() const { return !m_beneath.typed.empty(); }
    [[nodiscard]] EnteredNumber beneath() const { return readEntered(m_beneath.typed); }
    /// What Enter alone takes for it, in seconds; none: it must be typed.
    [[nodiscard]] std::optional<double> offeredDelay() const { return m_offeredDelay; }
    /// What a reviewer would miss on the reading that comes, as things stand, and what helps; empty: nothing.
    [[nodiscard]] QString gapsSoFar() const;
    /// The same of a stored one, in words; empty: nothing.
    [[nodiscard]] QString gapsInWords(const model::Reading& reading) const;
    [[nodiscard]] bool hasFeed() const;
    [[nodiscard]] bool isHeldByFeed() const { return m_heldByFeed; }     ///< HOLD because the feed was lost
    [[nodiscard]] const SprayFeed* feed() const { return m_feed.get(); } ///< nullptr: none was ever set
    [[nodiscard]] const FeedOffer& offer() const { return m_offer; }
    /// What Enter would store as things stand, dwell and delay included, so that the figure shown before is
    /// the one on record after; none while there is no number.
    [[nodiscard]] std::optional<model::Reading> readingSoFar() const;
    /// The feed's highest where Enter would take it: asked for, and nothing is typed.
    [[nodiscard]] std::optional<LeakRate> offered() const;
    [[nodiscard]] model::RoundId round() const { return m_round; } ///< the one that is walked
    [[nodiscard]] bool isFinished() const { return !m_walk.empty() && !m_call; }
    /// An earlier round that was left before its end, once this one is done; Enter goes on with it.
    [[nodiscard]] std::optional<analysis::OpenRound> leftOpen() const;
    /// The last one of this round that stands and was stored here: in this window, or before it opened the
    /// job by who logs now. That is what C and V are about, unless a point is called again that has a
    /// reading; another window's readings are not.
    [[nodiscard]] const model::Reading* lastStored() const;
    /// The reading that the void prompt or the correction is about: "7, 3.2e−6".
    [[nodiscard]] QString targetInWords() const;
    /// The last try to store failed, and what it was about still stands.
    [[nodiscard]] bool isNotStored() const { return m_notStored; }
    /// The spray was wanted while the helium of the last point still clears.
    [[nodiscard]] bool isTooEarly() const { return m_tooEarly; }
    /// Not stored because another program holds the history; stored as soon as it lets go, with what is said
    /// about it meanwhile, unless something else is begun before.
    [[nodiscard]] bool isTryingAgain() const { return m_waiting.has_value(); }
    /// That entry: "7, 3.2e−6"; empty: none.
    [[nodiscard]] QString waitingInWords() const { return m_waiting ? m_waiting->words : QString(); }
    /// What is being entered; the same again as long as only the clock moved.
    [[nodiscard]] EntryUnderWay underWay() const;
    /// A dialog asks something about the entry: one that waits is not stored before it is answered.
    void setDialogOpen(bool isOpen);
    /// The reading that comes confirms an earlier response of the point.
    [[nodiscard]] bool isConfirming() const { return m_confirms; }
    /// What the round advises now, unless it was answered; none: go on in order.
    [[nodiscard]] const std::optional<SprayAdvice>& advice() const { return m_advice; }
    /// Whether the background was typed for the present call, not carried over from one before.
    [[nodiscard]] bool isBackgroundFresh() const { return m_backgroundByHand; }
    /// The reason a correction gets that nobody gives another one; shown before it is stored.
    [[nodiscard]] static QString typedWrong();
    [[nodiscard]] bool isTranscribing() const { return m_paper.isOn; }
    /// To the second. The time a reading from paper gets when none is typed: as if sprayed at the pace of
    /// this job after the one before; none before the first.
    [[nodiscard]] std::optional<Timestamp> paperTimeOffered() const;
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
    /// That digit stands for "other": a reason in the person's own words is wanted.
    [[nodiscard]] bool wantsWords(int digit) const;
    /// Answers the present prompt with a reason of one's own.
    void chooseInWords(const QString& word);
    void correctLast();
    void askBackground();
    void setCondition(model::Condition condition);
    void markRise();
    /// Stamps it while helium is on; otherwise asks for the seconds, or leaves that question.
    void firstRise();
    bool takeHighest(); ///< the feed's, into the field; false when there is none
    /// Wait or hold: goes on although it is not over. Else: stays in order against the advice. Noted.
    void goOnAnyway();
    void takeAdvice();
    /// Chooses what voidLast() and correctLast() are about; false when nothing is stored yet.
    bool aimAtLast();
    void voidLast(const QString& reason);
    /// Marks the call as one that confirms an earlier response, or calls the last one again for it; again:
    /// takes the mark back.
    void confirm();
    /// What the feed saw, as one step; without it, says what is wanted instead.
    void takeHighestAndStore();
    /// Readings from a paper sheet of that day: no clock, and each with its own time; `dwell` as the sheet
    /// says it for all of them.
    void setTranscribing(bool on, QDate day = {}, std::optional<Duration> dwell = std::nullopt);
    /// The call in words, as it is said aloud.
    [[nodiscard]] QString callInWords() const;
    void look(int by); ///< back and forth in the walk
    void callPoint(model::PointId point);
    /// As callPoint(), for a click on the map: refused while another point is being sprayed.
    void callSelected(model::PointId point);
    /// The order was changed here: its next open point is called, unless something is under way.
    void followOrder();
    void remark(const QString& text); ///< on the reading that is stored next
    /// Points taped or bagged off by these numbers, "38, 40-42", from now on until it is said otherwise;
    /// empty: none.
    void shield(const QString& numbers);
    /// As numbers; without the point that is called.
    [[nodiscard]] QString shielded() const;
    [[nodiscard]] QString allShielded() const; ///< with it
    [[nodiscard]] QString remark() const { return QString::fromStdString(m_remark); }
    void escape();
    /// Says why something cannot be done, with the dull sound.
    void refuse(const QString& sentence);

signals:
    void changed();
    void ticked(); ///< ten times a second while a clock or a feed runs
    void offerChanged();
    void said(sealwalk::ui::SprayController::Weight weight, const QString& text);
    void failed(const sealwalk::Error& error); ///< a reading or void mark is not on disk
    void advised();                            ///< other advice than before, or none any more
    void settled(const QString& caution);      ///< what was refused with these words is done with
    void soundWanted(sealwalk::ui::SpraySound sound);

private:
    void callInItsRound(model::PointId point);
    void reload();
    /// Dwell and wait of the point called, longer where it answered late before.
    void setTimes();
    void setCall(std::optional<analysis::WalkStep> step);
    void startRound();
    void followRecord();
    [[nodiscard]] QString doubtOfSilence() const;
    void forgetQuestion();
    void clearReading();
    void leaveCorrection();
    bool asksForChoice();
    [[nodiscard]] bool asksForTime();
    void storeWithoutSpray(model::Outcome outcome, const QString& reason);
    [[nodiscard]] QString inWords(const model::Reading& reading) const;
    [[nodiscard]] ReadingDraft correctionOf(model::Outcome outcome) const;
    void advance();
    void skip(const QString& reason);
    [[nodiscard]] std::optional<analysis::WalkStep> callAfter(model::PointId point) const;
    void warnOfCuring();
    void warnOfOldDay();
    [[nodiscard]] std::vector<model::PointId> shieldedFrom(model::PointId called) const;
    void recallShields();
    void recallBackground();
    void storeDraft(ReadingDraft draft);
    void keep(ReadingDraft draft, JobSession::Waiting waiting);
    void waitForHistory(ReadingDraft draft);
    void tryAgain();
    void dropWaiting();
    [[nodiscard]] bool isBeingAsked() const;
    [[nodiscard]] ReadingDraft draftOf(model::Outcome outcome) const;
    void enterNumber();
    void enterBackground();
    void enterDelay();
    void enterRangeEnd();
    void leaveSideQuestion();
    [[nodiscard]] std::optional<LeakRate> enteredRate(const QString& otherwise);
    void storeAboveRange(LeakRate end, const std::string& entered);
    void settle();
    [[nodiscard]] std::optional<model::Reading> gapsAreOf() const;
    [[nodiscard]] std::vector<analysis::Gap> gapsOf(const model::Reading& reading) const;
    void enterPaperTime();
    /// What waits for its time. `ofTime`: what the record says of that time, behind when it was entered.
    void storePaper(Timestamp at, const std::string& ofTime);
    [[nodiscard]] bool asksForPaperTime(const ReadingDraft& draft);
    void lookForAdvice();
    void voidRun(const QString& reason);
    void tick();
    void onFeedState();
    void lookAtFeed();
    void addFeed(ReadingDraft& draft);
    void warnOfZero();
    void clearEntry();
    [[nodiscard]] QString exponentQuestion() const;
    void keepTrackOfSpray(bool running);
    void resumeAfterStop();

    JobSession& m_session;
    std::vector<analysis::WalkStep> m_walk;
    std::optional<analysis::WalkStep> m_call;
    std::vector<analysis::SkippedPoint> m_skipped; ///< skipped points of the round
    model::RoundId m_round;                        ///< the one that is walked
    std::unordered_set<model::ReadingId> m_own;    ///< stored in this window
    std::int64_t m_storedBefore = 0;               ///< last sequence when this window took up the round
    std::optional<model::ReadingId> m_target;
    bool m_isCalledAgain = false; ///< the call had its reading when it was asked for
    bool m_notStored = false;
    bool m_tooEarly = false;
    /// Waits for another program to let go of the history, and what was under way when it was given.
    struct Waiting
    {
        ReadingDraft draft;
        EntryUnderWay entry;
        QString words; ///< "7, 3.2e−6"
    };
    std::optional<Waiting> m_waiting;
    int m_doings = 0;
    int m_dialogs = 0; ///< open about the entry
    QTimer m_retry;
    bool m_confirms = false;
    /// The call that a correction put aside, with what was said about it.
    struct Aside
    {
        std::optional<analysis::WalkStep> call;
        model::Condition condition = model::Condition::AtRest;
        std::string conditionDetail;
        std::string remark;
        std::optional<Duration> delay;
    } m_aside;
    std::optional<LeakRate> m_correctedBackground;
    std::optional<Duration> m_delay;      ///< typed
    std::optional<double> m_offeredDelay; ///< s, since helium when it was asked for
    /// What a side question found in the field, and puts back.
    struct Beneath
    {
        Field field = Field::Peak;
        std::string typed;
        bool byFeed = false;
    } m_beneath;
    std::optional<LeakRate> m_rangeEnd; ///< typed in this job, where Prepare does not know it
    QString m_caution;                  ///< the last one
    SprayMachine m_machine;
    analysis::SprayTiming m_timing;
    analysis::EarlierDelays m_delays; ///< of the whole job
    QElapsedTimer m_clock;
    QTimer m_ticker;
    Prompt m_prompt = Prompt::None;
    Field m_field = Field::Peak;
    model::Condition m_condition = model::Condition::AtRest;
    std::string m_conditionDetail;
    std::vector<model::PointId> m_shielded; ///< stays on from point to point, as tape does
    model::JobId m_shieldedIn;              ///< the job they were said in
    std::string m_typed;
    int m_exponent = -9;
    bool m_exponentOffered = false; ///< the first Enter on a bare mantissa was given
    std::optional<LeakRate> m_background;
    std::optional<model::ReadingId> m_corrects;
    std::optional<Timestamp> m_sprayedAt;
    std::string m_remark;
    QString m_question;
    bool m_questionAnswered = false;
    bool m_silenceAsked = false; ///< N was pressed once where it may be a slip
    bool m_startRefused = false; ///< in this call, while the last point still cleared: its spray has no time
    std::unique_ptr<SprayFeed> m_feed;
    FeedOffer m_offer;
    std::optional<double> m_zeroSaid; ///< when it was last said that the display shows zero
    bool m_typedByFeed = false;       ///< what stands in the field is the feed's, unchanged
    bool m_backgroundByHand = false;  ///< typed for this reading: the feed's does not replace it
    bool m_feedWasLive = false;
    bool m_heldByFeed = false; ///< HOLD because the feed was lost
    std::optional<SprayAdvice> m_advice;
    std::optional<SprayAdvice> m_answered; ///< not shown again as long as it stays the same
    bool m_stayed = false;                 ///< went on in order against the advice: noted with the reading
    bool m_gentle = false;                 ///< repeated with less helium, as advised
    struct Paper
    {
        bool isOn = false;
        QDate day;
        std::optional<Duration> dwell;
        std::optional<Timestamp> last;       ///< of the reading before, on the paper
        std::optional<ReadingDraft> pending; ///< waits for its time
        std::optional<Timestamp> doubted;    ///< before the last one; typed again it is meant
        bool hasTime = false;                ///< the one being stored has it
    } m_paper;
};

} // namespace sealwalk::ui
