// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/presenter_dialog.h"

#include "ui/render/theme.h"
#include "ui/widgets/heading.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

struct Row
{
    QString name;
    QString does;
};

Row rowOf(PresenterButton button)
{
    switch (button) {
    case PresenterButton::Next:
        return {PresenterDialog::tr("Next"),
                PresenterDialog::tr("starts and stops the spray, stores the feed's highest")};
    case PresenterButton::Back:
        return {PresenterDialog::tr("Back"),
                PresenterDialog::tr("first rise, no response, correct the last")};
    case PresenterButton::Black:
        return {PresenterDialog::tr("Black"), PresenterDialog::tr("twice: the last reading is void")};
    case PresenterButton::Start:
        return {PresenterDialog::tr("Start"), PresenterDialog::tr("distance view")};
    }
    return {};
}

} // namespace

PresenterDialog::PresenterDialog(const PresenterKeys& keys, QWidget* parent)
    : QDialog(parent)
    , m_keys(keys)
    , m_hint(new QLabel(this))
{
    setObjectName(QStringLiteral("presenterDialog"));
    setWindowTitle(tr("Presenter"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(render::kGapNear);
    column->addWidget(new Heading(windowTitle(), {}, this));
    column->addWidget(quietLabel(tr("Choose a row, then press that button on the presenter."), this));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(render::kGapApart);
    for (const PresenterButton button : kPresenterButtons) {
        const auto i = static_cast<int>(button);
        const Row row = rowOf(button);
        auto* learnButton = new QPushButton(row.name, this);
        learnButton->setObjectName(QStringLiteral("learn") + QString::number(i));
        learnButton->setAccessibleName(tr("Learn %1").arg(row.name));
        learnButton->setCheckable(true);
        learnButton->setAutoDefault(false);
        learnButton->installEventFilter(this);
        connect(learnButton, &QPushButton::clicked, this, [this, button] { learn(button); });
        m_rows[static_cast<std::size_t>(i)] = learnButton;
        m_sends[static_cast<std::size_t>(i)] = new QLabel(this);
        m_sends[static_cast<std::size_t>(i)]->setMinimumWidth(110);
        grid->addWidget(learnButton, i, 0);
        grid->addWidget(m_sends[static_cast<std::size_t>(i)], i, 1);
        grid->addWidget(quietLabel(row.does, this), i, 2);
    }
    column->addLayout(grid);
    m_hint->setWordWrap(true);
    column->addWidget(m_hint);
    auto* buttons = new QDialogButtonBox(this);
    auto* keep = buttons->addButton(tr("Keep"), QDialogButtonBox::AcceptRole);
    keep->setObjectName(QStringLiteral("store"));
    keep->setAutoDefault(false);
    auto* forget = buttons->addButton(tr("Forget all"), QDialogButtonBox::ResetRole);
    forget->setAutoDefault(false);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(forget, &QPushButton::clicked, this, [this] {
        m_keys = {};
        m_learning.reset();
        refresh();
    });
    column->addWidget(buttons);
    m_rows.front()->setFocus(); // what it was opened for; Keep comes after
    refresh();
}

void PresenterDialog::learn(PresenterButton button)
{
    m_learning = button;
    m_rows[static_cast<std::size_t>(button)]->setFocus();
    refresh();
}

bool PresenterDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (!m_learning || (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride))
        return QDialog::eventFilter(watched, event);
    event->accept();
    if (event->type() == QEvent::ShortcutOverride)
        return true;
    const QKeySequence pressed = keyOf(*static_cast<QKeyEvent*>(event));
    if (pressed.isEmpty())
        return true;
    for (const PresenterButton button : kPresenterButtons)
        if (m_keys.of(button) == pressed)
            m_keys.of(button) = {}; // a key has one meaning
    m_keys.of(*m_learning) = pressed;
    m_learning.reset();
    refresh();
    return true;
}

void PresenterDialog::refresh()
{
    bool clashes = false;
    for (const PresenterButton button : kPresenterButtons) {
        const auto i = static_cast<std::size_t>(button);
        const QKeySequence& key = m_keys.of(button);
        m_rows[i]->setChecked(m_learning == button);
        m_sends[i]->setText(m_learning == button ? tr("press it now …")
                            : key.isEmpty()      ? tr("not learned")
                                                 : key.toString(QKeySequence::NativeText));
        clashes = clashes || key.toString().size() == 1;
    }
    m_hint->setText(clashes
                        ? tr("A button sends a letter or sign that is also a key of Spray: on the keyboard "
                             "it now does what the button does.")
                        : QString());
}

} // namespace sealwalk::ui
