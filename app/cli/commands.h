// SPDX-License-Identifier: GPL-3.0-or-later
// The table of sub-commands: one function per file commands/<name>.cpp, listed in the order --help shows.
#pragma once

#include "app/cli/command.h"

#include <vector>

namespace sealwalk::cli {

void addConvert(CLI::App& root, Work& chosen);
void addAir(CLI::App& root, Work& chosen);
void addRespond(CLI::App& root, Work& chosen);
void addSources(CLI::App& root, Work& chosen);
void addPlan(CLI::App& root, Work& chosen);
void addRise(CLI::App& root, Work& chosen);
void addDemo(CLI::App& root, Work& chosen);
void addList(CLI::App& root, Work& chosen);
void addShow(CLI::App& root, Work& chosen);
void addLog(CLI::App& root, Work& chosen);
void addFindings(CLI::App& root, Work& chosen);
void addBalance(CLI::App& root, Work& chosen);
void addBackup(CLI::App& root, Work& chosen);
void addCheck(CLI::App& root, Work& chosen);
void addCompare(CLI::App& root, Work& chosen);
void addPack(CLI::App& root, Work& chosen);
void addUnpack(CLI::App& root, Work& chosen);
void addVerify(CLI::App& root, Work& chosen);
void addTable(CLI::App& root, Work& chosen);
void addMap(CLI::App& root, Work& chosen);    ///< only where Qt was built in
void addReport(CLI::App& root, Work& chosen); ///< only where Qt was built in

std::vector<AddCommand> allCommands();

} // namespace sealwalk::cli
