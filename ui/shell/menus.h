// SPDX-License-Identifier: GPL-3.0-or-later
// The menu row and the keys that hold everywhere.
#pragma once

#include "ui/shell/go_to.h"
#include "ui/shell/stage.h"

#include <QKeySequence>
#include <QObject>

#include <functional>
#include <map>
#include <vector>

class QAction;
class QMenu;

namespace sealwalk::ui {

class MainWindow;

class Menus : public QObject
{
    Q_OBJECT

public:
    explicit Menus(MainWindow& window);

    /// Which commands make sense now.
    void refresh();
    /// Every enabled command, for the go-to list.
    [[nodiscard]] std::vector<Destination> commands() const;

private:
    QAction* add(QMenu* menu, const QString& text, const QKeySequence& key, std::function<void()> does);
    void buildFile();
    void buildReportLanguages(QMenu* menu);
    void buildEdit();
    void buildSketch(QMenu* menu);
    void buildView();
    void buildSheets(QMenu* menu);
    void buildJob();
    void buildTools();
    void buildHelp();

    MainWindow& m_window;
    std::vector<QAction*> m_actions;
    std::vector<QAction*> m_needHistory;
    std::vector<QAction*> m_needJob;
    std::vector<QAction*> m_needOpenJob;
    std::vector<QAction*> m_needSignedJob;
    std::vector<QAction*> m_needSketch; ///< that stage in view, and its job open for work
    std::map<int, QAction*> m_themes;
    std::map<QString, QAction*> m_reportLanguages; ///< by code
    QAction* m_sounds = nullptr;
    QAction* m_fullScreen = nullptr;
    QAction* m_paperSheets = nullptr;
    QAction* m_touch = nullptr;
    QAction* m_transcribe = nullptr;
};

} // namespace sealwalk::ui
