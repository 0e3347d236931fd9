// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/joint_list.h"

#include "ui/render/icon.h"
#include "ui/sketch/joint_painter.h"
#include "ui/sketch/sketch_desk.h"

#include <QHeaderView>

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace sealwalk::ui {

namespace {

constexpr int kIdRole = Qt::UserRole + 1;
constexpr int kLeastRows = 4; // in view; the panel scrolls rather than show fewer
constexpr int kRowHeight = 24;

} // namespace

QString numbersText(const std::vector<const model::TestPoint*>& points)
{
    std::vector<int> numbers;
    for (const model::TestPoint* point : points)
        numbers.push_back(point->number);
    std::sort(numbers.begin(), numbers.end());
    QString text;
    int runs = 0;
    for (std::size_t i = 0; i < numbers.size(); ++runs) {
        std::size_t j = i;
        while (j + 1 < numbers.size() && numbers[j + 1] == numbers[j] + 1)
            ++j;
        constexpr int kMostRuns = 3;
        if (runs == kMostRuns)
            return text + QStringLiteral(" …");
        if (!text.isEmpty())
            text += QStringLiteral(", ");
        text += QString::number(numbers[i]);
        if (j > i)
            text += (j == i + 1 ? QStringLiteral(", ") : QStringLiteral("–")) + QString::number(numbers[j]);
        i = j + 1;
    }
    return text;
}

JointList::JointList(SketchDesk& desk, QWidget* parent)
    : QTreeWidget(parent)
    , m_desk(desk)
{
    setObjectName(QStringLiteral("joint-list"));
    setAccessibleName(tr("Joints on this sheet"));
    setColumnCount(2);
    setHeaderHidden(true);
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setIconSize(QSize(18, 18));
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    setMinimumHeight(kLeastRows * kRowHeight);
    connect(this, &QTreeWidget::itemSelectionChanged, this, &JointList::takeChosen);
    connect(&desk, &SketchDesk::sketchChanged, this, &JointList::refresh);
    connect(&desk, &SketchDesk::sheetChanged, this, &JointList::refresh);
    connect(&desk, &SketchDesk::chosenChanged, this, &JointList::showChosen);
    refresh();
}

void JointList::refresh()
{
    m_refreshing = true;
    std::unordered_map<model::JointId, std::vector<const model::TestPoint*>> pointsOf;
    std::unordered_set<model::JointId> hadPoints;
    for (const model::TestPoint& point : m_desk.sketch().points)
        if (point.retired)
            hadPoints.insert(point.joint);
        else
            pointsOf[point.joint].push_back(&point);
    const std::vector<const model::Joint*> joints = m_desk.sketch().jointsOn(m_desk.sheet());
    while (topLevelItemCount() > static_cast<int>(joints.size()))
        delete takeTopLevelItem(topLevelItemCount() - 1);
    for (int i = 0; i < static_cast<int>(joints.size()); ++i) {
        const model::Joint& joint = *joints[static_cast<std::size_t>(i)];
        QTreeWidgetItem* item = topLevelItem(i);
        if (item == nullptr) {
            item = new QTreeWidgetItem(this);
            item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
            item->setSizeHint(0, QSize(0, 30));
        }
        const QString kind = iconOf(joint.kind);
        if (item->data(0, kIdRole + 1).toString() != kind) {
            item->setIcon(0, render::icon(kind));
            item->setData(0, kIdRole + 1, kind);
        }
        item->setText(0, nameShown(joint));
        const bool isRetired = pointsOf[joint.id].empty() && hadPoints.contains(joint.id);
        item->setText(1, isRetired ? tr("retired") : numbersText(pointsOf[joint.id]));
        item->setToolTip(0, nameOf(joint.kind));
        item->setData(0, kIdRole, QString::fromStdString(joint.id.text()));
        item->setData(0, Qt::AccessibleTextRole,
                      tr("%1, %2, points %3").arg(item->text(0), nameOf(joint.kind), item->text(1)));
    }
    m_refreshing = false;
    showChosen();
}

void JointList::showEvent(QShowEvent* event)
{
    QTreeWidget::showEvent(event);
    showChosen();
}

void JointList::showChosen()
{
    if (!isVisible())
        return; // while spraying, every reading chooses another point
    m_refreshing = true;
    const std::vector<const model::Joint*> joints = m_desk.sketch().jointsOn(m_desk.sheet());
    for (int i = 0; i < topLevelItemCount() && i < static_cast<int>(joints.size()); ++i) {
        const bool chosen = m_desk.isChosen(joints[static_cast<std::size_t>(i)]->id);
        QTreeWidgetItem* item = topLevelItem(i);
        if (item->isSelected() != chosen)
            item->setSelected(chosen);
        if (chosen && m_desk.chosen().size() == 1)
            scrollToItem(item);
        if (item->font(0).bold() != chosen)
            for (const int column : {0, 1}) {
                QFont font = item->font(column);
                font.setBold(chosen);
                item->setFont(column, font);
            }
    }
    m_refreshing = false;
}

void JointList::takeChosen()
{
    if (m_refreshing)
        return;
    std::vector<model::JointId> ids;
    for (const QTreeWidgetItem* item : selectedItems())
        if (const auto id = model::JointId::parse(item->data(0, kIdRole).toString().toStdString()))
            ids.push_back(*id);
    m_desk.choose(std::move(ids));
}

} // namespace sealwalk::ui
