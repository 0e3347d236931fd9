// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl+K: one field, and what matches it below; Enter goes there.
#pragma once

#include <QDialog>

#include <functional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace sealwalk::ui {

struct Destination
{
    QString text;
    QString kind; ///< point, joint, job, object, command
    std::function<void()> go;
};

class GoTo : public QDialog
{
    Q_OBJECT

public:
    GoTo(std::vector<Destination> destinations, QWidget* parent);

    /// Rows that hold every typed word, those that begin with the text first.
    [[nodiscard]] std::vector<std::size_t> matches(const QString& typed) const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refill();
    void go();

    std::vector<Destination> m_destinations;
    QLineEdit* m_field = nullptr;
    QListWidget* m_list = nullptr;
};

} // namespace sealwalk::ui
