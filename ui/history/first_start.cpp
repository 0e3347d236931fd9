// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/first_start.h"

#include "ui/history/start_card.h"
#include "ui/render/icon.h"
#include "ui/widgets/heading.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kMark = 96;
constexpr int kTextWidth = 380;

class Mark : public QWidget
{
public:
    using QWidget::QWidget;

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        render::paintIcon(painter, QStringLiteral("app-mark"), QRectF(0, 0, kMark, kMark), Qt::black);
    }
};

QLabel* line(const QString& text, const QString& role, QWidget* parent)
{
    QLabel* label = quietLabel(text, parent, role);
    label->setWordWrap(true);
    label->setFixedWidth(kTextWidth);
    return label;
}

} // namespace

FirstStart::FirstStart(QWidget* parent)
    : QWidget(parent)
{
    auto* mark = new Mark(this);
    mark->setFixedSize(kMark, kMark);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addStretch(1);
    words->addWidget(mark);
    words->addSpacing(18);
    words->addWidget(line(QStringLiteral("Sealwalk"), QStringLiteral("mark"), this));
    words->addSpacing(6);
    words->addWidget(line(tr("Find, size, judge and prove the repair of leaks, joint by joint, on a drawing "
                             "of your equipment."),
                          QStringLiteral("lead"), this));
    words->addSpacing(18);
    words->addWidget(
        line(tr("Nothing leaves this computer. No account. What you confirm is on disk at once."),
             QStringLiteral("soft"), this));
    words->addStretch(1);

    auto* object = new StartCard(QStringLiteral("object"), tr("New test object"),
                                 tr("name, volume, limit; then draw its joints"), Qt::Key_N, this);
    auto* picture = new StartCard(QStringLiteral("photo"), tr("Start from a photo or drawing"),
                                  tr("it lies under the sheet; two clicks give the scale"), Qt::Key_P, this);
    auto* jobFile = new StartCard(QStringLiteral("export"), tr("Open a job file"),
                                  tr("from another computer, on a stick, by mail"), Qt::Key_O, this);
    auto* demo = new StartCard(QStringLiteral("stage-history"), tr("Look at the demo"),
                               tr("an invented box coater, two jobs a year apart"), Qt::Key_D, this);
    auto* cards = new QVBoxLayout;
    cards->setSpacing(12);
    cards->addStretch(1);
    for (StartCard* card : {object, picture, jobFile, demo})
        cards->addWidget(card);
    cards->addStretch(1);

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(24, 24, 24, 24);
    row->addStretch(1);
    row->addLayout(words);
    row->addSpacing(56);
    row->addLayout(cards);
    row->addStretch(1);
    setFocusProxy(object);
    connect(object, &StartCard::clicked, this, &FirstStart::newObjectWanted);
    connect(picture, &StartCard::clicked, this, &FirstStart::pictureWanted);
    connect(jobFile, &StartCard::clicked, this, &FirstStart::jobFileWanted);
    connect(demo, &StartCard::clicked, this, &FirstStart::demoWanted);
}

} // namespace sealwalk::ui
