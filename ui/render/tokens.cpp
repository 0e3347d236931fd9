// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/tokens.h"

#include "core/base/contract.h"

#include <QFile>
#include <QJsonDocument>

// Outside every namespace, as the macro demands; a static library's resources are not registered otherwise.
static void registerResources()
{
    Q_INIT_RESOURCE(sealwalk);
}

namespace sealwalk::render {

const QJsonObject& tokens()
{
    static const QJsonObject document = [] {
        registerResources();
        QFile file(QStringLiteral(":/sealwalk/tokens.json"));
        const bool opened = file.open(QIODevice::ReadOnly);
        SEALWALK_EXPECT(opened);
        const QJsonDocument read = QJsonDocument::fromJson(file.readAll());
        SEALWALK_EXPECT(read.isObject());
        return read.object();
    }();
    return document;
}

} // namespace sealwalk::render
