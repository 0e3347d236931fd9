// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of every record that belongs to a job, and what is done with them. `Rows<T>::fields` lists each
// column once, with the field it holds; rows come back in the order of `order`.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"

namespace sealwalk::storage {

template <class T>
struct Rows;

template <>
struct Rows<model::TestObject>
{
    static constexpr const char* table = "object";
    template <class Io, class Object>
    static void fields(Io& io, Object& o)
    {
        io("uuid", o.id);
        io("name", o.name);
        io("tag", o.tag);
        io("place", o.place);
        io("note", o.note);
        io("volume", o.volume);
        io("volume_uncertainty", o.volumeUncertainty);
        io("point_limit", o.pointLimit);
        io("total_limit", o.totalLimit);
        io("air_speed", o.airSpeed);
        io("pump_blank_off", o.pumpBlankOff);
        io("wanted_pressure", o.wantedPressure);
        io("lowest_decade", o.scale.lowestDecade);
        io("decades", o.scale.decades);
        io("invented", o.invented);
        io("created", o.created);
    }
};

template <>
struct Rows<model::Setup>
{
    static constexpr const char* table = "setup";
    static constexpr const char* order = "job";
    template <class Io, class Setup>
    static void fields(Io& io, Setup& s)
    {
        io("purpose", s.purpose);
        io("procedure", s.procedure);
        io("last_touched", s.lastTouched);
        io("excluded", s.excluded);
        io("point_limit", s.pointLimit);
        io("total_limit", s.totalLimit);
        io("limit_agreed_by", s.limitAgreedBy);
        io("unit", s.unit);
        io("gas_basis", s.gasBasis);
        io("detector", s.detector);
        io("connection", s.connection);
        io("detector_unit", s.detectorUnit);
        io("range_top", s.rangeTop);
        io("range_bottom", s.rangeBottom);
        io("zero_on", s.zeroOn);
        io("detector_speed", s.detectorSpeed);
        io("auxiliary_speed", s.auxiliarySpeed);
        io("hose_diameter", s.hoseDiameter);
        io("hose_length", s.hoseLength);
        io("line_pressure", s.linePressure);
        io("volume", s.volume);
        io("helium_share", s.heliumShare);
        io("helium_share_uncertainty", s.heliumShareUncertainty);
        io("helium_flow", s.heliumFlow);
        io("helium_bottle", s.heliumBottle);
        io("leak_path", s.leakPath);
        io("response", s.response);
        io("noise_factor", s.noiseFactor);
        io("room_temperature", s.roomTemperature);
        io("object_state", s.objectState);
        io("dried", s.dried);
        io("no_check_after_reason", s.noCheckAfterReason);
        io("customer", s.customer);
        io("witness", s.witness);
    }
};

template <>
struct Rows<model::Instrument>
{
    static constexpr const char* table = "instrument";
    static constexpr const char* order = "id";
    template <class Io, class Instrument>
    static void fields(Io& io, Instrument& i)
    {
        io("what", i.what);
        io("identity", i.identity);
        io("due", i.due);
    }
};

template <>
struct Rows<model::CautionTick>
{
    static constexpr const char* table = "caution_tick";
    static constexpr const char* order = "id";
    template <class Io, class Tick>
    static void fields(Io& io, Tick& t)
    {
        io("caution", t.caution);
        io("by", t.by);
        io("at", t.at);
    }
};

template <>
struct Rows<model::Joint>
{
    static constexpr const char* table = "joint";
    static constexpr const char* order = "id";
    template <class Io, class Joint>
    static void fields(Io& io, Joint& j)
    {
        io("uuid", j.id);
        io("sheet", j.sheet);
        io("kind", j.kind);
        io("name", j.name);
        io("shape", j.shape);
        io("clockwise", j.clockwise);
        io("start", j.start);
        io("is_setup", j.isSetup);
        io("locked", j.locked);
        io("group_word", j.group);
        io("material", j.material);
        io("thickness", j.thickness);
        io("required_conditions", j.requiredConditions);
    }
};

template <>
struct Rows<model::TestPoint>
{
    static constexpr const char* table = "point";
    static constexpr const char* order = "id";
    template <class Io, class Point>
    static void fields(Io& io, Point& p)
    {
        io("uuid", p.id);
        io("number", p.number);
        io("joint", p.joint);
        io("along", p.along);
        io("place", p.place);
        io("retired", p.retired);
    }
};

template <>
struct Rows<model::Round>
{
    static constexpr const char* table = "round";
    static constexpr const char* order = "number";
    template <class Io, class Round>
    static void fields(Io& io, Round& r)
    {
        io("uuid", r.id);
        io("number", r.number);
        io("kind", r.kind);
        io("title", r.title);
        io("points", r.points);
        io("repair", r.repair);
        io("by", r.by);
        io("opened", r.opened);
        io("closed", r.closed);
    }
};

template <>
struct Rows<model::Reading>
{
    static constexpr const char* table = "reading";
    static constexpr const char* order = "sequence";
    template <class Io, class Reading>
    static void fields(Io& io, Reading& r)
    {
        io("uuid", r.id);
        io("sequence", r.sequence);
        io("round", r.round);
        io("point", r.point);
        io("at", r.at);
        io("outcome", r.outcome);
        io("condition", r.condition);
        io("condition_detail", r.conditionDetail);
        io("background", r.background);
        io("peak", r.peak);
        io("entered", r.entered);
        io("dwell", r.dwell);
        io("delay", r.delay);
        io("clean_up", r.cleanUp);
        io("gentle", r.gentle);
        io("confirmed", r.confirmed);
        io("out_of_turn", r.outOfTurn);
        io("entry", r.entry);
        io("by", r.by);
        io("reason", r.reason);
        io("remark", r.remark);
        io("corrects", r.corrects);
        io("trace", r.trace);
        io("shielded", r.shielded);
    }
};

template <>
struct Rows<model::VoidMark>
{
    static constexpr const char* table = "void_mark";
    static constexpr const char* order = "id";
    template <class Io, class Mark>
    static void fields(Io& io, Mark& m)
    {
        io("reading", m.reading);
        io("reason", m.reason);
        io("by", m.by);
        io("at", m.at);
    }
};

template <>
struct Rows<model::Calibration>
{
    static constexpr const char* table = "calibration";
    static constexpr const char* order = "id";
    template <class Io, class Calibration>
    static void fields(Io& io, Calibration& c)
    {
        io("uuid", c.id);
        io("kind", c.kind);
        io("moment", c.moment);
        io("at", c.at);
        io("leak_serial", c.leak.serial);
        io("leak_certificate", c.leak.certificate);
        io("leak_value", c.leak.value);
        io("leak_entered", c.leak.entered);
        io("leak_certificate_date", c.leak.certificateDate);
        io("leak_due", c.leak.dueDate);
        io("leak_certificate_temperature", c.leak.certificateTemperature);
        io("leak_temperature_coefficient", c.leak.temperatureCoefficient);
        io("leak_exponential", c.leak.exponential);
        io("leak_loss_per_year", c.leak.lossPerYear);
        io("leak_uncertainty", c.leak.relativeUncertainty);
        io("room_temperature", c.roomTemperature);
        io("shown", c.shown);
        io("background", c.background);
        io("response", c.response);
        io("clean_up", c.cleanUp);
        io("place", c.place);
        io("joints", c.joints);
        io("by", c.by);
        io("note", c.note);
    }
};

template <>
struct Rows<model::BackgroundWatch>
{
    static constexpr const char* table = "background_watch";
    static constexpr const char* order = "id";
    template <class Io, class Watch>
    static void fields(Io& io, Watch& w)
    {
        io("uuid", w.id);
        io("at", w.at);
        io("times", w.times);
        io("rates", w.values);
        io("source", w.source);
        io("by", w.by);
        io("swing", w.swing);
    }
};

template <>
struct Rows<model::RiseTest>
{
    static constexpr const char* table = "rise_test";
    static constexpr const char* order = "id";
    template <class Io, class Test>
    static void fields(Io& io, Test& t)
    {
        io("uuid", t.id);
        io("moment", t.moment);
        io("at", t.at);
        io("times", t.times);
        io("pressures", t.pressures);
        io("temperatures", t.temperatures);
        io("base_pressure", t.basePressure);
        io("gauge", t.gauge);
        io("source", t.source);
        io("by", t.by);
        io("note", t.note);
    }
};

template <>
struct Rows<model::MeasurementVoid>
{
    static constexpr const char* table = "measurement_void";
    static constexpr const char* order = "id";
    template <class Io, class Mark>
    static void fields(Io& io, Mark& m)
    {
        io("measurement", m.measurement);
        io("reason", m.reason);
        io("by", m.by);
        io("at", m.at);
    }
};

template <>
struct Rows<model::Repair>
{
    static constexpr const char* table = "repair";
    static constexpr const char* order = "id";
    template <class Io, class Repair>
    static void fields(Io& io, Repair& r)
    {
        io("uuid", r.id);
        io("points", r.points);
        io("disturbed", r.disturbed);
        io("defect", r.defect);
        io("action", r.action);
        io("material", r.material);
        io("permanent", r.permanent);
        io("owner", r.owner);
        io("due", r.due);
        io("sprayable_from", r.sprayableFrom);
        io("by", r.by);
        io("at", r.at);
        io("note", r.note);
        io("pictures", r.pictures);
        io("made_good_by", r.madeGoodBy);
        io("makes_good", r.makesGood);
    }
};

template <>
struct Rows<model::Judgement>
{
    static constexpr const char* table = "judgement";
    static constexpr const char* order = "id";
    template <class Io, class Judgement>
    static void fields(Io& io, Judgement& j)
    {
        io("uuid", j.id);
        io("point", j.point);
        io("round", j.round);
        io("finding", j.finding);
        io("verdict", j.verdict);
        io("reason", j.reason);
        io("by", j.by);
        io("at", j.at);
        io("of", j.of);
    }
};

template <>
struct Rows<model::Concession>
{
    static constexpr const char* table = "concession";
    static constexpr const char* order = "id";
    template <class Io, class Concession>
    static void fields(Io& io, Concession& c)
    {
        io("uuid", c.id);
        io("points", c.points);
        io("granted_by", c.grantedBy);
        io("until", c.until);
        io("reason", c.reason);
        io("by", c.by);
        io("at", c.at);
    }
};

template <>
struct Rows<model::ReviewEntry>
{
    static constexpr const char* table = "review";
    static constexpr const char* order = "id";
    template <class Io, class Entry>
    static void fields(Io& io, Entry& e)
    {
        io("uuid", e.id);
        io("step", e.step);
        io("by", e.by);
        io("at", e.at);
        io("text", e.text);
        io("point", e.point);
        io("check_word", e.check);
        io("digest", e.digest);
    }
};

template <>
struct Rows<model::Signature>
{
    static constexpr const char* table = "signature";
    static constexpr const char* order = "id";
    template <class Io, class Signature>
    static void fields(Io& io, Signature& s)
    {
        io("uuid", s.id);
        io("person", s.person);
        io("name", s.name);
        io("role", s.role);
        io("statement", s.statement);
        io("object", s.object);
        io("at", s.at);
        io("digest", s.digest);
        io("public_key", s.publicKey);
        io("value", s.value);
    }
};

template <>
struct Rows<model::Person>
{
    static constexpr const char* table = "person";
    static constexpr const char* order = "name";
    template <class Io, class Person>
    static void fields(Io& io, Person& p)
    {
        io("uuid", p.id);
        io("name", p.name);
        io("role", p.role);
        io("qualification", p.qualification);
        io("active", p.active);
        io("public_key", p.publicKey);
        io("sealed_key", p.sealedKey);
        io("since", p.since);
    }
};

template <>
struct Rows<model::PersonEntry>
{
    static constexpr const char* table = "person_entry";
    static constexpr const char* order = "id";
    template <class Io, class Entry>
    static void fields(Io& io, Entry& e)
    {
        io("person", e.person);
        io("what", e.what);
        io("by", e.by);
        io("at", e.at);
    }
};

} // namespace sealwalk::storage
