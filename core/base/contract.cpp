// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/contract.h"

#include <cstdio>
#include <cstdlib>

namespace sealwalk {

void contractBroken(const char* what, const char* file, int line)
{
    std::fprintf(stderr, "sealwalk: internal check failed: %s (%s:%d)\n", what, file, line);
    std::abort();
}

} // namespace sealwalk
