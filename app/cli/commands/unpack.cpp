// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/verification.h"
#include "core/exchange/files.h"
#include "core/transfer/take_in.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string_view>

namespace sealwalk::cli {

namespace {

using storage::HistoryStore;

Result<Verdict> unpackFile(const std::string& path, const std::string& bytes, const Console& console)
{
    Result<transfer::Checked> checked = transfer::checkFile(bytes);
    if (!checked)
        return fail(checked.error().in(path));
    if (!checked->result.ok()) // before a history is made for it
        return answerVerification(console, checked->result, path + ": not taken in");
    auto store = openHistory(console, HistoryStore::Mode::Create);
    if (!store)
        return fail(store.error());
    const Result<transfer::TakenIn> taken =
        transfer::takeIn(*store, checked->file, std::move(checked->result));
    if (!taken)
        return fail(taken.error().in(path));
    return answerVerification(console, taken->result, taken->done);
}

Result<Verdict> mergeHistory(const std::string& path, const Console& console)
{
    const auto from = HistoryStore::open(path, HistoryStore::Mode::ReadOnly);
    if (!from)
        return fail(from.error());
    auto into = openHistory(console, HistoryStore::Mode::Create);
    if (!into)
        return fail(into.error());
    const auto answers = transfer::takeInAll(*into, *from);
    if (!answers)
        return fail(answers.error().in(path));
    exchange::Verification all;
    const auto jobs =
        std::count_if(answers->begin(), answers->end(), [](const auto& a) { return a.isOfJob(); });
    std::string done = fmt::format("{} from {}", counted(static_cast<std::size_t>(jobs), "job"), path);
    for (const transfer::TakenIn& taken : *answers) {
        done += "\n  " + taken.done;
        all.problems.insert(all.problems.end(), taken.result.problems.begin(), taken.result.problems.end());
        all.notes.insert(all.notes.end(), taken.result.notes.begin(), taken.result.notes.end());
        all.signatures.insert(all.signatures.end(), taken.result.signatures.begin(),
                              taken.result.signatures.end());
    }
    return answerVerification(console, all, done);
}

bool isDatabase(const std::string& path)
{
    constexpr std::string_view kHead = "SQLite format 3";
    std::array<char, kHead.size()> head{};
    std::error_code ignored;
    // A pipe is not looked into: its bytes come once.
    if (!std::filesystem::is_regular_file(path, ignored))
        return false;
    std::ifstream file(path, std::ios::binary);
    file.read(head.data(), head.size());
    return file.gcount() == static_cast<std::streamsize>(head.size()) &&
           std::string_view(head.data(), head.size()) == kHead;
}

Result<Verdict> unpack(const std::string& path, const Console& console)
{
    // A history may be larger than what is read whole.
    if (isDatabase(path))
        return mergeHistory(path, console);
    const Result<std::string> bytes = exchange::readFile(path);
    if (!bytes)
        return fail(bytes.error());
    return unpackFile(path, *bytes, console);
}

} // namespace

void addUnpack(CLI::App& root, Work& chosen)
{
    auto* command = root.add_subcommand(
        "unpack", "the job of a job file, or every job of another history, into a history");
    auto file = std::make_shared<std::string>();
    command->add_option("file", *file, "job file (.sealjob), or a history from another computer")->required();
    command->footer("The history is made when it does not exist. A job that is there already, but went on "
                    "elsewhere, gets "
                    "what was\nadded there. Where a set-up, a sketch, a repair or the order of a round "
                    "was changed, nothing tells which\nis the later, whichever has more readings: like "
                    "one that went on in both places, that job stays as it is.\n"
                    "Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli pack 118 -o job-118.sealjob --history demo.sealwalk\n"
                    "  sealwalk-cli unpack job-118.sealjob --history other.sealwalk\n"
                    "  sealwalk-cli unpack demo.sealwalk --history other.sealwalk");
    command->callback(
        [file, &chosen] { chosen = [file](const Console& console) { return unpack(*file, console); }; });
}

} // namespace sealwalk::cli
