import type { PrintedBlock } from "./printed/model";

/**
 * At which stage a document was made, and what was amended after the criteria were frozen.
 * @param sentences the stage first, then the amendments; none prints nothing
 */
export function procedureBlocks([stage, ...amendments]: readonly string[]): readonly PrintedBlock[] {
  if (stage === undefined) return [];
  return [
    { kind: "heading", level: 2, text: "Stage and amendments" },
    { kind: "paragraph", text: stage },
    ...(amendments.length === 0 ? [] : [{ kind: "list", isOrdered: false, items: amendments } as const]),
  ];
}
