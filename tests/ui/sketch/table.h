// SPDX-License-Identifier: GPL-3.0-or-later
// A drawing table in a window of its own, over a fresh history, with hands that draw by real events.
#pragma once

#include "ui/sketch/canvas.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_page.h"

#include <QTemporaryDir>

#include <memory>

namespace sealwalk::ui {

class DrawingTable
{
public:
    /// With an empty job; `withSheet`: and one sheet "Sheet 1".
    explicit DrawingTable(bool withSheet = true);

    JobSession& session() { return *m_session; }
    SketchPage& page() { return *m_page; }
    SketchCanvas& canvas() { return m_page->canvas(); }
    [[nodiscard]] const model::Sketch& sketch() const { return m_page->desk().sketch(); }
    /// What the note line said last.
    [[nodiscard]] QString note() const { return m_note; }

    [[nodiscard]] QPoint at(double x, double up);
    void drag(double x1, double up1, double x2, double up2, Qt::KeyboardModifiers keys = {});
    void click(double x, double up, Qt::KeyboardModifiers keys = {});
    void hover(double x, double up);
    void key(Qt::Key key, Qt::KeyboardModifiers keys = {});
    void type(const char* text);

    /// An edit that does not come from the hand.
    void commit(const Result<editing::Edit>& edit);

private:
    QTemporaryDir m_folder;
    std::unique_ptr<JobSession> m_session;
    std::unique_ptr<SketchPage> m_page;
    QString m_note;
};

} // namespace sealwalk::ui
