import type { NumberPlace, PrintedBlock } from "./model";
import { headingLevels, type NumberingLevel, type NumberingSchemeId, numberingSchemes } from "./numbering-schemes";

/** How many paragraphs stand above one in the same scheme: 0 right below a heading. */
export const depthOf = ({ scheme, level }: NumberPlace): number => Math.max(0, level - headingLevels[scheme]);

/** 1 → A, 26 → Z, 27 → AA, 28 → BB: as word processors count in letters. */
const letters = (count: number): string =>
  String.fromCharCode(65 + ((count - 1) % 26)).repeat(Math.floor((count - 1) / 26) + 1);

function written({ format }: NumberingLevel, count: number): string {
  switch (format) {
    case "decimal":
      return String(count);
    case "upper-letter":
      return letters(count);
    case "lower-letter":
      return letters(count).toLowerCase();
  }
}

const levelOf = ({ scheme, level }: NumberPlace): NumberingLevel => {
  const found = (numberingSchemes[scheme] as readonly NumberingLevel[])[level];
  if (found === undefined) throw new RangeError(`${scheme} has no level ${level}`);
  return found;
};

const placeOf = (block: PrintedBlock): NumberPlace | null =>
  (block.kind === "heading" || block.kind === "paragraph") && block.number !== undefined ? block.number : null;

/**
 * The number of each block as people read it, in the order of the blocks; empty where a block has none.
 * @throws RangeError if a block names a level that its scheme does not have
 */
export function writtenNumbers(blocks: readonly PrintedBlock[]): readonly string[] {
  const counts = new Map<NumberingSchemeId, number[]>();
  return blocks.map((block) => {
    const place = placeOf(block);
    if (place === null) return "";
    const { pattern } = levelOf(place);
    const before = counts.get(place.scheme) ?? [];
    const now = Array.from({ length: place.level + 1 }, (_, level) => before[level] ?? (level < place.level ? 1 : 0));
    now[place.level] = (now[place.level] ?? 0) + 1;
    counts.set(place.scheme, now);
    return pattern.replace(/%(\d)/g, (_, level: string) => {
      const at = Number(level) - 1;
      return written(levelOf({ ...place, level: at }), now[at] ?? 1);
    });
  });
}
