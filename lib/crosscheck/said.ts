import type { Claim } from "#lib/claim";
import type { WorkingInput } from "#lib/figure";
import { constantInput } from "./inputs";
import type { CheckedBid } from "./model";

/** Words of the bid and where they stand. What the owner's side remarks is never among them. */
export type Said = Readonly<{
  words: string;
  claims: readonly string[];
  keyedBy: readonly string[];
  input: () => WorkingInput;
}>;

/** The bidder's own words in a claim: the quotation, or the answer where the property takes words. */
export function saidIn(bid: string, claim: Claim): Said | null {
  const words = claim.value.kind === "words" ? claim.value.words : claim.words;
  if (words.trim() === "") return null;
  const from = { kind: "claim", bid, claim: claim.id } as const;
  return {
    words,
    claims: [claim.id],
    keyedBy: [claim.id],
    input: () => ({ label: "In the bid’s words", text: `“${words}”`, from }),
  };
}

/** Everything that a bid says in words: its description of the system, its infill components, its claims. */
export const saidInBid = ({ id, system, described, claims }: CheckedBid): readonly Said[] => [
  ...(system.trim() === ""
    ? []
    : [
        {
          words: system,
          claims: [],
          keyedBy: [],
          input: () => constantInput("Description of the system", `“${system}”`),
        },
      ]),
  ...described
    .filter(({ words }) => words.trim() !== "")
    .map(({ id: component, material, words }) => ({
      words,
      claims: [],
      keyedBy: [component],
      input: (): WorkingInput => ({
        label: material.label,
        text: `“${words}”`,
        from: { kind: "infill-component", bid: id, component },
      }),
    })),
  ...claims.flatMap((claim) => saidIn(id, claim) ?? []),
];
