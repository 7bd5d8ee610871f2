import { imeiDigits } from '../../../rules/record/imei-is-plausible.ts';
import type { recordRules } from '../../../rules/record/record-rules.ts';
import { vinCharacters } from '../../../rules/record/vin-is-plausible.ts';
import type { RuleWordsOf } from '../../../rules/rule-words.ts';

type Says<Id extends keyof RuleWordsOf<typeof recordRules>> = RuleWordsOf<typeof recordRules>[Id]['says'];
type RecordPart = Parameters<Says<'record-is-complete'>['not recorded yet']>[0]['part'];
type Section = Parameters<Says<'no-fact-is-left-open'>['left open']>[0];

const parts: Readonly<Record<RecordPart, string>> = {
  payer: 'quién paga',
  customer: 'el cliente',
  visit: 'la clase de visita',
  vehicle: 'el vehículo',
  labour: 'las horas',
  'condition before': 'el estado de antes',
  'condition after': 'el estado de después',
  device: 'el aparato',
  'supply readings': 'las lecturas de la batería',
  'probe points': 'los puntos de medida',
  connections: 'las uniones',
  placement: 'el lugar del aparato',
  harness: 'el mazo',
  'supply lead': 'el cable de alimentación',
  'ignition lead': 'el cable de encendido',
  'ground lead': 'el cable de masa',
  'reason of the wasted visit': 'el motivo de la visita en vano',
};
const sections: Readonly<Record<Section['at'], string>> = {
  supply: 'del cable de alimentación',
  ignition: 'del cable de encendido',
  ground: 'del cable de masa',
  'ground point': 'del punto de masa',
  harness: 'del mazo',
  device: 'del aparato',
};
const facts: Readonly<Record<Section['facts'][number], string>> = {
  'how it was stripped': 'cómo se peló',
  'whether it is tied': 'si está atado',
  'whether its fuse is taped and tied': 'si su fusible está encintado y atado',
  'whether it stands on bare metal': 'si está sobre metal limpio',
  'whether it is shakeproof': 'si resiste las sacudidas',
  'whether it is loomed': 'si va en tubo',
  'its slack': 'su holgura',
  'whether a head or knee may strike it': 'si puede golpearlo una cabeza o una rodilla',
  'whether tools reach it': 'si se llega con herramientas',
  'whether a hand reaches it': 'si se llega con la mano',
  'what is above its antenna': 'qué hay encima de su antena',
};
const faults: Readonly<Record<Parameters<Says<'iccid-is-plausible'>['cannot be right']>[0]['fault'], string>> = {
  'not 18 to 20 digits': 'no tiene de 18 a 20 cifras',
  'does not begin with 89': 'no empieza por 89',
  'check digit wrong': 'su cifra de control no cuadra',
};
const takeOne = (job: string) => `Tómela y póngala en photos/${job}/.`;
const compare = 'Compare placa, papeles y registro, y corrija el que esté mal.';
const readPlate = 'Léalo otra vez en la placa.';

/** What the rules of the record say, in Spanish. */
export const recordRulesEs: RuleWordsOf<typeof recordRules> = {
  'device-not-in-another-vehicle': {
    summary: () => 'El aparato no consta ya en otro vehículo.',
    why: 'Dos vehículos con el mismo número de aparato no se distinguen después; uno de los dos registros está mal.',
    says: {
      'in another vehicle': ({ number, day, job }, voice) => ({
        what: `El aparato ${number} constaba en otro vehículo el ${voice.day(day)} (trabajo ${job}).`,
        whatToDo: 'Lea otra vez la etiqueta; si el aparato se cambió de vehículo, escríbalo como motivo.',
      }),
    },
  },
  'devices-are-named': {
    summary: () => 'El aparato montado y el retirado se conocen cada uno por su número.',
    why: 'Un aparato sin número no se encuentra, no se devuelve ni se distingue del siguiente.',
    says: {
      'fitted one not named': () => ({
        what: 'No constan ni el número de serie ni el IMEI del aparato montado.',
        whatToDo: 'Léalo en la etiqueta antes de cerrar el panel.',
      }),
      'removed one not named': () => ({
        what: 'No consta el número de serie del aparato retirado.',
        whatToDo: 'Léalo en la etiqueta del aparato que tiene en la mano.',
      }),
      'both the same': ({ serial }) => ({
        what: `El aparato retirado y el montado tienen el mismo número de serie, ${serial}.`,
        whatToDo: 'Lea otra vez las dos etiquetas.',
      }),
    },
  },
  'iccid-is-plausible': {
    summary: () => 'El número de la tarjeta (ICCID) empieza por 89 y tiene su cifra de control.',
    why: 'Una tarjeta con un número equivocado ni se activa ni se vuelve a encontrar.',
    says: {
      'cannot be right': ({ iccid, fault }) => ({
        what: `El número de tarjeta ${iccid} no puede ser correcto: ${faults[fault]}.`,
        whatToDo: 'Léalo otra vez en la tarjeta o en su soporte.',
      }),
    },
  },
  'imei-is-plausible': {
    summary: () => `El IMEI tiene ${imeiDigits} cifras y su cifra de control.`,
    why: 'Un aparato con un número equivocado no se vuelve a encontrar.',
    says: {
      'not right': ({ imei, digits }) => ({
        what: `El IMEI ${imei} no son ${digits} cifras con la última correcta.`,
        whatToDo: 'Léalo otra vez en la etiqueta.',
      }),
    },
  },
  'no-fact-is-left-open': {
    summary: () => 'Está anotado aquello en que se apoyan las reglas: uniones, masa, mazo y lugar.',
    why: 'Una regla no encuentra nada malo en lo que nunca se miró; la hoja diría más de lo que se vio.',
    says: {
      'left open': (section) => ({
        what: `No consta ${sections[section.at]}: ${section.facts.map((fact) => facts[fact]).join(', ')}.`,
        whatToDo: 'Mírelo y anote lo que ve.',
      }),
    },
  },
  'odometer-not-below-earlier': {
    summary: () => 'El odómetro no marca menos que en una visita anterior.',
    why: 'Una de las dos visitas se archivó con otro vehículo, o se cambió el instrumento.',
    says: {
      'below earlier': (odometer, voice) => ({
        what: `El odómetro marca ${odometer.now} ${odometer.unit}; el ${voice.day(odometer.day)} marcaba ${odometer.earlier} ${odometer.unitEarlier}.`,
        whatToDo: 'Léalo otra vez y compare el número de bastidor.',
      }),
    },
  },
  'photographs-are-present': {
    summary: () => 'Existe cada fotografía que el registro nombra.',
    why: 'La hoja hablaría de una imagen que nadie puede ver.',
    says: {
      'not in the folder': ({ file, job }) => ({
        what: `La fotografía ${file} no está en la carpeta del trabajo.`,
        whatToDo: `Póngala en photos/${job}/ o quítela del registro.`,
      }),
    },
  },
  'photographs-asked-for-are-present': {
    summary: () => 'Se tomó cada fotografía que pide quien paga.',
    why: 'Una factura sin las fotografías acordadas vuelve, semanas después.',
    says: {
      'not taken': ({ payer, shows, job }) => ({
        what: `${payer} pide una fotografía de: ${shows}.`,
        whatToDo: `Tómela, póngala en photos/${job}/ y anote qué muestra; o escriba por qué no la hay.`,
      }),
    },
  },
  'photographs-where-a-rule-asks': {
    summary: () =>
      'Lo que puede discutirse después está en una fotografía: un aparato en el parabrisas, hilos dañados, un taladro.',
    why: 'Una imagen tomada ese día acaba la discusión que las palabras solo alargan.',
    says: {
      'none of the device on the windscreen': ({ id }) => ({
        what: 'No hay fotografía del aparato, aunque está en el parabrisas, donde su lugar se mide según la ley.',
        whatToDo: takeOne(id),
      }),
      'none of the damaged strands': ({ id }) => ({
        what: 'No hay fotografía de la unión, aunque se dañaron hilos.',
        whatToDo: takeOne(id),
      }),
      'none of the drilled hole': ({ id }) => ({
        what: 'No hay fotografía de la masa, aunque se taladró el vehículo.',
        whatToDo: takeOne(id),
      }),
    },
  },
  'purchase-order-where-the-payer-needs-one': {
    summary: () => 'Consta la orden de compra cuando quien paga la pide.',
    why: 'Una factura sin su número de pedido vuelve.',
    says: {
      'none recorded': ({ name }) => ({
        what: `${name} solo paga contra orden de compra, y no consta ninguna.`,
        whatToDo: 'Pida el número y anótelo.',
      }),
    },
  },
  'record-is-complete': {
    summary: () => 'El registro tiene lo que piden la hoja y la factura.',
    why: 'Una hoja con huecos no protege a nadie.',
    says: {
      'not recorded yet': ({ part }) => ({
        what: `Todavía no consta: ${parts[part]}.`,
        whatToDo: 'Siga con `keyout fit` o añádalo al archivo del trabajo.',
      }),
    },
  },
  'signature-or-reason': {
    summary: () => 'La hoja está firmada o el registro dice por qué no.',
    why: 'Una hoja sin firmar prueba poco cuando más tarde aparece un fallo.',
    says: {
      void: () => ({
        what: 'El registro cambió después de la firma: la firma no vale.',
        whatToDo: 'Muestre otra vez la hoja y haga que la firmen de nuevo.',
      }),
      'nobody signed': () => ({
        what: 'Nadie ha firmado y no consta el motivo.',
        whatToDo: 'Haga firmar la hoja o anote por qué nadie pudo firmar.',
      }),
    },
  },
  'times-are-possible': {
    summary: () => 'Las horas de la visita son posibles.',
    why: 'Una factura por horas imposibles no se paga.',
    says: {
      'ends before it begins': ({ start, end }) => ({
        what: `El trabajo termina (${end}) antes de empezar (${start}).`,
        whatToDo: 'Corrija las horas; una visita que pasa de medianoche termina al día siguiente.',
      }),
      'more waiting than visit': ({ idle, visit }) => ({
        what: `Espera y pausas suman ${idle} minutos de una visita de ${visit}.`,
        whatToDo: 'Corrija las horas: la espera está entre el principio y el final.',
      }),
      'very long': ({ hours, minutes }) => ({
        what: `La visita dura ${hours} horas y ${minutes} minutos.`,
        whatToDo: 'Mire otra vez las fechas de principio y final.',
      }),
      'another day': ({ begins, day }, voice) => ({
        what: `El trabajo empieza el ${voice.day(begins)} y es del ${voice.day(day)}.`,
        whatToDo: 'Corrija la hora o registre el trabajo en su día.',
      }),
      'signed before it began': ({ signed, start }) => ({
        what: `La hoja se firmó (${signed}) antes de empezar el trabajo (${start}).`,
        whatToDo: 'Corrija las horas o haga firmar la hoja otra vez.',
      }),
    },
  },
  'vin-is-plausible': {
    summary: () =>
      `El número de bastidor tiene sus ${vinCharacters} caracteres y, en Norteamérica, su cifra de control.`,
    why: 'Un número de bastidor equivocado archiva la hoja con otro vehículo.',
    says: {
      length: ({ vin, length }) => ({
        what: `El número de bastidor ${vin} tiene ${length} letras y cifras; debe tener ${vinCharacters}.`,
        whatToDo: `${readPlate} Las máquinas, los remolques y los vehículos anteriores a 1981 pueden llevar un número más corto.`,
      }),
      character: ({ vin, character, position, meant }) => ({
        what: `El número de bastidor ${vin} tiene «${character}» en la posición ${position}; ninguno lleva I, O, Q ni nada que no sea letra o cifra.`,
        whatToDo: meant === null ? readPlate : `Léalo otra vez en la placa: puede ser un ${meant}.`,
      }),
      'check digit': ({ vin, expected, found }) => ({
        what: `La cifra de control del número de bastidor ${vin} debería ser ${expected} y es ${found}.`,
        whatToDo: readPlate,
      }),
      'check digit, not required': ({ vin, expected, found }) => ({
        what: `La cifra de control del número de bastidor ${vin} debería ser ${expected} y es ${found}.`,
        whatToDo: 'Fuera de Norteamérica no se exige esa cifra: compare una vez más.',
      }),
    },
  },
  'vin-year-agrees': {
    summary: () => 'El año anotado es el año de modelo que dice un número de bastidor norteamericano, o el de al lado.',
    why: 'Un año que no encaja significa un número mal escrito o un vehículo distinto del que está en el patio.',
    says: {
      'no model year': ({ vin, character }) => ({
        what: `La posición 10 del número de bastidor ${vin} es «${character}», que no corresponde a ningún año de modelo.`,
        whatToDo: compare,
      }),
      'another model year': ({ vin, years, year }, voice) => ({
        what: `El número de bastidor ${vin} dice año de modelo ${voice.or(years.map(String))}; consta ${year}.`,
        whatToDo: compare,
      }),
    },
  },
};
