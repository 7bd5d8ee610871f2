import type { DeviceLead } from '../records/connection.ts';
import type { Job } from '../records/job.ts';
import type { NoteName } from './note-name.ts';

export type Colour = { readonly colour: string; readonly stripe: string | null };

/** Every sentence a document can say, in one language; what goes in is worded and formatted already. */
export type Sentences = {
  readonly and: (words: readonly string[]) => string;
  readonly or: (words: readonly string[]) => string;
  readonly vehicle: (vehicle: {
    readonly year: string;
    readonly maker: string;
    readonly model: string;
    readonly plant: boolean;
  }) => string;
  readonly nothingDone: (vehicle: string) => string;
  readonly nothingDoneUnknown: string;
  readonly done: (
    visit: Job['identity']['visit'],
    facts: { readonly device: string | null; readonly vehicle: string; readonly removedSerial: string | null },
  ) => string;
  readonly sits: (place: {
    readonly zone: string;
    readonly surface: string;
    readonly fixing: string | null;
    readonly points: string | null;
  }) => string;
  readonly joined: (
    leads: readonly { readonly lead: DeviceLead; readonly wire: Colour | null; readonly place: string }[],
  ) => string;
  readonly allProven: string;
  readonly notProven: (leads: readonly string[]) => string;
  readonly fuses: (
    fuses: readonly { readonly amperes: string; readonly lead: string; readonly distance: string }[],
  ) => string;
  readonly works: (lamp: string | null) => string;
  readonly worksNot: string;
  readonly worksUnknown: string;
  readonly afterClean: string;
  readonly freshLamps: (lamps: readonly string[]) => string;
  readonly oldLamps: (lamps: readonly string[]) => string;
  readonly freshFaults: (functions: readonly string[]) => string;
  readonly oldFaults: (functions: readonly string[]) => string;
  readonly colour: (colour: Colour) => string;
  readonly noColour: string;
  readonly pin: (pin: string) => string;
  readonly terminal: (number: string) => string;
  readonly fromJoint: (distance: string) => string;
  readonly amperes: (amperes: string) => string;
  readonly fuseAt: (amperes: string, distance: string) => string;
  readonly figureLead: (row: {
    readonly lead: string;
    readonly wire: string;
    readonly place: string;
    readonly terminal: string;
    readonly joint: string;
    readonly fuse: string;
  }) => string;
  readonly planAlternative: (zone: string) => string;
  readonly fixed: (fixing: string, points: string | null) => string;
  readonly fastener: (panel: {
    readonly name: string;
    readonly fastener: string;
    readonly out: string;
    readonly back: string | null;
  }) => string;
  readonly system: (volts: string, drive: string | null) => string;
  readonly verdictStands: (role: string) => string;
  readonly keyOutWait: (minutes: string) => string;
  readonly atCurrent: (drop: string, milliamps: string) => string;
  readonly alsoRead: (readings: string) => string;
  readonly superseded: (readings: string) => string;
  readonly loadedAt: (volts: string, milliamps: string) => string;
  readonly electrics: {
    readonly lowest: string;
    readonly lowestValue: (volts: string, where: string) => string;
    readonly window: string;
    readonly windowValue: (from: string, to: string) => string;
    readonly drop: string;
    readonly groundDrop: string;
    readonly fuseMax: string;
    readonly standing: string;
    readonly standingValue: (days: string, milliamps: string | null, assumed: boolean) => string;
  };
  /** the number of rules is not printed: a page made later from the same record says the same */
  readonly rulesLine: Readonly<Record<'all hold' | 'some found something', string>>;
  readonly rulesSources: (sources: string) => string;
  readonly signed: (
    answer: 'accepts' | 'accepts with remark' | 'refuses',
    name: string | null,
    at: string | null,
  ) => string;
  readonly notSigned: (because: string) => string;
  readonly notes: Readonly<Record<NoteName, string>>;
  readonly attention: (name: string) => string;
  readonly taxIdentifier: (text: string) => string;
  readonly exemption: (text: string) => string;
  readonly range: (from: string, to: string) => string;
  readonly ofDate: (number: string, date: string) => string;
  readonly taxLine: (name: string, percent: string, base: string) => string;
  readonly untaxedLine: (name: string, base: string) => string;
  readonly early: (until: string, amount: string, percent: string) => string;
  readonly linesFor: (vehicle: string) => string;
  readonly withTax: (amount: string) => string;
  readonly perMany: (price: string, quantity: string) => string;
  readonly dueOn: (date: string) => string;
  readonly creditExplained: (invoice: string) => string;
  readonly cover: {
    readonly handoverSubject: (vehicle: string, job: string) => string;
    readonly handoverAttached: (day: string) => string;
    readonly invoiceSubject: (number: string) => string;
    readonly invoiceAttached: (number: string, amount: string, due: string) => string;
    readonly creditSubject: (number: string) => string;
    readonly creditAttached: (number: string, amount: string, invoice: string) => string;
    readonly reference: (reference: string) => string;
    readonly order: (order: string) => string;
    readonly greeting: (name: string | null) => string;
    readonly regards: string;
  };
};
