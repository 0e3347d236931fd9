// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/picture_file.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QPainter>
#include <QPdfDocument>
#include <QSvgRenderer>
#include <QXmlStreamReader>

#include <algorithm>

namespace sealwalk::render {

namespace {

constexpr qint64 kLargestFile = 200LL * 1024 * 1024;
constexpr int kAllocationMegabytes = 1024; ///< of an image while it is scaled down
constexpr double kPdfDotsPerPoint = 200.0 / 72.0;

std::string named(const QString& file)
{
    return "\"" + QFileInfo(file).fileName().toStdString() + "\"";
}

/// Room for one large photo that a person chose; the limit counts for the whole program, and pictures out of
/// job files keep the usual one.
class AllocationLimit
{
public:
    explicit AllocationLimit(int megabytes)
        : m_before(QImageReader::allocationLimit())
    {
        QImageReader::setAllocationLimit(megabytes);
    }
    AllocationLimit(const AllocationLimit&) = delete;
    AllocationLimit& operator=(const AllocationLimit&) = delete;
    ~AllocationLimit() { QImageReader::setAllocationLimit(m_before); }

private:
    int m_before;
};

QSize within(QSizeF size, int longest)
{
    const double side = std::max(size.width(), size.height());
    const double factor = side > longest ? longest / side : 1.0;
    return QSize(std::max(1, qRound(size.width() * factor)), std::max(1, qRound(size.height() * factor)));
}

std::vector<std::uint8_t> encoded(const QImage& image, const char* format)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format, 88);
    return {bytes.begin(), bytes.end()};
}

Result<QByteArray> contentOf(const QString& file)
{
    QFile in(file);
    if (!in.exists())
        return fail(ErrorCode::NotFound, "there is no file " + named(file));
    if (QFileInfo(file).isDir())
        return fail(ErrorCode::BadInput, named(file) + " is a folder; a photo, an SVG or a PDF is needed");
    if (in.size() > kLargestFile)
        return fail(ErrorCode::BadInput, named(file) + " is larger than 200 MB; save it smaller first");
    if (!in.open(QIODevice::ReadOnly))
        return fail(ErrorCode::MachineFailed,
                    named(file) + " cannot be read: " + in.errorString().toStdString());
    const QByteArray bytes = in.readAll();
    if (bytes.isEmpty())
        return fail(ErrorCode::DamagedFile, named(file) + " is empty; a photo, an SVG or a PDF is needed");
    return bytes;
}

bool isPdf(const QByteArray& bytes)
{
    return bytes.left(1024).contains("%PDF-");
}

bool isSvg(const QByteArray& bytes)
{
    return bytes.left(4096).contains("<svg");
}

Result<PictureFile> fromPdf(QByteArray bytes, int page, const QString& file)
{
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QPdfDocument document;
    document.load(&buffer);
    if (document.status() != QPdfDocument::Status::Ready)
        return fail(ErrorCode::DamagedFile, named(file) +
                                                " is not a PDF that can be opened; it may be damaged or "
                                                "locked with a password");
    if (page < 0 || page >= document.pageCount())
        return fail(ErrorCode::BadInput,
                    named(file) + " has pages 1 to " + std::to_string(document.pageCount()) + " only");
    const QSizeF points = document.pagePointSize(page);
    const QImage drawn = document.render(page, within(points * kPdfDotsPerPoint, kLongestSide));
    if (drawn.isNull())
        return fail(ErrorCode::DamagedFile,
                    "page " + std::to_string(page + 1) + " of " + named(file) + " cannot be drawn");
    // what is not printed is paper
    QImage paper(drawn.size(), QImage::Format_RGB32);
    paper.fill(Qt::white);
    QPainter(&paper).drawImage(0, 0, drawn);
    return PictureFile{encoded(paper, "PNG"), "png", paper.size()};
}

/// Whether a drawing keeps to itself. What draws it would open any file of this computer that it names, and a
/// map would carry that on: a job file comes from elsewhere.
bool keepsToItself(const QByteArray& svg)
{
    QXmlStreamReader xml(svg);
    while (!xml.atEnd()) {
        switch (xml.readNext()) {
        case QXmlStreamReader::ProcessingInstruction: // a style sheet
            return false;
        case QXmlStreamReader::DTD: // its entities could hide the rest
            if (!xml.entityDeclarations().isEmpty())
                return false;
            break;
        case QXmlStreamReader::StartElement: {
            const QXmlStreamAttributes attributes = xml.attributes();
            for (const QXmlStreamAttribute& attribute : attributes)
                if (attribute.name() == QLatin1String("href") &&
                    !attribute.value().startsWith(QLatin1Char('#')) && xml.name() != QLatin1String("a") &&
                    !attribute.value().startsWith(QLatin1String("data:image/")))
                    return false;
            break;
        }
        default:
            break;
        }
    }
    return true; // what is no XML from here on is drawn by nobody, and refused as damaged
}

Result<PictureFile> fromSvg(const QByteArray& bytes, const QString& file)
{
    if (!keepsToItself(bytes))
        return fail(ErrorCode::BadInput, named(file) +
                                             " is not plain SVG or names other files or style sheets; save "
                                             "it with everything inside");
    QSvgRenderer svg;
    if (!svg.load(bytes) || svg.defaultSize().isEmpty())
        return fail(ErrorCode::DamagedFile, named(file) + " is not an SVG that can be drawn");
    return PictureFile{{bytes.begin(), bytes.end()}, "svg", svg.defaultSize()};
}

/// The decoder takes a JPEG that breaks off and fills the rest with grey, so its end is looked for: an end
/// marker after the last scan (thumbnails inside have one of their own, but before it).
bool breaksOff(const QByteArray& jpeg)
{
    return jpeg.lastIndexOf("\xFF\xD9") < jpeg.lastIndexOf("\xFF\xDA");
}

Result<PictureFile> fromPixels(QByteArray bytes, const QString& file)
{
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QByteArray format = reader.format();
    if (format.isEmpty())
        return fail(ErrorCode::BadInput, named(file) + " is neither a photo, an SVG nor a PDF");
    if ((format == "jpeg" || format == "jpg") && breaksOff(bytes))
        return fail(ErrorCode::DamagedFile, named(file) + " breaks off before its end; copy it again");
    const AllocationLimit room(kAllocationMegabytes);
    const QSize size = reader.size();
    const bool large = std::max(size.width(), size.height()) > kLongestSide;
    if (large)
        reader.setScaledSize(within(size, kLongestSide));
    QImage image = reader.read();
    constexpr qint64 kMostPixels = kAllocationMegabytes * 1024LL * 1024 / 4;
    if (image.isNull() && qint64(size.width()) * size.height() > kMostPixels)
        return fail(ErrorCode::BadInput, named(file) + " is too large, " + std::to_string(size.width()) +
                                             " by " + std::to_string(size.height()) +
                                             " px; save it with at most " +
                                             std::to_string(kMostPixels / 1'000'000) + " million pixels");
    if (image.isNull())
        return fail(ErrorCode::DamagedFile, named(file) + " cannot be read as a picture; it may be damaged");
    const bool photo = format == "jpeg" || format == "jpg";
    if (!large && (format == "png" || photo) &&
        reader.transformation() == QImageIOHandler::TransformationNone)
        return PictureFile{{bytes.begin(), bytes.end()}, photo ? "jpg" : "png", image.size()};
    return PictureFile{encoded(image, photo ? "JPG" : "PNG"), photo ? "jpg" : "png", image.size()};
}

} // namespace

Result<int> pagesOf(const QString& file)
{
    Result<QByteArray> bytes = contentOf(file);
    if (!bytes)
        return fail(bytes.error());
    if (!isPdf(*bytes))
        return 1;
    QBuffer buffer(&*bytes);
    buffer.open(QIODevice::ReadOnly);
    QPdfDocument document;
    document.load(&buffer);
    if (document.status() != QPdfDocument::Status::Ready || document.pageCount() < 1)
        return fail(ErrorCode::DamagedFile, named(file) +
                                                " is not a PDF that can be opened; it may be damaged or "
                                                "locked with a password");
    return document.pageCount();
}

Result<PictureFile> readPicture(const QString& file, int page)
{
    const Result<QByteArray> bytes = contentOf(file);
    if (!bytes)
        return fail(bytes.error());
    if (isPdf(*bytes))
        return fromPdf(*bytes, page, file);
    if (isSvg(*bytes))
        return fromSvg(*bytes, file);
    return fromPixels(*bytes, file);
}

Result<DecodedPicture> decodePicture(const std::vector<std::uint8_t>& bytes, const std::string& extension)
{
    const QByteArray content(reinterpret_cast<const char*>(bytes.data()),
                             static_cast<qsizetype>(bytes.size()));
    if (extension == "svg") {
        if (!keepsToItself(content))
            return fail(ErrorCode::DamagedFile,
                        "the drawing under the sheet names other files; it is not drawn");
        QSvgRenderer svg;
        if (!svg.load(content) || svg.defaultSize().isEmpty())
            return fail(ErrorCode::DamagedFile, "the picture under the sheet cannot be drawn");
        const QSizeF size = svg.defaultSize();
        const double longest = std::max(size.width(), size.height());
        QImage image(within(size * std::max(1.0, kLongestSide / 2.0 / longest), kLongestSide),
                     QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        svg.render(&painter);
        return DecodedPicture{image, size};
    }
    if (extension == "pdf") {
        const Result<PictureFile> page = fromPdf(content, 0, QStringLiteral("the picture under the sheet"));
        if (!page)
            return fail(page.error());
        return decodePicture(page->bytes, page->extension);
    }
    QImage image;
    if (!image.loadFromData(content))
        return fail(ErrorCode::DamagedFile, "the picture under the sheet cannot be read");
    const QSizeF size = image.size();
    return DecodedPicture{image.convertToFormat(QImage::Format_ARGB32_Premultiplied), size};
}

} // namespace sealwalk::render
