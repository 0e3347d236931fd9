// SPDX-License-Identifier: GPL-3.0-or-later
// The report as a document somebody is handed: what must stand in it, on which paper, with which fonts, in
// grey.
#include "tests/support/process.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <sstream>

namespace sealwalk::tests {
namespace {

constexpr const char* kTools[] = {"/usr/bin/pdftotext", "/usr/bin/pdffonts", "/usr/bin/pdfinfo",
                                  "/usr/bin/pdftoppm"};

/// Both jobs of the demonstration, last year's signed one on A4 and this year's draft on Letter.
class ReportDocument : public testing::Test
{
protected:
    static void SetUpTestSuite()
    {
        if (!hasTools())
            return;
        ::unsetenv("DISPLAY");
        s_folder = std::filesystem::temp_directory_path() / ("sealwalk-report-" + std::to_string(::getpid()));
        std::filesystem::create_directories(s_folder);
        ASSERT_EQ(runCli({"demo", "-o", file("demo.sealwalk")}).status, 0);
        for (const auto& [job, paper] : {std::pair{"118", "a4"}, {"164", "letter"}}) {
            const ProcessResult made = runCli({"report", job, "--pdf", file(std::string(job) + ".pdf"),
                                               "--paper", paper, "--history", file("demo.sealwalk")});
            ASSERT_EQ(made.status, 0) << made.err;
        }
    }
    static void TearDownTestSuite()
    {
        if (!s_folder.empty())
            std::filesystem::remove_all(s_folder);
    }
    void SetUp() override
    {
        ASSERT_TRUE(hasTools())
            << "poppler-utils (tests/packages.sh) is missing: the report cannot be read back";
    }
    static bool hasTools()
    {
        return std::all_of(std::begin(kTools), std::end(kTools),
                           [](const char* tool) { return std::filesystem::exists(tool); });
    }
    static std::string file(const std::string& name) { return (s_folder / name).string(); }
    /// Words of the pages, as they stand, with every run of white space as one blank.
    static std::string text(const std::string& job, int page = 0)
    {
        std::vector<std::string> command{kTools[0]};
        if (page > 0)
            command.insert(command.end(), {"-f", std::to_string(page), "-l", std::to_string(page)});
        command.insert(command.end(), {file(job + ".pdf"), "-"});
        return std::regex_replace(runProcess(command).out, std::regex("\\s+"), " ");
    }
    static int pages(const std::string& job)
    {
        const std::string info = runProcess({kTools[2], file(job + ".pdf")}).out;
        std::smatch count;
        return std::regex_search(info, count, std::regex("Pages:\\s+([0-9]+)")) ? std::stoi(count[1].str())
                                                                                : 0;
    }

    static std::filesystem::path s_folder;
};
std::filesystem::path ReportDocument::s_folder;

struct Field
{
    const char* group;
    const char* what;
    const char* job;
    const char* words; ///< in this order; * stands for whatever lies between
};

// What a report of this trade must tell; the groups are those of the reporting clauses it was gathered from
// (ISO 20485, ASTM E498).
constexpr Field kFields[] = {
    {"identity", "number, revision and turns", "118", "Report 118, revision *: submitted "},
    {"identity", "job", "118", "job 118"},
    {"identity", "begin and end", "118", "Date 2025-03-11 09:31 to 2025-03-13 14:20"},
    {"identity", "page x of y", "118", "page 1 of "},
    {"parties", "site", "118", "Place coating workshop"},
    {"parties", "tester with qualification", "118", "Tester Tester A, "},
    {"parties", "reviewer", "118", "reviewer*Reviewer B"},
    {"parties", "witness", "118", "witness"},
    {"object", "name and asset", "118", "Test object Box coater 2 (demo), asset BC2"},
    {"object", "serial, drawing", "118", "Serial, drawing"},
    {"object", "volume", "118", "Volume 480 l"},
    {"object", "kinds of joint", "118", "Kinds of joint "},
    {"object", "what was included", "118", "Included 62 points"},
    {"object", "what was left out", "118", "Excluded water jacket"},
    {"reason", "why the job was asked for", "118", "Purpose yearly check"},
    {"reason", "what was last worked on", "118", "Last worked on port B"},
    {"documents", "procedure and standard", "118", "Procedure *ISO 20485"},
    {"documents", "deviations", "118", "Deviations left out, with reasons"},
    {"limit", "one point, unit and gas", "118", "Limit, one point 1.0 × 10⁻⁶ mbar·l/s helium"},
    {"limit", "total", "118", "Limit, total 5.0 × 10⁻⁵ mbar·l/s air"},
    {"limit", "agreed by", "118", "Limit agreed by"},
    {"limit", "gas basis", "118", "Gas basis helium"},
    {"condition", "state of the object", "118", "Condition dry, at room temperature"},
    {"condition", "room temperature", "118", "Room 21.4 °C"},
    {"tracer", "gas, share, outside pressure", "118", "helium, 100 % at the joint *atmospheric pressure"},
    {"tracer", "bottle", "118", "bottle 142 bar"},
    {"detector", "identity", "118", "Detector LD-04"},
    {"detector", "where it is connected", "118", "Connected foreline"},
    {"detector", "other pumps running", "118", "pump in parallel 80 l/s"},
    {"instruments", "identity and due date", "118", "Other instruments *G-3*due 2025-09-09"},
    {"reference leak", "serial, certificate, value, temperature", "118",
     "RL-11 5.0 × 10⁻⁸ at 23*certificate*RL-11/2024"},
    {"reference leak", "due date", "118", "due 2025-10-20"},
    {"calibration", "before and after", "118", "system check*before*system check*after"},
    {"calibration", "change", "118", "+4 %"},
    {"calibration", "clean-up time", "118", "clean-up 14 s"},
    {"calibration", "smallest detectable leak", "118", "Smallest detectable 7.4 × 10⁻⁹"},
    {"background", "level, extremes, when", "118", "Background watched*2025-03-11 09:22"},
    {"points", "place with the side it is seen from", "118", "8 o'clock, seen from the front"},
    {"points", "every reading: dwell, first rise, condition", "118", "Every reading, as recorded*bagged"},
    {"points", "verdict against the limit", "118", "Against 1.0 × 10⁻⁶"},
    {"not tested", "with its reason", "118", "Not tested*behind the pump frame"},
    {"void", "with its reason", "164", "void: background moved: a helium bottle was vented next door"},
    {"void", "corrections keep what was said", "164", "typed 1.5e-6"},
    {"void", "corrections say why", "164", "corrected: exponent mistyped"},
    {"repairs", "defect, what was done, parts, by whom", "118", "flat, with a *replace seal; O-ring FKM"},
    {"repairs", "temporary: owner and date", "118", "temporary *welder*due 2025-09-30"},
    {"repairs", "re-test and its result", "118", "round 2, 2025-03-13*proven"},
    {"total", "pressure rise", "118", "Pressure rise, as found 2025-03-11"},
    {"total", "sum against total", "118", "Located: *Pressure rise:"},
    {"map", "scale, limit, legend", "118", "Scale, the same for every job*limit*masked by a larger leak"},
    {"map", "untested is shown", "118", "not sprayed"},
    {"comparison", "last job and what changed", "164", "job 118 of 2025-03-11*grown"},
    {"comparison", "what is not comparable", "164", "not comparable"},
    {"result", "verdict", "118", "Accepted with conditions"},
    {"result", "what was found and mended", "118", "within it after the work done: points 40, 56"},
    {"result", "no more than was tested", "118", "No response above * under the conditions recorded"},
    {"result", "nothing beyond it", "118", "Nothing is claimed for other places, other conditions, or below"},
    {"signatures", "who and when", "118", "Reviewer B, 2025-03-13 15:05"},
    {"signatures", "digest", "118", "(SHA-256): "},
    {"signatures", "turns of the review", "118", "Review, turn by turn"},
    {"cautions", "hazards named", "164", "Cautions they name hazards"},
};

bool stands(std::string_view pattern, const std::string& text)
{
    std::size_t from = 0;
    while (true) {
        const std::size_t star = pattern.find('*');
        const std::string_view part = pattern.substr(0, star);
        const std::size_t at = text.find(part, from);
        if (at == std::string::npos)
            return false;
        if (star == std::string_view::npos)
            return true;
        from = at + part.size();
        pattern.remove_prefix(star + 1);
    }
}

// Published: every field the reporting clauses ask for is on paper, as text that can be searched.
TEST_F(ReportDocument, TellsEveryFieldTheTradeAsksFor)
{
    const std::string words[] = {text("118"), text("164")};
    for (const Field& field : kFields) {
        const bool found = stands(field.words, words[std::string_view(field.job) == "118" ? 0 : 1]);
        EXPECT_TRUE(found) << field.group << ": " << field.what << " (" << field.words << "), job "
                           << field.job;
    }
    for (const std::string& report : words)
        EXPECT_EQ(report.find("no leaks"), std::string::npos) << "the wording claims no more than was tested";
}

// Property: every font travels with the file, and every page knows its number and is of the paper asked for.
TEST_F(ReportDocument, StandsOnItsOwnOnBothPapers)
{
    for (const auto& [job, paper] :
         {std::pair<std::string, std::string>{"118", "(A4)"}, {"164", "(letter)"}}) {
        std::istringstream fonts(runProcess({kTools[1], file(job + ".pdf")}).out);
        std::string line;
        std::getline(fonts, line);
        const std::size_t embedded = line.find("emb");
        ASSERT_NE(embedded, std::string::npos) << line;
        std::getline(fonts, line); // the rule below the heading
        int count = 0;
        for (; std::getline(fonts, line); ++count)
            EXPECT_EQ(line.substr(embedded, 3), "yes") << line;
        EXPECT_GE(count, 2);
        const int all = pages(job);
        ASSERT_GE(all, 3);
        const std::string sizes =
            runProcess({kTools[2], "-f", "1", "-l", std::to_string(all), file(job + ".pdf")}).out;
        std::size_t found = 0;
        for (std::size_t at = sizes.find(paper); at != std::string::npos; at = sizes.find(paper, at + 1))
            ++found;
        EXPECT_EQ(found, static_cast<std::size_t>(all)) << sizes;
        for (int page = 1; page <= all; ++page)
            EXPECT_NE(text(job, page).find("page " + std::to_string(page) + " of " + std::to_string(all)),
                      std::string::npos)
                << job << ' ' << page;
    }
}

/// Share of the pixels of a binary PGM darker than `level`.
double darkShare(const std::filesystem::path& picture, unsigned level)
{
    std::ifstream in(picture, std::ios::binary);
    std::string kind;
    std::size_t width = 0;
    std::size_t height = 0;
    std::size_t most = 0;
    in >> kind >> width >> height >> most;
    in.get();
    const std::string pixels((std::istreambuf_iterator<char>(in)), {});
    if (kind != "P5" || pixels.size() < width * height || pixels.empty())
        return 0.0;
    const auto dark = std::count_if(pixels.begin(), pixels.end(),
                                    [&](char pixel) { return static_cast<unsigned char>(pixel) < level; });
    return static_cast<double>(dark) / static_cast<double>(pixels.size());
}

// Property: printed in grey nothing is lost: each page keeps strong ink, and each verdict stands as a word
// beside its mark, once for every point at least.
TEST_F(ReportDocument, KeepsItsMeaningInGrey)
{
    for (const std::string job : {"118", "164"}) {
        ASSERT_EQ(runProcess({kTools[3], "-gray", "-r", "40", file(job + ".pdf"), file("grey" + job)}).status,
                  0);
        int seen = 0;
        for (const auto& entry : std::filesystem::directory_iterator(s_folder)) {
            const std::string name = entry.path().filename().string();
            if (name.find("grey" + job) != 0)
                continue;
            ++seen;
            EXPECT_GT(darkShare(entry.path(), 120), 0.003) << name;
        }
        EXPECT_EQ(seen, pages(job));
        const std::string words = text(job);
        const std::regex verdicts("\\b(over|within|cannot say|no answer)\\b");
        const auto told = std::distance(std::sregex_iterator(words.begin(), words.end(), verdicts), {});
        EXPECT_GE(told, 62) << job << ": a word for the verdict of each of its 62 points";
        for (const char* state :
             {"leak, over the limit", "leak, limit: cannot say", "leak within the limit",
              "shared by two neighbours", "echo of a larger leak", "masked by a larger leak",
              "clear: no response", "no response, too blind", "permeation", "void", "not accessible",
              "not sprayed", "repaired, awaiting re-test", "temporary repair"})
            EXPECT_NE(words.find(state), std::string::npos)
                << state << " has a mark and a word in the legend";
    }
}

} // namespace
} // namespace sealwalk::tests
