// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands/gas_argument.h"

#include "core/flow/gas.h"
#include "core/quantities/number_text.h"

namespace sealwalk::cli {

Result<GasArgument> gasArgument(std::string_view text)
{
    while (text.starts_with(' '))
        text.remove_prefix(1);
    if (const std::size_t length = numberLength(text); length > 0) {
        const auto number = parseNumber(text.substr(0, length));
        if (!number)
            return fail(number.error().in("--gas"));
        std::string_view unit = text.substr(length);
        while (unit.starts_with(' '))
            unit.remove_prefix(1);
        if (unit != "g/mol" || !(*number > 0.0))
            return fail(ErrorCode::BadInput,
                        "--gas: \"" + std::string(text) +
                            "\" is not a molar mass; right would be for instance \"102.03 g/mol\"");
        return GasArgument{{}, *number / 1000.0};
    }
    const auto gas = flow::gasNamed(text);
    if (!gas)
        return fail(gas.error().in("--gas"));
    const flow::GasProperties& properties = flow::propertiesOf(*gas);
    return GasArgument{std::string(properties.name), properties.molarMass};
}

} // namespace sealwalk::cli
