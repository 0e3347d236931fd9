// SPDX-License-Identifier: GPL-3.0-or-later
// Who may include whom: the table of DEVELOPERS.md, enforced.
#include "tests/architecture/source_tree.h"

#include <gtest/gtest.h>

#include <map>
#include <regex>
#include <set>

namespace sealwalk::tests {
namespace {

using Allowed = std::map<std::string, std::set<std::string>>;

const Allowed kDirect = {
    {"core/base", {}},
    {"core/quantities", {"core/base"}},
    {"core/feed", {"core/quantities"}},
    {"core/geometry", {"core/quantities"}},
    {"core/flow", {"core/quantities"}},
    {"core/model", {"core/geometry"}},
    {"core/editing", {"core/model"}},
    {"core/analysis", {"core/flow", "core/model"}},
    {"core/storage", {"core/model"}},
    {"core/exchange", {"core/analysis"}},
    {"core/transfer", {"core/exchange", "core/report", "core/storage"}},
    {"core/report", {"core/analysis"}},
    {"ui/render", {"core/report"}},
    {"ui/session", {"core/editing", "core/storage", "core/transfer", "core/report"}},
    {"ui/widgets", {"core/quantities", "ui/render"}},
    {"ui/underlay", {"ui/session", "ui/render"}},
    {"ui/feed", {"core/feed", "core/report", "ui/render", "ui/widgets"}},
    {"ui/prepare", {"ui/session", "ui/render", "ui/widgets"}},
    {"ui/sketch", {"ui/underlay", "ui/session", "ui/render", "ui/widgets"}},
    {"ui/spray", {"ui/feed", "ui/underlay", "ui/session", "ui/render", "ui/widgets"}},
    {"ui/judge", {"ui/underlay", "ui/session", "ui/render", "ui/widgets"}},
    {"ui/signoff", {"ui/underlay", "ui/session", "ui/render", "ui/widgets"}},
    {"ui/history", {"ui/underlay", "ui/session", "ui/render", "ui/widgets"}},
    {"ui/shell", {"ui/prepare", "ui/sketch", "ui/spray", "ui/judge", "ui/signoff", "ui/history", "demo"}},
    {"app/gui", {"ui/shell"}},
    {"app/cli", {"core/editing", "core/storage", "core/transfer", "core/report", "demo"}},
    {"demo", {"core/editing", "core/storage", "core/transfer", "core/report"}},
};

/// What a folder may include: what its row names, what those name in turn, and itself.
std::set<std::string> reachable(const std::string& folder)
{
    std::set<std::string> seen;
    std::vector<std::string> waiting{folder};
    while (!waiting.empty()) {
        const std::string next = waiting.back();
        waiting.pop_back();
        if (!seen.insert(next).second)
            continue;
        const auto row = kDirect.find(next);
        if (row != kDirect.end())
            waiting.insert(waiting.end(), row->second.begin(), row->second.end());
    }
    return seen;
}

const std::regex kInclude(R"(^\s*#\s*include\s*"([^"]+)\")");
const std::regex kQtInclude(R"(^\s*#\s*include\s*<Q[A-Za-z]+)");

/// The two commands that draw may use the window's painter.
bool isDrawingCommand(const std::string& path)
{
    return path.rfind("app/cli/commands/report", 0) == 0 || path.rfind("app/cli/commands/map", 0) == 0 ||
           path.rfind("app/cli/offscreen", 0) == 0;
}

std::string violation(const SourceFile& file, const std::string& target)
{
    const std::string from = folderOf(file.path);
    const std::string to = folderOf(target);
    if (target.find('/') == std::string::npos)
        return "project includes are written from the root";
    if (isDrawingCommand(file.path) && to == "ui/render")
        return {};
    return reachable(from).contains(to) ? "" : from + " may not include " + to;
}

TEST(Layers, EveryFolderHasItsRow)
{
    for (const SourceFile& file : sourceTree()) {
        const std::string folder = folderOf(file.path);
        if (folder.find("CMakeLists.txt") == std::string::npos && folder != "tests") {
            EXPECT_TRUE(kDirect.contains(folder)) << file.path;
        }
    }
}

TEST(Layers, IncludesFollowTheTable)
{
    int includes = 0;
    for (const SourceFile& file : sourceTree()) {
        if (folderOf(file.path) == "tests")
            continue;
        for (const std::string& line : file.lines) {
            std::smatch match;
            if (!std::regex_search(line, match, kInclude))
                continue;
            ++includes;
            const std::string wrong = violation(file, match[1]);
            EXPECT_TRUE(wrong.empty()) << file.path << ": " << line << ": " << wrong;
        }
    }
    EXPECT_GT(includes, 50) << "the pattern no longer finds includes";
}

TEST(Layers, CoreAndCommandLineKnowNoQt)
{
    for (const SourceFile& file : sourceTree()) {
        const std::string folder = folderOf(file.path);
        const bool isFree = folder.rfind("core/", 0) == 0 || folder == "demo" ||
                            (folder == "app/cli" && !isDrawingCommand(file.path));
        if (!isFree)
            continue;
        for (const std::string& line : file.lines)
            EXPECT_FALSE(std::regex_search(line, kQtInclude)) << file.path << ": " << line;
    }
}

TEST(Layers, OnlyStorageSpeaksSql)
{
    const std::regex sql(R"(#\s*include\s*<(sqlite3\.h|SQLiteCpp/|QSql))");
    for (const SourceFile& file : sourceTree()) {
        const std::string folder = folderOf(file.path);
        if (folder == "core/storage" || folder == "tests")
            continue;
        for (const std::string& line : file.lines)
            EXPECT_FALSE(std::regex_search(line, sql)) << file.path << ": " << line;
    }
}

// The check must be able to fail.
TEST(Layers, AForbiddenIncludeIsNoticed)
{
    EXPECT_NE(violation({"core/flow/gas.cpp", {}}, "core/model/job.h"), "");
    EXPECT_NE(violation({"ui/spray/spray_page.cpp", {}}, "ui/judge/judge_page.h"), "");
    EXPECT_NE(violation({"app/cli/commands/air.cpp", {}}, "ui/render/theme.h"), "");
    EXPECT_EQ(violation({"ui/spray/spray_page.cpp", {}}, "core/analysis/walk.h"), "");
}

} // namespace
} // namespace sealwalk::tests
