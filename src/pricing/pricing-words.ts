import type { TaxCode } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { Language } from '../records/language.ts';

type Visit = NonNullable<Job['identity']['visit']>;
type VehicleClass = NonNullable<Job['vehicle']['class']>;

/** What lines of an invoice say in one language; figures are given written already. */
export type PricingWords = {
  /** a kind of visit, as it stands inside a sentence */
  readonly visits: Readonly<Record<Visit, string>>;
  readonly job: string;
  readonly classes: Readonly<Record<VehicleClass, string>>;
  readonly flatRate: (where: string) => string;
  readonly included: (time: string) => string;
  readonly fromVehicle: (place: number) => string;
  readonly labour: string;
  readonly labourBeyond: string;
  readonly worked: (time: string) => string;
  readonly workedLess: (time: string, included: string, beyond: string) => string;
  readonly rounded: (stepMinutes: number, rounding: 'up' | 'nearest') => string;
  readonly atLeast: (time: string) => string;
  readonly waiting: string;
  /** why it was waited is empty where it is not recorded */
  readonly waited: (time: string, why: string, free: string) => string;
  readonly fitted: string;
  readonly callOut: string;
  readonly callOutFor: (visit: string) => string;
  readonly wastedVisit: string;
  readonly notWorkedOn: string;
  readonly plate: (plate: string) => string;
  readonly unitNumber: (unit: string) => string;
  readonly listPrice: string;
  readonly atCost: string;
  readonly costPlus: (percent: string) => string;
  readonly off: (percent: string, because: string) => string;
  readonly offJob: (percent: string, job: string, because: string) => string;
  readonly asAgreed: string;
  readonly outside: (start: string, end: string) => string;
  readonly onWeekend: string;
  /** the holiday's name is empty where the day itself is none */
  readonly onHoliday: (name: string) => string;
  readonly wholeVisit: string;
  readonly timeOf: (part: string, all: string) => string;
  /** `share` is what of the work, `whole` whether that is all of it */
  readonly surcharge: (share: string, occasion: string, percent: string, base: string, whole: boolean) => string;
  readonly travelDistance: string;
  readonly travelTime: string;
  readonly tollsAndParking: string;
  readonly distance: (
    unit: string,
    driven: string,
    free: string,
    charged: string,
    price: string,
    sum: string,
  ) => string;
  readonly onTheRoad: (time: string, charged: string, price: string, sum: string) => string;
  readonly tolls: (sum: string) => string;
  /** `share` is this job's part of the whole, empty where all have the same */
  readonly shared: (by: 'equally' | 'time' | 'distance', vehicles: number, share: string) => string;
  readonly creditOf: (line: number, invoice: string, inPart: boolean) => string;
  /** what a category means by itself, where the book gives no words for it */
  readonly taxReasons: Readonly<Partial<Record<TaxCode['category'], string>>>;
  readonly noTax: string;
  readonly exempt: string;
  readonly certificate: (number: string) => string;
};

/** The language of a document and what its lines say in it. */
export type Wording = { readonly language: Language; readonly words: PricingWords };
