// SPDX-License-Identifier: GPL-3.0-or-later
// One sub-command of sealwalk-cli: its arguments, and what it does once they are read.
#pragma once

#include "core/base/result.h"

#include <nlohmann/json_fwd.hpp>

#include <functional>
#include <string>

namespace CLI {
class App;
}

namespace sealwalk::cli {

/// The answer of a command that did its work: exit status 0, or 1 when the answer is "no".
enum class Verdict
{
    Yes,
    No
};

/// What the options before and after the sub-command chose, and the ways to answer.
class Console
{
public:
    bool json = false;   ///< --json: one JSON document on stdout and nothing else there
    std::string history; ///< --history FILE; empty: the user's own

    /// Prints `document` as one JSON document with --json; otherwise prints `text` (a newline is added).
    void answer(const nlohmann::ordered_json& document, const std::string& text) const;
    /// One line on stderr, for people.
    void note(const std::string& line) const;
};

/// Whether everything printed on stdout so far arrived: a full disk or a closed pipe cuts a document.
bool stdoutTookAll();

/// Filled by the parser with the work of the chosen sub-command.
using Work = std::function<Result<Verdict>(const Console&)>;

/// Adds one sub-command to `root`; when it is chosen its callback puts its work into `chosen`.
using AddCommand = void (*)(CLI::App& root, Work& chosen);

} // namespace sealwalk::cli
