// SPDX-License-Identifier: GPL-3.0-or-later
// Where a feed's lines come from. Opens without waiting, hands on whole lines, and says when it is lost; to
// open again is the session's affair.
#pragma once

#include "core/feed/feed_profile.h"
#include "core/feed/line_splitter.h"

#include <QObject>
#include <QString>

#include <memory>
#include <vector>

namespace sealwalk::ui {

/// What one turn of the event loop reads at most: a flood is worked off in pieces, and the window stays
/// alive.
inline constexpr qint64 kBytesPerTurn = 16 * 1024;

class FeedLink : public QObject
{
    Q_OBJECT

public:
    /// Begins to open; opened() or lost() follows, perhaps at once.
    virtual void open() = 0;
    /// Silent from here on.
    virtual void close() = 0;

signals:
    void opened();
    void linesCame(const std::vector<sealwalk::feed::FeedLine>& lines);
    void lost(const QString& reason); ///< once, after which it is closed
    void ended();                     ///< of a recorded file: nothing will follow

protected:
    /// Splits and hands on.
    void take(const QByteArray& bytes);
    /// What was begun is handed on as cut off; then lost() is said.
    void lose(const QString& reason);

    feed::LineSplitter m_splitter;
};

/// The link for a source. The format is what a recorded file's times are read by.
std::unique_ptr<FeedLink> makeLink(const feed::FeedSource& source, const feed::LineFormat& format);

} // namespace sealwalk::ui
