// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/map_export.h"

#include <gtest/gtest.h>

#include <QXmlStreamReader>

namespace sealwalk::render {
namespace {

// Property: a name with marks of its own leaves the document well-formed and stands in it as it is.
TEST(MapExport, NamesMayHoldAnyMarks)
{
    MapPage page;
    page.title = "A & <B> \"C\", job 7";
    page.subtitle = "as found & </desc>";
    QXmlStreamReader xml(QByteArray::fromStdString(mapSvg(page)));
    QString title;
    QString description;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == QLatin1String("title"))
            title = xml.readElementText();
        else if (xml.isStartElement() && xml.name() == QLatin1String("desc"))
            description = xml.readElementText();
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    EXPECT_EQ(title.toStdString(), page.title);
    EXPECT_EQ(description.toStdString(), page.subtitle);
}

} // namespace
} // namespace sealwalk::render
