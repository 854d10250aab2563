import type { In } from "#lib/quantity";
import type {
  Amount,
  CostConventions,
  CostFlow,
  CostStream,
  Escalation,
  GivenBy,
  PriceLine,
  PriceLineHead,
  PriceLineKind,
  Years,
} from "./model";

/** Years counted from the base date: how many the study has, and how many pass before the field is in use. */
export type StudyYears = Readonly<{ studyYears: number; serviceStart: number }>;

/** The years of a project’s study. */
export const studyYearsOf = ({ studyPeriod, serviceStart }: CostConventions): StudyYears => ({
  studyYears: studyPeriod.years,
  serviceStart: serviceStart.years,
});

/** What the flows of a line depend on besides the line: the area of the field in m² and the years of the study. */
export type FlowSetting = StudyYears & Readonly<{ area: In<"m²"> }>;

/** One price of a line in words: what for, how much, and when, to follow the amount: "in each of the years 1 to 20". */
export type LinePrice = Readonly<{ label: string; amount: Amount; givenBy: GivenBy; schedule: string }>;

/** One kind of price line: its words for people and its flows by year. */
export type CostLineKind<K extends PriceLineKind> = Readonly<{
  label: string;
  /** The prices that the line gives, the main one first. */
  prices: (line: PriceLine<K>, years: StudyYears) => readonly [LinePrice, ...LinePrice[]];
  /** The last year that the line itself names; null where it follows the study period. */
  lastYear: (line: PriceLine<K>) => number | null;
  /** What the flows rest on besides the prices, in whole sentences. */
  assumptions: (line: PriceLine<K>) => readonly string[];
  /** Flows within the study; what falls later is left out. */
  flows: (line: PriceLine<K>, setting: FlowSetting) => readonly CostFlow[];
}>;

/** The only price of a line that has one. */
export const onlyPrice = (
  line: PriceLineHead & Readonly<{ amount: Amount }>,
  schedule: string,
): readonly [LinePrice] => [{ label: line.label, amount: line.amount, givenBy: line.givenBy, schedule }];

/** Years `from`, `from + step`, … up to and including `until`. */
export function everyYear(from: number, until: number, step = 1): readonly number[] {
  return Array.from({ length: Math.max(0, Math.floor((until - from) / step) + 1) }, (_, index) => from + index * step);
}

/** Cents by year, from a rule for the years that have a payment; the other years have none. */
export function streamOf(studyYears: number, payments: ReadonlyMap<number, number>): CostStream {
  const stream = new Array<number>(studyYears + 1).fill(0);
  for (const [year, cents] of payments) if (year <= studyYears) stream[year] = cents;
  return stream;
}

/** Growth of a price from the base date to the end of `year`; the payment of year 1 has already grown once. */
export const growth = (escalation: Escalation, year: number): number => (1 + (escalation?.value ?? 0)) ** year;

/** "every 2 years" */
export const intervalText = ({ years }: Years): string => (years === 1 ? "every year" : `every ${years} years`);

/** ", growing 2 % a year over general inflation", or nothing. */
export const growthText = (escalation: Escalation): string =>
  escalation === null ? "" : `, growing ${escalation.asEntered} a year over general inflation`;
