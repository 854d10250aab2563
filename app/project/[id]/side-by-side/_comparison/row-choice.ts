import { type ShownCell, saidInWords } from "./model";

/** What a cell comes to: enough to choose rows and to copy them. */
export type CellGist = Readonly<{ text: string; isGap: boolean; isInQuestion: boolean }>;

/** A status and the titles of open findings belong to the text, since a figure without them would say too much. */
export function gistOf({ said, status, marks }: ShownCell): CellGist {
  const open = marks.filter(({ isSettled }) => !isSettled);
  const words = [saidInWords(said), status ?? "", ...open.map(({ title }) => title)].filter((part) => part !== "");
  return {
    text: words.join(" – "),
    isGap: status === "not shown",
    isInQuestion: status === "not comparable" || status === "over-claimed" || open.length > 0,
  };
}

/** Which rows to show. */
export const rowChoices = {
  all: "All rows",
  differences: "Only differences",
  gaps: "Only gaps",
  questions: "Only not comparable or findings",
} as const;

export type RowChoice = keyof typeof rowChoices;

/** What the bids say. A gap says nothing, though its cell reads “not shown”. */
const stated = (cells: readonly CellGist[]): readonly string[] =>
  cells.filter(({ text, isGap }) => text !== "" && !isGap).map(({ text }) => text);

/** Two bids say different things, or one says it in a way that can't be compared. */
const differs = (cells: readonly CellGist[]): boolean =>
  new Set(stated(cells)).size > 1 || cells.some(({ isInQuestion }) => isInQuestion);

/** Whether a row belongs to a choice, looking only at the bids that are shown. */
export function isChosen(cells: readonly CellGist[], choice: RowChoice): boolean {
  switch (choice) {
    case "all":
      return true;
    case "differences":
      return differs(cells);
    case "gaps":
      return cells.some(({ isGap }) => isGap);
    case "questions":
      return cells.some(({ isInQuestion }) => isInQuestion);
  }
}

/** Every bid that is shown says the same and nothing is in question. */
export const isEqual = (cells: readonly CellGist[]): boolean =>
  cells.length > 1 && !differs(cells) && stated(cells).length === cells.length;
