// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sketch_page.h"

#include "core/editing/sheets.h"
#include "ui/render/theme.h"
#include "ui/session/job_session.h"
#include "ui/sketch/canvas.h"
#include "ui/sketch/draw_tool.h"
#include "ui/sketch/gesture_line.h"
#include "ui/sketch/inspector.h"
#include "ui/sketch/no_sheet.h"
#include "ui/sketch/path_tool.h"
#include "ui/sketch/place_tools.h"
#include "ui/sketch/repeat_tool.h"
#include "ui/sketch/select_tool.h"
#include "ui/sketch/sheet_bar.h"
#include "ui/sketch/sketch_commands.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/underlay_tools.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/page_tabs.h"

#include <QApplication>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

QFrame* verticalLine(QWidget* parent)
{
    auto* line = new QFrame(parent);
    line->setFixedWidth(1);
    line->setAutoFillBackground(true);
    line->setBackgroundRole(QPalette::Mid);
    return line;
}

} // namespace

SketchPage::SketchPage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_desk(new SketchDesk(session, this))
    , m_images(&UnderlayImages::of(session))
    , m_commands(std::make_unique<SketchCommands>(*m_desk))
{
    layOut();
    listen();
    addShortcuts();
    takeTool(ToolId::Select);
    refresh();
}

SketchPage::~SketchPage() = default;

void SketchPage::layOut()
{
    auto* middle = new QWidget(this);
    middle->setProperty("region", true);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_bar = new SheetBar(*m_desk, middle);
    m_stack = new QStackedWidget(middle);
    m_canvas = new SketchCanvas(*m_desk, *m_images, m_stack);
    m_noSheet = new NoSheet(*m_desk, m_stack);
    m_stack->addWidget(m_canvas);
    m_stack->addWidget(m_noSheet);
    m_line = new GestureLine(middle);
    column->addWidget(m_bar);
    column->addWidget(m_stack, 1);
    column->addWidget(m_line);
    m_inspector = new Inspector(*m_desk, this);
    m_inspector->setProperty("region", true);
    m_rail = new ToolRail(this);
    m_rail->setProperty("region", true);
    const auto sideBySide = [this](std::initializer_list<QWidget*> parts, const QWidget* wide) {
        auto* whole = new QWidget(this);
        auto* row = new QHBoxLayout(whole);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(0);
        for (QWidget* part : parts)
            row->addWidget(part, part == wide ? 1 : 0);
        return whole;
    };
    QWidget* drawing = sideBySide({m_rail, verticalLine(this), middle}, middle);
    QWidget* facts = sideBySide({verticalLine(this), m_inspector}, m_inspector);
    auto* tabs =
        new PageTabs(sideBySide({drawing, facts}, drawing),
                     {{tr("Drawing"), drawing}, {tr("Joint and points"), facts}}, render::kPartsNeed, this);
    connect(tabs, &PageTabs::narrowed, m_inspector,
            [this](bool isNarrow) { m_inspector->setBesideDrawing(!isNarrow); });
    connect(tabs, &PageTabs::turned, this, [this, drawing](const QWidget* part) {
        (part == drawing ? static_cast<QWidget*>(m_canvas) : m_inspector)->setFocus();
    });
    connect(m_inspector, &Inspector::finished, tabs, [this, tabs] { tabs->bringUp(m_canvas); });
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(tabs);
    setFocusProxy(m_canvas);
}

void SketchPage::listen()
{
    connect(m_desk, &SketchDesk::noteRequested, this,
            [this](Severity severity, const QString& text, const QString& aside) {
                emit noteRequested(severity, aside.isEmpty() ? text : text + QStringLiteral("   ") + aside);
            });
    connect(m_desk, &SketchDesk::sketchChanged, this, &SketchPage::refresh);
    connect(m_desk, &SketchDesk::sheetChanged, this, &SketchPage::refresh);
    connect(m_images, &UnderlayImages::failed, this,
            [this](const QString& why) { m_desk->say(Severity::Caution, why); });
    connect(m_rail, &ToolRail::wanted, this, &SketchPage::takeTool);
    connect(m_canvas, &SketchCanvas::toolLaidDown, this, [this] { takeTool(ToolId::Select); });
    connect(m_canvas, &SketchCanvas::hintsChanged, this, &SketchPage::refreshHints);
    connect(m_canvas, &SketchCanvas::handMoved, m_line, &GestureLine::setHand);
    m_canvas->setCommands([this](const QKeyEvent& event) { return command(event); });
    connect(m_bar, &SheetBar::newSheetWanted, this, &SketchPage::newSheet);
    connect(m_bar, &SheetBar::scaleWanted, this, [this] { takeTool(ToolId::Scale); });
    connect(m_bar, &SheetBar::fitWanted, m_canvas, &SketchCanvas::fit);
    connect(m_noSheet, &NoSheet::newSheetWanted, this, &SketchPage::newSheet);
    connect(m_noSheet, &NoSheet::pictureWanted, this, [this] { choosePicture(true); });
    connect(m_inspector, &Inspector::pictureWanted, this, [this] { choosePicture(false); });
    connect(m_inspector, &Inspector::finished, this, [this] { m_canvas->setFocus(); });
    connect(m_inspector, &Inspector::remindersWanted, this, &SketchPage::goThroughReminders);
}

void SketchPage::addShortcuts()
{
    const auto add = [this](const QKeySequence& keys, auto what) {
        connect(new QShortcut(keys, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut),
                &QShortcut::activated, this, what);
    };
    constexpr double kStep = 1.25;
    add(Qt::CTRL | Qt::Key_Equal, [this] { m_canvas->zoom(kStep); });
    add(Qt::CTRL | Qt::Key_T, [this] { newSheet(); });
    add(Qt::CTRL | Qt::Key_PageDown, [this] { m_commands->nextSheet(1); });
    add(Qt::CTRL | Qt::Key_PageUp, [this] { m_commands->nextSheet(-1); });
}

void SketchPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_desk->sheetInView() != nullptr)
        m_canvas->setFocus();
    else if (QWidget* first = m_noSheet->nextInFocusChain()) // without a sheet: what gives one
        first->setFocus();
}

QString SketchPage::progressText() const
{
    int points = 0;
    for (const model::TestPoint& point : m_desk->sketch().points)
        points += point.retired ? 0 : 1;
    return points == 0   ? tr("no points yet")
           : points == 1 ? tr("1 point so far")
                         : tr("%1 points so far").arg(points);
}

void SketchPage::refresh()
{
    const bool hasSheet = m_desk->sheetInView() != nullptr;
    m_noSheet->refresh();
    m_stack->setCurrentWidget(hasSheet ? static_cast<QWidget*>(m_canvas) : m_noSheet);
    m_rail->setEnabled(hasSheet && m_desk->isOpenForWork());
    if (!m_desk->isOpenForWork() && m_toolId != ToolId::Select)
        takeTool(ToolId::Select);
    emit progressChanged();
}

std::unique_ptr<Tool> SketchPage::make(ToolId id) const
{
    switch (id) {
    case ToolId::Ring:
        return std::make_unique<RingTool>(*m_desk);
    case ToolId::Box:
        return std::make_unique<BoxTool>(*m_desk);
    case ToolId::ClosedPath:
        return std::make_unique<PathTool>(*m_desk, PathTool::Line::Closed);
    case ToolId::OpenPath:
        return std::make_unique<PathTool>(*m_desk, PathTool::Line::Open);
    case ToolId::Hose:
        return std::make_unique<PathTool>(*m_desk, PathTool::Line::Hose);
    case ToolId::Spot:
        return std::make_unique<SpotTool>(*m_desk);
    case ToolId::Repeat:
        return std::make_unique<RepeatTool>(*m_desk);
    case ToolId::AddPoint:
        return std::make_unique<AddPointTool>(*m_desk);
    case ToolId::Split:
        return std::make_unique<SplitTool>(*m_desk);
    case ToolId::Underlay:
        return std::make_unique<UnderlayTool>(*m_desk);
    case ToolId::Scale:
        return std::make_unique<ScaleTool>(*m_desk);
    case ToolId::Select:
    case ToolId::Retire:
    case ToolId::Renumber:
        break;
    }
    return std::make_unique<SelectTool>(*m_desk);
}

void SketchPage::takeTool(ToolId id)
{
    if (id == ToolId::Retire || id == ToolId::Renumber) {
        if (id == ToolId::Retire)
            m_commands->retireChosen();
        else
            m_commands->renumber();
        return;
    }
    if (id == ToolId::Repeat && m_desk->chosen().empty()) {
        m_desk->say(Severity::Caution, tr("Choose the joint to be repeated first, then press P."));
        id = ToolId::Select;
    }
    if (id != ToolId::Select && !m_desk->isOpenForWork()) {
        m_desk->say(Severity::Caution,
                    tr("The job is closed for changes; the sketch can be looked at only."));
        id = ToolId::Select;
    }
    const model::Sheet* sheet = m_desk->sheetInView();
    const bool pictureWanted =
        id == ToolId::Underlay && sheet != nullptr && (!sheet->underlay || m_toolId == id);
    m_toolId = id;
    m_rail->setCurrent(id);
    m_canvas->setTool(make(id));
    m_canvas->setFocus();
    if (pictureWanted)
        choosePicture(false);
}

void SketchPage::press(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    auto* text = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    if (text != nullptr && modifiers == Qt::ControlModifier) {
        switch (key) {
        case Qt::Key_C:
            return text->copy();
        case Qt::Key_X:
            return text->cut();
        case Qt::Key_V:
            return text->paste();
        case Qt::Key_A:
            return text->selectAll();
        default:
            break;
        }
    }
    // Not as an event: that would look for the shortcut that may have brought it here.
    QKeyEvent event(QEvent::KeyPress, key, modifiers);
    m_canvas->press(event);
}

void SketchPage::refreshHints()
{
    Tool* tool = m_canvas->tool();
    if (tool == nullptr)
        return;
    m_line->setTool(tool->title(), tool->hints());
    QString typing;
    const SizeEntry& entry = m_canvas->entry();
    if (entry.isActive()) {
        const std::vector<Size> sizes = tool->sizes();
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            const QString text = entry.wasTyped(i) ? entry.text(i) : QStringLiteral("…");
            typing += (i == 0 ? QString() : QStringLiteral("   ")) +
                      (i == entry.current() ? QStringLiteral("▸ %1 %2") : QStringLiteral("%1 %2"))
                          .arg(sizes[i].name, text);
        }
        typing += tr("   Tab: next, Enter: take");
    }
    m_line->setTyping(typing);
}

void SketchPage::newSheet()
{
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    const auto count = static_cast<int>(m_desk->sketch().sheets.size());
    for (int i = count + 1;; ++i) {
        sheet.name = tr("Sheet %1").arg(i).toStdString();
        const auto& sheets = m_desk->sketch().sheets;
        if (std::none_of(sheets.begin(), sheets.end(),
                         [&](const model::Sheet& s) { return s.name == sheet.name; }))
            break;
    }
    sheet.seenFrom = tr("the front").toStdString();
    if (m_desk->commit(editing::addSheet(m_desk->sketch(), sheet)))
        m_desk->setSheet(sheet.id);
    m_canvas->setFocus();
}

bool SketchPage::command(const QKeyEvent& event)
{
    const Hand hand = m_canvas->hand();
    const bool control = event.modifiers().testFlag(Qt::ControlModifier);
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    if (event.key() == Qt::Key_PageDown || event.key() == Qt::Key_PageUp) {
        const int step = event.key() == Qt::Key_PageDown ? 1 : -1;
        shift ? m_commands->chooseNextPoint(step) : m_commands->chooseNext(step);
        return true;
    }
    if (control) {
        switch (event.key()) {
        case Qt::Key_Z:
            shift ? m_desk->redo() : m_desk->undo();
            return true;
        case Qt::Key_Y:
            m_desk->redo();
            return true;
        case Qt::Key_C:
            m_commands->copy();
            return true;
        case Qt::Key_X:
            m_commands->cut();
            return true;
        case Qt::Key_V:
            m_commands->paste(hand);
            return true;
        case Qt::Key_A:
            m_commands->chooseAll();
            return true;
        case Qt::Key_G:
            m_commands->group(!shift);
            return true;
        case Qt::Key_R:
            m_canvas->setShowsRulers(!m_canvas->showsRulers());
            return true;
        default:
            return false;
        }
    }
    if (event.modifiers().testFlag(Qt::AltModifier))
        return false;
    static constexpr std::pair<Qt::Key, ToolId> kTools[] = {
        {Qt::Key_V, ToolId::Select},     {Qt::Key_R, ToolId::Ring},     {Qt::Key_B, ToolId::Box},
        {Qt::Key_C, ToolId::ClosedPath}, {Qt::Key_W, ToolId::OpenPath}, {Qt::Key_S, ToolId::Spot},
        {Qt::Key_H, ToolId::Hose},       {Qt::Key_P, ToolId::Repeat},   {Qt::Key_U, ToolId::Underlay},
        {Qt::Key_K, ToolId::Scale},      {Qt::Key_N, ToolId::Renumber}, {Qt::Key_Delete, ToolId::Retire},
    };
    for (const auto& [key, id] : kTools)
        if (event.key() == key) {
            takeTool(id);
            return true;
        }
    switch (event.key()) {
    case Qt::Key_A:
        m_commands->addPoint(hand);
        return true;
    case Qt::Key_X:
        m_commands->split(hand);
        return true;
    case Qt::Key_D:
        shift ? m_commands->startHere(hand) : m_commands->reverseSense();
        return true;
    case Qt::Key_L:
        m_commands->toggleLock();
        return true;
    default:
        return false;
    }
}

} // namespace sealwalk::ui
