// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/quantity_edit.h"

#include "core/quantities/entered_number.h"
#include "core/quantities/quantity_text.h"
#include "ui/render/core_words.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/number_display.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <cmath>
#include <utility>

namespace sealwalk::ui {

namespace {

constexpr double kSameValue = 1e-9;

bool same(std::optional<double> a, std::optional<double> b)
{
    if (!a || !b)
        return a.has_value() == b.has_value();
    return std::abs(*a - *b) <= kSameValue * std::max(std::abs(*a), std::abs(*b));
}

/// The trade's short form of a rate, "3.2-7", where a plain reading found no number.
Result<double> shortForm(const std::string& typed, const Error& otherwise)
{
    const EnteredNumber entered = readEntered(typed);
    if (entered.state == EnteredNumber::State::Complete && entered.value)
        return *entered.value;
    return fail(otherwise);
}

} // namespace

QuantityEdit::QuantityEdit(const QString& name, const Unit& unit, QWidget* parent)
    : QWidget(parent)
    , m_unit(unit)
{
    build(name);
}

QuantityEdit::QuantityEdit(const QString& name, const QString& suffix, QWidget* parent)
    : QWidget(parent)
    , m_suffix(suffix)
{
    build(name);
}

QuantityEdit::~QuantityEdit()
{
    // The field loses its focus while it is taken down, and would tell an edit that is half gone.
    m_field->disconnect(this);
}

void QuantityEdit::build(const QString& name)
{
    m_field = new QLineEdit(this);
    m_field->setAccessibleName(name);
    if (m_unit)
        m_field->setPlaceholderText(QString::fromStdString(m_unit->symbol));
    m_below = makeBelowField(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(m_field);
    column->addWidget(m_below);
    setFocusProxy(m_field);
    connect(m_field, &QLineEdit::editingFinished, this, &QuantityEdit::onEditingFinished);
}

void QuantityEdit::setUnit(const Unit& unit)
{
    if (m_unit && *m_unit == unit)
        return;
    const bool typedHere = m_si && same(read(text()).value_or(std::nan("")), m_si);
    if (m_unit && m_field->placeholderText() == QString::fromStdString(m_unit->symbol))
        m_field->setPlaceholderText(QString::fromStdString(unit.symbol));
    m_unit = unit;
    // A bare number would change its meaning with the unit, so it is written anew.
    const bool wasBare = !std::exchange(m_typedBare, {}).isEmpty();
    if (m_si && (wasBare || !typedHere || !same(read(text()).value_or(std::nan("")), m_si)))
        m_field->setText(shown(*m_si));
    showBelow();
}

void QuantityEdit::setFlowBasis(const FlowBasis& basis)
{
    m_basis = basis;
    showBelow();
}

void QuantityEdit::setRange(const Range& range)
{
    m_range = range;
}

void QuantityEdit::setPlaceholder(const QString& text)
{
    m_field->setPlaceholderText(text);
}

void QuantityEdit::setFieldWidth(int pixels)
{
    m_field->setFixedWidth(pixels);
    m_narrow = true;
    letWiden(m_below);
    showBelow();
}

void QuantityEdit::setSi(std::optional<double> si)
{
    const bool typing = m_field->hasFocus() && m_field->isModified();
    if (same(si, m_si) && (typing || isWrong() || !text().trimmed().isEmpty() || !si))
        return;
    m_si = si;
    m_complaint.clear();
    m_typedBare.clear();
    m_field->setText(si ? shown(*si) : QString());
    m_field->setModified(false);
    showBelow();
}

QString QuantityEdit::text() const
{
    return m_field->text();
}

QString QuantityEdit::typed() const
{
    return m_typedBare.isEmpty() ? text().trimmed() : m_typedBare;
}

void QuantityEdit::commit()
{
    onEditingFinished();
}

void QuantityEdit::onEditingFinished()
{
    if (!m_field->isModified())
        return;
    const QString typed = text().trimmed();
    std::optional<double> value;
    QString complaint;
    if (!typed.isEmpty()) {
        const Result<double> read = this->read(typed);
        if (!read)
            complaint = explained(typed, read.error());
        else
            complaint = outOfRange(*read);
        if (complaint.isEmpty())
            value = *read;
    }
    m_complaint = complaint;
    m_field->setModified(!complaint.isEmpty());
    const bool changed = complaint.isEmpty() && !same(value, m_si);
    if (complaint.isEmpty())
        m_si = value;
    m_typedBare.clear();
    if (value && isBare(typed))
        showUnit(*value);
    showBelow();
    if (changed)
        emit edited(m_si);
}

/// A number and nothing else; of leak rates also as the trade writes it for short, 3.2-7.
bool QuantityEdit::isBare(const QString& typed) const
{
    const std::string text = typed.toStdString();
    return numberLength(text) == text.size() || (m_unit && m_unit->kind == UnitKind::LeakRates &&
                                                 readEntered(text).state == EnteredNumber::State::Complete);
}

/// What a bare number was taken for is seen, and stays true when the unit of the field changes.
void QuantityEdit::showUnit(double si)
{
    const QString written = shown(si);
    if (!m_unit || m_unit->symbol.empty() || !same(read(written).value_or(std::nan("")), si))
        return;
    m_typedBare = text().trimmed();
    m_field->setText(written);
    if (m_field->hasFocus()) // typing goes on behind the number
        m_field->setCursorPosition(static_cast<int>(numberLength(written.toStdString())));
}

Result<double> QuantityEdit::read(const QString& text) const
{
    const std::string typed = text.trimmed().toStdString();
    const DecimalMark mark = decimalMark();
    if (!m_unit)
        return parseNumber(typed, mark);
    if (m_unit->kind != UnitKind::LeakRates)
        return parseSi(typed, m_unit->kind, &*m_unit, mark);
    if (isBare(text.trimmed())) {
        Result<double> number = parseNumber(typed, mark);
        if (!number)
            number = shortForm(typed, number.error());
        if (!number)
            return number;
        return leakRate(*number, *m_unit, m_basis).map([](LeakRate rate) { return rate.si(); });
    }
    return parseLeakRate(typed, m_basis, mark).map([](LeakRate rate) { return rate.si(); });
}

QString QuantityEdit::explained(const QString& typed, const Error& error) const
{
    // The core does not know which quantity was asked for when it finds no number at all.
    if (m_unit && numberLength(typed.toStdString()) == 0)
        return tr("“%1” does not start with a number; right would be %2")
            .arg(typed, localised(std::string(exampleOf(m_unit->kind))));
    return render::inWords(error);
}

QString QuantityEdit::shown(double si) const
{
    if (!m_unit)
        return typedText(si);
    double number = fromSi(si, *m_unit);
    if (m_unit->kind == UnitKind::LeakRates)
        number = numberIn(LeakRate::fromSi(si), *m_unit, m_basis).value_or(number);
    const QString symbol = QString::fromStdString(m_unit->symbol);
    return symbol.isEmpty() ? typedText(number) : typedText(number) + QLatin1Char(' ') + symbol;
}

QString QuantityEdit::outOfRange(double si) const
{
    if (m_range.above && !(si > *m_range.above))
        return tr("must be above %1").arg(shown(*m_range.above));
    if (m_range.atLeast && si < *m_range.atLeast)
        return tr("must be at least %1").arg(shown(*m_range.atLeast));
    if (m_range.atMost && si > *m_range.atMost)
        return tr("must be at most %1").arg(shown(*m_range.atMost));
    return {};
}

void QuantityEdit::showBelow()
{
    if (m_narrow) // what stands behind the field keeps close to it, until a sentence needs the room
        setSizePolicy(isWrong() ? QSizePolicy::Preferred : QSizePolicy::Maximum, QSizePolicy::Preferred);
    if (isWrong()) {
        showComplaint(m_below, m_field, m_complaint);
        return;
    }
    // "120 l" and "120" need no echo in l; "0,12 m3" does.
    const bool echo = m_si && m_unit && shown(*m_si) != text().trimmed() &&
                      numberLength(text().trimmed().toStdString()) != text().trimmed().toStdString().size();
    showHint(m_below, m_field, echo ? QStringLiteral("= ") + shown(*m_si) : QString());
}

} // namespace sealwalk::ui
