// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/line_breaks.h"

#include "ui/render/raised_text.h"

#include <QFontMetricsF>
#include <QHash>

#include <algorithm>
#include <map>
#include <utility>

namespace sealwalk::render {

namespace {

constexpr QChar kTimes(0x00D7);
constexpr qsizetype kMostRemembered = 20000;

/// Advances of one face.
class Face
{
public:
    explicit Face(const QFont& font)
        : m_font(font)
        , m_blank(QFontMetricsF(font).horizontalAdvance(QLatin1Char(' ')))
    {}

    [[nodiscard]] double blank() const { return m_blank; }
    double advance(const QString& word)
    {
        const auto known = m_known.constFind(word);
        if (known != m_known.constEnd())
            return *known;
        if (m_known.size() > kMostRemembered)
            m_known.clear();
        return *m_known.insert(word, raisedWidth(word, m_font));
    }

private:
    QFont m_font;
    double m_blank;
    QHash<QString, double> m_known;
};

Face& faceOf(const QFont& font)
{
    thread_local std::map<std::pair<double, int>, Face> faces;
    const std::pair<double, int> key{font.pixelSize() > 0 ? font.pixelSize() : -font.pointSizeF(),
                                     font.weight()};
    const auto known = faces.find(key);
    return known != faces.end() ? known->second : faces.emplace(key, Face(font)).first->second;
}

/// Words; a number with its power of ten is one.
QStringList wordsOf(const QString& paragraph)
{
    QStringList words;
    bool joins = false;
    for (const QString& word : paragraph.split(QLatin1Char(' '))) {
        const bool isTimes = word.size() == 1 && word[0] == kTimes;
        if (!words.isEmpty() && (joins || isTimes))
            words.back() += QLatin1Char(' ') + word;
        else
            words << word;
        joins = isTimes;
    }
    return words;
}

/// As many letters of `word` as fit, at least one.
qsizetype fitting(Face& face, const QString& word, double width)
{
    qsizetype count = word.size();
    while (count > 1 && face.advance(word.left(count)) > width)
        --count;
    return count;
}

} // namespace

QStringList brokenLines(const QString& text, const QFont& font, double width)
{
    Face& face = faceOf(font);
    QStringList lines;
    for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
        QString line;
        double used = 0.0;
        bool fresh = true;
        for (QString word : wordsOf(paragraph)) {
            double advance = face.advance(word);
            if (!fresh && used + face.blank() + advance > width) {
                lines << line;
                fresh = true;
            }
            while (fresh && advance > width && word.size() > 1) {
                const qsizetype count = fitting(face, word, width);
                lines << word.left(count);
                word = word.mid(count);
                advance = face.advance(word);
            }
            line = fresh ? word : line + QLatin1Char(' ') + word;
            used = fresh ? advance : used + face.blank() + advance;
            fresh = false;
        }
        lines << (fresh ? QString() : line);
    }
    return lines;
}

TextWidths widthsOf(const QString& text, const QFont& font)
{
    Face& face = faceOf(font);
    TextWidths widths;
    for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
        double line = 0.0;
        for (const QString& word : wordsOf(paragraph)) {
            const double advance = face.advance(word);
            line += (line > 0.0 ? face.blank() : 0.0) + advance;
            widths.word = std::max(widths.word, advance);
        }
        widths.line = std::max(widths.line, line);
    }
    return widths;
}

} // namespace sealwalk::render
