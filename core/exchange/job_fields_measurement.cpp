// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_fields.h"

namespace sealwalk::exchange {

void describe(Fields& f, model::ReferenceLeak& leak)
{
    f.field("serial", leak.serial);
    f.field("certificate", leak.certificate);
    f.field("value_pa_m3_per_s", leak.value);
    f.field("entered", leak.entered);
    f.field("certificate_date", leak.certificateDate);
    f.field("due_date", leak.dueDate);
    f.field("certificate_temperature_k", leak.certificateTemperature);
    f.field("temperature_coefficient_per_k", leak.temperatureCoefficient);
    f.field("exponential", leak.exponential);
    f.field("loss_per_year", leak.lossPerYear);
    f.field("relative_uncertainty", leak.relativeUncertainty);
}

void describe(Fields& f, model::Calibration& calibration)
{
    f.field("id", calibration.id);
    f.field("kind", calibration.kind);
    f.field("moment", calibration.moment);
    f.field("at", calibration.at);
    f.field("leak", calibration.leak);
    f.field("room_temperature_k", calibration.roomTemperature);
    f.field("shown_pa_m3_per_s", calibration.shown);
    f.field("background_pa_m3_per_s", calibration.background);
    f.field("response_s", calibration.response);
    f.field("clean_up_s", calibration.cleanUp);
    f.field("place", calibration.place);
    f.field("joints", calibration.joints);
    f.field("by", calibration.by);
    f.field("note", calibration.note);
}

void describe(Fields& f, model::BackgroundWatch& watch)
{
    f.field("id", watch.id);
    f.field("at", watch.at);
    f.field("times_s", watch.times);
    f.field("values_pa_m3_per_s", watch.values);
    f.field("source", watch.source);
    f.field("by", watch.by);
    f.field("swing_pa_m3_per_s", watch.swing); // format 3
}

void describe(Fields& f, model::RiseTest& test)
{
    f.field("id", test.id);
    f.field("moment", test.moment);
    f.field("at", test.at);
    f.field("times_s", test.times);
    f.field("pressures_pa", test.pressures);
    f.field("temperatures_k", test.temperatures);
    f.field("base_pressure_pa", test.basePressure);
    f.field("gauge", test.gauge);
    f.field("source", test.source);
    f.field("by", test.by);
    f.field("note", test.note);
}

void describe(Fields& f, model::MeasurementVoid& mark)
{
    f.field("measurement", mark.measurement);
    f.field("reason", mark.reason);
    f.field("by", mark.by);
    f.field("at", mark.at);
}

void describe(Fields& f, model::Reading& reading)
{
    f.field("id", reading.id);
    f.field("round", reading.round);
    f.field("point", reading.point);
    f.field("at", reading.at);
    f.field("outcome", reading.outcome);
    f.field("condition", reading.condition);
    f.field("condition_detail", reading.conditionDetail);
    f.field("background_pa_m3_per_s", reading.background);
    f.field("peak_pa_m3_per_s", reading.peak);
    f.field("entered", reading.entered);
    f.field("dwell_s", reading.dwell);
    f.field("delay_s", reading.delay);
    f.field("clean_up_s", reading.cleanUp);
    f.field("gentle", reading.gentle);
    f.field("confirmed", reading.confirmed);
    f.field("out_of_turn", reading.outOfTurn);
    f.field("entry", reading.entry);
    f.field("by", reading.by);
    f.field("reason", reading.reason);
    f.field("remark", reading.remark);
    f.field("corrects", reading.corrects);
    f.field("trace", reading.trace);
    f.filled("shielded", reading.shielded); // format 3
}

void describe(Fields& f, model::VoidMark& mark)
{
    f.field("reading", mark.reading);
    f.field("reason", mark.reason);
    f.field("by", mark.by);
    f.field("at", mark.at);
}

void describe(Fields& f, model::Round& round)
{
    f.field("id", round.id);
    f.field("number", round.number);
    f.field("kind", round.kind);
    f.field("title", round.title);
    f.field("points", round.points);
    f.field("repair", round.repair);
    f.field("by", round.by);
    f.field("opened", round.opened);
    f.field("closed", round.closed);
}

} // namespace sealwalk::exchange
