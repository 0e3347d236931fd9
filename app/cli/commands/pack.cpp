// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/verification.h"
#include "core/exchange/files.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>

namespace sealwalk::cli {

namespace {

struct Arguments
{
    std::string job;
    std::string file;
};

Result<Verdict> packJob(const Arguments& arguments, const Console& console)
{
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    Result<exchange::JobRecord> record = loadJob(*store, arguments.job);
    if (!record)
        return fail(record.error());
    const auto people = store->people();
    if (!people)
        return fail(people.error());
    std::vector<std::string> missing;
    exchange::JobFile file{std::move(*record), {}};
    file.pictures = loadPictures(*store, file.record.job, missing);
    if (!missing.empty())
        return fail(ErrorCode::DamagedFile, missing.front());
    const Result<std::string> bytes = exchange::packJobFile(file);
    if (!bytes)
        return fail(bytes.error().in(fmt::format("job {}", file.record.job.number)));
    // A broken signature does not keep a record from being handed on, but nobody shall miss it.
    exchange::Verification result = exchange::verifyRecord(file.record, exchange::namesOf(file.pictures));
    checkKeys(result, *people);
    if (const Status written = exchange::writeFile(arguments.file, *bytes); !written)
        return fail(written.error());
    return answerVerification(
        console, result,
        fmt::format("job {} of {}: {}, {}, {} in {}", file.record.job.number, file.record.object.name,
                    counted(file.record.job.readings.size(), "reading"),
                    counted(file.pictures.size(), "picture"),
                    counted(file.record.job.signatures.size(), "signature"), arguments.file));
}

} // namespace

void addPack(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("pack", "one job with its object, pictures and signatures into a job file");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID of the job")->required();
    command->add_option("-o,--output", arguments->file, "job file to write, such as job-118.sealjob")
        ->required();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli pack 118 -o job-118.sealjob --history demo.sealwalk");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return packJob(*arguments, console); };
    });
}

} // namespace sealwalk::cli
