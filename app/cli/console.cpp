// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/progress.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace sealwalk::cli {

namespace {

bool g_stdoutFailed = false; // NOLINT(cppcoreguidelines-avoid-non-const-global-variables)

void flush()
{
    std::cout.flush();
    g_stdoutFailed = g_stdoutFailed || !std::cout;
}

} // namespace

bool stdoutTookAll()
{
    flush();
    return !g_stdoutFailed;
}

void Console::answer(const nlohmann::ordered_json& document, const std::string& text) const
{
    Progress::wipe();
    if (json)
        std::cout << document.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) << '\n';
    else
        std::cout << text << '\n';
    flush();
}

void Console::note(const std::string& line) const
{
    Progress::wipe();
    std::cerr << line << '\n';
}

} // namespace sealwalk::cli
