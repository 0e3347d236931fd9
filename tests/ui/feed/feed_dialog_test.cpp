// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up dialog driven through its fields.
#include "tests/ui/feed/longest_gap.h"
#include "ui/feed/feed_dialog.h"
#include "ui/feed/feed_profiles.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSettings>
#include <QSpinBox>
#include <QTableWidget>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QTest>

namespace sealwalk::tests {
namespace {

using ui::FeedDialog;
using ui::FeedSession;

class Dialog : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(server.listen(QHostAddress::LocalHost));
        feed.setPatience(impatient());
        open();
    }

    void open()
    {
        dialog = std::make_unique<FeedDialog>(feed, settings);
        dialog->show();
    }

    template <class Widget>
    [[nodiscard]] Widget* find(const char* name) const
    {
        auto* widget = dialog->findChild<Widget*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    void press(const char* name) const { find<QAbstractButton>(name)->click(); }
    void describeServer()
    {
        find<QLineEdit>("name")->setText(QStringLiteral("bench detector"));
        find<QComboBox>("sourceKind")->setCurrentIndex(1);
        find<QLineEdit>("host")->setText(QStringLiteral("127.0.0.1"));
        find<QSpinBox>("port")->setValue(server.serverPort());
    }
    QTcpSocket* accepted()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return server.hasPendingConnections(); }));
        QTcpSocket* peer = server.nextPendingConnection();
        peer->write("7\n"); // the end of a line that began before
        return peer;
    }
    [[nodiscard]] QString cell(int row, int column) const
    {
        const QTableWidgetItem* item = find<QTableWidget>("lines")->item(row, column);
        return item == nullptr ? QString() : item->text();
    }
    bool showsRows(int rows) const
    {
        return QTest::qWaitFor([&] { return find<QTableWidget>("lines")->rowCount() == rows; });
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("window.ini")), QSettings::IniFormat};
    QTcpServer server;
    FeedSession feed;
    std::unique_ptr<FeedDialog> dialog;
};

// The whole way: describe, listen, mend the reading while lines come, use it, find it again next time.
TEST_F(Dialog, SetsUpAFeedWithALivePreview)
{
    describeServer();
    press("listen");
    QTcpSocket* peer = accepted();
    peer->write("now 2.9e-4 mbar*l/s\nERROR\n");
    ASSERT_TRUE(showsRows(2));
    EXPECT_EQ(cell(0, 0), QStringLiteral("now 2.9e-4 mbar*l/s"));
    EXPECT_TRUE(cell(0, 1).startsWith(QStringLiteral("refused"))) << cell(0, 1).toStdString();
    find<QSpinBox>("column")->setValue(2);
    EXPECT_TRUE(cell(0, 1).contains(QStringLiteral("mbar"))) << cell(0, 1).toStdString();
    EXPECT_TRUE(cell(1, 1).contains(QStringLiteral("no column 2"))) << cell(1, 1).toStdString();
    find<QComboBox>("where")->setCurrentIndex(1);
    find<QLineEdit>("pattern")->setText(QStringLiteral("now # mbar*"));
    EXPECT_TRUE(cell(0, 1).contains(QStringLiteral("2.90e"))) << cell(0, 1).toStdString();
    EXPECT_FALSE(feed.isOn()) << "listening is not yet using";

    press("use");
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
    accepted()->write("now 1.5e-9 mbar*l/s\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return feed.isLive(); }));
    EXPECT_NEAR(traced(feed).back(), 1.5e-9, 1e-15);
    ASSERT_TRUE(ui::lastUsedProfile(settings));
    EXPECT_EQ(*ui::lastUsedProfile(settings), feed.profile());

    open(); // the running feed's lines are shown without asking
    EXPECT_EQ(dialog->profile(), feed.profile());
    ASSERT_TRUE(showsRows(1));
    press("use");
    EXPECT_FALSE(server.waitForNewConnection(100)) << "one that runs just so is not interrupted";
    open();
    press("off");
    EXPECT_FALSE(feed.isOn());
    EXPECT_FALSE(ui::lastUsedProfile(settings));
    EXPECT_EQ(ui::loadProfiles(settings).size(), 1u) << "off is not forgotten";
    open();
    press("forget");
    EXPECT_TRUE(ui::loadProfiles(settings).empty());
}

// Regression: where decimals have a comma, a kept profile was shown with points and could not be used again.
TEST_F(Dialog, AKeptProfileCanBeUsedAgainWithADecimalComma)
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    describeServer();
    find<QComboBox>("meaning")->setCurrentIndex(2);
    find<QLineEdit>("decades")->setText(QStringLiteral("1,125"));
    find<QLineEdit>("zero")->setText(QStringLiteral("-11,5"));
    press("use");
    ASSERT_EQ(dialog->result(), QDialog::Accepted);
    EXPECT_EQ(feed.profile().format.decadesPerVolt, 1.125);
    open();
    EXPECT_EQ(find<QLineEdit>("decades")->text(), QStringLiteral("1,125"));
    EXPECT_EQ(dialog->profile(), feed.profile());
    press("use");
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
    QLocale::setDefault(before);
}

// Property: nothing that cannot be right is taken; the sentence stands under the fields.
TEST_F(Dialog, SaysWhatIsMissing)
{
    press("use");
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_FALSE(feed.isOn());
    find<QComboBox>("where")->setCurrentIndex(1);
    find<QLineEdit>("pattern")->setText(QStringLiteral("now"));
    bool said = false;
    for (const QLabel* label : dialog->findChildren<QLabel*>())
        said = said || label->text().contains(QStringLiteral("one #"));
    EXPECT_TRUE(said);
    describeServer();
    press("use");
    EXPECT_TRUE(dialog->isVisible());
}

// Property: Cancel leaves the running feed as it was.
TEST_F(Dialog, CancelChangesNothing)
{
    describeServer();
    press("use");
    accepted()->write("1e-9\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return feed.isLive(); }));
    const feed::FeedProfile before = feed.profile();
    open();
    find<QSpinBox>("port")->setValue(1);
    press("listen");
    QTest::qWait(50);
    dialog->reject();
    EXPECT_EQ(feed.profile(), before);
    EXPECT_TRUE(feed.isLive());
    EXPECT_EQ(*ui::lastUsedProfile(settings), before);
}

// Property: every field that can be reached by keyboard has a name for the screen reader.
TEST_F(Dialog, EveryControlHasAName)
{
    int fields = 0;
    for (QWidget* widget : dialog->findChildren<QWidget*>()) {
        const bool isPart = widget->window() != dialog.get() || // a list that drops down
                            widget->objectName().startsWith(QStringLiteral("qt_")) ||
                            qobject_cast<QAbstractItemView*>(widget->parentWidget()) != nullptr;
        if (widget->focusPolicy() == Qt::NoFocus || isPart)
            continue;
        QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(accessible, nullptr);
        const bool named = !accessible->text(QAccessible::Name).isEmpty();
        const QWidget* parent = widget->parentWidget(); // the inner field of a combo or spin box
        EXPECT_TRUE(named || (parent != nullptr && !parent->accessibleName().isEmpty()))
            << widget->metaObject()->className() << " " << widget->objectName().toStdString();
        ++fields;
    }
    EXPECT_GT(fields, 20);
}

// Property: every kind of profile comes back from the settings as it was.
TEST(FeedProfiles, ComeBackFromSettings)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("window.ini"));
    std::vector<feed::FeedProfile> profiles;
    feed::FeedProfile profile = plainProfile(feed::SourceKind::Serial);
    profile.name = "a";
    profile.source.device = "ttyUSB1";
    profile.source.baud = 57600;
    profile.source.parity = feed::Parity::Odd;
    profile.source.dataBits = 7;
    profile.source.stopBits = 2;
    profile.format.meaning = feed::Meaning::DecadeVolts;
    profile.format.decadesPerVolt = 0.1 + 0.2;
    profile.format.exponentAtZero = -11.5;
    profiles.push_back(profile);
    profile = plainProfile(feed::SourceKind::File);
    profile.name = "b; with \"odd\" [signs] = ä";
    profile.source.path = "/tmp/a b,c;d.csv";
    profile.source.speed = 12.5;
    profile.source.linesPerSecond = 1.0 / 3.0;
    profile.format.byPattern = true;
    profile.format.pattern = "*, # ; \\ \"x\"";
    profile.format.timeColumn = 3;
    profile.format.meaning = feed::Meaning::LinearVolts;
    profile.format.factor = 1.1e-7;
    profiles.push_back(profile);
    {
        QSettings settings(file, QSettings::IniFormat);
        ui::saveProfiles(settings, profiles);
    }
    QSettings again(file, QSettings::IniFormat);
    EXPECT_EQ(ui::loadProfiles(again), profiles);
    again.setValue(QStringLiteral("feeds/1/baud"), QStringLiteral("fast")); // spoilt by hand
    again.setValue(QStringLiteral("feeds/2/unit"), QStringLiteral("furlong"));
    const auto left = ui::loadProfiles(again);
    ASSERT_EQ(left.size(), 1u);
    EXPECT_EQ(left.front().source.baud, 9600);
}

} // namespace
} // namespace sealwalk::tests
