// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/below_field.h"

#include <QDialog>
#include <QLabel>
#include <QRegularExpression>
#include <QStyle>
#include <QTimer>
#include <QVariant>

namespace sealwalk::ui {

void setStyleProperty(QWidget* widget, const char* name, const QString& value)
{
    if (widget->property(name).toString() == value)
        return;
    widget->setProperty(name, value);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
}

QLabel* makeBelowField(QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("role", QStringLiteral("caption"));
    label->hide();
    return label;
}

void keepRoom(QLabel* below)
{
    QSizePolicy policy = below->sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    below->setSizePolicy(policy);
    below->setMinimumHeight(2 * below->fontMetrics().lineSpacing());
    below->setAlignment(Qt::AlignLeft | Qt::AlignTop);
}

namespace {

/// What was typed, or a file's name, may be quoted without a blank to break the line at.
QString breakable(QString text)
{
    static const QRegularExpression kRun(QStringLiteral("([^\\s\\x{200b}]{40})(?=[^\\s\\x{200b}])"));
    return text.replace(kRun, QStringLiteral("\\1\u200b"));
}

void show(QLabel* below, const QString& words)
{
    const QString text = breakable(words);
    const bool taller = below->text() != text;
    below->setText(text);
    below->setVisible(!text.isEmpty());
    // Lines that wrap do not make a dialog grow by themselves; that it shrinks while one types is no help.
    if (auto* dialog = qobject_cast<QDialog*>(below->window()); dialog != nullptr && taller)
        QTimer::singleShot(0, dialog, [dialog, before = dialog->size()] {
            dialog->adjustSize();
            dialog->resize(dialog->size().expandedTo(before));
        });
}

} // namespace

void showComplaint(QLabel* below, QWidget* field, const QString& sentence)
{
    show(below, sentence);
    setStyleProperty(below, "role", QStringLiteral("wrong"));
    setStyleProperty(field, "wrong", sentence.isEmpty() ? QString() : QStringLiteral("true"));
    field->setAccessibleDescription(sentence);
}

void showHint(QLabel* below, QWidget* field, const QString& text)
{
    show(below, text);
    setStyleProperty(below, "role", QStringLiteral("caption"));
    setStyleProperty(field, "wrong", QString());
    field->setAccessibleDescription(text);
}

} // namespace sealwalk::ui
