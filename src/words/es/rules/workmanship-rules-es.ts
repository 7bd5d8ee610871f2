import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import { bendTimesMin } from '../../../rules/workmanship/bend-radius-is-wide-enough.ts';
import { supportMillimetresMax, tieMillimetresMax } from '../../../rules/workmanship/harness-is-tied-at-intervals.ts';
import { jointMillimetresMin } from '../../../rules/workmanship/splices-are-staggered.ts';
import { tapeMillimetresMin } from '../../../rules/workmanship/tape-is-long-enough.ts';
import type { workmanshipRules } from '../../../rules/workmanship/workmanship-rules.ts';
import { termsEs } from '../terms-es.ts';

const touched = { 'sharp edge': 'un canto vivo', 'hot part': 'una parte caliente', 'moving part': 'una parte móvil' };
const tiedTo = {
  steering: 'la dirección',
  pedal: 'un pedal',
  'brake line': 'un tubo de freno',
  'restraint wiring': 'el cableado de retención',
  'high-voltage cable': 'un cable de alta tensión',
  'fuel line': 'un tubo de combustible',
};
const stripAgain = 'Corte hasta cable sano, pele con la boca que corresponde y rehaga la unión.';

/** What the rules of workmanship say, in Spanish. */
export const workmanshipRulesEs: RuleWordsOf<typeof workmanshipRules> = {
  'bend-radius-is-wide-enough': {
    summary: (voice) => `Ninguna curva es más cerrada que ${voice.number(bendTimesMin)} veces el diámetro del mazo.`,
    why: 'Una curva cerrada fatiga los hilos y aprieta a través del aislante.',
    says: {
      'too tight': (bend, voice) => ({
        what: `La curva más cerrada es de ${voice.decimal(bend.times)} veces el diámetro del mazo; se piden ${bend.least} veces o más.`,
        whatToDo: 'Abra la curva o sujétela junto al terminal.',
      }),
      'too tight at a terminal': (bend, voice) => ({
        what: `La curva más cerrada es de ${voice.decimal(bend.times)} veces el diámetro del mazo; se piden ${bend.least} veces o más.`,
        whatToDo: `Abra la curva: menos de ${bend.leastAtTerminal} veces es demasiado incluso junto a un terminal sujeto.`,
      }),
    },
  },
  'fuse-is-taped-and-tied': {
    summary: () => 'Cada portafusibles está cerrado con cinta y atado, de modo que no se saca sin herramienta.',
    why: 'Un portafusibles que se abre con las sacudidas, o del que tira una mano curiosa, es la causa más común de un aparato mudo.',
    says: {
      'not taped and tied': ({ lead }, voice) => ({
        what: `El fusible del cable de ${voice.lead(lead)} no está cerrado con cinta ni atado.`,
        whatToDo: 'Cierre el portafusibles con cinta y átelo al mazo.',
      }),
    },
  },
  'harness-has-slack': {
    summary: () => 'El mazo tiene algo de holgura: ni tirante ni colgando.',
    why: 'Un cable tirante arranca su unión cuando se mueve el panel; uno que cuelga se engancha y se rompe.',
    says: {
      tight: ({ most }) => ({
        what: 'El mazo está tirante.',
        whatToDo: `Suéltelo hasta que ceda unos ${most} mm (1/2 pulg.) a la mano entre bridas.`,
      }),
      loose: ({ most }) => ({
        what: 'El mazo cuelga suelto.',
        whatToDo: `Doble y ate el sobrante hasta que no ceda más de unos ${most} mm (1/2 pulg.) a la mano entre bridas.`,
      }),
    },
  },
  'harness-is-clear-of-edges-heat-and-moving-parts': {
    summary: () => 'El mazo no toca cantos vivos, partes calientes, partes móviles ni tubos de combustible.',
    why: 'Un aislante que roza, se funde o queda atrapado acaba en cortocircuito, y junto a un tubo de combustible en incendio.',
    says: {
      touches: ({ part, clearance }) => ({
        what: `El mazo toca ${touched[part]}.`,
        whatToDo: `Páselo a ${clearance} mm o más, o ponga un pasacables o una funda en medio.`,
      }),
      'touches a fuel line': ({ clearance }) => ({
        what: 'El mazo toca un tubo de combustible.',
        whatToDo: `Páselo al menos a ${clearance} mm (6 pulg.) del tubo de combustible.`,
      }),
    },
  },
  'harness-is-loomed': {
    summary: () => 'El mazo va en tubo o funda.',
    why: 'El tubo se lleva el roce que de otro modo llegaría al aislante.',
    says: {
      'not loomed': () => ({
        what: 'El mazo va sin tubo.',
        whatToDo: 'Cúbralo con tubo o funda en todo su largo.',
      }),
    },
  },
  'harness-is-tied-at-intervals': {
    summary: () =>
      `El mazo va atado al menos cada ${tieMillimetresMax} mm y apoyado al menos cada ${supportMillimetresMax} mm.`,
    why: 'Un mazo que cuelga oscila, roza y tira de sus uniones.',
    says: {
      'not tied': ({ most }) => ({
        what: 'El mazo no está atado.',
        whatToDo: `Átelo al menos cada ${most} mm.`,
      }),
      'ties too far apart': ({ interval, most }) => ({
        what: `El mazo está atado cada ${interval} mm; lo más son ${most} mm.`,
        whatToDo: `Añada bridas hasta que ningún tramo pase de ${most} mm.`,
      }),
      'supports too far apart': ({ interval, most, mostOfSupports }) => ({
        what: `El mazo está atado cada ${interval} mm; lo más son ${most} mm, y entre apoyos ${mostOfSupports} mm.`,
        whatToDo: `Añada bridas hasta que ningún tramo pase de ${most} mm.`,
      }),
    },
  },
  'joint-held-a-tug': {
    summary: () => 'Cada unión aguantó un tirón ligero con la mano.',
    why: 'Un engaste o una derivación que cede a un tirón ligero falla en la carretera.',
    says: {
      'did not hold': ({ lead }, voice) => ({
        what: `La unión del cable de ${voice.lead(lead)} no aguantó un tirón ligero.`,
        whatToDo: 'Rehaga la unión y tire otra vez.',
      }),
      'not recorded': ({ lead }, voice) => ({
        what: `No consta la prueba de tirón del cable de ${voice.lead(lead)}.`,
        whatToDo: 'Tire ligeramente de la unión con la mano y anote si aguantó.',
      }),
    },
  },
  'method-suits-a-wet-place': {
    summary: () => 'Donde llega agua, sal o lavado, la unión es estanca.',
    why: 'La cinta no sella: la humedad avanza por los hilos y corroe la unión hasta abrirla.',
    says: {
      'not sealed': ({ lead, method, cover }, voice) => ({
        what: `La unión del cable de ${voice.lead(lead)} (${termsEs.methods[method]}, ${cover === null ? 'cubierta no anotada' : termsEs.covers[cover]}) está en un lugar húmedo y no es estanca.`,
        whatToDo: 'Use un empalme engastado estanco o un manguito estanco, o lleve la unión a un lugar seco.',
      }),
    },
  },
  'no-insulation-displacing-tap-on-supply-lead': {
    summary: () => 'Ninguna derivación que muerde el aislante está en un cable del aparato.',
    why: 'La cuchilla sujeta unos pocos hilos por resorte; el calor y la vibración la aflojan, y un aparato sensible a la tensión se reinicia o da viajes falsos.',
    says: {
      'joined so': ({ lead }, voice) => ({
        what: `El cable de ${voice.lead(lead)} está unido con una derivación por desplazamiento de aislante.`,
        whatToDo: 'Quítela, repare el cable del vehículo y únalo con una derivación arrollada, soldada o engastada.',
      }),
    },
  },
  'no-twist-only-joint': {
    summary: () => 'Ninguna unión se sostiene solo por retorcido.',
    why: 'El retorcido solo se afloja; su resistencia crece hasta que el cable falla o se calienta.',
    says: {
      'only twisted': ({ lead }, voice) => ({
        what: `El cable de ${voice.lead(lead)} está solo retorcido con el del vehículo.`,
        whatToDo: 'Rehaga la unión: pase y arrolle, suelde o engaste; después cúbrala y átela.',
      }),
    },
  },
  'nothing-tied-to-steering-brake-or-restraint-parts': {
    summary: () =>
      'Nada está atado a dirección, pedales, tubos de freno o combustible, cableado de retención ni cable de alta tensión.',
    why: 'Una brida ahí puede bloquear, rozar o anular lo que mantiene con vida a las personas.',
    says: {
      'tied to it': ({ part }) => ({
        what: `El mazo está atado a ${tiedTo[part]}.`,
        whatToDo: 'Corte esa brida ahora y ate a un soporte o a un mazo de la carrocería.',
      }),
    },
  },
  'splice-is-covered': {
    summary: () => 'Cada unión está cubierta con cinta, manguito o caja cerrada.',
    why: 'Una unión desnuda bajo el salpicadero toca metal tarde o temprano: salta el fusible, o el cable del vehículo hace cortocircuito donde nada lo protege.',
    says: {
      bare: ({ lead, least }, voice) => ({
        what: `La unión del cable de ${voice.lead(lead)} está desnuda.`,
        whatToDo: `Cúbrala con ${least} mm de cinta o más, o con termorretráctil, y átela.`,
      }),
      'not recorded': ({ lead }, voice) => ({
        what: `No consta cómo está cubierta la unión del cable de ${voice.lead(lead)}.`,
        whatToDo: 'Mire la unión y anote su cubierta.',
      }),
    },
  },
  'splice-is-tied': {
    summary: () => 'Cada unión está atada, de modo que un tirón del cable no llega a ella.',
    why: 'Una unión que soporta el peso o el tirón de su cable se afloja.',
    says: {
      'not tied': ({ lead }, voice) => ({
        what: `La unión del cable de ${voice.lead(lead)} no está atada.`,
        whatToDo: 'Ate el cable al del vehículo junto a la unión.',
      }),
    },
  },
  'splices-are-staggered': {
    summary: () => `Las uniones de un mismo mazo están separadas al menos ${jointMillimetresMin} mm.`,
    why: 'Las uniones juntas hacen un bulto que roza, y si falla una cubierta se cruzan dos cables.',
    says: {
      'too close': ({ lead, distance, least }, voice) => ({
        what: `La unión del cable de ${voice.lead(lead)} está a ${distance} mm de la siguiente; se piden ${least} mm o más.`,
        whatToDo: 'Desplace una de las uniones a lo largo del mazo.',
      }),
    },
  },
  'strands-are-not-cut': {
    summary: () => 'Al pelar no se corta ningún hilo ni se marcan más de los que permite la tabla.',
    why: 'Los hilos cortados quitan sección y resistencia justo donde más se dobla.',
    says: {
      cut: ({ lead }, voice) => ({
        what: `Al pelar para el cable de ${voice.lead(lead)} se cortaron hilos; no se admite ninguno.`,
        whatToDo: stripAgain,
      }),
      'nicked, not counted': ({ lead, allowed }, voice) => ({
        what: `Al pelar para el cable de ${voice.lead(lead)} se marcaron hilos, pero no se contaron; se admiten ${allowed}.`,
        whatToDo: 'Cuente los hilos marcados y anótelos.',
      }),
      nicked: ({ lead, nicked, allowed }, voice) => ({
        what: `Al pelar para el cable de ${voice.lead(lead)} se marcaron ${nicked} hilos; se admiten ${allowed}.`,
        whatToDo: stripAgain,
      }),
    },
  },
  'tape-is-long-enough': {
    summary: () => `Una unión con cinta lleva al menos ${tapeMillimetresMin} mm de cinta.`,
    why: 'La cinta corta se despega y deja desnudos los extremos de la unión.',
    says: {
      'not recorded': ({ lead, least }, voice) => ({
        what: `No consta el largo de la cinta en el cable de ${voice.lead(lead)}; se piden ${least} mm o más.`,
        whatToDo: 'Mida la cinta y anótelo.',
      }),
      'too short': ({ lead, length, least }, voice) => ({
        what: `La cinta del cable de ${voice.lead(lead)} mide ${length} mm; se piden ${least} mm o más.`,
        whatToDo: `Encinte de nuevo al menos ${least} mm (1 pulg.), más allá de los dos extremos del cable desnudo.`,
      }),
    },
  },
};
