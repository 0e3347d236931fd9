// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/points_panel.h"

#include "core/editing/points.h"
#include "core/editing/sheets.h"
#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/number_field.h"
#include "ui/sketch/overlay_painter.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/switch_row.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

using editing::Laying;

namespace {

/// Each word takes an equal share of the row.
void fillRow(SwitchRow& row)
{
    row.setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    for (int i = 0; i < row.count(); ++i)
        row.button(i)->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

} // namespace

QStringList usualSides()
{
    return {PointsPanel::tr("the front"), PointsPanel::tr("outside"), PointsPanel::tr("inside"),
            PointsPanel::tr("the rear"),  PointsPanel::tr("above"),   PointsPanel::tr("below")};
}

PointsPanel::PointsPanel(SketchDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_head = new Heading(tr("Points along it"), {}, this);
    column->addWidget(m_head);
    m_pointRow = pointRow();
    column->addWidget(m_pointRow);

    m_by = new SwitchRow(tr("Lay by"), {tr("number"), tr("pitch")}, this);
    m_by->setObjectName(QStringLiteral("lay-by"));
    connect(m_by, &SwitchRow::currentChanged, this, [this](int index) {
        Laying laying = m_desk.laying();
        laying.by = index == 0 ? Laying::By::Number : Laying::By::Pitch;
        m_desk.setLaying(laying);
    });
    fillRow(*m_by);
    column->addWidget(formRow(tr("Lay by"), {m_by}, this));

    m_count = new NumberField(tr("Number of points"), 64, this);
    m_count->setObjectName(QStringLiteral("lay-count"));
    m_every = quietLabel({}, this);
    m_every->setTextFormat(Qt::RichText);
    connect(m_count, &NumberField::typing, this, &PointsPanel::layingEdited);
    connect(m_count, &QLineEdit::returnPressed, this, &PointsPanel::lay);
    QWidget* countRow = formRow(tr("Number"), {m_count, m_every}, this);
    m_countName = countRow->findChild<QLabel*>();
    column->addWidget(countRow);

    m_first = new QLineEdit(this);
    m_first->setObjectName(QStringLiteral("lay-first"));
    m_first->setAccessibleName(tr("First number, or first mark on the object"));
    m_first->setFixedWidth(64);
    m_first->setToolTip(
        tr("A number is that of the first point. Where the points are marked on the object, the "
           "first mark, such as D01: the next ones are counted up, and each stands as the place "
           "of its point."));
    m_firstSays = quietLabel({}, this);
    m_firstSays->setWordWrap(true);
    m_firstSays->setFixedHeight(32);
    m_firstSays->setMinimumWidth(110);
    connect(m_first, &QLineEdit::textEdited, this, &PointsPanel::firstEdited);
    connect(m_first, &QLineEdit::returnPressed, this, &PointsPanel::lay);
    column->addWidget(formRow(tr("First"), {m_first, m_firstSays}, this));

    m_sense = new SwitchRow(tr("Sense"), {tr("clockwise"), tr("other way")}, this);
    m_sense->setObjectName(QStringLiteral("sense"));
    fillRow(*m_sense);
    connect(m_sense, &SwitchRow::currentChanged, this, [this](int index) { reverse(index == 0); });
    column->addWidget(formRow(tr("Sense"), {m_sense}, this));

    m_seenFrom = new QComboBox(this);
    m_seenFrom->setEditable(true);
    m_seenFrom->setInsertPolicy(QComboBox::NoInsert);
    m_seenFrom->setAccessibleName(tr("Side the sheet is seen from"));
    m_seenFrom->addItems(usualSides());
    connect(m_seenFrom, &QComboBox::activated, this, [this] { seenFromEdited(); });
    connect(m_seenFrom->lineEdit(), &QLineEdit::editingFinished, this, &PointsPanel::seenFromEdited);
    column->addWidget(formRow(tr("Seen from"), {m_seenFrom}, this));

    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(0, 6, 0, 2);
    buttons->setSpacing(8);
    m_lay = new QPushButton(this);
    m_lay->setObjectName(QStringLiteral("lay"));
    m_lay->setProperty("kind", QStringLiteral("primary"));
    connect(m_lay, &QPushButton::clicked, this, &PointsPanel::lay);
    m_undo = new QPushButton(render::icon(QStringLiteral("undo")), tr("Undo"), this);
    m_undo->setObjectName(QStringLiteral("undo"));
    connect(m_undo, &QPushButton::clicked, &m_desk, &SketchDesk::undo);
    buttons->addWidget(m_lay, 1);
    buttons->addWidget(m_undo);
    column->addLayout(buttons);
    connect(m_count, &NumberField::refused, &m_desk,
            [this](const QString& sentence) { m_desk.say(Severity::Caution, sentence); });
    refresh();
}

QWidget* PointsPanel::pointRow()
{
    m_place = new QLineEdit(this);
    m_place->setObjectName(QStringLiteral("point-place"));
    m_place->setAccessibleName(tr("Place of the chosen point"));
    m_place->setToolTip(tr("Where it is, in words, as map and report say it. Dragging the point moves it."));
    connect(m_place, &QLineEdit::editingFinished, this, [this] {
        if (m_place->isModified())
            m_desk.commit(editing::setPlace(m_desk.sketch(), m_desk.chosenPoint(),
                                            m_place->text().trimmed().toStdString()));
        m_place->setModified(false);
    });
    m_retire = new QPushButton(this);
    connect(m_retire, &QPushButton::clicked, this, [this] {
        const model::TestPoint* point = m_desk.sketch().point(m_desk.chosenPoint());
        if (point != nullptr)
            m_desk.commit(point->retired
                              ? editing::restore(m_desk.sketch(), point->id)
                              : editing::retire(m_desk.sketch(), point->id, m_desk.withReadings()));
    });
    QWidget* row = formRow(tr("Point"), {m_place, m_retire}, this);
    m_pointName = row->findChild<QLabel*>();
    return row;
}

Laying PointsPanel::typedLaying() const
{
    Laying laying = m_desk.laying();
    if (const auto typed = readNumber(m_count->text())) {
        if (laying.by == Laying::By::Number)
            laying.number = static_cast<int>(std::clamp(std::round(*typed), -1e6, 1e6));
        else
            laying.pitch = *typed;
    }
    return laying;
}

/// A number, or what is painted on the object; a number with a nought in front is painted.
void PointsPanel::firstEdited(const QString& typed)
{
    Laying laying = m_desk.laying();
    laying.first.reset();
    laying.mark.clear();
    const QString first = typed.trimmed();
    static const QRegularExpression kNumber(QStringLiteral("^[1-9][0-9]{0,5}$"));
    static const QRegularExpression kMark(QStringLiteral("^(0[0-9]+|.*\\p{L}.*)$"));
    if (kNumber.match(first).hasMatch())
        laying.first = first.toInt();
    else if (kMark.match(first).hasMatch())
        laying.mark = first.toStdString();
    m_firstIsWrong = !first.isEmpty() && !laying.first && laying.mark.empty();
    m_desk.setLaying(laying);
}

void PointsPanel::showFirst()
{
    const Laying& laying = m_desk.laying();
    if (!m_firstIsWrong && !laying.first && laying.mark.empty())
        m_first->clear(); // used up
    m_firstSays->setText(m_firstIsWrong ? tr("a number, or a mark such as D01")
                         : laying.mark.empty()
                             ? tr("numbers are never used twice")
                             : tr("marked %1, %2\u00A0…")
                                   .arg(QString::fromStdString(editing::markBehind(laying.mark, 0)),
                                        QString::fromStdString(editing::markBehind(laying.mark, 1))));
    setStyleProperty(m_firstSays, "role", m_firstIsWrong ? QStringLiteral("wrong") : QStringLiteral("soft"));
}

/// Typed for a joint, it is not meant for the next one.
void PointsPanel::forgetFirst()
{
    m_first->clear();
    firstEdited({});
}

void PointsPanel::layingEdited(double typed)
{
    (void)typed;
    m_desk.setLaying(typedLaying());
}

void PointsPanel::lay()
{
    const model::Joint* joint = m_desk.chosenJoint();
    if (joint == nullptr)
        return;
    if (m_firstIsWrong) {
        m_desk.say(Severity::Caution, tr("First takes a whole number such as 101, or a mark such as D01."));
        m_first->setFocus();
        return;
    }
    m_desk.setLaying(typedLaying());
    if (m_desk.commit(
            editing::layPoints(m_desk.sketch(), joint->id, m_desk.laying(), m_desk.withReadings()))) {
        emit laid();
    }
}

void PointsPanel::reverse(bool clockwise)
{
    const model::Joint* joint = m_desk.chosenJoint();
    if (joint == nullptr || joint->clockwise == clockwise)
        return;
    if (!m_desk.commit(editing::reverseSense(m_desk.sketch(), joint->id, m_desk.withReadings())))
        refresh();
}

void PointsPanel::seenFromEdited()
{
    const model::Sheet* sheet = m_desk.sheetInView();
    const std::string side = m_seenFrom->currentText().trimmed().toStdString();
    if (sheet == nullptr || sheet->seenFrom == side)
        return;
    model::Sheet changed = *sheet;
    changed.seenFrom = side;
    m_desk.commit(editing::changeSheet(m_desk.sketch(), changed));
}

void PointsPanel::refresh()
{
    const model::Joint* joint = m_desk.chosenJoint();
    setVisible(joint != nullptr);
    if (joint == nullptr)
        return;
    setEnabled(m_desk.isOpenForWork());
    const double length = geometry::outline(joint->shape).length();
    m_head->setAside(length > 0.0 ? tr("%1 m").arg(QLocale().toString(length / 1000.0, 'f', 2))
                                  : tr("one place"));
    const std::size_t present = m_desk.sketch().pointsOn(joint->id).size();
    if (m_shownJoint != joint->id) { // the number starts as what the joint has
        m_shownJoint = joint->id;
        forgetFirst();
        if (present > 0 && m_desk.laying().by == Laying::By::Number) {
            Laying own = m_desk.laying();
            own.number = static_cast<int>(present);
            m_desk.setLaying(own);
        }
    }
    const Laying& laying = m_desk.laying();
    const bool byNumber = laying.by == Laying::By::Number;
    {
        const QSignalBlocker quiet(m_by);
        m_by->setCurrent(byNumber ? 0 : 1);
    }
    m_countName->setText(byNumber ? tr("Number") : tr("Pitch"));
    m_count->setWhole(byNumber);
    m_count->setAccessibleName(byNumber ? tr("Number of points") : tr("Pitch in millimetres"));
    m_count->setNumber(byNumber ? laying.number : laying.pitch);
    const Result<int> count = editing::countOn(*joint, laying);
    if (!count)
        m_every->setText(tr("1 to %1 points").arg(editing::kMostPoints));
    else if (byNumber)
        m_every->setText(
            length > 0.0
                ? tr("= every <b>%1</b>").arg(millimetresText(std::round(editing::spacing(*joint, *count))))
                : QString());
    else
        m_every->setText(*count == 1 ? tr("mm = <b>1</b> point") : tr("mm = <b>%1</b> points").arg(*count));
    m_first->setPlaceholderText(QString::number(m_desk.sketch().lastNumber + 1));
    showFirst();
    {
        const QSignalBlocker quiet(m_sense);
        const bool open = !geometry::outline(joint->shape).isClosed();
        const QStringList words = open ? QStringList{tr("as drawn"), tr("other way")}
                                       : QStringList{tr("clockwise"), tr("other way")};
        if (m_sense->button(0)->text() != words.first()) {
            m_sense->setWords(words);
            fillRow(*m_sense);
        }
        m_sense->setCurrent(joint->clockwise ? 0 : 1);
    }
    if (const model::Sheet* sheet = m_desk.sheetInView();
        sheet != nullptr && !m_seenFrom->lineEdit()->hasFocus())
        m_seenFrom->setEditText(QString::fromStdString(sheet->seenFrom));
    m_lay->setEnabled(count.has_value());
    m_lay->setText(present == 0 ? (count.value_or(0) == 1 ? tr("Lay 1 point")
                                                          : tr("Lay %1 points").arg(count.value_or(0)))
                                : (count.value_or(0) == 1 ? tr("Lay 1 point anew")
                                                          : tr("Lay %1 points anew").arg(count.value_or(0))));
    m_undo->setEnabled(m_desk.session().hasJob() && m_desk.session().edits().canUndo());
    m_undo->setToolTip(editWords(m_desk.session().edits().undoText()));
    refreshPoint();
}

void PointsPanel::refreshPoint()
{
    const model::TestPoint* point = m_desk.sketch().point(m_desk.chosenPoint());
    m_pointRow->setVisible(point != nullptr);
    if (point == nullptr)
        return;
    m_pointName->setText(tr("Point %1 is at").arg(point->number));
    if (!(m_place->hasFocus() && m_place->isModified()))
        m_place->setText(QString::fromStdString(point->place));
    model::TestPoint automatic = *point;
    automatic.place.clear();
    const QString workedOut = render::inWords(model::placeText(m_desk.sketch(), automatic));
    m_place->setPlaceholderText(workedOut.isEmpty() ? tr("in words") : workedOut);
    m_retire->setText(point->retired                              ? tr("Bring back")
                      : m_desk.withReadings().contains(point->id) ? tr("Retire")
                                                                  : tr("Delete"));
}

} // namespace sealwalk::ui
