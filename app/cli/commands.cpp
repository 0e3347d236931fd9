// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"

namespace sealwalk::cli {

std::vector<AddCommand> allCommands()
{
    // One a line, so that two changes can meet here.
    // clang-format off
    std::vector<AddCommand> commands = {
        addConvert,
        addAir,
        addRespond,
        addSources,
        addPlan,
        addRise,
        addDemo,
        addList,
        addShow,
        addLog,
        addFindings,
        addBalance,
        addTable,
        addPack,
        addUnpack,
        addVerify,
        addBackup,
        addCheck,
        addCompare,
    };
    // clang-format on
#ifdef SEALWALK_WITH_QT
    commands.push_back(addMap);
    commands.push_back(addReport);
#endif
    return commands;
}

} // namespace sealwalk::cli
