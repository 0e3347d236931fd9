// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/note_line.h"

#include "ui/widgets/below_field.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kHeight = 26;
constexpr int kIcon = 16;
constexpr int kNewsMilliseconds = 8000;
constexpr std::size_t kKept = 10;
constexpr int kBarWidth = 160;
constexpr int kPermille = 1000;

/// The last notes, over the page; a shortcut would not reach a list that stands for itself.
class NotesList : public QListWidget
{
public:
    using QListWidget::QListWidget;

protected:
    void keyPressEvent(QKeyEvent* event) override
    {
        if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_F2)
            close();
        else
            QListWidget::keyPressEvent(event);
    }
};

QString wordOf(Severity severity)
{
    switch (severity) {
    case Severity::News:
        return QStringLiteral("news");
    case Severity::Caution:
        return QStringLiteral("caution");
    case Severity::Error:
        return QStringLiteral("error");
    }
    return {};
}

} // namespace

NoteLine::NoteLine(QWidget* parent)
    : QFrame(parent)
{
    setObjectName(QStringLiteral("noteLine"));
    setFixedHeight(kHeight);
    setAccessibleName(tr("note line"));
    m_icon = new QLabel(this);
    m_icon->hide();
    m_text = new QLabel(this);
    m_text->setTextFormat(Qt::PlainText);
    m_aside = new QLabel(this);
    m_aside->setTextFormat(Qt::PlainText);
    m_aside->setProperty("role", QStringLiteral("faint"));
    m_bar = new QProgressBar(this);
    m_bar->setFixedWidth(kBarWidth);
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(tr("progress"));
    m_bar->hide();
    m_cancel = new QPushButton(tr("Cancel"), this);
    m_cancel->setProperty("role", QStringLiteral("small"));
    m_cancel->setFocusPolicy(Qt::NoFocus);
    m_cancel->hide();

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 0, 12, 0);
    row->setSpacing(8);
    row->addWidget(m_icon);
    row->addWidget(m_text);
    row->addSpacing(8);
    row->addWidget(m_aside);
    row->addStretch(1);
    row->addWidget(m_bar);
    row->addWidget(m_cancel);
    // A long sentence must not dictate the width of the window.
    m_text->setMinimumWidth(1);
    m_aside->setMinimumWidth(1);

    m_fade.setSingleShot(true);
    connect(&m_fade, &QTimer::timeout, this, &NoteLine::clear);
    connect(m_cancel, &QPushButton::clicked, this, &NoteLine::cancelled);
}

void NoteLine::setIconSource(std::function<QIcon(Severity)> source)
{
    m_iconSource = std::move(source);
    refreshIcon();
}

void NoteLine::refreshIcon()
{
    const bool wanted = m_iconSource && m_now.severity != Severity::News;
    m_icon->setVisible(wanted);
    if (wanted)
        m_icon->setPixmap(m_iconSource(m_now.severity).pixmap(kIcon, kIcon));
}

void NoteLine::say(Severity severity, const QString& text, const QString& aside)
{
    const Said said{severity, text, aside, QDateTime::currentDateTime()};
    m_said.push_front(said);
    if (m_said.size() > kKept)
        m_said.pop_back();
    show(said);
    if (severity == Severity::News)
        m_fade.start(kNewsMilliseconds);
    else
        m_fade.stop();
}

void NoteLine::clear()
{
    m_fade.stop();
    show(m_resting);
}

void NoteLine::turnTo()
{
    if (m_now.severity != Severity::Caution || m_fade.isActive())
        return;
    const std::chrono::milliseconds stood(m_now.at.msecsTo(QDateTime::currentDateTime()));
    m_fade.start(std::clamp(m_cautionTime - stood, std::chrono::milliseconds(0), m_cautionTime));
}

void NoteLine::setResting(const QString& text, const QString& aside)
{
    const bool resting = m_now.text == m_resting.text && !m_fade.isActive();
    m_resting = {Severity::News, text, aside, {}};
    if (resting)
        show(m_resting);
}

void NoteLine::show(const Said& said)
{
    m_now = said;
    m_text->setText(said.text);
    m_text->setToolTip(said.text);
    m_aside->setText(said.aside);
    setStyleProperty(this, "severity", wordOf(said.severity));
    setAccessibleDescription(said.text + QLatin1Char(' ') + said.aside);
    refreshIcon();
}

QString NoteLine::text() const
{
    return m_text->text();
}

void NoteLine::showProgress(const QString& what, double share)
{
    m_text->setText(what);
    m_aside->clear();
    m_bar->setRange(0, share < 0.0 ? 0 : kPermille);
    m_bar->setValue(static_cast<int>(share * kPermille));
    m_bar->show();
    m_cancel->show();
}

void NoteLine::endProgress()
{
    m_bar->hide();
    m_cancel->hide();
    show(m_now);
}

bool NoteLine::isWorking() const
{
    return !m_bar->isHidden();
}

void NoteLine::openLastTen()
{
    auto* list = new NotesList(window());
    list->setWindowFlag(Qt::Popup);
    list->setAttribute(Qt::WA_DeleteOnClose);
    list->setAccessibleName(tr("the last ten notes"));
    for (const Said& said : m_said)
        list->addItem(QLocale().toString(said.at.time(), QStringLiteral("HH:mm:ss")) + QStringLiteral("   ") +
                      said.text + QStringLiteral("   ") + said.aside);
    if (m_said.empty())
        list->addItem(tr("nothing was said yet"));
    list->setCurrentRow(0);
    const int height = list->sizeHintForRow(0) * list->count() + 2 * list->frameWidth() + 4;
    list->setGeometry(QRect(mapToGlobal(QPoint(0, -height)), QSize(width(), height)));
    connect(list, &QListWidget::itemActivated, list, &QWidget::close);
    list->QWidget::show();
    list->setFocus();
}

} // namespace sealwalk::ui
