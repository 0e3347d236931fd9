// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/stage.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

struct Row
{
    const char* title;
    const char* key;
};

constexpr std::array<Row, 6> kRows{{
    {QT_TRANSLATE_NOOP("Stage", "Prepare"), "prepare"},
    {QT_TRANSLATE_NOOP("Stage", "Sketch"), "sketch"},
    {QT_TRANSLATE_NOOP("Stage", "Spray"), "spray"},
    {QT_TRANSLATE_NOOP("Stage", "Judge"), "judge"},
    {QT_TRANSLATE_NOOP("Stage", "Sign off"), "signoff"},
    {QT_TRANSLATE_NOOP("Stage", "History"), "history"},
}};

const Row& rowOf(Stage stage)
{
    return kRows[static_cast<std::size_t>(stage)];
}

} // namespace

QString stageTitle(Stage stage)
{
    return QCoreApplication::translate("Stage", rowOf(stage).title);
}

QString stageIcon(Stage stage)
{
    return QStringLiteral("stage-") + stageKey(stage);
}

QString stageKey(Stage stage)
{
    return QLatin1String(rowOf(stage).key);
}

} // namespace sealwalk::ui
