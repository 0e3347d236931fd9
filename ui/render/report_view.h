// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of a report on the screen, one below the other, as they come on paper.
#pragma once

#include "core/report/report_content.h"
#include "ui/render/report_pdf.h"

#include <QAbstractScrollArea>
#include <QHash>
#include <QPixmap>

#include <memory>

namespace sealwalk::render {

namespace detail {
class Pages;
}

class ReportView : public QAbstractScrollArea
{
    Q_OBJECT

public:
    explicit ReportView(QWidget* parent = nullptr);
    ~ReportView() override;

    /// Lays the report out on the paper of `options`; the page in view stays in view.
    void setReport(std::shared_ptr<const report::ReportContent> content, PdfOptions options);
    [[nodiscard]] int pageCount() const;
    /// The page that fills most of the view, from 0.
    [[nodiscard]] int currentPage() const;
    void goTo(int page);
    /// Larger or smaller; 1 is a page at 96 px per inch.
    void zoomBy(double factor);
    /// As wide as the view, and so again when the view changes.
    void fitWidth();
    [[nodiscard]] double zoom() const { return m_zoom; }

signals:
    void pageChanged(int page);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Laid;
    void setZoom(double zoom);
    void arrange();
    [[nodiscard]] QSizeF pageSize() const;
    [[nodiscard]] QRectF pageRect(int page) const; ///< in the viewport
    [[nodiscard]] const QPixmap& picture(int page);

    std::unique_ptr<Laid> m_laid;
    QHash<int, QPixmap> m_pictures; ///< of the pages near the view, at this zoom
    double m_zoom = 1.0;
    bool m_fits = true;
    int m_current = -1;
};

} // namespace sealwalk::render
