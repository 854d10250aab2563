import { inSentence } from "#lib/claim";
import { type Criterion, type CriterionScore, type GateRule, gates } from "#lib/criteria";
import type { Shortfall } from "#lib/figure";

/** The limits of a gate as the owner entered them: "below 165 g", "within 8 in to 10 in". */
function limitAsEntered(gate: GateRule): string {
  const { label } = gates[gate.kind];
  return gate.kind === "within"
    ? `${label} ${gate.low.asEntered} to ${gate.high.asEntered}`
    : `${label} ${gate.limit.asEntered}`;
}

function askFor(because: Exclude<Shortfall, { kind: "not-rated" }>, { evidence }: Criterion): string {
  const what = inSentence(because.what);
  const proof = evidence.least.rank === 0 ? "" : ` Proof asked for: ${inSentence(evidence.least.label)}.`;
  switch (because.kind) {
    case "not-claimed":
      return `Please state ${what} and name the document and, for a test, its method.${proof}`;
    case "not-comparable":
      return `Please give ${what} by ${because.wanted}. Your bid gives it by ${because.got}, and one does not follow from the other.`;
    case "weak-evidence":
      return `Please send stronger proof for ${what}. Asked for: ${inSentence(because.wanted)}. Your bid gives: ${inSentence(because.got)}.`;
    case "missing-input":
      return `Please give what this figure needs: ${what}.`;
    case "outside-validity":
      return `Which measurements of your own show ${what}? The owner’s rule does not reach this case.`;
    case "not-a-figure":
      return `Please give a figure for ${what}. Your bid says in words: “${because.words}”.`;
  }
}

/** What to ask a bidder about one criterion, or null where its figure counts and decides, or is not the bidder’s to give. */
export function questionToBidder({ criterion, because, gate }: CriterionScore): string | null {
  if (because?.kind === "not-rated") return null;
  if (because !== null) return askFor(because, criterion);
  if (gate.kind !== "not-decided" || criterion.gate.kind === "none") return null;
  return `Please narrow the range for ${inSentence(criterion.label)}. The owner asks for ${limitAsEntered(criterion.gate)}, and your range leaves it open.`;
}
