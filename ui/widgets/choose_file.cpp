// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/choose_file.h"

#include <QAbstractFileIconProvider>
#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QStyle>

namespace sealwalk::ui {

namespace {

/// Qt's own tells what a file is by reading its first bytes.
class ByNameOnly : public QAbstractFileIconProvider
{
public:
    [[nodiscard]] QIcon icon(IconType type) const override
    {
        return QApplication::style()->standardIcon(type == Folder ? QStyle::SP_DirIcon
                                                   : type == File ? QStyle::SP_FileIcon
                                                                  : QStyle::SP_DriveHDIcon);
    }
    [[nodiscard]] QIcon icon(const QFileInfo& info) const override
    {
        return icon(info.isDir() ? Folder : File);
    }
    [[nodiscard]] QString type(const QFileInfo& info) const override
    {
        return info.isDir() ? QFileDialog::tr("Folder") : info.suffix();
    }
};

QStringList choose(QFileDialog& dialog, const QString& place)
{
    static ByNameOnly byName;                           // dialogs do not own it
    dialog.setOption(QFileDialog::DontUseNativeDialog); // others may look into files as well
    dialog.setOption(QFileDialog::DontUseCustomDirectoryIcons);
    dialog.setIconProvider(&byName);
    const QFileInfo at(place);
    if (at.isDir()) {
        dialog.setDirectory(place);
    } else if (!place.isEmpty()) {
        dialog.setDirectory(at.absolutePath());
        dialog.selectFile(at.fileName());
    }
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles() : QStringList();
}

} // namespace

QString chooseFileToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter)
{
    QFileDialog dialog(parent, title, {}, filter);
    dialog.setFileMode(QFileDialog::ExistingFile);
    return choose(dialog, folder).value(0);
}

QStringList chooseFilesToOpen(QWidget* parent, const QString& title, const QString& folder,
                              const QString& filter)
{
    QFileDialog dialog(parent, title, {}, filter);
    dialog.setFileMode(QFileDialog::ExistingFiles);
    return choose(dialog, folder);
}

QString chooseFileToWrite(QWidget* parent, const QString& title, const QString& proposed,
                          const QString& filter, QString* chosen, const QMap<QString, QString>& names)
{
    QFileDialog dialog(parent, title, {}, filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    QString given = QFileInfo(proposed).fileName();
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&](const QString& form) {
        const QString named = QFileInfo(dialog.selectedFiles().value(0)).fileName();
        if (!names.contains(form) || named != given)
            return;
        given = names.value(form);
        dialog.selectFile(given);
    });
    QString file = choose(dialog, proposed).value(0);
    if (chosen != nullptr)
        *chosen = dialog.selectedNameFilter();
    return file;
}

} // namespace sealwalk::ui
