// SPDX-License-Identifier: GPL-3.0-or-later
// The session's verbs about test objects.
#include "core/storage/history_store.h"
#include "ui/session/job_session.h"

#include <utility>

namespace sealwalk::ui {

Status JobSession::createObject(const model::TestObject& object)
{
    model::TestObject made = object;
    if (made.id.isNil())
        made.id = model::ObjectId::create();
    if (!made.created.isSet())
        made.created = Timestamp::now();
    return afterStoring(history().addObject(made), &JobSession::historyChanged);
}

Status JobSession::changeObject(const model::TestObject& before, const model::TestObject& object)
{
    Status stored = lookAgainOnConflict(history().changeObject(object, before));
    if (stored && m_object && m_object->id == object.id)
        m_object = object;
    stored = afterStoring(std::move(stored), &JobSession::setupChanged);
    if (stored)
        emit historyChanged();
    return stored;
}

Status JobSession::sayOneObject(model::ObjectId entry, model::ObjectId object)
{
    Status said = history().sayOneObject(entry, object);
    if (said && m_job)
        said = reloadJob(); // its next number may be another
    return afterStoring(std::move(said), &JobSession::historyChanged);
}

Status JobSession::sayTwoObjects(model::ObjectId entry)
{
    return afterStoring(history().sayTwoObjects(entry), &JobSession::historyChanged);
}

} // namespace sealwalk::ui
