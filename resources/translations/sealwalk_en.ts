<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB">
  <context>
    <name>sealwalk::ui</name>
    <message numerus="yes">
      <source>The history is not sound, %n problem(s): %1.</source>
      <translation>
        <numerusform>The history is not sound, %n problem: %1.</numerusform>
        <numerusform>The history is not sound, %n problems: %1.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n point(s), </source>
      <translation>
        <numerusform>%n point, </numerusform>
        <numerusform>%n points, </numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n sheet(s)</source>
      <translation>
        <numerusform>%n sheet</numerusform>
        <numerusform>%n sheets</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n without answer</source>
      <translation>
        <numerusform>%n without answer</numerusform>
        <numerusform>%n without answer</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>within, %n not counted</source>
      <translation>
        <numerusform>within, %n not counted</numerusform>
        <numerusform>within, %n not counted</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n object(s)</source>
      <translation>
        <numerusform>%n object</numerusform>
        <numerusform>%n objects</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n other job(s)</source>
      <translation>
        <numerusform>%n other job</numerusform>
        <numerusform>%n other jobs</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::BackgroundDialog</name>
    <message numerus="yes">
      <source>%n value(s) over %1: level %2, noise %3 (standard deviation)</source>
      <translation>
        <numerusform>%n value over %1: level %2, noise %3 (standard deviation)</numerusform>
        <numerusform>%n values over %1: level %2, noise %3 (standard deviation)</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::ComparePage</name>
    <message numerus="yes">
      <source>%n proposed, Y takes one over</source>
      <translation>
        <numerusform>%n proposed, Y takes it over</numerusform>
        <numerusform>%n proposed, Y takes one over</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n said to be the same</source>
      <translation>
        <numerusform>%n said to be the same</numerusform>
        <numerusform>%n said to be the same</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Compared %n point(s)</source>
      <translation>
        <numerusform>Compared %n point</numerusform>
        <numerusform>Compared %n points</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n known to be the same point</source>
      <translation>
        <numerusform>%n known to be the same point</numerusform>
        <numerusform>%n known to be the same points</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::JudgePage</name>
    <message numerus="yes">
      <source>Log %n repair(s)</source>
      <translation>
        <numerusform>Log %n repair</numerusform>
        <numerusform>Log %n repairs</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Repair stored. The round that proves it calls %n point(s).</source>
      <translation>
        <numerusform>Repair stored. The round that proves it calls %n point.</numerusform>
        <numerusform>Repair stored. The round that proves it calls %n points.</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::KindLimitsDialog</name>
    <message numerus="yes">
      <source>%n drawn</source>
      <translation>
        <numerusform>%n drawn</numerusform>
        <numerusform>%n drawn</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::ObjectsModel</name>
    <message numerus="yes">
      <source>%n open temporary repair(s)</source>
      <translation>
        <numerusform>%n open temporary repair</numerusform>
        <numerusform>%n open temporary repairs</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::OutlookColumn</name>
    <message numerus="yes">
      <source>%n point(s)</source>
      <translation>
        <numerusform>%n point</numerusform>
        <numerusform>%n points</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::PersonDialog</name>
    <message numerus="yes">
      <source>The passphrase needs at least %n characters.</source>
      <translation>
        <numerusform>The passphrase needs at least %n characters.</numerusform>
        <numerusform>The passphrase needs at least %n characters.</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::RepairsPanel</name>
    <message numerus="yes">
      <source>, %n photo(s)</source>
      <translation>
        <numerusform>, %n photo</numerusform>
        <numerusform>, %n photos</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::RiseDialog</name>
    <message numerus="yes">
      <source>%n sample(s) over %1</source>
      <translation>
        <numerusform>%n sample over %1</numerusform>
        <numerusform>%n samples over %1</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::SeveralPanel</name>
    <message numerus="yes">
      <source>%n joints</source>
      <translation>
        <numerusform>%n joint</numerusform>
        <numerusform>%n joints</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::SignoffPage</name>
    <message numerus="yes">
      <source>Cannot be signed yet: %n stop(s) open</source>
      <translation>
        <numerusform>Cannot be signed yet: %n stop open</numerusform>
        <numerusform>Cannot be signed yet: %n stops open</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n question(s) want a word</source>
      <translation>
        <numerusform>%n question wants a word</numerusform>
        <numerusform>%n questions want a word</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::SprayController</name>
    <message numerus="yes">
      <source>void all %n, call again</source>
      <translation>
        <numerusform>void it, call again</numerusform>
        <numerusform>void all %n, call again</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n readings are void (%1) and called again.</source>
      <translation>
        <numerusform>%n reading is void (%1) and called again.</numerusform>
        <numerusform>%n readings are void (%1) and called again.</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::SprayPage</name>
    <message numerus="yes">
      <source>The walk over %n points, as found, has not begun.</source>
      <translation>
        <numerusform>The walk over %n point, as found, has not begun.</numerusform>
        <numerusform>The walk over %n points, as found, has not begun.</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>SprayWords</name>
    <message numerus="yes">
      <source>about %n min left</source>
      <translation>
        <numerusform>about %n min left</numerusform>
        <numerusform>about %n min left</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::CallPanel</name>
    <message numerus="yes">
      <source>%n left out; </source>
      <translation>
        <numerusform>%n left out; </numerusform>
        <numerusform>%n left out; </numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Enter goes on with round %1: %n call(s) left</source>
      <translation>
        <numerusform>Enter goes on with round %1: %n call left</numerusform>
        <numerusform>Enter goes on with round %1: %n calls left</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>every point of it has an answer, or a reason: %n left out</source>
      <translation>
        <numerusform>every point of it has an answer, or a reason: %n left out</numerusform>
        <numerusform>every point of it has an answer, or a reason: %n left out</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::OpenEndsBar</name>
    <message numerus="yes">
      <source>%n point(s)</source>
      <translation>
        <numerusform>%n point</numerusform>
        <numerusform>%n points</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>%n reading(s) void; their points are called again.</source>
      <translation>
        <numerusform>%n reading void; its point is called again.</numerusform>
        <numerusform>%n readings void; their points are called again.</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::PlanDialog</name>
    <message numerus="yes">
      <source>%n point(s) · %1 min of spraying and waiting · %2 l of helium</source>
      <translation>
        <numerusform>%n point · %1 min of spraying and waiting · %2 l of helium</numerusform>
        <numerusform>%n points · %1 min of spraying and waiting · %2 l of helium</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::JointsModel</name>
    <message numerus="yes">
      <source>over the limit in %1 of %n job(s) in which it was tested</source>
      <translation>
        <numerusform>over the limit in %1 of %n job in which it was tested</numerusform>
        <numerusform>over the limit in %1 of %n jobs in which it was tested</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::SameObjectDialog</name>
    <message numerus="yes">
      <source>%n job(s)</source>
      <translation>
        <numerusform>%n job</numerusform>
        <numerusform>%n jobs</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::WalkPanel</name>
    <message numerus="yes">
      <source>round %1 (%n call(s))</source>
      <translation>
        <numerusform>round %1 (%n call)</numerusform>
        <numerusform>round %1 (%n calls)</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::render::SheetView</name>
    <message numerus="yes">
      <source>%n number(s) without room: zoom in</source>
      <translation>
        <numerusform>%n number without room: zoom in</numerusform>
        <numerusform>%n numbers without room: zoom in</numerusform>
      </translation>
    </message>
  </context>
  <context>
    <name>sealwalk::ui::ChecksModel</name>
    <message numerus="yes">
      <source>(%n more)</source>
      <translation>
        <numerusform>(%n more)</numerusform>
        <numerusform>(%n more)</numerusform>
      </translation>
    </message>
  </context>
</TS>
