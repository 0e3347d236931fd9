// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_fields.h"

namespace sealwalk::exchange {

void describe(Fields& f, model::DecadeScale& scale)
{
    f.field("lowest_decade", scale.lowestDecade);
    f.field("decades", scale.decades);
}

void describe(Fields& f, model::TestObject& object)
{
    f.field("id", object.id);
    f.field("name", object.name);
    f.field("tag", object.tag);
    f.field("place", object.place);
    f.field("note", object.note);
    f.field("volume_m3", object.volume);
    f.field("volume_uncertainty", object.volumeUncertainty);
    f.field("point_limit_pa_m3_per_s", object.pointLimit);
    f.field("total_limit_pa_m3_per_s", object.totalLimit);
    f.field("air_speed_m3_per_s", object.airSpeed);
    f.field("pump_blank_off_pa", object.pumpBlankOff);
    f.field("wanted_pressure_pa", object.wantedPressure);
    f.field("scale", object.scale);
    f.field("invented", object.invented);
    f.field("created", object.created);
}

void describe(Fields& f, model::CautionTick& tick)
{
    f.field("caution", tick.caution);
    f.field("by", tick.by);
    f.field("at", tick.at);
}

void describe(Fields& f, model::Instrument& instrument)
{
    f.field("what", instrument.what);
    f.field("identity", instrument.identity);
    f.field("due", instrument.due);
}

void describe(Fields& f, model::Setup& setup)
{
    f.filled("customer", setup.customer); // format 2
    f.filled("witness", setup.witness);   // format 2
    f.field("purpose", setup.purpose);
    f.field("procedure", setup.procedure);
    f.field("last_touched", setup.lastTouched);
    f.field("excluded", setup.excluded);
    f.field("point_limit_pa_m3_per_s", setup.pointLimit);
    f.field("total_limit_pa_m3_per_s", setup.totalLimit);
    f.field("kind_limits_pa_m3_per_s", setup.kindLimits);
    f.field("limit_agreed_by", setup.limitAgreedBy);
    f.field("unit", setup.unit);
    f.field("gas_basis", setup.gasBasis);

    f.field("detector", setup.detector);
    f.field("connection", setup.connection);
    f.field("detector_unit", setup.detectorUnit);
    f.field("range_top_pa_m3_per_s", setup.rangeTop);
    f.field("range_bottom_pa_m3_per_s", setup.rangeBottom);
    f.field("zero_on", setup.zeroOn);
    f.field("detector_speed_m3_per_s", setup.detectorSpeed);
    f.field("auxiliary_speed_m3_per_s", setup.auxiliarySpeed);
    f.field("hose_diameter_m", setup.hoseDiameter);
    f.field("hose_length_m", setup.hoseLength);
    f.field("line_pressure_pa", setup.linePressure);
    f.field("volume_m3", setup.volume);

    f.field("helium_share", setup.heliumShare);
    f.field("helium_share_uncertainty", setup.heliumShareUncertainty);
    f.field("helium_flow_standard_l_per_min", setup.heliumFlow);
    f.field("helium_bottle", setup.heliumBottle);
    f.field("leak_path_m", setup.leakPath);
    f.field("response_s", setup.response);
    f.field("noise_factor", setup.noiseFactor);
    f.field("room_temperature_k", setup.roomTemperature);
    f.field("object_state", setup.objectState);
    f.field("dried", setup.dried);
    f.field("no_check_after_reason", setup.noCheckAfterReason);
    f.field("instruments", setup.instruments);
    f.field("cautions", setup.cautions);
}

void describe(Fields& f, model::Job& job)
{
    int number = job.openedAs > 0 ? job.openedAs : job.number;
    f.field("id", job.id);
    f.field("number", number);
    f.field("object", job.object);
    f.field("opened", job.opened);
    f.field("setup", job.setup);
    f.field("sketch", job.sketch);
    f.field("rounds", job.rounds);
    f.field("readings", job.readings);
    f.field("voids", job.voids);
    f.field("calibrations", job.calibrations);
    f.field("backgrounds", job.backgrounds);
    f.field("rise_tests", job.riseTests);
    f.filled("void_measurements", job.voidMeasurements); // format 4
    f.field("repairs", job.repairs);
    f.field("judgements", job.judgements);
    f.field("concessions", job.concessions);
    f.field("review", job.review);
    if (!f.isReading())
        return;
    job.number = number;
    for (std::size_t i = 0; i < job.readings.size(); ++i)
        job.readings[i].sequence = static_cast<std::int64_t>(i) + 1;
}

} // namespace sealwalk::exchange
