// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_fields.h"

namespace sealwalk::exchange {

void describe(Fields& f, model::Repair& repair)
{
    f.field("id", repair.id);
    f.field("points", repair.points);
    f.field("disturbed", repair.disturbed);
    f.field("defect", repair.defect);
    f.field("action", repair.action);
    f.field("material", repair.material);
    f.field("permanent", repair.permanent);
    f.field("owner", repair.owner);
    f.field("due", repair.due);
    f.field("sprayable_from", repair.sprayableFrom);
    f.field("by", repair.by);
    f.field("at", repair.at);
    f.field("note", repair.note);
    f.field("pictures", repair.pictures);
    f.field("made_good_by", repair.madeGoodBy);
    f.field("makes_good", repair.makesGood);
}

void describe(Fields& f, model::Judgement& judgement)
{
    f.field("id", judgement.id);
    f.field("point", judgement.point);
    f.field("round", judgement.round);
    f.field("finding", judgement.finding);
    f.field("verdict", judgement.verdict);
    f.field("reason", judgement.reason);
    f.field("by", judgement.by);
    f.field("at", judgement.at);
    f.filled("of", judgement.of); // format 3
}

void describe(Fields& f, model::Concession& concession)
{
    f.field("id", concession.id);
    f.field("points", concession.points);
    f.field("granted_by", concession.grantedBy);
    f.field("until", concession.until);
    f.field("reason", concession.reason);
    f.field("by", concession.by);
    f.field("at", concession.at);
}

void describe(Fields& f, model::ReviewEntry& entry)
{
    f.field("id", entry.id);
    f.field("step", entry.step);
    f.field("by", entry.by);
    f.field("at", entry.at);
    f.field("text", entry.text);
    f.field("point", entry.point);
    f.field("check", entry.check);
    f.field("digest", entry.digest);
}

void describe(Fields& f, model::Signature& signature)
{
    f.field("id", signature.id);
    f.field("person", signature.person);
    f.field("name", signature.name);
    f.field("role", signature.role);
    f.field("statement", signature.statement);
    f.field("at", signature.at);
    f.field("digest", signature.digest);
    f.field("public_key", signature.publicKey);
    f.field("signature", signature.value);
}

} // namespace sealwalk::exchange
