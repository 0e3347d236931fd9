// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/feed_link.h"

#include "ui/feed/file_link.h"
#include "ui/feed/pipe_link.h"
#include "ui/feed/serial_link.h"
#include "ui/feed/tcp_link.h"

namespace sealwalk::ui {

void FeedLink::take(const QByteArray& bytes)
{
    const auto lines =
        m_splitter.take(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!lines.empty())
        emit linesCame(lines);
}

void FeedLink::lose(const QString& reason)
{
    close();
    const auto lines = m_splitter.finish();
    if (!lines.empty())
        emit linesCame(lines);
    emit lost(reason);
}

std::unique_ptr<FeedLink> makeLink(const feed::FeedSource& source, const feed::LineFormat& format)
{
    switch (source.kind) {
    case feed::SourceKind::Serial:
        return std::make_unique<SerialLink>(source);
    case feed::SourceKind::Tcp:
        return std::make_unique<TcpLink>(source);
    case feed::SourceKind::Pipe:
        return std::make_unique<PipeLink>(source);
    case feed::SourceKind::File:
        return std::make_unique<FileLink>(source, format);
    }
    return nullptr;
}

} // namespace sealwalk::ui
