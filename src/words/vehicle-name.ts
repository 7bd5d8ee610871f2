import type { Vehicle } from '../records/vehicle.ts';

/** A vehicle in a list on the terminal: maker, model, and its plate or else its unit number; empty where none is recorded. */
export const vehicleName = ({ maker, model, plate, unitNumber }: Vehicle): string =>
  [maker, model, plate ?? unitNumber].filter((word) => word !== undefined).join(' ');
