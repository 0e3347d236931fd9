// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_factor.h"

#include "core/base/calendar_day.h"
#include "core/flow/response.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::analysis::detail {

namespace {

constexpr double kSecondsPerYear = 365.0 * 86400.0;
// Relative standard uncertainties, engineering judgement.
constexpr double kMeasuredResponse = 0.10;
constexpr double kComputedResponse = 0.30;
constexpr double kComputedShare = 0.30;
constexpr double kInletToChamber = 0.10;

std::string placeOf(const model::Calibration& check)
{
    return check.place.empty() ? std::string("the object") : check.place;
}

Bracket bracketOf(const std::vector<const model::Calibration*>& checks, Timestamp at)
{
    Bracket bracket;
    for (const model::Calibration* check : checks) {
        if (check->at <= at) {
            bracket.opening = check;
            continue;
        }
        if (bracket.opening == nullptr) {
            bracket.opening = check;
            bracket.early = true;
            return bracket;
        }
        if (check->moment != model::CalibrationMoment::Before)
            bracket.closing = check;
        return bracket;
    }
    return bracket;
}

void addReference(std::vector<FactorUsed>& factors, const SystemFactor& factor)
{
    factors.push_back({"reference leak", 1.0, factor.referenceUncertainty, true,
                       "certificate, temperature and age of the reference leak"});
}

std::optional<std::vector<FactorUsed>> fromSystemChecks(const model::Job& job,
                                                        const std::vector<const model::Calibration*>& checks,
                                                        Timestamp at, std::vector<std::string>& notes)
{
    std::vector<const model::Calibration*> usable;
    for (const model::Calibration* check : checks) {
        const auto factor = factorOf(job, *check);
        if (factor)
            usable.push_back(check);
        else
            notes.push_back("the check at " + placeOf(*check) + " is not usable: " + factor.error().message);
    }
    const Bracket bracket = bracketOf(usable, at);
    if (bracket.opening == nullptr)
        return std::nullopt;
    SystemFactor factor = factorOf(job, *bracket.opening).value();
    std::vector<FactorUsed> factors;
    addReference(factors, factor);
    std::string from = "system check at " + placeOf(*bracket.opening);
    double drift = 0.0;
    if (bracket.closing != nullptr) {
        const FactorChange change = compareFactors(factor, factorOf(job, *bracket.closing).value());
        factor = change.between;
        drift = change.driftUncertainty;
        from = "mean of the system checks before and after, at " + placeOf(*bracket.opening);
        if (change.steadiness != Steadiness::Steady)
            notes.push_back(change.advice);
    }
    if (bracket.early)
        notes.push_back("the reading is older than the first check; the check made afterwards is used");
    factors.push_back({"system factor", factor.coefficient, factor.readingUncertainty, true, from});
    if (drift > 0.0)
        factors.push_back({"change of the system factor", 1.0, drift, true, "from one check to the next"});
    return factors;
}

// Detector alone or with an auxiliary pump, from speeds; only when no leak on the object was measured.
std::optional<FactorUsed> shareOf(const model::Setup& setup, std::vector<std::string>& notes)
{
    if (!setup.auxiliarySpeed || !(setup.auxiliarySpeed->si() > 0.0))
        return FactorUsed{"share to the detector", 1.0, kInletToChamber, true,
                          "detector alone, taken from its inlet"};
    if (!setup.detectorSpeed || !(setup.detectorSpeed->si() > 0.0)) {
        notes.emplace_back(
            "an auxiliary pump takes part of the helium and the detector's own speed is not known");
        return std::nullopt;
    }
    flow::ResponseOptions options;
    options.volume = setup.volume.value_or(litres(1.0)); // no part of the share
    options.pump = *setup.detectorSpeed;
    options.auxiliary = *setup.auxiliarySpeed;
    options.hoseDiameter = setup.hoseLength ? setup.hoseDiameter : std::nullopt;
    options.hoseLength = setup.hoseDiameter ? setup.hoseLength : std::nullopt;
    options.linePressure = setup.linePressure.value_or(pascals(0.0));
    options.temperature = setup.roomTemperature;
    const auto summary = flow::respond(options);
    if (!summary) {
        notes.push_back(summary.error().message);
        return std::nullopt;
    }
    return FactorUsed{
        "share to the detector", 1.0 / summary->share, kComputedShare, true,
        "speeds of detector and auxiliary pump; a reference leak on the object would measure it"};
}

std::optional<std::vector<FactorUsed>> fromDetectorChecks(const model::Job& job, model::JointId joint,
                                                          Timestamp at, std::vector<std::string>& notes)
{
    auto factors =
        fromSystemChecks(job, checksFor(job, model::CalibrationKind::DetectorCheck, joint), at, notes);
    if (!factors)
        return std::nullopt;
    for (FactorUsed& factor : *factors) {
        if (factor.name == "system factor") {
            factor.name = "detector factor";
            factor.from = "reference leak on the detector";
        }
    }
    const auto share = shareOf(job.setup, notes);
    if (!share)
        return std::nullopt;
    factors->push_back(*share);
    return factors;
}

} // namespace

Result<ReferenceLeakToday> referenceOf(const model::Calibration& check)
{
    ReferenceLeakOptions options;
    options.certified = check.leak.value;
    options.certificateTemperature = check.leak.certificateTemperature;
    options.room = check.roomTemperature;
    options.temperatureCoefficient = check.leak.temperatureCoefficient;
    options.exponential = check.leak.exponential;
    options.lossPerYear = check.leak.lossPerYear;
    options.relativeUncertainty = check.leak.relativeUncertainty;
    const bool dated = check.leak.certificateDate.isSet() && check.at.isSet();
    if (dated)
        options.years = check.at.secondsSince(check.leak.certificateDate) / kSecondsPerYear;
    auto today = referenceLeakToday(options);
    if (today && !dated)
        today->warnings.emplace_back(
            "the certificate of the reference leak has no date; its age is not corrected");
    if (today && check.leak.dueDate && isPast(*check.leak.dueDate, check.at))
        today->warnings.emplace_back("the reference leak was past its due date");
    return today;
}

Result<SystemFactor> factorOf(const model::Job& job, const model::Calibration& check)
{
    const auto reference = referenceOf(check);
    if (!reference)
        return fail(reference.error());
    SystemCheckOptions options;
    options.reference = reference->rate;
    options.referenceUncertainty = reference->relativeUncertainty;
    options.shown = check.shown;
    options.background = check.background;
    if (const auto background = backgroundAt(job, check.at))
        options.noise = background->noise;
    return systemFactor(options);
}

std::vector<const model::Calibration*> checksFor(const model::Job& job, model::CalibrationKind kind,
                                                 model::JointId joint)
{
    std::vector<const model::Calibration*> own;
    std::vector<const model::Calibration*> general;
    for (const model::Calibration* check : job.standingCalibrations()) {
        if (check->kind != kind)
            continue;
        if (check->joints.empty())
            general.push_back(check);
        else if (std::find(check->joints.begin(), check->joints.end(), joint) != check->joints.end())
            own.push_back(check);
    }
    std::vector<const model::Calibration*>& serving = own.empty() ? general : own;
    std::stable_sort(serving.begin(), serving.end(),
                     [](const model::Calibration* a, const model::Calibration* b) { return a->at < b->at; });
    return serving;
}

std::optional<std::vector<FactorUsed>> factorsFor(const model::Job& job, model::JointId joint, Timestamp at,
                                                  std::vector<std::string>& notes)
{
    if (auto factors =
            fromSystemChecks(job, checksFor(job, model::CalibrationKind::SystemCheck, joint), at, notes))
        return factors;
    if (auto factors = fromDetectorChecks(job, joint, at, notes)) {
        notes.emplace_back(
            "no check with a reference leak on the object; the factor comes from the detector's inlet");
        return factors;
    }
    notes.emplace_back(
        "no usable check with a reference leak: what the display shows is not yet a leak rate");
    return std::nullopt;
}

Bracket checksAround(const model::Job& job, model::JointId joint, Timestamp at)
{
    for (const auto kind : {model::CalibrationKind::SystemCheck, model::CalibrationKind::DetectorCheck}) {
        auto usable = checksFor(job, kind, joint);
        std::erase_if(usable,
                      [&](const model::Calibration* check) { return !factorOf(job, *check).has_value(); });
        if (const Bracket found = bracketOf(usable, at); found.opening != nullptr)
            return found;
    }
    return {};
}

std::optional<KnownResponse> responseOf(const model::Job& job, const model::TestObject& object,
                                        model::JointId joint, Timestamp at)
{
    const model::Setup& setup = job.setup;
    if (setup.response && setup.response->si() > 0.0)
        return KnownResponse{*setup.response, kMeasuredResponse, TimingSource::Typed, "typed"};
    std::vector<const model::Calibration*> measured;
    for (const model::Calibration* check : checksFor(job, model::CalibrationKind::SystemCheck, joint))
        if (check->response && check->response->si() > 0.0)
            measured.push_back(check);
    if (const Bracket bracket = bracketOf(measured, at); bracket.opening != nullptr)
        return KnownResponse{*bracket.opening->response, kMeasuredResponse, TimingSource::Measured,
                             "measured with the reference leak"};
    const std::optional<Volume> volume = setup.volume ? setup.volume : object.volume;
    if (!volume || !setup.detectorSpeed)
        return std::nullopt;
    flow::ResponseOptions options;
    options.volume = *volume;
    options.pump = *setup.detectorSpeed;
    options.auxiliary = setup.auxiliarySpeed.value_or(PumpingSpeed{});
    options.hoseDiameter = setup.hoseLength ? setup.hoseDiameter : std::nullopt;
    options.hoseLength = setup.hoseDiameter ? setup.hoseLength : std::nullopt;
    options.linePressure = setup.linePressure.value_or(pascals(0.0));
    options.temperature = setup.roomTemperature;
    const auto summary = flow::respond(options);
    if (!summary)
        return std::nullopt;
    return KnownResponse{summary->response, kComputedResponse, TimingSource::Computed,
                         "volume over pumping speed"};
}

std::optional<BackgroundSummary> backgroundAt(const model::Job& job, Timestamp at)
{
    std::optional<BackgroundSummary> chosen;
    Timestamp chosenAt;
    bool chosenBefore = false;
    for (const model::BackgroundWatch& watch : job.backgrounds) {
        if (job.voidOf(watch.id.uuid()) != nullptr)
            continue;
        const bool before = watch.at <= at;
        const bool better = !chosen || (before && (!chosenBefore || watch.at > chosenAt)) ||
                            (!before && !chosenBefore && watch.at < chosenAt);
        if (!better)
            continue;
        if (const auto summary = summariseBackground(watch)) {
            chosen = *summary;
            chosenAt = watch.at;
            chosenBefore = before;
        }
    }
    return chosen;
}

} // namespace sealwalk::analysis::detail
