import type { PriceLine } from "../model";
import type { TechnicalLink } from "./model";

const paid = ({ kind }: Pick<PriceLine, "kind">) => (kind === "yearly" || kind === "periodic" ? "again" : "once");

/** Whether a line is spent on what a link prices: as its purpose says or, where it says none, by its name and payment. */
export function isSamePurpose(
  { id, byName }: Pick<TechnicalLink, "id" | "byName">,
  line: Pick<PriceLine, "kind" | "purpose" | "id" | "label">,
): boolean {
  if (line.purpose !== "") return line.purpose === id;
  return (
    byName !== null && byName.paid === paid(line) && byName.words.test(`${line.label} ${line.id.replaceAll("-", " ")}`)
  );
}
