import type { MethodId } from "./methods";

/** From `from` on an edition of a method differs from the earlier ones. */
export type EditionChange = Readonly<{
  from: number;
  /** A changed procedure gives another figure; changed limits judge the same figure in another way. */
  kind: "procedure" | "limits";
  /** A whole sentence. */
  what: string;
  source: string;
}>;

/** What is known of the editions of one method. The register does not claim to be complete. */
export type EditionHistory = Readonly<{
  method: MethodId;
  /** The newest edition that is known here, not necessarily the newest there is. */
  newestKnown: number;
  changes: readonly EditionChange[];
  source: string;
}>;

const memory = "from memory";

export const editionRegister: readonly EditionHistory[] = [
  {
    method: "f1936",
    newestKnown: 2019,
    changes: [],
    source: "ASTM F1936-10 and F1936-19, catalogue entries; both ask for a level below 200 at each point",
  },
  {
    method: "f355-e",
    newestKnown: 2016,
    changes: [
      {
        from: 2010,
        kind: "procedure",
        what: "Missile E came into ASTM F355 in 2010, so an earlier edition does not describe it.",
        source: "extract of ASTM F355-10a; the year it came in from memory",
      },
    ],
    source: memory,
  },
  {
    method: "aaa-shock-absorption",
    newestKnown: 2015,
    changes: [
      {
        from: 2012,
        kind: "procedure",
        what: "Handbooks before 2012 took shock absorption with an athlete on a force cell, which is another apparatus.",
        source: `${memory}, low confidence in the year`,
      },
    ],
    source: "FIFA handbook of test methods, contents page of 2015, version 3.0",
  },
  {
    method: "en-15306",
    newestKnown: 2014,
    changes: [
      {
        from: 2014,
        kind: "procedure",
        what: "Studs and rollers changed with the edition of 2014, so cycles of both are not the same wear.",
        source: `${memory}, low confidence`,
      },
    ],
    source: memory,
  },
  {
    method: "en-71-3",
    newestKnown: 2021,
    changes: [
      {
        from: 2019,
        kind: "limits",
        what: "The lead limit of category III fell from 160 to 23 mg/kg, so a pass by an earlier edition is no pass by this one.",
        source: "EN 71-3:2019+A1:2021 as quoted by a test laboratory; the edition that changed it from memory",
      },
      {
        from: 2021,
        kind: "limits",
        what: "The aluminium limit of category III fell from 70,000 to 28,130 mg/kg in 2021.",
        source: "EN 71-3:2019+A1:2021 as quoted by a test laboratory",
      },
    ],
    source: "EN 71-3:2019+A1:2021 as quoted by a test laboratory",
  },
  {
    method: "f2765",
    newestKnown: 2014,
    changes: [
      {
        from: 2010,
        kind: "limits",
        what: "The text of 2009 allows 300 mg/kg of lead, while 100 mg/kg is asked for in later use.",
        source: "ASTM F2765-09 as quoted in trade press; later use from memory",
      },
    ],
    source: memory,
  },
];

/** What the editions behind two figures mean for holding them against each other. */
export type EditionComparison = Readonly<
  { kind: "alike" } | { kind: "caution"; sentence: string } | { kind: "unlike"; reason: string }
>;

/**
 * Holds the edition that is wanted against the edition behind a claim, both as years. Null for the wanted one stands for
 * the newest edition known; null for the claim's own means that nobody names it, which is no reason to set it apart.
 */
export function compareEditions(method: MethodId, wanted: number | null, got: number | null): EditionComparison {
  const history = editionRegister.find((each) => each.method === method);
  if (got === null || history === undefined) return { kind: "alike" };
  const asked = wanted ?? Math.max(history.newestKnown, got);
  const between = history.changes.filter(({ from }) => got < from !== asked < from);
  const procedure = between.find(({ kind }) => kind === "procedure");
  if (procedure !== undefined)
    return { kind: "unlike", reason: `${procedure.what} The report names the edition of ${got}.` };
  const [limits] = between;
  if (limits !== undefined)
    return { kind: "caution", sentence: `${limits.what} The report names the edition of ${got}.` };
  if (got >= asked) return { kind: "alike" };
  return { kind: "caution", sentence: `The report names the edition of ${got}; the one of ${asked} is newer.` };
}
