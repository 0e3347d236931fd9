// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/stage_strip.h"

#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/shell/stage_field.h"

#include <QHBoxLayout>
#include <QPainter>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::Theme;

constexpr int kPlateWidth = 318;
constexpr int kHistoryGap = 14;
constexpr int kMark = 28;
constexpr int kMargin = 12;
constexpr int kTextLeft = 50;
constexpr int kSign = 13;
constexpr int kSignGap = 4;

} // namespace

StageStrip::StageStrip(QWidget* parent)
    : QWidget(parent)
{
    setObjectName(QStringLiteral("stageStrip"));
    setFixedHeight(render::kStageStrip);
    setProperty("region", tr("stages"));
    m_row = new QHBoxLayout(this);
    m_row->setContentsMargins(kPlateWidth, 0, 0, 0);
    m_row->setSpacing(0);
    m_row->addStretch(1);
}

void StageStrip::addStage(Stage stage)
{
    auto* field = new StageField(stage, this);
    // Pages may arrive in any order; the fields stand in the order of the work.
    const auto after = std::find_if(m_fields.begin(), m_fields.end(),
                                    [&](const StageField* other) { return other->stage() > stage; });
    m_fields.insert(after, field);
    while (m_row->count() > 0)
        delete m_row->takeAt(0);
    for (StageField* each : m_fields) {
        if (each->stage() == Stage::History && m_fields.size() > 1)
            m_row->addSpacing(kHistoryGap);
        m_row->addWidget(each);
    }
    m_row->addStretch(1);
    for (std::size_t i = 1; i < m_fields.size(); ++i)
        setTabOrder(m_fields[i - 1], m_fields[i]);
    connect(field, &StageField::clicked, this, [this, field] {
        // The page decides what is chosen; a click alone does not.
        field->setChecked(!field->isChecked());
        emit stageChosen(field->stage());
    });
}

void StageStrip::setObjectAndJob(const QString& object, const QString& job, const QString& wrong)
{
    m_object = object;
    m_job = job;
    setAccessibleName(object);
    m_wrong = wrong;
    setAccessibleDescription(wrong.isEmpty() ? job : tr("%1, not as signed: %2").arg(job, wrong));
    setToolTip(wrong.isEmpty() ? QString() : tr("Not as signed: %1").arg(wrong));
    update();
}

void StageStrip::setProgress(Stage stage, const StageProgress& progress)
{
    if (StageField* wanted = field(stage))
        wanted->setProgress(progress);
}

void StageStrip::setUsable(Stage stage, bool usable)
{
    if (StageField* wanted = field(stage))
        wanted->setEnabled(usable);
}

void StageStrip::setCurrent(std::optional<Stage> stage)
{
    for (StageField* field : m_fields)
        field->setChecked(stage && field->stage() == *stage);
}

StageField* StageStrip::field(Stage stage) const
{
    for (StageField* field : m_fields)
        if (field->stage() == stage)
            return field;
    return nullptr;
}

void StageStrip::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.colour(Role::Strip));
    render::paintIcon(painter, QStringLiteral("app-mark-line"), QRectF(kMargin, 9, kMark, kMark),
                      theme.colour(Role::OnStrip));
    const int room = kPlateWidth - kTextLeft - kMargin;
    const QFont strong = render::font(render::TextSize::Strong, render::Weight::Bold);
    painter.setFont(strong);
    painter.setPen(theme.colour(Role::OnStrip));
    painter.drawText(QRect(kTextLeft, 6, room, 17), Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(strong).elidedText(m_object, Qt::ElideRight, room));
    // A record that was bent is said in words and with a sign, and stands out from its surroundings.
    const bool isWrong = !m_wrong.isEmpty();
    const QFont caption = isWrong ? render::font(render::TextSize::Caption, render::Weight::Bold)
                                  : render::font(render::TextSize::Caption);
    const QColor colour = theme.colour(isWrong ? Role::OnStrip : Role::StripSoft);
    const int sign = isWrong ? kSign + kSignGap : 0;
    if (isWrong)
        render::paintIcon(painter, QStringLiteral("caution"), QRectF(kTextLeft, 24, kSign, kSign), colour);
    painter.setFont(caption);
    painter.setPen(colour);
    painter.drawText(QRect(kTextLeft + sign, 23, room - sign, 15), Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(caption).elidedText(isWrong ? tr("Not as signed · %1").arg(m_job) : m_job,
                                                      Qt::ElideRight, room - sign));
}

} // namespace sealwalk::ui
