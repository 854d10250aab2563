import type { WriteSheet } from "hucre/xlsx";
import type { Evaluation, Project } from "#lib/evaluation";
import type { PlainDate } from "#lib/quantity";
import { conventionsInWords } from "../conventions-in-words";
import { Laid } from "./laid";

/** How the sheets hang together, in the order in which they follow from each other. */
const sheets = [
  [
    "Inputs",
    "Conventions, and every price line that counts, as typed cells. Lines that do not count stand below, with the reason.",
  ],
  [
    "Levelling",
    "How each bid stands to each item of scope, what stands in where it lacks one, and the sums as bid and levelled.",
  ],
  [
    "Yearly flows",
    "One row for each part of each price line and one column for each year. Every cell is a formula over “Inputs”.",
  ],
  [
    "Lives",
    "What of each part with a life lies on the field when the study ends. “Yearly flows” takes removal and value left from it.",
  ],
  ["Discounting", "Factors of each year, and the present value of each row of “Yearly flows”."],
  ["Totals", "What each bid costs, and beside it what the app showed when this file was made, with the difference."],
  [
    "Scores",
    "Weights, anchors, values and points. Figures that come from costs refer to “Totals”; all others are typed.",
  ],
] as const;

const use = [
  "Change a yellow cell and every other sheet follows. Cells without a ground are formulas.",
  "The file holds no results: your program works them out when it opens the file. A preview that does not calculate, or a protected view, shows empty cells until you allow editing.",
  "Each row of “Yearly flows” and “Discounting” names its line; the same name stands in the first column of “Inputs”.",
  "To take a line out, set its two marks under “Counts in the levelled cost” and “Stands in the bid as handed in” to 0.",
] as const;

const limits = [
  "Technical links (freight, top-up, grooming, tests, water, removal by mass) stand here with the quantity that the app worked out; the note of the line says from what. Change the quantity or the price, not the claim behind it.",
  "A median of other bids is a formula over their lines. Its schedule of payment is typed, and it does not notice when one of those lines stops counting.",
  "Which lines count, what a gate says, how a bid stands and whether evidence is enough are taken from the app as words or marks; they do not change by themselves.",
  "Technical figures are typed in the unit of the criterion. Hardness outlooks and chances are not worked out again here.",
  "The study can be made shorter, not longer than the years that this file has columns for.",
  "An open side of a figure is typed as 1,000,000,000,000 with its sign and shown as “open”.",
  "Payback, savings ratio, break-even and spread of costs are in the app only.",
  "Totals are summed from unrounded flows, so shown cents may differ from the shown total by a cent or two.",
] as const;

/** What the file is, how it is read, and what it does not do. */
export function readMePage(
  project: Project,
  evaluation: Evaluation,
  { madeOn, procedure }: Readonly<{ madeOn: PlainDate | null; procedure: readonly string[] }>,
): WriteSheet {
  const laid = new Laid("Read me");
  const { name, owner, notice, money } = project.brief;
  laid.text(1, 1, "Audit workbook", "title");
  let row = 2;
  const say = (label: string, text: string) => {
    laid.text(row, 1, label, "asked");
    laid.text(row, 2, text, "plain");
    row += 1;
  };
  say("Project", name);
  say("Owner", owner);
  say("Base date of all prices", money.baseDate);
  if (madeOn !== null) say("This file was made on", madeOn);
  if (notice !== "") say("Notice", notice);
  say(
    "What this is",
    "Costs and scores of all bids, worked out by the spreadsheet itself, so that anybody can follow and change them.",
  );
  say("Conventions", conventionsInWords(project));
  for (const sentence of procedure) say("Stage and amendments", sentence);
  row += 1;
  for (const [sheet, text] of sheets) say(`Sheet “${sheet}”`, text);
  row += 1;
  for (const text of use) say("How to use it", text);
  row += 1;
  for (const text of limits) say("What it does not do", text);
  row += 1;
  for (const text of evaluation.cautions) say("Caution", text);
  say("Caution", "Text from bidders stands in text cells. Do not turn such a cell into a formula.");
  return laid.sheet({ widths: [28, 110] });
}
