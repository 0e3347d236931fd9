// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/source_tree.h"

#include <algorithm>
#include <fstream>

namespace sealwalk::tests {

namespace fs = std::filesystem;

std::vector<SourceFile> sourceTree()
{
    const fs::path root = SEALWALK_SOURCE_DIR;
    std::vector<SourceFile> files;
    for (const char* top : {"core", "ui", "app", "tests", "demo"}) {
        for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
            const std::string extension = entry.path().extension().string();
            const bool isSource = extension == ".h" || extension == ".cpp" || extension == ".sql" ||
                                  extension == ".py" || extension == ".sh" ||
                                  entry.path().filename() == "CMakeLists.txt";
            if (!entry.is_regular_file() || !isSource)
                continue;
            SourceFile file{fs::relative(entry.path(), root).generic_string(), {}};
            std::ifstream in(entry.path());
            for (std::string line; std::getline(in, line);)
                file.lines.push_back(line);
            files.push_back(std::move(file));
        }
    }
    std::sort(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
    return files;
}

std::string folderOf(const std::string& path)
{
    const std::size_t first = path.find('/');
    const std::string top = path.substr(0, first);
    if (top == "tests" || top == "demo")
        return top;
    return path.substr(0, path.find('/', first + 1));
}

} // namespace sealwalk::tests
