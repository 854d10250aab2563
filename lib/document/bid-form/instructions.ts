import { claimFieldLabels, evidenceLevels } from "#lib/claim";
import { type CurrencyCode, withCurrencySign } from "#lib/quantity";
import { priceColumns } from "./price-columns";
import { claimsTable, infillTable, pricesTable, singleCells } from "./sheets";

type Instruction = readonly [subject: string, text: string];

/** What a bidder reads before filling the form: a subject and what is to be known about it. */
export const instructionsIn = (currency: CurrencyCode): readonly Instruction[] =>
  instructions.map(([subject, text]) => [subject, withCurrencySign(text, currency)]);

const instructions: readonly Instruction[] = [
  [
    "What to fill",
    "Fill the white cells. Grey cells belong to the form and are locked, so that every bid can be read alike. Leave a cell empty where you have nothing to say; do not write zero for it.",
  ],
  [
    "Typed text only",
    "Write every entry as you would on paper: 2-1/4 in, ≥ 8 lbf, 3 lb/ft² ± 5 %, $4.85/ft². Formulas, links to other files and programs are not read.",
  ],
  [
    `Sheet ${claimsTable.sheet}`,
    "One figure a row, with its unit. What the owner asks for stands first and is marked; other properties follow by subject. For a second figure of a property, such as the same level in year 5, use the free rows at the end and choose the property there.",
  ],
  [
    "Units",
    "Write any of the units that are named beside a property. A number without a unit is not read, as nobody should have to guess it.",
  ],
  [
    "Test method",
    "Choose the method by which the figure was obtained. Figures by unlike methods are not compared. If none is known, choose “not stated”.",
  ],
  [
    "Condition",
    "The state of the surface that the figure is for: new, year 5, after 20,000 cycles. Levels with less infill than the full depth show how the system answers to lost infill: new, 0.5 in less infill.",
  ],
  [
    claimFieldLabels.testField,
    "A short name of the field that the figure was measured on, the same for all its figures; no place or person need be named. Figures of two fields or more show how fields of your system differ.",
  ],
  [claimFieldLabels.fieldCount, "For a mean over several fields: how many. Empty for one."],
  [
    claimFieldLabels.spread,
    "How single results scatter, where the report states it: 6 g, or 5 % of the figure. Leave it empty where it does not.",
  ],
  ...evidenceLevels.map(({ label, definition }) => [`Evidence: ${label}`, definition] as const),
  ["Evidence left empty", "Then the claim counts as stated, the lowest level."],
  ["Document and page", "Where in your bid the figure can be read."],
  [
    "In the bid's words",
    "The sentence of the bid itself. Where a property has no figure in your bid, its words stand for it.",
  ],
  [
    "A claim that is missing",
    "A property that is left empty counts as not shown. It is never guessed: in the comparison it may be anything from worst to best, it leaves a gate open, and the owner may ask you for it.",
  ],
  [
    `Sheet ${infillTable.sheet}`,
    "Each material of the infill, from the bottom up, with its mass per area of field. Give the loose density if a data sheet states it.",
  ],
  [
    `Sheet ${pricesTable.sheet}`,
    "One price a row. Fill the columns that its way of payment needs; the others stay empty.",
  ],
  [
    `${pricesTable.sheet}: ${singleCells.statedTotal.labelText}`,
    "All that is paid once at the base date or bought with a life, without alternates, unit prices for extra work and options. It is held against the prices below and against the sum in words.",
  ],
  ...priceColumns
    .filter(({ hint }) => hint !== "")
    .map(({ heading, hint }) => [`${pricesTable.sheet}: ${heading}`, hint] as const),
  [
    "What this form is not",
    "Filling it certifies nothing. Figures on impact do not predict or rule out injury; the finished field is tested, and local codes and licensed practice decide.",
  ],
];
