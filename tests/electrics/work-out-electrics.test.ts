import { describe, expect, test } from 'vitest';
import { voltsAtDevice } from '../../src/electrics/volts-at-device.ts';
import { workOutElectrics } from '../../src/electrics/work-out-electrics.ts';
import { deviceProfile } from '../../src/records/device-profile.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { reading } from '../../src/records/reading.ts';

const profile = deviceProfile.parse({
  id: 'invented',
  name: 'Invented',
  supplyVoltsMin: 8,
  supplyVoltsMax: 32,
  crankVoltsMin: 6.5,
  awakeMilliamps: 1000,
  asleepMilliamps: 5,
  leadGauge: { awg: 18 },
  leadLengthMillimetres: 2000,
  fuseAmperes: 3,
});
const book = { assumedAsleepMilliamps: '45', standingDaysMin: 21 };
const with_ = (more: Partial<JobInput>) =>
  workOutElectrics(
    job.parse({ schema: 'keyout-job-1', id: '2026-11-24-KX4D', day: '2026-11-24', ...more }),
    profile,
    book,
  );
const supply = { lead: 'supply', point: 'P1', method: 'wrapped tap' } as const;
const ground = { lead: 'ground', point: 'G1', method: 'ring terminal' } as const;
/** 18 AWG stranded at 60 °C, milliohms per metre: 6.385 ohm per 1000 ft x 1.026 x 294.5 / 254.5, worked out by hand */
const hot18 = (6.385 / 0.3048) * 1.026 * (294.5 / 254.5);

describe('drop over supply and return', () => {
  test('is that of both leads at the awake current and 60 °C', () => {
    const { supplyDropMillivolts, returnDropMillivolts, leadDropMillivolts, conductorCelsius } = with_({});
    expect(conductorCelsius).toBe(60);
    expect(supplyDropMillivolts).toBe(Math.ceil(hot18 * 2));
    expect(returnDropMillivolts).toBe(supplyDropMillivolts);
    expect(leadDropMillivolts).toBe(Math.ceil(hot18 * 4));
  });

  test('takes each lead with its own gauge and length, and the hotter of 60 °C and the place', () => {
    const drops = with_({
      connections: [
        { ...supply, gauge: { squareMillimetres: 0.75 }, lengthMillimetres: 4000 },
        { ...ground, lengthMillimetres: 1000 },
      ],
      placement: { zone: 'engine bay', surface: 'bracket', fixing: 'bracket', expectedCelsiusMax: 105 },
    });
    // IEC 60228 class 5, 0.75 mm²: 26.0 milliohms per metre
    expect(drops.supplyDropMillivolts).toBe(Math.ceil((26 * 4 * (234.5 + 105)) / 254.5));
    expect(drops.returnDropMillivolts).toBe(Math.ceil((hot18 * (234.5 + 105)) / 294.5));
    expect(drops.conductorCelsius).toBe(105);
  });

  test('may be 0.5 V on 12 V and 1 V on 24 V (FAA AC 43.13-1B table 11-6)', () => {
    expect(with_({}).leadDropMillivoltsMax).toBe(500);
    expect(with_({ vehicle: { systemVolts: 24 } }).leadDropMillivoltsMax).toBe(1000);
  });

  test('is unknown without a device', () => {
    const bare = workOutElectrics(
      job.parse({ schema: 'keyout-job-1', id: '2026-11-24-KX4D', day: '2026-11-24' }),
      null,
      book,
    );
    expect(bare).toMatchObject({ leadDropMillivolts: null, atDevice: [], standingDays: null, supplyCodes: [] });
  });
});

describe('volts at the device', () => {
  const read = (key: string, volts: number, more: object = {}) => reading.parse({ key, volts, ...more });

  test('are given once for each key position read, in the order of the key, lowest and highest', () => {
    const seen = voltsAtDevice(
      [
        read('running', 14.1),
        read('crank', 9.4),
        read('out', 12.6),
        read('running', 13.9, { loaded: true, taken: 'after' }),
      ],
      100,
    );
    expect(seen).toEqual([
      { key: 'out', millivolts: 12_500, millivoltsMax: 12_600 },
      { key: 'crank', millivolts: 9300, millivoltsMax: 9400 },
      { key: 'running', millivolts: 13_800, millivoltsMax: 14_100 },
    ]);
  });

  test('come from readings against chassis or battery negative only', () => {
    const live = read('on', -12.4, { reference: 'battery positive' });
    const other = read('on', -12.4, { reference: 'probe point', referencePoint: 'P2' });
    const direct = read('on', 12.3, { reference: 'battery negative' });
    expect(voltsAtDevice([live, other, direct], 0)).toEqual([{ key: 'on', millivolts: 12_300, millivoltsMax: 12_300 }]);
    expect(voltsAtDevice([live], 0)).toEqual([]);
  });

  test('are taken from the wire that the supply lead is joined to, also while cranking', () => {
    const { atDevice, crankMillivoltsMin } = with_({
      probePoints: [
        { name: 'P1', readings: [{ key: 'crank', volts: 7 }] },
        { name: 'P2', readings: [{ key: 'crank', volts: 0 }] },
      ],
      connections: [supply],
    });
    expect(atDevice).toEqual([{ key: 'crank', millivolts: 7000 - Math.ceil(hot18 * 4), millivoltsMax: 7000 }]);
    expect(crankMillivoltsMin).toBe(6500);
  });
});

describe('fuses of the job', () => {
  test('each is judged against the thinner of the lead used and the device’s own', () => {
    const { fuses, fuseAmperesMax } = with_({
      connections: [
        { ...supply, gauge: { awg: 12 }, fuse: { ratingAmperes: 15, distanceMillimetres: 200 } },
        { lead: 'ignition', method: 'wrapped tap', fuse: { ratingAmperes: 1, distanceMillimetres: 50 } },
      ],
    });
    expect(fuseAmperesMax).toBe(10);
    expect(fuses).toEqual([
      {
        lead: 'supply',
        ratingAmperes: 15,
        smallestConductor: { awg: 18 },
        wireAmperesMax: 10,
        suitsTheWire: false,
        loadAmperesMin: 1.25,
        bearsTheLoad: true,
        distanceMillimetres: 200,
        isNearTheTap: false,
      },
      expect.objectContaining({ lead: 'ignition', bearsTheLoad: null, suitsTheWire: true, isNearTheTap: true }),
    ]);
  });
});

describe('ground drop', () => {
  test('is the one recorded, with its current', () => {
    const drop = with_({ ground: { kind: 'chassis bolt', where: 'cowl', dropMillivolts: 40, testMilliamps: 2000 } });
    expect(drop).toMatchObject({ groundDropMillivolts: 40, groundTestMilliamps: 2000 });
  });

  test('else the worst loaded reading of the ground wire against battery negative', () => {
    const drop = with_({
      connections: [ground],
      probePoints: [
        {
          name: 'G1',
          readings: [
            { key: 'running', volts: 0.02, reference: 'battery negative', loaded: true, loadMilliamps: 85 },
            { key: 'running', volts: -0.05, reference: 'battery negative', loaded: true, loadMilliamps: 500 },
            { key: 'running', volts: 0.4, reference: 'battery negative' },
            { key: 'running', volts: -14, reference: 'battery positive' },
          ],
        },
      ],
    });
    expect(drop).toMatchObject({ groundDropMillivolts: -50, groundTestMilliamps: 500 });
  });

  test('is unknown when nothing was read', () => {
    expect(with_({})).toMatchObject({ groundDropMillivolts: null, groundTestMilliamps: null });
  });
});

describe('standing days', () => {
  const vehicle = { batteryAmpereHours: 60 };

  test('with the assumed 45 mA of the vehicle and 5 mA of the device, 60 Ah last 25 days', () => {
    expect(with_({ vehicle })).toMatchObject({
      standingDays: 25,
      asleepMilliamps: 50,
      vehicleAsleepMeasured: false,
      batteryPercent: null,
    });
  });

  test('the lower of the two rest readings counts; 12.4 V leaves half of the days', () => {
    const worn = with_({ vehicle, before: { restVolts: 12.4 }, after: { restVolts: 12.8 } });
    expect(worn).toMatchObject({ standingDays: 12, batteryPercent: 75 });
    // a 24 V pair in series has the capacity of one battery
    const truck = with_({ vehicle: { ...vehicle, systemVolts: 24 }, before: { restVolts: 24.8 } });
    expect(truck).toMatchObject({ standingDays: 12, batteryPercent: 75 });
  });

  test('a battery that was being charged is not judged by its volts', () => {
    expect(with_({ vehicle, before: { restVolts: 13.4 } })).toMatchObject({ standingDays: 25, batteryPercent: null });
  });

  test('the measured current of the vehicle goes before the assumed one, and its own days before the book’s', () => {
    const own = with_({ vehicle: { ...vehicle, asleepMilliamps: 20, standingDays: 40 } });
    expect(own).toMatchObject({ standingDays: 50, vehicleAsleepMeasured: true, standingDaysWanted: 40 });
    expect(with_({ vehicle }).standingDaysWanted).toBe(21);
  });
});

describe('nominal system', () => {
  test.each([
    [{ vehicle: { systemVolts: 12 }, before: { restVolts: 25 } }, 500],
    [{ before: { restVolts: 25 } }, 1000],
    [{ after: { chargingVolts: 28 } }, 1000],
    [{ supply: [{ key: 'out', volts: 24.9 }] }, 1000],
    [{ supply: [{ key: 'out', volts: 18 }] }, 500],
    [{}, 500],
  ] as const)('%j allows a drop of %i mV', (fields, millivolts) => {
    expect(with_(fields as unknown as Partial<JobInput>).leadDropMillivoltsMax).toBe(millivolts);
  });

  test('the supply lead carries what its thinnest conductor does', () => {
    expect(with_({}).leadAmperesMax).toBe(6);
    expect(with_({ connections: [{ ...supply, gauge: { awg: 22 } }] }).leadAmperesMax).toBe(3);
    expect(with_({ connections: [{ ...supply, gauge: { awg: 30 } }] }).leadAmperesMax).toBeNull();
  });

  test('the codes of ISO 16750-2 that the device covers are those of the system', () => {
    expect(with_({}).supplyCodes).toEqual(['B', 'C', 'D']);
    expect(with_({ vehicle: { systemVolts: 24 } }).supplyCodes).toEqual(['E', 'F', 'G', 'H']);
  });
});
