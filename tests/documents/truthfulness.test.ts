import { describe, expect, test } from 'vitest';
import type { JobInput } from '../../src/records/job.ts';
import { soundJob } from '../../src/rules/sound-job.ts';
import { saidIn, viewOf, without } from './view-of.ts';

const connections = soundJob.connections ?? [];
const device = soundJob.device ?? { profile: 'example-device' };
const vehicle = soundJob.vehicle ?? {};
const identity = soundJob.identity ?? {};

/** What must and must not be said of a record; `said` looks at the whole sheet. */
const cases: readonly {
  readonly record: string;
  readonly change: Partial<JobInput>;
  readonly says?: readonly RegExp[];
  readonly saysNot?: readonly RegExp[];
}[] = [
  {
    record: 'without any fuse',
    change: { connections: connections.map(({ fuse: _fuse, ...made }) => made) },
    says: [/no fuse/],
    saysNot: [/Fuses?: /, /blown fuse/, /from the joint/],
  },
  {
    record: 'whose device is not active',
    change: { device: { ...device, active: false } },
    says: [/The device was not seen working/],
    saysNot: [/was seen working/, /its lamp showed/],
  },
  {
    record: 'that does not tell whether the device works',
    change: { device: { profile: device.profile, serial: 'A-1' } },
    says: [/Whether the device works is not recorded/],
    saysNot: [/was seen working/],
  },
  {
    record: 'of a wasted visit',
    change: { identity: { ...identity, visit: 'wasted visit', wastedBecause: 'The van was on the road.' } },
    says: [/Nothing was done/, /The van was on the road/],
    saysNot: [/fitted/, /It sits/, /trade rules found/, /was seen working/],
  },
  {
    record: 'of a wasted visit without its reason',
    change: { identity: { ...identity, visit: 'wasted visit' } },
    says: [/Why the work could not be done is not recorded/],
  },
  {
    record: 'of a removal',
    change: { identity: { ...identity, visit: 'removal' } },
    says: [/was taken out of/],
    saysNot: [
      /was fitted/,
      /It sits/,
      /Joined: /,
      /Fuses?: /,
      /blown fuse/,
      /was seen working/,
      /cover or move the device/,
    ],
  },
  {
    record: 'of a service call',
    change: { identity: { ...identity, visit: 'service call' } },
    says: [/service call to the/],
    saysNot: [/was fitted/],
  },
  {
    record: 'of a swap',
    change: { identity: { ...identity, visit: 'swap' }, device: { ...device, removedSerial: 'OLD-7' } },
    says: [/in place of the device with the serial OLD-7/],
  },
  {
    record: 'of a visit of unknown kind',
    change: { identity: { customer: { name: 'Bluestem Parcel' } } },
    says: [/What kind of visit this was/],
    saysNot: [/was fitted/, /was taken out/],
  },
  {
    record: 'of a hybrid',
    change: { vehicle: { ...vehicle, drive: 'hybrid', start: 'button' } },
    says: [/orange high-voltage cable/, /^ready$/m, /^asleep$/m, /with the vehicle ready/],
    saysNot: [/with the engine running/, /with the key out/],
  },
  {
    record: 'of an electric vehicle',
    change: { vehicle: { ...vehicle, drive: 'electric' } },
    says: [/orange high-voltage cable/],
    saysNot: [/exhaust/],
  },
  {
    record: 'that does not tell how the vehicle is driven',
    change: { vehicle: (({ drive: _drive, ...rest }) => rest)(vehicle) },
    saysNot: [/combustion/, /exhaust/, /high-voltage/],
  },
  {
    record: 'of a plant machine with an hour meter',
    change: {
      vehicle: {
        unitNumber: 'LDR-5',
        maker: 'Brakstad',
        model: 'WL 220',
        class: 'plant',
        odometer: { value: 7340, unit: 'h' },
        systemVolts: 24,
        batteryIsolator: true,
      },
    },
    says: [/Hour meter/, /7,340 h/, /24 V system/],
    saysNot: [/^VIN$/m, /stays live when the isolator is off/],
  },
  {
    record: 'without an odometer',
    change: { vehicle: (({ odometer: _odometer, ...rest }) => rest)(vehicle) },
    says: [/Odometer\nnot recorded/],
    saysNot: [/48,211/],
  },
  {
    record: 'without readings',
    change: { ...without('supply'), probePoints: [] },
    says: [/Not shown by meter readings: the wires for supply, ignition and ground/],
    saysNot: [/Meter readings prove/, /is constant/],
  },
  {
    record: 'in which one wire was never read',
    change: {
      probePoints: (soundJob.probePoints ?? []).map((point) =>
        point.name === 'P2' ? { ...point, readings: [] } : point,
      ),
    },
    says: [/Not shown by meter readings: the wire for ignition/],
    saysNot: [/Meter readings prove/, /Pink \(P2\) is ignition/],
  },
  {
    record: 'without a look at the vehicle afterwards',
    change: without('after'),
    saysNot: [/no warning lamp is noted/, /Not working before and after/],
  },
  {
    record: 'with a lamp that came on',
    change: { after: { warningLamps: ['air bag'], functionsNotWorking: [] } },
    says: [/Lit after the work and not before: air bag/],
    saysNot: [/no warning lamp is noted/],
  },
  {
    record: 'without the condition before',
    change: { ...without('before'), after: { warningLamps: [], functionsNotWorking: ['horn'] } },
    says: [/not noted before it: horn/],
    saysNot: [/Not working before and after/],
  },
  {
    record: 'of a device that lies loose',
    change: { placement: { zone: 'dash left', surface: 'duct', fixing: 'loose' } },
    says: [/and is not fixed/],
    saysNot: [/held by/],
  },
  {
    record: 'of a device held at one point',
    change: { placement: { zone: 'dash left', surface: 'duct', fixing: 'adhesive pad', fixingPoints: 1 } },
    says: [/held by an adhesive pad at 1 point\./],
  },
  {
    record: 'of a device whose points of fixing are not there to count',
    change: { placement: { zone: 'dash left', surface: 'duct', fixing: 'adhesive pad', fixingPoints: 0 } },
    says: [/held by an adhesive pad\./],
    saysNot: [/pad at 0 points/, /pad, 0 points/],
  },
  {
    record: 'of fasteners that were not counted back',
    change: { panels: [{ name: 'glove box', fastener: 'clip', out: 4 }] },
    says: [/4 × clip out, number back in not recorded/],
  },
  {
    record: 'nobody has signed',
    change: without('signature'),
    saysNot: [/The customer accepts/, /Not signed:/],
  },
];

describe('the sheet never claims what the record does not say', () => {
  test.each(cases)('of a record $record', ({ change, says = [], saysNot = [] }) => {
    const { words: _labels, ...view } = viewOf(change);
    const said = saidIn({ ...view, ...(view.hasWiring ? {} : { wiring: '' }) });
    for (const pattern of says) expect(said).toMatch(pattern);
    for (const pattern of saysNot) expect(said).not.toMatch(pattern);
  });

  test('a plan is drawn only where the class of the vehicle is known and its plan can show the zone', () => {
    expect(viewOf().plan.isDrawn).toBe(true);
    expect(viewOf({ vehicle: (({ class: _class, ...rest }) => rest)(vehicle) }).plan.isDrawn).toBe(false);
    expect(viewOf({ placement: { zone: 'battery box', surface: 'lid', fixing: 'screws' } }).plan.isDrawn).toBe(false);
  });

  test('a plan is shown for a device that is joined to nothing yet', () => {
    const view = viewOf(without('connections'));
    expect([view.hasWiring, view.hasPlacement, view.plan.isDrawn]).toEqual([false, true, true]);
  });

  test('figures of electrics and joints have their headings only where there is something under them', () => {
    const view = viewOf(without('connections', 'probePoints', 'supply', 'ground', 'device'), { profile: null });
    expect([view.hasElectrics, view.hasJoints, view.hasReadings, view.hasConclusions]).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  test('a signature given before the record was changed is printed as void', () => {
    expect(viewOf().signature.isVoid).toBe(false);
    expect(viewOf({}, {}, { signatureIsVoid: true }).signature.isVoid).toBe(true);
    expect(viewOf(without('signature'), {}, { signatureIsVoid: true }).signature.isVoid).toBe(false);
  });
});
