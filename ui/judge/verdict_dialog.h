// SPDX-License-Identifier: GPL-3.0-or-later
// A person's verdict over the computed one, or leave to accept a point above its limit. Both keep their
// reason.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/repair.h"

#include <QDialog>

#include <optional>
#include <utility>
#include <vector>

class QComboBox;
class QDialogButtonBox;
class QCheckBox;
class QLabel;
class QLineEdit;

namespace sealwalk::ui {

class DateField;

class VerdictDialog : public QDialog
{
    Q_OBJECT

public:
    /// What of the rest of the job a verdict on the point may name.
    struct Surroundings
    {
        bool isSetup = false; ///< the point belongs to the test set-up, which the object's limit is not about
        std::vector<std::pair<model::PointId, int>> leaks; ///< elsewhere, with their numbers
    };

    explicit VerdictDialog(const analysis::PointFinding& finding, QWidget* parent = nullptr);
    VerdictDialog(const analysis::PointFinding& finding, const Surroundings& around,
                  QWidget* parent = nullptr);
    /// Set when the verdict was changed.
    [[nodiscard]] std::optional<model::Judgement> judgement() const;
    /// Set when a concession was written.
    [[nodiscard]] std::optional<model::Concession> concession() const;
    /// Closes only when there is something to store.
    void accept() override;

private:
    /// What is asked for, and of which field.
    struct Complaint
    {
        QString text; ///< empty: all is said
        QWidget* at = nullptr;
    };

    void refresh();
    /// The verdict worked out, but for a cause elsewhere: what was worked out supposed a leak here.
    void proposeVerdict();
    [[nodiscard]] Complaint whyNot() const;
    /// Whether the chosen finding says that the helium belongs to a leak elsewhere.
    [[nodiscard]] bool isOwed() const;
    [[nodiscard]] std::vector<model::PointId> owedTo() const;
    [[nodiscard]] QString concessionComplaint() const;

    analysis::PointFinding m_finding;
    QComboBox* m_word;
    QComboBox* m_of; ///< whose echo it is
    QLabel* m_sums;  ///< what the finding does to the sums
    QComboBox* m_verdict;
    bool m_isLeakNamed = false;     ///< by the person; else what was worked out stays
    bool m_isVerdictChosen = false; ///< by the person: it is not proposed any more
    QLineEdit* m_reason;
    QCheckBox* m_concede;
    QLineEdit* m_grantedBy;
    DateField* m_until;
    QLabel* m_complaint;
    QDialogButtonBox* m_buttons;
};

} // namespace sealwalk::ui
