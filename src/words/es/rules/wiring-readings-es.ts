import { loadTestMillivolts } from '../../../electrics/battery-state.ts';
import { continuousDropMillivoltsMax } from '../../../electrics/lead-drop.ts';
import { keptPowerSinceYear, keyOutWaitSeconds } from '../../../evidence/surroundings.ts';
import type { RuleWordsOf, Voice } from '../../../rules/rule-words.ts';
import { loadedFallMillivoltsMax } from '../../../rules/wiring/voltage-drop-is-small.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';

type Wiring = RuleWordsOf<typeof wiringRules>;
type Seen = Parameters<Wiring['charging-volts-are-normal']['says']['not charging']>[0];

const whenEs = { before: 'Antes del trabajo', after: 'Después del trabajo' };
const seen = ({ when, millivolts, engine }: Seen, voice: Voice) =>
  `${whenEs[when]} la batería marca ${voice.volts(millivolts)} con ${engine ? 'el motor en marcha' : 'el vehículo listo'}`;
const betterFeed =
  'Use una alimentación mejor, un cable más corto o más grueso, o un convertidor; haga probar la batería si ella misma está baja.';
const readPosts =
  'Lea otra vez en los bornes de la batería; si se mantiene, haga revisar primero el regulador y su cable de medida.';
const lookForIt =
  'Busque una unión corroída o un cable delgado en el camino desde la batería, o elija una alimentación mejor.';

const proven: Wiring['constant-is-proven']['says'] = {
  'no wire named': ({ lead }, voice) => ({
    what: `El cable de ${voice.lead(lead)} del aparato no nombra ningún cable que se haya medido.`,
    whatToDo: 'Anote el punto de medida al que está unido, con sus lecturas.',
  }),
  'not proven': ({ lead, point, wire, wants }, voice) => ({
    what: `El cable de ${voice.lead(lead)} del aparato está unido a ${point}, que no está demostrado: ${voice.wire(wire)}`,
    whatToDo: voice.wanted(wants),
  }),
};

/** What the rules of wiring say of readings and proof, in Spanish. */
export const wiringReadingsEs = {
  'battery-rests-charged': {
    summary: (voice) =>
      `La batería reposa a ${voice.voltLimit(loadTestMillivolts)} (${voice.voltLimit(2 * loadTestMillivolts)}) o más, antes y después del trabajo.`,
    why: 'Una batería floja cae más al arrancar y aguanta menos días; la hoja debe decir que se encontró así.',
    says: {
      'rests low': ({ when, millivolts, percent, least }, voice) => ({
        what: `${whenEs[when]} la batería reposa a ${voice.volts(millivolts)}, cargada al ${percent} % más o menos; una sana tiene al menos ${voice.volts(least)}.`,
        whatToDo: 'Cárguela y hágala probar con carga; avise al cliente.',
      }),
    },
  },
  'charging-volts-are-normal': {
    summary: () => 'Con el motor en marcha (o listo) la batería se carga, antes y después del trabajo.',
    why: 'Un vehículo que no carga se para en pocas horas, y se pregunta a quien trabajó en él el último.',
    says: {
      'not charging': (battery, voice) => ({
        what: `${seen(battery, voice)}: no se está cargando.`,
        whatToDo: 'Lea otra vez en los bornes y avise al cliente; si ya era así antes, escríbalo.',
      }),
      'no longer charging': (battery, voice) => ({
        what: `${seen(battery, voice)}: no se está cargando, y antes sí.`,
        whatToDo: 'Busque un enchufe, un fusible o una masa sin poner, y lea otra vez.',
      }),
      low: (battery, voice) => ({
        what: `${seen(battery, voice)}, menos que lo usual (${voice.voltRange(battery.least, battery.most)}).`,
        whatToDo: 'Una carga inteligente puede bajarla: lea otra vez con luces y ventilador encendidos.',
      }),
      high: (battery, voice) => ({
        what: `${seen(battery, voice)}, más que lo usual (${voice.voltRange(battery.least, battery.most)}).`,
        whatToDo: 'Una batería fría puede subirla: lea otra vez en caliente y avise al cliente si se mantiene.',
      }),
    },
  },
  'constant-is-proven': {
    summary: () => 'El cable unido a la alimentación está demostrado como positivo permanente (30).',
    why: 'Una alimentación que se corta con la llave deja el aparato muerto con el vehículo parado, y un cable equivocado devuelve corriente al vehículo.',
    says: proven,
  },
  'ground-is-proven': {
    summary: () => 'El cable unido a la masa está demostrado como masa (31).',
    why: 'Sin masa propia el aparato busca el retorno por sus otros cables: vive, pero comunica disparates.',
    says: proven,
  },
  'ignition-is-proven': {
    summary: () => 'El cable unido al encendido está demostrado como encendido (15).',
    why: 'En el cable equivocado el aparato pierde viajes, o nunca duerme y descarga la batería.',
    says: proven,
  },
  'ignition-holds-through-crank': {
    summary: () =>
      'El cable de encendido se mantiene durante el arranque por encima de lo que el aparato toma por encendido.',
    why: 'Un cable que cae al arrancar (borne 75 o X) corta un viaje en cada arranque, y algunos aparatos se reinician.',
    says: {
      'not read': ({ point }) => ({
        what: `${point} no se leyó durante el arranque.`,
        whatToDo: `Lea ${point} mientras gira el motor de arranque, con el medidor guardando el valor mínimo; nadie cerca de partes móviles.`,
      }),
      falls: ({ point, least, needed }, voice) => ({
        what: `${point} cae a ${voice.volts(least)} durante el arranque; el aparato toma menos de ${voice.volts(needed)} por apagado.`,
        whatToDo: 'Una el cable a otro que se mantenga (borne 15 en la cerradura de contacto).',
      }),
      'battery falls too': ({ point, least, needed, battery }, voice) => ({
        what: `${point} cae a ${voice.volts(least)} durante el arranque; el aparato toma menos de ${voice.volts(needed)} por apagado, y la propia batería cae a ${voice.volts(battery)}.`,
        whatToDo: 'Ningún cable mantiene más que la batería: hágala probar y lea otra vez.',
      }),
    },
  },
  'isolator-side-is-recorded': {
    summary: () => 'En un vehículo con desconectador de batería consta de qué lado se tomó la alimentación.',
    why: 'En el lado desconectado el aparato muere con el desconectador; en el de la batería descarga una batería que todos creen apagada.',
    says: {
      'switched side': ({ point }) => ({
        what: `${point} está en el lado que corta el desconectador: el aparato se apaga siempre que está abierto.`,
        whatToDo:
          'Avise al cliente, o tome la alimentación del lado de la batería, con su fusible junto a la derivación.',
      }),
      'not recorded': () => ({
        what: 'El vehículo tiene desconectador de batería y no consta de qué lado se tomó la alimentación.',
        whatToDo: 'Abra el desconectador y lea otra vez el cable: con tensión es el lado de la batería. Anote el lado.',
      }),
    },
  },
  'ground-drops-agree': {
    summary: () => 'La caída del punto de masa y la lectura del cable de masa con carga dicen lo mismo.',
    why: 'Son los mismos voltios leídos dos veces: si difieren, uno está mal y la masa puede ser mala.',
    says: {
      differ: (drops, voice) => ({
        what: `El punto de masa figura con una caída de ${voice.volts(drops.recorded)}; ${drops.point} se leyó con carga con ${voice.volts(drops.read)}.`,
        whatToDo: 'Lea la caída otra vez con el aparato funcionando y corrija la que esté mal.',
      }),
    },
  },
  'readings-can-all-be-right': {
    summary: () => 'Ninguna lectura de un mismo lugar contradice a otra, y las de la batería son las de una batería.',
    why: 'Si dos lecturas no pueden ser ciertas las dos, de ninguna se deduce nada, y un cable comparado con una lectura errónea de la batería puede ser cualquier cosa.',
    says: {
      'two differ': (readings, voice) => ({
        what: voice.trap(readings.trap),
        whatToDo: 'Conserve la lectura correcta y quite la otra del registro.',
      }),
      'no battery': (readings, voice) => ({
        what: voice.trap(readings.trap),
        whatToDo:
          'Lea la batería otra vez en sus propios bornes, en tensión continua, con el rojo al positivo, y corrija el registro.',
      }),
      'hands off': (readings, voice) => ({
        what: voice.trap(readings.trap),
        whatToDo:
          'Quite de él todos los cables y busque otro; primero valen las instrucciones del fabricante y la práctica habilitada.',
      }),
    },
  },
  'key-out-wait-is-long-enough': {
    summary: (voice) =>
      `Una lectura sin llave al nivel de la batería se tomó al menos ${voice.number(keyOutWaitSeconds.long / 60)} minutos después de quitarla, ${voice.number(keyOutWaitSeconds.short / 60)} en un vehículo con llave anterior a ${keptPowerSinceYear}.`,
    why: 'La tensión retenida mantiene vivos durante minutos los cables de accesorios y de encendido: tras una espera corta, un cable unido puede ser cualquier cosa. Si una lectura posterior del mismo cable lo demuestra, la espera corta no daña; en un cable al que nada está unido es un consejo.',
    says: {
      'too short': ({ trap, button, minutes }, voice) => ({
        what: voice.trap(trap),
        whatToDo: button
          ? `Cierre el vehículo, déjelo dormir con la llave lejos, espere ${voice.number(minutes)} minutos, lea otra vez y anote la espera.`
          : `Quite la llave, espere ${voice.number(minutes)} minutos, lea otra vez y anote la espera.`,
      }),
    },
  },
  'loaded-reading-taken': {
    summary: () => 'La alimentación se leyó de nuevo con carga después de conectar.',
    why: 'Un cable corroído marca toda la tensión hasta que lleva corriente.',
    says: {
      'not read loaded': () => ({
        what: 'El cable de alimentación no se leyó después de conectar mientras alimentaba el aparato.',
        whatToDo: 'Léalo otra vez con el aparato despierto y anótelo como lectura con carga.',
      }),
    },
  },
  'no-over-voltage': {
    summary: () => 'Ninguna lectura pasa de lo que da un sistema de carga sano.',
    why: 'La sobretensión hierve la batería y envejece todos los aparatos del vehículo, también el nuevo.',
    says: {
      'too high': ({ when, most, limit }, voice) => ({
        what: `${whenEs[when]} una lectura marca ${voice.volts(most)}, por encima de ${voice.volts(limit)}.`,
        whatToDo: readPosts,
      }),
      'came with the work': ({ most, limit }, voice) => ({
        what: `Después del trabajo una lectura marca ${voice.volts(most)}, por encima de ${voice.volts(limit)}; antes del trabajo ninguna.`,
        whatToDo: readPosts,
      }),
    },
  },
  'supply-within-device-window': {
    summary: () => 'La tensión en el aparato se mantiene dentro de lo que pide, también durante el arranque.',
    why: 'Fuera de su margen un aparato se reinicia, pierde datos o falla.',
    says: {
      'too low': ({ millivolts, key, least }, voice) => ({
        what: `Al aparato le llegan ${voice.volts(millivolts)} (${voice.key(key)}); necesita al menos ${voice.volts(least)}.`,
        whatToDo: betterFeed,
      }),
      'too low in crank': ({ millivolts, least }, voice) => ({
        what: `Al aparato le llegan ${voice.volts(millivolts)} durante el arranque; necesita entonces al menos ${voice.volts(least)}.`,
        whatToDo: betterFeed,
      }),
      'too high': ({ millivolts, key, most }, voice) => ({
        what: `Al aparato le llegan ${voice.volts(millivolts)} (${voice.key(key)}); soporta como mucho ${voice.volts(most)}.`,
        whatToDo: 'Desconéctelo enseguida; monte un aparato para este sistema, o un convertidor.',
      }),
      'battery falls too low': ({ millivolts, least }, voice) => ({
        what: `La batería cae a ${voice.volts(millivolts)} durante el arranque; el aparato necesita al menos ${voice.volts(least)}, y ningún cable lleva más que la batería.`,
        whatToDo: 'Haga probar la batería y lea otra vez, o monte un aparato que lo aguante.',
      }),
      'crank not read': ({ least, point }, voice) => ({
        what: `El aparato necesita ${voice.volts(least)} durante el arranque, y su cable de alimentación no se leyó entonces.`,
        whatToDo: `Lea ${point ?? 'el cable de alimentación'} mientras gira el motor de arranque, con el medidor guardando el valor mínimo (una pantalla corriente pierde la primera caída).`,
      }),
    },
  },
  'system-volts-agree': {
    summary: () => 'Las lecturas muestran el sistema nominal que nombra el registro.',
    why: 'Un aparato de 12 V en 24 V se destruye; un registro equivocado confunde al instalador siguiente.',
    says: {
      differs: ({ trap }, voice) => ({
        what: voice.trap(trap),
        whatToDo: 'Mida otra vez en los bornes de la batería y corrija el registro.',
      }),
    },
  },
  'verdict-matches-readings': {
    summary: () => 'Ninguna lectura contradice lo que se dijo de un cable.',
    why: 'Un veredicto que el medidor contradice es una conexión equivocada que encontrará el conductor.',
    says: {
      contradicted: ({ verdict, evidence }, voice) => ({
        what: `De ${evidence.point} se dijo «${voice.role(verdict)}», y las lecturas lo descartan. ${voice.wire(evidence)}`,
        whatToDo: 'Léalo otra vez en cada posición de la llave; si las lecturas se mantienen, busque otro cable.',
      }),
    },
  },
  'voltage-drop-is-small': {
    summary: (voice) =>
      `La alimentación pierde poco hasta el aparato: ${voice.voltLimit(continuousDropMillivoltsMax[12])} en 12 V, ${voice.voltLimit(continuousDropMillivoltsMax[24])} en 24 V, ${voice.voltLimit(loadedFallMillivoltsMax)} cuando el aparato empieza a consumir.`,
    why: 'Lo que se pierde en uniones y cables delgados es allí calor, y en el aparato tensión que falta, sobre todo al arrancar.',
    says: {
      'leads lose too much': ({ lost, milliamps, celsius, most, metres }, voice) => ({
        what: `El cable de alimentación y el retorno pierden ${lost} mV con ${milliamps} mA y ${celsius} °C; como mucho ${most} mV.`,
        whatToDo: `Acorte los cables (de esta sección pueden medir ${voice.decimal(metres)} m por tramo) o use uno más grueso.`,
      }),
      'falls under load': ({ point, lost, key, most }, voice) => ({
        what: `${point} cae ${lost} mV (${voice.key(key)}) cuando alimenta el aparato; como mucho ${most} mV.`,
        whatToDo: lookForIt,
      }),
      'below the battery': ({ point, millivolts, lost, key, most }, voice) => ({
        what: `${point} marca ${voice.volts(millivolts)} (${voice.key(key)}), ${lost} mV menos que la batería; como mucho ${most} mV.`,
        whatToDo: lookForIt,
      }),
    },
  },
  'wires-do-not-contradict-each-other': {
    summary: () => 'Ningún par de cables del trabajo dice lo que no puede ser cierto a la vez.',
    why: 'Un pin no puede ser dos cosas, y un permanente no cae donde otro se mantiene: una de las lecturas o uno de los nombres está mal, y una hoja basada en ello engaña.',
    says: {
      contradict: ({ trap }, voice) => ({
        what: voice.trap(trap),
        whatToDo:
          'Lea otra vez los dos en la misma posición de la llave y corrija el nombre, el pin o el veredicto del que esté mal.',
      }),
    },
  },
} satisfies Partial<Wiring>;
