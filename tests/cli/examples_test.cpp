// SPDX-License-Identifier: GPL-3.0-or-later
// The example in the help of every command, run as it stands there.
#include "tests/support/process.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <sstream>
#include <vector>

namespace sealwalk::tests {
namespace {

namespace fs = std::filesystem;

/// The commands that the program's own help lists.
std::vector<std::string> commandNames()
{
    std::istringstream help(runCli({"--help"}).out);
    std::vector<std::string> names;
    bool listing = false;
    for (std::string line; std::getline(help, line);) {
        if (listing && line.size() > 2 && line[0] == ' ' && line[2] != ' ')
            names.push_back(line.substr(2, line.find(' ', 2) - 2));
        listing = listing || line == "Subcommands:";
    }
    return names;
}

TEST(Examples, OfEveryCommandRunInAnEmptyFolder)
{
    const std::vector<std::string> names = commandNames();
    ASSERT_GE(names.size(), 17U);
    for (const std::string& name : names) {
        const std::string help = runCli({name, "--help"}).out;
        const std::size_t example = help.find("Example:");
        ASSERT_NE(example, std::string::npos) << name;
        std::string pattern = (fs::temp_directory_path() / "sealwalk-example-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        const std::string script = "set -e; export XDG_DATA_HOME='" + pattern + "' XDG_RUNTIME_DIR='" +
                                   pattern + "'; cd '" + pattern + "'; PATH=\"" SEALWALK_BIN ":$PATH\"\n" +
                                   help.substr(help.find('\n', example) + 1);
        const ProcessResult result = runProcess({"/bin/sh", "-c", script});
        EXPECT_EQ(result.status, 0) << name << ":\n" << script << result.out << result.err;
        EXPECT_EQ(result.err, "") << name;
        fs::remove_all(pattern);
    }
}

} // namespace
} // namespace sealwalk::tests
