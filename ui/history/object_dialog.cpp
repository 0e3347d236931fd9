// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/object_dialog.h"

#include "ui/widgets/below_field.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/quantity_edit.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 520;
constexpr int kQuantityWidth = 170;

template <class Q>
std::optional<double> siOf(const std::optional<Q>& quantity)
{
    return quantity ? std::optional<double>(quantity->si()) : std::nullopt;
}

template <class Q>
std::optional<Q> quantityOf(const QuantityEdit& edit)
{
    return edit.si() ? std::optional<Q>(Q::fromSi(*edit.si())) : std::nullopt;
}

/// A pressure rise measures air; helium limits are for single joints.
QLabel* airLabel(QWidget* parent)
{
    auto* label = quietLabel(ObjectDialog::tr("as air, 1 bar outside"), parent);
    label->setToolTip(ObjectDialog::tr(
        "What all leaks together may let in, compared with the pressure rise and the sum of the leaks, both "
        "as air. A total given as helium is about 2.7 times as much as air where the leaks are molecular; "
        "leave "
        "it empty where only single joints are judged."));
    return label;
}

QuantityEdit* quantityEdit(const QString& name, const char* unit, QWidget* parent)
{
    auto* edit = new QuantityEdit(name, readUnit(unit).value(), parent);
    edit->setRange({.above = 0.0});
    edit->setFieldWidth(kQuantityWidth);
    return edit;
}

} // namespace

ObjectDialog::ObjectDialog(const model::TestObject& object, QWidget* parent)
    : QDialog(parent)
    , m_object(object)
{
    setObjectName(QStringLiteral("objectDialog"));
    const bool fresh = object.name.empty();
    setWindowTitle(fresh ? tr("New test object") : tr("Test object"));
    setMinimumWidth(kWidth);
    m_name = new QLineEdit(QString::fromStdString(object.name), this);
    m_name->setObjectName(QStringLiteral("name"));
    m_name->setAccessibleName(tr("name"));
    m_nameComplaint = makeBelowField(this);
    m_tag = new QLineEdit(QString::fromStdString(object.tag), this);
    m_tag->setObjectName(QStringLiteral("tag"));
    m_tag->setAccessibleName(tr("tag"));
    m_place = new QLineEdit(QString::fromStdString(object.place), this);
    m_place->setAccessibleName(tr("place"));
    m_volume = quantityEdit(tr("volume"), "l", this);
    m_volume->setPlaceholder(tr("120 l or 0.12 m3"));
    m_volume->setSi(siOf(object.volume));
    m_pointLimit = quantityEdit(tr("limit for one joint"), "mbar l/s", this);
    m_pointLimit->setPlaceholder(tr("1e-6 mbar·l/s"));
    m_pointLimit->setSi(siOf(object.pointLimit));
    m_totalLimit = quantityEdit(tr("limit for all together"), "mbar l/s", this);
    m_totalLimit->setSi(siOf(object.totalLimit));
    m_wanted = quantityEdit(tr("base pressure wanted"), "mbar", this);
    m_wanted->setSi(siOf(object.wantedPressure));
    m_airSpeed = quantityEdit(tr("speed of its own pumps for air"), "l/s", this);
    m_airSpeed->setSi(siOf(object.airSpeed));
    m_airSpeed->setToolTip(tr("Effective, at the chamber: it tells what base pressure a leak costs"));
    m_blankOff = quantityEdit(tr("pressure the pumps reach alone"), "mbar", this);
    m_blankOff->setSi(siOf(object.pumpBlankOff));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 12, 20, 16);
    column->addWidget(new Heading(windowTitle(), tr("kept for all its jobs; only the name is needed"), this));
    column->addWidget(formRow(tr("Name"), {m_name}, this));
    column->addWidget(m_nameComplaint);
    column->addWidget(formRow(tr("Tag"), {m_tag}, this));
    column->addWidget(formRow(tr("Place"), {m_place}, this));
    column->addWidget(formRow(tr("Volume"), {m_volume}, this));
    column->addWidget(
        formRow(tr("Limit, one joint"), {m_pointLimit, quietLabel(tr("helium, 1 bar outside"), this)}, this));
    column->addWidget(formRow(tr("Limit, all"), {m_totalLimit, airLabel(this)}, this));
    column->addWidget(
        formRow(tr("Base pressure"), {m_wanted, quietLabel(tr("wanted by the owner"), this)}, this));
    column->addWidget(formRow(tr("Own pumps"),
                              {m_airSpeed, quietLabel(tr("air at the chamber; alone to"), this), m_blankOff},
                              this));
    column->addSpacing(12);
    auto* buttons = new QHBoxLayout;
    if (!fresh) {
        auto* same = new QPushButton(tr("Also entered as …"), this);
        same->setObjectName(QStringLiteral("sameObject"));
        same->setAutoDefault(false);
        buttons->addWidget(same);
        connect(same, &QPushButton::clicked, this, &ObjectDialog::sameObjectWanted);
    }
    buttons->addStretch(1);
    auto* cancel = new QPushButton(tr("Cancel"), this);
    cancel->setAutoDefault(false);
    auto* store = new QPushButton(fresh ? tr("Make test object") : tr("Keep"), this);
    store->setObjectName(QStringLiteral("store"));
    store->setProperty("kind", QStringLiteral("primary"));
    store->setDefault(true);
    buttons->addWidget(cancel);
    buttons->addWidget(store);
    column->addLayout(buttons);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(store, &QPushButton::clicked, this, &ObjectDialog::tryAccept);
    m_name->setFocus();
}

model::TestObject ObjectDialog::object() const
{
    model::TestObject object = m_object;
    object.name = m_name->text().trimmed().toStdString();
    object.tag = m_tag->text().trimmed().toStdString();
    object.place = m_place->text().trimmed().toStdString();
    object.volume = quantityOf<Volume>(*m_volume);
    object.pointLimit = quantityOf<LeakRate>(*m_pointLimit);
    object.totalLimit = quantityOf<LeakRate>(*m_totalLimit);
    object.wantedPressure = quantityOf<Pressure>(*m_wanted);
    object.airSpeed = quantityOf<PumpingSpeed>(*m_airSpeed);
    object.pumpBlankOff = quantityOf<Pressure>(*m_blankOff);
    return object;
}

void ObjectDialog::tryAccept()
{
    for (QuantityEdit* edit : {m_volume, m_pointLimit, m_totalLimit, m_wanted, m_airSpeed, m_blankOff}) {
        edit->commit();
        if (edit->isWrong()) {
            edit->setFocus();
            return;
        }
    }
    const QString wrong = complaint();
    showComplaint(m_nameComplaint, m_name, wrong);
    if (wrong.isEmpty())
        accept();
    else
        m_name->setFocus();
}

QString ObjectDialog::complaint() const
{
    const std::string name = m_name->text().trimmed().toStdString();
    const std::string tag = m_tag->text().trimmed().toStdString();
    if (name.empty())
        return tr("a test object needs a name; without one nobody finds it again");
    const bool isTaken = std::any_of(m_taken.begin(), m_taken.end(), [&](const storage::ObjectEntry& other) {
        return other.name == name && other.tag == tag;
    });
    return isTaken
               ? tr("one of this name and tag is here already; give this one another tag, or start its job "
                    "on that one")
               : QString();
}

} // namespace sealwalk::ui
