import { continuousDropMillivoltsMax, lengthMillimetresMax } from '../../electrics/lead-drop.ts';
import { leadMilliohmsPerMetre } from '../../electrics/lead-resistance.ts';
import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import { meterUncertaintyMillivolts } from '../../evidence/meter-uncertainty.ts';
import { millivoltsFromVolts } from '../../quantities/millivolts.ts';
import type { MeterProfile } from '../../records/book.ts';
import { nominalVolts } from '../../records/nominal-volts.ts';
import type { Reading } from '../../records/reading.ts';
import type { KeyPosition } from '../../records/wire-role.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import type { JobFacts } from '../job-facts.ts';
import { withConnection } from '../overlay.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** Largest fall of a supply wire when the device begins to draw, millivolts (common practice, no source; cable figure of Army TM 9-2320-211-20). */
export const loadedFallMillivoltsMax = 200;

const byGround = (reading: Reading) => reading.reference === 'chassis' || reading.reference === 'battery negative';

const lookForIt = 'Look for a corroded joint or a thin wire on the way from the battery, or choose a better feed.';

/** The drop of both leads, worked out from gauge, length, current and heat. */
function workedOut({ job, profile, book }: JobFacts): readonly Hit<typeof words>[] {
  const electrics = workOutElectrics(job, profile, book);
  const { leadDropMillivolts: lost, leadDropMillivoltsMax: most, conductorCelsius: celsius } = electrics;
  if (lost === null || lost <= most || profile === null) return [];
  const gauge = job.connections?.find((made) => made.lead === 'supply')?.gauge ?? profile.leadGauge;
  const milliamps = profile.awakeMilliamps;
  const longest = lengthMillimetresMax(leadMilliohmsPerMetre(gauge, celsius), most / 2, milliamps);
  const metres = Math.round(longest / 100) / 10;
  return [{ at: 'leads', says: 'leads lose too much', figures: { lost, milliamps, celsius, most, metres } }];
}

/** The meter of a reading, with no range finer than the one it was read in; null for an ordinary meter. */
function meterOf({ book }: JobFacts, reading: Reading): MeterProfile | null {
  const meter = book.meters.find((each) => each.id === reading.meter) ?? book.meters[0];
  if (meter === undefined) return null;
  const ranges = meter.ranges.filter((each) => each.toVolts >= Math.abs(reading.volts));
  return { ...meter, ranges: ranges.length === 0 ? meter.ranges : ranges };
}

/** The fall of the tapped wire, read without and with the device. */
function measured(facts: JobFacts): readonly Hit<typeof words>[] {
  const { connections, probePoints, supply } = workDone(facts.job);
  const point = connections?.find((made) => made.lead === 'supply')?.point ?? '';
  const readings = (probePoints?.find((each) => each.name === point)?.readings ?? []).filter(byGround);
  const limit = continuousDropMillivoltsMax[nominalVolts(facts.job)];
  return readings.flatMap((reading): readonly Hit<typeof words>[] => {
    const { key } = reading;
    if (key === 'crank') return [];
    const millivolts = millivoltsFromVolts(reading.volts);
    const unloaded = readings.find((each) => !each.loaded && each.key === key);
    const battery = supply?.find((each) => each.key === key && each.taken === reading.taken);
    const fall = reading.loaded && unloaded !== undefined ? millivoltsFromVolts(unloaded.volts) - millivolts : 0;
    const below = battery === undefined ? 0 : millivoltsFromVolts(battery.volts) - millivolts;
    // two readings with one meter: its share of the difference, and its digits twice
    const unsure = (lost: number, most: number) =>
      lost - 2 * meterUncertaintyMillivolts(lost, meterOf(facts, reading)) > most
        ? {}
        : { severity: 'advise' as const };
    const most = loadedFallMillivoltsMax;
    if (fall > most) {
      const figures = { point, lost: fall, key, most };
      return [{ at: point, says: 'falls under load', figures, ...unsure(fall, most) }];
    }
    if (below <= limit) return [];
    const figures = { point, millivolts, lost: below, key, most: limit };
    return [{ at: point, says: 'below the battery', figures, ...unsure(below, limit) }];
  });
}

const words = {
  summary: (voice: Voice) =>
    `The supply loses little on its way to the device: ${voice.voltLimit(continuousDropMillivoltsMax[12])} on 12 V, ${voice.voltLimit(continuousDropMillivoltsMax[24])} on 24 V, ${voice.voltLimit(loadedFallMillivoltsMax)} when the device begins to draw.`,
  why: 'What is lost in joints and thin wire is heat there and missing volts at the device, first of all while cranking.',
  says: {
    'leads lose too much': (
      leads: { lost: number; milliamps: number; celsius: number; most: number; metres: number },
      voice: Voice,
    ) => ({
      what: `Supply lead and return lose ${leads.lost} mV at ${leads.milliamps} mA and ${leads.celsius} °C; ${leads.most} mV at most.`,
      whatToDo: `Shorten the leads (this size may be ${voice.decimal(leads.metres)} m long each way), or use a thicker one.`,
    }),
    'falls under load': (wire: { point: string; lost: number; key: KeyPosition; most: number }, voice: Voice) => ({
      what: `${wire.point} falls by ${wire.lost} mV (${voice.key(wire.key)}) once it carries the device; ${wire.most} mV at most.`,
      whatToDo: lookForIt,
    }),
    'below the battery': (
      wire: { point: string; millivolts: number; lost: number; key: KeyPosition; most: number },
      voice: Voice,
    ) => ({
      what: `${wire.point} reads ${voice.volts(wire.millivolts)} (${voice.key(wire.key)}), ${wire.lost} mV below the battery; ${wire.most} mV at most.`,
      whatToDo: lookForIt,
    }),
  },
};

/** The supply loses little on its way to the device. */
export const voltageDropIsSmall = defineRule({
  id: 'voltage-drop-is-small',
  group: 'wiring',
  severity: 'reason',
  source:
    'FAA AC 43.13-1B, table 11-6 (14 V system 0.5 V, 28 V system 1 V, continuous; from memory, agrees with the worked examples of tables 11-7 and 11-8; aircraft practice, a strict yardstick); 0.2 V under load: Army TM 9-2320-211-20 for cables',
  words,
  check: (facts) => (facts.job.identity.visit === 'wasted visit' ? [] : [...workedOut(facts), ...measured(facts)]),
  examples: [
    { name: '1.5 m of 18 AWG at 80 mA', change: (job) => job, finds: [] },
    {
      name: '8 m of 18 AWG at 2 A',
      change: withConnection('supply', { lengthMillimetres: 8000 }),
      facts: { profile: { ...exampleProfile, awakeMilliamps: 2000, leadLengthMillimetres: 8000 } },
      finds: [],
    },
    {
      name: '10 m of 20 AWG at 2 A',
      change: withConnection('supply', { lengthMillimetres: 10_000, gauge: { awg: 20 } }),
      facts: { profile: { ...exampleProfile, awakeMilliamps: 2000 } },
      finds: [
        {
          at: 'leads',
          severity: 'reason',
          what: 'Supply lead and return lose 866 mV at 2000 mA and 60 °C; 500 mV at most.',
          whatToDo: 'Shorten the leads (this size may be 3.2 m long each way), or use a thicker one.',
        },
      ],
    },
    {
      name: 'a wire that falls by 0.4 V under the device',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1'
            ? {
                ...point,
                readings: (point.readings ?? []).map((each) =>
                  each.loaded === true ? { ...each, volts: 13.68 } : each,
                ),
              }
            : point,
        ),
      }),
      finds: [
        {
          at: 'P1',
          severity: 'reason',
          what: 'P1 falls by 400 mV (running) once it carries the device; 200 mV at most.',
          whatToDo: 'Look for a corroded joint or a thin wire on the way from the battery, or choose a better feed.',
        },
      ],
    },
    {
      name: 'a wire 0.72 V below the battery',
      change: (job) => ({
        ...job,
        supply: (job.supply ?? []).map((each) => (each.key === 'running' ? { ...each, volts: 14.8 } : each)),
      }),
      finds: [
        {
          at: 'P1',
          severity: 'reason',
          what: 'P1 reads 14.08 V (running), 720 mV below the battery; 500 mV at most.',
          whatToDo: 'Look for a corroded joint or a thin wire on the way from the battery, or choose a better feed.',
        },
      ],
    },
  ],
});
