import type { MethodId } from "#lib/claim";

/** What a method, in the edition or contract that is named, asks of a test on one field. */
export type TestProtocol = Readonly<{
  id: string;
  label: string;
  method: MethodId;
  /** Editions it is known to apply to, in words. */
  editions: string;
  locations: number;
  /** Minutes between drops on one spot. */
  minutesBetweenDrops: number;
  source: string;
}>;

/**
 * Sources disagree on the number of locations and on the interval, so each reading is named data; the edition in force
 * or the contract decides.
 */
export const testProtocols = [
  {
    id: "f1936-8",
    label: "ASTM F1936, 8 locations",
    method: "f1936",
    editions: "F1936-10 and F1936-19",
    locations: 8,
    minutesBetweenDrops: 3,
    source:
      "ASTM F1936, abstract in catalogue entries (8 locations); Penn State University, sports surface research (3 minutes)",
  },
  {
    id: "f1936-10",
    label: "ASTM F1936, 10 locations",
    method: "f1936",
    editions: "not verified",
    locations: 10,
    minutesBetweenDrops: 3,
    source: "10 locations from memory; Penn State University, sports surface research (3 minutes)",
  },
  {
    id: "f1936-8-one-minute",
    label: "ASTM F1936, 8 locations, one minute between drops",
    method: "f1936",
    editions: "not verified",
    locations: 8,
    minutesBetweenDrops: 1,
    source: "ASTM F1936, abstract (8 locations); page of a testing contractor (1 minute)",
  },
] as const satisfies readonly TestProtocol[];
