// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/partial_file.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

namespace sealwalk {
namespace {

std::string written(const char* name)
{
    const std::filesystem::path path =
        std::filesystem::temp_directory_path() / (std::string(name) + "-" + std::to_string(::getpid()));
    std::ofstream(path) << "half";
    return path.string();
}

// Property: what was not handed over goes with its owner, and with the process that is told to stop.
TEST(PartialFile, GoesAwayUnlessHandedOver)
{
    std::string gone;
    {
        const PartialFile file(written("sealwalk-partial-a"));
        gone = file.path();
    }
    EXPECT_FALSE(std::filesystem::exists(gone));
    const PartialFile stopped(written("sealwalk-partial-b"));
    const std::string kept = written("sealwalk-partial-c");
    {
        PartialFile file(kept);
        file.handOver();
    }
    PartialFile named(kept);
    named.handOver();
    removePartialFiles();
    EXPECT_FALSE(std::filesystem::exists(stopped.path()));
    EXPECT_TRUE(std::filesystem::exists(kept));
    std::filesystem::remove(kept);
}

} // namespace
} // namespace sealwalk
