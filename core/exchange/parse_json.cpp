// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/canonical_json.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <new>
#include <set>
#include <string>
#include <vector>

namespace sealwalk::exchange {

namespace {

using nlohmann::json;

/// "line 3, column 7" of a byte, both counted from 1; columns are bytes.
std::string placeOf(std::string_view text, std::size_t byte)
{
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t lineStart = before.rfind('\n');
    const std::size_t column =
        lineStart == std::string_view::npos ? before.size() + 1 : before.size() - lineStart;
    return fmt::format("line {}, column {}", line, column);
}

/// Ends the parse at once: a hostile text must not first fill the memory.
struct Refusal
{
    std::string sentence;
};

/// Watches the parser for what RFC 8259 leaves open and we refuse.
class Watch
{
public:
    void see(json::parse_event_t event, const json& parsed)
    {
        using Event = json::parse_event_t;
        // "[]" costs two bytes of text and some hundred of memory.
        if (event != Event::array_end && event != Event::object_end && ++m_values > kMostJsonValues)
            throw Refusal{fmt::format("it holds more than {} values", kMostJsonValues)};
        if (event == Event::object_start || event == Event::array_start) {
            m_names.emplace_back();
            if (m_names.size() > static_cast<std::size_t>(kDeepestJson))
                throw Refusal{fmt::format("it is nested deeper than {} levels", kDeepestJson)};
        } else if (event == Event::object_end || event == Event::array_end) {
            m_names.pop_back();
        } else if (event == Event::key) {
            const std::string& name = parsed.get_ref<const std::string&>();
            if (!m_names.back().insert(name).second)
                throw Refusal{"the name \"" + name + "\" stands twice in one object"};
        }
    }

private:
    std::vector<std::set<std::string>> m_names;
    std::size_t m_values = 0;
};

} // namespace

Result<json> parseJson(std::string_view text)
{
    if (text.size() > kLongestJson)
        return fail(ErrorCode::BadInput,
                    fmt::format("the JSON is {} bytes long; at most {} are read", text.size(), kLongestJson));
    Watch watch;
    try {
        return json::parse(text.begin(), text.end(),
                           [&watch](int /*depth*/, json::parse_event_t event, json& parsed) {
                               watch.see(event, parsed);
                               return true;
                           });
    } catch (const Refusal& refusal) {
        return fail(ErrorCode::BadInput, refusal.sentence);
    } catch (const json::parse_error& wrong) {
        // The library counts the byte it stopped at from 1.
        const std::size_t byte = wrong.byte > 0 ? wrong.byte - 1 : 0;
        if (byte >= text.size())
            return fail(ErrorCode::BadInput,
                        placeOf(text, text.size()) + ": the text ends in the middle of the JSON");
        return fail(ErrorCode::BadInput, placeOf(text, byte) + ": this is not JSON (RFC 8259, UTF-8)");
    } catch (const std::bad_alloc&) {
        return fail(ErrorCode::MachineFailed, "the machine has no memory left for this JSON");
    } catch (const json::out_of_range&) {
        return fail(ErrorCode::BadInput, "a number is too large; JSON numbers end at 1.797e308");
    }
}

} // namespace sealwalk::exchange
