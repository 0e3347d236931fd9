// SPDX-License-Identifier: GPL-3.0-or-later
// The Prepare stage: what is asked, what is measured, what follows, from left to right.
#pragma once

#include "core/base/error.h"
#include "ui/widgets/note.h"

#include <QWidget>

namespace sealwalk::ui {

class AskedColumn;
class BackgroundPanel;
class CalibrationPanel;
class CautionsPanel;
class JobSession;
class OutlookColumn;
class RisePanel;

class PreparePage : public QWidget
{
    Q_OBJECT

public:
    explicit PreparePage(JobSession& session, QWidget* parent = nullptr);
    [[nodiscard]] QString progressText() const;

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void failed(const sealwalk::Error& error);
    void progressChanged();
    void goOn();

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    QWidget* measuredColumn();
    void refresh();

    JobSession& m_session;
    AskedColumn* m_asked = nullptr;
    CalibrationPanel* m_calibration = nullptr;
    BackgroundPanel* m_background = nullptr;
    CautionsPanel* m_cautions = nullptr;
    RisePanel* m_rise = nullptr;
    OutlookColumn* m_outlook = nullptr;
};

} // namespace sealwalk::ui
