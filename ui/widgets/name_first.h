// SPDX-License-Identifier: GPL-3.0-or-later
// What is decided stands under a name: asked before anything is typed that would be lost for want of one.
#pragma once

#include "ui/widgets/note.h"

#include <QCoreApplication>

namespace sealwalk::ui {

/// Whether somebody is named at this window, after asking who it is when nobody was.
/// @param page  has the signals nameWanted(), answered before it returns, and noteRequested()
template <class Session, class Page>
bool isNamed(const Session& session, Page& page)
{
    if (session.logger().isEmpty())
        emit page.nameWanted();
    if (!session.logger().isEmpty())
        return true;
    emit page.noteRequested(
        Severity::Caution,
        QCoreApplication::translate(
            "NameFirst",
            "Say first who is at this window (Ctrl+L); what is decided here stands under a name."));
    return false;
}

} // namespace sealwalk::ui
