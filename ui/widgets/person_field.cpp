// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/person_field.h"

#include <QLineEdit>
#include <QSignalBlocker>

namespace sealwalk::ui {

PersonField::PersonField(const QString& name, QWidget* parent)
    : QComboBox(parent)
{
    setEditable(true);
    setCompleter(nullptr); // it would swallow the Enter that ends the entry
    setInsertPolicy(QComboBox::NoInsert);
    setAccessibleName(name);
    lineEdit()->setAccessibleName(name);
    lineEdit()->setPlaceholderText(tr("name"));
    connect(lineEdit(), &QLineEdit::editingFinished, this, [this] { emit edited(person()); });
    connect(this, &QComboBox::activated, this, [this] { emit edited(person()); });
}

void PersonField::setKnown(const QStringList& names)
{
    const QSignalBlocker quiet(this);
    const QString typed = currentText();
    clear();
    addItems(names);
    setCurrentIndex(-1);
    setEditText(typed);
}

void PersonField::setPerson(const QString& name)
{
    if (person() != name)
        setEditText(name);
}

} // namespace sealwalk::ui
