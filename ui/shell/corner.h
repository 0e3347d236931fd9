// SPDX-License-Identifier: GPL-3.0-or-later
// The right end of the menu row: detector feed, when the last word reached the disk, the unit and the gas
// shown.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/job.h"

#include <QWidget>

#include <string>

class QComboBox;
class QLabel;

namespace sealwalk::ui {

class JobSession;

class Corner : public QWidget
{
    Q_OBJECT

public:
    explicit Corner(JobSession& session, QWidget* parent = nullptr);

    /// @param sentence  the same with its reason, for the tip
    /// @param isGone    a feed is wanted and does not come
    void setFeed(const QString& state, const QString& sentence = {}, bool isGone = false);
    void onStored(const Timestamp& at);
    /// Nothing reaches the disk since then; stays until something does.
    void onNotStored(const Timestamp& since);
    void refresh();
    void openUnits();
    /// In a narrow window a live feed is its sign alone, and states stand without their time.
    void setNarrow(bool isNarrow);
    void refreshIcon();

signals:
    void notStored(const QString& sentence);

private:
    void onUnitChosen(int index);
    void onGasChosen(int index);
    void show(const std::string& unit, model::GasBasis gas);
    void showFeed();
    void showDisk();

    JobSession& m_session;
    QLabel* m_feedIcon = nullptr;
    QLabel* m_feed = nullptr;
    QLabel* m_disk = nullptr;
    QComboBox* m_unit = nullptr;
    QComboBox* m_gas = nullptr;
    int m_diskRoom = 0; ///< likewise
    int m_feedRoom = 0; ///< for the longest state, px
    QString m_feedState;
    QString m_diskState;
    QString m_diskBriefly; ///< empty: the state is brief
    bool m_feedIsGone = false;
    bool m_isNarrow = false;
    bool m_stored = false;
    bool m_failing = false;
};

} // namespace sealwalk::ui
