/** How well a claim is shown, weakest first. The order is the list's order. */
export const evidenceLevels = [
  { id: "stated", label: "Stated", definition: "The bid says so and shows nothing for it." },
  { id: "own-test", label: "Own test", definition: "The maker or bidder tested it and gives the report." },
  {
    id: "accredited-laboratory",
    label: "Accredited laboratory",
    definition: "A laboratory accredited for the method tested a sample and gives the report.",
  },
  {
    id: "field-tested",
    label: "Field-tested",
    definition: "An independent tester measured it on an installed field with the same system.",
  },
  {
    id: "guaranteed",
    label: "Guaranteed",
    definition: "The bidder promises it in the contract, with a remedy if it is missed.",
  },
] as const;

export type EvidenceLevel = (typeof evidenceLevels)[number]["id"];

const ranks: ReadonlyMap<EvidenceLevel, number> = new Map(evidenceLevels.map(({ id }, place) => [id, place]));

const rank = (level: EvidenceLevel): number => ranks.get(level) ?? 0;

/** Whether the first level is the second or stands above it. */
export const atLeastAsStrong = (level: EvidenceLevel, than: EvidenceLevel): boolean => rank(level) >= rank(than);

/** Positive where the first is stronger, for sorting. */
export const strengthOver = (level: EvidenceLevel, than: EvidenceLevel): number => rank(level) - rank(than);

/** The level with this id or label, whatever the case and hyphens; null where there is none. */
export function matchEvidence(text: string): EvidenceLevel | null {
  const plain = (name: string) =>
    name
      .toLowerCase()
      .replace(/[\s-]+/g, " ")
      .trim();
  const read = plain(text);
  return evidenceLevels.find(({ id, label }) => plain(id) === read || plain(label) === read)?.id ?? null;
}
