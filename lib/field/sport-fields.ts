import { type In, measured } from "#lib/quantity";

/** Whether the size was read in a publication that quotes the rules, or noted from memory. */
export type SizeStatus = "published" | "from-memory";

/** A field as the rules of a sport draw it. */
export type SportFieldSize = Readonly<{
  label: string;
  length: In<"m">;
  width: In<"m">;
  /** The size in the unit of the rules. */
  size: string;
  source: string;
  status: SizeStatus;
  note: string;
}>;

const field = (
  label: string,
  [length, width, unit]: readonly [number, number, "ft" | "yd" | "m"],
  about: Pick<SportFieldSize, "source" | "status" | "note">,
): SportFieldSize => ({
  label,
  length: measured("distance", length, unit),
  width: measured("distance", width, unit),
  size: `${length} × ${width} ${unit}`,
  ...about,
});

const published = (source: string, note: string) => ({ source, status: "published", note }) as const;
const fromMemory = (source: string, note: string) => ({ source, status: "from-memory", note }) as const;

/** Sizes by the rules of each sport, without run-off. To add one, add one entry here. The rule book in force decides. */
export const sportFields = {
  "us-football": field(
    "US football with end zones",
    [360, 160, "ft"],
    published("NFL and NFHS rule dimensions, as quoted in secondary publications", "Two end zones of 30 ft included."),
  ),
  "soccer-fifa": field(
    "Soccer, FIFA recommended size",
    [105, 68, "m"],
    published("FIFA recommended size, as quoted in secondary publications", "The Laws of the Game allow a range."),
  ),
  "soccer-nfhs-largest": field(
    "Soccer, high school, largest",
    [120, 80, "yd"],
    published("NFHS 100–120 yd × 55–80 yd, as quoted in secondary publications", "The largest size of the range."),
  ),
  "soccer-nfhs-smallest": field(
    "Soccer, high school, smallest",
    [100, 55, "yd"],
    published("NFHS 100–120 yd × 55–80 yd, as quoted in secondary publications", "The smallest size of the range."),
  ),
  "soccer-ncaa-largest": field(
    "Soccer, college, largest",
    [120, 75, "yd"],
    published("NCAA 115–120 yd × 70–75 yd, as quoted in secondary publications", "The largest size of the range."),
  ),
  lacrosse: field(
    "Lacrosse",
    [110, 60, "yd"],
    fromMemory("NCAA and NFHS, 110 × 60 yd, from memory", "Check the rules of the season."),
  ),
  "field-hockey": field(
    "Field hockey",
    [91.4, 55, "m"],
    published("FIH 91.40 × 55.00 m, as quoted in secondary publications", "Field of play without run-off."),
  ),
  "rugby-largest": field(
    "Rugby, largest field of play",
    [100, 70, "m"],
    published("World Rugby Law 1, as quoted in secondary publications", "In-goals of 6–22 m at each end come on top."),
  ),
  "rugby-with-in-goals": field(
    "Rugby with in-goals, usual total",
    [120, 70, "m"],
    published("a usual total of 8,400 m², as quoted in secondary publications", "Two in-goals of 10 m included."),
  ),
} as const satisfies Record<string, SportFieldSize>;

export type SportFieldId = keyof typeof sportFields;

/** What to suggest for the turf beyond the lines on every side. */
export const suggestedRunOff = {
  text: "10 ft",
  source: "common practice, no source; the rule book and the safety review of the site decide",
} as const;
