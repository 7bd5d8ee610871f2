import { z } from 'zod';
import { deviceLead } from '../records/connection.ts';
import { jobId } from '../records/job.ts';
import { gauge } from '../records/probe-point.ts';
import { pointName, reading, references, supplyReading } from '../records/reading.ts';
import { keyPosition, wireRole } from '../records/wire-role.ts';

const systemVolts = z.union([z.literal(12), z.literal(24)]);
const millivolts = (what: string) => z.int().describe(`${what}, millivolts`);
const milliamps = (what: string) => z.number().describe(`${what}, milliamps`);

const trap = z.strictObject({
  kind: z.string().describe('the kind of trap, such as "retained power"; more kinds may follow'),
  point: z.string().describe('the probe point, or "" for the whole job'),
  sentence: z.string(),
});

const wants = z
  .strictObject({
    key: keyPosition,
    reference: z.enum(references).describe('where the black lead is held'),
    loaded: z.boolean().describe('whether the circuit must carry current'),
    lights: z.boolean().describe("whether the vehicle's lamps must be switched on"),
    secondsWaited: z.int().min(0).describe('seconds to wait in that key position before reading'),
    expectedRemaining: z.number().describe('how many roles are expected to remain after it'),
    sentence: z.string(),
  })
  .describe('the single reading that splits the remaining roles best');

const conclusion = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('concluded'),
      role: wireRole,
      because: z.array(reading).describe('the readings that prove it'),
    })
    .describe('the readings prove one role'),
  z
    .strictObject({
      kind: z.literal('open'),
      remaining: z.array(wireRole).describe('roles that the readings do not rule out'),
      wants: wants.nullable().describe('null when no reading can help'),
    })
    .describe('more than one role remains, or none'),
]);

const wire = z.strictObject({
  point: pointName.describe('the probe point'),
  lead: deviceLead.nullable().describe('the lead of the device that is joined to it'),
  sentence: z.string().describe('the conclusion with its readings, for a mechanic'),
  next: z.string().nullable().describe('what to do next; null when nothing is left to do'),
  verdict: wireRole.nullable().describe("the installer's word"),
  agreement: z.enum(['agreement', 'not proven', 'contradiction', 'no verdict']).describe('verdict against readings'),
  conclusion,
  readings: z.array(reading).describe('every reading of this wire, as recorded'),
  tests: z.array(
    z.strictObject({
      role: wireRole,
      test: z.string().describe('what should hold for that role'),
      result: z.enum(['passes', 'fails', 'not measured']),
      because: z.array(reading),
    }),
  ),
  traps: z.array(trap),
});

const fuse = z.strictObject({
  ratingAmperes: z.number(),
  smallestConductor: gauge.nullable().describe('the thinnest conductor behind the fuse'),
  wireAmperesMax: z.number().nullable().describe('largest fuse it allows; null: unknown, or thinner than the table'),
  suitsTheWire: z.boolean().nullable(),
  loadAmperesMin: z.number().nullable().describe('smallest fuse that carries the load for long'),
  bearsTheLoad: z.boolean().nullable(),
  distanceMillimetres: z.int().nullable().describe('along the lead, from the joint'),
  isNearTheTap: z.boolean().nullable(),
  lead: deviceLead,
});

const electrics = z
  .strictObject({
    cranks: z.boolean().describe('whether an engine is turned by a starter on this battery'),
    conductorCelsius: z.number().describe('temperature of the conductors that the drops are worked out for'),
    supplyDropMillivolts: millivolts('lost along the supply lead').nullable(),
    returnDropMillivolts: millivolts('lost along the ground lead').nullable(),
    leadDropMillivolts: millivolts('lost along both, with the device awake').nullable(),
    leadDropMillivoltsMax: millivolts('what both may lose'),
    leadLengthMillimetres: z.int().nullable(),
    atDevice: z
      .array(
        z.strictObject({
          key: keyPosition,
          millivolts: millivolts('lowest at the device'),
          millivoltsMax: millivolts('highest at the device'),
        }),
      )
      .describe('one for each key position read on the supply wire'),
    supplyMillivoltsMin: millivolts('least the device needs').nullable(),
    supplyMillivoltsMax: millivolts('most the device bears').nullable(),
    crankMillivoltsMin: millivolts('least it needs while the engine cranks; null: it may restart').nullable(),
    supplyCodes: z.array(z.string()).describe('codes of ISO 16750-2 whose whole range the device bears'),
    fuseAmperesMax: z.number().nullable().describe('largest fuse that the supply lead allows'),
    leadAmperesMax: z.number().nullable().describe('what the thinnest conductor of the supply lead carries for long'),
    fuses: z.array(fuse),
    groundDropMillivolts: millivolts('measured drop of the ground').nullable(),
    groundTestMilliamps: milliamps('what flowed meanwhile').nullable(),
    asleepMilliamps: milliamps('device and vehicle asleep').nullable(),
    vehicleAsleepMilliamps: milliamps("the vehicle's share"),
    vehicleAsleepMeasured: z.boolean().describe('false: the share is assumed'),
    batteryPercent: z.int().nullable().describe('charge at rest, from the rest volts'),
    standingDays: z.int().nullable().describe('days until the battery is half down'),
    standingDaysWanted: z.int(),
  })
  .describe('the electrics worked out; null where the record does not tell enough');

const finding = z.strictObject({
  rule: z.string().describe('id of the rule; `keyout rules ID` explains it'),
  severity: z.enum(['block', 'reason', 'advise']),
  at: z.string().describe('the place in the job; "" for the whole job'),
  what: z.string(),
  why: z.string(),
  whatToDo: z.string(),
  source: z.string(),
  answer: z.string().nullable().describe("the installer's written reason"),
  open: z.boolean().describe('whether it still stops the handover'),
});

/** What `keyout check --json` prints: one entry a job. */
export const checkOutput = z
  .array(
    z.strictObject({
      job: jobId,
      vehicle: z.strictObject({
        vin: z.string().nullable(),
        plate: z.string().nullable(),
        unitNumber: z.string().nullable(),
      }),
      mayBeHandedOver: z
        .boolean()
        .describe('no finding stops the handover; the exit code is 0 when this holds for all'),
      evidence: z.strictObject({
        systemVolts: systemVolts.nullable().describe('nominal system found from the readings'),
        supply: z
          .partialRecord(keyPosition, z.strictObject({ millivolts: z.int(), from: z.array(supplyReading) }))
          .describe('the supply in each key position'),
        wires: z.array(wire),
        traps: z.array(trap).describe('what concerns the whole job'),
      }),
      electrics,
      findings: z.array(finding).describe('in the order of the rules'),
      open: z.array(z.string()).describe('ids of the rules whose findings still stop the handover'),
    }),
  )
  .describe('What `keyout check --json` prints: one entry a job.');

/** What `keyout rules --json` prints; with an id, one entry of it. */
export const rulesOutput = z
  .array(
    z.strictObject({
      id: z.string(),
      group: z.enum(['wiring', 'workmanship', 'placement', 'close-up', 'record']),
      severity: z.enum(['block', 'reason', 'advise']).describe('unless a finding says otherwise'),
      summary: z.string().describe('what should hold'),
      why: z.string(),
      source: z.string().describe('a published title and section, or "common practice, no source"'),
      examples: z.array(
        z.strictObject({
          name: z.string(),
          finds: z
            .array(
              z.strictObject({
                at: z.string(),
                severity: z.enum(['block', 'reason', 'advise']),
                what: z.string(),
                whatToDo: z.string(),
              }),
            )
            .describe('the findings, whole; none when the rule holds'),
        }),
      ),
    }),
  )
  .describe('What `keyout rules --json` prints: every rule in the order of a checklist.');
