import { continuousDropMillivoltsMax, lengthMillimetresMax } from '../../electrics/lead-drop.ts';
import { leadMilliohmsPerMetre } from '../../electrics/lead-resistance.ts';
import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import { meterUncertaintyMillivolts } from '../../evidence/meter-uncertainty.ts';
import { millivoltsFromVolts, writeVolts } from '../../quantities/millivolts.ts';
import type { MeterProfile } from '../../records/book.ts';
import type { Reading } from '../../records/reading.ts';
import { exampleProfile } from '../example-profile.ts';
import { nominalVolts } from '../nominal-volts.ts';
import { withConnection } from '../overlay.ts';
import type { JobFacts, Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Largest fall of a supply wire when the device begins to draw, millivolts (common practice, no source; cable figure of Army TM 9-2320-211-20). */
const loadedFallMillivoltsMax = 200;

const byGround = (reading: Reading) => reading.reference === 'chassis' || reading.reference === 'battery negative';

/** The drop of both leads, worked out from gauge, length, current and heat. */
function workedOut({ job, profile, book }: JobFacts): readonly RuleHit[] {
  const { leadDropMillivolts, leadDropMillivoltsMax, conductorCelsius } = workOutElectrics(job, profile, book);
  if (leadDropMillivolts === null || leadDropMillivolts <= leadDropMillivoltsMax || profile === null) return [];
  const gauge = job.connections?.find((made) => made.lead === 'supply')?.gauge ?? profile.leadGauge;
  const metres =
    lengthMillimetresMax(
      leadMilliohmsPerMetre(gauge, conductorCelsius),
      leadDropMillivoltsMax / 2,
      profile.awakeMilliamps,
    ) / 1000;
  return [
    {
      at: 'leads',
      what: `Supply lead and return lose ${leadDropMillivolts} mV at ${profile.awakeMilliamps} mA and ${conductorCelsius} °C; ${leadDropMillivoltsMax} mV at most.`,
      whatToDo: `Shorten the leads (this size may be ${metres.toFixed(1)} m long each way), or use a thicker one.`,
    },
  ];
}

/** The meter of a reading, with no range finer than the one it was read in; null for an ordinary meter. */
function meterOf({ book }: JobFacts, reading: Reading): MeterProfile | null {
  const meter = book.meters.find((each) => each.id === reading.meter) ?? book.meters[0];
  if (meter === undefined) return null;
  const ranges = meter.ranges.filter((each) => each.toVolts >= Math.abs(reading.volts));
  return { ...meter, ranges: ranges.length === 0 ? meter.ranges : ranges };
}

/** The fall of the tapped wire, read without and with the device. */
function measured(facts: JobFacts): readonly RuleHit[] {
  const { connections, probePoints, supply } = workDone(facts.job);
  const lead = connections?.find((made) => made.lead === 'supply');
  const readings = (probePoints?.find((point) => point.name === lead?.point)?.readings ?? []).filter(byGround);
  const limit = continuousDropMillivoltsMax[nominalVolts(facts)];
  return readings.flatMap((reading): readonly RuleHit[] => {
    if (reading.key === 'crank') return [];
    const own = millivoltsFromVolts(reading.volts);
    const unloaded = readings.find((each) => !each.loaded && each.key === reading.key);
    const battery = supply?.find((each) => each.key === reading.key && each.taken === reading.taken);
    const fall = reading.loaded && unloaded !== undefined ? millivoltsFromVolts(unloaded.volts) - own : 0;
    const below = battery === undefined ? 0 : millivoltsFromVolts(battery.volts) - own;
    const hit = (lost: number, most: number, what: string): RuleHit => ({
      at: lead?.point ?? '',
      what: `${what}; ${most} mV at most.`,
      whatToDo: 'Look for a corroded joint or a thin wire on the way from the battery, or choose a better feed.',
      // two readings with one meter: its share of the difference, and its digits twice
      ...(lost - 2 * meterUncertaintyMillivolts(lost, meterOf(facts, reading)) > most
        ? {}
        : { severity: 'advise' as const }),
    });
    if (fall > loadedFallMillivoltsMax)
      return [
        hit(
          fall,
          loadedFallMillivoltsMax,
          `${lead?.point} falls by ${fall} mV (${reading.key}) once it carries the device`,
        ),
      ];
    if (below > limit)
      return [
        hit(below, limit, `${lead?.point} reads ${writeVolts(own)} V (${reading.key}), ${below} mV below the battery`),
      ];
    return [];
  });
}

/** The supply loses little on its way to the device. */
export const voltageDropIsSmall: Rule = {
  id: 'voltage-drop-is-small',
  group: 'wiring',
  severity: 'reason',
  summary:
    'The supply loses little on its way to the device: 0.5 V on 12 V, 1 V on 24 V, 0.2 V when the device begins to draw.',
  why: 'What is lost in joints and thin wire is heat there and missing volts at the device, first of all while cranking.',
  source:
    'FAA AC 43.13-1B, table 11-6 (14 V system 0.5 V, 28 V system 1 V, continuous; from memory, agrees with the worked examples of tables 11-7 and 11-8; aircraft practice, a strict yardstick); 0.2 V under load: Army TM 9-2320-211-20 for cables',
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
  ],
};
