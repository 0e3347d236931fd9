// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/evidence_panel.h"

#include "core/model/point_numbers.h"
#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/render/sheet_view.h"
#include "ui/render/theme.h"
#include "ui/session/map_options.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/number_display.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kStandingColumn = 6;  ///< the remark follows
constexpr int kLeastStanding = 120; // px
constexpr int kMostRows = 4;        // shown at once
constexpr int kMostMatters = 4;     // shown at once

QString placeWord(analysis::CheckPlace place)
{
    switch (place) {
    case analysis::CheckPlace::Prepare:
        return EvidencePanel::tr("Go to Prepare");
    case analysis::CheckPlace::Sketch:
        return EvidencePanel::tr("Go to Sketch");
    case analysis::CheckPlace::Spray:
        return EvidencePanel::tr("Go to Spray");
    case analysis::CheckPlace::Judge:
        return EvidencePanel::tr("Go to Judge");
    case analysis::CheckPlace::History:
        return EvidencePanel::tr("Go to History");
    }
    return {};
}

QString remarkOf(const analysis::ReviewCheck& check)
{
    const QString text = QString::fromStdString(check.returnedWith);
    if (check.wasObjected)
        return EvidencePanel::tr("Not agreed by %1 before it was sent back: “%2”")
            .arg(QString::fromStdString(check.returnedBy), text);
    return check.returnedBy.empty() ? EvidencePanel::tr("Said before it was sent back: “%1”").arg(text)
                                    : EvidencePanel::tr("Said by %1 before it was sent back: “%2”")
                                          .arg(QString::fromStdString(check.returnedBy), text);
}

/// A question of the reviewer and what the tester had said stand one below the other.
QString wordsOn(const analysis::ReviewCheck& check)
{
    constexpr std::ptrdiff_t kMost = 3; // the report has them all
    QStringList lines;
    for (auto word = check.words.end() - std::min(kMost, std::ssize(check.words)); word != check.words.end();
         ++word)
        lines << (word->isObjection ? EvidencePanel::tr("Not agreed by %1: “%2”.")
                                    : EvidencePanel::tr("Said by %1: “%2”."))
                     .arg(QString::fromStdString(word->by), QString::fromStdString(word->text));
    if (!lines.isEmpty() && check.state == analysis::CheckState::Stops && !check.isObjected)
        lines.last() += QLatin1Char(' ') + EvidencePanel::tr("It stops a sign-off all the same.");
    return lines.join(QLatin1Char('\n'));
}

QString shownIn(const std::optional<LeakRate>& rate, const report::ShownUnit& unit)
{
    return rate ? render::inFigures(report::screenRate(unit.number(*rate))) : QStringLiteral("–");
}

} // namespace

EvidencePanel::EvidencePanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_title(new QLabel(this))
    , m_answer(new QLabel(this))
    , m_matters(new QListWidget(this))
    , m_given(new QLabel(this))
    , m_returned(new QLabel(this))
    , m_sheet(new render::SheetView(this))
    , m_readings(new QTableWidget(this))
    , m_word(new QLineEdit(this))
    , m_add(new QPushButton(render::icon(QStringLiteral("remark")), tr("Add word"), this))
    , m_object(new QPushButton(tr("Not agreed"), this))
    , m_jump(new QPushButton(this))
{
    m_title->setProperty("role", QStringLiteral("title"));
    m_title->setWordWrap(true);
    m_answer->setWordWrap(true);
    m_given->setWordWrap(true);
    m_given->setObjectName(QStringLiteral("wordGiven"));
    m_matters->setObjectName(QStringLiteral("matters"));
    m_matters->setAccessibleName(tr("All that is open on this question"));
    m_matters->setWordWrap(true);
    m_matters->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_returned->setObjectName(QStringLiteral("returnedWith"));
    m_returned->setTextFormat(Qt::PlainText);
    m_returned->setWordWrap(true);
    UnderlayImages::showBeneath(*m_sheet, session);
    m_sheet->setFocusPolicy(Qt::ClickFocus);
    m_readings->setColumnCount(8);
    m_readings->setHorizontalHeaderLabels({tr("Time"), tr("Condition"), tr("Background"), tr("Highest"),
                                           tr("First rise"), tr("By"), tr("Standing"), tr("Remark")});
    m_readings->verticalHeader()->hide();
    m_readings->horizontalHeader()->setStretchLastSection(true);
    m_readings->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_readings->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_readings->setSelectionMode(QAbstractItemView::NoSelection);
    m_readings->setFocusPolicy(Qt::NoFocus);
    m_readings->setTextElideMode(Qt::ElideRight);
    m_readings->setAccessibleName(tr("Readings of the point"));
    m_readings->verticalHeader()->setDefaultSectionSize(render::kTableRow);
    m_word->setPlaceholderText(tr("Why it may stand, or what is to be done"));
    m_word->setAccessibleName(tr("Word on this question"));
    m_word->setObjectName(QStringLiteral("reviewWord"));
    m_add->setObjectName(QStringLiteral("addWord"));
    m_object->setObjectName(QStringLiteral("object"));
    m_object->setToolTip(tr("The answer may not stand: the question stays open until it is answered again"));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(render::kGapApart, render::kGapApart, render::kGapApart, render::kGapNear);
    column->setSpacing(render::kGapNear);
    column->addWidget(m_title);
    column->addWidget(m_sheet, 1);
    column->addWidget(m_readings);
    column->addWidget(m_answer);
    column->addWidget(m_matters);
    column->addWidget(m_returned);
    column->addWidget(m_given);
    auto* row = new QHBoxLayout;
    row->addWidget(m_word, 1);
    row->addWidget(m_add);
    row->addWidget(m_object);
    row->addWidget(m_jump);
    column->addLayout(row);

    const auto give = [this](const QString& text, bool agrees = true) {
        if (m_check.isEmpty())
            return;
        if (text.isEmpty()) {
            m_word->setFocus();
            emit wordMissing(!m_sameAgain.isEmpty());
            return;
        }
        const model::PointId point = m_isOfPoint ? m_point : model::PointId();
        if (agrees)
            emit wordGiven(m_check, text, point);
        else
            emit objected(m_check, text, point);
    };
    connect(m_object, &QPushButton::clicked, this, [this, give] { give(m_word->text().trimmed(), false); });
    connect(m_add, &QPushButton::clicked, this, [this, give] {
        give(m_word->text().trimmed().isEmpty() ? m_sameAgain : m_word->text().trimmed());
    });
    // Enter alone settles nothing with words of before: the next question is under the same hand.
    connect(m_word, &QLineEdit::returnPressed, this, [this, give] { give(m_word->text().trimmed()); });
    connect(m_word, &QLineEdit::textChanged, this, &EvidencePanel::nameAdding);
    connect(m_jump, &QPushButton::clicked, this, [this] { emit jumpWanted(m_place, m_point); });
    const auto pointOf = [](const QListWidgetItem* item) {
        return item == nullptr ? model::PointId()
                               : model::PointId::parse(item->data(Qt::UserRole).toString().toStdString())
                                     .value_or(model::PointId());
    };
    connect(m_matters, &QListWidget::currentItemChanged, this, [this, pointOf](QListWidgetItem* now) {
        if (const model::PointId point = pointOf(now); !point.isNil())
            showPoint(point);
    });
    connect(m_matters, &QListWidget::itemActivated, this,
            [this, pointOf](QListWidgetItem* item) { emit jumpWanted(m_place, pointOf(item)); });
    connect(m_sheet, &render::SheetView::pointClicked, this, [this](model::PointId point) {
        m_isOfPoint = true; // pointed at: what is said now is said of it
        showPoint(point);
    });
}

void EvidencePanel::setCheck(const analysis::ReviewCheck* check)
{
    const QString before = m_check;
    m_check = check == nullptr
                  ? QString()
                  : QString::fromUtf8(check->word.data(), static_cast<qsizetype>(check->word.size()));
    m_title->setText(check == nullptr ? QString() : render::inWords(check->question));
    m_answer->setText(check == nullptr ? QString() : render::inWords(check->answer));
    const bool several = check != nullptr && check->matters.size() > 1;
    m_answer->setVisible(!several);
    fillMatters(several ? check->matters : std::vector<analysis::ReviewMatter>());
    m_given->setText(check == nullptr ? QString() : wordsOn(*check));
    m_given->setVisible(!m_given->text().isEmpty());
    m_returned->setText(check == nullptr || check->returnedWith.empty() ? QString() : remarkOf(*check));
    m_returned->setVisible(!m_returned->text().isEmpty());
    m_sameAgain = check == nullptr || check->isSettled() || check->wasObjected || check->isObjected
                      ? QString()
                      : QString::fromStdString(check->returnedWith);
    nameAdding();
    // What is known of a signed job later is an amendment, which is signed too.
    const bool takesWords =
        check != nullptr && m_session.hasJob() && m_session.job().state != model::JobState::Signed;
    m_word->setEnabled(takesWords);
    m_add->setEnabled(takesWords);
    // Who works on the job does not object to it: the reviewer does, before it goes back or is approved.
    m_object->setVisible(takesWords && m_session.job().state == model::JobState::Submitted);
    m_place = check == nullptr ? analysis::CheckPlace::Judge : check->place;
    m_jump->setText(placeWord(m_place));
    m_jump->setEnabled(check != nullptr);
    // Asked anew after somebody stored something: the point that was clicked stays, a word may be on its way.
    const bool staysOn =
        m_check == before && m_session.hasJob() && m_session.job().sketch.point(m_point) != nullptr;
    m_sheet->setMarked(check == nullptr ? std::vector<model::PointId>() : check->points);
    m_isOfPoint = check != nullptr && ((staysOn && m_isOfPoint) || check->points.size() == 1);
    showPoint(check == nullptr        ? model::PointId()
              : staysOn               ? m_point
              : check->points.empty() ? model::PointId()
                                      : check->points.front());
}

/// What was said before it was sent back can be said again as it is, where nothing else is typed.
void EvidencePanel::nameAdding()
{
    const bool isSame = !m_sameAgain.isEmpty() && m_word->text().trimmed().isEmpty();
    m_add->setText(isSame ? tr("Still stands") : tr("Add word"));
    m_add->setToolTip(isSame ? m_sameAgain : QString());
}

/// Each with the place it is mended at one key away.
void EvidencePanel::fillMatters(const std::vector<analysis::ReviewMatter>& matters)
{
    const QSignalBlocker quiet(m_matters);
    const int current = m_matters->currentRow();
    m_matters->clear();
    for (const analysis::ReviewMatter& matter : matters) {
        auto* item = new QListWidgetItem(render::inWords(matter.says), m_matters);
        if (!matter.points.empty())
            item->setData(Qt::UserRole, QString::fromStdString(matter.points.front().text()));
        if (matter.state == analysis::CheckState::Stops)
            item->setText(tr("Stops: %1").arg(item->text()));
    }
    if (current >= 0 && current < m_matters->count())
        m_matters->setCurrentRow(current);
    int height = 2 * m_matters->frameWidth() + 2;
    for (int row = 0; row < std::min(m_matters->count(), kMostMatters); ++row)
        height += m_matters->sizeHintForRow(row);
    m_matters->setFixedHeight(height);
    m_matters->setVisible(m_matters->count() > 0);
}

void EvidencePanel::clearWord()
{
    m_word->clear();
}

void EvidencePanel::focusRemark()
{
    m_word->setFocus();
}

void EvidencePanel::showPoint(model::PointId point)
{
    m_point = point;
    const model::TestPoint* named =
        m_isOfPoint && m_session.hasJob() ? m_session.job().sketch.point(point) : nullptr;
    m_word->setPlaceholderText(
        named == nullptr ? tr("Why it may stand, or what is to be done")
                         : tr("On point %1: why it may stand, or what is to be done").arg(named->number));
    if (!m_session.hasJob() || m_session.job().sketch.sheets.empty()) {
        m_sheet->setContent(std::make_shared<report::MapContent>());
        m_readings->setVisible(false);
        return;
    }
    const model::Sketch& sketch = m_session.job().sketch;
    const model::TestPoint* known = sketch.point(point);
    const model::Joint* joint = known == nullptr ? nullptr : sketch.joint(known->joint);
    m_sheet->setContent(std::make_shared<report::MapContent>(report::mapOf(
        m_session.job(), m_session.object(), joint == nullptr ? sketch.sheets.front().id : joint->sheet,
        m_session.asLeft(), mapOptions(m_session))));
    m_sheet->setSelected(known == nullptr ? std::nullopt : std::optional(point));
    if (known != nullptr)
        m_sheet->reveal(point);
    fillReadings(point);
}

QString EvidencePanel::conditionOf(const model::Reading& reading) const
{
    const QString word = render::inWords(std::string(model::name(reading.condition)));
    const std::string off = model::numbersOf(m_session.job().sketch, reading.shielded);
    return off.empty() ? word : tr("%1; taped off: %2").arg(word, QString::fromStdString(off));
}

void EvidencePanel::fillReadings(model::PointId point)
{
    const model::Job& job = m_session.job();
    m_readings->setRowCount(0);
    const report::ShownUnit unit = report::shownUnit(job.setup, job.setup.detectorUnit);
    for (const model::Reading& reading : job.readings) {
        if (reading.point != point)
            continue;
        const int row = m_readings->rowCount();
        m_readings->insertRow(row);
        const QString highest = reading.outcome == model::Outcome::Value
                                    ? shownIn(reading.peak, unit)
                                    : render::inWords(std::string(model::name(reading.outcome)));
        QString standing = reading.confirmed ? tr("stands, confirmed") : tr("stands");
        if (const model::Reading* later = job.correctionOf(reading.id))
            standing = tr("corrected: %1").arg(QString::fromStdString(later->reason));
        else if (job.isVoid(reading.id))
            standing = tr("void");
        const QStringList cells{
            QString::fromStdString(reading.at.date() + " " + reading.at.timeOfDay().substr(0, 5)),
            conditionOf(reading),
            shownIn(reading.background, unit),
            highest,
            reading.delay ? tr("%1 s").arg(figureText(inSeconds(*reading.delay), 2)) : QString(),
            QString::fromStdString(reading.by),
            standing,
            QString::fromStdString(reading.remark.empty() ? reading.reason : reading.remark)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(column == 0 ? QString::fromStdString(reading.at.text()) : cells[column]);
            m_readings->setItem(row, column, item);
        }
    }
    m_readings->resizeColumnsToContents();
    // What stands and why is what a reviewer looks for: it and the remark share what is left.
    const int others = m_readings->horizontalHeader()->length() - m_readings->columnWidth(kStandingColumn) -
                       m_readings->columnWidth(kStandingColumn + 1);
    const int left = std::max(kLeastStanding, (m_readings->viewport()->width() - others) / 2);
    m_readings->setColumnWidth(kStandingColumn, std::min(left, m_readings->columnWidth(kStandingColumn)));
    m_readings->horizontalHeader()->setStretchLastSection(true);
    // As many as there are: the sheet above has the rest.
    const int rows = std::min(m_readings->rowCount(), kMostRows);
    m_readings->setFixedHeight(m_readings->horizontalHeader()->sizeHint().height() +
                               rows * render::kTableRow + 4 +
                               (m_readings->horizontalHeader()->length() > m_readings->viewport()->width()
                                    ? m_readings->horizontalScrollBar()->sizeHint().height()
                                    : 0)); // it hid the last row
    m_readings->setVisible(m_readings->rowCount() > 0);
}

} // namespace sealwalk::ui
