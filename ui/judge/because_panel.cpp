// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/because_panel.h"

#include "core/analysis/job_view.h"
#include "core/report/rate_text.h"
#include "ui/judge/findings_model.h"
#include "ui/judge/owed.h"
#include "ui/render/core_words.h"
#include "ui/render/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

QString html(const std::string& text)
{
    return QString::fromStdString(text).toHtmlEscaped();
}

QString percent(double relative)
{
    return QLocale().toString(relative * 100.0, 'f', 0) + QStringLiteral(" %");
}

} // namespace

BecausePanel::BecausePanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_title(new QLabel(this))
    , m_text(new QTextBrowser(this))
{
    m_title->setProperty("role", QStringLiteral("title"));
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setAccessibleName(tr("Because"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart, render::kGapNear);
    auto* leave = new QPushButton(tr("Close  Esc"), this);
    leave->setFocusPolicy(Qt::NoFocus); // the keys stay with the table
    leave->setProperty("role", QStringLiteral("small"));
    connect(leave, &QPushButton::clicked, this, &BecausePanel::left);
    auto* head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(leave);
    column->addLayout(head);
    column->addWidget(m_text, 1);
}

QString BecausePanel::chainOf(const analysis::PointFinding& finding, const report::MapScale& scale) const
{
    const model::Reading* reading = finding.reading ? m_session.job().reading(*finding.reading) : nullptr;
    if (reading == nullptr)
        return {};
    const analysis::CorrectedReading corrected =
        analysis::correctedReading(m_session.job(), m_session.object(), *reading);
    const auto rate = [&](LeakRate value) {
        return render::inFigures(report::screenRate(scale.number(value))) + QLatin1Char(' ') +
               QString::fromStdString(scale.unit);
    };
    QString rows;
    const auto row = [&](const QString& what, const QString& value, const QString& from) {
        rows += QStringLiteral("<tr><td>%1</td><td align='right'><b>%2</b></td><td>%3</td></tr>")
                    .arg(what, value, from);
    };
    row(wasSprayed(reading->outcome) ? tr("read") : tr("noted"),
        html(reading->at.date() + " " + reading->at.timeOfDay()), tr("by %1").arg(html(reading->by)));
    if (corrected.net)
        row(tr("highest less background"), rate(*corrected.net), tr("as shown, helium"));
    for (const analysis::FactorUsed& factor : corrected.factors)
        row(render::inWords(factor.name).toHtmlEscaped(),
            QStringLiteral("× ") + QLocale().toString(factor.multiplier, 'g', 3),
            render::inWords(factor.from).toHtmlEscaped() +
                tr(", uncertain by %1").arg(percent(factor.relativeUncertainty)));
    const auto range = [&](LeakRate low, LeakRate high) {
        return tr("95 % range %1 … %2")
            .arg(render::inFigures(report::screenRate(scale.number(low))),
                 render::inFigures(report::screenRate(scale.number(high))));
    };
    const bool hasRange = corrected.rate && corrected.low && corrected.high;
    if (corrected.rate)
        row(tr("this reading by itself"), rate(*corrected.rate),
            hasRange ? range(*corrected.low, *corrected.high) : QString());
    else if (corrected.atLeast)
        row(tr("this reading by itself"), tr("at least %1").arg(rate(*corrected.atLeast)),
            tr("more than the detector can show"));
    if (scale.gas.isAir() && corrected.rate) {
        QString from = tr("through one round channel of %1 mm")
                           .arg(QLocale().toString(inMillimetres(m_session.job().setup.leakPath), 'g', 3));
        if (hasRange) {
            const auto air = scale.gas.range(*corrected.rate, *corrected.low, *corrected.high);
            from += QStringLiteral(", ") + range(air.low, air.high);
        }
        row(tr("the same as air"), rate(scale.gas.ofHelium(*corrected.rate)), from);
    }
    if (corrected.smallestDetectable)
        row(tr("smallest detectable then"), rate(*corrected.smallestDetectable), {});
    return QStringLiteral("<table cellspacing='6'>%1</table>").arg(rows);
}

void BecausePanel::setFinding(const analysis::PointFinding* finding, const report::MapScale& scale)
{
    if (finding == nullptr || !m_session.hasJob()) {
        m_title->setText(tr("Because"));
        m_text->setHtml(tr("Choose a point."));
        return;
    }
    m_title->setText(tr("%1: %2, because").arg(finding->number).arg(findingWord(finding->finding)));
    QString text;
    if (m_session.job().sketch.isOfSetup(finding->point))
        text +=
            QStringLiteral("<p>%1</p>")
                .arg(tr("It belongs to the test set-up, not to the object: what was read through it while it "
                        "leaked wants another spray."));
    for (const std::string& sentence : finding->because)
        text += QStringLiteral("<p>%1</p>").arg(render::inSentence(sentence).toHtmlEscaped());
    if (const QString owed = owedText(*finding, m_session.job().sketch); !owed.isEmpty())
        text += QStringLiteral("<p>%1</p>").arg(owed.toHtmlEscaped());
    m_text->setHtml(text + chainOf(*finding, scale));
}

} // namespace sealwalk::ui
