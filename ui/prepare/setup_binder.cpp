// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/setup_binder.h"

#include "ui/session/job_session.h"

#include <QLineEdit>

namespace sealwalk::ui {

SetupBinder::SetupBinder(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{}

void SetupBinder::bind(QuantityEdit* edit, Read read, Write write)
{
    m_show.push_back([edit, read = std::move(read)](const model::Setup& setup) { edit->setSi(read(setup)); });
    connect(edit, &QuantityEdit::edited, this, [this, write = std::move(write)](std::optional<double> si) {
        change([&](model::Setup& setup) { write(setup, si); });
    });
}

void SetupBinder::bind(QLineEdit* edit, std::string model::Setup::*member)
{
    m_show.push_back([edit, member](const model::Setup& setup) {
        const QString kept = QString::fromStdString(setup.*member);
        if (!edit->isModified() && edit->text() != kept)
            edit->setText(kept);
    });
    connect(edit, &QLineEdit::editingFinished, this, [this, edit, member] {
        edit->setModified(false);
        const std::string typed = edit->text().trimmed().toStdString();
        change([&](model::Setup& setup) { setup.*member = typed; });
    });
}

void SetupBinder::change(const std::function<void(model::Setup&)>& edit)
{
    if (!m_session.hasJob())
        return;
    model::Setup setup = m_session.job().setup;
    edit(setup);
    const std::size_t turns = m_session.job().review.size();
    if (const Status stored = m_session.changeSetup(setup); !stored)
        emit failed(stored.error());
    else if (m_session.job().review.size() > turns)
        emit limitTold();
}

void SetupBinder::show()
{
    if (!m_session.hasJob())
        return;
    for (const auto& show : m_show)
        show(m_session.job().setup);
}

} // namespace sealwalk::ui
