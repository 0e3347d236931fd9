// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/advice_card.h"

#include "ui/render/icon.h"
#include "ui/render/theme.h"
#include "ui/spray/spray_controller.h"
#include "ui/spray/touch_size.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kIcon = 18;

} // namespace

AdviceCard::AdviceCard(SprayController& controller, QWidget* parent)
    : QFrame(parent)
    , m_controller(controller)
    , m_icon(new QLabel(this))
    , m_title(new QLabel(this))
    , m_because(new QLabel(this))
    , m_take(new QPushButton(this))
    , m_stay(new QPushButton(this))
{
    setProperty("role", QStringLiteral("caution"));
    setAccessibleName(tr("Advice"));
    m_title->setFont(render::font(render::TextSize::Strong, render::Weight::Bold));
    m_title->setWordWrap(true);
    m_because->setWordWrap(true);
    m_because->setObjectName(QStringLiteral("adviceBecause"));
    m_take->setObjectName(QStringLiteral("takeAdvice"));
    m_stay->setObjectName(QStringLiteral("stayInOrder"));
    for (QPushButton* button : {m_take, m_stay})
        button->setFocusPolicy(Qt::NoFocus); // the keys belong to the field

    auto* head = new QHBoxLayout;
    head->setSpacing(render::kGapNear);
    head->addWidget(m_icon, 0, Qt::AlignTop);
    head->addWidget(m_title, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(render::kGapApart, render::kGapNear, render::kGapApart, render::kGapNear);
    column->setSpacing(render::kGapTight);
    column->addLayout(head);
    column->addWidget(m_because);
    column->addWidget(m_take);
    column->addWidget(m_stay);
    connect(m_take, &QPushButton::clicked, &m_controller, &SprayController::takeAdvice);
    connect(m_stay, &QPushButton::clicked, &m_controller, &SprayController::goOnAnyway);
    connect(&m_controller, &SprayController::changed, this, &AdviceCard::refresh);
    refresh();
}

void AdviceCard::setTargetHeight(int pixels)
{
    for (QPushButton* button : {m_take, m_stay})
        ui::setTargetHeight(*button, pixels);
}

void AdviceCard::refresh()
{
    const auto& advice = m_controller.advice();
    setVisible(advice.has_value());
    if (!advice)
        return;
    const bool isVoid = advice->kind == SprayAdvice::Kind::VoidRun;
    m_icon->setPixmap(render::iconPixmap(isVoid ? QStringLiteral("void") : QStringLiteral("leave-order"),
                                         kIcon, render::Theme::of(this).colour(render::Role::Ink),
                                         devicePixelRatioF()));
    m_title->setText(advice->title);
    m_because->setText(advice->because);
    setAccessibleDescription(advice->title + QStringLiteral(". ") + advice->because);
    m_take->setText(QStringLiteral("L  ") + advice->takes);
    m_stay->setText(QStringLiteral("I  ") + advice->stays);
    // While helium clears, I means the wait: the card must not promise another meaning.
    const CallState state = m_controller.machine().state();
    m_stay->setEnabled(state != CallState::Wait && state != CallState::Hold);
}

} // namespace sealwalk::ui
