// SPDX-License-Identifier: GPL-3.0-or-later
// The list of the walk. With a style sheet a list counts as see-through, and every line it scrolls by paints
// all of it anew; this one paints its own ground, so that what is scrolled is moved and only what is new is
// painted.
#pragma once

#include "ui/render/theme.h"

#include <QListView>
#include <QPaintEvent>
#include <QPainter>

namespace sealwalk::ui {

class WalkList : public QListView
{
public:
    using QListView::QListView;

    /// All rows are of one height whatever they say; QListView would lay out all of them.
    void dataChanged(const QModelIndex& first, const QModelIndex& last, const QList<int>& roles) override
    {
        QAbstractItemView::dataChanged(first, last, roles);
    }

protected:
    bool event(QEvent* event) override
    {
        const bool taken = QListView::event(event);
        if (event->type() == QEvent::Polish || event->type() == QEvent::StyleChange) // which take it away
            viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
        return taken;
    }
    void paintEvent(QPaintEvent* event) override
    {
        QPainter(viewport()).fillRect(event->rect(), render::Theme::of(this).colour(render::Role::Field));
        QListView::paintEvent(event);
    }
};

} // namespace sealwalk::ui
