// SPDX-License-Identifier: GPL-3.0-or-later
// Holds the sources to it that whatever a report may say can be said in German, also what no job of the other
// tests brings about.
#include "tests/support/german.h"
#include "ui/render/core_patterns.h"

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <algorithm>

namespace sealwalk::render {
namespace {

/// The literals of a file, those that follow one another and belong together as one.
QStringList literalsIn(QString text)
{
    static const QRegularExpression lines(QStringLiteral("(?m)^\\s*(#include|//).*$|(?<![:\"])//[^\n]*"));
    static const QRegularExpression seam(QStringLiteral("(?<!\\\\)\"\\s*\n\\s*\"(?=[^,;)])"));
    static const QRegularExpression literal(QStringLiteral("\"((?:[^\"\\\\\n]|\\\\.)*)\""));
    text.remove(lines);
    text.replace(seam, QString());
    QStringList found;
    for (auto each = literal.globalMatch(text); each.hasNext();)
        found << each.next().captured(1).replace(QStringLiteral("\\\""), QStringLiteral("\""));
    return found;
}

/// What stands between the places of a format, without what joins it to its neighbours.
QStringList wordsIn(const QString& literal)
{
    static const QRegularExpression place(QStringLiteral("\\{[^}]*\\}"));
    static const QRegularExpression edges(QStringLiteral("^[\\s.,;:()\"“”…×·–]+|[\\s.,;:()\"“”…×·–]+$"));
    QStringList words;
    for (QString part : literal.split(place)) {
        part.remove(edges);
        if (part.contains(QRegularExpression(QStringLiteral("\\p{L}{2}"))))
            words << part;
    }
    return words;
}

/// Endings of plurals, units and names that other parts of the core look for.
bool isNoSentence(const QString& words)
{
    static const QStringList others = {QStringLiteral("mbar"), QStringLiteral("mbar l/s"),
                                       QStringLiteral("min"), QStringLiteral("point"),
                                       QStringLiteral("points")};
    return others.contains(words);
}

/// As a whole or phrase by phrase.
bool isKnown(const QString& words, const QString& known)
{
    static const QRegularExpression between(QStringLiteral("[.;,)]+ "));
    const QStringList phrases = words.split(between);
    return known.contains(words) ||
           std::ranges::all_of(phrases, [&](const QString& phrase) { return known.contains(phrase); });
}

// Property: a text that is added to the report, or reworded, gets its German in core_patterns_report_….cpp.
TEST(ReportSources, AreKnownWordForWord)
{
    QString known;
    for (const auto& some :
         {reportHeads(), reportFacts(), reportClaims(), reportCells(), reportPictures(), reportJoints(),
          findingPatterns(), outcomePatterns(), reviewPatterns(), labelPatterns(), stepPatterns()})
        for (const char* source : some)
            known += QString::fromUtf8(source) + QLatin1Char('\n');
    int texts = 0;
    const QString folder = QStringLiteral(SEALWALK_SOURCE_DIR "/core/");
    for (const QString& pattern :
         {QStringLiteral("report/report_*.cpp"), QStringLiteral("report/rise_figure.cpp"),
          QStringLiteral("analysis/claim.cpp"), QStringLiteral("analysis/repair_progress.cpp"),
          QStringLiteral("analysis/comparison.cpp")})
        for (QDirIterator at(folder + pattern.section(QLatin1Char('/'), 0, 0),
                             {pattern.section(QLatin1Char('/'), 1)}, QDir::Files);
             at.hasNext();) {
            QFile file(at.next());
            ASSERT_TRUE(file.open(QIODevice::ReadOnly));
            for (const QString& literal : literalsIn(QString::fromUtf8(file.readAll())))
                for (const QString& words : wordsIn(literal)) {
                    ++texts;
                    EXPECT_TRUE(isNoSentence(words) || isKnown(words, known))
                        << file.fileName().toStdString() << ": " << words.toStdString();
                }
        }
    EXPECT_GT(texts, 350) << "the sources were not read";
}

} // namespace
} // namespace sealwalk::render
