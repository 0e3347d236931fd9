// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/decision.h"

#include "core/analysis/uncertainty.h"
#include "core/base/contract.h"

#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kLognormalAbove = 0.30;

} // namespace

Result<Decision> decide(const DecisionOptions& options)
{
    const double y = options.value.si();
    const double u = options.uncertainty.si();
    const double limit = options.limit.si();
    if (!std::isfinite(y))
        return fail(ErrorCode::BadInput, "the leak rate must be a finite number");
    if (!(u >= 0.0 && std::isfinite(u)))
        return fail(ErrorCode::BadInput, "the uncertainty of a leak rate must be zero or above");
    if (!(limit > 0.0 && std::isfinite(limit)))
        return fail(ErrorCode::BadInput, "the limit must be above zero");
    if (!(options.risk > 0.0 && options.risk < 0.5))
        return fail(ErrorCode::BadInput, "the risk of a wrong decision must be between 0 and 50 %");

    Decision decision;
    const double z = normalQuantile(1.0 - options.risk);
    if (y > 0.0 && u > kLognormalAbove * y) {
        const double s = logSpread(u / y);
        decision.conformance = normalProbability(std::log(limit / y) / s);
        decision.acceptBelow = LeakRate::fromSi(limit * std::exp(-z * s));
        decision.rejectAbove = LeakRate::fromSi(limit * std::exp(z * s));
    } else {
        decision.conformance = u > 0.0 ? normalProbability((limit - y) / u) : (y <= limit ? 1.0 : 0.0);
        decision.acceptBelow = LeakRate::fromSi(limit - z * u);
        decision.rejectAbove = LeakRate::fromSi(limit + z * u);
    }
    if (options.value <= decision.acceptBelow)
        decision.verdict = Verdict::Within;
    else if (options.value > decision.rejectAbove)
        decision.verdict = Verdict::Over;
    else
        decision.verdict = Verdict::CannotSay;
    return decision;
}

RepairProof proveRepair(LeakRate before, double uncertaintyBefore, LeakRate after, double uncertaintyAfter,
                        bool afterIsBound)
{
    SEALWALK_EXPECT(before.si() > 0.0 && after.si() > 0.0);
    SEALWALK_EXPECT(uncertaintyBefore >= 0.0 && uncertaintyAfter >= 0.0);
    RepairProof proof;
    proof.factor = before / after;
    const double both[] = {uncertaintyBefore, uncertaintyAfter};
    proof.relativeUncertainty = combined(both);
    proof.atLeast = afterIsBound;
    constexpr double kConfidence = 0.95;
    proof.proven = std::log(proof.factor) > normalQuantile(kConfidence) * proof.relativeUncertainty;
    return proof;
}

} // namespace sealwalk::analysis
