<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>BlankSheet</name>
    <message>
        <source>%1, seen from %2</source>
        <translation>%1, gesehen von %2</translation>
    </message>
    <message>
        <source>date:</source>
        <translation>Datum:</translation>
    </message>
    <message>
        <source>who:</source>
        <translation>wer:</translation>
    </message>
    <message>
        <source>Blank sheet, page %1. Typed in afterwards, readings are marked as transcribed.</source>
        <translation>Leeres Blatt, Seite %1. Nachträglich eingetippte Messwerte sind als übertragen markiert.</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>joint, place</source>
        <translation>Verbindung, Stelle</translation>
    </message>
    <message>
        <source>background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>first rise</source>
        <translation>erster Anstieg</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>condition, remark</source>
        <translation>Zustand, Bemerkung</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Helium takes the place of air</source>
        <translation>Helium verdrängt die Luft</translation>
    </message>
    <message>
        <source>It has no smell and gives no warning; it gathers under roofs, in hoods and bags. Ventilate, use an oxygen alarm in small rooms and pits, never put your head in a bag.</source>
        <translation>Es riecht nicht und warnt nicht; es sammelt sich unter Dächern, in Hauben und Beuteln. Lüften, in kleinen Räumen und Gruben mit Sauerstoffwarner arbeiten, nie den Kopf in einen Beutel stecken.</translation>
    </message>
    <message>
        <source>Inside a chamber is a confined space</source>
        <translation>Das Innere einer Kammer ist ein enger Raum</translation>
    </message>
    <message>
        <source>Entry needs a permit, a gas test, an attendant, rescue, and gas, vent and power locked out.</source>
        <translation>Einsteigen nur mit Erlaubnisschein, Freimessung, Posten und Rettung, und wenn Gas, Belüftung und Strom gesperrt sind.</translation>
    </message>
    <message>
        <source>Glass under vacuum can burst inwards</source>
        <translation>Glas unter Vakuum kann nach innen bersten</translation>
    </message>
    <message>
        <source>Wear eye and face protection, keep guards on, do not knock, tighten or scratch.</source>
        <translation>Augen und Gesicht schützen, Abdeckungen lassen, nicht stoßen, nicht nachziehen, nicht zerkratzen.</translation>
    </message>
    <message>
        <source>Lids and doors are held by tonnes</source>
        <translation>Deckel und Türen werden von Tonnen gehalten</translation>
    </message>
    <message>
        <source>Never loosen a clamp or bolt before the object is fully vented.</source>
        <translation>Nie eine Klammer oder Schraube lösen, bevor ganz belüftet ist.</translation>
    </message>
    <message>
        <source>Venting can overpressure a chamber</source>
        <translation>Belüften kann eine Kammer unter Überdruck setzen</translation>
    </message>
    <message>
        <source>Use a regulator and a relief valve, and stay with it until it is done.</source>
        <translation>Druckminderer und Sicherheitsventil verwenden und dabei bleiben, bis es fertig ist.</translation>
    </message>
    <message>
        <source>A gas cylinder is a weapon when it falls</source>
        <translation>Eine Gasflasche wird zur Waffe, wenn sie fällt</translation>
    </message>
    <message>
        <source>Chain it upright, cap it to move it, fit the right regulator, open slowly.</source>
        <translation>Stehend anketten, zum Bewegen die Kappe aufsetzen, den richtigen Druckminderer nehmen, langsam öffnen.</translation>
    </message>
    <message>
        <source>Feedthroughs and pumps carry dangerous voltages</source>
        <translation>Durchführungen und Pumpen führen gefährliche Spannung</translation>
    </message>
    <message>
        <source>Isolate, lock, prove dead before touching; that is for qualified people.</source>
        <translation>Vor dem Berühren freischalten, sichern, Spannungsfreiheit feststellen; das ist Sache von Fachleuten.</translation>
    </message>
    <message>
        <source>Baked parts burn, cold parts burn too</source>
        <translation>Heißes verbrennt, Kaltes auch</translation>
    </message>
    <message>
        <source>Keep helium jets off hot glass and ceramic; cryogens also take the oxygen from the air.</source>
        <translation>Keinen Heliumstrahl auf heißes Glas oder Keramik; auch tiefkalte Gase nehmen der Luft den Sauerstoff.</translation>
    </message>
    <message>
        <source>Solvents burn, poison and spoil seals</source>
        <translation>Lösemittel brennen, vergiften und verderben Dichtungen</translation>
    </message>
    <message>
        <source>Keep them from hot pumps and switchgear, ventilate; they also plug leaks for a while.</source>
        <translation>Von heißen Pumpen und Schaltern fernhalten, lüften; sie verstopfen Lecks auch für eine Weile.</translation>
    </message>
    <message>
        <source>Process residue may be toxic, may catch fire, may radiate</source>
        <translation>Prozessrückstände können giftig sein, sich entzünden, strahlen</translation>
    </message>
    <message>
        <source>Ask what was run before you open or touch; mind the pump exhaust.</source>
        <translation>Vor dem Öffnen oder Anfassen fragen, was gefahren wurde; auf die Abluft der Pumpe achten.</translation>
    </message>
    <message>
        <source>A ladder and a hose do not go together</source>
        <translation>Leiter und Schlauch gehören nicht zusammen</translation>
    </message>
    <message>
        <source>Use a platform and a second person; mind the door and the hoist.</source>
        <translation>Eine Bühne und eine zweite Person; auf Tür und Hebezeug achten.</translation>
    </message>
    <message>
        <source>Welds and pressure parts are for licensed people</source>
        <translation>Schweißnähte und Druckteile sind Sache zugelassener Leute</translation>
    </message>
    <message>
        <source>Repairs there follow local law and are inspected again.</source>
        <translation>Reparaturen daran folgen dem Gesetz und werden erneut geprüft.</translation>
    </message>
</context>
<context>
    <name>Certificate</name>
    <message>
        <source>Changed since it was signed: %1</source>
        <translation>Geändert seit der Unterschrift: %1</translation>
    </message>
    <message>
        <source>, amended %1 by %2</source>
        <translation>, Nachtrag %1 von %2</translation>
    </message>
    <message>
        <source>
Amendment: “%1”</source>
        <translation>
Nachtrag: „%1“</translation>
    </message>
    <message>
        <source>Signed by %1, %2 %3, unchanged</source>
        <translation>Unterschrieben von %1, %2 %3, unverändert</translation>
    </message>
    <message>
        <source>“%1”
Fingerprint %2 …</source>
        <translation>„%1“
Fingerabdruck %2 …</translation>
    </message>
</context>
<context>
    <name>ContinuationWords</name>
    <message>
        <source>number, object or day of opening</source>
        <translation>Nummer, Objekt oder Tag der Eröffnung</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>sketch</source>
        <translation>Skizze</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>order of a round</source>
        <translation>Reihenfolge einer Runde</translation>
    </message>
    <message>
        <source>rounds closed</source>
        <translation>Runden abgeschlossen</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>void marks</source>
        <translation>Ungültig-Vermerke</translation>
    </message>
    <message>
        <source>system checks</source>
        <translation>Systemprüfungen</translation>
    </message>
    <message>
        <source>background watches</source>
        <translation>Untergrundbeobachtungen</translation>
    </message>
    <message>
        <source>pressure-rise tests</source>
        <translation>Druckanstiegstests</translation>
    </message>
    <message>
        <source>repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>judgements</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <source>concessions</source>
        <translation>Sonderfreigaben</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>eingereicht</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>amendments</source>
        <translation>Nachträge</translation>
    </message>
    <message>
        <source>turns of the review</source>
        <translation>Schritte der Durchsicht</translation>
    </message>
    <message>
        <source>signatures</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>readings: 12</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <comment>set-up changed</comment>
        <translation>%1 geändert</translation>
    </message>
    <message>
        <source>void marks of measurements</source>
        <translation>verworfene Messungen</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>It answered with %1, and no leak found elsewhere explains it.</source>
        <translation>Der Punkt sprach mit %1 an, und kein anderswo gefundenes Leck erklärt das.</translation>
    </message>
    <message>
        <source>It answered with %1; helium that went elsewhere and earlier responses explain %2 of it.</source>
        <translation>Der Punkt sprach mit %1 an; Helium, das anderswohin zog, und frühere Antworten erklären %2 davon.</translation>
    </message>
    <message>
        <source>It answers in the condition &quot;%1&quot;.</source>
        <translation>Er spricht im Zustand „%1“ an.</translation>
    </message>
    <message>
        <source>Dwell and helium share let %1 % of the full signal through; the size is corrected for that.</source>
        <translation>Sprühzeit und Heliumanteil lassen %1 % des vollen Signals durch; die Größe ist dafür berichtigt.</translation>
    </message>
    <message>
        <source>It answered with %1; one leak near the border to %2 explains both, and which stretch it lies on cannot be told. The size is that of the one leak.</source>
        <translation>Der Punkt sprach mit %1 an; ein Leck nahe der Grenze zu %2 erklärt beide, und auf welchem Abschnitt es liegt, ist nicht zu sagen. Die Größe ist die des einen Lecks.</translation>
    </message>
    <message>
        <source>Its %1 may be helium in the room, what earlier responses left, or a leak of its own too small to matter.</source>
        <translation>Seine %1 können Helium im Raum sein, ein Rest früherer Antworten oder ein eigenes Leck, das zu klein ist, um zu zählen.</translation>
    </message>
    <message>
        <source>Its reading and checks alone would end the range at %1; it ends at %2 because a probe that passed too fast or beside the leak shows less than there is.</source>
        <translation>Messwert und Prüfungen allein ließen den Bereich bei %1 enden; er endet bei %2, weil eine Sonde, die zu schnell oder neben dem Leck vorbeiging, weniger zeigt, als da ist.</translation>
    </message>
    <message>
        <source>Cannot say at %1: no response, but a leak above the limit could have stayed unseen.</source>
        <translation>Unklar an %1: keine Antwort, doch ein Leck über dem Grenzwert hätte unbemerkt bleiben können.</translation>
    </message>
    <message>
        <source>Its %1 is left over from earlier responses and helium in the room.</source>
        <translation>Seine %1 sind von früheren Antworten und Helium im Raum übrig.</translation>
    </message>
    <message>
        <source>Its %1 is the tail of the response at %2 that had not cleared yet.</source>
        <translation>Seine %1 sind der Ausklang der Antwort an %2, der noch nicht abgeklungen war.</translation>
    </message>
    <message>
        <source>Its %1 is explained by helium that reached the leak at %2.</source>
        <translation>Seine %1 erklären sich durch Helium, das das Leck an %2 erreichte.</translation>
    </message>
    <message>
        <source>A leak of its own above %1 would have shown.</source>
        <translation>Ein eigenes Leck über %1 hätte sich gezeigt.</translation>
    </message>
    <message>
        <source>Its %1 is far more than helium from elsewhere explains today, yet an odd draught could have brought it from a larger leak: %2 and spray it again by itself.</source>
        <translation>Seine %1 sind weit mehr, als Helium von anderswo heute erklärt, doch ein Luftzug könnte es von einem größeren Leck gebracht haben: %2 und ihn allein noch einmal besprühen.</translation>
    </message>
    <message>
        <source>A leak of up to %1 could hide in what earlier responses and helium in the room left here: wait until the background is down and spray again.</source>
        <translation>In dem, was frühere Antworten und Helium im Raum hier übrig ließen, könnte ein Leck bis %1 verborgen sein: warten, bis der Untergrund unten ist, und noch einmal sprühen.</translation>
    </message>
    <message>
        <source>It was sprayed on the tail of the response at %1, in which a leak of up to %2 could hide: wait until the background is down, or seal or bag %3, and spray again.</source>
        <translation>Er wurde im Ausklang der Antwort an %1 besprüht, in dem ein Leck bis %2 verborgen sein könnte: warten, bis der Untergrund unten ist, oder %3 abdichten oder einhüllen, und noch einmal sprühen.</translation>
    </message>
    <message>
        <source>Helium that reached the leak at %1 may explain its %2, but a leak of up to %3 could hide in that: seal or bag %4 and spray again.</source>
        <translation>Helium, das das Leck an %1 erreichte, kann seine %2 erklären, aber ein Leck bis %3 könnte darin verborgen sein: %4 abdichten oder einhüllen und noch einmal sprühen.</translation>
    </message>
    <message>
        <source>No response; a leak above %1 would have shown at that moment.</source>
        <translation>Keine Antwort; ein Leck über %1 hätte sich in diesem Moment gezeigt.</translation>
    </message>
    <message>
        <source>That is more than the limit, so this does not pass it: spray again with a lower background or a longer dwell.</source>
        <translation>Das ist mehr als der Grenzwert, also besteht er damit nicht: mit niedrigerem Untergrund oder längerer Sprühzeit noch einmal sprühen.</translation>
    </message>
    <message>
        <source>All its readings are void.</source>
        <translation>Alle seine Messwerte sind verworfen.</translation>
    </message>
    <message>
        <source>Its reading is void.</source>
        <translation>Sein Messwert ist verworfen.</translation>
    </message>
    <message>
        <source>It has no reading.</source>
        <translation>Er hat keinen Messwert.</translation>
    </message>
    <message>
        <source>%1 judged %2, %3: %4; computed was %5, %6</source>
        <translation>%1 urteilte %2, %3: %4; berechnet war %5, %6</translation>
    </message>
    <message>
        <source>its concession ran out on %1</source>
        <translation>seine Sonderfreigabe lief am %1 ab</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>the background was %1 times that of the last quiet watch</source>
        <translation>der Untergrund war das %1-Fache der letzten ruhigen Beobachtung</translation>
    </message>
    <message>
        <source>no quiet watch of the background: what could have been seen is not known</source>
        <translation>keine ruhige Beobachtung des Untergrunds: was zu sehen gewesen wäre, ist nicht bekannt</translation>
    </message>
    <message>
        <source>the helium share of the spray is not above zero</source>
        <translation>der Heliumanteil beim Sprühen ist nicht größer als null</translation>
    </message>
    <message>
        <source>what could have been seen at that moment, %1, is above the limit, %2</source>
        <translation>was in diesem Moment zu sehen gewesen wäre, %1, liegt über dem Grenzwert, %2</translation>
    </message>
    <message>
        <source>more than the detector can show</source>
        <translation>mehr, als der Lecksucher anzeigen kann</translation>
    </message>
    <message>
        <source>the reading has no value</source>
        <translation>der Messwert hat keinen Wert</translation>
    </message>
    <message>
        <source>the background just before was not recorded; zero is taken</source>
        <translation>der Untergrund kurz davor wurde nicht notiert; es gilt null</translation>
    </message>
    <message>
        <source>belongs to the test set-up, not to the object</source>
        <translation>gehört zum Prüfaufbau, nicht zum Objekt</translation>
    </message>
    <message>
        <source>was found only in another condition</source>
        <translation>wurde nur in einem anderen Zustand gefunden</translation>
    </message>
    <message>
        <source>void: %1</source>
        <translation>verworfen: %1</translation>
    </message>
    <message>
        <source>The first rise came %1 s after the helium, later than this system answers: a leak in series behind a space, or helium that drifted to %2. Spray %3 again with less flow, and bag this one, before it is taken apart.</source>
        <translation>Der erste Anstieg kam %1 s nach dem Helium, später, als dieser Aufbau anspricht: ein Leck in Reihe hinter einem Zwischenraum, oder Helium, das zu %2 zog. %3 mit weniger Helium noch einmal besprühen und diesen einhüllen, bevor er zerlegt wird.</translation>
    </message>
    <message>
        <source>The first rise came %1 s after the helium, as late as permeation through an elastomer: give it a short burst of 5 to 10 s; no answer means permeation.</source>
        <translation>Der erste Anstieg kam %1 s nach dem Helium, so spät wie Durchlässigkeit eines Elastomers: einen kurzen Stoß von 5 bis 10 s geben; keine Antwort heißt Durchlässigkeit.</translation>
    </message>
    <message>
        <source>The first rise came %1 s after the helium and a short burst got no answer: helium permeates through the seal, there is no open leak.</source>
        <translation>Der erste Anstieg kam %1 s nach dem Helium, und ein kurzer Stoß blieb ohne Antwort: Helium dringt durch die Dichtung, es ist kein offenes Leck.</translation>
    </message>
    <message>
        <source>The first rise came %1 s after the helium, as late as helium that has to drift.</source>
        <translation>Der erste Anstieg kam %1 s nach dem Helium, so spät wie Helium, das erst ziehen muss.</translation>
    </message>
    <message>
        <source>probe, distance and speed from one spray to the next</source>
        <translation>Sonde, Abstand und Tempo von einem Sprühen zum nächsten</translation>
    </message>
    <message>
        <source>response time not known, full signal assumed</source>
        <translation>Ansprechzeit nicht bekannt, volles Signal angenommen</translation>
    </message>
    <message>
        <source>dwell not recorded, full signal assumed</source>
        <translation>Sprühzeit nicht notiert, volles Signal angenommen</translation>
    </message>
    <message>
        <source>%1 s at a response time of %2 s, %3</source>
        <translation>%1 s bei einer Ansprechzeit von %2 s, %3</translation>
    </message>
    <message>
        <source>%1 % helium at the joint</source>
        <translation>%1 % Helium an der Fügestelle</translation>
    </message>
    <message>
        <source>certificate, temperature and age of the reference leak</source>
        <translation>Zertifikat, Temperatur und Alter des Prüflecks</translation>
    </message>
    <message>
        <source>system check at %1</source>
        <translation>Systemprüfung an %1</translation>
    </message>
    <message>
        <source>mean of the system checks before and after, at %1</source>
        <translation>Mittel der Systemprüfungen davor und danach, an %1</translation>
    </message>
    <message>
        <source>from one check to the next</source>
        <translation>von einer Prüfung zur nächsten</translation>
    </message>
    <message>
        <source>detector alone, taken from its inlet</source>
        <translation>Lecksucher allein, von seinem Eingang</translation>
    </message>
    <message>
        <source>speeds of detector and auxiliary pump; a reference leak on the object would measure it</source>
        <translation>Saugvermögen von Lecksucher und Hilfspumpe; ein Prüfleck am Objekt würde es messen</translation>
    </message>
    <message>
        <source>reference leak on the detector</source>
        <translation>Prüfleck am Lecksucher</translation>
    </message>
    <message>
        <source>the check at %1 is not usable: %2</source>
        <translation>die Prüfung an %1 ist nicht brauchbar: %2</translation>
    </message>
    <message>
        <source>the reading is older than the first check; the check made afterwards is used</source>
        <translation>der Messwert ist älter als die erste Prüfung; es gilt die danach gemachte</translation>
    </message>
    <message>
        <source>an auxiliary pump takes part of the helium and the detector&apos;s own speed is not known</source>
        <translation>eine Hilfspumpe nimmt einen Teil des Heliums, und das Saugvermögen des Lecksuchers ist nicht bekannt</translation>
    </message>
    <message>
        <source>the certificate of the reference leak has no date; its age is not corrected</source>
        <translation>das Zertifikat des Prüflecks hat kein Datum; sein Alter ist nicht berichtigt</translation>
    </message>
    <message>
        <source>the reference leak was past its due date</source>
        <translation>das Prüfleck war über seinem Fälligkeitstag</translation>
    </message>
    <message>
        <source>no check with a reference leak on the object; the factor comes from the detector&apos;s inlet</source>
        <translation>keine Prüfung mit Prüfleck am Objekt; der Faktor kommt vom Eingang des Lecksuchers</translation>
    </message>
    <message>
        <source>no usable check with a reference leak: what the display shows is not yet a leak rate</source>
        <translation>keine brauchbare Prüfung mit Prüfleck: was die Anzeige zeigt, ist noch keine Leckrate</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>points %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>%1, %2 mm above</source>
        <translation>%1, %2 mm darüber</translation>
    </message>
    <message>
        <source>%1, %2 mm below</source>
        <translation>%1, %2 mm darunter</translation>
    </message>
    <message>
        <source>%1, %2 mm to the side</source>
        <translation>%1, %2 mm seitlich</translation>
    </message>
    <message>
        <source>%1, %2 mm above and %3 mm to the side</source>
        <translation>%1, %2 mm darüber und %3 mm seitlich</translation>
    </message>
    <message>
        <source>%1, %2 mm below and %3 mm to the side</source>
        <translation>%1, %2 mm darunter und %3 mm seitlich</translation>
    </message>
    <message>
        <source>another joint</source>
        <translation>einer anderen Fügestelle</translation>
    </message>
    <message>
        <source>beside it</source>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>the larger leak at %1</source>
        <translation>dem größeren Leck an %1</translation>
    </message>
    <message>
        <source>seal or bag the larger leaks</source>
        <translation>die größeren Lecks abdichten oder einhüllen</translation>
    </message>
    <message>
        <source>seal or bag %1</source>
        <translation>%1 abdichten oder einhüllen</translation>
    </message>
    <message>
        <source>the object</source>
        <translation>dem Objekt</translation>
    </message>
    <message>
        <source>then</source>
        <translation>damals</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>Leck</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>geteilt</translation>
    </message>
    <message>
        <source>shared leak</source>
        <translation>geteiltes Leck</translation>
    </message>
    <message>
        <source>echo</source>
        <translation>Echo</translation>
    </message>
    <message>
        <source>echo of %1</source>
        <translation>Echo von %1</translation>
    </message>
    <message>
        <source>masked</source>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>permeation</source>
        <translation>Durchlässigkeit</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>below detectable</source>
        <translation>unter nachweisbar</translation>
    </message>
    <message>
        <source>no response, too blind to pass</source>
        <translation>keine Antwort, zu blind zum Bestehen</translation>
    </message>
    <message>
        <source>void</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>not accessible</source>
        <translation>nicht zugänglich</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not sprayed</source>
        <translation>nicht besprüht</translation>
    </message>
    <message>
        <source>repaired, awaiting re-test</source>
        <translation>repariert, neue Prüfung steht aus</translation>
    </message>
    <message>
        <source>answered, not judged yet</source>
        <translation>geantwortet, noch nicht beurteilt</translation>
    </message>
    <message>
        <source>over</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>within</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation>über dem Grenzwert</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>within the limit</source>
        <translation>unter dem Grenzwert</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>temporary repair</source>
        <translation>vorläufige Reparatur</translation>
    </message>
    <message>
        <source>temporary repair, due %1</source>
        <translation>vorläufige Reparatur, fällig %1</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation>in Ruhe</translation>
    </message>
    <message>
        <source>flexed</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>extended</source>
        <translation>ausgezogen</translation>
    </message>
    <message>
        <source>at an angle</source>
        <translation>abgewinkelt</translation>
    </message>
    <message>
        <source>hot</source>
        <translation>heiß</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>kalt</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>dried</source>
        <translation>getrocknet</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>half open</source>
        <translation>halb offen</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>taped</source>
        <translation>abgeklebt</translation>
    </message>
    <message>
        <source>bagged</source>
        <translation>eingehüllt</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anders</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>vorgefunden</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>hinterlassen</translation>
    </message>
    <message>
        <source>between repairs</source>
        <translation>zwischen Reparaturen</translation>
    </message>
    <message>
        <source>after repair</source>
        <translation>nach der Reparatur</translation>
    </message>
    <message>
        <source>in another condition</source>
        <translation>in anderem Zustand</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>helium</source>
        <translation>Helium</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>for one joint: %1</source>
        <translation>für eine Stelle: %1</translation>
    </message>
    <message>
        <source>for all together: %1</source>
        <translation>für alle zusammen: %1</translation>
    </message>
    <message>
        <source>located</source>
        <translation>geortet</translation>
    </message>
    <message>
        <source>located %1</source>
        <translation>geortet %1</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>coming in</source>
        <translation>strömt ein</translation>
    </message>
    <message>
        <source>pressure rise</source>
        <translation>Druckanstieg</translation>
    </message>
    <message>
        <source>at most, not separable</source>
        <translation>höchstens, nicht trennbar</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>limit, total</source>
        <translation>Grenze, Summe</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>after</source>
        <translation>danach</translation>
    </message>
    <message>
        <source>walls, pump</source>
        <translation>Wände, Pumpe</translation>
    </message>
    <message>
        <source>walls</source>
        <translation>Wände</translation>
    </message>
    <message>
        <source>not located</source>
        <translation>nicht geortet</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>choose a point</source>
        <translation>einen Punkt wählen</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>noise</source>
        <translation>Rauschen</translation>
    </message>
    <message>
        <source>3 × noise</source>
        <translation>3 × Rauschen</translation>
    </message>
    <message>
        <source>%1 × noise</source>
        <translation>%1 × Rauschen</translation>
    </message>
    <message>
        <source>smallest detectable</source>
        <translation>kleinstes nachweisbares</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>nothing to plot</source>
        <translation>nichts zu zeichnen</translation>
    </message>
    <message>
        <source>walls, fading</source>
        <translation>Wände, abklingend</translation>
    </message>
    <message>
        <source>leak, %1</source>
        <translation>Leck, %1</translation>
    </message>
    <message>
        <source>leak: none found</source>
        <translation>Leck: keines gefunden</translation>
    </message>
    <message>
        <source>measured less sum</source>
        <translation>gemessen minus Summe</translation>
    </message>
    <message>
        <source>not separable: run %1 min longer</source>
        <translation>nicht trennbar: %1 min weiterlaufen lassen</translation>
    </message>
    <message>
        <source>Pressure rise</source>
        <translation>Druckanstieg</translation>
    </message>
    <message>
        <source>Balance of located leaks and pressure rise, as air</source>
        <translation>Bilanz aus georteten Lecks und Druckanstieg, als Luft</translation>
    </message>
    <message>
        <source>no leak with a rate and no pressure-rise test yet</source>
        <translation>noch kein Leck mit Rate und kein Druckanstieg</translation>
    </message>
    <message>
        <source>What makes up the base pressure, now and after the ticked repairs</source>
        <translation>Was den Enddruck ausmacht, jetzt und nach den angehakten Reparaturen</translation>
    </message>
    <message>
        <source>the pumping speed at the chamber is not known: the base pressure cannot be divided</source>
        <translation>das Saugvermögen an der Kammer ist nicht bekannt: der Enddruck ist nicht aufzuteilen</translation>
    </message>
    <message>
        <source>no base pressure of this state: it is noted with a pressure rise</source>
        <translation>kein Enddruck dieses Zustands: er wird mit einem Druckanstieg notiert</translation>
    </message>
    <message>
        <source>pressure from %1 to %2 mbar in %3 minutes; %4</source>
        <translation>Druck von %1 bis %2 mbar in %3 Minuten; %4</translation>
    </message>
    <message>
        <source>Not separable: the leak is at most %1 air</source>
        <translation>Nicht trennbar: das Leck ist höchstens %1 Luft</translation>
    </message>
    <message>
        <source>No leak found: only gas that exhausts itself; a leak is below %1 air</source>
        <translation>Kein Leck gefunden: nur Gas, das sich erschöpft; ein Leck liegt unter %1 Luft</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>from above</source>
        <translation>von oben</translation>
    </message>
    <message>
        <source>%1 o&apos;clock</source>
        <translation>%1 Uhr</translation>
    </message>
    <message>
        <source>%1 o&apos;clock, seen from %2</source>
        <translation>%1 Uhr, gesehen von %2</translation>
    </message>
    <message>
        <source>%1 mm from the start</source>
        <translation>%1 mm vom Anfang</translation>
    </message>
    <message>
        <source>millibar litre per second</source>
        <translation>Millibar Liter pro Sekunde</translation>
    </message>
    <message>
        <source>pascal cubic metre per second</source>
        <translation>Pascal Kubikmeter pro Sekunde</translation>
    </message>
    <message>
        <source>torr litre per second</source>
        <translation>Torr Liter pro Sekunde</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>Each job is judged by its own limit, job %1 → job %2; %3.</source>
        <translation>Jeder Auftrag wird nach seinem eigenen Grenzwert beurteilt, Auftrag %1 → Auftrag %2; %3.</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>zu sehen</translation>
    </message>
    <message>
        <source>detectable</source>
        <translation>nachweisbar</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>kleinstes</translation>
    </message>
    <message>
        <source>The pressure-rise record gives no answer: %1.</source>
        <translation>Die Aufzeichnung des Druckanstiegs gibt keine Antwort: %1.</translation>
    </message>
    <message>
        <source>The balance gives no answer: %1.</source>
        <translation>Die Bilanz gibt keine Antwort: %1.</translation>
    </message>
    <message>
        <source>%1 millibar litre per second</source>
        <translation>%1 Millibar Liter pro Sekunde</translation>
    </message>
    <message>
        <source>%1 pascal cubic metre per second</source>
        <translation>%1 Pascal Kubikmeter pro Sekunde</translation>
    </message>
    <message>
        <source>%1 torr litre per second</source>
        <translation>%1 Torr Liter pro Sekunde</translation>
    </message>
    <message>
        <source>%1 millibar litre per second of air</source>
        <translation>%1 Millibar Liter pro Sekunde Luft</translation>
    </message>
    <message>
        <source>masked by %1</source>
        <translation>verdeckt von %1</translation>
    </message>
    <message>
        <source>shared leak with %1</source>
        <translation>geteiltes Leck mit %1</translation>
    </message>
    <message>
        <source>95 % range %1 to %2</source>
        <translation>95-%-Bereich %1 bis %2</translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>fehlt %1</translation>
    </message>
    <message>
        <source>coming in %1</source>
        <translation>strömt ein %1</translation>
    </message>
    <message>
        <source>coming in at most %1</source>
        <translation>strömt ein höchstens %1</translation>
    </message>
    <message>
        <source>repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>reference leak</source>
        <translation>Prüfleck</translation>
    </message>
    <message>
        <source>system factor</source>
        <translation>Systemfaktor</translation>
    </message>
    <message>
        <source>change of the system factor</source>
        <translation>Änderung des Systemfaktors</translation>
    </message>
    <message>
        <source>share to the detector</source>
        <translation>Anteil zum Lecksucher</translation>
    </message>
    <message>
        <source>detector factor</source>
        <translation>Lecksucherfaktor</translation>
    </message>
    <message>
        <source>dwell</source>
        <translation>Sprühzeit</translation>
    </message>
    <message>
        <source>helium share</source>
        <translation>Heliumanteil</translation>
    </message>
    <message>
        <source>no pressure-rise test to hold the located leaks against; run one with the pumps valved off</source>
        <translation>kein Druckanstieg, an dem die georteten Lecks zu messen wären; einen mit abgesperrten Pumpen machen</translation>
    </message>
    <message>
        <source>the pressure-rise record does not part leak from outgassing; only an upper bound of what is missing is known</source>
        <translation>die Aufzeichnung trennt Leck und Ausgasung nicht; vom Fehlenden ist nur eine obere Schranke bekannt</translation>
    </message>
    <message>
        <source>%1 of the total is not located (%2 to %3): something is still missing</source>
        <translation>%1 der Summe sind nicht geortet (%2 bis %3): es fehlt noch etwas</translation>
    </message>
    <message>
        <source>the located leaks exceed the total: look for a leak counted twice, a system factor that changed, or another state of the chamber</source>
        <translation>die georteten Lecks übersteigen die Summe: nach einem doppelt gezählten Leck suchen, einem geänderten Systemfaktor oder einem anderen Zustand der Kammer</translation>
    </message>
    <message>
        <source>the pressure rise shows no leak within its range; nothing located contradicts it</source>
        <translation>der Druckanstieg zeigt in seinem Bereich kein Leck; nichts Geortetes widerspricht dem</translation>
    </message>
    <message>
        <source>by best estimate %1 of the total is not located, but the ranges allow for anything up to %2: spray the points left out and seal or repair the largest leak, then look again</source>
        <translation>nach bester Schätzung sind %1 der Summe nicht geortet, aber die Bereiche lassen alles bis %2 zu: die ausgelassenen Punkte besprühen und das größte Leck abdichten oder reparieren, dann neu sehen</translation>
    </message>
    <message>
        <source>the located leaks account for the total within the ranges; up to %1 could still be missing</source>
        <translation>die georteten Lecks erklären die Summe innerhalb der Bereiche; bis zu %1 könnten noch fehlen</translation>
    </message>
    <message>
        <source>no total limit and no wanted pressure to repair towards</source>
        <translation>keine Grenze für die Summe und kein gewünschter Druck, auf die zu reparieren wäre</translation>
    </message>
    <message>
        <source>repairing every located leak is not enough; what is not located must be found, or the limit is below the outgassing</source>
        <translation>jedes geortete Leck zu reparieren genügt nicht; das nicht Geortete muss gefunden werden, oder die Grenze liegt unter der Ausgasung</translation>
    </message>
    <message>
        <source>the leaks together are already as small as asked</source>
        <translation>die Lecks zusammen sind schon so klein wie verlangt</translation>
    </message>
    <message>
        <source>repairing %1 is enough</source>
        <translation>%1 zu reparieren genügt</translation>
    </message>
    <message>
        <source>%1 repairs are enough, from %2 on</source>
        <translation>%1 Reparaturen genügen, von %2 an</translation>
    </message>
    <message>
        <source>points without a reading: %1</source>
        <translation>Punkte ohne Messwert: %1</translation>
    </message>
    <message>
        <source>points whose readings are void: %1</source>
        <translation>Punkte, deren Messwerte verworfen sind: %1</translation>
    </message>
    <message>
        <source>points that could hide a leak: %1</source>
        <translation>Punkte, die ein Leck verbergen könnten: %1</translation>
    </message>
    <message>
        <source>the leak that point %1 shares with %2 is counted once</source>
        <translation>das Leck, das Punkt %1 mit %2 teilt, zählt einmal</translation>
    </message>
    <message>
        <source>point %1 has no located leak; repairing it changes no figure here</source>
        <translation>Punkt %1 hat kein geortetes Leck; ihn zu reparieren ändert hier keine Zahl</translation>
    </message>
    <message>
        <source>the pressure rise on record was measured on the other side of a repair: the total of this state is not known until it is measured again</source>
        <translation>der notierte Druckanstieg wurde auf der anderen Seite einer Reparatur gemessen: die Summe dieses Zustands ist nicht bekannt, bis neu gemessen wird</translation>
    </message>
    <message>
        <source>without the volume the pressure rise cannot be worked out</source>
        <translation>ohne das Volumen ist der Druckanstieg nicht auszurechnen</translation>
    </message>
    <message>
        <source>without the pumping speed for air at the chamber the base pressure cannot be worked out</source>
        <translation>ohne das Saugvermögen für Luft an der Kammer ist der Enddruck nicht auszurechnen</translation>
    </message>
    <message>
        <source>open: cures until %1</source>
        <translation>offen: härtet bis %1</translation>
    </message>
    <message>
        <source>open: not all sprayed again</source>
        <translation>offen: nicht alle neu besprüht</translation>
    </message>
    <message>
        <source>open: sprayed again, still over the limit</source>
        <translation>offen: neu besprüht, noch über dem Grenzwert</translation>
    </message>
    <message>
        <source>open: sprayed again, cannot say</source>
        <translation>offen: neu besprüht, unklar</translation>
    </message>
    <message>
        <source>sprayed again; no pressure rise since</source>
        <translation>neu besprüht; seither kein Druckanstieg</translation>
    </message>
    <message>
        <source>proven: sprayed again, total measured</source>
        <translation>erwiesen: neu besprüht, Summe gemessen</translation>
    </message>
    <message>
        <source>repaired again later</source>
        <translation>später noch einmal repariert</translation>
    </message>
    <message>
        <source>Vacuum-compatible grease only, and sparingly: a seal that passes only because it is wet is not repaired.</source>
        <translation>Nur vakuumtaugliches Fett, und sparsam: eine Dichtung, die nur besteht, weil sie nass ist, ist nicht repariert.</translation>
    </message>
    <message>
        <source>Polish along the seal line, never across it, and never a knife edge; keep the grit out.</source>
        <translation>Längs der Dichtlinie polieren, nie quer dazu und nie eine Schneide; den Abrieb fernhalten.</translation>
    </message>
    <message>
        <source>Let a filler cure fully before pumping and before helium; ventilate, and mind the maker&apos;s sheet.</source>
        <translation>Eine Füllmasse vor dem Pumpen und vor dem Helium ganz aushärten lassen; lüften und das Blatt des Herstellers beachten.</translation>
    </message>
    <message>
        <source>Let a filler cure fully before pumping and before helium.</source>
        <translation>Eine Füllmasse vor dem Pumpen und vor dem Helium ganz aushärten lassen.</translation>
    </message>
    <message>
        <source>Tape and putty prove the place or keep pumps alive; they are no repair.</source>
        <translation>Band und Kitt beweisen die Stelle oder schonen die Pumpen; eine Reparatur sind sie nicht.</translation>
    </message>
    <message>
        <source>Hot work needs its permit, a vented and purged vessel and qualified people; pressure parts follow the local code.</source>
        <translation>Heißarbeit braucht ihre Erlaubnis, einen belüfteten und gespülten Behälter und befähigte Leute; für Druckteile gelten die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Hot work needs its permit and qualified people; heat may open the neighbours.</source>
        <translation>Heißarbeit braucht ihre Erlaubnis und befähigte Leute; Wärme kann die Nachbarn öffnen.</translation>
    </message>
    <message>
        <source>Tighten in sequence and small steps to the stated torque; never glass under vacuum.</source>
        <translation>Der Reihe nach in kleinen Schritten auf das angegebene Moment anziehen; Glas nie unter Vakuum.</translation>
    </message>
    <message>
        <source>Never use a metal gasket twice; look at both edges.</source>
        <translation>Eine Metalldichtung nie zweimal verwenden; beide Schneiden ansehen.</translation>
    </message>
    <message>
        <source>Wipe without lint; solvents need ventilation and no flame, and elastomers take them up.</source>
        <translation>Fusselfrei wischen; Lösemittel brauchen Lüftung und keine Flamme, und Elastomere nehmen sie auf.</translation>
    </message>
    <message>
        <source>Support the weight, keep the bend; spray it at rest and moved.</source>
        <translation>Das Gewicht stützen, den Bogen halten; in Ruhe und bewegt besprühen.</translation>
    </message>
    <message>
        <source>Tag it and tell operations.</source>
        <translation>Kennzeichnen und dem Betrieb melden.</translation>
    </message>
    <message>
        <source>Solvents: ventilate, no flame, gloves.</source>
        <translation>Lösemittel: lüften, keine Flamme, Handschuhe.</translation>
    </message>
    <message>
        <source>Vent fully before anything is loosened: lids and flanges are held by great force. Site rules and licensed people come first.</source>
        <translation>Ganz belüften, bevor etwas gelöst wird: Deckel und Flansche werden mit großer Kraft gehalten. Regeln am Ort und zugelassene Leute gehen vor.</translation>
    </message>
    <message>
        <source>%1 then, %2 now</source>
        <translation>damals %1, jetzt %2</translation>
    </message>
    <message>
        <source>%1 %2, which need not have shown %3: seen was only what is above %4</source>
        <translation>%2 %1, was sich %3 nicht hätte zeigen müssen: zu sehen war nur, was über %4 liegt</translation>
    </message>
    <message>
        <source>%1 now; below %2 then</source>
        <translation>jetzt %1; damals unter %2</translation>
    </message>
    <message>
        <source>%1 then; below %2 now</source>
        <translation>damals %1; jetzt unter %2</translation>
    </message>
    <message>
        <source>another condition: %1 then, %2 now</source>
        <translation>anderer Zustand: damals %1, jetzt %2</translation>
    </message>
    <message>
        <source>there was no such point then</source>
        <translation>damals gab es diesen Punkt nicht</translation>
    </message>
    <message>
        <source>the point is no longer there</source>
        <translation>den Punkt gibt es nicht mehr</translation>
    </message>
    <message>
        <source>no response both times, but %1 only what is above %2 would have shown, %3 what is above %4</source>
        <translation>beide Male keine Antwort, aber %1 hätte sich nur gezeigt, was über %2 liegt, %3 was über %4 liegt</translation>
    </message>
    <message>
        <source>no response both times, below %1 then and %2 now</source>
        <translation>beide Male keine Antwort, damals unter %1 und jetzt unter %2</translation>
    </message>
    <message>
        <source>echo %1, its own part below %2</source>
        <translation>%1 Echo, der eigene Teil unter %2</translation>
    </message>
    <message>
        <source>masked %1, its own part below %2</source>
        <translation>%1 verdeckt, der eigene Teil unter %2</translation>
    </message>
    <message>
        <source>without a size %1</source>
        <translation>%1 ohne Größe</translation>
    </message>
    <message>
        <source>void %1</source>
        <translation>%1 verworfen</translation>
    </message>
    <message>
        <source>not accessible %1</source>
        <translation>%1 nicht zugänglich</translation>
    </message>
    <message>
        <source>not tested %1</source>
        <translation>%1 nicht geprüft</translation>
    </message>
    <message>
        <source>not sprayed %1</source>
        <translation>%1 nicht besprüht</translation>
    </message>
    <message>
        <source>Right object, drawing and procedure?</source>
        <translation>Richtiges Objekt, Zeichnung und Verfahren?</translation>
    </message>
    <message>
        <source>Limit set, with gas and unit, and agreed by name?</source>
        <translation>Grenzwert gesetzt, mit Gas und Einheit, und namentlich vereinbart?</translation>
    </message>
    <message>
        <source>Reference leak in date, with value and temperature?</source>
        <translation>Prüfleck nicht überfällig, mit Wert und Temperatur?</translation>
    </message>
    <message>
        <source>System check before and after, and the change acceptable?</source>
        <translation>Systemprüfung davor und danach, und die Änderung annehmbar?</translation>
    </message>
    <message>
        <source>Smallest detectable leak below the limit everywhere?</source>
        <translation>Kleinstes nachweisbares Leck überall unter dem Grenzwert?</translation>
    </message>
    <message>
        <source>Background watched, and quiet?</source>
        <translation>Untergrund beobachtet und ruhig?</translation>
    </message>
    <message>
        <source>Has every point a state?</source>
        <translation>Hat jeder Punkt einen Stand?</translation>
    </message>
    <message>
        <source>Joints present that are usually forgotten, the test set-up first?</source>
        <translation>Fügestellen da, die man gern vergisst, der Prüfaufbau zuerst?</translation>
    </message>
    <message>
        <source>Every reading with background and enough dwell?</source>
        <translation>Jeder Messwert mit Untergrund und genug Sprühzeit?</translation>
    </message>
    <message>
        <source>Every response over the limit confirmed or judged?</source>
        <translation>Jede Antwort über dem Grenzwert bestätigt oder beurteilt?</translation>
    </message>
    <message>
        <source>Permeation: elastomer, with a recorded delay?</source>
        <translation>Durchlässigkeit: Elastomer, mit notierter Verzögerung?</translation>
    </message>
    <message>
        <source>Corrected values, not shown ones, compared with the limit?</source>
        <translation>Berichtigte, nicht angezeigte Werte mit dem Grenzwert verglichen?</translation>
    </message>
    <message>
        <source>Any value a thousand times off its neighbours?</source>
        <translation>Ein Wert tausendfach neben seinen Nachbarn?</translation>
    </message>
    <message>
        <source>Failed points repaired and sprayed again, or conceded?</source>
        <translation>Gefallene Punkte repariert und neu besprüht, oder freigegeben?</translation>
    </message>
    <message>
        <source>Temporary repairs with owner and date?</source>
        <translation>Vorläufige Reparaturen mit Verantwortlichem und Datum?</translation>
    </message>
    <message>
        <source>Conditions covered that the joints ask for?</source>
        <translation>Zustände geprüft, die die Fügestellen verlangen?</translation>
    </message>
    <message>
        <source>Located leaks add up to the total?</source>
        <translation>Ergeben die georteten Lecks die Summe?</translation>
    </message>
    <message>
        <source>Object dry, nothing plugged?</source>
        <translation>Objekt trocken, nichts verstopft?</translation>
    </message>
    <message>
        <source>Concessions granted by someone with the right?</source>
        <translation>Sonderfreigaben von jemandem mit dem Recht dazu?</translation>
    </message>
    <message>
        <source>Tester qualified for this work?</source>
        <translation>Prüfer für diese Arbeit befähigt?</translation>
    </message>
    <message>
        <source>Compared with the last job?</source>
        <translation>Mit dem letzten Auftrag verglichen?</translation>
    </message>
    <message>
        <source>Does the statement claim no more than was tested?</source>
        <translation>Behauptet die Aussage nicht mehr, als geprüft wurde?</translation>
    </message>
    <message>
        <source>Sheets readable: side they are seen from, up direction?</source>
        <translation>Blätter lesbar: von welcher Seite gesehen, wo oben ist?</translation>
    </message>
    <message>
        <source>Repaired and not sprayed again: %1.</source>
        <translation>Repariert und nicht neu besprüht: %1.</translation>
    </message>
    <message>
        <source>Repaired, or disturbed by a repair, and not sprayed again: %1.</source>
        <translation>Repariert oder von einer Reparatur gestört und nicht neu besprüht: %1.</translation>
    </message>
    <message>
        <source>Over the limit, with no repair and no concession: %1.</source>
        <translation>Über dem Grenzwert, ohne Reparatur und ohne Sonderfreigabe: %1.</translation>
    </message>
    <message>
        <source>Still over the limit after repair: %1.</source>
        <translation>Nach der Reparatur noch über dem Grenzwert: %1.</translation>
    </message>
    <message>
        <source>No pressure rise since the last repair: the total is not proven.</source>
        <translation>Kein Druckanstieg seit der letzten Reparatur: die Summe ist nicht erwiesen.</translation>
    </message>
    <message>
        <source>Every failed point was repaired and sprayed again, or conceded.</source>
        <translation>Jeder gefallene Punkt wurde repariert und neu besprüht, oder freigegeben.</translation>
    </message>
    <message>
        <source>A temporary repair at %1 has no owner or date.</source>
        <translation>Eine vorläufige Reparatur an %1 hat keinen Verantwortlichen oder kein Datum.</translation>
    </message>
    <message>
        <source>The temporary repair at %1 was due on %2.</source>
        <translation>Die vorläufige Reparatur an %1 war am %2 fällig.</translation>
    </message>
    <message>
        <source>No temporary repairs.</source>
        <translation>Keine vorläufigen Reparaturen.</translation>
    </message>
    <message>
        <source>%1 temporary, each with owner and date.</source>
        <translation>%1 vorläufige, jede mit Verantwortlichem und Datum.</translation>
    </message>
    <message>
        <source>The volume is not known; the pressure rise says nothing without it.</source>
        <translation>Das Volumen ist nicht bekannt; ohne es sagt der Druckanstieg nichts.</translation>
    </message>
    <message>
        <source>The last pressure rise is from before a repair: the total as left is not known.</source>
        <translation>Der letzte Druckanstieg ist von vor einer Reparatur: die hinterlassene Summe ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Still being compared.</source>
        <translation>Wird noch verglichen.</translation>
    </message>
    <message>
        <source>There is no earlier job.</source>
        <translation>Es gibt keinen früheren Auftrag.</translation>
    </message>
    <message>
        <source>Not compared with job %1.</source>
        <translation>Nicht mit Auftrag %1 verglichen.</translation>
    </message>
    <message>
        <source>%1 points leak more than in job %2.</source>
        <translation>%1 Punkte lecken mehr als in Auftrag %2.</translation>
    </message>
    <message>
        <source>Nothing has grown since job %1.</source>
        <translation>Seit Auftrag %1 ist nichts gewachsen.</translation>
    </message>
    <message>
        <source>Masked by a larger leak and not judged: %1.</source>
        <translation>Von einem größeren Leck verdeckt und nicht beurteilt: %1.</translation>
    </message>
    <message>
        <source>Nothing can be claimed yet.</source>
        <translation>Noch kann nichts behauptet werden.</translation>
    </message>
    <message>
        <source>The statement names what was tested and what was not.</source>
        <translation>Die Aussage nennt, was geprüft wurde und was nicht.</translation>
    </message>
    <message>
        <source>Not sprayed, and no reason given: %1.</source>
        <translation>Nicht besprüht, und kein Grund genannt: %1.</translation>
    </message>
    <message>
        <source>Void and not repeated: %1.</source>
        <translation>Verworfen und nicht wiederholt: %1.</translation>
    </message>
    <message>
        <source>Left out with a reason: %1.</source>
        <translation>Mit Grund ausgelassen: %1.</translation>
    </message>
    <message>
        <source>There are no points.</source>
        <translation>Es gibt keine Punkte.</translation>
    </message>
    <message>
        <source>All %1 points have an answer.</source>
        <translation>Alle %1 Punkte haben eine Antwort.</translation>
    </message>
    <message>
        <source>No joint of the test set-up is on the sketch; its own leaks would be read as the object&apos;s.</source>
        <translation>Keine Fügestelle des Prüfaufbaus ist auf der Skizze; seine eigenen Lecks würden als die des Objekts gelesen.</translation>
    </message>
    <message>
        <source>The test set-up was sprayed after joints of the object; what was read before may be its leak.</source>
        <translation>Der Prüfaufbau wurde nach Fügestellen des Objekts besprüht; was davor gelesen wurde, kann sein Leck sein.</translation>
    </message>
    <message>
        <source>The test set-up is on the sketch.</source>
        <translation>Der Prüfaufbau ist auf der Skizze.</translation>
    </message>
    <message>
        <source>Every reading that counts has its background and enough dwell.</source>
        <translation>Jeder Messwert, der zählt, hat seinen Untergrund und genug Sprühzeit.</translation>
    </message>
    <message>
        <source>No background before it: %1.</source>
        <translation>Kein Untergrund davor: %1.</translation>
    </message>
    <message>
        <source>Spray not timed: %1.</source>
        <translation>Sprühen nicht gestoppt: %1.</translation>
    </message>
    <message>
        <source>Sprayed %1 s, shorter than the response of %2 s: %3.</source>
        <translation>%1 s gesprüht, kürzer als die Ansprechzeit von %2 s: %3.</translation>
    </message>
    <message>
        <source>Answered once only: %1; a leak counts when it answers twice.</source>
        <translation>Nur einmal geantwortet: %1; ein Leck zählt, wenn es zweimal antwortet.</translation>
    </message>
    <message>
        <source>Every response over the limit answered twice or was judged.</source>
        <translation>Jede Antwort über dem Grenzwert kam zweimal oder wurde beurteilt.</translation>
    </message>
    <message>
        <source>Called permeation without a recorded delay: %1.</source>
        <translation>Ohne notierte Verzögerung Durchlässigkeit genannt: %1.</translation>
    </message>
    <message>
        <source>Delay recorded wherever permeation is claimed.</source>
        <translation>Verzögerung notiert, wo immer Durchlässigkeit behauptet wird.</translation>
    </message>
    <message>
        <source>Only the shown value is known at %1.</source>
        <translation>Nur der angezeigte Wert ist bekannt: %1.</translation>
    </message>
    <message>
        <source>Every figure compared with the limit is on the chamber, with its range.</source>
        <translation>Jede Zahl, die mit dem Grenzwert verglichen wird, gilt an der Kammer, mit ihrem Bereich.</translation>
    </message>
    <message>
        <source>Look again at the number typed for %1.</source>
        <translation>Die getippte Zahl noch einmal ansehen: %1.</translation>
    </message>
    <message>
        <source>Dated more than a week from the other readings of the round: %1.</source>
        <translation>Mehr als eine Woche von den anderen Messwerten der Runde entfernt datiert: %1.</translation>
    </message>
    <message>
        <source>No value stands a thousand times off.</source>
        <translation>Kein Wert steht tausendfach daneben.</translation>
    </message>
    <message>
        <source>Asked for in another condition and not sprayed so: %1.</source>
        <translation>In einem anderen Zustand verlangt und nicht so besprüht: %1.</translation>
    </message>
    <message>
        <source>Every joint was sprayed in the conditions it asks for.</source>
        <translation>Jede Fügestelle wurde in den Zuständen besprüht, die sie verlangt.</translation>
    </message>
    <message>
        <source>Corrected without a reason: %1.</source>
        <translation>Ohne Grund berichtigt: %1.</translation>
    </message>
    <message>
        <source>Nothing was corrected or made void.</source>
        <translation>Nichts wurde berichtigt oder verworfen.</translation>
    </message>
    <message>
        <source>%1 corrected, %2 void; the old entries stay, each with its reason.</source>
        <translation>%1 berichtigt, %2 verworfen; die alten Einträge bleiben, jeder mit seinem Grund.</translation>
    </message>
    <message>
        <source>The object has no tag; a report on it could be taken for another&apos;s.</source>
        <translation>Das Objekt hat kein Kennzeichen; ein Bericht darüber könnte für den eines anderen gehalten werden.</translation>
    </message>
    <message>
        <source>No procedure is named.</source>
        <translation>Kein Verfahren ist genannt.</translation>
    </message>
    <message>
        <source>%1, procedure %2, sketch revision %3.</source>
        <translation>%1, Verfahren %2, Skizze Stand %3.</translation>
    </message>
    <message>
        <source>No limit is set; nothing can be accepted or rejected.</source>
        <translation>Kein Grenzwert gesetzt; nichts kann angenommen oder abgelehnt werden.</translation>
    </message>
    <message>
        <source>Nobody is named who agreed the limit.</source>
        <translation>Niemand ist genannt, der den Grenzwert vereinbart hat.</translation>
    </message>
    <message>
        <source>Agreed by %1, as %2, in %3.</source>
        <translation>Vereinbart mit %1, als %2, in %3.</translation>
    </message>
    <message>
        <source>Reference leak %1 was past its date of %2.</source>
        <translation>Prüfleck %1 war über seinem Datum vom %2.</translation>
    </message>
    <message>
        <source>Reference leak %1 was past its date of %2; the check was made again with one in date.</source>
        <translation>Prüfleck %1 war über seinem Datum vom %2; die Prüfung wurde mit einem gültigen wiederholt.</translation>
    </message>
    <message>
        <source>Reference leak %1 has no certificate in the record.</source>
        <translation>Prüfleck %1 hat kein Zertifikat in der Aufzeichnung.</translation>
    </message>
    <message>
        <source>Reference leak %1, certificate %2 of %3.</source>
        <translation>Prüfleck %1, Zertifikat %2 vom %3.</translation>
    </message>
    <message>
        <source>There is no check with a reference leak before the readings.</source>
        <translation>Vor den Messwerten gibt es keine Prüfung mit Prüfleck.</translation>
    </message>
    <message>
        <source>The check afterwards is missing; make it, or give the reason in Prepare, Papers.</source>
        <translation>Die Prüfung danach fehlt; sie nachholen oder den Grund in Vorbereiten, Unterlagen angeben.</translation>
    </message>
    <message>
        <source>Sprayed while a leak of the size of the limit could not be seen: %1.</source>
        <translation>Besprüht, als ein Leck von der Größe des Grenzwerts nicht zu sehen war: %1.</translation>
    </message>
    <message>
        <source>The pressure rise says only that leaks are below %1 as air, far more than the limit: it cannot show that all were found.</source>
        <translation>Der Druckanstieg sagt nur, dass Lecks unter %1 als Luft liegen, weit mehr als der Grenzwert: er kann nicht zeigen, dass alle gefunden sind.</translation>
    </message>
    <message>
        <source>No check afterwards: %1.</source>
        <translation>Keine Prüfung danach: %1.</translation>
    </message>
    <message>
        <source>The factor changed by %1 %. %2</source>
        <translation>Der Faktor änderte sich um %1 %. %2</translation>
    </message>
    <message>
        <source>A check is not usable: %1</source>
        <translation>Eine Prüfung ist nicht brauchbar: %1</translation>
    </message>
    <message>
        <source>The smallest detectable leak is not known.</source>
        <translation>Das kleinste nachweisbare Leck ist nicht bekannt.</translation>
    </message>
    <message>
        <source>At %1, %2.</source>
        <translation>An %1: %2.</translation>
    </message>
    <message>
        <source>At %1: %2.</source>
        <translation>An %1: %2.</translation>
    </message>
    <message>
        <source>Without a quiet watch of the background nobody knows what could be seen.</source>
        <translation>Ohne ruhige Beobachtung des Untergrunds weiß niemand, was zu sehen war.</translation>
    </message>
    <message>
        <source>A background watch cannot be used: %1.</source>
        <translation>Eine Beobachtung des Untergrunds ist nicht brauchbar: %1.</translation>
    </message>
    <message>
        <source>Background watch of %1: %2.</source>
        <translation>Beobachtung des Untergrunds um %1: %2.</translation>
    </message>
    <message>
        <source>%1 quiet watch.</source>
        <translation>%1 ruhige Beobachtung.</translation>
    </message>
    <message>
        <source>%1 quiet watches.</source>
        <translation>%1 ruhige Beobachtungen.</translation>
    </message>
    <message>
        <source>It is not recorded that the object was dry (Prepare, Papers); liquid plugs leaks.</source>
        <translation>Es ist nicht notiert, dass das Objekt trocken war (Vorbereiten, Unterlagen); Flüssigkeit verstopft Lecks.</translation>
    </message>
    <message>
        <source>Recorded as dry.</source>
        <translation>Als trocken notiert.</translation>
    </message>
    <message>
        <source>A concession for %1 names nobody or no reason.</source>
        <translation>Eine Sonderfreigabe für %1 nennt niemanden oder keinen Grund.</translation>
    </message>
    <message>
        <source>A concession ran out on %1.</source>
        <translation>Eine Sonderfreigabe lief am %1 ab.</translation>
    </message>
    <message>
        <source>No concessions.</source>
        <translation>Keine Sonderfreigaben.</translation>
    </message>
    <message>
        <source>%1 concessions, each with name and reason.</source>
        <translation>%1 Sonderfreigaben, jede mit Name und Grund.</translation>
    </message>
    <message>
        <source>No qualification is recorded for %1.</source>
        <translation>Für %1 ist keine Qualifikation notiert.</translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation>Noch keine Messwerte.</translation>
    </message>
    <message>
        <source>Qualifications are on record.</source>
        <translation>Qualifikationen sind notiert.</translation>
    </message>
    <message>
        <source>Sheet %1 does not say which side it is seen from; clock positions can be read wrong.</source>
        <translation>Blatt %1 sagt nicht, von welcher Seite es gesehen ist; Uhrzeiten sind so falsch lesbar.</translation>
    </message>
    <message>
        <source>There is no sheet.</source>
        <translation>Es gibt kein Blatt.</translation>
    </message>
    <message>
        <source>%1 sheets, each with its side.</source>
        <translation>%1 Blätter, jedes mit seiner Seite.</translation>
    </message>
    <message>
        <source>Points %1 and %2 answered alike: repeat %3 with less helium to see whether it is one leak or two.</source>
        <translation>Punkt %1 und %2 sprachen gleich an: %3 mit weniger Helium wiederholen, um zu sehen, ob es ein Leck ist oder zwei.</translation>
    </message>
    <message>
        <source>Every point has its reading.</source>
        <translation>Jeder Punkt hat seinen Messwert.</translation>
    </message>
    <message>
        <source>Next in order.</source>
        <translation>Der nächste in der Reihe.</translation>
    </message>
    <message>
        <source>Helium at point %1 would reach the leak at point %2: spray point %3 first.</source>
        <translation>Helium an Punkt %1 würde das Leck an Punkt %2 erreichen: zuerst Punkt %3 besprühen.</translation>
    </message>
    <message>
        <source>Every point left lies where helium reaches the leak at point %1: seal or bag it, then spray point %2.</source>
        <translation>Jeder übrige Punkt liegt, wo Helium das Leck an Punkt %1 erreicht: dieses abdichten oder einhüllen, dann Punkt %2 besprühen.</translation>
    </message>
    <message>
        <source>Seal or bag point %1, then spray %2 again.</source>
        <translation>Punkt %1 abdichten oder einhüllen, dann %2 noch einmal besprühen.</translation>
    </message>
    <message>
        <source>Wait until the background is down, then spray %1 again.</source>
        <translation>Warten, bis der Untergrund unten ist, dann %1 noch einmal besprühen.</translation>
    </message>
    <message>
        <source>Spray points %1 and %2 again with less helium and a fine tip, each from the side away from the other, to place the leak.</source>
        <translation>Punkt %1 und %2 mit weniger Helium und feiner Spitze noch einmal besprühen, jeden von der Seite, die dem anderen abgewandt ist, um das Leck zu orten.</translation>
    </message>
    <message>
        <source>The response at point %1 has not cleared: wait %2 s, then spray point %3.</source>
        <translation>Die Antwort an Punkt %1 ist nicht abgeklungen: %2 s warten, dann Punkt %3 besprühen.</translation>
    </message>
    <message>
        <source>Give %1 a short burst of 5 to 10 s: no answer means permeation.</source>
        <translation>%1 einen kurzen Stoß von 5 bis 10 s geben: keine Antwort heißt Durchlässigkeit.</translation>
    </message>
    <message>
        <source>Spray %1 again with a lower background or a dwell of at least %2 s.</source>
        <translation>%1 mit niedrigerem Untergrund oder einer Sprühzeit von mindestens %2 s noch einmal besprühen.</translation>
    </message>
    <message>
        <source>The background stood at up to %1 times its usual level from point %2 to point %3: these readings may be voided together and sprayed again.</source>
        <translation>Der Untergrund stand von Punkt %2 bis Punkt %3 auf bis zum %1-Fachen seiner üblichen Höhe: diese Messwerte können zusammen verworfen und neu gesprüht werden.</translation>
    </message>
    <message>
        <source>connections of the set-up first: a leak there would spoil every later reading</source>
        <translation>zuerst die Verbindungen des Aufbaus: ein Leck dort verdürbe jeden späteren Messwert</translation>
    </message>
    <message>
        <source>first of this view</source>
        <translation>erster dieser Ansicht</translation>
    </message>
    <message>
        <source>highest of this view: helium rises, so work from the top down</source>
        <translation>höchster dieser Ansicht: Helium steigt, also von oben nach unten arbeiten</translation>
    </message>
    <message>
        <source>%1 mm away from point %2 just sprayed</source>
        <translation>%1 mm entfernt vom eben besprühten Punkt %2</translation>
    </message>
    <message>
        <source>%1 mm away from point %2 just sprayed, going down</source>
        <translation>%1 mm entfernt vom eben besprühten Punkt %2, abwärts</translation>
    </message>
    <message>
        <source>next below; %1 mm from point %2, so the wait before it is longer</source>
        <translation>der nächste darunter; %1 mm von Punkt %2, darum die längere Wartezeit davor</translation>
    </message>
    <message>
        <source>above point %1 just sprayed, whose helium rises into it</source>
        <translation>über dem eben besprühten Punkt %1, dessen Helium in ihn aufsteigt</translation>
    </message>
    <message>
        <source>watch the background for a minute, and dwell long enough, to learn what can be seen</source>
        <translation>den Untergrund eine Minute beobachten und lange genug sprühen, um zu wissen, was zu sehen ist</translation>
    </message>
    <message>
        <source>set the limit before the first reading</source>
        <translation>den Grenzwert vor dem ersten Messwert setzen</translation>
    </message>
    <message>
        <source>the smallest detectable leak, %1, is above the limit: nothing can be passed with this set-up</source>
        <translation>das kleinste nachweisbare Leck, %1, liegt über dem Grenzwert: mit diesem Aufbau kann nichts bestehen</translation>
    </message>
    <message>
        <source>The limit was changed after %1 reading, %2.</source>
        <translation>Der Grenzwert wurde nach %1 Messwert geändert, %2.</translation>
    </message>
    <message>
        <source>The limit was changed after %1 readings, %2.</source>
        <translation>Der Grenzwert wurde nach %1 Messwerten geändert, %2.</translation>
    </message>
    <message>
        <source>%1 is below the background of %2; is it right?</source>
        <translation>%1 liegt unter dem Untergrund von %2; stimmt das?</translation>
    </message>
    <message>
        <source>%1 is more than the detector can show (%2); is it right?</source>
        <translation>%1 ist mehr, als der Lecksucher anzeigen kann (%2); stimmt das?</translation>
    </message>
    <message>
        <source>%1 is less than the detector can show (%2); is it right?</source>
        <translation>%1 ist weniger, als der Lecksucher anzeigen kann (%2); stimmt das?</translation>
    </message>
    <message>
        <source>%1 is far from the %2 this point showed before; is the exponent right?</source>
        <translation>%1 ist weit entfernt von den %2, die dieser Punkt vorher zeigte; stimmt der Exponent?</translation>
    </message>
    <message>
        <source>%1 is a thousand times away from every other reading of this joint; is it right?</source>
        <translation>%1 ist tausendfach entfernt von jedem anderen Messwert dieser Fügestelle; stimmt das?</translation>
    </message>
    <message>
        <source>%1 is a thousand times away from the %2 usual in this round; is it right?</source>
        <translation>%1 liegt um das Tausendfache neben den %2, die in diesem Durchgang üblich sind; stimmt das?</translation>
    </message>
    <message>
        <source>no background before it</source>
        <translation>kein Untergrund davor</translation>
    </message>
    <message>
        <source>spray not timed</source>
        <translation>Sprühen nicht gestoppt</translation>
    </message>
    <message>
        <source>sprayed %1 s, shorter than the response of %2 s</source>
        <translation>%1 s gesprüht, kürzer als die Ansprechzeit von %2 s</translation>
    </message>
    <message>
        <source>only %1 readings of the background; the noise is uncertain below %2</source>
        <translation>nur %1 Werte des Untergrunds; unter %2 ist das Rauschen unsicher</translation>
    </message>
    <message>
        <source>the background was watched for less than a minute; slow drift does not show</source>
        <translation>der Untergrund wurde weniger als eine Minute beobachtet; langsame Drift zeigt sich nicht</translation>
    </message>
    <message>
        <source>the background drifts by more than its noise; wait until it is steady</source>
        <translation>der Untergrund driftet um mehr als sein Rauschen; warten, bis er ruhig ist</translation>
    </message>
    <message>
        <source>the response fell by %1: find the cause and spray again every point since the last good check</source>
        <translation>die Antwort fiel um %1: die Ursache suchen und jeden Punkt seit der letzten guten Prüfung neu besprühen</translation>
    </message>
    <message>
        <source>the response rose by %1: find the cause; readings before it may be too low and need spraying again</source>
        <translation>die Antwort stieg um %1: die Ursache suchen; Messwerte davor können zu niedrig sein und müssen neu gesprüht werden</translation>
    </message>
    <message>
        <source>the response moved by %1: the mean of both checks is used and the change widens every range</source>
        <translation>die Antwort bewegte sich um %1: es gilt das Mittel beider Prüfungen, und die Änderung weitet jeden Bereich</translation>
    </message>
    <message>
        <source>the response did not move: steady</source>
        <translation>die Antwort bewegte sich nicht: ruhig</translation>
    </message>
    <message>
        <source>the response moved by %1: steady</source>
        <translation>die Antwort bewegte sich um %1: ruhig</translation>
    </message>
    <message>
        <source>the certificate of the reference leak is %1 years old</source>
        <translation>das Zertifikat des Prüflecks ist %1 Jahre alt</translation>
    </message>
    <message>
        <source>the room is %1 K from the certificate temperature of the reference leak</source>
        <translation>der Raum ist %1 K von der Zertifikatstemperatur des Prüflecks entfernt</translation>
    </message>
    <message>
        <source>The pressure rises in a straight line: a leak, or gas coming through seals. Walls that give off gas evenly for much longer than %1 min would look the same: where they may, run on or pump longer beforehand.</source>
        <translation>Der Druck steigt geradlinig: ein Leck, oder Gas, das durch Dichtungen kommt. Wände, die viel länger als %1 min gleichmäßig Gas abgeben, sähen ebenso aus: wo das sein kann, weiterlaufen lassen oder vorher länger pumpen.</translation>
    </message>
    <message>
        <source>At the end of the record nearly all gas coming in is leak.</source>
        <translation>Am Ende der Aufzeichnung ist fast alles einströmende Gas Leck.</translation>
    </message>
    <message>
        <source>At the end of the record %1 % of the gas coming in is leak.</source>
        <translation>Am Ende der Aufzeichnung sind %1 % des einströmenden Gases Leck.</translation>
    </message>
    <message>
        <source>The rise exhausts itself: outgassing or a trapped volume, no leak above the upper bound.</source>
        <translation>Der Anstieg erschöpft sich: Ausgasung oder ein eingeschlossenes Volumen, kein Leck über der oberen Schranke.</translation>
    </message>
    <message>
        <source>Not separable: run on for %1 min; until then the leak is only known to lie below the upper bound.</source>
        <translation>Nicht trennbar: noch %1 min laufen lassen; bis dahin ist vom Leck nur bekannt, dass es unter der oberen Schranke liegt.</translation>
    </message>
    <message>
        <source>Not separable: run on for %1 min and judge again, or pump longer beforehand; until then the leak is only known to lie below the upper bound.</source>
        <translation>Nicht trennbar: noch %1 min laufen lassen und neu beurteilen, oder vorher länger pumpen; bis dahin ist vom Leck nur bekannt, dass es unter der oberen Schranke liegt.</translation>
    </message>
    <message>
        <source>Only %1 samples: take at least 20.</source>
        <translation>Nur %1 Werte: mindestens 20 nehmen.</translation>
    </message>
    <message>
        <source>The room&apos;s temperature alone could make a good part of this rise: log it beside the pressure.</source>
        <translation>Die Raumtemperatur allein könnte einen guten Teil dieses Anstiegs machen: sie neben dem Druck aufzeichnen.</translation>
    </message>
    <message>
        <source>The display rounds to %1 % of the whole rise: read one more digit or run on.</source>
        <translation>Die Anzeige rundet auf %1 % des ganzen Anstiegs: eine Stelle mehr ablesen oder weiterlaufen lassen.</translation>
    </message>
    <message>
        <source>leak and outgassing</source>
        <translation>Leck und Ausgasung</translation>
    </message>
    <message>
        <source>no leak found</source>
        <translation>kein Leck gefunden</translation>
    </message>
    <message>
        <source>not separable</source>
        <translation>nicht trennbar</translation>
    </message>
    <message>
        <source>straight line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>not accessible: %1</source>
        <translation>nicht zugänglich: %1</translation>
    </message>
    <message>
        <source>not tested: %1</source>
        <translation>nicht geprüft: %1</translation>
    </message>
    <message>
        <source> and </source>
        <comment>between numbers</comment>
        <translation> und </translation>
    </message>
    <message>
        <source> or </source>
        <comment>between numbers</comment>
        <translation> oder </translation>
    </message>
    <message>
        <source> more</source>
        <comment>more points</comment>
        <translation> weitere</translation>
    </message>
    <message>
        <source>the volume must be above 0</source>
        <translation>das Volumen muss über 0 liegen</translation>
    </message>
    <message>
        <source>the relative uncertainty of the volume must be from 0 to 0.5</source>
        <translation>die relative Unsicherheit des Volumens muss 0 bis 0,5 sein</translation>
    </message>
    <message>
        <source>the gas temperature must be from -123 to 327 degC</source>
        <translation>die Gastemperatur muss -123 bis 327 °C sein</translation>
    </message>
    <message>
        <source>times, pressures and temperatures must be equally many</source>
        <translation>Zeiten, Drücke und Temperaturen müssen gleich viele sein</translation>
    </message>
    <message>
        <source>a pressure-rise record needs at least %1 samples, this one has %2</source>
        <translation>eine Aufzeichnung des Druckanstiegs braucht mindestens %1 Werte, diese hat %2</translation>
    </message>
    <message>
        <source>sample %1: time and pressure must be finite numbers</source>
        <translation>Wert %1: Zeit und Druck müssen endliche Zahlen sein</translation>
    </message>
    <message>
        <source>sample %1: times must increase, %2 s follows %3 s</source>
        <translation>Wert %1: die Zeiten müssen zunehmen, %2 s folgt auf %3 s</translation>
    </message>
    <message>
        <source>sample %1: the temperature must be from -123 to 327 degC</source>
        <translation>Wert %1: die Temperatur muss -123 bis 327 °C sein</translation>
    </message>
    <message>
        <source>the pressure is the same in all samples, so the gauge does not resolve the rise; run on longer or use a finer gauge</source>
        <translation>der Druck ist in allen Werten gleich, das Messgerät löst den Anstieg also nicht auf; länger messen oder ein feineres Messgerät nehmen</translation>
    </message>
    <message>
        <source>the pressure falls over the record, which no gas coming in can do: the gauge drifts, the chamber cools or a valve to the pump is open</source>
        <translation>der Druck fällt während der Aufzeichnung, was einströmendes Gas nicht kann: das Messgerät driftet, die Kammer kühlt ab oder ein Ventil zur Pumpe ist offen</translation>
    </message>
    <message>
        <source>the numbers of this record lie outside what can be computed with</source>
        <translation>die Zahlen dieser Aufzeichnung liegen außerhalb dessen, womit sich rechnen lässt</translation>
    </message>
    <message>
        <source>the certified rate of the reference leak must be above zero</source>
        <translation>die zertifizierte Rate des Prüflecks muss über null liegen</translation>
    </message>
    <message>
        <source>the temperature of a reference leak must be between -73 degC and 127 degC</source>
        <translation>die Temperatur eines Prüflecks muss zwischen -73 °C und 127 °C liegen</translation>
    </message>
    <message>
        <source>the temperature coefficient of a reference leak must be between -10 % and 10 % per kelvin</source>
        <translation>der Temperaturkoeffizient eines Prüflecks muss zwischen -10 % und 10 % je Kelvin liegen</translation>
    </message>
    <message>
        <source>the yearly loss of a reference leak must be between 0 and 100 %</source>
        <translation>der jährliche Verlust eines Prüflecks muss zwischen 0 und 100 % liegen</translation>
    </message>
    <message>
        <source>the certificate of a reference leak must not be dated after its use, nor a century before</source>
        <translation>das Zertifikat eines Prüflecks darf nicht nach seinem Gebrauch datiert sein und nicht ein Jahrhundert davor</translation>
    </message>
    <message>
        <source>the uncertainties of a reference leak must be zero or above</source>
        <translation>die Unsicherheiten eines Prüflecks müssen null oder darüber sein</translation>
    </message>
    <message>
        <source>so far from its certificate temperature a linear coefficient leaves nothing of the reference leak; bring it nearer to its certificate temperature</source>
        <translation>so weit von seiner Zertifikatstemperatur lässt ein linearer Koeffizient nichts vom Prüfleck übrig; es näher an diese Temperatur bringen</translation>
    </message>
    <message>
        <source>there are fewer samples than parameters to fit</source>
        <translation>es gibt weniger Werte als anzupassende Größen</translation>
    </message>
    <message>
        <source>no time constant fits the record</source>
        <translation>keine Zeitkonstante passt zur Aufzeichnung</translation>
    </message>
    <message>
        <source>the rate of the reference leak must be above zero</source>
        <translation>die Rate des Prüflecks muss über null liegen</translation>
    </message>
    <message>
        <source>the display with the reference leak open must be above the background with it closed</source>
        <translation>die Anzeige mit offenem Prüfleck muss über dem Untergrund mit geschlossenem liegen</translation>
    </message>
    <message>
        <source>noise and uncertainty must be zero or above</source>
        <translation>Rauschen und Unsicherheit müssen null oder darüber sein</translation>
    </message>
    <message>
        <source>the system factor must be above zero</source>
        <translation>der Systemfaktor muss über null liegen</translation>
    </message>
    <message>
        <source>the noise factor must be between 1 and 10; 3 is usual</source>
        <translation>der Rauschfaktor muss zwischen 1 und 10 liegen; 3 ist üblich</translation>
    </message>
    <message>
        <source>the dwell must show between 20 % and 100 % of the signal</source>
        <translation>die Sprühzeit muss zwischen 20 % und 100 % des Signals zeigen</translation>
    </message>
    <message>
        <source>the helium share must be above 0 and at most 100 %</source>
        <translation>der Heliumanteil muss über 0 und höchstens 100 % sein</translation>
    </message>
    <message>
        <source>%1 has %2 numbers; right is a value, or seconds and a value</source>
        <translation>%1 hat %2 Zahlen; richtig ist ein Wert oder Sekunden und ein Wert</translation>
    </message>
    <message>
        <source>every line needs a time, or none</source>
        <translation>jede Zeile braucht eine Zeit oder keine</translation>
    </message>
    <message>
        <source>times must increase</source>
        <translation>die Zeiten müssen zunehmen</translation>
    </message>
    <message>
        <source>the time between two values must be above 0 s</source>
        <translation>die Zeit zwischen zwei Werten muss über 0 s liegen</translation>
    </message>
    <message>
        <source>a background needs at least 5 values, better 20 over a minute; there are %1</source>
        <translation>ein Untergrund braucht mindestens 5 Werte, besser 20 über eine Minute; da sind %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>column &quot;%1&quot;</source>
        <translation>Spalte &quot;%1&quot;</translation>
    </message>
    <message>
        <source>%1 is no column known here; %2</source>
        <translation>%1 ist keine hier bekannte Spalte; %2</translation>
    </message>
    <message>
        <source>the first line must name the columns, as in &quot;time_s,pressure_mbar&quot;</source>
        <translation>die erste Zeile muss die Spalten nennen, wie in &quot;time_s,pressure_mbar&quot;</translation>
    </message>
    <message>
        <source>the column %1 comes twice</source>
        <translation>die Spalte für %1 kommt doppelt vor</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>den Druck</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>die Temperatur</translation>
    </message>
    <message>
        <source>a column for time or pressure is missing; %1</source>
        <translation>eine Spalte für Zeit oder Druck fehlt; %1</translation>
    </message>
    <message>
        <source>%1 is not a number such as %2</source>
        <translation>%1 ist keine Zahl wie %2</translation>
    </message>
    <message>
        <source>%1 is not a number such as 0.25 or 0,25</source>
        <translation>%1 ist keine Zahl wie 0.25 oder 0,25</translation>
    </message>
    <message>
        <source>%1 values where the header names %2 columns</source>
        <translation>%1 Werte, wo die Kopfzeile %2 Spalten nennt</translation>
    </message>
    <message>
        <source>%1 values where the header names %2 columns; decimal commas need semicolons between the columns</source>
        <translation>%1 Werte, wo die Kopfzeile %2 Spalten nennt; Dezimalkommas brauchen Semikolons zwischen den Spalten</translation>
    </message>
    <message>
        <source>the time does not lie after that of the line before; times must increase</source>
        <translation>die Zeit liegt nicht nach der der Zeile davor; Zeiten müssen zunehmen</translation>
    </message>
    <message>
        <source>the temperature must be from -123 to 327 degC</source>
        <translation>die Temperatur muss -123 bis 327 °C sein</translation>
    </message>
    <message>
        <source>the record is empty; its first line must name the columns, as in &quot;time_s,pressure_mbar&quot;</source>
        <translation>die Aufzeichnung ist leer; die erste Zeile muss die Spalten nennen, wie in &quot;time_s,pressure_mbar&quot;</translation>
    </message>
    <message>
        <source>the record has a header but no samples; at least 3 lines of numbers must follow</source>
        <translation>die Aufzeichnung hat eine Kopfzeile, aber keine Werte; mindestens 3 Zeilen mit Zahlen müssen folgen</translation>
    </message>
    <message>
        <source>the serial port is missing, such as ttyUSB0</source>
        <translation>die serielle Schnittstelle fehlt, etwa ttyUSB0</translation>
    </message>
    <message>
        <source>%1 baud is no speed of a serial port; right is for instance 9600</source>
        <translation>%1 Baud ist keine Geschwindigkeit einer seriellen Schnittstelle; richtig ist etwa 9600</translation>
    </message>
    <message>
        <source>%1 data bits do not exist; right is 5 to 8</source>
        <translation>%1 Datenbits gibt es nicht; richtig ist 5 bis 8</translation>
    </message>
    <message>
        <source>%1 stop bits do not exist; right is 1 or 2</source>
        <translation>%1 Stoppbits gibt es nicht; richtig ist 1 oder 2</translation>
    </message>
    <message>
        <source>the recorded file is missing</source>
        <translation>die aufgezeichnete Datei fehlt</translation>
    </message>
    <message>
        <source>a file is played 0.01 to %1 times as fast as recorded</source>
        <translation>eine Datei wird 0,01- bis %1-mal so schnell abgespielt wie aufgezeichnet</translation>
    </message>
    <message>
        <source>a file without times is played at up to %1 lines per second</source>
        <translation>eine Datei ohne Zeiten wird mit höchstens %1 Zeilen je Sekunde abgespielt</translation>
    </message>
    <message>
        <source>the network address is missing, such as 192.0.2.7</source>
        <translation>die Netzwerkadresse fehlt, etwa 192.0.2.7</translation>
    </message>
    <message>
        <source>%1 is no port of a network address; right is 1 to %2</source>
        <translation>%1 ist kein Port einer Netzwerkadresse; richtig ist 1 bis %2</translation>
    </message>
    <message>
        <source>the pipe is missing, such as /tmp/detector</source>
        <translation>die Pipe fehlt, etwa /tmp/detector</translation>
    </message>
    <message>
        <source>the kind of source is not known</source>
        <translation>die Art der Quelle ist nicht bekannt</translation>
    </message>
    <message>
        <source>the feed needs a name, such as the detector&apos;s</source>
        <translation>die Leitung braucht einen Namen, etwa den des Lecksuchers</translation>
    </message>
    <message>
        <source>the column of the %1 is %2; right is 1 to %3</source>
        <translation>die Spalte für %1 ist %2; richtig ist 1 bis %3</translation>
    </message>
    <message>
        <source>value</source>
        <translation>den Wert</translation>
    </message>
    <message>
        <source>time</source>
        <translation>die Zeit</translation>
    </message>
    <message>
        <source>the factor must say how much leak rate a volt is, such as 1e-6</source>
        <translation>der Faktor muss sagen, wie viel Leckrate ein Volt ist, etwa 1e-6</translation>
    </message>
    <message>
        <source>the leak rate at 0 V must be a number, such as 0</source>
        <translation>die Leckrate bei 0 V muss eine Zahl sein, etwa 0</translation>
    </message>
    <message>
        <source>the decades per volt must not be 0 and at most %1, such as 1</source>
        <translation>die Dekaden je Volt dürfen nicht 0 und höchstens %1 sein, etwa 1</translation>
    </message>
    <message>
        <source>the decade at 0 V must lie between -%1 and %2, such as -12 for 1e-12</source>
        <translation>die Dekade bei 0 V muss zwischen -%1 und %2 liegen, etwa -12 für 1e-12</translation>
    </message>
    <message>
        <source>value and time stand in the same column; each needs its own</source>
        <translation>Wert und Zeit stehen in derselben Spalte; jedes braucht seine eigene</translation>
    </message>
    <message>
        <source>the pattern has %1 characters; right is at most %2</source>
        <translation>das Muster hat %1 Zeichen; richtig sind höchstens %2</translation>
    </message>
    <message>
        <source>the pattern &quot;%1&quot; must hold one # where the number stands, as in &quot;now # mbar*&quot;</source>
        <translation>das Muster &quot;%1&quot; muss ein # enthalten, wo die Zahl steht, wie in &quot;now # mbar*&quot;</translation>
    </message>
    <message>
        <source>no column %1</source>
        <translation>keine Spalte %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time</source>
        <translation>&quot;%1&quot; ist keine Zeit</translation>
    </message>
    <message>
        <source>does not fit the pattern</source>
        <translation>passt nicht zum Muster</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is damaged</source>
        <translation>&quot;%1&quot; ist beschädigt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number</source>
        <translation>&quot;%1&quot; ist keine Zahl</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one number</source>
        <translation>&quot;%1&quot; ist nicht eine Zahl</translation>
    </message>
    <message>
        <source>%1 is written, volts are set up</source>
        <translation>%1 steht da, Volt ist eingestellt</translation>
    </message>
    <message>
        <source>%1 is written, %2 is set up</source>
        <translation>%1 steht da, %2 ist eingestellt</translation>
    </message>
    <message>
        <source>%1 is too much for a leak rate</source>
        <translation>%1 ist zu viel für eine Leckrate</translation>
    </message>
    <message>
        <source>the file is empty, so it is not a job file</source>
        <translation>die Datei ist leer, also keine Auftragsdatei</translation>
    </message>
    <message>
        <source>no memory is left to read the zip</source>
        <translation>kein Speicher mehr, um das Zip zu lesen</translation>
    </message>
    <message>
        <source>this is not a zip, so it is not a job file</source>
        <translation>das ist kein Zip, also keine Auftragsdatei</translation>
    </message>
    <message>
        <source>the zip is truncated or its directory is damaged</source>
        <translation>das Zip ist abgeschnitten oder sein Verzeichnis beschädigt</translation>
    </message>
    <message>
        <source>entry %1 of the zip&apos;s directory is damaged</source>
        <translation>Eintrag %1 im Verzeichnis des Zips ist beschädigt</translation>
    </message>
    <message>
        <source>the zip&apos;s member %1 has a name that job files do not use (lower-case letters, digits, . - _ and /)</source>
        <translation>der Teil %1 des Zips hat einen Namen, den Auftragsdateien nicht verwenden (Kleinbuchstaben, Ziffern, . - _ und /)</translation>
    </message>
    <message>
        <source>the zip&apos;s member %1 is encrypted; job files are not</source>
        <translation>der Teil %1 des Zips ist verschlüsselt; Auftragsdateien sind es nicht</translation>
    </message>
    <message>
        <source>the zip&apos;s member %1 is packed by method %2; stored or deflated is right</source>
        <translation>der Teil %1 des Zips ist nach Verfahren %2 gepackt; richtig ist ungepackt oder Deflate</translation>
    </message>
    <message>
        <source>the zip&apos;s member %1 is %2 bytes long; at most %3 are read</source>
        <translation>der Teil %1 des Zips ist %2 Bytes lang; höchstens %3 werden gelesen</translation>
    </message>
    <message>
        <source>%1 is damaged: its bytes do not match its checksum or length</source>
        <translation>%1 ist beschädigt: die Bytes passen nicht zu Prüfsumme oder Länge</translation>
    </message>
    <message>
        <source>the zip has %1 members; at most %2 are read</source>
        <translation>das Zip hat %1 Teile; höchstens %2 werden gelesen</translation>
    </message>
    <message>
        <source>the zip&apos;s members are longer than %1 bytes together</source>
        <translation>die Teile des Zips sind zusammen länger als %1 Bytes</translation>
    </message>
    <message>
        <source>the zip has two members named %1</source>
        <translation>das Zip hat zwei Teile namens %1</translation>
    </message>
    <message>
        <source>job.%1[%2].id: this identity is empty or used twice in the job</source>
        <translation>job.%1[%2].id: diese Identität ist leer oder im Auftrag doppelt</translation>
    </message>
    <message>
        <source>job.%1[%2]: point %3 is not in the sketch</source>
        <translation>job.%1[%2]: Punkt %3 ist nicht in der Skizze</translation>
    </message>
    <message>
        <source>job.%1[%2]: round %3 is not in the job</source>
        <translation>job.%1[%2]: Runde %3 ist nicht im Auftrag</translation>
    </message>
    <message>
        <source>job.id: a job needs an identity</source>
        <translation>job.id: ein Auftrag braucht eine Identität</translation>
    </message>
    <message>
        <source>job.object: the job belongs to another object than the one beside it</source>
        <translation>job.object: der Auftrag gehört zu einem anderen Objekt als dem daneben</translation>
    </message>
    <message>
        <source>object.name: an object needs a name</source>
        <translation>object.name: ein Objekt braucht einen Namen</translation>
    </message>
    <message>
        <source>job.number: a job&apos;s number is not negative</source>
        <translation>job.number: die Nummer eines Auftrags ist nicht negativ</translation>
    </message>
    <message>
        <source>%1: %2 is outside %3 to %4</source>
        <translation>%1: %2 liegt außerhalb von %3 bis %4</translation>
    </message>
    <message>
        <source>%1: %2 is below zero</source>
        <translation>%1: %2 liegt unter null</translation>
    </message>
    <message>
        <source>job.rounds[%1]: the repair it proves is not in the job</source>
        <translation>job.rounds[%1]: die Reparatur, die sie nachweist, ist nicht im Auftrag</translation>
    </message>
    <message>
        <source>job.readings[%1]: it corrects a reading that is not before it</source>
        <translation>job.readings[%1]: er berichtigt einen Messwert, der nicht davor steht</translation>
    </message>
    <message>
        <source>job.voids[%1]: the reading it names is not in the job</source>
        <translation>job.voids[%1]: der genannte Messwert ist nicht im Auftrag</translation>
    </message>
    <message>
        <source>job.backgrounds[%1]: %2 times but %3 values</source>
        <translation>job.backgrounds[%1]: %2 Zeiten, aber %3 Werte</translation>
    </message>
    <message>
        <source>job.rise_tests[%1]: %2 times but %3 pressures and %4 temperatures</source>
        <translation>job.rise_tests[%1]: %2 Zeiten, aber %3 Drücke und %4 Temperaturen</translation>
    </message>
    <message>
        <source>%1 lower-case hexadecimal digits are expected here</source>
        <translation>hier werden %1 hexadezimale Ziffern in Kleinbuchstaben erwartet</translation>
    </message>
    <message>
        <source>the folder to write to does not exist</source>
        <translation>der Ordner, in den geschrieben werden soll, fehlt</translation>
    </message>
    <message>
        <source>this is a folder; give the name of a file</source>
        <translation>das ist ein Ordner; den Namen einer Datei angeben</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>eine solche Datei gibt es nicht</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>the file is longer than %1 bytes</source>
        <translation>die Datei ist länger als %1 Bytes</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a shape; known are ring, rounded rectangle, path, spot</source>
        <translation>&quot;%1&quot; ist keine Form; bekannt sind ring, rounded rectangle, path, spot</translation>
    </message>
    <message>
        <source>a picture&apos;s name is its SHA-256 and .png, .jpg, .svg or .pdf</source>
        <translation>ein Bild heißt nach seiner SHA-256 und .png, .jpg, .svg oder .pdf</translation>
    </message>
    <message>
        <source>%1 was changed: its bytes do not match its name</source>
        <translation>%1 wurde geändert: die Bytes passen nicht zum Namen</translation>
    </message>
    <message>
        <source>the picture %1 is there twice</source>
        <translation>das Bild %1 ist doppelt da</translation>
    </message>
    <message>
        <source>the picture %1 that job.json refers to is missing</source>
        <translation>das Bild %1, auf das job.json verweist, fehlt</translation>
    </message>
    <message>
        <source>job.json does not refer to the picture %1</source>
        <translation>job.json verweist nicht auf das Bild %1</translation>
    </message>
    <message>
        <source>there is no job.json in this zip, so it is not a job file</source>
        <translation>in diesem Zip ist keine job.json, also ist es keine Auftragsdatei</translation>
    </message>
    <message>
        <source>signatures.json is missing; every job file has one</source>
        <translation>signatures.json fehlt; jede Auftragsdatei hat eine</translation>
    </message>
    <message>
        <source>%1 does not belong in a job file</source>
        <translation>%1 gehört nicht in eine Auftragsdatei</translation>
    </message>
    <message>
        <source>the picture %1 that the job refers to is missing</source>
        <translation>das Bild %1, auf das der Auftrag verweist, fehlt</translation>
    </message>
    <message>
        <source>the picture %1 is named wrongly; its SHA-256 and png, jpg, svg or pdf are right</source>
        <translation>das Bild %1 ist falsch benannt; richtig sind seine SHA-256 und png, jpg, svg oder pdf</translation>
    </message>
    <message>
        <source>the picture %1 was changed since it was added</source>
        <translation>das Bild %1 wurde seit dem Zufügen geändert</translation>
    </message>
    <message>
        <source>&quot;format&quot; is missing; &quot;%1&quot; is right</source>
        <translation>&quot;format&quot; fehlt; richtig ist &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this was written by a newer Sealwalk (format &quot;%1&quot;); this one reads up to &quot;%2&quot;, so use the newer program</source>
        <translation>das schrieb ein neueres Sealwalk (Format &quot;%1&quot;); dieses liest bis &quot;%2&quot;, also das neuere Programm verwenden</translation>
    </message>
    <message>
        <source>&quot;format&quot; is &quot;%1&quot;; &quot;%2&quot; is right</source>
        <translation>&quot;format&quot; ist &quot;%1&quot;; richtig ist &quot;%2&quot;</translation>
    </message>
    <message>
        <source>&quot;format&quot; is &quot;%1&quot;; &quot;%2&quot; is right for what is in it</source>
        <translation>&quot;format&quot; ist &quot;%1&quot;; richtig für den Inhalt ist &quot;%2&quot;</translation>
    </message>
    <message>
        <source>must be an object in braces</source>
        <translation>muss ein Objekt in geschweiften Klammern sein</translation>
    </message>
    <message>
        <source>must be text in quotes</source>
        <translation>muss Text in Anführungszeichen sein</translation>
    </message>
    <message>
        <source>must be true or false</source>
        <translation>muss true oder false sein</translation>
    </message>
    <message>
        <source>must be a number</source>
        <translation>muss eine Zahl sein</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>muss eine ganze Zahl sein</translation>
    </message>
    <message>
        <source>the whole number is too large</source>
        <translation>die ganze Zahl ist zu groß</translation>
    </message>
    <message>
        <source>a time is written with milliseconds and offset, %1</source>
        <translation>eine Zeit wird mit Millisekunden und Zeitzone geschrieben, %1</translation>
    </message>
    <message>
        <source>must be a place [x, y] in millimetres</source>
        <translation>muss ein Ort [x, y] in Millimetern sein</translation>
    </message>
    <message>
        <source>a UUID is written in lower case here</source>
        <translation>eine UUID wird hier in Kleinbuchstaben geschrieben</translation>
    </message>
    <message>
        <source>must be a list in square brackets</source>
        <translation>muss eine Liste in eckigen Klammern sein</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing</source>
        <translation>&quot;%1&quot; fehlt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known; known are %2</source>
        <translation>&quot;%1&quot; ist nicht bekannt; bekannt sind %2</translation>
    </message>
    <message>
        <source>is left out when it is empty</source>
        <translation>entfällt, wenn es leer ist</translation>
    </message>
    <message>
        <source>the document</source>
        <translation>das Dokument</translation>
    </message>
    <message>
        <source>%1 members are too many for a job file; %2 may be in one</source>
        <translation>%1 Teile sind zu viele für eine Auftragsdatei; %2 dürfen darin sein</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a job file&apos;s member: wrong characters, or there already</source>
        <translation>&quot;%1&quot; kann kein Teil einer Auftragsdatei sein: falsche Zeichen oder schon da</translation>
    </message>
    <message>
        <source>%1 makes the job file too large; a member may have %2 bytes, all together %3</source>
        <translation>%1 macht die Auftragsdatei zu groß; ein Teil darf %2 Bytes haben, alle zusammen %3</translation>
    </message>
    <message>
        <source>it holds more than %1 values</source>
        <translation>es enthält mehr als %1 Werte</translation>
    </message>
    <message>
        <source>it is nested deeper than %1 levels</source>
        <translation>es ist tiefer als %1 Stufen verschachtelt</translation>
    </message>
    <message>
        <source>the name &quot;%1&quot; stands twice in one object</source>
        <translation>der Name &quot;%1&quot; steht zweimal in einem Objekt</translation>
    </message>
    <message>
        <source>the JSON is %1 bytes long; at most %2 are read</source>
        <translation>das JSON ist %1 Bytes lang; höchstens %2 werden gelesen</translation>
    </message>
    <message>
        <source>the text ends in the middle of the JSON</source>
        <translation>der Text endet mitten im JSON</translation>
    </message>
    <message>
        <source>this is not JSON (RFC 8259, UTF-8)</source>
        <translation>das ist kein JSON (RFC 8259, UTF-8)</translation>
    </message>
    <message>
        <source>the machine has no memory left for this JSON</source>
        <translation>der Rechner hat keinen Speicher mehr für dieses JSON</translation>
    </message>
    <message>
        <source>a number is too large; JSON numbers end at 1.797e308</source>
        <translation>eine Zahl ist zu groß; JSON-Zahlen enden bei 1.797e308</translation>
    </message>
    <message>
        <source>the job belongs to another test object than the one it came with</source>
        <translation>der Auftrag gehört zu einem anderen Prüfobjekt als dem, mit dem er kam</translation>
    </message>
    <message>
        <source>the readings are not in the order of storing: %1 follows %2</source>
        <translation>die Messwerte stehen nicht in der Reihenfolge des Speicherns: %1 folgt auf %2</translation>
    </message>
    <message>
        <source>this job is in the history already, as number %1</source>
        <translation>dieser Auftrag ist schon in der Historie, als Nummer %1</translation>
    </message>
    <message>
        <source>this job is in the history already, as number %1; nothing was added</source>
        <translation>dieser Auftrag ist schon in der Historie, als Nummer %1; nichts kam hinzu</translation>
    </message>
    <message>
        <source>job %1 was not taken in</source>
        <translation>Auftrag %1 wurde nicht übernommen</translation>
    </message>
    <message>
        <source>point numbers %1 mean other places in this job than in job %2; points are compared by identity, not by number</source>
        <translation>die Punktnummern %1 meinen in diesem Auftrag andere Orte als in Auftrag %2; verglichen wird nach Identität, nicht nach Nummer</translation>
    </message>
    <message>
        <source>another object here is called &quot;%1&quot; too; they are kept apart until a person says in its facts that they are one</source>
        <translation>ein anderes Objekt heißt hier auch &quot;%1&quot;; sie bleiben getrennt, bis ein Mensch in seinen Angaben sagt, dass sie eines sind</translation>
    </message>
    <message>
        <source>number %1 is taken here; the job is number %2 in this history</source>
        <translation>Nummer %1 ist hier vergeben; der Auftrag hat in dieser Historie Nummer %2</translation>
    </message>
    <message>
        <source>the object&apos;s %1 is &quot;%2&quot; here and &quot;%3&quot; in the file; it stays as it is here</source>
        <translation>Prüfobjekt, %1: hier &quot;%2&quot;, in der Datei &quot;%3&quot;; es bleibt wie hier</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>the object&apos;s volume, limits, pumps or note differ between here and the file; they stay as they are here</source>
        <translation>Volumen, Grenzwerte, Pumpen oder Bemerkung des Prüfobjekts sind hier und in der Datei verschieden; sie bleiben wie hier</translation>
    </message>
    <message>
        <source>picture %1 is missing: %2</source>
        <translation>Bild %1 fehlt: %2</translation>
    </message>
    <message>
        <source>picture %1 was changed: its bytes do not match its name</source>
        <translation>Bild %1 wurde geändert: die Bytes passen nicht zum Namen</translation>
    </message>
    <message>
        <source>open or make a history first; the job is taken into it</source>
        <translation>erst eine Historie öffnen oder anlegen; der Auftrag wird in sie übernommen</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>keine Berechtigung</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Ordner fehlt</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>der Datenträger ist schreibgeschützt</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Lese- oder Schreibfehler</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>the length of the leak channel is %1 m; right is 0.1 um to 10 m</source>
        <translation>die Länge des Leckkanals ist %1 m; richtig ist 0,1 µm bis 10 m</translation>
    </message>
    <message>
        <source>the upstream pressure is %1 Pa; right is 1 Pa to 20 bar</source>
        <translation>der Druck vor dem Leck ist %1 Pa; richtig ist 1 Pa bis 20 bar</translation>
    </message>
    <message>
        <source>the downstream pressure is %1 Pa; right is 0 to below the upstream pressure, %2 Pa</source>
        <translation>der Druck hinter dem Leck ist %1 Pa; richtig ist 0 bis unter den Druck davor, %2 Pa</translation>
    </message>
    <message>
        <source>a leak rate of %1 Pa m3/s has no channel; right is a rate above zero</source>
        <translation>eine Leckrate von %1 Pa m3/s hat keinen Kanal; richtig ist eine Rate über null</translation>
    </message>
    <message>
        <source>no round channel of %1 mm length passes %2 mbar l/s; channels from 0.1 nm to 50 mm pass %3 to %4</source>
        <translation>kein runder Kanal von %1 mm Länge lässt %2 mbar l/s durch; Kanäle von 0,1 nm bis 50 mm lassen %3 bis %4 durch</translation>
    </message>
    <message>
        <source>a hole can be worked out for a leak rate above zero only</source>
        <translation>ein Loch lässt sich nur für eine Leckrate über null berechnen</translation>
    </message>
    <message>
        <source>the upstream pressure must be above zero</source>
        <translation>der Druck vor dem Leck muss über null liegen</translation>
    </message>
    <message>
        <source>no hole between 0.1 nm and 50 mm passes this leak rate</source>
        <translation>kein Loch zwischen 0,1 nm und 50 mm lässt diese Leckrate durch</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a gas known here; known are %2</source>
        <translation>&quot;%1&quot; ist kein hier bekanntes Gas; bekannt sind %2</translation>
    </message>
    <message>
        <source>a gas temperature of %1 degC is outside -23 degC to 77 degC, where the viscosities hold</source>
        <translation>eine Gastemperatur von %1 °C liegt außerhalb von -23 °C bis 77 °C, wo die Zähigkeiten gelten</translation>
    </message>
    <message>
        <source>the pumping speed must be above zero</source>
        <translation>das Saugvermögen muss über null liegen</translation>
    </message>
    <message>
        <source>the pressure must be zero or above</source>
        <translation>der Druck muss null oder darüber sein</translation>
    </message>
    <message>
        <source>the inner diameter of the hose must be between 0.1 mm and 1 m</source>
        <translation>der Innendurchmesser des Schlauchs muss zwischen 0,1 mm und 1 m liegen</translation>
    </message>
    <message>
        <source>the length of the hose must be between 1 mm and 1 km</source>
        <translation>die Länge des Schlauchs muss zwischen 1 mm und 1 km liegen</translation>
    </message>
    <message>
        <source>the dwell must be above zero</source>
        <translation>die Sprühzeit muss über null liegen</translation>
    </message>
    <message>
        <source>the dwell of %1 s is too short for a response time of %2 s; at least %3 s is needed to size a leak</source>
        <translation>die Sprühzeit von %1 s ist zu kurz für eine Ansprechzeit von %2 s; mindestens %3 s sind nötig, um die Größe eines Lecks zu bestimmen</translation>
    </message>
    <message>
        <source>the volume must be above zero</source>
        <translation>das Volumen muss über null liegen</translation>
    </message>
    <message>
        <source>the pumping speed of the detector must be above zero</source>
        <translation>das Saugvermögen des Lecksuchers muss über null liegen</translation>
    </message>
    <message>
        <source>the pumping speed of the auxiliary pump must be zero or above</source>
        <translation>das Saugvermögen der Hilfspumpe muss null oder darüber sein</translation>
    </message>
    <message>
        <source>a hose needs both its inner diameter and its length</source>
        <translation>ein Schlauch braucht Innendurchmesser und Länge</translation>
    </message>
    <message>
        <source>the pressure in the hose must be zero or above</source>
        <translation>der Druck im Schlauch muss null oder darüber sein</translation>
    </message>
    <message>
        <source>the share of the signal to wait for must be between 20 % and 99.9 %</source>
        <translation>der Anteil des Signals, auf den gewartet wird, muss zwischen 20 % und 99,9 % liegen</translation>
    </message>
    <message>
        <source>the share of the last signal that may be left must be between 0.1 % and 80 %</source>
        <translation>der Anteil des letzten Signals, der bleiben darf, muss zwischen 0,1 % und 80 % liegen</translation>
    </message>
    <message>
        <source>the background has %1 times and %2 values; right is one time for each value</source>
        <translation>der Untergrund hat %1 Zeiten und %2 Werte; richtig ist eine Zeit je Wert</translation>
    </message>
    <message>
        <source>the background has %1 readings; at least %2 are needed, 20 are usual</source>
        <translation>der Untergrund hat %1 Ablesungen; mindestens %2 sind nötig, 20 üblich</translation>
    </message>
    <message>
        <source>background reading %1 is not a finite number</source>
        <translation>Untergrundablesung %1 ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>background reading %1 is not later than the one before it</source>
        <translation>Untergrundablesung %1 ist nicht später als die davor</translation>
    </message>
    <message>
        <source>peak and background must be finite numbers</source>
        <translation>Höchstwert und Untergrund müssen endliche Zahlen sein</translation>
    </message>
    <message>
        <source>noise and drift of the background must be zero or above</source>
        <translation>Rauschen und Drift des Untergrunds müssen null oder darüber sein</translation>
    </message>
    <message>
        <source>the dwell must be zero or above</source>
        <translation>die Sprühzeit muss null oder darüber sein</translation>
    </message>
    <message>
        <source>the repeatability must be zero or above</source>
        <translation>die Wiederholbarkeit muss null oder darüber sein</translation>
    </message>
    <message>
        <source>the %1 must be above zero, with an uncertainty of zero or above</source>
        <translation>%1: der Faktor muss über null liegen, mit einer Unsicherheit von null oder darüber</translation>
    </message>
    <message>
        <source>the leak rate must be a finite number</source>
        <translation>die Leckrate muss eine endliche Zahl sein</translation>
    </message>
    <message>
        <source>the uncertainty of a leak rate must be zero or above</source>
        <translation>die Unsicherheit einer Leckrate muss null oder darüber sein</translation>
    </message>
    <message>
        <source>the limit must be above zero</source>
        <translation>der Grenzwert muss über null liegen</translation>
    </message>
    <message>
        <source>the risk of a wrong decision must be between 0 and 50 %</source>
        <translation>das Risiko einer falschen Entscheidung muss zwischen 0 und 50 % liegen</translation>
    </message>
    <message>
        <source>a point that is not in the sketch cannot be ticked for repair</source>
        <translation>ein Punkt, der nicht in der Skizze ist, lässt sich nicht zur Reparatur ankreuzen</translation>
    </message>
    <message>
        <source>a pressure rise says nothing without the volume; type it under Object and purpose</source>
        <translation>ein Druckanstieg sagt ohne das Volumen nichts; es unter „Objekt und Zweck“ eintragen</translation>
    </message>
    <message>
        <source>the total of the pressure-rise test and its range must be finite, in order and not below zero</source>
        <translation>das Gesamt der Druckanstiegsprüfung und sein Bereich müssen endlich, geordnet und nicht unter null sein</translation>
    </message>
    <message>
        <source>the uncertainty must be zero or above</source>
        <translation>die Unsicherheit muss null oder darüber sein</translation>
    </message>
    <message>
        <source>there are fewer observations than parameters to fit</source>
        <translation>es gibt weniger Beobachtungen als anzupassende Größen</translation>
    </message>
    <message>
        <source>the data do not determine all parameters of the fit</source>
        <translation>die Daten bestimmen nicht alle Größen der Anpassung</translation>
    </message>
    <message>
        <source>the fit cannot begin at its starting values</source>
        <translation>die Anpassung kann bei ihren Anfangswerten nicht beginnen</translation>
    </message>
    <message>
        <source>the fit did not settle within its allowed number of steps</source>
        <translation>die Anpassung kam in der erlaubten Zahl von Schritten nicht zur Ruhe</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the located leaks</source>
        <translation>&quot;%1&quot; ist keines der gefundenen Lecks</translation>
    </message>
    <message>
        <source>point %1: its place must be finite</source>
        <translation>Punkt %1: sein Ort muss endlich sein</translation>
    </message>
    <message>
        <source>point %1 is there twice</source>
        <translation>Punkt %1 ist doppelt da</translation>
    </message>
    <message>
        <source>a reading names point %1, which does not exist</source>
        <translation>ein Messwert nennt Punkt %1, den es nicht gibt</translation>
    </message>
    <message>
        <source>reading %1 (point %2): rates and times must be finite, the dwell above 0</source>
        <translation>Messwert %1 (Punkt %2): Raten und Zeiten müssen endlich sein, die Sprühzeit über 0</translation>
    </message>
    <message>
        <source>reading %1 (point %2) starts before the one above it</source>
        <translation>Messwert %1 (Punkt %2) beginnt vor dem darüber</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time with its offset; write 2026-03-01T14:05:09+01:00</source>
        <translation>&quot;%1&quot; ist kein Zeitpunkt mit Zeitzone; zu schreiben wie 2026-03-01T14:05:09+01:00</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date; write year-month-day, such as 2026-03-01</source>
        <translation>&quot;%1&quot; ist kein Datum; zu schreiben als Jahr-Monat-Tag, etwa 2026-03-01</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a UUID; it has 32 hexadecimal digits in five groups, such as 1b4e28ba-2fa1-41d2-883f-0016d3cca427</source>
        <translation>&quot;%1&quot; ist keine UUID; sie hat 32 hexadezimale Ziffern in fünf Gruppen, etwa 1b4e28ba-2fa1-41d2-883f-0016d3cca427</translation>
    </message>
    <message>
        <source>%1 in %2 cannot be converted to %3 (%4)</source>
        <translation>%1 in %2 lässt sich nicht in %4 (%3) umrechnen</translation>
    </message>
    <message>
        <source>a leak rate must be a finite number</source>
        <translation>eine Leckrate muss eine endliche Zahl sein</translation>
    </message>
    <message>
        <source>%1 %2 is too large to be written in %3</source>
        <translation>%1 %2 ist zu groß, um in %3 geschrieben zu werden</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is the unit of %2, but a leak rate is asked for, such as &quot;1e-9 mbar l/s&quot;</source>
        <translation>&quot;%1&quot; ist die Einheit einer anderen Größe (%2); gefragt ist eine Leckrate, etwa &quot;1e-9 mbar l/s&quot;</translation>
    </message>
    <message>
        <source>the gas and standard temperatures must be above 0 K</source>
        <translation>die Gastemperatur und die Normtemperatur müssen über 0 K liegen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a mass flow and needs the gas named, such as helium</source>
        <translation>&quot;%1&quot; ist ein Massenstrom; dazu muss das Gas genannt sein, etwa Helium</translation>
    </message>
    <message>
        <source>the molar mass of the gas must be above zero</source>
        <translation>die molare Masse des Gases muss über null liegen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a unit of leak rate, but not one a job can report in; right would be for instance &quot;mbar l/s&quot;, &quot;Pa m3/s&quot; or &quot;sccm&quot;</source>
        <translation>&quot;%1&quot; ist eine Einheit der Leckrate, aber keine, in der ein Auftrag berichten kann; richtig wäre etwa &quot;mbar l/s&quot;, &quot;Pa m3/s&quot; oder &quot;sccm&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; right would be for instance 2.5e-7 or 120</source>
        <translation>&quot;%1&quot; ist keine Zahl; richtig wäre etwa 2,5e-7 oder 120</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one decimal mark; write it without thousands separators</source>
        <translation>&quot;%1&quot; hat mehr als ein Dezimalzeichen; ohne Tausendertrennzeichen schreiben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside the numbers a computer can hold; about 1e-300 to 1e300 is right</source>
        <translation>&quot;%1&quot; liegt außerhalb der Zahlen, die ein Rechner fasst; richtig ist etwa 1e-300 bis 1e300</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a share; right is 0 to 100 %, written &quot;25 %&quot; or &quot;0.25&quot;</source>
        <translation>&quot;%1&quot; ist kein Anteil; richtig ist 0 bis 100 %, geschrieben &quot;25 %&quot; oder &quot;0,25&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not start with a number; right would be for instance &quot;2.5e-7 mbar l/s&quot;</source>
        <translation>&quot;%1&quot; beginnt nicht mit einer Zahl; richtig wäre etwa &quot;2,5e-7 mbar l/s&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not hold one number and its unit; right would be for instance &quot;2.5e-7 mbar l/s&quot;</source>
        <translation>&quot;%1&quot; enthält nicht eine Zahl mit ihrer Einheit; richtig wäre etwa &quot;2,5e-7 mbar l/s&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit; right would be for instance &quot;%2 mbar l/s&quot;</source>
        <translation>&quot;%1&quot; hat keine Einheit; richtig wäre etwa &quot;%2 mbar l/s&quot;</translation>
    </message>
    <message>
        <source>%1 must be a finite number</source>
        <translation>%1 muss eine endliche Zahl sein</translation>
    </message>
    <message>
        <source>%1 %2 is below absolute zero; a temperature is at least 0 K (-273.15 degC)</source>
        <translation>%1 %2 liegt unter dem absoluten Nullpunkt; eine Temperatur ist mindestens 0 K (-273,15 °C)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit; %2 is asked for, such as &quot;%3&quot;</source>
        <translation>&quot;%1&quot; hat keine Einheit; gefragt ist %2, etwa &quot;%3&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is %2, but %3 is asked for, such as &quot;%4&quot;</source>
        <translation>&quot;%1&quot; ist %2, gefragt ist aber %3, etwa &quot;%4&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is %2, but a leak rate is asked for, such as &quot;%3&quot;</source>
        <translation>&quot;%1&quot; ist %2, gefragt ist aber eine Leckrate, etwa &quot;%3&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit known here; right would be for instance &quot;mbar l/s&quot;, &quot;Pa m3/s&quot;, &quot;sccm&quot;, &quot;mbar&quot;, &quot;l&quot;, &quot;mm&quot; or &quot;degC&quot;</source>
        <translation>&quot;%1&quot; ist keine hier bekannte Einheit; richtig wäre etwa &quot;mbar l/s&quot;, &quot;Pa m3/s&quot;, &quot;sccm&quot;, &quot;mbar&quot;, &quot;l&quot;, &quot;mm&quot; oder &quot;degC&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is the unit of %2, but %3 is asked for, such as &quot;%4&quot;</source>
        <translation>&quot;%1&quot; ist die Einheit einer anderen Größe (%2); gefragt ist %3, etwa &quot;%4&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a %2; known are %3</source>
        <translation>&quot;%1&quot; ist kein bekanntes Wort (%2); bekannt sind %3</translation>
    </message>
    <message>
        <source>%1 %2 is below zero; %3 is at least 0 %4</source>
        <translation>%1 %2 liegt unter null; %3 ist mindestens 0 %4</translation>
    </message>
    <message>
        <source>%1 %2 is below zero; %3 is at least 0 %4, counted from vacuum</source>
        <translation>%1 %2 liegt unter null; %3 ist mindestens 0 %4, gezählt ab Vakuum</translation>
    </message>
    <message>
        <source>a leak rate</source>
        <translation>eine Leckrate</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>ein Druck</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>ein Volumen</translation>
    </message>
    <message>
        <source>a volume flow</source>
        <translation>ein Volumenstrom</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>a temperature difference</source>
        <translation>eine Temperaturdifferenz</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>ein Anteil</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read as %2 or as %3; write %4 or %5</source>
        <translation>&quot;%1&quot; lässt sich als %2 oder als %3 lesen; zu schreiben %4 oder %5</translation>
    </message>
    <message>
        <source>%1 of the %2 signatures before that of %3 are missing</source>
        <translation>%1 der %2 Unterschriften vor der von %3 fehlen</translation>
    </message>
    <message>
        <source>the approval by %1 of %2 is covered by no valid signature</source>
        <translation>die Freigabe durch %1 von %2 ist durch keine gültige Unterschrift gedeckt</translation>
    </message>
    <message>
        <source>%1 is no longer active here and cannot sign</source>
        <translation>%1 ist hier nicht mehr aktiv und kann nicht unterschreiben</translation>
    </message>
    <message>
        <source>%1 has no signing key yet</source>
        <translation>%1 hat noch keinen Unterschriftsschlüssel</translation>
    </message>
    <message>
        <source>signing key of %1: its public half is not the one this person is known by</source>
        <translation>Unterschriftsschlüssel von %1: die öffentliche Hälfte ist nicht die, unter der diese Person bekannt ist</translation>
    </message>
    <message>
        <source>name, role or statement is not UTF-8 text</source>
        <translation>Name, Rolle oder Erklärung ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>the job is marked &quot;%1&quot;, but after its review it is &quot;%2&quot;</source>
        <translation>der Auftrag ist als &quot;%1&quot; vermerkt, nach seiner Durchsicht ist er aber &quot;%2&quot;</translation>
    </message>
    <message>
        <source>the machine offers no random numbers for signing keys</source>
        <translation>der Rechner liefert keine Zufallszahlen für Unterschriftsschlüssel</translation>
    </message>
    <message>
        <source>the signing key asks for a passphrase check outside 1 to 16 passes over 8 KiB to 1 GiB; it is damaged or not ours</source>
        <translation>der Unterschriftsschlüssel verlangt eine Kennsatzprüfung außerhalb von 1 bis 16 Durchgängen über 8 KiB bis 1 GiB; er ist beschädigt oder nicht von uns</translation>
    </message>
    <message>
        <source>the passphrase check needs %1 MiB of free memory</source>
        <translation>die Prüfung des Kennsatzes braucht %1 MiB freien Speicher</translation>
    </message>
    <message>
        <source>the passphrase does not open this signing key</source>
        <translation>der Kennsatz öffnet diesen Unterschriftsschlüssel nicht</translation>
    </message>
    <message>
        <source>the passphrase is too short; use at least %1 characters</source>
        <translation>der Kennsatz ist zu kurz; mindestens %1 Zeichen nehmen</translation>
    </message>
    <message>
        <source>the stored signing key is damaged or of another kind; sealwalk-key-1 is right</source>
        <translation>der gespeicherte Unterschriftsschlüssel ist beschädigt oder anderer Art; richtig ist sealwalk-key-1</translation>
    </message>
    <message>
        <source>a person needs a name</source>
        <translation>eine Person braucht einen Namen</translation>
    </message>
    <message>
        <source>%1 has a signing key already; to sign with another one, add the person anew under a name that tells the two apart</source>
        <translation>%1 hat schon einen Unterschriftsschlüssel; um mit einem anderen zu unterschreiben, die Person neu anlegen, mit einem Namen, der beide unterscheidet</translation>
    </message>
    <message>
        <source>job %1 is %2: %3</source>
        <translation>Auftrag %1 ist %2: %3</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>eingereicht</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>it cannot be submitted again</source>
        <translation>er kann nicht noch einmal eingereicht werden</translation>
    </message>
    <message>
        <source>only a submitted job can be sent back</source>
        <translation>nur ein eingereichter Auftrag kann zurückgegeben werden</translation>
    </message>
    <message>
        <source>only a submitted job can be approved</source>
        <translation>nur ein eingereichter Auftrag kann freigegeben werden</translation>
    </message>
    <message>
        <source>amendments are for signed jobs; change the record itself</source>
        <translation>Nachträge sind für unterschriebene Aufträge; die Aufzeichnung selbst ändern</translation>
    </message>
    <message>
        <source>what is known since goes in as an amendment, which is signed too</source>
        <translation>was seither bekannt ist, kommt als Nachtrag dazu, der auch unterschrieben wird</translation>
    </message>
    <message>
        <source>job %1 has no signature yet; an approval is signed</source>
        <translation>Auftrag %1 hat noch keine Unterschrift; eine Freigabe wird unterschrieben</translation>
    </message>
    <message>
        <source>a signature that closes a job goes with an approval</source>
        <translation>eine Unterschrift, die einen Auftrag schließt, gehört zu einer Freigabe</translation>
    </message>
    <message>
        <source>something was stored in the history since job %1 was looked at; look again</source>
        <translation>in der Historie wurde etwas gespeichert, seit Auftrag %1 angesehen wurde; noch einmal ansehen</translation>
    </message>
    <message>
        <source>a signed job takes amendments and their signatures only</source>
        <translation>ein unterschriebener Auftrag nimmt nur Nachträge und deren Unterschriften an</translation>
    </message>
    <message>
        <source>an amendment says what is known now</source>
        <translation>ein Nachtrag sagt, was jetzt bekannt ist</translation>
    </message>
    <message>
        <source>this person is not known in this history; add them first</source>
        <translation>diese Person ist in dieser Historie nicht bekannt; sie erst zufügen</translation>
    </message>
    <message>
        <source>another history was opened meanwhile; nothing of %1 was kept</source>
        <translation>inzwischen wurde eine andere Historie geöffnet; von %1 wurde nichts behalten</translation>
    </message>
    <message>
        <source>signing key of %1</source>
        <translation>Unterschriftsschlüssel von %1</translation>
    </message>
    <message>
        <source>public key</source>
        <translation>öffentlicher Schlüssel</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>no job is open</source>
        <translation>kein Auftrag ist offen</translation>
    </message>
    <message>
        <source>the findings are still being worked out; wait until they are shown</source>
        <translation>die Befunde werden noch berechnet; warten, bis sie gezeigt werden</translation>
    </message>
    <message>
        <source>signed by %1, key %2</source>
        <translation>unterschrieben von %1, Schlüssel %2</translation>
    </message>
    <message>
        <source>nobody has signed this job</source>
        <translation>niemand hat diesen Auftrag unterschrieben</translation>
    </message>
    <message>
        <source>the signature of %1 is broken: who, when, the statement, the digest, the key or the signature itself was changed</source>
        <translation>die Unterschrift von %1 ist gebrochen: wer, wann, die Erklärung, die Prüfsumme, der Schlüssel oder die Unterschrift selbst wurde geändert</translation>
    </message>
    <message>
        <source>the job, its object or its pictures were changed after %1 signed</source>
        <translation>der Auftrag, sein Objekt oder seine Bilder wurden nach der Unterschrift von %1 geändert</translation>
    </message>
    <message>
        <source>the amendment by %1 of %2 is not signed</source>
        <translation>der Nachtrag von %1 vom %2 ist nicht unterschrieben</translation>
    </message>
    <message>
        <source>the last %1 of %2 turns of the review came after the last signature</source>
        <translation>die letzten %1 von %2 Schritten der Durchsicht kamen nach der letzten Unterschrift</translation>
    </message>
    <message>
        <source>%1 is not among the people of this history; ask them whether their key is %2</source>
        <translation>%1 gehört nicht zu den Personen dieser Historie; dort nachfragen, ob der Schlüssel %2 ist</translation>
    </message>
    <message>
        <source>the signature of %1 was made with another key than %2 has in this history</source>
        <translation>die Unterschrift von %1 entstand mit einem anderen Schlüssel, als %2 in dieser Historie hat</translation>
    </message>
    <message>
        <source>when this was signed the object was called &quot;%1&quot;; now it is &quot;%2&quot;</source>
        <translation>bei der Unterschrift hieß das Objekt &quot;%1&quot;; jetzt heißt es &quot;%2&quot;</translation>
    </message>
    <message>
        <source>“%1” is no point number; write numbers and ranges such as 6-8, 12</source>
        <translation>„%1“ ist keine Punktnummer; Nummern und Bereiche schreiben wie 6-8, 12</translation>
    </message>
    <message>
        <source>there is no point %1 in this object</source>
        <translation>es gibt keinen Punkt %1 an diesem Objekt</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; has no identity of its own</source>
        <translation>Blatt &quot;%1&quot; hat keine eigene Identität</translation>
    </message>
    <message>
        <source>joint &quot;%1&quot; has no identity of its own</source>
        <translation>Fügestelle &quot;%1&quot; hat keine eigene Identität</translation>
    </message>
    <message>
        <source>joint &quot;%1&quot; lies on no sheet</source>
        <translation>Fügestelle &quot;%1&quot; liegt auf keinem Blatt</translation>
    </message>
    <message>
        <source>joint &quot;%1&quot;: %2</source>
        <translation>Fügestelle &quot;%1&quot;: %2</translation>
    </message>
    <message>
        <source>point number %1 lies outside 1 … %2</source>
        <translation>Punktnummer %1 liegt außerhalb von 1 … %2</translation>
    </message>
    <message>
        <source>point number %1 is given twice</source>
        <translation>Punktnummer %1 ist doppelt vergeben</translation>
    </message>
    <message>
        <source>point %1 has no identity of its own</source>
        <translation>Punkt %1 hat keine eigene Identität</translation>
    </message>
    <message>
        <source>point %1 lies on no joint</source>
        <translation>Punkt %1 liegt auf keiner Fügestelle</translation>
    </message>
    <message>
        <source>point %1 lies off its joint</source>
        <translation>Punkt %1 liegt neben seiner Fügestelle</translation>
    </message>
    <message>
        <source>a ring needs a radius above 0 mm</source>
        <translation>ein Ring braucht einen Radius über 0 mm</translation>
    </message>
    <message>
        <source>a rounded rectangle needs a width and a height above 0 mm</source>
        <translation>ein abgerundetes Rechteck braucht eine Breite und eine Höhe über 0 mm</translation>
    </message>
    <message>
        <source>the corner radius must lie between 0 and half of the shorter side</source>
        <translation>der Eckenradius muss zwischen 0 und der Hälfte der kürzeren Seite liegen</translation>
    </message>
    <message>
        <source>a node lies nowhere</source>
        <translation>ein Knoten liegt nirgends</translation>
    </message>
    <message>
        <source>the nodes of a line must not all lie on one place</source>
        <translation>die Knoten einer Linie dürfen nicht alle auf einer Stelle liegen</translation>
    </message>
    <message>
        <source>a spot needs a place</source>
        <translation>eine Einzelstelle braucht einen Ort</translation>
    </message>
    <message>
        <source>a closed line needs at least three nodes</source>
        <translation>eine geschlossene Linie braucht mindestens drei Knoten</translation>
    </message>
    <message>
        <source>an open line needs at least two nodes</source>
        <translation>eine offene Linie braucht mindestens zwei Knoten</translation>
    </message>
    <message>
        <source>nothing was copied yet; choose joints and copy them first</source>
        <translation>noch nichts kopiert; erst Fügestellen wählen und kopieren</translation>
    </message>
    <message>
        <source>the sketch was changed elsewhere meanwhile; this step no longer fits it</source>
        <translation>die Skizze wurde inzwischen anderswo geändert; dieser Schritt passt nicht mehr dazu</translation>
    </message>
    <message>
        <source>point %1 has readings and stays; retire it instead</source>
        <translation>Punkt %1 hat Messwerte und bleibt; ihn stattdessen stilllegen</translation>
    </message>
    <message>
        <source>point %1 has readings and keeps its number and joint</source>
        <translation>Punkt %1 hat Messwerte und behält seine Nummer und seine Fügestelle</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>es gibt nichts zurückzunehmen</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>es gibt nichts wiederherzustellen</translation>
    </message>
    <message>
        <source>a flange must be wider than the ring that seals it</source>
        <translation>ein Flansch muss breiter sein als der Ring, der ihn dichtet</translation>
    </message>
    <message>
        <source>a flange has 0 to 64 bolts</source>
        <translation>ein Flansch hat 0 bis 64 Schrauben</translation>
    </message>
    <message>
        <source>a door must be larger than the seal that closes it</source>
        <translation>eine Tür muss größer sein als die Dichtung, die sie schließt</translation>
    </message>
    <message>
        <source>the seal of a door is a rounded rectangle</source>
        <translation>die Dichtung einer Tür ist ein abgerundetes Rechteck</translation>
    </message>
    <message>
        <source>%1 ports are asked for; a row has 1 to %2</source>
        <translation>%1 Anschlüsse sind verlangt; eine Reihe hat 1 bis %2</translation>
    </message>
    <message>
        <source>the ports of a row must not lie on one place</source>
        <translation>die Anschlüsse einer Reihe dürfen nicht auf einer Stelle liegen</translation>
    </message>
    <message>
        <source>%1 joints are asked for; a row or circle has 2 to %2</source>
        <translation>%1 Fügestellen sind verlangt; eine Reihe oder ein Kreis hat 2 bis %2</translation>
    </message>
    <message>
        <source>%1 starts off its own line</source>
        <translation>%1 beginnt neben der eigenen Linie</translation>
    </message>
    <message>
        <source>a cord thickness must be above 0 mm</source>
        <translation>eine Schnurdicke muss über 0 mm liegen</translation>
    </message>
    <message>
        <source>%1 is locked; unlock it first</source>
        <translation>%1 ist gesperrt; erst entsperren</translation>
    </message>
    <message>
        <source>the copies of a row must not lie on one place; drag the next one off</source>
        <translation>die Kopien einer Reihe dürfen nicht auf einer Stelle liegen; die nächste wegziehen</translation>
    </message>
    <message>
        <source>the pitch must be above 0 mm</source>
        <translation>der Abstand muss über 0 mm liegen</translation>
    </message>
    <message>
        <source>%1 points are asked for; a joint can be given 1 to %2</source>
        <translation>%1 Punkte sind verlangt; eine Fügestelle kann 1 bis %2 bekommen</translation>
    </message>
    <message>
        <source>point %1 on %2 has readings, so its points cannot be laid anew; add a point or split a stretch instead</source>
        <translation>Punkt %1 auf %2 hat Messwerte, ihre Punkte lassen sich nicht neu legen; stattdessen einen Punkt zufügen oder eine Strecke teilen</translation>
    </message>
    <message>
        <source>number %1 is not above %2, the highest so far, and no number is used twice; the next free one is %3</source>
        <translation>Nummer %1 liegt nicht über %2, der bisher höchsten, und keine Nummer wird zweimal vergeben; die nächste freie ist %3</translation>
    </message>
    <message>
        <source>that joint is not in the sketch</source>
        <translation>diese Fügestelle ist nicht in der Skizze</translation>
    </message>
    <message>
        <source>that point is not in the sketch</source>
        <translation>dieser Punkt ist nicht in der Skizze</translation>
    </message>
    <message>
        <source>that sheet is not in the sketch</source>
        <translation>dieses Blatt ist nicht in der Skizze</translation>
    </message>
    <message>
        <source>point %1 on %2 has readings, so the numbers there stay; add a point or split a stretch instead</source>
        <translation>Punkt %1 auf %2 hat Messwerte, die Nummern dort bleiben; stattdessen einen Punkt zufügen oder eine Strecke teilen</translation>
    </message>
    <message>
        <source>the place lies off %1</source>
        <translation>die Stelle liegt neben %1</translation>
    </message>
    <message>
        <source>%1 is a single place and has its point</source>
        <translation>%1 ist eine Einzelstelle und hat ihren Punkt</translation>
    </message>
    <message>
        <source>the place lies %1 mm off %2; put the cursor on the joint</source>
        <translation>die Stelle liegt %1 mm neben %2; den Zeiger auf die Fügestelle setzen</translation>
    </message>
    <message>
        <source>%1 is a single place and cannot be split</source>
        <translation>%1 ist eine Einzelstelle und lässt sich nicht teilen</translation>
    </message>
    <message>
        <source>%1 has no stretch to split yet; lay points first</source>
        <translation>%1 hat noch keine Strecke zum Teilen; erst Punkte legen</translation>
    </message>
    <message>
        <source>the place lies off the joint of point %1</source>
        <translation>die Stelle liegt neben der Fügestelle von Punkt %1</translation>
    </message>
    <message>
        <source>point %1 has readings, so numbers stay; add a point or split a stretch instead</source>
        <translation>Punkt %1 hat Messwerte, die Nummern bleiben; stattdessen einen Punkt zufügen oder eine Strecke teilen</translation>
    </message>
    <message>
        <source>%1 has two ends and starts at one of them; reverse its sense instead</source>
        <translation>%1 hat zwei Enden und beginnt an einem davon; stattdessen den Sinn umkehren</translation>
    </message>
    <message>
        <source>a sheet needs a name, such as &quot;Door&quot;</source>
        <translation>ein Blatt braucht einen Namen, etwa &quot;Tür&quot;</translation>
    </message>
    <message>
        <source>there is a sheet &quot;%1&quot; already; give this one another name</source>
        <translation>es gibt schon ein Blatt &quot;%1&quot;; diesem einen anderen Namen geben</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; needs a width and a height above 0 mm and up to 1000 m</source>
        <translation>Blatt &quot;%1&quot; braucht eine Breite und eine Höhe über 0 mm und bis 1000 m</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; needs an up direction</source>
        <translation>Blatt &quot;%1&quot; braucht eine Richtung nach oben</translation>
    </message>
    <message>
        <source>the picture under sheet &quot;%1&quot; needs a scale above 0</source>
        <translation>das Bild unter Blatt &quot;%1&quot; braucht einen Maßstab über 0</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; stays, because point %2 on it has readings</source>
        <translation>Blatt &quot;%1&quot; bleibt, weil Punkt %2 darauf Messwerte hat</translation>
    </message>
    <message>
        <source>the two clicks lie on one place; click the ends of a length you know, far apart</source>
        <translation>die zwei Klicks liegen auf einer Stelle; die Enden einer bekannten Länge anklicken, weit auseinander</translation>
    </message>
    <message>
        <source>the length between the two clicks must be above 0 mm</source>
        <translation>die Länge zwischen den zwei Klicks muss über 0 mm liegen</translation>
    </message>
    <message>
        <source>O-ring seal</source>
        <translation>O-Ring-Dichtung</translation>
    </message>
    <message>
        <source>metal-gasket flange</source>
        <translation>Flansch mit Metalldichtung</translation>
    </message>
    <message>
        <source>clamped flange</source>
        <translation>Klammerflansch</translation>
    </message>
    <message>
        <source>weld seam</source>
        <translation>Schweißnaht</translation>
    </message>
    <message>
        <source>brazed joint</source>
        <translation>Lötstelle</translation>
    </message>
    <message>
        <source>threaded fitting</source>
        <translation>Verschraubung</translation>
    </message>
    <message>
        <source>feedthrough</source>
        <translation>Durchführung</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>bellows</source>
        <translation>Faltenbalg</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>viewport</source>
        <translation>Schauglas</translation>
    </message>
    <message>
        <source>there is no file %1</source>
        <translation>es gibt keine Datei %1</translation>
    </message>
    <message>
        <source>%1 is a folder; a photo, an SVG or a PDF is needed</source>
        <translation>%1 ist ein Ordner; nötig ist ein Foto, ein SVG oder ein PDF</translation>
    </message>
    <message>
        <source>%1 is larger than 200 MB; save it smaller first</source>
        <translation>%1 ist größer als 200 MB; erst kleiner speichern</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>%1 is empty; a photo, an SVG or a PDF is needed</source>
        <translation>%1 ist leer; nötig ist ein Foto, ein SVG oder ein PDF</translation>
    </message>
    <message>
        <source>%1 is not a PDF that can be opened; it may be damaged or locked with a password</source>
        <translation>%1 ist kein PDF, das sich öffnen lässt; vielleicht beschädigt oder mit Kennwort gesperrt</translation>
    </message>
    <message>
        <source>%1 has pages 1 to %2 only</source>
        <translation>%1 hat nur die Seiten 1 bis %2</translation>
    </message>
    <message>
        <source>page %1 of %2 cannot be drawn</source>
        <translation>Seite %1 von %2 lässt sich nicht zeichnen</translation>
    </message>
    <message>
        <source>%1 is not plain SVG or names other files or style sheets; save it with everything inside</source>
        <translation>%1 ist kein reines SVG oder nennt andere Dateien oder Stilvorlagen; mit allem Inhalt darin speichern</translation>
    </message>
    <message>
        <source>%1 is not an SVG that can be drawn</source>
        <translation>%1 ist kein SVG, das sich zeichnen lässt</translation>
    </message>
    <message>
        <source>%1 is neither a photo, an SVG nor a PDF</source>
        <translation>%1 ist weder Foto noch SVG noch PDF</translation>
    </message>
    <message>
        <source>%1 breaks off before its end; copy it again</source>
        <translation>%1 bricht vor dem Ende ab; noch einmal kopieren</translation>
    </message>
    <message>
        <source>%1 cannot be read as a picture; it may be damaged</source>
        <translation>%1 lässt sich nicht als Bild lesen; vielleicht beschädigt</translation>
    </message>
    <message>
        <source>the drawing under the sheet names other files; it is not drawn</source>
        <translation>die Zeichnung unter dem Blatt nennt andere Dateien; sie wird nicht gezeichnet</translation>
    </message>
    <message>
        <source>the picture under the sheet cannot be drawn</source>
        <translation>das Bild unter dem Blatt lässt sich nicht zeichnen</translation>
    </message>
    <message>
        <source>the picture under the sheet cannot be read</source>
        <translation>das Bild unter dem Blatt lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the picture has no content</source>
        <translation>das Bild hat keinen Inhalt</translation>
    </message>
    <message>
        <source>the picture has more than 100 MiB; make it smaller</source>
        <translation>das Bild hat mehr als 100 MiB; es kleiner machen</translation>
    </message>
    <message>
        <source>has no picture %1</source>
        <translation>darin gibt es kein Bild %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could not be written: %2</source>
        <translation>&quot;%1&quot; ließ sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>the picture is too large for this machine&apos;s memory; ask for fewer dots per inch</source>
        <translation>das Bild ist zu groß für den Speicher dieses Rechners; weniger Bildpunkte je Zoll wählen</translation>
    </message>
    <message>
        <source>the picture could not be packed as PNG</source>
        <translation>das Bild ließ sich nicht als PNG packen</translation>
    </message>
    <message>
        <source>no photo is chosen</source>
        <translation>kein Foto ist gewählt</translation>
    </message>
    <message>
        <source>no picture %1</source>
        <translation>kein Bild %1</translation>
    </message>
    <message>
        <source>the job has no sheet to draw</source>
        <translation>der Auftrag hat kein Blatt zum Zeichnen</translation>
    </message>
    <message>
        <source>the map was not drawn</source>
        <translation>die Karte wurde nicht gezeichnet</translation>
    </message>
    <message>
        <source>the report was not drawn</source>
        <translation>der Bericht wurde nicht gezeichnet</translation>
    </message>
    <message>
        <source>job %1 has no point %2</source>
        <translation>Auftrag %1 hat keinen Punkt %2</translation>
    </message>
    <message>
        <source>job %1 has no round %2</source>
        <translation>Auftrag %1 hat keine Runde %2</translation>
    </message>
    <message>
        <source>the sketch of job %1 was changed in another window (revision %2 there, %3 here); take that one over first</source>
        <translation>die Skizze von Auftrag %1 wurde in einem anderen Fenster geändert (dort Stand %2, hier %3); diese erst übernehmen</translation>
    </message>
    <message>
        <source>point %1 of job %2 has readings or remarks and cannot be taken out; retire it</source>
        <translation>Punkt %1 von Auftrag %2 hat Messwerte oder Bemerkungen und lässt sich nicht entfernen; ihn stilllegen</translation>
    </message>
    <message>
        <source>what job %1 was set up with was changed in another window meanwhile; look again</source>
        <translation>der Aufbau von Auftrag %1 wurde inzwischen in einem anderen Fenster geändert; noch einmal ansehen</translation>
    </message>
    <message>
        <source>round %1 of job %2 is closed; open another</source>
        <translation>Runde %1 von Auftrag %2 ist geschlossen; eine neue öffnen</translation>
    </message>
    <message>
        <source>a repair names no point; name at least one</source>
        <translation>eine Reparatur nennt keinen Punkt; mindestens einen nennen</translation>
    </message>
    <message>
        <source>a temporary repair needs somebody who owns it and a due date</source>
        <translation>eine vorläufige Reparatur braucht jemanden, der zuständig ist, und einen Termin</translation>
    </message>
    <message>
        <source>this repair was changed in another window meanwhile; look again</source>
        <translation>diese Reparatur wurde inzwischen in einem anderen Fenster geändert; noch einmal ansehen</translation>
    </message>
    <message>
        <source>the file is damaged: %1</source>
        <translation>die Datei ist beschädigt: %1</translation>
    </message>
    <message>
        <source>a row of &quot;%1&quot; belongs to a &quot;%2&quot; that is not there</source>
        <translation>eine Zeile von &quot;%1&quot; gehört zu &quot;%2&quot;, das es nicht gibt</translation>
    </message>
    <message>
        <source>the %1 of the history was taken out of the file</source>
        <translation>%1: wurde aus der Historie entfernt</translation>
    </message>
    <message>
        <source>the %1 of the history was changed in the file</source>
        <translation>%1: wurde in der Historie geändert</translation>
    </message>
    <message>
        <source>the %1 does not belong into a history</source>
        <translation>%1: gehört nicht in eine Historie</translation>
    </message>
    <message>
        <source>picture %1 does not hold what its name says</source>
        <translation>Bild %1 enthält nicht, was sein Name sagt</translation>
    </message>
    <message>
        <source>job %1: reading %2 corrects one that was not stored before it</source>
        <translation>Auftrag %1: Messwert %2 berichtigt einen, der nicht davor gespeichert wurde</translation>
    </message>
    <message>
        <source>job %1: reading %2 has no value</source>
        <translation>Auftrag %1: Messwert %2 hat keinen Wert</translation>
    </message>
    <message>
        <source>job %1: is marked as signed without an approval and a signature</source>
        <translation>Auftrag %1: ist als unterschrieben vermerkt, ohne Freigabe und Unterschrift</translation>
    </message>
    <message>
        <source>job %1: was approved but is not marked as signed</source>
        <translation>Auftrag %1: wurde freigegeben, ist aber nicht als unterschrieben vermerkt</translation>
    </message>
    <message>
        <source>a job cannot be read: %1</source>
        <translation>ein Auftrag lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>opened to be read only; nothing can be stored in it</source>
        <translation>nur zum Lesen geöffnet; darin lässt sich nichts speichern</translation>
    </message>
    <message>
        <source>moved, deleted or replaced by another file while it was open; nothing was stored; put it back under this name, or back up what is shown and open that</source>
        <translation>wurde verschoben, gelöscht oder durch eine andere Datei ersetzt, während es offen war; nichts wurde gespeichert; es unter diesem Namen zurücklegen, oder das Gezeigte sichern und die Sicherung öffnen</translation>
    </message>
    <message>
        <source>has no job %1</source>
        <translation>darin gibt es keinen Auftrag %1</translation>
    </message>
    <message>
        <source>job %1 is signed and stays as it is; add an amendment to it</source>
        <translation>Auftrag %1 ist unterschrieben und bleibt, wie er ist; einen Nachtrag dazu schreiben</translation>
    </message>
    <message>
        <source>job %1 is submitted and waits for its review; have it sent back first</source>
        <translation>Auftrag %1 ist eingereicht und wartet auf die Durchsicht; ihn erst zurückgeben lassen</translation>
    </message>
    <message>
        <source>has no test object %1</source>
        <translation>darin gibt es kein Prüfobjekt %1</translation>
    </message>
    <message>
        <source>is there already; name a new file</source>
        <translation>ist schon da; eine neue Datei nennen</translation>
    </message>
    <message>
        <source>its folder does not exist; name one that does</source>
        <translation>der Ordner dazu fehlt; einen vorhandenen nennen</translation>
    </message>
    <message>
        <source>its folder may not be written</source>
        <translation>in den Ordner darf nicht geschrieben werden</translation>
    </message>
    <message>
        <source>the disk did not take the copy</source>
        <translation>der Datenträger nahm die Kopie nicht an</translation>
    </message>
    <message>
        <source>not written</source>
        <translation>nicht geschrieben</translation>
    </message>
    <message>
        <source>may not be read; give it read permission</source>
        <translation>darf nicht gelesen werden; Leserecht geben</translation>
    </message>
    <message>
        <source>the test object has no identity</source>
        <translation>das Prüfobjekt hat keine Identität</translation>
    </message>
    <message>
        <source>the test object has no name; give it one</source>
        <translation>das Prüfobjekt hat keinen Namen; ihm einen geben</translation>
    </message>
    <message>
        <source>%1 was changed in another window meanwhile; look again</source>
        <translation>%1 wurde inzwischen in einem anderen Fenster geändert; noch einmal ansehen</translation>
    </message>
    <message>
        <source>the test object is no longer there</source>
        <translation>das Prüfobjekt ist nicht mehr da</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a job; give its number or its UUID</source>
        <translation>&quot;%1&quot; ist kein Auftrag; seine Nummer oder UUID angeben</translation>
    </message>
    <message>
        <source>the job is no longer there</source>
        <translation>der Auftrag ist nicht mehr da</translation>
    </message>
    <message>
        <source>a job of the history has lost its set-up</source>
        <translation>ein Auftrag der Historie hat seinen Aufbau verloren</translation>
    </message>
    <message>
        <source>the safety copy cannot be written: %1</source>
        <translation>die Sicherheitskopie lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>the new version would leave a row of &quot;%1&quot; without what it belongs to</source>
        <translation>die neue Version ließe eine Zeile von &quot;%1&quot; ohne das, wozu sie gehört</translation>
    </message>
    <message>
        <source>the database of another program is no place for a history</source>
        <translation>die Datenbank eines anderen Programms ist kein Ort für eine Historie</translation>
    </message>
    <message>
        <source>the disk did not take the safety copy</source>
        <translation>der Datenträger nahm die Sicherheitskopie nicht an</translation>
    </message>
    <message>
        <source>may not be written; give the file and its folder write permission, or open it to read only</source>
        <translation>darf nicht beschrieben werden; der Datei und ihrem Ordner Schreibrecht geben oder sie nur zum Lesen öffnen</translation>
    </message>
    <message>
        <source>cannot be looked at: %1</source>
        <translation>lässt sich nicht ansehen: %1</translation>
    </message>
    <message>
        <source>there is no such file; name a history that exists</source>
        <translation>eine solche Datei gibt es nicht; eine vorhandene Historie nennen</translation>
    </message>
    <message>
        <source>is a folder; name the history file in it</source>
        <translation>ist ein Ordner; die Datei der Historie darin nennen</translation>
    </message>
    <message>
        <source>is not an ordinary file; name a history file</source>
        <translation>ist keine gewöhnliche Datei; die Datei einer Historie nennen</translation>
    </message>
    <message>
        <source>is empty; name a history, or let a new one be made</source>
        <translation>ist leer; eine Historie nennen oder eine neue anlegen lassen</translation>
    </message>
    <message>
        <source>is not a Sealwalk history; name a file that Sealwalk made</source>
        <translation>ist keine Historie von Sealwalk; eine Datei nennen, die Sealwalk gemacht hat</translation>
    </message>
    <message>
        <source>is a database of another program, not a Sealwalk history; name a file that Sealwalk made</source>
        <translation>ist die Datenbank eines anderen Programms, keine Historie von Sealwalk; eine Datei nennen, die Sealwalk gemacht hat</translation>
    </message>
    <message>
        <source>was written by a newer Sealwalk (version %1 of the file, this program knows %2); open it with that one</source>
        <translation>schrieb ein neueres Sealwalk (Version %1 der Datei, dieses Programm kennt %2); mit jenem öffnen</translation>
    </message>
    <message>
        <source>is cut short: %1 of %2 bytes are there; go back to its last backup</source>
        <translation>ist abgeschnitten: %1 von %2 Bytes sind da; die letzte Sicherung nehmen</translation>
    </message>
    <message>
        <source>its folder cannot be made: %1</source>
        <translation>der Ordner dazu lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>its folder may not be written; choose another, or give permission</source>
        <translation>in den Ordner dazu darf nicht geschrieben werden; einen anderen wählen oder das Recht geben</translation>
    </message>
    <message>
        <source>cannot be kept safely where it is (%1 is %2 instead of %3); move it to a local disk</source>
        <translation>lässt sich hier nicht sicher aufbewahren (%1 ist %2 statt %3); auf einen lokalen Datenträger verschieben</translation>
    </message>
    <message>
        <source>is of the older version %1 and must be brought up to date; open it where it may be written</source>
        <translation>ist von der älteren Version %1 und muss auf den neuen Stand gebracht werden; dort öffnen, wo geschrieben werden darf</translation>
    </message>
    <message>
        <source>a series of numbers in the history is cut short</source>
        <translation>eine Zahlenreihe in der Historie ist abgeschnitten</translation>
    </message>
    <message>
        <source>a trace in the history is cut short</source>
        <translation>ein Verlauf in der Historie ist abgeschnitten</translation>
    </message>
    <message>
        <source>an identity in the history does not have 16 bytes</source>
        <translation>eine Identität in der Historie hat nicht 16 Bytes</translation>
    </message>
    <message>
        <source>a word of a list has a line break: &quot;%1&quot;</source>
        <translation>ein Wort einer Liste enthält einen Zeilenumbruch: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>a list of words in the history is cut short</source>
        <translation>eine Wortliste in der Historie ist abgeschnitten</translation>
    </message>
    <message>
        <source>job %1 has no %2 %3</source>
        <translation>Auftrag %1 hat das nicht: %2 %3</translation>
    </message>
    <message>
        <source>job %1: that reading was corrected meanwhile by reading %2; correct that one</source>
        <translation>Auftrag %1: dieser Messwert wurde inzwischen durch Messwert %2 berichtigt; jenen berichtigen</translation>
    </message>
    <message>
        <source>a void mark needs a reason</source>
        <translation>eine Ungültigerklärung braucht einen Grund</translation>
    </message>
    <message>
        <source>the background has %1 times and %2 values</source>
        <translation>der Untergrund hat %1 Zeiten und %2 Werte</translation>
    </message>
    <message>
        <source>the pressure-rise test has %1 times, %2 pressures and %3 temperatures</source>
        <translation>die Druckanstiegsprüfung hat %1 Zeiten, %2 Drücke und %3 Temperaturen</translation>
    </message>
    <message>
        <source>a verdict over the computed one needs a reason</source>
        <translation>ein Urteil gegen das berechnete braucht einen Grund</translation>
    </message>
    <message>
        <source>the trace has %1 times and %2 values</source>
        <translation>der Verlauf hat %1 Zeiten und %2 Werte</translation>
    </message>
    <message>
        <source>job %1 has no trace &quot;%2&quot;</source>
        <translation>Auftrag %1 hat keinen Verlauf &quot;%2&quot;</translation>
    </message>
    <message>
        <source>a shape in the history reads &quot;%1&quot;</source>
        <translation>eine Form in der Historie lautet &quot;%1&quot;</translation>
    </message>
    <message>
        <source>a sheet in the history has half an underlay</source>
        <translation>ein Blatt in der Historie hat ein halbes Unterlagebild</translation>
    </message>
    <message>
        <source>%1; what it says can only be added to by an amendment</source>
        <translation>%1; was er sagt, lässt sich nur durch einen Nachtrag ergänzen</translation>
    </message>
    <message>
        <source>%1; add one that corrects it</source>
        <translation>%1; einen berichtigenden Eintrag zufügen</translation>
    </message>
    <message>
        <source>the record names a joint, point, round or reading that the job does not have</source>
        <translation>der Eintrag nennt eine Fügestelle, einen Punkt, eine Runde oder einen Messwert, den der Auftrag nicht hat</translation>
    </message>
    <message>
        <source>a record with this identity is stored already</source>
        <translation>ein Eintrag mit dieser Identität ist schon gespeichert</translation>
    </message>
    <message>
        <source>the record breaks a rule of the history (%1)</source>
        <translation>der Eintrag verletzt eine Regel der Historie (%1)</translation>
    </message>
    <message>
        <source>the disk is full; nothing of this was stored, and everything before is safe</source>
        <translation>der Datenträger ist voll; hiervon wurde nichts gespeichert, und alles vorher ist sicher</translation>
    </message>
    <message>
        <source>the disk refused to write or read; nothing of this was stored (%1)</source>
        <translation>der Datenträger verweigerte das Schreiben oder Lesen; hiervon wurde nichts gespeichert (%1)</translation>
    </message>
    <message>
        <source>in use by another program; close it there, or try again</source>
        <translation>von einem anderen Programm belegt; dort schließen oder noch einmal versuchen</translation>
    </message>
    <message>
        <source>the file is damaged; go back to its last backup (%1)</source>
        <translation>die Datei ist beschädigt; die letzte Sicherung nehmen (%1)</translation>
    </message>
    <message>
        <source>may not be written; give it and its folder write permission</source>
        <translation>darf nicht beschrieben werden; der Datei und ihrem Ordner Schreibrecht geben</translation>
    </message>
    <message>
        <source>cannot be opened; the file and its folder need read and write permission</source>
        <translation>lässt sich nicht öffnen; Datei und Ordner brauchen Lese- und Schreibrecht</translation>
    </message>
    <message>
        <source>no memory left for this</source>
        <translation>kein Speicher mehr dafür</translation>
    </message>
    <message>
        <source>the database failed (%1)</source>
        <translation>die Datenbank versagte (%1)</translation>
    </message>
    <message>
        <source>%1 is not UTF-8; give it in UTF-8</source>
        <translation>%1 ist nicht UTF-8; in UTF-8 angeben</translation>
    </message>
    <message>
        <source>%1 to store is not a finite number</source>
        <translation>%1: das zu Speichernde ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>%1 to store hold a number that is not finite</source>
        <translation>%1: das zu Speichernde enthält eine Zahl, die nicht endlich ist</translation>
    </message>
    <message>
        <source>a yes or no in the history is neither</source>
        <translation>ein Ja oder Nein in der Historie ist keines von beiden</translation>
    </message>
    <message>
        <source>a whole number in the history is out of range</source>
        <translation>eine ganze Zahl in der Historie liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>in the history, %1</source>
        <translation>in der Historie: %1</translation>
    </message>
    <message>
        <source>a time in the history has lost its moment</source>
        <translation>eine Zeit in der Historie hat ihren Zeitpunkt verloren</translation>
    </message>
    <message>
        <source>no job is open; open or start one first</source>
        <translation>kein Auftrag ist offen; erst einen öffnen oder beginnen</translation>
    </message>
    <message>
        <source>no round is open; open one in Spray first</source>
        <translation>keine Runde ist offen; erst beim Sprühen eine öffnen</translation>
    </message>
    <message>
        <source>no round is open; open one before the first reading</source>
        <translation>keine Runde ist offen; vor dem ersten Messwert eine öffnen</translation>
    </message>
    <message>
        <source>the job was changed in another window since it was shown here; look again</source>
        <translation>der Auftrag wurde in einem anderen Fenster geändert, seit er hier gezeigt wurde; noch einmal ansehen</translation>
    </message>
    <message>
        <source>%1. Open the job again and repeat it</source>
        <translation>%1. Den Auftrag neu öffnen und es wiederholen</translation>
    </message>
    <message>
        <source>the job is signed</source>
        <translation>der Auftrag ist unterschrieben</translation>
    </message>
    <message>
        <source>%1 is never changed</source>
        <translation>%1 wird nie geändert</translation>
    </message>
    <message>
        <source>%1 is never removed</source>
        <translation>%1 wird nie entfernt</translation>
    </message>
    <message>
        <source>%1 is never replaced</source>
        <translation>%1 wird nie ersetzt</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>ein Messwert</translation>
    </message>
    <message>
        <source>a void mark</source>
        <translation>eine Ungültigerklärung</translation>
    </message>
    <message>
        <source>a calibration</source>
        <translation>eine Kalibrierung</translation>
    </message>
    <message>
        <source>a background watch</source>
        <translation>eine Untergrundmessung</translation>
    </message>
    <message>
        <source>a pressure-rise test</source>
        <translation>eine Druckanstiegsprüfung</translation>
    </message>
    <message>
        <source>a judgement</source>
        <translation>eine Beurteilung</translation>
    </message>
    <message>
        <source>a concession</source>
        <translation>eine Sonderfreigabe</translation>
    </message>
    <message>
        <source>a review entry</source>
        <translation>ein Eintrag der Durchsicht</translation>
    </message>
    <message>
        <source>a signature</source>
        <translation>eine Unterschrift</translation>
    </message>
    <message>
        <source>a trace</source>
        <translation>ein Verlauf</translation>
    </message>
    <message>
        <source>a picture</source>
        <translation>ein Bild</translation>
    </message>
    <message>
        <source>a job</source>
        <translation>ein Auftrag</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Prüfobjekt</translation>
    </message>
    <message>
        <source>a person</source>
        <translation>eine Person</translation>
    </message>
    <message>
        <source>a round</source>
        <translation>eine Runde</translation>
    </message>
    <message>
        <source>a repair</source>
        <translation>eine Reparatur</translation>
    </message>
    <message>
        <source>a row</source>
        <translation>eine Zeile</translation>
    </message>
    <message>
        <source>nothing seen</source>
        <translation>nichts zu sehen</translation>
    </message>
    <message>
        <source>nick</source>
        <translation>Kerbe</translation>
    </message>
    <message>
        <source>scratch across the seal</source>
        <translation>Kratzer quer zur Dichtung</translation>
    </message>
    <message>
        <source>scratch along the seal</source>
        <translation>Kratzer längs der Dichtung</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>Abplattung</translation>
    </message>
    <message>
        <source>dirt</source>
        <translation>Schmutz</translation>
    </message>
    <message>
        <source>fibre or hair</source>
        <translation>Faser oder Haar</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>pore</source>
        <translation>Pore</translation>
    </message>
    <message>
        <source>over-tightened</source>
        <translation>zu fest angezogen</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>hardened seal</source>
        <translation>verhärtete Dichtung</translation>
    </message>
    <message>
        <source>wrong size</source>
        <translation>falsche Größe</translation>
    </message>
    <message>
        <source>cracked ceramic</source>
        <translation>gerissene Keramik</translation>
    </message>
    <message>
        <source>cracked weld</source>
        <translation>gerissene Schweißnaht</translation>
    </message>
    <message>
        <source>clean and re-seat seal</source>
        <translation>Dichtung reinigen und neu einlegen</translation>
    </message>
    <message>
        <source>replace seal</source>
        <translation>Dichtung ersetzen</translation>
    </message>
    <message>
        <source>replace metal gasket</source>
        <translation>Metalldichtung ersetzen</translation>
    </message>
    <message>
        <source>re-tighten</source>
        <translation>nachziehen</translation>
    </message>
    <message>
        <source>polish seat along the seal</source>
        <translation>Sitz längs der Dichtung polieren</translation>
    </message>
    <message>
        <source>grease thinly</source>
        <translation>dünn fetten</translation>
    </message>
    <message>
        <source>replace clamp</source>
        <translation>Klammer ersetzen</translation>
    </message>
    <message>
        <source>replace hose</source>
        <translation>Schlauch ersetzen</translation>
    </message>
    <message>
        <source>re-weld</source>
        <translation>nachschweißen</translation>
    </message>
    <message>
        <source>re-braze</source>
        <translation>nachlöten</translation>
    </message>
    <message>
        <source>fill with epoxy</source>
        <translation>mit Epoxidharz füllen</translation>
    </message>
    <message>
        <source>tape or putty</source>
        <translation>Klebeband oder Kitt</translation>
    </message>
    <message>
        <source>blank off</source>
        <translation>blind verschließen</translation>
    </message>
    <message>
        <source>lock valve</source>
        <translation>Ventil verriegeln</translation>
    </message>
    <message>
        <source>%1, seen from %2</source>
        <translation>%1, gesehen von %2</translation>
    </message>
    <message>
        <source>%1 is too large, %2 by %3 px; save it with at most %4 million pixels</source>
        <translation>%1 ist zu groß, %2 mal %3 px; mit höchstens %4 Millionen Bildpunkten speichern</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>the rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>%1 no longer signs in this history</source>
        <translation>%1 unterschreibt in dieser Historie nicht mehr</translation>
    </message>
    <message>
        <source>%1 made readings of this job; somebody else has to approve it</source>
        <translation>%1 hat Messwerte dieses Auftrags aufgenommen; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 made measurements for this job; somebody else has to approve it</source>
        <translation>%1 hat Messungen für diesen Auftrag gemacht; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 declared readings of this job void; somebody else has to approve it</source>
        <translation>%1 hat Messwerte dieses Auftrags verworfen; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 gave a verdict in this job; somebody else has to approve it</source>
        <translation>%1 hat in diesem Auftrag ein Urteil abgegeben; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 entered a concession in this job; somebody else has to approve it</source>
        <translation>%1 hat in diesem Auftrag eine Sonderfreigabe eingetragen; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 logged a repair in this job; somebody else has to approve it</source>
        <translation>%1 hat in diesem Auftrag eine Reparatur eingetragen; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 sent this job for review; somebody else has to approve it</source>
        <translation>%1 hat diesen Auftrag zur Durchsicht gegeben; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>say first who is logging; it stands under a name</source>
        <translation>erst sagen, wer schreibt; es steht unter einem Namen</translation>
    </message>
    <message>
        <source>%1 temporary, each with owner and date; %2 of them of earlier jobs.</source>
        <translation>%1 vorläufige, jede mit Verantwortlichem und Datum; davon %2 aus früheren Aufträgen.</translation>
    </message>
    <message>
        <source>Temporary repairs are overdue at %1; the first was due on %2.</source>
        <translation>Vorläufige Reparaturen sind überfällig an %1; die erste war am %2 fällig.</translation>
    </message>
    <message>
        <source>The temporary repair of an earlier job at %1 was due on %2: it is overdue.</source>
        <translation>Die vorläufige Reparatur eines früheren Auftrags an %1 war am %2 fällig: sie ist überfällig.</translation>
    </message>
    <message>
        <source>A temporary repair of an earlier job at %1 has no owner or date.</source>
        <translation>Eine vorläufige Reparatur eines früheren Auftrags an %1 hat keinen Verantwortlichen oder kein Datum.</translation>
    </message>
    <message>
        <source>points no longer drawn</source>
        <translation>nicht mehr gezeichneten Punkten</translation>
    </message>
    <message>
        <source>walls, pump, not located</source>
        <translation>Wände, Pumpe, nicht geortet</translation>
    </message>
    <message>
        <source>cannot say whether the leaks together are as small as asked: %1</source>
        <translation>unbekannt, ob die Lecks zusammen so klein wie verlangt sind: %1</translation>
    </message>
    <message>
        <source>repairing %1 is needed, and cannot say whether it is enough: %2</source>
        <translation>%1 zu reparieren ist nötig; unbekannt, ob es genügt: %2</translation>
    </message>
    <message>
        <source>%1 repairs are needed, from %2 on, and cannot say whether they are enough: %3</source>
        <translation>%1 Reparaturen sind nötig, von %2 an; unbekannt, ob sie genügen: %3</translation>
    </message>
    <message>
        <source>the pressure rise does not part leak from outgassing</source>
        <translation>der Druckanstieg trennt Leck und Ausgasung nicht</translation>
    </message>
    <message>
        <source>there is no leak with a rate and no pressure rise of this state</source>
        <translation>es gibt kein Leck mit einer Rate und keinen Druckanstieg dieses Zustands</translation>
    </message>
    <message>
        <source>there is no pressure rise of this state</source>
        <translation>es gibt keinen Druckanstieg dieses Zustands</translation>
    </message>
    <message>
        <source>the base pressure was not measured and what the pumps alone reach is not known: it is worked out without it</source>
        <translation>der Enddruck wurde nicht gemessen, und was die Pumpen allein erreichen, ist nicht bekannt: er ist ohne das berechnet</translation>
    </message>
    <message>
        <source>open: cures until %1; sprayed too early</source>
        <translation>offen: härtet bis %1; zu früh abgesprüht</translation>
    </message>
    <message>
        <source>%1 is called %2 in this history now</source>
        <translation>%1 heißt in dieser Historie jetzt %2</translation>
    </message>
    <message>
        <source>the object&apos;s tag, place, volume, limits, pumps, scale or note were changed since this was signed; the signature keeps what they were</source>
        <translation>Kennzeichen, Ort, Volumen, Grenzwerte, Pumpen, Skala oder Notiz des Objekts wurden geändert, seit dies unterschrieben wurde; die Unterschrift behält, was sie waren</translation>
    </message>
    <message>
        <source>the detector&apos;s traces of %1 readings are not in this history</source>
        <translation>die Detektorverläufe von %1 Messwerten sind nicht in dieser Historie</translation>
    </message>
    <message>
        <source>the detector&apos;s traces of %1 readings were kept without a digest: whether they were changed cannot be told</source>
        <translation>die Detektorverläufe von %1 Messwerten wurden ohne Prüfsumme aufbewahrt: ob sie geändert wurden, ist nicht zu sagen</translation>
    </message>
    <message>
        <source>job %1: trace &quot;%2&quot; does not hold what its name says</source>
        <translation>Auftrag %1: der Verlauf „%2“ enthält nicht, was sein Name sagt</translation>
    </message>
    <message>
        <source>worst point</source>
        <translation>schlechtester Punkt</translation>
    </message>
    <message>
        <source>sum of leaks</source>
        <translation>Summe der Lecks</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>not sprayed in any of these jobs</source>
        <translation>in keinem dieser Aufträge besprüht</translation>
    </message>
    <message>
        <source>no leak and no pressure rise on record</source>
        <translation>weder Leck noch Druckanstieg aufgezeichnet</translation>
    </message>
    <message>
        <source>job %1 was changed in another window meanwhile; look again</source>
        <translation>Auftrag %1 wurde inzwischen in einem anderen Fenster geändert; noch einmal ansehen</translation>
    </message>
    <message>
        <source>job %1 does not go on from what is here; nothing was changed</source>
        <translation>Auftrag %1 geht nicht von dem weiter, was hier ist; nichts wurde geändert</translation>
    </message>
    <message>
        <source>conceded until %1</source>
        <translation>Sonderfreigabe bis %1</translation>
    </message>
    <message>
        <source>conceded without end</source>
        <translation>Sonderfreigabe ohne Ende</translation>
    </message>
    <message>
        <source>other source</source>
        <translation>andere Quelle</translation>
    </message>
    <message>
        <source>virtual leak</source>
        <translation>virtuelles Leck</translation>
    </message>
    <message>
        <source>what is left after the repairs is projected, not measured: a new pressure rise proves it</source>
        <translation>was nach den Reparaturen bleibt, ist hochgerechnet, nicht gemessen: ein neuer Druckanstieg belegt es</translation>
    </message>
    <message>
        <source>%1 sent this job for review; somebody else has to send it back</source>
        <translation>%1 hat diesen Auftrag zur Durchsicht gegeben; zurückgeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>%1 granted a concession in this job; somebody else has to approve it</source>
        <translation>%1 hat in diesem Auftrag eine Sonderfreigabe gewährt; freigeben muss ihn jemand anderes</translation>
    </message>
    <message>
        <source>Cannot say whether within the limit: %1.</source>
        <translation>Nicht zu sagen, ob innerhalb des Grenzwerts: %1.</translation>
    </message>
    <message>
        <source>One concession, with name and reason.</source>
        <translation>Eine Sonderfreigabe, mit Name und Grund.</translation>
    </message>
    <message>
        <source>an object cannot be said to be the same as itself; choose another</source>
        <translation>ein Objekt kann nicht dasselbe sein wie es selbst; wählen Sie ein anderes</translation>
    </message>
    <message>
        <source>%1 did a repair in this job; somebody else has to approve it</source>
        <translation>%1 hat in diesem Auftrag eine Reparatur ausgeführt; jemand anders muss ihn freigeben</translation>
    </message>
    <message>
        <source>Answered once, then repaired and sprayed again: %1; every other response over the limit answered twice or was judged.</source>
        <translation>Einmal geantwortet, dann repariert und wieder besprüht: %1; jede andere Antwort über dem Grenzwert kam zweimal oder wurde beurteilt.</translation>
    </message>
    <message>
        <source>No response over the limit.</source>
        <translation>Keine Antwort über der Grenzwert.</translation>
    </message>
    <message>
        <source>Read before the first check: %1.</source>
        <translation>Vor der ersten Prüfung gelesen: %1.</translation>
    </message>
    <message>
        <source>No check was made after what was read with the factor %1 of %2: %3.</source>
        <translation>Keine Prüfung schließt ab, was mit dem Faktor %1 von %2 gelesen wurde: %3.</translation>
    </message>
    <message>
        <source>No reading that counts lies between the checks.</source>
        <translation>Kein Messwert, der zählt, liegt zwischen den Prüfungen.</translation>
    </message>
    <message>
        <source>The checks around the readings that count agree: factor %1.</source>
        <translation>Die Prüfungen um die Messwerte, die zählen, stimmen überein: Faktor %1.</translation>
    </message>
    <message>
        <source>The factor moved between the checks around readings that count: %1; the change widens their ranges.</source>
        <translation>Zwischen den Prüfungen um Messwerte, die zählen, hat sich der Faktor bewegt: %1; die Änderung weitet deren Bereiche.</translation>
    </message>
    <message>
        <source>The checks around the readings that count agree: factor %1. The factor moved between the checks around readings that count: %2; the change widens their ranges.</source>
        <translation>Die Prüfungen um die Messwerte, die zählen, stimmen überein: Faktor %1. Zwischen anderen Prüfungen um Messwerte, die zählen, hat sich der Faktor bewegt: %2; die Änderung weitet deren Bereiche.</translation>
    </message>
    <message>
        <source>%1 No reading that counts lies before the step from %2 to %3 between %4 and %5.</source>
        <translation>%1 Vor dem Sprung von %2 auf %3 zwischen %4 und %5 liegt kein Messwert, der zählt.</translation>
    </message>
    <message>
        <source>The checks around the readings that count agree: factor %1 (%2) and %3 (%4).</source>
        <translation>Die Prüfungen um die Messwerte, die zählen, stimmen überein: Faktor %1 (%2) und %3 (%4).</translation>
    </message>
    <message>
        <source>The factor moved between the checks around readings that count: %1 (%2) and %3 (%4); the change widens their ranges.</source>
        <translation>Zwischen den Prüfungen um Messwerte, die zählen, hat sich der Faktor bewegt: %1 (%2) und %3 (%4); die Änderung weitet deren Bereiche.</translation>
    </message>
    <message>
        <source>No response, but the spray was not timed and this point had answered %1 s after the helium: spray again for %2 s.</source>
        <translation>Keine Antwort, aber die Sprühdauer ist nicht bekannt, und dieser Punkt hatte %1 s nach dem Helium geantwortet: noch einmal %2 s besprühen.</translation>
    </message>
    <message>
        <source>No response within %1 s proves nothing here: this point had answered %2 s after the helium. Spray again for %3 s.</source>
        <translation>Keine Antwort binnen %1 s beweist hier nichts: Dieser Punkt hatte %2 s nach dem Helium geantwortet. Noch einmal %3 s besprühen.</translation>
    </message>
    <message>
        <source>No response; this point had answered %1 s after the helium, and the bound is for what was left of %2 s then.</source>
        <translation>Keine Antwort; dieser Punkt hatte %1 s nach dem Helium geantwortet, und die Schranke gilt für den Rest, der von %2 s dann blieb.</translation>
    </message>
    <message>
        <source>Sprayed %1 s, but it had answered after %2 s and needs %3 s: %4.</source>
        <translation>%1 s besprüht, hatte aber nach %2 s geantwortet und braucht %3 s: %4.</translation>
    </message>
    <message>
        <source>sprayed %1 s, but it had answered after %2 s and needs %3 s</source>
        <translation>%1 s besprüht, hatte aber nach %2 s geantwortet und braucht %3 s</translation>
    </message>
    <message>
        <source>this job is in the history already, as number %1, and went on in both places, as far as can be told: they differ in %2; nothing was changed. Make that the same in both and take it in again, or go on with one of the two and enter what the other has more</source>
        <translation>dieser Auftrag ist schon in der Historie, als Nummer %1, und ging, soweit zu erkennen, an beiden Orten weiter: verschieden sind %2; nichts wurde geändert. Das in beiden gleich machen und ihn wieder aufnehmen, oder mit einem der beiden weitermachen und eintragen, was der andere mehr hat</translation>
    </message>
    <message>
        <source>job %1 was signed with %2 as its last point number, and %3 was given here; number %4 would be given again</source>
        <translation>Auftrag %1 wurde mit %2 als letzter Punktnummer unterschrieben, und hier wurde %3 vergeben; Nummer %4 würde noch einmal vergeben</translation>
    </message>
    <message>
        <source>proven: sprayed again; the total could not be told from outgassing</source>
        <translation>erwiesen: neu besprüht; die Summe war von Ausgasung nicht zu trennen</translation>
    </message>
    <message>
        <source>proven: sprayed again; the pressure rise gives no total</source>
        <translation>erwiesen: neu besprüht; der Druckanstieg ergibt keine Summe</translation>
    </message>
    <message>
        <source>proven: sprayed again; no part of the object&apos;s total</source>
        <translation>erwiesen: neu besprüht; kein Teil der Summe des Objekts</translation>
    </message>
    <message>
        <source>The pressure rise of %1 lasted %2 min and would have ended after now: its time is not right.</source>
        <translation>Der Druckanstieg von %1 dauerte %2 min und wäre noch nicht zu Ende: seine Zeit stimmt nicht.</translation>
    </message>
    <message>
        <source>The pressure rise of %1 began before the job was opened: is it of this state?</source>
        <translation>Der Druckanstieg von %1 begann, bevor der Auftrag eröffnet war: gehört er zu diesem Zustand?</translation>
    </message>
    <message>
        <source>Helium was sprayed during the pressure rise of %1, which lasted %2 min: %3.</source>
        <translation>Während des Druckanstiegs von %1, der %2 min dauerte, wurde Helium gesprüht: %3.</translation>
    </message>
    <message>
        <source>One point leaks more than in job %1.</source>
        <translation>Ein Punkt leckt mehr als in Auftrag %1.</translation>
    </message>
    <message>
        <source>One sheet, with its side.</source>
        <translation>Ein Blatt, mit seiner Seite.</translation>
    </message>
    <message>
        <source>limit only %1 times what can be seen, 3 are needed</source>
        <translation>Grenzwert nur %1-mal, was zu sehen ist, 3 sind nötig</translation>
    </message>
    <message>
        <source>good to start: limit %1 times what can be seen</source>
        <translation>guter Anfang: Grenzwert %1-mal, was zu sehen ist</translation>
    </message>
    <message>
        <source>start with care: limit only %1 times what can be seen</source>
        <translation>mit Vorsicht: Grenzwert nur %1-mal, was zu sehen ist</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>not sized</source>
        <translation>nicht bemessen</translation>
    </message>
    <message>
        <source>in another condition only</source>
        <translation>nur in anderem Zustand</translation>
    </message>
    <message>
        <source>on the set-up only</source>
        <translation>nur am Aufbau</translation>
    </message>
    <message>
        <source>no leak located</source>
        <translation>kein Leck geortet</translation>
    </message>
    <message>
        <source>beyond the detector&apos;s range %1</source>
        <translation>jenseits des Messbereichs, %1</translation>
    </message>
    <message>
        <source>the detector&apos;s trace &quot;%1&quot; does not hold what its name says and was left out</source>
        <translation>die Kurve des Detektors „%1“ enthält nicht, was ihr Name sagt, und wurde weggelassen</translation>
    </message>
    <message>
        <source>detector&apos;s traces that are missing here stay so: the job is submitted or signed and takes no more</source>
        <translation>Kurven des Detektors, die hier fehlen, fehlen weiter: der Auftrag ist eingereicht oder unterschrieben und nimmt keine mehr auf</translation>
    </message>
    <message>
        <source>%1 of the detector&apos;s traces came along, which were missing here</source>
        <translation>%1 Kurven des Detektors kamen mit, die hier fehlten</translation>
    </message>
    <message>
        <source>job %1: the history&apos;s own list, which searches use, %2; the record is not concerned, and check --remake-list makes the list anew</source>
        <translation>Auftrag %1: die eigene Liste der Historie, die das Suchen benutzt, %2; die Aufzeichnung ist nicht betroffen, und check --remake-list macht die Liste neu</translation>
    </message>
    <message>
        <source>does not have it</source>
        <translation>hat ihn nicht</translation>
    </message>
    <message>
        <source>counts wrongly</source>
        <translation>zählt falsch</translation>
    </message>
    <message>
        <source>has other words</source>
        <translation>hat andere Wörter</translation>
    </message>
    <message>
        <source>job %1: stands under another number than it was opened under, %2, which is free here: an early release took it in so, or the number was changed since</source>
        <translation>Auftrag %1: steht unter einer anderen Nummer, als unter der er begonnen wurde, %2, die hier frei ist: eine frühe Fassung hat ihn so aufgenommen, oder die Nummer wurde seither geändert</translation>
    </message>
    <message>
        <source>job %1: stands under another number than it was opened under, %2, and than the one it would be given here, %3: an early release took it in so, or the number was changed since</source>
        <translation>Auftrag %1: steht unter einer anderen Nummer, als unter der er begonnen wurde, %2, und als der, die er hier bekäme, %3: eine frühe Fassung hat ihn so aufgenommen, oder die Nummer wurde seither geändert</translation>
    </message>
    <message>
        <source>another program writes to it; try again</source>
        <translation>ein anderes Programm schreibt hinein; noch einmal versuchen</translation>
    </message>
    <message>
        <source>Leak test report</source>
        <translation>Bericht über die Dichtheitsprüfung</translation>
    </message>
    <message>
        <source>%1 · job %2</source>
        <translation>%1 · Auftrag %2</translation>
    </message>
    <message>
        <source>%1 · job %2 · all data invented</source>
        <translation>%1 · Auftrag %2 · alle Daten erfunden</translation>
    </message>
    <message>
        <source>%1 (opened and signed as %2)</source>
        <translation>%1 (eröffnet und unterschrieben als %2)</translation>
    </message>
    <message>
        <source>printed %1</source>
        <translation>gedruckt %1</translation>
    </message>
    <message>
        <source>printed %1, repairs and due dates as of %2</source>
        <translation>gedruckt %1, Reparaturen und Fristen mit Stand %2</translation>
    </message>
    <message>
        <source>NOT AS SIGNED</source>
        <translation>NICHT WIE UNTERSCHRIEBEN</translation>
    </message>
    <message>
        <source>draft, job %1</source>
        <translation>Entwurf, Auftrag %1</translation>
    </message>
    <message>
        <source>Job SHA-256 %1 · %2</source>
        <translation>Auftrag SHA-256 %1 · %2</translation>
    </message>
    <message>
        <source>no digest</source>
        <translation>keine Prüfsumme</translation>
    </message>
    <message>
        <source>Leak rates in %1, helium, at 100 % helium outside at 1 bar, %2 °C, on the chamber, unless marked &quot;air&quot;.</source>
        <translation>Leckraten in %1, Helium, bei 100 % Helium außen bei 1 bar, %2 °C, an der Kammer, wenn nicht als „Luft“ bezeichnet.</translation>
    </message>
    <message>
        <source>Sealwalk report</source>
        <translation>Sealwalk-Bericht</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1 (photo %2 cannot be shown)</source>
        <translation>%1 (Foto %2 ist nicht darstellbar)</translation>
    </message>
    <message>
        <source>What was tested, and how</source>
        <translation>Was geprüft wurde und wie</translation>
    </message>
    <message>
        <source>Findings that need a decision</source>
        <translation>Befunde, die eine Entscheidung brauchen</translation>
    </message>
    <message>
        <source>all %1 points further on</source>
        <translation>alle %1 Punkte weiter hinten</translation>
    </message>
    <message>
        <source>as left; all %1 points further on</source>
        <translation>hinterlassen; alle %1 Punkte weiter hinten</translation>
    </message>
    <message>
        <source>Balance, as air</source>
        <translation>Bilanz, als Luft</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>Leak map, as found, as read</source>
        <translation>Leckkarte, vorgefunden, wie abgelesen</translation>
    </message>
    <message>
        <source>Leak map, as left, as read</source>
        <translation>Leckkarte, hinterlassen, wie abgelesen</translation>
    </message>
    <message>
        <source>Leak map, as read</source>
        <translation>Leckkarte, wie abgelesen</translation>
    </message>
    <message>
        <source>Scale, the same for every job on this object</source>
        <translation>Skala, dieselbe für jeden Auftrag an diesem Objekt</translation>
    </message>
    <message>
        <source>Repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>Pressure rise, %1</source>
        <translation>Druckanstieg, %1</translation>
    </message>
    <message>
        <source>%1, gauge not named</source>
        <translation>%1, Messgerät nicht genannt</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>drawn from what was stated, not to scale; dashed: not stated</source>
        <translation>gezeichnet nach den Angaben, nicht maßstäblich; gestrichelt: ohne Angabe</translation>
    </message>
    <message>
        <source>Calibration and background</source>
        <translation>Kalibrierung und Untergrund</translation>
    </message>
    <message>
        <source>factor: shown over true; in brackets what a reading is multiplied by</source>
        <translation>Faktor: Anzeige durch wahren Wert; in Klammern, womit ein Messwert malgenommen wird</translation>
    </message>
    <message>
        <source>All points, as left</source>
        <translation>Alle Punkte, hinterlassen</translation>
    </message>
    <message>
        <source>All points</source>
        <translation>Alle Punkte</translation>
    </message>
    <message>
        <source>Not tested</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>each with its reason; nothing is claimed for these</source>
        <translation>jeder mit Grund; über diese wird nichts ausgesagt</translation>
    </message>
    <message>
        <source>both stay in the record</source>
        <translation>beide bleiben in der Aufzeichnung</translation>
    </message>
    <message>
        <source>Verdicts and concessions by people</source>
        <translation>Urteile und Sonderfreigaben von Personen</translation>
    </message>
    <message>
        <source>Compared with the last job</source>
        <translation>Vergleich mit dem letzten Auftrag</translation>
    </message>
    <message>
        <source>job %1 of %2, as left, against this one as found; below a rate its 95 % range</source>
        <translation>Auftrag %1 vom %2, hinterlassen, gegen diesen, vorgefunden; unter einer Rate ihr 95-%-Bereich</translation>
    </message>
    <message>
        <source>Every reading, as recorded</source>
        <translation>Jeder Messwert, wie aufgezeichnet</translation>
    </message>
    <message>
        <source>Review, turn by turn</source>
        <translation>Durchsicht, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>they name hazards; the site&apos;s rules, permits and licensed people decide</source>
        <translation>sie nennen Gefahren; es entscheiden Betriebsregeln, Erlaubnisscheine und Leute mit Zulassung</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Reference leak</source>
        <translation>Prüfleck</translation>
    </message>
    <message>
        <source>That day</source>
        <translation>An dem Tag</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Angezeigt</translation>
    </message>
    <message>
        <source>Background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Faktor</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Response</source>
        <translation>Ansprechen</translation>
    </message>
    <message>
        <source>Background watched</source>
        <translation>Untergrund beobachtet</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Kleinster</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Woher</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>What to mind</source>
        <translation>Was zu beachten ist</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Gelesen von</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Joint, place</source>
        <translation>Fügestelle, Ort</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Leak rate</source>
        <translation>Leckrate</translation>
    </message>
    <message>
        <source>95 % range</source>
        <translation>95-%-Bereich</translation>
    </message>
    <message>
        <source>Against %1</source>
        <translation>Gegen %1</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Hinterlassen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>What it said</source>
        <translation>Was er sagte</translation>
    </message>
    <message>
        <source>Void or corrected because</source>
        <translation>Verworfen oder berichtigt, weil</translation>
    </message>
    <message>
        <source>Now counts</source>
        <translation>Jetzt zählt</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>When, by</source>
        <translation>Wann, von</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Dwell, first rise</source>
        <translation>Sprühzeit, Anstieg</translation>
    </message>
    <message>
        <source>On the chamber</source>
        <translation>An der Kammer</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Before the repairs</source>
        <translation>Vor den Reparaturen</translation>
    </message>
    <message>
        <source>After the repairs</source>
        <translation>Nach den Reparaturen</translation>
    </message>
    <message>
        <source>Defect</source>
        <translation>Schaden</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Permanent or temporary</source>
        <translation>Dauerhaft oder vorläufig</translation>
    </message>
    <message>
        <source>Re-test</source>
        <translation>Neue Prüfung</translation>
    </message>
    <message>
        <source>Decided</source>
        <translation>Entschieden</translation>
    </message>
    <message>
        <source>Worked out</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Damals</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Decades</source>
        <translation>Dekaden</translation>
    </message>
    <message>
        <source>Change, why</source>
        <translation>Änderung, Grund</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation>Nicht notiert</translation>
    </message>
    <message>
        <source>nothing named</source>
        <translation>nichts genannt</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>niemand genannt</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation>keine notiert</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Serial, drawing</source>
        <translation>Serie, Zeichnung</translation>
    </message>
    <message>
        <source>Test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Auftraggeber</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Included</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>Excluded</source>
        <translation>Ausgenommen</translation>
    </message>
    <message>
        <source>Kinds of joint</source>
        <translation>Arten der Fügestellen</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Limit, one point</source>
        <translation>Grenzwert, ein Punkt</translation>
    </message>
    <message>
        <source>Limit, total</source>
        <translation>Grenzwert, Summe</translation>
    </message>
    <message>
        <source>Limit agreed by</source>
        <translation>Vereinbart von</translation>
    </message>
    <message>
        <source>Gas basis</source>
        <translation>Bezugsgas</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Technique</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Tracer gas</source>
        <translation>Prüfgas</translation>
    </message>
    <message>
        <source>Last worked on</source>
        <translation>Zuletzt bearbeitet</translation>
    </message>
    <message>
        <source>Detector</source>
        <translation>Lecksucher</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Angeschlossen</translation>
    </message>
    <message>
        <source>Pumping</source>
        <translation>Pumpen</translation>
    </message>
    <message>
        <source>Smallest detectable</source>
        <translation>Nachweisgrenze</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>Witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>Other instruments</source>
        <translation>Weitere Messgeräte</translation>
    </message>
    <message>
        <source>%1, revision %2: submitted %3, returned %4, amended %5</source>
        <translation>%1, Stand %2: eingereicht %3, zurückgegeben %4, Nachträge %5</translation>
    </message>
    <message>
        <source>%1, asset %2</source>
        <translation>%1, Inventar %2</translation>
    </message>
    <message>
        <source>qualification not recorded</source>
        <translation>Qualifikation nicht notiert</translation>
    </message>
    <message>
        <source>1 concession, see &quot;Verdicts and concessions by people&quot;</source>
        <translation>1 Sonderfreigabe, siehe „Urteile und Sonderfreigaben von Personen“</translation>
    </message>
    <message>
        <source>%1 concessions, see &quot;Verdicts and concessions by people&quot;</source>
        <translation>%1 Sonderfreigaben, siehe „Urteile und Sonderfreigaben von Personen“</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>eröffnet %1</translation>
    </message>
    <message>
        <source>nothing sprayed</source>
        <translation>nichts besprüht</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 l/s helium at the detector</source>
        <translation>%1 l/s Helium am Lecksucher</translation>
    </message>
    <message>
        <source>pump in parallel %1 l/s</source>
        <translation>Pumpe parallel %1 l/s</translation>
    </message>
    <message>
        <source>pump in parallel, its speed not recorded</source>
        <translation>Pumpe parallel, ihr Saugvermögen nicht notiert</translation>
    </message>
    <message>
        <source>no pump in parallel recorded</source>
        <translation>keine Pumpe parallel notiert</translation>
    </message>
    <message>
        <source>hose %1 mm by %2 m</source>
        <translation>Schlauch %1 mm mal %2 m</translation>
    </message>
    <message>
        <source>%1 % at the joint (±%2 % relative)</source>
        <translation>%1 % an der Fügestelle (±%2 % relativ)</translation>
    </message>
    <message>
        <source>atmospheric pressure outside</source>
        <translation>außen Atmosphärendruck</translation>
    </message>
    <message>
        <source>%1 standard l/min</source>
        <translation>%1 Norm-l/min</translation>
    </message>
    <message>
        <source>bottle %1</source>
        <translation>Flasche %1</translation>
    </message>
    <message>
        <source>gauge %1</source>
        <translation>Messgerät %1</translation>
    </message>
    <message>
        <source>%1 on %2 of %3, sketch revision %4</source>
        <translation>%1 an %2 auf %3, Skizze Stand %4</translation>
    </message>
    <message>
        <source>%1 point</source>
        <translation>%1 Punkt</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>%1 joint</source>
        <translation>%1 Fügestelle</translation>
    </message>
    <message>
        <source>%1 joints</source>
        <translation>%1 Fügestellen</translation>
    </message>
    <message>
        <source>1 sheet</source>
        <translation>1 Blatt</translation>
    </message>
    <message>
        <source>%1 sheets</source>
        <translation>%1 Blättern</translation>
    </message>
    <message>
        <source>%1 sheet</source>
        <translation>%1 Blatt</translation>
    </message>
    <message>
        <source>round %1 %2 (%3)</source>
        <translation>Runde %1 %2 (%3)</translation>
    </message>
    <message>
        <source>round %1 %2, %3 (%4)</source>
        <translation>Runde %1 %2, %3 (%4)</translation>
    </message>
    <message>
        <source>%1 helium</source>
        <translation>%1 Helium</translation>
    </message>
    <message>
        <source>%1 air</source>
        <translation>%1 Luft</translation>
    </message>
    <message>
        <source>object evacuated, helium sprayed at the joints from outside</source>
        <translation>Objekt evakuiert, Helium von außen an die Fügestellen gesprüht</translation>
    </message>
    <message>
        <source>readings corrected by the reference leak</source>
        <translation>Messwerte mit dem Prüfleck berichtigt</translation>
    </message>
    <message>
        <source>zero on</source>
        <translation>Nullabzug an</translation>
    </message>
    <message>
        <source>%1 at the least sensitive place and moment</source>
        <translation>%1 an der unempfindlichsten Stelle zur unempfindlichsten Zeit</translation>
    </message>
    <message>
        <source>Said by a person to be the same point, then and now: %1.</source>
        <translation>Von einer Person als derselbe Punkt bestätigt, damals und jetzt: %1.</translation>
    </message>
    <message>
        <source>left out, with reasons below: %1</source>
        <translation>ausgelassen, Gründe weiter unten: %1</translation>
    </message>
    <message>
        <source>%1 as %2</source>
        <translation>%1 als %2</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>system check</source>
        <translation>Systemprüfung</translation>
    </message>
    <message>
        <source>detector check</source>
        <translation>Geräteprüfung</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>during</source>
        <translation>während</translation>
    </message>
    <message>
        <source>%1 at %2 °C, certificate %3</source>
        <translation>%1 bei %2 °C, Zertifikat %3</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>not usable</source>
        <translation>nicht brauchbar</translation>
    </message>
    <message>
        <source>clean-up %1 s</source>
        <translation>Abklingen %1 s</translation>
    </message>
    <message>
        <source>No check afterwards: %1</source>
        <translation>Keine Prüfung danach: %1</translation>
    </message>
    <message>
        <source>detector feed</source>
        <translation>Messleitung vom Detektor</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>getippt</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Messleitung</translation>
    </message>
    <message>
        <source>command line</source>
        <translation>Befehlszeile</translation>
    </message>
    <message>
        <source>transcribed from paper</source>
        <translation>von Papier übertragen</translation>
    </message>
    <message>
        <source>not ticked</source>
        <translation>nicht abgehakt</translation>
    </message>
    <message>
        <source>Not accepted: %1</source>
        <translation>Nicht angenommen: %1</translation>
    </message>
    <message>
        <source>No result yet: %1</source>
        <translation>Noch kein Ergebnis: %1</translation>
    </message>
    <message>
        <source>Accepted with conditions</source>
        <translation>Angenommen mit Bedingungen</translation>
    </message>
    <message>
        <source>Accepted: all %1 points within the limit</source>
        <translation>Angenommen: alle %1 Punkte unter dem Grenzwert</translation>
    </message>
    <message>
        <source>the record is not complete</source>
        <translation>die Aufzeichnung ist nicht vollständig</translation>
    </message>
    <message>
        <source>Nothing was sprayed: nothing is claimed</source>
        <translation>Nichts wurde besprüht: nichts wird ausgesagt</translation>
    </message>
    <message>
        <source>No limit was set: nothing is accepted or rejected</source>
        <translation>Kein Grenzwert gesetzt: nichts wird angenommen oder abgelehnt</translation>
    </message>
    <message>
        <source>%1 leak over the limit</source>
        <translation>%1 Leck über dem Grenzwert</translation>
    </message>
    <message>
        <source>%1 leaks over the limit</source>
        <translation>%1 Lecks über dem Grenzwert</translation>
    </message>
    <message>
        <source>%1 point cannot be judged</source>
        <translation>%1 Punkt nicht zu beurteilen</translation>
    </message>
    <message>
        <source>%1 points cannot be judged</source>
        <translation>%1 Punkte nicht zu beurteilen</translation>
    </message>
    <message>
        <source>%1 has no answer</source>
        <translation>%1 ohne Antwort</translation>
    </message>
    <message>
        <source>%1 have no answer</source>
        <translation>%1 ohne Antwort</translation>
    </message>
    <message>
        <source>Found over the limit and within it after the work done: %1.</source>
        <translation>Über dem Grenzwert vorgefunden und nach der Arbeit darunter: %1.</translation>
    </message>
    <message>
        <source>Could not be said as found, repaired and within the limit since: %1.</source>
        <translation>Vorgefunden unklar, repariert und seither unter dem Grenzwert: %1.</translation>
    </message>
    <message>
        <source>Of the test set-up, found over the limit and within it after the work done: %1.</source>
        <translation>Vom Prüfaufbau, über dem Grenzwert vorgefunden und nach der Arbeit darunter: %1.</translation>
    </message>
    <message>
        <source>Amended %1 by %2: “%3”</source>
        <translation>Nachtrag %1 von %2: „%3“</translation>
    </message>
    <message>
        <source>%1 of %2 points are within %3.</source>
        <translation>%1 von %2 Punkten liegen unter %3.</translation>
    </message>
    <message>
        <source>Nothing is claimed for other places, other conditions, or below %1.</source>
        <translation>Über andere Orte, andere Zustände oder unter %1 wird nichts ausgesagt.</translation>
    </message>
    <message>
        <source>Nothing is claimed for other places, other conditions.</source>
        <translation>Über andere Orte und andere Zustände wird nichts ausgesagt.</translation>
    </message>
    <message>
        <source>No response above %1 at %2 of %3 points, under the conditions recorded.</source>
        <translation>Keine Antwort über %1 an %2 von %3 Punkten, unter den notierten Bedingungen.</translation>
    </message>
    <message>
        <source>That figure is of the least sensitive: %1.</source>
        <translation>Dieser Wert gehört zum unempfindlichsten: %1.</translation>
    </message>
    <message>
        <source>Leaks within the limit at %1.</source>
        <translation>Lecks unter dem Grenzwert an %1.</translation>
    </message>
    <message>
        <source>A response, but no leak there above the limit: %1.</source>
        <translation>Eine Antwort, aber dort kein Leck über dem Grenzwert: %1.</translation>
    </message>
    <message>
        <source>Over the limit: %1.</source>
        <translation>Über dem Grenzwert: %1.</translation>
    </message>
    <message>
        <source>Cannot say at %1: the range crosses the limit, or a larger leak hides it.</source>
        <translation>Unklar an %1: der Bereich schneidet den Grenzwert, oder ein größeres Leck verdeckt ihn.</translation>
    </message>
    <message>
        <source>Not sized at %1: the spray was too short, or a check or the background is missing.</source>
        <translation>Nicht bemessen an %1: es wurde zu kurz gesprüht, oder eine Prüfung oder der Untergrund fehlt.</translation>
    </message>
    <message>
        <source>Judged by a person, with the reason on record: %1.</source>
        <translation>Von einer Person beurteilt, mit notiertem Grund: %1.</translation>
    </message>
    <message>
        <source>point %1 (%2, %3)</source>
        <translation>Punkt %1 (%2, %3)</translation>
    </message>
    <message>
        <source>Accepted above the limit by concession: %1.</source>
        <translation>Über dem Grenzwert mit Sonderfreigabe angenommen: %1.</translation>
    </message>
    <message>
        <source>Held by a temporary repair: %1.</source>
        <translation>Von einer vorläufigen Reparatur gehalten: %1.</translation>
    </message>
    <message>
        <source>Left out, each with its reason: %1.</source>
        <translation>Ausgelassen, jeder mit Grund: %1.</translation>
    </message>
    <message>
        <source>Without a valid reading: %1.</source>
        <translation>Ohne gültigen Messwert: %1.</translation>
    </message>
    <message>
        <source>Not sprayed: %1.</source>
        <translation>Nicht besprüht: %1.</translation>
    </message>
    <message>
        <source>Who tested may approve: this history is set to one person.</source>
        <translation>Wer geprüft hat, darf freigeben: diese Historie ist auf eine Person eingestellt.</translation>
    </message>
    <message>
        <source>Follows %1 earlier signature(s).</source>
        <translation>Folgt auf %1 frühere Unterschrift(en).</translation>
    </message>
    <message>
        <source>No balance: %1</source>
        <translation>Keine Bilanz: %1</translation>
    </message>
    <message>
        <source>Something is still missing: %1 (%2)</source>
        <translation>Es fehlt noch etwas: %1 (%2)</translation>
    </message>
    <message>
        <source>Located: %1 (%2).</source>
        <translation>Geortet: %1 (%2).</translation>
    </message>
    <message>
        <source>Pressure rise: %1 (%2).</source>
        <translation>Druckanstieg: %1 (%2).</translation>
    </message>
    <message>
        <source>Pressure rise: not separable, at most %1.</source>
        <translation>Druckanstieg: nicht trennbar, höchstens %1.</translation>
    </message>
    <message>
        <source>No leak located.</source>
        <translation>Kein Leck geortet.</translation>
    </message>
    <message>
        <source>No leak located; the bounds of the points, each as air, add up to %1: together they can hide no more.</source>
        <translation>Kein Leck geortet; die Schranken der Punkte, jede als Luft, ergeben zusammen %1: mehr können sie zusammen nicht verbergen.</translation>
    </message>
    <message>
        <source>No leak located; the bounds of %1 of %2 points, each as air, add up to %3; the others have no bound.</source>
        <translation>Kein Leck geortet; die Schranken von %1 von %2 Punkten, jede als Luft, ergeben zusammen %3; die anderen haben keine Schranke.</translation>
    </message>
    <message>
        <source>No total limit was set.</source>
        <translation>Für die Summe wurde kein Grenzwert gesetzt.</translation>
    </message>
    <message>
        <source>The total is over its limit of %1.</source>
        <translation>Die Summe liegt über ihrem Grenzwert von %1.</translation>
    </message>
    <message>
        <source>The total is within its limit of %1.</source>
        <translation>Die Summe liegt unter ihrem Grenzwert von %1.</translation>
    </message>
    <message>
        <source>The total cannot be told from its limit of %1: its range crosses it.</source>
        <translation>Die Summe ist von ihrem Grenzwert %1 nicht zu unterscheiden: ihr Bereich schneidet ihn.</translation>
    </message>
    <message>
        <source>No pressure-rise test since the last repair: the total as left is not known.</source>
        <translation>Seit der letzten Reparatur kein Druckanstieg: die hinterlassene Summe ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No pressure-rise test that says a total.</source>
        <translation>Kein Druckanstieg, der eine Summe ergibt.</translation>
    </message>
    <message>
        <source>%1 belongs to the test set-up, not to the object; it is not in the sum</source>
        <translation>%1 gehört zum Prüfaufbau, nicht zum Objekt; es ist nicht in der Summe</translation>
    </message>
    <message>
        <source>%1 was found only in another condition; it is not in the sum</source>
        <translation>%1 wurde nur in einem anderen Zustand gefunden; es ist nicht in der Summe</translation>
    </message>
    <message>
        <source>Not judged: %1</source>
        <translation>Nicht beurteilt: %1</translation>
    </message>
    <message>
        <source>Reading: %1.</source>
        <translation>Lesart: %1.</translation>
    </message>
    <message>
        <source>Outgassing %1 at the start, %2 at the end.</source>
        <translation>Ausgasung %1 am Anfang, %2 am Ende.</translation>
    </message>
    <message>
        <source>%1 values over %2 min.</source>
        <translation>%1 Werte über %2 min.</translation>
    </message>
    <message>
        <source>%1 air (%2)</source>
        <translation>%1 Luft (%2)</translation>
    </message>
    <message>
        <source>run %1 min longer</source>
        <translation>%1 min weiterlaufen lassen</translation>
    </message>
    <message>
        <source>There is no earlier job of this object to compare with.</source>
        <translation>Von diesem Objekt gibt es keinen früheren Auftrag zum Vergleichen.</translation>
    </message>
    <message>
        <source>No point changed by more than the ranges of both jobs.</source>
        <translation>Kein Punkt hat sich um mehr als die Bereiche beider Aufträge geändert.</translation>
    </message>
    <message>
        <source>%1 points are the same within the ranges of both jobs, %2 cannot be compared.</source>
        <translation>%1 Punkte sind in den Bereichen beider Aufträge gleich, %2 sind nicht vergleichbar.</translation>
    </message>
    <message>
        <source>no such point</source>
        <translation>kein solcher Punkt</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>weg</translation>
    </message>
    <message>
        <source>grown</source>
        <translation>gewachsen</translation>
    </message>
    <message>
        <source>shrunk</source>
        <translation>geschrumpft</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>no response, too blind</source>
        <translation>keine Antwort, zu blind</translation>
    </message>
    <message>
        <source>shared with %1</source>
        <translation>geteilt mit %1</translation>
    </message>
    <message>
        <source>leak of %1</source>
        <translation>Leck von %1</translation>
    </message>
    <message>
        <source>held by a temporary repair</source>
        <translation>von einer vorläufigen Reparatur gehalten</translation>
    </message>
    <message>
        <source>awaiting re-test</source>
        <translation>neue Prüfung steht aus</translation>
    </message>
    <message>
        <source>repaired</source>
        <translation>repariert</translation>
    </message>
    <message>
        <source>by concession until %1</source>
        <translation>mit Sonderfreigabe bis %1</translation>
    </message>
    <message>
        <source>by concession, without end</source>
        <translation>mit Sonderfreigabe, ohne Ende</translation>
    </message>
    <message>
        <source>worked out: %1</source>
        <translation>berechnet: %1</translation>
    </message>
    <message>
        <source>judged by %1: %2</source>
        <translation>beurteilt von %1: %2</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>Luft %1</translation>
    </message>
    <message>
        <source>air %1 … %2</source>
        <translation>Luft %1 … %2</translation>
    </message>
    <message>
        <source>air, below %1</source>
        <translation>Luft, unter %1</translation>
    </message>
    <message>
        <source>air, at least %1</source>
        <translation>Luft, mindestens %1</translation>
    </message>
    <message>
        <source>own part below %1</source>
        <translation>eigener Anteil unter %1</translation>
    </message>
    <message>
        <source>No point needs a decision: every one was sprayed and is within the limit.</source>
        <translation>Kein Punkt braucht eine Entscheidung: jeder wurde besprüht und liegt unter dem Grenzwert.</translation>
    </message>
    <message>
        <source>The sketch has no points.</source>
        <translation>Die Skizze hat keine Punkte.</translation>
    </message>
    <message>
        <source>Every point was sprayed.</source>
        <translation>Jeder Punkt wurde besprüht.</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund genannt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>typed %1</source>
        <translation>getippt %1</translation>
    </message>
    <message>
        <source>corrected, no reason given</source>
        <translation>berichtigt, kein Grund genannt</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>No reading was taken.</source>
        <translation>Kein Messwert wurde genommen.</translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation>später berichtigt</translation>
    </message>
    <message>
        <source>before the wait was over</source>
        <translation>bevor die Wartezeit um war</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>above range</source>
        <translation>über dem Bereich</translation>
    </message>
    <message>
        <source>not sprayed again</source>
        <translation>nicht neu besprüht</translation>
    </message>
    <message>
        <source>Leaks by pressure rise, as air</source>
        <translation>Lecks nach Druckanstieg, als Luft</translation>
    </message>
    <message>
        <source>Base pressure</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>Point %1: %2, %3; photo %4 of %5</source>
        <translation>Punkt %1: %2, %3; Foto %4 von %5</translation>
    </message>
    <message>
        <source>No repair was logged in this job.</source>
        <translation>In diesem Auftrag wurde keine Reparatur eingetragen.</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>dauerhaft</translation>
    </message>
    <message>
        <source>temporary</source>
        <translation>vorläufig</translation>
    </message>
    <message>
        <source>A temporary repair is to be replaced by a permanent one; below the word stands who sees to that, and by when.</source>
        <translation>Eine vorläufige Reparatur ist durch eine dauerhafte zu ersetzen; unter dem Wort steht, wer sich bis wann darum kümmert.</translation>
    </message>
    <message>
        <source>temporary, made good since</source>
        <translation>vorläufig, seither gutgemacht</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>kein Datum</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Still in place from an earlier job: %1 at point %2, %3, due %4, done %5.</source>
        <translation>Aus einem früheren Auftrag noch vorhanden: %1 an Punkt %2, %3, fällig %4, gemacht %5.</translation>
    </message>
    <message>
        <source>Still in place from an earlier job: %1 at point %2, %3, no date, done %4.</source>
        <translation>Aus einem früheren Auftrag noch vorhanden: %1 an Punkt %2, %3, ohne Datum, gemacht %4.</translation>
    </message>
    <message>
        <source>in round %1</source>
        <translation>in Runde %1</translation>
    </message>
    <message>
        <source>without end</source>
        <translation>ohne Ende</translation>
    </message>
    <message>
        <source>ran out on %1</source>
        <translation>abgelaufen am %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>accepted above the limit</source>
        <translation>über dem Grenzwert angenommen</translation>
    </message>
    <message>
        <source>granted by %1</source>
        <translation>gewährt von %1</translation>
    </message>
    <message>
        <source>Not yet submitted.</source>
        <translation>Noch nicht eingereicht.</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>amendment</source>
        <translation>Nachtrag</translation>
    </message>
    <message>
        <source>on point %1</source>
        <translation>zu Punkt %1</translation>
    </message>
    <message>
        <source>on &quot;%1&quot;</source>
        <translation>zu „%1“</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>übersprungen</translation>
    </message>
    <message>
        <source>limit changed</source>
        <translation>Grenzwert geändert</translation>
    </message>
    <message>
        <source>job as seen: %1</source>
        <translation>Auftrag, wie gesehen: %1</translation>
    </message>
    <message>
        <source>tester</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>reviewer</source>
        <translation>Gegenprüfer</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>as logged with the readings</source>
        <translation>wie zu den Messwerten notiert</translation>
    </message>
    <message>
        <source>named with the job, has not signed</source>
        <translation>im Auftrag genannt, hat nicht unterschrieben</translation>
    </message>
    <message>
        <source>key %1, digest %2</source>
        <translation>Schlüssel %1, Prüfsumme %2</translation>
    </message>
    <message>
        <source>key %1, digest %2: %3</source>
        <translation>Schlüssel %1, Prüfsumme %2: %3</translation>
    </message>
    <message>
        <source>not among the people of this history</source>
        <translation>nicht unter den Personen dieser Historie</translation>
    </message>
    <message>
        <source>in this history since %1</source>
        <translation>in dieser Historie seit %1</translation>
    </message>
    <message>
        <source>who added them is not recorded</source>
        <translation>wer sie eintrug, ist nicht notiert</translation>
    </message>
    <message>
        <source>added with nobody logging</source>
        <translation>eingetragen, während niemand schrieb</translation>
    </message>
    <message>
        <source>added by %1</source>
        <translation>eingetragen von %1</translation>
    </message>
    <message>
        <source>%1 signed: %2</source>
        <translation>%1 unterschrieb dies (gültig ist der englische Wortlaut der Aufzeichnung): %2</translation>
    </message>
    <message>
        <source>%1 signed the amendment: %2</source>
        <translation>%1 unterschrieb den Nachtrag: %2</translation>
    </message>
    <message>
        <source>Digest of this job as printed (SHA-256): %1</source>
        <translation>Prüfsumme dieses Auftrags wie gedruckt (SHA-256): %1</translation>
    </message>
    <message>
        <source>Not as signed: %1</source>
        <translation>Nicht wie unterschrieben: %1</translation>
    </message>
    <message>
        <source>The band swells by 0.5 mm for each decade above the smallest detectable leak.</source>
        <translation>Das Band wird je Dekade über dem kleinsten nachweisbaren Leck um 0,5 mm breiter.</translation>
    </message>
    <message>
        <source>Teeth: over the limit; few teeth: cannot say; no teeth: within.</source>
        <translation>Zähne: über dem Grenzwert; wenige Zähne: unklar; keine Zähne: darunter.</translation>
    </message>
    <message>
        <source>One flat colour for each stretch sprayed; nothing is drawn between joints.</source>
        <translation>Eine Farbe für jeden besprühten Abschnitt; zwischen Fügestellen ist nichts gezeichnet.</translation>
    </message>
    <message>
        <source>leak, over the limit</source>
        <translation>Leck über dem Grenzwert</translation>
    </message>
    <message>
        <source>leak, limit: cannot say</source>
        <translation>Leck, zum Grenzwert unklar</translation>
    </message>
    <message>
        <source>shared by two neighbours</source>
        <translation>zwei Nachbarn gemeinsam</translation>
    </message>
    <message>
        <source>echo of a larger leak, as read</source>
        <translation>Echo eines größeren Lecks</translation>
    </message>
    <message>
        <source>echo, taken out</source>
        <translation>Echo, herausgerechnet</translation>
    </message>
    <message>
        <source>masked by a larger leak</source>
        <translation>von größerem Leck verdeckt</translation>
    </message>
    <message>
        <source>leak within the limit</source>
        <translation>Leck unter dem Grenzwert</translation>
    </message>
    <message>
        <source>clear: no response</source>
        <translation>frei: keine Antwort</translation>
    </message>
    <message>
        <source>void: reading not used</source>
        <translation>verworfener Messwert</translation>
    </message>
    <message>
        <source>tab T on a mark: temporary repair</source>
        <translation>Reiter T: vorläufig repariert</translation>
    </message>
    <message>
        <source>seal on a mark: conceded</source>
        <translation>Siegel: Sonderfreigabe</translation>
    </message>
    <message>
        <source>other source, trapped gas</source>
        <translation>andere Quelle, Gaseinschluss</translation>
    </message>
    <message>
        <source>%1, job %2</source>
        <translation>%1, Auftrag %2</translation>
    </message>
    <message>
        <source>Leak map</source>
        <translation>Leckkarte</translation>
    </message>
    <message>
        <source>as read</source>
        <translation>wie abgelesen</translation>
    </message>
    <message>
        <source>invented data</source>
        <translation>erfundene Daten</translation>
    </message>
    <message>
        <source>volume not stated</source>
        <translation>Volumen nicht angegeben</translation>
    </message>
    <message>
        <source>own pumps</source>
        <translation>eigene Pumpen</translation>
    </message>
    <message>
        <source>%1 l/s air</source>
        <translation>%1 l/s Luft</translation>
    </message>
    <message>
        <source>%1 l/s helium</source>
        <translation>%1 l/s Helium</translation>
    </message>
    <message>
        <source>speed not stated</source>
        <translation>Saugvermögen nicht angegeben</translation>
    </message>
    <message>
        <source>reference leak %1</source>
        <translation>Prüfleck %1</translation>
    </message>
    <message>
        <source>place not stated</source>
        <translation>Ort nicht angegeben</translation>
    </message>
    <message>
        <source>connection not stated</source>
        <translation>Anschluss nicht angegeben</translation>
    </message>
    <message>
        <source>bore %1 mm</source>
        <translation>%1 mm weit</translation>
    </message>
    <message>
        <source>bore not stated</source>
        <translation>Weite nicht angegeben</translation>
    </message>
    <message>
        <source>%1 m long</source>
        <translation>%1 m lang</translation>
    </message>
    <message>
        <source>length not stated</source>
        <translation>Länge nicht angegeben</translation>
    </message>
    <message>
        <source>size not stated</source>
        <translation>Maße nicht angegeben</translation>
    </message>
    <message>
        <source>%1 mbar inside</source>
        <translation>%1 mbar darin</translation>
    </message>
    <message>
        <source>pump in parallel</source>
        <translation>Pumpe parallel</translation>
    </message>
    <message>
        <source>detector %1</source>
        <translation>Lecksucher %1</translation>
    </message>
    <message>
        <source>detector, not named</source>
        <translation>Lecksucher, nicht benannt</translation>
    </message>
    <message>
        <source>leak and exponential source</source>
        <translation>Leck und abklingende Quelle</translation>
    </message>
    <message>
        <source>exponential source</source>
        <translation>abklingende Quelle</translation>
    </message>
    <message>
        <source>leak and power-law source</source>
        <translation>Leck und Potenzgesetz-Quelle</translation>
    </message>
    <message>
        <source>exponential</source>
        <translation>abklingende</translation>
    </message>
    <message>
        <source>hyperbolic source</source>
        <translation>hyperbolische Quelle</translation>
    </message>
    <message>
        <source>leak and hyperbolic source</source>
        <translation>Leck und hyperbolische Quelle</translation>
    </message>
    <message>
        <source>hyperbolic</source>
        <translation>hyperbolische</translation>
    </message>
    <message>
        <source>logarithmic source</source>
        <translation>logarithmische Quelle</translation>
    </message>
    <message>
        <source>leak and logarithmic source</source>
        <translation>Leck und logarithmische Quelle</translation>
    </message>
    <message>
        <source>logarithmic</source>
        <translation>logarithmische</translation>
    </message>
    <message>
        <source>power-law source</source>
        <translation>Potenzgesetz-Quelle</translation>
    </message>
    <message>
        <source>power-law</source>
        <translation>Potenzgesetz-</translation>
    </message>
    <message>
        <source>stretched exponential source</source>
        <translation>gedehnt abklingende Quelle</translation>
    </message>
    <message>
        <source>leak and stretched exponential source</source>
        <translation>Leck und gedehnt abklingende Quelle</translation>
    </message>
    <message>
        <source>stretched exponential</source>
        <translation>gedehnt abklingende</translation>
    </message>
    <message>
        <source>%1 and %2 sources</source>
        <translation>%1 und %2 Quellen</translation>
    </message>
    <message>
        <source>leak and %1 and %2 sources</source>
        <translation>Leck und %1 und %2 Quellen</translation>
    </message>
    <message>
        <source>for %1: %2</source>
        <translation>für %1: %2</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>open: not all sprayed again: %1</source>
        <translation>offen: nicht alle neu besprüht: %1</translation>
    </message>
    <message>
        <source>%1 (%2), %3</source>
        <translation>%1 (%2), %3</translation>
    </message>
    <message>
        <source>It answered at %1 and not when it was sprayed again at %2: a leak answers twice. Judge it, or make void the reading that does not count.</source>
        <translation>Er antwortete um %1 und nicht, als er um %2 noch einmal besprüht wurde: Ein Leck antwortet zweimal. Beurteilen Sie ihn, oder verwerfen Sie den Messwert, der nicht gilt.</translation>
    </message>
    <message>
        <source>No response above %1 at %2 of %3 points, as left after the repairs, under the conditions recorded.</source>
        <translation>Keine Antwort über %1 an %2 von %3 Punkten, so wie nach den Reparaturen hinterlassen, unter den aufgezeichneten Bedingungen.</translation>
    </message>
    <message>
        <source>sprayed before the wait was over: %1 of %2 readings</source>
        <translation>besprüht, bevor das Warten vorbei war: %1 von %2 Messwerten</translation>
    </message>
    <message>
        <source>The limit was agreed by who tested.</source>
        <translation>Den Grenzwert hat vereinbart, wer geprüft hat.</translation>
    </message>
    <message>
        <source>The range ends above that of the reading alone at %1: a probe that passed too fast or beside the leak shows less than there is.</source>
        <translation>Der Bereich endet über dem des Messwerts allein an %1: Eine Sonde, die zu schnell oder neben dem Leck vorbeiging, zeigt weniger, als da ist.</translation>
    </message>
    <message>
        <source>It answered at %1 and not at %2, with %3 taped or bagged off.</source>
        <translation>Er antwortete um %1 und nicht um %2, als %3 abgeklebt oder eingebeutelt war.</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>zählt nicht</translation>
    </message>
    <message>
        <source>a background read by eye is one level and a swing above zero, as 1e-7 +- 2e-8</source>
        <translation>ein nach Augenmaß abgelesener Untergrund ist eine Höhe und ein Ausschlag über null, wie 1e-7 +- 2e-8</translation>
    </message>
    <message>
        <source>level and swing are one number each, as 1e-7 +- 2e-8, and all there is</source>
        <translation>Höhe und Ausschlag sind je eine Zahl, wie 1e-7 +- 2e-8, und sonst steht nichts da</translation>
    </message>
    <message>
        <source>the swing of the background must be above zero</source>
        <translation>der Ausschlag des Untergrunds muss über null liegen</translation>
    </message>
    <message>
        <source>job.backgrounds[%1]: a swing read by eye goes with one value, not %2</source>
        <translation>job.backgrounds[%1]: zu einem nach Augenmaß abgelesenen Ausschlag gehört ein Wert, nicht %2</translation>
    </message>
    <message>
        <source>job.readings[%1]: the point sprayed is said to be taped off</source>
        <translation>job.readings[%1]: der besprühte Punkt soll abgeklebt gewesen sein</translation>
    </message>
    <message>
        <source>no clear response</source>
        <translation>keine deutliche Antwort</translation>
    </message>
    <message>
        <source>taped off: %1</source>
        <translation>abgeklebt: %1</translation>
    </message>
    <message>
        <source>by eye</source>
        <translation>Augenmaß</translation>
    </message>
    <message>
        <source>Worked out from both jobs when this was printed, with what is known of their points now; the signature does not cover this section.</source>
        <translation>Beim Drucken aus beiden Aufträgen gerechnet, mit dem, was jetzt von ihren Punkten bekannt ist; die Unterschrift gilt diesem Abschnitt nicht.</translation>
    </message>
    <message>
        <source>Accepted with conditions: %1</source>
        <translation>Mit Auflagen angenommen: %1</translation>
    </message>
    <message>
        <source>%1 point by concession</source>
        <translation>%1 Punkt durch Sonderfreigabe</translation>
    </message>
    <message>
        <source>%1 points by concession</source>
        <translation>%1 Punkte durch Sonderfreigabe</translation>
    </message>
    <message>
        <source>%1 point held by a temporary repair</source>
        <translation>%1 Punkt durch eine vorläufige Reparatur gehalten</translation>
    </message>
    <message>
        <source>%1 points held by temporary repairs</source>
        <translation>%1 Punkte durch vorläufige Reparaturen gehalten</translation>
    </message>
    <message>
        <source>%1 point left out with its reason</source>
        <translation>%1 Punkt mit Begründung ausgelassen</translation>
    </message>
    <message>
        <source>%1 points left out with their reasons</source>
        <translation>%1 Punkte mit Begründung ausgelassen</translation>
    </message>
    <message>
        <source>%1 of the test set-up not counted</source>
        <translation>%1 des Prüfaufbaus zählt nicht</translation>
    </message>
    <message>
        <source>fault search</source>
        <translation>Fehlersuche</translation>
    </message>
    <message>
        <source>acceptance</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>yearly check</source>
        <translation>Jahresprüfung</translation>
    </message>
    <message>
        <source>after rebuild</source>
        <translation>nach Umbau</translation>
    </message>
    <message>
        <source>at the object, alone</source>
        <translation>am Objekt, allein</translation>
    </message>
    <message>
        <source>foreline, pump in parallel</source>
        <translation>Vorvakuumleitung, Pumpe parallel</translation>
    </message>
    <message>
        <source>foreline, alone</source>
        <translation>Vorvakuumleitung, allein</translation>
    </message>
    <message>
        <source>time constant %1 s</source>
        <translation>Zeitkonstante %1 s</translation>
    </message>
    <message>
        <source>measured with the reference leak</source>
        <translation>mit dem Prüfleck gemessen</translation>
    </message>
    <message>
        <source>volume over pumping speed</source>
        <translation>Volumen durch Saugvermögen</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>dwell asked for %1 s</source>
        <translation>verlangte Sprühzeit %1 s</translation>
    </message>
    <message>
        <source>wait after an answer %1 s</source>
        <translation>Wartezeit nach einer Antwort %1 s</translation>
    </message>
    <message>
        <source>Timing</source>
        <translation>Zeiten</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Noise</source>
        <translation>Rauschen</translation>
    </message>
    <message>
        <source>as the detector showed it, and each by itself corrected to the chamber; below that its 95 % range</source>
        <translation>wie das Gerät ihn zeigte, und jeder für sich auf die Kammer umgerechnet; darunter sein 95-%-Bereich</translation>
    </message>
    <message>
        <source>No point can be compared with job %1: whether anything has grown is not known.</source>
        <translation>Kein Punkt ist mit Auftrag %1 vergleichbar: ob etwas gewachsen ist, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Nothing has grown since job %1 at the %2 of %3 points that can be compared.</source>
        <translation>Seit Auftrag %1 ist an den %2 von %3 vergleichbaren Punkten nichts gewachsen.</translation>
    </message>
    <message>
        <source>level and swing of the background were read by eye; slow drift does not show</source>
        <translation>Höhe und Ausschlag des Untergrunds sind nach Augenmaß abgelesen; langsame Drift zeigt sich nicht</translation>
    </message>
    <message>
        <source>only what leaks in the test set-up can be left uncounted</source>
        <translation>nur was im Prüfaufbau leckt, kann ungezählt bleiben</translation>
    </message>
    <message>
        <source>a point cannot be sprayed and taped off at once</source>
        <translation>ein Punkt kann nicht zugleich besprüht und abgeklebt sein</translation>
    </message>
    <message>
        <source>a background read by eye has one value, its level</source>
        <translation>ein nach Augenmaß abgelesener Untergrund hat einen Wert, seine Höhe</translation>
    </message>
    <message>
        <source>Leaking in the test set-up and not counted: %1.</source>
        <translation>Im Prüfaufbau leckend und nicht gezählt: %1.</translation>
    </message>
    <message>
        <source>as the history says now</source>
        <translation>wie es die Historie jetzt sagt</translation>
    </message>
    <message>
        <source>It answered at %1 and not at %2, with %3 taped or bagged off; a leak of its own, as large as that, would have shown.</source>
        <translation>Er antwortete um %1 und nicht um %2, als %3 abgeklebt oder eingebeutelt war; ein eigenes Leck dieser Größe hätte sich gezeigt.</translation>
    </message>
    <message>
        <source>no leak where tested</source>
        <translation>kein Leck, wo geprüft</translation>
    </message>
    <message>
        <source>spray not timed: what would have shown is given for one response time of helium, 3 s at most</source>
        <translation>Sprühzeit nicht gestoppt: was sich gezeigt hätte, ist für eine Ansprechzeit Helium angegeben, höchstens 3 s</translation>
    </message>
    <message>
        <source>Its %1 does not stand out of the noise; a leak of its own above %2 would have shown.</source>
        <translation>Seine %1 heben sich nicht aus dem Rauschen; ein eigenes Leck über %2 hätte sich gezeigt.</translation>
    </message>
    <message>
        <source>dwell not recorded</source>
        <translation>Sprühzeit nicht notiert</translation>
    </message>
    <message>
        <source>spray not timed: a leak %1 times as large would have shown as much after %2 s</source>
        <translation>Sprühzeit nicht gestoppt: ein %1-mal so großes Leck hätte nach %2 s ebenso viel gezeigt</translation>
    </message>
    <message>
        <source>job.void_measurements[%1]: the measurement it names is not in the job, or void already</source>
        <translation>job.void_measurements[%1]: die genannte Messung gehört nicht zum Auftrag oder ist schon verworfen</translation>
    </message>
    <message>
        <source>%1 declared measurements of this job void; somebody else has to approve it</source>
        <translation>%1 hat Messungen dieses Auftrags verworfen; jemand anders muss ihn freigeben</translation>
    </message>
    <message>
        <source>job %1 has no measurement %2</source>
        <translation>Auftrag %1 hat keine Messung %2</translation>
    </message>
    <message>
        <source>shown %1, reference leak %2</source>
        <translation>gezeigt %1, Prüfleck %2</translation>
    </message>
    <message>
        <source>background watch</source>
        <translation>Untergrundbeobachtung</translation>
    </message>
    <message>
        <source>stops a signature</source>
        <translation>verhindert eine Unterschrift</translation>
    </message>
    <message>
        <source>Nothing was voided or corrected.</source>
        <translation>Nichts wurde verworfen oder berichtigt.</translation>
    </message>
    <message>
        <source>%1 point judged by a person</source>
        <translation>%1 Punkt von einer Person beurteilt</translation>
    </message>
    <message>
        <source>%1 points judged by a person</source>
        <translation>%1 Punkte von einer Person beurteilt</translation>
    </message>
    <message>
        <source>before, again</source>
        <translation>erneut vorher</translation>
    </message>
    <message>
        <source>below: what could have stayed unseen, with the uncertainty of check, factor and spray</source>
        <translation>unter: was ungesehen hätte bleiben können, mit der Unsicherheit von Prüfung, Faktor und Sprühen</translation>
    </message>
    <message>
        <source>worked out from the record when this was printed</source>
        <translation>beim Drucken aus der Akte ermittelt</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>What the record says</source>
        <translation>Was die Akte sagt</translation>
    </message>
    <message>
        <source>What was said of it</source>
        <translation>Was dazu gesagt wurde</translation>
    </message>
    <message>
        <source>No point is over its limit, and nothing was repaired.</source>
        <translation>Kein Punkt liegt über seinem Grenzwert, und nichts wurde repariert.</translation>
    </message>
    <message>
        <source>Permeation is claimed nowhere.</source>
        <translation>Permeation wird nirgends behauptet.</translation>
    </message>
    <message>
        <source>The system check of %1 is void: %2.</source>
        <translation>Die Systemprüfung von %1 ist verworfen: %2.</translation>
    </message>
    <message>
        <source>The detector check of %1 is void: %2.</source>
        <translation>Die Detektorprüfung von %1 ist verworfen: %2.</translation>
    </message>
    <message>
        <source>The background watch of %1 is void: %2.</source>
        <translation>Die Untergrundbeobachtung von %1 ist verworfen: %2.</translation>
    </message>
    <message>
        <source>The pressure rise of %1 is void: %2.</source>
        <translation>Der Druckanstieg von %1 ist verworfen: %2.</translation>
    </message>
    <message>
        <source>spray not timed: %1 s, what a hand gives at the least, prove nothing at a response time of %2 s</source>
        <translation>Sprühzeit nicht gestoppt: %1 s, was eine Hand mindestens gibt, beweisen nichts bei einer Ansprechzeit von %2 s</translation>
    </message>
    <message>
        <source>dwell not recorded, full signal taken for the lower end</source>
        <translation>Sprühzeit nicht notiert, volles Signal für das untere Ende angenommen</translation>
    </message>
    <message>
        <source>%1 numbers where a time and a pressure are wanted</source>
        <translation>%1 Zahlen, wo eine Zeit und ein Druck erwartet werden</translation>
    </message>
    <message>
        <source>One question of the review is not in order; it stands below with what was said of it.</source>
        <translation>Eine Frage der Prüfung ist nicht in Ordnung; sie steht unten mit dem, was dazu gesagt wurde.</translation>
    </message>
    <message>
        <source>%1 questions of the review are not in order; they stand below with what was said of them.</source>
        <translation>%1 Fragen der Prüfung sind nicht in Ordnung; sie stehen unten mit dem, was dazu gesagt wurde.</translation>
    </message>
    <message>
        <source>No calibration stands: no reading could be corrected to the chamber.</source>
        <translation>Keine Kalibrierung gilt: keine Ablesung konnte auf die Kammer umgerechnet werden.</translation>
    </message>
    <message>
        <source>No background watch stands: the smallest detectable leak is not known.</source>
        <translation>Keine Untergrundbeobachtung gilt: das kleinste nachweisbare Leck ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Void and corrected</source>
        <translation>Verworfen und berichtigt</translation>
    </message>
    <message>
        <source>Review questions that are not in order</source>
        <translation>Fragen der Prüfung, die nicht in Ordnung sind</translation>
    </message>
    <message>
        <source>Anything changed or void, each with its reason?</source>
        <translation>Etwas geändert oder verworfen, jedes mit seinem Grund?</translation>
    </message>
    <message>
        <source>No pressure-rise test stands: whether everything was found is not known.</source>
        <translation>Kein Druckanstieg gilt: ob alles gefunden wurde, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No check with a reference leak stands; readings have no figure on the chamber.</source>
        <translation>Keine Prüfung mit einem Prüfleck gilt; die Ablesungen haben keinen Wert an der Kammer.</translation>
    </message>
    <message>
        <source>No background watch stands.</source>
        <translation>Keine Untergrundbeobachtung gilt.</translation>
    </message>
    <message>
        <source>read by eye</source>
        <translation>mit dem Auge gelesen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit known here; %2 is asked for, such as &quot;%3&quot;</source>
        <translation>„%1“ ist hier keine bekannte Einheit; gefragt ist %2, zum Beispiel „%3“</translation>
    </message>
    <message>
        <source>%1 does not agree: %2</source>
        <translation>%1 ist nicht einverstanden: %2</translation>
    </message>
    <message>
        <source>not agreed</source>
        <translation>nicht einverstanden</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>valve seat, tested across with the valve shut</source>
        <translation>Ventilsitz, bei geschlossenem Ventil über ihn geprüft</translation>
    </message>
    <message>
        <source>bonnet of the valve</source>
        <translation>Haube des Ventils</translation>
    </message>
    <message>
        <source>bellows inside the valve&apos;s stem</source>
        <translation>Balg in der Ventilspindel</translation>
    </message>
    <message>
        <source>inner bellows or shaft seal of the feedthrough</source>
        <translation>innerer Balg oder Wellendichtung der Durchführung</translation>
    </message>
    <message>
        <source>each pin or ceramic, apart from the flange</source>
        <translation>jeder Stift oder jede Keramik, neben dem Flansch</translation>
    </message>
    <message>
        <source>gland or shaft near the door: hinge side, handle</source>
        <translation>Stopfbuchse oder Welle nahe der Tür: Scharnierseite, Griff</translation>
    </message>
    <message>
        <source>leak-check port between double seals</source>
        <translation>Prüfanschluss zwischen Doppeldichtungen</translation>
    </message>
    <message>
        <source>clamp ring of the view glass</source>
        <translation>Spannring des Schauglases</translation>
    </message>
    <message>
        <source>ferrules at both ends of the hose</source>
        <translation>Hülsen an beiden Enden des Schlauchs</translation>
    </message>
    <message>
        <source>end cuffs of the bellows</source>
        <translation>Endstücke des Balgs</translation>
    </message>
    <message>
        <source>water circuit: helium inside it, drained and dried</source>
        <translation>Wasserkreis: Helium hinein, entleert und getrocknet</translation>
    </message>
    <message>
        <source>crater ends and stops of the weld</source>
        <translation>Endkrater und Ansätze der Naht</translation>
    </message>
    <message>
        <source>relief valve or burst disc</source>
        <translation>Sicherheitsventil oder Berstscheibe</translation>
    </message>
    <message>
        <source>gauge and vent fittings, caps and blanks</source>
        <translation>Anschlüsse für Messröhre und Belüftung, Kappen und Blindstopfen</translation>
    </message>
    <message>
        <source>test hose of the detector</source>
        <translation>Prüfschlauch des Lecksuchers</translation>
    </message>
    <message>
        <source>set-up connections: tee, clamps, detector inlet</source>
        <translation>Verbindungen des Aufbaus: T-Stück, Klammern, Eingang des Lecksuchers</translation>
    </message>
    <message>
        <source>It answered at %1 and not at %2, with %3 taped or bagged off; a leak of its own, as large as that, would have shown: the helium went in there.</source>
        <translation>Antwortete um %1 und nicht um %2, als %3 abgeklebt oder eingebeutelt war; ein eigenes Leck dieser Größe hätte sich gezeigt: Das Helium ging dort hinein.</translation>
    </message>
    <message>
        <source>no total limit, and without the speed of the object&apos;s own pumps for air no repair can be held against the base pressure wanted</source>
        <translation>kein Grenzwert für die Summe, und ohne das Saugvermögen der eigenen Pumpen für Luft lässt sich keine Reparatur gegen den gewünschten Enddruck halten</translation>
    </message>
    <message>
        <source>of the test set-up, not of the object</source>
        <translation>vom Prüfaufbau, nicht vom Objekt</translation>
    </message>
    <message>
        <source>echo of %1, %2</source>
        <translation>Echo von %1, %2</translation>
    </message>
    <message>
        <source>masked by %1, %2</source>
        <translation>verdeckt von %1, %2</translation>
    </message>
    <message>
        <source>Of the test set-up, could not be said as found, repaired and within the limit since: %1.</source>
        <translation>Vom Prüfaufbau, vorgefunden nicht zu sagen, repariert und seither darunter: %1.</translation>
    </message>
    <message>
        <source>%1 of them of the test set-up</source>
        <translation>davon %1 vom Prüfaufbau</translation>
    </message>
    <message>
        <source>The base pressure wanted, %1 mbar, was not reached: %2 mbar.</source>
        <translation>Der gewünschte Enddruck, %1 mbar, wurde nicht erreicht: %2 mbar.</translation>
    </message>
    <message>
        <source>Base pressure before the gas was shut in: %1 mbar.</source>
        <translation>Enddruck vor dem Absperren: %1 mbar.</translation>
    </message>
    <message>
        <source>%1, %2 of them of the test set-up, on %3 of %4, sketch revision %5</source>
        <translation>%1, davon %2 vom Prüfaufbau, an %3 auf %4, Skizze Stand %5</translation>
    </message>
    <message>
        <source>Base pressure wanted</source>
        <translation>Gewünschter Enddruck</translation>
    </message>
    <message>
        <source>The base pressure, %1 mbar, is above the %2 mbar wanted.</source>
        <translation>Der Enddruck, %1 mbar, liegt über den gewünschten %2 mbar.</translation>
    </message>
    <message>
        <source>Asked at the review; the people of the history may have more on record by now.</source>
        <translation>Bei der Prüfung gefragt; inzwischen kann bei den Personen dieser Historie mehr stehen.</translation>
    </message>
    <message>
        <source>there after all</source>
        <translation>doch vorhanden</translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>leak</source>
        <translation>Leck</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>geteilt</translation>
    </message>
    <message>
        <source>echo</source>
        <translation>Echo</translation>
    </message>
    <message>
        <source>masked</source>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>permeation</source>
        <translation>Durchlässigkeit</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>below detectable</source>
        <translation>unter der Nachweisgrenze</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>not accessible</source>
        <translation>nicht erreichbar</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not sprayed</source>
        <translation>nicht besprüht</translation>
    </message>
    <message>
        <source>over</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>within</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>other source</source>
        <translation>andere Quelle</translation>
    </message>
    <message>
        <source>virtual leak</source>
        <translation>virtuelles Leck</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>zählt nicht</translation>
    </message>
</context>
<context>
    <name>JointKind</name>
    <message>
        <source>O-ring seal</source>
        <translation>O-Ring-Dichtung</translation>
    </message>
    <message>
        <source>metal-gasket flange</source>
        <translation>Flansch mit Metalldichtung</translation>
    </message>
    <message>
        <source>clamped flange</source>
        <translation>Klammerflansch</translation>
    </message>
    <message>
        <source>weld seam</source>
        <translation>Schweißnaht</translation>
    </message>
    <message>
        <source>brazed joint</source>
        <translation>Lötstelle</translation>
    </message>
    <message>
        <source>threaded fitting</source>
        <translation>Verschraubung</translation>
    </message>
    <message>
        <source>feedthrough</source>
        <translation>Durchführung</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>bellows</source>
        <translation>Faltenbalg</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>viewport</source>
        <translation>Schauglas</translation>
    </message>
</context>
<context>
    <name>KeyTable</name>
    <message>
        <source>this card; again: away</source>
        <translation>diese Karte; noch einmal: weg</translation>
    </message>
    <message>
        <source>stages</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>go to a point, joint, object or command by typing</source>
        <translation>durch Tippen zu Punkt, Fügestelle, Objekt oder Befehl</translation>
    </message>
    <message>
        <source>next, previous part of the window</source>
        <translation>nächster, voriger Teil des Fensters</translation>
    </message>
    <message>
        <source>new job, new test object</source>
        <translation>neuer Auftrag, neues Prüfobjekt</translation>
    </message>
    <message>
        <source>open a history or job file</source>
        <translation>Historie oder Auftragsdatei öffnen</translation>
    </message>
    <message>
        <source>export table or map</source>
        <translation>Tabelle oder Karte ausgeben</translation>
    </message>
    <message>
        <source>who is logging</source>
        <translation>wer schreibt</translation>
    </message>
    <message>
        <source>change the unit shown</source>
        <translation>gezeigte Einheit ändern</translation>
    </message>
    <message>
        <source>filter the list in view</source>
        <translation>die sichtbare Liste filtern</translation>
    </message>
    <message>
        <source>undo, redo in the sketch</source>
        <translation>in der Skizze zurück, wieder vor</translation>
    </message>
    <message>
        <source>the last ten notes</source>
        <translation>die letzten zehn Meldungen</translation>
    </message>
    <message>
        <source>sounds on or off</source>
        <translation>Töne an oder aus</translation>
    </message>
    <message>
        <source>theme, full screen</source>
        <translation>Aussehen, ganzer Bildschirm</translation>
    </message>
    <message>
        <source>leave the tool, clear the field, cancel the work</source>
        <translation>Werkzeug verlassen, Feld leeren, Arbeit abbrechen</translation>
    </message>
    <message>
        <source>next empty field</source>
        <translation>nächstes leeres Feld</translation>
    </message>
    <message>
        <source>watch the background</source>
        <translation>Untergrund beobachten</translation>
    </message>
    <message>
        <source>enter a reference leak</source>
        <translation>Prüfleck eintragen</translation>
    </message>
    <message>
        <source>pressure rise</source>
        <translation>Druckanstieg</translation>
    </message>
    <message>
        <source>go on</source>
        <translation>weiter</translation>
    </message>
    <message>
        <source>select</source>
        <translation>auswählen</translation>
    </message>
    <message>
        <source>ring, rounded rectangle</source>
        <translation>Ring, Rechteck mit Ecken</translation>
    </message>
    <message>
        <source>closed path, open path (weld)</source>
        <translation>geschlossener, offener Zug (Naht)</translation>
    </message>
    <message>
        <source>spot, hose</source>
        <translation>Stelle, Schlauch</translation>
    </message>
    <message>
        <source>picture underneath, scale by two clicks</source>
        <translation>Bild unterlegen, Maßstab aus zwei Klicks</translation>
    </message>
    <message>
        <source>add a point, split the stretch</source>
        <translation>Punkt dazu, Abschnitt teilen</translation>
    </message>
    <message>
        <source>retire; without readings: delete</source>
        <translation>stilllegen; ohne Messwert: löschen</translation>
    </message>
    <message>
        <source>start the spray; again: stop</source>
        <translation>sprühen; noch einmal: halt</translation>
    </message>
    <message>
        <source>store, next point</source>
        <translation>speichern, nächster Punkt</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>over range</source>
        <translation>über dem Messbereich</translation>
    </message>
    <message>
        <source>void, not accessible, with reason</source>
        <translation>ungültig, nicht erreichbar, mit Grund</translation>
    </message>
    <message>
        <source>at rest, flexed, taped, bagged, other</source>
        <translation>in Ruhe, gebogen, abgeklebt, eingebeutelt, anders</translation>
    </message>
    <message>
        <source>correct the last one</source>
        <translation>den letzten berichtigen</translation>
    </message>
    <message>
        <source>jump to a number, skip</source>
        <translation>zu einer Nummer springen, auslassen</translation>
    </message>
    <message>
        <source>type the background</source>
        <translation>Untergrund eintippen</translation>
    </message>
    <message>
        <source>take the advice, go on anyway</source>
        <translation>Rat annehmen, trotzdem weiter</translation>
    </message>
    <message>
        <source>step through the findings</source>
        <translation>durch die Befunde gehen</translation>
    </message>
    <message>
        <source>why, and back</source>
        <translation>warum, und zurück</translation>
    </message>
    <message>
        <source>tick for repair</source>
        <translation>zur Reparatur ankreuzen</translation>
    </message>
    <message>
        <source>echoes in or out, as found or as left</source>
        <translation>Echos drin oder draußen, vorgefunden oder hinterlassen</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>log repairs for the ticks</source>
        <translation>Reparaturen für die Kreuze eintragen</translation>
    </message>
    <message>
        <source>step through the questions</source>
        <translation>durch die Fragen gehen</translation>
    </message>
    <message>
        <source>open the place</source>
        <translation>die Stelle öffnen</translation>
    </message>
    <message>
        <source>send back</source>
        <translation>zurückgeben</translation>
    </message>
    <message>
        <source>approve and lock</source>
        <translation>freigeben und sperren</translation>
    </message>
    <message>
        <source>find objects and jobs</source>
        <translation>Objekte und Aufträge finden</translation>
    </message>
    <message>
        <source>open the job</source>
        <translation>den Auftrag öffnen</translation>
    </message>
    <message>
        <source>compare the marked jobs</source>
        <translation>die markierten Aufträge vergleichen</translation>
    </message>
    <message>
        <source>comparing: swap sides</source>
        <translation>Vergleich: Seiten tauschen</translation>
    </message>
    <message>
        <source>comparing: as found or as left, sheets</source>
        <translation>Vergleich: vorgefunden oder hinterlassen, Blätter</translation>
    </message>
    <message>
        <source>comparing: both maps in one place while held</source>
        <translation>Vergleich: beide Karten an einer Stelle, solange gehalten</translation>
    </message>
    <message>
        <source>report as PDF; in Sketch the blank sheet on paper</source>
        <translation>Bericht als PDF; beim Skizzieren das leere Blatt auf Papier</translation>
    </message>
    <message>
        <source>sheet larger, smaller, whole</source>
        <translation>Blatt größer, kleiner, ganz</translation>
    </message>
    <message>
        <source>move the sheet, zoom at the cursor</source>
        <translation>Blatt verschieben, am Zeiger zoomen</translation>
    </message>
    <message>
        <source>renumber, before the first reading</source>
        <translation>neu nummerieren, vor der ersten Messung</translation>
    </message>
    <message>
        <source>reverse the sense, start here</source>
        <translation>Laufsinn umkehren, hier beginnen</translation>
    </message>
    <message>
        <source>look back and forth; with a number: its exponent</source>
        <translation>vor und zurück schauen; mit einer Zahl: ihr Exponent</translation>
    </message>
    <message>
        <source>remark on the reading that comes</source>
        <translation>Bemerkung zur nächsten Messung</translation>
    </message>
    <message>
        <source>distance view, say the call again</source>
        <translation>Fernansicht, Aufruf noch einmal sagen</translation>
    </message>
    <message>
        <source>what settles the open points: make it the next round</source>
        <translation>was die offenen Punkte klärt: zur nächsten Runde machen</translation>
    </message>
    <message>
        <source>void the points taken while the background moved</source>
        <translation>Punkte verwerfen, die bei wanderndem Untergrund gemessen wurden</translation>
    </message>
    <message>
        <source>repairs: what is open, before and after</source>
        <translation>Reparaturen: was offen ist, vorher und nachher</translation>
    </message>
    <message>
        <source>a verdict of one&apos;s own, a concession</source>
        <translation>ein eigenes Urteil, eine Sonderfreigabe</translation>
    </message>
    <message>
        <source>in a narrow window: the parts of the page in turn</source>
        <translation>im schmalen Fenster: die Teile der Seite der Reihe nach</translation>
    </message>
    <message>
        <source>not tested, with reason; confirm a response</source>
        <translation>nicht geprüft, mit Grund; eine Reaktion bestätigen</translation>
    </message>
    <message>
        <source>comparing: side by side, or laid over one another</source>
        <translation>Vergleich: nebeneinander oder übereinandergelegt</translation>
    </message>
    <message>
        <source>word on the question, remark on its point</source>
        <translation>Wort zur Frage, Bemerkung zu ihrem Punkt</translation>
    </message>
    <message>
        <source>look at the report, print it</source>
        <translation>Bericht ansehen, drucken</translation>
    </message>
    <message>
        <source>comparing: a proposed match, or two marked rows, are the same place, or not</source>
        <translation>Vergleich: ein Vorschlag oder zwei markierte Zeilen sind dieselbe Stelle, oder nicht</translation>
    </message>
    <message>
        <source>drawing one: with its flange or door, or without</source>
        <translation>beim Zeichnen: mit Flansch oder Tür, oder ohne</translation>
    </message>
    <message>
        <source>row of the chosen joint; O: circle, or row again</source>
        <translation>Reihe der gewählten Fügestelle; O: Kreis, wieder Reihe</translation>
    </message>
    <message>
        <source>type a size while a tool is in hand, the next size</source>
        <translation>Maß tippen, solange ein Werkzeug in der Hand ist, das nächste Maß</translation>
    </message>
    <message>
        <source>take the size, lay points, finish the tool</source>
        <translation>Maß übernehmen, Punkte legen, Werkzeug beenden</translation>
    </message>
    <message>
        <source>move 1 mm; with Shift 10 mm, with Ctrl 100 mm</source>
        <translation>1 mm bewegen; mit Umschalt 10 mm, mit Strg 100 mm</translation>
    </message>
    <message>
        <source>a click where the hand is: sets a node, takes a joint</source>
        <translation>ein Klick, wo die Hand ist: setzt Knoten, nimmt Fügestellen</translation>
    </message>
    <message>
        <source>previous, next joint; with Shift its points</source>
        <translation>vorige, nächste Fügestelle; mit Umschalt ihre Punkte</translation>
    </message>
    <message>
        <source>next, previous node of a free line: arrows move it, digits place it</source>
        <translation>nächster, voriger Knoten einer freien Linie: Pfeile bewegen, Ziffern setzen ihn</translation>
    </message>
    <message>
        <source>with a node: a node more, take it out</source>
        <translation>mit einem Knoten: einer mehr, ihn herausnehmen</translation>
    </message>
    <message>
        <source>lock or unlock, mirror</source>
        <translation>sperren oder entsperren, spiegeln</translation>
    </message>
    <message>
        <source>turn by 15°</source>
        <translation>um 15° drehen</translation>
    </message>
    <message>
        <source>copy, cut, paste</source>
        <translation>kopieren, ausschneiden, einfügen</translation>
    </message>
    <message>
        <source>select all of the sheet</source>
        <translation>alles auf dem Blatt wählen</translation>
    </message>
    <message>
        <source>group, ungroup</source>
        <translation>zur Gruppe machen, lösen</translation>
    </message>
    <message>
        <source>new sheet</source>
        <translation>neues Blatt</translation>
    </message>
    <message>
        <source>previous, next sheet</source>
        <translation>voriges, nächstes Blatt</translation>
    </message>
    <message>
        <source>rulers on or off</source>
        <translation>Lineale ein oder aus</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Ins</source>
        <translation>Einfg</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>Bild↑</translation>
    </message>
    <message>
        <source>PgDn</source>
        <translation>Bild↓</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>arrows</source>
        <translation>Pfeile</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>ziehen</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>type</source>
        <translation>tippen</translation>
    </message>
    <message>
        <source>take the feed&apos;s highest</source>
        <translation>den Höchstwert der Leitung nehmen</translation>
    </message>
    <message>
        <source>first rise: spraying now, else typed in seconds</source>
        <translation>erster Anstieg: beim Sprühen jetzt, sonst in Sekunden getippt</translation>
    </message>
    <message>
        <source>mark; the second one opens the comparison</source>
        <translation>merken; der zweite öffnet den Vergleich</translation>
    </message>
    <message>
        <source>mark only: three jobs or more for Ctrl+Enter</source>
        <translation>nur merken: drei Aufträge und mehr für Strg+Eingabe</translation>
    </message>
    <message>
        <source>comparing: changes, worst joints, totals over the years</source>
        <translation>im Vergleich: Änderungen, schlechteste Fügestellen, Summen über die Jahre</translation>
    </message>
    <message>
        <source>points taped or bagged off while others are sprayed</source>
        <translation>Punkte, die abgeklebt oder eingebeutelt sind, während andere besprüht werden</translation>
    </message>
</context>
<context>
    <name>NameFirst</name>
    <message>
        <source>Say first who is at this window (Ctrl+L); what is decided here stands under a name.</source>
        <translation>Erst sagen, wer an diesem Fenster ist (Strg+L); was hier entschieden wird, steht unter einem Namen.</translation>
    </message>
</context>
<context>
    <name>OwedWords</name>
    <message>
        <source>%1 what earlier responses and the room left</source>
        <translation>%1 Reste früherer Antworten und der Raumluft</translation>
    </message>
    <message>
        <source>%1 helium that reached point %2</source>
        <translation>%1 Helium, das Punkt %2 erreichte</translation>
    </message>
    <message>
        <source>Of its reading: %1.</source>
        <translation>Von seiner Ablesung: %1.</translation>
    </message>
</context>
<context>
    <name>QFileDialog</name>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
</context>
<context>
    <name>SetupPanel</name>
    <message>
        <source>%1 l</source>
        <translation>%1 l</translation>
    </message>
    <message>
        <source>volume not stated</source>
        <translation>Volumen nicht angegeben</translation>
    </message>
    <message>
        <source>own pumps</source>
        <translation>eigene Pumpen</translation>
    </message>
    <message>
        <source>%1 l/s air</source>
        <translation>%1 l/s Luft</translation>
    </message>
    <message>
        <source>%1 l/s helium</source>
        <translation>%1 l/s Helium</translation>
    </message>
    <message>
        <source>speed not stated</source>
        <translation>Saugvermögen nicht angegeben</translation>
    </message>
    <message>
        <source>reference leak %1</source>
        <translation>Prüfleck %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>place not stated</source>
        <translation>Ort nicht angegeben</translation>
    </message>
    <message>
        <source>connection not stated</source>
        <translation>Anschluss nicht angegeben</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>bore %1 mm</source>
        <translation>%1 mm weit</translation>
    </message>
    <message>
        <source>bore not stated</source>
        <translation>Weite nicht angegeben</translation>
    </message>
    <message>
        <source>%1 m long</source>
        <translation>%1 m lang</translation>
    </message>
    <message>
        <source>length not stated</source>
        <translation>Länge nicht angegeben</translation>
    </message>
    <message>
        <source>size not stated</source>
        <translation>Maße nicht angegeben</translation>
    </message>
    <message>
        <source>%1 mbar inside</source>
        <translation>%1 mbar darin</translation>
    </message>
    <message>
        <source>pump in parallel</source>
        <translation>Pumpe parallel</translation>
    </message>
    <message>
        <source>detector %1</source>
        <translation>Lecksucher %1</translation>
    </message>
    <message>
        <source>detector, not named</source>
        <translation>Lecksucher, nicht benannt</translation>
    </message>
    <message>
        <source>zero on</source>
        <translation>Nullabzug an</translation>
    </message>
</context>
<context>
    <name>Shown</name>
    <message>
        <source>%1 He</source>
        <translation>%1 He</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
</context>
<context>
    <name>SketchEdits</name>
    <message>
        <source>%1 drawn</source>
        <translation>%1 gezeichnet</translation>
    </message>
    <message>
        <source>%1 drawn, %2 point laid</source>
        <translation>%1 gezeichnet, %2 Punkt gelegt</translation>
    </message>
    <message>
        <source>%1 drawn, %2 points laid</source>
        <translation>%1 gezeichnet, %2 Punkte gelegt</translation>
    </message>
    <message>
        <source>%1 drawn with its flange</source>
        <translation>%1 mit Flansch gezeichnet</translation>
    </message>
    <message>
        <source>%1 drawn with its door</source>
        <translation>%1 mit Tür gezeichnet</translation>
    </message>
    <message>
        <source>row of %1 ports drawn</source>
        <translation>Reihe von %1 Stutzen gezeichnet</translation>
    </message>
    <message>
        <source>%1 pasted</source>
        <translation>%1 eingefügt</translation>
    </message>
    <message>
        <source>%1 moved</source>
        <translation>%1 verschoben</translation>
    </message>
    <message>
        <source>%1 turned</source>
        <translation>%1 gedreht</translation>
    </message>
    <message>
        <source>%1 mirrored</source>
        <translation>%1 gespiegelt</translation>
    </message>
    <message>
        <source>%1 copied to %2 in all</source>
        <translation>%1 vervielfältigt, %2 im Ganzen</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 geändert</translation>
    </message>
    <message>
        <source>%1 grouped</source>
        <translation>%1 zur Gruppe gemacht</translation>
    </message>
    <message>
        <source>%1 ungrouped</source>
        <translation>%1 aus der Gruppe gelöst</translation>
    </message>
    <message>
        <source>%1 locked</source>
        <translation>%1 gesperrt</translation>
    </message>
    <message>
        <source>%1 unlocked</source>
        <translation>%1 entsperrt</translation>
    </message>
    <message>
        <source>%1 deleted</source>
        <translation>%1 gelöscht</translation>
    </message>
    <message>
        <source>%1 retired</source>
        <translation>%1 stillgelegt</translation>
    </message>
    <message>
        <source>%1 point laid on %2</source>
        <translation>%1 Punkt auf %2 gelegt</translation>
    </message>
    <message>
        <source>%1 points laid on %2</source>
        <translation>%1 Punkte auf %2 gelegt</translation>
    </message>
    <message>
        <source>point %1 added on %2</source>
        <translation>Punkt %1 auf %2 hinzugefügt</translation>
    </message>
    <message>
        <source>stretch of point %1 split, point %2 added</source>
        <translation>Abschnitt von Punkt %1 geteilt, Punkt %2 hinzugefügt</translation>
    </message>
    <message>
        <source>point %1 moved</source>
        <translation>Punkt %1 verschoben</translation>
    </message>
    <message>
        <source>point %1 moved; &quot;%2&quot; was said of its old place</source>
        <translation>Punkt %1 verschoben; „%2“ galt für den alten Ort</translation>
    </message>
    <message>
        <source>place of point %1 described</source>
        <translation>Ort von Punkt %1 beschrieben</translation>
    </message>
    <message>
        <source>point %1 retired</source>
        <translation>Punkt %1 stillgelegt</translation>
    </message>
    <message>
        <source>point %1 deleted</source>
        <translation>Punkt %1 gelöscht</translation>
    </message>
    <message>
        <source>point %1 brought back</source>
        <translation>Punkt %1 zurückgeholt</translation>
    </message>
    <message>
        <source>points numbered from 1 to %1</source>
        <translation>Punkte von 1 bis %1 nummeriert</translation>
    </message>
    <message>
        <source>%1 numbered along its walk</source>
        <translation>%1 seinem Lauf nach nummeriert</translation>
    </message>
    <message>
        <source>%1 numbered the other way</source>
        <translation>%1 andersherum nummeriert</translation>
    </message>
    <message>
        <source>%1 numbered from another start</source>
        <translation>%1 von anderem Anfang nummeriert</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; added</source>
        <translation>Blatt „%1“ hinzugefügt</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; changed</source>
        <translation>Blatt „%1“ geändert</translation>
    </message>
    <message>
        <source>sheet &quot;%1&quot; taken out</source>
        <translation>Blatt „%1“ herausgenommen</translation>
    </message>
    <message>
        <source>%1 joints</source>
        <translation>%1 Fügestellen</translation>
    </message>
    <message>
        <source>valve seat, tested across with the valve shut</source>
        <translation>Ventilsitz, bei geschlossenem Ventil über ihn geprüft</translation>
    </message>
    <message>
        <source>bonnet of the valve</source>
        <translation>Haube des Ventils</translation>
    </message>
    <message>
        <source>bellows inside the valve&apos;s stem</source>
        <translation>Balg in der Ventilspindel</translation>
    </message>
    <message>
        <source>inner bellows or shaft seal of the feedthrough</source>
        <translation>innerer Balg oder Wellendichtung der Durchführung</translation>
    </message>
    <message>
        <source>each pin or ceramic, apart from the flange</source>
        <translation>jeder Stift oder jede Keramik, neben dem Flansch</translation>
    </message>
    <message>
        <source>gland or shaft near the door: hinge side, handle</source>
        <translation>Stopfbuchse oder Welle nahe der Tür: Scharnierseite, Griff</translation>
    </message>
    <message>
        <source>leak-check port between double seals</source>
        <translation>Prüfanschluss zwischen Doppeldichtungen</translation>
    </message>
    <message>
        <source>clamp ring of the view glass</source>
        <translation>Spannring des Schauglases</translation>
    </message>
    <message>
        <source>ferrules at both ends of the hose</source>
        <translation>Hülsen an beiden Enden des Schlauchs</translation>
    </message>
    <message>
        <source>end cuffs of the bellows</source>
        <translation>Endstücke des Balgs</translation>
    </message>
    <message>
        <source>water circuit: helium inside it, drained and dried</source>
        <translation>Wasserkreis: Helium hinein, entleert und getrocknet</translation>
    </message>
    <message>
        <source>crater ends and stops of the weld</source>
        <translation>Endkrater und Ansätze der Naht</translation>
    </message>
    <message>
        <source>relief valve or burst disc</source>
        <translation>Sicherheitsventil oder Berstscheibe</translation>
    </message>
    <message>
        <source>gauge and vent fittings, caps and blanks</source>
        <translation>Anschlüsse für Messröhre und Belüftung, Kappen und Blindstopfen</translation>
    </message>
    <message>
        <source>test hose of the detector</source>
        <translation>Prüfschlauch des Lecksuchers</translation>
    </message>
    <message>
        <source>set-up connections: tee, clamps, detector inlet</source>
        <translation>Verbindungen des Aufbaus: T-Stück, Klammern, Eingang des Lecksuchers</translation>
    </message>
    <message>
        <source>Valve seat</source>
        <translation>Ventilsitz</translation>
    </message>
    <message>
        <source>Valve bonnet</source>
        <translation>Ventildeckel</translation>
    </message>
    <message>
        <source>Stem bellows</source>
        <translation>Spindelbalg</translation>
    </message>
    <message>
        <source>Inner bellows</source>
        <translation>Innerer Balg</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>Handle shaft</source>
        <translation>Griffwelle</translation>
    </message>
    <message>
        <source>Seal interspace</source>
        <translation>Dichtungszwischenraum</translation>
    </message>
    <message>
        <source>View-glass clamp ring</source>
        <translation>Schauglas-Klemmring</translation>
    </message>
    <message>
        <source>Hose ferrule</source>
        <translation>Schlauchhülse</translation>
    </message>
    <message>
        <source>Bellows cuff</source>
        <translation>Balgmanschette</translation>
    </message>
    <message>
        <source>Water circuit</source>
        <translation>Wasserkreis</translation>
    </message>
    <message>
        <source>Weld end</source>
        <translation>Nahtende</translation>
    </message>
    <message>
        <source>Relief valve</source>
        <translation>Sicherheitsventil</translation>
    </message>
    <message>
        <source>Vent fitting</source>
        <translation>Belüftungsanschluss</translation>
    </message>
    <message>
        <source>Test hose</source>
        <translation>Prüfschlauch</translation>
    </message>
    <message>
        <source>Detector inlet</source>
        <translation>Lecksuchereinlass</translation>
    </message>
</context>
<context>
    <name>SketchMenu</name>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>A&amp;lles wählen</translation>
    </message>
    <message>
        <source>&amp;Group</source>
        <translation>Zur &amp;Gruppe machen</translation>
    </message>
    <message>
        <source>U&amp;ngroup</source>
        <translation>Gruppe l&amp;ösen</translation>
    </message>
    <message>
        <source>&amp;Lock or unlock</source>
        <translation>&amp;Sperren oder entsperren</translation>
    </message>
    <message>
        <source>&amp;Mirror</source>
        <translation>S&amp;piegeln</translation>
    </message>
    <message>
        <source>Turn l&amp;eft</source>
        <translation>&amp;Links drehen</translation>
    </message>
    <message>
        <source>Turn r&amp;ight</source>
        <translation>&amp;Rechts drehen</translation>
    </message>
    <message>
        <source>Retire or &amp;delete</source>
        <translation>S&amp;tilllegen oder löschen</translation>
    </message>
    <message>
        <source>Renum&amp;ber</source>
        <translation>&amp;Neu nummerieren</translation>
    </message>
    <message>
        <source>Reverse the &amp;sense</source>
        <translation>An&amp;dersherum</translation>
    </message>
    <message>
        <source>Number from &amp;here</source>
        <translation>Von &amp;hier an zählen</translation>
    </message>
</context>
<context>
    <name>SketchPainter</name>
    <message>
        <source> (locked)</source>
        <translation> (gesperrt)</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>Prüfaufbau</translation>
    </message>
    <message>
        <source>%1 (set-up)</source>
        <translation>%1 (Prüfaufbau)</translation>
    </message>
</context>
<context>
    <name>SketchWords</name>
    <message>
        <source>Ring with its flange</source>
        <translation>Ring mit Flansch</translation>
    </message>
    <message>
        <source>Ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>ziehen</translation>
    </message>
    <message>
        <source>middle to rim</source>
        <translation>von der Mitte zum Rand</translation>
    </message>
    <message>
        <source>type the diameter</source>
        <translation>Durchmesser tippen</translation>
    </message>
    <message>
        <source>without flange</source>
        <translation>ohne Flansch</translation>
    </message>
    <message>
        <source>with its flange</source>
        <translation>mit Flansch</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>lay points</source>
        <translation>Punkte legen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>lassen</translation>
    </message>
    <message>
        <source>Rounded rectangle with its door</source>
        <translation>Rechteck mit Tür</translation>
    </message>
    <message>
        <source>Rounded rectangle</source>
        <translation>Rechteck mit Ecken</translation>
    </message>
    <message>
        <source>corner to corner</source>
        <translation>von Ecke zu Ecke</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>square</source>
        <translation>quadratisch</translation>
    </message>
    <message>
        <source>type a size</source>
        <translation>Maß tippen</translation>
    </message>
    <message>
        <source>without door</source>
        <translation>ohne Tür</translation>
    </message>
    <message>
        <source>with its door</source>
        <translation>mit Tür</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>Closed path</source>
        <translation>Geschlossene Linie</translation>
    </message>
    <message>
        <source>Open path</source>
        <translation>Offene Linie</translation>
    </message>
    <message>
        <source>click</source>
        <translation>klicken</translation>
    </message>
    <message>
        <source>node after node</source>
        <translation>Knoten für Knoten</translation>
    </message>
    <message>
        <source>straight and 45°</source>
        <translation>gerade und 45°</translation>
    </message>
    <message>
        <source>length, Tab, angle</source>
        <translation>Länge, Tab, Winkel</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>last node away</source>
        <translation>letzten Knoten weg</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>A closed path needs at least three nodes; click the next one.</source>
        <translation>Eine geschlossene Linie braucht mindestens drei Knoten; den nächsten klicken.</translation>
    </message>
    <message>
        <source>An open path needs at least two nodes; click the next one.</source>
        <translation>Eine offene Linie braucht mindestens zwei Knoten; den nächsten klicken.</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>There is no joint under the cursor; put it on a joint.</source>
        <translation>Unter dem Zeiger ist keine Fügestelle; ihn auf eine setzen.</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>place it with its point</source>
        <translation>mit ihrem Punkt setzen</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>on a joint</source>
        <translation>auf eine Fügestelle</translation>
    </message>
    <message>
        <source>Split a stretch</source>
        <translation>Abschnitt teilen</translation>
    </message>
    <message>
        <source>where the stretch is to be cut</source>
        <translation>wo der Abschnitt geteilt wird</translation>
    </message>
    <message>
        <source>Circle of the chosen joint</source>
        <translation>Kreis der gewählten Fügestelle</translation>
    </message>
    <message>
        <source>Row of the chosen joint</source>
        <translation>Reihe der gewählten Fügestelle</translation>
    </message>
    <message>
        <source>move</source>
        <translation>bewegen</translation>
    </message>
    <message>
        <source>middle of the circle</source>
        <translation>Mitte des Kreises</translation>
    </message>
    <message>
        <source>place of the next one</source>
        <translation>Ort der nächsten</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>how many, Tab, spacing</source>
        <translation>wie viele, Tab, Abstand</translation>
    </message>
    <message>
        <source>a row instead</source>
        <translation>Reihe stattdessen</translation>
    </message>
    <message>
        <source>a circle instead</source>
        <translation>Kreis stattdessen</translation>
    </message>
    <message>
        <source>draw them</source>
        <translation>zeichnen</translation>
    </message>
    <message>
        <source>Choose the joint to be repeated first (V), then press P again.</source>
        <translation>Zuerst die Fügestelle wählen (V), die wiederholt wird, dann noch einmal P.</translation>
    </message>
    <message>
        <source>spacing</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Select</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>move along the joint</source>
        <translation>entlang der Fügestelle schieben</translation>
    </message>
    <message>
        <source>split</source>
        <translation>teilen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>retire</source>
        <translation>stilllegen</translation>
    </message>
    <message>
        <source>a joint or point</source>
        <translation>eine Fügestelle oder einen Punkt</translation>
    </message>
    <message>
        <source>a frame round several</source>
        <translation>einen Rahmen um mehrere</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>zoom</source>
        <translation>größer, kleiner</translation>
    </message>
    <message>
        <source>Space+drag</source>
        <translation>Leertaste+ziehen</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>Blatt schieben</translation>
    </message>
    <message>
        <source>arrows</source>
        <translation>Pfeile</translation>
    </message>
    <message>
        <source>1 mm, Shift 10 mm</source>
        <translation>1 mm, Umschalt 10 mm</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>drehen</translation>
    </message>
    <message>
        <source>mirror</source>
        <translation>spiegeln</translation>
    </message>
    <message>
        <source>There are points on it already; the panel at the right lays them anew.</source>
        <translation>Es liegen schon Punkte darauf; das Feld rechts legt sie neu.</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>Choose a point or a joint first; Del then retires it.</source>
        <translation>Zuerst einen Punkt oder eine Fügestelle wählen; Entf legt sie dann still.</translation>
    </message>
    <message>
        <source>Choose the joint first; D then numbers it the other way.</source>
        <translation>Zuerst die Fügestelle wählen; D nummeriert sie dann andersherum.</translation>
    </message>
    <message>
        <source>Choose the joint first; Shift+D then starts numbering under the cursor.</source>
        <translation>Zuerst die Fügestelle wählen; Umschalt+D beginnt dann unter dem Zeiger zu zählen.</translation>
    </message>
    <message>
        <source>Choose joints first; then they can be copied.</source>
        <translation>Zuerst Fügestellen wählen; dann lassen sie sich kopieren.</translation>
    </message>
    <message>
        <source>Copied; Ctrl+V puts it on this or another sheet.</source>
        <translation>Kopiert; Strg+V setzt es auf dieses oder ein anderes Blatt.</translation>
    </message>
    <message>
        <source>Picture underneath</source>
        <translation>Bild unterlegen</translation>
    </message>
    <message>
        <source>move it</source>
        <translation>verschieben</translation>
    </message>
    <message>
        <source>another picture</source>
        <translation>anderes Bild</translation>
    </message>
    <message>
        <source>scale it</source>
        <translation>Maßstab setzen</translation>
    </message>
    <message>
        <source>take it away</source>
        <translation>wegnehmen</translation>
    </message>
    <message>
        <source>Scale of the picture</source>
        <translation>Maßstab des Bildes</translation>
    </message>
    <message>
        <source>type the true length between the clicks, mm</source>
        <translation>wahre Länge zwischen den Klicks tippen, mm</translation>
    </message>
    <message>
        <source>set the scale</source>
        <translation>Maßstab setzen</translation>
    </message>
    <message>
        <source>the other end of the length</source>
        <translation>das andere Ende der Länge</translation>
    </message>
    <message>
        <source>one end of a length you know</source>
        <translation>ein Ende einer bekannten Länge</translation>
    </message>
    <message>
        <source>There is no picture under this sheet; press U to choose one.</source>
        <translation>Unter diesem Blatt liegt kein Bild; mit U eins wählen.</translation>
    </message>
    <message>
        <source>The two clicks lie on one place; click the ends of a length you know, far apart.</source>
        <translation>Beide Klicks liegen auf einer Stelle; die Enden einer bekannten Länge klicken, weit auseinander.</translation>
    </message>
    <message>
        <source>Type the true length in millimetres, then Enter.</source>
        <translation>Die wahre Länge in Millimetern tippen, dann Eingabe.</translation>
    </message>
    <message>
        <source>true length</source>
        <translation>wahre Länge</translation>
    </message>
    <message>
        <source>scale of the picture set</source>
        <translation>Maßstab des Bildes gesetzt</translation>
    </message>
    <message>
        <source>Type the true length between the two clicks first.</source>
        <translation>Zuerst die wahre Länge zwischen den beiden Klicks tippen.</translation>
    </message>
    <message>
        <source>Click both ends of a length you know first.</source>
        <translation>Zuerst beide Enden einer bekannten Länge klicken.</translation>
    </message>
    <message>
        <source>Point %1 is there already.</source>
        <translation>Dort ist schon Punkt %1.</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>%1 is there already; put this one beside it.</source>
        <translation>Dort ist schon %1; diese daneben setzen.</translation>
    </message>
    <message>
        <source>Node %1 of %2, at %3 across, %4 up</source>
        <translation>Knoten %1 von %2, bei %3 quer, %4 hoch</translation>
    </message>
    <message>
        <source>next node</source>
        <translation>nächster Knoten</translation>
    </message>
    <message>
        <source>type its place</source>
        <translation>Ort tippen</translation>
    </message>
    <message>
        <source>Ins</source>
        <translation>Einfg</translation>
    </message>
    <message>
        <source>a node more</source>
        <translation>ein Knoten mehr</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>herausnehmen</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>up</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>Choose a free line or a hose that is not locked first; E then steps through its nodes.</source>
        <translation>Zuerst eine freie Linie oder einen Schlauch wählen, nicht gesperrt; E geht dann seine Knoten durch.</translation>
    </message>
    <message>
        <source>A closed line keeps at least three nodes.</source>
        <translation>Eine geschlossene Linie behält mindestens drei Knoten.</translation>
    </message>
    <message>
        <source>An open line keeps at least two nodes.</source>
        <translation>Eine offene Linie behält mindestens zwei Knoten.</translation>
    </message>
    <message>
        <source>The points of this joint are numbered along its walk already; other numbers: First, then lay them anew.</source>
        <translation>Die Punkte dieser Fügestelle sind schon entlang ihres Wegs nummeriert; andere Nummern: Erste, dann neu setzen.</translation>
    </message>
    <message>
        <source>All points are numbered along the joints already.</source>
        <translation>Alle Punkte sind schon entlang der Fügestellen nummeriert.</translation>
    </message>
</context>
<context>
    <name>SprayWords</name>
    <message>
        <source>GO</source>
        <translation>LOS</translation>
    </message>
    <message>
        <source>SPRAY</source>
        <translation>SPRÜHEN</translation>
    </message>
    <message>
        <source>READ</source>
        <translation>LESEN</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation>WARTEN</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation>HALT</translation>
    </message>
    <message>
        <source>Space starts the spray</source>
        <translation>Leertaste beginnt</translation>
    </message>
    <message>
        <source>helium on, move along the stretch</source>
        <translation>Helium an, den Abschnitt entlang</translation>
    </message>
    <message>
        <source>type the highest value</source>
        <translation>den Höchstwert eintippen</translation>
    </message>
    <message>
        <source>helium of the last point clears</source>
        <translation>Helium zieht noch ab</translation>
    </message>
    <message>
        <source>the background moves</source>
        <translation>der Untergrund bewegt sich</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation>in Ruhe</translation>
    </message>
    <message>
        <source>flexed</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>extended</source>
        <translation>ausgezogen</translation>
    </message>
    <message>
        <source>turned</source>
        <translation>gedreht</translation>
    </message>
    <message>
        <source>hot</source>
        <translation>heiß</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>kalt</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>dried</source>
        <translation>getrocknet</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>half open</source>
        <translation>halb offen</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>taped</source>
        <translation>abgeklebt</translation>
    </message>
    <message>
        <source>bagged</source>
        <translation>eingebeutelt</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anders</translation>
    </message>
    <message>
        <source>background moved</source>
        <translation>Untergrund bewegt</translation>
    </message>
    <message>
        <source>drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <source>wrong place</source>
        <translation>falsche Stelle</translation>
    </message>
    <message>
        <source>helium low</source>
        <translation>zu wenig Helium</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>behind the frame</source>
        <translation>hinter dem Rahmen</translation>
    </message>
    <message>
        <source>too hot</source>
        <translation>zu heiß</translation>
    </message>
    <message>
        <source>no safe reach</source>
        <translation>nicht sicher erreichbar</translation>
    </message>
    <message>
        <source>helium hangs there</source>
        <translation>dort hängt Helium</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Betrieb</translation>
    </message>
    <message>
        <source>needs a second person</source>
        <translation>braucht eine zweite Person</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>above range</source>
        <translation>über dem Bereich</translation>
    </message>
    <message>
        <source>no access</source>
        <translation>nicht erreichbar</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>nothing left to spray</source>
        <translation>nichts mehr zu sprühen</translation>
    </message>
    <message numerus="yes">
        <source>about %n min left</source>
        <translation>
            <numerusform>etwa %n min übrig</numerusform>
            <numerusform>etwa %n min übrig</numerusform>
        </translation>
    </message>
    <message>
        <source>left out by agreement</source>
        <translation>nach Absprache ausgelassen</translation>
    </message>
    <message>
        <source>under repair</source>
        <translation>in Reparatur</translation>
    </message>
    <message>
        <source>no time left</source>
        <translation>keine Zeit mehr</translation>
    </message>
</context>
<context>
    <name>Stage</name>
    <message>
        <source>Prepare</source>
        <translation>Vorbereiten</translation>
    </message>
    <message>
        <source>Sketch</source>
        <translation>Skizze</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Sprühen</translation>
    </message>
    <message>
        <source>Judge</source>
        <translation>Beurteilen</translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historie</translation>
    </message>
</context>
<context>
    <name>ToolRail</name>
    <message>
        <source>Select</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>Ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>Rounded rectangle</source>
        <translation>Rechteck mit Ecken</translation>
    </message>
    <message>
        <source>Free closed path</source>
        <translation>Freier geschlossener Zug</translation>
    </message>
    <message>
        <source>Open path, such as a weld</source>
        <translation>Offener Zug, etwa eine Naht</translation>
    </message>
    <message>
        <source>Spot fitting</source>
        <translation>Einzelne Stelle</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>Row or circle of the chosen joint</source>
        <translation>Reihe oder Kreis der gewählten Fügestelle</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>Split a stretch</source>
        <translation>Abschnitt teilen</translation>
    </message>
    <message>
        <source>Retire the chosen</source>
        <translation>Gewähltes stilllegen</translation>
    </message>
    <message>
        <source>Renumber</source>
        <translation>Neu nummerieren</translation>
    </message>
    <message>
        <source>Picture underneath</source>
        <translation>Bild unterlegen</translation>
    </message>
    <message>
        <source>Scale by two clicks</source>
        <translation>Maßstab aus zwei Klicks</translation>
    </message>
</context>
<context>
    <name>TraceFigure</name>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Live trace</source>
        <translation>Laufende Kurve</translation>
    </message>
    <message>
        <source>no value in the last minute</source>
        <translation>kein Wert in der letzten Minute</translation>
    </message>
    <message>
        <source>limit, as shown</source>
        <translation>Grenzwert, wie angezeigt</translation>
    </message>
    <message>
        <source>last value %1 %2, %3 sprays in view</source>
        <translation>letzter Wert %1 %2, %3 Besprühungen im Bild</translation>
    </message>
    <message>
        <source>the display shows zero or below</source>
        <translation>die Anzeige steht auf null oder darunter</translation>
    </message>
</context>
<context>
    <name>sealwalk::render::DecadeRuler</name>
    <message>
        <source>Decade ruler</source>
        <translation>Dekadenlineal</translation>
    </message>
</context>
<context>
    <name>sealwalk::render::PlotView</name>
    <message>
        <source>Plot</source>
        <translation>Kurve</translation>
    </message>
</context>
<context>
    <name>sealwalk::render::SetupView</name>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
</context>
<context>
    <name>sealwalk::render::SheetView</name>
    <message>
        <source>Leak map</source>
        <translation>Leckkarte</translation>
    </message>
    <message numerus="yes">
        <source>%n number(s) without room: zoom in</source>
        <translation>
            <numerusform>%n Nummer ohne Platz: vergrößern</numerusform>
            <numerusform>%n Nummern ohne Platz: vergrößern</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>sealwalk::ui</name>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Fügestelle</translation>
    </message>
    <message>
        <source>object</source>
        <translation>Objekt</translation>
    </message>
    <message>
        <source>Correct the entry; nothing was stored.</source>
        <translation>Eintrag berichtigen; gespeichert wurde nichts.</translation>
    </message>
    <message>
        <source>Check the name or look it up in History.</source>
        <translation>Namen prüfen oder in der Historie nachsehen.</translation>
    </message>
    <message>
        <source>Update this program; the file was left untouched.</source>
        <translation>Dieses Programm erneuern; die Datei blieb unberührt.</translation>
    </message>
    <message>
        <source>Choose a Sealwalk file; this one was left untouched.</source>
        <translation>Eine Sealwalk-Datei wählen; diese blieb unberührt.</translation>
    </message>
    <message>
        <source>Take the last backup; the file was left untouched.</source>
        <translation>Die letzte Sicherung nehmen; die Datei blieb unberührt.</translation>
    </message>
    <message>
        <source>Ask for the right to write there, or work on a copy.</source>
        <translation>Schreibrecht erbitten oder mit einer Kopie arbeiten.</translation>
    </message>
    <message>
        <source>Wait until the other program is done, then try again.</source>
        <translation>Warten, bis das andere Programm fertig ist, dann noch einmal.</translation>
    </message>
    <message>
        <source>Look at what changed meanwhile, then do it again.</source>
        <translation>Ansehen, was sich inzwischen geändert hat, dann noch einmal.</translation>
    </message>
    <message>
        <source>Type it again.</source>
        <translation>Noch einmal eingeben.</translation>
    </message>
    <message>
        <source>Everything is as it was.</source>
        <translation>Alles ist, wie es war.</translation>
    </message>
    <message>
        <source>Free some room or check the disk; what was on disk before is safe.</source>
        <translation>Platz schaffen oder die Platte prüfen; was vorher darauf war, ist sicher.</translation>
    </message>
    <message>
        <source>History: %1</source>
        <translation>Historie: %1</translation>
    </message>
    <message>
        <source>Job %1 was here already, unchanged.</source>
        <translation>Auftrag %1 war schon hier, unverändert.</translation>
    </message>
    <message>
        <source>Job %1 was taken in, unchanged since it was signed.</source>
        <translation>Auftrag %1 übernommen, unverändert, seit er signiert wurde.</translation>
    </message>
    <message>
        <source>Job %1 was taken in. Nobody has signed it: whether it was changed since it was written cannot be told.</source>
        <translation>Auftrag %1 übernommen. Niemand hat ihn signiert: ob er verändert wurde, seit er geschrieben wurde, lässt sich nicht sagen.</translation>
    </message>
    <message numerus="yes">
        <source>The history is not sound, %n problem(s): %1.</source>
        <translation>
            <numerusform>Die Historie ist nicht in Ordnung, %n Befund: %1.</numerusform>
            <numerusform>Die Historie ist nicht in Ordnung, %n Befunde: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Write a job file</source>
        <translation>Auftragsdatei schreiben</translation>
    </message>
    <message>
        <source>Job files (*.sealjob)</source>
        <translation>Auftragsdateien (*.sealjob)</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Geschrieben: %1.</translation>
    </message>
    <message>
        <source>Making the demo: a walk round an invented coater</source>
        <translation>Vorführung entsteht: ein Gang um eine erfundene Beschichtungskammer</translation>
    </message>
    <message>
        <source>The demo: all data invented.</source>
        <translation>Vorführung: alle Daten sind erfunden.</translation>
    </message>
    <message>
        <source>Its people sign with the passphrase “%1”.</source>
        <translation>Ihre Leute unterschreiben mit „%1“.</translation>
    </message>
    <message>
        <source>A photo or drawing</source>
        <translation>Foto oder Zeichnung</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.svg *.pdf)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.svg *.pdf)</translation>
    </message>
    <message>
        <source>Open a history</source>
        <translation>Historie öffnen</translation>
    </message>
    <message>
        <source>Histories and job files (*.sealwalk *.sealjob);;All files (*)</source>
        <translation>Historien und Auftragsdateien (*.sealwalk *.sealjob);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>New history file</source>
        <translation>Neue Historie</translation>
    </message>
    <message>
        <source>Histories (*.sealwalk)</source>
        <translation>Historien (*.sealwalk)</translation>
    </message>
    <message>
        <source>%1 exists already.</source>
        <translation>%1 gibt es schon.</translation>
    </message>
    <message>
        <source>Choose another name, or open it.</source>
        <translation>Einen anderen Namen wählen oder sie öffnen.</translation>
    </message>
    <message>
        <source>Back up the history</source>
        <translation>Historie sichern</translation>
    </message>
    <message>
        <source>Backed up to %1.</source>
        <translation>Gesichert: %1.</translation>
    </message>
    <message>
        <source>The history is sound.</source>
        <translation>Die Historie ist in Ordnung.</translation>
    </message>
    <message>
        <source>limit missing</source>
        <translation>Grenzwert fehlt</translation>
    </message>
    <message>
        <source>calibration missing</source>
        <translation>Kalibrierung fehlt</translation>
    </message>
    <message>
        <source>background missing</source>
        <translation>Untergrund fehlt</translation>
    </message>
    <message>
        <source>set up</source>
        <translation>eingerichtet</translation>
    </message>
    <message>
        <source>no sheet yet</source>
        <translation>noch kein Blatt</translation>
    </message>
    <message>
        <source>no points yet</source>
        <translation>noch keine Punkte</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>%1 of %2 points</source>
        <translation>%1 von %2 Punkten</translation>
    </message>
    <message>
        <source>%1 over, %2 cannot say</source>
        <translation>%1 darüber, %2 unklar</translation>
    </message>
    <message>
        <source>all within</source>
        <translation>alle darunter</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>eingereicht</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>first job</source>
        <translation>erster Auftrag</translation>
    </message>
    <message>
        <source>%1 (job %2)</source>
        <translation>%1 (Auftrag %2)</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, war fällig %1</translation>
    </message>
    <message>
        <source>, due %1</source>
        <translation>, fällig %1</translation>
    </message>
    <message>
        <source>Temporary repairs to make good: %1.</source>
        <translation>Noch gutzumachen, nur vorläufig repariert: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s), </source>
        <translation>
            <numerusform>%n Punkt, </numerusform>
            <numerusform>%n Punkte, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n Blatt</numerusform>
            <numerusform>%n Blätter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without answer</source>
        <translation>
            <numerusform>%n ohne Antwort</numerusform>
            <numerusform>%n ohne Antwort</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n object(s)</source>
        <translation>
            <numerusform>%n Objekt</numerusform>
            <numerusform>%n Objekte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other job(s)</source>
        <translation>
            <numerusform>%n anderer Auftrag</numerusform>
            <numerusform>%n andere Aufträge</numerusform>
        </translation>
    </message>
    <message>
        <source>job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>Overdue temporary repairs: %1.</source>
        <translation>Überfällige vorläufige Reparaturen: %1.</translation>
    </message>
    <message>
        <source>round %1: %2 of %3</source>
        <translation>Runde %1: %2 von %3</translation>
    </message>
    <message>
        <source>Checking the job file</source>
        <translation>Auftragsdatei wird geprüft</translation>
    </message>
    <message>
        <source>Writing the job file</source>
        <translation>Auftragsdatei wird geschrieben</translation>
    </message>
    <message>
        <source>Backing up the history</source>
        <translation>Historie wird gesichert</translation>
    </message>
    <message>
        <source>Checking the history</source>
        <translation>Historie wird geprüft</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keinem Grenzwert</translation>
    </message>
    <message>
        <source>Each job is judged by its own limits: those of single kinds of joint differ.</source>
        <translation>Jeder Auftrag ist nach seinen eigenen Grenzwerten beurteilt: die einzelner Arten von Stellen sind verschieden.</translation>
    </message>
    <message>
        <source>Each job is judged by its own limit: job %1 by %2, job %3 by %4.</source>
        <translation>Jeder Auftrag ist nach seinem eigenen Grenzwert beurteilt: Auftrag %1 nach %2, Auftrag %3 nach %4.</translation>
    </message>
    <message>
        <source>The limit on the scale and on the course is that of job %1.</source>
        <translation>Der Grenzwert an der Skala und im Verlauf ist der von Auftrag %1.</translation>
    </message>
    <message>
        <source>All leaks together are judged by another limit: job %1 by %2, job %3 by %4.</source>
        <translation>Alle Lecks zusammen sind nach einem anderen Grenzwert beurteilt: Auftrag %1 nach %2, Auftrag %3 nach %4.</translation>
    </message>
    <message>
        <source>temporary</source>
        <translation>vorläufig</translation>
    </message>
    <message>
        <source>concession</source>
        <translation>Sonderfreigabe</translation>
    </message>
    <message>
        <source>flexed</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>Job from elsewhere</source>
        <translation>Auftrag von anderswo</translation>
    </message>
    <message>
        <source>Job %1 is here already, and the file has it further on:
%2.

Take that in?</source>
        <translation>Auftrag %1 ist schon hier, und in der Datei ist er weiter:
%2.

Das übernehmen?</translation>
    </message>
    <message>
        <source>Nothing was taken in.</source>
        <translation>Nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>Job %1 went on: %2.</source>
        <translation>Auftrag %1 ging weiter: %2.</translation>
    </message>
    <message>
        <source>Job %1 is here already, and further on here: %2. Nothing was taken in.</source>
        <translation>Auftrag %1 ist schon hier, und hier ist er weiter: %2. Nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>This is the history that is open; choose another.</source>
        <translation>Das ist die Historie, die offen ist; eine andere wählen.</translation>
    </message>
    <message>
        <source>Taking in the jobs of another history</source>
        <translation>Die Aufträge einer anderen Historie werden übernommen</translation>
    </message>
    <message>
        <source>Cancelled; the jobs that had come until then stay.</source>
        <translation>Abgebrochen; die Aufträge, die bis dahin kamen, bleiben.</translation>
    </message>
    <message>
        <source>Take in another history</source>
        <translation>Andere Historie übernehmen</translation>
    </message>
    <message>
        <source>a point no longer drawn</source>
        <translation>ein nicht mehr gezeichneter Punkt</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>ran out on %1</source>
        <translation>ausgelaufen am %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>%1: %2, granted by %3 (job %4)</source>
        <translation>%1: %2, gewährt von %3 (Auftrag %4)</translation>
    </message>
    <message>
        <source>Concessions at their end: %1.</source>
        <translation>Sonderfreigaben am Ende: %1.</translation>
    </message>
    <message>
        <source>%1, %2: %3, was due %4, %5 (job %6)</source>
        <translation>%1, %2: %3, war fällig %4, %5 (Auftrag %6)</translation>
    </message>
    <message>
        <source>no owner named</source>
        <translation>niemand zuständig</translation>
    </message>
    <message>
        <source>New history</source>
        <translation>Neue Historie</translation>
    </message>
    <message>
        <source>There is no history %1 yet. Make it?</source>
        <translation>Die Historie %1 gibt es noch nicht. Anlegen?</translation>
    </message>
    <message>
        <source>Job %1 is here already and went on in both places, as far as can be told; they differ in: %2. Nothing was changed.</source>
        <translation>Auftrag %1 ist schon hier und ging, soweit zu erkennen, an beiden Orten weiter; verschieden sind: %2. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Make that the same in both and take it in again, or go on with one of the two and enter what the other has more.</source>
        <translation>Das in beiden gleich machen und ihn wieder aufnehmen, oder mit einem der beiden weitermachen und eintragen, was der andere mehr hat.</translation>
    </message>
    <message>
        <source>%1 of them</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>Points only in job %1: %2.</source>
        <translation>Punkte nur in Auftrag %1: %2.</translation>
    </message>
    <message numerus="yes">
        <source>within, %n not counted</source>
        <translation>
            <numerusform>darunter, %n zählt nicht</numerusform>
            <numerusform>darunter, %n zählen nicht</numerusform>
        </translation>
    </message>
    <message>
        <source>too blind to pass</source>
        <translation>zu blind zum Bestehen</translation>
    </message>
    <message>
        <source>The job that was open goes on; History has the others.</source>
        <translation>Der zuletzt offene Auftrag geht weiter; die anderen stehen unter Historie.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::AdviceCard</name>
    <message>
        <source>Advice</source>
        <translation>Rat</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::AmendmentDialog</name>
    <message>
        <source>Amendment to job %1</source>
        <translation>Nachtrag zu Auftrag %1</translation>
    </message>
    <message>
        <source>What is known now</source>
        <translation>Was jetzt bekannt ist</translation>
    </message>
    <message>
        <source>Sign and add</source>
        <translation>Unterschreiben und anfügen</translation>
    </message>
    <message>
        <source>The signed record stays as it is. The amendment stands after it, with a signature of its own.</source>
        <translation>Die unterschriebene Aufzeichnung bleibt, wie sie ist. Der Nachtrag steht dahinter, mit eigener Unterschrift.</translation>
    </message>
    <message>
        <source>&amp;What is known now</source>
        <translation>&amp;Was jetzt bekannt ist</translation>
    </message>
    <message>
        <source>&amp;Signed by</source>
        <translation>&amp;Unterschrieben von</translation>
    </message>
    <message>
        <source>&amp;Passphrase</source>
        <translation>&amp;Kennsatz</translation>
    </message>
    <message>
        <source>Nobody in this history has a signing key yet; Sign off adds one.</source>
        <translation>Noch niemand in dieser Historie hat einen Unterschriftsschlüssel; „Freigeben“ legt einen an.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::AskedColumn</name>
    <message>
        <source>Object and purpose</source>
        <translation>Objekt und Zweck</translation>
    </message>
    <message>
        <source>changed here, kept at once</source>
        <translation>hier geändert, sofort gespeichert</translation>
    </message>
    <message>
        <source>Test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>last touched</source>
        <translation>zuletzt berührt</translation>
    </message>
    <message>
        <source>what was worked on last: look there first</source>
        <translation>woran zuletzt gearbeitet wurde: dort zuerst suchen</translation>
    </message>
    <message>
        <source>Last touched</source>
        <translation>Zuletzt berührt</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>Raumtemperatur</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>condition of the object</source>
        <translation>Zustand des Objekts</translation>
    </message>
    <message>
        <source>cleaned, dried, valves, temperature</source>
        <translation>gereinigt, trocken, Ventile, Temperatur</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>before the first reading</source>
        <translation>vor dem ersten Messwert</translation>
    </message>
    <message>
        <source>limit for one joint</source>
        <translation>Grenzwert einer Fügestelle</translation>
    </message>
    <message>
        <source>By kind …</source>
        <translation>Nach Art …</translation>
    </message>
    <message>
        <source>A limit of its own for O-ring seals, welds, hoses …</source>
        <translation>Eigener Grenzwert für O-Ringe, Nähte, Schläuche …</translation>
    </message>
    <message>
        <source>One joint</source>
        <translation>Eine Stelle</translation>
    </message>
    <message>
        <source>helium</source>
        <translation>Helium</translation>
    </message>
    <message>
        <source>limit for all together</source>
        <translation>Grenzwert für alle zusammen</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Alle zusammen</translation>
    </message>
    <message>
        <source>as air</source>
        <translation>als Luft</translation>
    </message>
    <message>
        <source>base pressure wanted</source>
        <translation>gewünschter Enddruck</translation>
    </message>
    <message>
        <source>Base pressure</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>who agreed the limit</source>
        <translation>wer den Grenzwert vereinbart hat</translation>
    </message>
    <message>
        <source>Agreed by</source>
        <translation>Vereinbart mit</translation>
    </message>
    <message>
        <source>Detector</source>
        <translation>Lecksucher</translation>
    </message>
    <message>
        <source>detector</source>
        <translation>Lecksucher</translation>
    </message>
    <message>
        <source>its number, not its maker</source>
        <translation>seine Nummer, nicht sein Hersteller</translation>
    </message>
    <message>
        <source>where it is connected</source>
        <translation>wo er angeschlossen ist</translation>
    </message>
    <message>
        <source>at the object, alone</source>
        <translation>am Objekt, allein</translation>
    </message>
    <message>
        <source>foreline, pump in parallel</source>
        <translation>Vorleitung, Pumpe parallel</translation>
    </message>
    <message>
        <source>foreline, alone</source>
        <translation>Vorleitung, allein</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Angeschlossen</translation>
    </message>
    <message>
        <source>unit of the display</source>
        <translation>Einheit der Anzeige</translation>
    </message>
    <message>
        <source>Display shows</source>
        <translation>Anzeige in</translation>
    </message>
    <message>
        <source>lowest value it shows</source>
        <translation>kleinster angezeigter Wert</translation>
    </message>
    <message>
        <source>highest value it shows</source>
        <translation>größter angezeigter Wert</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>helium speed of the detector</source>
        <translation>Heliumsaugvermögen des Lecksuchers</translation>
    </message>
    <message>
        <source>helium speed of the pump in parallel</source>
        <translation>Heliumsaugvermögen der parallelen Pumpe</translation>
    </message>
    <message>
        <source>Speeds</source>
        <translation>Saugvermögen</translation>
    </message>
    <message>
        <source>in parallel</source>
        <translation>parallel</translation>
    </message>
    <message>
        <source>bore of the hose</source>
        <translation>Weite des Schlauchs</translation>
    </message>
    <message>
        <source>length of the hose</source>
        <translation>Länge des Schlauchs</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>bore, long</source>
        <translation>weit, lang</translation>
    </message>
    <message>
        <source>pressure in the hose</source>
        <translation>Druck im Schlauch</translation>
    </message>
    <message>
        <source>response time, if it is to be typed</source>
        <translation>Ansprechzeit, wenn sie einzutippen ist</translation>
    </message>
    <message>
        <source>In the hose</source>
        <translation>Im Schlauch</translation>
    </message>
    <message>
        <source>Helium</source>
        <translation>Helium</translation>
    </message>
    <message>
        <source>helium share at the joint</source>
        <translation>Heliumanteil an der Stelle</translation>
    </message>
    <message>
        <source>helium flow</source>
        <translation>Heliumfluss</translation>
    </message>
    <message>
        <source>l/min</source>
        <translation>l/min</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Fluss</translation>
    </message>
    <message>
        <source>assumed length of a leak channel</source>
        <translation>angenommene Länge eines Leckkanals</translation>
    </message>
    <message>
        <source>times the noise that counts as seen</source>
        <translation>Vielfaches des Rauschens, das als gesehen gilt</translation>
    </message>
    <message>
        <source>Leak path</source>
        <translation>Leckkanal</translation>
    </message>
    <message>
        <source>× noise</source>
        <translation>× Rauschen</translation>
    </message>
    <message>
        <source>%1 l, the object&apos;s</source>
        <translation>%1 l, vom Objekt</translation>
    </message>
    <message>
        <source>As last time</source>
        <translation>Wie beim letzten Mal</translation>
    </message>
    <message>
        <source>Customer, detector, connection, display, range, speeds and hose of the job before; what was measured is measured anew</source>
        <translation>Kunde, Detektor, Anschluss, Anzeige, Bereich, Saugvermögen und Schlauch des vorigen Auftrags; was gemessen wurde, wird neu gemessen</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>Auftraggeber</translation>
    </message>
    <message>
        <source>Papers …</source>
        <translation>Unterlagen …</translation>
    </message>
    <message>
        <source>Witness, procedure, drawing, what is left out, other instruments: for the report</source>
        <translation>Zeuge, Verfahren, Zeichnung, Ausgelassenes, andere Geräte: für den Bericht</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Auftraggeber</translation>
    </message>
    <message>
        <source>What no single joint may leak more than, as helium with 1 bar of it outside; as in 1e-6 or 1e-6 mbar·l/s</source>
        <translation>Was keine einzelne Verbindung überschreiten darf, als Helium mit 1 bar davon außen; etwa 1e-6 oder 1e-6 mbar·l/s</translation>
    </message>
    <message>
        <source>What all leaks together may let in, as air; from the largest pressure rise allowed, or from the base pressure wanted</source>
        <translation>Was alle Lecks zusammen einlassen dürfen, als Luft; aus dem größten zulässigen Druckanstieg oder dem gewünschten Enddruck</translation>
    </message>
    <message>
        <source>The lowest value the detector shows as it is connected; below it nothing is told from zero</source>
        <translation>Der kleinste Wert, den der Detektor so angeschlossen zeigt; darunter ist nichts von null zu unterscheiden</translation>
    </message>
    <message>
        <source>The highest value the detector shows; what is above it is stored as &quot;above&quot;</source>
        <translation>Der größte Wert, den der Detektor zeigt; was darüber liegt, wird als &quot;über&quot; gespeichert</translation>
    </message>
    <message>
        <source>Pumping speed of the detector for helium at its inlet, from its sheet, as in 2.5 l/s; empty: share and response are not worked out</source>
        <translation>Saugvermögen des Detektors für Helium an seinem Einlass, laut Datenblatt, etwa 2,5 l/s; leer: Anteil und Ansprechen werden nicht berechnet</translation>
    </message>
    <message>
        <source>Pumping speed for helium of the pump that runs beside the detector, where both draw from the same line; 0: none runs</source>
        <translation>Saugvermögen für Helium der Pumpe, die neben dem Detektor an derselben Leitung läuft; 0: keine läuft</translation>
    </message>
    <message>
        <source>Inner diameter of the hose between object and detector, as in 16 mm</source>
        <translation>Innendurchmesser des Schlauchs zwischen Objekt und Detektor, etwa 16 mm</translation>
    </message>
    <message>
        <source>Length of the hose between object and detector, as in 1.5 m</source>
        <translation>Länge des Schlauchs zwischen Objekt und Detektor, etwa 1,5 m</translation>
    </message>
    <message>
        <source>Pressure in that hose while spraying, as in 1e-2 mbar: the lower, the slower helium passes a narrow hose</source>
        <translation>Druck in diesem Schlauch beim Sprühen, etwa 1e-2 mbar: je niedriger, desto langsamer kommt Helium durch einen engen Schlauch</translation>
    </message>
    <message>
        <source>Seconds from helium on to 63 % of the value; empty: as measured with the reference leak, else as worked out from volume and speeds</source>
        <translation>Sekunden von Helium an bis 63 % des Werts; leer: wie mit dem Prüfleck gemessen, sonst aus Volumen und Saugvermögen berechnet</translation>
    </message>
    <message>
        <source>Share of helium in what is sprayed or stands in the bag, as in 100 % or 20 %</source>
        <translation>Heliumanteil in dem, was gesprüht wird oder in der Hülle steht, etwa 100 % oder 20 %</translation>
    </message>
    <message>
        <source>Flow from the spray probe: for the helium that the round will take</source>
        <translation>Durchfluss der Sprühsonde: für das Helium, das die Runde braucht</translation>
    </message>
    <message>
        <source>How long a leak channel is taken to be where its size as a hole is told; the width of a seal, say</source>
        <translation>Wie lang ein Leckkanal angenommen wird, wo seine Größe als Loch genannt wird; etwa die Breite einer Dichtung</translation>
    </message>
    <message>
        <source>How many times the noise of the background a rise must be to count as a response; 3 is usual</source>
        <translation>Das Wievielfache des Untergrundrauschens ein Anstieg sein muss, um als Anzeige zu gelten; üblich ist 3</translation>
    </message>
    <message>
        <source>time constant</source>
        <translation>Zeitkonstante</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::BackgroundDialog</name>
    <message>
        <source>Background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>as shown, in %1, no helium given</source>
        <translation>wie angezeigt, in %1, ohne Helium</translation>
    </message>
    <message>
        <source>values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>time between values</source>
        <translation>Zeit zwischen den Werten</translation>
    </message>
    <message>
        <source>From a &amp;file …</source>
        <translation>Aus einer &amp;Datei …</translation>
    </message>
    <message>
        <source>A value every</source>
        <translation>Ein Wert alle</translation>
    </message>
    <message>
        <source>Store the background</source>
        <translation>Untergrund speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) over %1: level %2, noise %3 (standard deviation)</source>
        <translation>
            <numerusform>%n Wert über %1: Höhe %2, Rauschen %3 (Standardabweichung)</numerusform>
            <numerusform>%n Werte über %1: Höhe %2, Rauschen %3 (Standardabweichung)</numerusform>
        </translation>
    </message>
    <message>
        <source>A watched background</source>
        <translation>Beobachteter Untergrund</translation>
    </message>
    <message>
        <source>Text (*.csv *.txt);;All files (*)</source>
        <translation>Text (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 ist nicht lesbar: %2</translation>
    </message>
    <message>
        <source>%1 is too long for a background; a few minutes are enough</source>
        <translation>%1 ist zu lang für einen Untergrund; ein paar Minuten genügen</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>when it was measured</source>
        <translation>wann gemessen wurde</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>by eye: level %1, noise %2 (standard deviation: swing / √3)</source>
        <translation>nach Augenmaß: Höhe %1, Rauschen %2 (Standardabweichung: Ausschlag / √3)</translation>
    </message>
    <message>
        <source>One value a line, or seconds and a value. Twenty values over a minute are good practice. Where only level and swing can be read: 1e-7&#xa0;+-⁠&#xa0;2e-8.</source>
        <translation>Ein Wert je Zeile, oder Sekunden und ein Wert. Zwanzig Werte in einer Minute sind gute Übung. Wo nur Höhe und Ausschlag abzulesen sind: 1e-7&#xa0;+-⁠&#xa0;2e-8.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::BackgroundPanel</name>
    <message>
        <source>Background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>background over time</source>
        <translation>Untergrund über der Zeit</translation>
    </message>
    <message>
        <source>&amp;Background …</source>
        <translation>&amp;Untergrund …</translation>
    </message>
    <message>
        <source>not watched yet: a minute without helium</source>
        <translation>noch nicht beobachtet: eine Minute ohne Helium</translation>
    </message>
    <message>
        <source>%1, as shown in %2</source>
        <translation>%1, wie angezeigt in %2</translation>
    </message>
    <message>
        <source>level %1 &amp;nbsp; noise %2 &amp;nbsp; drift %3/min</source>
        <translation>Höhe %1 &amp;nbsp; Rauschen %2 &amp;nbsp; Drift %3/min</translation>
    </message>
    <message>
        <source>level %1 &amp;nbsp; noise %2, by eye</source>
        <translation>Höhe %1 &amp;nbsp; Rauschen %2, nach Augenmaß</translation>
    </message>
    <message>
        <source>void this background watch</source>
        <translation>diese Untergrundbeobachtung verwerfen</translation>
    </message>
    <message>
        <source>which watch</source>
        <translation>welche Beobachtung</translation>
    </message>
    <message>
        <source>watch of %1</source>
        <translation>Beobachtung von %1</translation>
    </message>
    <message>
        <source>void: %1</source>
        <translation>verworfen: %1</translation>
    </message>
    <message>
        <source>background watch of %1</source>
        <translation>Untergrundbeobachtung von %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::BecausePanel</name>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>highest less background</source>
        <translation>Höchstwert ohne Untergrund</translation>
    </message>
    <message>
        <source>, uncertain by %1</source>
        <translation>, unsicher um %1</translation>
    </message>
    <message>
        <source>this reading by itself</source>
        <translation>dieser Messwert für sich</translation>
    </message>
    <message>
        <source>smallest detectable then</source>
        <translation>damals kleinstes nachweisbar</translation>
    </message>
    <message>
        <source>Choose a point.</source>
        <translation>Einen Punkt wählen.</translation>
    </message>
    <message>
        <source>%1: %2, because</source>
        <translation>%1: %2, weil</translation>
    </message>
    <message>
        <source>as shown, helium</source>
        <translation>wie angezeigt, Helium</translation>
    </message>
    <message>
        <source>the same as air</source>
        <translation>dasselbe als Luft</translation>
    </message>
    <message>
        <source>through one round channel of %1 mm</source>
        <translation>durch einen runden Kanal von %1 mm</translation>
    </message>
    <message>
        <source>95 % range %1 … %2</source>
        <translation>95-%-Bereich %1 … %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>more than the detector can show</source>
        <translation>mehr, als der Lecksucher anzeigen kann</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Schließen  Esc</translation>
    </message>
    <message>
        <source>It belongs to the test set-up, not to the object: what was read through it while it leaked wants another spray.</source>
        <translation>Er gehört zum Prüfaufbau, nicht zum Objekt: Was durch ihn gemessen wurde, solange er leckte, will noch einmal besprüht werden.</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>notiert</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::CalibrationDialog</name>
    <message>
        <source>Reference leak</source>
        <translation>Prüfleck</translation>
    </message>
    <message>
        <source>who read it</source>
        <translation>wer abgelesen hat</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Store the check</source>
        <translation>Prüfung speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>The reference leak</source>
        <translation>Das Prüfleck</translation>
    </message>
    <message>
        <source>as its certificate says</source>
        <translation>laut Zertifikat</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>certified value</source>
        <translation>zertifizierter Wert</translation>
    </message>
    <message>
        <source>certified at temperature</source>
        <translation>zertifiziert bei Temperatur</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>helium, at</source>
        <translation>Helium, bei</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>Datum des Zertifikats</translation>
    </message>
    <message>
        <source>due again</source>
        <translation>wieder fällig</translation>
    </message>
    <message>
        <source>Dated</source>
        <translation>Vom</translation>
    </message>
    <message>
        <source>change per kelvin</source>
        <translation>Änderung je Kelvin</translation>
    </message>
    <message>
        <source>1/K</source>
        <translation>1/K</translation>
    </message>
    <message>
        <source>linear, as the certificate says</source>
        <translation>linear, laut Zertifikat</translation>
    </message>
    <message>
        <source>Per kelvin</source>
        <translation>Je Kelvin</translation>
    </message>
    <message>
        <source>loss per year</source>
        <translation>Verlust im Jahr</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Loss per year</source>
        <translation>Verlust im Jahr</translation>
    </message>
    <message>
        <source>uncertain by</source>
        <translation>unsicher um</translation>
    </message>
    <message>
        <source>The check</source>
        <translation>Die Prüfung</translation>
    </message>
    <message>
        <source>as the display shows it</source>
        <translation>wie die Anzeige sagt</translation>
    </message>
    <message>
        <source>where the leak sits</source>
        <translation>wo das Leck sitzt</translation>
    </message>
    <message>
        <source>on the object, through the whole set-up</source>
        <translation>am Objekt, durch den ganzen Aufbau</translation>
    </message>
    <message>
        <source>at the detector&apos;s inlet</source>
        <translation>am Eingang des Lecksuchers</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>before the walk</source>
        <translation>vor dem Gang</translation>
    </message>
    <message>
        <source>during the walk</source>
        <translation>während des Gangs</translation>
    </message>
    <message>
        <source>after the walk</source>
        <translation>nach dem Gang</translation>
    </message>
    <message>
        <source>The leak sits</source>
        <translation>Das Leck sitzt</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>farthest from the detector</source>
        <translation>am weitesten vom Lecksucher</translation>
    </message>
    <message>
        <source>serves which joint</source>
        <translation>gilt für welche Fügestelle</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>shown with the leak shut</source>
        <translation>angezeigt bei geschlossenem Leck</translation>
    </message>
    <message>
        <source>shown with the leak open</source>
        <translation>angezeigt bei offenem Leck</translation>
    </message>
    <message>
        <source>Shut</source>
        <translation>Zu</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>response to 63 %</source>
        <translation>Ansprechen bis 63 %</translation>
    </message>
    <message>
        <source>Leak &amp;open: start the clock</source>
        <translation>Leck &amp;offen: Uhr starten</translation>
    </message>
    <message>
        <source>clean-up time</source>
        <translation>Abklingzeit</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>Raumtemperatur</translation>
    </message>
    <message>
        <source>Clean-up</source>
        <translation>Abklingen</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Value, date of the certificate and the display with the leak open are needed.</source>
        <translation>Nötig sind Wert, Datum des Zertifikats und die Anzeige bei offenem Leck.</translation>
    </message>
    <message>
        <source>The leak gives %1 %2 today.</source>
        <translation>Das Leck gibt heute %1 %2.</translation>
    </message>
    <message>
        <source>The leak gave %1 %2 on that day.</source>
        <translation>Das Leck gab an jenem Tag %1 %2.</translation>
    </message>
    <message>
        <source>63 % reached: stop the clock</source>
        <translation>63 % erreicht: Uhr anhalten</translation>
    </message>
    <message>
        <source>as in job %1; compare it with its certificate</source>
        <translation>wie in Auftrag %1; mit dem Zertifikat vergleichen</translation>
    </message>
    <message>
        <source>when it was measured</source>
        <translation>wann gemessen wurde</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>the time constant: until the display shows 63 % of where it ends</source>
        <translation>die Zeitkonstante: bis die Anzeige 63 % ihres Endwerts zeigt</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>anything a reviewer should know</source>
        <translation>was wissen sollte, wer prüft</translation>
    </message>
    <message>
        <source>what was changed since the last check</source>
        <translation>was seit der letzten Prüfung verändert wurde</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Response, 63 %</source>
        <translation>Ansprechen, 63 %</translation>
    </message>
    <message>
        <source>The display shows %1 of a leak: one shown is &lt;b&gt;%2&lt;/b&gt; on the chamber.</source>
        <translation>Die Anzeige zeigt %1 eines Lecks: Eins angezeigt ist &lt;b&gt;%2&lt;/b&gt; an der Kammer.</translation>
    </message>
    <message>
        <source>joints without their own</source>
        <translation>Stellen ohne eigene</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::CalibrationPanel</name>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>during</source>
        <translation>während</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>system check</source>
        <translation>Systemprüfung</translation>
    </message>
    <message>
        <source>detector check</source>
        <translation>Geräteprüfung</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Enter a reference &amp;leak …</source>
        <translation>Prüf&amp;leck eintragen …</translation>
    </message>
    <message>
        <source>which check</source>
        <translation>welche Prüfung</translation>
    </message>
    <message>
        <source>no reference leak entered yet</source>
        <translation>noch kein Prüfleck eingetragen</translation>
    </message>
    <message>
        <source>Without one no reading becomes a leak rate, and nothing can be passed.</source>
        <translation>Ohne eines wird aus keinem Messwert eine Leckrate, und nichts kann bestehen.</translation>
    </message>
    <message>
        <source>reference leak %1, %2</source>
        <translation>Prüfleck %1, %2</translation>
    </message>
    <message>
        <source>certificate, at %1 °C</source>
        <translation>Zertifikat, bei %1 °C</translation>
    </message>
    <message>
        <source>today, at %1 °C</source>
        <translation>heute, bei %1 °C</translation>
    </message>
    <message>
        <source>for age and room</source>
        <translation>für Alter und Raum</translation>
    </message>
    <message>
        <source>shown, less background</source>
        <translation>angezeigt, ohne Untergrund</translation>
    </message>
    <message>
        <source>factor to the chamber</source>
        <translation>Faktor zur Kammer</translation>
    </message>
    <message>
        <source>, at %1</source>
        <translation>, an %1</translation>
    </message>
    <message>
        <source>response, 63 %</source>
        <translation>Ansprechen, 63 %</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>not usable</source>
        <translation>nicht brauchbar</translation>
    </message>
    <message>
        <source>the leak does not stand out of the background&apos;s noise</source>
        <translation>das Leck hebt sich nicht vom Rauschen des Untergrunds ab</translation>
    </message>
    <message>
        <source>, factor %1</source>
        <translation>, Faktor %1</translation>
    </message>
    <message>
        <source>void this check</source>
        <translation>diese Prüfung verwerfen</translation>
    </message>
    <message>
        <source>void: %1</source>
        <translation>verworfen: %1</translation>
    </message>
    <message>
        <source>check with the reference leak, %1, of %2 %3</source>
        <translation>Prüfung mit dem Prüfleck, %1, von %2 %3</translation>
    </message>
    <message>
        <source>Without one that stands no reading becomes a leak rate, and nothing can be passed.</source>
        <translation>Ohne eine, die gilt, wird keine Ablesung zur Leckrate, und nichts kann bestehen.</translation>
    </message>
    <message>
        <source>± %1 %; shows %2 of a leak%3</source>
        <translation>± %1 %; zeigt %2 eines Lecks%3</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::CallHead</name>
    <message>
        <source>Called point</source>
        <translation>Gerufener Punkt</translation>
    </message>
    <message>
        <source>No point called</source>
        <translation>Kein Punkt gerufen</translation>
    </message>
    <message>
        <source>Called point %1</source>
        <translation>Gerufener Punkt %1</translation>
    </message>
    <message>
        <source>Stands on every reading; a click or Ctrl+L changes it</source>
        <translation>Steht an jedem Messwert; ein Klick oder Strg+L ändert es</translation>
    </message>
    <message>
        <source>Nobody is logging: Ctrl+L</source>
        <translation>Niemand schreibt: Strg+L</translation>
    </message>
    <message>
        <source>Logging: %1</source>
        <translation>Schreibt: %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::CallPanel</name>
    <message>
        <source>%1 waits</source>
        <translation>%1 wartet</translation>
    </message>
    <message>
        <source>Esc goes back to the number first.</source>
        <translation>Esc bringt zuerst die Zahl zurück.</translation>
    </message>
    <message>
        <source>Esc clears the number first.</source>
        <translation>Esc löscht zuerst die Zahl.</translation>
    </message>
    <message>
        <source>This key does nothing here; F1 shows the keys.</source>
        <translation>Diese Taste tut hier nichts; F1 zeigt die Tasten.</translation>
    </message>
    <message>
        <source>Go to point number</source>
        <translation>Zur Punktnummer</translation>
    </message>
    <message>
        <source>Why is the last reading void?</source>
        <translation>Warum ist der letzte Messwert ungültig?</translation>
    </message>
    <message>
        <source>Why can it not be reached?</source>
        <translation>Warum ist er nicht erreichbar?</translation>
    </message>
    <message>
        <source>Condition of the joint</source>
        <translation>Zustand der Fügestelle</translation>
    </message>
    <message>
        <source>Why does it come later?</source>
        <translation>Warum kommt er später?</translation>
    </message>
    <message>
        <source>Background, no helium given</source>
        <translation>Untergrund, ohne Helium</translation>
    </message>
    <message>
        <source>Highest value while spraying, as the detector shows it</source>
        <translation>Höchstwert beim Sprühen, wie ihn der Lecksucher zeigt</translation>
    </message>
    <message>
        <source>No job is open</source>
        <translation>Kein Auftrag offen</translation>
    </message>
    <message>
        <source>Round done</source>
        <translation>Runde fertig</translation>
    </message>
    <message>
        <source>No points yet</source>
        <translation>Noch keine Punkte</translation>
    </message>
    <message>
        <source>Sketch lays them (Alt+2)</source>
        <translation>Skizze legt sie (Alt+2)</translation>
    </message>
    <message>
        <source>%1 % He</source>
        <translation>%1 % He</translation>
    </message>
    <message>
        <source>has a reading</source>
        <translation>hat einen Messwert</translation>
    </message>
    <message>
        <source>, He</source>
        <translation>, He</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>no background typed: B</source>
        <translation>kein Untergrund eingetippt: B</translation>
    </message>
    <message>
        <source>sprayed</source>
        <translation>gesprüht</translation>
    </message>
    <message>
        <source>or I to go on anyway</source>
        <translation>I: trotzdem weiter</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>spray</source>
        <translation>sprühen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>store</source>
        <translation>sichern</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>over range</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>skip</source>
        <translation>auslassen</translation>
    </message>
    <message>
        <source>no access</source>
        <translation>kein Zugang</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation>in Ruhe</translation>
    </message>
    <message>
        <source>flexed</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>taped</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>bagged</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>anders …</translation>
    </message>
    <message>
        <source>feed saw %1 · Enter stores it</source>
        <translation>Leitung sah %1 · Enter speichert</translation>
    </message>
    <message>
        <source>feed saw no rise · N: no response</source>
        <translation>kein Anstieg · N: keine Antwort</translation>
    </message>
    <message>
        <source>background now</source>
        <translation>Untergrund jetzt</translation>
    </message>
    <message>
        <source>Enter takes the feed&apos;s highest, or type</source>
        <translation>Enter nimmt den Höchstwert, oder eintippen</translation>
    </message>
    <message>
        <source>the background is not back yet</source>
        <translation>der Untergrund ist noch nicht zurück</translation>
    </message>
    <message>
        <source>the feed is lost: type values, Space goes on</source>
        <translation>Leitung weg: Werte tippen, Leertaste geht weiter</translation>
    </message>
    <message>
        <source>Why are all these readings void?</source>
        <translation>Warum sind alle diese Messungen ungültig?</translation>
    </message>
    <message>
        <source>Time on the paper, as 1432</source>
        <translation>Zeit auf dem Papier, wie 1432</translation>
    </message>
    <message>
        <source>from paper</source>
        <translation>vom Papier</translation>
    </message>
    <message>
        <source>SHUT</source>
        <translation>ZU</translation>
    </message>
    <message>
        <source>the job takes no more readings</source>
        <translation>der Auftrag nimmt keine Messungen mehr an</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation>PAPIER</translation>
    </message>
    <message>
        <source>DONE</source>
        <translation>FERTIG</translation>
    </message>
    <message>
        <source>J calls a point again</source>
        <translation>J ruft einen Punkt noch einmal auf</translation>
    </message>
    <message>
        <source>Why is the reading %1 void?</source>
        <translation>Warum ist der Messwert %1 ungültig?</translation>
    </message>
    <message>
        <source>Why is it not tested?</source>
        <translation>Warum wird nicht geprüft?</translation>
    </message>
    <message>
        <source>confirms</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>NOT STORED</source>
        <translation>UNGESPEICHERT</translation>
    </message>
    <message>
        <source>Enter tries again</source>
        <translation>Enter versucht es noch einmal</translation>
    </message>
    <message numerus="yes">
        <source>Enter goes on with round %1: %n call(s) left</source>
        <translation>
            <numerusform>Enter setzt Runde %1 fort: noch %n Aufruf</numerusform>
            <numerusform>Enter setzt Runde %1 fort: noch %n Aufrufe</numerusform>
        </translation>
    </message>
    <message>
        <source>every point of it has an answer</source>
        <translation>jeder Punkt darin hat eine Antwort</translation>
    </message>
    <message>
        <source>Nothing that was stored here stands in this round; J calls an older point first.</source>
        <translation>Nichts, was hier gespeichert wurde, gilt in dieser Runde; J ruft zuerst einen älteren Punkt auf.</translation>
    </message>
    <message>
        <source>first rise</source>
        <translation>Anstieg</translation>
    </message>
    <message numerus="yes">
        <source>every point of it has an answer, or a reason: %n left out</source>
        <translation>
            <numerusform>jeder Punkt hat eine Antwort oder einen Grund: %n ausgelassen</numerusform>
            <numerusform>jeder Punkt hat eine Antwort oder einen Grund: %n ausgelassen</numerusform>
        </translation>
    </message>
    <message>
        <source>remark: %1</source>
        <translation>Bemerkung: %1</translation>
    </message>
    <message>
        <source>another program writes; tried again</source>
        <translation>ein anderes Programm schreibt; wird wiederholt</translation>
    </message>
    <message>
        <source>feed saw %1, then was lost · Enter</source>
        <translation>%1 gesehen, dann Leitung weg · Enter</translation>
    </message>
    <message>
        <source>zeroed? no background</source>
        <translation>genullt? kein Untergrund</translation>
    </message>
    <message>
        <source>Lacking on this reading</source>
        <translation>Was diesem Messwert fehlt</translation>
    </message>
    <message>
        <source>First rise: seconds after helium on; Enter alone takes %1</source>
        <translation>Erster Anstieg: Sekunden nach Helium an; Enter allein nimmt %1</translation>
    </message>
    <message>
        <source>First rise: seconds after helium on</source>
        <translation>Erster Anstieg: Sekunden nach Helium an</translation>
    </message>
    <message>
        <source>The highest this detector can show; stored as above it</source>
        <translation>Das Höchste, das der Lecksucher zeigt; gespeichert als darüber</translation>
    </message>
    <message>
        <source>first rise %1 s</source>
        <translation>erster Anstieg %1 s</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>background as before; B changes it</source>
        <translation>Untergrund wie zuvor; B ändert ihn</translation>
    </message>
    <message>
        <source>The job takes no more readings.</source>
        <translation>Der Auftrag nimmt keine Messwerte mehr an.</translation>
    </message>
    <message>
        <source>taped off: %1</source>
        <translation>abgeklebt: %1</translation>
    </message>
    <message>
        <source>B background, value, D first rise, Enter, time, Enter</source>
        <translation>B Untergrund, Wert, D erster Anstieg, Enter, Zeit, Enter</translation>
    </message>
    <message>
        <source>Time on the paper, as 1432; Enter alone takes %1, at the usual pace</source>
        <translation>Zeit auf dem Papier, wie 1432; Enter allein nimmt %1, im üblichen Takt</translation>
    </message>
    <message>
        <source>of %1 left</source>
        <translation>übrig von %1</translation>
    </message>
    <message>
        <source>not yet: helium still clears</source>
        <translation>noch nicht: Helium zieht noch ab</translation>
    </message>
    <message>
        <source>the check with the reference leak afterwards is due: Prepare, Alt+1</source>
        <translation>die Prüfung mit dem Prüfleck hinterher steht aus: Vorbereiten, Alt+1</translation>
    </message>
    <message numerus="yes">
        <source>%n left out; </source>
        <translation>
            <numerusform>%n ausgelassen; </numerusform>
            <numerusform>%n ausgelassen; </numerusform>
        </translation>
    </message>
    <message>
        <source>Instead of %1: what was really shown</source>
        <translation>Statt %1: was wirklich angezeigt wurde</translation>
    </message>
    <message>
        <source>because “%1”, M: other</source>
        <translation>weil „%1“, M: anders</translation>
    </message>
    <message>
        <source>every point of it has an answer, here or in a later round</source>
        <translation>jeder Punkt hat eine Antwort, hier oder in einer späteren Runde</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::CautionsPanel</name>
    <message>
        <source>Read; permit, isolation and ventilation were checked</source>
        <translation>Gelesen; Erlaubnis, Absperrung und Lüftung sind geprüft</translation>
    </message>
    <message>
        <source>By the people responsible. This tick is no permission to work.</source>
        <translation>Von den Verantwortlichen. Dieses Kreuz erlaubt keine Arbeit.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>your site&apos;s rules and permits come first</source>
        <translation>Regeln und Erlaubnisse am Ort gehen vor</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Alle %1</translation>
    </message>
    <message>
        <source>%1, %2 %3. No permission follows from it.</source>
        <translation>%1, %2 %3. Daraus folgt keine Erlaubnis.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ChangesModel</name>
    <message>
        <source>leak</source>
        <translation>Leck</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>geteilt</translation>
    </message>
    <message>
        <source>echo</source>
        <translation>Echo</translation>
    </message>
    <message>
        <source>masked</source>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>permeation</source>
        <translation>Durchlässigkeit</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>below detectable</source>
        <translation>unter der Nachweisgrenze</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>not accessible</source>
        <translation>nicht erreichbar</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not sprayed</source>
        <translation>nicht besprüht</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>weg</translation>
    </message>
    <message>
        <source>grown</source>
        <translation>gewachsen</translation>
    </message>
    <message>
        <source>shrunk</source>
        <translation>geschrumpft</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>no such point</source>
        <translation>kein solcher Punkt</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>, at least</source>
        <translation>, mindestens</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Fügestelle</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Damals</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>decades −5 … +5</source>
        <translation>Dekaden −5 … +5</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Says</source>
        <translation>Heißt</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>matched by %1: Y same place, N another</source>
        <translation>zugeordnet nach %1: Y dieselbe Stelle, N eine andere</translation>
    </message>
    <message>
        <source>%1, 95 % range %2</source>
        <translation>%1, 95-%-Bereich %2</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>other source</source>
        <translation>andere Quelle</translation>
    </message>
    <message>
        <source>virtual leak</source>
        <translation>virtuelles Leck</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>point only now</source>
        <translation>Punkt nur jetzt</translation>
    </message>
    <message>
        <source>point only then</source>
        <translation>Punkt nur damals</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Namen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ChecksModel</name>
    <message>
        <source>Stops a sign-off</source>
        <translation>Hält die Freigabe auf</translation>
    </message>
    <message>
        <source>Needs a word</source>
        <translation>Braucht ein Wort</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Sent back with: %1</source>
        <translation>Zurückgegeben mit: %1</translation>
    </message>
    <message>
        <source>word given</source>
        <translation>Wort gegeben</translation>
    </message>
    <message>
        <source>said before</source>
        <translation>zuvor gesagt</translation>
    </message>
    <message numerus="yes">
        <source>(%n more)</source>
        <comment>other things open on the question</comment>
        <translation>
            <numerusform>(noch %n)</numerusform>
            <numerusform>(noch %n)</numerusform>
        </translation>
    </message>
    <message>
        <source>not agreed</source>
        <translation>nicht einverstanden</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ComparePage</name>
    <message>
        <source>job at the left</source>
        <translation>Auftrag links</translation>
    </message>
    <message>
        <source>job at the right</source>
        <translation>Auftrag rechts</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Hinterlassen</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Back to the lists (Esc)</source>
        <translation>Zurück zu den Listen (Esc)</translation>
    </message>
    <message>
        <source>against</source>
        <translation>gegen</translation>
    </message>
    <message>
        <source>scale of both maps</source>
        <translation>Skala beider Karten</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Space adds a row, at most five</source>
        <translation>Leertaste fügt eine Zeile hinzu, höchstens fünf</translation>
    </message>
    <message>
        <source>course over the jobs</source>
        <translation>Verlauf über die Aufträge</translation>
    </message>
    <message>
        <source>The course shows five points at most; take one out with Space first.</source>
        <translation>Der Verlauf zeigt höchstens fünf Punkte; zuerst einen mit der Leertaste herausnehmen.</translation>
    </message>
    <message>
        <source>Kept as two places; neither is compared with the other.</source>
        <translation>Als zwei Stellen behalten; keine wird mit der anderen verglichen.</translation>
    </message>
    <message>
        <source>Maps</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>maps</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Laid over</source>
        <translation>Übereinander</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Back (Esc)</source>
        <translation>Zurück (Esc)</translation>
    </message>
    <message>
        <source>Mark the row of its other place with Space, then Y makes both one.</source>
        <translation>Die Zeile der anderen Stelle mit der Leertaste markieren, dann macht Y beide zu einer.</translation>
    </message>
    <message>
        <source>%1: not tested</source>
        <translation>%1: nicht geprüft</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1 as left: %2, %3 of %4 points tested</source>
        <translation>%1 hinterlassen: %2, %3 von %4 Punkten geprüft</translation>
    </message>
    <message>
        <source>%1 as found: %2, %3 of %4 points tested</source>
        <translation>%1 vorgefunden: %2, %3 von %4 Punkten geprüft</translation>
    </message>
    <message>
        <source>No room for the map of job %1: it is in the table and on the course.</source>
        <translation>Kein Platz für die Karte von Auftrag %1: Er steht in der Tabelle und im Verlauf.</translation>
    </message>
    <message>
        <source>the newest %1 of %2 jobs</source>
        <translation>die neuesten %1 von %2 Aufträgen</translation>
    </message>
    <message>
        <source>Course of %1</source>
        <translation>Verlauf von %1</translation>
    </message>
    <message>
        <source>Course of the total</source>
        <translation>Verlauf der Summe</translation>
    </message>
    <message>
        <source>Sum of its points, %1: %2.</source>
        <translation>Summe der Punkte, %1: %2.</translation>
    </message>
    <message>
        <source>Last touched %1</source>
        <translation>Zuletzt berührt: %1</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>joints over the jobs, the worst first</source>
        <translation>Fügestellen über die Aufträge, die schlechteste zuerst</translation>
    </message>
    <message>
        <source>the whole object, job by job</source>
        <translation>das ganze Objekt, Auftrag für Auftrag</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Fügestellen</translation>
    </message>
    <message>
        <source>Totals</source>
        <translation>Summen</translation>
    </message>
    <message>
        <source>What changed between the two jobs (C)</source>
        <translation>Was sich zwischen den beiden Aufträgen geändert hat (C)</translation>
    </message>
    <message>
        <source>The joints over all jobs, the worst first (J)</source>
        <translation>Die Fügestellen über alle Aufträge, die schlechteste zuerst (J)</translation>
    </message>
    <message>
        <source>The whole object, job by job (T)</source>
        <translation>Das ganze Objekt, Auftrag für Auftrag (T)</translation>
    </message>
    <message>
        <source>All leaks together and the pressure rise, as air. Hollow: below. A gap: not measured; a word in its place says why there is no sum</source>
        <translation>Alle Lecks zusammen und der Druckanstieg, als Luft. Hohl: darunter. Lücke: nicht gemessen; ein Wort an ihrer Stelle sagt, warum es keine Summe gibt</translation>
    </message>
    <message>
        <source>Beside the sum, in another condition only: %1</source>
        <translation>Neben der Summe, nur in anderem Zustand: %1</translation>
    </message>
    <message>
        <source>Beside the sum, of the set-up: %1</source>
        <translation>Neben der Summe, am Aufbau: %1</translation>
    </message>
    <message>
        <source>Not sized: %1</source>
        <translation>Nicht bemessen: %1</translation>
    </message>
    <message>
        <source>Kept as one place; both jobs are compared there.</source>
        <translation>Als ein Ort behalten; beide Aufträge werden dort verglichen.</translation>
    </message>
    <message numerus="yes">
        <source>%n known to be the same point</source>
        <translation>
            <numerusform>%n bekannt als derselbe Punkt</numerusform>
            <numerusform>%n bekannt als dieselben Punkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said to be the same</source>
        <translation>
            <numerusform>%n für denselben erklärt</numerusform>
            <numerusform>%n für dieselben erklärt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n proposed, Y takes one over</source>
        <translation>
            <numerusform>%n vorgeschlagen, Y übernimmt ihn</numerusform>
            <numerusform>%n vorgeschlagen, Y übernimmt einen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Compared %n point(s)</source>
        <translation>
            <numerusform>%n Punkt verglichen</numerusform>
            <numerusform>%n Punkte verglichen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::Corner</name>
    <message>
        <source>unit shown</source>
        <translation>gezeigte Einheit</translation>
    </message>
    <message>
        <source>Unit shown everywhere in this job (Ctrl+U)</source>
        <translation>Einheit, die überall im Auftrag gezeigt wird (Strg+U)</translation>
    </message>
    <message>
        <source>no detector feed</source>
        <translation>kein Lecksucher verbunden</translation>
    </message>
    <message>
        <source>on disk %1</source>
        <translation>gespeichert %1</translation>
    </message>
    <message>
        <source>not on disk since %1</source>
        <translation>nicht gespeichert seit %1</translation>
    </message>
    <message>
        <source>on disk</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>no history open</source>
        <translation>keine Historie offen</translation>
    </message>
    <message>
        <source>feed silent since %1</source>
        <translation>Leitung stumm seit %1</translation>
    </message>
    <message>
        <source>gas shown</source>
        <translation>gezeigtes Gas</translation>
    </message>
    <message>
        <source>Leaks at points shown as helium, as measured, or as the air they would pass</source>
        <translation>Lecks an den Punkten als Helium gezeigt, wie gemessen, oder als die Luft, die sie durchließen</translation>
    </message>
    <message>
        <source>helium</source>
        <translation>Helium</translation>
    </message>
    <message>
        <source>as air</source>
        <translation>als Luft</translation>
    </message>
    <message>
        <source>feed lost</source>
        <translation>Leitung weg</translation>
    </message>
    <message>
        <source>not on disk</source>
        <translation>nicht auf der Platte</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::DateField</name>
    <message>
        <source>2026-03-01</source>
        <translation>2026-03-01</translation>
    </message>
    <message>
        <source>not a date; write it as 2026-03-01</source>
        <translation>kein Datum; schreiben als 2026-03-01</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::DecisionBar</name>
    <message>
        <source>Send for review</source>
        <translation>Zur Durchsicht geben</translation>
    </message>
    <message>
        <source>Send back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>New person …</source>
        <translation>Neue Person …</translation>
    </message>
    <message>
        <source>Approve and lock</source>
        <translation>Freigeben und sperren</translation>
    </message>
    <message>
        <source>Remarks that go with the job</source>
        <translation>Bemerkungen zum Auftrag</translation>
    </message>
    <message>
        <source>Passphrase of the reviewer&apos;s key</source>
        <translation>Kennsatz des Gegenprüfers</translation>
    </message>
    <message>
        <source>Reviewer</source>
        <translation>Gegenprüfer</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Kennsatz</translation>
    </message>
    <message>
        <source>People …</source>
        <translation>Personen …</translation>
    </message>
    <message>
        <source>as %1 (Ctrl+L)</source>
        <translation>als %1 (Strg+L)</translation>
    </message>
    <message>
        <source>Nobody here has a key yet: New person …</source>
        <translation>Niemand hat hier schon einen Schlüssel: Neue Person …</translation>
    </message>
    <message>
        <source>The reviewer&apos;s passphrase signs it.</source>
        <translation>Der Kennsatz des Gegenprüfers unterschreibt es.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::DistanceView</name>
    <message>
        <source>Distance view</source>
        <translation>Fernansicht</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::EntryField</name>
    <message>
        <source>Highest value while spraying</source>
        <translation>Höchstwert beim Sprühen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::EvidencePanel</name>
    <message>
        <source>Go to Prepare</source>
        <translation>Zum Vorbereiten</translation>
    </message>
    <message>
        <source>Go to Sketch</source>
        <translation>Zur Skizze</translation>
    </message>
    <message>
        <source>Go to Spray</source>
        <translation>Zum Sprühen</translation>
    </message>
    <message>
        <source>Go to Judge</source>
        <translation>Zum Beurteilen</translation>
    </message>
    <message>
        <source>Go to History</source>
        <translation>Zur Historie</translation>
    </message>
    <message>
        <source>Add word</source>
        <translation>Wort dazu</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Background</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Readings of the point</source>
        <translation>Messwerte des Punktes</translation>
    </message>
    <message>
        <source>Why it may stand, or what is to be done</source>
        <translation>Warum es stehen darf oder was zu tun ist</translation>
    </message>
    <message>
        <source>Word on this question</source>
        <translation>Wort zu dieser Frage</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>Said before it was sent back: “%1”</source>
        <translation>Vor der Rückgabe gesagt: „%1“</translation>
    </message>
    <message>
        <source>Said by %1 before it was sent back: “%2”</source>
        <translation>Von %1 vor der Rückgabe gesagt: „%2“</translation>
    </message>
    <message>
        <source>All that is open on this question</source>
        <translation>Alles, was zu dieser Frage offen ist</translation>
    </message>
    <message>
        <source>Stops: %1</source>
        <translation>Hält auf: %1</translation>
    </message>
    <message>
        <source>Still stands</source>
        <translation>Gilt weiter</translation>
    </message>
    <message>
        <source>First rise</source>
        <translation>Erster Anstieg</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>On point %1: why it may stand, or what is to be done</source>
        <translation>Zu Punkt %1: warum er bleiben darf, oder was zu tun ist</translation>
    </message>
    <message>
        <source>stands, confirmed</source>
        <translation>gilt, bestätigt</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1; taped off: %2</source>
        <translation>%1; abgeklebt: %2</translation>
    </message>
    <message>
        <source>Said by %1: “%2”.</source>
        <translation>%1 sagt: „%2“.</translation>
    </message>
    <message>
        <source>It stops a sign-off all the same.</source>
        <translation>Es hält die Unterschrift trotzdem auf.</translation>
    </message>
    <message>
        <source>Not agreed by %1 before it was sent back: “%2”</source>
        <translation>%1 war vor dem Zurückgeben nicht einverstanden: „%2“</translation>
    </message>
    <message>
        <source>Not agreed by %1: “%2”.</source>
        <translation>%1 ist nicht einverstanden: „%2“.</translation>
    </message>
    <message>
        <source>Not agreed</source>
        <translation>Nicht einverstanden</translation>
    </message>
    <message>
        <source>The answer may not stand: the question stays open until it is answered again</source>
        <translation>Die Antwort darf so nicht stehen: Die Frage bleibt offen, bis sie neu beantwortet ist</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::FeedDialog</name>
    <message>
        <source>refused: too long, or cut off</source>
        <translation>abgelehnt: zu lang oder abgeschnitten</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>abgelehnt: %1</translation>
    </message>
    <message>
        <source>Detector feed</source>
        <translation>Messleitung vom Detektor</translation>
    </message>
    <message>
        <source>&amp;Use this feed</source>
        <translation>Diese Leitung &amp;benutzen</translation>
    </message>
    <message>
        <source>Turn the feed o&amp;ff</source>
        <translation>Leitung &amp;ausschalten</translation>
    </message>
    <message>
        <source>Forg&amp;et this feed</source>
        <translation>Leitung v&amp;ergessen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>lines of text with a value in each</source>
        <translation>Textzeilen mit je einem Wert</translation>
    </message>
    <message>
        <source>known feeds</source>
        <translation>bekannte Leitungen</translation>
    </message>
    <message>
        <source>name of the feed</source>
        <translation>Name der Leitung</translation>
    </message>
    <message>
        <source>the detector&apos;s name</source>
        <translation>der Name des Detektors</translation>
    </message>
    <message>
        <source>&amp;Known feeds</source>
        <translation>Be&amp;kannte Leitungen</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Listen</source>
        <translation>Mit&amp;hören</translation>
    </message>
    <message>
        <source>last lines and what they are read as</source>
        <translation>letzte Zeilen und wie sie gelesen werden</translation>
    </message>
    <message>
        <source>as it came</source>
        <translation>wie sie kam</translation>
    </message>
    <message>
        <source>read as</source>
        <translation>gelesen als</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>eine neue</translation>
    </message>
    <message>
        <source>Listen shows what comes.</source>
        <translation>Mithören zeigt, was kommt.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::FeedSession</name>
    <message>
        <source>the recorded file is over</source>
        <translation>die Aufzeichnung ist zu Ende</translation>
    </message>
    <message>
        <source>none of its lines can be read</source>
        <translation>keine ihrer Zeilen ist lesbar</translation>
    </message>
    <message>
        <source>connected, but no value comes</source>
        <translation>verbunden, aber es kommt kein Wert</translation>
    </message>
    <message>
        <source>the address fell silent</source>
        <translation>die Adresse ist verstummt</translation>
    </message>
    <message>
        <source>no detector feed</source>
        <translation>keine Messleitung</translation>
    </message>
    <message>
        <source>feed connecting</source>
        <translation>Leitung wird verbunden</translation>
    </message>
    <message>
        <source>detector feed live</source>
        <translation>Messleitung läuft</translation>
    </message>
    <message>
        <source>feed silent since %1</source>
        <translation>Leitung stumm seit %1</translation>
    </message>
    <message>
        <source>feed lost since %1</source>
        <translation>Leitung weg seit %1</translation>
    </message>
    <message>
        <source>recorded feed over</source>
        <translation>Aufzeichnung zu Ende</translation>
    </message>
    <message>
        <source>There is no detector feed.</source>
        <translation>Es gibt keine Messleitung.</translation>
    </message>
    <message>
        <source>The feed of %1 (%2) is being connected.</source>
        <translation>Die Leitung von %1 (%2) wird verbunden.</translation>
    </message>
    <message>
        <source>The feed of %1 (%2) is live.</source>
        <translation>Die Leitung von %1 (%2) läuft.</translation>
    </message>
    <message>
        <source>The feed of %1 is lost since %2: %3. Type values; it comes back by itself.</source>
        <translation>Die Leitung von %1 ist weg seit %2: %3. Werte eintippen; sie kommt von selbst wieder.</translation>
    </message>
    <message>
        <source>The recorded feed of %1 is over.</source>
        <translation>Die Aufzeichnung von %1 ist zu Ende.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::FileLink</name>
    <message>
        <source>there is no file %1</source>
        <translation>es gibt keine Datei %1</translation>
    </message>
    <message>
        <source>%1 may not be read</source>
        <translation>%1 darf nicht gelesen werden</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::FindingsModel</name>
    <message>
        <source>echo of %1</source>
        <translation>Echo von %1</translation>
    </message>
    <message>
        <source>masked by %1</source>
        <translation>verdeckt durch %1</translation>
    </message>
    <message>
        <source>shared with %1</source>
        <translation>geteilt mit %1</translation>
    </message>
    <message>
        <source>, held by a fix</source>
        <translation>, vorläufig gehalten</translation>
    </message>
    <message>
        <source>, conceded</source>
        <translation>, zugestanden</translation>
    </message>
    <message>
        <source>, awaits re-test</source>
        <translation>, Nachprüfung offen</translation>
    </message>
    <message>
        <source> (judged)</source>
        <translation> (von Hand)</translation>
    </message>
    <message>
        <source>own part below %1</source>
        <translation>eigen unter %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1 as shown</source>
        <translation>%1 wie angezeigt</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Fügestelle</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>95 % range</source>
        <translation>Bereich 95 %</translation>
    </message>
    <message>
        <source>Against %1</source>
        <translation>Gegen %1</translation>
    </message>
    <message>
        <source>Against limit</source>
        <translation>Gegen Grenzwert</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <source>Rate, air</source>
        <translation>Rate, Luft</translation>
    </message>
    <message>
        <source>Rate, He</source>
        <translation>Rate, He</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>conceded until %1</source>
        <translation>Sonderfreigabe bis %1</translation>
    </message>
    <message>
        <source>of all located leaks together, as air; –: none of its own, or it leaks only in another condition; ?: not known</source>
        <translation>von allen georteten Lecks zusammen, als Luft; –: kein eigener, oder es leckt nur in einem anderen Zustand; ?: nicht bekannt</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::FirstStart</name>
    <message>
        <source>Find, size, judge and prove the repair of leaks, joint by joint, on a drawing of your equipment.</source>
        <translation>Lecks finden, messen, beurteilen und ihre Reparatur belegen, Stelle für Stelle, auf einer Zeichnung Ihrer Anlage.</translation>
    </message>
    <message>
        <source>Nothing leaves this computer. No account. What you confirm is on disk at once.</source>
        <translation>Nichts verlässt diesen Rechner. Kein Konto. Was Sie bestätigen, ist sofort gespeichert.</translation>
    </message>
    <message>
        <source>New test object</source>
        <translation>Neues Prüfobjekt</translation>
    </message>
    <message>
        <source>name, volume, limit; then draw its joints</source>
        <translation>Name, Volumen, Grenzwert; dann seine Fügestellen zeichnen</translation>
    </message>
    <message>
        <source>Start from a photo or drawing</source>
        <translation>Mit Foto oder Zeichnung beginnen</translation>
    </message>
    <message>
        <source>it lies under the sheet; two clicks give the scale</source>
        <translation>liegt unter dem Blatt; zwei Klicks geben den Maßstab</translation>
    </message>
    <message>
        <source>Open a job file</source>
        <translation>Auftragsdatei öffnen</translation>
    </message>
    <message>
        <source>from another computer, on a stick, by mail</source>
        <translation>von einem anderen Rechner, vom Stift, aus der Post</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Vorführung ansehen</translation>
    </message>
    <message>
        <source>an invented box coater, two jobs a year apart</source>
        <translation>eine erfundene Beschichtungskammer, zwei Aufträge im Abstand eines Jahres</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::FormatForm</name>
    <message>
        <source>leak rate per volt</source>
        <translation>Leckrate je Volt</translation>
    </message>
    <message>
        <source>leak rate at 0 V</source>
        <translation>Leckrate bei 0 V</translation>
    </message>
    <message>
        <source>decades per volt</source>
        <translation>Dekaden je Volt</translation>
    </message>
    <message>
        <source>decade at 0 V</source>
        <translation>Dekade bei 0 V</translation>
    </message>
    <message>
        <source>where the value stands</source>
        <translation>wo der Wert steht</translation>
    </message>
    <message>
        <source>in a column</source>
        <translation>in einer Spalte</translation>
    </message>
    <message>
        <source>by a pattern</source>
        <translation>nach einem Muster</translation>
    </message>
    <message>
        <source>column of the value</source>
        <translation>Spalte des Wertes</translation>
    </message>
    <message>
        <source>what separates columns</source>
        <translation>was die Spalten trennt</translation>
    </message>
    <message>
        <source>blanks between</source>
        <translation>Leerzeichen dazwischen</translation>
    </message>
    <message>
        <source>commas between</source>
        <translation>Kommas dazwischen</translation>
    </message>
    <message>
        <source>semicolons between</source>
        <translation>Semikolons dazwischen</translation>
    </message>
    <message>
        <source>tabs between</source>
        <translation>Tabulatoren dazwischen</translation>
    </message>
    <message>
        <source>pattern: # for the number, * for any text</source>
        <translation>Muster: # für die Zahl, * für beliebigen Text</translation>
    </message>
    <message>
        <source>column of the time in a recorded file; 0: none</source>
        <translation>Spalte der Zeit in einer Aufzeichnung; 0: keine</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>keine Zeit</translation>
    </message>
    <message>
        <source>what the number is</source>
        <translation>was die Zahl ist</translation>
    </message>
    <message>
        <source>leak rate</source>
        <translation>Leckrate</translation>
    </message>
    <message>
        <source>volts, linear</source>
        <translation>Volt, linear</translation>
    </message>
    <message>
        <source>volts, in decades</source>
        <translation>Volt, in Dekaden</translation>
    </message>
    <message>
        <source>unit of leak rate</source>
        <translation>Einheit der Leckrate</translation>
    </message>
    <message>
        <source>C&amp;olumn</source>
        <translation>&amp;Spalte</translation>
    </message>
    <message>
        <source>Patte&amp;rn</source>
        <translation>&amp;Muster</translation>
    </message>
    <message>
        <source>Per volt</source>
        <translation>Je Volt</translation>
    </message>
    <message>
        <source>and at 0 V</source>
        <translation>und bei 0 V</translation>
    </message>
    <message>
        <source>Decades per volt</source>
        <translation>Dekaden je Volt</translation>
    </message>
    <message>
        <source>and at 0 V 1e</source>
        <translation>und bei 0 V 1e</translation>
    </message>
    <message>
        <source>&amp;Value</source>
        <translation>&amp;Wert</translation>
    </message>
    <message>
        <source>&amp;Time in column</source>
        <translation>&amp;Zeit in Spalte</translation>
    </message>
    <message>
        <source>&amp;Meaning</source>
        <translation>Be&amp;deutung</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::GestureLine</name>
    <message>
        <source>Keys of the tool</source>
        <translation>Tasten des Werkzeugs</translation>
    </message>
    <message>
        <source>x %1, up %2 mm</source>
        <translation>x %1, hoch %2 mm</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::GoTo</name>
    <message>
        <source>Go to</source>
        <translation>Gehe zu</translation>
    </message>
    <message>
        <source>go to</source>
        <translation>gehe zu</translation>
    </message>
    <message>
        <source>places that match</source>
        <translation>passende Stellen</translation>
    </message>
    <message>
        <source>point number, joint, job, object or command</source>
        <translation>Punktnummer, Fügestelle, Auftrag, Objekt oder Befehl</translation>
    </message>
    <message>
        <source>Nothing here is called so.</source>
        <translation>Nichts hier heißt so.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::HistoryLists</name>
    <message>
        <source>find objects and jobs</source>
        <translation>Objekte und Aufträge finden</translation>
    </message>
    <message>
        <source>object, tag, place, person, what was found, date</source>
        <translation>Objekt, Kennung, Ort, Person, Befund, Datum</translation>
    </message>
    <message>
        <source>test objects</source>
        <translation>Prüfobjekte</translation>
    </message>
    <message>
        <source>jobs</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Object facts …</source>
        <translation>Objektdaten …</translation>
    </message>
    <message>
        <source>New test object</source>
        <translation>Neues Prüfobjekt</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>Compare %1 and %2</source>
        <translation>%1 und %2 vergleichen</translation>
    </message>
    <message>
        <source>Mark two jobs with Space, then compare them.</source>
        <translation>Zwei Aufträge mit der Leertaste markieren, dann vergleichen.</translation>
    </message>
    <message>
        <source>Test objects</source>
        <translation>Prüfobjekte</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Mark two jobs or more of one object first: Space, or Shift+Space to mark only</source>
        <translation>Erst zwei oder mehr Aufträge eines Objekts merken: Leertaste, oder Umschalt+Leertaste, um nur zu merken</translation>
    </message>
    <message>
        <source>No job has all of “%1”. Esc clears the search.</source>
        <translation>In keinem Auftrag steht alles aus „%1“. Esc leert die Suche.</translation>
    </message>
    <message>
        <source>Compare %1 jobs</source>
        <translation>%1 Aufträge vergleichen</translation>
    </message>
    <message>
        <source>These jobs are on different test objects; mark jobs of one object. Where one was entered twice, say so in its facts.</source>
        <translation>Diese Aufträge betreffen verschiedene Prüfobjekte; Aufträge eines Objekts anhaken. Wurde eines zweimal angelegt, sagen Sie es in seinen Angaben.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::HistoryPage</name>
    <message>
        <source>Open a history first (Ctrl+O), or make one: File, New history file.</source>
        <translation>Zuerst eine Historie öffnen (Strg+O) oder anlegen: Datei, Neue Historiendatei.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::Inspector</name>
    <message>
        <source>On this sheet</source>
        <translation>Auf diesem Blatt</translation>
    </message>
    <message>
        <source>1 joint, </source>
        <translation>1 Fügestelle, </translation>
    </message>
    <message>
        <source>%1 joints, </source>
        <translation>%1 Fügestellen, </translation>
    </message>
    <message>
        <source>1 point</source>
        <translation>1 Punkt</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>Often forgotten: %1. &lt;a href=&quot;list&quot;&gt;Go through the list&lt;/a&gt;</source>
        <translation>Oft vergessen: %1. &lt;a href=&quot;list&quot;&gt;Die Liste durchgehen&lt;/a&gt;</translation>
    </message>
    <message>
        <source>What is often forgotten is drawn, or not there. &lt;a href=&quot;list&quot;&gt;The list&lt;/a&gt;</source>
        <translation>Was oft vergessen wird, ist gezeichnet oder nicht vorhanden. &lt;a href=&quot;list&quot;&gt;Die Liste&lt;/a&gt;</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::JobDialog</name>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>fault search</source>
        <translation>Fehlersuche</translation>
    </message>
    <message>
        <source>acceptance</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>yearly check</source>
        <translation>Jahresprüfung</translation>
    </message>
    <message>
        <source>after repair</source>
        <translation>nach Reparatur</translation>
    </message>
    <message>
        <source>after rebuild</source>
        <translation>nach Umbau</translation>
    </message>
    <message>
        <source>who is logging</source>
        <translation>wer schreibt</translation>
    </message>
    <message>
        <source>takes the sketch of the last job</source>
        <translation>übernimmt die Skizze des letzten Auftrags</translation>
    </message>
    <message>
        <source>Test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Who is logging</source>
        <translation>Wer schreibt</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Start job</source>
        <translation>Auftrag beginnen</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>the first one of this object</source>
        <translation>der erste dieses Objekts</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::JobsModel</name>
    <message>
        <source>in progress</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>eingereicht</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>job %1, marked</source>
        <translation>Auftrag %1, markiert</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>not as signed</source>
        <translation>nicht wie unterschrieben</translation>
    </message>
    <message>
        <source>Not as signed: %1</source>
        <translation>Nicht wie unterschrieben: %1</translation>
    </message>
    <message>
        <source>Found in</source>
        <translation>Gefunden in</translation>
    </message>
    <message>
        <source>nothing beside what the row shows</source>
        <translation>nichts außer dem, was die Zeile zeigt</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::JointList</name>
    <message>
        <source>Joints on this sheet</source>
        <translation>Fügestellen auf diesem Blatt</translation>
    </message>
    <message>
        <source>%1, %2, points %3</source>
        <translation>%1, %2, Punkte %3</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>stillgelegt</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::JointPanel</name>
    <message>
        <source>Joint</source>
        <translation>Fügestelle</translation>
    </message>
    <message>
        <source>Name of the joint</source>
        <translation>Name der Fügestelle</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind of joint</source>
        <translation>Art der Fügestelle</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Cord thickness in millimetres</source>
        <translation>Schnurstärke in Millimetern</translation>
    </message>
    <message>
        <source>cord</source>
        <translation>Schnur</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Conditions each point is sprayed in</source>
        <translation>Zustände, in denen jeder Punkt besprüht wird</translation>
    </message>
    <message>
        <source>as it stands</source>
        <translation>wie sie ist</translation>
    </message>
    <message>
        <source>at rest and flexed</source>
        <translation>in Ruhe und gebogen</translation>
    </message>
    <message>
        <source>at rest and extended</source>
        <translation>in Ruhe und ausgezogen</translation>
    </message>
    <message>
        <source>at rest and hot</source>
        <translation>in Ruhe und heiß</translation>
    </message>
    <message>
        <source>open and shut</source>
        <translation>offen und zu</translation>
    </message>
    <message>
        <source>at rest and at an angle</source>
        <translation>in Ruhe und schräg</translation>
    </message>
    <message>
        <source>Spray it</source>
        <translation>Besprühen</translation>
    </message>
    <message>
        <source>test set-up</source>
        <translation>Prüfaufbau</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>smooth</source>
        <translation>glatt</translation>
    </message>
    <message>
        <source>no limit set yet</source>
        <translation>noch kein Grenzwert</translation>
    </message>
    <message>
        <source>limit %1 mbar·l/s He</source>
        <translation>Grenzwert %1 mbar·l/s He</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::JointsModel</name>
    <message>
        <source>disturbed by: %1</source>
        <translation>gestört durch: %1</translation>
    </message>
    <message>
        <source>%1 (job %2)</source>
        <translation>%1 (Auftrag %2)</translation>
    </message>
    <message>
        <source>%1, no longer drawn</source>
        <translation>%1, nicht mehr gezeichnet</translation>
    </message>
    <message>
        <source>never tested</source>
        <translation>nie geprüft</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message numerus="yes">
        <source>over the limit in %1 of %n job(s) in which it was tested</source>
        <translation>
            <numerusform>in %1 von %n Auftrag, in dem sie geprüft wurde, über der Grenze</numerusform>
            <numerusform>in %1 von %n Aufträgen, in denen sie geprüft wurde, über der Grenze</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, 95 % range %2, point %3, job %4</source>
        <translation>%1, 95-%-Bereich %2, Punkt %3, Auftrag %4</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Fügestelle</translation>
    </message>
    <message>
        <source>Over the limit</source>
        <translation>Über Grenze</translation>
    </message>
    <message>
        <source>Largest leak</source>
        <translation>Größtes Leck</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>Last touched</source>
        <translation>Zuletzt berührt</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>not sized</source>
        <translation>nicht bemessen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::JudgePage</name>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Filter the findings</source>
        <translation>Befunde filtern</translation>
    </message>
    <message>
        <source>Which findings</source>
        <translation>Welche Befunde</translation>
    </message>
    <message>
        <source>needs a decision</source>
        <translation>braucht Entscheidung</translation>
    </message>
    <message>
        <source>over</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>all points</source>
        <translation>alle Punkte</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Log repairs</source>
        <translation>Reparaturen eintragen</translation>
    </message>
    <message>
        <source>Verdict …</source>
        <translation>Urteil …</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>%1 over · %2 cannot say · %3 no answer · %4 within</source>
        <translation>%1 darüber · %2 unklar · %3 ohne Antwort · %4 darunter</translation>
    </message>
    <message>
        <source>Log repair</source>
        <translation>Reparatur eintragen</translation>
    </message>
    <message numerus="yes">
        <source>Log %n repair(s)</source>
        <translation>
            <numerusform>%n Reparatur eintragen</numerusform>
            <numerusform>%n Reparaturen eintragen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Repair stored. The round that proves it calls %n point(s).</source>
        <translation>
            <numerusform>Reparatur gespeichert. Die Runde zum Nachweis ruft %n Punkt.</numerusform>
            <numerusform>Reparatur gespeichert. Die Runde zum Nachweis ruft %n Punkte.</numerusform>
        </translation>
    </message>
    <message>
        <source>working out …</source>
        <translation>wird ausgerechnet …</translation>
    </message>
    <message>
        <source>working out …  shown: of %1</source>
        <translation>wird ausgerechnet …  gezeigt: von %1</translation>
    </message>
    <message>
        <source>Repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source> It cures: not to be sprayed before %1 %2.</source>
        <translation> Es härtet aus: nicht absprühen vor %1 %2.</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Balance and repair</source>
        <translation>Bilanz und Reparatur</translation>
    </message>
    <message>
        <source>Balance, as air</source>
        <translation>Bilanz, als Luft</translation>
    </message>
    <message>
        <source>No finding under &quot;%1&quot;. Esc shows all points.</source>
        <translation>Kein Befund unter „%1“. Esc zeigt alle Punkte.</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>Job %1 is signed and stays as it is; what is known later is an amendment (Sign off).</source>
        <translation>Auftrag %1 ist unterschrieben und bleibt, wie er ist; was später bekannt wird, ist ein Nachtrag (Unterschreiben).</translation>
    </message>
    <message>
        <source> · %1 not counted</source>
        <translation> · %1 zählt nicht</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::KeyCard</name>
    <message>
        <source>keys of %1</source>
        <translation>Tasten: %1</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::KindLimitsDialog</name>
    <message>
        <source>Limits by kind of joint</source>
        <translation>Grenzwerte nach Art der Fügestelle</translation>
    </message>
    <message>
        <source>empty: the limit for one joint</source>
        <translation>leer: der Grenzwert einer Stelle</translation>
    </message>
    <message numerus="yes">
        <source>%n drawn</source>
        <translation>
            <numerusform>%n gezeichnet</numerusform>
            <numerusform>%n gezeichnet</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::LastTime</name>
    <message>
        <source>job %1: %2</source>
        <translation>Auftrag %1: %2</translation>
    </message>
    <message>
        <source>job %1: %2 on the chamber</source>
        <translation>Auftrag %1: %2 an der Kammer</translation>
    </message>
    <message>
        <source>job %1: below %2 on the chamber</source>
        <translation>Auftrag %1: unter %2 an der Kammer</translation>
    </message>
    <message>
        <source>job %1: at least %2 on the chamber</source>
        <translation>Auftrag %1: mindestens %2 an der Kammer</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::LiveTrace</name>
    <message>
        <source>type values, or &lt;a href=&quot;feed&quot;&gt;set up a feed&lt;/a&gt;</source>
        <translation>Werte tippen, oder &lt;a href=&quot;feed&quot;&gt;eine Messleitung einrichten&lt;/a&gt;</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::LoggerDialog</name>
    <message>
        <source>Who is logging</source>
        <translation>Wer schreibt</translation>
    </message>
    <message>
        <source>stands on every reading from now on; Enter keeps it</source>
        <translation>steht ab jetzt auf jedem Messwert; Eingabe behält ihn</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::MainWindow</name>
    <message>
        <source>Written to %1.</source>
        <translation>Geschrieben: %1.</translation>
    </message>
    <message>
        <source>Export a table or a map</source>
        <translation>Tabelle oder Karte ausgeben</translation>
    </message>
    <message>
        <source>%1 says nothing about its form.</source>
        <translation>%1 sagt nichts über die Form.</translation>
    </message>
    <message>
        <source>End the name with .csv, .xlsx, .svg or .png.</source>
        <translation>Den Namen mit .csv, .xlsx, .svg oder .png enden lassen.</translation>
    </message>
    <message>
        <source>Working out the tables</source>
        <translation>Tabellen werden erarbeitet</translation>
    </message>
    <message>
        <source> · round %1, %2</source>
        <translation> · Runde %1, %2</translation>
    </message>
    <message>
        <source>Every field is kept as you leave it. F1 shows the keys of a stage.</source>
        <translation>Jedes Feld wird beim Verlassen gespeichert. F1 zeigt die Tasten.</translation>
    </message>
    <message>
        <source>Points keep their number for life. F1 shows the keys of the tools.</source>
        <translation>Punkte behalten ihre Nummer für immer. F1 zeigt die Tasten der Werkzeuge.</translation>
    </message>
    <message>
        <source>Stored means on disk. F1 shows the keys.</source>
        <translation>Gespeichert heißt: auf der Platte. F1 zeigt die Tasten.</translation>
    </message>
    <message>
        <source>Enter shows why; Space ticks for repair.</source>
        <translation>Eingabe zeigt warum; Leertaste kreuzt zur Reparatur an.</translation>
    </message>
    <message>
        <source>Exceptions first; Enter opens the place.</source>
        <translation>Ausnahmen zuerst; Eingabe öffnet die Stelle.</translation>
    </message>
    <message>
        <source>No job is open.</source>
        <translation>Kein Auftrag offen.</translation>
    </message>
    <message>
        <source>Open one in History, or start one with Ctrl+N.</source>
        <translation>In der Historie einen öffnen oder mit Strg+N beginnen.</translation>
    </message>
    <message>
        <source>It will be asked for at sign-off.</source>
        <translation>Bei der Freigabe wird danach gefragt.</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>%1 (invented data)</source>
        <translation>%1 (erfundene Daten)</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>No job open</source>
        <translation>Kein Auftrag offen</translation>
    </message>
    <message>
        <source>start in History</source>
        <translation>in der Historie beginnen</translation>
    </message>
    <message>
        <source>Not stored</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Report as PDF</source>
        <translation>Bericht als PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Working out the report</source>
        <translation>Bericht wird erarbeitet</translation>
    </message>
    <message>
        <source>Something else is still being worked out.</source>
        <translation>Etwas anderes wird noch ausgearbeitet.</translation>
    </message>
    <message>
        <source>Wait for it, or cancel it.</source>
        <translation>Abwarten oder abbrechen.</translation>
    </message>
    <message>
        <source>Cancelled; nothing was written.</source>
        <translation>Abgebrochen; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Sent to print.</source>
        <translation>Zum Druck gegeben.</translation>
    </message>
    <message>
        <source>Table of every reading (*.csv)</source>
        <translation>Tabelle aller Messwerte (*.csv)</translation>
    </message>
    <message>
        <source>Table of findings (*.csv)</source>
        <translation>Tabelle der Befunde (*.csv)</translation>
    </message>
    <message>
        <source>Workbook (*.xlsx);;Map, scalable (*.svg);;Map, picture (*.png)</source>
        <translation>Arbeitsmappe (*.xlsx);;Karte, skalierbar (*.svg);;Karte, Bild (*.png)</translation>
    </message>
    <message>
        <source>Drawing the map</source>
        <translation>Karte wird gezeichnet</translation>
    </message>
    <message>
        <source>%1 is logging.</source>
        <translation>%1 schreibt.</translation>
    </message>
    <message>
        <source>Not stored yet</source>
        <translation>Noch nicht gespeichert</translation>
    </message>
    <message>
        <source>The reading %1 is not stored: another program holds the history. It is stored as soon as that program lets go, if this window stays open.</source>
        <translation>Der Messwert %1 ist nicht gespeichert: ein anderes Programm hält den Verlauf. Er wird gespeichert, sobald es ihn freigibt, wenn dieses Fenster offen bleibt.</translation>
    </message>
    <message>
        <source>&amp;Stay open</source>
        <translation>&amp;Offen bleiben</translation>
    </message>
    <message>
        <source>&amp;Close without it</source>
        <translation>&amp;Ohne ihn schließen</translation>
    </message>
    <message>
        <source>Job %1 is not as it was signed: %2</source>
        <translation>Auftrag %1 ist nicht, wie er unterschrieben wurde: %2</translation>
    </message>
    <message>
        <source>Ask who keeps the history; a back-up may have it as it was.</source>
        <translation>Wer die Historie verwaltet, weiß Rat; eine Sicherung hat ihn vielleicht, wie er war.</translation>
    </message>
    <message>
        <source>%1, not as signed</source>
        <translation>%1, nicht wie unterschrieben</translation>
    </message>
    <message>
        <source>Whether job %1 is as it was signed could not be checked: %2</source>
        <translation>Ob Auftrag %1 ist, wie er unterschrieben wurde, konnte nicht geprüft werden: %2</translation>
    </message>
    <message>
        <source>It is tried again.</source>
        <translation>Es wird noch einmal versucht.</translation>
    </message>
    <message>
        <source>Enter opens a job; in the list Space marks it, and two marked jobs are compared; Shift+Space marks more.</source>
        <translation>Enter öffnet einen Auftrag; in der Liste markiert ihn die Leertaste, und zwei markierte werden verglichen; Umschalt+Leertaste markiert weitere.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::MapPanel</name>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Wie gelesen</translation>
    </message>
    <message>
        <source>Echoes taken out</source>
        <translation>Echos herausgenommen</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Hinterlassen</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>No echo was found: nothing is taken out.</source>
        <translation>Kein Echo wurde gefunden: nichts wird herausgenommen.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::MapSide</name>
    <message>
        <source>Job %1, as left</source>
        <translation>Auftrag %1, hinterlassen</translation>
    </message>
    <message>
        <source>Job %1, as found</source>
        <translation>Auftrag %1, vorgefunden</translation>
    </message>
    <message>
        <source>smallest detectable %1</source>
        <translation>kleinstes nachweisbar %1</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>Jobs %1 and %2, as left</source>
        <translation>Aufträge %1 und %2, hinterlassen</translation>
    </message>
    <message>
        <source>Jobs %1 and %2, as found</source>
        <translation>Aufträge %1 und %2, vorgefunden</translation>
    </message>
    <message>
        <source>band: job %1 · the narrow line in it: job %2</source>
        <translation>Band: Auftrag %1 · die schmale Linie darin: Auftrag %2</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::Menus</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>New &amp;test object …</source>
        <translation>Neues &amp;Prüfobjekt …</translation>
    </message>
    <message>
        <source>&amp;New job …</source>
        <translation>&amp;Neuer Auftrag …</translation>
    </message>
    <message>
        <source>&amp;Open history or job file …</source>
        <translation>Historie oder Auftragsdatei &amp;öffnen …</translation>
    </message>
    <message>
        <source>New &amp;history file …</source>
        <translation>Neue &amp;Historie …</translation>
    </message>
    <message>
        <source>&amp;Export table or map …</source>
        <translation>Tabelle oder Karte &amp;ausgeben …</translation>
    </message>
    <message>
        <source>&amp;Write a job file …</source>
        <translation>Auftragsdatei &amp;schreiben …</translation>
    </message>
    <message>
        <source>&amp;Back up the history …</source>
        <translation>Historie si&amp;chern …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wieder vor</translation>
    </message>
    <message>
        <source>&amp;Find in the list</source>
        <translation>In der Liste &amp;finden</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>&amp;Paper (day)</source>
        <translation>&amp;Papier (Tag)</translation>
    </message>
    <message>
        <source>&amp;Slate (evening)</source>
        <translation>&amp;Schiefer (Abend)</translation>
    </message>
    <message>
        <source>&amp;Hall (dim hall)</source>
        <translation>&amp;Halle (dunkle Halle)</translation>
    </message>
    <message>
        <source>Ne&amp;xt theme</source>
        <translation>&amp;Nächstes Aussehen</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Ganzer Bildschirm</translation>
    </message>
    <message>
        <source>Next &amp;part of the window</source>
        <translation>N&amp;ächster Teil des Fensters</translation>
    </message>
    <message>
        <source>Pre&amp;vious part of the window</source>
        <translation>&amp;Voriger Teil des Fensters</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>Auf&amp;trag</translation>
    </message>
    <message>
        <source>Who is &amp;logging …</source>
        <translation>Wer sch&amp;reibt …</translation>
    </message>
    <message>
        <source>&amp;Unit shown</source>
        <translation>Gezeigte &amp;Einheit</translation>
    </message>
    <message>
        <source>&amp;Close the job</source>
        <translation>Auftrag s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Tools</source>
        <translation>&amp;Werkzeuge</translation>
    </message>
    <message>
        <source>&amp;Go to …</source>
        <translation>&amp;Gehe zu …</translation>
    </message>
    <message>
        <source>&amp;Last ten notes</source>
        <translation>&amp;Letzte zehn Meldungen</translation>
    </message>
    <message>
        <source>&amp;Sounds</source>
        <translation>&amp;Töne</translation>
    </message>
    <message>
        <source>Sounds are on.</source>
        <translation>Töne sind an.</translation>
    </message>
    <message>
        <source>Sounds are off.</source>
        <translation>Töne sind aus.</translation>
    </message>
    <message>
        <source>&amp;Check the history</source>
        <translation>&amp;Historie prüfen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys of this stage</source>
        <translation>&amp;Tasten dieser Stufe</translation>
    </message>
    <message>
        <source>&amp;About Sealwalk</source>
        <translation>Ü&amp;ber Sealwalk</translation>
    </message>
    <message>
        <source>About Sealwalk</source>
        <translation>Über Sealwalk</translation>
    </message>
    <message>
        <source>&lt;b&gt;Sealwalk&lt;/b&gt;&lt;br&gt;Find, size, judge and prove the repair of vacuum leaks, joint by joint.&lt;br&gt;&lt;br&gt;Free software under the GNU General Public License, version 3 or later; without any warranty. It gives no permission to work: your site&apos;s rules, permits and licensed people come first.</source>
        <translation>&lt;b&gt;Sealwalk&lt;/b&gt;&lt;br&gt;Vakuumlecks finden, messen, beurteilen und ihre Reparatur belegen, Stelle für Stelle.&lt;br&gt;&lt;br&gt;Freie Software unter der GNU General Public License, Version 3 oder später; ohne jede Gewähr. Das Programm erlaubt keine Arbeit: Regeln am Ort, Erlaubnisscheine und zugelassene Leute gehen vor.</translation>
    </message>
    <message>
        <source>command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>&amp;Report as PDF, blank sheet in Sketch …</source>
        <translation>Be&amp;richt als PDF, leeres Blatt beim Skizzieren …</translation>
    </message>
    <message>
        <source>&amp;Detector feed …</source>
        <translation>&amp;Messleitung vom Detektor …</translation>
    </message>
    <message>
        <source>Sheet &amp;larger</source>
        <translation>Blatt &amp;größer</translation>
    </message>
    <message>
        <source>Sheet s&amp;maller</source>
        <translation>Blatt &amp;kleiner</translation>
    </message>
    <message>
        <source>&amp;Whole sheet</source>
        <translation>Gan&amp;zes Blatt</translation>
    </message>
    <message>
        <source>Sheet sta&amp;ys paper</source>
        <translation>Blatt &amp;bleibt Papier</translation>
    </message>
    <message>
        <source>To&amp;uch strip</source>
        <translation>&amp;Tastfelder</translation>
    </message>
    <message>
        <source>Readings from a &amp;paper sheet …</source>
        <translation>Messungen vom &amp;Papier …</translation>
    </message>
    <message>
        <source>&amp;Presenter …</source>
        <translation>&amp;Presenter …</translation>
    </message>
    <message>
        <source>Add an &amp;amendment …</source>
        <translation>&amp;Nachtrag anfügen …</translation>
    </message>
    <message>
        <source>P&amp;eople who sign …</source>
        <translation>W&amp;er unterschreibt …</translation>
    </message>
    <message>
        <source>&amp;Look at the report, print …</source>
        <translation>Bericht &amp;ansehen, drucken …</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z brings it again</source>
        <translation>Strg+Umschalt+Z bringt es wieder</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Wieder getan: %1.</translation>
    </message>
    <message>
        <source>Take in another h&amp;istory …</source>
        <translation>Andere H&amp;istorie übernehmen …</translation>
    </message>
    <message>
        <source>Lan&amp;guage of reports and maps</source>
        <translation>Sprache von Berichten und &amp;Karten</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::MergeSummary</name>
    <message>
        <source>What came of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>Jobs that came: %1; that went on: %2; that were here already: %3; not taken in: %4.</source>
        <translation>Aufträge, die kamen: %1; die weitergingen: %2; die schon hier waren: %3; nicht übernommen: %4.</translation>
    </message>
    <message>
        <source>Their number was taken here and they got another: %1.</source>
        <translation>Ihre Nummer war hier vergeben, und sie erhielten eine andere: %1.</translation>
    </message>
    <message>
        <source>All kept their numbers.</source>
        <translation>Alle behielten ihre Nummer.</translation>
    </message>
    <message>
        <source>job by job</source>
        <translation>Auftrag für Auftrag</translation>
    </message>
    <message>
        <source>There is nothing to say of any single job.</source>
        <translation>Zu keinem einzelnen Auftrag ist etwas zu sagen.</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>Job %1 of %2</source>
        <translation>Auftrag %1 von %2</translation>
    </message>
    <message>
        <source>%1 came</source>
        <translation>%1 ist gekommen</translation>
    </message>
    <message>
        <source>%1 went on: %2</source>
        <translation>%1 ging weiter: %2</translation>
    </message>
    <message>
        <source>%1 was here already</source>
        <translation>%1 war schon hier</translation>
    </message>
    <message>
        <source>%1 was not taken in: %2</source>
        <translation>%1 wurde nicht aufgenommen: %2</translation>
    </message>
    <message>
        <source>went on in both places, as far as can be told; they differ in: %1</source>
        <translation>ging, soweit zu erkennen, an beiden Orten weiter; verschieden sind: %1</translation>
    </message>
    <message>
        <source>Not all that was said there of points and objects was taken in: %1</source>
        <translation>Nicht alles, was dort von Punkten und Objekten gesagt wurde, wurde aufgenommen: %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::MomentField</name>
    <message>
        <source>now; from paper: 2026-03-01 14:32</source>
        <translation>jetzt; vom Papier: 2026-03-01 14:32</translation>
    </message>
    <message>
        <source>this has not come yet</source>
        <translation>das ist noch nicht gewesen</translation>
    </message>
    <message>
        <source>a day and a time, such as 2026-03-01 14:32; empty: now</source>
        <translation>Tag und Uhrzeit, etwa 2026-03-01 14:32; leer: jetzt</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::NoSheet</name>
    <message>
        <source>New sheet</source>
        <translation>Neues Blatt</translation>
    </message>
    <message>
        <source>From a photo or drawing</source>
        <translation>Aus Foto oder Zeichnung</translation>
    </message>
    <message>
        <source>No job is open; History opens one.</source>
        <translation>Kein Auftrag offen; die Historie öffnet einen.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet. Begin with a sheet.</source>
        <translation>Noch nichts gezeichnet. Mit einem Blatt beginnen.</translation>
    </message>
    <message>
        <source>Nothing is drawn, and the job is closed for changes.</source>
        <translation>Nichts gezeichnet, und der Auftrag ist für Änderungen geschlossen.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::NoteLine</name>
    <message>
        <source>note line</source>
        <translation>Meldezeile</translation>
    </message>
    <message>
        <source>progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>the last ten notes</source>
        <translation>die letzten zehn Meldungen</translation>
    </message>
    <message>
        <source>nothing was said yet</source>
        <translation>noch keine Meldung</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::NumberField</name>
    <message>
        <source>&quot;%1&quot; is no number; %2 takes one such as 24 or 12.5.</source>
        <translation>„%1“ ist keine Zahl; für %2 passt etwa 24 oder 12,5.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole number; %2 takes one such as 24.</source>
        <translation>&quot;%1&quot; ist keine ganze Zahl; %2 nimmt eine wie 24.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ObjectDialog</name>
    <message>
        <source>New test object</source>
        <translation>Neues Prüfobjekt</translation>
    </message>
    <message>
        <source>Test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>120 l or 0.12 m3</source>
        <translation>120 l oder 0,12 m3</translation>
    </message>
    <message>
        <source>limit for one joint</source>
        <translation>Grenzwert einer Fügestelle</translation>
    </message>
    <message>
        <source>limit for all together</source>
        <translation>Grenzwert für alle zusammen</translation>
    </message>
    <message>
        <source>base pressure wanted</source>
        <translation>gewünschter Enddruck</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Limit, one joint</source>
        <translation>Grenzwert, eine Stelle</translation>
    </message>
    <message>
        <source>helium, 1 bar outside</source>
        <translation>Helium, 1 bar außen</translation>
    </message>
    <message>
        <source>Limit, all</source>
        <translation>Grenzwert, alle</translation>
    </message>
    <message>
        <source>Base pressure</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>wanted by the owner</source>
        <translation>vom Eigner gewünscht</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Make test object</source>
        <translation>Prüfobjekt anlegen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>a test object needs a name; without one nobody finds it again</source>
        <translation>ein Prüfobjekt braucht einen Namen; ohne findet es niemand wieder</translation>
    </message>
    <message>
        <source>Also entered as …</source>
        <translation>Auch angelegt als …</translation>
    </message>
    <message>
        <source>one of this name and tag is here already; give this one another tag, or start its job on that one</source>
        <translation>eines mit diesem Namen und Kennzeichen ist schon hier; geben Sie diesem ein anderes Kennzeichen oder beginnen Sie den Auftrag an jenem</translation>
    </message>
    <message>
        <source>1e-6 mbar·l/s</source>
        <translation>1e-6 mbar·l/s</translation>
    </message>
    <message>
        <source>as air, 1 bar outside</source>
        <translation>als Luft, 1 bar außen</translation>
    </message>
    <message>
        <source>What all leaks together may let in, compared with the pressure rise and the sum of the leaks, both as air. A total given as helium is about 2.7 times as much as air where the leaks are molecular; leave it empty where only single joints are judged.</source>
        <translation>Was alle Lecks zusammen einlassen dürfen; verglichen mit dem Druckanstieg und der Summe der Lecks, beide als Luft. Eine Summe in Helium ist bei molekularen Lecks etwa 2,7-mal so viel wie in Luft; leer lassen, wo nur einzelne Fügestellen beurteilt werden.</translation>
    </message>
    <message>
        <source>kept for all its jobs; only the name is needed</source>
        <translation>gilt für alle seine Aufträge; nötig ist nur der Name</translation>
    </message>
    <message>
        <source>speed of its own pumps for air</source>
        <translation>Saugvermögen der eigenen Pumpen für Luft</translation>
    </message>
    <message>
        <source>Effective, at the chamber: it tells what base pressure a leak costs</source>
        <translation>Wirksam, an der Kammer: Es sagt, welchen Enddruck ein Leck kostet</translation>
    </message>
    <message>
        <source>pressure the pumps reach alone</source>
        <translation>Druck, den die Pumpen allein erreichen</translation>
    </message>
    <message>
        <source>Own pumps</source>
        <translation>Eigene Pumpen</translation>
    </message>
    <message>
        <source>air at the chamber; alone to</source>
        <translation>Luft an der Kammer; allein bis</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ObjectsModel</name>
    <message>
        <source>All objects</source>
        <translation>Alle Objekte</translation>
    </message>
    <message>
        <source>no job yet</source>
        <translation>noch kein Auftrag</translation>
    </message>
    <message numerus="yes">
        <source>%n open temporary repair(s)</source>
        <translation>
            <numerusform>%n vorläufige Reparatur offen</numerusform>
            <numerusform>%n vorläufige Reparaturen offen</numerusform>
        </translation>
    </message>
    <message>
        <source>Test object</source>
        <translation>Prüfobjekt</translation>
    </message>
    <message>
        <source>Last job</source>
        <translation>Letzter Auftrag</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Temporary</source>
        <translation>Vorläufig</translation>
    </message>
    <message>
        <source>also entered as %1</source>
        <translation>auch angelegt als %1</translation>
    </message>
    <message>
        <source>temporary repairs that nothing has made good yet</source>
        <translation>vorläufige Reparaturen, die noch nichts gutgemacht hat</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::OpenEndsBar</name>
    <message>
        <source>Make it the next round  T</source>
        <translation>Zur nächsten Runde machen  T</translation>
    </message>
    <message>
        <source>Void and spray again …  V</source>
        <translation>Verwerfen und neu sprühen …  V</translation>
    </message>
    <message>
        <source>Sprays that settle what is open</source>
        <translation>Sprühungen, die das Offene klären</translation>
    </message>
    <message>
        <source>Points taken while the background moved</source>
        <translation>Punkte, gemessen während der Untergrund wanderte</translation>
    </message>
    <message>
        <source>To settle</source>
        <translation>Zu klären</translation>
    </message>
    <message>
        <source>Background moved</source>
        <translation>Untergrund gewandert</translation>
    </message>
    <message>
        <source>spray %1</source>
        <translation>%1 sprühen</translation>
    </message>
    <message>
        <source>tape %1, spray %2</source>
        <translation>%1 abkleben, %2 sprühen</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n Punkt</numerusform>
            <numerusform>%n Punkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) void; their points are called again.</source>
        <translation>
            <numerusform>%n Ablesung verworfen; ihr Punkt wird wieder aufgerufen.</numerusform>
            <numerusform>%n Ablesungen verworfen; ihre Punkte werden wieder aufgerufen.</numerusform>
        </translation>
    </message>
    <message>
        <source>No open point here would be settled by a round of its own.</source>
        <translation>Kein offener Punkt würde hier durch eine eigene Runde geklärt.</translation>
    </message>
    <message>
        <source>The job is not open for work; no round can be begun.</source>
        <translation>Der Auftrag ist nicht in Arbeit; es kann keine Runde begonnen werden.</translation>
    </message>
    <message>
        <source>No readings here were taken while the background moved.</source>
        <translation>Hier wurde keine Ablesung genommen, während sich der Untergrund bewegte.</translation>
    </message>
    <message>
        <source>Void together</source>
        <translation>Zusammen verwerfen</translation>
    </message>
    <message>
        <source>Void the readings of %1 and spray them again?</source>
        <translation>Die Ablesungen von %1 verwerfen und neu sprühen?</translation>
    </message>
    <message>
        <source>background moved</source>
        <translation>Untergrund gewandert</translation>
    </message>
    <message>
        <source>Void and spray again</source>
        <translation>Verwerfen und neu sprühen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::OutlookColumn</name>
    <message>
        <source>measured with the reference leak, 63 %</source>
        <translation>mit dem Prüfleck gemessen, 63 %</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingetippt</translation>
    </message>
    <message>
        <source>volume over the helium speed</source>
        <translation>Volumen durch Heliumsaugvermögen</translation>
    </message>
    <message>
        <source>assumed: type speeds and volume, or measure it</source>
        <translation>angenommen: Saugvermögen und Volumen eintragen oder messen</translation>
    </message>
    <message>
        <source>What this set-up can see</source>
        <translation>Was dieser Aufbau sehen kann</translation>
    </message>
    <message>
        <source>smallest detectable leak</source>
        <translation>kleinstes nachweisbares Leck</translation>
    </message>
    <message>
        <source>response</source>
        <translation>Ansprechen</translation>
    </message>
    <message>
        <source>dwell at a point</source>
        <translation>Sprühzeit je Punkt</translation>
    </message>
    <message>
        <source>wait between points</source>
        <translation>Warten zwischen Punkten</translation>
    </message>
    <message>
        <source>Time and helium</source>
        <translation>Zeit und Helium</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>%1 % of the final value</source>
        <translation>%1 % des Endwerts</translation>
    </message>
    <message>
        <source>or until the background is back</source>
        <translation>oder bis der Untergrund zurück ist</translation>
    </message>
    <message>
        <source>from the helium speeds</source>
        <translation>aus den Heliumsaugvermögen</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n Punkt</numerusform>
            <numerusform>%n Punkte</numerusform>
        </translation>
    </message>
    <message>
        <source>Known when points are laid in Sketch.</source>
        <translation>Bekannt, wenn in der Skizze Punkte liegen.</translation>
    </message>
    <message>
        <source>, about %1 l of helium while spraying</source>
        <translation>, etwa %1 l Helium beim Sprühen</translation>
    </message>
    <message>
        <source>&amp;Go on to Sketch</source>
        <translation>&amp;Weiter zur Skizze</translation>
    </message>
    <message>
        <source>&amp;Go on to Spray</source>
        <translation>&amp;Weiter zum Sprühen</translation>
    </message>
    <message>
        <source>limit missing</source>
        <translation>Grenzwert fehlt</translation>
    </message>
    <message>
        <source>calibration missing</source>
        <translation>Kalibrierung fehlt</translation>
    </message>
    <message>
        <source>background missing</source>
        <translation>Untergrund fehlt</translation>
    </message>
    <message>
        <source>ready to start</source>
        <translation>bereit</translation>
    </message>
    <message>
        <source>the speed at the detector is missing</source>
        <translation>das Saugvermögen am Detektor fehlt</translation>
    </message>
    <message>
        <source>no speed of a pump in parallel is typed</source>
        <translation>kein Saugvermögen einer Parallelpumpe eingetragen</translation>
    </message>
    <message>
        <source>a pump in parallel, its speed not typed</source>
        <translation>eine Parallelpumpe, ihr Saugvermögen nicht eingetragen</translation>
    </message>
    <message>
        <source>%1 × noise, and drift over the dwell, ÷ what the dwell shows, × factor</source>
        <translation>%1 × Rauschen, und Drift über die Sprühzeit, ÷ was die Sprühzeit zeigt, × Faktor</translation>
    </message>
    <message>
        <source>; at %1, where least can be seen</source>
        <translation>; bei %1, wo am wenigsten zu sehen ist</translation>
    </message>
    <message>
        <source>about %1 min where nothing answers</source>
        <translation>etwa %1 min, wo nichts antwortet</translation>
    </message>
    <message>
        <source>share of a leak that is shown</source>
        <translation>angezeigter Anteil eines Lecks</translation>
    </message>
    <message>
        <source>measured: shown over reference leak; %1 by the speeds</source>
        <translation>gemessen: angezeigt durch Prüfleck; %1 nach den Saugvermögen</translation>
    </message>
    <message>
        <source>measured: shown over reference leak</source>
        <translation>gemessen: angezeigt durch Prüfleck</translation>
    </message>
    <message>
        <source>too blind to pass</source>
        <translation>zu blind zum Bestehen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PageTabs</name>
    <message>
        <source>Parts of this page</source>
        <translation>Teile dieser Seite</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PaperDialog</name>
    <message>
        <source>Day of the readings</source>
        <translation>Tag der Messwerte</translation>
    </message>
    <message>
        <source>sprayed for, each</source>
        <translation>Sprühzeit, je Punkt</translation>
    </message>
    <message>
        <source>Readings from a paper sheet</source>
        <translation>Messwerte von einem Papierblatt</translation>
    </message>
    <message>
        <source>Seconds of helium at every point, where the sheet says so; empty: not known</source>
        <translation>Sekunden Helium an jedem Punkt, wo das Blatt es sagt; leer: nicht bekannt</translation>
    </message>
    <message>
        <source>&amp;Day of the readings on the sheet</source>
        <translation>&amp;Tag der Messwerte auf dem Blatt</translation>
    </message>
    <message>
        <source>&amp;Sprayed for, each</source>
        <translation>&amp;Sprühzeit, je Punkt</translation>
    </message>
    <message>
        <source>A day on which readings can have been taken: today or before.</source>
        <translation>Ein Tag, an dem gemessen worden sein kann: heute oder davor.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PapersDialog</name>
    <message>
        <source>For the report</source>
        <translation>Für den Bericht</translation>
    </message>
    <message>
        <source>what stays empty is printed as not recorded</source>
        <translation>was leer bleibt, steht als nicht erfasst darin</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Auftraggeber</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>Auftraggeber</translation>
    </message>
    <message>
        <source>whom the job is done for</source>
        <translation>für wen der Auftrag ist</translation>
    </message>
    <message>
        <source>Witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>who watches it, if anybody</source>
        <translation>wer zusieht, falls jemand</translation>
    </message>
    <message>
        <source>Serial, drawing</source>
        <translation>Serie, Zeichnung</translation>
    </message>
    <message>
        <source>serial number and drawing</source>
        <translation>Seriennummer und Zeichnung</translation>
    </message>
    <message>
        <source>number and revision; kept with the object</source>
        <translation>Nummer und Stand; bleibt beim Objekt</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>procedure</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>number and revision; standard and edition</source>
        <translation>Nummer und Stand; Norm und Ausgabe</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>left out on purpose</source>
        <translation>mit Absicht ausgelassen</translation>
    </message>
    <message>
        <source>and why</source>
        <translation>und warum</translation>
    </message>
    <message>
        <source>Helium bottle</source>
        <translation>Heliumflasche</translation>
    </message>
    <message>
        <source>helium bottle</source>
        <translation>Heliumflasche</translation>
    </message>
    <message>
        <source>number, what is left in it</source>
        <translation>Nummer, was noch darin ist</translation>
    </message>
    <message>
        <source>No check after</source>
        <translation>Keine Nachprüfung</translation>
    </message>
    <message>
        <source>why there is no check afterwards</source>
        <translation>warum danach nicht geprüft wird</translation>
    </message>
    <message>
        <source>only where there can be none: the reason</source>
        <translation>nur wo es keine geben kann: der Grund</translation>
    </message>
    <message>
        <source>The object was dried before the test</source>
        <translation>Das Objekt wurde vor der Prüfung getrocknet</translation>
    </message>
    <message>
        <source>Zero is on: the display takes the background off</source>
        <translation>Nullabzug an: die Anzeige zieht den Untergrund ab</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Other instruments</source>
        <translation>Andere Geräte</translation>
    </message>
    <message>
        <source>gauges, thermometer, oxygen meter</source>
        <translation>Messröhren, Thermometer, Sauerstoffwarner</translation>
    </message>
    <message>
        <source>instrument %1</source>
        <translation>Gerät %1</translation>
    </message>
    <message>
        <source>number of instrument %1</source>
        <translation>Nummer von Gerät %1</translation>
    </message>
    <message>
        <source>instrument %1 is due</source>
        <translation>Gerät %1 ist fällig</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>was es ist</translation>
    </message>
    <message>
        <source>its number</source>
        <translation>seine Nummer</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PassphraseDialog</name>
    <message>
        <source>Passphrase of %1</source>
        <translation>Kennsatz von %1</translation>
    </message>
    <message>
        <source>&amp;Old passphrase</source>
        <translation>&amp;Alter Kennsatz</translation>
    </message>
    <message>
        <source>&amp;New passphrase</source>
        <translation>&amp;Neuer Kennsatz</translation>
    </message>
    <message>
        <source>New passphrase &amp;again</source>
        <translation>Neuer Kennsatz &amp;noch einmal</translation>
    </message>
    <message>
        <source>The old passphrase opens the key.</source>
        <translation>Der alte Kennsatz öffnet den Schlüssel.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PeopleDialog</name>
    <message>
        <source>reviewer</source>
        <translation>Gegenprüfer</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>left; signs no more</source>
        <translation>ausgeschieden; unterschreibt nicht mehr</translation>
    </message>
    <message>
        <source>no key yet</source>
        <translation>noch kein Schlüssel</translation>
    </message>
    <message>
        <source>&amp;New person …</source>
        <translation>&amp;Neue Person …</translation>
    </message>
    <message>
        <source>New &amp;passphrase …</source>
        <translation>Neuer &amp;Kennsatz …</translation>
    </message>
    <message>
        <source>&amp;One person keeps this history: who tests may approve too</source>
        <translation>&amp;Eine Person führt diese Historie: wer prüft, darf auch freigeben</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>People who sign</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Qualification</source>
        <translation>Qualifikation</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>people of this history</source>
        <translation>Personen dieser Historie</translation>
    </message>
    <message>
        <source>A lost passphrase cannot be brought back: mark its person as left and add them anew under a name that tells the two apart. What was signed stays valid.</source>
        <translation>Ein verlorener Kennsatz kommt nicht wieder: die Person als ausgeschieden kennzeichnen und unter einem unterscheidbaren Namen neu anlegen. Was unterschrieben ist, bleibt gültig.</translation>
    </message>
    <message>
        <source>&amp;Has left</source>
        <translation>Ist aus&amp;geschieden</translation>
    </message>
    <message>
        <source>&amp;Is back</source>
        <translation>&amp;Ist wieder da</translation>
    </message>
    <message>
        <source>The key is being sealed …</source>
        <translation>Der Schlüssel wird versiegelt …</translation>
    </message>
    <message>
        <source>%1 can sign now.</source>
        <translation>%1 kann jetzt unterschreiben.</translation>
    </message>
    <message>
        <source>The passphrase of %1 is changed.</source>
        <translation>Der Kennsatz von %1 ist geändert.</translation>
    </message>
    <message>
        <source>%1 signs here again.</source>
        <translation>%1 unterschreibt hier wieder.</translation>
    </message>
    <message>
        <source>%1 signs here no more; what was signed stays valid.</source>
        <translation>%1 unterschreibt hier nicht mehr; was unterschrieben ist, bleibt gültig.</translation>
    </message>
    <message>
        <source>Who tests may approve too; the signed statement says so.</source>
        <translation>Wer prüft, darf auch freigeben; die unterschriebene Erklärung sagt es.</translation>
    </message>
    <message>
        <source>Who tested does not approve: a second person does.</source>
        <translation>Wer geprüft hat, gibt nicht frei: das tut eine zweite Person.</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PersonDialog</name>
    <message>
        <source>One person keeps this history: who tests may approve too</source>
        <translation>Eine Person führt diese Historie: wer prüft, darf auch freigeben</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Neue Person</translation>
    </message>
    <message>
        <source>reviewer</source>
        <translation>Gegenprüfer</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>The passphrase opens this person&apos;s signing key. Nobody can bring it back: when it is lost, signatures made so far stay valid and a new person is added.</source>
        <translation>Der Kennsatz öffnet den Schlüssel dieser Person. Niemand kann ihn zurückholen: geht er verloren, bleiben geleistete Unterschriften gültig und eine neue Person wird angelegt.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Role</source>
        <translation>&amp;Rolle</translation>
    </message>
    <message>
        <source>&amp;Qualification</source>
        <translation>&amp;Qualifikation</translation>
    </message>
    <message>
        <source>&amp;Passphrase</source>
        <translation>&amp;Kennsatz</translation>
    </message>
    <message>
        <source>Passphrase &amp;again</source>
        <translation>Kennsatz &amp;noch einmal</translation>
    </message>
    <message>
        <source>A name is needed.</source>
        <translation>Ein Name ist nötig.</translation>
    </message>
    <message numerus="yes">
        <source>The passphrase needs at least %n characters.</source>
        <translation>
            <numerusform>Der Kennsatz braucht mindestens %n Zeichen.</numerusform>
            <numerusform>Der Kennsatz braucht mindestens %n Zeichen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Die beiden Kennsätze sind verschieden.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PersonField</name>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PhotoStrip</name>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Add photos …</source>
        <translation>Fotos hinzufügen …</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Ctrl+V in the list</source>
        <translation>Strg+V in der Liste</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.bmp *.gif *.tif *.tiff *.webp *.svg *.pdf)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.bmp *.gif *.tif *.tiff *.webp *.svg *.pdf)</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>Enter or a double click shows a photo large</source>
        <translation>Enter oder ein Doppelklick zeigt ein Foto groß</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PipeLink</name>
    <message>
        <source>there is no pipe %1</source>
        <translation>es gibt keine Pipe %1</translation>
    </message>
    <message>
        <source>%1 may not be read</source>
        <translation>%1 darf nicht gelesen werden</translation>
    </message>
    <message>
        <source>%1 is no pipe</source>
        <translation>%1 ist keine Pipe</translation>
    </message>
    <message>
        <source>the program that wrote to the pipe has gone</source>
        <translation>das Programm, das in die Pipe schrieb, ist fort</translation>
    </message>
    <message>
        <source>the pipe cannot be read</source>
        <translation>die Pipe ist nicht lesbar</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PlanDialog</name>
    <message>
        <source>Order of the walk</source>
        <translation>Reihenfolge des Rundgangs</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>Dwell</source>
        <translation>Sprühen</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Why here</source>
        <translation>Warum hier</translation>
    </message>
    <message>
        <source>Up  Alt+↑</source>
        <translation>Hinauf  Alt+↑</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down  Alt+↓</source>
        <translation>Hinunter  Alt+↓</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>&amp;Propose an order</source>
        <translation>Reihenfolge &amp;vorschlagen</translation>
    </message>
    <message>
        <source>Walk in this order</source>
        <translation>So gehen</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) · %1 min of spraying and waiting · %2 l of helium</source>
        <translation>
            <numerusform>%n Punkt · %1 min Sprühen und Warten · %2 l Helium</numerusform>
            <numerusform>%n Punkte · %1 min Sprühen und Warten · %2 l Helium</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PointsPanel</name>
    <message>
        <source>the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>the rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>Points along it</source>
        <translation>Punkte darauf</translation>
    </message>
    <message>
        <source>Lay by</source>
        <translation>Legen nach</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Number of points</source>
        <translation>Zahl der Punkte</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>numbers are never used twice</source>
        <translation>Nummern werden nie zweimal vergeben</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erste</translation>
    </message>
    <message>
        <source>Sense</source>
        <translation>Sinn</translation>
    </message>
    <message>
        <source>clockwise</source>
        <translation>im Uhrzeigersinn</translation>
    </message>
    <message>
        <source>other way</source>
        <translation>andersherum</translation>
    </message>
    <message>
        <source>Side the sheet is seen from</source>
        <translation>Seite, von der das Blatt gesehen ist</translation>
    </message>
    <message>
        <source>Seen from</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Place of the chosen point</source>
        <translation>Ort des gewählten Punktes</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>one place</source>
        <translation>eine Stelle</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Pitch in millimetres</source>
        <translation>Abstand in Millimetern</translation>
    </message>
    <message>
        <source>1 to %1 points</source>
        <translation>1 bis %1 Punkte</translation>
    </message>
    <message>
        <source>= every &lt;b&gt;%1&lt;/b&gt;</source>
        <translation>= alle &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message>
        <source>mm = &lt;b&gt;1&lt;/b&gt; point</source>
        <translation>mm = &lt;b&gt;1&lt;/b&gt; Punkt</translation>
    </message>
    <message>
        <source>mm = &lt;b&gt;%1&lt;/b&gt; points</source>
        <translation>mm = &lt;b&gt;%1&lt;/b&gt; Punkte</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>wie gezeichnet</translation>
    </message>
    <message>
        <source>Lay 1 point</source>
        <translation>1 Punkt legen</translation>
    </message>
    <message>
        <source>Lay %1 points</source>
        <translation>%1 Punkte legen</translation>
    </message>
    <message>
        <source>Lay 1 point anew</source>
        <translation>1 Punkt neu legen</translation>
    </message>
    <message>
        <source>Lay %1 points anew</source>
        <translation>%1 Punkte neu legen</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Stilllegen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Where it is, in words, as map and report say it. Dragging the point moves it.</source>
        <translation>Wo er liegt, in Worten, wie Karte und Bericht es sagen. Verschoben wird der Punkt durch Ziehen.</translation>
    </message>
    <message>
        <source>Point %1 is at</source>
        <translation>Punkt %1 liegt</translation>
    </message>
    <message>
        <source>in words</source>
        <translation>in Worten</translation>
    </message>
    <message>
        <source>First number, or first mark on the object</source>
        <translation>Erste Nummer oder erste Beschriftung am Objekt</translation>
    </message>
    <message>
        <source>A number is that of the first point. Where the points are marked on the object, the first mark, such as D01: the next ones are counted up, and each stands as the place of its point.</source>
        <translation>Eine Zahl ist die Nummer des ersten Punkts. Wo die Punkte am Objekt beschriftet sind, die erste Beschriftung, etwa D01: Die nächsten werden weitergezählt, und jede steht als Ort ihres Punkts.</translation>
    </message>
    <message>
        <source>a number, or a mark such as D01</source>
        <translation>Zahl oder Marke wie D01</translation>
    </message>
    <message>
        <source>marked %1, %2&#xa0;…</source>
        <translation>Marken %1, %2&#xa0;…</translation>
    </message>
    <message>
        <source>First takes a whole number such as 101, or a mark such as D01.</source>
        <translation>Erste nimmt eine ganze Zahl wie 101 oder eine Beschriftung wie D01.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PreparePage</name>
    <message>
        <source>Prepare</source>
        <translation>Vorbereiten</translation>
    </message>
    <message>
        <source>Say who is logging first (Ctrl+L): the tick carries a name.</source>
        <translation>Zuerst sagen, wer schreibt (Strg+L): das Kreuz trägt einen Namen.</translation>
    </message>
    <message>
        <source>The limit was changed after a reading: this stands in the record, and the sign-off asks for a word on it.</source>
        <translation>Der Grenzwert wurde nach einer Messung geändert: Das steht im Protokoll, und die Freigabe fragt danach.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::Presenter</name>
    <message>
        <source>voided from the presenter</source>
        <translation>vom Presenter aus für ungültig erklärt</translation>
    </message>
    <message>
        <source>Press the same button within two seconds to go on anyway.</source>
        <translation>Dieselbe Taste binnen zwei Sekunden noch einmal: trotzdem weiter.</translation>
    </message>
    <message>
        <source>Back marks the first rise, says no response, or corrects the last.</source>
        <translation>Zurück merkt den ersten Anstieg, sagt „keine Antwort“ oder verbessert die letzte Messung.</translation>
    </message>
    <message>
        <source>Press the same button within two seconds to void the reading %1.</source>
        <translation>Dieselbe Taste binnen zwei Sekunden noch einmal: der Messwert %1 wird ungültig.</translation>
    </message>
    <message>
        <source>Nothing that was stored here stands in this round.</source>
        <translation>Nichts, was hier gespeichert wurde, gilt in dieser Runde.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::PresenterDialog</name>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>starts and stops the spray, stores the feed&apos;s highest</source>
        <translation>startet und beendet das Sprühen, speichert den Höchstwert der Leitung</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>first rise, no response, correct the last</source>
        <translation>erster Anstieg, keine Antwort, letzte verbessern</translation>
    </message>
    <message>
        <source>Black</source>
        <translation>Schwarz</translation>
    </message>
    <message>
        <source>twice: the last reading is void</source>
        <translation>zweimal: die letzte Messung ist ungültig</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>distance view</source>
        <translation>Fernansicht</translation>
    </message>
    <message>
        <source>Presenter</source>
        <translation>Presenter</translation>
    </message>
    <message>
        <source>Choose a row, then press that button on the presenter.</source>
        <translation>Eine Zeile wählen, dann diese Taste am Presenter drücken.</translation>
    </message>
    <message>
        <source>Learn %1</source>
        <translation>%1 lernen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Forget all</source>
        <translation>Alles vergessen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>press it now …</source>
        <translation>jetzt drücken …</translation>
    </message>
    <message>
        <source>not learned</source>
        <translation>nicht gelernt</translation>
    </message>
    <message>
        <source>A button sends a letter or sign that is also a key of Spray: on the keyboard it now does what the button does.</source>
        <translation>Eine Taste sendet einen Buchstaben oder ein Zeichen, das auch eine Taste beim Sprühen ist: auf der Tastatur wirkt es jetzt wie die Presenter-Taste.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::QuantityEdit</name>
    <message>
        <source>“%1” does not start with a number; right would be %2</source>
        <translation>„%1“ beginnt nicht mit einer Zahl; richtig wäre %2</translation>
    </message>
    <message>
        <source>must be above %1</source>
        <translation>muss über %1 liegen</translation>
    </message>
    <message>
        <source>must be at least %1</source>
        <translation>muss mindestens %1 sein</translation>
    </message>
    <message>
        <source>must be at most %1</source>
        <translation>darf höchstens %1 sein</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ReadBack</name>
    <message>
        <source>On the chamber</source>
        <translation>An der Kammer</translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation>über dem Grenzwert</translation>
    </message>
    <message>
        <source>within the limit</source>
        <translation>unter dem Grenzwert</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>no limit set</source>
        <translation>kein Grenzwert</translation>
    </message>
    <message>
        <source>on the chamber </source>
        <translation>an der Kammer </translation>
    </message>
    <message>
        <source>As shown, not sized</source>
        <translation>Wie angezeigt, ohne Größe</translation>
    </message>
    <message>
        <source>as shown, not sized </source>
        <translation>wie angezeigt, ohne Größe </translation>
    </message>
    <message>
        <source>95 % range %1</source>
        <translation>95-%-Bereich %1</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>zählt nicht</translation>
    </message>
    <message>
        <source>  (95 %, by itself)</source>
        <translation>  (95 %, für sich)</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::RecordsRow</name>
    <message>
        <source>Void …</source>
        <translation>Verwerfen …</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ReminderDialog</name>
    <message>
        <source>Often forgotten</source>
        <translation>Oft vergessen</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>gezeichnet</translation>
    </message>
    <message>
        <source>Draw it now</source>
        <translation>Jetzt zeichnen</translation>
    </message>
    <message>
        <source>Common practice, no published list. Draw what this object has; what it has not is said for the record, and no longer reminded of in this job.</source>
        <translation>Übliche Praxis, keine veröffentlichte Liste. Zeichnen, was dieses Objekt hat; was es nicht hat, wird für die Akte gesagt, und in diesem Auftrag wird nicht mehr daran erinnert.</translation>
    </message>
    <message>
        <source>There is &amp;none</source>
        <translation>Gibt es &amp;nicht</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>There is &amp;one</source>
        <translation>Gibt es &amp;doch</translation>
    </message>
    <message>
        <source>It stands under a name; nobody was named.</source>
        <translation>Das steht unter einem Namen; niemand wurde genannt.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::RepairDialog</name>
    <message>
        <source>permanent</source>
        <translation>endgültig</translation>
    </message>
    <message>
        <source>temporary</source>
        <translation>vorläufig</translation>
    </message>
    <message>
        <source>Repair at %1</source>
        <translation>Reparatur an %1</translation>
    </message>
    <message>
        <source> h</source>
        <translation> h</translation>
    </message>
    <message>
        <source>Store and open round</source>
        <translation>Speichern und Runde öffnen</translation>
    </message>
    <message>
        <source>&amp;Defect seen</source>
        <translation>Gesehener &amp;Fehler</translation>
    </message>
    <message>
        <source>&amp;What was done</source>
        <translation>&amp;Was getan wurde</translation>
    </message>
    <message>
        <source>&amp;Parts, material</source>
        <translation>&amp;Teile, Werkstoff</translation>
    </message>
    <message>
        <source>Lasting</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>&amp;Owner</source>
        <translation>&amp;Zuständig</translation>
    </message>
    <message>
        <source>D&amp;ue</source>
        <translation>F&amp;ällig</translation>
    </message>
    <message>
        <source>May be sprayed &amp;after</source>
        <translation>Besprühbar &amp;nach</translation>
    </message>
    <message>
        <source>Spray again &amp;too</source>
        <translation>&amp;Auch neu besprühen</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Bemerkung</translation>
    </message>
    <message>
        <source>This joint was tightened before. Is the cause known? Force does not seal a nick or a hair.</source>
        <translation>Diese Fügestelle wurde schon nachgezogen. Ist die Ursache bekannt? Kraft dichtet keine Kerbe und kein Haar.</translation>
    </message>
    <message>
        <source>Say what was seen, or &quot;nothing seen&quot;.</source>
        <translation>Sagen, was gesehen wurde, oder „nichts gesehen“.</translation>
    </message>
    <message>
        <source>Say what was done.</source>
        <translation>Sagen, was getan wurde.</translation>
    </message>
    <message>
        <source>A temporary repair needs an owner and a date.</source>
        <translation>Eine vorläufige Reparatur braucht einen Zuständigen und ein Datum.</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Spray again too: %1.</source>
        <translation>Auch noch einmal absprühen: %1.</translation>
    </message>
    <message>
        <source>P&amp;hotos</source>
        <translation>F&amp;otos</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>such as 12 N m, in three steps crosswise</source>
        <translation>etwa 12 N m, über Kreuz in drei Schritten</translation>
    </message>
    <message>
        <source>May be sprayed after, hours</source>
        <translation>Besprühbar nach, Stunden</translation>
    </message>
    <message>
        <source>Done &amp;by</source>
        <translation>Ausgeführt &amp;von</translation>
    </message>
    <message>
        <source>&amp;Torque</source>
        <translation>&amp;Drehmoment</translation>
    </message>
    <message>
        <source>A filler cures before it is sprayed: how many hours?</source>
        <translation>Eine Füllmasse härtet aus, bevor besprüht wird: wie viele Stunden?</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::RepairsPanel</name>
    <message>
        <source>open: may be sprayed from %1 %2</source>
        <translation>offen: absprühen ab %1 %2</translation>
    </message>
    <message>
        <source>open: spray again %1</source>
        <translation>offen: erneut absprühen %1</translation>
    </message>
    <message>
        <source>open: still over the limit</source>
        <translation>offen: noch über dem Grenzwert</translation>
    </message>
    <message>
        <source>open: sprayed again, no pressure rise since</source>
        <translation>offen: erneut abgesprüht, seither kein Druckanstieg</translation>
    </message>
    <message>
        <source>repaired again later</source>
        <translation>später erneut repariert</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>Repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Hinterlassen</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Open, add photos …</source>
        <translation>Öffnen, Fotos hinzufügen …</translation>
    </message>
    <message>
        <source>Spray again</source>
        <translation>Erneut absprühen</translation>
    </message>
    <message>
        <source>Back (Esc)</source>
        <translation>Zurück (Esc)</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>endgültig</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>overdue, %1</source>
        <translation>überfällig, %1</translation>
    </message>
    <message numerus="yes">
        <source>, %n photo(s)</source>
        <translation>
            <numerusform>, %n Foto</numerusform>
            <numerusform>, %n Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>temporary, from job %1</source>
        <translation>vorläufig, aus Auftrag %1</translation>
    </message>
    <message>
        <source>No repair was logged in this job.</source>
        <translation>In diesem Auftrag ist keine Reparatur eingetragen.</translation>
    </message>
    <message>
        <source>no pressure rise</source>
        <translation>kein Druckanstieg</translation>
    </message>
    <message>
        <source>leaks at most %1 as air</source>
        <translation>Lecks höchstens %1 als Luft</translation>
    </message>
    <message>
        <source>pressure rise not judged</source>
        <translation>Druckanstieg nicht ausgewertet</translation>
    </message>
    <message>
        <source>, base pressure %1 mbar</source>
        <translation>, Enddruck %1 mbar</translation>
    </message>
    <message>
        <source>Before the repairs: %1. After: %2.</source>
        <translation>Vor den Reparaturen: %1. Danach: %2.</translation>
    </message>
    <message>
        <source>open: sprayed again, cannot say</source>
        <translation>offen: erneut abgesprüht, unklar</translation>
    </message>
    <message>
        <source>%1, 95 % range %2</source>
        <translation>%1, 95-%-Bereich %2</translation>
    </message>
    <message>
        <source>leaks %1 (%2) as air</source>
        <translation>Lecks %1 (%2) als Luft</translation>
    </message>
    <message>
        <source>open: cures until %1 %2; sprayed too early</source>
        <translation>offen: härtet bis %1 %2; zu früh abgesprüht</translation>
    </message>
    <message>
        <source>open: spray again %1; it was sprayed before the repair had cured</source>
        <translation>offen: erneut absprühen %1; abgesprüht, bevor die Reparatur ausgehärtet war</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ReportDialog</name>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Pages of the report</source>
        <translation>Seiten des Berichts</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>P&amp;apier</translation>
    </message>
    <message>
        <source>&amp;Print …</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>&amp;Write as PDF …</source>
        <translation>Als PDF &amp;schreiben …</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Print the report</source>
        <translation>Bericht drucken</translation>
    </message>
    <message>
        <source>language of the report</source>
        <translation>Sprache des Berichts</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>Sp&amp;rache</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::RiseDialog</name>
    <message>
        <source>Pressure rise</source>
        <translation>Druckanstieg</translation>
    </message>
    <message>
        <source>the object valved off and left alone</source>
        <translation>das Objekt abgesperrt und in Ruhe gelassen</translation>
    </message>
    <message>
        <source>record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>From a &amp;file …</source>
        <translation>Aus einer &amp;Datei …</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>vorgefunden</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>hinterlassen</translation>
    </message>
    <message>
        <source>between repairs</source>
        <translation>zwischen Reparaturen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>pressure before valving off</source>
        <translation>Druck vor dem Absperren</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Store the record</source>
        <translation>Aufzeichnung speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s) over %1</source>
        <translation>
            <numerusform>%n Wert über %1</numerusform>
            <numerusform>%n Werte über %1</numerusform>
        </translation>
    </message>
    <message>
        <source>A pressure-rise record</source>
        <translation>Aufzeichnung eines Druckanstiegs</translation>
    </message>
    <message>
        <source>Records (*.csv *.txt);;All files (*)</source>
        <translation>Aufzeichnungen (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 ist nicht lesbar: %2</translation>
    </message>
    <message>
        <source>Pressure reached before the pump was valved off, as in 3e-6 mbar</source>
        <translation>Erreichter Druck, bevor die Pumpe abgesperrt wurde, etwa 3e-6 mbar</translation>
    </message>
    <message>
        <source>Base pressure</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>when the gas was shut in; now: it ends now</source>
        <translation>wann abgesperrt wurde; jetzt: es endet jetzt</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Ending now it began at %1, before the repair of %2; say when it was begun.</source>
        <translation>Endet sie jetzt, begann sie um %1, vor der Reparatur von %2; bitte sagen, wann sie begonnen wurde.</translation>
    </message>
    <message>
        <source>Begun then, a record over %1 is not over yet; right would be an earlier moment.</source>
        <translation>Dann begonnen, ist eine Aufzeichnung über %1 noch nicht zu Ende; richtig wäre ein früherer Zeitpunkt.</translation>
    </message>
    <message>
        <source>Time and pressure, a line each. A head line such as time_s,pressure_mbar says the units itself; a third column temperature_degC helps.</source>
        <translation>Zeit und Druck, je eine Zeile. Eine Kopfzeile wie time_s,pressure_mbar nennt die Einheiten selbst; eine dritte Spalte temperature_degC hilft.</translation>
    </message>
    <message>
        <source>unit of time</source>
        <translation>Einheit der Zeit</translation>
    </message>
    <message>
        <source>unit of pressure</source>
        <translation>Einheit des Drucks</translation>
    </message>
    <message>
        <source>Times in</source>
        <translation>Zeiten in</translation>
    </message>
    <message>
        <source>pressures in</source>
        <translation>Drücke in</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>; the volume is not stated, so it says nothing of a leak</source>
        <translation>; das Volumen ist nicht angegeben, daher sagt es nichts über ein Leck</translation>
    </message>
    <message>
        <source>; from end to end %1 mbar·l/s of gas come in, leak and walls together</source>
        <translation>; von Anfang bis Ende kommen %1 mbar·l/s Gas herein, Leck und Wände zusammen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::RisePanel</name>
    <message>
        <source>as found</source>
        <translation>vorgefunden</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>hinterlassen</translation>
    </message>
    <message>
        <source>between repairs</source>
        <translation>zwischen Reparaturen</translation>
    </message>
    <message>
        <source>A leak; outgassing has no visible share</source>
        <translation>Ein Leck; Ausgasung hat keinen sichtbaren Anteil</translation>
    </message>
    <message>
        <source>A leak and outgassing, told apart</source>
        <translation>Ein Leck und Ausgasung, getrennt</translation>
    </message>
    <message>
        <source>No leak found: the gas exhausts itself</source>
        <translation>Kein Leck gefunden: das Gas versiegt</translation>
    </message>
    <message>
        <source>Not separable: the record does not tell leak from outgassing</source>
        <translation>Nicht trennbar: die Aufzeichnung scheidet Leck und Ausgasung nicht</translation>
    </message>
    <message>
        <source>Pressure rise</source>
        <translation>Druckanstieg</translation>
    </message>
    <message>
        <source>object valved off</source>
        <translation>Objekt abgesperrt</translation>
    </message>
    <message>
        <source>pressure over time</source>
        <translation>Druck über der Zeit</translation>
    </message>
    <message>
        <source>Pressure &amp;rise …</source>
        <translation>&amp;Druckanstieg …</translation>
    </message>
    <message>
        <source>which record</source>
        <translation>welche Aufzeichnung</translation>
    </message>
    <message>
        <source>working it out …</source>
        <translation>wird erarbeitet …</translation>
    </message>
    <message>
        <source>leak %1 (%2 … %3) %4, as air</source>
        <translation>Leck %1 (%2 … %3) %4, als Luft</translation>
    </message>
    <message>
        <source>leak below %1 %2, as air</source>
        <translation>Leck unter %1 %2, als Luft</translation>
    </message>
    <message>
        <source>; walls %1 falling to %2</source>
        <translation>; Wände %1, fallend auf %2</translation>
    </message>
    <message>
        <source>void this pressure rise</source>
        <translation>diesen Druckanstieg verwerfen</translation>
    </message>
    <message>
        <source>void: %1</source>
        <translation>verworfen: %1</translation>
    </message>
    <message>
        <source>pressure rise, %1, of %2 %3</source>
        <translation>Druckanstieg, %1, von %2 %3</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SameObjectDialog</name>
    <message numerus="yes">
        <source>%n job(s)</source>
        <translation>
            <numerusform>%n Auftrag</numerusform>
            <numerusform>%n Aufträge</numerusform>
        </translation>
    </message>
    <message>
        <source>Entered more than once</source>
        <translation>Mehrfach angelegt</translation>
    </message>
    <message>
        <source>other entries</source>
        <translation>andere Einträge</translation>
    </message>
    <message>
        <source>name, tag, place</source>
        <translation>Name, Kennzeichen, Ort</translation>
    </message>
    <message>
        <source>find an entry</source>
        <translation>Eintrag suchen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Also entered as</source>
        <translation>Auch angelegt als</translation>
    </message>
    <message>
        <source>Tick what is the very same object, say entered on another computer. Its jobs then stand together: compared, continued and asked for open repairs as one. The jobs themselves stay as they are, and a tick can be taken back. Points drawn anew are paired in Compare, each confirmed by a person.</source>
        <translation>Haken Sie an, was dasselbe Objekt ist, etwa an einem anderen Rechner angelegt. Seine Aufträge stehen dann zusammen: als eines verglichen, fortgesetzt und nach offenen Reparaturen gefragt. Die Aufträge selbst bleiben, wie sie sind, und ein Haken lässt sich zurücknehmen. Neu gezeichnete Punkte werden im Vergleich gepaart, jeder von einem Menschen bestätigt.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SerialLink</name>
    <message>
        <source>the port went away</source>
        <translation>der Anschluss ist verschwunden</translation>
    </message>
    <message>
        <source>there is no port %1</source>
        <translation>es gibt keinen Anschluss %1</translation>
    </message>
    <message>
        <source>%1 is in use, or this account may not open it</source>
        <translation>%1 ist belegt, oder dieses Konto darf ihn nicht öffnen</translation>
    </message>
    <message>
        <source>%1 cannot be opened: %2</source>
        <translation>%1 lässt sich nicht öffnen: %2</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SetupPanel</name>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>as stated; dashed: not stated</source>
        <translation>wie angegeben; gestrichelt: nicht angegeben</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SeveralPanel</name>
    <message numerus="yes">
        <source>%n joints</source>
        <translation>
            <numerusform>%n Fügestelle</numerusform>
            <numerusform>%n Fügestellen</numerusform>
        </translation>
    </message>
    <message>
        <source>Ungroup</source>
        <translation>Gruppe lösen</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppieren</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Sperren</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SheetBar</name>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>+ Sheet</source>
        <translation>+ Blatt</translation>
    </message>
    <message>
        <source>New sheet</source>
        <translation>Neues Blatt</translation>
    </message>
    <message>
        <source>New sheet (Ctrl+T)</source>
        <translation>Neues Blatt (Strg+T)</translation>
    </message>
    <message>
        <source>Underlay</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>How strongly the picture underneath shows</source>
        <translation>Wie stark das Bild darunter zu sehen ist</translation>
    </message>
    <message>
        <source>Scale by two clicks and a length (K)</source>
        <translation>Maßstab aus zwei Klicks und einer Länge (K)</translation>
    </message>
    <message>
        <source>Whole sheet</source>
        <translation>Ganzes Blatt</translation>
    </message>
    <message>
        <source>Show everything (Ctrl+0)</source>
        <translation>Alles zeigen (Strg+0)</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>1 px = %1 mm</source>
        <translation>1 px = %1 mm</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SheetPanel</name>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Name of the sheet</source>
        <translation>Name des Blattes</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Side it is seen from</source>
        <translation>Seite, von der es gesehen ist</translation>
    </message>
    <message>
        <source>Seen from</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>Width of the sheet in millimetres</source>
        <translation>Breite des Blattes in Millimetern</translation>
    </message>
    <message>
        <source>Height of the sheet in millimetres</source>
        <translation>Höhe des Blattes in Millimetern</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>by</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Where up is on the sheet</source>
        <translation>Wo auf dem Blatt oben ist</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>nach rechts</translation>
    </message>
    <message>
        <source>to the top</source>
        <translation>nach oben</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>nach links</translation>
    </message>
    <message>
        <source>to the bottom</source>
        <translation>nach unten</translation>
    </message>
    <message>
        <source>Up is</source>
        <translation>Oben ist</translation>
    </message>
    <message>
        <source>a plan, seen from above: no up on it</source>
        <translation>ein Grundriss, von oben gesehen: kein Oben darauf</translation>
    </message>
    <message>
        <source>show retired points</source>
        <translation>stillgelegte Punkte zeigen</translation>
    </message>
    <message>
        <source>Picture …</source>
        <translation>Bild …</translation>
    </message>
    <message>
        <source>Delete sheet</source>
        <translation>Blatt löschen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SignoffPage</name>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Draft report</source>
        <translation>Entwurf des Berichts</translation>
    </message>
    <message>
        <source>Questions before a signature</source>
        <translation>Fragen vor einer Unterschrift</translation>
    </message>
    <message>
        <source>%1 questions, %2 in order</source>
        <translation>%1 Fragen, %2 in Ordnung</translation>
    </message>
    <message numerus="yes">
        <source>Cannot be signed yet: %n stop(s) open</source>
        <translation>
            <numerusform>Noch nicht zu unterschreiben: %n Hindernis offen</numerusform>
            <numerusform>Noch nicht zu unterschreiben: %n Hindernisse offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) want a word</source>
        <translation>
            <numerusform>%n Frage braucht ein Wort</numerusform>
            <numerusform>%n Fragen brauchen ein Wort</numerusform>
        </translation>
    </message>
    <message>
        <source>Findings are being worked out …</source>
        <translation>Befunde werden berechnet …</translation>
    </message>
    <message>
        <source>Ready to be signed</source>
        <translation>Bereit zur Unterschrift</translation>
    </message>
    <message>
        <source>Statement so far: “%1”</source>
        <translation>Aussage bisher: „%1“</translation>
    </message>
    <message>
        <source>Say in the remarks what is to be done; a job goes back with a reason.</source>
        <translation>In den Bemerkungen sagen, was zu tun ist; zurück geht es mit Grund.</translation>
    </message>
    <message>
        <source>Sent back by %1 with the remarks.</source>
        <translation>Von %1 mit den Bemerkungen zurückgegeben.</translation>
    </message>
    <message>
        <source>Approved and locked.</source>
        <translation>Freigegeben und gesperrt.</translation>
    </message>
    <message>
        <source>Amendments are for signed jobs; change the record itself.</source>
        <translation>Nachträge gibt es nur zu unterschriebenen Aufträgen; ändern Sie die Aufzeichnung selbst.</translation>
    </message>
    <message>
        <source>Amendment signed and added.</source>
        <translation>Nachtrag unterschrieben und angefügt.</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>The signatures are being checked …</source>
        <translation>Die Unterschriften werden geprüft …</translation>
    </message>
    <message>
        <source>Sent back by %1, %2 %3: “%4”</source>
        <translation>Zurückgegeben von %1, %2 %3: „%4“</translation>
    </message>
    <message>
        <source>Sent for review by %1, %2 %3: “%4”</source>
        <translation>Zur Durchsicht gegeben von %1, %2 %3: „%4“</translation>
    </message>
    <message>
        <source>somebody unnamed</source>
        <translation>jemand ohne Namen</translation>
    </message>
    <message>
        <source>The reviewer&apos;s passphrase is needed to approve.</source>
        <translation>Zum Freigeben wird der Kennsatz des Gegenprüfers gebraucht.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Findings are being worked out; send the job when they are shown.</source>
        <translation>Die Befunde werden noch berechnet; den Auftrag weitergeben, wenn sie gezeigt sind.</translation>
    </message>
    <message>
        <source>Type a word on this question first.</source>
        <translation>Zuerst ein Wort zu dieser Frage eingeben.</translation>
    </message>
    <message>
        <source>Making the key …</source>
        <translation>Der Schlüssel entsteht …</translation>
    </message>
    <message>
        <source>Sealing …</source>
        <translation>Wird versiegelt …</translation>
    </message>
    <message>
        <source>Sent for review. Until it is returned or signed only words and remarks are added.</source>
        <translation>Zur Prüfung geschickt. Bis er zurückkommt oder unterschrieben ist, kommen nur Worte und Bemerkungen hinzu.</translation>
    </message>
    <message>
        <source>Type a word, or press the button beside: what was said still stands.</source>
        <translation>Ein Wort eingeben, oder den Knopf daneben drücken: Das Gesagte gilt noch.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SketchCanvas</name>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>no sheet</source>
        <translation>kein Blatt</translation>
    </message>
    <message>
        <source>Sheet %1, 1 joint.</source>
        <translation>Blatt %1, 1 Fügestelle.</translation>
    </message>
    <message>
        <source>Sheet %1, %2 joints.</source>
        <translation>Blatt %1, %2 Fügestellen.</translation>
    </message>
    <message>
        <source> Chosen: point %1, %2.</source>
        <translation> Gewählt: Punkt %1, %2.</translation>
    </message>
    <message>
        <source> Chosen: %1.</source>
        <translation> Gewählt: %1.</translation>
    </message>
    <message>
        <source>starts here</source>
        <translation>beginnt hier</translation>
    </message>
    <message>
        <source>starts here, clockwise</source>
        <translation>beginnt hier, im Uhrzeigersinn</translation>
    </message>
    <message>
        <source>starts here, the other way</source>
        <translation>beginnt hier, andersherum</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SketchDesk</name>
    <message>
        <source>Ctrl+Z takes the whole gesture back</source>
        <translation>Strg+Z nimmt die ganze Bewegung zurück</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z brings it again</source>
        <translation>Strg+Umschalt+Z bringt es wieder</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Wieder getan: %1.</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SketchPage</name>
    <message>
        <source>no points yet</source>
        <translation>noch keine Punkte</translation>
    </message>
    <message>
        <source>1 point so far</source>
        <translation>bisher 1 Punkt</translation>
    </message>
    <message>
        <source>%1 points so far</source>
        <translation>bisher %1 Punkte</translation>
    </message>
    <message>
        <source>Choose the joint to be repeated first, then press P.</source>
        <translation>Zuerst die Fügestelle wählen, die sich wiederholt, dann P.</translation>
    </message>
    <message>
        <source>The job is closed for changes; the sketch can be looked at only.</source>
        <translation>Der Auftrag ist für Änderungen geschlossen; die Skizze ist nur anzusehen.</translation>
    </message>
    <message>
        <source>   Tab: next, Enter: take</source>
        <translation>   Tab: nächstes, Eingabe: nehmen</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>Picture underneath</source>
        <translation>Bild unterlegen</translation>
    </message>
    <message>
        <source>Pictures and drawings (*.png *.jpg *.jpeg *.bmp *.gif *.tif *.tiff *.webp *.svg *.pdf);;All files (*)</source>
        <translation>Bilder und Zeichnungen (*.png *.jpg *.jpeg *.bmp *.gif *.tif *.tiff *.webp *.svg *.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Page, 1 to %1</source>
        <translation>Seite, 1 bis %1</translation>
    </message>
    <message>
        <source>Click the two ends of a length you know, then type it.</source>
        <translation>Die beiden Enden einer bekannten Länge anklicken, dann sie eintippen.</translation>
    </message>
    <message>
        <source>Click along the hose, Enter ends it.</source>
        <translation>Am Schlauch entlang klicken, Eingabe beendet ihn.</translation>
    </message>
    <message>
        <source>Click where it is; V, R or B instead for another shape.</source>
        <translation>Anklicken, wo es ist; V, R oder B für eine andere Form.</translation>
    </message>
    <message>
        <source>There is no sheet to print yet.</source>
        <translation>Noch kein Blatt zum Drucken da.</translation>
    </message>
    <message>
        <source>Print the blank sheet</source>
        <translation>Leeres Blatt drucken</translation>
    </message>
    <message>
        <source>%1, job %2</source>
        <translation>%1, Auftrag %2</translation>
    </message>
    <message>
        <source>Sent to print.</source>
        <translation>Zum Druck gegeben.</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Joint and points</source>
        <translation>Verbindung und Punkte</translation>
    </message>
    <message>
        <source>Print the sheet in view, or all of the job?</source>
        <translation>Das sichtbare Blatt drucken oder alle des Auftrags?</translation>
    </message>
    <message>
        <source>This &amp;sheet</source>
        <translation>Dieses &amp;Blatt</translation>
    </message>
    <message>
        <source>&amp;All %1 sheets</source>
        <translation>&amp;Alle %1 Blätter</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SourceForm</name>
    <message>
        <source>kind of source</source>
        <translation>Art der Quelle</translation>
    </message>
    <message>
        <source>serial port</source>
        <translation>serieller Anschluss</translation>
    </message>
    <message>
        <source>network address</source>
        <translation>Netzwerkadresse</translation>
    </message>
    <message>
        <source>named pipe</source>
        <translation>benannte Pipe</translation>
    </message>
    <message>
        <source>recorded file</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>&amp;Source</source>
        <translation>&amp;Quelle</translation>
    </message>
    <message>
        <source>baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <source>data bits</source>
        <translation>Datenbits</translation>
    </message>
    <message>
        <source>%1 bits</source>
        <translation>%1 Bits</translation>
    </message>
    <message>
        <source>parity</source>
        <translation>Parität</translation>
    </message>
    <message>
        <source>no parity</source>
        <translation>keine Parität</translation>
    </message>
    <message>
        <source>even</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>ungerade</translation>
    </message>
    <message>
        <source>stop bits</source>
        <translation>Stoppbits</translation>
    </message>
    <message>
        <source>1 stop bit</source>
        <translation>1 Stoppbit</translation>
    </message>
    <message>
        <source>2 stop bits</source>
        <translation>2 Stoppbits</translation>
    </message>
    <message>
        <source>&amp;Port</source>
        <translation>&amp;Port</translation>
    </message>
    <message>
        <source>&amp;Baud</source>
        <translation>Ba&amp;ud</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>port of the network address</source>
        <translation>Port der Netzwerkadresse</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>Ad&amp;resse</translation>
    </message>
    <message>
        <source>&amp;Choose …</source>
        <translation>Wäh&amp;len …</translation>
    </message>
    <message>
        <source>&amp;Pipe</source>
        <translation>&amp;Pipe</translation>
    </message>
    <message>
        <source>The pipe</source>
        <translation>Die Pipe</translation>
    </message>
    <message>
        <source>times as fast as recorded</source>
        <translation>so viel schneller als aufgezeichnet</translation>
    </message>
    <message>
        <source>lines per second, when the file has no times</source>
        <translation>Zeilen je Sekunde, wenn die Datei keine Zeiten hat</translation>
    </message>
    <message>
        <source>F&amp;ile</source>
        <translation>Date&amp;i</translation>
    </message>
    <message>
        <source>A recorded feed</source>
        <translation>Eine Aufzeichnung</translation>
    </message>
    <message>
        <source>Played</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Without times</source>
        <translation>Ohne Zeiten</translation>
    </message>
    <message>
        <source>lines per second</source>
        <translation>Zeilen je Sekunde</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SpokenParts</name>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SprayController</name>
    <message>
        <source>No point is called.</source>
        <translation>Kein Punkt ist gerufen.</translation>
    </message>
    <message>
        <source>A correction is typed, not sprayed; Esc leaves it.</source>
        <translation>Eine Berichtigung wird getippt, nicht gesprüht; Esc verlässt sie.</translation>
    </message>
    <message>
        <source>The background moves; wait, or press I to go on anyway.</source>
        <translation>Der Untergrund bewegt sich; warten, oder I für trotzdem weiter.</translation>
    </message>
    <message>
        <source>Helium of the last point is still clearing; wait, or press I to go on anyway.</source>
        <translation>Das Helium des letzten Punktes zieht noch ab; warten, oder I für trotzdem weiter.</translation>
    </message>
    <message>
        <source>Choose 1 to %1, or Esc to leave it.</source>
        <translation>1 bis %1 wählen, oder Esc zum Verlassen.</translation>
    </message>
    <message>
        <source>%1 comes again at the end (%2).</source>
        <translation>%1 kommt am Ende noch einmal (%2).</translation>
    </message>
    <message>
        <source>The first rise is marked while helium is on.</source>
        <translation>Das erste Steigen wird markiert, solange Helium strömt.</translation>
    </message>
    <message>
        <source>Going on before the helium cleared; the reading is marked.</source>
        <translation>Weiter, bevor das Helium abgezogen war; der Messwert trägt den Vermerk.</translation>
    </message>
    <message>
        <source>Stopped %1 while point %2 was sprayed; nothing was stored for it then.</source>
        <translation>Angehalten %1 beim Sprühen von Punkt %2; gespeichert wurde dabei nichts.</translation>
    </message>
    <message>
        <source>There is no point %1 in this object.</source>
        <translation>Einen Punkt %1 gibt es an diesem Objekt nicht.</translation>
    </message>
    <message>
        <source>Choose one of the numbers, or Esc to leave it.</source>
        <translation>Eine der Zahlen wählen, oder Esc zum Verlassen.</translation>
    </message>
    <message>
        <source>No point is called; Sketch lays points.</source>
        <translation>Kein Punkt ist gerufen; Skizze legt Punkte.</translation>
    </message>
    <message>
        <source>Every point of this round is done; J calls one again.</source>
        <translation>Jeder Punkt dieser Runde ist fertig; J ruft einen noch einmal.</translation>
    </message>
    <message>
        <source>Type the highest value, or press N for no response.</source>
        <translation>Den Höchstwert eintippen, oder N für keine Antwort.</translation>
    </message>
    <message>
        <source>Nothing is zero: press N for no response.</source>
        <translation>Nichts ist null: N für keine Antwort.</translation>
    </message>
    <message>
        <source>The exponent is missing, as in 3.2e-7.</source>
        <translation>Der Exponent fehlt, wie in 3,2e-7.</translation>
    </message>
    <message>
        <source>This is not a value; write it as 3.2e-7.</source>
        <translation>Das ist kein Wert; schreiben als 3,2e-7.</translation>
    </message>
    <message>
        <source>Enter again takes e%1; Up and Down change it.</source>
        <translation>Noch einmal Eingabe nimmt e%1; Auf und Ab ändern ihn.</translation>
    </message>
    <message>
        <source>The detector&apos;s unit %1 does not give a leak rate; Prepare sets it.</source>
        <translation>Die Einheit %1 des Lecksuchers ergibt keine Leckrate; Vorbereiten setzt sie.</translation>
    </message>
    <message>
        <source>Enter again keeps it.</source>
        <translation>Noch einmal Eingabe behält ihn.</translation>
    </message>
    <message>
        <source>Type the background as in 1.5e-9; B leaves it as it was.</source>
        <translation>Untergrund eintippen wie 1,5e-9; B lässt ihn, wie er war.</translation>
    </message>
    <message>
        <source>%1 corrected; the old entry stays in the record.</source>
        <translation>%1 berichtigt; der alte Eintrag bleibt in der Aufzeichnung.</translation>
    </message>
    <message>
        <source>%1 stored.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>Every point of this round is done.</source>
        <translation>Jeder Punkt dieser Runde ist fertig.</translation>
    </message>
    <message>
        <source>The feed saw no rise: press N for no response, or type the value.</source>
        <translation>Die Leitung sah keinen Anstieg: N für keine Antwort, oder den Wert eintippen.</translation>
    </message>
    <message>
        <source>There is no feed; type the highest value.</source>
        <translation>Es gibt keine Messleitung; den höchsten Wert eintippen.</translation>
    </message>
    <message>
        <source>The feed&apos;s highest is taken after a spray.</source>
        <translation>Der Höchstwert der Leitung wird nach dem Sprühen genommen.</translation>
    </message>
    <message>
        <source>The feed gave no value during this spray; type it.</source>
        <translation>Die Leitung gab beim Sprühen keinen Wert; bitte eintippen.</translation>
    </message>
    <message>
        <source>The feed reached the end of the detector&apos;s range: press + for over range.</source>
        <translation>Die Leitung erreichte das Ende des Messbereichs: + für über Bereich.</translation>
    </message>
    <message>
        <source>Background moved, %1 to %2</source>
        <translation>Untergrund bewegt, %1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>void all %n, call again</source>
        <translation>
            <numerusform>alle %n ungültig, neu rufen</numerusform>
            <numerusform>alle %n ungültig, neu rufen</numerusform>
        </translation>
    </message>
    <message>
        <source>keep them</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>stay, keep as noted</source>
        <translation>bleiben, wird vermerkt</translation>
    </message>
    <message>
        <source>Leave the order</source>
        <translation>Reihenfolge verlassen</translation>
    </message>
    <message>
        <source>Leave the order after %1</source>
        <translation>Nach %1 die Reihenfolge verlassen</translation>
    </message>
    <message>
        <source>go to %1</source>
        <translation>zu %1 gehen</translation>
    </message>
    <message>
        <source>Seal or bag first</source>
        <translation>Zuerst abdichten oder einhüllen</translation>
    </message>
    <message>
        <source>Seal or bag %1 first</source>
        <translation>Zuerst %1 abdichten oder einhüllen</translation>
    </message>
    <message>
        <source>sealed, go to %1</source>
        <translation>abgedichtet, zu %1</translation>
    </message>
    <message>
        <source>Spray %1 again, gently</source>
        <translation>%1 noch einmal sanft besprühen</translation>
    </message>
    <message>
        <source>%1 with less helium</source>
        <translation>%1 mit weniger Helium</translation>
    </message>
    <message>
        <source>There is no advice to take; the walk goes on in order.</source>
        <translation>Es gibt keinen Rat; der Rundgang geht der Reihe nach weiter.</translation>
    </message>
    <message numerus="yes">
        <source>%n readings are void (%1) and called again.</source>
        <translation>
            <numerusform>%n Messung ist ungültig (%1) und wird neu aufgerufen.</numerusform>
            <numerusform>%n Messungen sind ungültig (%1) und werden neu aufgerufen.</numerusform>
        </translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>last stored %1 %2</source>
        <translation>zuletzt gespeichert %1 %2</translation>
    </message>
    <message>
        <source>Readings from paper are typed, not sprayed.</source>
        <translation>Messungen vom Papier werden getippt, nicht gesprüht.</translation>
    </message>
    <message>
        <source>Staying in order; the reading is marked.</source>
        <translation>Es bleibt bei der Reihenfolge; die Messung wird gekennzeichnet.</translation>
    </message>
    <message>
        <source>The readings stay as they are.</source>
        <translation>Die Messungen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>The time of the last value is asked for; Esc leaves it.</source>
        <translation>Gefragt ist die Uhrzeit des letzten Werts; Esc verwirft ihn.</translation>
    </message>
    <message>
        <source>Type the time on the paper in four digits, as 1432.</source>
        <translation>Die Uhrzeit auf dem Papier in vier Ziffern tippen, etwa 1432.</translation>
    </message>
    <message>
        <source>%1 is before %2, the time typed last; Enter again takes it all the same.</source>
        <translation>%1 liegt vor %2, der zuletzt getippten Zeit; nochmals Enter nimmt es trotzdem.</translation>
    </message>
    <message>
        <source>This time has not come yet; the sheet is of %1.</source>
        <translation>Diese Uhrzeit ist noch nicht gekommen; das Blatt ist vom %1.</translation>
    </message>
    <message>
        <source>The repair at point %1 still cures: it may be sprayed from %2 %3.</source>
        <translation>Die Reparatur an Punkt %1 härtet noch aus: absprühen ab %2 %3.</translation>
    </message>
    <message>
        <source>Point %1 is being sprayed; its reading comes first, or J calls another.</source>
        <translation>Punkt %1 wird gerade besprüht; erst kommt sein Messwert, oder J ruft einen anderen.</translation>
    </message>
    <message>
        <source>The remark on point %1 was not kept: nothing was stored there.</source>
        <translation>Die Bemerkung zu Punkt %1 wurde nicht aufgehoben: dort wurde nichts gespeichert.</translation>
    </message>
    <message>
        <source>came later: %1</source>
        <translation>kam später: %1</translation>
    </message>
    <message>
        <source>not stored</source>
        <translation>nicht gespeichert</translation>
    </message>
    <message>
        <source>A response is confirmed by a spray; Esc leaves this first.</source>
        <translation>Eine Reaktion wird durch Sprühen bestätigt; Esc verlässt erst dies.</translation>
    </message>
    <message>
        <source>Nothing answered yet that could be confirmed; J calls a point that did.</source>
        <translation>Noch hat nichts reagiert, was bestätigt werden könnte; J ruft einen Punkt, der reagiert hat.</translation>
    </message>
    <message>
        <source>Point %1 is being sprayed; its reading comes first.</source>
        <translation>Punkt %1 wird gerade besprüht; erst kommt sein Messwert.</translation>
    </message>
    <message>
        <source>Point %1 once more, from a clean background: its answer is stored as confirmed.</source>
        <translation>Punkt %1 noch einmal, aus ruhigem Untergrund: seine Antwort wird als bestätigt gespeichert.</translation>
    </message>
    <message>
        <source>The reading %1 is void (%2) and called again.</source>
        <translation>Der Messwert %1 ist ungültig (%2) und wird noch einmal gerufen.</translation>
    </message>
    <message>
        <source>Round %1 again: it calls point %2.</source>
        <translation>Wieder Runde %1: sie ruft Punkt %2 auf.</translation>
    </message>
    <message>
        <source>Nothing that was stored here stands in this round; J calls an older point first.</source>
        <translation>Nichts, was hier gespeichert wurde, gilt in dieser Runde; J ruft zuerst einen älteren Punkt auf.</translation>
    </message>
    <message>
        <source>First rise after %1 s.</source>
        <translation>Erster Anstieg nach %1 s.</translation>
    </message>
    <message>
        <source>Not stored: %1. It waited for another program, and something else was begun.</source>
        <translation>Nicht gespeichert: %1. Der Eintrag wartete auf ein anderes Programm, und es wurde etwas anderes begonnen.</translation>
    </message>
    <message>
        <source>The detector shows zero or below. If it was zeroed, its background cannot be told: B takes it typed, else the reading is marked.</source>
        <translation>Der Lecksucher zeigt null oder weniger. Wurde er auf null gestellt, ist sein Untergrund unbekannt: B nimmt ihn getippt an, sonst wird der Messwert vermerkt.</translation>
    </message>
    <message>
        <source>The feed was lost before it saw a rise; type the value.</source>
        <translation>Die Leitung fiel aus, bevor ein Anstieg kam; den Wert eintippen.</translation>
    </message>
    <message>
        <source>Type the seconds from helium on to the first rise, as in 1.5; Esc leaves it.</source>
        <translation>Die Sekunden vom Helium bis zum ersten Anstieg eintippen, wie 1,5; Esc lässt es.</translation>
    </message>
    <message>
        <source>Type the highest the detector can show, as in 1e-3; Esc leaves it.</source>
        <translation>Das Höchste eintippen, das der Lecksucher anzeigen kann, wie 1e-3; Esc lässt es.</translation>
    </message>
    <message>
        <source>B types it</source>
        <translation>B gibt ihn ein</translation>
    </message>
    <message>
        <source>Space sprays</source>
        <translation>Leertaste sprüht</translation>
    </message>
    <message>
        <source>Space sprays again</source>
        <translation>Leertaste sprüht noch einmal</translation>
    </message>
    <message>
        <source>%1: %2, or the review will ask.</source>
        <translation>%1: %2; sonst fragt die Prüfung danach.</translation>
    </message>
    <message>
        <source>%1 stored and marked for the review: %2. J calls it again.</source>
        <translation>%1 gespeichert und für die Prüfung markiert: %2. J ruft ihn noch einmal.</translation>
    </message>
    <message>
        <source>Helium went on %1 s ago; the first rise cannot be %2 s after that.</source>
        <translation>Helium ist seit %1 s an; der erste Anstieg kann nicht %2 s danach sein.</translation>
    </message>
    <message>
        <source>Point %1 answered late before: helium stays on for %2 s.</source>
        <translation>Punkt %1 hat schon einmal spät geantwortet: Helium bleibt %2 s an.</translation>
    </message>
    <message>
        <source>%1 did not answer again: not confirmed. Its first answer stays; Judge says what it is.</source>
        <translation>%1 antwortete nicht noch einmal: nicht bestätigt. Seine erste Antwort bleibt; Beurteilen sagt, was sie ist.</translation>
    </message>
    <message>
        <source>Nothing is taped off any more.</source>
        <translation>Nichts ist mehr abgeklebt.</translation>
    </message>
    <message>
        <source>The point that is called is sprayed, so it counts as open.</source>
        <translation>Der aufgerufene Punkt wird besprüht und gilt darum als offen.</translation>
    </message>
    <message>
        <source>Taped off until W says otherwise: %1.</source>
        <translation>Abgeklebt, bis W etwas anderes sagt: %1.</translation>
    </message>
    <message>
        <source>This job is of %1; readings get the time of now. Those of a sheet of paper: Job menu, Readings from a paper sheet.</source>
        <translation>Dieser Auftrag ist vom %1; Messwerte bekommen die Zeit von jetzt. Die eines Papierblatts: Menü Auftrag, Messwerte von einem Papierblatt.</translation>
    </message>
    <message>
        <source>typed wrong</source>
        <translation>vertippt</translation>
    </message>
    <message>
        <source>First rise after %1 s, when helium was off again: it came a long way, or from a leak elsewhere.</source>
        <translation>Erster Anstieg nach %1 s, als das Helium schon wieder aus war: Es kam von weit her oder von einem anderen Leck.</translation>
    </message>
    <message>
        <source>N again stores it all the same.</source>
        <translation>Noch einmal N speichert es trotzdem.</translation>
    </message>
    <message>
        <source>Space came while the last point still cleared, so this spray was not timed.</source>
        <translation>Die Leertaste kam, während der letzte Punkt noch abklang; diese Sprühung hat keine Zeit.</translation>
    </message>
    <message>
        <source>It answered late before and needs %1 s of helium; it had %2 s.</source>
        <translation>Er hat zuvor spät geantwortet und braucht %1 s Helium; er hatte %2 s.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SprayPage</name>
    <message>
        <source>No job is open. History opens or starts one.</source>
        <translation>Kein Auftrag offen. Die Historie öffnet oder beginnt einen.</translation>
    </message>
    <message>
        <source>No points yet: Sketch lays them.</source>
        <translation>Noch keine Punkte: Skizze legt sie.</translation>
    </message>
    <message>
        <source>No limit yet. What counts as tight is agreed before the first reading.</source>
        <translation>Noch kein Grenzwert. Was als dicht gilt, wird vor dem ersten Messwert vereinbart.</translation>
    </message>
    <message numerus="yes">
        <source>The walk over %n points, as found, has not begun.</source>
        <translation>
            <numerusform>Der Gang über %n Punkt, vorgefunden, hat nicht begonnen.</numerusform>
            <numerusform>Der Gang über %n Punkte, vorgefunden, hat nicht begonnen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Go to Sketch</source>
        <translation>Zur Skizze</translation>
    </message>
    <message>
        <source>Go to Prepare</source>
        <translation>Zum Vorbereiten</translation>
    </message>
    <message>
        <source>Begin the walk</source>
        <translation>Gang beginnen</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt;&amp;nbsp; sheet %2 of %3 · %4 He, on the chamber</source>
        <translation>&lt;b&gt;%1&lt;/b&gt;&amp;nbsp; Blatt %2 von %3 · %4 He, an der Kammer</translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation>über dem Grenzwert</translation>
    </message>
    <message>
        <source>within</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Remark on the reading that comes:</source>
        <translation>Bemerkung zum kommenden Messwert:</translation>
    </message>
    <message>
        <source>%1 stored · %2 He, as shown</source>
        <translation>%1 gespeichert · %2 He, wie angezeigt</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>Call</source>
        <translation>Aufruf</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>NOT STORED</source>
        <translation>UNGESPEICHERT</translation>
    </message>
    <message>
        <source>not on disk</source>
        <translation>nicht auf der Platte</translation>
    </message>
    <message>
        <source>The cautions in Prepare are not ticked as read: helium, vacuum, height, permits.</source>
        <translation>Die Vorsichtsregeln in Vorbereiten sind nicht als gelesen angekreuzt: Helium, Vakuum, Höhe, Erlaubnisse.</translation>
    </message>
    <message>
        <source>The background was not watched yet: what cannot be seen is not known.</source>
        <translation>Der Untergrund wurde noch nicht beobachtet: was nicht zu sehen wäre, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Why it is corrected:</source>
        <translation>Warum berichtigt wird:</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>“%1” was not kept: point %2 is called no more.</source>
        <translation>„%1“ wurde nicht behalten: Punkt %2 ist nicht mehr gerufen.</translation>
    </message>
    <message>
        <source>Taped or bagged off</source>
        <translation>Abgeklebt oder eingebeutelt</translation>
    </message>
    <message>
        <source>Points no helium reaches while others are sprayed, as 38, 40-42; empty: none.
It stays until it is said otherwise.</source>
        <translation>Punkte, an die kein Helium kommt, während andere besprüht werden, wie 38, 40-42; leer: keine.
Das gilt, bis etwas anderes gesagt wird.</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>zählt nicht</translation>
    </message>
    <message>
        <source>A correction keeps what was taped off then; make the reading void and spray again.</source>
        <translation>Eine Berichtigung behält, was damals abgeklebt war; den Messwert ungültig machen und neu sprühen.</translation>
    </message>
    <message>
        <source>No check with a reference leak yet: without one no reading becomes a leak rate.</source>
        <translation>Noch keine Prüfung mit einem Prüfleck: ohne sie wird keine Ablesung zur Leckrate.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::StageField</name>
    <message>
        <source>%1 (Alt+%2)</source>
        <translation>%1 (Alt+%2)</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::StageStrip</name>
    <message>
        <source>stages</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>%1, not as signed: %2</source>
        <translation>%1, nicht wie unterschrieben: %2</translation>
    </message>
    <message>
        <source>Not as signed: %1</source>
        <translation>Nicht wie unterschrieben: %1</translation>
    </message>
    <message>
        <source>Not as signed · %1</source>
        <translation>Nicht wie unterschrieben · %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::StateBar</name>
    <message>
        <source>State of the call</source>
        <translation>Stand des Rufs</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::SubmitDialog</name>
    <message>
        <source>Send for review with stops</source>
        <translation>Mit offenen Sperren zur Durchsicht geben</translation>
    </message>
    <message>
        <source>These stop a sign-off; the reviewer can only send the job back:</source>
        <translation>Das hält die Unterschrift auf; wer prüft, kann den Auftrag nur zurückgeben:</translation>
    </message>
    <message>
        <source>&amp;Why it is sent all the same; this goes on record</source>
        <translation>&amp;Warum er trotzdem gegeben wird; das wird festgehalten</translation>
    </message>
    <message>
        <source>Send all the same</source>
        <translation>Trotzdem geben</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::TcpLink</name>
    <message>
        <source>the address does not answer</source>
        <translation>die Adresse antwortet nicht</translation>
    </message>
    <message>
        <source>the other side hung up</source>
        <translation>die Gegenseite hat aufgelegt</translation>
    </message>
    <message>
        <source>nothing listens at that address</source>
        <translation>an dieser Adresse hört niemand</translation>
    </message>
    <message>
        <source>the address is not known</source>
        <translation>die Adresse ist nicht bekannt</translation>
    </message>
    <message>
        <source>the connection broke</source>
        <translation>die Verbindung ist abgerissen</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::ToolRail</name>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::TotalsModel</name>
    <message>
        <source>as left</source>
        <translation>hinterlassen</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>vorgefunden</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>not sprayed</source>
        <translation>nicht besprüht</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht erfasst</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1, 95 % range %2</source>
        <translation>%1, 95-%-Bereich %2</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Sprayed</source>
        <translation>Besprüht</translation>
    </message>
    <message>
        <source>Leaks, %1 air</source>
        <translation>Lecks, %1 Luft</translation>
    </message>
    <message>
        <source>Pressure rise</source>
        <translation>Druckanstieg</translation>
    </message>
    <message>
        <source>Base, mbar</source>
        <translation>Enddruck, mbar</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::TouchPad</name>
    <message>
        <source>The last reading is void, because …</source>
        <translation>Die letzte Messung ist ungültig, denn …</translation>
    </message>
    <message>
        <source>All readings of the run are void, because …</source>
        <translation>Alle Messungen der Strecke sind ungültig, denn …</translation>
    </message>
    <message>
        <source>It cannot be reached, because …</source>
        <translation>Nicht erreichbar, denn …</translation>
    </message>
    <message>
        <source>Condition of the joint</source>
        <translation>Zustand der Verbindung</translation>
    </message>
    <message>
        <source>It comes later, because …</source>
        <translation>Kommt später, denn …</translation>
    </message>
    <message>
        <source>no access …</source>
        <translation>nicht erreichbar …</translation>
    </message>
    <message>
        <source>skip …</source>
        <translation>auslassen …</translation>
    </message>
    <message>
        <source>jump …</source>
        <translation>springen …</translation>
    </message>
    <message>
        <source>over range</source>
        <translation>über dem Bereich</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>andere …</translation>
    </message>
    <message>
        <source>background …</source>
        <translation>Untergrund …</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Go to point number</source>
        <translation>Zu Punkt Nummer</translation>
    </message>
    <message>
        <source>What the detector shows</source>
        <translation>Was der Detektor zeigt</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>The reading %1 is void, because …</source>
        <translation>Der Messwert %1 ist ungültig, denn …</translation>
    </message>
    <message>
        <source>It is not tested, because …</source>
        <translation>Es wird nicht geprüft, denn …</translation>
    </message>
    <message>
        <source>not tested …</source>
        <translation>nicht geprüft …</translation>
    </message>
    <message>
        <source>confirm</source>
        <translation>bestätigen</translation>
    </message>
    <message>
        <source>Background, no helium given</source>
        <translation>Untergrund, ohne Helium</translation>
    </message>
    <message>
        <source>First rise, seconds after helium on</source>
        <translation>Erster Anstieg, Sekunden nach Helium</translation>
    </message>
    <message>
        <source>taped off …</source>
        <translation>abgeklebt …</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::TouchStrip</name>
    <message>
        <source>Spray</source>
        <translation>Sprühen</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>beginnt</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>helium off</source>
        <translation>Helium aus</translation>
    </message>
    <message>
        <source>once more</source>
        <translation>noch einmal</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>touch twice</source>
        <translation>zweimal tippen</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>and next</source>
        <translation>und weiter</translation>
    </message>
    <message>
        <source>No response</source>
        <translation>Keine Antwort</translation>
    </message>
    <message>
        <source>bound kept</source>
        <translation>Schranke bleibt</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>from feed</source>
        <translation>der Leitung</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>digits</source>
        <translation>Ziffern</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Void, skip</source>
        <translation>Ungültig</translation>
    </message>
    <message>
        <source>with reason</source>
        <translation>mit Grund</translation>
    </message>
    <message>
        <source>Exponent +</source>
        <translation>Exponent +</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Verbessern</translation>
    </message>
    <message>
        <source>last point</source>
        <translation>letzten Punkt</translation>
    </message>
    <message>
        <source>Helium is still clearing; touch once more within two seconds to go on anyway.</source>
        <translation>Das Helium verzieht sich noch; binnen zwei Sekunden noch einmal tippen: trotzdem weiter.</translation>
    </message>
    <message>
        <source>The feed saw no rise yet; touch the field to type the value.</source>
        <translation>Die Leitung sah noch keinen Anstieg; ins Feld tippen, um den Wert einzugeben.</translation>
    </message>
    <message>
        <source>Background</source>
        <translation>Untergrund</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::VerdictBox</name>
    <message>
        <source>The drift costs most: pump and watch longer until the background has settled.</source>
        <translation>Die Drift kostet am meisten: pumpen und länger beobachten, bis der Untergrund ruht.</translation>
    </message>
    <message>
        <source>Most helium goes past the detector: throttle the pump in parallel.</source>
        <translation>Das meiste Helium geht am Lecksucher vorbei: die parallele Pumpe drosseln.</translation>
    </message>
    <message>
        <source>The noise costs most: let the detector warm up, clear the air of helium.</source>
        <translation>Das Rauschen kostet am meisten: den Lecksucher warm laufen lassen, Helium aus der Luft lüften.</translation>
    </message>
    <message>
        <source>Type the limit for one joint.</source>
        <translation>Den Grenzwert einer Stelle eintragen.</translation>
    </message>
    <message>
        <source>Enter a reference leak: without it no reading becomes a leak rate.</source>
        <translation>Ein Prüfleck eintragen: ohne wird aus keinem Messwert eine Leckrate.</translation>
    </message>
    <message>
        <source>Watch the background for a minute: noise and drift decide what can be seen.</source>
        <translation>Den Untergrund eine Minute beobachten: Rauschen und Drift entscheiden, was zu sehen ist.</translation>
    </message>
    <message>
        <source>The dwell is too short for the response; see the times above.</source>
        <translation>Die Sprühzeit ist zu kurz für das Ansprechen; siehe die Zeiten oben.</translation>
    </message>
    <message>
        <source>Not known yet what can be seen</source>
        <translation>Noch nicht bekannt, was zu sehen ist</translation>
    </message>
    <message>
        <source>Good to start: limit %1 times what can be seen</source>
        <translation>Guter Anfang: Grenzwert %1-mal, was zu sehen ist</translation>
    </message>
    <message>
        <source>At least 3 times is needed before any point can pass.</source>
        <translation>Mindestens 3-mal ist nötig, damit ein Punkt bestehen kann.</translation>
    </message>
    <message>
        <source>Start with care: limit only %1 times what can be seen</source>
        <translation>Mit Vorsicht: Grenzwert nur %1-mal, was zu sehen ist</translation>
    </message>
    <message>
        <source>Cannot pass anything: limit %1 times what can be seen, 3 are needed</source>
        <translation>Nichts kann bestehen: Grenzwert %1-mal, was zu sehen ist, 3 sind nötig</translation>
    </message>
    <message>
        <source>Searching for faults is still possible.</source>
        <translation>Fehlersuche bleibt möglich.</translation>
    </message>
    <message>
        <source>Little reaches the detector from the farthest place: throttle or close the pump in parallel, or connect nearer.</source>
        <translation>Vom fernsten Ort kommt wenig an: die Parallelpumpe drosseln oder schließen oder näher anschließen.</translation>
    </message>
    <message>
        <source>Good: limit %1 times what can be seen</source>
        <translation>Gut: Grenzwert %1-mal, was zu sehen ist</translation>
    </message>
    <message>
        <source>With care: limit only %1 times what can be seen</source>
        <translation>Mit Vorsicht: Grenzwert nur %1-mal, was zu sehen ist</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::VerdictDialog</name>
    <message>
        <source>Accepted above the limit, by concession</source>
        <translation>Über dem Grenzwert angenommen, als Sonderfreigabe</translation>
    </message>
    <message>
        <source>Verdict on point %1</source>
        <translation>Urteil über Punkt %1</translation>
    </message>
    <message>
        <source>Computed: %1, %2. Both stay in the record.</source>
        <translation>Errechnet: %1, %2. Beides bleibt in der Aufzeichnung.</translation>
    </message>
    <message>
        <source>&amp;Finding</source>
        <translation>&amp;Befund</translation>
    </message>
    <message>
        <source>&amp;Verdict</source>
        <translation>&amp;Urteil</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>&amp;Granted by</source>
        <translation>&amp;Zugestanden von</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>B&amp;is</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Not a date; write it as 2026-03-01.</source>
        <translation>Kein Datum; schreiben wie 2026-03-01.</translation>
    </message>
    <message>
        <source>A concession needs the day until which it holds.</source>
        <translation>Eine Sonderfreigabe braucht den Tag, bis zu dem sie gilt.</translation>
    </message>
    <message>
        <source>A concession holds until a day after today.</source>
        <translation>Eine Sonderfreigabe gilt bis zu einem Tag nach heute.</translation>
    </message>
    <message>
        <source>This verdict stands already: nothing was stored. Choose another one, or Cancel.</source>
        <translation>Dieses Urteil gilt schon: Nichts wurde gespeichert. Ein anderes wählen oder Abbrechen.</translation>
    </message>
    <message>
        <source>another source: test set-up, helium from elsewhere</source>
        <translation>andere Quelle: Prüfaufbau, Helium von anderswo</translation>
    </message>
    <message>
        <source>virtual leak: gas trapped inside</source>
        <translation>virtuelles Leck: innen eingeschlossenes Gas</translation>
    </message>
    <message>
        <source>Its rate counts among the located leaks of the balance and the load.</source>
        <translation>Seine Rate zählt zu den gefundenen Lecks von Bilanz und Last.</translation>
    </message>
    <message>
        <source>Gas through sound material: no leak to repair, so it is not counted among the located leaks; the pressure rise holds it as not located.</source>
        <translation>Gas durch heiles Material: kein Leck zum Reparieren, darum nicht unter den gefundenen Lecks gezählt; der Druckanstieg enthält es als nicht gefunden.</translation>
    </message>
    <message>
        <source>Counted at the leak it belongs to, not here.</source>
        <translation>Gezählt am Leck, zu dem es gehört, nicht hier.</translation>
    </message>
    <message>
        <source>Helium from outside does not size it: not among the located leaks. Its gas is part of the pressure rise and stands there as not located.</source>
        <translation>Helium von außen misst es nicht: nicht unter den gefundenen Lecks. Sein Gas ist Teil des Druckanstiegs und steht dort als nicht gefunden.</translation>
    </message>
    <message>
        <source>Not counted.</source>
        <translation>Nicht gezählt.</translation>
    </message>
    <message>
        <source>Not the object&apos;s: not counted as its leak. A leak of the set-up is closed, and what was read through it sprayed again.</source>
        <translation>Nicht vom Objekt: nicht als sein Leck gezählt. Ein Leck des Aufbaus wird geschlossen und was dadurch gelesen wurde noch einmal besprüht.</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
    <message>
        <source>Choose the verdict: the one worked out supposed a leak here.</source>
        <translation>Wählen Sie das Urteil: Das errechnete setzte hier ein Leck voraus.</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>&amp;Of the leak at</source>
        <translation>&amp;Vom Leck an</translation>
    </message>
    <message>
        <source>“Not counted” goes with another source: what is the object&apos;s own counts.</source>
        <translation>„Zählt nicht“ gehört zu einer anderen Quelle: was dem Objekt gehört, zählt.</translation>
    </message>
    <message>
        <source>as worked out</source>
        <translation>wie gerechnet</translation>
    </message>
    <message>
        <source>What comes from elsewhere is not over the limit of this point: choose within, or cannot say until it is sprayed again.</source>
        <translation>Was von anderswo kommt, liegt nicht über dem Grenzwert dieses Punkts: „darunter“ wählen, oder „unklar“, bis er wieder besprüht ist.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::VoidDialog</name>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::VoidMeasurement</name>
    <message>
        <source>Void measurement</source>
        <translation>Messung verwerfen</translation>
    </message>
    <message>
        <source>Void this %1? It stays on record with your reason, in the report too, and counts for nothing. What was worked out with it is worked out anew.</source>
        <translation>Verwerfen: %1? Bleibt mit Ihrem Grund in der Akte, auch im Bericht, und zählt für nichts. Was damit berechnet wurde, wird neu berechnet.</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Void: %1 – %2, %3 %4. It stays on record and counts for nothing.</source>
        <translation>Verworfen: %1 – %2, %3 %4. Bleibt in der Akte und zählt für nichts.</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::WalkLine</name>
    <message>
        <source>Order …  P</source>
        <translation>Reihenfolge …  P</translation>
    </message>
    <message>
        <source>Change the order of the walk</source>
        <translation>Reihenfolge des Rundgangs ändern</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; of %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; von %2</translation>
    </message>
    <message>
        <source>then %1</source>
        <translation>dann %1</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::WalkModel</name>
    <message>
        <source>void, again</source>
        <translation>nochmal</translation>
    </message>
    <message>
        <source>no resp.</source>
        <translation>k. Antwort</translation>
    </message>
    <message>
        <source>no access</source>
        <translation>kein Zugang</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>ungeprüft</translation>
    </message>
    <message>
        <source>Point %1, %2, %3</source>
        <translation>Punkt %1, %2, %3</translation>
    </message>
    <message>
        <source>not sprayed</source>
        <translation>nicht besprüht</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>comes later: %1</source>
        <translation>kommt später: %1</translation>
    </message>
    <message>
        <source>marked: %1</source>
        <translation>markiert: %1</translation>
    </message>
    <message>
        <source>done later</source>
        <translation>später</translation>
    </message>
</context>
<context>
    <name>sealwalk::ui::WalkPanel</name>
    <message>
        <source>How far the walk is</source>
        <translation>Wie weit der Gang ist</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Gang</translation>
    </message>
    <message>
        <source>Order of the walk</source>
        <translation>Reihenfolge des Gangs</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; of %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; von %2</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>correct</source>
        <translation>berichtigen</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Fern</translation>
    </message>
    <message>
        <source>Order …  P</source>
        <translation>Reihenfolge …  P</translation>
    </message>
    <message>
        <source>Change the order of the walk</source>
        <translation>Reihenfolge des Rundgangs ändern</translation>
    </message>
    <message>
        <source>confirm</source>
        <translation>bestätigen</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>delay</source>
        <translation>Verzug</translation>
    </message>
    <message numerus="yes">
        <source>round %1 (%n call(s))</source>
        <translation>
            <numerusform>Runde %1 (%n Aufruf)</numerusform>
            <numerusform>Runde %1 (%n Aufrufe)</numerusform>
        </translation>
    </message>
    <message>
        <source>Also waits: %1</source>
        <translation>Wartet auch noch: %1</translation>
    </message>
    <message>
        <source>values as shown</source>
        <translation>Werte wie angezeigt</translation>
    </message>
    <message>
        <source>What the display said; the map has what it means on the chamber.</source>
        <translation>Was die Anzeige sagte; die Karte hat, was es an der Kammer bedeutet.</translation>
    </message>
    <message>
        <source>others taped off</source>
        <translation>andere abgeklebt</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
</TS>
