// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/file_link.h"

#include <QFileInfo>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kTurn = 20;           // ms
constexpr int kLinesPerTurn = 1000; // a playback that asks for more runs slower
constexpr double kMilliseconds = 1e-3;

} // namespace

FileLink::FileLink(feed::FeedSource source, feed::LineFormat format)
    : m_source(std::move(source))
    , m_reader(std::move(format))
{
    m_timer.setInterval(kTurn);
    connect(&m_timer, &QTimer::timeout, this, &FileLink::play);
}

void FileLink::open()
{
    const QString path = QString::fromStdString(m_source.path);
    // A pipe or a device would keep the window waiting.
    if (!QFileInfo(path).isFile()) {
        lose(tr("there is no file %1").arg(path));
        return;
    }
    m_file.setFileName(path);
    if (!m_file.open(QIODevice::ReadOnly)) {
        lose(tr("%1 may not be read").arg(path));
        return;
    }
    m_clock.start();
    m_timer.start();
    emit opened();
}

void FileLink::close()
{
    m_timer.stop();
    m_file.close();
}

bool FileLink::fetch()
{
    while (m_waiting.empty()) {
        const QByteArray bytes = m_file.read(kBytesPerTurn);
        if (bytes.isEmpty()) {
            for (feed::FeedLine& line : m_splitter.finish())
                m_waiting.push_back(std::move(line));
            return !m_waiting.empty();
        }
        for (feed::FeedLine& line :
             m_splitter.take(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size()))))
            m_waiting.push_back(std::move(line));
    }
    return true;
}

double FileLink::due(const feed::FeedLine& line)
{
    if (!m_reader.format().timeColumn)
        return static_cast<double>(m_played) / (m_source.linesPerSecond * m_source.speed);
    // A heading, or a line that cannot be read, comes with the one before.
    const auto value = m_reader.read(line.text);
    if (!value || !value->time)
        return m_lastDue;
    if (!m_firstTime)
        m_firstTime = *value->time;
    return std::max(m_lastDue, (*value->time - *m_firstTime) / m_source.speed);
}

void FileLink::play()
{
    std::vector<feed::FeedLine> lines;
    const double now = static_cast<double>(m_clock.elapsed()) * kMilliseconds;
    bool atEnd = false;
    for (int i = 0; i < kLinesPerTurn; ++i) {
        if (!fetch()) {
            atEnd = true;
            break;
        }
        if (!m_nextDue)
            m_nextDue = due(m_waiting.front());
        if (*m_nextDue > now)
            break;
        m_lastDue = *m_nextDue;
        m_nextDue.reset();
        ++m_played;
        lines.push_back(std::move(m_waiting.front()));
        m_waiting.pop_front();
    }
    if (atEnd)
        close();
    if (!lines.empty())
        emit linesCame(lines);
    if (atEnd)
        emit ended();
}

} // namespace sealwalk::ui
