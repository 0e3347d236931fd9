// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/verification.h"
#include "core/exchange/files.h"
#include "core/transfer/hand_out.h"

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
    const Result<model::JobId> id = store->findJob(arguments.job);
    if (!id)
        return fail(id.error());
    const Result<transfer::HandedOut> out = transfer::handOut(*store, *id);
    if (!out)
        return fail(out.error());
    if (const Status written = exchange::writeFile(arguments.file, out->bytes); !written)
        return fail(written.error());
    const model::Job& job = out->record.job;
    return answerVerification(console, out->result,
                              fmt::format("job {} of {}: {}, {}, {} in {}", job.number,
                                          out->record.object.name, counted(job.readings.size(), "reading"),
                                          counted(out->pictures, "picture"),
                                          counted(job.signatures.size(), "signature"), arguments.file));
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
