import type { AgainstBid, AgainstSpecification } from "#lib/submittal";
import type { StatusWord } from "../../../../_components/status";

/** How a value stands to its clause; null where the clause sets no limit. */
export function specificationWord({ kind }: AgainstSpecification): StatusWord | null {
  switch (kind) {
    case "meets":
      return "meets";
    case "falls-short":
      return "falls short";
    case "not-decided":
      return "not decided";
    case "not-shown":
      return "not shown";
    case "not-comparable":
      return "not comparable";
    case "no-limit":
      return null;
  }
}

/** How a value stands to the bid, in words. */
export const bidWords: Readonly<Record<AgainstBid["kind"], string>> = {
  "as-bid": "as bid",
  weaker: "weaker than bid",
  stronger: "stronger than bid",
  differs: "differs from bid",
  "not-bid": "not in the bid",
  "not-shown": "not shown",
  "not-comparable": "not comparable",
};
