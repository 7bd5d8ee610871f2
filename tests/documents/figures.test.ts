import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placementPlan } from '../../src/documents/placement-plan.ts';
import { wiringFigure } from '../../src/documents/wiring-figure.ts';
import { wrappedLabel } from '../../src/documents/wrapped-label.ts';
import { spliceMethods } from '../../src/records/connection.ts';
import { job } from '../../src/records/job.ts';
import { languages } from '../../src/records/language.ts';
import { zones } from '../../src/records/placement.ts';
import { vehicleClasses } from '../../src/records/vehicle.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { writingFor } from '../../src/words/writing.ts';

const { book } = soundFacts(soundJob);
const english = writingFor(book, 'en', 'USD');
const vehicleOf = (each: (typeof vehicleClasses)[number]) =>
  job.parse({ ...soundJob, vehicle: { class: each } }).vehicle;
const placementOf = (zone: (typeof zones)[number]) => ({
  zone,
  surface: 'duct',
  fixing: 'screws' as const,
  wet: false,
  blocks: [],
});

describe('the wiring figure', () => {
  const figure = wiringFigure(job.parse(soundJob), english);

  test('has a row for each lead, ground last', () => {
    expect(figure.rows.map((row) => row.lead)).toEqual(['supply', 'ignition', 'ground']);
    expect(figure.rows.map((row) => row.isGround)).toEqual([false, false, true]);
  });

  test('says in words all that it draws', () => {
    expect(figure.inWords[0]?.text.replaceAll('\u00a0', ' ')).toBe(
      'Supply lead: red with white stripe, ignition switch, 6-way, pin 1, terminal 30, wrapped tap, fuse 3 A at 3.5 in.',
    );
    expect(figure.inWords[2]?.text).toBe('Ground lead: black, cowl stud left, terminal 31, ring terminal, no fuse.');
  });

  test('nothing of a row reaches into the next or out of the figure, however long the words', () => {
    const words = fc.array(fc.string({ minLength: 1, maxLength: 12, unit: fc.constantFrom('a', 'm', 'W') }), {
      minLength: 1,
      maxLength: 14,
    });
    fc.assert(
      fc.property(
        words,
        words,
        fc.constantFrom(...spliceMethods),
        fc.constantFrom(...languages),
        (connector, colour, method, language) => {
          const record = job.parse({
            ...soundJob,
            probePoints: soundJob.probePoints?.map((point) => ({
              ...point,
              connector: connector.join(' '),
              colour: colour.join(' '),
            })),
            connections: soundJob.connections?.map((made) => ({ ...made, method })),
          });
          const { rows, height } = wiringFigure(record, writingFor(book, language, 'USD'));
          let floor = 3;
          for (const row of rows) {
            const heights = [...row.wire, ...row.joint, ...row.place].map((label) => Number(label.y));
            expect(Math.min(...heights) - 2.2).toBeGreaterThanOrEqual(floor - 0.2);
            floor = Math.max(...heights, Number(row.hasFuse ? row.yDistanceText : row.y));
          }
          expect(floor).toBeLessThanOrEqual(Number(height));
        },
      ),
    );
  });
});

describe('the words of a figure', () => {
  test('are set in lines of at most so many signs, no word lost', () => {
    const words = fc.array(fc.string({ minLength: 1, maxLength: 10, unit: fc.constantFrom('a', 'é', '𝄞') }));
    fc.assert(
      fc.property(words, (given) => {
        const lines = wrappedLabel(given.join(' '), 10);
        expect(lines.join(' ')).toBe(given.join(' '));
        expect(lines.every((line) => [...line].length <= 10)).toBe(true);
      }),
    );
  });
});

describe('the placement plan', () => {
  const all = vehicleClasses.flatMap((each) => zones.map((zone) => [each, zone] as const));

  test.each(all)('on a %s marks the zone "%s" inside the figure, or draws no plan', (each, zone) => {
    const plan = placementPlan(placementOf(zone), vehicleOf(each), english);
    if (!plan.isDrawn) {
      expect([plan.boxes, plan.areas, plan.points]).toEqual([[], [], []]);
      return;
    }
    const [area] = plan.areas;
    if (area === undefined) throw new Error('no area');
    const [x, y, width, height] = [area.x, area.y, area.width, area.height].map(Number) as [
      number,
      number,
      number,
      number,
    ];
    expect(Math.min(x, y, width, height)).toBeGreaterThanOrEqual(0);
    expect(x + width).toBeLessThanOrEqual(34);
    expect(y + height).toBeLessThanOrEqual(41);
    for (const point of plan.points) {
      expect(Number(point.x)).toBeGreaterThan(x);
      expect(Number(point.x)).toBeLessThan(x + width);
    }
    if (zone.endsWith('left')) expect(x + width / 2).toBeLessThan(17);
    if (zone.endsWith('right')) expect(x + width / 2).toBeGreaterThan(17);
  });

  test('is drawn for most zones of each vehicle that has a cab', () => {
    for (const each of ['car', 'van', 'light truck', 'heavy truck', 'bus'] as const)
      expect(
        zones.filter((zone) => placementPlan(placementOf(zone), vehicleOf(each), english).isDrawn).length,
      ).toBeGreaterThanOrEqual(15);
  });
});
