// SPDX-License-Identifier: GPL-3.0-or-later
// What the job before left at a point.
#include "tests/support/temporary_history.h"
#include "ui/spray/last_time.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace sealwalk::ui {
namespace {

// Regression: who sprayed a point again did not see what it had said last year.
TEST(LastTime, IsSaidAtThePointAsTheJobBeforeLeftIt)
{
    tests::TemporaryHistory history;
    history.startJob(3);
    history.calibrate();
    const auto store = [&](std::size_t point, model::Outcome outcome, std::optional<LeakRate> peak) {
        ReadingDraft draft;
        draft.point = history.session.job().sketch.points[point].id;
        draft.outcome = outcome;
        draft.peak = peak;
        draft.background = millibarLitresPerSecond(1e-9);
        draft.dwell = seconds(20.0);
        ASSERT_TRUE(history.session.store(draft).has_value());
    };
    store(1, model::Outcome::Value, millibarLitresPerSecond(3.3e-6));
    store(2, model::Outcome::NoResponse, std::nullopt);
    LastTime first(history.session);
    EXPECT_TRUE(first.words(history.session.job().sketch.points[1].id).isEmpty())
        << "there is no earlier job";
    history.startNextJobOverATemporaryRepair();
    LastTime last(history.session);
    QSignalSpy known(&last, &LastTime::changed);
    ASSERT_TRUE(known.wait(20000));
    const auto words = [&](std::size_t point) {
        return last.words(history.session.job().sketch.points[point].id);
    };
    EXPECT_TRUE(words(0).isEmpty()) << "not sprayed then";
    EXPECT_TRUE(words(1).startsWith(QStringLiteral("job 1: 3.3e"))) << words(1).toStdString();
    EXPECT_TRUE(words(2).startsWith(QStringLiteral("job 1: below "))) << words(2).toStdString();
    EXPECT_TRUE(last.words(model::PointId::create()).isEmpty()) << "drawn since";
}

} // namespace
} // namespace sealwalk::ui
