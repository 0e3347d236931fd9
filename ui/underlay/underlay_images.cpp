// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/underlay/underlay_images.h"

#include "ui/render/core_words.h"
#include "ui/render/sheet_view.h"
#include "ui/session/beside.h"
#include "ui/session/job_session.h"

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

namespace {

/// What is kept decoded: the two maps of Compare at the largest size a picture has, and as much again. What
/// is seen never exceeds it, so nothing in view is decoded over and over.
constexpr std::size_t kMostBytes = 400U * 1024 * 1024;

} // namespace

UnderlayImages::UnderlayImages(JobSession& session)
    : QObject(&session)
    , m_session(session)
{
    connect(&session, &JobSession::historyChanged, this, [this] {
        if (m_session.hasHistory())
            return;
        m_requested.clear();
        m_pictures.clear();
    });
}

UnderlayImages& UnderlayImages::of(JobSession& session)
{
    auto* store = session.findChild<UnderlayImages*>(QString(), Qt::FindDirectChildrenOnly);
    return store == nullptr ? *new UnderlayImages(session) : *store; // a child of the session
}

void UnderlayImages::showBeneath(render::SheetView& view, JobSession& session)
{
    UnderlayImages& images = of(session);
    view.setUnderlays([&images](const std::string& picture) { return images.find(picture); });
    connect(&images, &UnderlayImages::loaded, &view, &render::SheetView::refreshUnderlay);
    // The view may outlive the session's children by a moment.
    connect(&images, &QObject::destroyed, &view, [&view] { view.setUnderlays({}); });
}

const render::UnderlayPicture* UnderlayImages::find(const std::string& picture)
{
    if (const auto found = m_pictures.find(picture); found != m_pictures.end()) {
        found->second.lastAsked = ++m_asked;
        return &found->second.picture;
    }
    if (picture.empty() || !m_session.hasHistory() || !m_requested.insert(picture).second)
        return nullptr;
    const Result<model::Picture> stored = m_session.picture(picture);
    if (!stored) {
        // Asked for while something is painted: what listens may not be called from there.
        QMetaObject::invokeMethod(
            this, [this, why = render::inWords(stored.error())] { emit failed(why); }, Qt::QueuedConnection);
        return nullptr;
    }
    using Ready = Result<render::UnderlayPicture>;
    runBeside<Ready>(
        this,
        [bytes = stored->bytes, extension = stored->extension]() -> Ready {
            const Result<render::DecodedPicture> decoded = render::decodePicture(bytes, extension);
            if (!decoded)
                return fail(decoded.error());
            return render::UnderlayPicture(*decoded);
        },
        [this, picture](Ready ready) {
            if (!ready) {
                emit failed(render::inWords(ready.error()));
                return;
            }
            m_requested.erase(picture);
            keep(picture, *std::move(ready));
            emit loaded();
        });
    return nullptr;
}

void UnderlayImages::keep(const std::string& name, render::UnderlayPicture picture)
{
    std::size_t sum = picture.bytes();
    for (const auto& [other, kept] : m_pictures)
        sum += kept.picture.bytes();
    while (sum > kMostBytes && !m_pictures.empty()) {
        const auto oldest =
            std::min_element(m_pictures.begin(), m_pictures.end(), [](const auto& a, const auto& b) {
                return a.second.lastAsked < b.second.lastAsked;
            });
        sum -= oldest->second.picture.bytes();
        m_pictures.erase(oldest);
    }
    m_pictures[name] = {std::move(picture), ++m_asked};
}

void UnderlayImages::paint(QPainter& painter, const render::Theme& theme, const model::Sheet& sheet,
                           double scale)
{
    if (!sheet.underlay)
        return;
    if (const render::UnderlayPicture* picture = find(sheet.underlay->picture))
        picture->paint(painter, theme, *sheet.underlay, scale);
}

} // namespace sealwalk::ui
