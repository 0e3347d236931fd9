// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions, open on the page until a person has read them. Ticking is not permission.
#pragma once

#include "core/base/error.h"

#include <QWidget>

class QCheckBox;
class QFrame;
class QLabel;
class QPushButton;

namespace sealwalk::ui {

class JobSession;

class CautionsPanel : public QWidget
{
    Q_OBJECT

public:
    explicit CautionsPanel(JobSession& session, QWidget* parent = nullptr);
    void refresh();

signals:
    void failed(const sealwalk::Error& error);
    /// Nobody's name is known to put beside the tick.
    void nameWanted();

protected:
    void changeEvent(QEvent* event) override;

private:
    void tick(bool read);
    [[nodiscard]] QString words(bool all) const;

    JobSession& m_session;
    QFrame* m_box = nullptr;
    QLabel* m_icon = nullptr;
    QLabel* m_text = nullptr;
    QPushButton* m_all = nullptr;
    QCheckBox* m_tick = nullptr;
    QLabel* m_by = nullptr;
    bool m_showAll = false;
};

} // namespace sealwalk::ui
