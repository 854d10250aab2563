import { z } from "zod";
import type { CommitteeInFile, CommitteeText, ScoresheetText } from "#lib/committee";
import {
  type AttachmentText,
  type BidText,
  type BriefText,
  type CampaignText,
  type CostingText,
  type OwnersWordsText,
  type Project,
  type ProjectFile,
  projectFileSchema,
  type RequirementsText,
  type SubstitutionText,
} from "#lib/evaluation";
import type { PeopleText } from "#lib/people";
import type { ProcedureText } from "#lib/procedure";
import { failed, type Result, succeeded } from "#lib/quantity";
import type { IssueText, SpecificationText } from "#lib/requirement";
import type { ContractText, DeliveryText, SubmittalText } from "#lib/submittal";

/** What keeps a text from being read as a project file. */
export type ProjectFileProblem = Readonly<
  | { kind: "too-large"; characters: number; limit: number }
  | { kind: "not-json"; reason: string }
  | { kind: "not-a-project"; issues: readonly Readonly<{ field: string; message: string }>[] }
>;

/** A project file that reads: as text, to be stored, and as the project it stands for. */
export type ReadProjectFile = Readonly<{ file: ProjectFile; project: Project }>;

const mostCharacters = 5_000_000;

/** Reads a project file. Everything that is the matter with it is reported at once, field by field. */
export function readProjectFile(text: string): Result<ReadProjectFile, ProjectFileProblem> {
  if (text.length > mostCharacters) {
    return failed({ kind: "too-large", characters: text.length, limit: mostCharacters });
  }
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (problem) {
    return failed({ kind: "not-json", reason: problem instanceof Error ? problem.message : String(problem) });
  }
  const parsed = projectFileSchema.safeParse(json);
  if (parsed.success) return succeeded({ file: json as ProjectFile, project: parsed.data });
  const issues = parsed.error.issues.map(({ path, message }) => ({ field: path.join("."), message }));
  return failed({ kind: "not-a-project", issues });
}

const mostIssuesShown = 20;

/** Says what was read and what was expected, one line for each field. */
export function explainProjectFile(problem: ProjectFileProblem): string {
  switch (problem.kind) {
    case "too-large":
      return `The file has ${problem.characters.toLocaleString("en-US")} characters; a project file has at most ${problem.limit.toLocaleString("en-US")}.`;
    case "not-json":
      return `The file is not JSON text: ${problem.reason}`;
    case "not-a-project": {
      const { issues } = problem;
      const shown = issues
        .slice(0, mostIssuesShown)
        .map(({ field, message }) => `${field === "" ? "the file" : field}: ${message}`);
      const more = issues.length - shown.length;
      const head =
        issues.length === 1
          ? "One entry of the file can’t be read."
          : `${issues.length} entries of the file can’t be read.`;
      return [head, ...shown, ...(more > 0 ? [`and ${more} more.`] : [])].join("\n");
    }
  }
}

/** The documents of a project as they are stored: text as entered. */
export type ProjectTexts = Readonly<{
  /** Id of the project. */
  id: string;
  brief: BriefText;
  requirements: RequirementsText;
  bids: readonly Readonly<{ id: string; text: BidText }>[];
  campaigns: readonly Readonly<{ id: string; text: CampaignText }>[];
  /** Null where the project has none yet. */
  costing: CostingText | null;
  recommendation: OwnersWordsText | null;
  attachments: readonly Readonly<{ id: string; text: AttachmentText }>[];
  specification: SpecificationText | null;
  /** The section as it was given out, in order. */
  issues: readonly IssueText[];
  people: PeopleText | null;
  procedure: ProcedureText | null;
  committee: CommitteeText | null;
  scoresheets: readonly ScoresheetText[];
  contract: ContractText | null;
  submittals: readonly Readonly<{ id: string; text: SubmittalText }>[];
  delivery: DeliveryText | null;
  substitutions: readonly Readonly<{ id: string; text: SubstitutionText }>[];
}>;

/** The sheets that are open: one that is sealed stays out of every file. */
const openSheets = (scoresheets: readonly ScoresheetText[]): NonNullable<CommitteeInFile["sheets"]> =>
  scoresheets.flatMap(({ contents, ...facts }) =>
    contents.kind === "open" ? [{ ...facts, sheet: contents.sheet }] : [],
  );

/** The file that a project is exported as. Reading it back gives the same project, but for what is still sealed. */
export function projectFileOf(texts: ProjectTexts): ProjectFile {
  const { brief, requirements, bids, campaigns, costing, recommendation, attachments } = texts;
  const { id: savedFrom, specification, issues, people, procedure, committee, scoresheets } = texts;
  const { contract, submittals, delivery, substitutions } = texts;
  const sheets = openSheets(scoresheets);
  return {
    format: "evenfield-project",
    version: 1,
    savedFrom,
    brief,
    requirements,
    bids: bids.map(({ id, text }) => ({ id, ...text })),
    campaigns: campaigns.map(({ id, text }) => ({ id, ...text })),
    ...(costing === null ? {} : { costing }),
    ...(recommendation === null ? {} : { recommendation }),
    ...(attachments.length === 0 ? {} : { attachments: attachments.map(({ id, text }) => ({ id, ...text })) }),
    ...(specification === null ? {} : { specification }),
    ...(issues.length === 0 ? {} : { issues: [...issues] }),
    ...(people === null ? {} : { people: people.people }),
    ...(procedure === null ? {} : { procedure }),
    ...(committee === null ? {} : { committee: { ...committee, sheets } }),
    ...(contract === null ? {} : { contract }),
    ...(delivery === null ? {} : { delivery }),
    ...(substitutions.length === 0 ? {} : { substitutions: substitutions.map(({ id, text }) => ({ id, ...text })) }),
    ...(submittals.length === 0 ? {} : { submittals: submittals.map(({ id, text }) => ({ id, ...text })) }),
  };
}

/** The JSON Schema (2020-12) of a project file as text, for editors, scripts and checks outside the app. */
export const projectFileJsonSchema = () => ({
  title: "Evenfield project file",
  ...z.toJSONSchema(projectFileSchema, { io: "input", unrepresentable: "any" }),
});
