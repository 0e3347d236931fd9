// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/connection.h"
#include "core/storage/object_entries.h"

namespace sealwalk::storage {
namespace {

/// A sheet as its row: the underlay's fields are columns that are all there or all missing.
struct SheetRow
{
    model::Sheet sheet;
    std::optional<std::string> picture;
    std::optional<double> x;
    std::optional<double> y;
    std::optional<double> millimetresPerPixel;
    std::optional<double> rotation;
    std::optional<double> opacity;
};

SheetRow toRow(const model::Sheet& sheet)
{
    SheetRow row;
    row.sheet = sheet;
    if (const auto& under = sheet.underlay) {
        row.picture = under->picture;
        row.x = under->corner.x;
        row.y = under->corner.y;
        row.millimetresPerPixel = under->millimetresPerPixel;
        row.rotation = under->rotation;
        row.opacity = under->opacity;
    }
    return row;
}

model::Sheet fromRow(SheetRow row)
{
    const bool isThere = row.picture.has_value();
    for (const auto* field : {&row.x, &row.y, &row.millimetresPerPixel, &row.rotation, &row.opacity})
        if (field->has_value() != isThere)
            throw Refusal(ErrorCode::DamagedFile, "a sheet in the history has half an underlay");
    if (row.picture) {
        model::Underlay under;
        under.picture = *row.picture;
        under.corner = {*row.x, *row.y};
        under.millimetresPerPixel = *row.millimetresPerPixel;
        under.rotation = *row.rotation;
        under.opacity = *row.opacity;
        row.sheet.underlay = under;
    }
    return std::move(row.sheet);
}

} // namespace

template <>
struct Rows<SheetRow>
{
    static constexpr const char* table = "sheet";
    static constexpr const char* order = "id";
    template <class Io, class Row>
    static void fields(Io& io, Row& row)
    {
        io("uuid", row.sheet.id);
        io("name", row.sheet.name);
        io("seen_from", row.sheet.seenFrom);
        io("width", row.sheet.width);
        io("height", row.sheet.height);
        io("up_direction", row.sheet.upDirection);
        io("seen_from_above", row.sheet.seenFromAbove);
        io("underlay_picture", row.picture);
        io("underlay_x", row.x);
        io("underlay_y", row.y);
        io("underlay_millimetres_per_pixel", row.millimetresPerPixel);
        io("underlay_rotation", row.rotation);
        io("underlay_opacity", row.opacity);
        io("outlines", row.sheet.outlines);
    }
};

model::Sketch loadSketch(SQLite::Database& database, JobKey key)
{
    model::Sketch sketch;
    {
        SQLite::Statement select(database, "SELECT sketch_revision, last_point_number FROM job WHERE id = ?");
        select.bind(1, key);
        if (select.executeStep()) {
            ColumnReader read(select);
            read("sketch_revision", sketch.revision);
            read("last_point_number", sketch.lastNumber);
        }
    }
    for (SheetRow& row : loadRows<SheetRow>(database, key))
        sketch.sheets.push_back(fromRow(std::move(row)));
    sketch.joints = loadRows<model::Joint>(database, key);
    sketch.points = loadRows<model::TestPoint>(database, key);
    return sketch;
}

void insertSketch(SQLite::Database& database, JobKey key, const model::Sketch& sketch)
{
    for (const model::Sheet& sheet : sketch.sheets)
        insertRow(database, key, toRow(sheet));
    insertRows(database, key, sketch.joints);
    insertRows(database, key, sketch.points);
    SQLite::Statement update(database,
                             "UPDATE job SET sketch_revision = ?, last_point_number = ? WHERE id = ?");
    update.bind(1, sketch.revision);
    update.bind(2, sketch.lastNumber);
    update.bind(3, key);
    update.exec();
}

int highestPointNumber(SQLite::Database& database, std::int64_t object)
{
    const std::string ofObject = " FROM job WHERE object IN " + ObjectEntries(database).listOf(object);
    SQLite::Statement select(
        database, "SELECT max(coalesce(max(number), 0), (SELECT coalesce(max(last_point_number), 0)" +
                      ofObject + ")) FROM point WHERE job IN (SELECT id" + ofObject + ")");
    return select.executeStep() ? select.getColumn(0).getInt() : 0;
}

void countOnFrom(SQLite::Database& database, std::int64_t object, JobKey except, int number)
{
    SQLite::Statement update(
        database, "UPDATE job SET last_point_number = ?1 WHERE object IN " +
                      ObjectEntries(database).listOf(object) +
                      " AND id <> ?2 AND last_point_number < ?1 AND state IN ('open', 'returned')");
    update.bind(1, number);
    update.bind(2, except);
    update.exec();
}

void deleteSketch(SQLite::Database& database, JobKey key)
{
    for (const char* table : {"point", "joint", "sheet"}) {
        SQLite::Statement remove(database, std::string("DELETE FROM ") + table + " WHERE job = ?");
        remove.bind(1, key);
        remove.exec();
    }
}

} // namespace sealwalk::storage
