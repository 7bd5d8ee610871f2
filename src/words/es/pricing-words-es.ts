import type { PricingWords } from '../../pricing/pricing-words.ts';

/** What lines of an invoice say in Spanish. */
export const pricingWordsEs: PricingWords = {
  visits: {
    'new fit': 'montaje nuevo',
    swap: 'cambio',
    removal: 'desmontaje',
    'service call': 'servicio',
    'wasted visit': 'visita en vano',
  },
  job: 'trabajo',
  classes: {
    car: 'turismo',
    van: 'furgoneta',
    'light truck': 'camión ligero',
    'heavy truck': 'camión pesado',
    bus: 'autobús',
    trailer: 'remolque',
    plant: 'maquinaria',
  },
  flatRate: (where) => `precio fijo${where === '' ? '' : ` para ${where}`}`,
  included: (time) => `${time} incluidos`,
  fromVehicle: (index) => `precio desde el vehículo ${index} del día`,
  labour: 'Mano de obra',
  labourBeyond: 'Mano de obra fuera del precio fijo',
  worked: (time) => `${time} de trabajo`,
  workedLess: (time, included, beyond) => `${time} de trabajo menos ${included} incluidos = ${beyond}`,
  rounded: (step, rounding) =>
    rounding === 'up' ? `redondeado hacia arriba a ${step} min` : `redondeado a los ${step} min más próximos`,
  atLeast: (time) => `mínimo ${time} por visita`,
  waiting: 'Espera',
  waited: (time, why, free) => `${time} de espera${why === '' ? '' : ` (${why})`} menos ${free} sin cargo`,
  fitted: 'montado según la tarifa acordada',
  callOut: 'Salida',
  callOutFor: (visit) => `por ${visit}`,
  wastedVisit: 'Visita en vano',
  notWorkedOn: 'no se pudo trabajar en el vehículo',
  plate: (plate) => `matrícula ${plate}`,
  unitNumber: (unit) => `unidad ${unit}`,
  listPrice: 'precio de la tarifa',
  atCost: 'al coste',
  costPlus: (percent) => `coste más un ${percent} % de recargo`,
  off: (percent, because) => `${percent} % de descuento: ${because}`,
  offJob: (percent, job, because) => `${percent} % de descuento en ${job}: ${because}`,
  asAgreed: 'según lo acordado',
  outside: (start, end) => `fuera del horario de ${start} a ${end}`,
  onWeekend: 'en fin de semana',
  onHoliday: (name) => `en festivo${name === '' ? '' : ` (${name})`}`,
  wholeVisit: 'toda la visita',
  timeOf: (part, all) => `${part} de ${all}`,
  surcharge: (share, occasion, percent, base, whole) =>
    `${share} ${occasion}: ${percent} % de ${whole ? '' : 'esa parte de '}${base}`,
  travelDistance: 'Desplazamiento, distancia',
  travelTime: 'Desplazamiento, tiempo',
  tollsAndParking: 'Peajes y aparcamiento',
  distance: (unit, driven, free, charged, price, sum) =>
    `${driven} ${unit}${free === '0' ? '' : ` menos ${free} sin cargo = ${charged} ${unit}`} a ${price} = ${sum}`,
  onTheRoad: (time, charged, price, sum) =>
    `${time} en carretera${charged === time ? '' : `, cobrado como ${charged}`}, a ${price} por hora = ${sum}`,
  tolls: (sum) => `${sum} al coste`,
  shared: (by, vehicles, share) => {
    const how = { equally: 'a partes iguales', time: 'según el tiempo', distance: 'según la distancia' }[by];
    return `, repartido ${how} entre ${vehicles} vehículos${share === '' ? '' : ` (${share})`}`;
  },
  creditOf: (line, invoice, inPart) => `${inPart ? 'parte de la ' : ''}línea ${line} de ${invoice}`,
  taxReasons: {
    AE: 'Inversión del sujeto pasivo',
    K: 'Entrega intracomunitaria',
    G: 'Exportación fuera de la UE',
    O: 'No sujeto a impuesto',
  },
  noTax: 'Sin impuesto',
  exempt: 'Exento del impuesto sobre ventas',
  certificate: (number) => `Certificado de exención ${number}`,
};
