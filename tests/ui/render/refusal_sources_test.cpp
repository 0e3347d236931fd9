// SPDX-License-Identifier: GPL-3.0-or-later
// Holds the sources to it that whatever they refuse can be said in German.
#include "core/base/error.h"
#include "tests/support/german.h"
#include "ui/render/core_words.h"

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <array>

namespace sealwalk::render {
namespace {

/// What stands for everything put in: a number, since the shortest patterns take nothing else.
const QString kSample = QStringLiteral("7");

/// A text of C++ being read from some place on.
class Reader
{
public:
    Reader(const QString& text, qsizetype at)
        : m_text(text)
        , m_at(at)
    {}

    [[nodiscard]] bool isAtEnd() const { return m_at >= m_text.size(); }
    [[nodiscard]] QChar peek() const { return isAtEnd() ? QChar() : m_text[m_at]; }
    QChar take() { return m_text[m_at++]; }
    bool skip(QLatin1String word)
    {
        if (QStringView(m_text).mid(m_at, word.size()) != word)
            return false;
        m_at += word.size();
        return true;
    }
    void skipBlanks()
    {
        while (peek().isSpace())
            ++m_at;
    }
    /// The literal that begins here, with those that follow it and belong to it.
    QString literal()
    {
        QString all;
        while (peek() == u'"') {
            ++m_at;
            for (; !isAtEnd() && peek() != u'"'; ++m_at) {
                if (peek() == u'\\')
                    ++m_at;
                all += peek();
            }
            ++m_at;
            skipBlanks();
        }
        return all;
    }

private:
    const QString& m_text;
    qsizetype m_at;
};

/// One argument as it could read: literals joined with +, or the format of fmt::format, filled with samples.
/// Nothing without a literal, or where the window's own words are used.
QString messageOf(Reader& at)
{
    at.skipBlanks();
    const bool isFormat = at.skip(QLatin1String("fmt::format("));
    if (isFormat)
        at.skipBlanks();
    QString message;
    bool hasLiteral = false;
    bool isOpen = false; // something that is not a literal has begun
    int depth = isFormat ? 1 : 0;
    const int own = depth;
    while (!at.isAtEnd()) {
        if (at.skip(QLatin1String("tr(")) || at.skip(QLatin1String("words(")))
            return {};
        if (at.peek() == u'"') {
            const QString literal = at.literal();
            if (depth == own && !(isFormat && hasLiteral)) {
                message += literal;
                hasLiteral = true;
                isOpen = false;
            }
            continue;
        }
        const QChar c = at.take();
        if (c == u'(' || c == u'{' || c == u'[')
            ++depth;
        else if ((c == u')' || c == u'}' || c == u']') && --depth < 0)
            break;
        else if (c == u',' && depth == 0)
            break;
        if (!isFormat && !isOpen && !c.isSpace() && c != u'+') {
            message += kSample;
            isOpen = true;
        }
    }
    if (!hasLiteral)
        return {};
    if (isFormat) {
        static const QRegularExpression place(QStringLiteral("\\{[^}]*\\}"));
        message.replace(place, kSample);
    }
    return message;
}

/// Every message of a file's calls to fail() and the like.
QStringList messagesIn(QString text)
{
    static const QRegularExpression comment(QStringLiteral("(?<![:\"])//[^\n]*"));
    static const QRegularExpression call(
        QStringLiteral("\\b(?:fail|Refusal|refuse|refuseStep|complain|wrong)\\("));
    text.remove(comment);
    QStringList found;
    for (auto each = call.globalMatch(text); each.hasNext();) {
        Reader at(text, each.next().capturedEnd());
        at.skipBlanks();
        if (at.skip(QLatin1String("ErrorCode::"))) {
            while (!at.isAtEnd() && at.take() != u',') {
            }
            at.skipBlanks();
            if (at.skip(QLatin1String("file,"))) // refuse(code, file, what)
                at.skipBlanks();
        } else if (at.skip(QLatin1String("head,"))) { // refuseStep(head, why)
            at.skipBlanks();
        }
        if (const QString message = messageOf(at); !message.isEmpty())
            found << message;
    }
    return found;
}

/// What no person meets in the window: the command line's surveys and tables, and files of this program that
/// only another program could have written so.
constexpr std::array kNotInTheWindow = {"survey_file.cpp", "canonical_json.cpp", "table.cpp",
                                        "table_xlsx.cpp", "point_pairs.cpp"};

/// A place in front of a sentence that is listed where it is made.
const QString kPlaceOnly = QStringLiteral("job.sketch: 7");

bool isOutside(const QString& file)
{
    return std::ranges::any_of(kNotInTheWindow, [&](const char* name) {
        return file.endsWith(QLatin1Char('/') + QLatin1String(name));
    });
}

// Property: a refusal that is added or reworded gets its German in core_patterns_refusals_….cpp.
TEST(RefusalsInTheSources, HaveAGermanSentenceEach)
{
    const tests::InGerman german;
    int refusals = 0;
    for (const char* layer : {"/core", "/ui"}) {
        for (QDirIterator at(QLatin1String(SEALWALK_SOURCE_DIR) + QLatin1String(layer),
                             {QStringLiteral("*.cpp"), QStringLiteral("*.h")}, QDir::Files,
                             QDirIterator::Subdirectories);
             at.hasNext();) {
            QFile file(at.next());
            if (isOutside(file.fileName()))
                continue;
            ASSERT_TRUE(file.open(QIODevice::ReadOnly));
            for (const QString& message : messagesIn(QString::fromUtf8(file.readAll()))) {
                if (message == kPlaceOnly)
                    continue;
                ++refusals;
                EXPECT_NE(inWords(Error{ErrorCode::BadInput, message.toStdString()}).toStdString(),
                          message.toStdString())
                    << file.fileName().toStdString();
            }
        }
    }
    EXPECT_GT(refusals, 350) << "the sources were not read";
}

// Regression: one of fifty places put the core's own words on the screen.
TEST(RefusalsInTheSources, ReachTheScreenInTheWindowsWordsOnly)
{
    static const QRegularExpression shown(
        QStringLiteral("(?:fromStdString|fromUtf8|text)\\((?:[\\w.>*()-]+)(?:\\.|->)message\\b"));
    int files = 0;
    for (QDirIterator at(QStringLiteral(SEALWALK_SOURCE_DIR "/ui"), {QStringLiteral("*.cpp")}, QDir::Files,
                         QDirIterator::Subdirectories);
         at.hasNext(); ++files) {
        QFile file(at.next());
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        if (file.fileName().endsWith(QLatin1String("/render/core_words.cpp")))
            continue;
        EXPECT_FALSE(QString::fromUtf8(file.readAll()).contains(shown))
            << file.fileName().toStdString() << ": render::inWords(error) says it in the window's language";
    }
    EXPECT_GT(files, 150);
}

// Property: the reader of the sources reads what it should.
TEST(RefusalsInTheSources, AreReadAsTheyWouldBeSaid)
{
    const QString text = QStringLiteral(R"(
        return fail(ErrorCode::BadInput, fmt::format("\"{}\" is a {:.0f} "
                                                     "thing", text, names.at("x")));
        return fail(ErrorCode::BadInput, name + ": it has " + std::to_string(n) + " parts"); // fail(X, "no")
        refuse(ErrorCode::ReadOnly, file, "may not be written");
        return fail(other.error());
        refuse(tr("The window's own."));
    )");
    EXPECT_EQ(messagesIn(text),
              QStringList({QStringLiteral("\"7\" is a 7 thing"), QStringLiteral("7: it has 7 parts"),
                           QStringLiteral("may not be written")}));
}

} // namespace
} // namespace sealwalk::render
