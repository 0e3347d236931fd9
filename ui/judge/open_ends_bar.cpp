// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/open_ends_bar.h"

#include "ui/render/core_words.h"
#include "ui/render/theme.h"
#include "ui/widgets/name_first.h"
#include "ui/widgets/void_dialog.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

/// A label, a choice and a button in one line.
QWidget* line(const QString& word, QComboBox* choice, QPushButton* act, QWidget* parent)
{
    auto* row = new QWidget(parent);
    auto* label = new QLabel(word, row);
    label->setFont(render::font(render::TextSize::Text, render::Weight::Bold));
    label->setBuddy(choice);
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(12);
    auto* cells = new QHBoxLayout(row);
    cells->setContentsMargins(render::kGapApart, render::kGapTight, render::kGapApart, render::kGapTight);
    cells->setSpacing(render::kGapNear);
    cells->addWidget(label);
    cells->addWidget(choice, 1);
    cells->addWidget(act);
    return row;
}

} // namespace

OpenEndsBar::OpenEndsBar(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_work([this](std::pair<model::RoundId, analysis::OpenEnds> answer) {
        // An answer may come after its job was closed or another one opened.
        if (!m_session.hasJob() || m_session.job().round(answer.first) == nullptr)
            return;
        m_of = answer.first;
        showEnds(std::move(answer.second));
    })
    , m_settle(new QComboBox(this))
    , m_open(new QPushButton(tr("Make it the next round  T"), this))
    , m_moved(new QComboBox(this))
    , m_void(new QPushButton(tr("Void and spray again …  V"), this))
{
    m_settle->setAccessibleName(tr("Sprays that settle what is open"));
    m_settle->setObjectName(QStringLiteral("settle"));
    m_open->setObjectName(QStringLiteral("openSettlingRound"));
    m_moved->setAccessibleName(tr("Points taken while the background moved"));
    m_moved->setObjectName(QStringLiteral("moved"));
    m_void->setObjectName(QStringLiteral("voidRun"));
    m_settleRow = line(tr("To settle"), m_settle, m_open, this);
    m_movedRow = line(tr("Background moved"), m_moved, m_void, this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_settleRow);
    column->addWidget(m_movedRow);
    connect(m_open, &QPushButton::clicked, this, &OpenEndsBar::openNextRound);
    connect(m_void, &QPushButton::clicked, this, &OpenEndsBar::voidRun);
    connect(&m_session, &JobSession::jobChanged, this, [this] {
        m_work.drop();
        showEnds({});
    });
    showEnds({});
}

model::RoundId OpenEndsBar::round() const
{
    if (const model::Round* current = m_session.currentRound())
        return current->id;
    return m_session.job().rounds.empty() ? model::RoundId() : m_session.job().rounds.back().id;
}

void OpenEndsBar::refresh()
{
    if (!m_session.hasJob() || m_session.job().readings.empty()) {
        m_work.drop();
        showEnds({});
        return;
    }
    m_work.request([job = m_session.job(), object = m_session.object(), of = round()] {
        return std::pair(of, analysis::openEnds(job, object, of));
    });
}

QString OpenEndsBar::numbersOf(const std::vector<model::PointId>& points) const
{
    QStringList numbers;
    for (const model::PointId point : points)
        if (const model::TestPoint* known = m_session.job().sketch.point(point))
            numbers << QString::number(known->number);
    return numbers.join(QStringLiteral(", "));
}

std::vector<model::PointId> OpenEndsBar::pointsOf(const analysis::MovedRun& run) const
{
    std::vector<model::PointId> points;
    for (const model::ReadingId id : run.readings) {
        const model::Reading* reading = m_session.job().reading(id);
        if (reading != nullptr && std::ranges::find(points, reading->point) == points.end())
            points.push_back(reading->point);
    }
    return points;
}

QString OpenEndsBar::wordsOf(const analysis::OpenEnd& end) const
{
    return end.seal.empty() ? tr("spray %1").arg(numbersOf(end.spray))
                            : tr("tape %1, spray %2").arg(numbersOf(end.seal), numbersOf(end.spray));
}

void OpenEndsBar::showEnds(analysis::OpenEnds ends)
{
    m_ends = std::move(ends);
    m_settle->clear();
    m_moved->clear();
    for (const analysis::OpenEnd& end : m_ends.settle) {
        m_settle->addItem(wordsOf(end));
        m_settle->setItemData(m_settle->count() - 1, render::inWords(end.how), Qt::ToolTipRole);
    }
    for (const analysis::MovedRun& run : m_ends.moved) {
        m_moved->addItem(numbersOf(pointsOf(run)));
        m_moved->setItemData(m_moved->count() - 1, render::inWords(run.because), Qt::ToolTipRole);
    }
    const bool canWork = m_session.hasJob() && m_session.job().isOpenForWork();
    m_open->setEnabled(canWork);
    m_void->setEnabled(canWork);
    m_settleRow->setVisible(!m_ends.settle.empty());
    m_movedRow->setVisible(!m_ends.moved.empty());
    emit changed();
}

void OpenEndsBar::openNextRound()
{
    const int index = m_settle->currentIndex();
    if (index < 0 || !m_open->isEnabled()) { // a key finds it also where nothing is shown
        emit noteRequested(Severity::News,
                           m_session.job().isOpenForWork()
                               ? tr("No open point here would be settled by a round of its own.")
                               : tr("The job is not open for work; no round can be begun."));
        return;
    }
    const analysis::OpenEnd end = m_ends.settle[static_cast<std::size_t>(index)];
    const QString words = wordsOf(end);
    const auto kind = end.seal.empty() ? model::RoundKind::Repeat : model::RoundKind::Condition;
    if (const Status opened = m_session.openRound(kind, words.toStdString(), end.spray); !opened) {
        emit failed(opened.error());
        return;
    }
    emit noteRequested(Severity::News, render::inWords(end.how));
    emit sprayWanted();
}

void OpenEndsBar::voidRun()
{
    if (m_moved->currentIndex() < 0 || !m_void->isEnabled()) {
        emit noteRequested(Severity::News, tr("No readings here were taken while the background moved."));
        return;
    }
    if (!isNamed(m_session, *this))
        return;
    const int index = m_moved->currentIndex(); // while the name was asked newer runs may have come
    if (index < 0 || !m_void->isEnabled())
        return;
    const analysis::MovedRun run = m_ends.moved[static_cast<std::size_t>(index)];
    const QString what = tr("%n point(s)", nullptr, static_cast<int>(pointsOf(run).size())) +
                         QStringLiteral(": ") + numbersOf(pointsOf(run));
    VoidDialog dialog({tr("Void together"),
                       render::inWords(run.because) + QLatin1Char('\n') +
                           tr("Void the readings of %1 and spray them again?").arg(what),
                       tr("background moved"), tr("Void and spray again")},
                      this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const model::RoundId of = m_of;
    if (const Status done = m_session.voidReadings(run.readings, dialog.reason().toStdString()); !done) {
        emit failed(done.error());
        return;
    }
    // A point without a reading that stands is called again by the walk of its round.
    m_session.setCurrentRound(of);
    emit noteRequested(Severity::News, tr("%n reading(s) void; their points are called again.", nullptr,
                                          static_cast<int>(run.readings.size())));
    emit sprayWanted();
}

} // namespace sealwalk::ui
