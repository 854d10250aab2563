import type { ActId } from "#lib/people";
import type { ReleasePart } from "#lib/release";

/** What a door asks of whoever comes: an act that their role allows, or … */
export type Asks =
  | ActId
  /** nothing: it is open to everybody who reaches the server */
  | "nothing"
  /** to have signed in */
  | "sign-in"
  /** to belong to the organisation */
  | "belong"
  /** to administer the organisation */
  | "administer"
  /** to be on the list of people of the project, in any role, or to administer its organisation */
  | "read";

/** A page or file with its address, where `[…]` stands for an id. */
export type Door = Readonly<{
  address: string;
  asks: Asks;
  /** What an address takes that shows nothing. */
  takes?: "file" | "json";
  /** The part of a project with which whoever has a public link may read it; absent where no link opens it. */
  part?: ReleasePart;
}>;

const read = (address: string, part?: ReleasePart): Door => ({
  address: `/project/[]/${address}`,
  asks: "read",
  ...(part === undefined ? {} : { part }),
});

/**
 * Every page and file that Evenfield answers with. A page that edits can be read by whoever may read; its forms are closed
 * to those whose role does not let them write, and the store refuses what they send all the same.
 */
export const doors: readonly Door[] = [
  { address: "/", asks: "sign-in" },
  { address: "/access", asks: "nothing" },
  { address: "/health", asks: "nothing" },
  { address: "/ready", asks: "nothing" },
  { address: "/sign-in", asks: "nothing" },
  { address: "/sign-in/forgotten", asks: "nothing" },
  { address: "/come-in/[]", asks: "nothing" },
  { address: "/released/[]/[]/[]", asks: "nothing" },
  { address: "/account", asks: "sign-in" },
  { address: "/organisation/[]", asks: "belong" },
  { address: "/project/[]", asks: "read" },
  read("attachments"),
  read("attachments/[]"),
  read("attachments/[]/file"),
  read("attachments/[]/view"),
  { address: "/project/[]/attachments/upload", asks: "keep-papers", takes: "file" },
  read("audit-workbook"),
  read("bid-form"),
  read("bid-form/import"),
  read("bids"),
  read("bids/[]"),
  read("bids/[]/import"),
  read("bids/[]/questions"),
  read("bids/[]/sealed-prices"),
  read("brief"),
  read("claims"),
  read("committee"),
  read("committee/consensus"),
  read("committee/scoresheet"),
  read("conflict/[]/[]"),
  read("cost", "cost"),
  read("cost/conventions"),
  read("cost/owners-figures"),
  read("cost/two-bids", "cost"),
  read("cost/uncertainty", "cost"),
  read("evaluation", "evaluation"),
  read("evaluation/robustness", "evaluation"),
  read("export"),
  read("field-tests"),
  read("field-tests/[]"),
  read("field-tests/[]/on-the-field"),
  read("field-tests/trace"),
  { address: "/project/[]/field-tests/worker", asks: "nothing" }, // a script that is the same everywhere
  read("hardness", "hardness"),
  read("infill", "infill"),
  read("levelling"),
  read("procedure"),
  read("procedure/amend/[]"),
  read("procedure/people"),
  read("procedure/released"),
  read("promised", "promised"),
  read("promised/files/[]", "promised"),
  read("recommendation", "recommendation"),
  read("recommendation/paper", "recommendation"),
  read("recommendation/words"),
  read("record", "record"),
  read("record/export", "record"),
  read("requirements", "requirements"),
  read("side-by-side", "side-by-side"),
  read("side-by-side/behind", "side-by-side"),
  read("specification"),
  read("specification/clauses"),
  read("specification/competition"),
  read("specification/files/[]"),
  read("specification/language"),
  read("specification/section"),
  read("specification/versions"),
  read("submittals"),
  read("submittals/award"),
  read("submittals/deliveries"),
  read("submittals/lines/[]"),
  read("submittals/substitutions"),
  read("submittals/substitutions/[]"),
  { address: "/project/[]/together", asks: "read", takes: "json" },
];

const shapes = doors.map((door) => ({
  door,
  parts: door.address.split("/"),
}));

/** The door at an address; null if there is none. Where an id and a name both fit, the name does. */
export function doorAt(path: string): Door | null {
  const asked = path.split("/");
  const fitting = shapes.filter(
    ({ parts }) => parts.length === asked.length && parts.every((part, at) => part === "[]" || part === asked[at]),
  );
  const names = (parts: readonly string[]) => parts.filter((part) => part !== "[]").length;
  return fitting.sort((one, other) => names(other.parts) - names(one.parts))[0]?.door ?? null;
}

/** What writing a document asks, by its kind. */
const written = {
  brief: "set-criteria",
  requirements: "set-criteria",
  specification: "set-criteria",
  bid: "enter-bids",
  costing: "level-costs",
  campaign: "keep-papers",
  attachment: "keep-papers",
  contract: "keep-papers",
  submittal: "keep-papers",
  delivery: "keep-papers",
  substitution: "keep-papers",
  recommendation: "keep-papers",
  committee: "agree",
  people: "list-people",
  release: "list-people",
} as const satisfies Readonly<Record<string, ActId>>;

const forEachKind = (action: string, kinds: Readonly<Record<string, ActId>>): Readonly<Record<string, ActId>> =>
  Object.fromEntries(Object.entries(kinds).map(([kind, asks]) => [`${action} (${kind})`, asks]));

const { release: _, ...inTwoVersions } = written; // a link is given out whole

/**
 * What a server action asks, by its name; with the variant in brackets where what it asks depends on what it is asked for.
 * What writes a draft asks no more than to read the project, as a draft is seen by whoever typed it alone.
 */
export const actions: Readonly<Record<string, Asks>> = {
  signIn: "nothing",
  signOut: "nothing",
  askForNewPassword: "nothing",
  comeIn: "nothing",
  endSignIn: "sign-in",
  changePassword: "sign-in",
  invite: "administer",
  newPasswordLink: "administer",
  setMemberRole: "administer",
  endMembership: "administer",
  renameOrganisation: "administer",
  addOrganisation: "administer",
  openDemo: "administer",
  startProject: "administer",
  importProject: "administer",
  chooseUnits: "nothing",
  chooseNames: "nothing",
  discardDraft: "read",
  "moveToStage (to frozen)": "freeze-and-amend",
  "moveToStage (afterwards)": "move-stage",
  choosePricesAreSealed: "freeze-and-amend",
  keepAmendment: "read",
  recordAmendment: "freeze-and-amend",
  sayWhoIsHere: "nothing",
  keepSheet: "read",
  handIn: "score",
  openAllSheets: "agree",
  readForm: "read",
  ...forEachKind("saveDocument", written),
  ...forEachKind("saveChosen", inTwoVersions),
  addFilledBid: "enter-bids",
  addCampaign: "keep-papers",
  removeCampaign: "keep-papers",
  restoreCampaign: "keep-papers",
  bidsOfProject: "read",
  otherProjects: "sign-in",
  giveOut: "set-criteria",
  makeRegister: "keep-papers",
  addLine: "keep-papers",
  removeLine: "keep-papers",
  restoreLine: "keep-papers",
  addSubstitution: "keep-papers",
  removeSubstitution: "keep-papers",
  restoreSubstitution: "keep-papers",
  removeAttachment: "keep-papers",
  restoreAttachment: "keep-papers",
  addBid: "enter-bids",
  removeBid: "enter-bids",
  restoreBid: "enter-bids",
  sealTyped: "enter-bids",
  sealFromForm: "enter-bids",
  releaseToPublic: "list-people",
  takeBackRelease: "list-people",
};
