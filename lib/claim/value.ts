import { explainQuantity, failed, parseQuantity, type QuantityProblem, type Result, succeeded } from "#lib/quantity";
import { inSentence } from "./find";
import type { ClaimValue } from "./model";
import type { Choice } from "./properties/model";
import type { Property } from "./properties/properties";

/** Why the figure of a claim could not be read. Facts only; the words are in `explainValue`. */
export type ValueProblem = Readonly<
  | { kind: "nothing-claimed"; property: Property }
  | { kind: "not-a-quantity"; problem: QuantityProblem }
  | { kind: "not-a-choice"; property: Property; read: string; choices: readonly Choice[] }
>;

/**
 * What a claim's figure says, read as the property asks for it.
 * Where the figure is empty the bid's words stand for it.
 */
export function parseValue(property: Property, figure: string, words: string): Result<ClaimValue, ValueProblem> {
  const read = figure.trim();
  if (read === "") return inWords(property, words.trim());
  switch (property.kind) {
    case "quantity": {
      const parsed = parseQuantity(property.dimension, figure);
      if (!parsed.ok) return failed({ kind: "not-a-quantity", problem: parsed.problem });
      return succeeded({ kind: "quantity", quantity: parsed.value });
    }
    case "choice": {
      const choice = chosen(property.choices, read);
      if (choice === undefined) return failed({ kind: "not-a-choice", property, read, choices: property.choices });
      return succeeded({ kind: "choice", choice: choice.id });
    }
    case "words":
      return succeeded({ kind: "words", words: read });
  }
}

const inWords = (property: Property, words: string): Result<ClaimValue, ValueProblem> =>
  words === "" ? failed({ kind: "nothing-claimed", property }) : succeeded({ kind: "words", words });

const chosen = (choices: readonly Choice[], read: string): Choice | undefined =>
  choices.find(({ id, label }) => [id, label.toLowerCase()].includes(read.toLowerCase()));

export function explainValue(problem: ValueProblem): string {
  switch (problem.kind) {
    case "nothing-claimed":
      return `Nothing is written for ${inSentence(problem.property.label)}. Enter the figure, or the bid's own words where it gives no figure.`;
    case "not-a-quantity":
      return explainQuantity(problem.problem);
    case "not-a-choice": {
      const labels = problem.choices.map(({ label }) => `“${label}”`).join(", ");
      return `“${problem.read}” is not one of the answers for ${inSentence(problem.property.label)}. Expected one of ${labels}.`;
    }
  }
}
