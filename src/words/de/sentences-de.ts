import type { Sentences } from '../sentences.ts';
import { colourWords } from './evidence-words-de.ts';

const joined = (words: readonly string[], last: string) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
const and = (words: readonly string[]) => joined(words, 'und');
const capital = (text: string) => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
const leadWords = { supply: 'Versorgung', ignition: 'Zündung', ground: 'Masse' };
const answers = {
  accepts: 'nimmt ab',
  'accepts with remark': 'nimmt mit Bemerkung ab',
  refuses: 'nimmt nicht ab',
};
const points = (count: string) => (count === '1' ? '1 Punkt' : `${count} Punkten`);

/** Every sentence of the documents, in German. */
export const sentencesDe: Sentences = {
  and,
  or: (words) => joined(words, 'oder'),
  vehicle: ({ year, maker, model, plant }) => {
    const name = [maker, model].filter((word) => word !== '').join(' ');
    const kind = plant ? 'Maschine' : 'Fahrzeug';
    return `${name === '' ? kind : name}${year === '' ? '' : ` (${year})`}`;
  },
  nothingDone: (vehicle) => `Am Fahrzeug wurde nichts gemacht: ${vehicle}.`,
  nothingDoneUnknown: 'Warum die Arbeit nicht möglich war, ist nicht notiert.',
  done: (visit, { device, vehicle, removedSerial }) => {
    const serial = removedSerial === null ? '' : ` mit der Seriennummer ${removedSerial}`;
    switch (visit) {
      case 'new fit':
        return device === null
          ? `Gearbeitet wurde an: ${vehicle}; welches Gerät eingebaut wurde, ist nicht notiert.`
          : `Eingebaut wurde „${device}“ in: ${vehicle}.`;
      case 'swap':
        return device === null
          ? `Getauscht wurde ein Gerät${serial} in: ${vehicle}; das neue ist nicht notiert.`
          : `Eingebaut wurde „${device}“ anstelle des bisherigen Geräts${serial} in: ${vehicle}.`;
      case 'removal':
        return `Ausgebaut wurde ${device === null ? 'ein Gerät' : `„${device}“`}${serial} aus: ${vehicle}.`;
      case 'service call':
        return `Servicebesuch bei: ${vehicle}${device === null ? '' : ` und seinem Gerät „${device}“`}.`;
      default:
        return `Welche Art von Besuch dies war, ist nicht notiert: ${vehicle}.`;
    }
  },
  sits: ({ zone, surface, fixing, points: count }) =>
    `Es sitzt ${zone} (${surface})${fixing === null ? ' und ist nicht befestigt' : `, befestigt durch ${fixing}${count === null ? '' : ` an ${points(count)}`}`}.`,
  joined: (leads) =>
    `Angeschlossen: ${and(
      leads.map(({ lead, wire, place }) =>
        wire === null
          ? `${leadWords[lead]}${place === '' ? ' (woran, ist nicht notiert)' : ` an ${place}`}`
          : `${leadWords[lead]} an die Leitung ${colourWords(wire)}`,
      ),
    )}.`,
  allProven: 'Messungen beweisen jede dieser Leitungen.',
  notProven: (leads) =>
    `Durch Messungen nicht bewiesen: die ${leads.length === 1 ? 'Leitung' : 'Leitungen'} für ${and(leads)}.`,
  fuses: (fuses) =>
    `${fuses.length === 1 ? 'Sicherung' : 'Sicherungen'}: ${fuses
      .map(({ amperes, lead, distance }) => `${amperes} A in der Geräteleitung ${lead}, ${distance} von der Verbindung`)
      .join('; ')}.`,
  works: (lamp) => `Das Gerät arbeitete sichtbar${lamp === null ? '' : `; seine Leuchte zeigte: ${lamp}`}.`,
  worksNot: 'Das Gerät wurde nicht arbeitend gesehen.',
  worksUnknown: 'Ob das Gerät arbeitet, ist nicht notiert.',
  afterClean: 'Nach der Arbeit ist keine Warnleuchte als leuchtend und keine Funktion als gestört notiert.',
  freshLamps: (lamps) => `Leuchtet nach der Arbeit und vorher nicht: ${and(lamps)}.`,
  oldLamps: (lamps) => `Leuchtet vor und nach der Arbeit: ${and(lamps)}.`,
  freshFaults: (functions) => `Nach der Arbeit ohne Funktion, vorher nicht notiert: ${and(functions)}.`,
  oldFaults: (functions) => `Vor und nach der Arbeit ohne Funktion: ${and(functions)}.`,
  colour: colourWords,
  noColour: 'Farbe nicht notiert',
  pin: (pin) => `Kontakt\u00a0${pin}`,
  terminal: (number) => `Klemme ${number}`,
  fromJoint: (distance) => `${distance} von der Verbindung`,
  amperes: (amperes) => `Sicherung ${amperes}\u00a0A`,
  fuseAt: (amperes, distance) => `${amperes}\u00a0A nach ${distance}`,
  figureLead: ({ lead, wire, place, terminal, joint, fuse }) =>
    `Geräteleitung ${lead}: ${[wire, place, terminal === '' ? '' : `Klemme ${terminal}`, joint, fuse === '' ? 'ohne Sicherung' : `Sicherung ${fuse}`].filter((word) => word !== '').join(', ')}.`,
  planAlternative: (zone) => `Plan des Fahrzeugs von oben gesehen, vorn ist oben. Die Marke: ${zone}.`,
  fixed: (fixing, count) => (count === null ? fixing : `${fixing}, an ${points(count)}`),
  fastener: ({ name, fastener, out, back }) =>
    `${capital(name)}: ${out} × ${fastener} gelöst, ${back === null ? 'Zahl der wieder eingesetzten nicht notiert' : `${back} wieder eingesetzt`}.`,
  system: (volts, drive) => (drive === null ? `${volts} V` : `${volts} V, ${drive}`),
  verdictStands: (role) => `Der Monteur hielt es für: ${role}.`,
  keyOutWait: (minutes) =>
    `Erste Spalte ${minutes === '1' ? '1 Minute' : `${minutes} Minuten`} oder länger nach dem Ziehen des Schlüssels gemessen.`,
  atCurrent: (drop, milliamps) => `${drop} bei ${milliamps} mA`,
  alsoRead: (readings) => `Außerdem gemessen: ${readings}.`,
  superseded: (readings) => `Überholt: ${readings}.`,
  loadedAt: (volts, milliamps) => `${volts} bei ${milliamps} mA`,
  electrics: {
    lowest: 'Niedrigste Spannung am Gerät, berechnet',
    lowestValue: (volts, where) => `${volts} V ${where}`,
    window: 'Versorgung, die das Gerät braucht',
    windowValue: (from, to) => `${from} bis ${to} V`,
    drop: 'Spannungsfall der Leitungen, berechnet',
    groundDrop: 'Spannungsfall der Masse, gemessen',
    fuseMax: 'Größte Sicherung, die die Leitung erlaubt',
    standing: 'Standzeit, bis die Batterie halb leer ist',
    standingValue: (days, milliamps, assumed) =>
      `${days} ${days === '1' ? 'Tag' : 'Tage'}${milliamps === null ? '' : `; Fahrzeug und Gerät ziehen in Ruhe ${milliamps} mA`}${assumed ? ', Anteil des Fahrzeugs angenommen' : ''}`,
  },
  rulesLine: {
    'all hold': 'Keine der Handwerksregeln hat an diesem Auftrag etwas auszusetzen.',
    'some found something':
      'Was einige Handwerksregeln fanden, steht oben; die übrigen haben an diesem Auftrag nichts auszusetzen.',
  },
  rulesSources: (sources) =>
    `Veröffentlichte Quellen: ${sources}; das Übrige ist Handwerksbrauch. Der Monteur kann jede Regel mit ihrer Quelle drucken.`,
  signed: (answer, name, at) =>
    `Der Kunde ${answers[answer]}${name === null ? '' : `: ${name}`}${at === null ? '' : `, ${at}`}.`,
  notSigned: (because) => `Nicht unterschrieben: ${because}.`,
  notes: {
    'leave it alone':
      'Das Gerät nicht entfernen, abdecken oder versetzen; dem Fuhrparkbüro melden, wenn es sich löst oder klappert.',
    'warning lamp stays on':
      'Bleibt die Airbag- oder eine Warnleuchte an, das Fahrzeug nicht weiter benutzen und prüfen lassen.',
    'same fuse':
      'Eine durchgebrannte Sicherung nur durch eine gleicher Stärke ersetzen; brennt sie wieder durch, zuerst die Leitung verfolgen lassen.',
    'before work on the wiring':
      'Vor Arbeiten an den Leitungen: Feststellbremse an, Räder gesichert, Motor aus, Schlüssel gezogen; Batterie-Minus zuerst ab und zuletzt an.',
    'restraint wiring':
      'Gelb ummantelte Leitungen des Rückhaltesystems und Datenleitungen niemals anstechen, durchtrennen oder anzapfen.',
    'high voltage':
      'Orangefarbene Hochvoltleitungen niemals anstechen, durchtrennen oder versetzen; nur Fachkundige dürfen daran arbeiten.',
    'live with the isolator off':
      'Die Versorgung kommt von der Batterieseite des Trennschalters: das Gerät bleibt unter Spannung, wenn er offen ist.',
    '24 volts': 'Dies ist ein 24-V-Bordnetz: 12-V-Lampen, -Prüfer und -Lader gehören nicht an diese Leitungen.',
    exhaust: 'Den Motor nur im Freien oder mit abgeführten Abgasen laufen lassen.',
  },
  attention: (name) => `z. Hd. ${name}`,
  taxIdentifier: (text) => `Steuernummer ${text}`,
  exemption: (text) => `Befreiungsbescheinigung ${text}`,
  range: (from, to) => `${from} bis ${to}`,
  ofDate: (number, date) => `${number} vom ${date}`,
  taxLine: (name, percent, base) => `${name}, ${percent} von ${base}`,
  untaxedLine: (name, base) => `${name} (${base})`,
  early: (until, amount, percent) => `Bei Zahlung bis ${until}: ${amount} (${percent} Skonto).`,
  linesFor: (vehicle) => `Positionen für ${vehicle}`,
  withTax: (amount) => `${amount} mit Steuer`,
  perMany: (price, quantity) => `${price} für ${quantity}`,
  dueOn: (date) => `Zu zahlen bis ${date}`,
  creditExplained: (invoice) => `Dies korrigiert die Rechnung ${invoice}. Auf dieses Dokument ist nichts zu zahlen.`,
  cover: {
    handoverSubject: (vehicle, job) => `Übergabeblatt ${job}: ${vehicle}`,
    handoverAttached: (day) =>
      `Das Übergabeblatt vom ${day} liegt bei. Bitte bewahren Sie es bei den Fahrzeugpapieren auf.`,
    invoiceSubject: (number) => `Rechnung ${number}`,
    invoiceAttached: (number, amount, due) => `Die Rechnung ${number} liegt bei: ${amount}, zu zahlen bis ${due}.`,
    creditSubject: (number) => `Rechnungskorrektur ${number}`,
    creditAttached: (number, amount, invoice) =>
      `Die Rechnungskorrektur ${number} liegt bei: ${amount} gutgeschrieben auf die Rechnung ${invoice}.`,
    reference: (reference) => `Bitte geben Sie bei der Zahlung an: ${reference}`,
    order: (order) => `Ihre Bestellung: ${order}`,
    greeting: (name) => (name === null ? 'Guten Tag,' : `Guten Tag ${name},`),
    regards: 'Mit freundlichen Grüßen',
  },
};
