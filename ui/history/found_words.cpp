// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/found_words.h"

#include "core/analysis/point_finding.h"
#include "core/analysis/repair_words.h"
#include "core/model/sketch.h"
#include "ui/render/core_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace sealwalk::ui {

namespace {

using Word = std::pair<std::string, QString>; ///< in the record, and as the window writes it

QString tr(const char* text)
{
    return QCoreApplication::translate("sealwalk::ui", text);
}

template <class Enum>
void addNames(std::vector<Word>& words)
{
    for (const auto& row : model::EnumNames<Enum>::table)
        words.emplace_back(row.second, render::inWords(std::string(row.second)));
}

std::vector<Word> wordsOfTheRecord()
{
    std::vector<Word> words;
    addNames<analysis::Finding>(words);
    addNames<analysis::Verdict>(words);
    for (const auto& kind : model::EnumNames<model::JointKind>::table) {
        const std::string name(kind.second);
        words.emplace_back(name, QCoreApplication::translate("Core", name.c_str()));
    }
    for (const std::string_view defect : analysis::defectWords())
        words.emplace_back(defect, render::repairInWords(std::string(defect)));
    for (const std::string_view action : analysis::actionWords())
        words.emplace_back(action, render::repairInWords(std::string(action)));
    words.emplace_back("temporary", tr("temporary"));
    words.emplace_back("concession", tr("concession"));
    words.emplace_back("submitted", tr("submitted"));
    words.emplace_back("returned", tr("sent back"));
    words.emplace_back("signed", tr("signed"));
    words.emplace_back("flexed", tr("flexed"));
    return words;
}

} // namespace

std::vector<std::string> searchedFor(const QString& typed)
{
    constexpr int kLeast = 3; // letters; fewer are in almost every word
    const QString text = typed.simplified();
    std::vector<std::string> all{text.toStdString()};
    const auto add = [&](const QString& part, const QString& rest) {
        if (part.size() < kLeast)
            return;
        for (const auto& [record, shown] : wordsOfTheRecord()) {
            std::string wanted =
                (QString::fromStdString(record) + QLatin1Char(' ') + rest).simplified().toStdString();
            if (shown.contains(part, Qt::CaseInsensitive) && shown.toStdString() != record &&
                std::find(all.begin(), all.end(), wanted) == all.end())
                all.push_back(std::move(wanted));
        }
    };
    add(text, {});
    const QStringList parts = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (qsizetype i = 0; parts.size() > 1 && i < parts.size(); ++i) {
        QStringList rest = parts;
        rest.removeAt(i);
        add(parts[i], rest.join(QLatin1Char(' ')));
    }
    return all;
}

QString recordLineInWords(const std::string& line)
{
    for (const auto& [record, shown] : wordsOfTheRecord())
        if (record == line)
            return shown;
    return QString::fromStdString(line);
}

QString cutAround(const QString& line, const QString& typed)
{
    constexpr qsizetype kBefore = 12; // letters that still stand before the word
    qsizetype first = line.size();
    for (const QString& word : typed.split(QLatin1Char(' '), Qt::SkipEmptyParts))
        if (const qsizetype at = line.indexOf(word, 0, Qt::CaseInsensitive); at >= 0)
            first = std::min(first, at);
    if (first == line.size() || first <= 2 * kBefore)
        return line;
    const qsizetype blank = line.indexOf(QLatin1Char(' '), first - kBefore);
    const bool isBefore = blank >= 0 && blank < first; // else it stands within one long word
    return QStringLiteral("… ") + line.mid(isBefore ? blank + 1 : first - kBefore);
}

} // namespace sealwalk::ui
