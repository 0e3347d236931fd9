// SPDX-License-Identifier: GPL-3.0-or-later
// The window in German, straight from the source of its words; the program's own catalogue is made of it when
// the program is built.
#pragma once

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QHash>
#include <QLocale>
#include <QStringList>
#include <QTranslator>
#include <QXmlStreamReader>

#include <algorithm>

namespace sealwalk::tests {

/// Without plurals: texts with a number stay English.
class German : public QTranslator
{
public:
    German()
    {
        QFile file(QStringLiteral(SEALWALK_SOURCE_DIR "/resources/translations/sealwalk_de.ts"));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&file);
        QString context;
        QString source;
        while (!xml.atEnd()) {
            if (xml.readNext() != QXmlStreamReader::StartElement)
                continue;
            if (xml.name() == QLatin1String("name"))
                context = xml.readElementText();
            else if (xml.name() == QLatin1String("source"))
                source = xml.readElementText();
            else if (xml.name() == QLatin1String("translation"))
                take(context, source, xml);
        }
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* /*comment*/,
                      int /*number*/) const override
    {
        return m_said.value(QString::fromUtf8(context)).value(QString::fromUtf8(source));
    }
    /// What the core says: English and German.
    [[nodiscard]] QHash<QString, QString> core() const { return m_said.value(QStringLiteral("Core")); }

    /// Whether any text begins so.
    [[nodiscard]] bool knows(const QString& begin) const
    {
        return std::any_of(m_said.begin(), m_said.end(), [&](const QHash<QString, QString>& context) {
            return std::any_of(context.keyBegin(), context.keyEnd(),
                               [&](const QString& source) { return source.startsWith(begin); });
        });
    }
    [[nodiscard]] int size() const { return m_size; }
    /// Texts without German.
    [[nodiscard]] const QStringList& open() const { return m_open; }

private:
    void take(const QString& context, const QString& source, QXmlStreamReader& xml)
    {
        const bool isUnfinished = xml.attributes().hasAttribute(QLatin1String("type"));
        bool isPlural = false;
        QString said;
        while (!xml.atEnd() && (xml.readNext() != QXmlStreamReader::EndElement ||
                                xml.name() != QLatin1String("translation"))) {
            isPlural = isPlural || xml.isStartElement();
            if (xml.isCharacters())
                said += xml.text();
        }
        if (isUnfinished || said.trimmed().isEmpty())
            m_open << context + QStringLiteral(": ") + source;
        m_said[context][source] = isPlural ? QString() : said;
        ++m_size;
    }

    QHash<QString, QHash<QString, QString>> m_said;
    QStringList m_open;
    int m_size = 0;
};

/// As long as it lives the window speaks German, with a decimal comma.
class InGerman
{
public:
    InGerman()
    {
        QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
        QCoreApplication::installTranslator(&m_german);
    }
    ~InGerman()
    {
        QCoreApplication::removeTranslator(&m_german);
        QLocale::setDefault(QLocale::c());
    }
    InGerman(const InGerman&) = delete;
    InGerman& operator=(const InGerman&) = delete;
    InGerman(InGerman&&) = delete;
    InGerman& operator=(InGerman&&) = delete;
    [[nodiscard]] const German& words() const { return m_german; }

private:
    German m_german;
};

} // namespace sealwalk::tests
