// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet's map in a window: zoom at the cursor, pan, fit, a point under the mouse or under the keys.
#pragma once

#include "core/report/map_content.h"
#include "ui/render/sheet_picture.h"
#include "ui/render/thread_painter.h"

#include <QPixmap>
#include <QWidget>

class QTimer;

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::render {

class UnderlayPicture;

/// Helium of the last spray, hatched over the sheet.
struct Plume
{
    std::vector<geometry::Point> outline; ///< mm
    QString text;                         ///< "helium of 17, still rising"
};

/// Keys: + and − zoom, 0 fits, arrows pan, Page Up and Page Down step through the points, Enter activates the
/// selected point. Assistive technology sees the points as children with their spoken text.
class SheetView : public QWidget
{
    Q_OBJECT

public:
    explicit SheetView(QWidget* parent = nullptr);
    ~SheetView() override;

    /// Shows a map. The view stays where it is while the same sheet is shown, and fits another one.
    void setContent(std::shared_ptr<const report::MapContent> content);
    /// Shows a map at the scale and place of the one before, so that the eye sees only what differs.
    void blinkTo(std::shared_ptr<const report::MapContent> content);
    [[nodiscard]] const report::MapContent* content() const { return m_content.get(); }
    /// Where the picture under a sheet comes from, by its name in the content's underlay. Asked while
    /// painting; answers nullptr while there is none, and refreshUnderlay() when that has changed.
    using Underlays = std::function<const UnderlayPicture*(const std::string& picture)>;
    void setUnderlays(Underlays underlays);
    void refreshUnderlay();
    /// Another map of the same sheet laid over this one: a narrow line through the middle of each band, on
    /// the same scale and without words. nullptr: none.
    void setCore(std::shared_ptr<const report::MapContent> core);
    [[nodiscard]] const report::MapContent* core() const { return m_core.get(); }
    void setParts(const SheetParts& parts);
    void setGridVisible(bool visible);

    void setSelected(std::optional<model::PointId> point);
    [[nodiscard]] std::optional<model::PointId> selected() const { return m_selected; }
    /// Points the words beside the map are about: thinly ringed.
    void setMarked(std::vector<model::PointId> points);
    /// The called point: ringed, with its number on a flag.
    void setCurrent(std::optional<model::PointId> point);
    void setPlume(std::optional<Plume> plume);
    /// Threads from leaks to points that answered to them; those of other sheets are not drawn.
    void setThreads(std::vector<Thread> threads);
    [[nodiscard]] const std::vector<Thread>& threads() const { return m_threads; }
    /// Dims the map under a few words, such as "working out …"; empty: as usual.
    void setNotice(const QString& text);
    [[nodiscard]] QString notice() const { return m_notice; }

    void fit();
    void zoomBy(double factor);
    void zoomBy(double factor, QPointF at);
    /// Brings a point into view without zooming.
    void reveal(model::PointId point);
    [[nodiscard]] double pixelsPerMillimetre() const { return m_scale; }
    [[nodiscard]] QPointF toView(geometry::Point place) const;
    [[nodiscard]] geometry::Point toSheet(QPointF place) const;
    [[nodiscard]] std::optional<model::PointId> pointAt(QPointF place) const;
    /// Where a stretch stands in the widget, for tool tips and screen readers.
    [[nodiscard]] QRect roomOf(std::size_t stretch) const;
    [[nodiscard]] std::optional<std::size_t> selectedIndex() const;

    [[nodiscard]] QSize sizeHint() const override { return {572, 560}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {160, 160}; }

signals:
    void pointClicked(sealwalk::model::PointId point);
    void pointActivated(sealwalk::model::PointId point); ///< double click, or Enter on the selected one
    void pointHovered(sealwalk::model::PointId point);   ///< nil when none
    void emptyClicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    void takeContent(std::shared_ptr<const report::MapContent> content);
    void announce();
    void rescale();
    void refit();
    bool giveRoom();
    void moveToMiddle();
    [[nodiscard]] bool hasRoom() const;
    [[nodiscard]] double fittingScale(QSizeF labels) const;
    [[nodiscard]] QSizeF laidLabels() const;
    void drop(bool layout);
    void settle();
    [[nodiscard]] double pictureFactor() const; ///< view scale over the scale the picture was laid out for
    [[nodiscard]] QPointF toPicture(QPointF place) const;
    void paintGround(QPainter& painter, const Theme& theme) const;
    void paintLeftOut(QPainter& painter, const Theme& theme) const;
    void paintOver(QPainter& painter, const Theme& theme) const;
    [[nodiscard]] QPointF flagSide(std::size_t stretch, QSizeF size, const QRectF& seen) const;
    void paintFlag(QPainter& painter, const Theme& theme, std::size_t stretch) const;
    void paintPlume(QPainter& painter, const Theme& theme) const;
    void paintThreads(QPainter& painter, const Theme& theme) const;
    void paintNotice(QPainter& painter, const Theme& theme) const;
    void paintMarked(QPainter& painter, const Theme& theme) const;
    void renderLayer(const Theme& theme);
    void step(int by);
    [[nodiscard]] std::optional<std::size_t> indexOf(const std::optional<model::PointId>& point) const;
    [[nodiscard]] QRectF sheetRect() const;

    std::shared_ptr<const report::MapContent> m_content;
    std::unique_ptr<SheetPicture> m_picture; ///< laid out at m_scale
    std::shared_ptr<const report::MapContent> m_core;
    std::unique_ptr<SheetPicture> m_corePicture; ///< laid out at m_scale
    Underlays m_underlays;
    SheetParts m_parts;
    bool m_grid = true;
    bool m_fitted = true; ///< follows the window until the user zooms or pans
    double m_scale = 0.4;
    QPointF m_origin;   ///< of the sheet in the widget
    QPixmap m_layer;    ///< ground, bands and labels, with a margin around the widget
    QRectF m_layerRoom; ///< in picture coordinates
    const Theme* m_layerTheme = nullptr;
    double m_cost = 0.0; ///< ms the last layout and layer took; dear ones wait for the zoom to settle
    QTimer* m_settle = nullptr;
    std::optional<model::PointId> m_selected;
    std::vector<model::PointId> m_marked;
    std::optional<model::PointId> m_current;
    std::optional<model::PointId> m_hovered;
    std::optional<Plume> m_plume;
    std::vector<Thread> m_threads;
    QString m_notice;
    std::optional<QPointF> m_dragFrom;
    QPointF m_dragOrigin;
    bool m_dragged = false;
};

} // namespace sealwalk::render
