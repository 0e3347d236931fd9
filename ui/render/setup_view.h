// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up's schematic as a picture in the window; as high as its words need at the width it has.
#pragma once

#include "core/report/setup_sketch.h"

#include <QWidget>

namespace sealwalk::render {

class SetupView : public QWidget
{
    Q_OBJECT

public:
    explicit SetupView(QWidget* parent = nullptr);
    void setSketch(report::SetupSketch sketch);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    report::SetupSketch m_sketch;
};

} // namespace sealwalk::render
