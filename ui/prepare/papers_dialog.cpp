// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/papers_dialog.h"

#include "ui/prepare/shown.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/heading.h"

#include <QCheckBox>
#include <QDateTime>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 620;
constexpr std::size_t kRows = 4;
constexpr int kDateWidth = 130;

std::string typed(const QLineEdit* edit)
{
    return edit->text().trimmed().toStdString();
}

QDate dayOf(const Timestamp& at)
{
    return QDate::fromString(text(at.date()), Qt::ISODate);
}

} // namespace

PapersDialog::PapersDialog(const model::Setup& setup, const model::TestObject& object, QWidget* parent)
    : QDialog(parent)
    , m_setup(setup)
    , m_object(object)
{
    setObjectName(QStringLiteral("papersDialog"));
    setWindowTitle(tr("For the report"));
    setMinimumWidth(kWidth);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 12, 20, 16);
    column->setSpacing(0);
    column->addWidget(new Heading(windowTitle(), tr("what stays empty is printed as not recorded"), this));
    m_customer =
        addLine(*column, tr("Customer"), tr("customer"), setup.customer, tr("whom the job is done for"));
    m_witness =
        addLine(*column, tr("Witness"), tr("witness"), setup.witness, tr("who watches it, if anybody"));
    m_drawing = addLine(*column, tr("Serial, drawing"), tr("serial number and drawing"), object.note,
                        tr("number and revision; kept with the object"));
    m_procedure = addLine(*column, tr("Procedure"), tr("procedure"), setup.procedure,
                          tr("number and revision; standard and edition"));
    m_excluded = addLine(*column, tr("Left out"), tr("left out on purpose"), setup.excluded, tr("and why"));
    m_bottle = addLine(*column, tr("Helium bottle"), tr("helium bottle"), setup.heliumBottle,
                       tr("number, what is left in it"));
    m_noCheckAfter = addLine(*column, tr("No check after"), tr("why there is no check afterwards"),
                             setup.noCheckAfterReason, tr("only where there can be none: the reason"));
    m_dried = new QCheckBox(tr("The object was dried before the test"), this);
    m_dried->setChecked(setup.dried);
    m_zero = new QCheckBox(tr("Zero is on: the display takes the background off"), this);
    m_zero->setChecked(setup.zeroOn);
    column->addSpacing(4);
    column->addWidget(m_dried);
    column->addWidget(m_zero);
    addInstruments(*column);
    column->addSpacing(12);
    auto* buttons = new QDialogButtonBox(this);
    auto* keep = buttons->addButton(tr("Keep"), QDialogButtonBox::AcceptRole);
    keep->setObjectName(QStringLiteral("store"));
    setStyleProperty(keep, "kind", QStringLiteral("primary"));
    keep->setDefault(true);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &PapersDialog::tryAccept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_customer->setFocus();
}

QLineEdit* PapersDialog::addLine(QVBoxLayout& column, const QString& label, const QString& name,
                                 const std::string& kept, const QString& example)
{
    auto* edit = new QLineEdit(text(kept), this);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(example);
    edit->setCursorPosition(0); // a long text shows how it begins
    column.addWidget(formRow(label, {edit}, this));
    return edit;
}

void PapersDialog::addInstruments(QVBoxLayout& column)
{
    column.addWidget(new Heading(tr("Other instruments"), tr("gauges, thermometer, oxygen meter"), this));
    const std::size_t rows = std::max(kRows, m_setup.instruments.size() + 1);
    for (std::size_t i = 0; i < rows; ++i) {
        const model::Instrument known =
            i < m_setup.instruments.size() ? m_setup.instruments[i] : model::Instrument{};
        const int number = static_cast<int>(i) + 1;
        InstrumentRow row;
        row.what = new QLineEdit(text(known.what), this);
        row.what->setAccessibleName(tr("instrument %1").arg(number));
        row.identity = new QLineEdit(text(known.identity), this);
        row.identity->setAccessibleName(tr("number of instrument %1").arg(number));
        row.due = new DateField(tr("instrument %1 is due").arg(number), this);
        row.due->setFixedWidth(kDateWidth);
        if (known.due)
            row.due->setDate(dayOf(*known.due));
        if (i == 0) {
            row.what->setPlaceholderText(tr("what it is"));
            row.identity->setPlaceholderText(tr("its number"));
            row.due->field()->setPlaceholderText(tr("due"));
        }
        auto* line = new QHBoxLayout;
        line->setSpacing(8);
        line->addWidget(row.what, 3);
        line->addWidget(row.identity, 2);
        line->addWidget(row.due, 0, Qt::AlignTop);
        column.addLayout(line);
        column.addSpacing(4);
        m_instruments.push_back(row);
    }
}

std::vector<model::Instrument> PapersDialog::instruments() const
{
    std::vector<model::Instrument> all;
    for (std::size_t i = 0; i < m_instruments.size(); ++i) {
        const InstrumentRow& row = m_instruments[i];
        model::Instrument instrument{typed(row.what), typed(row.identity), std::nullopt};
        if (const auto day = row.due->date()) {
            // The same day keeps its very moment: nothing was changed.
            const auto known = i < m_setup.instruments.size() ? m_setup.instruments[i].due : std::nullopt;
            const auto parsed = Timestamp::parseDate(day->toString(Qt::ISODate).toStdString());
            instrument.due = known && dayOf(*known) == *day ? known
                             : parsed                       ? std::optional(*parsed)
                                                            : std::nullopt;
        }
        if (instrument != model::Instrument{})
            all.push_back(std::move(instrument));
    }
    return all;
}

void PapersDialog::applyTo(model::Setup& setup) const
{
    const auto put = [&](auto model::Setup::*member, auto value) {
        if (value != m_setup.*member)
            setup.*member = std::move(value);
    };
    put(&model::Setup::customer, typed(m_customer));
    put(&model::Setup::witness, typed(m_witness));
    put(&model::Setup::procedure, typed(m_procedure));
    put(&model::Setup::excluded, typed(m_excluded));
    put(&model::Setup::heliumBottle, typed(m_bottle));
    put(&model::Setup::noCheckAfterReason, typed(m_noCheckAfter));
    put(&model::Setup::dried, m_dried->isChecked());
    put(&model::Setup::zeroOn, m_zero->isChecked());
    put(&model::Setup::instruments, instruments());
}

void PapersDialog::applyTo(model::TestObject& object) const
{
    if (const std::string note = typed(m_drawing); note != m_object.note)
        object.note = note;
}

void PapersDialog::tryAccept()
{
    for (const InstrumentRow& row : m_instruments) {
        row.due->commit();
        if (row.due->isWrong()) {
            row.due->field()->setFocus();
            return;
        }
    }
    accept();
}

} // namespace sealwalk::ui
