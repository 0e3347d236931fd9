// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/canonical_json.h"

#include "core/base/contract.h"
#include "core/base/utf8.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <vector>

namespace sealwalk::exchange {

namespace {

using nlohmann::json;

constexpr std::int64_t kLargestWholeNumber = std::int64_t{1} << 53;

void appendString(std::string& out, const std::string& text)
{
    out.push_back('"');
    for (const char c : text) {
        switch (c) {
        case '"':
            out += "\\\"";
            break;
        case '\\':
            out += "\\\\";
            break;
        case '\b':
            out += "\\b";
            break;
        case '\f':
            out += "\\f";
            break;
        case '\n':
            out += "\\n";
            break;
        case '\r':
            out += "\\r";
            break;
        case '\t':
            out += "\\t";
            break;
        default:
            if (static_cast<unsigned char>(c) < 0x20)
                out += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
            else
                out.push_back(c);
        }
    }
    out.push_back('"');
}

/// Writes one value after another; `m_place` is the JSON path of the one at hand.
class Writer
{
public:
    Result<std::string> write(const json& value)
    {
        if (const Status done = append(value, 0); !done)
            return fail(done.error());
        return std::move(m_out);
    }

private:
    Status append(const json& value, int depth)
    {
        switch (value.type()) {
        case json::value_t::null:
            m_out += "null";
            return {};
        case json::value_t::boolean:
            m_out += value.get<bool>() ? "true" : "false";
            return {};
        case json::value_t::string:
            return appendText(value.get_ref<const std::string&>());
        case json::value_t::number_integer:
            return appendWhole(value.get<std::int64_t>());
        case json::value_t::number_unsigned:
            if (value.get<std::uint64_t>() > static_cast<std::uint64_t>(kLargestWholeNumber))
                return tooLarge();
            return appendWhole(static_cast<std::int64_t>(value.get<std::uint64_t>()));
        case json::value_t::number_float:
            if (!std::isfinite(value.get<double>()))
                return refuse("is not a finite number; JSON has no infinity and no NaN");
            m_out += ecmaScriptNumber(value.get<double>());
            return {};
        case json::value_t::array:
            return appendArray(value, depth);
        case json::value_t::object:
            return appendObject(value, depth);
        default:
            return refuse("is binary data, which JSON cannot hold");
        }
    }

    Status appendText(const std::string& text)
    {
        if (!isUtf8(text))
            return refuse("is not UTF-8 text");
        appendString(m_out, text);
        return {};
    }

    Status appendWhole(std::int64_t value)
    {
        if (value > kLargestWholeNumber || value < -kLargestWholeNumber)
            return tooLarge();
        m_out += std::to_string(value);
        return {};
    }

    Status appendArray(const json& value, int depth)
    {
        if (depth == kDeepestJson)
            return tooDeep();
        m_out.push_back('[');
        const std::size_t placeLength = m_place.size();
        for (std::size_t i = 0; i < value.size(); ++i) {
            if (i > 0)
                m_out.push_back(',');
            m_place += fmt::format("[{}]", i);
            if (Status done = append(value[i], depth + 1); !done)
                return done;
            m_place.resize(placeLength);
        }
        m_out.push_back(']');
        return {};
    }

    Status appendObject(const json& value, int depth)
    {
        struct Member
        {
            std::u16string order;
            const std::string* name;
            const json* value;
        };
        if (depth == kDeepestJson)
            return tooDeep();
        std::vector<Member> members;
        members.reserve(value.size());
        for (auto it = value.begin(); it != value.end(); ++it) {
            if (!isUtf8(it.key()))
                return refuse("has a name that is not UTF-8 text");
            members.push_back({utf16Of(it.key()), &it.key(), &*it});
        }
        std::sort(members.begin(), members.end(),
                  [](const Member& a, const Member& b) { return a.order < b.order; });

        m_out.push_back('{');
        const std::size_t placeLength = m_place.size();
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (i > 0)
                m_out.push_back(',');
            appendString(m_out, *members[i].name);
            m_out.push_back(':');
            m_place += (m_place.empty() ? "" : ".") + *members[i].name;
            if (Status done = append(*members[i].value, depth + 1); !done)
                return done;
            m_place.resize(placeLength);
        }
        m_out.push_back('}');
        return {};
    }

    [[nodiscard]] Status refuse(const std::string& why) const
    {
        return fail(ErrorCode::BadInput, (m_place.empty() ? "the value" : m_place) + " " + why);
    }
    [[nodiscard]] Status tooLarge() const
    {
        return refuse("is a whole number beyond 9007199254740992, which JSON readers round");
    }
    [[nodiscard]] Status tooDeep() const
    {
        return refuse(fmt::format("is nested deeper than {} levels", kDeepestJson));
    }

    std::string m_out;
    std::string m_place;
};

} // namespace

std::string ecmaScriptNumber(double finite)
{
    SEALWALK_EXPECT(std::isfinite(finite));
    if (finite == 0.0)
        return "0"; // minus zero too

    // The shortest digits come from the library; only their layout is ECMAScript's own.
    std::array<char, 32> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), finite, std::chars_format::scientific)
            .ptr;
    const std::string_view text(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
    const std::size_t e = text.find('e');
    int exponent = 0;
    const std::size_t exponentStart = text[e + 1] == '+' ? e + 2 : e + 1;
    std::from_chars(text.data() + exponentStart, text.data() + text.size(), exponent);

    std::string digits;
    for (const char c : text.substr(0, e))
        if (c >= '0' && c <= '9')
            digits.push_back(c);
    const std::string sign = finite < 0.0 ? "-" : "";
    const int count = static_cast<int>(digits.size());
    const int point = exponent + 1; // the decimal point stands after this many digits

    constexpr int kLongestWhole = 21;
    constexpr int kSmallestPlainPoint = -6;
    if (count <= point && point <= kLongestWhole)
        return sign + digits + std::string(static_cast<std::size_t>(point - count), '0');
    if (0 < point && point <= kLongestWhole)
        return sign + digits.substr(0, static_cast<std::size_t>(point)) + "." +
               digits.substr(static_cast<std::size_t>(point));
    if (kSmallestPlainPoint < point && point <= 0)
        return sign + "0." + std::string(static_cast<std::size_t>(-point), '0') + digits;
    const std::string power = fmt::format("e{}{}", exponent < 0 ? '-' : '+', std::abs(exponent));
    if (count == 1)
        return sign + digits + power;
    return sign + digits.substr(0, 1) + "." + digits.substr(1) + power;
}

Result<std::string> canonicalJson(const json& value)
{
    return Writer().write(value);
}

} // namespace sealwalk::exchange
