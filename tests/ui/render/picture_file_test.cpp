// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/picture_file.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QtEndian>

namespace sealwalk::render {
namespace {

class PictureFiles : public ::testing::Test
{
protected:
    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }
    QString write(const char* name, const QByteArray& bytes) const
    {
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path(name);
    }

private:
    QTemporaryDir m_folder;
};

TEST_F(PictureFiles, KeepASmallPhotoAsItIs)
{
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    image.save(path("a.png"));
    const Result<PictureFile> read = readPicture(path("a.png"));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->extension, "png");
    EXPECT_EQ(read->size, QSizeF(300, 200));
    QFile file(path("a.png"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(static_cast<std::size_t>(file.size()), read->bytes.size());
    EXPECT_EQ(decodePicture(read->bytes, read->extension)->image.size(), QSize(300, 200));
}

TEST_F(PictureFiles, ScaleALargeOneDown)
{
    QImage image(6000, 3000, QImage::Format_Grayscale8);
    image.fill(200);
    image.save(path("large.jpg"));
    const Result<PictureFile> read = readPicture(path("large.jpg"));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->extension, "jpg");
    EXPECT_EQ(read->size, QSizeF(kLongestSide, kLongestSide / 2.0));
}

TEST_F(PictureFiles, TakeASvgAndAPageOfAPdf)
{
    const QString svg = write("d.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='120' height='80'>"
                                       "<rect width='60' height='80' fill='black'/></svg>");
    const Result<PictureFile> drawing = readPicture(svg);
    ASSERT_TRUE(drawing.has_value());
    EXPECT_EQ(drawing->extension, "svg");
    const Result<DecodedPicture> decoded = decodePicture(drawing->bytes, "svg");
    ASSERT_TRUE(decoded.has_value());
    EXPECT_EQ(decoded->size, QSizeF(120, 80));
    EXPECT_GT(decoded->image.width(), 1000) << "sharp when zoomed";
    {
        QPdfWriter writer(path("p.pdf"));
        QPainter painter(&writer);
        painter.drawText(500, 500, QStringLiteral("one"));
        writer.newPage();
        painter.fillRect(0, 0, writer.width(), writer.height(), Qt::black);
    }
    EXPECT_EQ(pagesOf(path("p.pdf")).value(), 2);
    EXPECT_EQ(pagesOf(svg).value(), 1);
    const Result<PictureFile> page = readPicture(path("p.pdf"), 1);
    ASSERT_TRUE(page.has_value());
    EXPECT_EQ(page->extension, "png");
    const QImage image = decodePicture(page->bytes, "png")->image;
    EXPECT_EQ(qGray(image.pixel(image.width() / 2, image.height() / 2)), 0) << "the second page is black";
    EXPECT_EQ(readPicture(path("p.pdf"), 2).error().message, "\"p.pdf\" has pages 1 to 2 only");
}

TEST_F(PictureFiles, RefuseWhatIsNoPictureWithASentence)
{
    QImage image(40, 40, QImage::Format_RGB32);
    image.fill(Qt::red);
    image.save(path("good.png"));
    QFile good(path("good.png"));
    ASSERT_TRUE(good.open(QIODevice::ReadOnly));
    const QByteArray half = good.readAll().left(60);
    image.scaled(600, 600).save(path("good.jpg"));
    QFile photo(path("good.jpg"));
    ASSERT_TRUE(photo.open(QIODevice::ReadOnly));
    const QByteArray halfPhoto = photo.read(photo.size() / 2);
    const struct
    {
        QString file;
        ErrorCode code;
    } rows[] = {
        {path("missing.png"), ErrorCode::NotFound},
        {write("half.jpg", halfPhoto), ErrorCode::DamagedFile},
        {write("empty.png", ""), ErrorCode::DamagedFile},
        {write("text.png", "this is no picture at all"), ErrorCode::BadInput},
        {write("half.png", half), ErrorCode::DamagedFile},
        {write("broken.svg", "<svg xmlns='http://www.w3.org/2000/svg'><rect"), ErrorCode::DamagedFile},
        {write("broken.pdf", "%PDF-1.7\nnothing"), ErrorCode::DamagedFile},
        {path("."), ErrorCode::BadInput},
    };
    for (const auto& row : rows) {
        const Result<PictureFile> read = readPicture(row.file);
        ASSERT_FALSE(read.has_value()) << row.file.toStdString();
        EXPECT_EQ(read.error().code, row.code) << read.error().message;
        EXPECT_FALSE(read.error().message.empty());
    }
}

// Regression: a sound picture of 280 million pixels was told to be damaged.
TEST_F(PictureFiles, ATooLargeOneIsToldSo)
{
    const auto bigEndian = [](quint32 value) {
        QByteArray bytes(4, Qt::Uninitialized);
        qToBigEndian(value, bytes.data());
        return bytes;
    };
    const auto chunk = [&](const QByteArray& type, const QByteArray& content) {
        quint32 crc = 0xffffffffU;
        for (const char c : type + content) {
            crc ^= static_cast<unsigned char>(c);
            for (int bit = 0; bit < 8; ++bit)
                crc = (crc >> 1U) ^ ((crc & 1U) != 0U ? 0xedb88320U : 0U);
        }
        return bigEndian(static_cast<quint32>(content.size())) + type + content + bigEndian(~crc);
    };
    const QByteArray rows(14000LL * 20001, '\0'); // grey, each row with its filter byte
    const QByteArray png =
        QByteArray("\x89PNG\r\n\x1a\n", 8) +
        chunk("IHDR", bigEndian(20000) + bigEndian(14000) + QByteArray("\x08\0\0\0\0", 5)) +
        chunk("IDAT", qCompress(rows, 1).mid(4)) + chunk("IEND", {});
    const Result<PictureFile> read = readPicture(write("huge.png", png));
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().code, ErrorCode::BadInput);
    EXPECT_EQ(read.error().message,
              "\"huge.png\" is too large, 20000 by 14000 px; save it with at most 268 million pixels");
}

// Regression: a drawing out of a job file could name a picture or style sheet of this computer, and the
// exported map carried it on.
TEST_F(PictureFiles, DrawNothingThatADrawingOnlyNames)
{
    QImage secret(40, 40, QImage::Format_RGB32);
    secret.fill(Qt::red);
    secret.save(path("secret.png"));
    const QByteArray head =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
        "width='40' height='40'>";
    const QByteArray file = path("secret.png").toUtf8();
    const QByteArray table[] = {
        head + "<image xlink:href='" + file + "' width='40' height='40'/></svg>",
        head + "<image href='file://" + file + "' width='40' height='40'/></svg>",
        "<?xml-stylesheet type='text/css' href='" + file + "'?>" + head + "</svg>",
        "<!DOCTYPE svg [<!ENTITY where '" + file + "'>]>" + head +
            "<image xlink:href='&where;' width='40' height='40'/></svg>",
    };
    for (const QByteArray& bytes : table) {
        EXPECT_FALSE(decodePicture({bytes.begin(), bytes.end()}, "svg")) << bytes.toStdString();
        EXPECT_FALSE(readPicture(write("d.svg", bytes))) << bytes.toStdString();
    }
    const QByteArray own = "<?xml version='1.0' encoding='UTF-8'?>" + head +
                           "<defs><rect id='r' width='9' height='9'/></defs><use xlink:href='#r'/></svg>";
    EXPECT_TRUE(decodePicture({own.begin(), own.end()}, "svg"));
}

} // namespace
} // namespace sealwalk::render
