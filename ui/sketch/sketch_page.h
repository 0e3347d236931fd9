// SPDX-License-Identifier: GPL-3.0-or-later
// The sketch stage: tools at the left, the sheet, the inspector at the right. Composition and keys only.
#pragma once

#include "core/model/ids.h"
#include "ui/sketch/tool_rail.h"
#include "ui/widgets/note.h"

#include <QWidget>

#include <memory>
#include <vector>

class QKeyEvent;
class QStackedWidget;

namespace sealwalk::ui {

class GestureLine;
class Inspector;
class JobSession;
class NoSheet;
class SheetBar;
class SketchCanvas;
class SketchCommands;
class SketchDesk;
class Tool;
class UnderlayImages;

class SketchPage : public QWidget
{
    Q_OBJECT

public:
    explicit SketchPage(JobSession& session, QWidget* parent = nullptr);
    ~SketchPage() override;

    [[nodiscard]] SketchDesk& desk() { return *m_desk; }
    [[nodiscard]] SketchCanvas& canvas() { return *m_canvas; }
    /// "29 points so far", for the strip.
    [[nodiscard]] QString progressText() const;
    void takeTool(ToolId id);
    /// What the key does on the sheet; a text that is being typed in keeps copy, cut, paste and select all.
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers);
    /// The sheet in view without findings, to write on.
    void printSheet();
    /// Puts a picture under the sheet in view, or under a new one; page (from 0) of a PDF.
    void usePicture(const QString& file, int page, bool onNewSheet);

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void progressChanged();
    void nameWanted(); ///< what is said stands under a name

protected:
    void showEvent(QShowEvent* event) override;

private:
    [[nodiscard]] std::vector<model::SheetId> askSheets();
    void layOut();
    void listen();
    void addShortcuts();
    void refresh();
    void refreshHints();
    void newSheet();
    void choosePicture(bool onNewSheet);
    void goThroughReminders();
    bool command(const QKeyEvent& event);
    [[nodiscard]] std::unique_ptr<Tool> make(ToolId id) const;

    SketchDesk* m_desk = nullptr;
    UnderlayImages* m_images = nullptr;
    ToolRail* m_rail = nullptr;
    SheetBar* m_bar = nullptr;
    QStackedWidget* m_stack = nullptr;
    SketchCanvas* m_canvas = nullptr;
    NoSheet* m_noSheet = nullptr;
    GestureLine* m_line = nullptr;
    Inspector* m_inspector = nullptr;
    std::unique_ptr<SketchCommands> m_commands;
    ToolId m_toolId = ToolId::Select;
};

} // namespace sealwalk::ui
