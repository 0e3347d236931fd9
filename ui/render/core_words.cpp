// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/core_words.h"

#include "core/report/rate_text.h"
#include "ui/render/core_patterns.h"
#include "ui/render/core_words_parts.h"
#include "ui/render/pattern_set.h"

#include <QHash>
#include <QRegularExpression>

#include <optional>
#include <utility>

namespace sealwalk::render {

namespace {

QString translated(const char* source)
{
    return spoken("Core", source);
}

/// Sentences, phrases and labels.
const PatternSet& ordinary()
{
    static const PatternSet made = [] {
        PatternSet set;
        for (const auto& some :
             {findingPatterns(), stepPatterns(), outcomePatterns(), reviewPatterns(), labelPatterns()})
            set.add(some);
        set.sort();
        return set;
    }();
    return made;
}

/// Apart from the sentences: what is quoted in a refusal is shown as it was typed, and the short words that
/// refusals are put together of stand for themselves elsewhere.
const PatternSet& refusals()
{
    static const PatternSet made = [] {
        PatternSet set;
        for (const auto& some : {numberRefusals(), sketchRefusals(), feedRefusals(), flowRefusals(),
                                 checkRefusals(), fileRefusals(), storageRefusals(), signingRefusals()})
            set.add(some);
        set.add(typedRefusals(), PatternSet::Takes::Typed);
        set.sort();
        return set;
    }();
    return made;
}

/// Apart as well: what is said of a repair may be somebody's own words and "flat" a name elsewhere.
const PatternSet& repairWords()
{
    static const PatternSet made = [] {
        PatternSet set;
        set.add(repairPatterns());
        return set;
    }();
    return made;
}

std::optional<QString> known(const QString& text);

// Text and comment, as the catalogue has them.
constexpr const char* kAnd[] = QT_TRANSLATE_NOOP3("Core", " and ", "between numbers");
constexpr const char* kOr[] = QT_TRANSLATE_NOOP3("Core", " or ", "between numbers");
constexpr const char* kMore[] = QT_TRANSLATE_NOOP3("Core", " more", "more points");

/// "17, 38 and 60", and "4.6e−7 mbar·l/s" with the locale's decimal sign. Nothing else is touched: it may be
/// somebody's own words.
QString figure(QString text)
{
    static const QRegularExpression list(QStringLiteral("^\\d+(, \\d+)* (and|or) \\d+( more)?$"));
    static const QRegularExpression number(QStringLiteral("^[+\u2212-]?\\d+\\.\\d+(e\\S+)?( \\S+)?$"));
    if (list.match(text).hasMatch()) {
        text.replace(QLatin1String(" and "), spoken("Core", kAnd[0], kAnd[1]));
        text.replace(QLatin1String(" or "), spoken("Core", kOr[0], kOr[1]));
        text.replace(QLatin1String(" more"), spoken("Core", kMore[0], kMore[1]));
    } else if (number.match(text).hasMatch()) {
        text.replace(text.indexOf(QLatin1Char('.')), 1, decimalSign());
    }
    return text;
}

std::optional<QString> refusal(const QString& text);
std::optional<QString> refusalBehindPlace(const QString& text);

/// What stands in a place of a pattern is a piece of the core's own words, a figure, or somebody's own text.
QString piece(const QString& text)
{
    if (auto said = known(text))
        return *said;
    if (auto said = refusalBehindPlace(text))
        return *said;
    return figure(text);
}

std::optional<QString> known(const QString& text)
{
    return ordinary().said(text, [](const QString& found, bool /*verbatim*/) { return piece(found); });
}

/// A word or phrase in a refusal, or several with colons between: "line 3: column \"time_s\"".
QString refusalPiece(const QString& text)
{
    const auto word = [](const QString& one) {
        if (auto said = refusal(one))
            return *said;
        return known(one).value_or(figure(one));
    };
    const QString colon = QStringLiteral(": ");
    if (!text.contains(colon))
        return word(text);
    if (auto said = refusalBehindPlace(text))
        return *said;
    QStringList said;
    for (const QString& one : text.split(colon))
        said << word(one);
    return said.join(colon);
}

std::optional<QString> refusal(const QString& text)
{
    return refusals().said(
        text, [](const QString& found, bool verbatim) { return verbatim ? found : refusalPiece(found); });
}

/// Callers put the file, line or field in front: "not stored: jobs.csv: line 3: …". Short words are no
/// refusals: they may be somebody's own.
std::optional<QString> refusalBehindPlace(const QString& text)
{
    constexpr qsizetype kFewestBlanks = 2;
    if (text.count(QLatin1Char(' ')) < kFewestBlanks)
        return std::nullopt;
    if (auto said = refusal(text))
        return said;
    for (qsizetype at = text.indexOf(QLatin1String(": ")); at > 0;
         at = text.indexOf(QLatin1String(": "), at + 1)) {
        const QString behind = text.mid(at + 2);
        if (auto said = refusal(behind); said && behind.contains(QLatin1Char(' ')))
            return refusalPiece(text.left(at)) + QStringLiteral(": ") + *said;
    }
    return std::nullopt;
}

QString withFirst(QString text, bool upper)
{
    if (!text.isEmpty())
        text[0] = upper ? text[0].toUpper() : text[0].toLower();
    return text;
}

/// A phrase may have been made a sentence on its way here.
QString sayWhole(const QString& text)
{
    if (const auto said = known(text))
        return *said;
    if (!text.isEmpty() && text[0].isUpper())
        if (const auto said = known(withFirst(text, false)))
            return withFirst(*said, true);
    if (text.endsWith(QLatin1Char('.'))) {
        const QString open = text.chopped(1);
        if (const auto said = known(open))
            return *said + QLatin1Char('.');
        if (const auto said = known(withFirst(open, false)))
            return withFirst(*said, true) + QLatin1Char('.');
    }
    if (const auto said = refusalBehindPlace(text))
        return *said;
    return figure(text);
}

QString sentenceOf(const QString& words)
{
    const QString text = withFirst(words.trimmed(), true);
    const bool isClosed =
        text.isEmpty() || text.endsWith(QLatin1Char('.')) || text.endsWith(QLatin1Char('?'));
    return isClosed ? text : text + QLatin1Char('.');
}

void say(std::string& text)
{
    if (!text.empty())
        text = inWords(text).toStdString();
}

} // namespace

namespace detail {

const PatternSet& ordinaryWords()
{
    return ordinary();
}

const PatternSet& wordsOfRepairs()
{
    return repairWords();
}

std::optional<QString> refusalInWords(const QString& text)
{
    return refusalBehindPlace(text);
}

QString numbersInWords(const QString& text)
{
    return figure(text);
}

} // namespace detail

QString inWords(const std::string& text)
{
    const QString onScreen = QString::fromStdString(report::onScreen(text));
    if (onScreen.isEmpty() || speaksAsTheCore())
        return onScreen;
    // Tables ask for the same sentences at every painting.
    constexpr qsizetype kRemembered = 4000;
    thread_local QHash<QString, QString> remembered;
    thread_local quint64 rememberedIn = 0;
    if (remembered.size() > kRemembered || std::exchange(rememberedIn, speechNow()) != speechNow())
        remembered.clear();
    if (const auto found = remembered.constFind(onScreen); found != remembered.constEnd())
        return *found;
    return *remembered.insert(onScreen, sayWhole(onScreen));
}

QString inWords(const Error& error)
{
    const QString message = QString::fromStdString(error.message);
    if (message.isEmpty() || speaksAsTheCore())
        return message;
    if (const auto said = refusalBehindPlace(message))
        return *said;
    return refusal(message).value_or(sayWhole(message));
}

QString repairInWords(const std::string& stored)
{
    const QString text = QString::fromStdString(stored);
    return repairWords().plain(text) != nullptr ? translated(stored.c_str()) : text;
}

QString inFigures(const std::string& figures)
{
    const QString text = QString::fromStdString(figures);
    const QString sign = decimalSign();
    return sign == QLatin1String(".") ? text : QString(text).replace(QLatin1Char('.'), sign);
}

QString inSentence(const std::string& phrase)
{
    return sentenceOf(inWords(phrase));
}

QString inSentence(const Error& error)
{
    return sentenceOf(inWords(error));
}

report::Figure inWords(report::Figure figure)
{
    say(figure.title);
    figure.spoken = inPhrases(figure.spoken).toStdString();
    say(figure.empty);
    say(figure.x.unit);
    say(figure.y.unit);
    for (report::Series& series : figure.series)
        say(series.name);
    for (report::Level& level : figure.levels)
        say(level.text);
    for (report::Moment& moment : figure.moments)
        say(moment.text);
    for (report::Span& span : figure.spans)
        say(span.text);
    for (report::Strip& strip : figure.strips)
        say(strip.text);
    for (report::Area& area : figure.areas)
        say(area.text);
    for (report::Flag& flag : figure.flags)
        say(flag.text);
    for (report::Series& series : figure.residuals)
        say(series.name);
    return figure;
}

report::BarFigure inWords(report::BarFigure figure)
{
    say(figure.title);
    figure.spoken = inPhrases(figure.spoken).toStdString();
    say(figure.empty);
    for (report::Bar& bar : figure.bars) {
        say(bar.name);
        say(bar.total);
        for (report::BarPart& part : bar.parts)
            say(part.label);
    }
    for (report::BarFigure::Limit& limit : figure.limits)
        say(limit.text);
    return figure;
}

QString inPhrases(const std::string& list)
{
    const QString plain = QString::fromStdString(list);
    if (speaksAsTheCore())
        return plain;
    QStringList said;
    for (const QString& phrase : plain.split(QStringLiteral(", ")))
        said << sayWhole(phrase);
    return said.join(QStringLiteral(", "));
}

} // namespace sealwalk::render
