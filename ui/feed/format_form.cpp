// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/format_form.h"

#include "core/feed/line_pattern.h"
#include "core/quantities/leak_rate_unit.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <limits>

namespace sealwalk::ui {

namespace {

double numberOf(const QLineEdit* field)
{
    const auto number = parseNumber(field->text().trimmed().toStdString(), decimalMark());
    return number ? *number : std::numeric_limits<double>::quiet_NaN();
}

void fill(QLineEdit* field, double number)
{
    field->setText(localised(exactText(number))); // as it is read again
}

} // namespace

FormatForm::FormatForm(QWidget* parent)
    : QWidget(parent)
    , m_where(new QComboBox(this))
    , m_pages(new QStackedWidget(this))
    , m_column(new QSpinBox(this))
    , m_separator(new QComboBox(this))
    , m_pattern(new QLineEdit(this))
    , m_time(new QSpinBox(this))
    , m_meaning(new QComboBox(this))
    , m_unit(new QComboBox(this))
    , m_factor(numberField(tr("leak rate per volt"), "factor"))
    , m_offset(numberField(tr("leak rate at 0 V"), "offset"))
    , m_decades(numberField(tr("decades per volt"), "decades"))
    , m_zero(numberField(tr("decade at 0 V"), "zero"))
{
    m_where->setAccessibleName(tr("where the value stands"));
    m_where->setObjectName(QStringLiteral("where"));
    m_where->addItems({tr("in a column"), tr("by a pattern")});
    m_column->setAccessibleName(tr("column of the value"));
    m_column->setObjectName(QStringLiteral("column"));
    m_column->setRange(1, feed::kMostColumns);
    m_separator->setAccessibleName(tr("what separates columns"));
    m_separator->setObjectName(QStringLiteral("separator"));
    m_separator->addItem(tr("blanks between"), static_cast<int>(feed::Separator::Blank));
    m_separator->addItem(tr("commas between"), static_cast<int>(feed::Separator::Comma));
    m_separator->addItem(tr("semicolons between"), static_cast<int>(feed::Separator::Semicolon));
    m_separator->addItem(tr("tabs between"), static_cast<int>(feed::Separator::Tab));
    m_pattern->setAccessibleName(tr("pattern: # for the number, * for any text"));
    m_pattern->setToolTip(m_pattern->accessibleName());
    m_pattern->setObjectName(QStringLiteral("pattern"));
    m_pattern->setMaxLength(static_cast<int>(feed::kLongestPattern));
    m_pattern->setPlaceholderText(QStringLiteral("now # mbar*"));
    m_time->setAccessibleName(tr("column of the time in a recorded file; 0: none"));
    m_time->setObjectName(QStringLiteral("time"));
    m_time->setRange(0, feed::kMostColumns);
    m_time->setSpecialValueText(tr("no time"));
    m_meaning->setAccessibleName(tr("what the number is"));
    m_meaning->setObjectName(QStringLiteral("meaning"));
    m_meaning->addItem(tr("leak rate"));
    m_meaning->addItem(tr("volts, linear"));
    m_meaning->addItem(tr("volts, in decades"));
    m_unit->setAccessibleName(tr("unit of leak rate"));
    m_unit->setObjectName(QStringLiteral("unit"));
    for (const LeakRateUnit unit : allLeakRateUnits())
        m_unit->addItem(QString::fromStdString(unitOf(unit).symbol),
                        QString::fromStdString(std::string(idOf(unit))));

    m_pages->addWidget(formRow(tr("C&olumn"), {m_column, m_separator}, m_pages));
    m_pages->addWidget(formRow(tr("Patte&rn"), {m_pattern}, m_pages));
    m_linear = formRow(tr("Per volt"), {m_factor, quietLabel(tr("and at 0 V"), this), m_offset}, this);
    m_logarithmic =
        formRow(tr("Decades per volt"), {m_decades, quietLabel(tr("and at 0 V 1e"), this), m_zero}, this);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(formRow(tr("&Value"), {m_where}, this));
    layout->addWidget(m_pages);
    layout->addWidget(formRow(tr("&Time in column"), {m_time}, this));
    layout->addWidget(formRow(tr("&Meaning"), {m_meaning, m_unit}, this));
    layout->addWidget(m_linear);
    layout->addWidget(m_logarithmic);

    for (QComboBox* box : {m_where, m_separator, m_meaning, m_unit})
        connect(box, &QComboBox::currentIndexChanged, this, &FormatForm::refresh);
    for (QSpinBox* box : {m_column, m_time})
        box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    for (QSpinBox* box : {m_column, m_time})
        connect(box, &QSpinBox::valueChanged, this, &FormatForm::refresh);
    for (QLineEdit* field : {m_pattern, m_factor, m_offset, m_decades, m_zero})
        connect(field, &QLineEdit::textChanged, this, &FormatForm::refresh);
    setFormat({});
}

QLineEdit* FormatForm::numberField(const QString& name, const char* object)
{
    auto* field = new QLineEdit(this);
    field->setAccessibleName(name);
    field->setObjectName(QLatin1String(object));
    field->setMaximumWidth(100);
    return field;
}

void FormatForm::refresh()
{
    m_pages->setCurrentIndex(m_where->currentIndex());
    const auto meaning = static_cast<feed::Meaning>(m_meaning->currentIndex());
    m_linear->setVisible(meaning == feed::Meaning::LinearVolts);
    m_logarithmic->setVisible(meaning == feed::Meaning::DecadeVolts);
    emit changed();
}

void FormatForm::setFormat(const feed::LineFormat& format)
{
    {
        const QSignalBlocker quiet(this);
        m_where->setCurrentIndex(format.byPattern ? 1 : 0);
        m_column->setValue(format.column);
        m_separator->setCurrentIndex(std::max(0, m_separator->findData(static_cast<int>(format.separator))));
        m_pattern->setText(QString::fromStdString(format.pattern));
        m_time->setValue(format.timeColumn.value_or(0));
        m_meaning->setCurrentIndex(static_cast<int>(format.meaning));
        m_unit->setCurrentIndex(std::max(0, m_unit->findData(QString::fromStdString(format.unit))));
        fill(m_factor, format.factor);
        fill(m_offset, format.offset);
        fill(m_decades, format.decadesPerVolt);
        fill(m_zero, format.exponentAtZero);
    }
    refresh();
}

feed::LineFormat FormatForm::format() const
{
    feed::LineFormat format;
    format.byPattern = m_where->currentIndex() == 1;
    format.column = m_column->value();
    format.separator = static_cast<feed::Separator>(m_separator->currentData().toInt());
    format.pattern = m_pattern->text().toStdString();
    if (m_time->value() > 0)
        format.timeColumn = m_time->value();
    format.meaning = static_cast<feed::Meaning>(m_meaning->currentIndex());
    format.unit = m_unit->currentData().toString().toStdString();
    format.factor = numberOf(m_factor);
    format.offset = numberOf(m_offset);
    format.decadesPerVolt = numberOf(m_decades);
    format.exponentAtZero = numberOf(m_zero);
    return format;
}

} // namespace sealwalk::ui
