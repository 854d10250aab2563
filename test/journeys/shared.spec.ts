import { expect, type Page, test } from "@playwright/test";
import { type Asks, actions, doors, signedInEditor } from "#lib/access";
import { choosePrices, handInSheet, moveStage, type ProjectAct } from "#lib/evaluation";
import { type ActId, actLabels, type RoleId, roles } from "#lib/people";
import { releaseParts } from "#lib/release";
import { firstOrganisation, newToken, type People, tokenHash } from "#lib/store";
import { pdf } from "../attachment/small-files";
import { ratedToStore, sheetOf } from "../evaluation/procedure/rated-project";
import { type ActionCase, actionCases, type Trial } from "./action-cases";
import { askAction, builtActions } from "./asked-actions";
import { looksWell } from "./axe-findings";
import {
  administrator,
  aPassword,
  type Came,
  member,
  owner,
  type SharedStore,
  sharedPeople,
  sharedStore,
} from "./shared";
import { sharedAddress } from "./shared-server";
import { isWholeWalk } from "./whole-walk";

// Journeys on a server on which people sign in. The first of them makes its first owner, so they follow one another.
test.describe.configure({ mode: "serial", timeout: 240_000 });
test.use({ baseURL: sharedAddress });

let store: SharedStore;
let people: People;
test.beforeAll(async () => {
  [store, people] = [await sharedStore(), await sharedPeople()];
});
test.afterAll(async () => {
  await store.close();
  await people.close();
});

async function setPassword(page: Page, password: string, button: string | RegExp): Promise<void> {
  await page.getByLabel("Password", { exact: true }).fill(password);
  await page.getByLabel("The same password again").fill(password);
  await page.getByRole("button", { name: button }).click();
}

test("the first owner comes in by the link of the log; an invited evaluator scores what is theirs and nothing else", async ({
  browser,
}) => {
  const token = await people.accounts.firstOwnerToken();
  test.skip(token === null, "this server has an owner already");
  const page = await (await browser.newContext()).newPage();
  await page.goto("/");
  await expect(page).toHaveURL("/sign-in");
  await looksWell(page);
  await page.goto(`/come-in/${token}`);
  await looksWell(page);
  await page.getByLabel("Organisation").fill(owner.organisation);
  await page.getByLabel("Your name").fill(owner.name);
  await page.getByLabel("Address of your mail").fill(owner.email);
  await setPassword(page, "football2026!", "Set up and sign in");
  await expect(page.getByText("among those that are tried first")).toBeVisible();
  await expect(page.getByLabel("Your name")).toHaveValue(owner.name);
  await setPassword(page, aPassword, "Set up and sign in");
  await expect(page.getByRole("heading", { level: 1, name: "Evenfield" })).toBeVisible();
  await looksWell(page);

  await page.getByRole("link", { name: owner.organisation }).click();
  const invitation = page.getByRole("form", { name: "Invite somebody" });
  await invitation.getByLabel("Name").fill("Eve Okoro");
  await invitation.getByLabel("Address of mail").fill("eve@larkmoor");
  await invitation.getByRole("button", { name: "Invite" }).click();
  await expect(invitation.getByRole("alert")).toBeVisible();
  await expect(invitation.getByLabel("Address of mail")).toHaveValue("eve@larkmoor");
  await invitation.getByLabel("Address of mail").fill("eve@larkmoor.example");
  await invitation.getByRole("button", { name: "Invite" }).click();
  const link = await invitation.getByLabel("The link").inputValue();
  await looksWell(page);

  const dana = await administrator(people);
  ownersId = dana.id;
  const made = await store.projects.import(ratedToStore, editorOf(dana));
  if (made.kind !== "saved") throw new Error(made.kind);
  await page.goto(`/project/${made.id}/procedure/people`);
  while ((await page.getByRole("button", { name: /^Remove person/ }).count()) > 0)
    await page
      .getByRole("button", { name: /^Remove person/ })
      .first()
      .click();
  await page.getByRole("button", { name: "Add a person" }).click();
  await page.getByLabel("Person 1", { exact: true }).selectOption({ label: "Eve Okoro" });
  await page.getByRole("group", { name: "Eve Okoro" }).getByRole("checkbox", { name: "Evaluator" }).check();
  await expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);
  await looksWell(page);

  const evaluator = await (await browser.newContext()).newPage();
  await evaluator.goto(link);
  await expect(evaluator.getByRole("heading", { level: 1, name: "Welcome, Eve Okoro" })).toBeVisible();
  await setPassword(evaluator, "granite otter lamp fig", /^Set the password/);
  await evaluator.getByRole("link", { name: "North field" }).click();
  await expect(evaluator.getByRole("link", { name: "Signed in: Eve Okoro, evaluator" })).toBeVisible();
  await evaluator.goto(`/project/${made.id}/brief`);
  await expect(evaluator.getByRole("form", { name: "Brief" }).getByRole("textbox").first()).toBeDisabled();
  await page.goto(`/project/${made.id}/brief`);
  await expect(page.getByText(/^Also on this page: Eve Okoro, since \d/)).toBeVisible();
  await expect(evaluator.getByText(/^Also on this page: Dana/)).toBeVisible();
  await evaluator.goto(link);
  await expect(evaluator.getByRole("heading", { level: 1, name: "This link no longer serves" })).toBeVisible();

  await done(made.id, choosePrices("sealed"), dana);
  await done(made.id, moveStage(editorOf(dana), { stage: "frozen", note: "", bid: "" }), dana);
  await evaluator.goto(`/project/${made.id}/committee/scoresheet`);
  await evaluator.getByLabel("Your statement").selectOption("none");
  await evaluator.getByLabel(/^Level, “Plan for care”, bid A/).selectOption("level-3");
  await expect(evaluator.locator('[role="status"][data-saving]')).toHaveText(/^Kept at /);

  await evaluator.goto("/account");
  await looksWell(evaluator);
  await evaluator.getByLabel("The password that you have now").fill("granite otter lamp fig");
  await evaluator.getByLabel("A new password").fill("basalt heron candle plum");
  await evaluator.getByLabel("The new password again").fill("basalt heron candle plum");
  await evaluator.getByRole("button", { name: "Change it" }).click();
  await expect(evaluator.getByText("The password is changed.")).toBeVisible();
  await evaluator
    .getByRole("banner")
    .or(evaluator.getByRole("main"))
    .getByRole("button", { name: "Sign out", exact: true })
    .first()
    .click();
  await expect(evaluator).toHaveURL("/sign-in");
  await evaluator.goto(`/project/${made.id}/committee`);
  await evaluator.getByLabel("Address of your mail").fill("eve@larkmoor.example");
  await evaluator.getByLabel("Password").fill("granite otter lamp fig");
  await evaluator.getByRole("button", { name: "Sign in" }).click();
  await expect(evaluator.getByText("Nobody signs in with this address and this password.")).toBeVisible();
  await evaluator.getByLabel("Password").fill("basalt heron candle plum");
  await evaluator.getByRole("button", { name: "Sign in" }).click();
  await expect(evaluator).toHaveURL(`/project/${made.id}/committee`);
});

test("behind a proxy that takes TLS, signing in leads on within the page", async ({ browser }) => {
  await administrator(people);
  const page = await (await browser.newContext({ extraHTTPHeaders: { "x-forwarded-proto": "https" } })).newPage();
  await page.goto("/sign-in", { waitUntil: "networkidle" });
  await page.evaluate(() => Object.assign(window, { isSameLoading: true }));
  await page.getByLabel("Address of your mail").fill(owner.email);
  await page.getByLabel("Password").fill(aPassword);
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Evenfield" })).toBeVisible();
  expect(await page.evaluate(() => "isSameLoading" in window), "the page was not loaded anew").toBe(true);
});

test("whoever has a public link reads what was released and nothing else, until it is taken back", async ({
  browser,
}) => {
  const dana = await administrator(people);
  ownersId = dana.id;
  const made = await store.projects.import(ratedToStore, editorOf(dana));
  if (made.kind !== "saved") throw new Error(made.kind);
  const page = await signedIn(await browser.newContext(), dana);
  await page.goto(`/project/${made.id}/procedure/released`);
  const form = page.getByRole("form", { name: "Make a link" });
  await form.getByLabel("For whom or what").fill("board meeting of May");
  await form.getByLabel("Last day").fill("2020-01-31");
  await form.getByLabel("Side by side").check();
  await form.getByRole("button", { name: "Release these parts" }).click();
  await expect(form.getByText("2020-01-31 is over.")).toBeVisible();
  await form.getByLabel("Last day").fill("2099-01-31");
  await form.getByLabel("Side by side").check();
  await form.getByLabel("Recommendation, with the paper for the board").check();
  await form.getByRole("button", { name: "Release these parts" }).click();
  const link = await form.getByLabel("The link").inputValue();
  await looksWell(page);

  const reader = await (await browser.newContext()).newPage();
  await reader.goto(link);
  await expect(reader).toHaveURL(`/project/${made.id}`);
  await looksWell(reader);
  const contents = reader.getByRole("navigation", { name: "Contents" });
  await expect(contents.getByRole("link")).toHaveText(["Side by side", "Recommendation"]);
  await contents.getByRole("link", { name: "Side by side" }).click();
  await expect(reader.getByRole("heading", { level: 1, name: "Side by side" })).toBeVisible();
  await expect(reader.getByText("Released to the public: board meeting of May.")).toBeVisible();
  await looksWell(reader);
  expect((await reader.request.get(`/project/${made.id}/recommendation/paper?as=pdf`)).status()).toBe(200);
  expect((await reader.goto(`/project/${made.id}/bids`))?.status()).toBe(404);
  expect((await reader.request.get(`/project/${made.id}/export`)).status()).toBe(404);

  await page.getByRole("form", { name: "Take back: board meeting of May" }).getByRole("button").click();
  await expect(page.getByRole("cell", { name: "taken back" })).toBeVisible();
  expect((await reader.goto(link))?.status()).toBe(404);
  await reader.goto(`/project/${made.id}/side-by-side`);
  await expect(reader).toHaveURL(/\/sign-in/);
});

// Every door and every action, asked by everybody.

type Who =
  | RoleId
  | "organisation’s administrator"
  | "member not listed"
  | "another organisation"
  | "public link"
  | "nobody";
const everybody: readonly Who[] = [
  ...(Object.keys(roles) as RoleId[]),
  ...(["organisation’s administrator", "member not listed", "another organisation", "public link", "nobody"] as const),
];

const editorOf = ({ id, name }: Came) => signedInEditor({ id, name }, id === ownersId ? [firstOrganisation] : []);
let ownersId = "";

async function done(project: string, act: ProjectAct, by: Came): Promise<void> {
  expect(await store.documents.act(project, act, editorOf(by))).toMatchObject({ kind: "done" });
}

async function signedIn(context: Awaited<ReturnType<Page["context"]>>, { cookie }: Came): Promise<Page> {
  const [name = "", value = ""] = cookie.split("=");
  await context.addCookies([{ name, value, url: sharedAddress, httpOnly: true, sameSite: "Lax" }]);
  return context.newPage();
}

/** What the table says: whether somebody gets what a door or an action asks for. */
function may(who: Who, asks: Asks): boolean {
  if (asks === "nothing") return true;
  if (who === "nobody" || who === "public link") return false;
  if (asks === "sign-in") return true;
  if (asks === "belong") return who !== "another organisation";
  if (asks === "administer") return who === "organisation’s administrator";
  if (who === "member not listed" || who === "another organisation") return false;
  if (asks === "read") return true;
  const acts = who === "organisation’s administrator" ? roles.administrator.acts : roles[who].acts;
  return acts.includes(asks as ActId);
}

type Cast = Readonly<Record<Who, Came | null>>;

async function cast(): Promise<Cast> {
  const dana = await administrator(people);
  ownersId = dana.id;
  const other = await people.organisations.add("Another owner", dana.id);
  if (other.kind !== "done") throw new Error(other.kind);
  const stranger = await member(people, other.id, "Noa Brandt", dana.id);
  await people.organisations.setRole(other.id, stranger.id, "administrator", dana.id);
  const made: Partial<Record<Who, Came | null>> = {
    "organisation’s administrator": dana,
    "another organisation": stranger,
  };
  for (const role of Object.keys(roles) as RoleId[])
    made[role] = await member(people, firstOrganisation, `Person ${role}`, dana.id);
  made["member not listed"] = await member(people, firstOrganisation, "Person unlisted", dana.id);
  return { ...made, "public link": null, nobody: null } as Cast;
}

const releaseToken = newToken();

/** A project with one person of each role, everything released by one link and another link to be taken back. */
async function trialProject(cast: Cast, stage: ActionCase["stage"]): Promise<Trial> {
  const dana = cast["organisation’s administrator"] as Came;
  const listed = (Object.keys(roles) as RoleId[]).map((role) => {
    const { id, name } = cast[role] as Came;
    return { id, name, position: "", roles: [role] };
  });
  const release = { label: "everything", endsAt: "2099-01-01T00:00:00.000Z", takenBackAt: null };
  const parts = Object.keys(releaseParts) as (keyof typeof releaseParts)[];
  const made = await store.projects.import(
    {
      ...ratedToStore,
      documents: [
        ...ratedToStore.documents.filter(({ kind }) => kind !== "people"),
        { kind: "people", body: { people: listed } },
        { kind: "release", id: "everything", body: { ...release, parts, tokenHash: tokenHash(releaseToken) } },
        { kind: "release", id: "to-be-taken-back", body: { ...release, parts, tokenHash: tokenHash(newToken()) } },
      ],
    },
    editorOf(dana),
  );
  if (made.kind !== "saved") throw new Error(made.kind);
  if (stage !== "draft") {
    await done(made.id, choosePrices("sealed"), dana);
    await done(made.id, moveStage(editorOf(dana), { stage: "frozen", note: "", bid: "" }), dana);
  }
  if (stage === "sheets-in") {
    const evaluator = cast.evaluator as Came;
    const sheet = sheetOf("level-2", "Words.", { kind: "none" });
    await done(made.id, handInSheet(editorOf(evaluator), sheet), evaluator);
  }
  return { project: made.id, store, administrator: dana };
}

const cookieOf = (cast: Cast, who: Who, project: string): string =>
  who === "public link" ? `evenfield-released=${project}.everything.${releaseToken}` : (cast[who]?.cookie ?? "");

test("every page and file is read by those whom the table names, and by nobody else", async () => {
  test.setTimeout(600_000);
  const all = await cast();
  const { project } = await trialProject(all, "draft");
  const kept = await store.contents.keep(
    project,
    { name: "report.pdf", title: "", kind: "pdf", of: { kind: "project" }, note: "" },
    new Uint8Array([37, 80, 68, 70]),
    editorOf(all.administrator as Came),
  );
  if (kept.kind !== "saved") throw new Error(kept.kind);
  const ids: Readonly<Record<string, readonly string[]>> = {
    "/project/[]": [project],
    ...Object.fromEntries(doors.map(({ address }) => [address, idsIn(address, project, kept.id)])),
  };
  const wrong: string[] = [];
  let asked = 0;
  for (const [turn, { address, asks, part, takes }] of doors.entries()) {
    if (asks === "nothing") continue;
    let at = 0;
    const path = address.replaceAll("[]", () => ids[address]?.[at++] ?? "none");
    for (const who of asksAt(turn, asks)) {
      const expected = may(who, asks) || (who === "public link" && (part !== undefined || address === "/project/[]"));
      const answer = await fetch(`${sharedAddress}${path}${query[address] ?? ""}`, {
        redirect: "manual",
        headers: {
          cookie: cookieOf(all, who, project),
          ...(takes === undefined ? {} : { origin: sharedAddress, "x-file-name": "report.pdf" }),
        },
        ...(takes === undefined ? {} : { method: "POST", body: sent[takes] }),
      });
      await answer.arrayBuffer();
      asked += 1;
      const isLed = answer.status >= 300 && answer.status < 400 && !leadsToSignIn(answer);
      const isGiven = answer.status === 200 || isLed;
      if (isGiven !== expected)
        wrong.push(`${who}: ${path} answered ${answer.status}, expected ${expected ? "to be given" : "not to be"}`);
    }
  }
  console.log(`${doors.length} doors, ${asked} requests`);
  expect(wrong).toEqual([]);
});

/**
 * Who asks at a door. All who may read get the same page there, and drawing it takes most of the time, so on most days
 * two of them ask, others at the next door; whoever may not read always asks.
 */
function asksAt(turn: number, asks: Asks): readonly Who[] {
  if (isWholeWalk || asks !== "read") return everybody;
  const readers = everybody.filter((who) => may(who, asks));
  const two = [readers[turn % readers.length], readers[(turn + 1 + (turn % 3)) % readers.length]];
  return everybody.filter((who) => two.includes(who) || !readers.includes(who));
}

const leadsToSignIn = (answer: Response): boolean => /\/sign-in/.test(answer.headers.get("location") ?? "");

/** What is sent to an address that takes something. */
const sent = {
  file: new Blob([new Uint8Array(pdf())]),
  json: JSON.stringify({ does: "shows", page: "a-page-of-the-trial", place: "brief", documents: [] }),
} as const;

/** What a door needs besides its address. */
const query: Readonly<Record<string, string>> = {
  "/project/[]/recommendation/paper": "?as=pdf",
  "/project/[]/side-by-side/behind": "?row=derived.infill-components&bid=bid-a",
};

function idsIn(address: string, project: string, paper: string): readonly string[] {
  if (address.startsWith("/organisation/")) return [firstOrganisation];
  if (address.includes("/conflict/")) return [project, "brief", "brief"];
  const last: Readonly<Record<string, string>> = {
    attachments: paper,
    bids: "bid-a",
    "field-tests": "yearly-2030",
    amend: "brief",
    lines: "pile-height-data",
    substitutions: "lighter-infill",
    files: address.includes("promised") ? "promised.csv" : "draft.docx",
  };
  const parts = address.split("/");
  const before = parts[parts.lastIndexOf("[]") - 1] ?? "";
  return [project, last[before] ?? ""];
}

test("every action is done for those whom the table names, and for nobody else", async () => {
  test.setTimeout(600_000);
  const all = await cast();
  const cases = actionCases(editorOf);
  const tried = new Set(Object.keys(cases).map((key) => key.replace(/ \(.*$/, "")));
  expect(builtActions.filter((name) => !tried.has(name) && !ofItself.has(name))).toEqual([]);
  const wrong: string[] = [];
  let asked = 0;
  for (const [key, { stage, effect, shows, from, args }] of Object.entries(cases)) {
    const asks = actions[key];
    if (asks === undefined) throw new RangeError(`${key} does not stand in the table`);
    let trial = await trialProject(all, stage);
    const inOrder = everybody.toSorted((one, other) => Number(may(one, asks)) - Number(may(other, asks)));
    for (const who of inOrder) {
      const expected = may(who, asks);
      if (expected && effect === "record") trial = await trialProject(all, stage);
      const given = await args(trial, all[who]);
      const before = await standing(trial, all[who], effect);
      const page = from === "/" ? "/" : `/project/${trial.project}/${from}`;
      const name = key.replace(/ \(.*$/, "");
      const answer = await askAction(name, given, { cookie: cookieOf(all, who, trial.project), from: page });
      asked += 1;
      const after = await standing(trial, all[who], effect);
      const isDone = shows === undefined ? after !== before : shows.test(answer.text.slice(0, 100_000));
      if (isDone !== expected)
        wrong.push(
          `${who}: ${key} answered ${answer.status}, ${isDone ? "done" : "not done"}: ${answer.text.slice(-300)}`,
        );
      const stood = await trial.store.record.verify(trial.project);
      expect(stood?.kind).toBe("intact");
    }
  }
  console.log(`${Object.keys(cases).length} cases of ${tried.size} actions, ${asked} requests`);
  expect(wrong).toEqual([]);
});

/** Actions that ask nothing of a project: signing in, one’s own account, the organisation, the look of pages. Each is tried elsewhere. */
const ofItself = new Set([
  ...["signIn", "signOut", "askForNewPassword", "comeIn", "endSignIn", "changePassword"],
  ...["invite", "newPasswordLink", "setMemberRole", "endMembership", "renameOrganisation", "addOrganisation"],
  ...["chooseUnits", "chooseNames", "sayWhoIsHere"],
]);

/** What an action would change, as a text to compare. What was refused leaves a trace in the record, and nothing else. */
async function standing(
  { project, store: kept }: Trial,
  asker: Came | null,
  effect: ActionCase["effect"],
): Promise<string> {
  if (effect === "project")
    return String((await kept.projects.list()).filter(({ organisation }) => organisation === firstOrganisation).length);
  if (effect === "draft") return asker === null ? "" : JSON.stringify(await kept.drafts.list(project, editorOf(asker)));
  const entries = await kept.record.list(project);
  return String(entries.filter(({ action }) => action !== "refuse").length);
}

test("actions of the organisation are done for its administrators alone", async () => {
  const all = await cast();
  const dana = all["organisation’s administrator"] as Came;
  const target = await member(people, firstOrganisation, "Person target", dana.id);
  const reply = { problem: "", done: "", link: "", typed: {} };
  const fields = (given: Readonly<Record<string, string>>) => {
    const form = new FormData();
    for (const [name, value] of Object.entries(given)) form.append(name, value);
    return form;
  };
  const cases: Readonly<Record<string, readonly unknown[]>> = {
    invite: [
      firstOrganisation,
      reply,
      fields({ name: "New Person", email: `new.${Date.now()}@larkmoor.example`, role: "member" }),
    ],
    newPasswordLink: [firstOrganisation, target.id, reply, fields({})],
    setMemberRole: [firstOrganisation, target.id, "administrator", reply, fields({})],
    renameOrganisation: [firstOrganisation, reply, fields({ name: owner.organisation })],
    addOrganisation: [reply, fields({ name: "A third owner" })],
    endMembership: [firstOrganisation, target.id, reply, fields({})],
  };
  const wrong: string[] = [];
  for (const [name, args] of Object.entries(cases))
    for (const who of everybody.toSorted(
      (one, other) => Number(may(one, "administer")) - Number(may(other, "administer")),
    )) {
      const answer = await askAction(name, args, { cookie: cookieOf(all, who, "none"), from: "/organisation/first" });
      const isDone =
        /"done":"[^"]/.test(answer.text) || (name === "addOrganisation" && /^\/organisation\//.test(answer.ledTo));
      if (isDone !== may(who, "administer"))
        wrong.push(`${who}: ${name} answered ${answer.status} ${answer.text.slice(-200)}`);
    }
  expect(wrong).toEqual([]);
});

test("the tables are printed for everybody to read", async ({ page }) => {
  await page.goto("/access");
  await looksWell(page);
  for (const label of Object.values(actLabels))
    await expect(page.getByRole("rowheader", { name: label, exact: true })).toBeVisible();
  await expect(page.getByRole("table", { name: "Pages and files" }).getByRole("row")).toHaveCount(doors.length + 1);
  await expect(page.getByRole("table", { name: "Actions" }).getByRole("row")).toHaveCount(
    Object.keys(actions).length + 1,
  );
});
