// SPDX-License-Identifier: GPL-3.0-or-later
// What the session gives to a record that is stored: an identity, a time and who. Inner header of the verbs.
#pragma once

#include "core/base/result.h"
#include "core/base/timestamp.h"

#include <QString>

namespace sealwalk::ui {

template <class T>
void giveIdentity(T& record, const QString& logger)
{
    if (record.id.isNil())
        record.id = decltype(record.id)::create();
    if (!record.at.isSet())
        record.at = Timestamp::now();
    if (record.by.empty())
        record.by = logger.toStdString();
}

inline tl::unexpected<Error> unnamed()
{
    return fail(ErrorCode::NotAllowed, "say first who is logging; it stands under a name");
}

/// A decision stands under a name.
template <class T>
Status giveName(T& record, const QString& logger)
{
    giveIdentity(record, logger);
    if (record.by.empty())
        return unnamed();
    return {};
}

inline tl::unexpected<Error> noJob()
{
    return fail(ErrorCode::NotAllowed, "no job is open; open or start one first");
}

} // namespace sealwalk::ui
