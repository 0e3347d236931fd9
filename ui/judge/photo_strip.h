// SPDX-License-Identifier: GPL-3.0-or-later
// Photos that go with a record: added from files or the clipboard, kept by what they contain.
#pragma once

#include "core/base/result.h"

#include <QWidget>

#include <string>
#include <vector>

class QLabel;
class QListWidget;
class QPushButton;

namespace sealwalk::render {
struct PictureFile;
}

namespace sealwalk::ui {

class JobSession;

class PhotoStrip : public QWidget
{
    Q_OBJECT

public:
    explicit PhotoStrip(JobSession& session, QWidget* parent = nullptr);

    void setPhotos(const std::vector<std::string>& sha256);
    [[nodiscard]] std::vector<std::string> photos() const;
    /// Reads files one by one off the window's thread; what cannot be read is said beneath.
    void addFiles(const QStringList& files);
    void paste(); ///< a picture, or picture files, of the clipboard

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void choose();
    void keep(const Result<render::PictureFile>& picture);
    void show(const std::string& sha256);
    void removeChosen();
    void lookAtChosen();
    void say(const Error& error);

    JobSession& m_session;
    QListWidget* m_list;
    QPushButton* m_remove;
    QLabel* m_complaint;
};

} // namespace sealwalk::ui
