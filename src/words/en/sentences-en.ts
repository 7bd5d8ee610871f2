import type { Colour, Sentences } from '../sentences.ts';
import { colourWords } from './evidence-words-en.ts';

const joined = (words: readonly string[], last: string) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
const many = (count: string, thing: string) => `${count} ${thing}${count === '1' ? '' : 's'}`;
const and = (words: readonly string[]) => joined(words, 'and');
const article = (name: string) => `${/^(?:[aeio]|u(?!ni|s)|hour)/i.test(name) ? 'An' : 'A'} ${name}`;
const wireWords = ({ colour, stripe }: Colour) =>
  stripe === null ? `the ${colour} wire` : `the ${colour} wire with ${stripe} stripe`;
const capital = (text: string) => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;

/** Every sentence of the documents, in English. */
export const sentencesEn: Sentences = {
  and,
  or: (words) => joined(words, 'or'),
  vehicle: ({ year, maker, model, plant }) =>
    [year, maker, model].filter((word) => word !== '').join(' ') || (plant ? 'machine' : 'vehicle'),
  nothingDone: (vehicle) => `Nothing was done to the ${vehicle}.`,
  nothingDoneUnknown: 'Why the work could not be done is not recorded.',
  done: (visit, { device, vehicle, removedSerial }) => {
    const serial = removedSerial === null ? '' : ` with the serial ${removedSerial}`;
    switch (visit) {
      case 'new fit':
        return device === null
          ? `Work was done on the ${vehicle}; which device was fitted is not recorded.`
          : `${article(device)} was fitted to the ${vehicle}.`;
      case 'swap':
        return device === null
          ? `A device${serial} in the ${vehicle} was exchanged; the new one is not recorded.`
          : `${article(device)} was fitted to the ${vehicle} in place of the device${serial} that was there.`;
      case 'removal':
        return `${device === null ? 'A device' : article(device)}${serial} was taken out of the ${vehicle}.`;
      case 'service call':
        return `This was a service call to the ${vehicle}${device === null ? '' : ` and its ${device}`}.`;
      default:
        return `What kind of visit this was to the ${vehicle} is not recorded.`;
    }
  },
  sits: ({ zone, surface, fixing, points }) =>
    `It sits ${zone} (${surface})${fixing === null ? ', and is not fixed' : `, held by ${fixing}${points === null ? '' : ` at ${many(points, 'point')}`}`}.`,
  joined: (leads) =>
    `Joined: ${and(
      leads.map(({ lead, wire, place }) =>
        wire === null
          ? `${lead}${place === '' ? ' (to what is not recorded)' : ` at ${place}`}`
          : `${lead} to ${wireWords(wire)}`,
      ),
    )}.`,
  allProven: 'Meter readings prove each of these wires.',
  notProven: (leads) => `Not shown by meter readings: the ${leads.length === 1 ? 'wire' : 'wires'} for ${and(leads)}.`,
  fuses: (fuses) =>
    `${fuses.length === 1 ? 'Fuse' : 'Fuses'}: ${fuses
      .map(({ amperes, lead, distance }) => `${amperes} A in the ${lead} lead, ${distance} from the joint`)
      .join('; ')}.`,
  works: (lamp) => `The device was seen working${lamp === null ? '' : `; its lamp showed ${lamp}`}.`,
  worksNot: 'The device was not seen working.',
  worksUnknown: 'Whether the device works is not recorded.',
  afterClean: 'After the work no warning lamp is noted as lit and no function as failing.',
  freshLamps: (lamps) => `Lit after the work and not before: ${and(lamps)}.`,
  oldLamps: (lamps) => `Lit before and after the work: ${and(lamps)}.`,
  freshFaults: (functions) => `Not working after the work, and not noted before it: ${and(functions)}.`,
  oldFaults: (functions) => `Not working before and after the work: ${and(functions)}.`,
  colour: colourWords,
  noColour: 'colour not recorded',
  pin: (pin) => `pin\u00a0${pin}`,
  terminal: (number) => `terminal ${number}`,
  fromJoint: (distance) => `${distance} from the joint`,
  amperes: (amperes) => `fuse ${amperes}\u00a0A`,
  fuseAt: (amperes, distance) => `${amperes}\u00a0A at ${distance}`,
  figureLead: ({ lead, wire, place, terminal, joint, fuse }) =>
    `${capital(lead)} lead: ${[wire, place, terminal === '' ? '' : `terminal ${terminal}`, joint, fuse === '' ? 'no fuse' : `fuse ${fuse}`].filter((word) => word !== '').join(', ')}.`,
  planAlternative: (zone) => `Plan of the vehicle seen from above, front at the top. The mark: ${zone}.`,
  fixed: (fixing, points) => (points === null ? fixing : `${fixing}, ${many(points, 'point')}`),
  fastener: ({ name, fastener, out, back }) =>
    `${capital(name)}: ${out} × ${fastener} out, ${back === null ? 'number back in not recorded' : `${back} back in`}.`,
  system: (volts, drive) => (drive === null ? `${volts} V` : `${volts} V, ${drive}`),
  verdictStands: (role) => `The installer took it for: ${role}.`,
  keyOutWait: (minutes) => `First column read ${many(minutes, 'minute')} or longer after key out.`,
  atCurrent: (drop, milliamps) => `${drop} at ${milliamps} mA`,
  alsoRead: (readings) => `Also read: ${readings}.`,
  superseded: (readings) => `Superseded: ${readings}.`,
  loadedAt: (volts, milliamps) => `${volts} at ${milliamps} mA`,
  electrics: {
    lowest: 'Lowest volts at the device, worked out',
    lowestValue: (volts, where) => `${volts} V ${where}`,
    window: 'Supply the device needs',
    windowValue: (from, to) => `${from} to ${to} V`,
    drop: 'Drop in its leads, worked out',
    groundDrop: 'Ground drop, measured',
    fuseMax: 'Largest fuse the lead allows',
    standing: 'Standing until the battery is half down',
    standingValue: (days, milliamps, assumed) =>
      `${many(days, 'day')}${milliamps === null ? '' : `; vehicle and device draw ${milliamps} mA asleep`}${assumed ? ', the vehicle’s own share assumed' : ''}`,
  },
  rulesLine: {
    'all hold': 'None of the trade rules found anything to say of this job.',
    'some found something': 'What some trade rules found stands above; the others found nothing to say of this job.',
  },
  rulesSources: (sources) =>
    `Published sources: ${sources}; the rest is common practice of the trade. The installer can print each rule with its source.`,
  signed: (answer, name, at) =>
    `The customer ${answer}${name === null ? '' : `: ${name}`}${at === null ? '' : `, ${at}`}.`,
  notSigned: (because) => `Not signed: ${because}.`,
  notes: {
    'leave it alone': 'Do not remove, cover or move the device; tell the fleet office if it comes loose or rattles.',
    'warning lamp stays on': 'If an air bag or warning lamp stays on, stop using the vehicle and have it looked at.',
    'same fuse':
      'Replace a blown fuse only with one of the same rating; if it blows again, have the lead traced first.',
    'before work on the wiring':
      'Before work on the wiring: park brake on, wheels chocked, engine off, key out, battery negative off first and on last.',
    'restraint wiring': 'Never probe, cut or tap yellow-sleeved restraint wiring or data pairs.',
    'high voltage': 'Never probe, cut or move orange high-voltage cable; only trained people may work on it.',
    'live with the isolator off':
      'The supply is taken on the battery side of the isolator: the device stays live when the isolator is off.',
    '24 volts': 'This is a 24 V system: 12 V lamps, testers and chargers do not belong on these leads.',
    exhaust: 'Run the engine only in the open or with the exhaust led away.',
  },
  attention: (name) => `Attention: ${name}`,
  taxIdentifier: (text) => `Tax identifier ${text}`,
  exemption: (text) => `Exemption certificate ${text}`,
  range: (from, to) => `${from} to ${to}`,
  ofDate: (number, date) => `${number} of ${date}`,
  taxLine: (name, percent, base) => `${name}, ${percent} of ${base}`,
  untaxedLine: (name, base) => `${name} (${base})`,
  early: (until, amount, percent) => `Paid by ${until}: ${amount} (${percent} off).`,
  linesFor: (vehicle) => `Lines for ${vehicle}`,
  withTax: (amount) => `${amount} with tax`,
  perMany: (price, quantity) => `${price} for ${quantity}`,
  dueOn: (date) => `Due ${date}`,
  creditExplained: (invoice) => `This credits invoice ${invoice}. Nothing is to be paid on this document.`,
  cover: {
    handoverSubject: (vehicle, job) => `Handover sheet ${job}: ${vehicle}`,
    handoverAttached: (day) => `The handover sheet of ${day} is attached. Please keep it with the vehicle’s papers.`,
    invoiceSubject: (number) => `Invoice ${number}`,
    invoiceAttached: (number, amount, due) => `Invoice ${number} is attached: ${amount}, due ${due}.`,
    creditSubject: (number) => `Credit note ${number}`,
    creditAttached: (number, amount, invoice) =>
      `Credit note ${number} is attached: ${amount} credited to invoice ${invoice}.`,
    reference: (reference) => `Please give this reference with the payment: ${reference}`,
    order: (order) => `Your purchase order: ${order}`,
    greeting: (name) => (name === null ? 'Good day,' : `Good day ${name},`),
    regards: 'Kind regards',
  },
};
