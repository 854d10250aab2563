import type { PriceLine } from "../model";
import type { TechnicalLink } from "./model";

/** Whether a line is spent on what a link prices: as its purpose says or, where it says none, by the words of its name. */
export const isSamePurpose = (
  { id, words }: Pick<TechnicalLink, "id" | "words">,
  { purpose, id: line, label }: Pick<PriceLine, "purpose" | "id" | "label">,
): boolean =>
  purpose === id || (purpose === "" && words !== null && words.test(`${label} ${line.replaceAll("-", " ")}`));
