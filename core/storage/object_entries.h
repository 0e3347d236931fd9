// SPDX-License-Identifier: GPL-3.0-or-later
// One object that was entered twice, say on two computers: which rows of the file's objects are one, as its
// people said. The rows and the jobs under them stay as they are; what is signed covers them.
#pragma once

#include "core/model/ids.h"

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace sealwalk::storage {

/// What the names of the settings begin with that say so; a UUID follows, and another is the value.
inline constexpr const char* kOneObject = "one object ";

std::string oneObjectSetting(model::ObjectId entry);

class ObjectEntries
{
public:
    /// Reads what is said in the file; objects that it does not have are passed over.
    explicit ObjectEntries(SQLite::Database& database);

    /// The entry under which the others stand; the entry itself when nothing was said of it.
    [[nodiscard]] std::int64_t headOf(std::int64_t entry) const;
    /// All entries of the same object, the head first.
    [[nodiscard]] std::vector<std::int64_t> entriesOf(std::int64_t entry) const;
    /// The same for SQL, to stand behind IN: "(3, 5)".
    [[nodiscard]] std::string listOf(std::int64_t entry) const;
    /// Those that were said to be the same as just this entry.
    [[nodiscard]] std::vector<std::int64_t> directlyUnder(std::int64_t entry) const;
    /// An SQL condition: whether the columns `a` and `b` hold entries of one object. An index on `a` is used.
    [[nodiscard]] std::string areOne(const std::string& a, const std::string& b) const;

private:
    std::map<std::int64_t, std::int64_t> m_under; ///< entry → the one it stands under, never itself
};

} // namespace sealwalk::storage
