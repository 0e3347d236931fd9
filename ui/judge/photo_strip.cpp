// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/photo_strip.h"

#include "ui/render/core_words.h"
#include "ui/render/picture_file.h"
#include "ui/render/theme.h"
#include "ui/session/beside.h"
#include "ui/session/job_session.h"
#include "ui/widgets/choose_file.h"

#include <QApplication>
#include <QBuffer>
#include <QClipboard>
#include <QDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QUrl>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>

namespace sealwalk::ui {

namespace {

constexpr QSize kThumbnail(96, 72);
constexpr double kShareOfScreen = 0.8;
constexpr int kJpegQuality = 88;

/// A photo from the clipboard has no file; it is kept as a JPEG like other photos.
render::PictureFile fromClipboard(const QImage& image)
{
    const int longest = std::max(image.width(), image.height());
    const QImage kept = longest > render::kLongestSide
                            ? image.scaled(render::kLongestSide, render::kLongestSide, Qt::KeepAspectRatio,
                                           Qt::SmoothTransformation)
                            : image;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    kept.convertToFormat(QImage::Format_RGB32).save(&buffer, "JPG", kJpegQuality);
    return {{bytes.begin(), bytes.end()}, "jpg", kept.size()};
}

} // namespace

PhotoStrip::PhotoStrip(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_list(new QListWidget(this))
    , m_remove(new QPushButton(tr("Take out"), this))
    , m_complaint(new QLabel(this))
{
    m_list->setObjectName(QStringLiteral("photos"));
    m_list->setAccessibleName(tr("Photos"));
    m_list->setViewMode(QListView::IconMode);
    m_list->setMovement(QListView::Static);
    m_list->setFlow(QListView::LeftToRight);
    m_list->setWrapping(false);
    m_list->setIconSize(kThumbnail);
    m_list->setFixedHeight(kThumbnail.height() + 36); // the word below a thumbnail included
    m_list->setToolTip(tr("Enter or a double click shows a photo large"));
    m_complaint->setWordWrap(true);
    m_complaint->hide();
    auto* add = new QPushButton(tr("Add photos …"), this);
    auto* paste = new QPushButton(tr("Paste"), this);
    paste->setToolTip(tr("Ctrl+V in the list"));
    m_remove->setEnabled(false);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {add, paste, m_remove}) {
        button->setAutoDefault(false);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(render::kGapTight);
    column->addWidget(m_list);
    column->addLayout(buttons);
    column->addWidget(m_complaint);
    setFocusProxy(m_list);
    connect(add, &QPushButton::clicked, this, &PhotoStrip::choose);
    connect(paste, &QPushButton::clicked, this, &PhotoStrip::paste);
    connect(m_remove, &QPushButton::clicked, this, &PhotoStrip::removeChosen);
    connect(m_list, &QListWidget::itemDoubleClicked, this, &PhotoStrip::lookAtChosen);
    connect(m_list, &QListWidget::itemSelectionChanged, this,
            [this] { m_remove->setEnabled(!m_list->selectedItems().isEmpty()); });
}

void PhotoStrip::setPhotos(const std::vector<std::string>& sha256)
{
    m_list->clear();
    for (const std::string& name : sha256)
        show(name);
}

std::vector<std::string> PhotoStrip::photos() const
{
    std::vector<std::string> names;
    for (int row = 0; row < m_list->count(); ++row)
        names.push_back(m_list->item(row)->data(Qt::UserRole).toString().toStdString());
    return names;
}

void PhotoStrip::choose()
{
    addFiles(
        chooseFilesToOpen(this, tr("Photos"), {},
                          tr("Pictures (*.png *.jpg *.jpeg *.bmp *.gif *.tif *.tiff *.webp *.svg *.pdf)")));
}

void PhotoStrip::addFiles(const QStringList& files)
{
    using Read = Result<render::PictureFile>;
    for (const QString& file : files)
        runBeside<Read>(
            this, [file] { return render::readPicture(file); }, [this](const Read& read) { keep(read); });
}

void PhotoStrip::paste()
{
    const QMimeData* content = QApplication::clipboard()->mimeData();
    if (content != nullptr && content->hasUrls()) {
        QStringList files;
        for (const QUrl& url : content->urls())
            if (url.isLocalFile())
                files << url.toLocalFile();
        addFiles(files);
        return;
    }
    const QImage image = QApplication::clipboard()->image();
    if (image.isNull())
        say({ErrorCode::NotFound, "there is no picture in the clipboard"});
    else
        keep(fromClipboard(image));
}

void PhotoStrip::keep(const Result<render::PictureFile>& picture)
{
    if (!picture)
        return say(picture.error());
    const auto kept = m_session.addPicture(picture->bytes, picture->extension);
    if (!kept)
        return say(kept.error());
    m_complaint->hide();
    const auto known = photos();
    if (std::find(known.begin(), known.end(), *kept) == known.end())
        show(*kept);
}

void PhotoStrip::show(const std::string& sha256)
{
    const QString name = QString::fromStdString(sha256);
    auto* item = new QListWidgetItem(tr("photo %1").arg(m_list->count() + 1), m_list);
    item->setData(Qt::UserRole, name);
    const auto picture = m_session.picture(sha256);
    if (!picture) {
        item->setText(tr("missing"));
        return;
    }
    if (const auto decoded = render::decodePicture(picture->bytes, picture->extension))
        item->setIcon(QPixmap::fromImage(decoded->image.scaled(
            kThumbnail * devicePixelRatioF(), Qt::KeepAspectRatio, Qt::SmoothTransformation)));
}

void PhotoStrip::removeChosen()
{
    qDeleteAll(m_list->selectedItems());
}

/// A thumbnail shows that there is a photo; this shows what is on it.
void PhotoStrip::lookAtChosen()
{
    const QListWidgetItem* item = m_list->currentItem();
    const auto picture = item == nullptr
                             ? Result<model::Picture>(fail(ErrorCode::NotFound, "no photo is chosen"))
                             : m_session.picture(item->data(Qt::UserRole).toString().toStdString());
    if (!picture)
        return say(picture.error());
    const auto decoded = render::decodePicture(picture->bytes, picture->extension);
    if (!decoded)
        return say(decoded.error());
    QDialog large(this);
    large.setWindowTitle(item->text());
    auto* label = new QLabel(&large);
    label->setAccessibleName(item->text());
    const QSize room = screen()->availableSize() * kShareOfScreen;
    QPixmap shown = QPixmap::fromImage(
        decoded->image.scaled(room * devicePixelRatioF(), Qt::KeepAspectRatio, Qt::SmoothTransformation));
    shown.setDevicePixelRatio(devicePixelRatioF());
    label->setPixmap(shown);
    auto* column = new QVBoxLayout(&large);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(label);
    large.exec();
}

void PhotoStrip::say(const Error& error)
{
    m_complaint->setText(render::inWords(error));
    m_complaint->show();
}

void PhotoStrip::keyPressEvent(QKeyEvent* event)
{
    if (event->matches(QKeySequence::Paste))
        paste();
    else if (event->key() == Qt::Key_Delete)
        removeChosen();
    else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && m_list->hasFocus() &&
             m_list->currentItem() != nullptr)
        lookAtChosen(); // and the dialog around stays open
    else
        QWidget::keyPressEvent(event);
}

} // namespace sealwalk::ui
