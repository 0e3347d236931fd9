// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/language.h"

#include <QCoreApplication>
#include <QTranslator>

#include <atomic>
#include <utility>

namespace sealwalk::render {

namespace {

thread_local const RecordWords* t_record = nullptr;

quint64 nextSerial()
{
    static std::atomic<quint64> last = 1;
    return ++last;
}

} // namespace

/// What the innermost RecordWords of this thread says.
struct Speech
{
    [[nodiscard]] static bool isOfRecord() { return t_record != nullptr; }
    [[nodiscard]] static const Language* language()
    {
        return t_record == nullptr ? nullptr : t_record->m_language.get();
    }
};

Language::Language(const QLocale& locale, std::shared_ptr<const QTranslator> words)
    : m_locale(locale)
    , m_words(std::move(words))
    , m_serial(nextSerial())
{}

RecordWords::RecordWords(RecordLanguage language)
    : m_language(std::move(language))
    , m_outer(std::exchange(t_record, this))
{}

RecordWords::~RecordWords()
{
    t_record = m_outer;
}

QString spoken(const char* context, const char* source, const char* comment)
{
    if (!Speech::isOfRecord())
        return QCoreApplication::translate(context, source, comment);
    const Language* language = Speech::language();
    const QString said =
        language == nullptr ? QString() : language->words().translate(context, source, comment);
    return said.isEmpty() ? QString::fromUtf8(source) : said;
}

QString decimalSign()
{
    if (!Speech::isOfRecord())
        return QLocale().decimalPoint();
    const Language* language = Speech::language();
    return language == nullptr ? QStringLiteral(".") : language->locale().decimalPoint();
}

bool speaksAsTheCore()
{
    constexpr const char* kCore = "Core";
    constexpr const char* kSaid = "limit";
    return decimalSign() == QLatin1String(".") && spoken(kCore, kSaid) == QLatin1String(kSaid);
}

quint64 speechNow()
{
    if (!Speech::isOfRecord())
        return 0;
    return Speech::language() == nullptr ? 1 : Speech::language()->serial();
}

} // namespace sealwalk::render
