// SPDX-License-Identifier: GPL-3.0-or-later
// Texts held against patterns: "%1 is locked; unlock it first" and what stands for %1.
#pragma once

#include <QHash>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace sealwalk::render {

/// One pattern, cut at its places so that holding it against a text needs no more than a search.
struct Pattern
{
    const char* source = nullptr;
    QStringList fixed;        ///< what stands before, between and behind the places: one more than places
    std::vector<int> places;  ///< the number of each %n, as they stand in the source
    std::vector<bool> quoted; ///< whether quotation marks stand around the place
    bool isLabel =
        false; ///< so short that somebody's own words may begin like it: takes figures and words only
    bool isTyped = false; ///< its places hold what somebody typed
    qsizetype length = 0; ///< letters that must be there: the more, the surer the match
};

/// Patterns by their texts: those without places at once, the others with the surest first.
class PatternSet
{
public:
    /// What stands in a place, in the other language; `verbatim` when it is shown as it was typed.
    using Piece = std::function<QString(const QString& text, bool verbatim)>;
    /// What a place takes in.
    enum class Takes
    {
        Pieces, ///< short patterns figures, known words and what is marked as typed only: somebody's own
                ///< words may begin like them
        Typed,  ///< what somebody typed, shown as it is
        Names   ///< anything, however short the pattern
    };

    /// @param context  of the catalogue that the patterns stand in
    explicit PatternSet(const char* context = "Core")
        : m_context(context)
    {}
    void add(std::span<const char* const> sources, Takes takes = Takes::Pieces);
    /// To be called after the last add().
    void sort();

    /// The pattern that is the whole text and has no places, or none.
    [[nodiscard]] const char* plain(const QString& text) const { return m_plain.value(text, nullptr); }
    /// The text in the language this thread speaks, with every place filled by `piece`, or nothing when no
    /// pattern fits.
    [[nodiscard]] std::optional<QString> said(const QString& text, const Piece& piece) const;

private:
    [[nodiscard]] bool takes(const Pattern& pattern, const QStringList& found) const;

    const char* m_context;
    QHash<QString, const char*> m_plain;
    std::vector<Pattern> m_withPlaces;
};

} // namespace sealwalk::render
