// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/verdict_box.h"

#include "ui/prepare/shown.h"
#include "ui/render/plate_painter.h"
#include "ui/render/theme.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

using analysis::Outlook;
using render::Role;

constexpr int kGlyphRoom = 52;
constexpr double kManyTimes = 100.0;

QString remedyText(analysis::Remedy remedy)
{
    switch (remedy) {
    case analysis::Remedy::None:
        return {};
    case analysis::Remedy::WatchLonger:
        return VerdictBox::tr(
            "The drift costs most: pump and watch longer until the background has settled.");
    case analysis::Remedy::ThrottleParallel:
        return VerdictBox::tr("Most helium goes past the detector: throttle the pump in parallel.");
    case analysis::Remedy::CalibrateNearer:
        return VerdictBox::tr(
            "Little reaches the detector from the farthest place: throttle or close the pump in parallel, or "
            "connect nearer.");
    case analysis::Remedy::QuietenDetector:
        return VerdictBox::tr("The noise costs most: let the detector warm up, clear the air of helium.");
    }
    return {};
}

QString missingText(const analysis::SetupOutlook& outlook)
{
    if (!outlook.limit)
        return VerdictBox::tr("Type the limit for one joint.");
    if (outlook.needsCalibration)
        return VerdictBox::tr("Enter a reference leak: without it no reading becomes a leak rate.");
    if (outlook.needsBackground)
        return VerdictBox::tr("Watch the background for a minute: noise and drift decide what can be seen.");
    return VerdictBox::tr("The dwell is too short for the response; see the times above.");
}

analysis::Verdict glyphOf(Outlook outlook)
{
    switch (outlook) {
    case Outlook::GoodToStart:
        return analysis::Verdict::Within;
    case Outlook::StartWithCare:
    case Outlook::CannotPass:
        return analysis::Verdict::CannotSay;
    case Outlook::NotKnown:
        return analysis::Verdict::NoAnswer;
    }
    return analysis::Verdict::NoAnswer;
}

} // namespace

VerdictBox::VerdictBox(QWidget* parent)
    : QWidget(parent)
{
    m_sentence = new QLabel(this);
    m_sentence->setObjectName(QStringLiteral("verdictSentence"));
    m_sentence->setProperty("role", QStringLiteral("strong"));
    m_sentence->setWordWrap(true);
    m_remark = quietLabel({}, this);
    m_remark->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kGlyphRoom, 10, 12, 10);
    column->setSpacing(2);
    column->addWidget(m_sentence);
    column->addWidget(m_remark);
    setOutlook(m_outlook);
}

QString VerdictBox::sentence() const
{
    return m_sentence->text();
}

void VerdictBox::setOutlook(const analysis::SetupOutlook& outlook, bool begun)
{
    m_outlook = outlook;
    m_begun = begun;
    const double margin = outlook.margin.value_or(0.0);
    const QString times = figureText(margin, margin >= kManyTimes ? 3 : 2);
    switch (outlook.outlook) {
    case Outlook::NotKnown:
        m_sentence->setText(tr("Not known yet what can be seen"));
        m_remark->setText(missingText(outlook));
        break;
    case Outlook::GoodToStart:
        m_sentence->setText((m_begun ? tr("Good: limit %1 times what can be seen")
                                     : tr("Good to start: limit %1 times what can be seen"))
                                .arg(times));
        m_remark->setText(tr("At least 3 times is needed before any point can pass."));
        break;
    case Outlook::StartWithCare:
        m_sentence->setText((m_begun ? tr("With care: limit only %1 times what can be seen")
                                     : tr("Start with care: limit only %1 times what can be seen"))
                                .arg(times));
        m_remark->setText(remedyText(outlook.remedy));
        break;
    case Outlook::CannotPass:
        m_sentence->setText(
            tr("Cannot pass anything: limit %1 times what can be seen, 3 are needed").arg(times));
        m_remark->setText(remedyText(outlook.remedy) + QLatin1Char(' ') +
                          tr("Searching for faults is still possible."));
        break;
    }
    setAccessibleName(m_sentence->text());
    setAccessibleDescription(m_remark->text());
    update();
}

void VerdictBox::paintEvent(QPaintEvent* /*event*/)
{
    const render::Theme& theme = render::Theme::of(this);
    const Role edge = m_outlook.outlook == Outlook::GoodToStart ? Role::Within
                      : m_outlook.outlook == Outlook::NotKnown  ? Role::Edge
                                                                : Role::Unsure;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool strong = m_outlook.outlook == Outlook::CannotPass;
    painter.setPen(QPen(theme.colour(edge), strong ? 2 : 1));
    painter.setBrush(theme.colour(Role::Field));
    const double inset = strong ? 1.0 : 0.5;
    painter.drawRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset));
    render::paintLimitGlyph(painter, theme, glyphOf(m_outlook.outlook),
                            QRectF(12, (height() - 26) / 2.0, 30, 26));
}

} // namespace sealwalk::ui
