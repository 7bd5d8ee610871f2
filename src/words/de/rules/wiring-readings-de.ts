import { loadTestMillivolts } from '../../../electrics/battery-state.ts';
import { continuousDropMillivoltsMax } from '../../../electrics/lead-drop.ts';
import { keptPowerSinceYear, keyOutWaitSeconds } from '../../../evidence/surroundings.ts';
import type { RuleWordsOf, Voice } from '../../../rules/rule-words.ts';
import { loadedFallMillivoltsMax } from '../../../rules/wiring/voltage-drop-is-small.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';

type Wiring = RuleWordsOf<typeof wiringRules>;
type Seen = Parameters<Wiring['charging-volts-are-normal']['says']['not charging']>[0];

const whenDe = { before: 'Vor der Arbeit', after: 'Nach der Arbeit' };
const seen = ({ when, millivolts, engine }: Seen, voice: Voice) =>
  `${whenDe[when]} misst die Batterie ${voice.volts(millivolts)} bei ${engine ? 'laufendem Motor' : 'fahrbereitem Fahrzeug'}`;
const betterFeed =
  'Eine bessere Speisung, eine kürzere oder dickere Leitung oder einen Wandler verwenden; die Batterie prüfen lassen, wenn sie selbst niedrig ist.';
const readPosts =
  'An den Batteriepolen noch einmal messen; bleibt es, zuerst Regler und seine Fühlleitung ansehen lassen.';
const lookForIt =
  'Nach einer korrodierten Verbindung oder dünnen Leitung auf dem Weg von der Batterie suchen oder eine bessere Speisung wählen.';

const proven: Wiring['constant-is-proven']['says'] = {
  'no wire named': ({ lead }, voice) => ({
    what: `Zur Geräteleitung ${voice.lead(lead)} ist keine gemessene Leitung genannt.`,
    whatToDo: 'Den Messpunkt eintragen, an dem sie angeschlossen ist, mit seinen Messungen.',
  }),
  'not proven': ({ lead, point, wire, wants }, voice) => ({
    what: `Die Geräteleitung ${voice.lead(lead)} liegt an ${point}, und das ist nicht bewiesen: ${voice.wire(wire)}`,
    whatToDo: voice.wanted(wants),
  }),
};

/** What the rules of wiring say of readings and proof, in German. */
export const wiringReadingsDe = {
  'battery-rests-charged': {
    summary: (voice) =>
      `Die Batterie ruht bei ${voice.voltLimit(loadTestMillivolts)} (${voice.voltLimit(2 * loadTestMillivolts)}) oder mehr, vor und nach der Arbeit.`,
    why: 'Eine schwache Batterie fällt beim Anlassen tiefer und steht weniger Tage; das Blatt soll sagen, dass sie so vorgefunden wurde.',
    says: {
      'rests low': ({ when, millivolts, percent, least }, voice) => ({
        what: `${whenDe[when]} ruht die Batterie bei ${voice.volts(millivolts)}, etwa ${percent} % voll; ${voice.volts(least)} ist das Mindeste einer gesunden.`,
        whatToDo: 'Laden und unter Last prüfen lassen; dem Kunden sagen.',
      }),
    },
  },
  'charging-volts-are-normal': {
    summary: () => 'Bei laufendem Motor (fahrbereit) wird die Batterie geladen, vor und nach der Arbeit.',
    why: 'Ein Fahrzeug, das nicht lädt, bleibt in Stunden stehen, und gefragt wird, wer zuletzt daran war.',
    says: {
      'not charging': (battery, voice) => ({
        what: `${seen(battery, voice)}: sie wird nicht geladen.`,
        whatToDo: 'An den Polen noch einmal messen und dem Kunden sagen; war es vorher so, das schreiben.',
      }),
      'no longer charging': (battery, voice) => ({
        what: `${seen(battery, voice)}: sie wird nicht geladen, und vorher wurde sie es.`,
        whatToDo: 'Nach einem offenen Stecker, einer Sicherung oder Masse suchen, dann noch einmal messen.',
      }),
      low: (battery, voice) => ({
        what: `${seen(battery, voice)}, unter dem Üblichen (${voice.voltRange(battery.least, battery.most)}).`,
        whatToDo: 'Intelligentes Laden kann sie senken: mit Licht und Gebläse noch einmal messen.',
      }),
      high: (battery, voice) => ({
        what: `${seen(battery, voice)}, über dem Üblichen (${voice.voltRange(battery.least, battery.most)}).`,
        whatToDo: 'Eine kalte Batterie kann sie heben: warm noch einmal messen und, wenn es bleibt, dem Kunden sagen.',
      }),
    },
  },
  'constant-is-proven': {
    summary: () => 'Die Leitung an der Versorgung ist als Dauerplus (30) bewiesen.',
    why: 'Eine Versorgung, die mit dem Schlüssel ausgeht, lässt das Gerät im Stand tot, und eine falsche Leitung speist ins Fahrzeug zurück.',
    says: proven,
  },
  'ground-is-proven': {
    summary: () => 'Die Leitung an der Masse ist als Masse (31) bewiesen.',
    why: 'Ohne eigene Masse sucht sich das Gerät den Rückweg über seine anderen Leitungen: es lebt, meldet aber Unsinn.',
    says: proven,
  },
  'ignition-is-proven': {
    summary: () => 'Die Leitung an der Zündung ist als Zündung (15) bewiesen.',
    why: 'An der falschen Leitung verpasst das Gerät Fahrten, oder es schläft nie und leert die Batterie.',
    says: proven,
  },
  'ignition-holds-through-crank': {
    summary: () => 'Die Zündleitung bleibt beim Anlassen über dem, was das Gerät für „ein“ nimmt.',
    why: 'Eine Leitung, die beim Anlassen abfällt (Klemme 75 oder X), beendet bei jedem Start eine Fahrt, und manche Geräte starten neu.',
    says: {
      'not read': ({ point }) => ({
        what: `${point} wurde beim Anlassen nicht gemessen.`,
        whatToDo: `${point} messen, während der Anlasser dreht, das Messgerät auf Tiefstwert; niemand nahe bewegten Teilen.`,
      }),
      falls: ({ point, least, needed }, voice) => ({
        what: `${point} fällt beim Anlassen auf ${voice.volts(least)}; das Gerät nimmt weniger als ${voice.volts(needed)} für „aus“.`,
        whatToDo: 'An eine Leitung anschließen, die hält (Klemme 15 am Zündschloss).',
      }),
      'battery falls too': ({ point, least, needed, battery }, voice) => ({
        what: `${point} fällt beim Anlassen auf ${voice.volts(least)}; das Gerät nimmt weniger als ${voice.volts(needed)} für „aus“, und die Batterie selbst fällt auf ${voice.volts(battery)}.`,
        whatToDo: 'Keine Leitung hält mehr als die Batterie: diese prüfen lassen, dann noch einmal messen.',
      }),
    },
  },
  'isolator-side-is-recorded': {
    summary: () => 'Bei einem Fahrzeug mit Batterietrennschalter ist bekannt, auf welcher Seite die Versorgung liegt.',
    why: 'Auf der geschalteten Seite stirbt das Gerät mit dem Schalter; auf der Batterieseite leert es eine Batterie, die jeder für abgeschaltet hält.',
    says: {
      'switched side': ({ point }) => ({
        what: `${point} liegt auf der geschalteten Seite des Trennschalters: das Gerät ist aus, wann immer er offen ist.`,
        whatToDo: 'Dem Kunden sagen, oder die Versorgung von der Batterieseite nehmen, mit der Sicherung am Abgriff.',
      }),
      'not recorded': () => ({
        what: 'Das Fahrzeug hat einen Batterietrennschalter, und die Seite der Versorgung ist nicht notiert.',
        whatToDo: 'Den Schalter öffnen und noch einmal messen: Spannung heißt Batterieseite. Die Seite eintragen.',
      }),
    },
  },
  'ground-drops-agree': {
    summary: () => 'Der Spannungsabfall des Massepunkts und die Messung der Masseleitung unter Last sagen dasselbe.',
    why: 'Es ist dieselbe Spannung, zweimal gemessen: unterscheiden sie sich, ist eine falsch, und die Masse kann schlecht sein.',
    says: {
      differ: (drops, voice) => ({
        what: `Der Massepunkt ist mit einem Abfall von ${voice.volts(drops.recorded)} eingetragen, ${drops.point} wurde unter Last mit ${voice.volts(drops.read)} gemessen.`,
        whatToDo: 'Den Abfall bei arbeitendem Gerät noch einmal messen und die falsche Angabe berichtigen.',
      }),
    },
  },
  'readings-can-all-be-right': {
    summary: () =>
      'Keine zwei Messungen einer Stelle widersprechen sich, und die der Batterie sind die einer Batterie.',
    why: 'Wo zwei Messungen nicht beide stimmen können, folgt aus keiner etwas, und eine Leitung, die mit einer falschen Batteriemessung verglichen wird, kann alles sein.',
    says: {
      'two differ': (readings, voice) => ({
        what: voice.trap(readings.trap),
        whatToDo: 'Die richtige Messung behalten und die andere aus dem Bericht nehmen.',
      }),
      'no battery': (readings, voice) => ({
        what: voice.trap(readings.trap),
        whatToDo:
          'Die Batterie noch einmal an ihren eigenen Polen messen, Gleichspannung, Rot an Plus, und den Bericht berichtigen.',
      }),
      'hands off': (readings, voice) => ({
        what: voice.trap(readings.trap),
        whatToDo:
          'Alle Anschlüsse davon lösen und eine andere Leitung suchen; die Anweisungen des Herstellers und zugelassene Praxis gehen vor.',
      }),
    },
  },
  'key-out-wait-is-long-enough': {
    summary: (voice) =>
      `Eine Messung ohne Schlüssel auf Batterieniveau liegt mindestens ${voice.number(keyOutWaitSeconds.long / 60)} Minuten nach dem Ziehen, ${voice.number(keyOutWaitSeconds.short / 60)} bei einem Fahrzeug mit Schlüssel von vor ${keptPowerSinceYear}.`,
    why: 'Nachlaufende Spannung hält Zubehör- und Zündleitungen minutenlang am Leben: nach kurzer Wartezeit kann eine angeschlossene Leitung alles sein. Beweist eine spätere Messung dieselbe Leitung, schadet die kurze Wartezeit nicht; an einer nicht angeschlossenen Leitung ist es ein Hinweis.',
    says: {
      'too short': ({ trap, button, minutes }, voice) => ({
        what: voice.trap(trap),
        whatToDo: button
          ? `Das Fahrzeug verriegeln, mit weit entferntem Schlüssel einschlafen lassen, ${voice.number(minutes)} Minuten warten, noch einmal messen und die Wartezeit eintragen.`
          : `Den Schlüssel ziehen, ${voice.number(minutes)} Minuten warten, noch einmal messen und die Wartezeit eintragen.`,
      }),
    },
  },
  'loaded-reading-taken': {
    summary: () => 'Die Versorgung wurde nach dem Anschließen unter Last noch einmal gemessen.',
    why: 'Eine korrodierte Leitung misst volle Spannung, bis sie Strom führt.',
    says: {
      'not read loaded': () => ({
        what: 'Die Versorgungsleitung wurde nach dem Anschließen nicht gemessen, während sie das Gerät speiste.',
        whatToDo: 'Mit wachem Gerät noch einmal messen und als belastet eintragen.',
      }),
    },
  },
  'no-over-voltage': {
    summary: () => 'Keine Messung liegt über dem, was eine gesunde Ladeanlage gibt.',
    why: 'Überspannung kocht die Batterie und altert jedes Gerät im Fahrzeug, auch das neue.',
    says: {
      'too high': ({ when, most, limit }, voice) => ({
        what: `${whenDe[when]} zeigt eine Messung ${voice.volts(most)}, über ${voice.volts(limit)}.`,
        whatToDo: readPosts,
      }),
      'came with the work': ({ most, limit }, voice) => ({
        what: `Nach der Arbeit zeigt eine Messung ${voice.volts(most)}, über ${voice.volts(limit)}; vor der Arbeit tat es keine.`,
        whatToDo: readPosts,
      }),
    },
  },
  'supply-within-device-window': {
    summary: () => 'Die Spannung am Gerät bleibt in seinem Bereich, auch beim Anlassen.',
    why: 'Außerhalb seines Bereichs startet ein Gerät neu, verliert Daten oder versagt.',
    says: {
      'too low': ({ millivolts, key, least }, voice) => ({
        what: `Am Gerät liegen ${voice.volts(millivolts)} (${voice.key(key)}); es braucht mindestens ${voice.volts(least)}.`,
        whatToDo: betterFeed,
      }),
      'too low in crank': ({ millivolts, least }, voice) => ({
        what: `Am Gerät liegen beim Anlassen ${voice.volts(millivolts)}; es braucht dann mindestens ${voice.volts(least)}.`,
        whatToDo: betterFeed,
      }),
      'too high': ({ millivolts, key, most }, voice) => ({
        what: `Am Gerät liegen ${voice.volts(millivolts)} (${voice.key(key)}); es verträgt höchstens ${voice.volts(most)}.`,
        whatToDo: 'Sofort abnehmen; ein Gerät für dieses Bordnetz oder einen Wandler einbauen.',
      }),
      'battery falls too low': ({ millivolts, least }, voice) => ({
        what: `Die Batterie fällt beim Anlassen auf ${voice.volts(millivolts)}; das Gerät braucht mindestens ${voice.volts(least)}, und keine Leitung führt mehr als die Batterie.`,
        whatToDo: 'Die Batterie prüfen lassen und noch einmal messen, oder ein Gerät einbauen, das es übersteht.',
      }),
      'crank not read': ({ least, point }, voice) => ({
        what: `Das Gerät braucht beim Anlassen ${voice.volts(least)}, und seine Versorgungsleitung wurde dabei nicht gemessen.`,
        whatToDo: `${point ?? 'Die Versorgungsleitung'} messen, während der Anlasser dreht, das Messgerät auf Tiefstwert (eine einfache Anzeige verpasst den ersten Einbruch).`,
      }),
    },
  },
  'system-volts-agree': {
    summary: () => 'Die Messungen zeigen das Bordnetz, das notiert ist.',
    why: 'Ein 12-V-Gerät an 24 V wird zerstört; ein falsches Protokoll führt den nächsten Monteur in die Irre.',
    says: {
      differs: ({ trap }, voice) => ({
        what: voice.trap(trap),
        whatToDo: 'An den Batteriepolen noch einmal messen und das Protokoll berichtigen.',
      }),
    },
  },
  'verdict-matches-readings': {
    summary: () => 'Keine Messung widerspricht dem Urteil über eine Leitung.',
    why: 'Ein Urteil, dem das Messgerät widerspricht, ist ein falscher Anschluss, den der Fahrer finden wird.',
    says: {
      contradicted: ({ verdict, evidence }, voice) => ({
        what: `Das Urteil über ${evidence.point} lautet „${voice.role(verdict)}“, die Messungen schließen es aus. ${voice.wire(evidence)}`,
        whatToDo: 'In jeder Schlüsselstellung noch einmal messen; bleibt es dabei, eine andere Leitung suchen.',
      }),
    },
  },
  'voltage-drop-is-small': {
    summary: (voice) =>
      `Die Versorgung verliert auf dem Weg zum Gerät wenig: ${voice.voltLimit(continuousDropMillivoltsMax[12])} bei 12 V, ${voice.voltLimit(continuousDropMillivoltsMax[24])} bei 24 V, ${voice.voltLimit(loadedFallMillivoltsMax)}, wenn das Gerät zu ziehen beginnt.`,
    why: 'Was in Verbindungen und dünnen Leitungen verloren geht, ist dort Wärme und fehlt am Gerät, zuerst beim Anlassen.',
    says: {
      'leads lose too much': ({ lost, milliamps, celsius, most, metres }, voice) => ({
        what: `Versorgung und Rückleitung verlieren ${lost} mV bei ${milliamps} mA und ${celsius} °C; höchstens ${most} mV.`,
        whatToDo: `Die Leitungen kürzen (dieser Querschnitt darf je Weg ${voice.decimal(metres)} m lang sein) oder einen dickeren verwenden.`,
      }),
      'falls under load': ({ point, lost, key, most }, voice) => ({
        what: `${point} fällt um ${lost} mV (${voice.key(key)}), sobald es das Gerät speist; höchstens ${most} mV.`,
        whatToDo: lookForIt,
      }),
      'below the battery': ({ point, millivolts, lost, key, most }, voice) => ({
        what: `${point} misst ${voice.volts(millivolts)} (${voice.key(key)}), ${lost} mV unter der Batterie; höchstens ${most} mV.`,
        whatToDo: lookForIt,
      }),
    },
  },
  'wires-do-not-contradict-each-other': {
    summary: () => 'Keine zwei Leitungen eines Auftrags sagen, was nicht zugleich wahr sein kann.',
    why: 'Ein Kontakt kann nicht zweierlei sein, und ein Dauerplus fällt nicht, wo ein anderes hält: eine der Messungen oder ein Name ist falsch, und ein Blatt darauf führt in die Irre.',
    says: {
      contradict: ({ trap }, voice) => ({
        what: voice.trap(trap),
        whatToDo:
          'Beide in derselben Schlüsselstellung noch einmal messen und Namen, Kontakt oder Urteil der falschen berichtigen.',
      }),
    },
  },
} satisfies Partial<Wiring>;
