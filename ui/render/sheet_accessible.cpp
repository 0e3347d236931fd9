// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/sheet_accessible.h"

#include "ui/render/core_words.h"
#include "ui/render/sheet_view.h"

#include <QAccessible>
#include <QAccessibleWidget>

#include <unordered_map>

namespace sealwalk::render {

namespace {

/// One point of the map.
class PointAccessible : public QAccessibleInterface
{
public:
    PointAccessible(SheetView* view, std::size_t index)
        : m_view(view)
        , m_index(index)
    {}

    [[nodiscard]] bool isValid() const override
    {
        return m_view->content() != nullptr && m_index < m_view->content()->stretches.size();
    }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override
    {
        return QAccessible::queryAccessibleInterface(m_view);
    }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text which) const override
    {
        if (!isValid())
            return {};
        const report::MapStretch& stretch = m_view->content()->stretches[m_index];
        if (which == QAccessible::Name)
            return inPhrases(stretch.spoken);
        if (which == QAccessible::Description)
            return QString::fromStdString(m_view->content()->joints[stretch.joint].name) +
                   QStringLiteral(", ") + inPhrases(stretch.tip);
        return {};
    }
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QRect rect() const override
    {
        const QRect room = m_view->roomOf(m_index);
        return {m_view->mapToGlobal(room.topLeft()), room.size()};
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state;
        state.selectable = true;
        state.focusable = true;
        state.selected = m_view->selectedIndex() == m_index;
        return state;
    }
    [[nodiscard]] std::size_t index() const { return m_index; }

private:
    SheetView* m_view;
    std::size_t m_index;
};

class SheetAccessible : public QAccessibleWidget
{
public:
    explicit SheetAccessible(SheetView* view)
        : QAccessibleWidget(view, QAccessible::List, view->accessibleName())
        , m_view(view)
    {}
    ~SheetAccessible() override
    {
        for (const auto& known : m_children)
            QAccessible::deleteAccessibleInterface(known.second);
    }

    [[nodiscard]] int childCount() const override
    {
        return m_view->content() == nullptr ? 0 : static_cast<int>(m_view->content()->stretches.size());
    }
    [[nodiscard]] QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        if (const auto known = m_children.find(index); known != m_children.end())
            return QAccessible::accessibleInterface(known->second);
        // Registered with Qt, which deletes it when told to; freed in the destructor above.
        auto* made = new PointAccessible(m_view, static_cast<std::size_t>(index));
        m_children.emplace(index, QAccessible::registerAccessibleInterface(made));
        return made;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* wanted) const override
    {
        const auto* point = dynamic_cast<const PointAccessible*>(wanted);
        return point == nullptr ? -1 : static_cast<int>(point->index());
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override
    {
        const auto point = m_view->pointAt(m_view->mapFromGlobal(QPoint(x, y)));
        if (!point || m_view->content() == nullptr)
            return nullptr;
        const report::MapStretch* stretch = m_view->content()->stretchOf(*point);
        return child(static_cast<int>(stretch - m_view->content()->stretches.data()));
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override
    {
        const auto index = m_view->selectedIndex();
        return index ? child(static_cast<int>(*index)) : nullptr;
    }

private:
    SheetView* m_view;
    mutable std::unordered_map<int, QAccessible::Id> m_children;
};

QAccessibleInterface* make(const QString&, QObject* object)
{
    auto* view = qobject_cast<SheetView*>(object);
    return view == nullptr ? nullptr : new SheetAccessible(view);
}

} // namespace

void installSheetAccessibility()
{
    static const bool installed = [] {
        QAccessible::installFactory(&make);
        return true;
    }();
    (void)installed;
}

} // namespace sealwalk::render
