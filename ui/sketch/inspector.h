// SPDX-License-Identifier: GPL-3.0-or-later
// The right-hand side: what is chosen, its points, the list of joints, what is often forgotten.
#pragma once

#include <QScrollArea>

class QComboBox;
class QLabel;
class QLineEdit;

namespace sealwalk::ui {

class Heading;
class JointList;
class JointPanel;
class PointsPanel;
class SeveralPanel;
class SheetPanel;
class SketchDesk;

class Inspector : public QScrollArea
{
    Q_OBJECT

public:
    static constexpr int kWidth = 322;  ///< beside the drawing, px
    static constexpr int kWidest = 400; ///< the same, in a language of long words

    explicit Inspector(SketchDesk& desk, QWidget* parent = nullptr);
    /// Beside the drawing it takes what its words need; else it may fill the page.
    void setBesideDrawing(bool beside);

signals:
    void pictureWanted();
    void remindersWanted();
    void finished(); ///< what was asked is done: keys belong to the drawing again

protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void fitWidth();
    void refreshReminder();
    bool leaveField(QLineEdit& field);
    void noteTab(const QComboBox* box, Qt::FocusReason reason);

    SketchDesk& m_desk;
    bool m_beside = true;
    int m_width = kWidth;    ///< beside the drawing, px
    bool m_isBehind = false; ///< something changed while nobody saw it
    const QComboBox* m_tabbedTo = nullptr; ///< the box the keyboard came to by Tab
    JointPanel* m_joint = nullptr;
    PointsPanel* m_points = nullptr;
    SeveralPanel* m_several = nullptr;
    SheetPanel* m_sheet = nullptr;
    Heading* m_listHead = nullptr;
    JointList* m_list = nullptr;
    QLabel* m_reminder = nullptr;
};

} // namespace sealwalk::ui
