// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/sample_map.h"
#include "ui/render/map_export.h"
#include "ui/render/report_pdf.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QElapsedTimer>
#include <QPdfDocument>
#include <QPdfSelection>
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
    content.sections.push_back({"All points", "", {std::move(table)}});
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
        content.sections.push_back({"Leak map", "", {report::MapBlock{sample.map(0)}}});
        QPdfWriter writer(folder.filePath(QStringLiteral("m.pdf")));
        writer.setPageSize(QPageSize(QPageSize::A4));
        return printReport(content, writer);
    };
    EXPECT_EQ(pagesWith(3), 1);
    EXPECT_EQ(pagesWith(24), 2) << "no room below the table: not broken, but on the next page";
}

/// The words of each page.
std::vector<QString> pagesOf(const report::ReportContent& content, const PdfOptions& options = {})
{
    QByteArray bytes = QByteArray::fromStdString(reportPdf(content, options));
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QPdfDocument document;
    document.load(&buffer);
    std::vector<QString> pages;
    for (int page = 0; page < document.pageCount(); ++page)
        pages.push_back(document.getAllText(page).text());
    return pages;
}

// Regression: a title stood alone at the foot of a page, or with one row, and one row alone at the head of
// the next; the head of a table is on each of its pages.
TEST(ReportPdf, TablesAreTornBetweenAtLeastTwoRows)
{
    for (const Paper paper : {Paper::A4, Paper::Letter})
        for (int lines = 24; lines < 44; ++lines) {
            report::ReportContent content = contentOf(30);
            report::Section before{"Before", "", {}};
            for (int i = 0; i < lines; ++i)
                before.blocks.emplace_back(report::Paragraph{"a line"});
            content.sections.insert(content.sections.begin(), before);
            PdfOptions options;
            options.paper = paper;
            for (const QString& page : pagesOf(content, options)) {
                const auto rows = page.count(QStringLiteral("and a second line"));
                EXPECT_NE(rows, 1) << lines;
                EXPECT_EQ(page.contains(QStringLiteral("Rate")), rows > 0) << lines;
                if (page.contains(QStringLiteral("All points"))) {
                    EXPECT_GE(rows, 2) << lines;
                }
            }
        }
}

// Regression: a last page had four lines.
TEST(ReportPdf, AFewLinesMakeNoPage)
{
    std::size_t before = 1;
    for (int rows = 10; rows < 80; ++rows) {
        const std::vector<QString> pages = pagesOf(contentOf(rows));
        if (pages.size() > before) {
            EXPECT_GT(pages.back().count(QStringLiteral("and a second line")), 2) << rows;
        }
        before = pages.size();
    }
    EXPECT_GT(before, 2U);
}

// Regression: half a page stayed empty above a map that was a little too tall for it.
TEST(ReportPdf, AMapIsMadeSmallerToFillAPage)
{
    const test::SampleJob sample = test::sampleJob();
    int pages = 0;
    int most = 0;
    for (int rows = 0; rows < 30; ++rows) {
        report::ReportContent content = contentOf(rows);
        content.sections.push_back({"Leak map", "", {}});
        for (int map = 0; map < 2; ++map)
            content.sections.back().blocks.emplace_back(report::MapBlock{sample.map(0)});
        const std::vector<QString> all = pagesOf(content);
        pages = static_cast<int>(all.size());
        most = pages == 1 ? rows : most;
    }
    EXPECT_GE(most, 1) << "two maps of full size fill a page";
    EXPECT_LE(pages, 3);
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
