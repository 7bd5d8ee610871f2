import { fuseDistanceMillimetresMax, loadOfFusePercentMax } from '../../../electrics/assess-fuse.ts';
import { groundDropMillivoltsMax } from '../../../evidence/electrical-limits.ts';
import type { RuleWordsOf, Voice } from '../../../rules/rule-words.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';

type Wiring = RuleWordsOf<typeof wiringRules>;
type Thin = Parameters<Wiring['wire-is-no-smaller-than-the-lead-it-feeds']['says']['sense lead only']>[0];

const cleanIt = 'Bis aufs blanke Metall reinigen, festziehen oder eine andere Masse wählen.';
const fitNamed = 'Die Sicherung einsetzen, die der Gerätehersteller nennt.';
const stop = 'Halt. Lassen, wie es ist, nicht mehr anfassen und von der Werkstatt des Herstellers ansehen lassen.';
const thickerLead = 'Eine dickere Leitung verwenden oder schreiben, was der Gerätehersteller sagt.';
const thinWire = ({ lead, own, point, wire }: Thin, voice: Voice) =>
  `Die Geräteleitung ${voice.lead(lead)} (${voice.gauge(own)}) wird von ${point} gespeist, einer Leitung von nur ${voice.gauge(wire)}.`;

/** What the rules of wiring say of fuses, conductors, ground and what must not be tapped, in German. */
export const wiringProtectionDe = {
  'device-fuse-opens-first': {
    summary: () => 'Die Sicherung des Geräts ist nicht größer als die Fahrzeugsicherung davor.',
    why: 'Ein Fehler im Gerät legte sonst den angezapften Stromkreis lahm, darunter Licht oder Motorsteuerung.',
    says: {
      'larger than the vehicle’s': ({ lead, own, before }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} hat eine Sicherung von ${voice.decimal(own)} A hinter einer Fahrzeugsicherung von ${voice.decimal(before)} A.`,
        whatToDo:
          'Die kleinere Sicherung einsetzen, die der Gerätehersteller nennt, oder eine Speisung mit größerer Sicherung wählen.',
      }),
    },
  },
  'device-window-covers-a-supply-code': {
    summary: () => 'Der Versorgungsbereich des Geräts deckt einen der genormten Bereiche des Bordnetzes.',
    why: 'Ein für weniger gebautes Gerät begegnet im normalen Leben Spannungen (16 V bei 12 V, 32 V bei 24 V), die die heutigen Messungen nicht zeigen.',
    says: {
      'covers none': ({ name, least, most, system, codes }, voice) => ({
        what: `${name} ist für ${voice.decimal(least)} bis ${voice.decimal(most)} V gebaut und deckt damit keinen Bereich eines ${system}-V-Bordnetzes (${codes.map((each) => `${each.code} ${voice.decimal(each.voltsMin)} bis ${voice.decimal(each.voltsMax)} V`).join(', ')}).`,
        whatToDo:
          'Ein für dieses Bordnetz gebautes Gerät oder einen Wandler einbauen, oder schreiben, warum der Hersteller es erlaubt.',
      }),
    },
  },
  'fuse-bears-the-load': {
    summary: () => `Das Gerät zieht auf Dauer höchstens ${loadOfFusePercentMax} % seiner Sicherung.`,
    why: 'Eine Sicherung nahe ihrem Wert wird warm, altert und fällt an einem heißen Tag ohne Fehler.',
    says: {
      'too small': ({ draws, rating, carries, named }, voice) => ({
        what: `Das Gerät zieht ${draws} mA; eine Sicherung von ${voice.decimal(rating)} A führt auf Dauer ${voice.decimal(carries)} mA.`,
        whatToDo: `Die Sicherung einsetzen, die der Gerätehersteller nennt (${voice.decimal(named)} A), wenn die Leitung sie erlaubt.`,
      }),
    },
  },
  'fuse-is-near-the-tap': {
    summary: () => `Eine Sicherung sitzt höchstens ${fuseDistanceMillimetresMax} mm (7 Zoll) von der Verbindung.`,
    why: 'Die Leitung vor der Sicherung ist ungeschützt.',
    says: {
      'too far': ({ lead, distance, most }, voice) => ({
        what: `Die Sicherung der Geräteleitung ${voice.lead(lead)} sitzt ${distance} mm von der Verbindung; höchstens ${most} mm (7 Zoll).`,
        whatToDo: 'Den Sicherungshalter näher an die Verbindung setzen.',
      }),
    },
  },
  'fuse-suits-the-wire': {
    summary: () => 'Eine Sicherung ist nicht größer, als die dünnste Leitung dahinter erlaubt und das Gerät braucht.',
    why: 'Die Sicherung schützt die Leitung: eine zu große lässt zuerst die Leitung brennen.',
    says: {
      'wire too thin for the table': ({ lead, rating, wire }, voice) => ({
        what: `Eine Sicherung von ${voice.decimal(rating)} A schützt die Geräteleitung ${voice.lead(lead)}, deren dünnste Leitung (${voice.gauge(wire)}) dünner ist als jede der Tabelle.`,
        whatToDo: fitNamed,
      }),
      'too large for the wire': ({ lead, rating, wire, most }, voice) => ({
        what: `Eine Sicherung von ${voice.decimal(rating)} A schützt die Geräteleitung ${voice.lead(lead)}, deren dünnste Leitung (${voice.gauge(wire)}) höchstens ${voice.decimal(most)} A erlaubt.`,
        whatToDo: fitNamed,
      }),
      'larger than named': ({ rating, named }, voice) => ({
        what: `Eingesetzt ist eine Sicherung von ${voice.decimal(rating)} A, der Hersteller nennt ${voice.decimal(named)} A.`,
        whatToDo: `${voice.decimal(named)} A einsetzen.`,
      }),
    },
  },
  'ground-drop-is-small': {
    summary: (voice) =>
      `Die Masse verliert unter der Last des Geräts höchstens ${voice.voltLimit(groundDropMillivoltsMax)}.`,
    why: 'Eine schlechte Masse lässt ein Gerät so versagen, dass es nach allem anderen aussieht.',
    says: {
      'drops too much': ({ drop, milliamps, most }) => ({
        what: `Die Masse verliert ${drop} mV bei ${milliamps === null ? 'nicht notiertem Strom' : `${milliamps} mA`}; höchstens ${most} mV.`,
        whatToDo: cleanIt,
      }),
      'current not recorded': ({ drop }) => ({
        what: `Die Masse verliert ${drop} mV bei einem Strom, der nicht notiert ist.`,
        whatToDo: 'Eintragen, was floss: das wache Gerät oder eine Prüflampe.',
      }),
      'would drop too much': ({ drop, milliamps, atAwake, awake, most }) => ({
        what: `Die Masse verliert ${drop} mV bei ${milliamps} mA, das sind ${atAwake} mV bei den ${awake} mA des wachen Geräts; höchstens ${most} mV.`,
        whatToDo: cleanIt,
      }),
    },
  },
  'ground-is-on-bare-metal': {
    summary: () => 'Die Masse sitzt auf blankem Metall, so gehalten, dass sie sich nicht losrüttelt.',
    why: 'Lack, Rost und Rütteln machen aus einer Masse, die heute gut misst, den Fehler, den nächsten Winter niemand findet.',
    says: {
      'not bare': ({ where }) => ({
        what: `Die Masse (${where}) sitzt nicht auf blankem Metall.`,
        whatToDo: 'Lack und Rost entfernen, fest anziehen und den Rand versiegeln.',
      }),
      'may shake loose': ({ where }) => ({
        what: `Nichts hält die Masse (${where}) vom Losrütteln ab.`,
        whatToDo: 'Eine Zahnscheibe oder Sicherungsmutter ergänzen.',
      }),
      'drilled hole': ({ where }) => ({
        what: `Die Masse (${where}) ist eine Schraube in einem gebohrten Loch.`,
        whatToDo: 'Besser ein Massebolzen ab Werk; sonst vorher hinter das Blech sehen und das Loch vor Rost schützen.',
      }),
    },
  },
  'lead-carries-the-load': {
    summary: () => 'Der dünnste Leiter der Versorgung führt den Gerätestrom, ohne heiß zu werden.',
    why: 'Eine heiße Leitung im Bündel weicht ihre Isolierung und die der Nachbarn auf.',
    says: {
      'too thin for the table': ({ draws, gauges }, voice) => ({
        what: `Das Gerät zieht ${draws} mA; seine Versorgungsleitung (${voice.and(gauges.map(voice.gauge))}) ist dünner als jede der Tabelle.`,
        whatToDo: thickerLead,
      }),
      'too thin': ({ draws, gauges, carries }, voice) => ({
        what: `Das Gerät zieht ${draws} mA; seine Versorgungsleitung (${voice.and(gauges.map(voice.gauge))}) führt auf Dauer ${voice.decimal(carries)} mA.`,
        whatToDo: thickerLead,
      }),
    },
  },
  'lead-is-no-smaller-than-device-lead': {
    summary: () => 'Eine Leitung, die die des Geräts verlängert oder ersetzt, ist nicht dünner als sie.',
    why: 'Der Hersteller wählte seine Leitung nach Strom, Sicherung und Zug; ein dünneres Stück ist die neue schwächste Stelle, und die Sicherung des Geräts schützt sie vielleicht nicht.',
    says: {
      thinner: ({ lead, used, own }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} hat ${voice.gauge(used)}; die eigene des Geräts hat ${voice.gauge(own)}.`,
        whatToDo: `${voice.gauge(own)} oder dicker verwenden, oder schreiben, warum diese genügt.`,
      }),
    },
  },
  'no-supply-from-half-a-battery-pair': {
    summary: () => 'Bei 24 V wird nichts von der Mitte des Batteriepaars genommen.',
    why: 'Die allein speisende Batterie wird leer, während die andere überladen wird: beide sterben in Monaten.',
    says: {
      'half the supply': ({ point, millivolts, key }, voice) => ({
        what: `${point} misst ${voice.volts(millivolts)} (${voice.key(key)}) in einem 24-V-Bordnetz: die Mitte des Batteriepaars oder ein Wandler.`,
        whatToDo:
          '24 V über beide Batterien nehmen; braucht das Gerät 12 V, einen mit 24 V gespeisten Wandler verwenden.',
      }),
    },
  },
  'no-tap-on-data-wire': {
    summary: () => 'Nichts ist an ein Datenpaar oder eine Signalleitung angeschlossen.',
    why: 'Ein Abgriff an einem Datenpaar oder einer Fühlerleitung stört die eigenen Systeme des Fahrzeugs.',
    says: {
      'joined to it': ({ lead, point }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} liegt an einer Daten- oder Signalleitung (${point}).`,
        whatToDo: 'Abnehmen, die Leitung wiederherstellen und eine Versorgungsleitung suchen.',
      }),
    },
  },
  'no-tap-on-high-voltage-wiring': {
    summary: () => 'Nichts ist an Hochvoltleitungen (orangefarbene Hülle) angeschlossen.',
    why: 'Hochvoltleitungen können töten.',
    says: {
      'joined to it': ({ lead }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} liegt an einer Leitung in orangefarbener Hülle.`,
        whatToDo: stop,
      }),
    },
  },
  'no-tap-on-restraint-wiring': {
    summary: () => 'Nichts ist an Leitungen des Rückhaltesystems (gelbe Hülle) angeschlossen.',
    why: 'Diese Leitungen zünden Airbags und Gurtstraffer; eine Messspitze oder ein Abgriff kann sie auslösen oder lahmlegen.',
    says: {
      'joined to it': ({ lead }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} liegt an einer Leitung in gelber Hülle.`,
        whatToDo: stop,
      }),
    },
  },
  'standing-drain-is-acceptable': {
    summary: () => 'Die Batterie reicht so lange, wie das Fahrzeug üblicherweise steht.',
    why: 'Für ein Fahrzeug, das nach den Ferien nicht anspringt, wird verantwortlich gemacht, was zuletzt eingebaut wurde.',
    says: {
      'runs down': ({ milliamps, percent, days, wanted }) => ({
        what: `Mit ${milliamps} mA in Ruhe ist die Batterie${percent === null ? '' : ` (in Ruhe ${percent} % voll)`} nach ${days} Tagen halb leer; das Fahrzeug steht bis zu ${wanted}.`,
        whatToDo: 'Dem Kunden sagen; ein Trennschalter oder ein Ladegerät hilft.',
      }),
    },
  },
  'supply-lead-is-fused': {
    summary: () => 'Jede Leitung, die nach dem Profil eine Sicherung braucht, hat eine.',
    why: 'Eine Leitung ohne Sicherung brennt, wo sie scheuert.',
    says: {
      'no fuse': ({ lead }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} hat keine Sicherung.`,
        whatToDo: 'Die vom Hersteller genannte Sicherung nahe der Verbindung in die Leitung setzen.',
      }),
    },
  },
  'wire-is-no-smaller-than-the-lead-it-feeds': {
    summary: () => 'Die angezapfte Fahrzeugleitung ist nicht dünner als die Leitung, die sie speist.',
    why: 'Eine dünne Leitung ist oft ein Signal, keine Versorgung; ihre Sicherung und ihr Querschnitt wurden ohne das Gerät gewählt.',
    says: {
      'feeds too thick a lead': (joint, voice) => ({
        what: thinWire(joint, voice),
        whatToDo: 'Eine dickere Leitung wählen, am besten eine des Zündschlosses oder des Sicherungskastens.',
      }),
      'sense lead only': (joint, voice) => ({
        what: thinWire(joint, voice),
        whatToDo:
          'Eine nur fühlende Leitung darf daran hängen; sicherstellen, dass es eine Speisung und kein Signal ist.',
      }),
    },
  },
} satisfies Partial<Wiring>;
