// SPDX-License-Identifier: GPL-3.0-or-later
// Sets up a detector's feed: source and reading at the left, the last lines as they come and what they are
// read as at the right.
#pragma once

#include "core/feed/feed_profile.h"

#include <QDialog>
#include <QTimer>

#include <memory>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSettings;
class QTableWidget;

namespace sealwalk::ui {

class FeedSession;
class FormatForm;
class SourceForm;

class FeedDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param feed  the window's own; taken over by "Use this feed", left as it was by "Cancel"
    FeedDialog(FeedSession& feed, QSettings& settings, QWidget* parent = nullptr);
    ~FeedDialog() override;

    [[nodiscard]] feed::FeedProfile profile() const;
    void reject() override;

private:
    QWidget* makeForms();
    QWidget* makePreview();
    void fillNames();
    void showProfile(const feed::FeedProfile& profile);
    void listen();
    void use();
    void turnOff();
    void remove();
    void refresh();
    /// The session whose lines are shown: the window's own when it has the same source.
    [[nodiscard]] const FeedSession* listened() const;

    FeedSession& m_feed;
    QSettings& m_settings;
    std::vector<feed::FeedProfile> m_profiles;
    std::unique_ptr<FeedSession> m_preview;
    feed::FeedProfile m_before;
    bool m_wasOn = false;
    bool m_paused = false; ///< the window's own feed had to let go of the port
    QComboBox* m_known = nullptr;
    QLineEdit* m_name = nullptr;
    SourceForm* m_source = nullptr;
    FormatForm* m_format = nullptr;
    QPushButton* m_listen = nullptr;
    QLabel* m_state = nullptr;
    QTableWidget* m_lines = nullptr;
    QLabel* m_says = nullptr;
    QPushButton* m_use = nullptr;
    QPushButton* m_off = nullptr;
    QPushButton* m_remove = nullptr;
    QTimer m_look;
};

} // namespace sealwalk::ui
