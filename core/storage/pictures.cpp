// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures are kept once, under the SHA-256 of their bytes.
#include "core/storage/connection.h"
#include "core/storage/picture_name.h"

#include <fmt/format.h>
#include <sodium.h>

#include <array>

namespace sealwalk::storage {

std::string pictureName(const std::vector<std::uint8_t>& bytes)
{
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256(digest.data(), bytes.data(), bytes.size());
    std::string name;
    for (const unsigned char byte : digest)
        name += fmt::format("{:02x}", byte);
    return name;
}

void insertPicture(SQLite::Database& database, const model::Picture& picture)
{
    if (picture.bytes.empty())
        throw Refusal(ErrorCode::BadInput, "the picture has no content");
    if (pictureName(picture.bytes) != picture.sha256)
        throw Refusal(ErrorCode::BadInput,
                      fmt::format("picture {} does not hold what its name says", picture.sha256));
    {
        SQLite::Statement known(database, "SELECT 1 FROM picture WHERE sha256 = ?");
        known.bind(1, picture.sha256);
        if (known.executeStep())
            return;
    }
    SQLite::Statement insert(database, "INSERT INTO picture (sha256, extension, bytes) VALUES (?, ?, ?)");
    insert.bind(1, picture.sha256);
    insert.bind(2, picture.extension);
    insert.bind(3, picture.bytes.data(), static_cast<int>(picture.bytes.size()));
    insert.exec();
}

Result<std::string> HistoryStore::addPicture(const std::vector<std::uint8_t>& bytes,
                                             const std::string& extension)
{
    return m_connection->write([&]() -> Result<std::string> {
        constexpr std::size_t kLargest = 100U << 20U;
        if (bytes.size() > kLargest)
            return fail(ErrorCode::BadInput, "the picture has more than 100 MiB; make it smaller");
        model::Picture picture;
        picture.sha256 = pictureName(bytes);
        picture.extension = extension;
        picture.bytes = bytes;
        insertPicture(m_connection->database, picture);
        return picture.sha256;
    });
}

Result<model::Picture> HistoryStore::picture(const std::string& sha256) const
{
    return m_connection->read([&]() -> Result<model::Picture> {
        SQLite::Statement select(m_connection->database,
                                 "SELECT extension, bytes FROM picture WHERE sha256 = ?");
        select.bind(1, sha256);
        if (!select.executeStep())
            return fail(ErrorCode::NotFound,
                        fmt::format("{}: has no picture {}", m_connection->name(), sha256));
        model::Picture picture;
        picture.sha256 = sha256;
        picture.extension = select.getColumn(0).getString();
        const SQLite::Column blob = select.getColumn(1);
        const auto* data = static_cast<const std::uint8_t*>(blob.getBlob());
        picture.bytes.assign(data, data + blob.getBytes());
        return picture;
    });
}

} // namespace sealwalk::storage
