// SPDX-License-Identifier: GPL-3.0-or-later
// A buffer for secrets that is wiped when it goes out of scope. Sources of core/exchange only.
#pragma once

#include <sodium.h>

#include <array>
#include <cstdint>

namespace sealwalk::exchange {

template <std::size_t N>
class SecretBytes
{
public:
    SecretBytes() = default;
    SecretBytes(const SecretBytes&) = delete;
    SecretBytes& operator=(const SecretBytes&) = delete;
    /// The library's wipe, which the compiler may not leave out.
    ~SecretBytes() { sodium_memzero(m_bytes.data(), m_bytes.size()); }

    [[nodiscard]] std::uint8_t* data() { return m_bytes.data(); }
    [[nodiscard]] const std::uint8_t* data() const { return m_bytes.data(); }
    [[nodiscard]] std::size_t size() const { return N; }

private:
    std::array<std::uint8_t, N> m_bytes{};
};

} // namespace sealwalk::exchange
