// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/feed_words.h"

namespace sealwalk::ui {

namespace {

QString since(const FeedSession& feed)
{
    return QString::fromStdString(feed.lostSince().timeOfDay());
}

} // namespace

QString feedStateText(const FeedSession& feed)
{
    switch (feed.state()) {
    case FeedSession::State::Off:
        return FeedSession::tr("no detector feed");
    case FeedSession::State::Connecting:
        return FeedSession::tr("feed connecting");
    case FeedSession::State::Live:
        return FeedSession::tr("detector feed live");
    case FeedSession::State::Silent:
        return FeedSession::tr("feed silent since %1").arg(since(feed));
    case FeedSession::State::Lost:
        return FeedSession::tr("feed lost since %1").arg(since(feed));
    case FeedSession::State::Ended:
        return FeedSession::tr("recorded feed over");
    }
    return {};
}

QString feedStateSentence(const FeedSession& feed)
{
    const QString name = QString::fromStdString(feed.profile().name);
    const QString source = QString::fromStdString(feed::describe(feed.profile().source));
    switch (feed.state()) {
    case FeedSession::State::Off:
        return FeedSession::tr("There is no detector feed.");
    case FeedSession::State::Connecting:
        return FeedSession::tr("The feed of %1 (%2) is being connected.").arg(name, source);
    case FeedSession::State::Live:
        return FeedSession::tr("The feed of %1 (%2) is live.").arg(name, source);
    case FeedSession::State::Silent:
    case FeedSession::State::Lost:
        return FeedSession::tr("The feed of %1 is lost since %2: %3. Type values; it comes back by itself.")
            .arg(name, since(feed), feed.fault());
    case FeedSession::State::Ended:
        return FeedSession::tr("The recorded feed of %1 is over.").arg(name);
    }
    return {};
}

} // namespace sealwalk::ui
