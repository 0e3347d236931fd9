// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures under sheets, read from the history and decoded behind the window; one store for all stages.
#pragma once

#include "core/model/sketch.h"
#include "ui/render/underlay_picture.h"

#include <QObject>

#include <cstdint>
#include <map>
#include <set>
#include <string>

class QPainter;

namespace sealwalk::render {
class SheetView;
}

namespace sealwalk::ui {

class JobSession;

class UnderlayImages : public QObject
{
    Q_OBJECT

public:
    /// The store of a session: made when it is first asked for, gone with it.
    static UnderlayImages& of(JobSession& session);
    /// From now on the view shows the picture under its sheet as soon as it is decoded.
    static void showBeneath(render::SheetView& view, JobSession& session);

    /// The picture if it is there; else begins to load it and answers nullptr. `loaded` tells when to ask
    /// again. The answer holds until the event loop is entered again.
    const render::UnderlayPicture* find(const std::string& picture);

    /// Paints the underlay of a sheet, if it is there. Origin: the sheet's; `scale` px per mm.
    void paint(QPainter& painter, const render::Theme& theme, const model::Sheet& sheet, double scale);

signals:
    void loaded();
    void failed(const QString& why);

private:
    struct Kept
    {
        render::UnderlayPicture picture;
        std::uint64_t lastAsked = 0;
    };

    explicit UnderlayImages(JobSession& session);
    void keep(const std::string& name, render::UnderlayPicture picture);

    JobSession& m_session;
    std::map<std::string, Kept> m_pictures;
    std::set<std::string> m_requested; ///< being decoded, or in vain
    std::uint64_t m_asked = 0;
};

} // namespace sealwalk::ui
