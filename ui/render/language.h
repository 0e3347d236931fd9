// SPDX-License-Identifier: GPL-3.0-or-later
// The language that words are put into: the window's, or that of a record while one is painted.
#pragma once

#include <QLocale>
#include <QString>

#include <memory>

class QTranslator;

namespace sealwalk::render {

/// A language that reports and maps for files can be written in, beside the core's own English. Never
/// changes, so that any thread may paint in it.
class Language
{
public:
    /// @param locale  for its decimal sign
    /// @param words   its catalogue; not null
    Language(const QLocale& locale, std::shared_ptr<const QTranslator> words);

    [[nodiscard]] const QLocale& locale() const { return m_locale; }
    [[nodiscard]] const QTranslator& words() const { return *m_words; }
    /// No two have the same, and none is 0 or 1.
    [[nodiscard]] quint64 serial() const { return m_serial; }

private:
    QLocale m_locale;
    std::shared_ptr<const QTranslator> m_words;
    quint64 m_serial;
};

/// None: the core's own English.
using RecordLanguage = std::shared_ptr<const Language>;

/// While one of these lives, this thread puts words into the language of a record instead of the window's:
/// reports and maps for files are in one language whoever reads them. The innermost one counts; other threads
/// are not concerned.
class RecordWords
{
public:
    explicit RecordWords(RecordLanguage language = {});
    ~RecordWords();
    RecordWords(const RecordWords&) = delete;
    RecordWords& operator=(const RecordWords&) = delete;
    RecordWords(RecordWords&&) = delete;
    RecordWords& operator=(RecordWords&&) = delete;

private:
    RecordLanguage m_language;
    const RecordWords* m_outer; ///< none: the window
    friend struct Speech;
};

/// A text of the catalogue in the language this thread speaks; the source where there is none.
QString spoken(const char* context, const char* source, const char* comment = nullptr);
QString decimalSign();
/// Whether nothing needs to be said otherwise than the core says it.
bool speaksAsTheCore();
/// Which language this thread speaks: 0 the window's, 1 the core's English for a record.
quint64 speechNow();

} // namespace sealwalk::render
