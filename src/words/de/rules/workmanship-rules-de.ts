import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import { bendTimesMin } from '../../../rules/workmanship/bend-radius-is-wide-enough.ts';
import { supportMillimetresMax, tieMillimetresMax } from '../../../rules/workmanship/harness-is-tied-at-intervals.ts';
import { jointMillimetresMin } from '../../../rules/workmanship/splices-are-staggered.ts';
import { tapeMillimetresMin } from '../../../rules/workmanship/tape-is-long-enough.ts';
import type { workmanshipRules } from '../../../rules/workmanship/workmanship-rules.ts';
import { termsDe } from '../terms-de.ts';

const touched = {
  'sharp edge': 'eine scharfe Kante',
  'hot part': 'ein heißes Teil',
  'moving part': 'ein bewegtes Teil',
};
const tiedTo = {
  steering: 'der Lenkung',
  pedal: 'einem Pedal',
  'brake line': 'einer Bremsleitung',
  'restraint wiring': 'den Leitungen des Rückhaltesystems',
  'high-voltage cable': 'einer Hochvoltleitung',
  'fuel line': 'einer Kraftstoffleitung',
};
const stripAgain =
  'Bis auf gesunde Leitung zurückschneiden, mit der passenden Backe abisolieren und die Verbindung neu machen.';

/** What the rules of workmanship say, in German. */
export const workmanshipRulesDe: RuleWordsOf<typeof workmanshipRules> = {
  'bend-radius-is-wide-enough': {
    summary: () => `Keine Biegung ist enger als das ${bendTimesMin}-Fache des Bündeldurchmessers.`,
    why: 'Eine enge Biegung ermüdet die Litzen und drückt sich durch die Isolierung.',
    says: {
      'too tight': (bend, voice) => ({
        what: `Die engste Biegung misst das ${voice.decimal(bend.times)}-Fache des Bündeldurchmessers; verlangt ist das ${bend.least}-Fache oder mehr.`,
        whatToDo: 'Die Biegung öffnen oder am Anschluss abstützen.',
      }),
      'too tight at a terminal': (bend, voice) => ({
        what: `Die engste Biegung misst das ${voice.decimal(bend.times)}-Fache des Bündeldurchmessers; verlangt ist das ${bend.least}-Fache oder mehr.`,
        whatToDo: `Die Biegung öffnen: weniger als das ${bend.leastAtTerminal}-Fache ist selbst an einem abgestützten Anschluss zu eng.`,
      }),
    },
  },
  'fuse-is-taped-and-tied': {
    summary: () =>
      'Jeder Sicherungshalter ist mit Band verschlossen und gebunden, sodass er ohne Werkzeug nicht aufgeht.',
    why: 'Ein Halter, der sich losrüttelt oder an dem eine neugierige Hand zieht, ist die häufigste Ursache eines verstummten Geräts.',
    says: {
      'not taped and tied': ({ lead }, voice) => ({
        what: `Die Sicherung der Geräteleitung ${voice.lead(lead)} ist nicht mit Band verschlossen und gebunden.`,
        whatToDo: 'Den Halter mit Band verschließen und am Kabelbaum festbinden.',
      }),
    },
  },
  'harness-has-slack': {
    summary: () => 'Der Kabelbaum hat etwas Spiel: weder gespannt noch hängend.',
    why: 'Eine gespannte Leitung reißt ihre Verbindung auseinander, wenn sich die Verkleidung bewegt; eine hängende bleibt hängen und wird abgerissen.',
    says: {
      tight: ({ most }) => ({
        what: 'Der Kabelbaum ist gespannt.',
        whatToDo: `Lösen, bis er zwischen den Bindern der Hand etwa ${most} mm (1/2 Zoll) nachgibt.`,
      }),
      loose: ({ most }) => ({
        what: 'Der Kabelbaum hängt lose.',
        whatToDo: `Die Überlänge falten und binden, bis er zwischen den Bindern der Hand höchstens etwa ${most} mm (1/2 Zoll) nachgibt.`,
      }),
    },
  },
  'harness-is-clear-of-edges-heat-and-moving-parts': {
    summary: () =>
      'Der Kabelbaum berührt keine scharfe Kante, kein heißes oder bewegtes Teil und keine Kraftstoffleitung.',
    why: 'Isolierung, die scheuert, schmilzt oder eingeklemmt wird, endet im Kurzschluss, an einer Kraftstoffleitung im Brand.',
    says: {
      touches: ({ part, clearance }) => ({
        what: `Der Kabelbaum berührt ${touched[part]}.`,
        whatToDo: `Mit ${clearance} mm Abstand oder mehr verlegen, oder eine Tülle oder einen Schlauch dazwischensetzen.`,
      }),
      'touches a fuel line': ({ clearance }) => ({
        what: 'Der Kabelbaum berührt eine Kraftstoffleitung.',
        whatToDo: `Mindestens ${clearance} mm (6 Zoll) von der Kraftstoffleitung verlegen.`,
      }),
    },
  },
  'harness-is-loomed': {
    summary: () => 'Der Kabelbaum liegt in Schutzschlauch oder Geflecht.',
    why: 'Der Schlauch nimmt das Scheuern auf, das sonst die Isolierung träfe.',
    says: {
      'not loomed': () => ({
        what: 'Der Kabelbaum liegt ohne Schutzschlauch.',
        whatToDo: 'Auf ganzer Länge mit Schlauch oder Geflecht umhüllen.',
      }),
    },
  },
  'harness-is-tied-at-intervals': {
    summary: () =>
      `Der Kabelbaum ist mindestens alle ${tieMillimetresMax} mm gebunden und mindestens alle ${supportMillimetresMax} mm abgestützt.`,
    why: 'Ein freier Kabelbaum schwingt, scheuert und zieht an seinen Verbindungen.',
    says: {
      'not tied': ({ most }) => ({
        what: 'Der Kabelbaum ist nicht gebunden.',
        whatToDo: `Mindestens alle ${most} mm binden.`,
      }),
      'ties too far apart': ({ interval, most }) => ({
        what: `Der Kabelbaum ist alle ${interval} mm gebunden; ${most} mm sind das Höchste.`,
        whatToDo: `Binder ergänzen, bis kein Abstand über ${most} mm ist.`,
      }),
      'supports too far apart': ({ interval, most, mostOfSupports }) => ({
        what: `Der Kabelbaum ist alle ${interval} mm gebunden; ${most} mm sind das Höchste, zwischen Stützen ${mostOfSupports} mm.`,
        whatToDo: `Binder ergänzen, bis kein Abstand über ${most} mm ist.`,
      }),
    },
  },
  'joint-held-a-tug': {
    summary: () => 'Jede Verbindung hielt einem leichten Zug von Hand stand.',
    why: 'Ein Crimp oder Abgriff, der leichtem Zug nachgibt, versagt auf der Straße.',
    says: {
      'did not hold': ({ lead }, voice) => ({
        what: `Die Verbindung der Geräteleitung ${voice.lead(lead)} hielt einem leichten Zug nicht stand.`,
        whatToDo: 'Die Verbindung neu machen und noch einmal ziehen.',
      }),
      'not recorded': ({ lead }, voice) => ({
        what: `Für die Geräteleitung ${voice.lead(lead)} ist keine Zugprobe notiert.`,
        whatToDo: 'Leicht von Hand an der Verbindung ziehen und eintragen, ob sie hielt.',
      }),
    },
  },
  'method-suits-a-wet-place': {
    summary: () => 'Wo Wasser, Salz oder Wäsche hinkommt, ist die Verbindung dicht.',
    why: 'Band dichtet nicht: Feuchte kriecht die Litzen entlang und korrodiert die Verbindung auf.',
    says: {
      'not sealed': ({ lead, method, cover }, voice) => ({
        what: `Die Verbindung der Geräteleitung ${voice.lead(lead)} (${termsDe.methods[method]}, ${cover === null ? 'Isolierung nicht notiert' : termsDe.covers[cover]}) liegt an einer nassen Stelle und ist nicht dicht.`,
        whatToDo:
          'Einen dichten Crimpverbinder oder eine dichte Hülse verwenden, oder die Verbindung ins Trockene verlegen.',
      }),
    },
  },
  'no-insulation-displacing-tap-on-supply-lead': {
    summary: () => 'Kein Abgriff, der durch die Isolierung beißt, sitzt an einer Geräteleitung.',
    why: 'Die Klinge hält nur wenige Litzen mit Federkraft; Wärme und Rütteln lockern sie, und ein spannungsempfindliches Gerät startet dann neu oder meldet falsche Fahrten.',
    says: {
      'joined so': ({ lead }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} ist mit einem Schneidklemmverbinder angeschlossen.`,
        whatToDo:
          'Entfernen, die Fahrzeugleitung instand setzen und mit gewickeltem, gelötetem oder gecrimptem Abgriff anschließen.',
      }),
    },
  },
  'no-twist-only-joint': {
    summary: () => 'Keine Verbindung hält nur durch Verdrillen.',
    why: 'Bloßes Verdrillen lockert sich; der Widerstand steigt, bis die Leitung ausfällt oder heiß wird.',
    says: {
      'only twisted': ({ lead }, voice) => ({
        what: `Die Geräteleitung ${voice.lead(lead)} ist mit der Fahrzeugleitung nur verdrillt.`,
        whatToDo: 'Die Verbindung neu machen: durchstecken und wickeln, löten oder crimpen; dann isolieren und binden.',
      }),
    },
  },
  'nothing-tied-to-steering-brake-or-restraint-parts': {
    summary: () =>
      'Nichts ist an Lenkung, Pedalen, Brems- oder Kraftstoffleitungen, Rückhaltesystem oder Hochvoltleitungen gebunden.',
    why: 'Ein Binder dort kann klemmen, scheuern oder außer Kraft setzen, was Menschen am Leben hält.',
    says: {
      'tied to it': ({ part }) => ({
        what: `Der Kabelbaum ist an ${tiedTo[part]} festgebunden.`,
        whatToDo: 'Diesen Binder jetzt aufschneiden und an einem Halter oder Karosseriekabelbaum binden.',
      }),
    },
  },
  'splice-is-covered': {
    summary: () => 'Jede Verbindung ist mit Band, Schlauch oder geschlossenem Gehäuse isoliert.',
    why: 'Eine blanke Verbindung unter dem Armaturenbrett berührt früher oder später Metall: die Sicherung fällt, oder die Fahrzeugleitung hat dort Kurzschluss, wo nichts sie schützt.',
    says: {
      bare: ({ lead, least }, voice) => ({
        what: `Die Verbindung der Geräteleitung ${voice.lead(lead)} ist blank.`,
        whatToDo: `Mit ${least} mm Band oder mehr oder mit Schrumpfschlauch isolieren und binden.`,
      }),
      'not recorded': ({ lead }, voice) => ({
        what: `Wie die Verbindung der Geräteleitung ${voice.lead(lead)} isoliert ist, ist nicht notiert.`,
        whatToDo: 'Die Verbindung ansehen und ihre Isolierung eintragen.',
      }),
    },
  },
  'splice-is-tied': {
    summary: () => 'Jede Verbindung ist gebunden, sodass ein Zug an der Leitung sie nicht erreicht.',
    why: 'Eine Verbindung, die Gewicht oder Zug ihrer Leitung trägt, lockert sich.',
    says: {
      'not tied': ({ lead }, voice) => ({
        what: `Die Verbindung der Geräteleitung ${voice.lead(lead)} ist nicht gebunden.`,
        whatToDo: 'Die Leitung neben der Verbindung an die Fahrzeugleitung binden.',
      }),
    },
  },
  'splices-are-staggered': {
    summary: () => `Verbindungen in einem Bündel liegen mindestens ${jointMillimetresMin} mm auseinander.`,
    why: 'Verbindungen nebeneinander geben einen Knoten, der scheuert, und versagt eine Isolierung, haben zwei Leitungen Kurzschluss.',
    says: {
      'too close': ({ lead, distance, least }, voice) => ({
        what: `Die Verbindung der Geräteleitung ${voice.lead(lead)} liegt ${distance} mm neben der nächsten; verlangt sind ${least} mm oder mehr.`,
        whatToDo: 'Eine der Verbindungen im Bündel versetzen.',
      }),
    },
  },
  'strands-are-not-cut': {
    summary: () => 'Beim Abisolieren wird keine Litze durchtrennt und keine über die Tabelle hinaus angeritzt.',
    why: 'Durchtrennte Litzen nehmen Querschnitt und Festigkeit gerade dort, wo es sich am meisten biegt.',
    says: {
      cut: ({ lead }, voice) => ({
        what: `Beim Abisolieren für die Geräteleitung ${voice.lead(lead)} wurden Litzen durchtrennt; erlaubt ist keine.`,
        whatToDo: stripAgain,
      }),
      'nicked, not counted': ({ lead, allowed }, voice) => ({
        what: `Beim Abisolieren für die Geräteleitung ${voice.lead(lead)} wurden Litzen angeritzt, aber nicht gezählt; erlaubt sind ${allowed}.`,
        whatToDo: 'Die angeritzten Litzen zählen und eintragen.',
      }),
      nicked: ({ lead, nicked, allowed }, voice) => ({
        what: `Beim Abisolieren für die Geräteleitung ${voice.lead(lead)} wurden ${nicked} Litzen angeritzt; erlaubt sind ${allowed}.`,
        whatToDo: stripAgain,
      }),
    },
  },
  'tape-is-long-enough': {
    summary: () => `Eine mit Band isolierte Verbindung hat mindestens ${tapeMillimetresMin} mm Band.`,
    why: 'Kurzes Band löst sich und lässt die Enden der Verbindung blank.',
    says: {
      'not recorded': ({ lead, least }, voice) => ({
        what: `Die Länge des Bandes an der Geräteleitung ${voice.lead(lead)} ist nicht notiert; verlangt sind ${least} mm oder mehr.`,
        whatToDo: 'Das Band messen und eintragen.',
      }),
      'too short': ({ lead, length, least }, voice) => ({
        what: `Das Band an der Geräteleitung ${voice.lead(lead)} ist ${length} mm lang; verlangt sind ${least} mm oder mehr.`,
        whatToDo: `Neu über mindestens ${least} mm (1 Zoll) umwickeln, über beide Enden der blanken Leitung hinaus.`,
      }),
    },
  },
};
