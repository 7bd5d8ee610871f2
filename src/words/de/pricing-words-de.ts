import type { PricingWords } from '../../pricing/pricing-words.ts';

/** What lines of an invoice say in German. */
export const pricingWordsDe: PricingWords = {
  visits: {
    'new fit': 'Neueinbau',
    swap: 'Tausch',
    removal: 'Ausbau',
    'service call': 'Servicebesuch',
    'wasted visit': 'vergebliche Anfahrt',
  },
  job: 'Auftrag',
  classes: {
    car: 'Pkw',
    van: 'Transporter',
    'light truck': 'leichter Lkw',
    'heavy truck': 'schwerer Lkw',
    bus: 'Bus',
    trailer: 'Anhänger',
    plant: 'Baumaschine',
  },
  flatRate: (where) => `Pauschale${where === '' ? '' : ` (${where})`}`,
  included: (time) => `${time} enthalten`,
  fromVehicle: (index) => `Preis ab dem ${index}. Fahrzeug des Tages`,
  labour: 'Arbeitszeit',
  labourBeyond: 'Arbeitszeit über die Pauschale hinaus',
  worked: (time) => `${time} gearbeitet`,
  workedLess: (time, included, beyond) => `${time} gearbeitet abzüglich ${included} enthalten = ${beyond}`,
  rounded: (step, rounding) =>
    rounding === 'up' ? `aufgerundet auf ${step} min` : `gerundet auf die nächsten ${step} min`,
  atLeast: (time) => `mindestens ${time} je Besuch`,
  waiting: 'Wartezeit',
  waited: (time, why, free) => `${time} gewartet${why === '' ? '' : ` (${why})`} abzüglich ${free} frei`,
  fitted: 'nach vereinbarter Preisliste eingebaut',
  callOut: 'Anfahrtspauschale',
  callOutFor: (visit) => `für ${visit}`,
  wastedVisit: 'Vergebliche Anfahrt',
  notWorkedOn: 'am Fahrzeug konnte nicht gearbeitet werden',
  plate: (plate) => `Kennzeichen ${plate}`,
  unitNumber: (unit) => `Wagen ${unit}`,
  listPrice: 'Listenpreis',
  atCost: 'zum Einkaufspreis',
  costPlus: (percent) => `Einkaufspreis plus ${percent} % Aufschlag`,
  off: (percent, because) => `${percent} % Nachlass: ${because}`,
  offJob: (percent, job, because) => `${percent} % Nachlass auf ${job}: ${because}`,
  asAgreed: 'wie vereinbart',
  outside: (start, end) => `außerhalb von ${start} bis ${end}`,
  onWeekend: 'am Wochenende',
  onHoliday: (name) => `am Feiertag${name === '' ? '' : ` (${name})`}`,
  wholeVisit: 'der ganze Besuch',
  timeOf: (part, all) => `${part} von ${all}`,
  surcharge: (share, occasion, percent, base, whole) =>
    `${share} ${occasion}: ${percent} % ${whole ? '' : 'dieses Anteils '}von ${base}`,
  travelDistance: 'Fahrt, Strecke',
  travelTime: 'Fahrt, Zeit',
  tollsAndParking: 'Maut und Parken',
  distance: (unit, driven, free, charged, price, sum) =>
    `${driven} ${unit}${free === '0' ? '' : ` abzüglich ${free} frei = ${charged} ${unit}`} zu ${price} = ${sum}`,
  onTheRoad: (time, charged, price, sum) =>
    `${time} unterwegs${charged === time ? '' : `, berechnet ${charged}`}, zu ${price} je Stunde = ${sum}`,
  tolls: (sum) => `${sum} zum Selbstkostenpreis`,
  shared: (by, vehicles, share) => {
    const how = { equally: 'zu gleichen Teilen', time: 'nach Zeit', distance: 'nach Strecke' }[by];
    return `, ${how} auf ${vehicles} Fahrzeuge verteilt${share === '' ? '' : ` (${share})`}`;
  },
  creditOf: (line, invoice, inPart) => `${inPart ? 'Teil von ' : ''}Position ${line} von ${invoice}`,
  taxReasons: {
    AE: 'Steuerschuldnerschaft des Leistungsempfängers',
    K: 'Innergemeinschaftliche Lieferung',
    G: 'Ausfuhr aus der EU',
    O: 'Nicht steuerbar',
  },
  noTax: 'Keine Steuer',
  exempt: 'Von der Verkaufssteuer befreit',
  certificate: (number) => `Befreiungsbescheinigung ${number}`,
};
