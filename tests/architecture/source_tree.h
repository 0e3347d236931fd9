// SPDX-License-Identifier: GPL-3.0-or-later
// The project's own sources, read as text.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace sealwalk::tests {

struct SourceFile
{
    std::string path; ///< from the root, with '/'
    std::vector<std::string> lines;
};

/// Every .h, .cpp, .sql, .qml and CMake file below core, ui, app, tests and demo.
std::vector<SourceFile> sourceTree();

/// The layer folder of a path: "core/flow", "ui/spray", "app/cli"; "tests" and "demo" are one each.
std::string folderOf(const std::string& path);

} // namespace sealwalk::tests
