import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import { groundDropMillivoltsMax } from '../../../rules/wiring/ground-drop-is-small.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';

const proven: RuleWordsOf<typeof wiringRules>['constant-is-proven']['says'] = {
  'no wire named': (joint, voice) => ({
    what: `El cable de ${voice.lead(joint.lead)} del aparato no nombra ningún cable que se haya medido.`,
    whatToDo: 'Anote el punto de medida al que está unido, con sus lecturas.',
  }),
  'not proven': (joint, voice) => ({
    what: `El cable de ${voice.lead(joint.lead)} del aparato está unido a ${joint.point}, que no está demostrado: ${voice.wire(joint.wire)}`,
    whatToDo: voice.wanted(joint.wants),
  }),
};

/** What the rules of wiring say, in Spanish. */
export const wiringRulesEs: RuleWordsOf<typeof wiringRules> = {
  'constant-is-proven': {
    summary: () => 'El cable unido a la alimentación está demostrado como permanente (30).',
    why: 'Una alimentación que se corta con la llave deja el aparato muerto cuando el vehículo está parado, y un cable equivocado devuelve corriente al vehículo.',
    says: proven,
  },
  'ground-drop-is-small': {
    summary: (voice) => `La masa cae como mucho ${voice.voltLimit(groundDropMillivoltsMax)} con la carga del aparato.`,
    why: 'Una mala masa hace fallar el aparato de maneras que parecen cualquier otra cosa.',
    says: {
      'drops too much': (ground) => ({
        what: `La masa cae ${ground.drop} mV con ${ground.milliamps === null ? 'una corriente no anotada' : `${ground.milliamps} mA`}; como mucho ${ground.most} mV.`,
        whatToDo: 'Limpie hasta el metal, apriete o elija otra masa.',
      }),
      'current not recorded': (ground) => ({
        what: `La masa cae ${ground.drop} mV con una corriente que no consta.`,
        whatToDo: 'Anote qué corriente pasaba: la del aparato despierto o la de una lámpara de prueba.',
      }),
      'would drop too much': (ground) => ({
        what: `La masa cae ${ground.drop} mV con ${ground.milliamps} mA, es decir ${ground.atAwake} mV con los ${ground.awake} mA que toma el aparato despierto; como mucho ${ground.most} mV.`,
        whatToDo: 'Limpie hasta el metal, apriete o elija otra masa.',
      }),
    },
  },
  'ground-is-proven': {
    summary: () => 'El cable unido a la masa está demostrado como masa (31).',
    why: 'Sin masa propia el aparato busca el retorno por sus otros cables: vive, pero comunica disparates.',
    says: proven,
  },
  'ignition-is-proven': {
    summary: () => 'El cable unido al encendido está demostrado como encendido (15).',
    why: 'En el cable equivocado el aparato pierde trayectos, o nunca duerme y descarga la batería.',
    says: proven,
  },
};
