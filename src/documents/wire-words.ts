import type { ProbePoint } from '../records/probe-point.ts';
import type { Vehicle } from '../records/vehicle.ts';
import type { Colour } from '../words/sentences.ts';
import type { Writing } from '../words/writing.ts';

/** A wire's colour, or null where it is not recorded. */
export function colourOf(point: ProbePoint | undefined): Colour | null {
  return point?.colour === undefined ? null : { colour: point.colour, stripe: point.stripe ?? null };
}

/** Where a wire was met ("ignition switch, 6-way, pin 4"). */
export function wirePlace(point: ProbePoint | undefined, { sentences }: Writing): string {
  return [point?.connector, point?.pin === undefined ? undefined : sentences.pin(point.pin)]
    .filter((word) => word !== undefined)
    .join(', ');
}

/** A vehicle as a person says it. */
export function vehicleInWords(vehicle: Vehicle, { sentences }: Writing): string {
  return sentences.vehicle({
    year: vehicle.year === undefined ? '' : String(vehicle.year),
    maker: vehicle.maker ?? '',
    model: vehicle.model ?? '',
    plant: vehicle.class === 'plant',
  });
}
