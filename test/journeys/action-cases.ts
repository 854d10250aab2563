import ExcelJS from "exceljs";
import { firstOrganisation } from "#lib/store";
import demonstration from "../../app/_demo/demonstration-project.json" with { type: "json" };
import { pdf } from "../attachment/small-files";
import { onePrice, ratedFile, sheetOf } from "../evaluation/procedure/rated-project";
import type { Came, SharedStore } from "./shared";
import { sharedAddress } from "./shared-server";

/** Where an action is tried: a project of its own, and somebody who may do everything there but score. */
export type Trial = Readonly<{ project: string; store: SharedStore; administrator: Came }>;

/** What shows that an action was done: the record grew, a draft is there, a project is there, or simply an answer. */
type Effect = "record" | "draft" | "project" | "answer";

export type ActionCase = Readonly<{
  /** How far the project has come: a draft, frozen with sealed prices, or with all scoresheets handed in. */
  stage: "draft" | "frozen" | "sheets-in";
  effect: Effect;
  /** What an answer shows that was given; for the effect “answer”. */
  shows?: RegExp;
  /** The page that it is called from, within the project; "/" where it belongs to none. */
  from: string;
  args: (trial: Trial, asker: Came | null) => Promise<readonly unknown[]>;
}>;

const form = (fields: Readonly<Record<string, string | Blob>>): FormData => {
  const made = new FormData();
  for (const [name, value] of Object.entries(fields)) made.append(name, value);
  return made;
};

const nothing = { sentences: [], typed: {} };
const spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The blank form of a project with one price written into it, as a bidder sends it back. */
async function filledForm({ project, administrator }: Trial): Promise<File> {
  const answer = await fetch(`${sharedAddress}/project/${project}/bid-form`, {
    headers: { cookie: administrator.cookie },
  });
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(await answer.arrayBuffer());
  const write = (sheet: string, address: string, value: string) => {
    const cell = workbook.getWorksheet(sheet)?.getCell(address);
    if (cell === undefined) throw new RangeError(`no sheet ${sheet}`);
    cell.value = value;
  };
  write("Instructions", "B7", "Bidder by form");
  for (const [address, value] of Object.entries({
    A5: "The field",
    D5: "Once, at the base date",
    E5: "Investment",
    G5: "$6.00/ft²",
  }))
    write("Prices", address, value);
  return new File([await workbook.xlsx.writeBuffer()], "form.xlsx", { type: spreadsheet });
}

/** What an input that is not seen holds on a page. */
async function hiddenOn(trial: Trial, page: string, name: string): Promise<string> {
  const answer = await fetch(`${sharedAddress}/project/${trial.project}/${page}`, {
    headers: { cookie: trial.administrator.cookie },
  });
  return new RegExp(`name="${name}" value="([^"]*)"`).exec(await answer.text())?.[1] ?? "";
}

async function version({ store, project }: Trial, kind: "bid" | "campaign" | "submittal" | "substitution", id: string) {
  const held = await store.documents.read({ project, kind, id });
  return String(held?.version ?? 0);
}

/** Takes something out so that it can be brought back; past every rule, as only the bringing back is tried. */
async function taken(
  trial: Trial,
  kind: "bid" | "campaign" | "submittal" | "substitution" | "attachment",
  id: string,
  editor: Parameters<SharedStore["documents"]["remove"]>[1],
): Promise<void> {
  const held = await trial.store.documents.read({ project: trial.project, kind, id });
  if (held !== null)
    await trial.store.documents.remove({ project: trial.project, kind, id, version: held.version }, editor);
}

type Editor = Parameters<SharedStore["documents"]["remove"]>[1];

async function paper(trial: Trial, editor: Editor): Promise<string> {
  const facts = { name: "report.pdf", title: "A report", kind: "pdf", of: { kind: "project" }, note: "" } as const;
  const kept = await trial.store.contents.keep(trial.project, facts, pdf(), editor);
  if (kept.kind !== "saved") throw new Error(kept.kind);
  return kept.id;
}

const removal = (
  kind: "bid" | "campaign" | "submittal" | "substitution",
  field: string,
  id: string,
  from: string,
): ActionCase => ({
  ...{ stage: "draft", effect: "record", from },
  args: async (trial) => [form({ project: trial.project, [field]: id, version: await version(trial, kind, id) })],
});

const restoration = (
  kind: "bid" | "campaign" | "submittal" | "substitution",
  field: string,
  id: string,
  from: string,
  editorOf: (came: Came) => Editor,
): ActionCase => ({
  ...{ stage: "draft", effect: "record", from },
  args: async (trial) => {
    await taken(trial, kind, id, editorOf(trial.administrator));
    return [form({ project: trial.project, [field]: id })];
  },
});

const projectFile = () => new File([JSON.stringify(demonstration)], "field.json", { type: "application/json" });

/** One case or more for each server action; a new action needs one. The key is its name, with a variant in brackets. */
export const actionCases = (editorOf: (came: Came) => Editor): Readonly<Record<string, ActionCase>> => ({
  openDemo: {
    stage: "draft",
    effect: "project",
    from: "/",
    args: async () => [form({ organisation: firstOrganisation })],
  },
  startProject: {
    ...{ stage: "draft", effect: "project", from: "/" },
    args: async () => [
      { name: "", owner: "", organisation: "", problem: "" },
      form({ name: "Begun", owner: "A district", organisation: firstOrganisation }),
    ],
  },
  importProject: {
    ...{ stage: "draft", effect: "project", from: "/" },
    args: async () => [{ problem: "" }, form({ file: projectFile(), organisation: firstOrganisation })],
  },
  discardDraft: {
    ...{ stage: "draft", effect: "draft", from: "brief" },
    args: async ({ project, store }, asker) => {
      const place = { project, kind: "brief", id: "brief" } as const;
      if (asker !== null) await store.drafts.keep({ ...place, version: 1 }, ratedFile.brief, editorOf(asker));
      return [place];
    },
  },
  "moveToStage (to frozen)": {
    ...{ stage: "draft", effect: "record", from: "procedure" },
    args: async ({ project }) => [project, nothing, form({ stage: "frozen", note: "", bid: "" })],
  },
  choosePricesAreSealed: {
    ...{ stage: "draft", effect: "record", from: "procedure" },
    args: async ({ project }) => [project, nothing, form({ prices: "sealed" })],
  },
  keepAmendment: {
    ...{ stage: "frozen", effect: "draft", from: "procedure/amend/requirements" },
    args: async ({ project }) => [{ project, kind: "brief", id: "brief", version: 1 }, ratedFile.brief],
  },
  recordAmendment: {
    ...{ stage: "frozen", effect: "record", from: "procedure/amend/brief" },
    args: async ({ project, store }, asker) => {
      const body = { ...ratedFile.brief, purpose: "Amended for a trial." };
      if (asker !== null)
        await store.drafts.keep({ project, kind: "brief", id: "brief", version: 1 }, body, editorOf(asker));
      return [{ project, document: "brief", version: 1 }, nothing, form({ note: "A reason for it." })];
    },
  },
  keepSheet: {
    ...{ stage: "frozen", effect: "draft", from: "committee/scoresheet" },
    args: async ({ project }, asker) => [
      { project, kind: "scoresheet", id: asker?.id ?? "nobody", version: 0 },
      sheetOf("level-2", "Words.", { kind: "none" }),
    ],
  },
  handIn: {
    ...{ stage: "frozen", effect: "record", from: "committee/scoresheet" },
    args: async ({ project }) => [project, sheetOf("level-2", "Words.", { kind: "none" })],
  },
  openAllSheets: {
    ...{ stage: "sheets-in", effect: "record", from: "committee" },
    args: async ({ project }) => [project, nothing, form({})],
  },
  readForm: {
    ...{ stage: "draft", effect: "answer", shows: /"kind":"read"/, from: "bid-form/import" },
    args: async (trial) => [
      { project: trial.project, bid: null },
      { kind: "nothing" },
      form({ file: await filledForm(trial) }),
    ],
  },
  ...Object.fromEntries(
    (["brief", "recommendation", "costing", "people"] as const).map((kind) => [
      `saveDocument (${kind})`,
      {
        ...{ stage: "draft", effect: "record", from: kind === "people" ? "procedure/people" : "brief" },
        args: async ({ project, store }) => {
          const held = await store.documents.read({ project, kind, id: kind });
          const bodies = {
            brief: { ...ratedFile.brief, purpose: "Changed for a trial." },
            recommendation: { parts: {} },
            costing: ratedFile.costing,
            people: held?.body,
          };
          return [{ project, kind, id: kind, version: held?.version ?? 0 }, bodies[kind]];
        },
      } satisfies ActionCase,
    ]),
  ),
  "saveChosen (brief)": {
    ...{ stage: "draft", effect: "record", from: "conflict/brief/brief" },
    args: async ({ project, store, administrator }, asker) => {
      const place = { project, kind: "brief", id: "brief" } as const;
      const held = await store.documents.read(place);
      if (held === null) throw new RangeError("a project without a brief");
      const { version: basedOn, body } = held;
      const theirs = { ...body, purpose: `Theirs, over version ${basedOn}.` };
      await store.documents.replace({ ...place, version: basedOn }, theirs, editorOf(administrator));
      const mine = { ...body, purpose: `Mine, over version ${basedOn}.` };
      if (asker !== null) await store.drafts.keep({ ...place, version: basedOn }, mine, editorOf(asker));
      return [
        { ...place, basedOn, version: basedOn + 1 },
        { problem: "", done: "", link: "", typed: {} },
        form({ "choice-0": "mine" }),
      ];
    },
  },
  addFilledBid: {
    ...{ stage: "draft", effect: "record", from: "bid-form/import" },
    args: async ({ project }) => [project, { ...ratedFile.bids[0], id: undefined, bidder: "Bidder by form" }],
  },
  addCampaign: {
    ...{ stage: "draft", effect: "record", from: "field-tests" },
    args: async ({ project }) => [
      project,
      { date: "", problem: "" },
      form({ date: "2031-06-01", kind: "yearly", installed: "", start: "empty", plan: "" }),
    ],
  },
  removeCampaign: removal("campaign", "campaign", "yearly-2030", "field-tests"),
  restoreCampaign: restoration("campaign", "campaign", "yearly-2030", "field-tests", editorOf),
  bidsOfProject: {
    ...{ stage: "draft", effect: "answer", shows: /earlier-bid/, from: "specification/competition" },
    args: async ({ project }) => [project, project],
  },
  otherProjects: {
    ...{ stage: "draft", effect: "answer", shows: /"more":/, from: "specification/competition" },
    args: async ({ project }) => [project, ""],
  },
  giveOut: {
    ...{ stage: "draft", effect: "record", from: "specification/versions" },
    args: async (trial) => [
      trial.project,
      { date: "", reason: "", problems: [] },
      form({
        ...{ date: "2026-05-01", reason: "", withBlanks: "on" },
        seen: await hiddenOn(trial, "specification/versions", "seen"),
      }),
    ],
  },
  makeRegister: {
    ...{ stage: "draft", effect: "record", from: "submittals" },
    args: async ({ project }) => [project, nothing, form({ due: "2027-04-01" })],
  },
  addLine: {
    ...{ stage: "draft", effect: "record", from: "submittals" },
    args: async ({ project }) => [project, nothing, form({ item: "A line by hand", kind: "product-data" })],
  },
  removeLine: removal("submittal", "line", "pile-height-data", "submittals"),
  restoreLine: restoration("submittal", "line", "pile-height-data", "submittals", editorOf),
  addSubstitution: {
    ...{ stage: "draft", effect: "record", from: "submittals/substitutions" },
    args: async ({ project }) => [project, nothing, form({ item: "Another infill" })],
  },
  removeSubstitution: removal("substitution", "request", "lighter-infill", "submittals/substitutions"),
  restoreSubstitution: restoration("substitution", "request", "lighter-infill", "submittals/substitutions", editorOf),
  removeAttachment: {
    ...{ stage: "draft", effect: "record", from: "attachments" },
    args: async (trial) => {
      const attachment = await paper(trial, editorOf(trial.administrator));
      return [form({ project: trial.project, attachment, version: "1" })];
    },
  },
  restoreAttachment: {
    ...{ stage: "draft", effect: "record", from: "attachments" },
    args: async (trial) => {
      const attachment = await paper(trial, editorOf(trial.administrator));
      await taken(trial, "attachment", attachment, editorOf(trial.administrator));
      return [form({ project: trial.project, attachment })];
    },
  },
  addBid: {
    ...{ stage: "draft", effect: "record", from: "bids" },
    args: async ({ project }) => [project, { bidder: "", problem: "" }, form({ bidder: "A new bidder" })],
  },
  removeBid: removal("bid", "bid", "bid-d", "bids"),
  restoreBid: restoration("bid", "bid", "bid-d", "bids", editorOf),
  sealTyped: {
    ...{ stage: "frozen", effect: "record", from: "bids/bid-b/sealed-prices" },
    args: async ({ project }) => [{ project, bid: "bid-b" }, onePrice("$1,000,000", "Works")],
  },
  sealFromForm: {
    ...{ stage: "frozen", effect: "record", from: "bids/bid-b/sealed-prices" },
    args: async (trial) => [
      { project: trial.project, bid: "bid-b" },
      { kind: "nothing-sent" },
      form({ file: await filledForm(trial) }),
    ],
  },
  releaseToPublic: {
    ...{ stage: "draft", effect: "record", from: "procedure/released" },
    args: async ({ project }) => [
      project,
      { problem: "", done: "", link: "", typed: {} },
      form({ label: "A trial", part: "infill", lastDay: "2099-12-31" }),
    ],
  },
  takeBackRelease: {
    ...{ stage: "draft", effect: "record", from: "procedure/released" },
    args: async ({ project }) => [
      project,
      "to-be-taken-back",
      { problem: "", done: "", link: "", typed: {} },
      form({}),
    ],
  },
});
