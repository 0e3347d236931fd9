// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/below_field.h"

#include <QDialog>
#include <QLabel>
#include <QLayout>
#include <QRegularExpression>
#include <QStyle>
#include <QTimer>
#include <QVariant>

#include <algorithm>

namespace sealwalk::ui {

void setStyleProperty(QWidget* widget, const char* name, const QString& value)
{
    if (widget->property(name).toString() == value)
        return;
    widget->setProperty(name, value);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
}

namespace {

/// A layout some levels above gives wrapped lines the height they had before: the label asks for what it
/// needs itself.
class BelowLabel : public QLabel
{
public:
    using QLabel::QLabel;

    /// As wide as `most` pixels before its lines wrap; else as wide as its field.
    void setWide(int most) { m_most = most; }
    void setLeast(int height)
    {
        m_least = height;
        fit();
    }
    void fit() { setMinimumHeight(std::max(m_least, text().isEmpty() ? 0 : heightForWidth(width()))); }

    [[nodiscard]] QSize sizeHint() const override
    {
        if (m_most == 0)
            return QLabel::sizeHint();
        const int width = std::min(m_most, fontMetrics().horizontalAdvance(text()) + 1);
        return {width, heightForWidth(width)};
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QLabel::resizeEvent(event);
        fit();
    }

private:
    int m_most = 0;
    int m_least = 0;
};

} // namespace

QLabel* makeBelowField(QWidget* parent)
{
    auto* label = new BelowLabel(parent);
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
    if (auto* own = dynamic_cast<BelowLabel*>(below))
        own->setLeast(2 * below->fontMetrics().lineSpacing());
    below->setAlignment(Qt::AlignLeft | Qt::AlignTop);
}

void letWiden(QLabel* below)
{
    constexpr int kWide = 300; // px
    if (auto* own = dynamic_cast<BelowLabel*>(below))
        own->setWide(kWide);
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
    if (auto* own = dynamic_cast<BelowLabel*>(below))
        own->fit();
    // Lines that wrap do not make a dialog grow by themselves; that it shrinks while one types is no help.
    if (auto* dialog = qobject_cast<QDialog*>(below->window()); dialog != nullptr && taller)
        QTimer::singleShot(0, dialog, [dialog, before = dialog->size()] {
            dialog->adjustSize();
            const QLayout* layout = dialog->layout();
            const int height = layout != nullptr && layout->hasHeightForWidth()
                                   ? layout->totalHeightForWidth(before.width())
                                   : dialog->height();
            dialog->resize(before.width(), std::max(before.height(), height)); // it grows downwards only
        });
}

} // namespace

void showComplaint(QLabel* below, QWidget* field, const QString& sentence)
{
    setStyleProperty(below, "role",
                     QStringLiteral("wrong")); // first: its face tells how many lines there are
    show(below, sentence);
    setStyleProperty(field, "wrong", sentence.isEmpty() ? QString() : QStringLiteral("true"));
    field->setAccessibleDescription(sentence);
}

void showHint(QLabel* below, QWidget* field, const QString& text)
{
    setStyleProperty(below, "role", QStringLiteral("caption"));
    show(below, text);
    setStyleProperty(field, "wrong", QString());
    field->setAccessibleDescription(text);
}

} // namespace sealwalk::ui
