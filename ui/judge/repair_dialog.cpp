// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/repair_dialog.h"

#include "core/analysis/repair_note.h"
#include "core/analysis/repair_words.h"
#include "core/model/point_numbers.h"
#include "ui/judge/photo_strip.h"
#include "ui/render/core_words.h"
#include "ui/session/job_session.h"
#include "ui/widgets/date_field.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QResizeEvent>
#include <QScreen>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kTitleBar = 40; // px, with the frame

QString numbersOf(const model::Job& job, const std::vector<model::PointId>& points)
{
    QStringList numbers;
    for (const model::PointId id : points)
        if (const model::TestPoint* point = job.sketch.point(id))
            numbers << QString::number(point->number);
    return numbers.join(QStringLiteral(", "));
}

std::vector<model::PointId> inOrderOfNumber(const model::Job& job, std::vector<model::PointId> points)
{
    const auto number = [&job](model::PointId id) {
        const model::TestPoint* point = job.sketch.point(id);
        return point == nullptr ? 0 : point->number;
    };
    std::stable_sort(points.begin(), points.end(),
                     [&number](model::PointId a, model::PointId b) { return number(a) < number(b); });
    return points;
}

/// In the window's language; the record keeps the core's word.
void addWords(QComboBox* box, std::span<const std::string_view> words)
{
    for (const std::string_view word : words)
        box->addItem(render::repairInWords(std::string(word)),
                     QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
}

/// The core's word where one was chosen, otherwise what was typed.
std::string wordOf(const QComboBox* box)
{
    const QString shown = box->currentText().trimmed();
    const int chosen = box->findText(shown);
    const QString word = chosen < 0 ? QString() : box->itemData(chosen).toString();
    return (word.isEmpty() ? shown : word).toStdString();
}

} // namespace

RepairDialog::RepairDialog(JobSession& session, const model::Repair& known, QWidget* parent)
    : RepairDialog(session, known.points, parent)
{
    m_known = known;
    fill();
}

RepairDialog::RepairDialog(JobSession& session, const std::vector<model::PointId>& points, QWidget* parent)
    : QDialog(parent)
    , m_session(session)
    , m_job(session.job())
    , m_points(inOrderOfNumber(m_job, points))
    , m_defect(new QComboBox(this))
    , m_action(new QComboBox(this))
    , m_material(new QLineEdit(this))
    , m_doneBy(new QLineEdit(this))
    , m_torque(new QLineEdit(this))
    , m_permanent(new QRadioButton(tr("permanent"), this))
    , m_temporary(new QRadioButton(tr("temporary"), this))
    , m_owner(new QLineEdit(this))
    , m_due(new DateField(tr("Due"), this))
    , m_cureHours(new QSpinBox(this))
    , m_disturbed(new QLineEdit(this))
    , m_note(new QLineEdit(this))
    , m_photos(new PhotoStrip(session, this))
    , m_caution(new QLabel(this))
    , m_complaint(new QLabel(this))
    , m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setWindowTitle(tr("Repair at %1").arg(numbersOf(m_job, m_points)));
    setMinimumWidth(520);
    for (QComboBox* box : {m_defect, m_action}) {
        box->setEditable(true);
        box->addItem(QString());
    }
    addWords(m_defect, analysis::defectWords());
    addWords(m_action, analysis::actionWords());
    m_defect->setObjectName(QStringLiteral("defect"));
    m_action->setObjectName(QStringLiteral("action"));
    m_permanent->setChecked(true);
    m_owner->setObjectName(QStringLiteral("owner"));
    m_due->setDate(QDate::currentDate().addDays(30));
    m_due->field()->setObjectName(QStringLiteral("due"));
    connect(m_due, &DateField::edited, this, &RepairDialog::refresh);
    m_doneBy->setObjectName(QStringLiteral("doneBy"));
    m_doneBy->setText(session.logger());
    m_torque->setObjectName(QStringLiteral("torque"));
    m_torque->setPlaceholderText(tr("such as 12 N m, in three steps crosswise"));
    m_cureHours->setObjectName(QStringLiteral("cureHours"));
    m_cureHours->setAccessibleName(tr("May be sprayed after, hours"));
    m_cureHours->setRange(0, 24 * 30);
    m_cureHours->setSuffix(tr(" h"));
    m_disturbed->setText(numbersOf(m_job, alsoToSpray()));
    m_disturbed->setObjectName(QStringLiteral("disturbed"));
    connect(m_disturbed, &QLineEdit::textChanged, this, &RepairDialog::refresh);
    m_caution->setWordWrap(true);
    m_complaint->setWordWrap(true);
    m_buttons->button(QDialogButtonBox::Ok)->setText(tr("Store and open round"));

    auto* form = new QFormLayout;
    form->addRow(tr("&Defect seen"), m_defect);
    form->addRow(tr("&What was done"), m_action);
    form->addRow(tr("&Parts, material"), m_material);
    form->addRow(tr("Done &by"), m_doneBy);
    if (isBolted())
        form->addRow(tr("&Torque"), m_torque);
    else
        m_torque->hide();
    auto* lasting = new QHBoxLayout;
    lasting->addWidget(m_permanent);
    lasting->addWidget(m_temporary);
    lasting->addStretch();
    form->addRow(tr("Lasting"), lasting);
    auto* dueWord = new QLabel(tr("D&ue"), this);
    dueWord->setBuddy(m_due->field());
    auto* owner = new QHBoxLayout;
    owner->addWidget(m_owner, 1);
    owner->addSpacing(8);
    owner->addWidget(dueWord);
    owner->addWidget(m_due);
    auto* ownerWord = new QLabel(tr("&Owner"), this);
    ownerWord->setBuddy(m_owner);
    form->addRow(ownerWord, owner);
    form->addRow(tr("May be sprayed &after"), m_cureHours);
    form->addRow(tr("Spray again &too"), m_disturbed);
    form->addRow(tr("&Note"), m_note);
    form->addRow(tr("P&hotos"), m_photos);
    m_caution->setProperty("role", QStringLiteral("caution"));
    m_caution->setContentsMargins(8, 6, 8, 6);
    // Room for what most actions bring, so that the buttons do not move away from the pointer as one is
    // typed.
    constexpr int kUsualLines = 4;
    m_caution->setMinimumHeight(kUsualLines * m_caution->fontMetrics().lineSpacing() + 12);
    m_caution->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_complaint->setMinimumHeight(m_complaint->fontMetrics().lineSpacing());
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_caution);
    column->addWidget(m_complaint);
    column->addStretch();
    column->addWidget(m_buttons);

    connect(m_defect, &QComboBox::currentTextChanged, this, &RepairDialog::refresh);
    connect(m_action, &QComboBox::currentTextChanged, this, [this] {
        proposeForAction();
        refresh();
    });
    connect(m_cureHours, &QSpinBox::valueChanged, this, &RepairDialog::refresh);
    connect(m_owner, &QLineEdit::textChanged, this, &RepairDialog::refresh);
    connect(m_temporary, &QRadioButton::toggled, this, &RepairDialog::refresh);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &RepairDialog::tryAccept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    refresh();
}

bool RepairDialog::mendsSetup() const
{
    return std::any_of(m_points.begin(), m_points.end(),
                       [this](model::PointId id) { return m_job.sketch.isOfSetup(id); });
}

std::vector<model::PointId> RepairDialog::alsoToSpray() const
{
    const auto isIn = [](const std::vector<model::PointId>& list, model::PointId point) {
        return std::find(list.begin(), list.end(), point) != list.end();
    };
    std::vector<model::PointId> points = analysis::disturbedBy(m_job.sketch, m_points);
    for (const analysis::PointFinding& finding : m_session.asLeft()) {
        const bool hidden = finding.finding == analysis::Finding::Masked &&
                            std::any_of(finding.of.begin(), finding.of.end(),
                                        [&](auto leak) { return isIn(m_points, leak); });
        // What answered while a joint of the set-up leaked may have been its leak.
        const bool readThrough = mendsSetup() && finding.asRead && !m_job.sketch.isOfSetup(finding.point);
        if ((hidden || readThrough) && !isIn(m_points, finding.point) && !isIn(points, finding.point))
            points.push_back(finding.point);
    }
    return points;
}

bool RepairDialog::isBolted() const
{
    return std::any_of(m_points.begin(), m_points.end(), [this](model::PointId id) {
        const model::Joint* joint = m_job.sketch.jointOf(id);
        if (joint == nullptr)
            return false;
        switch (joint->kind) {
        case model::JointKind::WeldSeam:
        case model::JointKind::BrazedJoint:
        case model::JointKind::Hose:
        case model::JointKind::Bellows:
            return false;
        default:
            return true;
        }
    });
}

/// What usually goes with an action; what was chosen otherwise for it can be chosen again.
void RepairDialog::proposeForAction()
{
    if (m_known)
        return;
    const std::string action = wordOf(m_action);
    (analysis::holdsForATime(action) ? m_temporary : m_permanent)->setChecked(true);
    m_cureHours->setValue(analysis::usualCureHours(action).value_or(0));
}

/// As high as its cautions need at this width; a form gives wrapped text too little by itself.
void RepairDialog::fit()
{
    if (layout() == nullptr)
        return;
    layout()->activate();
    const int most = screen()->availableSize().height() - kTitleBar;
    setMinimumHeight(std::clamp(layout()->totalHeightForWidth(width()), 0, std::max(0, most)));
}

void RepairDialog::resizeEvent(QResizeEvent* event)
{
    QDialog::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        fit();
}

void RepairDialog::fill()
{
    const auto text = [](const std::string& words) { return QString::fromStdString(words); };
    m_defect->setCurrentText(render::repairInWords(m_known->defect));
    m_action->setCurrentText(render::repairInWords(m_known->action));
    m_material->setText(text(m_known->material));
    m_permanent->setChecked(m_known->permanent);
    m_temporary->setChecked(!m_known->permanent);
    m_owner->setText(text(m_known->owner));
    if (m_known->due)
        m_due->setDate(QDate::fromString(text(m_known->due->date()), Qt::ISODate));
    if (m_known->sprayableFrom)
        m_cureHours->setValue(qRound(m_known->sprayableFrom->secondsSince(m_known->at) / 3600.0));
    m_disturbed->setText(numbersOf(m_job, m_known->disturbed));
    const analysis::RepairNote note = analysis::readNote(m_known->note);
    m_doneBy->setText(text(note.doneBy.empty() ? m_known->by : note.doneBy));
    m_torque->setText(text(note.torque));
    m_note->setText(text(note.text));
    m_photos->setPhotos(m_known->pictures);
    m_buttons->button(QDialogButtonBox::Ok)->setText(tr("Store"));
    refresh();
}

void RepairDialog::refresh()
{
    const std::string action = wordOf(m_action);
    QStringList cautions;
    for (const std::string& sentence : analysis::repairCautions(action))
        cautions << render::inWords(sentence);
    std::vector<model::Repair> before = m_job.repairs;
    for (const storage::OpenRepair& left : m_session.repairsLeftOpen())
        before.push_back(left.repair);
    if (!m_known && analysis::isTightenedAgain(m_job.sketch, before, m_points, action))
        cautions.prepend(
            tr("This joint was tightened before. Is the cause known? Force does not seal a nick or a hair."));
    m_caution->setText(cautions.join(QLatin1Char('\n')));
    const bool temporary = m_temporary->isChecked();
    m_owner->setEnabled(temporary);
    m_due->setEnabled(temporary);
    QString complaint;
    if (m_defect->currentText().trimmed().isEmpty())
        complaint = tr("Say what was seen, or \"nothing seen\".");
    else if (action.empty())
        complaint = tr("Say what was done.");
    else if (temporary && (m_owner->text().trimmed().isEmpty() || !m_due->date()))
        complaint = tr("A temporary repair needs an owner and a date.");
    else if (analysis::usualCureHours(action) && m_cureHours->value() == 0)
        complaint = tr("A filler cures before it is sprayed: how many hours?");
    else if (const auto again = model::readPointNumbers(m_job.sketch, m_disturbed->text().toStdString());
             !again)
        complaint = tr("Spray again too: %1.").arg(render::inWords(again.error()));
    m_complaint->setText(complaint);
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(complaint.isEmpty());
    fit();
}

void RepairDialog::tryAccept()
{
    m_due->commit(); // Enter and the button's key leave the cursor where it is
    refresh();
    if (m_temporary->isChecked() && (m_due->isWrong() || !m_due->date()))
        m_due->field()->setFocus();
    else if (m_buttons->button(QDialogButtonBox::Ok)->isEnabled())
        accept();
}

model::Repair RepairDialog::repair() const
{
    constexpr std::int64_t kMillisecondsPerHour = 3'600'000;
    model::Repair repair = m_known.value_or(model::Repair{});
    repair.points = m_points;
    repair.disturbed.clear();
    repair.owner.clear();
    repair.due.reset();
    repair.sprayableFrom.reset();
    // Unreadable ones never come here: the dialog does not close on them.
    for (const model::PointId point : model::readPointNumbers(m_job.sketch, m_disturbed->text().toStdString())
                                          .value_or(std::vector<model::PointId>()))
        if (std::find(m_points.begin(), m_points.end(), point) == m_points.end())
            repair.disturbed.push_back(point);
    repair.defect = wordOf(m_defect);
    repair.action = wordOf(m_action);
    repair.material = m_material->text().trimmed().toStdString();
    repair.permanent = m_permanent->isChecked();
    if (!repair.permanent) {
        repair.owner = m_owner->text().trimmed().toStdString();
        const QDate day = m_due->date().value_or(QDate()); // the dialog does not close without one
        if (const auto due = Timestamp::parseDate(day.toString(Qt::ISODate).toStdString()))
            repair.due = *due;
    }
    if (m_cureHours->value() > 0) {
        Timestamp from = m_known ? m_known->at : Timestamp::now();
        from.utcMilliseconds += m_cureHours->value() * kMillisecondsPerHour;
        repair.sprayableFrom = from;
    }
    // Who logs it stands in the record anyway.
    const std::string logger = (m_known ? m_known->by : m_session.logger().toStdString());
    const std::string doneBy = m_doneBy->text().trimmed().toStdString();
    repair.note = analysis::noteText({doneBy == logger ? std::string() : doneBy,
                                      m_torque->text().trimmed().toStdString(),
                                      m_note->text().trimmed().toStdString()});
    repair.pictures = m_photos->photos();
    return repair;
}

} // namespace sealwalk::ui
