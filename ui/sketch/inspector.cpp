// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/inspector.h"

#include "core/editing/reminders.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/joint_list.h"
#include "ui/sketch/joint_panel.h"
#include "ui/sketch/points_panel.h"
#include "ui/sketch/several_panel.h"
#include "ui/sketch/sheet_panel.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/heading.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

Inspector::Inspector(SketchDesk& desk, QWidget* parent)
    : QScrollArea(parent)
    , m_desk(desk)
{
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    auto* body = new QWidget(this);
    body->setProperty("ground", QStringLiteral("panel"));
    body->setAttribute(Qt::WA_StyledBackground);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(14, 4, 14, 8);
    column->setSpacing(0);
    m_sheet = new SheetPanel(desk, body);
    m_joint = new JointPanel(desk, body);
    m_several = new SeveralPanel(desk, body);
    m_points = new PointsPanel(desk, body);
    connect(m_points, &PointsPanel::laid, this, &Inspector::finished);
    for (QWidget* panel : std::initializer_list<QWidget*>{m_sheet, m_joint, m_several, m_points})
        column->addWidget(panel);
    m_listHead = new Heading(tr("On this sheet"), {}, body);
    column->addWidget(m_listHead);
    m_list = new JointList(desk, body);
    column->addWidget(m_list, 1);
    m_reminder = quietLabel({}, body);
    m_reminder->setWordWrap(true);
    m_reminder->setTextFormat(Qt::RichText);
    m_reminder->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    m_reminder->setContentsMargins(0, 6, 0, 0);
    m_reminder->setFixedHeight(56);
    m_reminder->setMinimumWidth(290);
    m_reminder->setAlignment(Qt::AlignTop);
    connect(m_reminder, &QLabel::linkActivated, this, &Inspector::remindersWanted);
    column->addWidget(m_reminder);
    setWidget(body);
    const auto boxes = body->findChildren<QComboBox*>();
    for (QComboBox* box : boxes)
        box->installEventFilter(this);
    const auto fields = body->findChildren<QLineEdit*>();
    for (QLineEdit* field : fields)
        field->installEventFilter(this);
    connect(m_sheet, &SheetPanel::pictureWanted, this, &Inspector::pictureWanted);
    for (const auto signal : {&SketchDesk::sketchChanged, &SketchDesk::chosenChanged,
                              &SketchDesk::sheetChanged, &SketchDesk::layingChanged})
        connect(&desk, signal, this, &Inspector::refresh);
    connect(&desk.session(), &JobSession::setupChanged, this, &Inspector::refresh);
    connect(&desk.session(), &JobSession::recordsChanged, this, &Inspector::refreshReminder);
    refresh();
}

/// A letter means a tool, and never another kind of joint by itself: where the keyboard came to the box by
/// Tab it looks through the open list, and Enter takes what it found. Escape goes back to the sheet. The open
/// list has its keys.
bool Inspector::eventFilter(QObject* watched, QEvent* event)
{
    if (auto* field = qobject_cast<QLineEdit*>(watched))
        return event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape
                   ? leaveField(*field)
                   : QScrollArea::eventFilter(watched, event);
    auto* box = qobject_cast<QComboBox*>(watched);
    if (box == nullptr || box->isEditable())
        return QScrollArea::eventFilter(watched, event);
    if (event->type() == QEvent::FocusIn)
        noteTab(box, static_cast<QFocusEvent*>(event)->reason());
    else if (event->type() == QEvent::MouseButtonPress)
        m_tabbedTo = nullptr;
    if (event->type() != QEvent::KeyPress)
        return QScrollArea::eventFilter(watched, event);
    auto* key = static_cast<QKeyEvent*>(event);
    const bool isLetter = (key->modifiers() & ~Qt::ShiftModifier) == Qt::NoModifier &&
                          key->key() >= Qt::Key_A && key->key() <= Qt::Key_Z;
    if (!isLetter && key->key() != Qt::Key_Escape)
        return QScrollArea::eventFilter(watched, event);
    if (isLetter && box == m_tabbedTo) {
        box->showPopup();
        QApplication::sendEvent(box->view(), event);
        return true;
    }
    emit finished();
    if (QWidget* focused = QApplication::focusWidget(); isLetter && focused != nullptr && focused != box)
        QApplication::sendEvent(focused, event);
    return true;
}

/// What was half typed is taken back first.
bool Inspector::leaveField(QLineEdit& field)
{
    while (field.isModified() && field.isUndoAvailable())
        field.undo();
    field.setModified(false);
    emit finished();
    return true;
}

void Inspector::noteTab(const QComboBox* box, Qt::FocusReason reason)
{
    switch (reason) {
    case Qt::TabFocusReason:
    case Qt::BacktabFocusReason:
        m_tabbedTo = box;
        break;
    case Qt::PopupFocusReason: // back from its list, a menu or another window: as before
    case Qt::MenuBarFocusReason:
    case Qt::ActiveWindowFocusReason:
        break;
    default:
        m_tabbedTo = nullptr;
    }
}

void Inspector::setBesideDrawing(bool beside)
{
    m_beside = beside;
    fitWidth();
}

void Inspector::fitWidth()
{
    // Only ever wider, or the drawing would jump with every joint that is chosen.
    m_width = std::clamp(widget()->minimumSizeHint().width(), m_width, std::max(m_width, kWidest));
    setMinimumWidth(m_beside ? m_width : kWidth);
    setMaximumWidth(m_beside ? m_width : QWIDGETSIZE_MAX);
}

void Inspector::showEvent(QShowEvent* event)
{
    QScrollArea::showEvent(event);
    if (m_isBehind)
        refresh();
}

void Inspector::refresh()
{
    // A round in Spray chooses a point with every reading: out of sight there is nothing to show of it.
    m_isBehind = !isVisible() && window()->isVisible();
    if (m_isBehind)
        return;
    m_sheet->refresh();
    m_joint->refresh();
    m_several->refresh();
    m_points->refresh();
    const auto joints = m_desk.sketch().jointsOn(m_desk.sheet());
    int points = 0;
    for (const model::TestPoint& point : m_desk.sketch().points)
        if (!point.retired)
            for (const model::Joint* joint : joints)
                points += joint->id == point.joint ? 1 : 0;
    m_listHead->setAside((joints.size() == 1 ? tr("1 joint, ") : tr("%1 joints, ").arg(joints.size())) +
                         (points == 1 ? tr("1 point") : tr("%1 points").arg(points)));
    refreshReminder();
    fitWidth();
}

void Inspector::refreshReminder()
{
    const model::Joint* joint = m_desk.chosenJoint();
    const std::vector<editing::Reminder> all = m_desk.session().hasJob()
                                                   ? editing::reminders(m_desk.session().job(), reminderName)
                                                   : std::vector<editing::Reminder>();
    QStringList missing;
    const auto add = [&](const editing::Reminder& reminder) {
        const QString what = reminderWords(reminder.what);
        if (!reminder.onSketch && !reminder.isAbsent && missing.size() < 2 && !missing.contains(what))
            missing.append(what);
    };
    if (joint != nullptr)
        for (const editing::Reminder& own : editing::reminders(joint->kind))
            for (const editing::Reminder& reminder : all)
                if (reminder.what == own.what)
                    add(reminder);
    for (const editing::Reminder& reminder : all)
        add(reminder);
    m_reminder->setVisible(m_desk.sheetInView() != nullptr);
    if (missing.isEmpty())
        m_reminder->setText(
            tr("What is often forgotten is drawn, or not there. <a href=\"list\">The list</a>"));
    else
        m_reminder->setText(tr("Often forgotten: %1. <a href=\"list\">Go through the list</a>")
                                .arg(missing.join(QStringLiteral("; "))));
}

} // namespace sealwalk::ui
