// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/blank_print.h"

#include "ui/render/core_words.h"
#include "ui/render/sheet_picture.h"
#include "ui/sketch/joint_painter.h"
#include "ui/underlay/underlay_images.h"

#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>

namespace sealwalk::ui {

using render::Role;

namespace {

constexpr double kMillimetresPerInch = 25.4;
constexpr double kHead = 14.0;  ///< mm of the heading
constexpr double kRow = 7.0;    ///< mm, for handwriting
constexpr double kFoot = 6.0;   ///< mm
constexpr double kShare = 0.55; ///< of the first page that the drawing takes

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

void drawSheet(const Paper& paper, const BlankSheet& blank, UnderlayImages* images, const QRectF& where)
{
    const model::Sheet& sheet = *blank.sketch->sheet(blank.sheet);
    geometry::Box box;
    for (const model::Joint* joint : blank.sketch->jointsOn(blank.sheet))
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
    const std::vector<DrawnJoint> joints = laidOut(*blank.sketch, blank.sheet, scale);
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

void heading(const Paper& paper, const BlankSheet& blank, int page)
{
    const model::Sheet& sheet = *blank.sketch->sheet(blank.sheet);
    const QRectF room = paper.room;
    QString title = QString::fromStdString(sheet.name);
    if (!sheet.seenFrom.empty())
        title = words("%1, seen from %2").arg(title, QString::fromStdString(sheet.seenFrom));
    writeText(paper, {room.left(), room.top(), room.width() * 0.6, 7.0}, title, 5.0, true, Qt::AlignLeft);
    writeText(paper, {room.left(), room.top() + 7.0, room.width() * 0.6, 5.0}, blank.heading, 3.2, false,
              Qt::AlignLeft);
    writeText(paper, {room.right() - room.width() * 0.4, room.top(), room.width() * 0.4, 7.0},
              words("date              who"), 3.2, false, Qt::AlignLeft);
    writeText(
        paper, {room.left(), room.bottom() - kFoot, room.width(), kFoot},
        words("Blank sheet, page %1. Typed in afterwards, readings are marked as transcribed.").arg(page),
        2.8, false, Qt::AlignLeft);
}

void tableHead(const Paper& paper, const QString& unit, double top)
{
    const double w = paper.room.width();
    const double x = paper.room.left();
    const QString titles[] = {words("point"),   words("joint, place"), words("background"),
                              words("highest"), words("first rise"),   words("condition, remark")};
    constexpr double kAt[] = {0.0, 0.08, 0.42, 0.55, 0.68, 0.78};
    for (std::size_t i = 0; i < std::size(titles); ++i) {
        QString title = titles[i];
        if (i == 2 || i == 3)
            title += QStringLiteral(", ") + unit;
        else if (i == 4)
            title += words(", s");
        writeText(paper, {x + kAt[i] * w, top, 0.33 * w, 5.0}, title, 2.6, true, Qt::AlignLeft);
    }
}

void line(const Paper& paper, double y, double width)
{
    paper.painter.setPen(QPen(Qt::black, width * paper.unit));
    paper.painter.drawLine(QPointF(paper.room.left(), y) * paper.unit,
                           QPointF(paper.room.right(), y) * paper.unit);
}

} // namespace

void printBlank(QPagedPaintDevice& device, const BlankSheet& blank, UnderlayImages* images)
{
    if (blank.sketch == nullptr || blank.sketch->sheet(blank.sheet) == nullptr)
        return;
    QPainter painter(&device);
    painter.setRenderHint(QPainter::Antialiasing);
    const double unit = device.logicalDpiX() / kMillimetresPerInch;
    const QRectF room(0.0, 0.0, device.width() / unit, device.height() / unit);
    const Paper paper{painter, unit, room};
    int page = 1;
    heading(paper, blank, page);
    const double drawn = room.height() * kShare;
    drawSheet(paper, blank, images, {0.0, kHead, room.width(), drawn - kHead});
    double y = drawn + 2.0;
    bool head = true;
    for (const model::TestPoint* point : blank.sketch->activePoints()) {
        const model::Joint* joint = blank.sketch->joint(point->joint);
        if (joint == nullptr || joint->sheet != blank.sheet)
            continue;
        if (y + kRow + (head ? kRow : 0.0) > room.height() - kFoot) {
            device.newPage();
            heading(paper, blank, ++page);
            y = kHead;
            head = true;
        }
        if (head) {
            tableHead(paper, blank.unit, y);
            y += kRow;
            line(paper, y - 1.0, 0.35);
            head = false;
        }
        const double w = room.width();
        writeText(paper, {0.0, y - 1.0, 0.08 * w, kRow}, QString::number(point->number), 3.6, true,
                  Qt::AlignLeft);
        QString place = QString::fromStdString(joint->name);
        if (const std::string where = model::placeText(*blank.sketch, *point); !where.empty())
            place += QStringLiteral(", ") + QString::fromStdString(where);
        writeText(paper, {0.08 * w, y - 1.0, 0.33 * w, kRow}, place, 2.8, false, Qt::AlignLeft);
        QString asked;
        for (const std::string& condition : joint->requiredConditions)
            asked +=
                (asked.isEmpty() ? QString() : QStringLiteral(" / ")) + QString::fromStdString(condition);
        writeText(paper, {0.78 * w, y - 1.0, 0.22 * w, kRow}, asked, 2.8, false, Qt::AlignLeft);
        y += kRow;
        line(paper, y - 1.0, 0.1);
    }
}

} // namespace sealwalk::ui
