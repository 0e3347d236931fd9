// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/walk_panel.h"

#include "core/analysis/walk.h"
#include "ui/render/theme.h"
#include "ui/spray/advice_card.h"
#include "ui/spray/key_legend.h"
#include "ui/spray/spray_words.h"
#include "ui/spray/touch_field.h"
#include "ui/spray/touch_size.h"
#include "ui/spray/walk_delegate.h"
#include "ui/spray/walk_list.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

using render::Role;

constexpr int kThreadHeight = 8;
constexpr int kTouchColumns = 3;

} // namespace

WalkThread::WalkThread(QWidget* parent)
    : QWidget(parent)
{
    setFixedHeight(kThreadHeight);
    setAccessibleName(WalkPanel::tr("How far the walk is"));
}

void WalkThread::setShare(double share)
{
    m_share = share;
    update();
}

void WalkThread::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    const double done = width() * m_share;
    painter.fillRect(QRectF(0, 1, done, 6), theme.colour(Role::Accent));
    QPen dashed(theme.colour(Role::InkSoft), 1.5);
    dashed.setDashPattern({3, 3});
    painter.setPen(dashed);
    painter.drawLine(QPointF(done, kThreadHeight / 2.0), QPointF(width(), kThreadHeight / 2.0));
}

WalkPanel::WalkPanel(JobSession& session, SprayController& controller, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_controller(controller)
    , m_model(new WalkModel(session, controller, this))
    , m_count(new QLabel(this))
    , m_timeLeft(new QLabel(this))
    , m_waiting(new QLabel(this))
    , m_thread(new WalkThread(this))
    , m_list(new WalkList(this))
    , m_advice(new AdviceCard(controller, this))
    , m_legend(new KeyLegend(this))
    , m_rows(new WalkDelegate(m_list))
    , m_order(new QPushButton(tr("Order …  P"), this))
    , m_touchKeys(makeTouchKeys())
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, render::kGapNear, 0, 0);
    column->setSpacing(render::kGapTight);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(render::kGapBlock, 0, render::kGapBlock, 0);
    auto* title = new QLabel(tr("Walk"), this);
    title->setProperty("role", QStringLiteral("title"));
    head->addWidget(title);
    auto* asShown = new QLabel(tr("values as shown"), this);
    asShown->setProperty("role", QStringLiteral("caption"));
    asShown->setToolTip(tr("What the display said; the map has what it means on the chamber."));
    head->addWidget(asShown);
    head->addStretch();
    head->addWidget(m_count);
    column->addLayout(head);
    auto* thread = new QHBoxLayout;
    thread->setContentsMargins(render::kGapBlock, 0, render::kGapBlock, 0);
    thread->addWidget(m_thread);
    column->addLayout(thread);
    auto* under = new QHBoxLayout;
    under->setContentsMargins(render::kGapBlock, 0, render::kGapBlock, 0);
    under->addWidget(m_timeLeft);
    m_order->setObjectName(QStringLiteral("orderWalk"));
    m_order->setAccessibleName(tr("Change the order of the walk"));
    m_order->setFocusPolicy(Qt::NoFocus);
    under->addStretch();
    under->addWidget(m_order);
    connect(m_order, &QPushButton::clicked, this, &WalkPanel::orderWanted);
    column->addLayout(under);
    m_waiting->setObjectName(QStringLiteral("roundsWaiting"));
    m_waiting->setProperty("role", QStringLiteral("caption"));
    m_waiting->setContentsMargins(render::kGapBlock, 0, render::kGapBlock, 0);
    m_waiting->setWordWrap(true);
    column->addWidget(m_waiting);
    m_list->setModel(m_model);
    m_list->setItemDelegate(m_rows);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setFocusPolicy(Qt::NoFocus); // the keys belong to the field; a click still calls a point
    m_list->setSelectionMode(QAbstractItemView::NoSelection);
    m_list->setUniformItemSizes(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setAccessibleName(tr("Order of the walk"));
    m_list->setObjectName(QStringLiteral("walkList"));
    column->addWidget(m_list, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(render::kGapApart, 0, render::kGapApart, render::kGapTight);
    foot->addWidget(m_advice);
    foot->addWidget(m_legend);
    foot->addWidget(m_touchKeys);
    column->addLayout(foot);
    m_legend->setKeys({{{QStringLiteral("J"), tr("jump"), Qt::Key_J, false},
                        {QStringLiteral("C"), tr("correct"), Qt::Key_C, false},
                        {QStringLiteral("Z"), tr("distance"), Qt::Key_Z, false}},
                       {{QStringLiteral("K"), tr("confirm"), Qt::Key_K, false},
                        {QStringLiteral("X"), tr("not tested"), Qt::Key_X, false}},
                       {{QStringLiteral("W"), tr("others taped off"), Qt::Key_W, false},
                        {QStringLiteral("M"), tr("remark"), Qt::Key_M, false}}});

    connect(m_list, &QListView::clicked, this, [this](const QModelIndex& index) {
        m_controller.callSelected(m_controller.walk()[static_cast<std::size_t>(index.row())].point);
    });
    connect(&m_controller, &SprayController::changed, this, &WalkPanel::refresh);
    connect(&m_controller, &SprayController::advised, this, [this] {
        placeFoot();
        QTimer::singleShot(0, this, &WalkPanel::showCalled); // the card takes room from the list
    });
    connect(&m_session, &JobSession::findingsChanged, this, &WalkPanel::refresh);
    connect(&m_session, &JobSession::findingsChanged, this, &WalkPanel::showWaiting);
    for (const auto signal : {&JobSession::roundChanged, &JobSession::stateChanged, &JobSession::jobChanged})
        connect(&m_session, signal, this, &WalkPanel::showWaiting);
    refresh();
    showWaiting();
}

QWidget* WalkPanel::makeTouchKeys()
{
    auto* keys = new QWidget(this);
    auto* grid = new QGridLayout(keys);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(pixelsOn(screen(), kGloveGapMillimetres));
    const std::pair<QString, int> each[] = {{tr("jump"), Qt::Key_J},
                                            {tr("distance"), Qt::Key_Z},
                                            {tr("delay"), Qt::Key_D},
                                            {tr("confirm"), Qt::Key_K},
                                            {tr("not tested"), Qt::Key_X}};
    for (int i = 0; const auto& [word, key] : each) {
        auto* field = new TouchField({}, keys);
        field->setWords(word);
        field->setObjectName(QStringLiteral("walk ") + word);
        connect(field, &QAbstractButton::clicked, this, [this, code = key] { emit keyPressed(code); });
        grid->addWidget(field, i / kTouchColumns, i % kTouchColumns);
        ++i;
    }
    keys->hide();
    return keys;
}

void WalkPanel::setTargetHeight(int pixels)
{
    m_isTouch = pixels > 0;
    m_rows->setTargetHeight(pixels);
    m_list->doItemsLayout(); // measures its rows anew
    ui::setTargetHeight(*m_order, pixels);
    m_advice->setTargetHeight(pixels);
    placeFoot();
}

/// Advice is answered before anything else: for fingers there is no room for both.
void WalkPanel::placeFoot()
{
    m_legend->setVisible(!m_isTouch);
    m_touchKeys->setVisible(m_isTouch && !m_controller.advice());
}

void WalkPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    // The list has its new height only after this.
    QTimer::singleShot(0, this, &WalkPanel::showCalled);
}

void WalkPanel::showCalled()
{
    if (const int row = m_model->calledRow(); row >= 0)
        m_list->scrollTo(m_model->index(row), QAbstractItemView::PositionAtCenter);
}

/// What is called, over, put off or lacking may have changed anywhere in view. All rows painted with each
/// reading would be half of what the window has to draw.
void WalkPanel::paintChangedRows()
{
    std::unordered_map<int, WalkModel::Row> now;
    const QRect view = m_list->viewport()->rect();
    const QModelIndex first = m_list->indexAt(view.topLeft());
    for (int row = std::max(0, first.row()); row < m_model->rowCount(); ++row) {
        const QModelIndex index = m_model->index(row);
        if (m_list->visualRect(index).top() > view.bottom())
            break;
        WalkModel::Row shown = m_model->row(row);
        if (const auto before = m_shown.find(row); before == m_shown.end() || before->second != shown)
            m_list->update(index);
        now.emplace(row, std::move(shown));
    }
    m_shown = std::move(now);
}

/// Each repair opens a round of its own: who is in one of them must not forget the other.
void WalkPanel::showWaiting()
{
    QStringList rounds;
    // Asked of every round, so not with each digit; most jobs have one round until there is a repair.
    if (m_session.hasJob() && m_session.job().isOpenForWork() && m_session.job().rounds.size() > 1)
        for (const analysis::OpenRound& open : analysis::openRounds(m_session.job()))
            if (open.round != m_session.currentRound())
                rounds << tr("round %1 (%n call(s))", nullptr, open.left).arg(open.round->number);
    m_waiting->setText(rounds.isEmpty() ? QString()
                                        : tr("Also waits: %1").arg(rounds.join(QStringLiteral(", "))));
    m_waiting->setVisible(!rounds.isEmpty());
}

void WalkPanel::refresh()
{
    placeFoot(); // advice may have been answered
    m_model->refresh();
    paintChangedRows();
    const int all = m_controller.calls();
    const int done = m_controller.done();
    m_count->setText(all == 0 ? QString() : tr("<b>%1</b> of %2").arg(done).arg(all));
    m_thread->setShare(all > 0 ? static_cast<double>(done) / all : 0.0);
    m_timeLeft->setText(all == 0 ? QString() : timeLeftText(m_controller)); // not begun is not "nothing left"
    showCalled();
}

} // namespace sealwalk::ui
