import { expect, test } from 'vitest';
import { job } from '../../src/records/job.ts';
import type { Language } from '../../src/records/language.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { trip } from '../../src/records/trip.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { priceJob } from './worded.ts';

const book = { ...soundFacts(soundJob).book, timeZone: 'America/Denver' };
const rates = rateCard.parse({
  schema: 'keyout-rates-1',
  flatRates: [{ visit: 'new fit', class: 'heavy truck', priceMinorUnits: 16_500, includedMinutes: 60 }],
  hourly: [{ priceMinorUnits: 8800 }],
  waiting: [{ freeMinutes: 15 }],
  callOut: [{ priceMinorUnits: 4500, visits: ['new fit'] }],
  travel: [{ pricePerDistanceMinorUnits: '72.5', unit: 'mi', freeDistance: '20', timePriceMinorUnits: 4000 }],
  partsMarkUpPercent: '12.5',
  surcharges: [{ name: 'Noche', when: 'out of hours', percent: '50' }],
  lineDiscounts: [{ kind: 'waiting', percent: '10', because: 'cliente fiel' }],
});
const record = job.parse({
  schema: 'keyout-job-1',
  id: '2026-01-05-AAAA',
  day: '2026-01-05',
  identity: { visit: 'new fit' },
  vehicle: { class: 'heavy truck' },
  labour: { start: '2026-01-05T16:30', end: '2026-01-05T18:30', waitingMinutes: 20 },
  parts: [{ what: 'Manguito', quantity: '4', unitCostMinorUnits: 130 }],
});
const other = job.parse({
  ...record,
  id: '2026-01-05-BBBB',
  labour: { start: '2026-01-05T12:00', end: '2026-01-05T12:45' },
});
const day = trip.parse({
  schema: 'keyout-trip-1',
  day: '2026-01-05',
  distance: '118.5',
  unit: 'mi',
  travelMinutes: 130,
  tollsMinorUnits: 725,
  shareBy: 'time',
  jobs: [{ job: record.id }, { job: other.id }],
});
const worded = (language: Language) =>
  priceJob({ job: record, trip: day, tripJobs: [record, other], rates, book, language, orderOnDay: 1 }).map((line) =>
    [line.what, line.because, line.discountBecause].filter((text) => text !== '').join(' | '),
  );

test('every line says in English how its figure came about', () => {
  expect(worded('en')).toEqual([
    'New fit | flat rate for heavy truck; 1 h included',
    'Labour beyond the flat rate | 1 h 40 min worked less 1 h included = 40 min, rounded up to 15 min',
    'Noche | 30 min of 2 h outside 07:00 to 18:00: 50 % of that share of $231.00',
    'Call-out | for a new fit',
    'Waiting | 20 min waited less 15 min free, rounded up to 15 min | 10 % off: cliente fiel',
    'Manguito | cost plus 12.5 % mark-up',
    'Travel, distance | 118.5 mi less 20 free = 98.5 mi at $0.725 = $71.41, shared by time over 2 vehicles (1 h 40 min of 2 h 25 min)',
    'Travel, time | 2 h 10 min on the road, charged as 2 h 15 min, at $40.00 an hour = $90.00, shared by time over 2 vehicles (1 h 40 min of 2 h 25 min)',
    'Tolls and parking | $7.25 at cost, shared by time over 2 vehicles (1 h 40 min of 2 h 25 min)',
  ]);
});

test('and in Spanish for a payer who reads Spanish', () => {
  expect(worded('es')).toEqual([
    'Montaje nuevo | precio fijo para camión pesado; 1 h incluidos',
    'Mano de obra fuera del precio fijo | 1 h 40 min de trabajo menos 1 h incluidos = 40 min, redondeado hacia arriba a 15 min',
    'Noche | 30 min de 2 h fuera del horario de 07:00 a 18:00: 50 % de esa parte de $231.00',
    'Salida | por montaje nuevo',
    'Espera | 20 min de espera menos 15 min sin cargo, redondeado hacia arriba a 15 min | 10 % de descuento: cliente fiel',
    'Manguito | coste más un 12.5 % de recargo',
    'Desplazamiento, distancia | 118.5 mi menos 20 sin cargo = 98.5 mi a $0.725 = $71.41, repartido según el tiempo entre 2 vehículos (1 h 40 min de 2 h 25 min)',
    'Desplazamiento, tiempo | 2 h 10 min en carretera, cobrado como 2 h 15 min, a $40.00 por hora = $90.00, repartido según el tiempo entre 2 vehículos (1 h 40 min de 2 h 25 min)',
    'Peajes y aparcamiento | $7.25 al coste, repartido según el tiempo entre 2 vehículos (1 h 40 min de 2 h 25 min)',
  ]);
});

test('and in German for a payer who reads German', () => {
  expect(worded('de')).toEqual([
    'Neueinbau | Pauschale (schwerer Lkw); 1 h enthalten',
    'Arbeitszeit über die Pauschale hinaus | 1 h 40 min gearbeitet abzüglich 1 h enthalten = 40 min, aufgerundet auf 15 min',
    'Noche | 30 min von 2 h außerhalb von 07:00 bis 18:00: 50 % dieses Anteils von 231,00\u00a0$',
    'Anfahrtspauschale | für Neueinbau',
    'Wartezeit | 20 min gewartet abzüglich 15 min frei, aufgerundet auf 15 min | 10 % Nachlass: cliente fiel',
    'Manguito | Einkaufspreis plus 12,5 % Aufschlag',
    'Fahrt, Strecke | 118,5 mi abzüglich 20 frei = 98,5 mi zu 0,725\u00a0$ = 71,41\u00a0$, nach Zeit auf 2 Fahrzeuge verteilt (1 h 40 min von 2 h 25 min)',
    'Fahrt, Zeit | 2 h 10 min unterwegs, berechnet 2 h 15 min, zu 40,00\u00a0$ je Stunde = 90,00\u00a0$, nach Zeit auf 2 Fahrzeuge verteilt (1 h 40 min von 2 h 25 min)',
    'Maut und Parken | 7,25\u00a0$ zum Selbstkostenpreis, nach Zeit auf 2 Fahrzeuge verteilt (1 h 40 min von 2 h 25 min)',
  ]);
});
