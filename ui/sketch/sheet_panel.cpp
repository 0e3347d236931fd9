// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sheet_panel.h"

#include "core/editing/sheets.h"
#include "ui/sketch/number_field.h"
#include "ui/sketch/points_panel.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/heading.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>
#include <numbers>

namespace sealwalk::ui {

namespace {

constexpr double kQuarter = std::numbers::pi / 2.0;

} // namespace

SheetPanel::SheetPanel(SketchDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(new Heading(tr("Sheet"), {}, this));

    m_name = new QLineEdit(this);
    m_name->setObjectName(QStringLiteral("sheet-name"));
    m_name->setAccessibleName(tr("Name of the sheet"));
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        change([this](model::Sheet& sheet) { sheet.name = m_name->text().trimmed().toStdString(); });
    });
    column->addWidget(formRow(tr("Name"), {m_name}, this));

    m_seenFrom = new QComboBox(this);
    m_seenFrom->setEditable(true);
    m_seenFrom->setInsertPolicy(QComboBox::NoInsert);
    m_seenFrom->setAccessibleName(tr("Side it is seen from"));
    m_seenFrom->addItems(usualSides());
    const auto side = [this] {
        change([this](model::Sheet& sheet) {
            sheet.seenFrom = m_seenFrom->currentText().trimmed().toStdString();
        });
    };
    connect(m_seenFrom, &QComboBox::activated, this, side);
    connect(m_seenFrom->lineEdit(), &QLineEdit::editingFinished, this, side);
    column->addWidget(formRow(tr("Seen from"), {m_seenFrom}, this));

    m_width = new NumberField(tr("Width of the sheet in millimetres"), 60, this);
    m_height = new NumberField(tr("Height of the sheet in millimetres"), 60, this);
    for (NumberField* field : {m_width, m_height}) {
        connect(field, &NumberField::edited, this, [this, field](std::optional<double> number) {
            change([&](model::Sheet& sheet) {
                (field == m_width ? sheet.width : sheet.height) = number.value_or(0.0);
            });
        });
        connect(field, &NumberField::refused, &m_desk,
                [this](const QString& sentence) { m_desk.say(Severity::Caution, sentence); });
    }
    column->addWidget(formRow(
        tr("Size"), {m_width, quietLabel(tr("by"), this), m_height, quietLabel(tr("mm"), this)}, this));

    m_up = new QComboBox(this);
    m_up->setAccessibleName(tr("Where up is on the sheet"));
    m_up->addItems({tr("to the right"), tr("to the top"), tr("to the left"), tr("to the bottom")});
    connect(m_up, &QComboBox::activated, this, [this](int index) {
        change([index](model::Sheet& sheet) { sheet.upDirection = index * kQuarter; });
    });
    column->addWidget(formRow(tr("Up is"), {m_up}, this));

    m_plan = new QCheckBox(tr("a plan, seen from above: no up on it"), this);
    connect(m_plan, &QCheckBox::clicked, this,
            [this](bool on) { change([on](model::Sheet& sheet) { sheet.seenFromAbove = on; }); });
    column->addWidget(m_plan);

    m_retired = new QCheckBox(tr("show retired points"), this);
    m_retired->setChecked(m_desk.showsRetired());
    connect(m_retired, &QCheckBox::toggled, &m_desk, &SketchDesk::setShowsRetired);
    column->addWidget(m_retired);

    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(0, 8, 0, 8);
    buttons->setSpacing(8);
    m_picture = new QPushButton(tr("Picture …"), this);
    m_picture->setObjectName(QStringLiteral("sheet-picture"));
    connect(m_picture, &QPushButton::clicked, this, &SheetPanel::pictureWanted);
    m_remove = new QPushButton(tr("Delete sheet"), this);
    m_remove->setObjectName(QStringLiteral("sheet-remove"));
    connect(m_remove, &QPushButton::clicked, this, [this] {
        m_desk.commit(editing::removeSheet(m_desk.sketch(), m_desk.sheet(), m_desk.withReadings()));
    });
    buttons->addWidget(m_picture, 1);
    buttons->addWidget(m_remove);
    column->addLayout(buttons);
    refresh();
}

void SheetPanel::change(const std::function<void(model::Sheet&)>& change)
{
    const model::Sheet* sheet = m_desk.sheetInView();
    if (sheet == nullptr)
        return;
    model::Sheet changed = *sheet;
    change(changed);
    if (changed != *sheet && !m_desk.commit(editing::changeSheet(m_desk.sketch(), changed)))
        refresh();
}

void SheetPanel::refresh()
{
    const model::Sheet* sheet = m_desk.sheetInView();
    setVisible(sheet != nullptr && m_desk.chosen().empty());
    if (sheet == nullptr)
        return;
    setEnabled(m_desk.isOpenForWork());
    m_name->setText(QString::fromStdString(sheet->name));
    if (!m_seenFrom->lineEdit()->hasFocus())
        m_seenFrom->setEditText(QString::fromStdString(sheet->seenFrom));
    m_width->setNumber(sheet->width);
    m_height->setNumber(sheet->height);
    const double quarters = sheet->upDirection / kQuarter;
    const bool even = std::abs(quarters - std::round(quarters)) < 1e-6;
    m_up->setCurrentIndex(even ? ((static_cast<int>(std::lround(quarters)) % 4) + 4) % 4 : -1);
    m_up->setEnabled(!sheet->seenFromAbove);
    m_plan->setChecked(sheet->seenFromAbove);
}

} // namespace sealwalk::ui
