// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/digest.h"
#include "core/exchange/signing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace sealwalk::exchange {
namespace {

constexpr const char* kPassphrase = "grease sparingly";

SealedKey newKey()
{
    return createKey(kPassphrase, GuessCost::minimum()).value();
}

std::string textOfHex(const std::string& hex)
{
    const auto bytes = bytesOfHex(hex, hex.size() / 2).value();
    return {bytes.begin(), bytes.end()};
}

struct Vector
{
    const char* seed;
    const char* publicKey;
    const char* message;
    const char* signature;
};

// Published: RFC 8032 section 7.1, tests 1, 2, 3 and "SHA(abc)".
constexpr Vector kVectors[] = {
    {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
     "d25bf5f0595bbe24655141438e7a100b"},
    {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
     "387b2eaeb4302aeeb00d291612bb0c00"},
    {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
     "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659"
     "4a7c15e9716ed28dc027beceea1ec40a"},
    {"833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
     "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
     "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd"
     "454d4423643ce80e2a9ac94fa54ca49f",
     "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e030"
     "3dca179c138ac17ad9bef1177331a704"},
};

TEST(Signing, MakesThePublishedSignaturesFromThePublishedKeys)
{
    for (const Vector& vector : kVectors) {
        const auto bytes = bytesOfHex(vector.seed, 32).value();
        std::array<std::uint8_t, 32> seed{};
        std::copy(bytes.begin(), bytes.end(), seed.begin());
        const auto key = createKeyFromSeed(seed, kPassphrase, GuessCost::minimum());
        ASSERT_TRUE(key.has_value()) << key.error().message;
        EXPECT_EQ(key->publicKey.text(), vector.publicKey);
        const std::string message = textOfHex(vector.message);
        const auto signature = sign(*key, kPassphrase, message);
        ASSERT_TRUE(signature.has_value()) << signature.error().message;
        EXPECT_EQ(signature->text(), vector.signature);
        EXPECT_TRUE(verifySignature(key->publicKey, message, *signature));
    }
}

// Property: every bit of message, signature and key counts.
TEST(Signing, OneFlippedBitAnywhereIsRefused)
{
    const SealedKey key = newKey();
    std::string message = "round 2, point 12";
    const SignatureBytes signature = sign(key, kPassphrase, message).value();
    ASSERT_TRUE(verifySignature(key.publicKey, message, signature));
    for (std::size_t bit = 0; bit < message.size() * 8; ++bit) {
        std::string changed = message;
        changed[bit / 8] = static_cast<char>(changed[bit / 8] ^ (1 << (bit % 8)));
        EXPECT_FALSE(verifySignature(key.publicKey, changed, signature)) << bit;
    }
    for (std::size_t bit = 0; bit < signature.bytes.size() * 8; ++bit) {
        SignatureBytes changed = signature;
        changed.bytes[bit / 8] = static_cast<std::uint8_t>(changed.bytes[bit / 8] ^ (1 << (bit % 8)));
        EXPECT_FALSE(verifySignature(key.publicKey, message, changed)) << bit;
    }
    for (std::size_t bit = 0; bit < key.publicKey.bytes.size() * 8; ++bit) {
        PublicKey changed = key.publicKey;
        changed.bytes[bit / 8] = static_cast<std::uint8_t>(changed.bytes[bit / 8] ^ (1 << (bit % 8)));
        EXPECT_FALSE(verifySignature(changed, message, signature)) << bit;
    }
}

TEST(Signing, AWrongPassphraseIsToldApartFromOtherFailures)
{
    const SealedKey key = newKey();
    for (const char* wrong : {"", "grease sparingl", "grease sparingly ", "Grease sparingly"}) {
        const auto result = sign(key, wrong, "x");
        ASSERT_FALSE(result.has_value()) << wrong;
        EXPECT_EQ(result.error().code, ErrorCode::WrongPassphrase);
    }
}

// Property: nothing of the sealed key can be exchanged without the passphrase failing.
TEST(Signing, ATamperedKeyDoesNotOpen)
{
    const SealedKey key = newKey();
    SealedKey other = key;
    other.publicKey = newKey().publicKey;
    EXPECT_EQ(sign(other, kPassphrase, "x").error().code, ErrorCode::WrongPassphrase);
    other = key;
    other.cipher[3] ^= 1;
    EXPECT_EQ(sign(other, kPassphrase, "x").error().code, ErrorCode::WrongPassphrase);
    other = key;
    other.salt[0] ^= 1;
    EXPECT_EQ(sign(other, kPassphrase, "x").error().code, ErrorCode::WrongPassphrase);
    other = key;
    other.cost.passes += 1;
    EXPECT_EQ(sign(other, kPassphrase, "x").error().code, ErrorCode::WrongPassphrase);
    other = key;
    other.cost.memoryBytes = std::uint64_t{1} << 40;
    EXPECT_EQ(sign(other, kPassphrase, "x").error().code, ErrorCode::BadInput)
        << "a hostile key must not eat memory";
}

TEST(Signing, AShortPassphraseIsRefused)
{
    EXPECT_EQ(createKey("1234567", GuessCost::minimum()).error().code, ErrorCode::BadInput);
    EXPECT_TRUE(createKey("12345678", GuessCost::minimum()).has_value());
    // Regression: bytes were counted, so four umlauts were enough.
    EXPECT_FALSE(isLongEnough("\xc3\xa4\xc3\xa4\xc3\xa4\xc3\xa4"));
    EXPECT_FALSE(isLongEnough("\xc3\xa4\xc3\xa4\xc3\xa4\xc3\xa4"
                              "123"));
    EXPECT_TRUE(isLongEnough("\xc3\xa4\xc3\xa4\xc3\xa4\xc3\xa4"
                             "1234"));
}

TEST(Signing, TwoKeysUnderOnePassphraseShareNothing)
{
    const SealedKey a = newKey();
    const SealedKey b = newKey();
    EXPECT_NE(a.publicKey, b.publicKey);
    EXPECT_NE(a.salt, b.salt);
    EXPECT_NE(a.nonce, b.nonce);
}

TEST(Signing, ChangingThePassphraseKeepsTheKeyAndRetiresTheOldOne)
{
    const SealedKey key = newKey();
    EXPECT_EQ(changePassphrase(key, "not the one", "a new passphrase", GuessCost::minimum()).error().code,
              ErrorCode::WrongPassphrase);
    const SealedKey changed =
        changePassphrase(key, kPassphrase, "a new passphrase", GuessCost::minimum()).value();
    EXPECT_EQ(changed.publicKey, key.publicKey);
    EXPECT_EQ(sign(changed, kPassphrase, "x").error().code, ErrorCode::WrongPassphrase);
    EXPECT_TRUE(verifySignature(key.publicKey, "x", sign(changed, "a new passphrase", "x").value()));
}

// Property: the stored line and the key are one; the production cost goes with it.
TEST(Signing, TheStoredLineReadsBackAsTheSameKey)
{
    const SealedKey key = newKey();
    EXPECT_EQ(SealedKey::parse(key.text()).value(), key);
    const SealedKey costly = createKey(kPassphrase).value();
    EXPECT_EQ(SealedKey::parse(costly.text()).value().cost, GuessCost::moderate());
    EXPECT_TRUE(verifySignature(costly.publicKey, "x", sign(costly, kPassphrase, "x").value()));
}

TEST(Signing, RefusesLinesThatAreNoKey)
{
    const std::string good = newKey().text();
    std::string upper = good;
    std::transform(upper.begin() + 20, upper.end(), upper.begin() + 20,
                   [](char c) { return static_cast<char>(c >= 'a' && c <= 'f' ? c - 32 : c); });
    for (const std::string& bad : {std::string(), good + "0", good + ":", good.substr(1), upper,
                                   "sealwalk-key-2" + good.substr(14), good.substr(0, good.size() - 1)})
        EXPECT_FALSE(SealedKey::parse(bad).has_value()) << bad;
}

// Published: FIPS 180-4's example "abc" and the digest of nothing.
TEST(Digest, GivesThePublishedDigests)
{
    EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

} // namespace
} // namespace sealwalk::exchange
