// SPDX-License-Identifier: GPL-3.0-or-later
// Who signs in this history: new people, new passphrases, and those who left.
#pragma once

#include "core/base/error.h"
#include "core/model/review.h"
#include "ui/session/signing.h"

#include <QDialog>

#include <optional>
#include <vector>

class QCheckBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace sealwalk::ui {

class JobSession;

class PeopleDialog : public QDialog
{
    Q_OBJECT

public:
    explicit PeopleDialog(JobSession& session, QWidget* parent = nullptr);

public slots:
    void reject() override; ///< not while a key is being made: what was asked for is stored first

private:
    void fill();
    void refresh();
    void addPerson();
    void newPassphrase();
    void changeLeft();
    void changeOnePerson(bool one);
    void onFinished(const std::optional<sealwalk::Error>& problem);
    void say(const QString& sentence, bool isRefusal);
    [[nodiscard]] const model::Person* chosen() const;

    JobSession& m_session;
    Signing m_signing;
    std::vector<model::Person> m_people;
    QString m_done; ///< said when what is under way went well
    QTableWidget* m_table;
    QPushButton* m_add;
    QPushButton* m_passphrase;
    QPushButton* m_left;
    QCheckBox* m_onePerson;
    QLabel* m_says;
    QPushButton* m_close;
};

} // namespace sealwalk::ui
