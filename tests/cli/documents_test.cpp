// SPDX-License-Identifier: GPL-3.0-or-later
// map and report as processes, without a display, on the demo history.
#include "tests/support/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace sealwalk::tests {
namespace {

std::string bytesOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

class Documents : public testing::Test
{
protected:
    static void SetUpTestSuite()
    {
        ::unsetenv("DISPLAY");
        ::unsetenv("WAYLAND_DISPLAY");
        s_folder =
            std::filesystem::temp_directory_path() / ("sealwalk-documents-" + std::to_string(::getpid()));
        std::filesystem::create_directories(s_folder);
        ASSERT_EQ(runCli({"demo", "-o", history()}).status, 0);
    }
    static void TearDownTestSuite() { std::filesystem::remove_all(s_folder); }
    static std::string history() { return (s_folder / "demo.sealwalk").string(); }
    static std::string file(const std::string& name) { return (s_folder / name).string(); }

    static std::filesystem::path s_folder;
};
std::filesystem::path Documents::s_folder;

// Property: the map is valid XML, holds strokes and text and no embedded pixels; the PNG carries its size.
TEST_F(Documents, TheMapIsScalableAndSized)
{
    const ProcessResult result = runCli(
        {"map", "164", "--svg", file("map.svg"), "--png", file("map.png"), "--history", history(), "--json"});
    ASSERT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(result.err, "");
    const auto answer = nlohmann::json::parse(result.out);
    EXPECT_EQ(answer["written"].size(), 2U);
    const std::string svg = bytesOf(file("map.svg"));
    EXPECT_EQ(svg.find("<image"), std::string::npos);
    EXPECT_NE(svg.find("viewBox=\"0 0 760"), std::string::npos);
    EXPECT_NE(svg.find(">Door seal</text>"), std::string::npos);
    EXPECT_NE(svg.find("over the limit"), std::string::npos);
    EXPECT_NE(svg.find("limit</text>"), std::string::npos);
    const ProcessResult xml = runProcess(
        {"/usr/bin/python3", "-c", "import sys,xml.dom.minidom as m; m.parse(sys.argv[1])", file("map.svg")});
    EXPECT_EQ(xml.status, 0) << xml.err;
    const std::string png = bytesOf(file("map.png"));
    EXPECT_EQ(png.substr(1, 3), "PNG");
    EXPECT_NE(png.find("pHYs"), std::string::npos);
}

// Property: text of the report can be searched, every font is embedded, pages are counted, the paper is asked
// for.
TEST_F(Documents, TheReportIsADocument)
{
    const ProcessResult result =
        runCli({"report", "164", "--pdf", file("r.pdf"), "--history", history(), "--json"});
    ASSERT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(result.err, "");
    EXPECT_EQ(nlohmann::json::parse(result.out)["written"].size(), 1U);
    const ProcessResult text = runProcess({"/usr/bin/pdftotext", "-layout", file("r.pdf"), "-"});
    ASSERT_EQ(text.status, 0) << text.err;
    for (const char* words : {"Leak test report", "Not accepted", "page 1 of", "Door seal", "masked by 17",
                              "Signatures", "Calibration and background", "Cautions",
                              "Findings that need a decision", "SHA-256", "mbar\u00B7l/s", "10\u207B\u2076"})
        EXPECT_NE(text.out.find(words), std::string::npos) << words;
    EXPECT_EQ(text.out.find("\uFB01"), std::string::npos) << "a ligature would hide words from a search";
    const ProcessResult fonts = runProcess({"/usr/bin/pdffonts", file("r.pdf")});
    ASSERT_EQ(fonts.status, 0) << fonts.err;
    std::istringstream lines(fonts.out);
    std::string line;
    int count = -2; // two lines of heading
    while (std::getline(lines, line)) {
        if (++count > 0) {
            EXPECT_NE(line.find(" yes "), std::string::npos) << line;
        }
    }
    EXPECT_GE(count, 2);
    EXPECT_EQ(runProcess({"/usr/bin/qpdf", "--check", file("r.pdf")}).status, 0);
    ASSERT_EQ(
        runCli({"report", "118", "--pdf", file("l.pdf"), "--paper", "letter", "--history", history()}).status,
        0);
    EXPECT_NE(runProcess({"/usr/bin/pdfinfo", file("l.pdf")}).out.find("letter"), std::string::npos);
}

// Property: bad input is one sentence, status 2, and nothing written.
TEST_F(Documents, BadInputWritesNothing)
{
    const std::vector<std::vector<std::string>> rows = {
        {"map", "164"},
        {"map", "999", "--svg", file("x")},
        {"map", "164", "--svg", file("x"), "--sheet", "Cellar"},
        {"map", "164", "--svg", file("x"), "--unit", "bananas"},
        {"map", "164", "--png", file("x"), "--dpi", "5"},
        {"report", "164", "--pdf", file("x"), "--paper", "a5"},
        {"report", "999", "--pdf", file("x")},
    };
    for (std::vector<std::string> row : rows) {
        row.insert(row.end(), {"--history", history()});
        const ProcessResult result = runCli(row);
        EXPECT_EQ(result.status, 2) << row[0] << ' ' << result.err;
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
        EXPECT_EQ(result.out, "");
        EXPECT_FALSE(std::filesystem::exists(file("x")));
    }
    const ProcessResult lost =
        runCli({"report", "164", "--pdf", "/nowhere/at/all.pdf", "--history", history()});
    EXPECT_EQ(lost.status, 2) << lost.err; // as every command does for a name that cannot be right
}

} // namespace
} // namespace sealwalk::tests
