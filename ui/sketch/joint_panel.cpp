// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/joint_panel.h"

#include "core/editing/joints.h"
#include "core/quantities/kinds.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/sketch/joint_painter.h"
#include "ui/sketch/number_field.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

/// What points of a joint can ask for, in stored words; the first is "as it stands".
const std::vector<std::vector<std::string>>& conditionChoices()
{
    static const std::vector<std::vector<std::string>> kChoices{
        {},
        {"at rest", "flexed"},
        {"at rest", "extended"},
        {"at rest", "hot"},
        {"open", "shut"},
        {"at rest", "at an angle"},
    };
    return kChoices;
}

} // namespace

JointPanel::JointPanel(SketchDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_head = new Heading(tr("Joint"), {}, this);
    column->addWidget(m_head);

    m_name = new QLineEdit(this);
    m_name->setObjectName(QStringLiteral("joint-name"));
    m_name->setAccessibleName(tr("Name of the joint"));
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        change([this](model::Joint& joint) { joint.name = m_name->text().trimmed().toStdString(); });
    });
    column->addWidget(formRow(tr("Name"), {m_name}, this));

    m_kind = new QComboBox(this);
    m_kind->setObjectName(QStringLiteral("joint-kind"));
    m_kind->setAccessibleName(tr("Kind of joint"));
    for (const auto& row : model::EnumNames<model::JointKind>::table)
        m_kind->addItem(render::icon(iconOf(row.first)), nameOf(row.first));
    connect(m_kind, &QComboBox::activated, this, [this](int index) {
        const auto kind = static_cast<model::JointKind>(index);
        change([&](model::Joint& joint) {
            if (joint.requiredConditions == editing::usualConditions(joint.kind))
                joint.requiredConditions = editing::usualConditions(kind);
            joint.kind = kind;
            m_desk.setKindFor(joint.shape, kind);
        });
    });
    column->addWidget(formRow(tr("Kind"), {m_kind}, this));

    m_material = new QLineEdit(this);
    m_material->setAccessibleName(tr("Material"));
    connect(m_material, &QLineEdit::editingFinished, this, [this] {
        change([this](model::Joint& joint) { joint.material = m_material->text().trimmed().toStdString(); });
    });
    m_cord = new NumberField(tr("Cord thickness in millimetres"), 44, this);
    connect(m_cord, &NumberField::edited, this, [this](std::optional<double> number) {
        change([&](model::Joint& joint) {
            joint.thickness = number ? std::optional(millimetres(*number)) : std::nullopt;
        });
    });
    connect(m_cord, &NumberField::refused, &m_desk,
            [this](const QString& sentence) { m_desk.say(Severity::Caution, sentence); });
    column->addWidget(formRow(tr("Material"),
                              {m_material, quietLabel(tr("cord"), this), m_cord, quietLabel(tr("mm"), this)},
                              this));

    m_conditions = new QComboBox(this);
    m_conditions->setAccessibleName(tr("Conditions each point is sprayed in"));
    m_conditions->addItems({tr("as it stands"), tr("at rest and flexed"), tr("at rest and extended"),
                            tr("at rest and hot"), tr("open and shut"), tr("at rest and at an angle")});
    connect(m_conditions, &QComboBox::activated, this, [this](int index) {
        if (index >= 0 && index < static_cast<int>(conditionChoices().size()))
            change([&](model::Joint& joint) {
                joint.requiredConditions = conditionChoices()[static_cast<std::size_t>(index)];
            });
    });
    column->addWidget(formRow(tr("Spray it"), {m_conditions}, this));

    const auto box = [&](const QString& text, const QString& name, const std::function<void(bool)>& set) {
        auto* check = new QCheckBox(text, this);
        check->setObjectName(name);
        connect(check, &QCheckBox::clicked, this, [set](bool on) { set(on); });
        return check;
    };
    m_setup = box(tr("test set-up"), QStringLiteral("joint-setup"),
                  [this](bool on) { change([on](model::Joint& joint) { joint.isSetup = on; }); });
    m_locked = box(tr("locked"), QStringLiteral("joint-locked"), [this](bool on) {
        m_desk.commit(editing::setLocked(m_desk.sketch(), m_desk.chosen(), on));
    });
    m_smooth = box(tr("smooth"), QStringLiteral("joint-smooth"), [this](bool on) {
        change([on](model::Joint& joint) {
            if (auto* free = std::get_if<geometry::FreePath>(&joint.shape))
                free->smooth = on;
        });
    });
    auto* checks = new QHBoxLayout;
    checks->setContentsMargins(0, 2, 0, 0);
    checks->setSpacing(12);
    for (QCheckBox* check : {m_setup, m_locked, m_smooth})
        checks->addWidget(check);
    checks->addStretch(1);
    column->addLayout(checks);
    refresh();
}

void JointPanel::change(const std::function<void(model::Joint&)>& change)
{
    const model::Joint* joint = m_desk.chosenJoint();
    if (joint == nullptr)
        return;
    model::Joint changed = *joint;
    change(changed);
    if (changed != *joint && !m_desk.commit(editing::changeJoint(m_desk.sketch(), changed)))
        refresh();
}

void JointPanel::refresh()
{
    const model::Joint* joint = m_desk.chosenJoint();
    setVisible(joint != nullptr);
    if (joint == nullptr)
        return;
    setEnabled(m_desk.isOpenForWork());
    const auto show = [](QLineEdit* field, const std::string& text) {
        if (!(field->hasFocus() && field->isModified()) && field->text() != QString::fromStdString(text))
            field->setText(QString::fromStdString(text));
    };
    show(m_name, joint->name);
    m_kind->setCurrentIndex(static_cast<int>(joint->kind));
    show(m_material, joint->material);
    m_cord->setNumber(joint->thickness ? std::optional(inMillimetres(*joint->thickness)) : std::nullopt);
    const auto& choices = conditionChoices();
    const auto found = std::find(choices.begin(), choices.end(), joint->requiredConditions);
    m_conditions->setCurrentIndex(found == choices.end() ? -1 : static_cast<int>(found - choices.begin()));
    m_setup->setChecked(joint->isSetup);
    m_locked->setChecked(joint->locked);
    const auto* free = std::get_if<geometry::FreePath>(&joint->shape);
    m_smooth->setVisible(free != nullptr);
    m_smooth->setChecked(free != nullptr && free->smooth);
    showLimit(*joint);
}

void JointPanel::showLimit(const model::Joint& joint)
{
    if (!m_desk.session().hasJob())
        return;
    const model::Setup& setup = m_desk.session().job().setup;
    const auto own = setup.kindLimits.find(joint.kind);
    const std::optional<LeakRate> limit =
        own != setup.kindLimits.end() ? std::optional(own->second) : setup.pointLimit;
    if (!limit) {
        m_head->setAside(tr("no limit set yet"));
        return;
    }
    // Limits are kept in helium; the unit of the job is what everybody reads.
    m_head->setAside(tr("limit %1 mbar·l/s He").arg(rateParts(inMillibarLitresPerSecond(*limit)).rich()));
}

} // namespace sealwalk::ui
