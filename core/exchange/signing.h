// SPDX-License-Identifier: GPL-3.0-or-later
// Who said yes: Ed25519 signatures (RFC 8032), and the keys behind them, each locked with its owner's
// passphrase.
#pragma once

#include "core/base/result.h"

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace sealwalk::exchange {

struct PublicKey
{
    std::array<std::uint8_t, 32> bytes{};

    bool operator==(const PublicKey&) const = default;
    [[nodiscard]] std::string text() const; ///< 64 lower-case hexadecimal digits
    static Result<PublicKey> parse(std::string_view text);
    /// Eight digits in two groups, for people to compare aloud; too short to prove anything.
    [[nodiscard]] std::string shortText() const;
};

struct SignatureBytes
{
    std::array<std::uint8_t, 64> bytes{};

    bool operator==(const SignatureBytes&) const = default;
    [[nodiscard]] std::string text() const; ///< 128 lower-case hexadecimal digits
    static Result<SignatureBytes> parse(std::string_view text);
};

/// What one guess at a passphrase costs (Argon2id, RFC 9106).
struct GuessCost
{
    std::uint64_t passes = 3;                             ///< 1 … 16
    std::uint64_t memoryBytes = std::uint64_t{256} << 20; ///< 8 KiB … 1 GiB

    bool operator==(const GuessCost&) const = default;
    /// The library's "moderate": 3 passes over 256 MiB, the better part of a second.
    static GuessCost moderate() { return {}; }
    /// For tests only: guessing is as good as free.
    static GuessCost minimum();
};

/// A signing key that only its passphrase opens. May be stored and copied openly.
struct SealedKey
{
    PublicKey publicKey;
    GuessCost cost;
    std::array<std::uint8_t, 16> salt{};
    std::array<std::uint8_t, 24> nonce{};
    std::array<std::uint8_t, 48> cipher{}; ///< the 32-byte seed and its authenticator

    bool operator==(const SealedKey&) const = default;
    /// One line, for storage: sealwalk-key-1:argon2id:<passes>:<memory>:<public>:<salt>:<nonce>:<cipher>
    [[nodiscard]] std::string text() const;
    static Result<SealedKey> parse(std::string_view text);
};

inline constexpr std::size_t kShortestPassphrase = 8; ///< characters

/// Whether a passphrase has so many characters, counted as people see them typed: UTF-8 code points.
bool isLongEnough(std::string_view passphrase);

/// A new random key under `passphrase`. Refused: shorter than kShortestPassphrase. Takes the time and memory
/// of one guess; MachineFailed when that memory is not there.
Result<SealedKey> createKey(std::string_view passphrase, const GuessCost& cost = GuessCost::moderate());

/// The key of a known 32-byte `seed` (RFC 8032 calls it the private key) under `passphrase`; otherwise as
/// createKey().
Result<SealedKey> createKeyFromSeed(std::span<const std::uint8_t, 32> seed, std::string_view passphrase,
                                    const GuessCost& cost = GuessCost::moderate());

/// The same key under another passphrase; WrongPassphrase when `old` does not open it.
Result<SealedKey> changePassphrase(const SealedKey& key, std::string_view old, std::string_view passphrase,
                                   const GuessCost& cost = GuessCost::moderate());

/// Signs `message`; WrongPassphrase when `passphrase` does not open `key`. The secret is wiped before
/// returning.
Result<SignatureBytes> sign(const SealedKey& key, std::string_view passphrase, std::string_view message);

/// Whether `signature` was made over exactly `message` by the owner of `key`.
bool verifySignature(const PublicKey& key, std::string_view message, const SignatureBytes& signature);

} // namespace sealwalk::exchange
