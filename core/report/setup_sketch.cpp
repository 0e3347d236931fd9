// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/setup_sketch.h"

#include "core/analysis/setup_outlook.h"
#include "core/quantities/number_text.h"
#include "core/report/rate_text.h"

#include <algorithm>

namespace sealwalk::report {

namespace {

std::string filled(const std::string& pattern, const std::string& with)
{
    const std::size_t at = pattern.find("%1");
    return at == std::string::npos ? pattern : pattern.substr(0, at) + with + pattern.substr(at + 2);
}

class Writer
{
public:
    explicit Writer(const SetupWords& words)
        : m_words(words)
    {}

    [[nodiscard]] std::string figure(const std::string& pattern, double number, int digits = 3) const
    {
        return filled(pattern, m_words.number ? m_words.number(number, digits) : trimmedText(number, digits));
    }
    [[nodiscard]] std::string rate(LeakRate rate) const
    {
        return m_words.rate ? m_words.rate(rate) : printRate(inMillibarLitresPerSecond(rate)) + " mbar·l/s";
    }

    [[nodiscard]] std::string typed(const std::string& text) const
    {
        return m_words.typed ? m_words.typed(text) : text;
    }

private:
    const SetupWords& m_words;
};

/// Said in one line where there is room for one.
SetupPart hosePart(const model::Setup& setup, const SetupWords& words, const Writer& writer)
{
    if (!setup.hoseDiameter && !setup.hoseLength)
        return {{words.hose + ", " + words.sizeNotStated}, false};
    const std::string bore = setup.hoseDiameter
                                 ? writer.figure(words.bore, inMillimetres(*setup.hoseDiameter))
                                 : words.boreNotStated;
    const std::string length =
        setup.hoseLength ? writer.figure(words.length, setup.hoseLength->si()) : words.lengthNotStated;
    return {{words.hose + ", " + bore + ", " + length}, true};
}

SetupPart detectorPart(const model::Setup& setup, const SetupWords& words, const Writer& writer)
{
    SetupPart part{{setup.detector.empty() ? words.detectorNotNamed
                                           : filled(words.detector, writer.typed(setup.detector))},
                   !setup.detector.empty()};
    if (setup.detectorSpeed)
        part.lines.push_back(writer.figure(words.heliumSpeed, inLitresPerSecond(*setup.detectorSpeed)));
    if (setup.zeroOn)
        part.lines.push_back(words.zeroOn);
    return part;
}

/// A speed of nothing says that there is no such pump. Where only the connection speaks of one, it is there
/// with a speed nobody stated; the offered words have "parallel" in them in every language of the program.
std::optional<SetupPart> parallelPump(const model::Setup& setup, const SetupWords& words,
                                      const Writer& writer)
{
    if (setup.auxiliarySpeed && setup.auxiliarySpeed->si() > 0.0)
        return SetupPart{
            {words.parallelPump, writer.figure(words.heliumSpeed, inLitresPerSecond(*setup.auxiliarySpeed))},
            true};
    if (analysis::isParallelSpeedUnknown(setup))
        return SetupPart{{words.parallelPump, words.speedNotStated}, false};
    return std::nullopt;
}

/// One leak at one place is one part, however often it was read.
void addLeak(const model::Calibration& check, const SetupWords& words, const Writer& writer,
             SetupSketch& sketch)
{
    const bool isOnObject = check.kind == model::CalibrationKind::SystemCheck;
    SetupPart part{
        {filled(words.referenceLeak, writer.typed(check.leak.serial)), writer.rate(check.leak.value)}, true};
    if (isOnObject) {
        part.lines.back() += ", " + (check.place.empty() ? words.placeNotStated
                                                         : filled(words.atPlace, writer.typed(check.place)));
        part.isStated = !check.place.empty();
    }
    std::vector<SetupPart>& parts = isOnObject ? sketch.leaks : sketch.leaksAtInlet;
    if (std::find(parts.begin(), parts.end(), part) == parts.end())
        parts.push_back(std::move(part));
}

} // namespace

SetupSketch setupSketch(const model::Job& job, const model::TestObject& object, const SetupWords& words)
{
    const Writer writer(words);
    const model::Setup& setup = job.setup;
    const std::optional<Volume> volume = setup.volume ? setup.volume : object.volume;
    SetupSketch sketch;
    sketch.object = {{writer.typed(object.name),
                      volume ? writer.figure(words.litres, inLitres(*volume), 4) : words.volumeNotStated},
                     true};
    if (object.airSpeed)
        sketch.ownPumps = SetupPart{
            {words.ownPumps, writer.figure(words.airSpeed, inLitresPerSecond(*object.airSpeed))}, true};
    for (const model::Calibration* check : job.standingCalibrations())
        addLeak(*check, words, writer, sketch);
    sketch.connection = setup.connection.empty() ? SetupPart{{words.connectionNotStated}, false}
                                                 : SetupPart{{writer.typed(setup.connection)}, true};
    sketch.hose = hosePart(setup, words, writer);
    if (setup.linePressure)
        sketch.linePressure =
            SetupPart{{writer.figure(words.pressure, inMillibars(*setup.linePressure), 2)}, true};
    sketch.parallelPump = parallelPump(setup, words, writer);
    sketch.detector = detectorPart(setup, words, writer);
    return sketch;
}

std::string SetupSketch::spoken() const
{
    std::string text;
    const auto add = [&](const SetupPart& part) {
        text += text.empty() ? "" : "; ";
        for (std::size_t i = 0; i < part.lines.size(); ++i)
            text += (i == 0 ? "" : ", ") + part.lines[i];
    };
    add(object);
    if (ownPumps)
        add(*ownPumps);
    std::for_each(leaks.begin(), leaks.end(), add);
    add(connection);
    add(hose);
    if (linePressure)
        add(*linePressure);
    if (parallelPump)
        add(*parallelPump);
    add(detector);
    std::for_each(leaksAtInlet.begin(), leaksAtInlet.end(), add);
    return text;
}

} // namespace sealwalk::report
