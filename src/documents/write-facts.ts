import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { Book } from '../records/book.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Vehicle } from '../records/vehicle.ts';

/** A date in words of the locale ("November 24, 2026"), whatever the machine's own zone. */
export function writeDate(date: string, locale: string): string {
  const moment = new Date(Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)) - 1, Number(date.slice(8, 10))));
  return new Intl.DateTimeFormat(locale, { timeZone: 'UTC', year: 'numeric', month: 'long', day: 'numeric' }).format(
    moment,
  );
}

/** A length in the book's unit, from millimetres ("90 mm", "3.5 in"). */
export function writeLength(millimetres: number, book: Pick<Book, 'units'>): string {
  if (book.units.length === 'mm') return `${millimetres}\u00a0mm`;
  return `${String(Math.round(millimetres / 2.54) / 10)}\u00a0in`;
}

/** Volts from a record's number. */
export function volts(value: number): string {
  return writeVolts(millivoltsFromVolts(value)).replace('-', '−');
}

/** A whole number with its thousands separated as the locale does. */
export function writeWhole(value: number, locale: string): string {
  return new Intl.NumberFormat(locale, { maximumFractionDigits: 0 }).format(value);
}

/** A vehicle as a person says it. */
export function vehicleInWords(vehicle: Vehicle): string {
  const name = [vehicle.year, vehicle.maker, vehicle.model].filter((word) => word !== undefined).join(' ');
  return name === '' ? 'vehicle' : name;
}

/** A wire's colour in words ("red with white stripe"). */
export function wireColour(point: ProbePoint | undefined): string {
  if (point?.colour === undefined) return 'wire';
  return point.stripe === undefined ? point.colour : `${point.colour} with ${point.stripe} stripe`;
}

/** Where a wire was met ("ignition switch, 6-way, pin 4"). */
export function wirePlace(point: ProbePoint | undefined): string {
  return [point?.connector, point?.pin === undefined ? undefined : `pin ${point.pin}`]
    .filter((word) => word !== undefined)
    .join(', ');
}
