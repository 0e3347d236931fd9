// SPDX-License-Identifier: GPL-3.0-or-later
// The left column of Prepare, what is asked: object, limits, detector, helium.
#pragma once

#include "core/base/error.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace sealwalk::ui {

class JobSession;
class QuantityEdit;
class SetupBinder;

class AskedColumn : public QWidget
{
    Q_OBJECT

public:
    explicit AskedColumn(JobSession& session, QWidget* parent = nullptr);

    void refresh();
    /// The first required field that is empty, after `from`; false when none is.
    bool focusNextEmpty(const QWidget* from = nullptr);

signals:
    void limitTold(); ///< that the limit was changed after a reading stands in the record
    void failed(const sealwalk::Error& error);

private:
    void buildObject(QVBoxLayout& column);
    void buildLimits(QVBoxLayout& column);
    void buildDetector(QVBoxLayout& column);
    void buildHelium(QVBoxLayout& column);
    QuantityEdit* quantity(const QString& name, const char* unit, int width);
    QuantityEdit* number(const QString& name, const QString& suffix, int width);
    void askKindLimits();
    void askPapers();
    [[nodiscard]] bool isDetectorOpen() const;
    void takeDetectorOfJobBefore();

    JobSession& m_session;
    SetupBinder* m_binder = nullptr;
    QLabel* m_object = nullptr;
    QLabel* m_kindLimits = nullptr;
    QPushButton* m_asBefore = nullptr; ///< while there is something to take over
    QComboBox* m_connection = nullptr;
    QComboBox* m_displayUnit = nullptr;
    std::vector<QuantityEdit*> m_rates;    ///< in the job's unit
    std::vector<QuantityEdit*> m_required; ///< in the order of the page
    QuantityEdit* m_volume = nullptr;
    QuantityEdit* m_wanted = nullptr;
    QuantityEdit* m_rangeTop = nullptr; ///< in the display's unit
    QuantityEdit* m_rangeBottom = nullptr;
};

} // namespace sealwalk::ui
