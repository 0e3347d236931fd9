// SPDX-License-Identifier: GPL-3.0-or-later
// The reviewer's questions as a list: what stops first, then what needs a word, then what is in order.
#pragma once

#include "core/analysis/review_checks.h"

#include <QAbstractListModel>

#include <optional>
#include <vector>

namespace sealwalk::ui {

class ChecksModel : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role
    {
        IsHeadRole = Qt::UserRole + 1,
        QuestionRole,
        AnswerRole,
        StateRole,
        AsideRole,
        SettledRole,
        RemarkedRole ///< sent back with words on it, and not settled since
    };

    using QAbstractListModel::QAbstractListModel;

    void setChecks(std::vector<analysis::ReviewCheck> checks, const model::Sketch& sketch);
    /// The check of a row; nullptr for a head.
    [[nodiscard]] const std::vector<analysis::ReviewCheck>& all() const { return m_checks; }
    [[nodiscard]] const analysis::ReviewCheck* check(int row) const;
    [[nodiscard]] int count(analysis::CheckState state) const;
    [[nodiscard]] int openWords() const; ///< need a word and have none
    [[nodiscard]] bool isReady() const;
    /// The row of a check by its word; -1 when there is none.
    [[nodiscard]] int rowOf(std::string_view word) const;
    /// The next row below `row`, from the top again, that still wants a word; -1 when none does.
    [[nodiscard]] int nextOpenRow(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row
    {
        analysis::CheckState state;
        std::optional<std::size_t> check; ///< none: a head
    };
    [[nodiscard]] QString headOf(analysis::CheckState state) const;
    [[nodiscard]] QString asideOf(const analysis::ReviewCheck& check) const;

    std::vector<analysis::ReviewCheck> m_checks;
    std::vector<Row> m_rows;
    model::Sketch m_sketch;
};

} // namespace sealwalk::ui
