// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/icon.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmapCache>
#include <QSvgRenderer>

namespace sealwalk::render {

namespace {

QByteArray inked(const QString& name, const QColor& ink)
{
    Theme::named(ThemeName::Paper); // registers the resources
    QFile file(QStringLiteral(":/sealwalk/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) {
        qWarning("no icon named %s", qUtf8Printable(name));
        return {};
    }
    return file.readAll().replace("currentColor", ink.name().toLatin1());
}

class ThemedIconEngine : public QIconEngine
{
public:
    ThemedIconEngine(QString name, Role ink)
        : m_name(std::move(name))
        , m_ink(ink)
    {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override
    {
        painter->drawPixmap(rect, drawn(rect.size(), mode, state, painter->device()->devicePixelRatioF()));
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override
    {
        return drawn(size, mode, state, 1.0);
    }
    QPixmap scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State state, qreal scale) override
    {
        return drawn(size / scale, mode, state, scale);
    }
    [[nodiscard]] QIconEngine* clone() const override { return new ThemedIconEngine(m_name, m_ink); }
    QString key() const override { return QStringLiteral("SealwalkIcon"); }
    bool isNull() override { return false; }

private:
    [[nodiscard]] QPixmap drawn(const QSize& size, QIcon::Mode mode, QIcon::State state, double ratio) const
    {
        Role role = m_ink;
        if (mode == QIcon::Disabled)
            role = Role::Disabled;
        else if (state == QIcon::On && m_ink == Role::Ink)
            role = Role::Field; // switched-on buttons stand on ink
        return iconPixmap(m_name, std::min(size.width(), size.height()), Theme::current().colour(role),
                          ratio);
    }

    QString m_name;
    Role m_ink;
};

} // namespace

QIcon icon(const QString& name, Role ink)
{
    return QIcon(new ThemedIconEngine(name, ink));
}

QPixmap iconPixmap(const QString& name, int size, const QColor& ink, double devicePixelRatio)
{
    const QString key =
        QStringLiteral("sealwalk:%1:%2:%3:%4").arg(name).arg(size).arg(ink.name()).arg(devicePixelRatio);
    QPixmap picture;
    if (QPixmapCache::find(key, &picture))
        return picture;
    const int pixels = std::max(1, static_cast<int>(std::lround(size * devicePixelRatio)));
    picture = QPixmap(pixels, pixels);
    picture.fill(Qt::transparent);
    {
        QPainter painter(&picture);
        paintIcon(painter, name, QRectF(0, 0, pixels, pixels), ink);
    }
    picture.setDevicePixelRatio(devicePixelRatio);
    QPixmapCache::insert(key, picture);
    return picture;
}

void paintIcon(QPainter& painter, const QString& name, const QRectF& where, const QColor& ink)
{
    QSvgRenderer renderer(inked(name, ink));
    if (renderer.isValid())
        renderer.render(&painter, where);
}

} // namespace sealwalk::render
