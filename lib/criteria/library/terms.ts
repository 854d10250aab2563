import type { ShortfallRule } from "../shortfall-rules";
import type { LibraryEntry, LibraryHeading, UsualLimit } from "./model";

/** What a criterion of the library says of itself; what is left out is what most of them have. */
type EntryTerms = Readonly<
  { id: string; limits: readonly UsualLimit[]; method: string; asked: string } & Pick<
    LibraryEntry["criterion"],
    "measure" | "label" | "reason" | "source"
  > & {
      /** Which bids it is asked of; every bid where it is left out. */
      askedOf?: LibraryEntry["criterion"]["askedOf"];
      gate?: LibraryEntry["criterion"]["gate"];
      score?: LibraryEntry["criterion"]["valueFunction"];
      points?: string;
      /** A bidder’s word counts, and what is not shown stays open, where it is left out. */
      evidence?: LibraryEntry["criterion"]["evidence"];
      caution?: string;
    }
>;

/** The least evidence that counts, and what becomes of a figure that lacks it. */
export const shownBy = (
  least: string,
  shortfall: ShortfallRule = "keep-open",
  discount = "",
): LibraryEntry["criterion"]["evidence"] => ({ least, shortfall, discount });

/** The criteria that the library sorts under one heading. */
export const underHeading = (heading: LibraryHeading, entries: readonly EntryTerms[]): readonly LibraryEntry[] =>
  entries.map(
    ({
      id,
      limits,
      method,
      asked,
      askedOf = { kind: "every-bid" },
      gate = { kind: "none" },
      score = { kind: "none" },
      points = "0",
      evidence = shownBy("stated"),
      caution = "",
      ...named
    }) => ({
      ...{ id, heading, points, limits, method, asked, caution },
      criterion: { ...named, askedOf, gate, valueFunction: score, evidence },
    }),
  );

/** What a rating starts with: levels from the least worth to the most, at even steps from 0 to 1. */
export const levels = (...described: readonly (readonly [label: string, description: string])[]) => ({
  kind: "rating" as const,
  levels: described.map(([label, description], at) => ({
    ...{ id: `level-${at + 1}`, label, description },
    value: String(at / (described.length - 1)),
  })),
});

/** Limits with a source that was read, that trade press quotes, or that has to be looked up again. */
export const published = (says: string, source: string): UsualLimit => ({ says, source, standing: "published" });
export const quoted = (says: string, source: string): UsualLimit => ({ says, source, standing: "quoted" });
export const fromMemory = (says: string, source: string): UsualLimit => ({ says, source, standing: "memory" });

/** What is usual without anybody having published it, and what nobody has laid down at all. */
export const practice = (says: string): UsualLimit => ({ says, source: "", standing: "practice" });
export const nowhere = (says: string): UsualLimit => ({ says, source: "", standing: "none" });
