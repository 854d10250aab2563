/** The shape of the grains, from the one that packs loosest and cuts least to the one that locks and scratches most. */
export const grainShapes = [
  { id: "not-stated", label: "Not stated" },
  { id: "rounded", label: "Rounded" },
  { id: "sub-rounded", label: "Sub-rounded" },
  { id: "sub-angular", label: "Sub-angular" },
  { id: "angular", label: "Angular" },
] as const;

export type GrainShape = (typeof grainShapes)[number]["id"];

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, "");

/** The shape with this id or label, whatever the case and hyphens; "not-stated" for an empty text; null otherwise. */
export function matchGrainShape(text: string): GrainShape | null {
  if (text.trim() === "") return "not-stated";
  const read = plain(text);
  return grainShapes.find(({ id }) => plain(id) === read)?.id ?? null;
}
