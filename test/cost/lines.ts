import fc from "fast-check";
import {
  type CostConventions,
  costConventionsSchema,
  type PriceLine,
  priceLineSchema,
  priceLinesSchema,
} from "#lib/cost";
import { measured } from "#lib/quantity";
import { conventionsText } from "../checks/cost-example";

const conventionsWith = (changes: Readonly<Record<string, string>> = {}): CostConventions =>
  costConventionsSchema.parse({ ...conventionsText, ...changes });

export const lumpSum = (price: string) => ({ kind: "lump-sum", price }) as const;

const head = { id: "line", label: "Line", givenBy: "bid" };
const spent = { category: "operation-and-maintenance", amount: lumpSum("$100") };

/** A price line as text, complete but for what a test is about. */
export const lineTexts = {
  "at-base-date": { kind: "at-base-date", ...head, ...spent },
  "in-year": { kind: "in-year", ...head, ...spent, year: "5" },
  yearly: { kind: "yearly", ...head, ...spent },
  periodic: { kind: "periodic", ...head, ...spent, every: "2 years" },
  "replacement-chain": {
    kind: "replacement-chain",
    ...head,
    amount: lumpSum("$100"),
    life: "8 years",
    lifeGivenBy: "bid",
  },
} as const;

export const lineWith = (kind: keyof typeof lineTexts, changes: Readonly<Record<string, unknown>> = {}): PriceLine =>
  priceLineSchema.parse({ ...lineTexts[kind], ...changes });

export const setting = (changes: Readonly<Record<string, string>> = {}) => ({
  bid: "bid-a",
  area: measured("area", 80_000, "ft²"),
  hoursPerYear: measured("yearlyUse", 1800),
  conventions: conventionsWith(changes),
});

// Lines of every kind with costs of zero or more, as text, for laws that hold for any prices.

const dollars = fc.integer({ min: 0, max: 900_000 }).map((amount) => `$${amount}`);
const anyAmount = fc.oneof(
  dollars.map(lumpSum),
  fc.integer({ min: 0, max: 2000 }).map((cents) => ({ kind: "per-area", price: `$${(cents / 100).toFixed(2)}/ft²` })),
  fc
    .integer({ min: 0, max: 9000 })
    .map((pounds) => ({ kind: "per-unit", quantity: `${pounds} lb`, unitPrice: "$0.38/lb" })),
);
const anyYear = fc.integer({ min: 1, max: 24 }).map(String);
const anyGrowth = fc.constantFrom("", "0 %", "2 %", "-1 %");
const anySpent = fc.constantFrom("investment", "operation-and-maintenance", "testing");

const anyLine = fc.oneof(
  fc.record({ kind: fc.constant("at-base-date"), category: anySpent, amount: anyAmount }),
  fc.record({
    kind: fc.constant("in-year"),
    category: anySpent,
    amount: anyAmount,
    year: anyYear,
    escalation: anyGrowth,
  }),
  fc.record({ kind: fc.constant("yearly"), category: anySpent, amount: anyAmount, escalation: anyGrowth }),
  fc.record({
    kind: fc.constant("periodic"),
    category: anySpent,
    amount: anyAmount,
    every: anyYear,
    escalation: anyGrowth,
  }),
  fc.record({
    kind: fc.constant("replacement-chain"),
    amount: anyAmount,
    life: anyYear,
    lifeGivenBy: fc.constant("bid"),
    renewalSaving: fc.constantFrom("", "8 %"),
    removal: fc.option(anyAmount),
    removalAtStudyEnd: fc.constantFrom("used-life-share", "full", "none"),
    residual: fc.constantFrom("straight-line", "stated", "none"),
    statedResidual: fc.integer({ min: -90_000, max: 90_000 }).map((amount) => `$${amount}`.replace("$-", "-$")),
    escalation: anyGrowth,
  }),
);

/** Up to five lines of any kind, parsed. */
export const anyLines = fc
  .array(anyLine, { minLength: 1, maxLength: 5 })
  .map((lines) => priceLinesSchema.parse(lines.map((line, index) => ({ ...head, ...line, id: `line-${index}` }))));
