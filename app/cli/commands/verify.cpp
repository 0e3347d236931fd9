// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/verification.h"
#include "core/base/uuid.h"
#include "core/exchange/files.h"
#include "core/exchange/job_file.h"
#include "core/transfer/hand_out.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <memory>

namespace sealwalk::cli {

namespace {

using exchange::Verification;
using storage::HistoryStore;

/// A job's number or UUID means the job, also where a file of that name lies: "./118" is the file.
bool isJobName(const std::string& argument)
{
    return (!argument.empty() && argument.find_first_not_of("0123456789") == std::string::npos) ||
           Uuid::parse(argument).has_value();
}

/// Whether the argument means a file rather than a job of the history.
bool meansFile(const std::string& argument)
{
    return argument.find('/') != std::string::npos || argument.ends_with(".sealjob") ||
           (!isJobName(argument) && std::filesystem::is_regular_file(argument));
}

Result<Verdict> verifyFile(const std::string& path, const Console& console)
{
    const Result<std::string> bytes = exchange::readFile(path);
    if (!bytes)
        return fail(bytes.error());
    Result<Verification> result = exchange::verifyJobFile(*bytes);
    if (!result)
        return fail(result.error().in(path));
    // Keys can be compared only where people are known; a file is checked without a history as well.
    auto store = openHistory(console, HistoryStore::Mode::ReadOnly);
    if (!store && !console.history.empty())
        return fail(store.error());
    std::vector<model::Person> people;
    if (store)
        people = store->people().value_or(std::vector<model::Person>{});
    transfer::checkKeys(*result, people);
    return answerVerification(console, *result,
                              path + (!result->ok()                ? ": not what it was"
                                      : result->signatures.empty() ? ": whole; nobody has signed it, so "
                                                                     "whether it was changed cannot be told"
                                                                   : ": whole, and unchanged since it was "
                                                                     "signed"));
}

Result<Verdict> verifyJob(const std::string& job, const Console& console)
{
    const auto store = openHistory(console, HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const Result<model::JobId> id = store->findJob(job);
    if (!id)
        return fail(id.error());
    const Result<Verification> result = transfer::verifyIn(*store, *id);
    if (!result)
        return fail(result.error());
    return answerVerification(
        console, *result,
        fmt::format("job {}: {}", job, result->ok() ? "as it was recorded" : "not what it was"));
}

} // namespace

void addVerify(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("verify", "whether a job file, or a job of the history, is what was signed");
    auto what = std::make_shared<std::string>();
    command->add_option("job-or-file", *what, "job file (.sealjob), or number or UUID of a job")->required();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli verify 118 --history demo.sealwalk\n"
                    "  sealwalk-cli pack 118 -o job-118.sealjob --history demo.sealwalk\n"
                    "  sealwalk-cli verify job-118.sealjob --history demo.sealwalk");
    command->callback([what, &chosen] {
        chosen = [what](const Console& console) {
            return meansFile(*what) ? verifyFile(*what, console) : verifyJob(*what, console);
        };
    });
}

} // namespace sealwalk::cli
