// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"

namespace sealwalk::cli {

std::vector<AddCommand> allCommands()
{
    return {
        addConvert, addAir,  addRespond, addSources,  addPlan,   addRise,  addDemo,
        addList,    addShow, addLog,     addFindings, addBackup, addCheck,
    };
}

} // namespace sealwalk::cli
