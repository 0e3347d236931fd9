// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/rise_dialog.h"

#include "core/exchange/rise_file.h"
#include "core/report/rate_text.h"
#include "ui/prepare/shown.h"
#include "ui/render/core_words.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/choose_file.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/moment_field.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/quantity_edit.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 500;
constexpr int kHeight = 460;
constexpr qint64 kLargestFile = 64 << 20;
constexpr double kMinute = 60.0; // s, as exactly as a moment is typed

QString spanText(double span)
{
    constexpr double kLong = 120.0; // s
    return span < kLong ? secondsText(seconds(span))
                        : RiseDialog::tr("%1 min").arg(figureText(span / kMinute, 3));
}

} // namespace

RiseDialog::RiseDialog(const model::Job& job, std::optional<Volume> volume, QWidget* parent)
    : QDialog(parent)
    , m_volume(volume)
{
    setObjectName(QStringLiteral("riseDialog"));
    setWindowTitle(tr("Pressure rise"));
    resize(kWidth, kHeight);
    m_test.source = "typed";
    for (const model::Repair& repair : job.repairs)
        m_repaired = std::max(m_repaired, std::optional(repair.at));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 8, 20, 16);
    column->addWidget(new Heading(windowTitle(), tr("the object valved off and left alone"), this));
    QLabel* how = quietLabel(
        tr("Time and pressure, a line each. A head line such as time_s,pressure_mbar says the units "
           "itself; a third column temperature_degC helps."),
        this);
    how->setWordWrap(true);
    column->addWidget(how);
    m_values = new QPlainTextEdit(this);
    m_values->setAccessibleName(tr("record"));
    m_values->setPlaceholderText(QStringLiteral("0  1.0e-5\n1  3.1e-5\n2  5.2e-5"));
    m_values->setTabChangesFocus(true);
    column->addWidget(m_values, 1);
    m_timeUnit = unitBox(tr("unit of time"), {"s", "min", "h"});
    m_pressureUnit = unitBox(tr("unit of pressure"), {"mbar", "Pa", "Torr"});
    m_unitRow =
        formRow(tr("Times in"), {m_timeUnit, quietLabel(tr("pressures in"), this), m_pressureUnit}, this);
    QSizePolicy keeps = m_unitRow->sizePolicy();
    keeps.setRetainSizeWhenHidden(true);
    m_unitRow->setSizePolicy(keeps);
    column->addWidget(m_unitRow);
    auto* file = new QPushButton(tr("From a &file …"), this);
    m_moment = new QComboBox(this);
    m_moment->setAccessibleName(tr("when"));
    m_moment->addItems({tr("as found"), tr("as left"), tr("between repairs")});
    m_moment->setCurrentIndex(job.repairs.empty() ? 0 : 1);
    column->addWidget(formRow(tr("Record"), {file, m_moment}, this));
    m_measured = new MomentField(tr("when the gas was shut in; now: it ends now"), this);
    column->addWidget(formRow(tr("Begun"), {m_measured}, this));
    m_base = new QuantityEdit(tr("pressure before valving off"), readUnit("mbar").value(), this);
    m_base->setRange({.above = 0.0});
    m_base->setToolTip(tr("Pressure reached before the pump was valved off, as in 3e-6 mbar"));
    m_gauge = new QLineEdit(this);
    m_gauge->setAccessibleName(tr("gauge"));
    column->addWidget(formRow(tr("Base pressure"), {m_base, quietLabel(tr("gauge"), this), m_gauge}, this));
    m_says = makeBelowField(this);
    keepRoom(m_says); // or the buttons move away under the mouse
    column->addWidget(m_says);
    auto* buttons = new QDialogButtonBox(this);
    m_keep = buttons->addButton(tr("Store the record"), QDialogButtonBox::AcceptRole);
    m_keep->setObjectName(QStringLiteral("store"));
    setStyleProperty(m_keep, "kind", QStringLiteral("primary"));
    m_keep->setEnabled(false);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    column->addWidget(buttons);
    connect(m_values, &QPlainTextEdit::textChanged, this, &RiseDialog::read);
    connect(file, &QPushButton::clicked, this, &RiseDialog::takeFile);
    connect(buttons, &QDialogButtonBox::accepted, this, &RiseDialog::tryAccept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_values->setFocus();
}

/// Of numbers without a head line.
QComboBox* RiseDialog::unitBox(const QString& name, std::initializer_list<const char*> units)
{
    auto* box = new QComboBox(this);
    box->setAccessibleName(name);
    for (const char* unit : units)
        box->addItem(QString::fromLatin1(unit));
    connect(box, &QComboBox::currentIndexChanged, this, &RiseDialog::read);
    return box;
}

model::RiseTest RiseDialog::test() const
{
    model::RiseTest test = m_test;
    test.id = model::RiseTestId::create();
    test.at = m_measured->moment();
    if (!m_measured->isTyped() && !test.times.empty()) { // a record that is whole now began before
        constexpr double kMillisecondsPerSecond = 1000.0;
        test.at.utcMilliseconds -=
            std::llround((test.times.back() - test.times.front()) * kMillisecondsPerSecond);
    }
    test.note = m_measured->entryWords();
    test.moment = static_cast<model::TestMoment>(m_moment->currentIndex());
    if (m_base->si())
        test.basePressure = Pressure::fromSi(*m_base->si());
    test.gauge = m_gauge->text().trimmed().toStdString();
    return test;
}

void RiseDialog::read()
{
    const QString typed = m_values->toPlainText();
    const std::string written = typed.toStdString();
    const bool hasOwnUnits = !typed.trimmed().isEmpty() && !exchange::isBareRise(written);
    m_unitRow->setVisible(!hasOwnUnits); // the head line says them
    const auto unitIn = [](const QComboBox* box, UnitKind kind) {
        return readUnit(box->currentText().toStdString(), kind).value();
    };
    const auto record =
        exchange::parseRise(written, exchange::RiseUnits{unitIn(m_timeUnit, UnitKind::Times),
                                                         unitIn(m_pressureUnit, UnitKind::Pressures)});
    m_keep->setEnabled(record.has_value());
    if (!record) {
        showComplaint(m_says, m_values,
                      typed.trimmed().isEmpty() ? QString() : render::inWords(record.error()));
        return;
    }
    m_test.times = record->time;
    m_test.pressures = record->pressure;
    m_test.temperatures = record->temperature;
    const double span = record->time.back() - record->time.front();
    QString says =
        tr("%n sample(s) over %1", nullptr, static_cast<int>(record->time.size())).arg(spanText(span));
    if (const double rise = record->pressure.back() - record->pressure.front(); m_volume && rise > 0.0)
        says += tr("; from end to end %1 mbar·l/s of gas come in, leak and walls together")
                    .arg(render::inFigures(report::screenRate(
                        inMillibarLitresPerSecond(pressureRise(*m_volume, pascals(rise), seconds(span))))));
    else if (!m_volume)
        says += tr("; the volume is not stated, so it says nothing of a leak");
    showHint(m_says, m_values, says);
}

void RiseDialog::tryAccept()
{
    m_measured->commit();
    if (m_measured->isWrong()) {
        m_measured->field()->setFocus();
        return;
    }
    m_base->commit();
    if (m_base->isWrong()) {
        m_base->setFocus();
        return;
    }
    const double span = m_test.times.empty() ? 0.0 : m_test.times.back() - m_test.times.front();
    // Left empty it ends now; whether the gas was shut in after the repair is not guessed then.
    const model::RiseTest made = test();
    if (!m_measured->isTyped() && made.moment == model::TestMoment::AsLeft && m_repaired &&
        made.at < *m_repaired) {
        showComplaint(m_says, m_values,
                      tr("Ending now it began at %1, before the repair of %2; say when it was begun.")
                          .arg(QString::fromStdString(made.at.timeOfDay().substr(0, 5)),
                               QString::fromStdString(m_repaired->timeOfDay().substr(0, 5))));
        m_measured->field()->setFocus();
        return;
    }
    if (m_measured->isTyped() && Timestamp::now().secondsSince(m_measured->moment()) < span - kMinute) {
        showComplaint(m_says, m_values,
                      tr("Begun then, a record over %1 is not over yet; right would be an earlier moment.")
                          .arg(secondsText(seconds(span))));
        m_measured->field()->setFocus();
        return;
    }
    accept();
}

void RiseDialog::takeFile()
{
    const QString name =
        chooseFileToOpen(this, tr("A pressure-rise record"), {}, tr("Records (*.csv *.txt);;All files (*)"));
    if (name.isEmpty())
        return;
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargestFile) {
        showComplaint(m_says, m_values, tr("%1 cannot be read: %2").arg(name, file.errorString()));
        return;
    }
    m_test.source = QFileInfo(name).fileName().toStdString();
    m_values->setPlainText(QString::fromUtf8(file.readAll()));
}

} // namespace sealwalk::ui
