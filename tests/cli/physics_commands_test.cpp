// SPDX-License-Identifier: GPL-3.0-or-later
// convert, air and respond, run as programs.
#include "tests/support/process.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace sealwalk::tests {
namespace {

using ::testing::HasSubstr;

nlohmann::json answerOf(std::vector<std::string> arguments)
{
    arguments.insert(arguments.begin(), "--json");
    const ProcessResult result = runCli(arguments);
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(result.err, "");
    return nlohmann::json::parse(result.out);
}

void expectRefusal(const std::vector<std::string>& arguments, const char* says)
{
    const ProcessResult result = runCli(arguments);
    EXPECT_EQ(result.status, 2) << result.out;
    EXPECT_EQ(result.out, "");
    EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
    EXPECT_THAT(result.err, HasSubstr(says));
}

// Published: NIST SP 811 and the definitions of the units.
TEST(ConvertCommand, ConvertsAndNamesItsAssumptions)
{
    const auto exact = answerOf({"convert", "1 mbar·l/s", "Pa m3/s"});
    EXPECT_NEAR(exact["value"].get<double>(), 0.1, 1e-13);
    EXPECT_EQ(exact["unit"], "Pa m3/s");
    EXPECT_TRUE(exact["assumptions"].empty());
    const auto standard = answerOf({"convert", "1 std cm3/s", "mol/s"});
    EXPECT_NEAR(standard["value"].get<double>(), 4.4615033405e-05, 1e-13);
    EXPECT_EQ(standard["assumptions"].size(), 1U);
    const auto at25 = answerOf({"convert", "1 sccm", "mol/s", "--standard-temperature", "25 degC"});
    EXPECT_NEAR(at25["value"].get<double>(), 6.8123407539e-07, 1e-15);
    const auto mass = answerOf({"convert", "1 mbar l/s", "g/yr", "--gas", "helium"});
    EXPECT_NEAR(mass["value"].get<double>(), 5178.7498, 0.005);
    EXPECT_EQ(mass["assumptions"].size(), 3U);
    const auto refrigerant = answerOf({"convert", "5 g/yr", "mbar l/s", "--gas", "102.032 g/mol"});
    EXPECT_NEAR(refrigerant["value"].get<double>(), 3.7874864e-05, 1e-11);
    const auto warm = answerOf({"convert", "1 Pa m3/s", "mol/s", "--temperature", "0 degC"});
    EXPECT_NEAR(warm["value"].get<double>(), 0.00044031614513, 1e-12);
}

TEST(ConvertCommand, TakesSignsCommasAndSpellings)
{
    EXPECT_NEAR(answerOf({"convert", "-5 degC", "K"})["value"].get<double>(), 268.15, 1e-11);
    EXPECT_NEAR(answerOf({"convert", "2,5e-7 mbar.L/s", "Pa·m³/s"})["value"].get<double>(), 2.5e-8, 1e-20);
    EXPECT_NEAR(answerOf({"convert", "2.5 CFM", "l/s"})["value"].get<double>(), 1.179868608, 1e-9);
    EXPECT_NEAR(answerOf({"convert", "-3e-11 mbar l/s", "Pa m3/s"})["value"].get<double>(), -3e-12, 1e-24);
}

TEST(ConvertCommand, RefusesInOneLine)
{
    expectRefusal({"convert", "5 mbar", "mbar l/s"}, "a pressure in mbar cannot be converted to a leak rate");
    expectRefusal({"convert", "1,234 mbar", "Pa"}, "can be read as 1234 or as 1.234");
    expectRefusal({"convert", "1,234.5 mbar", "Pa"}, "more than one decimal mark");
    expectRefusal({"convert", "nan mbar", "Pa"}, "does not start with a number");
    expectRefusal({"convert", "-5 mbar", "Pa"}, "below zero");
    expectRefusal({"convert", "-1 K", "degC"}, "below absolute zero");
    expectRefusal({"convert", "5 mbar", "furlong"}, "not a unit known here");
    expectRefusal({"convert", "5", "Pa"}, "has no unit");
    expectRefusal({"convert", "5 g/yr", "mbar l/s"}, "--gas");
    expectRefusal({"convert", "5 g/yr", "mbar l/s", "--gas", "phlogiston"}, "--gas");
    expectRefusal({"convert", "1 sccm", "mbar l/s", "--temperature", "5 Pa"}, "--temperature");
    expectRefusal({"convert", "1 mbar"}, "unit");
}

// Published: Knudsen's law through a channel of 5 mm, solved elsewhere with scipy.
TEST(AirCommand, TurnsHeliumIntoAir)
{
    const auto air = answerOf({"air", "1e-6 mbar l/s"});
    EXPECT_NEAR(air["leak_rate"].get<double>(), 6.092892e-07, 1e-11);
    EXPECT_EQ(air["unit"], "mbar l/s");
    EXPECT_NEAR(air["ratio"].get<double>(), 0.6092892, 1e-5);
    EXPECT_NEAR(air["ratio_low"].get<double>(), 0.3717326, 1e-6);
    EXPECT_NEAR(air["ratio_high"].get<double>(), 1.077071, 1e-5);
    EXPECT_EQ(air["regime"], "transitional");
    EXPECT_NEAR(air["diameter_m"].get<double>(), 2.288747e-06, 1e-11);
    EXPECT_EQ(answerOf({"air", "1 mbar l/s", "--length", "1 mm"})["regime"], "choked");
    EXPECT_EQ(answerOf({"air", "1e-14 mbar l/s"})["regime"], "molecular");
    EXPECT_EQ(answerOf({"air", "1e-1 mbar l/s", "--length", "2 m"})["regime"], "viscous");
    const auto pascal = answerOf({"air", "1e-7 Pa m3/s", "--unit", "Pa m3/s"});
    EXPECT_NEAR(pascal["leak_rate"].get<double>(), 6.092892e-08, 1e-12);
    const auto back = answerOf({"air", "6.092892476e-7 mbar l/s", "--from", "air", "--to", "He"});
    EXPECT_NEAR(back["leak_rate"].get<double>(), 1e-6, 1e-14);
}

TEST(AirCommand, RefusesInOneLine)
{
    expectRefusal({"air", "0 mbar l/s"}, "above zero");
    expectRefusal({"air", "-1e-9 mbar l/s"}, "above zero");
    expectRefusal({"air", "5 mbar"}, "leak rate");
    expectRefusal({"air", "1e-6 mbar l/s", "--length", "0 mm"}, "length");
    expectRefusal({"air", "1e-6 mbar l/s", "--length", "5 Pa"}, "--length");
    expectRefusal({"air", "1e-6 mbar l/s", "--downstream", "2000 mbar"}, "downstream");
    expectRefusal({"air", "1e-6 mbar l/s", "--temperature", "500 degC"}, "temperature");
    expectRefusal({"air", "1e-6 mbar l/s", "--to", "ether"}, "--to");
    expectRefusal({"air", "1e-6 mbar l/s", "--unit", "mbar"}, "--unit");
    expectRefusal({"air", "1e9 mbar l/s"}, "no round channel");
}

// Published: the well-mixed volume, worked out elsewhere.
TEST(RespondCommand, SaysResponseShareAndWaits)
{
    const auto alone = answerOf({"respond", "--volume", "50 l", "--pump", "2.5 l/s"});
    EXPECT_NEAR(alone["response_s"].get<double>(), 20.0, 1e-9);
    EXPECT_NEAR(alone["dwell_s"].get<double>(), 59.914645471, 1e-7);
    EXPECT_NEAR(alone["wait_s"].get<double>(), 92.10340372, 1e-7);
    EXPECT_EQ(alone["share"].get<double>(), 1.0);
    EXPECT_NEAR(alone["effective_speed"].get<double>(), 2.5, 1e-12);
    const auto beside =
        answerOf({"respond", "--volume", "50 l", "--pump", "2.5 l/s", "--auxiliary-pump", "10 l/s"});
    EXPECT_NEAR(beside["share"].get<double>(), 0.2, 1e-12);
    EXPECT_NEAR(beside["response_s"].get<double>(), 4.0, 1e-12);
    const auto hose = answerOf({"respond", "--volume", "50 l", "--pump", "5 l/s", "--hose-diameter", "25 mm",
                                "--hose-length", "1 m"});
    EXPECT_NEAR(hose["effective_speed"].get<double>(), 2.523254, 1e-5);
    const auto thick = answerOf({"respond", "--volume", "50 l", "--pump", "5 l/s", "--hose-diameter", "16 mm",
                                 "--hose-length", "1.5 m", "--pressure", "20 Pa"});
    EXPECT_NEAR(thick["effective_speed"].get<double>(), 1.0 / (1.0 / 5.0 + 1.0 / 1.821742), 1e-5);
}

TEST(RespondCommand, RefusesInOneLine)
{
    expectRefusal({"respond", "--volume", "50 l"}, "--pump");
    expectRefusal({"respond", "--volume", "0 l", "--pump", "2.5 l/s"}, "volume");
    expectRefusal({"respond", "--volume", "50 l", "--pump", "2.5 l"}, "--pump");
    expectRefusal({"respond", "--volume", "50 l", "--pump", "-2 l/s"}, "pumping speed");
    expectRefusal({"respond", "--volume", "50 l", "--pump", "2.5 l/s", "--hose-length", "1 m"}, "both");
}

// The example of each help is a command that runs.
TEST(PhysicsCommands, HelpExamplesRun)
{
    for (const char* name : {"convert", "air", "respond"}) {
        const ProcessResult help = runCli({name, "--help"});
        EXPECT_EQ(help.status, 0);
        std::size_t at = help.out.find("Example:");
        ASSERT_NE(at, std::string::npos) << name;
        int examples = 0;
        while ((at = help.out.find("sealwalk-cli ", at)) != std::string::npos) {
            at += 13;
            const std::string line = help.out.substr(at, help.out.find('\n', at) - at);
            std::vector<std::string> arguments;
            bool quoted = false;
            std::string word;
            for (const char c : line + " ") {
                if (c == '"')
                    quoted = !quoted;
                else if (c == ' ' && !quoted) {
                    if (!word.empty())
                        arguments.push_back(word);
                    word.clear();
                } else
                    word += c;
            }
            EXPECT_EQ(runCli(arguments).status, 0) << line;
            ++examples;
        }
        EXPECT_GE(examples, 1) << name;
    }
}

} // namespace
} // namespace sealwalk::tests
