import type { Placement } from '../records/placement.ts';
import { withPlacement } from './overlay.ts';
import type { Rule, RuleHit } from './rule.ts';
import { workDone } from './work-done.ts';

/** 49 CFR 393.60(e)(1)(ii)(A), since 6 May 2022: 8.5 in. */
const belowSweptTopMillimetresMax = 216;
/** 49 CFR 393.60(e)(1)(ii)(B): 7 in. */
const aboveSweptBottomMillimetresMax = 175;

function outsideArea(placement: Placement): readonly RuleHit[] {
  const below = placement.belowSweptTopMillimetres;
  const above = placement.aboveSweptBottomMillimetres;
  if (below === undefined && above === undefined) {
    return [
      {
        at: 'windscreen',
        what: 'The place of the device within the area swept by the wipers is not measured.',
        whatToDo: `Measure from its lower edge up to the top of the swept area (at most ${belowSweptTopMillimetresMax} mm), or from its upper edge down to the bottom (at most ${aboveSweptBottomMillimetresMax} mm).`,
      },
    ];
  }
  if (below !== undefined && below <= belowSweptTopMillimetresMax) return [];
  if (above !== undefined && above <= aboveSweptBottomMillimetresMax) return [];
  const measured = [
    below === undefined
      ? ''
      : `${below} mm below the upper edge of the swept area (at most ${belowSweptTopMillimetresMax} mm)`,
    above === undefined ? '' : `${above} mm above its lower edge (at most ${aboveSweptBottomMillimetresMax} mm)`,
  ].filter((text) => text !== '');
  return [
    {
      at: 'windscreen',
      what: `The device reaches ${measured.join(' and ')}.`,
      whatToDo: 'Move it up or down until one of the two limits holds, or off the windscreen.',
    },
  ];
}

/** On a windscreen the device stays within the permitted area and out of the sight lines. */
export const windscreenAreaIsRespected: Rule = {
  id: 'windscreen-area-is-respected',
  group: 'placement',
  severity: 'reason',
  summary: 'On a windscreen the device stays within the permitted area and out of the sight lines.',
  why: 'A device lower down hides road, signs and signals, and the carrier is cited for it.',
  source:
    '49 CFR 393.60(e)(1)(ii), 87 FR 12596 (at most 216 mm, 8.5 in, below the upper edge of the swept area, or at most 175 mm, 7 in, above its lower edge); elsewhere: local code',
  check: ({ job, book }) => {
    const { placement } = workDone(job);
    if (placement?.zone !== 'windscreen') return [];
    if (placement.inSightLine === true) {
      return [
        {
          at: 'windscreen',
          what: "The device is in the driver's sight line to road, signs or signals.",
          whatToDo: 'Move it out of the sight line.',
        },
      ];
    }
    if (!job.vehicle.commercial || book.business.address.country !== 'US') {
      return [
        {
          at: 'windscreen',
          what: 'The device is on the windscreen; what may stand there is for the local code to say.',
          whatToDo: 'Look up the local code, or move the device off the windscreen.',
          severity: 'advise',
        },
      ];
    }
    return outsideArea(placement);
  },
  examples: [
    {
      name: '216 mm below the upper edge of the swept area',
      change: withPlacement({
        zone: 'windscreen',
        inSightLine: false,
        belowSweptTopMillimetres: 216,
        aboveSweptBottomMillimetres: undefined,
      }),
      finds: [],
    },
    {
      name: '217 mm below the upper edge',
      change: withPlacement({
        zone: 'windscreen',
        inSightLine: false,
        belowSweptTopMillimetres: 217,
        aboveSweptBottomMillimetres: undefined,
      }),
      finds: ['windscreen'],
    },
    {
      name: '175 mm above the lower edge',
      change: withPlacement({
        zone: 'windscreen',
        inSightLine: false,
        belowSweptTopMillimetres: undefined,
        aboveSweptBottomMillimetres: 175,
      }),
      finds: [],
    },
    {
      name: 'in the sight line',
      change: withPlacement({ zone: 'windscreen', inSightLine: true, belowSweptTopMillimetres: 100 }),
      finds: ['windscreen'],
    },
  ],
};
