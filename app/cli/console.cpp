// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace sealwalk::cli {

void Console::answer(const nlohmann::ordered_json& document, const std::string& text) const
{
    if (json)
        std::cout << document.dump(2) << '\n';
    else
        std::cout << text << '\n';
    std::cout.flush();
}

void Console::note(const std::string& line) const
{
    std::cerr << line << '\n';
}

} // namespace sealwalk::cli
