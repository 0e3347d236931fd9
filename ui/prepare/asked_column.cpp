// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/asked_column.h"

#include "ui/prepare/kind_limits_dialog.h"
#include "ui/prepare/papers_dialog.h"
#include "ui/prepare/setup_binder.h"
#include "ui/prepare/shown.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kWide = 130;
constexpr int kVolume = 150; // where nothing is typed the object's stands, in words
constexpr int kMiddle = 104;

QLineEdit* lineEdit(const QString& name, QWidget* parent)
{
    auto* edit = new QLineEdit(parent);
    edit->setAccessibleName(name);
    return edit;
}

} // namespace

AskedColumn::AskedColumn(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_binder = new SetupBinder(session, this);
    connect(m_binder, &SetupBinder::failed, this, &AskedColumn::failed);
    connect(m_binder, &SetupBinder::limitTold, this, &AskedColumn::limitTold);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 4, 16, 16);
    column->setSpacing(0);
    buildObject(*column);
    buildLimits(*column);
    buildDetector(*column);
    buildHelium(*column);
    column->addStretch(1);
}

QuantityEdit* AskedColumn::quantity(const QString& name, const char* unit, int width)
{
    auto* edit = new QuantityEdit(name, readUnit(unit).value(), this);
    edit->setFieldWidth(width);
    edit->setRange({.above = 0.0});
    connect(edit->field(), &QLineEdit::returnPressed, this, [this, edit] { focusNextEmpty(edit); });
    return edit;
}

QuantityEdit* AskedColumn::number(const QString& name, const QString& suffix, int width)
{
    auto* edit = new QuantityEdit(name, suffix, this);
    edit->setFieldWidth(width);
    edit->setRange({.above = 0.0});
    return edit;
}

void AskedColumn::buildObject(QVBoxLayout& column)
{
    column.addWidget(new Heading(tr("Object and purpose"), tr("changed here, kept at once"), this));
    m_object = new QLabel(this);
    m_object->setProperty("role", QStringLiteral("strong"));
    column.addWidget(formRow(tr("Test object"), {m_object}, this));
    QLineEdit* customer = lineEdit(tr("customer"), this);
    m_binder->bind(customer, &model::Setup::customer);
    auto* papers = new QPushButton(tr("Papers …"), this);
    papers->setObjectName(QStringLiteral("papers"));
    papers->setToolTip(
        tr("Witness, procedure, drawing, what is left out, other instruments: for the report"));
    connect(papers, &QPushButton::clicked, this, &AskedColumn::askPapers);
    column.addWidget(formRow(tr("Customer"), {customer, papers}, this));
    QLineEdit* purpose = lineEdit(tr("purpose"), this);
    m_binder->bind(purpose, &model::Setup::purpose);
    column.addWidget(formRow(tr("Purpose"), {purpose}, this));
    QLineEdit* touched = lineEdit(tr("last touched"), this);
    touched->setPlaceholderText(tr("what was worked on last: look there first"));
    m_binder->bind(touched, &model::Setup::lastTouched);
    column.addWidget(formRow(tr("Last touched"), {touched}, this));
    m_volume = quantity(tr("volume"), "l", kVolume);
    m_binder->bind(m_volume, &model::Setup::volume);
    QuantityEdit* room = quantity(tr("room temperature"), "degC", kMiddle);
    room->setRange({});
    m_binder->bind(
        room, [](const model::Setup& setup) { return std::optional(setup.roomTemperature.si()); },
        [](model::Setup& setup, std::optional<double> si) {
            setup.roomTemperature = si ? Temperature::fromSi(*si) : degreesCelsius(20.0);
        });
    column.addWidget(formRow(tr("Volume"), {m_volume, quietLabel(tr("room"), this), room}, this));
    QLineEdit* state = lineEdit(tr("condition of the object"), this);
    state->setPlaceholderText(tr("cleaned, dried, valves, temperature"));
    m_binder->bind(state, &model::Setup::objectState);
    column.addWidget(formRow(tr("Condition"), {state}, this));
}

void AskedColumn::buildLimits(QVBoxLayout& column)
{
    column.addWidget(new Heading(tr("Limits"), tr("before the first reading"), this));
    QuantityEdit* one = quantity(tr("limit for one joint"), "mbar l/s", kWide);
    one->setObjectName(QStringLiteral("pointLimit"));
    m_binder->bind(one, &model::Setup::pointLimit);
    one->setToolTip(tr("What no single joint may leak more than, as helium with 1 bar of it outside; as in "
                       "1e-6 or 1e-6 mbar·l/s"));
    auto* kinds = new QPushButton(tr("By kind …"), this);
    kinds->setToolTip(tr("A limit of its own for O-ring seals, welds, hoses …"));
    connect(kinds, &QPushButton::clicked, this, &AskedColumn::askKindLimits);
    column.addWidget(formRow(tr("One joint"), {one, quietLabel(tr("helium"), this), kinds}, this));
    m_kindLimits = quietLabel({}, this, QStringLiteral("caption"));
    m_kindLimits->setWordWrap(true);
    column.addWidget(m_kindLimits);
    QuantityEdit* all = quantity(tr("limit for all together"), "mbar l/s", kWide);
    m_binder->bind(all, &model::Setup::totalLimit);
    all->setToolTip(tr("What all leaks together may let in, as air; from the largest pressure rise allowed, "
                       "or from the base pressure wanted"));
    column.addWidget(formRow(tr("All together"), {all, quietLabel(tr("as air"), this)}, this));
    m_wanted = quantity(tr("base pressure wanted"), "mbar", kWide);
    connect(m_wanted, &QuantityEdit::edited, this, [this](std::optional<double> si) {
        model::TestObject object = m_session.object();
        object.wantedPressure = si ? std::optional(Pressure::fromSi(*si)) : std::nullopt;
        if (const Status stored = m_session.changeObject(m_session.object(), object); !stored)
            emit failed(stored.error());
    });
    column.addWidget(formRow(tr("Base pressure"), {m_wanted, quietLabel(tr("wanted"), this)}, this));
    QLineEdit* agreed = lineEdit(tr("who agreed the limit"), this);
    m_binder->bind(agreed, &model::Setup::limitAgreedBy);
    column.addWidget(formRow(tr("Agreed by"), {agreed}, this));
    m_rates = {one, all};
    m_required = {m_volume, one};
}

void AskedColumn::buildDetector(QVBoxLayout& column)
{
    column.addWidget(new Heading(tr("Detector"), {}, this));
    QLineEdit* detector = lineEdit(tr("detector"), this);
    detector->setPlaceholderText(tr("its number, not its maker"));
    m_binder->bind(detector, &model::Setup::detector);
    m_asBefore = new QPushButton(tr("As last time"), this);
    m_asBefore->setObjectName(QStringLiteral("asBefore"));
    m_asBefore->setToolTip(
        tr("Customer, detector, connection, display, range, speeds and hose of the job before; "
           "what was measured is measured anew"));
    connect(m_asBefore, &QPushButton::clicked, this, &AskedColumn::takeDetectorOfJobBefore);
    column.addWidget(formRow(tr("Detector"), {detector, m_asBefore}, this));
    m_connection = new QComboBox(this);
    m_connection->setEditable(true);
    m_connection->setAccessibleName(tr("where it is connected"));
    m_connection->addItems(
        {tr("at the object, alone"), tr("foreline, pump in parallel"), tr("foreline, alone")});
    m_connection->setCurrentIndex(-1); // nothing is chosen yet: Down takes the first
    m_binder->bind(m_connection->lineEdit(), &model::Setup::connection);
    connect(m_connection, &QComboBox::activated, this, [this] {
        const std::string chosen = m_connection->currentText().toStdString();
        m_binder->change([&](model::Setup& setup) { setup.connection = chosen; });
    });
    column.addWidget(formRow(tr("Connected"), {m_connection}, this));
    m_displayUnit = new QComboBox(this);
    m_displayUnit->setAccessibleName(tr("unit of the display"));
    for (const LeakRateUnit unit : allLeakRateUnits())
        m_displayUnit->addItem(text(unitOf(unit).symbol), text(std::string(idOf(unit))));
    connect(m_displayUnit, &QComboBox::activated, this, [this](int index) {
        const std::string id = m_displayUnit->itemData(index).toString().toStdString();
        m_binder->change([&](model::Setup& setup) { setup.detectorUnit = id; });
    });
    column.addWidget(formRow(tr("Display shows"), {m_displayUnit}, this));
    m_rangeBottom = quantity(tr("lowest value it shows"), "mbar l/s", kWide);
    m_binder->bind(m_rangeBottom, &model::Setup::rangeBottom);
    m_rangeBottom->setToolTip(
        tr("The lowest value the detector shows as it is connected; below it nothing is told from zero"));
    m_rangeTop = quantity(tr("highest value it shows"), "mbar l/s", kWide);
    m_binder->bind(m_rangeTop, &model::Setup::rangeTop);
    m_rangeTop->setToolTip(
        tr("The highest value the detector shows; what is above it is stored as \"above\""));
    column.addWidget(formRow(tr("Range"), {m_rangeBottom, quietLabel(tr("to"), this), m_rangeTop}, this));
    QuantityEdit* speed = quantity(tr("helium speed of the detector"), "l/s", kMiddle);
    m_binder->bind(speed, &model::Setup::detectorSpeed);
    speed->setToolTip(tr("Pumping speed of the detector for helium at its inlet, from its sheet, as in 2.5 "
                         "l/s; empty: share and response are not worked out"));
    QuantityEdit* parallel = quantity(tr("helium speed of the pump in parallel"), "l/s", kMiddle);
    parallel->setRange({.atLeast = 0.0});
    parallel->setToolTip(tr("Pumping speed for helium of the pump that runs beside the detector, where both "
                            "draw from the same line; 0: none runs"));
    m_binder->bind(parallel, &model::Setup::auxiliarySpeed);
    column.addWidget(formRow(tr("Speeds"), {speed, quietLabel(tr("in parallel"), this), parallel}, this));
    QuantityEdit* bore = quantity(tr("bore of the hose"), "mm", kMiddle);
    m_binder->bind(bore, &model::Setup::hoseDiameter);
    bore->setToolTip(tr("Inner diameter of the hose between object and detector, as in 16 mm"));
    QuantityEdit* length = quantity(tr("length of the hose"), "m", kMiddle);
    m_binder->bind(length, &model::Setup::hoseLength);
    length->setToolTip(tr("Length of the hose between object and detector, as in 1.5 m"));
    column.addWidget(formRow(tr("Hose"), {bore, quietLabel(tr("bore, long"), this), length}, this));
    QuantityEdit* line = quantity(tr("pressure in the hose"), "mbar", kMiddle);
    m_binder->bind(line, &model::Setup::linePressure);
    line->setToolTip(tr("Pressure in that hose while spraying, as in 1e-2 mbar: the lower, the slower helium "
                        "passes a narrow hose"));
    QuantityEdit* response = quantity(tr("response time, if it is to be typed"), "s", kMiddle);
    m_binder->bind(response, &model::Setup::response);
    response->setToolTip(tr("Seconds from helium on to 63 % of the value; empty: as measured with the "
                            "reference leak, else as worked out from volume and speeds"));
    column.addWidget(
        formRow(tr("In the hose"), {line, quietLabel(tr("time constant"), this), response}, this));
}

void AskedColumn::buildHelium(QVBoxLayout& column)
{
    column.addWidget(new Heading(tr("Helium"), {}, this));
    QuantityEdit* share = quantity(tr("helium share at the joint"), "%", kMiddle);
    share->setRange({.above = 0.0, .atMost = 1.0});
    share->setToolTip(tr("Share of helium in what is sprayed or stands in the bag, as in 100 % or 20 %"));
    m_binder->bind(
        share, [](const model::Setup& setup) { return std::optional(setup.heliumShare.si()); },
        [](model::Setup& setup, std::optional<double> si) {
            setup.heliumShare = fraction(si.value_or(1.0));
        });
    QuantityEdit* flow = number(tr("helium flow"), tr("l/min"), kMiddle);
    m_binder->bind(
        flow, [](const model::Setup& setup) { return setup.heliumFlow; },
        [](model::Setup& setup, std::optional<double> value) { setup.heliumFlow = value; });
    flow->setToolTip(tr("Flow from the spray probe: for the helium that the round will take"));
    column.addWidget(formRow(
        tr("Share"), {share, quietLabel(tr("flow"), this), flow, quietLabel(tr("l/min"), this)}, this));
    QuantityEdit* path = quantity(tr("assumed length of a leak channel"), "mm", kMiddle);
    m_binder->bind(
        path, [](const model::Setup& setup) { return std::optional(setup.leakPath.si()); },
        [](model::Setup& setup, std::optional<double> si) {
            setup.leakPath = si ? Length::fromSi(*si) : millimetres(5.0);
        });
    path->setToolTip(tr(
        "How long a leak channel is taken to be where its size as a hole is told; the width of a seal, say"));
    QuantityEdit* noise = number(tr("times the noise that counts as seen"), {}, kMiddle);
    noise->setRange({.atLeast = 1.0, .atMost = 10.0});
    noise->setToolTip(
        tr("How many times the noise of the background a rise must be to count as a response; 3 is usual"));
    m_binder->bind(
        noise, [](const model::Setup& setup) { return std::optional(setup.noiseFactor); },
        [](model::Setup& setup, std::optional<double> value) { setup.noiseFactor = value.value_or(3.0); });
    column.addWidget(formRow(tr("Leak path"), {path, quietLabel(tr("× noise"), this), noise}, this));
}

void AskedColumn::refresh()
{
    if (!m_session.hasJob())
        return;
    const model::Setup& setup = m_session.job().setup;
    const model::TestObject& object = m_session.object();
    m_object->setText(text(object.tag.empty() ? object.name : object.name + "  " + object.tag));
    for (QuantityEdit* edit : m_rates) {
        edit->setFlowBasis(basisOf(setup));
        edit->setUnit(shownUnit(setup));
    }
    m_rangeTop->setUnit(displayUnit(setup));
    m_rangeBottom->setUnit(displayUnit(setup));
    m_displayUnit->setCurrentIndex(m_displayUnit->findData(text(setup.detectorUnit)));
    m_binder->show();
    m_volume->setPlaceholder(object.volume ? tr("%1 l, the object's").arg(inLitres(*object.volume))
                                           : QStringLiteral("480 l"));
    m_wanted->setSi(object.wantedPressure ? std::optional(object.wantedPressure->si()) : std::nullopt);
    QStringList kinds;
    for (const auto& [kind, limit] : setup.kindLimits)
        kinds.append(QStringLiteral("%1 %2").arg(text(std::string(model::name(kind))),
                                                 plainRate(limit, shownUnit(setup), setup)));
    m_kindLimits->setText(kinds.join(QStringLiteral(" · ")));
    m_kindLimits->setVisible(!kinds.isEmpty());
    m_asBefore->setVisible(isDetectorOpen() && m_session.jobBeforeExists());
    setEnabled(m_session.job().isOpenForWork());
}

/// Nothing said of the detector yet, and nothing read with it.
bool AskedColumn::isDetectorOpen() const
{
    const model::Setup& setup = m_session.job().setup;
    return setup.detector.empty() && setup.connection.empty() && m_session.job().readings.empty();
}

void AskedColumn::takeDetectorOfJobBefore()
{
    const auto before = m_session.jobBefore();
    if (!before)
        return;
    m_binder->change([&](model::Setup& setup) {
        const model::Setup& last = before->setup;
        if (setup.customer.empty())
            setup.customer = last.customer;
        setup.detector = last.detector;
        setup.connection = last.connection;
        setup.detectorUnit = last.detectorUnit;
        setup.rangeBottom = last.rangeBottom;
        setup.rangeTop = last.rangeTop;
        setup.detectorSpeed = last.detectorSpeed;
        setup.auxiliarySpeed = last.auxiliarySpeed;
        setup.hoseDiameter = last.hoseDiameter;
        setup.hoseLength = last.hoseLength;
    });
    m_connection->setFocus(); // the button goes; it is the first that may differ
}

bool AskedColumn::focusNextEmpty(const QWidget* from)
{
    const bool volumeKnown = m_session.hasJob() && m_session.object().volume.has_value();
    bool after = from == nullptr;
    for (int pass = 0; pass < 2; ++pass)
        for (QuantityEdit* edit : m_required) {
            if (after && edit != from && !edit->si() && !(edit == m_volume && volumeKnown)) {
                edit->setFocus();
                return true;
            }
            after = after || edit == from;
        }
    return false;
}

void AskedColumn::askPapers()
{
    PapersDialog dialog(m_session.job().setup, m_session.object(), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    model::TestObject object = m_session.object();
    dialog.applyTo(object);
    if (object != m_session.object())
        if (const Status stored = m_session.changeObject(m_session.object(), object); !stored)
            emit failed(stored.error());
    m_binder->change([&](model::Setup& setup) { dialog.applyTo(setup); });
}

void AskedColumn::askKindLimits()
{
    KindLimitsDialog dialog(m_session.job().setup, m_session.job().sketch, this);
    if (dialog.exec() == QDialog::Accepted)
        m_binder->change([&](model::Setup& setup) { setup.kindLimits = dialog.limits(); });
}

} // namespace sealwalk::ui
