// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/underlay_images.h"

#include "ui/session/beside.h"
#include "ui/session/job_session.h"

#include <QPainter>

#include <memory>
#include <numbers>

namespace sealwalk::ui {

UnderlayImages::UnderlayImages(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{
    connect(&session, &JobSession::historyChanged, this, [this] {
        if (!m_session.hasHistory())
            m_requested.clear();
    });
}

void UnderlayImages::request(const std::string& picture)
{
    if (m_pictures.contains(picture) || !m_requested.insert(picture).second)
        return;
    const Result<model::Picture> stored = m_session.picture(picture);
    if (!stored) {
        emit failed(QString::fromStdString(stored.error().message));
        return;
    }
    using Decoded = Result<render::DecodedPicture>;
    runBeside<Decoded>(
        this,
        [bytes = stored->bytes, extension = stored->extension] {
            return render::decodePicture(bytes, extension);
        },
        [this, picture](const Decoded& decoded) {
            if (!decoded) {
                emit failed(QString::fromStdString(decoded.error().message));
                return;
            }
            m_pictures[picture] = *decoded;
            emit loaded();
        });
}

const render::DecodedPicture* UnderlayImages::find(const std::string& picture) const
{
    const auto found = m_pictures.find(picture);
    return found == m_pictures.end() ? nullptr : &found->second;
}

void UnderlayImages::paint(QPainter& painter, const model::Sheet& sheet, double scale) const
{
    if (!sheet.underlay)
        return;
    const render::DecodedPicture* picture = find(sheet.underlay->picture);
    if (picture == nullptr)
        return;
    const model::Underlay& underlay = *sheet.underlay;
    const double perPixel = underlay.millimetresPerPixel * scale;
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(underlay.opacity);
    painter.translate(underlay.corner.x * scale, -underlay.corner.y * scale);
    painter.rotate(-underlay.rotation * 180.0 / std::numbers::pi);
    const QSizeF size = picture->size * perPixel;
    painter.drawImage(QRectF(QPointF(0.0, -size.height()), size), picture->image);
    painter.restore();
}

} // namespace sealwalk::ui
