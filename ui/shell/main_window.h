// SPDX-License-Identifier: GPL-3.0-or-later
// The window: menu row, stage strip, the page of the stage, note line. It composes; the pages do the work.
#pragma once

#include "core/base/error.h"
#include "core/model/ids.h"
#include "ui/shell/shell_settings.h"
#include "ui/shell/stage.h"
#include "ui/widgets/note.h"

#include <QMainWindow>
#include <QTimer>

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <vector>

class QStackedWidget;

namespace sealwalk::ui {

class Corner;
class FeedSession;
class HistoryPage;
class JobSession;
class Menus;
class NoteLine;
class RecordWatch;
class StageStrip;

class MainWindow : public QMainWindow
{
    Q_OBJECT

public:
    MainWindow(JobSession& session, ShellSettings& settings, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Takes a stage's page in, in the order of the stages, and listens to what it says.
    template <class Page>
    void addPage(Stage stage, Page* page);

    [[nodiscard]] QWidget* page(Stage stage) const; ///< nullptr when there is none
    [[nodiscard]] Stage stage() const { return m_stage; }
    /// Does nothing for a stage without a page, or one that needs a job when none is open.
    void showStage(Stage stage);
    /// Where the open job's work goes on.
    void showStageOfWork();

    [[nodiscard]] JobSession& session() const { return m_session; }
    [[nodiscard]] ShellSettings& settings() const { return m_settings; }
    [[nodiscard]] HistoryPage& historyPage() const { return *m_history; }
    [[nodiscard]] NoteLine& noteLine() const { return *m_note; }
    [[nodiscard]] StageStrip& strip() const { return *m_strip; }
    [[nodiscard]] Corner& corner() const { return *m_corner; }
    [[nodiscard]] FeedSession& feed() const { return *m_feed; }

    void say(Severity severity, const QString& text, const QString& aside = {});
    /// What a page said is done with: it goes, unless something else was said meanwhile.
    void settle(const QString& text);
    /// In the note line; in a box as well when work may be lost.
    void report(const Error& error);

    void setTheme(render::ThemeName theme);
    /// For every report and map from now on.
    void chooseReportLanguage(const QString& code);
    void toggleKeyCard();

signals:
    void soundsChanged(bool on);
    void touchStripChanged(bool on);
    void presenterChanged(const sealwalk::ui::PresenterKeys& keys);

protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void listen();
    void refresh();
    void addPageWidget(Stage stage, QWidget* page);
    void onJobChanged();
    [[nodiscard]] bool mayClose();
    void tellWrong();
    /// What keeps the open job from being what was signed; empty: nothing, or it is not known yet.
    [[nodiscard]] QString wrongWithJob() const;

    JobSession& m_session;
    ShellSettings& m_settings;
    QTimer m_walked;
    StageStrip* m_strip = nullptr;
    QStackedWidget* m_pages = nullptr;
    NoteLine* m_note = nullptr;
    Corner* m_corner = nullptr;
    bool m_narrow = false;
    FeedSession* m_feed = nullptr;
    Menus* m_menus = nullptr;
    HistoryPage* m_history = nullptr;
    std::map<Stage, QWidget*> m_byStage;
    std::set<Stage> m_seen; ///< shown since the program began
    RecordWatch* m_watch = nullptr;
    model::JobId m_toldWrong; ///< it was said already
    Stage m_stage = Stage::History;
    std::vector<std::function<QString()>>
        m_unstored; ///< of each page that may hold such: what waits to be stored
};

template <class Page>
void MainWindow::addPage(Stage stage, Page* page)
{
    addPageWidget(stage, page);
    if constexpr (requires { &Page::noteRequested; })
        connect(page, &Page::noteRequested, this,
                [this](Severity severity, const QString& text) { say(severity, text); });
    if constexpr (requires { &Page::noteSettled; })
        connect(page, &Page::noteSettled, this, &MainWindow::settle);
    if constexpr (requires { &Page::failed; })
        connect(page, &Page::failed, this, &MainWindow::report);
    if constexpr (requires { &Page::unstoredInWords; })
        m_unstored.emplace_back([page] { return page->unstoredInWords(); });
    if constexpr (requires { &Page::progressChanged; })
        connect(page, &Page::progressChanged, this, &MainWindow::refresh);
    if constexpr (requires(bool on) { page->setSoundsOn(on); }) {
        page->setSoundsOn(m_settings.soundsOn());
        connect(this, &MainWindow::soundsChanged, page, &Page::setSoundsOn);
    }
}

} // namespace sealwalk::ui
