// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/feed/feed_dialog.h"

#include "core/feed/line_reader.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/rate_text.h"
#include "ui/feed/feed_profiles.h"
#include "ui/feed/feed_session.h"
#include "ui/feed/feed_words.h"
#include "ui/feed/format_form.h"
#include "ui/feed/source_form.h"
#include "ui/render/core_words.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/fit_screen.h"
#include "ui/widgets/heading.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 940;
constexpr int kHeight = 480;
constexpr int kFormWidth = 430;
constexpr int kRow = 26;
constexpr int kLookEvery = 100; // ms

/// The same port or pipe, which can have only one reader.
bool isSamePlace(const feed::FeedSource& a, const feed::FeedSource& b)
{
    if (a.kind != b.kind)
        return false;
    if (a.kind == feed::SourceKind::Serial)
        return a.device == b.device;
    return a.kind == feed::SourceKind::Pipe && a.path == b.path;
}

QString readAs(const feed::FeedLine& line, const feed::LineReader& reader, const FlowBasis& basis)
{
    if (!line.isWhole)
        return FeedDialog::tr("refused: too long, or cut off");
    const auto value = reader.read(line.text);
    if (!value)
        return FeedDialog::tr("refused: %1").arg(render::inWords(value.error()));
    const auto unit = leakRateUnit(reader.format().unit);
    const auto number = unit ? numberIn(value->rate, *unit, basis) : Result<double>(fail({}));
    return number ? render::inFigures(report::screenRate(*number, 3) + " " + unitOf(*unit).symbol)
                  : QString();
}

} // namespace

FeedDialog::FeedDialog(FeedSession& feed, QSettings& settings, QWidget* parent)
    : QDialog(parent)
    , m_feed(feed)
    , m_settings(settings)
    , m_profiles(loadProfiles(settings))
    , m_before(feed.profile())
    , m_wasOn(feed.isOn())
{
    setObjectName(QStringLiteral("feedDialog"));
    setWindowTitle(tr("Detector feed"));
    // On a small or much enlarged screen what comes stands below how it is read.
    const bool isNarrow = roomOn(*this).width() < kWidth;
    setMinimumSize(isNarrow ? kFormWidth : kWidth, kHeight);
    auto* halves = new QBoxLayout(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    halves->setSpacing(24);
    halves->addWidget(makeForms());
    halves->addWidget(makePreview(), 1);
    m_says = makeBelowField(this);
    auto* buttons = new QDialogButtonBox(this);
    m_use = buttons->addButton(tr("&Use this feed"), QDialogButtonBox::AcceptRole);
    m_use->setObjectName(QStringLiteral("use"));
    setStyleProperty(m_use, "kind", QStringLiteral("primary"));
    m_off = buttons->addButton(tr("Turn the feed o&ff"), QDialogButtonBox::ActionRole);
    m_off->setObjectName(QStringLiteral("off"));
    m_off->setEnabled(m_wasOn);
    m_remove = buttons->addButton(tr("Forg&et this feed"), QDialogButtonBox::ActionRole);
    m_remove->setObjectName(QStringLiteral("forget"));
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 8, 20, 16);
    column->addWidget(new Heading(windowTitle(), tr("lines of text with a value in each"), this));
    column->addLayout(halves, 1);
    column->addWidget(m_says);
    column->addWidget(buttons);

    connect(m_known, &QComboBox::activated, this, [this](int index) {
        showProfile(index > 0 ? m_profiles[static_cast<std::size_t>(index - 1)] : feed::FeedProfile());
    });
    connect(m_name, &QLineEdit::textChanged, this, &FeedDialog::refresh);
    connect(m_source, &SourceForm::changed, this, &FeedDialog::refresh);
    connect(m_format, &FormatForm::changed, this, &FeedDialog::refresh);
    connect(m_listen, &QPushButton::clicked, this, &FeedDialog::listen);
    connect(m_use, &QPushButton::clicked, this, &FeedDialog::use);
    connect(m_off, &QPushButton::clicked, this, &FeedDialog::turnOff);
    connect(m_remove, &QPushButton::clicked, this, &FeedDialog::remove);
    connect(buttons, &QDialogButtonBox::rejected, this, &FeedDialog::reject);
    connect(&m_look, &QTimer::timeout, this, &FeedDialog::refresh);
    m_look.start(kLookEvery);
    fillNames();
    showProfile(m_wasOn ? m_before : m_profiles.empty() ? feed::FeedProfile() : m_profiles.front());
    m_name->setFocus();
}

FeedDialog::~FeedDialog() = default;

QWidget* FeedDialog::makeForms()
{
    auto* forms = new QWidget(this);
    forms->setFixedWidth(kFormWidth);
    m_known = new QComboBox(forms);
    m_known->setAccessibleName(tr("known feeds"));
    m_known->setObjectName(QStringLiteral("known"));
    m_name = new QLineEdit(forms);
    m_name->setAccessibleName(tr("name of the feed"));
    m_name->setObjectName(QStringLiteral("name"));
    m_name->setPlaceholderText(tr("the detector's name"));
    m_source = new SourceForm(forms);
    m_format = new FormatForm(forms);
    auto* column = new QVBoxLayout(forms);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(formRow(tr("&Known feeds"), {m_known}, forms));
    column->addWidget(formRow(tr("&Name"), {m_name}, forms));
    column->addSpacing(8);
    column->addWidget(m_source);
    column->addSpacing(8);
    column->addWidget(m_format);
    column->addStretch();
    return forms;
}

QWidget* FeedDialog::makePreview()
{
    auto* preview = new QWidget(this);
    m_listen = new QPushButton(tr("&Listen"), preview);
    m_listen->setObjectName(QStringLiteral("listen"));
    m_state = quietLabel({}, preview);
    m_state->setWordWrap(true);
    m_state->setObjectName(QStringLiteral("previewState"));
    m_lines = new QTableWidget(0, 2, preview);
    m_lines->setAccessibleName(tr("last lines and what they are read as"));
    m_lines->setObjectName(QStringLiteral("lines"));
    m_lines->setHorizontalHeaderLabels({tr("as it came"), tr("read as")});
    m_lines->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_lines->verticalHeader()->hide();
    m_lines->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_lines->verticalHeader()->setDefaultSectionSize(kRow);
    m_lines->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_lines->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_lines->setTabKeyNavigation(false);
    auto* head = new QHBoxLayout;
    head->addWidget(m_listen);
    head->addWidget(m_state, 1);
    auto* column = new QVBoxLayout(preview);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(head);
    column->addWidget(m_lines, 1);
    return preview;
}

void FeedDialog::fillNames()
{
    m_known->clear();
    m_known->addItem(tr("a new one"));
    for (const feed::FeedProfile& profile : m_profiles)
        m_known->addItem(QString::fromStdString(profile.name));
}

void FeedDialog::showProfile(const feed::FeedProfile& profile)
{
    const auto known = std::find(m_profiles.begin(), m_profiles.end(), profile);
    m_known->setCurrentIndex(known == m_profiles.end() ? 0
                                                       : 1 + static_cast<int>(known - m_profiles.begin()));
    m_name->setText(QString::fromStdString(profile.name));
    m_source->setSource(profile.source);
    m_format->setFormat(profile.format);
    refresh();
}

feed::FeedProfile FeedDialog::profile() const
{
    return {m_name->text().trimmed().toStdString(), m_source->source(), m_format->format()};
}

const FeedSession* FeedDialog::listened() const
{
    if (m_preview)
        return m_preview.get();
    return m_feed.isOn() && m_feed.profile().source == m_source->source() ? &m_feed : nullptr;
}

void FeedDialog::listen()
{
    feed::FeedProfile wanted = profile();
    if (const Status source = feed::checkSource(wanted.source); !source) {
        showComplaint(m_says, m_source, render::inWords(source.error()));
        return;
    }
    if (m_feed.isOn() && isSamePlace(m_feed.profile().source, wanted.source)) {
        m_feed.stop();
        m_paused = true;
    }
    if (!m_preview)
        m_preview = std::make_unique<FeedSession>();
    m_preview->start(wanted);
    refresh();
}

void FeedDialog::use()
{
    const feed::FeedProfile wanted = profile();
    if (const Status good = feed::checkProfile(wanted); !good) {
        showComplaint(m_says, wanted.name.empty() ? static_cast<QWidget*>(m_name) : m_format,
                      render::inWords(good.error()));
        return;
    }
    const auto known =
        std::find_if(m_profiles.begin(), m_profiles.end(),
                     [&](const feed::FeedProfile& profile) { return profile.name == wanted.name; });
    if (known == m_profiles.end())
        m_profiles.push_back(wanted);
    else
        *known = wanted;
    saveProfiles(m_settings, m_profiles);
    rememberUsedProfile(m_settings, m_name->text().trimmed());
    m_preview.reset();
    // One that runs just so is not interrupted.
    if (!m_feed.isOn() || m_feed.profile() != wanted || m_feed.state() == FeedSession::State::Ended)
        m_feed.start(wanted);
    accept();
}

void FeedDialog::turnOff()
{
    m_preview.reset();
    m_feed.stop();
    rememberUsedProfile(m_settings, {});
    accept();
}

void FeedDialog::remove()
{
    const std::string name = m_name->text().trimmed().toStdString();
    const auto gone = std::remove_if(m_profiles.begin(), m_profiles.end(),
                                     [&](const feed::FeedProfile& profile) { return profile.name == name; });
    m_profiles.erase(gone, m_profiles.end());
    saveProfiles(m_settings, m_profiles);
    fillNames();
    showProfile({});
}

void FeedDialog::reject()
{
    m_preview.reset();
    if (m_paused)
        m_feed.start(m_before);
    QDialog::reject();
}

void FeedDialog::refresh()
{
    const feed::FeedProfile wanted = profile();
    const Status format = feed::checkFormat(wanted.format);
    showComplaint(m_says, m_format, format ? QString() : render::inWords(format.error()));
    m_remove->setEnabled(std::any_of(m_profiles.begin(), m_profiles.end(),
                                     [&](const auto& profile) { return profile.name == wanted.name; }));
    // Lines of another source than the one shown would mislead.
    if (m_preview && m_preview->profile().source != wanted.source)
        m_preview.reset();
    const FeedSession* session = listened();
    if (session == nullptr) {
        m_state->setText(tr("Listen shows what comes."));
        m_lines->setRowCount(0);
        return;
    }
    m_state->setText(session->fault().isEmpty()
                         ? feedStateText(*session)
                         : feedStateText(*session) + QStringLiteral(": ") + session->fault());
    const feed::LineReader reader(wanted.format, m_feed.basis());
    const auto& lines = session->recentLines();
    m_lines->setRowCount(static_cast<int>(lines.size()));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const int row = static_cast<int>(i);
        const QString texts[] = {QString::fromStdString(lines[i].text),
                                 readAs(lines[i], reader, m_feed.basis())};
        for (int cell = 0; cell < 2; ++cell) {
            if (m_lines->item(row, cell) == nullptr)
                m_lines->setItem(row, cell, new QTableWidgetItem);
            QTableWidgetItem* item = m_lines->item(row, cell);
            if (item->text() != texts[cell]) {
                item->setText(texts[cell]);
                item->setToolTip(texts[cell]);
            }
        }
    }
}

} // namespace sealwalk::ui
