// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/calibration_dialog.h"

#include "core/analysis/job_view.h"
#include "ui/prepare/shown.h"
#include "ui/render/core_words.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/moment_field.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/person_field.h"
#include "ui/widgets/quantity_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTime>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimeZone>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kField = 150;
constexpr double kMilliseconds = 1000.0;

Unit unitNamed(const char* id)
{
    return readUnit(id).value();
}

Timestamp stampOf(QDate date)
{
    return Timestamp{QDateTime(date, QTime(0, 0), QTimeZone::utc()).toMSecsSinceEpoch(), 0};
}

std::optional<QDate> dateOf(const std::optional<Timestamp>& stamp)
{
    if (!stamp || !stamp->isSet())
        return std::nullopt;
    return QDate::fromString(text(stamp->date()), Qt::ISODate);
}

} // namespace

CalibrationDialog::CalibrationDialog(const model::Job& job, const std::optional<model::Job>& before,
                                     const QString& logger, QWidget* parent)
    : QDialog(parent)
    , m_job(job)
{
    setObjectName(QStringLiteral("calibrationDialog"));
    setWindowTitle(tr("Reference leak"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 8, 20, 16);
    column->setSpacing(0);
    buildLeak(*column);
    buildReading(*column);
    m_by = new PersonField(tr("who read it"), this);
    m_by->setPerson(logger);
    column->addWidget(formRow(tr("By"), {m_by}, this));
    m_follows = new QLabel(this);
    m_follows->setObjectName(QStringLiteral("follows"));
    m_follows->setWordWrap(true);
    m_follows->setMinimumHeight(3 * m_follows->fontMetrics().lineSpacing() +
                                4); // what follows is three lines
    column->addWidget(m_follows);
    auto* buttons = new QDialogButtonBox(this);
    QPushButton* keep = buttons->addButton(tr("Store the check"), QDialogButtonBox::AcceptRole);
    keep->setObjectName(QStringLiteral("store"));
    setStyleProperty(keep, "kind", QStringLiteral("primary"));
    keep->setDefault(true);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &CalibrationDialog::tryAccept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    showLast(before);
    showFactor();
    (m_value->si() ? m_background : m_value)->setFocus(); // the first field that is new each time
}

QuantityEdit* CalibrationDialog::edit(const QString& name, const Unit& unit)
{
    auto* field = new QuantityEdit(name, unit, this);
    field->setFieldWidth(kField);
    field->setFlowBasis(basisOf(m_job.setup));
    connect(field, &QuantityEdit::edited, this, &CalibrationDialog::showFactor);
    return field;
}

void CalibrationDialog::buildLeak(QVBoxLayout& column)
{
    m_leakHeading = new Heading(tr("The reference leak"), tr("as its certificate says"), this);
    column.addWidget(m_leakHeading);
    m_serial = new QLineEdit(this);
    m_serial->setAccessibleName(tr("serial number"));
    m_certificate = new QLineEdit(this);
    m_certificate->setAccessibleName(tr("certificate"));
    column.addWidget(
        formRow(tr("Serial"), {m_serial, quietLabel(tr("certificate"), this), m_certificate}, this));
    m_value = edit(tr("certified value"), shownUnit(m_job.setup));
    m_value->setObjectName(QStringLiteral("value"));
    m_value->setRange({.above = 0.0});
    m_certifiedAt = edit(tr("certified at temperature"), unitNamed("degC"));
    m_certifiedAt->setSi(degreesCelsius(23.0).si());
    column.addWidget(
        formRow(tr("Value"), {m_value, quietLabel(tr("helium, at"), this), m_certifiedAt}, this));
    m_date = new DateField(tr("date of the certificate"), this);
    m_due = new DateField(tr("due again"), this);
    connect(m_date, &DateField::edited, this, &CalibrationDialog::showFactor);
    column.addWidget(formRow(tr("Dated"), {m_date, quietLabel(tr("due again"), this), m_due}, this));
    m_coefficient = new QuantityEdit(tr("change per kelvin"), tr("1/K"), this);
    m_coefficient->setRange({.atLeast = -0.1, .atMost = 0.1});
    m_coefficient->setFieldWidth(kField);
    m_coefficient->setSi(0.03);
    connect(m_coefficient, &QuantityEdit::edited, this, &CalibrationDialog::showFactor);
    m_linear = new QCheckBox(tr("linear, as the certificate says"), this);
    connect(m_linear, &QCheckBox::toggled, this, &CalibrationDialog::showFactor);
    column.addWidget(formRow(tr("Per kelvin"), {m_coefficient, quietLabel(tr("1/K"), this), m_linear}, this));
    m_loss = edit(tr("loss per year"), unitNamed("%"));
    m_loss->setRange({.atLeast = 0.0, .atMost = 0.99});
    m_loss->setSi(0.02);
    m_uncertainty = edit(tr("standard uncertainty"), unitNamed("%"));
    m_uncertainty->setSi(0.05);
    column.addWidget(
        formRow(tr("Loss per year"), {m_loss, quietLabel(tr("uncertain by"), this), m_uncertainty}, this));
}

void CalibrationDialog::buildReading(QVBoxLayout& column)
{
    column.addWidget(new Heading(tr("The check"), tr("as the display shows it"), this));
    m_kind = new QComboBox(this);
    m_kind->setAccessibleName(tr("where the leak sits"));
    m_kind->addItems({tr("on the object, through the whole set-up"), tr("at the detector's inlet")});
    m_moment = new QComboBox(this);
    m_moment->setAccessibleName(tr("when"));
    m_moment->addItems({tr("before the walk"), tr("during the walk"), tr("after the walk")});
    m_moment->setCurrentIndex(m_job.readings.empty() ? 0 : 2);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &CalibrationDialog::showFactor);
    column.addWidget(formRow(tr("The leak sits"), {m_kind, m_moment}, this));
    m_measured = new MomentField(tr("when it was measured"), this);
    column.addWidget(formRow(tr("Measured"), {m_measured}, this));
    m_place = new QLineEdit(this);
    m_place->setAccessibleName(tr("place"));
    m_place->setPlaceholderText(tr("farthest from the detector"));
    m_joint = new QComboBox(this);
    m_joint->setAccessibleName(tr("serves which joint"));
    m_joint->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_joint->setMinimumContentsLength(15);
    m_joint->addItem(tr("joints without their own"));
    for (const model::Joint& joint : m_job.sketch.joints)
        m_joint->addItem(text(joint.name));
    column.addWidget(formRow(tr("Place"), {m_place, quietLabel(tr("for"), this), m_joint}, this));
    m_background = edit(tr("shown with the leak shut"), displayUnit(m_job.setup));
    m_background->setRange({.atLeast = 0.0});
    m_shown = edit(tr("shown with the leak open"), displayUnit(m_job.setup));
    m_shown->setObjectName(QStringLiteral("shown"));
    m_shown->setRange({.above = 0.0});
    column.addWidget(formRow(tr("Shut"), {m_background, quietLabel(tr("open"), this), m_shown}, this));
    m_response = edit(tr("response to 63 %"), unitNamed("s"));
    m_response->setRange({.above = 0.0});
    m_response->setToolTip(tr("the time constant: until the display shows 63 % of where it ends"));
    m_clockButton = new QPushButton(tr("Leak &open: start the clock"), this);
    m_clockButton->setShortcut(QKeySequence(Qt::ALT | Qt::Key_L));
    connect(m_clockButton, &QPushButton::clicked, this, &CalibrationDialog::toggleClock);
    column.addWidget(formRow(tr("Response, 63 %"), {m_response, m_clockButton}, this));
    m_cleanUp = edit(tr("clean-up time"), unitNamed("s"));
    m_cleanUp->setRange({.above = 0.0});
    m_room = edit(tr("room temperature"), unitNamed("degC"));
    m_room->setSi(m_job.setup.roomTemperature.si());
    column.addWidget(formRow(tr("Clean-up"), {m_cleanUp, quietLabel(tr("room"), this), m_room}, this));
    m_note = new QLineEdit(this);
    m_note->setObjectName(QStringLiteral("note"));
    m_note->setAccessibleName(tr("remark"));
    m_note->setPlaceholderText(m_job.standingCalibrations().empty()
                                   ? tr("anything a reviewer should know")
                                   : tr("what was changed since the last check"));
    column.addWidget(formRow(tr("Remark"), {m_note}, this));
}

void CalibrationDialog::showLast(const std::optional<model::Job>& before)
{
    if (const auto standing = m_job.standingCalibrations(); !standing.empty()) {
        showLeak(*standing.back());
        return;
    }
    if (!before || before->standingCalibrations().empty())
        return;
    showLeak(*before->standingCalibrations().back());
    m_leakHeading->setAside(tr("as in job %1; compare it with its certificate").arg(before->number));
}

void CalibrationDialog::showLeak(const model::Calibration& last)
{
    const model::ReferenceLeak& leak = last.leak;
    m_serial->setText(text(leak.serial));
    m_certificate->setText(text(leak.certificate));
    m_value->setSi(leak.value.si());
    m_date->setDate(dateOf(leak.certificateDate));
    m_due->setDate(dateOf(leak.dueDate));
    m_certifiedAt->setSi(leak.certificateTemperature.si());
    m_coefficient->setSi(leak.temperatureCoefficient);
    m_linear->setChecked(!leak.exponential);
    m_loss->setSi(leak.lossPerYear);
    m_uncertainty->setSi(leak.relativeUncertainty);
    m_kind->setCurrentIndex(last.kind == model::CalibrationKind::SystemCheck ? 0 : 1);
    m_place->setText(text(last.place));
    m_place->setCursorPosition(0); // its beginning is what tells places apart
    for (std::size_t i = 0; i < m_job.sketch.joints.size(); ++i)
        if (last.joints.size() == 1 && last.joints.front() == m_job.sketch.joints[i].id)
            m_joint->setCurrentIndex(static_cast<int>(i) + 1);
}

model::Calibration CalibrationDialog::calibration() const
{
    model::Calibration check;
    check.id = model::CalibrationId::create();
    check.kind = m_kind->currentIndex() == 0 ? model::CalibrationKind::SystemCheck
                                             : model::CalibrationKind::DetectorCheck;
    check.moment = static_cast<model::CalibrationMoment>(m_moment->currentIndex());
    check.at = m_measured->moment();
    check.note = m_note->text().trimmed().toStdString();
    if (const std::string entered = m_measured->entryWords(); !entered.empty())
        check.note += (check.note.empty() ? "" : "; ") + entered;
    check.leak.serial = m_serial->text().trimmed().toStdString();
    check.leak.certificate = m_certificate->text().trimmed().toStdString();
    check.leak.value = LeakRate::fromSi(m_value->si().value_or(0.0));
    check.leak.entered = m_value->typed().toStdString();
    if (m_date->date())
        check.leak.certificateDate = stampOf(*m_date->date());
    if (m_due->date())
        check.leak.dueDate = stampOf(*m_due->date());
    check.leak.certificateTemperature =
        Temperature::fromSi(m_certifiedAt->si().value_or(degreesCelsius(23.0).si()));
    check.leak.temperatureCoefficient = m_coefficient->si().value_or(0.03);
    check.leak.exponential = !m_linear->isChecked();
    check.leak.lossPerYear = m_loss->si().value_or(0.02);
    check.leak.relativeUncertainty = m_uncertainty->si().value_or(0.05);
    check.roomTemperature = Temperature::fromSi(m_room->si().value_or(m_job.setup.roomTemperature.si()));
    check.shown = LeakRate::fromSi(m_shown->si().value_or(0.0));
    check.background = LeakRate::fromSi(m_background->si().value_or(0.0));
    if (m_response->si())
        check.response = seconds(*m_response->si());
    if (m_cleanUp->si())
        check.cleanUp = seconds(*m_cleanUp->si());
    check.place = m_place->text().trimmed().toStdString();
    if (m_joint->currentIndex() > 0)
        check.joints = {m_job.sketch.joints[static_cast<std::size_t>(m_joint->currentIndex()) - 1].id};
    check.by = m_by->person().toStdString();
    return check;
}

void CalibrationDialog::showFactor()
{
    if (!m_value->si() || !m_shown->si() || !m_date->date()) {
        m_follows->setText(
            tr("Value, date of the certificate and the display with the leak open are needed."));
        return;
    }
    model::Job with = m_job;
    with.calibrations.push_back(calibration());
    const auto views = analysis::checks(with); // in order of time: one typed later may stand before others
    const analysis::CheckView view =
        *std::find_if(views.begin(), views.end(), [&](const analysis::CheckView& each) {
            return each.calibration == with.calibrations.back().id;
        });
    const Unit unit = shownUnit(m_job.setup);
    QStringList lines;
    if (view.reference)
        lines.append((with.calibrations.back().at.date() == Timestamp::now().date()
                          ? tr("The leak gives %1 %2 today.")
                          : tr("The leak gave %1 %2 on that day."))
                         .arg(richRate(*view.reference, unit, m_job.setup), unitText(unit)));
    if (view.factor)
        lines.append(tr("The display shows %1 of a leak: one shown is <b>%2</b> on the chamber.")
                         .arg(localised(roundedText(view.factor->factor, 3)),
                              localised(roundedText(view.factor->coefficient, 3))));
    for (const std::string& note : view.notes)
        lines.append(render::inSentence(note).toHtmlEscaped());
    m_follows->setText(lines.join(QStringLiteral("<br>")));
}

void CalibrationDialog::toggleClock()
{
    if (!m_clock.isValid()) {
        m_clock.start();
        m_clockButton->setText(tr("63 % reached: stop the clock"));
        return;
    }
    m_response->setSi(static_cast<double>(m_clock.elapsed()) / kMilliseconds);
    m_clock.invalidate();
    m_clockButton->setText(tr("Leak &open: start the clock"));
    showFactor();
}

void CalibrationDialog::tryAccept()
{
    for (QuantityEdit* field : findChildren<QuantityEdit*>()) {
        field->commit();
        if (field->isWrong()) {
            field->setFocus();
            return;
        }
    }
    m_measured->commit();
    if (m_measured->isWrong()) {
        m_measured->field()->setFocus();
        return;
    }
    for (DateField* field : {m_date, m_due}) {
        field->commit();
        if (field->isWrong()) {
            field->setFocus();
            return;
        }
    }
    showFactor();
    for (QWidget* needed : {static_cast<QWidget*>(m_value->si() ? nullptr : m_value),
                            static_cast<QWidget*>(m_date->date() ? nullptr : m_date),
                            static_cast<QWidget*>(m_shown->si() ? nullptr : m_shown)})
        if (needed != nullptr) {
            needed->setFocus();
            return;
        }
    accept();
}

} // namespace sealwalk::ui
