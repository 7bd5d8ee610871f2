import type { Sentences } from '../sentences.ts';
import { colourWords } from './evidence-words-es.ts';

// "y" becomes "e" before the sound of i, "o" becomes "u" before the sound of o
const joined = (words: readonly string[], last: 'y' | 'o') => {
  if (words.length < 2) return words.join('');
  const end = words.at(-1) ?? '';
  const sound = last === 'y' ? (/^h?i(?!e)/i.test(end) ? 'e' : 'y') : /^h?o/i.test(end) ? 'u' : 'o';
  return `${words.slice(0, -1).join(', ')} ${sound} ${end}`;
};
const many = (count: string, thing: string) => `${count} ${thing}${count === '1' ? '' : 's'}`;
const and = (words: readonly string[]) => joined(words, 'y');
const capital = (text: string) => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
const leadWords = { supply: 'la alimentación', ignition: 'el encendido', ground: 'la masa' };
const answers = { accepts: 'acepta', 'accepts with remark': 'acepta con observación', refuses: 'rechaza' };

/** Every sentence of the documents, in Spanish. */
export const sentencesEs: Sentences = {
  and,
  or: (words) => joined(words, 'o'),
  vehicle: ({ year, maker, model, plant }) => {
    const name = [maker, model].filter((word) => word !== '').join(' ');
    const kind = plant ? 'máquina' : 'vehículo';
    return `${name === '' ? kind : name}${year === '' ? '' : ` (${year})`}`;
  },
  nothingDone: (vehicle) => `No se hizo nada en: ${vehicle}.`,
  nothingDoneUnknown: 'No consta por qué no se pudo hacer el trabajo.',
  done: (visit, { device, vehicle, removedSerial }) => {
    const serial = removedSerial === null ? '' : ` con número de serie ${removedSerial}`;
    switch (visit) {
      case 'new fit':
        return device === null
          ? `Se trabajó en: ${vehicle}; no consta qué aparato se montó.`
          : `Se montó el aparato «${device}» en: ${vehicle}.`;
      case 'swap':
        return device === null
          ? `Se cambió el aparato${serial} en: ${vehicle}; el nuevo no consta.`
          : `Se montó el aparato «${device}» en lugar del que había${serial} en: ${vehicle}.`;
      case 'removal':
        return `Se desmontó el aparato${device === null ? '' : ` «${device}»`}${serial} de: ${vehicle}.`;
      case 'service call':
        return `Visita de servicio a: ${vehicle}${device === null ? '' : ` y su aparato «${device}»`}.`;
      default:
        return `No consta qué clase de visita fue a: ${vehicle}.`;
    }
  },
  sits: ({ zone, surface, fixing, points }) =>
    `Está ${zone} (${surface}), ${fixing === null ? 'no está fijado' : `fijado con ${fixing}${points === null ? '' : ` en ${many(points, 'punto')}`}`}.`,
  joined: (leads) =>
    `Uniones: ${and(
      leads.map(({ lead, wire, place }) =>
        wire === null
          ? `${leadWords[lead]}${place === '' ? ' (no consta a qué)' : ` en ${place}`}`
          : `${leadWords[lead]} al cable ${colourWords(wire)}`,
      ),
    )}.`,
  allProven: 'Las lecturas del multímetro prueban cada uno de estos cables.',
  notProven: (leads) => `Sin demostrar con lecturas: el cable de ${and(leads)}.`,
  fuses: (fuses) =>
    `${fuses.length === 1 ? 'Fusible' : 'Fusibles'}: ${fuses
      .map(({ amperes, lead, distance }) => `${amperes} A en el cable de ${lead}, a ${distance} de la unión`)
      .join('; ')}.`,
  works: (lamp) => `Se vio funcionar el aparato${lamp === null ? '' : `; su testigo mostraba: ${lamp}`}.`,
  worksNot: 'No se vio funcionar el aparato.',
  worksUnknown: 'No consta si el aparato funciona.',
  afterClean: 'Tras el trabajo no consta ningún testigo encendido ni función averiada.',
  freshLamps: (lamps) => `Encendido tras el trabajo y no antes: ${and(lamps)}.`,
  oldLamps: (lamps) => `Encendido antes y después del trabajo: ${and(lamps)}.`,
  freshFaults: (functions) => `No funciona tras el trabajo y no constaba antes: ${and(functions)}.`,
  oldFaults: (functions) => `No funciona antes ni después del trabajo: ${and(functions)}.`,
  colour: colourWords,
  noColour: 'color sin anotar',
  pin: (pin) => `pin\u00a0${pin}`,
  terminal: (number) => `borne ${number}`,
  fromJoint: (distance) => `a ${distance} de la unión`,
  amperes: (amperes) => `fusible ${amperes}\u00a0A`,
  fuseAt: (amperes, distance) => `${amperes}\u00a0A a ${distance}`,
  figureLead: ({ lead, wire, place, terminal, joint, fuse }) =>
    `Cable de ${lead}: ${[wire, place, terminal === '' ? '' : `borne ${terminal}`, joint, fuse === '' ? 'sin fusible' : `fusible ${fuse}`].filter((word) => word !== '').join(', ')}.`,
  planAlternative: (zone) => `Plano del vehículo visto desde arriba, delante es arriba. La marca: ${zone}.`,
  fixed: (fixing, points) => (points === null ? fixing : `${fixing}, ${many(points, 'punto')}`),
  fastener: ({ name, fastener, out, back }) =>
    `${capital(name)}: ${out} × ${fastener} fuera, ${back === null ? 'no consta cuántos se pusieron' : `${back} puestos de nuevo`}.`,
  system: (volts, drive) => (drive === null ? `${volts} V` : `${volts} V, ${drive}`),
  verdictStands: (role) => `El instalador lo tomó por: ${role}.`,
  keyOutWait: (minutes) => `Primera columna leída ${many(minutes, 'minuto')} o más después de quitar la llave.`,
  atCurrent: (drop, milliamps) => `${drop} a ${milliamps} mA`,
  alsoRead: (readings) => `También se leyó: ${readings}.`,
  superseded: (readings) => `Sustituida: ${readings}.`,
  loadedAt: (volts, milliamps) => `${volts} a ${milliamps} mA`,
  electrics: {
    lowest: 'Tensión más baja en el aparato, calculada',
    lowestValue: (volts, where) => `${volts} V ${where}`,
    window: 'Tensión que pide el aparato',
    windowValue: (from, to) => `de ${from} a ${to} V`,
    drop: 'Caída en sus cables, calculada',
    groundDrop: 'Caída de la masa, medida',
    fuseMax: 'Fusible mayor que admite el cable',
    standing: 'Parado hasta que la batería baja a la mitad',
    standingValue: (days, milliamps, assumed) =>
      `${many(days, 'día')}${milliamps === null ? '' : `; vehículo y aparato consumen ${milliamps} mA en reposo`}${assumed ? ', el consumo propio del vehículo es supuesto' : ''}`,
  },
  rulesLine: {
    'all hold': 'Ninguna de las reglas del oficio encontró nada que objetar en este trabajo.',
    'some found something':
      'Las demás reglas del oficio no encontraron nada que objetar en este trabajo; lo que hallaron algunas consta arriba.',
  },
  rulesSources: (sources) =>
    `Fuentes publicadas: ${sources}; el resto es práctica común del oficio. El instalador puede imprimir cada regla con su fuente.`,
  signed: (answer, name, at) =>
    `El cliente ${answers[answer]}${name === null ? '' : `: ${name}`}${at === null ? '' : `, ${at}`}.`,
  notSigned: (because) => `Sin firmar: ${because}.`,
  notes: {
    'leave it alone': 'No quite, cubra ni mueva el aparato; avise a la oficina de la flota si se suelta o hace ruido.',
    'warning lamp stays on':
      'Si el testigo del airbag u otro de aviso queda encendido, deje de usar el vehículo y hágalo revisar.',
    'same fuse':
      'Cambie un fusible fundido solo por otro del mismo valor; si se funde de nuevo, haga seguir antes el cable.',
    'before work on the wiring':
      'Antes de trabajar en el cableado: freno de mano puesto, ruedas calzadas, motor parado, llave fuera; el negativo de la batería se quita primero y se pone el último.',
    'restraint wiring':
      'Nunca pinche, corte ni derive los cables con funda amarilla del sistema de retención ni los pares de datos.',
    'high voltage':
      'Nunca pinche, corte ni mueva el cable naranja de alta tensión; solo puede trabajar en él personal formado.',
    'live with the isolator off':
      'La alimentación se toma del lado de la batería del desconectador: el aparato sigue con tensión cuando está abierto.',
    '24 volts': 'Este sistema es de 24 V: lámparas, comprobadores y cargadores de 12 V no deben conectarse aquí.',
    exhaust: 'Haga funcionar el motor solo al aire libre o con los gases de escape conducidos fuera.',
  },
  attention: (name) => `A la atención de: ${name}`,
  taxIdentifier: (text) => `Identificación fiscal ${text}`,
  exemption: (text) => `Certificado de exención ${text}`,
  range: (from, to) => `del ${from} al ${to}`,
  ofDate: (number, date) => `${number} del ${date}`,
  taxLine: (name, percent, base) => `${name}, ${percent} de ${base}`,
  untaxedLine: (name, base) => `${name} (${base})`,
  early: (until, amount, percent) => `Pagando hasta el ${until}: ${amount} (${percent} menos).`,
  linesFor: (vehicle) => `Conceptos de ${vehicle}`,
  withTax: (amount) => `${amount} con impuesto`,
  perMany: (price, quantity) => `${price} por ${quantity}`,
  dueOn: (date) => `Vence el ${date}`,
  creditExplained: (invoice) =>
    `Este documento rectifica la factura ${invoice}. Con este documento no hay nada que pagar.`,
  cover: {
    handoverSubject: (vehicle, job) => `Hoja de entrega ${job}: ${vehicle}`,
    handoverAttached: (day) => `Adjunta va la hoja de entrega del ${day}. Guárdela con los papeles del vehículo.`,
    invoiceSubject: (number) => `Factura ${number}`,
    invoiceAttached: (number, amount, due) => `Adjunta va la factura ${number}: ${amount}, vence el ${due}.`,
    creditSubject: (number) => `Factura rectificativa ${number}`,
    creditAttached: (number, amount, invoice) =>
      `Adjunta va la factura rectificativa ${number}: ${amount} abonados a la factura ${invoice}.`,
    reference: (reference) => `Indique esta referencia con el pago: ${reference}`,
    order: (order) => `Su orden de compra: ${order}`,
    greeting: (name) => (name === null ? 'Buenos días:' : `Buenos días, ${name}:`),
    regards: 'Un saludo',
  },
};
