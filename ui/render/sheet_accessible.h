// SPDX-License-Identifier: GPL-3.0-or-later
// The map for assistive technology: a list of points with spoken text, one of them selected.
#pragma once

namespace sealwalk::render {

/// Makes SheetView known to QAccessible; any number of calls install it once.
void installSheetAccessibility();

} // namespace sealwalk::render
