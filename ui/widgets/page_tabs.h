// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of a page side by side where there is room; one at a time behind tabs (Ctrl+M) where there is not.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

class QTabBar;

namespace sealwalk::ui {

class PageTabs : public QWidget
{
    Q_OBJECT

public:
    struct Part
    {
        QString title;
        QWidget* widget = nullptr; ///< somewhere within the body
    };

    /// Takes `body` over. Tabs appear when the page is narrower than `needs`, px.
    PageTabs(QWidget* body, std::vector<Part> parts, int needs, QWidget* parent = nullptr);
    [[nodiscard]] bool isNarrow() const { return m_narrow; }
    /// Brings the part to the front that is or holds this widget; without tabs nothing happens.
    void bringUp(const QWidget* widget);
    void next();

signals:
    void turned(QWidget* part); ///< another tab came to the front of a narrow page
    void narrowed(bool isNarrow);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    void showParts();

    QWidget* m_body;
    std::vector<Part> m_parts;
    int m_needs;
    QTabBar* m_tabs;
    bool m_narrow = false;
};

} // namespace sealwalk::ui
