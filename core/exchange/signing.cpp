// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/signing.h"

#include "core/exchange/digest.h"
#include "core/exchange/secret_bytes.h"

#include <fmt/format.h>
#include <sodium.h>

#include <algorithm>
#include <charconv>
#include <vector>

namespace sealwalk::exchange {

bool isLongEnough(std::string_view passphrase)
{
    const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; };
    const auto characters =
        std::count_if(passphrase.begin(), passphrase.end(), [&](char c) { return !continues(c); });
    return static_cast<std::size_t>(characters) >= kShortestPassphrase;
}

namespace {

constexpr std::string_view kKeyFormat = "sealwalk-key-1";
constexpr std::string_view kDerivation = "argon2id";

static_assert(crypto_sign_PUBLICKEYBYTES == sizeof(PublicKey::bytes));
static_assert(crypto_sign_BYTES == sizeof(SignatureBytes::bytes));
static_assert(crypto_pwhash_SALTBYTES == sizeof(SealedKey::salt));
static_assert(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES == sizeof(SealedKey::nonce));
static_assert(crypto_sign_SEEDBYTES + crypto_aead_xchacha20poly1305_ietf_ABYTES == sizeof(SealedKey::cipher));

using Seed = SecretBytes<crypto_sign_SEEDBYTES>;
using LockKey = SecretBytes<crypto_aead_xchacha20poly1305_ietf_KEYBYTES>;
using SecretKey = SecretBytes<crypto_sign_SECRETKEYBYTES>;

const unsigned char* asBytes(std::string_view text)
{
    return reinterpret_cast<const unsigned char*>(text.data());
}

Status startLibrary()
{
    if (sodium_init() < 0)
        return fail(ErrorCode::MachineFailed, "the machine offers no random numbers for signing keys");
    return {};
}

Status checkCost(const GuessCost& cost)
{
    constexpr std::uint64_t kMostPasses = 16;
    constexpr std::uint64_t kMostMemory = std::uint64_t{1} << 30;
    if (cost.passes < crypto_pwhash_argon2id_OPSLIMIT_MIN || cost.passes > kMostPasses ||
        cost.memoryBytes < crypto_pwhash_argon2id_MEMLIMIT_MIN || cost.memoryBytes > kMostMemory)
        return fail(ErrorCode::BadInput,
                    "the signing key asks for a passphrase check outside 1 to 16 passes over "
                    "8 KiB to 1 GiB; it is damaged or not ours");
    return {};
}

Status deriveLockKey(LockKey& into, std::string_view passphrase, const SealedKey& key)
{
    if (crypto_pwhash(into.data(), into.size(), passphrase.data(), passphrase.size(), key.salt.data(),
                      key.cost.passes, static_cast<std::size_t>(key.cost.memoryBytes),
                      crypto_pwhash_ALG_ARGON2ID13) != 0)
        return fail(ErrorCode::MachineFailed, fmt::format("the passphrase check needs {} MiB of free memory",
                                                          key.cost.memoryBytes >> 20));
    return {};
}

/// What the authenticator covers besides the seed: the public key and the cost cannot be exchanged unnoticed.
std::string associatedData(const SealedKey& key)
{
    return fmt::format("{}:{}:{}:{}:{}", kKeyFormat, kDerivation, key.cost.passes, key.cost.memoryBytes,
                       key.publicKey.text());
}

Status openSeed(Seed& into, const SealedKey& key, std::string_view passphrase)
{
    if (Status ready = startLibrary(); !ready)
        return ready;
    if (Status right = checkCost(key.cost); !right)
        return right;
    LockKey lock;
    if (Status derived = deriveLockKey(lock, passphrase, key); !derived)
        return derived;
    const std::string extra = associatedData(key);
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(into.data(), nullptr, nullptr, key.cipher.data(),
                                                   key.cipher.size(), asBytes(extra), extra.size(),
                                                   key.nonce.data(), lock.data()) != 0)
        return fail(ErrorCode::WrongPassphrase, "the passphrase does not open this signing key");
    return {};
}

Result<SealedKey> sealSeed(const Seed& seed, std::string_view passphrase, const GuessCost& cost)
{
    if (!isLongEnough(passphrase))
        return fail(
            ErrorCode::BadInput,
            fmt::format("the passphrase is too short; use at least {} characters", kShortestPassphrase));
    if (const Status right = checkCost(cost); !right)
        return fail(right.error());
    SealedKey key;
    key.cost = cost;
    SecretKey secret;
    crypto_sign_seed_keypair(key.publicKey.bytes.data(), secret.data(), seed.data());
    randombytes_buf(key.salt.data(), key.salt.size());
    randombytes_buf(key.nonce.data(), key.nonce.size());
    LockKey lock;
    if (const Status derived = deriveLockKey(lock, passphrase, key); !derived)
        return fail(derived.error());
    const std::string extra = associatedData(key);
    crypto_aead_xchacha20poly1305_ietf_encrypt(key.cipher.data(), nullptr, seed.data(), seed.size(),
                                               asBytes(extra), extra.size(), nullptr, key.nonce.data(),
                                               lock.data());
    return key;
}

template <std::size_t N>
Status readHex(std::array<std::uint8_t, N>& into, std::string_view text)
{
    const auto bytes = bytesOfHex(text, N);
    if (!bytes)
        return fail(bytes.error());
    std::copy(bytes->begin(), bytes->end(), into.begin());
    return {};
}

bool readNumber(std::uint64_t& into, std::string_view text)
{
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), into);
    return error == std::errc{} && end == text.data() + text.size() && std::to_string(into) == text;
}

std::vector<std::string_view> partsOf(std::string_view text)
{
    std::vector<std::string_view> parts;
    while (true) {
        const std::size_t colon = text.find(':');
        parts.push_back(text.substr(0, colon));
        if (colon == std::string_view::npos)
            return parts;
        text.remove_prefix(colon + 1);
    }
}

} // namespace

std::string PublicKey::text() const
{
    return hexOf(bytes);
}

Result<PublicKey> PublicKey::parse(std::string_view text)
{
    PublicKey key;
    if (const Status read = readHex(key.bytes, text); !read)
        return fail(read.error().in("public key"));
    return key;
}

std::string PublicKey::shortText() const
{
    const std::string digits = text();
    return digits.substr(0, 4) + " " + digits.substr(4, 4);
}

std::string SignatureBytes::text() const
{
    return hexOf(bytes);
}

Result<SignatureBytes> SignatureBytes::parse(std::string_view text)
{
    SignatureBytes signature;
    if (const Status read = readHex(signature.bytes, text); !read)
        return fail(read.error().in("signature"));
    return signature;
}

GuessCost GuessCost::minimum()
{
    return {crypto_pwhash_argon2id_OPSLIMIT_MIN, crypto_pwhash_argon2id_MEMLIMIT_MIN};
}

std::string SealedKey::text() const
{
    return associatedData(*this) + ":" + hexOf(salt) + ":" + hexOf(nonce) + ":" + hexOf(cipher);
}

Result<SealedKey> SealedKey::parse(std::string_view text)
{
    const std::vector<std::string_view> parts = partsOf(text);
    SealedKey key;
    constexpr std::size_t kParts = 8;
    if (parts.size() != kParts || parts[0] != kKeyFormat || parts[1] != kDerivation ||
        !readNumber(key.cost.passes, parts[2]) || !readNumber(key.cost.memoryBytes, parts[3]) ||
        !readHex(key.publicKey.bytes, parts[4]) || !readHex(key.salt, parts[5]) ||
        !readHex(key.nonce, parts[6]) || !readHex(key.cipher, parts[7]))
        return fail(ErrorCode::DamagedFile,
                    "the stored signing key is damaged or of another kind; sealwalk-key-1 "
                    "is right");
    if (const Status right = checkCost(key.cost); !right)
        return fail(right.error());
    return key;
}

Result<SealedKey> createKey(std::string_view passphrase, const GuessCost& cost)
{
    if (const Status ready = startLibrary(); !ready)
        return fail(ready.error());
    Seed seed;
    randombytes_buf(seed.data(), seed.size());
    return sealSeed(seed, passphrase, cost);
}

Result<SealedKey> createKeyFromSeed(std::span<const std::uint8_t, 32> seed, std::string_view passphrase,
                                    const GuessCost& cost)
{
    if (const Status ready = startLibrary(); !ready)
        return fail(ready.error());
    Seed own;
    std::copy(seed.begin(), seed.end(), own.data());
    return sealSeed(own, passphrase, cost);
}

Result<SealedKey> changePassphrase(const SealedKey& key, std::string_view old, std::string_view passphrase,
                                   const GuessCost& cost)
{
    Seed seed;
    if (const Status opened = openSeed(seed, key, old); !opened)
        return fail(opened.error());
    return sealSeed(seed, passphrase, cost);
}

Result<SignatureBytes> sign(const SealedKey& key, std::string_view passphrase, std::string_view message)
{
    Seed seed;
    if (const Status opened = openSeed(seed, key, passphrase); !opened)
        return fail(opened.error());
    PublicKey fromSeed;
    SecretKey secret;
    crypto_sign_seed_keypair(fromSeed.bytes.data(), secret.data(), seed.data());
    SignatureBytes signature;
    crypto_sign_detached(signature.bytes.data(), nullptr, asBytes(message), message.size(), secret.data());
    return signature;
}

bool verifySignature(const PublicKey& key, std::string_view message, const SignatureBytes& signature)
{
    return crypto_sign_verify_detached(signature.bytes.data(), asBytes(message), message.size(),
                                       key.bytes.data()) == 0;
}

} // namespace sealwalk::exchange
