// SPDX-License-Identifier: GPL-3.0-or-later
// Permissions mean nothing to the administrator: tests of them run as somebody else for a moment.
#pragma once

namespace sealwalk::tests {

class OrdinaryUser
{
public:
    OrdinaryUser();
    OrdinaryUser(const OrdinaryUser&) = delete;
    OrdinaryUser& operator=(const OrdinaryUser&) = delete;
    ~OrdinaryUser();

private:
    bool m_changed = false;
};

} // namespace sealwalk::tests
