// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/sample_map.h"
#include "ui/render/map_export.h"
#include "ui/render/report_pdf.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QPdfWriter>
#include <QTemporaryDir>

#include <fstream>
#include <iostream>

namespace sealwalk::render {
namespace {

report::ReportContent contentOf(int rows)
{
    report::ReportContent content;
    content.title = "Leak test report";
    content.statement = {analysis::Verdict::Over, "Not accepted", "office, fluffy, first"};
    report::ReportTable table;
    table.columns = {{"Point"}, {"Words", 4.0}, {"Rate", 1.0, true}};
    for (int i = 0; i < rows; ++i)
        table.rows.push_back({{std::to_string(i + 1)},
                              {"a word", "and a second line"},
                              {"4.6 \u00D7 10\u207B\u2074", {}, {}, analysis::Verdict::CannotSay}});
    content.sections.push_back({"All points", "", false, {std::move(table)}});
    return content;
}

// Property: a table goes on over as many pages as it needs, and no page is left out of the count.
TEST(ReportPdf, LongTablesGoOnOverPages)
{
    const QTemporaryDir folder;
    QPdfWriter writer(folder.filePath(QStringLiteral("x.pdf")));
    const int few = printReport(contentOf(5), writer);
    QPdfWriter other(folder.filePath(QStringLiteral("y.pdf")));
    const int many = printReport(contentOf(200), other);
    EXPECT_EQ(few, 1);
    EXPECT_GT(many, 5);
    EXPECT_LT(many, 12);
}

// Regression: the maps took a page of their own also where they had room, and left the one before all but
// empty.
TEST(ReportPdf, AMapGoesOnAPageThatHasRoomForIt)
{
    const QTemporaryDir folder;
    const test::SampleJob sample = test::sampleJob();
    const auto pagesWith = [&](int rows) {
        report::ReportContent content = contentOf(rows);
        content.sections.push_back({"Leak map", "", true, {report::MapBlock{sample.map(0)}}});
        QPdfWriter writer(folder.filePath(QStringLiteral("m.pdf")));
        writer.setPageSize(QPageSize(QPageSize::A4));
        return printReport(content, writer);
    };
    EXPECT_EQ(pagesWith(3), 1);
    EXPECT_EQ(pagesWith(24), 2) << "no room below the table: not broken, but on the next page";
}

// Property: 200 points are on paper in less than two seconds; a target that cannot be written is one
// sentence.
TEST(ReportPdf, IsQuickAndHonestAboutTheDisk)
{
    const QTemporaryDir folder;
    report::ReportContent content = contentOf(200);
    const test::SampleJob sample = test::sampleJob();
    content.sections.push_back({"Map",
                                "",
                                true,
                                {report::MapBlock{sample.map(0)}, report::MapBlock{sample.map(1)},
                                 report::ScaleBlock{sample.map(0)->scale}, report::LegendBlock{}}});
    QElapsedTimer clock;
    clock.start();
    const auto file = (folder.path() + QStringLiteral("/r.pdf")).toStdString();
    ASSERT_TRUE(writeReportPdf(content, file));
    std::cout << "200 rows and two maps on paper in " << clock.elapsed() << " ms\n";
    EXPECT_LT(clock.elapsed(), 2000);
    const Status lost = writeReportPdf(content, "/nowhere/r.pdf");
    ASSERT_FALSE(lost);
    EXPECT_EQ(lost.error().code, ErrorCode::MachineFailed);
}

} // namespace
} // namespace sealwalk::render
