// SPDX-License-Identifier: GPL-3.0-or-later
// A label with links that stay readable when the theme changes: QLabel takes the colour of a link once, when
// it reads its text.
#pragma once

#include <QEvent>
#include <QLabel>

namespace sealwalk::ui {

class LinkLabel : public QLabel
{
public:
    using QLabel::QLabel;

protected:
    void changeEvent(QEvent* event) override
    {
        QLabel::changeEvent(event);
        if (event->type() != QEvent::PaletteChange)
            return;
        const QString words = text();
        clear(); // the same text again would not be read
        setText(words);
    }
};

} // namespace sealwalk::ui
