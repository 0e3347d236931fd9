// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/report_words.h"

#include "core/report/content_texts.h"
#include "core/report/typed_words.h"
#include "ui/render/core_patterns.h"
#include "ui/render/core_words_parts.h"
#include "ui/render/language.h"

#include <QHash>
#include <QRegularExpression>

#include <optional>

namespace sealwalk::render {

namespace {

const PatternSet& ofReports()
{
    static const PatternSet made = [] {
        PatternSet set;
        for (const auto& some :
             {reportHeads(), reportFacts(), reportClaims(), reportCells(), reportPictures()})
            set.add(some);
        set.sort();
        return set;
    }();
    return made;
}

const PatternSet& joints()
{
    static const PatternSet made = [] {
        PatternSet set;
        set.add(reportJoints());
        set.sort();
        return set;
    }();
    return made;
}

/// In the place of typed words stands one character each: what is typed cannot be taken for the core's words,
/// nor does it hide them.
class Typed
{
public:
    QString takeOut(const QString& text)
    {
        static const QString begin =
            QString::fromUtf8(report::kTypedBegin.data(), report::kTypedBegin.size());
        static const QString end = QString::fromUtf8(report::kTypedEnd.data(), report::kTypedEnd.size());
        QString open;
        qsizetype done = 0;
        for (qsizetype at = text.indexOf(begin); at >= 0; at = text.indexOf(begin, done)) {
            const qsizetype to = text.indexOf(end, at);
            if (to < 0 || m_words.size() > kLast - kFirst)
                break;
            open += text.mid(done, at - done) + QChar(static_cast<char16_t>(kFirst + m_words.size()));
            m_words << text.mid(at + 1, to - at - 1);
            done = to + 1;
        }
        return open + text.mid(done);
    }
    [[nodiscard]] QString putBack(const QString& open) const
    {
        QString text;
        for (const QChar c : open) {
            const qsizetype which = c.unicode() - kFirst;
            if (which >= 0 && which < m_words.size())
                text += m_words[which];
            else
                text += c;
        }
        return text;
    }

private:
    static constexpr int kFirst = 0xE000; // private use
    static constexpr int kLast = 0xF8FF;
    QStringList m_words;
};

/// Nothing but figures, signs, units and typed words: the same in every language, but for the decimal sign.
bool isFigures(const QString& text)
{
    static const QRegularExpression letters(QStringLiteral("\\p{L}+"));
    static const QStringList units = QStringLiteral("mbar l s min h m mm cm C K Pa torr Torr atm cc scc sccm "
                                                    "slpm std lusec mol g kg yr e He UTC molecules")
                                         .split(QLatin1Char(' '));
    for (auto at = letters.globalMatch(text); at.hasNext();)
        if (!units.contains(at.next().captured()))
            return false;
    return true;
}

QString withDecimalSign(QString figures)
{
    static const QRegularExpression decimals(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    return figures.replace(decimals, decimalSign());
}

QString withFirst(QString text, bool upper)
{
    if (!text.isEmpty())
        text[0] = upper ? text[0].toUpper() : text[0].toLower();
    return text;
}

/// Says texts whose typed words are taken out. Remembers: columns of a table say the same again and again.
class Speaker
{
public:
    /// Nothing when there are words that nobody knows.
    std::optional<QString> say(const QString& text)
    {
        if (isFigures(text))
            return withDecimalSign(text);
        if (const auto known = m_known.constFind(text); known != m_known.constEnd())
            return known->isEmpty() ? std::nullopt : std::optional(*known);
        const std::optional<QString> said = find(text);
        m_known.insert(text, said.value_or(QString()));
        return said;
    }

    /// As much of it as is known.
    QString sayWhatIsKnown(const QString& text)
    {
        if (const auto said = say(text))
            return *said;
        for (const QString& between : {QStringLiteral("; "), QStringLiteral(", ")})
            if (const QStringList parts = text.split(between); parts.size() > 1) {
                QStringList all;
                for (const QString& part : parts)
                    all << sayWhatIsKnown(part);
                if (all != parts)
                    return all.join(between);
            }
        return m_partly.value(text, text);
    }

private:
    std::optional<QString> find(const QString& text)
    {
        if (const auto plain = findPlain(text))
            return plain;
        if (const auto parts = findParts(text, sentences(text), QStringLiteral(" ")))
            return parts;
        if (const auto parts = findParts(text, text.split(QStringLiteral("; ")), QStringLiteral("; ")))
            return parts;
        if (const auto filled = findFilled(text))
            return filled;
        if (const auto parts = findList(text))
            return parts;
        if (const auto parts = findFigure(text))
            return parts;
        if (const QString numbers = detail::numbersInWords(text); numbers != text)
            return numbers;
        return detail::refusalInWords(text);
    }

    /// Alone, as a sentence, or as a phrase that was made one.
    static std::optional<QString> findPlain(const QString& text)
    {
        for (const PatternSet* set : {&ofReports(), &detail::ordinaryWords(), &detail::wordsOfRepairs()})
            if (const char* source = set->plain(text))
                return spoken("Core", source);
        // The cautions stand beside the patterns.
        if (const QString said = spoken("Caution", text.toUtf8().constData()); said != text)
            return said;
        return std::nullopt;
    }

    static QStringList sentences(const QString& text)
    {
        static const QRegularExpression between(QStringLiteral("(?<=[.?!”]) (?=[\\p{Lu}\\d])"));
        return text.split(between);
    }

    std::optional<QString> findParts(const QString& text, const QStringList& parts, const QString& between)
    {
        if (parts.size() < 2 || parts.contains(text))
            return std::nullopt;
        QStringList all;
        for (const QString& part : parts) {
            const auto said = say(part);
            if (!said)
                return std::nullopt;
            all << *said;
        }
        return all.join(between);
    }

    /// Phrases with commas between; one may have a comma of its own: "no response, too blind, flexed".
    std::optional<QString> findList(const QString& text)
    {
        const QString comma = QStringLiteral(", ");
        for (qsizetype at = text.lastIndexOf(comma); at > 0; at = text.lastIndexOf(comma, at - 1))
            if (const auto head = say(text.left(at)))
                if (const auto rest = say(text.mid(at + comma.size())))
                    return *head + comma + *rest;
        return std::nullopt;
    }

    /// Known words with a figure behind: "weld seam 1.0 × 10⁻⁹".
    std::optional<QString> findFigure(const QString& text) const
    {
        static const QRegularExpression behind(QStringLiteral("^(.*\\p{L}) (\\d.*)$"));
        const auto parts = behind.match(text);
        if (!parts.hasMatch() || !isFigures(parts.captured(2)))
            return std::nullopt;
        const auto said = findPlain(parts.captured(1));
        return said ? std::optional(*said + QLatin1Char(' ') + withDecimalSign(parts.captured(2)))
                    : std::nullopt;
    }

    std::optional<QString> findFilled(const QString& text)
    {
        if (const auto said = filled(text))
            return said;
        if (text[0].isUpper())
            if (const auto said = known(withFirst(text, false)))
                return withFirst(*said, true);
        if (!text.endsWith(QLatin1Char('.')))
            return std::nullopt;
        const QString open = text.chopped(1);
        if (const auto said = known(open))
            return *said + QLatin1Char('.');
        if (const auto said = known(withFirst(open, false)))
            return withFirst(*said, true) + QLatin1Char('.');
        return std::nullopt;
    }

    std::optional<QString> known(const QString& text)
    {
        const auto plain = findPlain(text);
        return plain ? plain : filled(text);
    }

    std::optional<QString> filled(const QString& text)
    {
        for (const PatternSet* set : {&ofReports(), &detail::ordinaryWords(), &joints()}) {
            bool isWhole = true;
            const auto said = set->said(text, [&](const QString& found, bool verbatim) {
                const auto piece = say(found);
                isWhole = isWhole && (verbatim || piece);
                return verbatim ? found : piece ? *piece : sayWhatIsKnown(found);
            });
            if (said && isWhole)
                return said;
            if (said && !m_partly.contains(text))
                m_partly.insert(text, *said);
        }
        return std::nullopt;
    }

    QHash<QString, QString> m_known; ///< empty: not known
    QHash<QString, QString> m_partly;
};

std::string inReport(const std::string& text, Speaker& speaker)
{
    Typed typed;
    const QString open = typed.takeOut(QString::fromStdString(text));
    return typed.putBack(speaker.sayWhatIsKnown(open)).toStdString();
}

} // namespace

QString inReport(const std::string& text)
{
    if (speaksAsTheCore())
        return QString::fromStdString(report::withoutMarks(text));
    Speaker speaker;
    return QString::fromStdString(inReport(text, speaker));
}

report::ReportContent inReport(report::ReportContent content)
{
    const bool isEnglish = speaksAsTheCore();
    Speaker speaker;
    report::eachText(content, [&](std::string& text) {
        text = isEnglish ? report::withoutMarks(std::move(text)) : inReport(text, speaker);
    });
    return content;
}

QStringList unknownIn(report::ReportContent content)
{
    Speaker speaker;
    QStringList unknown;
    report::eachText(content, [&](std::string& text) {
        Typed typed;
        const QString open = typed.takeOut(QString::fromStdString(text));
        if (!speaker.say(open))
            unknown << QString::fromStdString(report::withoutMarks(text));
    });
    unknown.removeDuplicates();
    return unknown;
}

} // namespace sealwalk::render
