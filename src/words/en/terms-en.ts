import type { Connection, DeviceLead, SpliceMethod } from '../../records/connection.ts';
import type { InvoiceLine } from '../../records/issued-invoice.ts';
import type { Job } from '../../records/job.ts';
import type { Placement, Zone } from '../../records/placement.ts';
import type { Vehicle } from '../../records/vehicle.ts';
import type { KeyPosition, WireRole } from '../../records/wire-role.ts';

/** What a record may hold, in the words of one language. */
export type Terms = {
  /** the zone as a place name, and as it ends "It sits …" */
  readonly zones: Readonly<Record<Zone, readonly [name: string, inSentence: string]>>;
  readonly visits: Readonly<Record<NonNullable<Job['identity']['visit']>, string>>;
  readonly drives: Readonly<Record<NonNullable<Vehicle['drive']>, string>>;
  readonly leads: Readonly<Record<DeviceLead, string>>;
  readonly methods: Readonly<Record<SpliceMethod, string>>;
  readonly covers: Readonly<Record<NonNullable<Connection['covered']>, string>>;
  readonly fixings: Readonly<Record<Placement['fixing'], string>>;
  readonly roles: Readonly<Record<WireRole, string>>;
  /** heads of columns */
  readonly keys: Readonly<Record<KeyPosition | 'ready' | 'asleep', string>>;
  readonly commonPractice: string;
  readonly shows: Readonly<Record<NonNullable<Job['photographs']>[number]['shows'], string>>;
  readonly units: Readonly<Record<InvoiceLine['unit'] | 'in' | 'mm' | 'h', string>>;
  readonly yes: string;
  readonly no: string;
  readonly noLamp: string;
  readonly noFault: string;
  readonly held: string;
  readonly gaveWay: string;
  readonly notRecorded: string;
  readonly notGiven: string;
};

/** What a record may hold, in English. */
export const termsEn: Terms = {
  zones: {
    'dash left': ['dash, left', 'in the left of the dash'],
    'dash centre': ['dash, centre', 'in the middle of the dash'],
    'dash right': ['dash, right', 'in the right of the dash'],
    'under dash left': ['under the dash, left', 'under the dash on the left'],
    'under dash right': ['under the dash, right', 'under the dash on the right'],
    windscreen: ['windscreen', 'at the windscreen'],
    'centre console': ['centre console', 'in the centre console'],
    overhead: ['overhead', 'overhead, above the windscreen'],
    'A-pillar left': ['A-pillar, left', 'at the left A-pillar'],
    'A-pillar right': ['A-pillar, right', 'at the right A-pillar'],
    'under seat left': ['under the seat, left', 'under the left seat'],
    'under seat right': ['under the seat, right', 'under the right seat'],
    'rear of cab': ['rear of the cab', 'at the rear of the cab'],
    'load area': ['load area', 'in the load area'],
    'engine bay': ['engine bay', 'in the engine bay'],
    'battery box': ['battery box', 'in the battery box'],
    chassis: ['chassis', 'on the chassis'],
    roof: ['roof', 'on the roof'],
    'machine cab': ['machine’s cab', 'in the machine’s cab'],
  },
  visits: {
    'new fit': 'new fit',
    swap: 'swap',
    removal: 'removal',
    'service call': 'service call',
    'wasted visit': 'wasted visit',
  },
  drives: { combustion: 'combustion', hybrid: 'hybrid', electric: 'electric' },
  leads: { supply: 'supply', ignition: 'ignition', ground: 'ground' },
  methods: {
    'wrapped tap': 'wrapped tap',
    'soldered tap': 'soldered tap',
    'crimped butt splice': 'crimped butt splice',
    'sealed crimp splice': 'sealed crimp splice',
    'ring terminal': 'ring terminal',
    'plug-in fuse tap': 'plug-in fuse tap',
    'insulation-displacing tap': 'insulation-displacing tap',
    'connector pin': 'connector pin',
    'twist only': 'twist only',
  },
  covers: {
    tape: 'tape',
    'heat-shrink': 'heat-shrink',
    'sealed sleeve': 'sealed sleeve',
    'closed housing': 'closed housing',
    'not covered': 'not covered',
  },
  fixings: {
    screws: 'screws',
    'cable ties': 'cable ties',
    'adhesive pad': 'an adhesive pad',
    bracket: 'a bracket',
    'hook-and-loop': 'hook-and-loop tape',
    loose: 'loose, not fixed',
  },
  roles: {
    constant: 'constant',
    ignition: 'ignition',
    accessory: 'accessory',
    start: 'start',
    ground: 'ground',
    lighting: 'lighting',
    signal: 'a signal',
    unknown: 'unknown',
  },
  keys: {
    out: 'key out',
    off: 'off',
    accessory: 'accessory',
    on: 'on',
    crank: 'crank',
    running: 'running',
    ready: 'ready',
    asleep: 'asleep',
  },
  shows: {
    vehicle: 'the vehicle',
    plate: 'the plate',
    odometer: 'the odometer',
    'lamps before': 'lamps before the work',
    'lamps after': 'lamps after the work',
    joint: 'a joint',
    fuse: 'the fuse',
    ground: 'the ground point',
    device: 'the device in its place',
    'panels closed': 'panels closed',
    damage: 'damage',
    other: 'photograph',
  },
  units: {
    each: 'each',
    hour: 'h',
    minute: 'min',
    day: 'day',
    mi: 'mi',
    km: 'km',
    metre: 'm',
    foot: 'ft',
    set: 'set',
    visit: 'visit',
    in: 'in',
    mm: 'mm',
    h: 'h',
  },
  commonPractice: 'common practice of the trade',
  yes: 'yes',
  no: 'no',
  noLamp: 'none',
  noFault: 'none',
  held: 'held',
  gaveWay: 'gave way',
  notRecorded: 'not recorded',
  notGiven: 'none given yet',
};
