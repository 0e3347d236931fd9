// SPDX-License-Identifier: GPL-3.0-or-later
// Ties fields to the set-up of the open job: what is entered is stored at once, what changed is shown.
#pragma once

#include "core/base/error.h"
#include "core/model/job.h"
#include "ui/widgets/quantity_edit.h"

#include <QObject>

#include <functional>
#include <optional>
#include <vector>

class QLineEdit;

namespace sealwalk::ui {

class JobSession;

class SetupBinder : public QObject
{
    Q_OBJECT

public:
    using Read = std::function<std::optional<double>(const model::Setup&)>;
    using Write = std::function<void(model::Setup&, std::optional<double>)>;

    explicit SetupBinder(JobSession& session, QObject* parent = nullptr);

    void bind(QuantityEdit* edit, Read read, Write write);
    template <class Q>
    void bind(QuantityEdit* edit, std::optional<Q> model::Setup::*member);
    void bind(QLineEdit* edit, std::string model::Setup::*member);
    /// Changes the set-up and stores it.
    void change(const std::function<void(model::Setup&)>& edit);
    /// Shows what is stored, and leaves alone what is being typed.
    void show();

signals:
    void failed(const sealwalk::Error& error);
    void limitTold(); ///< readings are there: that the limit was changed now stands in the record

private:
    JobSession& m_session;
    std::vector<std::function<void(const model::Setup&)>> m_show;
};

template <class Q>
void SetupBinder::bind(QuantityEdit* edit, std::optional<Q> model::Setup::*member)
{
    bind(
        edit,
        [member](const model::Setup& setup) {
            const auto& value = setup.*member;
            return value ? std::optional<double>(value->si()) : std::nullopt;
        },
        [member](model::Setup& setup, std::optional<double> si) {
            setup.*member = si ? std::optional<Q>(Q::fromSi(*si)) : std::nullopt;
        });
}

} // namespace sealwalk::ui
