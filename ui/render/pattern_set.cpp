// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/pattern_set.h"

#include "ui/render/language.h"

#include <algorithm>

namespace sealwalk::render {

namespace {

bool isPlace(const QString& text, qsizetype at)
{
    return text[at] == QLatin1Char('%') && at + 1 < text.size() && text[at + 1].digitValue() > 0;
}

Pattern patternOf(const char* source, const QString& text)
{
    Pattern pattern;
    pattern.source = source;
    qsizetype done = 0;
    const auto cut = [&](qsizetype at) {
        pattern.fixed << text.mid(done, at - done);
        pattern.length += at - done;
    };
    for (qsizetype at = 0; at < text.size(); ++at) {
        if (!isPlace(text, at))
            continue;
        cut(at);
        pattern.places.push_back(text[at + 1].digitValue());
        done = at + 2;
    }
    cut(text.size());
    for (std::size_t i = 0; i < pattern.places.size(); ++i) {
        const QString& before = pattern.fixed[static_cast<qsizetype>(i)];
        const QString& behind = pattern.fixed[static_cast<qsizetype>(i) + 1];
        const auto around = [&](QChar open, QChar close) {
            return before.endsWith(open) && behind.startsWith(close);
        };
        pattern.quoted.push_back(around(u'"', u'"') || around(u'“', u'”'));
    }
    constexpr qsizetype kShort = 12;
    pattern.isLabel = pattern.places.size() == 1 && pattern.length < kShort &&
                      text.startsWith(text[0].toLower()) && !text.contains(QLatin1Char(':')) &&
                      !text.contains(QLatin1Char('"'));
    return pattern;
}

/// What stands in the places, each with at least one letter and as few as will do; empty without a match.
QStringList fillingOf(const Pattern& pattern, const QString& text)
{
    if (!text.startsWith(pattern.fixed.first()) || !text.endsWith(pattern.fixed.last()))
        return {};
    const qsizetype end = text.size() - pattern.fixed.last().size();
    qsizetype from = pattern.fixed.first().size();
    QStringList found;
    for (qsizetype i = 1; i + 1 < pattern.fixed.size(); ++i) {
        const qsizetype at = text.indexOf(pattern.fixed[i], from + 1);
        if (at < 0 || at + pattern.fixed[i].size() > end)
            return {};
        found << text.mid(from, at - from);
        from = at + pattern.fixed[i].size();
    }
    if (from >= end)
        return {};
    return found << text.mid(from, end - from);
}

} // namespace

void PatternSet::add(std::span<const char* const> sources, Takes takes)
{
    for (const char* source : sources) {
        const QString text = QString::fromUtf8(source);
        Pattern pattern = patternOf(source, text);
        pattern.isTyped = takes == Takes::Typed;
        pattern.isLabel = pattern.isLabel && takes != Takes::Names;
        if (pattern.places.empty())
            m_plain.insert(text, source);
        else
            m_withPlaces.push_back(std::move(pattern));
    }
}

void PatternSet::sort()
{
    std::ranges::stable_sort(m_withPlaces, std::greater<>(), &Pattern::length);
}

bool PatternSet::takes(const Pattern& pattern, const QStringList& found) const
{
    // A quotation that closes before a colon is a place, with the sentence behind it.
    for (qsizetype i = 0; i < found.size(); ++i)
        if (pattern.quoted[static_cast<std::size_t>(i)] && found[i].contains(QLatin1String("\": ")))
            return false;
    if (found.isEmpty() || !pattern.isLabel)
        return !found.isEmpty();
    // A number may have a sign; what was typed may be marked by a character of private use.
    const QChar first = found.first()[0];
    const bool isSigned =
        QStringLiteral("+-\u2212").contains(first) && found.first().size() > 1 && found.first()[1].isDigit();
    return first.isDigit() || isSigned || first.category() == QChar::Other_PrivateUse ||
           plain(found.first()) != nullptr;
}

std::optional<QString> PatternSet::said(const QString& text, const Piece& piece) const
{
    if (const char* source = plain(text))
        return spoken(m_context, source);
    for (const Pattern& pattern : m_withPlaces) {
        const QStringList found = fillingOf(pattern, text);
        if (!takes(pattern, found))
            continue;
        const QString saying = spoken(m_context, pattern.source);
        // All at once: a text put in may hold a %2 of its own.
        QString filled;
        for (qsizetype i = 0; i < saying.size(); ++i) {
            const auto at = isPlace(saying, i) ? std::ranges::find(pattern.places, saying[i + 1].digitValue())
                                               : pattern.places.end();
            if (at == pattern.places.end()) {
                filled += saying[i];
                continue;
            }
            const auto which = static_cast<std::size_t>(at - pattern.places.begin());
            filled += piece(found[static_cast<qsizetype>(which)], pattern.isTyped || pattern.quoted[which]);
            ++i;
        }
        return filled;
    }
    return std::nullopt;
}

} // namespace sealwalk::render
