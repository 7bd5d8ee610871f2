import { imeiDigits } from '../../../rules/record/imei-is-plausible.ts';
import type { recordRules } from '../../../rules/record/record-rules.ts';
import { vinCharacters } from '../../../rules/record/vin-is-plausible.ts';
import type { RuleWordsOf } from '../../../rules/rule-words.ts';

type Says<Id extends keyof RuleWordsOf<typeof recordRules>> = RuleWordsOf<typeof recordRules>[Id]['says'];
type RecordPart = Parameters<Says<'record-is-complete'>['not recorded yet']>[0]['part'];
type Section = Parameters<Says<'no-fact-is-left-open'>['left open']>[0];

const parts: Readonly<Record<RecordPart, string>> = {
  payer: 'wer zahlt',
  customer: 'der Kunde',
  visit: 'die Art des Besuchs',
  vehicle: 'das Fahrzeug',
  labour: 'die Zeiten',
  'condition before': 'der Zustand vorher',
  'condition after': 'der Zustand nachher',
  device: 'das Gerät',
  'supply readings': 'die Messungen der Versorgung',
  'probe points': 'die Messpunkte',
  connections: 'die Verbindungen',
  placement: 'der Einbauort',
  harness: 'der Kabelbaum',
  'supply lead': 'die Geräteleitung Versorgung',
  'ignition lead': 'die Geräteleitung Zündung',
  'ground lead': 'die Geräteleitung Masse',
  'reason of the wasted visit': 'der Grund der vergeblichen Anfahrt',
};
const sections: Readonly<Record<Section['at'], string>> = {
  supply: 'zur Geräteleitung Versorgung',
  ignition: 'zur Geräteleitung Zündung',
  ground: 'zur Geräteleitung Masse',
  'ground point': 'zum Massepunkt',
  harness: 'zum Kabelbaum',
  device: 'zum Gerät',
};
const facts: Readonly<Record<Section['facts'][number], string>> = {
  'how it was stripped': 'wie abisoliert wurde',
  'whether it is tied': 'ob gebunden ist',
  'whether its fuse is taped and tied': 'ob die Sicherung verschlossen und gebunden ist',
  'whether it stands on bare metal': 'ob er auf blankem Metall sitzt',
  'whether it is shakeproof': 'ob er rüttelsicher ist',
  'whether it is loomed': 'ob er im Schutzschlauch liegt',
  'its slack': 'sein Spiel',
  'whether a head or knee may strike it': 'ob Kopf oder Knie es treffen können',
  'whether tools reach it': 'ob Werkzeug es erreicht',
  'whether a hand reaches it': 'ob eine Hand es erreicht',
  'what is above its antenna': 'was über seiner Antenne ist',
};
const faults: Readonly<Record<Parameters<Says<'iccid-is-plausible'>['cannot be right']>[0]['fault'], string>> = {
  'not 18 to 20 digits': 'sie hat nicht 18 bis 20 Ziffern',
  'does not begin with 89': 'sie beginnt nicht mit 89',
  'check digit wrong': 'ihre Prüfziffer stimmt nicht',
};
const takeOne = (job: string) => `Eines aufnehmen und in photos/${job}/ legen.`;
const compare = 'Schild, Papiere und Protokoll vergleichen und das falsche berichtigen.';
const readPlate = 'Noch einmal vom Schild ablesen.';

/** What the rules of the record say, in German. */
export const recordRulesDe: RuleWordsOf<typeof recordRules> = {
  'device-not-in-another-vehicle': {
    summary: () => 'Das Gerät ist nicht schon in einem anderen Fahrzeug notiert.',
    why: 'Zwei Fahrzeuge unter einer Gerätenummer lassen sich später nicht unterscheiden; eines der Protokolle ist falsch.',
    says: {
      'in another vehicle': ({ number, day, job }, voice) => ({
        what: `Das Gerät ${number} wurde am ${voice.day(day)} in einem anderen Fahrzeug notiert (Auftrag ${job}).`,
        whatToDo: 'Das Schild noch einmal lesen; wurde das Gerät umgebaut, das als Grund schreiben.',
      }),
    },
  },
  'devices-are-named': {
    summary: () => 'Eingebautes und ausgebautes Gerät sind je mit eigener Nummer bekannt.',
    why: 'Ein Gerät ohne Nummer lässt sich nicht finden, zurückgeben oder vom nächsten unterscheiden.',
    says: {
      'fitted one not named': () => ({
        what: 'Weder Seriennummer noch IMEI des eingebauten Geräts ist notiert.',
        whatToDo: 'Vom Schild ablesen, bevor die Verkleidung zu ist.',
      }),
      'removed one not named': () => ({
        what: 'Die Seriennummer des ausgebauten Geräts ist nicht notiert.',
        whatToDo: 'Vom Schild des Geräts in der Hand ablesen.',
      }),
      'both the same': ({ serial }) => ({
        what: `Ausgebautes und eingebautes Gerät haben dieselbe Seriennummer, ${serial}.`,
        whatToDo: 'Beide Schilder noch einmal lesen.',
      }),
    },
  },
  'iccid-is-plausible': {
    summary: () => 'Die Kartennummer (ICCID) beginnt mit 89 und hat ihre Prüfziffer.',
    why: 'Eine Karte mit falscher Nummer wird weder freigeschaltet noch wiedergefunden.',
    says: {
      'cannot be right': ({ iccid, fault }) => ({
        what: `Die Kartennummer ${iccid} kann nicht stimmen: ${faults[fault]}.`,
        whatToDo: 'Noch einmal von der Karte oder ihrem Halter ablesen.',
      }),
    },
  },
  'imei-is-plausible': {
    summary: () => `Die IMEI hat ${imeiDigits} Ziffern und ihre Prüfziffer.`,
    why: 'Ein Gerät mit falscher Nummer wird nie wiedergefunden.',
    says: {
      'not right': ({ imei, digits }) => ({
        what: `Die IMEI ${imei} hat nicht ${digits} Ziffern mit der richtigen letzten.`,
        whatToDo: 'Noch einmal vom Schild ablesen.',
      }),
    },
  },
  'no-fact-is-left-open': {
    summary: () => 'Notiert ist, worauf die Regeln sich stützen: Verbindungen, Masse, Kabelbaum und Ort.',
    why: 'Eine Regel findet nichts Falsches an dem, was nie angesehen wurde; das Blatt behauptete mehr, als gesehen wurde.',
    says: {
      'left open': (section) => ({
        what: `Nicht notiert ${sections[section.at]}: ${section.facts.map((fact) => facts[fact]).join(', ')}.`,
        whatToDo: 'Hinsehen und eintragen, was zu sehen ist.',
      }),
    },
  },
  'odometer-not-below-earlier': {
    summary: () => 'Der Kilometerstand liegt nicht unter dem eines früheren Besuchs.',
    why: 'Einer der beiden Besuche liegt beim falschen Fahrzeug, oder das Instrument wurde getauscht.',
    says: {
      'below earlier': (odometer, voice) => ({
        what: `Der Zähler steht bei ${odometer.now} ${odometer.unit}, am ${voice.day(odometer.day)} stand er bei ${odometer.earlier} ${odometer.unitEarlier}.`,
        whatToDo: 'Noch einmal ablesen und die FIN vergleichen.',
      }),
    },
  },
  'photographs-are-present': {
    summary: () => 'Jedes Foto, das das Protokoll nennt, ist da.',
    why: 'Das Blatt spräche von einem Bild, das niemand sehen kann.',
    says: {
      'not in the folder': ({ file, job }) => ({
        what: `Das Foto ${file} liegt nicht im Ordner des Auftrags.`,
        whatToDo: `In photos/${job}/ legen oder aus dem Protokoll nehmen.`,
      }),
    },
  },
  'photographs-asked-for-are-present': {
    summary: () => 'Jedes Foto, das der Zahler verlangt, wurde aufgenommen.',
    why: 'Eine Rechnung ohne die vereinbarten Bilder kommt zurück, Wochen später.',
    says: {
      'not taken': ({ payer, shows, job }) => ({
        what: `${payer} verlangt ein Foto von: ${shows}.`,
        whatToDo: `Aufnehmen, in photos/${job}/ legen und eintragen, was es zeigt; oder schreiben, warum es keines gibt.`,
      }),
    },
  },
  'photographs-where-a-rule-asks': {
    summary: () =>
      'Was später bezweifelt werden kann, ist auf einem Foto: ein Gerät an der Scheibe, beschädigte Litzen, ein gebohrtes Loch.',
    why: 'Ein Bild vom Tag beendet einen Streit, den Worte nur verlängern.',
    says: {
      'none of the device on the windscreen': ({ id }) => ({
        what: 'Vom Gerät gibt es kein Foto, obwohl es an der Windschutzscheibe sitzt, wo seine Lage am Gesetz gemessen wird.',
        whatToDo: takeOne(id),
      }),
      'none of the damaged strands': ({ id }) => ({
        what: 'Von der Verbindung gibt es kein Foto, obwohl Litzen beschädigt wurden.',
        whatToDo: takeOne(id),
      }),
      'none of the drilled hole': ({ id }) => ({
        what: 'Von der Masse gibt es kein Foto, obwohl ein Loch ins Fahrzeug gebohrt wurde.',
        whatToDo: takeOne(id),
      }),
    },
  },
  'purchase-order-where-the-payer-needs-one': {
    summary: () => 'Die Bestellung ist notiert, wo der Zahler eine verlangt.',
    why: 'Eine Rechnung ohne Bestellnummer kommt zurück.',
    says: {
      'none recorded': ({ name }) => ({
        what: `${name} zahlt nur gegen Bestellung, und keine ist notiert.`,
        whatToDo: 'Nach der Nummer fragen und sie eintragen.',
      }),
    },
  },
  'record-is-complete': {
    summary: () => 'Das Protokoll enthält, was Blatt und Rechnung brauchen.',
    why: 'Ein Blatt mit Löchern schützt niemanden.',
    says: {
      'not recorded yet': ({ part }) => ({
        what: `Noch nicht notiert: ${parts[part]}.`,
        whatToDo: 'Mit `keyout fit` fortfahren oder in der Auftragsdatei ergänzen.',
      }),
    },
  },
  'signature-or-reason': {
    summary: () => 'Das Blatt ist unterschrieben, oder das Protokoll sagt, warum nicht.',
    why: 'Ein Blatt ohne Unterschrift beweist wenig, wenn später ein Fehler auftaucht.',
    says: {
      void: () => ({
        what: 'Das Protokoll wurde nach dem Unterschreiben geändert: die Unterschrift gilt nicht mehr.',
        whatToDo: 'Das Blatt noch einmal zeigen und neu unterschreiben lassen.',
      }),
      'nobody signed': () => ({
        what: 'Niemand hat unterschrieben, und kein Grund ist notiert.',
        whatToDo: 'Das Blatt unterschreiben lassen oder eintragen, warum niemand konnte.',
      }),
    },
  },
  'times-are-possible': {
    summary: () => 'Die Zeiten des Besuchs sind möglich.',
    why: 'Eine Rechnung über unmögliche Stunden wird nicht bezahlt.',
    says: {
      'ends before it begins': ({ start, end }) => ({
        what: `Die Arbeit endet (${end}), bevor sie beginnt (${start}).`,
        whatToDo: 'Die Zeiten berichtigen; ein Besuch über Mitternacht endet am nächsten Tag.',
      }),
      'more waiting than visit': ({ idle, visit }) => ({
        what: `Warten und Pausen dauern ${idle} Minuten eines Besuchs von ${visit}.`,
        whatToDo: 'Die Zeiten berichtigen: das Warten liegt zwischen Anfang und Ende.',
      }),
      'very long': ({ hours, minutes }) => ({
        what: `Der Besuch dauert ${hours} Stunden und ${minutes} Minuten.`,
        whatToDo: 'Die Tage von Anfang und Ende noch einmal ansehen.',
      }),
      'another day': ({ begins, day }, voice) => ({
        what: `Die Arbeit beginnt am ${voice.day(begins)}, der Auftrag ist vom ${voice.day(day)}.`,
        whatToDo: 'Die Zeit berichtigen oder den Auftrag unter seinem Tag führen.',
      }),
      'signed before it began': ({ signed, start }) => ({
        what: `Das Blatt wurde unterschrieben (${signed}), bevor die Arbeit begann (${start}).`,
        whatToDo: 'Die Zeiten berichtigen oder das Blatt noch einmal unterschreiben lassen.',
      }),
    },
  },
  'vin-is-plausible': {
    summary: () => `Die FIN hat ihre ${vinCharacters} Zeichen und, in Nordamerika, ihre Prüfziffer.`,
    why: 'Eine falsche FIN legt das Blatt zum falschen Fahrzeug.',
    says: {
      length: ({ vin, length }) => ({
        what: `Die FIN ${vin} hat ${length} Buchstaben und Ziffern; eine FIN hat ${vinCharacters}.`,
        whatToDo: `${readPlate} Maschinen, Anhänger und Fahrzeuge von vor 1981 können eine kürzere Nummer tragen.`,
      }),
      character: ({ vin, character, position, meant }) => ({
        what: `Die FIN ${vin} hat „${character}“ an Stelle ${position}; keine FIN enthält I, O, Q oder anderes als Buchstaben und Ziffern.`,
        whatToDo: meant === null ? readPlate : `Noch einmal vom Schild ablesen: es kann eine ${meant} sein.`,
      }),
      'check digit': ({ vin, expected, found }) => ({
        what: `Die Prüfziffer der FIN ${vin} müsste ${expected} sein, sie ist ${found}.`,
        whatToDo: readPlate,
      }),
      'check digit, not required': ({ vin, expected, found }) => ({
        what: `Die Prüfziffer der FIN ${vin} müsste ${expected} sein, sie ist ${found}.`,
        whatToDo: 'Außerhalb Nordamerikas ist die Ziffer nicht vorgeschrieben: noch einmal vergleichen.',
      }),
    },
  },
  'vin-year-agrees': {
    summary: () => 'Das notierte Jahr ist das Modelljahr, das eine nordamerikanische FIN nennt, oder eines daneben.',
    why: 'Ein Jahr, das nicht passt, heißt vertippte FIN oder ein anderes Fahrzeug als das auf dem Hof.',
    says: {
      'no model year': ({ vin, character }) => ({
        what: `Stelle 10 der FIN ${vin} ist „${character}“, das steht für kein Modelljahr.`,
        whatToDo: compare,
      }),
      'another model year': ({ vin, years, year }, voice) => ({
        what: `Die FIN ${vin} nennt Modelljahr ${voice.or(years.map(String))}; notiert ist ${year}.`,
        whatToDo: compare,
      }),
    },
  },
};
