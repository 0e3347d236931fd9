// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/theme.h"

#include "core/base/contract.h"
#include "ui/render/tokens.h"

#include <QApplication>
#include <QJsonArray>
#include <QJsonObject>
#include <QStyle>
#include <QStyleFactory>
#include <QVariant>
#include <QWidget>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

constexpr const char* kThemeProperty = "sealwalkTheme";
constexpr const char* kStyledProperty = "sealwalkStyled";

struct RoleName
{
    Role role;
    const char* name;
};

constexpr std::array<RoleName, kRoleCount> kRoleNames{{
    {Role::Window, "window"},
    {Role::Panel, "panel"},
    {Role::Field, "field"},
    {Role::Sheet, "sheet"},
    {Role::SheetGrid, "sheetGrid"},
    {Role::SheetUnder, "sheetUnder"},
    {Role::Line, "line"},
    {Role::Edge, "edge"},
    {Role::Ink, "ink"},
    {Role::InkSoft, "inkSoft"},
    {Role::InkFaint, "inkFaint"},
    {Role::Disabled, "disabled"},
    {Role::Accent, "accent"},
    {Role::OnAccent, "onAccent"},
    {Role::AccentWash, "accentWash"},
    {Role::Strip, "strip"},
    {Role::OnStrip, "onStrip"},
    {Role::StripSoft, "stripSoft"},
    {Role::Over, "over"},
    {Role::Unsure, "unsure"},
    {Role::Within, "within"},
    {Role::OverWash, "overWash"},
    {Role::UnsureWash, "unsureWash"},
    {Role::Plate, "plate"},
    {Role::Echo, "echo"},
    {Role::Masked, "masked"},
    {Role::Permeation, "permeation"},
    {Role::Void, "void"},
    {Role::NoAccess, "noAccess"},
    {Role::Repaired, "repaired"},
    {Role::Temporary, "temporary"},
    {Role::CallFill, "callFill"},
    {Role::OnCall, "onCall"},
    {Role::GoFill, "goFill"},
    {Role::OnGo, "onGo"},
    {Role::Chart1, "chart1"},
    {Role::Chart2, "chart2"},
    {Role::Chart3, "chart3"},
    {Role::Chart4, "chart4"},
    {Role::Chart5, "chart5"},
}};

QString keyOf(ThemeName name)
{
    switch (name) {
    case ThemeName::Paper:
        return QStringLiteral("paper");
    case ThemeName::Slate:
        return QStringLiteral("slate");
    case ThemeName::Hall:
        return QStringLiteral("hall");
    }
    return QStringLiteral("paper");
}

QVariant ownTheme(const QObject* object)
{
    return object->property(kThemeProperty);
}

} // namespace

Theme::Theme(ThemeName name)
    : m_name(name)
{
    const QJsonObject& all = tokens();
    const QJsonObject own = all[u"themes"].toObject()[keyOf(name)].toObject();
    const QJsonObject colours = own[u"colours"].toObject();
    for (const RoleName& row : kRoleNames) {
        const QColor colour(colours[QLatin1String(row.name)].toString());
        SEALWALK_EXPECT(colour.isValid());
        m_colours[static_cast<std::size_t>(row.role)] = colour;
    }
    const QJsonArray ramp =
        all[u"ramps"].toObject()[own[u"ramp"].toString()].toObject()[u"srgb256"].toArray();
    SEALWALK_EXPECT(ramp.size() == static_cast<qsizetype>(m_ramp.size()));
    for (std::size_t i = 0; i < m_ramp.size(); ++i)
        m_ramp[i] = QColor(ramp[static_cast<qsizetype>(i)].toString());
}

const Theme& Theme::named(ThemeName name)
{
    static const Theme paper(ThemeName::Paper);
    static const Theme slate(ThemeName::Slate);
    static const Theme hall(ThemeName::Hall);
    switch (name) {
    case ThemeName::Paper:
        return paper;
    case ThemeName::Slate:
        return slate;
    case ThemeName::Hall:
        return hall;
    }
    return paper;
}

const Theme& Theme::of(const QWidget* widget)
{
    for (; widget != nullptr; widget = widget->parentWidget())
        if (const QVariant own = ownTheme(widget); own.isValid())
            return named(static_cast<ThemeName>(own.toInt()));
    return current();
}

const Theme& Theme::current()
{
    const QCoreApplication* application = QCoreApplication::instance();
    const QVariant own = application == nullptr ? QVariant() : ownTheme(application);
    return named(own.isValid() ? static_cast<ThemeName>(own.toInt()) : ThemeName::Paper);
}

QColor Theme::heat(double position) const
{
    const double last = static_cast<double>(m_ramp.size() - 1);
    const double index = std::round(std::clamp(position, 0.0, 1.0) * last);
    return m_ramp[static_cast<std::size_t>(index)];
}

void applyTheme(QApplication& application, ThemeName name)
{
    const Theme& theme = Theme::named(name);
    application.setProperty(kThemeProperty, static_cast<int>(name));
    if (!application.property(kStyledProperty).toBool()) {
        application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
        application.setProperty(kStyledProperty, true);
    }
    application.setFont(font(TextSize::Text));
    application.setPalette(theme.palette());
    application.setStyleSheet(theme.styleSheet());
}

void setThemeFor(QWidget& widget, ThemeName name)
{
    widget.setProperty(kThemeProperty, static_cast<int>(name));
    widget.setPalette(Theme::named(name).palette());
    widget.update();
}

void clearThemeFor(QWidget& widget)
{
    widget.setProperty(kThemeProperty, QVariant());
    widget.setPalette(QPalette());
    widget.update();
}

} // namespace sealwalk::render
