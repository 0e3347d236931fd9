// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/read_back.h"

#include "core/report/finding_range.h"
#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/render/plate_painter.h"
#include "ui/render/theme.h"

#include <QFontMetricsF>
#include <QPainter>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr int kHeight = 36;
constexpr int kFigureLine = 21; // the range has the rest
constexpr double kGlyph = 22.0;

} // namespace

ReadBack::ReadBack(QWidget* parent)
    : QWidget(parent)
{
    setFixedHeight(kHeight);
    setAccessibleName(tr("On the chamber"));
}

void ReadBack::setFinding(const std::optional<analysis::PointFinding>& finding, const report::ShownUnit& unit)
{
    m_sentence.clear();
    m_rate.clear();
    m_range.clear();
    m_unit = QString::fromStdString(unit.head());
    m_isSized = finding && !finding->factors.empty();
    if (finding && finding->asRead) {
        // What does not stand out of the noise is no leak of that size: it bounds one.
        const bool isNoise = !finding->rate && !finding->atLeast && finding->bound;
        m_rate =
            isNoise
                ? tr("below %1").arg(render::inFigures(report::screenRate(unit.ofHelium(*finding->bound))))
                : render::inFigures(report::screenRate(unit.ofHelium(*finding->asRead)));
        m_range = finding->rate ? render::inFigures(report::rangeBeside(*finding, unit)) : QString();
        m_stand = finding->verdict;
        switch (m_stand) {
        case analysis::Verdict::Over:
            m_verdict = tr("over the limit");
            break;
        case analysis::Verdict::Within:
            m_verdict = tr("within the limit");
            break;
        case analysis::Verdict::CannotSay:
            m_verdict = tr("cannot say");
            break;
        case analysis::Verdict::NoAnswer:
            m_verdict = tr("no limit set");
            break;
        case analysis::Verdict::NotCounted:
            m_verdict = tr("not counted");
            break;
        }
    }
    QString spoken;
    if (!m_rate.isEmpty())
        spoken = m_rate + QLatin1Char(' ') + m_unit + QStringLiteral(", ") + m_verdict;
    if (!m_range.isEmpty())
        spoken += QStringLiteral(", ") +
                  tr("95 % range %1").arg(render::inFigures(report::plainRange(*finding, unit)));
    setAccessibleDescription(spoken);
    setAccessibleName(m_isSized || m_rate.isEmpty() ? tr("On the chamber") : tr("As shown, not sized"));
    update();
}

void ReadBack::setSentence(const QString& sentence)
{
    m_sentence = sentence;
    setAccessibleDescription(sentence);
    update();
}

void ReadBack::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (!m_sentence.isEmpty()) {
        painter.setFont(render::font(TextSize::Text, render::Weight::Bold));
        painter.setPen(theme.colour(Role::Unsure));
        painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_sentence);
        return;
    }
    if (m_rate.isEmpty())
        return;
    double x = 0;
    // The range stands below its figure and in its decade, smaller.
    const QRectF line(0, 0, width(), m_range.isEmpty() ? kHeight : kFigureLine);
    const auto piece = [&](const QString& text, render::Weight weight, Role role, TextSize size) {
        painter.setFont(render::font(size, weight));
        painter.setPen(theme.colour(role));
        painter.drawText(line.adjusted(x, 0, 0, 0), Qt::AlignVCenter, text);
        x += QFontMetricsF(painter.font()).horizontalAdvance(text);
    };
    // Without a reference leak it is what the display shows, and no rate of the leak.
    piece(m_isSized ? tr("on the chamber ") : tr("as shown, not sized "), render::Weight::Normal, Role::Ink,
          TextSize::Strong);
    const double figure = x;
    piece(m_rate, render::Weight::Bold, Role::Ink, TextSize::Title);
    piece(QLatin1Char(' ') + m_unit, render::Weight::Normal, Role::InkSoft, TextSize::Text);
    if (!m_range.isEmpty()) {
        painter.setFont(render::font(TextSize::Caption));
        painter.drawText(QRectF(figure, kFigureLine, width(), kHeight - kFigureLine),
                         Qt::AlignLeft | Qt::AlignTop, m_range + tr("  (95 %, by itself)"));
    }

    painter.setFont(render::font(TextSize::Strong, render::Weight::Bold));
    painter.setPen(render::verdictColour(theme, m_stand));
    const double verdictWidth = QFontMetricsF(painter.font()).horizontalAdvance(m_verdict);
    painter.drawText(rect(), Qt::AlignRight | Qt::AlignVCenter, m_verdict);
    render::paintLimitGlyph(painter, theme, m_stand,
                            QRectF(width() - verdictWidth - kGlyph - render::kGapNear,
                                   (height() - kGlyph) / 2.0, kGlyph, kGlyph));
}

} // namespace sealwalk::ui
