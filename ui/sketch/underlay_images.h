// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures under sheets, read from the history and decoded behind the window.
#pragma once

#include "core/model/sketch.h"
#include "ui/render/picture_file.h"

#include <QObject>

#include <map>
#include <set>
#include <string>

class QPainter;

namespace sealwalk::ui {

class JobSession;

class UnderlayImages : public QObject
{
    Q_OBJECT

public:
    explicit UnderlayImages(JobSession& session, QObject* parent = nullptr);

    /// Begins to load a picture that is not there yet.
    void request(const std::string& picture);
    [[nodiscard]] const render::DecodedPicture* find(const std::string& picture) const;

    /// Paints the underlay of a sheet, if it is there. Origin: the sheet's; `scale` px per mm.
    void paint(QPainter& painter, const model::Sheet& sheet, double scale) const;

signals:
    void loaded();
    void failed(const QString& why);

private:
    JobSession& m_session;
    std::map<std::string, render::DecodedPicture> m_pictures;
    std::set<std::string> m_requested;
};

} // namespace sealwalk::ui
