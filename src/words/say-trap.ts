import type { Trap } from '../evidence/evidence.ts';
import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Reading } from '../records/reading.ts';
import type { Speech } from './speech.ts';

/** What a fitter must know about some readings, as one sentence. */
export function sayTrap(trap: Trap, speech: Speech): string {
  const { where, evidence, endOfDrive, wait } = speech;
  const words = evidence.trap;
  const { point } = trap;
  const at = point === '' ? null : point;
  const volts = (reading: Reading) => speech.volts(millivoltsFromVolts(reading.volts));
  switch (trap.kind) {
    case 'delayed power': {
      const waited = wait(trap.reading.secondsWaited ?? 0);
      return words.delayedPower({ point, volts: volts(trap.reading), wait: waited, from: endOfDrive });
    }
    case 'retained power': {
      const waited = trap.reading.secondsWaited;
      return words.retainedPower({
        point,
        volts: volts(trap.reading),
        wait: waited === undefined ? null : wait(waited),
        from: endOfDrive,
        minutes: wait(trap.neededSeconds),
      });
    }
    case 'reads low':
      return words.readsLow({
        point,
        volts: volts(trap.reading),
        where: where(trap.reading.key),
        supply: trap.supplyMillivolts === null ? null : speech.volts(trap.supplyMillivolts),
        running: trap.reading.key === 'running',
      });
    case 'drops in crank':
      return words.dropsInCrank(point);
    case 'signal only': {
      const { unloaded, loaded } = trap;
      return words.signalOnly({ point, unloaded: volts(unloaded), loaded: volts(loaded), where: where(loaded.key) });
    }
    case 'ghost volts':
      return words.ghostVolts(point, trap.reading === null ? null : volts(trap.reading));
    case 'average of a signal': {
      const { reading, twisted } = trap;
      return reading === null
        ? words.twistedPair(point)
        : words.averageOfASignal({ point, volts: volts(reading), where: where(reading.key), twisted });
    }
    case 'half the supply':
      return words.halfTheSupply(point, volts(trap.reading));
    case 'isolator side':
      return words.isolatorSide[trap.how](point, trap.reading === null ? '' : volts(trap.reading));
    case 'over-voltage':
      return words.overVoltage(at, speech.volts(trap.millivolts), where(trap.key));
    case 'system differs':
      return words.systemDiffers(String(trap.found), String(trap.recorded));
    case 'unsteady':
      return words.unsteady(at, where(trap.key));
    case 'readings disagree':
      return words.disagree(
        at,
        speech.and(trap.volts.map((each) => speech.volts(millivoltsFromVolts(each)))),
        where(trap.key),
      );
    case 'through a load':
      return words.throughALoad[trap.how](point, where(trap.key), where('on'));
    case 'wrong reference': {
      const { reading, how } = trap;
      const other = reading.referencePoint ?? null;
      return words.wrongReference[how]({ point, volts: volts(reading), where: where(reading.key), other });
    }
    case 'supply not measured':
      return words.supplyNotMeasured;
    case 'no battery':
      return words.noBattery[trap.how](speech.volts(trap.millivolts), where(trap.key));
    case 'leak':
      return words.leak(point, volts(trap.reading), where(trap.reading.key));
    case 'forty-eight volts':
      return words.fortyEightVolts(point, volts(trap.reading));
    default:
      return sayComparison(trap, speech, volts);
  }
}

type Comparison = Extract<Trap, { kind: 'contradicts another wire' | 'two constants' }>;

function sayComparison(trap: Comparison, speech: Speech, volts: (reading: Reading) => string): string {
  const words = speech.evidence.trap;
  const { point } = trap;
  if (trap.kind === 'two constants') {
    const said = trap.constants.map((each) =>
      words.constant({
        point: each.point,
        wanders: each.wanders,
        lost: speech.volts(each.lostMillivolts),
        amperes: each.fuseAmperes === null ? null : speech.decimal(each.fuseAmperes),
        switched: each.switched,
      }),
    );
    return words.constants(String(trap.constants.length), said.join('; '), trap.constants[0]?.point ?? '');
  }
  if (trap.how === 'falls') {
    const { reading, holding } = trap;
    return words.falls({ point, volts: volts(reading), where: speech.where(reading.key), holding });
  }
  const [first, second] = trap.roles;
  const { other, connector, pin } = trap;
  return words.samePin({ point, other, connector, pin, roles: [speech.role(first), speech.role(second)] });
}
