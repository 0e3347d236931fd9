// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/same_object_dialog.h"

#include "ui/widgets/heading.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr QSize kSize(560, 440);
constexpr int kNoCount = -1;

QString calledAs(const storage::ObjectEntry& entry, int jobs)
{
    QStringList parts{QString::fromStdString(entry.name)};
    if (!entry.tag.empty())
        parts << QString::fromStdString(entry.tag);
    if (!entry.place.empty())
        parts << QString::fromStdString(entry.place);
    if (jobs != kNoCount)
        parts << SameObjectDialog::tr("%n job(s)", nullptr, jobs);
    return parts.join(QStringLiteral(" \u00B7 "));
}

bool isSpeltAlike(const std::string& a, const std::string& b)
{
    return !a.empty() &&
           QString::fromStdString(a).compare(QString::fromStdString(b), Qt::CaseInsensitive) == 0;
}

/// Whether somebody may have entered `of` again as `other`.
bool mayBe(const storage::ObjectRow& other, const storage::ObjectRow& of)
{
    return isSpeltAlike(other.tag, of.tag) || isSpeltAlike(other.name, of.name);
}

} // namespace

SameObjectDialog::SameObjectDialog(const std::vector<storage::ObjectRow>& objects, model::ObjectId of,
                                   QWidget* parent)
    : QDialog(parent)
{
    setObjectName(QStringLiteral("sameObjectDialog"));
    setWindowTitle(tr("Entered more than once"));
    resize(kSize);
    m_list = new QListWidget(this);
    m_list->setObjectName(QStringLiteral("entries"));
    m_list->setAccessibleName(tr("other entries"));
    m_list->setTabKeyNavigation(false);
    m_filter = new QLineEdit(this);
    m_filter->setObjectName(QStringLiteral("filter"));
    m_filter->setPlaceholderText(tr("name, tag, place"));
    m_filter->setAccessibleName(tr("find an entry"));
    m_filter->setClearButtonEnabled(true);
    m_store = new QPushButton(tr("Keep"), this);
    m_store->setObjectName(QStringLiteral("store"));
    m_store->setProperty("kind", QStringLiteral("primary"));
    m_store->setEnabled(false);
    auto* cancel = new QPushButton(tr("Cancel"), this);
    cancel->setAutoDefault(false);

    const auto own =
        std::find_if(objects.begin(), objects.end(), [&](const auto& row) { return row.has(of); });
    std::vector<storage::ObjectRow> likely;
    std::vector<storage::ObjectRow> rest;
    if (own != objects.end()) {
        for (const storage::ObjectEntry& entry : own->others)
            addEntry(entry, kNoCount, true);
        for (const storage::ObjectRow& row : objects)
            if (row.id != own->id)
                (mayBe(row, *own) ? likely : rest).push_back(row);
    }
    for (const std::vector<storage::ObjectRow>& rows : {likely, rest})
        for (const storage::ObjectRow& row : rows)
            addEntry({row.id, row.name, row.tag, row.place}, row.jobs, false);
    m_list->setCurrentRow(0);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 12, 20, 16);
    const QString name = own == objects.end() ? QString() : QString::fromStdString(own->name);
    column->addWidget(new Heading(tr("Also entered as"), name, this));
    auto* says = new QLabel(tr("Tick what is the very same object, say entered on another computer. Its jobs "
                               "then stand together: compared, continued and asked for open repairs as one. "
                               "The jobs themselves stay as they are, and a tick can be taken back. Points "
                               "drawn anew are paired in Compare, each confirmed by a person."),
                            this);
    says->setWordWrap(true);
    column->addWidget(says);
    column->addWidget(m_filter);
    column->addWidget(m_list, 1);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(m_store);
    column->addLayout(buttons);
    connect(m_filter, &QLineEdit::textChanged, this, &SameObjectDialog::filter);
    connect(m_list, &QListWidget::itemChanged, this, &SameObjectDialog::onTick);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_store, &QPushButton::clicked, this, &QDialog::accept);
    m_list->setFocus();
}

void SameObjectDialog::addEntry(const storage::ObjectEntry& entry, int jobs, bool isSame)
{
    auto* item = new QListWidgetItem(calledAs(entry, jobs), m_list);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(isSame ? Qt::Checked : Qt::Unchecked);
    m_ids.push_back(entry.id);
    m_wereSame.push_back(isSame);
}

void SameObjectDialog::filter(const QString& typed)
{
    for (int row = 0; row < m_list->count(); ++row) {
        QListWidgetItem* item = m_list->item(row);
        item->setHidden(!item->text().contains(typed.trimmed(), Qt::CaseInsensitive));
    }
}

void SameObjectDialog::onTick()
{
    m_store->setEnabled(!joined().empty() || !parted().empty());
}

std::vector<model::ObjectId> SameObjectDialog::changed(Qt::CheckState to) const
{
    std::vector<model::ObjectId> ids;
    for (int row = 0; row < m_list->count(); ++row) {
        const auto index = static_cast<std::size_t>(row);
        const bool isTicked = m_list->item(row)->checkState() == Qt::Checked;
        if (index < m_ids.size() && isTicked != m_wereSame[index] && isTicked == (to == Qt::Checked))
            ids.push_back(m_ids[index]);
    }
    return ids;
}

std::vector<model::ObjectId> SameObjectDialog::joined() const
{
    return changed(Qt::Checked);
}

std::vector<model::ObjectId> SameObjectDialog::parted() const
{
    return changed(Qt::Unchecked);
}

} // namespace sealwalk::ui
