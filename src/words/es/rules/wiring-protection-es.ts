import { fuseDistanceMillimetresMax, loadOfFusePercentMax } from '../../../electrics/assess-fuse.ts';
import { groundDropMillivoltsMax } from '../../../evidence/electrical-limits.ts';
import type { RuleWordsOf, Voice } from '../../../rules/rule-words.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';

type Wiring = RuleWordsOf<typeof wiringRules>;
type Thin = Parameters<Wiring['wire-is-no-smaller-than-the-lead-it-feeds']['says']['sense lead only']>[0];

const cleanIt = 'Limpie hasta el metal, apriete o elija otra masa.';
const fitNamed = 'Ponga el fusible que nombra el fabricante del aparato.';
const stop = 'Pare. Déjelo como está, no lo toque más y haga que lo mire el taller del fabricante.';
const thickerLead = 'Use un cable más grueso o escriba qué dice el fabricante del aparato.';
const thinWire = ({ lead, own, point, wire }: Thin, voice: Voice) =>
  `El cable de ${voice.lead(lead)} (${voice.gauge(own)}) lo alimenta ${point}, un cable de solo ${voice.gauge(wire)}.`;

/** What the rules of wiring say of fuses, conductors, ground and what must not be tapped, in Spanish. */
export const wiringProtectionEs = {
  'device-fuse-opens-first': {
    summary: () => 'El fusible del aparato no es mayor que el fusible del vehículo que lo precede.',
    why: 'Un fallo del aparato dejaría sin servicio el circuito del que se derivó, con luces o gestión del motor.',
    says: {
      'larger than the vehicle’s': ({ lead, own, before }, voice) => ({
        what: `El cable de ${voice.lead(lead)} tiene un fusible de ${voice.decimal(own)} A detrás de uno del vehículo de ${voice.decimal(before)} A.`,
        whatToDo:
          'Ponga el fusible menor que nombra el fabricante del aparato, o elija una alimentación con un fusible mayor.',
      }),
    },
  },
  'device-window-covers-a-supply-code': {
    summary: () => 'La tensión que admite el aparato cubre uno de los márgenes normalizados del sistema del vehículo.',
    why: 'Un aparato hecho para menos encuentra en su vida normal tensiones (16 V en 12 V, 32 V en 24 V) que las lecturas de hoy no muestran.',
    says: {
      'covers none': ({ name, least, most, system, codes }, voice) => ({
        what: `${name} está hecho para ${voice.decimal(least)} a ${voice.decimal(most)} V, que no cubre ningún margen de un sistema de ${system} V (${codes.map((each) => `${each.code} ${voice.decimal(each.voltsMin)} a ${voice.decimal(each.voltsMax)} V`).join(', ')}).`,
        whatToDo:
          'Monte un aparato hecho para este sistema, o un convertidor, o escriba por qué lo permite el fabricante.',
      }),
    },
  },
  'fuse-bears-the-load': {
    summary: () => `El aparato consume a la larga como mucho el ${loadOfFusePercentMax} % de su fusible.`,
    why: 'Un fusible cerca de su valor se calienta, envejece y salta un día de calor sin que haya fallo.',
    says: {
      'too small': ({ draws, rating, carries, named }, voice) => ({
        what: `El aparato consume ${draws} mA; un fusible de ${voice.decimal(rating)} A lleva a la larga ${voice.decimal(carries)} mA.`,
        whatToDo: `Ponga el fusible que nombra el fabricante del aparato (${voice.decimal(named)} A), si el cable lo admite.`,
      }),
    },
  },
  'fuse-is-near-the-tap': {
    summary: () => `Hay un fusible a menos de ${fuseDistanceMillimetresMax} mm (7 pulg.) de la unión.`,
    why: 'El tramo anterior al fusible no está protegido.',
    says: {
      'too far': ({ lead, distance, most }, voice) => ({
        what: `El fusible del cable de ${voice.lead(lead)} está a ${distance} mm de la unión; como mucho ${most} mm (7 pulg.).`,
        whatToDo: 'Acerque el portafusibles a la unión.',
      }),
    },
  },
  'fuse-suits-the-wire': {
    summary: () => 'El fusible no es mayor de lo que admite su cable más delgado ni de lo que pide el aparato.',
    why: 'El fusible protege el cable: uno demasiado grande deja que el cable arda antes.',
    says: {
      'wire too thin for the table': ({ lead, rating, wire }, voice) => ({
        what: `Un fusible de ${voice.decimal(rating)} A protege el cable de ${voice.lead(lead)}, cuyo tramo más delgado (${voice.gauge(wire)}) es menor que cualquiera de la tabla.`,
        whatToDo: fitNamed,
      }),
      'too large for the wire': ({ lead, rating, wire, most }, voice) => ({
        what: `Un fusible de ${voice.decimal(rating)} A protege el cable de ${voice.lead(lead)}, cuyo tramo más delgado (${voice.gauge(wire)}) admite como mucho ${voice.decimal(most)} A.`,
        whatToDo: fitNamed,
      }),
      'larger than named': ({ rating, named }, voice) => ({
        what: `Hay un fusible de ${voice.decimal(rating)} A y el fabricante nombra ${voice.decimal(named)} A.`,
        whatToDo: `Ponga ${voice.decimal(named)} A.`,
      }),
    },
  },
  'ground-drop-is-small': {
    summary: (voice) => `La masa cae como mucho ${voice.voltLimit(groundDropMillivoltsMax)} con la carga del aparato.`,
    why: 'Una mala masa hace fallar el aparato de maneras que parecen cualquier otra cosa.',
    says: {
      'drops too much': ({ drop, milliamps, most }) => ({
        what: `La masa cae ${drop} mV con ${milliamps === null ? 'una corriente no anotada' : `${milliamps} mA`}; como mucho ${most} mV.`,
        whatToDo: cleanIt,
      }),
      'current not recorded': ({ drop }) => ({
        what: `La masa cae ${drop} mV con una corriente que no consta.`,
        whatToDo: 'Anote qué corriente pasaba: la del aparato despierto o la de una lámpara de prueba.',
      }),
      'would drop too much': ({ drop, milliamps, atAwake, awake, most }) => ({
        what: `La masa cae ${drop} mV con ${milliamps} mA, es decir ${atAwake} mV con los ${awake} mA que toma el aparato despierto; como mucho ${most} mV.`,
        whatToDo: cleanIt,
      }),
    },
  },
  'ground-is-on-bare-metal': {
    summary: () => 'La masa está sobre metal limpio, sujeta de modo que no se afloja con las sacudidas.',
    why: 'Pintura, óxido y vibración convierten una masa que hoy mide bien en el fallo que nadie encuentra el invierno que viene.',
    says: {
      'not bare': ({ where }) => ({
        what: `La masa (${where}) no está sobre metal limpio.`,
        whatToDo: 'Quite pintura y óxido, apriete de nuevo y selle el borde.',
      }),
      'may shake loose': ({ where }) => ({
        what: `Nada impide que la masa (${where}) se afloje con las sacudidas.`,
        whatToDo: 'Añada una arandela dentada o una tuerca autoblocante.',
      }),
      'drilled hole': ({ where }) => ({
        what: `La masa (${where}) es un tornillo en un taladro.`,
        whatToDo:
          'Mejor un espárrago de masa de fábrica; si no, mire antes detrás del panel y proteja el taladro del óxido.',
      }),
    },
  },
  'lead-carries-the-load': {
    summary: () => 'El cable más delgado de la alimentación lleva la corriente del aparato sin calentarse.',
    why: 'Un cable caliente dentro de un mazo ablanda su aislante y el de sus vecinos.',
    says: {
      'too thin for the table': ({ draws, gauges }, voice) => ({
        what: `El aparato consume ${draws} mA; su cable de alimentación (${voice.and(gauges.map(voice.gauge))}) es más delgado que cualquiera de la tabla.`,
        whatToDo: thickerLead,
      }),
      'too thin': ({ draws, gauges, carries }, voice) => ({
        what: `El aparato consume ${draws} mA; su cable de alimentación (${voice.and(gauges.map(voice.gauge))}) lleva a la larga ${voice.decimal(carries)} mA.`,
        whatToDo: thickerLead,
      }),
    },
  },
  'lead-is-no-smaller-than-device-lead': {
    summary: () => 'Un cable que alarga o sustituye al del aparato no es más delgado que él.',
    why: 'El fabricante eligió su cable por corriente, fusible y tirón; un tramo más delgado es el nuevo punto débil, y el fusible del aparato puede no protegerlo.',
    says: {
      thinner: ({ lead, used, own }, voice) => ({
        what: `El cable de ${voice.lead(lead)} es de ${voice.gauge(used)}; el propio del aparato es de ${voice.gauge(own)}.`,
        whatToDo: `Use ${voice.gauge(own)} o más grueso, o escriba por qué basta este.`,
      }),
    },
  },
  'no-supply-from-half-a-battery-pair': {
    summary: () => 'En 24 V no se toma nada del punto medio de la pareja de baterías.',
    why: 'La batería que alimenta sola se descarga mientras la otra se sobrecarga: las dos mueren en meses.',
    says: {
      'half the supply': ({ point, millivolts, key }, voice) => ({
        what: `${point} marca ${voice.volts(millivolts)} (${voice.key(key)}) en un sistema de 24 V: el punto medio de la pareja de baterías, o un convertidor.`,
        whatToDo:
          'Tome 24 V de las dos baterías; donde el aparato necesita 12 V, use un convertidor alimentado con 24 V.',
      }),
    },
  },
  'no-tap-on-data-wire': {
    summary: () => 'Nada está unido a un par de datos ni a un cable de señal.',
    why: 'Una derivación en un par de datos o en un sensor perturba los sistemas del propio vehículo.',
    says: {
      'joined to it': ({ lead, point }, voice) => ({
        what: `El cable de ${voice.lead(lead)} está unido a un cable de datos o de señal (${point}).`,
        whatToDo: 'Quítelo, restaure el cable y busque uno de alimentación.',
      }),
    },
  },
  'no-tap-on-high-voltage-wiring': {
    summary: () => 'Nada está unido al cableado de alta tensión (funda naranja).',
    why: 'Un cable de alta tensión puede matar.',
    says: {
      'joined to it': ({ lead }, voice) => ({
        what: `El cable de ${voice.lead(lead)} está unido a un cable con funda naranja.`,
        whatToDo: stop,
      }),
    },
  },
  'no-tap-on-restraint-wiring': {
    summary: () => 'Nada está unido al cableado del sistema de retención (funda amarilla).',
    why: 'El cableado de retención dispara airbags y pretensores; una punta o un empalme puede dispararlos o anularlos.',
    says: {
      'joined to it': ({ lead }, voice) => ({
        what: `El cable de ${voice.lead(lead)} está unido a un cable con funda amarilla.`,
        whatToDo: stop,
      }),
    },
  },
  'standing-drain-is-acceptable': {
    summary: () => 'La batería dura lo que el vehículo suele estar parado.',
    why: 'De un vehículo que no arranca después de las vacaciones se culpa a lo último que se montó.',
    says: {
      'runs down': ({ milliamps, percent, days, wanted }) => ({
        what: `Con ${milliamps} mA en reposo la batería${percent === null ? '' : ` (cargada al ${percent} % en reposo)`} baja a la mitad en ${days} días; el vehículo está parado hasta ${wanted}.`,
        whatToDo: 'Avise al cliente; ayuda un desconectador de batería o un cargador.',
      }),
    },
  },
  'supply-lead-is-fused': {
    summary: () => 'Cada cable que según la ficha necesita fusible lo tiene.',
    why: 'Un cable sin fusible arde donde roza.',
    says: {
      'no fuse': ({ lead }, voice) => ({
        what: `El cable de ${voice.lead(lead)} no tiene fusible.`,
        whatToDo: 'Ponga en el cable el fusible que nombra el fabricante, cerca de la unión.',
      }),
    },
  },
  'wire-is-no-smaller-than-the-lead-it-feeds': {
    summary: () => 'El cable del vehículo del que se deriva no es más delgado que el cable que alimenta.',
    why: 'Un cable delgado suele ser una señal, no una alimentación; su fusible y su sección se eligieron sin el aparato.',
    says: {
      'feeds too thick a lead': (joint, voice) => ({
        what: thinWire(joint, voice),
        whatToDo: 'Elija un cable más grueso, mejor uno de la cerradura de contacto o de la caja de fusibles.',
      }),
      'sense lead only': (joint, voice) => ({
        what: thinWire(joint, voice),
        whatToDo: 'Un cable que solo detecta puede colgar de él; asegúrese de que es una alimentación y no una señal.',
      }),
    },
  },
} satisfies Partial<Wiring>;
