import { identifyWires } from '../evidence/identify-wires.ts';
import { type Job, type JobInput, job } from '../records/job.ts';
import { payer } from '../records/payer.ts';
import { bookIn } from './example-book.ts';
import { exampleProfile } from './example-profile.ts';
import type { JobFacts } from './job-facts.ts';

/** A job in which every rule holds; the examples of the rules are laid over it. Invented, proves nothing. */
export const soundJob: JobInput = {
  schema: 'keyout-job-1',
  id: '2026-11-24-KX4D',
  day: '2026-11-24',
  trip: '2026-11-24',
  identity: {
    payer: 'north-lattice',
    customer: { name: 'Bluestem Parcel', contact: 'Ada Quill' },
    place: 'Bluestem yard, Velmont',
    purchaseOrder: 'PO-20881',
    visit: 'new fit',
    installer: 'Łukasz Tessmer',
  },
  vehicle: {
    vin: '5ZWTA3CD3R1004417',
    plate: 'VLT 4417',
    unitNumber: 'B-17',
    maker: 'Corvane',
    model: 'Haul 150',
    year: 2024,
    class: 'van',
    odometer: { value: 48211, unit: 'mi' },
    systemVolts: 12,
    drive: 'combustion',
    start: 'key',
    batteryAmpereHours: 70,
    asleepMilliamps: 18,
    standingDays: 21,
  },
  before: { warningLamps: [], functionsNotWorking: ['rear dome light'], restVolts: 12.58, chargingVolts: 14.1 },
  panels: [
    {
      name: 'steering column lower shroud',
      fastener: 'cross-head screw',
      tool: 'No. 2 screwdriver',
      out: 3,
      in: 3,
      tightened: 'by hand',
    },
    { name: 'driver knee panel', fastener: 'hex screw 7 mm', tool: '7 mm socket', out: 4, in: 4, tightened: 'by hand' },
  ],
  supply: [
    { key: 'out', volts: 12.58 },
    { key: 'accessory', volts: 12.5 },
    { key: 'on', volts: 12.41 },
    { key: 'crank', volts: 10.4 },
    { key: 'running', volts: 14.1 },
  ],
  probePoints: [
    {
      name: 'P1',
      connector: 'ignition switch, 6-way',
      pin: '1',
      colour: 'red',
      stripe: 'white',
      gauge: { awg: 12 },
      readings: [
        { key: 'out', volts: 12.57, secondsWaited: 720 },
        { key: 'accessory', volts: 12.49 },
        { key: 'on', volts: 12.4 },
        { key: 'crank', volts: 10.37 },
        { key: 'running', volts: 14.08 },
        { key: 'running', volts: 14.05, loaded: true, loadMilliamps: 85, taken: 'after' },
      ],
      verdict: 'constant',
    },
    {
      name: 'P2',
      connector: 'ignition switch, 6-way',
      pin: '4',
      colour: 'pink',
      gauge: { awg: 14 },
      readings: [
        { key: 'out', volts: 0.0, secondsWaited: 720 },
        { key: 'accessory', volts: 0.0 },
        { key: 'on', volts: 12.38 },
        { key: 'crank', volts: 10.33 },
        { key: 'running', volts: 14.06 },
        { key: 'running', volts: 14.03, loaded: true, loadMilliamps: 85, taken: 'after' },
      ],
      verdict: 'ignition',
    },
    {
      name: 'P3',
      connector: 'ignition switch, 6-way',
      pin: '3',
      colour: 'orange',
      stripe: 'black',
      readings: [
        { key: 'out', volts: 0.0, secondsWaited: 720 },
        { key: 'accessory', volts: 12.2 },
        { key: 'on', volts: 12.15 },
        { key: 'crank', volts: 0.0 },
        { key: 'running', volts: 13.78 },
      ],
      verdict: 'accessory',
    },
    {
      name: 'G1',
      connector: 'cowl stud left',
      colour: 'black',
      readings: [
        { key: 'running', volts: -14.07, reference: 'probe point', referencePoint: 'P1' },
        { key: 'running', volts: 0.02, reference: 'battery negative', loaded: true, loadMilliamps: 85, taken: 'after' },
      ],
      verdict: 'ground',
    },
  ],
  connections: [
    {
      lead: 'supply',
      point: 'P1',
      method: 'wrapped tap',
      stripped: 'clean',
      covered: 'tape',
      tapeMillimetres: 28,
      tied: true,
      tugHeld: true,
      nextJointMillimetres: 60,
      fuse: { ratingAmperes: 3, distanceMillimetres: 90, tapedAndTied: true },
    },
    {
      lead: 'ignition',
      point: 'P2',
      method: 'wrapped tap',
      stripped: 'clean',
      covered: 'tape',
      tapeMillimetres: 28,
      tied: true,
      tugHeld: true,
      nextJointMillimetres: 60,
      fuse: { ratingAmperes: 3, distanceMillimetres: 95, tapedAndTied: true },
    },
    {
      lead: 'ground',
      point: 'G1',
      method: 'ring terminal',
      stripped: 'clean',
      covered: 'closed housing',
      tied: true,
      tugHeld: true,
    },
  ],
  ground: {
    kind: 'factory ground stud',
    where: 'cowl, left of the pedal bracket',
    bareMetal: true,
    shakeproof: true,
    dropMillivolts: 20,
    testMilliamps: 85,
  },
  device: {
    profile: 'example-device',
    serial: 'OV3-004417',
    imei: '350001000044176',
    lampSeen: 'green, one blink every three seconds',
    active: true,
  },
  placement: {
    zone: 'dash left',
    surface: 'plastic duct behind the instrument cluster',
    fixing: 'cable ties',
    fixingPoints: 2,
    firm: true,
    orientation: 'label up',
    above: 'plastic',
    airBagMillimetres: 300,
    inAirBagPath: false,
    inHeadStrikeArea: false,
    heatMillimetres: 200,
    expectedCelsiusMax: 55,
    personMillimetres: 450,
    reachableWithTools: true,
    reachableByHand: false,
  },
  harness: {
    loomed: true,
    tied: true,
    tieIntervalMillimetres: 200,
    slack: 'right',
    tiedTo: ['vehicle harness'],
    bendRadiusTimesDiameter: 10,
    lengthMillimetres: 1500,
  },
  after: { warningLamps: [], functionsNotWorking: ['rear dome light'], restVolts: 12.55, chargingVolts: 14.1 },
  photographs: [],
  labour: {
    start: '2026-11-24T07:40',
    end: '2026-11-24T09:00',
    waitingMinutes: 25,
    waitingBecause: 'vehicle was still loading',
    hourlyExtras: [],
    extras: [],
  },
  parts: [
    { what: 'Loom, ties and tape kit', quantity: '1', unit: 'set', part: 'loom-kit' },
    { what: 'In-line fuse holder with fuse', quantity: '2', part: 'fuse-holder' },
  ],
  notes: 'Rear dome light was already out; not part of this job.',
  signature: { answer: 'accepts', name: 'Ada Quill', signedAt: '2026-11-24T09:05' },
};

/** An earlier visit to the same vehicle, with more on the odometer than most examples. */
export const soundEarlier: Job = job.parse({ ...soundJob, id: '2026-01-10-AAAA', day: '2026-01-10', trip: undefined });

/** A payer that wants a purchase order. */
export const soundPayer = payer.parse({
  schema: 'keyout-payer-1',
  id: 'example-payer',
  name: 'Example payer',
  address: { lines: ['1 Example Road'], city: 'Example', country: 'US' },
  needsPurchaseOrder: true,
});

/** The facts of a job laid over the sound one's surroundings. */
export function soundFacts(input: JobInput, changed: Partial<JobFacts> = {}): JobFacts {
  const record = job.parse(input);
  return {
    job: record,
    evidence: identifyWires(record, []),
    book: bookIn('US'),
    profile: exampleProfile,
    payer: null,
    earlier: [],
    sameDevice: [],
    photographFiles: [],
    ...changed,
  };
}
