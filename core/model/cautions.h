// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions that go with spraying helium at vacuum equipment. They name the hazard and defer to the site's
// rules, permits and licensed people; they never replace them.
#pragma once

#include <span>
#include <string_view>

namespace sealwalk::model {

struct Caution
{
    std::string_view word; ///< stable, kept in the record
    std::string_view title;
    std::string_view text;
};

/// In the order they are read, the gravest first.
std::span<const Caution> cautions();

} // namespace sealwalk::model
