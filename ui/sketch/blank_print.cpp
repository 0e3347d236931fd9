// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/blank_print.h"

#include "ui/render/core_words.h"
#include "ui/render/sheet_picture.h"
#include "ui/sketch/joint_painter.h"
#include "ui/underlay/underlay_images.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QStringList>

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kMillimetresPerInch = 25.4;
constexpr double kHead = 14.0;    ///< mm of the heading
constexpr double kRow = 7.0;      ///< mm, for handwriting
constexpr double kFoot = 6.0;     ///< mm
constexpr double kHeadLine = 3.1; ///< mm, of two in the head of the table
constexpr double kBetween = 1.5;  ///< mm between columns
constexpr double kSmallest = 0.7; ///< of a text's size, before it is cut
constexpr double kShare = 0.55;   ///< of the first page that the drawing takes

QString words(const char* text)
{
    return QCoreApplication::translate("BlankSheet", text);
}

struct Paper
{
    QPainter& painter;
    double unit; ///< device units per mm
    QRectF room; ///< mm
};

void writeText(const Paper& paper, const QRectF& where, const QString& text, double size, bool bold,
               Qt::Alignment side)
{
    QFont font =
        render::fontOfPixels(size * paper.unit, bold ? render::Weight::Bold : render::Weight::Normal);
    font.setStyleStrategy(QFont::PreferNoShaping); // ligatures would spoil searching in the PDF
    paper.painter.setFont(font);
    paper.painter.setPen(Qt::black);
    paper.painter.drawText(QRectF(where.topLeft() * paper.unit, where.size() * paper.unit),
                           side | Qt::AlignVCenter, text);
}

void drawSheet(const Paper& paper, const BlankSheet& blank, const model::Sheet& sheet, UnderlayImages* images,
               const QRectF& where)
{
    geometry::Box box;
    for (const model::Joint* joint : blank.sketch->jointsOn(sheet.id))
        box.add(geometry::outline(joint->shape).bounds());
    for (const geometry::FreePath& line : sheet.outlines)
        box.add(geometry::outline(line).bounds());
    if (box.isEmpty()) {
        box.add(geometry::Point{-sheet.width / 2.0, -sheet.height / 2.0});
        box.add(geometry::Point{sheet.width / 2.0, sheet.height / 2.0});
    }
    const double fit = std::min((where.width() - 16.0) / std::max(box.width(), 1.0),
                                (where.height() - 16.0) / std::max(box.height(), 1.0));
    const double scale = fit * paper.unit; // device units per mm of the sheet
    const render::Theme& theme = render::Theme::named(render::ThemeName::Paper);
    QPainter& painter = paper.painter;
    painter.save();
    painter.setClipRect(QRectF(where.topLeft() * paper.unit, where.size() * paper.unit));
    const geometry::Point middle = box.centre();
    painter.translate(where.center() * paper.unit - QPointF(middle.x * scale, -middle.y * scale));
    if (images != nullptr)
        images->paint(painter, theme, sheet, scale);
    const double pixel = paper.unit * kMillimetresPerInch / 96.0; // of a screen, at arm's length
    render::paintSheetOutlines(painter, theme, sheet.outlines, scale, pixel);
    const std::vector<DrawnJoint> joints = laidOut(*blank.sketch, sheet.id, scale);
    const JointLook look{false, false, pixel};
    for (const DrawnJoint& joint : joints)
        paintBand(painter, theme, joint, look);
    for (const DrawnJoint& joint : joints)
        paintMarks(painter, theme, joint, look);
    painter.restore();
    report::MapContent up;
    up.upDirection = sheet.upDirection;
    up.seenFromAbove = sheet.seenFromAbove;
    render::paintScaleBar(painter, theme, QPointF(where.left(), where.bottom() - 1.0) * paper.unit, scale,
                          render::BandStyle::screen().scaled(pixel), up);
}

/// As writeText(), smaller where it is too long, and cut with dots where that is not enough: nothing runs
/// into its neighbour.
void writeFitted(const Paper& paper, const QRectF& where, const QString& text, double size, bool bold)
{
    const auto weight = bold ? render::Weight::Bold : render::Weight::Normal;
    const double room = where.width() * paper.unit;
    const double width =
        QFontMetricsF(render::fontOfPixels(size * paper.unit, weight)).horizontalAdvance(text);
    const double fitted = size * std::clamp(room / std::max(width, 1.0), kSmallest, 1.0);
    const QFontMetricsF metrics(render::fontOfPixels(fitted * paper.unit, weight));
    writeText(paper, where, metrics.elidedText(text, Qt::ElideRight, room + 1.0), fitted, bold,
              Qt::AlignLeft);
}

void heading(const Paper& paper, const BlankSheet& blank, const model::Sheet& sheet, int page)
{
    const QRectF room = paper.room;
    QString title = QString::fromStdString(sheet.name);
    if (!sheet.seenFrom.empty())
        title = words(QT_TRANSLATE_NOOP("BlankSheet", "%1, seen from %2"))
                    .arg(title, render::inWords(sheet.seenFrom));
    writeFitted(paper, {room.left(), room.top(), room.width(), 7.0}, title, 5.0, true);
    writeFitted(paper, {room.left(), room.top() + 7.0, room.width() * 0.58, 5.0}, blank.heading, 3.2, false);
    writeFitted(paper, {room.left() + room.width() * 0.6, room.top() + 7.0, room.width() * 0.2, 5.0},
                words(QT_TRANSLATE_NOOP("BlankSheet", "date:")), 3.2, false);
    writeFitted(paper, {room.left() + room.width() * 0.8, room.top() + 7.0, room.width() * 0.2, 5.0},
                words(QT_TRANSLATE_NOOP("BlankSheet", "who:")), 3.2, false);
    writeText(paper, {room.left(), room.bottom() - kFoot, room.width(), kFoot},
              words(QT_TRANSLATE_NOOP(
                        "BlankSheet",
                        "Blank sheet, page %1. Typed in afterwards, readings are marked as transcribed."))
                  .arg(page),
              2.8, false, Qt::AlignLeft);
}

/// The columns, in the order in which they are typed in afterwards; the time comes last there too.
enum Column
{
    Number,
    Place,
    Background,
    Highest,
    FirstRise,
    Time,
    Remark
};
constexpr double kAt[] = {0.0, 0.07, 0.37, 0.50, 0.63, 0.72, 0.81, 1.0}; // share of the width

QRectF cell(const Paper& paper, Column column, double top, double height)
{
    const double width = paper.room.width();
    return {paper.room.left() + kAt[column] * width, top, (kAt[column + 1] - kAt[column]) * width - kBetween,
            height};
}

void tableHead(const Paper& paper, const QString& unit, double top)
{
    const std::pair<QString, QString> heads[] = {
        {words(QT_TRANSLATE_NOOP("BlankSheet", "point")), {}},
        {words(QT_TRANSLATE_NOOP("BlankSheet", "joint, place")), {}},
        {words(QT_TRANSLATE_NOOP("BlankSheet", "background")), unit},
        {words(QT_TRANSLATE_NOOP("BlankSheet", "highest")), unit},
        {words(QT_TRANSLATE_NOOP("BlankSheet", "first rise")), words(QT_TRANSLATE_NOOP("BlankSheet", "s"))},
        {words(QT_TRANSLATE_NOOP("BlankSheet", "time")), words(QT_TRANSLATE_NOOP("BlankSheet", "hh:mm"))},
        {words(QT_TRANSLATE_NOOP("BlankSheet", "condition, remark")), {}}};
    for (int i = Number; i <= Remark; ++i) {
        const auto column = static_cast<Column>(i);
        writeFitted(paper, cell(paper, column, top, kHeadLine), heads[i].first, 2.6, true);
        writeFitted(paper, cell(paper, column, top + kHeadLine, kHeadLine), heads[i].second, 2.4, false);
    }
}

void tableRow(const Paper& paper, const BlankSheet& blank, const model::Joint& joint,
              const model::TestPoint& point, double top)
{
    const QString place = render::inWords(model::placeText(*blank.sketch, point));
    writeFitted(paper, cell(paper, Number, top, kRow), QString::number(point.number), 3.6, true);
    const double name = place.isEmpty() ? kRow : kRow / 2.0;
    writeFitted(paper, cell(paper, Place, top, name), QString::fromStdString(joint.name), 2.8, false);
    writeFitted(paper, cell(paper, Place, top + name, kRow - name), place, 2.4, false);
    QStringList asked;
    for (const std::string& condition : joint.requiredConditions)
        asked << render::inWords(condition);
    writeFitted(paper, cell(paper, Remark, top, kRow), asked.join(QStringLiteral(" / ")), 2.8, false);
    paper.painter.setPen(QPen(Qt::gray, 0.1 * paper.unit));
    for (int i = Background; i <= Remark; ++i) {
        const double x = cell(paper, static_cast<Column>(i), top, kRow).left() - kBetween / 2.0;
        paper.painter.drawLine(QPointF(x, top) * paper.unit, QPointF(x, top + kRow) * paper.unit);
    }
}

void line(const Paper& paper, double y, double width)
{
    paper.painter.setPen(QPen(Qt::black, width * paper.unit));
    paper.painter.drawLine(QPointF(paper.room.left(), y) * paper.unit,
                           QPointF(paper.room.right(), y) * paper.unit);
}

/// One sheet from the top of a page on; answers its last page.
int printSheet(QPagedPaintDevice& device, const Paper& paper, const BlankSheet& blank,
               const model::Sheet& sheet, UnderlayImages* images, int page)
{
    const QRectF room = paper.room;
    heading(paper, blank, sheet, page);
    const double drawn = room.height() * kShare;
    drawSheet(paper, blank, sheet, images, {0.0, kHead, room.width(), drawn - kHead});
    double y = drawn + 2.0;
    bool head = true;
    for (const model::TestPoint* point : blank.sketch->activePoints()) {
        const model::Joint* joint = blank.sketch->joint(point->joint);
        if (joint == nullptr || joint->sheet != sheet.id)
            continue;
        if (y + kRow + (head ? kRow : 0.0) > room.height() - kFoot) {
            device.newPage();
            heading(paper, blank, sheet, ++page);
            y = kHead;
            head = true;
        }
        if (head) {
            tableHead(paper, blank.unit, y - 0.5);
            y += kRow;
            line(paper, y - 0.5, 0.35);
            head = false;
        }
        tableRow(paper, blank, *joint, *point, y - 0.5);
        y += kRow;
        line(paper, y - 0.5, 0.1);
    }
    return page;
}

} // namespace

void printBlank(QPagedPaintDevice& device, const BlankSheet& blank, UnderlayImages* images)
{
    if (blank.sketch == nullptr)
        return;
    QPainter painter(&device);
    painter.setRenderHint(QPainter::Antialiasing);
    const double unit = device.logicalDpiX() / kMillimetresPerInch;
    const Paper paper{painter, unit, QRectF(0.0, 0.0, device.width() / unit, device.height() / unit)};
    int page = 0;
    for (const model::SheetId id : blank.sheets) {
        const model::Sheet* sheet = blank.sketch->sheet(id);
        if (sheet == nullptr)
            continue;
        if (page > 0)
            device.newPage();
        page = printSheet(device, paper, blank, *sheet, images, page + 1);
    }
}

} // namespace sealwalk::ui
