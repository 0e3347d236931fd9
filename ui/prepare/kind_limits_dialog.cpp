// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/kind_limits_dialog.h"

#include "ui/prepare/shown.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/quantity_edit.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

KindLimitsDialog::KindLimitsDialog(const model::Setup& setup, const model::Sketch& sketch, QWidget* parent)
    : QDialog(parent)
{
    setWindowTitle(tr("Limits by kind of joint"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 12, 20, 16);
    column->addWidget(new Heading(windowTitle(), tr("empty: the limit for one joint"), this));
    for (const auto& [kind, word] : model::EnumNames<model::JointKind>::table) {
        const model::JointKind wanted = kind;
        const auto joints = std::count_if(sketch.joints.begin(), sketch.joints.end(),
                                          [&](const model::Joint& joint) { return joint.kind == wanted; });
        const QString name = text(std::string(word));
        auto* edit = new QuantityEdit(name, shownUnit(setup), this);
        edit->setRange({.above = 0.0});
        edit->setFlowBasis(basisOf(setup));
        if (const auto known = setup.kindLimits.find(kind); known != setup.kindLimits.end())
            edit->setSi(known->second.si());
        m_edits[kind] = edit;
        column->addWidget(formRow(
            name,
            {edit,
             quietLabel(joints == 0 ? QString() : tr("%n drawn", nullptr, static_cast<int>(joints)), this)},
            this));
    }
    auto* buttons = new QDialogButtonBox(this);
    auto* keep = buttons->addButton(tr("Keep"), QDialogButtonBox::AcceptRole);
    setStyleProperty(keep, "kind", QStringLiteral("primary"));
    keep->setDefault(true);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &KindLimitsDialog::tryAccept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

std::map<model::JointKind, LeakRate> KindLimitsDialog::limits() const
{
    std::map<model::JointKind, LeakRate> result;
    for (const auto& [kind, edit] : m_edits)
        if (edit->si())
            result[kind] = LeakRate::fromSi(*edit->si());
    return result;
}

void KindLimitsDialog::tryAccept()
{
    for (const auto& [kind, edit] : m_edits) {
        edit->commit();
        if (edit->isWrong()) {
            edit->setFocus();
            return;
        }
    }
    accept();
}

} // namespace sealwalk::ui
