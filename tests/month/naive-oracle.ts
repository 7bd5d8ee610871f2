import { Decimal } from 'decimal.js';
import type { JobInput } from '../../src/records/job.ts';
import type { Month, MonthPayer, MonthTrip } from './make-month.ts';

// A second calculation of the month that shares no code with the program: the agreed prices and rules are written out
// here once more, in plain steps and in decimal.js. Amounts are whole cents.

export type NaiveLine = { readonly job: string; readonly kind: string; readonly net: number; readonly code: string };
export type NaiveTax = { readonly code: string; readonly base: number; readonly tax: number };
export type NaiveDocument = {
  readonly payer: string;
  readonly lines: readonly NaiveLine[];
  /** taken off the whole document, by tax code */
  readonly off: ReadonlyMap<string, number>;
  readonly taxes: readonly NaiveTax[];
  readonly net: number;
  readonly tax: number;
  readonly gross: number;
  readonly rounding: number;
  readonly deposit: number;
};

Decimal.set({ precision: 60 });

/** Half away from zero, to whole cents. */
const round = (value: Decimal): number => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
export const total = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Largest remainder, ties to the first. */
function share(amount: number, weights: readonly number[]): number[] {
  const counted = total(weights) === 0 ? weights.map(() => 1) : weights;
  const exact = counted.map((weight) => new Decimal(amount).times(weight).div(total(counted)));
  const shares = exact.map((each) => each.floor().toNumber());
  while (total(shares) < amount) {
    let best = -1;
    for (const [place, each] of exact.entries()) {
      const rest = each.minus(shares[place] ?? 0);
      if (rest.lt(1) && (best < 0 || rest.gt(exact[best]?.minus(shares[best] ?? 0) ?? 0))) best = place;
    }
    shares[best] = (shares[best] ?? 0) + 1;
  }
  return shares;
}

const minuteOf = (time: string): number => Number(time.slice(11, 13)) * 60 + Number(time.slice(14, 16));
const isWeekend = (day: string): boolean => [0, 6].includes(new Date(`${day}T12:00:00Z`).getUTCDay());

function spanOf(job: JobInput) {
  const { start = '', end = '' } = job.labour ?? {};
  return { from: minuteOf(start), to: minuteOf(end), day: start.slice(0, 10) };
}

function workedMinutes(job: JobInput): number {
  const { from, to } = spanOf(job);
  return Math.max(0, to - from - (job.labour?.breakMinutes ?? 0) - (job.labour?.waitingMinutes ?? 0));
}

function hourlyOf(job: JobInput, payer: MonthPayer) {
  if (payer.hourlyMinorUnits !== null) return { price: payer.hourlyMinorUnits, step: 15, up: true, least: 0 };
  return job.day >= '2026-11-16'
    ? { price: 9135, step: 6, up: false, least: 0 }
    : { price: 8800, step: 15, up: true, least: 30 };
}

function stepped(minutes: number, step: number, up: boolean): number {
  const steps = new Decimal(minutes).div(step);
  return (up ? steps.ceil() : steps.plus('0.5').floor()).times(step).toNumber();
}

function flatOf(job: JobInput): { name: string; price: number; included: number } | null {
  const visit = job.identity?.visit;
  if (visit === 'new fit')
    return job.vehicle?.class === 'heavy truck'
      ? { name: 'heavy', price: 16_500, included: 105 }
      : { name: 'new', price: 14_500, included: 90 };
  if (visit === 'swap') return { name: 'swap', price: 9500, included: 60 };
  return visit === 'removal' ? { name: 'removal', price: 6500, included: 45 } : null;
}

function labourMinutes(job: JobInput, payer: MonthPayer, included: number): number[] {
  const { step, up, least } = hourlyOf(job, payer);
  const extras = (job.labour?.hourlyExtras ?? []).map((each) => each.minutes);
  const beyond = Math.max(0, workedMinutes(job) - total(extras)) - included;
  const charged = [...(beyond > 0 ? [beyond] : []), ...extras].map((minutes) => stepped(minutes, step, up));
  const kept = charged.filter((minutes) => minutes > 0 || least > 0);
  const missing = least - total(kept);
  return kept.map((minutes, place) => (place === 0 && missing > 0 ? minutes + missing : minutes));
}

function workAmounts(month: Month, job: JobInput, payer: MonthPayer): { kind: string; amount: number }[] {
  if (job.identity?.visit === 'wasted visit') return [];
  const flat = flatOf(job);
  const fitted = total((job.labour?.extras ?? []).map((each) => each.quantity ?? 1)) * 10;
  const labour = labourMinutes(job, payer, flat === null ? 0 : flat.included + fitted)
    .map((minutes) => ({
      kind: 'labour',
      amount: round(new Decimal(minutes).times(hourlyOf(job, payer).price).div(60)),
    }))
    .filter((each) => each.amount > 0);
  if (flat === null) return labour;
  const alike = month.jobs.filter(
    (each) =>
      each.day === job.day && each.identity?.payer === payer.id && flatOf(each)?.name === flat.name && each.id < job.id,
  );
  const price = flat.name === 'new' && alike.length >= 2 ? 13_555 : flat.price;
  return [{ kind: 'flat rate', amount: price }, ...labour];
}

function surcharges(job: JobInput, base: number): { kind: string; amount: number }[] {
  const { from, to, day } = spanOf(job);
  let weekend = 0;
  let late = 0;
  for (let minute = from; minute < to; minute += 1) {
    if (isWeekend(day)) weekend += 1;
    else if (minute < 7 * 60 || minute >= 18 * 60) late += 1;
  }
  const amount = (percent: number, minutes: number) =>
    round(
      new Decimal(base)
        .times(percent)
        .times(minutes)
        .div(100)
        .div(to - from),
    );
  return [amount(75, weekend), amount(50, late)]
    .filter((each) => each !== 0)
    .map((each) => ({ kind: 'surcharge', amount: each }));
}

function partAmounts(job: JobInput, payer: MonthPayer): number[] {
  return (job.parts ?? []).map((part) => {
    const price =
      part.part === 'loom-kit' ? new Decimal(695) : new Decimal(part.unitCostMinorUnits ?? 0).times('1.125');
    const amount = round(price.times(part.quantity));
    return amount - round(new Decimal(amount).times(payer.partsDiscountPercent).div(100));
  });
}

function travelAmounts(month: Month, job: JobInput): { kind: string; amount: number }[] {
  const trip = month.trips.find((each) => each.day === job.trip);
  if (trip === undefined) return [];
  const place = trip.jobs.findIndex((each) => each.job === job.id);
  const part = (amount: number) => share(amount, weightsOf(month, trip))[place] ?? 0;
  return [
    { kind: 'travel distance', amount: part(tripDistance(trip)) },
    { kind: 'travel time', amount: part(tripTime(trip)) },
    { kind: 'tolls and parking', amount: part(trip.tollsMinorUnits + trip.parkingMinorUnits) },
  ].filter((each) => each.amount !== 0);
}

export const tripDistance = (trip: MonthTrip): number =>
  round(Decimal.max(0, new Decimal(trip.distance).minus(20)).times('72.5'));
export const tripTime = (trip: MonthTrip): number =>
  round(new Decimal(stepped(trip.travelMinutes, 15, false)).times(4000).div(60));

function weightsOf(month: Month, trip: MonthTrip): number[] {
  return trip.jobs.map((each) => {
    if (trip.shareBy === 'equally') return 1;
    if (trip.shareBy === 'distance') return Number(each.distance);
    const job = month.jobs.find((one) => one.id === each.job);
    return job === undefined ? 0 : workedMinutes(job);
  });
}

function payerOf(month: Month, job: JobInput): MonthPayer {
  const payer = month.payers.find((each) => each.id === job.identity?.payer);
  if (payer === undefined) throw new Error(`no payer of ${job.id}`);
  return payer;
}

/** Every amount of a job, by kind of line. */
export function naiveLines(month: Month, job: JobInput): NaiveLine[] {
  const payer = payerOf(month, job);
  const work = workAmounts(month, job, payer);
  const waited = job.labour?.waitingMinutes ?? 0;
  const waiting = waited > 15 ? round(new Decimal(stepped(waited - 15, 15, true)).times(6000).div(60)) : 0;
  const amounts = [
    ...(job.identity?.visit === 'wasted visit' ? [{ kind: 'wasted visit', amount: 7500 }] : work),
    ...surcharges(job, total(work.map((each) => each.amount))),
    ...(job.labour?.extras ?? []).map((each) => ({ kind: 'extra', amount: 3333 * (each.quantity ?? 1) })),
    ...(job.identity?.visit === 'service call' ? [{ kind: 'call-out', amount: 4500 }] : []),
    ...(waiting === 0 ? [] : [{ kind: 'waiting', amount: waiting }]),
    ...partAmounts(job, payer).map((amount) => ({ kind: 'parts', amount })),
    ...travelAmounts(month, job),
  ];
  return amounts.map(({ kind, amount }) => ({
    job: job.id,
    kind,
    net: amount,
    code: payer.taxCode ?? month.codeOf[kind] ?? month.codeOf.default ?? '',
  }));
}

function byCode(lines: readonly NaiveLine[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const line of lines) sums.set(line.code, (sums.get(line.code) ?? 0) + line.net);
  return sums;
}

function takeOff(bases: ReadonlyMap<string, number>, percent: string, off: Map<string, number>): void {
  const amount = round(new Decimal(total([...bases.values()])).times(percent).div(100));
  const shares = share(amount, [...bases.values()]);
  for (const [place, code] of [...bases.keys()].entries()) off.set(code, (off.get(code) ?? 0) + (shares[place] ?? 0));
}

function rateOf(month: Month, payer: MonthPayer, code: string): string {
  return payer.certificate ? '0' : (month.codes.find((each) => each.id === code)?.ratePercent ?? '0');
}

/** Lines and what is taken off them, made a document of. */
export function naiveDocument(
  month: Month,
  payer: MonthPayer,
  lines: readonly NaiveLine[],
  off: ReadonlyMap<string, number>,
  deposit: number,
  rounding = 0,
): NaiveDocument {
  const taxes = [...byCode(lines)].map(([code, sum]) => {
    const base = sum - (off.get(code) ?? 0);
    return { code, base, tax: round(new Decimal(base).times(rateOf(month, payer, code)).div(100)) };
  });
  const net = total(taxes.map((each) => each.base));
  const tax = total(taxes.map((each) => each.tax));
  return { payer: payer.id, lines, off, taxes, net, tax, gross: net + tax, rounding, deposit };
}

/** The invoice for some jobs of one payer. */
export function naiveInvoice(month: Month, jobs: readonly JobInput[]): NaiveDocument {
  const [first] = jobs;
  if (first === undefined) throw new Error('no job');
  const payer = payerOf(month, first);
  const lines = jobs.flatMap((job) => naiveLines(month, job));
  const off = new Map<string, number>();
  for (const job of jobs)
    if (job.discountPercent !== undefined)
      takeOff(byCode(lines.filter((line) => line.job === job.id)), job.discountPercent, off);
  if (payer.documentDiscountPercent !== '0') {
    const left = byCode(lines);
    for (const [code, amount] of off) left.set(code, (left.get(code) ?? 0) - amount);
    takeOff(left, payer.documentDiscountPercent, off);
  }
  return naiveDocument(month, payer, lines, off, total(jobs.map((job) => job.depositMinorUnits ?? 0)));
}

/**
 * A credit note over some amounts of an invoice's lines (place in its list, amount), the first of that invoice:
 * what was taken off the document follows the lines of its tax code.
 */
export function naiveCredit(month: Month, invoice: NaiveDocument, amounts: ReadonlyMap<number, number>): NaiveDocument {
  const payer = month.payers.find((each) => each.id === invoice.payer);
  if (payer === undefined) throw new Error('no payer');
  const lines = [...amounts].map(([place, net]) => ({ ...(invoice.lines[place] as NaiveLine), net }));
  const whole =
    lines.length === invoice.lines.length &&
    total(lines.map((each) => each.net)) === total(invoice.lines.map((each) => each.net));
  if (whole) return naiveDocument(month, payer, invoice.lines, invoice.off, 0);
  const all = byCode(invoice.lines);
  const credited = byCode(lines);
  const off = new Map(
    [...invoice.off].map(([code, amount]) => [
      code,
      (all.get(code) ?? 0) === 0
        ? 0
        : round(new Decimal(amount).times(credited.get(code) ?? 0).div(all.get(code) ?? 1)),
    ]),
  );
  return naiveDocument(month, payer, lines, off, 0);
}

/** The credit note that takes back all that an earlier one, over some amounts, left: together they take off what was charged. */
export function naiveRest(
  month: Month,
  invoice: NaiveDocument,
  earlier: NaiveDocument,
  amounts: ReadonlyMap<number, number>,
): NaiveDocument {
  const payer = month.payers.find((each) => each.id === invoice.payer);
  if (payer === undefined) throw new Error('no payer');
  const lines = invoice.lines
    .map((line, place) => ({ ...line, net: line.net - (amounts.get(place) ?? 0) }))
    .filter((line) => line.net !== 0);
  const off = new Map([...invoice.off].map(([code, amount]) => [code, amount - (earlier.off.get(code) ?? 0)]));
  const plain = naiveDocument(month, payer, lines, off, 0);
  const rounding = invoice.gross - earlier.gross - earlier.rounding - plain.gross;
  return { ...plain, rounding };
}
