import { type Claim, claimsFor } from "#lib/claim";

/** Whether an impact level is meant for every test point or for their average, where the bid says. */
export type LevelBasis = "every point" | "average" | "not said";

const averageWords = /\b(average[ds]?|mean|averaging)\b/i;
const pointWords = /\b(each|every|any|all|single|individual)\b[^.;]{0,30}\b(points?|locations?|spots?|places?)\b/i;

/** What the words of one claim say; nothing where they speak of both. */
function basisInWords({ words, value }: Claim): LevelBasis {
  const text = value.kind === "quantity" ? `${words} ${value.quantity.asEntered}` : words;
  const [average, points] = [averageWords.test(text), pointWords.test(text)];
  if (average === points) return "not said";
  return average ? "average" : "every point";
}

const basisByChoice: Readonly<Record<string, LevelBasis | undefined>> = {
  average: "average",
  "every-point": "every point",
};

/** What a guarantee is: as its own words say, else as the bid says of its warranty. */
export function basisOfGuarantee(bid: Readonly<{ claims: readonly Claim[] }>, guarantee: Claim): LevelBasis {
  const own = basisInWords(guarantee);
  if (own !== "not said") return own;
  const said = new Set(
    claimsFor(bid.claims, "warranty-hardness-basis").flatMap(({ value }) =>
      value.kind === "choice" ? (basisByChoice[value.choice] ?? []) : [],
    ),
  );
  const [only] = said;
  return said.size === 1 && only !== undefined ? only : "not said";
}

/** What a level of the bid is: as its own words say, else as the bid says for its impact levels as a whole. */
export function basisOfLevel(bid: Readonly<{ claims: readonly Claim[] }>, level: Claim): LevelBasis {
  if (level.property === "g-max-highest-point") return "every point";
  const own = basisInWords(level);
  if (own !== "not said") return own;
  const said = new Set(
    claimsFor(bid.claims, "g-max-basis").flatMap(({ value }) => (value.kind === "choice" ? [value.choice] : [])),
  );
  if (said.size !== 1) return "not said";
  return said.has("average") ? "average" : "every point";
}
