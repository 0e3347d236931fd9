// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet being drawn on: shows the sketch and what the tool in hand would do to it, and passes the hand's
// movements to the tool.
#pragma once

#include "ui/sketch/joint_painter.h"
#include "ui/sketch/overlay_painter.h"
#include "ui/sketch/sheet_view.h"
#include "ui/sketch/tool.h"

#include <QPixmap>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <memory>
#include <unordered_set>

namespace sealwalk::ui {

class SketchDesk;
class UnderlayImages;

class SketchCanvas : public QWidget
{
    Q_OBJECT

public:
    SketchCanvas(SketchDesk& desk, UnderlayImages& images, QWidget* parent = nullptr);
    ~SketchCanvas() override;

    void setTool(std::unique_ptr<Tool> tool);
    /// What the key does here, wherever the keyboard is.
    void press(QKeyEvent& event) { keyPressEvent(&event); }
    [[nodiscard]] Tool* tool() const { return m_tool.get(); }
    [[nodiscard]] const SizeEntry& entry() const { return m_entry; }
    [[nodiscard]] const SheetView& view() const { return m_view; }
    /// Where the hand is: the mouse, or the place the arrow keys have led it to.
    [[nodiscard]] Hand hand() const;

    /// Keys the tool has no use for; answers whether one was used.
    void setCommands(std::function<bool(const QKeyEvent&)> commands) { m_commands = std::move(commands); }

    void fit();
    void zoom(double factor); ///< about the middle
    void setShowsRulers(bool shows);
    [[nodiscard]] bool showsRulers() const { return m_rulers; }
    /// px at the left and top that rulers take.
    [[nodiscard]] double rulerWidth() const { return m_rulers ? 18.0 : 0.0; }

signals:
    void toolLaidDown();
    void hintsChanged();
    void handMoved(double x, double up);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void take(Verdict verdict);
    bool typeSize(const QKeyEvent& event);
    void sizesTyped();
    bool moveHandBy(const QKeyEvent& event);
    void keepHandInView();
    void tapAtHand();
    void handOver(QPointF at, Qt::KeyboardModifiers keys);
    void sketchChanged();
    void viewChanged();
    void describe();

    [[nodiscard]] const std::vector<DrawnJoint>& drawn();
    /// Paints what stands still. While the view is being moved, the last picture is moved and stretched with
    /// it, and painted anew when the hand rests.
    void paintLayer(QPainter& painter, const model::Sheet* sheet,
                    const std::unordered_set<model::JointId>& hidden);
    void renewLayer(const model::Sheet* sheet, const std::unordered_set<model::JointId>& hidden);
    void paintOverlay(QPainter& painter, const model::Sketch& shown,
                      const std::unordered_set<model::JointId>& touched);
    void paintChosen(QPainter& painter, const model::Sketch& shown, const model::Joint& joint);

    SketchDesk& m_desk;
    UnderlayImages& m_images;
    std::unique_ptr<Tool> m_tool;
    std::function<bool(const QKeyEvent&)> m_commands;
    SheetView m_view;
    SizeEntry m_entry;
    std::vector<SizePlate> m_plates;
    QPointF m_at;
    Qt::KeyboardModifiers m_keys;
    bool m_handByKeys = false;
    bool m_handKnown = false; ///< over the sheet; else the middle of it stands for the hand
    bool m_pressed = false;
    bool m_panning = false;
    bool m_spaceHeld = false;
    bool m_spacePanned = false;
    bool m_rulers = true;
    bool m_fitted = false;
    QPointF m_panFrom;

    std::vector<DrawnJoint> m_drawn;
    double m_drawnScale = 0.0;
    QPixmap m_layer; ///< larger than the window by a margin, so that panning can draw on it
    QPointF m_layerOrigin;
    double m_layerScale = 0.0;
    bool m_layerStale = true; ///< shows another sketch, theme or size
    QTimer m_rest;
    std::unordered_set<model::JointId> m_layerHidden;
};

} // namespace sealwalk::ui
