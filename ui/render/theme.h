// SPDX-License-Identifier: GPL-3.0-or-later
// The look: colours by role, the leak-rate ramp, fonts and spacing, read from the token resource.
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>
#include <QString>

#include <array>
#include <cstddef>

class QApplication;
class QWidget;

namespace sealwalk::render {

enum class ThemeName
{
    Paper, ///< day; prints are always this
    Slate, ///< evening
    Hall,  ///< dim hall
};

/// What a colour is for. Chart colours never mean a verdict.
enum class Role
{
    Window,
    Panel,
    Field,
    Sheet,
    SheetGrid,
    SheetUnder,
    Line,
    Edge,
    Ink,
    InkSoft,
    InkFaint,
    Disabled,
    Accent,
    OnAccent,
    AccentWash,
    Strip,
    OnStrip,
    StripSoft,
    Over,
    Unsure,
    Within,
    OverWash,
    UnsureWash,
    Plate,
    Echo,
    Masked,
    Permeation,
    Void,
    NoAccess,
    Repaired,
    Temporary,
    CallFill,
    OnCall,
    GoFill,
    OnGo,
    Chart1,
    Chart2,
    Chart3,
    Chart4,
    Chart5,
};
inline constexpr std::size_t kRoleCount = static_cast<std::size_t>(Role::Chart5) + 1;

/// Text sizes by use, logical pixels at 100 %.
enum class TextSize
{
    Caption = 11, ///< labels over fields, axis numbers, plate letters
    Text = 12,    ///< tables, notes
    Strong = 13,  ///< table keys, buttons, chosen rows
    Title = 16,   ///< panel heads
    Head = 20,    ///< object name, verdict sentence
    Entry = 40,   ///< typed value
    Call = 104,   ///< called point number
};

enum class Weight
{
    Normal,
    Bold
};

// Spacing, logical pixels.
inline constexpr int kGapHair = 2;
inline constexpr int kGapTight = 4;
inline constexpr int kGapNear = 8;
inline constexpr int kGapApart = 12;
inline constexpr int kGapBlock = 16;
inline constexpr int kGapFar = 24;
inline constexpr int kFieldRadius = 3;
inline constexpr int kTableRow = 24;
inline constexpr int kWalkRow = 34;
inline constexpr int kFormRow = 30;
inline constexpr int kMenuBar = 26;
inline constexpr int kStageStrip = 46;
/// Widths of a page, px, below which it changes its plan: lists become lines, columns fold; parts become
/// tabs.
inline constexpr int kListsNeed = 1180;
inline constexpr int kPartsNeed = 900;
inline constexpr int kNoteLine = 26;

/// One theme. Immutable; the three of them live as long as the program.
class Theme
{
public:
    static const Theme& named(ThemeName name);
    /// The theme a widget paints in: of the nearest ancestor given one by setThemeFor(), else the program's.
    static const Theme& of(const QWidget* widget);
    /// The program's theme; paper before applyTheme().
    static const Theme& current();

    [[nodiscard]] ThemeName name() const { return m_name; }
    [[nodiscard]] QColor colour(Role role) const { return m_colours[static_cast<std::size_t>(role)]; }
    /// Colour of a place on the decade scale, 0 its lower end, 1 its upper; outside: the end colours.
    [[nodiscard]] QColor heat(double position) const;
    /// The palest entry of the ramp: "clear" bands.
    [[nodiscard]] QColor coldest() const { return m_ramp.front(); }
    [[nodiscard]] bool isDark() const { return m_name != ThemeName::Paper; }
    [[nodiscard]] QPalette palette() const;
    /// The application style sheet over the Fusion style.
    [[nodiscard]] QString styleSheet() const;

private:
    explicit Theme(ThemeName name);

    ThemeName m_name;
    std::array<QColor, kRoleCount> m_colours;
    std::array<QColor, 256> m_ramp;
};

/// The family of all text: B612 where it is installed, else the system's sans.
QString fontFamily();
QFont font(TextSize size, Weight weight = Weight::Normal);
/// Any other size, in logical pixels or in units of the paint device.
QFont fontOfPixels(double pixels, Weight weight = Weight::Normal);

/// Makes `name` the program's theme: Fusion, palette, style sheet, font. Call again to switch.
void applyTheme(QApplication& application, ThemeName name);
/// Gives one widget and what is in it a theme of its own ("sheet stays paper").
void setThemeFor(QWidget& widget, ThemeName name);
/// Back to the program's theme.
void clearThemeFor(QWidget& widget);

} // namespace sealwalk::render
