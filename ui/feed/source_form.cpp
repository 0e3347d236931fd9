// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/source_form.h"

#include "ui/widgets/choose_file.h"
#include "ui/widgets/heading.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSerialPortInfo>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kBauds[] = {1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};

template <class Box>
Box* named(Box* box, const QString& name, const char* object)
{
    box->setAccessibleName(name);
    box->setObjectName(QLatin1String(object));
    return box;
}

QVBoxLayout* column(QWidget* page)
{
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    return layout;
}

void choose(QComboBox* box, const QVariant& data)
{
    box->setCurrentIndex(std::max(0, box->findData(data)));
}

} // namespace

SourceForm::SourceForm(QWidget* parent)
    : QWidget(parent)
    , m_kind(named(new QComboBox(this), tr("kind of source"), "sourceKind"))
    , m_pages(new QStackedWidget(this))
{
    m_kind->addItem(tr("serial port"));
    m_kind->addItem(tr("network address"));
    m_kind->addItem(tr("named pipe"));
    m_kind->addItem(tr("recorded file"));
    for (QWidget* page : {makeSerial(), makeTcp(), makePipe(), makeFile()})
        m_pages->addWidget(page);
    auto* layout = column(this);
    layout->addWidget(formRow(tr("&Source"), {m_kind}, this));
    layout->addWidget(m_pages);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &SourceForm::showPage);
    for (QComboBox* box : findChildren<QComboBox*>())
        connect(box, &QComboBox::currentTextChanged, this, &SourceForm::changed);
    for (QLineEdit* field : {m_host, m_pipe, m_file})
        connect(field, &QLineEdit::textChanged, this, &SourceForm::changed);
    connect(m_port, &QSpinBox::valueChanged, this, &SourceForm::changed);
    for (QAbstractSpinBox* box : findChildren<QAbstractSpinBox*>())
        box->setButtonSymbols(QAbstractSpinBox::NoButtons); // Up and Down step; typing is quicker
    showPage(0);
    for (QDoubleSpinBox* box : {m_speed, m_pace})
        connect(box, &QDoubleSpinBox::valueChanged, this, &SourceForm::changed);
}

/// A page takes the room it needs, not that of the largest.
void SourceForm::showPage(int index)
{
    for (int i = 0; i < m_pages->count(); ++i)
        m_pages->widget(i)->setSizePolicy(QSizePolicy::Preferred,
                                          i == index ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    m_pages->setCurrentIndex(index);
    m_pages->setMaximumHeight(m_pages->widget(index)->sizeHint().height());
}

QWidget* SourceForm::makeSerial()
{
    auto* page = new QWidget(m_pages);
    m_device = named(new QComboBox(page), tr("serial port"), "device");
    m_device->setEditable(true);
    for (const QSerialPortInfo& info : QSerialPortInfo::availablePorts())
        m_device->addItem(info.portName());
    m_baud = named(new QComboBox(page), tr("baud"), "baud");
    m_baud->setEditable(true);
    for (const int baud : kBauds)
        m_baud->addItem(QString::number(baud));
    m_bits = named(new QComboBox(page), tr("data bits"), "dataBits");
    for (const int bits : {8, 7, 6, 5})
        m_bits->addItem(tr("%1 bits").arg(bits), bits);
    m_parity = named(new QComboBox(page), tr("parity"), "parity");
    m_parity->addItem(tr("no parity"), static_cast<int>(feed::Parity::None));
    m_parity->addItem(tr("even"), static_cast<int>(feed::Parity::Even));
    m_parity->addItem(tr("odd"), static_cast<int>(feed::Parity::Odd));
    m_stop = named(new QComboBox(page), tr("stop bits"), "stopBits");
    m_stop->addItem(tr("1 stop bit"), 1);
    m_stop->addItem(tr("2 stop bits"), 2);
    auto* layout = column(page);
    layout->addWidget(formRow(tr("&Port"), {m_device}, page));
    layout->addWidget(formRow(tr("&Baud"), {m_baud}, page));
    layout->addWidget(formRow(tr("Frame"), {m_bits, m_parity, m_stop}, page));
    layout->addStretch();
    return page;
}

QWidget* SourceForm::makeTcp()
{
    auto* page = new QWidget(m_pages);
    m_host = named(new QLineEdit(page), tr("network address"), "host");
    m_host->setPlaceholderText(QStringLiteral("192.0.2.7"));
    m_port = named(new QSpinBox(page), tr("port of the network address"), "port");
    m_port->setRange(0, 65535);
    auto* layout = column(page);
    layout->addWidget(formRow(tr("&Address"), {m_host}, page));
    layout->addWidget(formRow(tr("&Port"), {m_port}, page));
    layout->addStretch();
    return page;
}

QWidget* SourceForm::withBrowse(QLineEdit* field, const QString& title)
{
    auto* browse = new QPushButton(tr("&Choose …"), field->parentWidget());
    connect(browse, &QPushButton::clicked, this, [this, field, title] {
        if (const QString name = chooseFileToOpen(this, title); !name.isEmpty())
            field->setText(name);
    });
    return browse;
}

QWidget* SourceForm::makePipe()
{
    auto* page = new QWidget(m_pages);
    m_pipe = named(new QLineEdit(page), tr("named pipe"), "pipe");
    m_pipe->setPlaceholderText(QStringLiteral("/tmp/detector"));
    auto* layout = column(page);
    layout->addWidget(formRow(tr("&Pipe"), {m_pipe, withBrowse(m_pipe, tr("The pipe"))}, page));
    layout->addStretch();
    return page;
}

QWidget* SourceForm::makeFile()
{
    auto* page = new QWidget(m_pages);
    m_file = named(new QLineEdit(page), tr("recorded file"), "file");
    m_speed = named(new QDoubleSpinBox(page), tr("times as fast as recorded"), "speed");
    m_speed->setRange(0.1, feed::kFastestPlayback);
    m_speed->setDecimals(1);
    m_speed->setPrefix(QStringLiteral("× "));
    m_pace = named(new QDoubleSpinBox(page), tr("lines per second, when the file has no times"), "pace");
    m_pace->setRange(0.1, 1000.0);
    m_pace->setDecimals(1);
    auto* layout = column(page);
    layout->addWidget(formRow(tr("F&ile"), {m_file, withBrowse(m_file, tr("A recorded feed"))}, page));
    layout->addWidget(formRow(tr("Played"), {m_speed}, page));
    layout->addWidget(formRow(tr("Without times"), {m_pace, quietLabel(tr("lines per second"), page)}, page));
    layout->addStretch();
    return page;
}

void SourceForm::setSource(const feed::FeedSource& source)
{
    {
        const QSignalBlocker quiet(this);
        m_kind->setCurrentIndex(static_cast<int>(source.kind));
        m_device->setCurrentText(QString::fromStdString(source.device));
        m_baud->setCurrentText(QString::number(source.baud));
        choose(m_bits, source.dataBits);
        choose(m_parity, static_cast<int>(source.parity));
        choose(m_stop, source.stopBits);
        m_host->setText(QString::fromStdString(source.host));
        m_port->setValue(source.port);
        const QString path = QString::fromStdString(source.path);
        m_pipe->setText(source.kind == feed::SourceKind::Pipe ? path : QString());
        m_file->setText(source.kind == feed::SourceKind::File ? path : QString());
        m_speed->setValue(source.speed);
        m_pace->setValue(source.linesPerSecond);
    }
    emit changed();
}

feed::FeedSource SourceForm::source() const
{
    feed::FeedSource source;
    source.kind = static_cast<feed::SourceKind>(m_kind->currentIndex());
    switch (source.kind) {
    case feed::SourceKind::Serial:
        source.device = m_device->currentText().trimmed().toStdString();
        source.baud = m_baud->currentText().toInt();
        source.dataBits = m_bits->currentData().toInt();
        source.parity = static_cast<feed::Parity>(m_parity->currentData().toInt());
        source.stopBits = m_stop->currentData().toInt();
        break;
    case feed::SourceKind::Tcp:
        source.host = m_host->text().trimmed().toStdString();
        source.port = m_port->value();
        break;
    case feed::SourceKind::Pipe:
        source.path = m_pipe->text().trimmed().toStdString();
        break;
    case feed::SourceKind::File:
        source.path = m_file->text().trimmed().toStdString();
        source.speed = m_speed->value();
        source.linesPerSecond = m_pace->value();
        break;
    }
    return source;
}

} // namespace sealwalk::ui
