// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/job_report.h"

#include "core/transfer/report_facts.h"

namespace sealwalk::ui {

Result<std::shared_ptr<const PreparedReport>> prepareReport(const std::filesystem::path& history,
                                                            model::JobId job)
{
    const auto store = storage::HistoryStore::open(history, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    auto facts = transfer::reportFacts(*store, job, Timestamp::now());
    if (!facts)
        return fail(facts.error());
    auto prepared = std::make_shared<PreparedReport>();
    facts->options.marksTyped = true; // the report may be asked for in another language
    prepared->content = report::reportOf(facts->record.job, facts->record.object, facts->options);
    prepared->pictures = std::move(facts->pictures);
    return std::shared_ptr<const PreparedReport>(std::move(prepared));
}

} // namespace sealwalk::ui
