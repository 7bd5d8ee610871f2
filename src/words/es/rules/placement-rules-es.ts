import { heatMillimetresMin } from '../../../rules/placement/away-from-heat-sources.ts';
import { personMillimetresUsual } from '../../../rules/placement/distance-from-people.ts';
import type { placementRules } from '../../../rules/placement/placement-rules.ts';
import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import { termsEs } from '../terms-es.ts';

const blocked = {
  vent: 'una salida de aire',
  view: 'la vista',
  control: 'un mando',
  'seat travel': 'el recorrido del asiento',
  hatch: 'una compuerta',
};
const lies = {
  'label up': 'con la etiqueta hacia arriba',
  'label down': 'con la etiqueta hacia abajo',
  'on edge': 'de canto',
  any: 'en una posición cualquiera',
};
const fixIt = 'Fíjelo hasta que no se mueva bajo la mano.';
const keepDry = 'Llévelo a un lugar seco o monte un aparato que sea estanco.';
const moveOnGlass =
  'Muévalo hacia arriba o hacia abajo hasta que se cumpla uno de los dos límites, o fuera del parabrisas.';
const outOfSweep = 'Sáquelo de la zona barrida y anote que está fuera.';
const localCode = 'El aparato está en el parabrisas; lo que puede haber ahí lo dice la norma local.';

/** What the rules of placement say, in Spanish. */
export const placementRulesEs: RuleWordsOf<typeof placementRules> = {
  'away-from-heat-sources': {
    summary: () =>
      `El aparato guarda distancia de conductos de calor, escape y otras partes calientes (${heatMillimetresMin} mm, o lo que dice su ficha).`,
    why: 'Junto a un conducto o un tubo hace más calor que en el resto del lugar, y el adhesivo y las bridas ceden.',
    says: {
      'too near': ({ distance, least }) => ({
        what: `El aparato está a ${distance} mm de una parte caliente; al menos ${least} mm.`,
        whatToDo: 'Apártelo, o ponga una pantalla en medio y anote cuál.',
      }),
    },
  },
  'clear-of-air-bags': {
    summary: () => 'El aparato y su mazo están fuera del recorrido de todo airbag.',
    why: 'Una bolsa que se infla lanza contra el ocupante lo que haya en su recorrido, o no se despliega.',
    says: {
      'in the path': ({ distance }) => ({
        what: `El aparato está en el recorrido de un airbag${distance === null ? '' : `, a ${distance} mm de él`}.`,
        whatToDo: 'Saque el aparato y su mazo del recorrido antes de que salga el vehículo.',
      }),
      'not recorded': () => ({
        what: 'No consta si el aparato está en el recorrido de un airbag.',
        whatToDo: 'Busque las marcas de airbag en revestimientos y montantes, y anote la respuesta.',
      }),
    },
  },
  'clear-of-head-strike-areas': {
    summary: () => 'El aparato no está donde golpean la cabeza o las rodillas en un choque.',
    why: 'Una caja dura en una zona de golpe convierte una superficie acolchada en un canto.',
    says: {
      'in a strike area': () => ({
        what: 'El aparato está en una zona donde pueden golpear la cabeza o las rodillas.',
        whatToDo: 'Llévelo detrás de un revestimiento o fuera del alcance de cabeza y rodillas.',
      }),
    },
  },
  'device-is-firm': {
    summary: () => 'El aparato está firme y no puede soltarse con las sacudidas.',
    why: 'Un aparato suelto tira de sus cables, hace ruido, confunde su sensor de movimiento y puede caer entre los pedales.',
    says: {
      loose: () => ({ what: 'El aparato está puesto suelto.', whatToDo: fixIt }),
      'not firm': ({ fixing }) => ({
        what: `El aparato no está firme (fijación: ${termsEs.fixings[fixing]}).`,
        whatToDo: fixIt,
      }),
      'not recorded': () => ({
        what: 'No consta si el aparato está firme.',
        whatToDo: 'Empújelo con la mano y anote si se mueve.',
      }),
    },
  },
  'distance-from-people': {
    summary: () =>
      `Un aparato que emite está al menos a ${personMillimetresUsual} mm de las personas, o a la distancia que dice su ficha.`,
    why: 'Su homologación de radio se basa en esa distancia.',
    says: {
      'not recorded': ({ least }) => ({
        what: `No consta la distancia del aparato a las personas; se piden ${least} mm o más.`,
        whatToDo: 'Mida hasta el lugar más cercano donde alguien se sienta o está de pie.',
      }),
      'too near': ({ distance, least }) => ({
        what: `El aparato está a ${distance} mm de las personas; se piden ${least} mm o más.`,
        whatToDo: `Llévelo al menos a ${least} mm de cualquier asiento.`,
      }),
    },
  },
  'does-not-block-view-vents-or-controls': {
    summary: () => 'El aparato no tapa vista, salida de aire, mando, recorrido de asiento ni compuerta.',
    why: 'Lo que está tapado lo echa en falta el conductor siguiente, y en mal momento.',
    says: {
      blocks: (device) => ({
        what: `El aparato tapa ${blocked[device.blocked]}.`,
        whatToDo: 'Muévalo hasta que no tape nada.',
      }),
    },
  },
  'dry-or-sealed': {
    summary: () => 'El aparato está en seco o es estanco.',
    why: 'El agua en un aparato que no es estanco es su fin, a veces meses después.',
    says: {
      'zone is wet': ({ zone }) => ({
        what: `El agua llega a esta zona (${termsEs.zones[zone][0]}) y el aparato no es estanco.`,
        whatToDo: keepDry,
      }),
      'place is wet': () => ({ what: 'El lugar es húmedo y el aparato no es estanco.', whatToDo: keepDry }),
    },
  },
  'fixing-points-suffice': {
    summary: () => 'El aparato se sujeta en dos puntos o más, con una almohadilla adhesiva, o como dice su ficha.',
    why: 'Sujeto en un solo punto, el aparato gira y se afloja.',
    says: {
      'too few': ({ points, least }) => ({
        what: `El aparato se sujeta en ${points} ${points === 1 ? 'punto' : 'puntos'}; se piden ${least} o más.`,
        whatToDo: 'Añada puntos de fijación.',
      }),
    },
  },
  'not-within-casual-reach': {
    summary: () => 'El aparato no está al alcance de cualquier mano.',
    why: 'Lo que una mano encuentra, una mano lo desenchufa.',
    says: {
      'within reach': () => ({
        what: 'Se llega al aparato con la mano, sin herramienta.',
        whatToDo: 'Llévelo detrás de un panel o avise al cliente.',
      }),
    },
  },
  'orientation-as-the-profile-says': {
    summary: () => 'El aparato está orientado como dice su ficha.',
    why: 'La antena mira por una cara, y los sensores de movimiento están ajustados para una posición.',
    says: {
      'lies otherwise': (device) => ({
        what: `El aparato está ${lies[device.lies]}; su ficha pide ${lies[device.wanted]}.`,
        whatToDo: `Póngalo ${lies[device.wanted]}.`,
      }),
    },
  },
  'reachable-for-service': {
    summary: () => 'Se llega al aparato con herramientas cuando hay que atenderlo.',
    why: 'Un aparato al que no se llega cuesta una hora en la visita siguiente.',
    says: {
      'out of reach': () => ({
        what: 'No se llega al aparato con herramientas.',
        whatToDo: 'Muévalo, o anote en la observación qué paneles hay que quitar.',
      }),
    },
  },
  'sky-above-the-antenna-is-not-metal': {
    summary: () => 'No hay nada de metal entre la antena y el cielo.',
    why: 'El metal encima oculta los satélites: las posiciones saltan o se paran.',
    says: {
      'metal above': () => ({
        what: 'Hay metal encima de la antena.',
        whatToDo: 'Lleve el aparato bajo plástico, tela o vidrio sencillo.',
      }),
      'coated glass above': () => ({
        what: 'El vidrio encima de la antena es térmico o lleva una capa metálica.',
        whatToDo: 'Compruebe la recepción antes de cerrar, o lleve el aparato bajo plástico.',
      }),
    },
  },
  'windscreen-area-is-respected': {
    summary: () => 'En el parabrisas el aparato queda dentro de la zona permitida y fuera de las líneas de visión.',
    why: 'Más abajo, un aparato tapa la carretera, las señales y los semáforos, y la multa es para el transportista.',
    says: {
      'in the sight line': () => ({
        what: 'El aparato está en la línea de visión del conductor hacia la carretera, las señales o los semáforos.',
        whatToDo: 'Sáquelo de la línea de visión.',
      }),
      'local code': () => ({
        what: localCode,
        whatToDo: 'Consulte la norma local o quite el aparato del parabrisas.',
      }),
      'local code of Great Britain': (zone, voice) => ({
        what: localCode,
        whatToDo: `Consulte la norma local. Gran Bretaña, manual de inspección MOT, sección 3: delante del conductor (${zone.wide} mm de ancho; ${zone.wideAboveLimit} mm por encima de ${voice.decimal(zone.tonnes)} t) como mucho ${zone.most} mm dentro de la zona barrida, en el resto de ella ${zone.mostElsewhere} mm.`,
      }),
      'not measured in the swept area': ({ below, above }) => ({
        what: 'No está medido el lugar del aparato en la zona barrida por los limpiaparabrisas.',
        whatToDo: `Mida desde su borde inferior hasta lo alto de la zona barrida (como mucho ${below} mm), o desde su borde superior hasta lo bajo (como mucho ${above} mm).`,
      }),
      'too far below the top': ({ below, belowMost }) => ({
        what: `El aparato llega a ${below} mm por debajo del borde superior de la zona barrida (como mucho ${belowMost} mm).`,
        whatToDo: moveOnGlass,
      }),
      'too far above the bottom': ({ above, aboveMost }) => ({
        what: `El aparato llega a ${above} mm por encima del borde inferior de la zona barrida (como mucho ${aboveMost} mm).`,
        whatToDo: moveOnGlass,
      }),
      'too far from both': ({ below, belowMost, above, aboveMost }) => ({
        what: `El aparato llega a ${below} mm por debajo del borde superior de la zona barrida (como mucho ${belowMost} mm) y a ${above} mm por encima del inferior (como mucho ${aboveMost} mm).`,
        whatToDo: moveOnGlass,
      }),
      'not measured from the glass': ({ below }) => ({
        what: 'No está medida la distancia del aparato al borde superior del vidrio.',
        whatToDo: `Mida desde su borde inferior hasta el borde superior del parabrisas: como mucho ${below} mm.`,
      }),
      'too far below the glass top': ({ below, belowMost }) => ({
        what: `El aparato llega a ${below} mm por debajo del borde superior del parabrisas; como mucho ${belowMost} mm.`,
        whatToDo: 'Súbalo o quítelo del parabrisas.',
      }),
      'in the swept area': () => ({
        what: 'El aparato está en la zona barrida por los limpiaparabrisas, donde no puede haber ninguna antena.',
        whatToDo: outOfSweep,
      }),
      'swept area not recorded': () => ({
        what: 'No consta si los limpiaparabrisas pasan por el aparato.',
        whatToDo: outOfSweep,
      }),
    },
  },
  'windscreen-mount-as-the-profile-says': {
    summary: () => 'En el parabrisas solo va un aparato hecho para ello.',
    why: 'El sol tras el vidrio lo calienta más que una cabina, y una fijación que no es para vidrio se suelta hacia la cara del conductor.',
    says: {
      'not made for it': ({ name }) => ({
        what: `${name} está en el parabrisas y su ficha no dice que esté hecho para ello.`,
        whatToDo: 'Llévelo al salpicadero, o anote qué dice el fabricante y cómo está sujeto.',
      }),
    },
  },
  'within-heat-limit': {
    summary: () => 'El lugar no pasa de las temperaturas que el aparato soporta.',
    why: 'Un aparato por encima de su límite falla, o falla su batería; por debajo no despierta.',
    says: {
      'too hot': ({ celsius, most }) => ({
        what: `El lugar puede llegar a ${celsius} °C; el aparato soporta ${most} °C.`,
        whatToDo: 'Llévelo a un lugar más fresco, lejos de conductos de calor y del sol.',
      }),
      'too cold': ({ celsius, least }) => ({
        what: `El lugar puede bajar a ${celsius} °C; el aparato funciona hasta ${least} °C.`,
        whatToDo: 'Llévelo adentro o monte un aparato hecho para tal frío.',
      }),
      'engine bay, heat not recorded': ({ most }) => ({
        what: `El aparato está en el compartimento del motor y no consta qué calor hace allí; soporta ${most} °C.`,
        whatToDo: 'Mida a su lado con el motor caliente y anótelo, o saque el aparato de ahí.',
      }),
    },
  },
};
