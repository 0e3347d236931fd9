// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/entry_field.h"

#include "ui/render/core_words.h"
#include "ui/render/theme.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr int kHeight = 60;
constexpr int kLowHeight = 44; // in a low window
constexpr double kLowText = 30.0;
constexpr QChar kTrueMinus(0x2212);

struct Piece
{
    QString text;
    render::Weight weight = render::Weight::Normal;
    Role role = Role::Ink;
};

/// With the decimal sign of the locale, whichever was typed.
QString shownDigits(const QString& typed)
{
    return render::inFigures(QString(typed).replace(QLatin1Char(','), QLatin1Char('.')).toStdString());
}

/// What was typed, laid out as mantissa, "e" and a bold exponent.
std::vector<Piece> piecesOf(const QString& typed, std::optional<int> offered)
{
    const EnteredNumber number = readEntered(typed.toStdString());
    const auto exponentText = [](int exponent) {
        return exponent < 0   ? kTrueMinus + QString::number(-exponent)
               : exponent > 0 ? QLatin1Char('+') + QString::number(exponent)
                              : QStringLiteral("0");
    };
    if (number.state == EnteredNumber::State::Complete) {
        const QString read = render::inFigures(number.readBack);
        const auto e = read.indexOf(QLatin1Char('e'));
        return {{read.left(e) + QLatin1Char('e'), render::Weight::Normal, Role::Ink},
                // Not the one typed: "32-8" stands there as 3.2e−7.
                {exponentText(number.shownExponent.value_or(0)), render::Weight::Bold, Role::Ink}};
    }
    std::vector<Piece> pieces{{shownDigits(typed), render::Weight::Normal, Role::Ink}};
    if (number.state == EnteredNumber::State::Mantissa && offered)
        pieces.push_back({QLatin1Char('e') + exponentText(*offered), render::Weight::Normal, Role::InkFaint});
    return pieces;
}

std::vector<Piece> piecesFor(const EntryField& field, std::optional<int> offered)
{
    switch (field.takes()) {
    case EntryField::Takes::Rate:
        return piecesOf(field.text(), offered);
    case EntryField::Takes::Seconds:
        return {{shownDigits(field.text()), render::Weight::Normal, Role::Ink}};
    case EntryField::Takes::Digits:
        break;
    }
    return {{field.text(), render::Weight::Normal, Role::Ink}};
}

} // namespace

EntryField::EntryField(QWidget* parent)
    : QLineEdit(parent)
{
    setFixedHeight(kHeight);
    setFont(render::font(TextSize::Entry));
    setContextMenuPolicy(Qt::NoContextMenu);
    setMaxLength(24);
    setAccessibleName(tr("Highest value while spraying"));
    connect(this, &QLineEdit::textEdited, this, &EntryField::typedChanged);
}

QString EntryField::shownText() const
{
    QString shown;
    for (const Piece& piece : piecesFor(*this, m_offered))
        shown += piece.text;
    return shown;
}

QSize EntryField::sizeHint() const
{
    return {440, height()};
}

void EntryField::setLow(bool isLow)
{
    if (isLow == (height() < kHeight))
        return;
    setFixedHeight(isLow ? kLowHeight : kHeight);
    setFont(isLow ? render::fontOfPixels(kLowText) : render::font(TextSize::Entry));
}

void EntryField::setTakes(Takes takes)
{
    m_takes = takes;
    update();
}

void EntryField::setOffered(std::optional<int> exponent)
{
    m_offered = exponent;
    update();
}

void EntryField::setHint(const QString& hint)
{
    m_hint = hint;
    update();
}

bool EntryField::belongsToNumber(const QKeyEvent& event) const
{
    const QString text = event.text();
    if (text.isEmpty() ||
        (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) != 0)
        return false;
    const QChar c = text.front();
    if (c.isDigit() && c.unicode() < 128)
        return true;
    if (this->text().isEmpty())
        return false;
    // A rate typed where a time or a number is asked for is refused whole: with the signs left out it would
    // be one.
    if (m_takes == Takes::Digits)
        return QStringLiteral(".,:-").contains(c);
    if (m_takes == Takes::Seconds)
        return c == QLatin1Char('.') || c == QLatin1Char(',');
    return QStringLiteral(".,eE-+xX*^ ").contains(c) || c == kTrueMinus || c == QChar(0x00d7);
}

void EntryField::keyPressEvent(QKeyEvent* event)
{
    const bool isEmpty = text().isEmpty();
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit enterPressed();
        return;
    case Qt::Key_Up:
    case Qt::Key_Down:
        if (isEmpty)
            emit command(event->key(), event->modifiers(), {});
        else
            emit exponentStepped(event->key() == Qt::Key_Up ? 1 : -1);
        return;
    case Qt::Key_Backspace:
        QLineEdit::keyPressEvent(event);
        return;
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
        event->ignore();
        return;
    default:
        break;
    }
    if (belongsToNumber(*event)) {
        if (!hasSelectedText())
            end(false); // typing goes on at the end; there is no caret to move with gloves on
        QLineEdit::keyPressEvent(event);
        return;
    }
    if (event->matches(QKeySequence::SelectAll)) {
        selectAll();
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        emit command(event->key(), event->modifiers(), {});
        return;
    }
    if ((event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) != 0) {
        event->ignore(); // menus and the window have them
        return;
    }
    if (event->text().isEmpty()) {
        event->ignore();
        return;
    }
    // The first rise, a remark and what is taped off are said after the value too.
    const bool isBeside = event->key() == Qt::Key_D || event->key() == Qt::Key_M || event->key() == Qt::Key_W;
    if (isEmpty || isBeside)
        emit command(event->key(), event->modifiers(), event->text());
    else
        emit lettersRefused();
}

/// A line edit would keep Ctrl+E and others for moving a caret that is not there.
bool EntryField::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if ((key->modifiers() & Qt::ControlModifier) != 0 && !key->matches(QKeySequence::SelectAll)) {
            event->ignore();
            return false;
        }
    }
    return QLineEdit::event(event);
}

void EntryField::mousePressEvent(QMouseEvent* event)
{
    QLineEdit::mousePressEvent(event);
    end(false);
    emit touched();
}

void EntryField::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(QPen(theme.colour(hasFocus() ? Role::Accent : Role::Edge), 2));
    painter.setBrush(theme.colour(Role::Field));
    painter.drawRoundedRect(box, render::kFieldRadius, render::kFieldRadius);

    double x = box.left() + render::kGapBlock;
    if (text().isEmpty() && !m_hint.isEmpty()) {
        painter.setFont(render::font(TextSize::Title));
        painter.setPen(theme.colour(Role::InkSoft));
        painter.drawText(QRectF(x + 10, box.top(), box.width() - x - 10, box.height()), Qt::AlignVCenter,
                         m_hint);
    }
    const auto pieces = piecesFor(*this, m_offered);
    if (hasSelectedText()) {
        double width = 0.0;
        for (const Piece& piece : pieces)
            width += QFontMetricsF(render::font(TextSize::Entry, piece.weight)).horizontalAdvance(piece.text);
        painter.fillRect(QRectF(x, box.top() + 9, width, box.height() - 18), theme.colour(Role::AccentWash));
    }
    double caret = x;
    for (const Piece& piece : pieces) {
        painter.setFont(render::font(TextSize::Entry, piece.weight));
        painter.setPen(theme.colour(piece.role));
        painter.drawText(QRectF(x, box.top(), box.width(), box.height()), Qt::AlignVCenter, piece.text);
        x += QFontMetricsF(painter.font()).horizontalAdvance(piece.text);
        if (piece.role != Role::InkFaint)
            caret = x;
    }
    if (hasFocus())
        painter.fillRect(QRectF(caret + 2, box.top() + 9, 2, box.height() - 18), theme.colour(Role::Ink));
}

} // namespace sealwalk::ui
