// SPDX-License-Identifier: GPL-3.0-or-later
// sealwalk-cli: everything that needs no window. Exit: 0 done, 1 the answer is no, 2 bad input, 3 machine
// failed.
#include "app/cli/commands.h"
#include "app/cli/progress.h"
#include "core/base/utf8.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <iostream>
#include <new>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace {

using namespace sealwalk;

constexpr int kAnswerIsNo = 1;
constexpr int kBadInput = 2;
constexpr int kMachineFailed = 3;

int complain(const std::string& sentence, int status)
{
    cli::Progress::wipe();
    std::cerr << "sealwalk-cli: " << sentence << '\n';
    return status;
}

// "-5 degC" is a value, not an option: a blank in front hides the sign from the parser of options, and every
// reader of values skips it. Last argument first, as the parser wants them.
std::vector<std::string> argumentsOf(int argc, char** argv)
{
    std::vector<std::string> arguments(argv + 1, argv + argc);
    for (std::string& argument : arguments)
        if (argument.size() > 1 && argument[0] == '-' &&
            std::string_view("0123456789.,").find(argument[1]) != std::string_view::npos)
            argument.insert(argument.begin(), ' ');
    std::reverse(arguments.begin(), arguments.end());
    return arguments;
}

int run(int argc, char** argv)
{
    CLI::App root{"Find, size, judge and prove the repair of vacuum leaks, joint by joint.", "sealwalk-cli"};
    root.set_version_flag("--version", SEALWALK_VERSION);
    root.require_subcommand(1);
    root.fallthrough();

    cli::Console console;
    root.add_flag("--json", console.json, "print one JSON document on stdout and nothing else there");
    root.add_option("--history", console.history, "history file (default: the user's own)");

    // A name in another encoding would be stored, and answered in JSON that is none.
    for (int i = 1; i < argc; ++i)
        if (!isUtf8(argv[i]))
            return complain("argument " + std::to_string(i) + " is not UTF-8 text; give it in UTF-8",
                            kBadInput);

    cli::Work work;
    for (const cli::AddCommand add : cli::allCommands())
        add(root, work);

    try {
        root.parse(argumentsOf(argc, argv));
    } catch (const CLI::Success& wanted) {
        return root.exit(wanted); // --help and --version
    } catch (const CLI::ParseError& wrong) {
        return complain(std::string(wrong.what()) + "; --help shows what is right", kBadInput);
    }

    cli::stopCleanlyOnSignals();
    const std::string command = root.get_subcommands().front()->get_name();
    std::optional<cli::Progress> progress;
    if (command != "log") // it waits for lines, and answers each
        progress.emplace(command);
    const Result<cli::Verdict> result = work(console);
    progress.reset();
    if (!result)
        return complain(result.error().message, exitStatus(result.error().code));
    if (!cli::stdoutTookAll())
        return complain("stdout did not take the whole answer: no room, or nobody reads it", kMachineFailed);
    return *result == cli::Verdict::Yes ? 0 : kAnswerIsNo;
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::bad_alloc&) {
        return complain("the machine has no memory left for this", kMachineFailed);
    } catch (const std::exception& unexpected) {
        return complain(std::string("internal failure: ") + unexpected.what(), kMachineFailed);
    }
}
