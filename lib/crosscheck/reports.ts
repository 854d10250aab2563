import type { Claim } from "#lib/claim";
import { plainName } from "./same-test";

/** A test report as claims name it, and the claims that rest on it. */
export type NamedReport = Readonly<{
  /** As one claim names it: document, laboratory and date as far as they are given. */
  name: string;
  /** The same in letters, digits and hyphens, for the key of a finding. */
  key: string;
  claims: readonly Claim[];
}>;

const partsOf = ({ document, laboratory, date }: Claim): readonly string[] => [
  document.trim(),
  laboratory.trim(),
  date?.text ?? "",
];

const longestKey = 120;

/** Letters, digits and hyphens of any name. */
const keyOf = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "")
    .slice(0, longestKey);

/** The claims by the report they rest on, in the order of the names. Claims that name no report stand together. */
export function byReport(claims: readonly Claim[]): readonly NamedReport[] {
  const groups = new Map<string, Claim[]>();
  for (const claim of claims.toSorted((one, other) => (one.id < other.id ? -1 : 1))) {
    const place = partsOf(claim).map(plainName).join("|");
    groups.set(place, [...(groups.get(place) ?? []), claim]);
  }
  return [...groups]
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .flatMap(([, group]) => {
      const [first] = group;
      if (first === undefined) return [];
      const name = partsOf(first)
        .filter((part) => part !== "")
        .join(", ");
      return [{ name: name === "" ? "a report that is not named" : `“${name}”`, key: keyOf(name), claims: group }];
    });
}
