// SPDX-License-Identifier: GPL-3.0-or-later
// A background typed, pasted or taken from a file.
#pragma once

#include "core/model/job.h"

#include <QDialog>

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace sealwalk::ui {

class MomentField;
class QuantityEdit;

class BackgroundDialog : public QDialog
{
    Q_OBJECT

public:
    explicit BackgroundDialog(const model::Setup& setup, QWidget* parent = nullptr);
    [[nodiscard]] const model::BackgroundWatch& watch() const { return m_watch; }

private:
    void read();
    void takeFile();
    void tryAccept();

    model::Setup m_setup;
    model::BackgroundWatch m_watch;
    MomentField* m_measured = nullptr;
    QPlainTextEdit* m_values = nullptr;
    QuantityEdit* m_interval = nullptr;
    QLabel* m_says = nullptr;
    QPushButton* m_keep = nullptr;
    QString m_source;
};

} // namespace sealwalk::ui
