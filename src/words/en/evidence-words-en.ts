import type { EvidenceWords } from '../evidence-words.ts';
import type { Colour } from '../sentences.ts';

const capital = (text: string) => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
/** A wire's colour with its stripe, in English. */
export const colourWords = ({ colour, stripe }: Colour) =>
  stripe === null ? colour : `${colour} with ${stripe} stripe`;
const hereOr = (point: string | null) => point ?? 'The supply';

/** Every sentence about readings and what they prove, in English. */
export const evidenceWordsEn: EvidenceWords = {
  where: {
    out: 'with the key out',
    off: 'with the key off',
    accessory: 'in accessory',
    on: 'with the key on',
    crank: 'while cranking',
    running: 'with the engine running',
    ready: 'with the vehicle ready',
    asleep: 'with the vehicle asleep',
    'switched off': 'with the vehicle switched off',
    'ignition on': 'with the ignition on',
  },
  endOfDrive: { key: 'key out', button: 'locking the vehicle' },
  seconds: (seconds) => `${seconds} s`,
  minutes: (minutes) => `${minutes} min`,
  number: (value) => (value === 10 ? 'ten' : String(value)),
  voltRange: (least, most) => `${least} to ${most} V`,
  wire: ({ point, colour, stripe }) =>
    colour === null ? `The wire (${point})` : `${capital(colourWords({ colour, stripe }))} (${point})`,
  wireIs: (wire, role, terminal, proof) =>
    `${wire} is ${role}${terminal === null ? '' : ` (terminal ${terminal})`}: ${proof}.`,
  signalProof: (readings) => `neither battery volts nor nothing ${readings}; never splice it`,
  fitsNoRole: (wire, readings) => `${wire} fits none of the roles looked for${readings === '' ? '' : `: ${readings}`}.`,
  nothingRuledOut: (wire) => `${wire} is not proven; nothing that was read rules out any role.`,
  readsLike: (wire, role) => `${wire} is not proven yet; so far it reads like ${role}.`,
  couldBe: (wire, roles, orNowhere) =>
    `${wire} is not proven; it could still be ${roles}${orNowhere ? ', or lead nowhere' : ''}.`,
  shows: {
    dead: 'dead',
    live: 'battery volts',
    low: 'less than battery volts',
    odd: 'neither battery volts nor nothing',
  },
  lamps: { on: ' and the lamps on', off: ' and the lamps off' },
  isolatorOpen: ' and the isolator open',
  blackOnLive: ' against a live wire',
  after: (volts, wait) => `${volts} after ${wait}`,
  loaded: (volts) => `${volts} loaded`,
  dropAt: (volts, milliamps, where) => `${volts} of drop at ${milliamps} mA ${where}`,
  againstLive: (volts, where) => `${volts} against a live wire ${where}`,
  wants: {
    again: 'Find another wire.',
    toProve: (role) => `(to prove that it is ${role})`,
    wouldRemain: (expected, possible) => `(about ${expected} of ${possible} possible roles would remain)`,
    reversed: (point, where, count) =>
      `Read ${point} ${where} with the black lead on a known constant: a ground shows the supply with a minus sign ${count}.`,
    read: ({ point, where, lamps, loaded, wait, count }) =>
      `Read ${point} ${where}, black lead on the chassis${lamps ? ', the lamps switched on' : ''}${loaded ? ', a test lamp or the device drawing on it' : ''}${wait === null ? '' : `, ${wait.minutes} minutes after ${wait.from}${wait.isolatorClosed ? ', isolator closed' : ''}`} ${count}.`,
  },
  next: {
    ruledOut: (verdict, found, lead) =>
      `The readings rule out "${verdict}".${found === null ? '' : ` The readings say ${found}.`} Read it again in each key position; if they stand, ${lead === null ? 'correct the verdict' : `join the ${lead} lead to another wire`}.`,
    record: (role) => `Record the verdict: ${role}.`,
    notProven: (verdict) => `The verdict "${verdict}" is not proven yet.`,
  },
  test: {
    reads: (level, where) => `reads ${level === 'supply' ? 'the supply' : 'nothing'} ${where}`,
    'ground against a live wire, or a small drop':
      'shows the supply with a negative sign against a known constant, or a small drop under load',
    'no ground': 'is no ground by the reading against a live wire, or by its drop under load',
    'has a starter': 'the vehicle has a starter',
    'goes dead without delay': 'goes dead at the end of the drive without delay',
    'holds under load': 'holds its volts under load',
    'follows the lamps': 'follows the lamps: nothing with them off, the supply with them on',
    'odd or wandering': 'reads an odd fraction of the supply, or wanders, with the vehicle awake',
  },
  trap: {
    delayedPower: ({ point, volts, wait, from }) =>
      `${point} still reads ${volts} ${wait} after ${from} and falls later: delayed power, not terminal 15.`,
    retainedPower: ({ point, volts, wait, from, minutes }) =>
      `${point} reads ${volts} ${wait === null ? `after ${from}, the wait not recorded` : `${wait} after ${from}`}: power may be kept on for minutes, so wait ${minutes} and read again.`,
    readsLow: ({ point, volts, where, supply, running }) =>
      `${point} reads ${volts} ${where} ${supply === null ? 'where a supply would show more' : `where the supply shows ${supply}`}: an accessory line, a loaded circuit or a poor contact. Prefer a wire with full volts.${running ? ' Smart charging also moves it: read both at the same moment.' : ''}`,
    dropsInCrank: (point) => `${point} falls to nothing while cranking: no ignition feed in the sense of terminal 15.`,
    signalOnly: ({ point, unloaded, loaded, where }) =>
      `${point} falls from ${unloaded} to ${loaded} under load ${where}: it carries a signal, or a poor contact feeds it. It is no supply.`,
    ghostVolts: (point, volts) =>
      `${point} shows ${volts ?? 'odd volts'} that nothing feeds: a floating wire on a high-impedance meter, or a line that never sleeps. It proves nothing; never splice it.`,
    averageOfASignal: ({ point, volts, where, twisted }) =>
      `${point} reads ${volts} ${where}, neither supply nor nothing: ${twisted ? 'one of a twisted pair, a data line' : 'the average of a data line or a pulse-width output, or a floating wire'}. Never splice it.`,
    twistedPair: (point) => `${point} is one of a twisted pair: a data line, whatever it reads. Never splice it.`,
    halfTheSupply: (point, volts) =>
      `${point} reads ${volts}, half of the 24 V supply: the tap between two batteries, or a converter's output. Joined to it, a device pulls one battery down.`,
    isolatorSide: {
      'dead with it open': (point, volts) =>
        `${point} is dead with the isolator open (${volts}): it is on the switched side, and a device on it sleeps with the vehicle.`,
      'dead proves nothing': (point) =>
        `${point} is on the switched side of the isolator: that it is dead with the key out proves nothing until the isolator is recorded as closed.`,
      'goes dead with it': (point) =>
        `${point} is live with the key out, on the switched side of the isolator: it goes dead when the isolator is opened.`,
      'read it open': (point) =>
        `${point} is live with the key out, and the vehicle has an isolator: read it with the isolator open to know its side.`,
    },
    overVoltage: (point, volts, where) =>
      `${hereOr(point)} reads ${volts} ${where}: over-voltage, look at the regulator first.`,
    systemDiffers: (found, recorded) => `The readings show a ${found} V system, the record says ${recorded} V.`,
    unsteady: (point, where) =>
      point === null
        ? `The supply wandered ${where}: a loose probe, or a poor battery connection.`
        : `${point} wandered ${where}: a signal, or a loose probe.`,
    disagree: (point, volts, where) =>
      point === null
        ? `The supply was read as ${volts} ${where}: one of them is wrong, and nothing can be compared with it.`
        : `${point} was read as ${volts} ${where}: one of them is wrong, read it again.`,
    throughALoad: {
      'read it on': (point, where, on) =>
        `${point} shows the supply against a live wire ${where}; so does every feed that is dead then, through what it feeds. Read it ${on}.`,
      'read its drop': (point) =>
        `${point} shows the supply against a live wire, as a ground does; a lamp or a coil to ground would too. Read its drop while the device draws current.`,
    },
    wrongReference: {
      negative: ({ point, volts, where }) =>
        `${point} reads ${volts} ${where}: the black lead was on something live, or the leads were swapped.`,
      'above the supply': ({ point, volts, where }) =>
        `${point} reads ${volts} ${where}, more than the supply: one of the two is wrong.`,
      'not live': ({ point, volts }) =>
        `${point} reads ${volts} against a live wire: the leads may be swapped, or the reference was not live.`,
      'not proven constant': ({ point, other }) =>
        `${point} was read against ${other ?? 'another wire'}, which is not proven constant: a dead reference proves nothing.`,
      'both ways': ({ point }) =>
        `${point} shows the supply against ground and against a live wire as well: one of the two references was wrong.`,
    },
    noBattery: {
      'reads nothing': (volts, where) =>
        `The battery reads ${volts} ${where}: the probes are not on its posts, the meter is on AC, or a fuse in its lead is blown. Nothing follows from it; read the battery again.`,
      'too high at rest': (volts, where) =>
        `The battery reads ${volts} ${where}: no battery rests so high. A charger is on it, or the meter's own battery is low. Nothing follows from it; read it again.`,
      'leads swapped': (volts, where) =>
        `The battery reads ${volts} ${where}: the meter's leads are swapped. Nothing follows from it; read everything again.`,
    },
    leak: (point, volts, where) =>
      `${point} reads ${volts} ${where}, where it should read nothing: a leak may show so much on a meter that draws no current. Read it again there with a test lamp or the device on it.`,
    fortyEightVolts: (point, volts) =>
      `${point} reads ${volts}: a 48 V line. Hands off: never splice it, and leave it to those licensed for it.`,
    supplyNotMeasured:
      'The supply itself was not measured: levels can only be judged by their order of size. Read it at the battery in each key position.',
    falls: ({ point, volts, where, holding }) =>
      `${point} is called constant but reads ${volts} ${where}, where ${holding} holds the supply.`,
    samePin: ({ point, other, connector, pin, roles }) =>
      `${point} and ${other} are the same pin (${connector ?? 'no connector named'}, ${pin}) and cannot be both ${roles[0]} and ${roles[1]}.`,
    constant: ({ point, wanders, lost, amperes, switched }) =>
      `${point} ${wanders ? 'wanders' : 'is steady'}, loses up to ${lost}, ${amperes === null ? 'its fuse is not known' : `is fused at ${amperes} A`}${switched ? ', on the switched side of the isolator' : ''}`,
    constants: (count, said, best) => `${count} constants: ${said}. ${best} is the better source.`,
  },
};
