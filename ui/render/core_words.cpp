// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/core_words.h"

#include "core/report/rate_text.h"
#include "ui/render/core_patterns.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <optional>
#include <vector>

namespace sealwalk::render {

namespace {

thread_local int t_recordWords = 0;

QString translated(const char* source)
{
    return QCoreApplication::translate("Core", source);
}

/// One pattern, ready to be held against a text.
struct Pattern
{
    const char* source = nullptr;
    QRegularExpression match;
    std::vector<int> places; ///< the number of each %n, as they stand in the source
    bool isLabel =
        false; ///< so short that somebody's own words may begin like it: takes figures and words only
    qsizetype fixed = 0; ///< letters that must be there: the more, the surer the match
};

Pattern patternOf(const char* source)
{
    static const QRegularExpression place(QStringLiteral("%([1-9])"));
    Pattern pattern{source, {}, {}, 0};
    const QString text = QString::fromUtf8(source);
    QString expression;
    qsizetype done = 0;
    for (auto at = place.globalMatch(text); at.hasNext();) {
        const QRegularExpressionMatch found = at.next();
        const QString before = text.mid(done, found.capturedStart() - done);
        expression += QRegularExpression::escape(before) + QStringLiteral("(.+?)");
        pattern.fixed += before.size();
        pattern.places.push_back(found.captured(1).toInt());
        done = found.capturedEnd();
    }
    expression += QRegularExpression::escape(text.mid(done));
    pattern.fixed += text.size() - done;
    constexpr qsizetype kShort = 12;
    pattern.isLabel = pattern.places.size() == 1 && pattern.fixed < kShort &&
                      text.startsWith(text[0].toLower()) && !text.contains(QLatin1Char(':'));
    pattern.match.setPattern(QRegularExpression::anchoredPattern(expression));
    pattern.match.setPatternOptions(QRegularExpression::DotMatchesEverythingOption);
    return pattern;
}

/// Every pattern there is: those without places by their text, the others with the surest first.
class Patterns
{
public:
    static const Patterns& all()
    {
        static const Patterns made;
        return made;
    }

    [[nodiscard]] const char* plain(const QString& text) const { return m_plain.value(text, nullptr); }
    [[nodiscard]] const std::vector<Pattern>& withPlaces() const { return m_withPlaces; }

private:
    Patterns()
    {
        for (const auto& some :
             {findingPatterns(), stepPatterns(), outcomePatterns(), reviewPatterns(), labelPatterns()})
            for (const char* source : some)
                add(source);
        std::ranges::stable_sort(m_withPlaces, std::greater<>(), &Pattern::fixed);
    }
    void add(const char* source)
    {
        Pattern pattern = patternOf(source);
        if (pattern.places.empty())
            m_plain.insert(QString::fromUtf8(source), source);
        else
            m_withPlaces.push_back(std::move(pattern));
    }

    QHash<QString, const char*> m_plain;
    std::vector<Pattern> m_withPlaces;
};

std::optional<QString> known(const QString& text);

/// "17, 38 and 60", and "4.6e−7 mbar·l/s" with the locale's decimal sign. Nothing else is touched: it may be
/// somebody's own words.
QString figure(QString text)
{
    static const QRegularExpression list(QStringLiteral("^\\d+(, \\d+)* (and|or) \\d+( more)?$"));
    static const QRegularExpression number(QStringLiteral("^[+\u2212-]?\\d+\\.\\d+(e\\S+)?( \\S+)?$"));
    if (list.match(text).hasMatch()) {
        text.replace(QLatin1String(" and "), QCoreApplication::translate("Core", " and ", "between numbers"));
        text.replace(QLatin1String(" or "), QCoreApplication::translate("Core", " or ", "between numbers"));
        text.replace(QLatin1String(" more"), QCoreApplication::translate("Core", " more", "more points"));
    } else if (number.match(text).hasMatch()) {
        text.replace(text.indexOf(QLatin1Char('.')), 1, QLocale().decimalPoint());
    }
    return text;
}

/// What stands in a place of a pattern is a piece of the core's own words, a figure, or somebody's own text.
QString piece(const QString& text)
{
    return known(text).value_or(figure(text));
}

bool goesWithLabel(const QString& text)
{
    return text[0].isDigit() || Patterns::all().plain(text) != nullptr;
}

std::optional<QString> known(const QString& text)
{
    if (const char* source = Patterns::all().plain(text))
        return translated(source);
    for (const Pattern& pattern : Patterns::all().withPlaces()) {
        const QRegularExpressionMatch found = pattern.match.match(text);
        if (!found.hasMatch() || (pattern.isLabel && !goesWithLabel(found.captured(1))))
            continue;
        QString said = translated(pattern.source);
        // All at once: a text put in may hold a %2 of its own.
        QString filled;
        for (qsizetype i = 0; i < said.size(); ++i) {
            const auto at = said[i] == QLatin1Char('%') && i + 1 < said.size()
                                ? std::ranges::find(pattern.places, said[i + 1].digitValue())
                                : pattern.places.end();
            if (at == pattern.places.end()) {
                filled += said[i];
                continue;
            }
            filled += piece(found.captured(static_cast<int>(at - pattern.places.begin()) + 1));
            ++i;
        }
        return filled;
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
    return figure(text);
}

bool isEnglish()
{
    return QLocale().decimalPoint() == QLatin1String(".") && translated("limit") == QLatin1String("limit");
}

void say(std::string& text)
{
    if (!text.empty())
        text = inWords(text).toStdString();
}

} // namespace

QString inWords(const std::string& text)
{
    const QString onScreen = QString::fromStdString(report::onScreen(text));
    if (t_recordWords > 0 || onScreen.isEmpty() || isEnglish())
        return onScreen;
    // Tables ask for the same sentences at every painting.
    constexpr qsizetype kRemembered = 4000;
    thread_local QHash<QString, QString> remembered;
    if (const auto found = remembered.constFind(onScreen); found != remembered.constEnd())
        return *found;
    if (remembered.size() > kRemembered)
        remembered.clear();
    return *remembered.insert(onScreen, sayWhole(onScreen));
}

QString inFigures(const std::string& figures)
{
    const QString text = QString::fromStdString(figures);
    const QString sign = QLocale().decimalPoint();
    return t_recordWords > 0 || sign == QLatin1String(".") ? text
                                                           : QString(text).replace(QLatin1Char('.'), sign);
}

QString inSentence(const std::string& phrase)
{
    QString text = withFirst(inWords(phrase).trimmed(), true);
    return text.isEmpty() || text.endsWith(QLatin1Char('.')) ? text : text + QLatin1Char('.');
}

report::Figure inWords(report::Figure figure)
{
    say(figure.title);
    figure.spoken = inPhrases(figure.spoken).toStdString();
    say(figure.empty);
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
    if (t_recordWords > 0 || isEnglish())
        return plain;
    QStringList said;
    for (const QString& phrase : plain.split(QStringLiteral(", ")))
        said << sayWhole(phrase);
    return said.join(QStringLiteral(", "));
}

RecordWords::RecordWords()
{
    ++t_recordWords;
}

RecordWords::~RecordWords()
{
    --t_recordWords;
}

} // namespace sealwalk::render
