import type { CampaignText } from "#lib/evaluation";
import type { PastedDrops } from "#lib/fieldtest";

type LocationText = CampaignText["locations"][number];

/** The row of the block that each read row stood in, counted from 1: rows that hold nothing and the heading are passed over. */
export function rowNumbers(block: string, heading: readonly string[]): readonly number[] {
  const filled = block.split(/\r\n|\n|\r/).flatMap((line, index) => (/[^\s,;"]/.test(line) ? [index + 1] : []));
  return heading.length === 0 ? filled : filled.slice(1);
}

const plain = (text: string) => text.trim().toLowerCase();
const isUntested = ({ drops }: LocationText) => [...drops].every((drop) => (drop ?? "").trim() === "");

/**
 * The location of the campaign that each pasted row belongs to, by its name or by its number in the table; null for a
 * row that becomes a location of its own. Drops that were typed are never pasted over.
 */
export function pastedPlaces(
  locations: readonly LocationText[],
  rows: readonly PastedDrops[],
): readonly (number | null)[] {
  const taken = new Set<number>();
  return rows.map(({ label }) => {
    const byName = locations.findIndex((location) => plain(location.label ?? "") === plain(label));
    const byNumber = /^(?:(?:no\.?|location|point|spot) ?)?\d{1,3}$/.test(plain(label))
      ? Number(label.replace(/\D/g, "")) - 1
      : -1;
    const found = byName >= 0 ? byName : byNumber;
    const location = locations[found];
    if (location === undefined || taken.has(found) || !isUntested(location)) return null;
    taken.add(found);
    return found;
  });
}

/** The location with the drops of a pasted row; its own name and place stay. */
export const withPastedDrops = (location: LocationText, { drops, note }: PastedDrops): LocationText => ({
  ...location,
  drops: [...drops],
  note: [location.note ?? "", note].filter((text) => text !== "").join("; "),
});

/** A pasted row as a location of its own, with no place on the field yet. */
export const newLocation = (id: string, { label, drops, note }: PastedDrops): LocationText => ({
  id,
  label,
  x: "",
  y: "",
  drops: [...drops],
  note,
});
