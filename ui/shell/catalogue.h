// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the window in another language.
#pragma once

#include <QTranslator>

namespace sealwalk::ui {

/// Free functions are collected under the namespace and "Class::tr" under the bare class; texts are looked up
/// there too when their own context has none.
class Catalogue : public QTranslator
{
    Q_OBJECT

public:
    using QTranslator::QTranslator;
    [[nodiscard]] QString translate(const char* context, const char* text, const char* comment,
                                    int count) const override;
};

} // namespace sealwalk::ui
