// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/background_dialog.h"

#include "core/analysis/background_series.h"
#include "core/exchange/background_file.h"
#include "ui/prepare/shown.h"
#include "ui/render/core_words.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/choose_file.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/moment_field.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/quantity_edit.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 460;
constexpr int kHeight = 420;
constexpr qint64 kLargestFile = 4 << 20; // a day at ten values a second

} // namespace

BackgroundDialog::BackgroundDialog(const model::Setup& setup, QWidget* parent)
    : QDialog(parent)
    , m_setup(setup)
    , m_source(QStringLiteral("typed"))
{
    setObjectName(QStringLiteral("backgroundDialog"));
    setWindowTitle(tr("Background"));
    resize(kWidth, kHeight);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 8, 20, 16);
    column->addWidget(new Heading(
        windowTitle(), tr("as shown, in %1, no helium given").arg(text(displayUnit(setup).symbol)), this));
    QLabel* how = quietLabel(tr("One value a line, or seconds and a value. Twenty values over a minute are "
                                "good practice. Where only "
                                "level and swing can be read: 1e-7\u00A0+-\u2060\u00A0"
                                "2e-8."),
                             this);
    how->setWordWrap(true);
    column->addWidget(how);
    m_values = new QPlainTextEdit(this);
    m_values->setAccessibleName(tr("values"));
    m_values->setTabChangesFocus(true);
    column->addWidget(m_values, 1);
    m_interval = new QuantityEdit(tr("time between values"), readUnit("s").value(), this);
    m_interval->setRange({.above = 0.0});
    m_interval->setSi(3.0);
    auto* file = new QPushButton(tr("From a &file …"), this);
    column->addWidget(formRow(tr("A value every"), {m_interval, file}, this));
    m_measured = new MomentField(tr("when it was measured"), this);
    column->addWidget(formRow(tr("Measured"), {m_measured}, this));
    m_says = makeBelowField(this);
    keepRoom(m_says); // or the buttons move away under the mouse
    column->addWidget(m_says);
    auto* buttons = new QDialogButtonBox(this);
    m_keep = buttons->addButton(tr("Store the background"), QDialogButtonBox::AcceptRole);
    m_keep->setObjectName(QStringLiteral("store"));
    setStyleProperty(m_keep, "kind", QStringLiteral("primary"));
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    column->addWidget(buttons);
    connect(m_values, &QPlainTextEdit::textChanged, this, &BackgroundDialog::read);
    connect(m_interval, &QuantityEdit::edited, this, &BackgroundDialog::read);
    connect(file, &QPushButton::clicked, this, &BackgroundDialog::takeFile);
    connect(buttons, &QDialogButtonBox::accepted, this, &BackgroundDialog::tryAccept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    // Enter is a new line in the list.
    auto* storing = new QShortcut(QKeySequence(QStringLiteral("Ctrl+Return")), this);
    connect(storing, &QShortcut::activated, m_keep, &QPushButton::click);
    m_keep->setToolTip(tr("Ctrl+Enter"));
    m_keep->setEnabled(false);
    m_values->setFocus();
}

void BackgroundDialog::read()
{
    exchange::BackgroundOptions options;
    options.unit = displayUnit(m_setup);
    options.interval = m_interval->si().value_or(1.0);
    options.mark = decimalMark();
    const auto series = exchange::parseBackground(m_values->toPlainText().toStdString(), options);
    m_keep->setEnabled(series.has_value());
    if (!series) {
        showComplaint(m_says, m_values,
                      m_values->toPlainText().trimmed().isEmpty() ? QString()
                                                                  : render::inWords(series.error()));
        return;
    }
    m_watch.times = series->times;
    m_watch.values = series->values;
    m_watch.swing = series->swing;
    m_watch.source = m_source.toStdString();
    m_watch.at = Timestamp::now();
    const auto summary = analysis::summariseBackground(m_watch);
    m_keep->setEnabled(summary.has_value());
    if (!summary)
        showComplaint(m_says, m_values, render::inWords(summary.error()));
    else if (m_watch.swing)
        showHint(m_says, m_values,
                 tr("by eye: level %1, noise %2 (standard deviation: swing / √3)")
                     .arg(plainRate(summary->level, options.unit, m_setup),
                          plainRate(summary->noise, options.unit, m_setup)));
    else
        showHint(m_says, m_values,
                 tr("%n value(s) over %1: level %2, noise %3 (standard deviation)", nullptr,
                    static_cast<int>(summary->count))
                     .arg(secondsText(summary->span), plainRate(summary->level, options.unit, m_setup),
                          plainRate(summary->noise, options.unit, m_setup)));
}

void BackgroundDialog::tryAccept()
{
    m_measured->commit();
    if (m_measured->isWrong()) {
        m_measured->field()->setFocus();
        return;
    }
    m_watch.at = m_measured->moment();
    if (m_measured->isTyped())
        m_watch.source = (m_source.isEmpty() ? std::string("typed") : m_source.toStdString()) + ", " +
                         m_measured->entryWords();
    accept();
}

void BackgroundDialog::takeFile()
{
    const QString name =
        chooseFileToOpen(this, tr("A watched background"), {}, tr("Text (*.csv *.txt);;All files (*)"));
    if (name.isEmpty())
        return;
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        showComplaint(m_says, m_values, tr("%1 cannot be read: %2").arg(name, file.errorString()));
        return;
    }
    if (file.size() > kLargestFile) {
        showComplaint(m_says, m_values,
                      tr("%1 is too long for a background; a few minutes are enough").arg(name));
        return;
    }
    m_source = QFileInfo(name).fileName();
    m_values->setPlainText(QString::fromUtf8(file.readAll()));
}

} // namespace sealwalk::ui
