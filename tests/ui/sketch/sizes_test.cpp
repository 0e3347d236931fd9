// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/number_field.h"
#include "ui/sketch/sheet_view.h"
#include "ui/sketch/sizes.h"

#include <gtest/gtest.h>

namespace sealwalk::ui {
namespace {

void type(SizeEntry& entry, const char* text)
{
    for (const char* c = text; *c != 0; ++c)
        entry.type(QLatin1Char(*c));
}

TEST(SizeEntry, TakesTypedSizesAndKeepsTheOthers)
{
    const geometry::RoundedRectangle box{{0.0, 0.0}, 200.0, 100.0, 20.0, 0.0};
    const std::vector<Size> sizes = sizesOf(box);
    SizeEntry entry;
    entry.begin(sizes.size(), 0);
    type(entry, "860");
    entry.next(1);
    entry.next(1);
    type(entry, "1,5");
    EXPECT_EQ(*entry.values(sizes), (std::vector<double>{860.0, 100.0, 1.5}));
    entry.next(1); // round to the first
    entry.erase();
    EXPECT_EQ(entry.text(0), QStringLiteral("86"));
    entry.next(-1);
    type(entry, "..");
    EXPECT_EQ(entry.text(2), QStringLiteral("1.5")) << "a second decimal mark is ignored";
}

TEST(Sizes, ACornerThatNoLongerFitsGivesWayUnlessItWasTyped)
{
    const geometry::RoundedRectangle box{{0.0, 0.0}, 200.0, 100.0, 40.0, 0.0};
    EXPECT_EQ(std::get<geometry::RoundedRectangle>(withSizes(box, {200.0, 50.0, 40.0}, false)).cornerRadius,
              25.0);
    EXPECT_FALSE(geometry::complaint(withSizes(box, {200.0, 50.0, 40.0}, true)).empty());
}

TEST(ReadNumber, TakesCommaPointAndTrueMinusAndNothingElse)
{
    EXPECT_EQ(readNumber(QStringLiteral("12,5")), 12.5);
    EXPECT_EQ(readNumber(QStringLiteral(" 12.5 ")), 12.5);
    EXPECT_EQ(readNumber(QStringLiteral("−3")), -3.0);
    for (const char* bad : {"", "x", "1 2", "nan", "inf", "1e999", "12 mm"})
        EXPECT_FALSE(readNumber(QString::fromUtf8(bad)).has_value()) << bad;
}

TEST(PlainNumber, WritesWhatOneWouldType)
{
    EXPECT_EQ(plainNumber(1200.0), QStringLiteral("1200"));
    EXPECT_EQ(plainNumber(12.5), QStringLiteral("12.5"));
    EXPECT_EQ(plainNumber(0.0), QStringLiteral("0"));
    EXPECT_EQ(plainNumber(0.1 + 0.2), QStringLiteral("0.3"));
}

// Property: what is under the hand stays there when zooming, at every step within the bounds.
TEST(SheetView, ZoomsAboutThePlaceUnderTheHand)
{
    SheetView view;
    const QPointF at(123.0, 456.0);
    for (const double factor : {1.3, 1.3, 0.2, 50.0, 1e6, 1e-9}) {
        const geometry::Point under = view.toSheet(at);
        view.zoomAt(at, factor);
        EXPECT_NEAR(geometry::distance(view.toSheet(at), under), 0.0, 1e-6 / view.scale());
        EXPECT_GE(view.scale(), SheetView::kLeastScale);
        EXPECT_LE(view.scale(), SheetView::kMostScale);
    }
    geometry::Box box;
    box.add(geometry::Point{-300.0, -100.0});
    box.add(geometry::Point{500.0, 700.0});
    view.fit(box, {20.0, 10.0, 400.0, 300.0});
    EXPECT_NEAR(view.toScreen(box.centre()).x(), 220.0, 1e-9);
    EXPECT_NEAR(view.toScreen({-300.0, 700.0}).y(), 10.0, 1e-9);
}

} // namespace
} // namespace sealwalk::ui
