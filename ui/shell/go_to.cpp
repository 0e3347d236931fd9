// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/go_to.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 520;
constexpr int kHeight = 320;
constexpr std::size_t kShown = 60;

} // namespace

GoTo::GoTo(std::vector<Destination> destinations, QWidget* parent)
    : QDialog(parent)
    , m_destinations(std::move(destinations))
{
    setObjectName(QStringLiteral("goTo"));
    setWindowTitle(tr("Go to"));
    resize(kWidth, kHeight);
    m_field = new QLineEdit(this);
    m_field->setPlaceholderText(tr("point number, joint, job, object or command"));
    m_field->setAccessibleName(tr("go to"));
    m_field->installEventFilter(this);
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("places that match"));
    m_list->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_field);
    column->addWidget(m_list);
    connect(m_field, &QLineEdit::textChanged, this, &GoTo::refill);
    connect(m_field, &QLineEdit::returnPressed, this, &GoTo::go);
    connect(m_list, &QListWidget::itemClicked, this, &GoTo::go);
    refill();
}

std::vector<std::size_t> GoTo::matches(const QString& typed) const
{
    const QStringList words = typed.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < m_destinations.size(); ++i) {
        const QString text = m_destinations[i].kind + QLatin1Char(' ') + m_destinations[i].text;
        if (std::all_of(words.begin(), words.end(),
                        [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); }))
            found.push_back(i);
    }
    std::stable_partition(found.begin(), found.end(), [&](std::size_t i) {
        return m_destinations[i].text.startsWith(typed.trimmed(), Qt::CaseInsensitive);
    });
    return found;
}

void GoTo::refill()
{
    m_list->clear();
    for (const std::size_t i : matches(m_field->text())) {
        if (static_cast<std::size_t>(m_list->count()) == kShown)
            break;
        auto* item = new QListWidgetItem(
            m_destinations[i].kind + QStringLiteral("   ") + m_destinations[i].text, m_list);
        item->setData(Qt::UserRole, static_cast<qulonglong>(i));
    }
    if (m_list->count() == 0) {
        auto* nothing = new QListWidgetItem(tr("Nothing here is called so."), m_list);
        nothing->setFlags(Qt::NoItemFlags);
        return;
    }
    m_list->setCurrentRow(0);
}

void GoTo::go()
{
    const QListWidgetItem* item = m_list->currentItem();
    if (item == nullptr || (item->flags() & Qt::ItemIsEnabled) == 0)
        return;
    const auto index = static_cast<std::size_t>(item->data(Qt::UserRole).toULongLong());
    const std::function<void()> action = m_destinations[index].go;
    accept();
    action();
}

bool GoTo::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_field && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down) {
            QCoreApplication::sendEvent(m_list, event);
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace sealwalk::ui
