import type { EvidenceWords } from '../evidence-words.ts';
import type { Colour } from '../sentences.ts';
import { coloursDe } from './colours-de.ts';

const capital = (text: string) => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
const hereOr = (point: string | null) => point ?? 'Die Versorgung';
const known = (colour: string) => coloursDe.get(colour.toLowerCase());
/** "mit weißem Streifen"; colours that German does not bend, and unknown ones, stand behind: "mit Streifen rosa". */
const unbent = ['rosa', 'lila', 'beige', 'orange', 'türkis'];
const stripeWords = (stripe: string) => {
  const german = known(stripe);
  return german === undefined || unbent.includes(german) ? `Streifen ${german ?? stripe}` : `${german}em Streifen`;
};

/** A wire's colour with its stripe, in German. */
export const colourWords = ({ colour, stripe }: Colour) =>
  `${known(colour) ?? colour}${stripe === null ? '' : ` mit ${stripeWords(stripe)}`}`;

/** Every sentence about readings and what they prove, in German. */
export const evidenceWordsDe: EvidenceWords = {
  where: {
    out: 'bei gezogenem Schlüssel',
    off: 'bei Schlüssel aus',
    accessory: 'in Stellung Zubehör',
    on: 'bei Zündung ein',
    crank: 'beim Anlassen',
    running: 'bei laufendem Motor',
    ready: 'bei fahrbereitem Fahrzeug',
    asleep: 'bei ruhendem Fahrzeug',
    'switched off': 'bei ausgeschaltetem Fahrzeug',
    'ignition on': 'bei Zündung ein',
  },
  endOfDrive: { key: 'dem Ziehen des Schlüssels', button: 'dem Verriegeln' },
  seconds: (seconds) => `${seconds} s`,
  minutes: (minutes) => `${minutes} min`,
  number: (value) => (value === 10 ? 'zehn' : String(value)),
  voltRange: (least, most) => `${least} bis ${most} V`,
  wire: ({ point, colour, stripe }) =>
    colour === null ? `Die Leitung (${point})` : `${capital(colourWords({ colour, stripe }))} (${point})`,
  wireIs: (wire, role, terminal, proof) =>
    `${wire} ist ${role}${terminal === null ? '' : ` (Klemme ${terminal})`}: ${proof}.`,
  signalProof: (readings) => `weder Batteriespannung noch nichts ${readings}; niemals anzapfen`,
  fitsNoRole: (wire, readings) =>
    `${wire} passt zu keiner der gesuchten Aufgaben${readings === '' ? '' : `: ${readings}`}.`,
  nothingRuledOut: (wire) => `${wire} ist nicht bewiesen; nichts Gemessenes schließt eine Aufgabe aus.`,
  readsLike: (wire, role) => `${wire} ist noch nicht bewiesen; bisher misst es sich wie ${role}.`,
  couldBe: (wire, roles, orNowhere) =>
    `${wire} ist nicht bewiesen; möglich sind noch ${roles}${orNowhere ? ', oder es führt nirgendwohin' : ''}.`,
  shows: {
    dead: 'spannungslos',
    live: 'Batteriespannung',
    low: 'weniger als Batteriespannung',
    odd: 'weder Batteriespannung noch nichts',
  },
  lamps: { on: ' und Licht an', off: ' und Licht aus' },
  isolatorOpen: ' bei offenem Trennschalter',
  blackOnLive: ' gegen eine spannungsführende Leitung',
  after: (volts, wait) => `${volts} nach ${wait}`,
  loaded: (volts) => `${volts} belastet`,
  dropAt: (volts, milliamps, where) => `${volts} Spannungsfall bei ${milliamps} mA ${where}`,
  againstLive: (volts, where) => `${volts} gegen eine Leitung unter Spannung ${where}`,
  wants: {
    again: 'Eine andere Leitung suchen.',
    toProve: (role) => `(als Beweis für ${role})`,
    wouldRemain: (expected, possible) => `(etwa ${expected} von ${possible} möglichen Aufgaben blieben übrig)`,
    reversed: (point, where, count) =>
      `${point} ${where} messen, schwarze Messspitze an einem bekannten Dauerplus: eine Masse zeigt die Versorgung mit Minuszeichen ${count}.`,
    read: ({ point, where, lamps, loaded, wait, count }) =>
      `${point} ${where} messen, schwarze Messspitze am Chassis${lamps ? ', Licht eingeschaltet' : ''}${loaded ? ', mit Prüflampe oder Gerät daran' : ''}${wait === null ? '' : `, ${wait.minutes} Minuten nach ${wait.from}${wait.isolatorClosed ? ', Trennschalter geschlossen' : ''}`} ${count}.`,
  },
  next: {
    ruledOut: (verdict, found, lead) =>
      `Die Messungen schließen „${verdict}“ aus.${found === null ? '' : ` Sie sagen ${found}.`} In jeder Schlüsselstellung noch einmal messen; bleibt es dabei, ${lead === null ? 'das Urteil berichtigen' : `die Geräteleitung ${lead} anderswo anschließen`}.`,
    record: (role) => `Urteil eintragen: ${role}.`,
    notProven: (verdict) => `Das Urteil „${verdict}“ ist noch nicht bewiesen.`,
  },
  test: {
    reads: (level, where) => `misst ${level === 'supply' ? 'die Versorgung' : 'nichts'} ${where}`,
    'ground against a live wire, or a small drop':
      'zeigt gegen ein bekanntes Dauerplus die Versorgung mit Minuszeichen, oder unter Last einen kleinen Spannungsfall',
    'no ground': 'ist nach der Messung gegen eine Leitung unter Spannung oder nach dem Spannungsfall keine Masse',
    'has a starter': 'das Fahrzeug hat einen Anlasser',
    'goes dead without delay': 'wird am Ende der Fahrt ohne Verzögerung spannungslos',
    'holds under load': 'hält die Spannung unter Last',
    'follows the lamps': 'folgt dem Licht: nichts bei Licht aus, Versorgung bei Licht an',
    'odd or wandering': 'misst einen seltsamen Bruchteil der Versorgung oder schwankt bei wachem Fahrzeug',
  },
  trap: {
    delayedPower: ({ point, volts, wait, from }) =>
      `${point} misst ${wait} nach ${from} noch ${volts} und fällt später ab: verzögerte Spannung, nicht Klemme 15.`,
    retainedPower: ({ point, volts, wait, from, minutes }) =>
      `${point} misst ${volts} ${wait === null ? `nach ${from}, Wartezeit nicht notiert` : `${wait} nach ${from}`}: die Spannung kann minutenlang nachlaufen, also ${minutes} warten und noch einmal messen.`,
    readsLow: ({ point, volts, where, supply, running }) =>
      `${point} misst ${volts} ${where}, wo ${supply === null ? 'eine Versorgung mehr zeigte' : `die Versorgung ${supply} zeigt`}: eine Zubehörleitung, ein belasteter Stromkreis oder ein schlechter Kontakt. Besser eine Leitung mit voller Spannung.${running ? ' Auch intelligentes Laden verschiebt sie: beide im selben Augenblick messen.' : ''}`,
    dropsInCrank: (point) => `${point} fällt beim Anlassen auf nichts: keine Zündversorgung im Sinn von Klemme 15.`,
    signalOnly: ({ point, unloaded, loaded, where }) =>
      `${point} fällt unter Last ${where} von ${unloaded} auf ${loaded}: es führt ein Signal, oder ein schlechter Kontakt speist es. Es ist keine Versorgung.`,
    ghostVolts: (point, volts) =>
      `${point} zeigt ${volts ?? 'eine seltsame Spannung'}, die nichts speist: eine offene Leitung an einem hochohmigen Messgerät, oder eine Leitung, die nie ruht. Es beweist nichts; niemals anzapfen.`,
    averageOfASignal: ({ point, volts, where, twisted }) =>
      `${point} misst ${volts} ${where}, weder Versorgung noch nichts: ${twisted ? 'eine von einem verdrillten Paar, eine Datenleitung' : 'der Mittelwert einer Datenleitung oder eines getakteten Ausgangs, oder eine offene Leitung'}. Niemals anzapfen.`,
    twistedPair: (point) =>
      `${point} gehört zu einem verdrillten Paar: eine Datenleitung, was immer sie misst. Niemals anzapfen.`,
    halfTheSupply: (point, volts) =>
      `${point} misst ${volts}, die Hälfte der 24-V-Versorgung: die Mitte zwischen zwei Batterien oder der Ausgang eines Wandlers. Daran zieht ein Gerät eine Batterie leer.`,
    isolatorSide: {
      'dead with it open': (point, volts) =>
        `${point} ist bei offenem Trennschalter spannungslos (${volts}): es liegt auf der geschalteten Seite, und ein Gerät daran ruht mit dem Fahrzeug.`,
      'dead proves nothing': (point) =>
        `${point} liegt auf der geschalteten Seite des Trennschalters: dass es ohne Schlüssel spannungslos ist, beweist nichts, solange der Schalter nicht als geschlossen notiert ist.`,
      'goes dead with it': (point) =>
        `${point} steht ohne Schlüssel unter Spannung, auf der geschalteten Seite des Trennschalters: mit dem Öffnen wird es spannungslos.`,
      'read it open': (point) =>
        `${point} steht ohne Schlüssel unter Spannung, und das Fahrzeug hat einen Trennschalter: bei offenem Schalter messen, dann ist die Seite bekannt.`,
    },
    overVoltage: (point, volts, where) =>
      `${hereOr(point)} misst ${volts} ${where}: Überspannung, zuerst den Regler prüfen.`,
    systemDiffers: (found, recorded) => `Die Messungen zeigen ein ${found}-V-Bordnetz, notiert sind ${recorded} V.`,
    unsteady: (point, where) =>
      point === null
        ? `Die Versorgung schwankte ${where}: eine lose Messspitze oder ein schlechter Batterieanschluss.`
        : `${point} schwankte ${where}: ein Signal oder eine lose Messspitze.`,
    disagree: (point, volts, where) =>
      point === null
        ? `Die Versorgung wurde ${where} als ${volts} gemessen: eine davon ist falsch, und nichts lässt sich mit ihr vergleichen.`
        : `${point} wurde ${where} als ${volts} gemessen: eine davon ist falsch, noch einmal messen.`,
    throughALoad: {
      'read it on': (point, where, on) =>
        `${point} zeigt ${where} gegen eine Leitung unter Spannung die Versorgung; das tut dann auch jede abgeschaltete Speiseleitung durch ihren Verbraucher. ${capital(on)} messen.`,
      'read its drop': (point) =>
        `${point} zeigt gegen eine Leitung unter Spannung die Versorgung wie eine Masse; das täten auch eine Lampe oder eine Spule an Masse. Den Spannungsfall messen, während das Gerät Strom zieht.`,
    },
    wrongReference: {
      negative: ({ point, volts, where }) =>
        `${point} misst ${volts} ${where}: die schwarze Messspitze lag an Spannung, oder die Spitzen waren vertauscht.`,
      'above the supply': ({ point, volts, where }) =>
        `${point} misst ${volts} ${where}, mehr als die Versorgung: eine von beiden Messungen ist falsch.`,
      'not live': ({ point, volts }) =>
        `${point} misst ${volts} gegen eine Leitung unter Spannung: die Spitzen können vertauscht sein, oder der Bezug lag nicht an Spannung.`,
      'not proven constant': ({ point, other }) =>
        `${point} wurde gegen ${other ?? 'eine andere Leitung'} gemessen, die nicht als Dauerplus bewiesen ist: ein spannungsloser Bezug beweist nichts.`,
      'both ways': ({ point }) =>
        `${point} zeigt die Versorgung gegen Masse und auch gegen eine Leitung unter Spannung: einer der beiden Bezüge war falsch.`,
    },
    noBattery: {
      'reads nothing': (volts, where) =>
        `Die Batterie misst ${volts} ${where}: die Spitzen sitzen nicht an ihren Polen, das Messgerät steht auf Wechselspannung, oder eine Sicherung seiner Leitung ist durch. Daraus folgt nichts; die Batterie noch einmal messen.`,
      'too high at rest': (volts, where) =>
        `Die Batterie misst ${volts} ${where}: so hoch ruht keine Batterie. Ein Ladegerät hängt daran, oder die Batterie des Messgeräts ist schwach. Daraus folgt nichts; noch einmal messen.`,
      'leads swapped': (volts, where) =>
        `Die Batterie misst ${volts} ${where}: die Messleitungen sind vertauscht. Daraus folgt nichts; alles noch einmal messen.`,
    },
    leak: (point, volts, where) =>
      `${point} misst ${volts} ${where}, wo es nichts messen sollte: so viel kann ein Kriechstrom an einem Messgerät zeigen, das keinen Strom zieht. Dort noch einmal mit Prüflampe oder Gerät daran messen.`,
    fortyEightVolts: (point, volts) =>
      `${point} misst ${volts}: eine 48-V-Leitung. Hände weg: niemals anzapfen, und denen überlassen, die dafür zugelassen sind.`,
    supplyNotMeasured:
      'Die Versorgung selbst wurde nicht gemessen: die Pegel lassen sich nur nach ihrer Größenordnung beurteilen. In jeder Schlüsselstellung an der Batterie messen.',
    falls: ({ point, volts, where, holding }) =>
      `${point} ist als Dauerplus benannt, misst aber ${volts} ${where}, wo ${holding} die Versorgung hält.`,
    samePin: ({ point, other, connector, pin, roles }) =>
      `${point} und ${other} sind derselbe Kontakt (${connector ?? 'Stecker nicht benannt'}, ${pin}) und können nicht zugleich ${roles[0]} und ${roles[1]} sein.`,
    constant: ({ point, wanders, lost, amperes, switched }) =>
      `${point} ${wanders ? 'schwankt' : 'ist ruhig'}, verliert bis ${lost}, ${amperes === null ? 'Sicherung unbekannt' : `mit ${amperes} A abgesichert`}${switched ? ', auf der geschalteten Seite des Trennschalters' : ''}`,
    constants: (count, said, best) => `${count} Dauerplus: ${said}. ${best} ist die bessere Quelle.`,
  },
};
