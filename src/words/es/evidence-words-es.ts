import type { EvidenceWords } from '../evidence-words.ts';
import type { Colour } from '../sentences.ts';
import { coloursEs } from './colours-es.ts';

const capital = (text: string) => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
/** A wire's colour with its stripe, in Spanish. */
export const colourWords = ({ colour, stripe }: Colour) => {
  const own = coloursEs.get(colour.toLowerCase())?.[0] ?? colour;
  return stripe === null ? own : `${own} con raya ${coloursEs.get(stripe.toLowerCase())?.[1] ?? stripe}`;
};
const hereOr = (point: string | null) => point ?? 'La alimentación';

/** Every sentence about readings and what they prove, in Spanish. */
export const evidenceWordsEs: EvidenceWords = {
  where: {
    out: 'sin la llave',
    off: 'con la llave en apagado',
    accessory: 'en accesorios',
    on: 'con el contacto dado',
    crank: 'durante el arranque',
    running: 'con el motor en marcha',
    ready: 'con el vehículo listo',
    asleep: 'con el vehículo en reposo',
    'switched off': 'con el vehículo apagado',
    'ignition on': 'con el contacto dado',
  },
  endOfDrive: { key: 'quitar la llave', button: 'cerrar el vehículo' },
  seconds: (seconds) => `${seconds} s`,
  minutes: (minutes) => `${minutes} min`,
  number: (value) => (value === 10 ? 'diez' : String(value)),
  voltRange: (least, most) => `${least} a ${most} V`,
  wire: ({ point, colour, stripe }) =>
    colour === null ? `El cable (${point})` : `${capital(colourWords({ colour, stripe }))} (${point})`,
  wireIs: (wire, role, terminal, proof) =>
    `${wire} es ${role}${terminal === null ? '' : ` (borne ${terminal})`}: ${proof}.`,
  signalProof: (readings) => `ni tensión de batería ni nada ${readings}; no lo empalme nunca`,
  fitsNoRole: (wire, readings) =>
    `${wire} no encaja en ninguna de las funciones buscadas${readings === '' ? '' : `: ${readings}`}.`,
  nothingRuledOut: (wire) => `${wire} no está demostrado; nada de lo leído descarta ninguna función.`,
  readsLike: (wire, role) => `${wire} no está demostrado todavía; hasta ahora se lee como ${role}.`,
  couldBe: (wire, roles, orNowhere) =>
    `${wire} no está demostrado; aún podría ser ${roles}${orNowhere ? ', o no llevar a ninguna parte' : ''}.`,
  shows: {
    dead: 'sin tensión',
    live: 'tensión de batería',
    low: 'menos que la tensión de batería',
    odd: 'ni tensión de batería ni nada',
  },
  lamps: { on: ', las luces encendidas', off: ' y las luces apagadas' },
  isolatorOpen: ' y el desconectador abierto',
  blackOnLive: ' contra un cable con tensión',
  after: (volts, wait) => `${volts} tras ${wait}`,
  loaded: (volts) => `${volts} con carga`,
  dropAt: (volts, milliamps, where) => `${volts} de caída con ${milliamps} mA ${where}`,
  againstLive: (volts, where) => `${volts} contra un cable con tensión ${where}`,
  wants: {
    again: 'Busque otro cable.',
    toProve: (role) => `(para demostrar que es ${role})`,
    wouldRemain: (expected, possible) => `(quedarían unas ${expected} de ${possible} funciones posibles)`,
    reversed: (point, where, count) =>
      `Lea ${point} ${where} con la punta negra en un permanente conocido: una masa muestra la tensión con signo menos ${count}.`,
    read: ({ point, where, lamps, loaded, wait, count }) =>
      `Lea ${point} ${where}, con la punta negra en el chasis${lamps ? ', las luces encendidas' : ''}${loaded ? ', con una lámpara de prueba o el aparato conectado' : ''}${wait === null ? '' : `, ${wait.minutes} minutos después de ${wait.from}${wait.isolatorClosed ? ', con el desconectador cerrado' : ''}`} ${count}.`,
  },
  next: {
    ruledOut: (verdict, found, lead) =>
      `Las lecturas descartan «${verdict}».${found === null ? '' : ` Las lecturas dicen ${found}.`} Léalo otra vez en cada posición de la llave; si se mantienen, ${lead === null ? 'corrija el veredicto' : `una el cable de ${lead} a otro`}.`,
    record: (role) => `Anote el veredicto: ${role}.`,
    notProven: (verdict) => `El veredicto «${verdict}» no está demostrado todavía.`,
  },
  test: {
    reads: (level, where) => `marca ${level === 'supply' ? 'la tensión de batería' : 'nada'} ${where}`,
    'ground against a live wire, or a small drop':
      'muestra la tensión con signo menos contra un permanente conocido, o una caída pequeña con carga',
    'no ground': 'no es masa según la lectura contra un cable con tensión o según su caída con carga',
    'has a starter': 'el vehículo tiene motor de arranque',
    'goes dead without delay': 'queda sin tensión al acabar el viaje, sin demora',
    'holds under load': 'mantiene su tensión con carga',
    'follows the lamps': 'sigue a las luces: nada con ellas apagadas, tensión con ellas encendidas',
    'odd or wandering': 'marca una fracción rara de la tensión, u oscila, con el vehículo despierto',
  },
  trap: {
    delayedPower: ({ point, volts, wait, from }) =>
      `${point} marca todavía ${volts} ${wait} después de ${from} y cae más tarde: tensión demorada, no es el borne 15.`,
    retainedPower: ({ point, volts, wait, from, minutes }) =>
      `${point} marca ${volts} ${wait === null ? `después de ${from}, sin anotar la espera` : `${wait} después de ${from}`}: la tensión puede mantenerse minutos, así que espere ${minutes} y lea otra vez.`,
    readsLow: ({ point, volts, where, supply, running }) =>
      `${point} marca ${volts} ${where}, donde ${supply === null ? 'una alimentación marcaría más' : `la alimentación marca ${supply}`}: una línea de accesorios, un circuito cargado o un mal contacto. Mejor un cable con toda la tensión.${running ? ' La carga inteligente también la mueve: lea los dos en el mismo momento.' : ''}`,
    dropsInCrank: (point) =>
      `${point} cae a nada durante el arranque: no es una alimentación de encendido en el sentido del borne 15.`,
    signalOnly: ({ point, unloaded, loaded, where }) =>
      `${point} cae de ${unloaded} a ${loaded} con carga ${where}: lleva una señal, o lo alimenta un mal contacto. No es alimentación.`,
    ghostVolts: (point, volts) =>
      `${point} muestra ${volts ?? 'una tensión rara'} que nada alimenta: un cable al aire con un medidor de alta impedancia, o una línea que nunca duerme. No prueba nada; no lo empalme nunca.`,
    averageOfASignal: ({ point, volts, where, twisted }) =>
      `${point} marca ${volts} ${where}, ni alimentación ni nada: ${twisted ? 'uno de un par trenzado, una línea de datos' : 'la media de una línea de datos o de una salida por impulsos, o un cable al aire'}. No lo empalme nunca.`,
    twistedPair: (point) =>
      `${point} es uno de un par trenzado: una línea de datos, marque lo que marque. No lo empalme nunca.`,
    halfTheSupply: (point, volts) =>
      `${point} marca ${volts}, la mitad de la alimentación de 24 V: la toma entre dos baterías, o la salida de un convertidor. Unido a ella, un aparato descarga una batería.`,
    isolatorSide: {
      'dead with it open': (point, volts) =>
        `${point} queda sin tensión con el desconectador abierto (${volts}): está en el lado desconectado, y un aparato en él duerme con el vehículo.`,
      'dead proves nothing': (point) =>
        `${point} está en el lado que corta el desconectador: que no tenga tensión sin la llave no prueba nada hasta que conste que estaba cerrado.`,
      'goes dead with it': (point) =>
        `${point} tiene tensión sin la llave, en el lado que corta el desconectador: la pierde cuando se abre.`,
      'read it open': (point) =>
        `${point} tiene tensión sin la llave, y el vehículo tiene desconectador: léalo con él abierto para saber su lado.`,
    },
    overVoltage: (point, volts, where) =>
      `${hereOr(point)} marca ${volts} ${where}: sobretensión, mire primero el regulador.`,
    systemDiffers: (found, recorded) =>
      `Las lecturas muestran un sistema de ${found} V, el registro dice ${recorded} V.`,
    unsteady: (point, where) =>
      point === null
        ? `La alimentación oscilaba ${where}: una punta suelta o una mala conexión de la batería.`
        : `${point} oscilaba ${where}: una señal o una punta suelta.`,
    disagree: (point, volts, where) =>
      point === null
        ? `La alimentación se leyó como ${volts} ${where}: una de ellas está mal, y nada puede compararse con ella.`
        : `${point} se leyó como ${volts} ${where}: una de ellas está mal, lea otra vez.`,
    throughALoad: {
      'read it on': (point, where, on) =>
        `${point} muestra la tensión contra un cable con tensión ${where}; lo mismo hace entonces toda alimentación cortada, a través de lo que alimenta. Léalo ${on}.`,
      'read its drop': (point) =>
        `${point} muestra la tensión contra un cable con tensión, como una masa; también lo haría una lámpara o una bobina a masa. Lea su caída mientras el aparato consume.`,
    },
    wrongReference: {
      negative: ({ point, volts, where }) =>
        `${point} marca ${volts} ${where}: la punta negra estaba en algo con tensión, o las puntas estaban cambiadas.`,
      'above the supply': ({ point, volts, where }) =>
        `${point} marca ${volts} ${where}, más que la alimentación: una de las dos está mal.`,
      'not live': ({ point, volts }) =>
        `${point} marca ${volts} contra un cable con tensión: quizá las puntas estén cambiadas, o la referencia no tenía tensión.`,
      'not proven constant': ({ point, other }) =>
        `${point} se leyó contra ${other ?? 'otro cable'}, que no está demostrado como permanente: una referencia sin tensión no prueba nada.`,
      'both ways': ({ point }) =>
        `${point} muestra la tensión contra masa y también contra un cable con tensión: una de las dos referencias era errónea.`,
    },
    noBattery: {
      'reads nothing': (volts, where) =>
        `La batería marca ${volts} ${where}: las puntas no están en sus bornes, el medidor está en alterna, o se fundió un fusible de su cable. De ahí no se deduce nada; lea la batería otra vez.`,
      'too high at rest': (volts, where) =>
        `La batería marca ${volts} ${where}: ninguna batería reposa tan alta. Tiene un cargador puesto, o la pila del medidor está baja. De ahí no se deduce nada; lea otra vez.`,
      'leads swapped': (volts, where) =>
        `La batería marca ${volts} ${where}: las puntas del medidor están cambiadas. De ahí no se deduce nada; lea todo otra vez.`,
    },
    leak: (point, volts, where) =>
      `${point} marca ${volts} ${where}, donde no debería marcar nada: tanto puede mostrar una fuga en un medidor que no consume corriente. Léalo allí otra vez con una lámpara de prueba o el aparato conectado.`,
    fortyEightVolts: (point, volts) =>
      `${point} marca ${volts}: una línea de 48 V. No la toque: no la empalme nunca, y déjela a quien esté habilitado.`,
    supplyNotMeasured:
      'La alimentación misma no se midió: los niveles solo se pueden juzgar por su orden de magnitud. Léala en la batería en cada posición de la llave.',
    falls: ({ point, volts, where, holding }) =>
      `De ${point} se dijo permanente pero marca ${volts} ${where}, donde ${holding} mantiene la alimentación.`,
    samePin: ({ point, other, connector, pin, roles }) =>
      `${point} y ${other} son el mismo pin (${connector ?? 'conector sin nombrar'}, ${pin}) y no pueden ser ${roles[0]} y ${roles[1]} a la vez.`,
    constant: ({ point, wanders, lost, amperes, switched }) =>
      `${point} ${wanders ? 'oscila' : 'es estable'}, pierde hasta ${lost}, ${amperes === null ? 'su fusible no se conoce' : `tiene fusible de ${amperes} A`}${switched ? ', en el lado que corta el desconectador' : ''}`,
    constants: (count, said, best) => `${count} permanentes: ${said}. ${best} es la mejor toma.`,
  },
};
