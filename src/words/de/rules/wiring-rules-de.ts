import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import { groundDropMillivoltsMax } from '../../../rules/wiring/ground-drop-is-small.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';

const proven: RuleWordsOf<typeof wiringRules>['constant-is-proven']['says'] = {
  'no wire named': (joint, voice) => ({
    what: `Zur Geräteleitung ${voice.lead(joint.lead)} ist keine gemessene Leitung genannt.`,
    whatToDo: 'Den Messpunkt eintragen, an dem sie angeschlossen ist, mit seinen Messungen.',
  }),
  'not proven': (joint, voice) => ({
    what: `Die Geräteleitung ${voice.lead(joint.lead)} liegt an ${joint.point}, und das ist nicht bewiesen: ${voice.wire(joint.wire)}`,
    whatToDo: voice.wanted(joint.wants),
  }),
};

/** What the rules of wiring say, in German. */
export const wiringRulesDe: RuleWordsOf<typeof wiringRules> = {
  'constant-is-proven': {
    summary: () => 'Die Leitung an der Versorgung ist als Dauerplus (30) bewiesen.',
    why: 'Eine Versorgung, die mit dem Schlüssel ausgeht, lässt das Gerät im Stand tot, und eine falsche Leitung speist ins Fahrzeug zurück.',
    says: proven,
  },
  'ground-drop-is-small': {
    summary: (voice) =>
      `Die Masse verliert unter der Last des Geräts höchstens ${voice.voltLimit(groundDropMillivoltsMax)}.`,
    why: 'Eine schlechte Masse lässt ein Gerät so versagen, dass es nach allem anderen aussieht.',
    says: {
      'drops too much': (ground) => ({
        what: `Die Masse verliert ${ground.drop} mV bei ${ground.milliamps === null ? 'nicht notiertem Strom' : `${ground.milliamps} mA`}; höchstens ${ground.most} mV.`,
        whatToDo: 'Bis aufs blanke Metall reinigen, festziehen oder eine andere Masse wählen.',
      }),
      'current not recorded': (ground) => ({
        what: `Die Masse verliert ${ground.drop} mV bei einem Strom, der nicht notiert ist.`,
        whatToDo: 'Eintragen, was floss: das wache Gerät oder eine Prüflampe.',
      }),
      'would drop too much': (ground) => ({
        what: `Die Masse verliert ${ground.drop} mV bei ${ground.milliamps} mA, das sind ${ground.atAwake} mV bei den ${ground.awake} mA des wachen Geräts; höchstens ${ground.most} mV.`,
        whatToDo: 'Bis aufs blanke Metall reinigen, festziehen oder eine andere Masse wählen.',
      }),
    },
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
};
