// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a program as a user would and hands back what it said.
#pragma once

#include <string>
#include <vector>

namespace sealwalk::tests {

struct ProcessResult
{
    int status = -1; ///< exit status; 128 + signal when killed
    std::string out;
    std::string err;
};

/// Runs `arguments[0]` with the rest, `input` on stdin, and waits. No shell is involved.
ProcessResult runProcess(const std::vector<std::string>& arguments, const std::string& input = {});

/// Runs the built sealwalk-cli.
ProcessResult runCli(std::vector<std::string> arguments, const std::string& input = {});

} // namespace sealwalk::tests
