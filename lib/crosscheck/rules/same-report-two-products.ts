import type { Claim } from "#lib/claim";
import { listed, say } from "#lib/figure";
import { oncePer } from "#lib/once";
import { propertiesOf } from "../in-words";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { byReport, type NamedReport } from "../reports";

/** A report shows the build that was tested. It can't show two unlike ones, and two bids seldom share one. */
export const sameReportTwoProducts: Rule = {
  id: "same-report-two-products",
  title: "One report for two products",
  holds: "each report with its laboratory and date against the other claims of the bid and the other bids",
  tolerance: "none: document, laboratory and date have to be the same",
  among: (bids) => {
    const users = usersAmong(bids);
    return (bid) => {
      const reports = namedReports(bid.claims);
      return [
        ...reports.flatMap((report) => withinTheBid(bid, report)),
        ...reports.flatMap((report) => amongTheBids(bid, report, users)),
      ];
    };
  },
};

/** Only a report with document, laboratory and date is surely one and the same. */
const isNamed = ({ document, laboratory, date }: Claim): boolean =>
  document.trim() !== "" && laboratory.trim() !== "" && date !== null;

/** Kept, because each bid is held against every other one. */
const namedReports = oncePer((claims: readonly Claim[]): readonly NamedReport[] => byReport(claims.filter(isNamed)));

/** Which bids use a report, by its key. */
type Users = ReadonlyMap<string, readonly CheckedBid[]>;

function usersAmong(bids: readonly CheckedBid[]): Users {
  const users = new Map<string, CheckedBid[]>();
  for (const bid of bids)
    for (const { key } of namedReports(bid.claims)) users.set(key, [...(users.get(key) ?? []), bid]);
  return users;
}

const ids = (claims: readonly Claim[]): readonly string[] => claims.map(({ id }) => id);
const source = "derived: a report describes what was tested, once";

function withinTheBid(bid: CheckedBid, { name, key, claims }: NamedReport): readonly Found[] {
  const [own, another] = [
    claims.filter(({ build }) => build === "bid-build"),
    claims.filter(({ build }) => build === "other-build"),
  ];
  if (own.length === 0 || another.length === 0) return [];
  return [
    {
      severity: "needs an answer",
      claims: ids([...own, ...another]),
      keyedBy: [key],
      told: () => ({
        sentence: say`${name} stands for the build of this bid with ${propertiesOf(own)}, and for another build with ${propertiesOf(another)}.`,
        question: say`Which build does ${name} describe: the one that you offer, or another?`,
        working: {
          formula: "one report = one build",
          inputs: [...own, ...another].map((claim) => claimInput(bid, claim)),
          assumptions: ["The build was compared by whoever entered each claim."],
          source,
        },
      }),
    },
  ];
}

function amongTheBids(bid: CheckedBid, report: NamedReport, users: Users): readonly Found[] {
  const sharing = (users.get(report.key) ?? [])
    .filter(({ id }) => id !== bid.id)
    .toSorted((one, other) => (one.letter < other.letter ? -1 : 1));
  if (sharing.length === 0) return [];
  const { name, key, claims } = report;
  const letters = listed(sharing.map(({ letter }) => letter));
  return [
    {
      severity: "note",
      claims: ids(claims),
      keyedBy: [key, "other-bids"],
      told: () => ({
        sentence: say`${name} is used in bid ${letters} as well.`,
        question: say`Whose product does ${name} describe, and is it the very build that you offer?`,
        working: {
          formula: "one report = one build",
          inputs: [
            ...claims.map((claim) => claimInput(bid, claim)),
            constantInput("Other bids with this report", letters),
          ],
          assumptions: ["Bids may rightly share a report where they offer the same build."],
          source,
        },
      }),
    },
  ];
}
