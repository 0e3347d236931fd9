// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up drawn from what is stated of it, while it is being typed; the report draws the same.
#pragma once

#include <QWidget>

namespace sealwalk::render {
class SetupView;
}

namespace sealwalk::ui {

class JobSession;

class SetupPanel : public QWidget
{
    Q_OBJECT

public:
    explicit SetupPanel(JobSession& session, QWidget* parent = nullptr);
    void refresh();

private:
    JobSession& m_session;
    render::SetupView* m_view = nullptr;
};

} // namespace sealwalk::ui
