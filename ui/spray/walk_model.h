// SPDX-License-Identifier: GPL-3.0-or-later
// The walk as a list: number, joint, place, what was stored. A thin view of the controller's steps.
#pragma once

#include "ui/spray/spray_controller.h"

#include <QAbstractListModel>

#include <unordered_map>
#include <vector>

namespace sealwalk::ui {

class WalkModel : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role
    {
        NumberRole = Qt::UserRole + 1,
        JointRole,
        PlaceRole,
        AnswerRole,
        SignRole,
        GapsRole, ///< what a reviewer would miss on it, in words; empty: nothing
        IsCalledRole
    };
    /// How an answer is signed: by shape first, colour second.
    enum Sign
    {
        Open,
        NoResponse,
        Value,
        Over,
        AboveRange,
        NotAccessible,
        NotTested,
        Void,
        PutOff,
        Elsewhere ///< read in a later round; no sign of its own
    };

    WalkModel(const JobSession& session, const SprayController& controller, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    /// The row of the present call; -1 when there is none.
    [[nodiscard]] int calledRow() const;
    void refresh();

    /// All that a row shows.
    struct Row
    {
        QString number;
        QString joint;
        QString place;
        QString answer;
        Sign sign = Open;
        QString gaps;
        bool isCalled = false;

        bool operator==(const Row&) const = default;
    };
    [[nodiscard]] Row row(int row) const;

private:
    [[nodiscard]] QString answerOf(const analysis::WalkStep& step) const;
    [[nodiscard]] Sign signOf(const analysis::WalkStep& step) const;
    [[nodiscard]] QString jointOf(const analysis::WalkStep& step) const;
    [[nodiscard]] bool isCalled(const analysis::WalkStep& step) const;
    [[nodiscard]] QString placeOf(const analysis::WalkStep& step) const;
    /// Why the point was put off and is still open; empty: it was not.
    [[nodiscard]] QString skipReasonOf(const analysis::WalkStep& step) const;
    [[nodiscard]] QString gapsOf(const analysis::WalkStep& step) const;
    [[nodiscard]] QString spoken(const analysis::WalkStep& step, const QString& joint) const;

    /// What the sketch says of a point.
    struct Place
    {
        QString joint;
        QString words;
    };
    [[nodiscard]] const Place& placeIn(const analysis::WalkStep& step) const;
    void forgetPlaces();

    const JobSession& m_session;
    const SprayController& m_controller;
    std::vector<analysis::WalkStep> m_steps;
    /// Looked up once: with each key typed all rows in view are asked for it, of two thousand points.
    mutable std::unordered_map<model::PointId, Place> m_places;
};

} // namespace sealwalk::ui
