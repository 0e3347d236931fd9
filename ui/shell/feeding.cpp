// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/feeding.h"

#include "core/report/shown_unit.h"
#include "ui/feed/feed_dialog.h"
#include "ui/feed/feed_profiles.h"
#include "ui/feed/feed_session.h"
#include "ui/feed/feed_words.h"
#include "ui/session/job_session.h"
#include "ui/shell/corner.h"
#include "ui/shell/main_window.h"
#include "ui/spray/spray_page.h"

namespace sealwalk::ui {

void joinFeed(MainWindow& window, SprayPage& spray)
{
    FeedSession& feed = window.feed();
    spray.controller().setFeed(feed);
    const auto showState = [&window, &feed] {
        window.corner().setFeed(feedStateText(feed), feedStateSentence(feed), feed.isOn() && !feed.isLive());
    };
    QObject::connect(&feed, &FeedSession::stateChanged, &window, showState);
    showState();
    const auto setBasis = [&window, &feed] {
        if (window.session().hasJob())
            feed.setBasis(report::flowBasis(window.session().job().setup));
    };
    for (const auto signal : {&JobSession::jobChanged, &JobSession::setupChanged})
        QObject::connect(&window.session(), signal, &window, setBasis);
    QObject::connect(&spray, &SprayPage::feedWanted, &window, [&window] { setUpFeed(window); });
    // A recorded file is played when somebody asks for it, not by itself.
    const auto last = lastUsedProfile(window.settings().store());
    if (last && last->source.kind != feed::SourceKind::File)
        feed.start(*last);
}

void setUpFeed(MainWindow& window)
{
    FeedDialog dialog(window.feed(), window.settings().store(), &window);
    dialog.exec();
}

} // namespace sealwalk::ui
