// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/merge_summary.h"

#include "ui/render/core_words.h"
#include "ui/shell/continuation_words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using transfer::Outcome;
using transfer::TakenIn;

constexpr QSize kSize(720, 420);

int counted(const std::vector<TakenIn>& answers, Outcome outcome)
{
    return static_cast<int>(std::count_if(answers.begin(), answers.end(), [&](const TakenIn& one) {
        return one.isOfJob() && one.outcome == outcome;
    }));
}

/// "Job 165 of Electron-beam weld chamber".
QString nameOf(const TakenIn& one)
{
    return one.object.empty()
               ? MergeSummary::tr("Job %1").arg(one.number)
               : MergeSummary::tr("Job %1 of %2").arg(one.number).arg(QString::fromStdString(one.object));
}

QString whyNot(const TakenIn& one)
{
    if (one.isForked())
        return MergeSummary::tr("went on in both places, as far as can be told; they differ in: %1")
            .arg(partInWords(one.continuation.differs));
    return one.result.problems.empty() ? QString() : render::inWords(one.result.problems.front());
}

QString outcomeOf(const TakenIn& one)
{
    if (!one.isOfJob())
        return MergeSummary::tr("Not all that was said there of points and objects was taken in: %1")
            .arg(whyNot(one));
    switch (one.outcome) {
    case Outcome::Came:
        return MergeSummary::tr("%1 came").arg(nameOf(one));
    case Outcome::WentOn:
        return MergeSummary::tr("%1 went on: %2").arg(nameOf(one), aheadInWords(one.continuation));
    case Outcome::Known:
        return MergeSummary::tr("%1 was here already").arg(nameOf(one));
    case Outcome::NotTaken:
        break;
    }
    return MergeSummary::tr("%1 was not taken in: %2").arg(nameOf(one), whyNot(one));
}

/// Each job with what is to be said of it below; what was not taken in first, what was here already last.
QStringList linesOf(std::vector<TakenIn> answers)
{
    const auto rank = [](const TakenIn& one) {
        return one.outcome == Outcome::NotTaken ? 0 : one.outcome == Outcome::Known ? 2 : 1;
    };
    std::stable_sort(answers.begin(), answers.end(),
                     [&](const TakenIn& a, const TakenIn& b) { return rank(a) < rank(b); });
    QStringList lines;
    for (const TakenIn& one : answers) {
        lines << outcomeOf(one);
        if (!one.isOfJob()) // the first stands above
            for (std::size_t i = 1; i < one.result.problems.size(); ++i)
                lines << QStringLiteral("    ") + render::inWords(one.result.problems[i]);
        for (const std::string& note : one.result.notes)
            lines << QStringLiteral("    ") + render::inWords(note);
    }
    return lines;
}

} // namespace

MergeSummary::MergeSummary(const std::vector<TakenIn>& answers, QWidget* parent)
    : QDialog(parent)
{
    setWindowTitle(tr("What came of it"));
    const int renumbered = static_cast<int>(
        std::count_if(answers.begin(), answers.end(), [](const TakenIn& one) { return one.isRenumbered; }));
    const int came = counted(answers, Outcome::Came);
    const int refused = counted(answers, Outcome::NotTaken);
    m_headline = tr("Jobs that came: %1; that went on: %2; that were here already: %3; not taken in: %4.")
                     .arg(came)
                     .arg(counted(answers, Outcome::WentOn))
                     .arg(counted(answers, Outcome::Known))
                     .arg(refused);
    QString numbers;
    if (renumbered > 0)
        numbers = tr("Their number was taken here and they got another: %1.").arg(renumbered);
    else if (came > 0)
        numbers = tr("All kept their numbers.");
    auto* headline =
        new QLabel(numbers.isEmpty() ? m_headline : m_headline + QLatin1Char('\n') + numbers, this);
    headline->setObjectName(QStringLiteral("headline"));
    headline->setWordWrap(true);
    auto* lines = new QPlainTextEdit(linesOf(answers).join(QLatin1Char('\n')), this);
    lines->setReadOnly(true);
    lines->setTabChangesFocus(true);
    lines->setAccessibleName(tr("job by job"));
    lines->setPlaceholderText(tr("There is nothing to say of any single job."));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::accept);
    auto* column = new QVBoxLayout(this);
    column->addWidget(headline);
    column->addWidget(lines, 1);
    column->addWidget(buttons);
    resize(kSize);
}

} // namespace sealwalk::ui
