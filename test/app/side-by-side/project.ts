import { evaluate, type Project, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { comparison } from "../../../app/project/[id]/side-by-side/_comparison/comparison";
import { type Cell, type Group, type Row, saidInWords } from "../../../app/project/[id]/side-by-side/_comparison/model";
import { whatStandsOut } from "../../../app/project/[id]/side-by-side/_comparison/what-stands-out";
import { component, workedProject } from "../../evaluation/worked-project";

type BidText = ProjectFile["bids"][number];
type ClaimText = BidText["claims"][number];

/** A claim as text: what differs from a laboratory's figure for a new surface is given. */
export const claim = (property: string, figure: string, differing: Partial<ClaimText> = {}): ClaimText => ({
  id: property,
  property,
  figure,
  method: "",
  condition: "new",
  evidence: "accredited-laboratory",
  document: "Report",
  accreditation: "accredited",
  ...differing,
});

/** A bid of sand and rubber with the claims of a test. */
export const bid = (letter: string, claims: readonly ClaimText[], sand = "6 lb/ft²"): BidText => ({
  id: `bid-${letter.toLowerCase()}`,
  letter,
  bidder: `Bidder ${letter}`,
  system: "Invented",
  infill: { placement: "layered", components: [component("sand", "silica-sand", sand)] },
  claims: [...claims],
  prices: [],
});

/** A project of the bids of a test; impact levels are asked for by the flat missile. */
const projectOf = (bids: readonly BidText[]): Project => {
  const { brief, requirements, bids: read, costing } = projectFileSchema.parse({ ...workedProject, bids });
  return { brief, requirements, bids: read, costing };
};

export function sideBySide(bids: readonly BidText[], units: UnitSystem = "us") {
  const project = projectOf(bids);
  const evaluation = evaluate(project);
  const groups = comparison(project, evaluation, units);
  return { evaluation, groups, sentences: whatStandsOut({ project, evaluation, groups, units }) };
}

/** What a cell says on one line. */
export const textOf = (cell: Cell | undefined): string => saidInWords(cell?.statements ?? []);

/** The row of this id. */
export function rowOf(groups: readonly Group[], id: string): Row {
  const row = groups.flatMap(({ rows }) => rows).find((candidate) => candidate.id === id);
  if (row === undefined) throw new RangeError(`no row ${id}`);
  return row;
}
