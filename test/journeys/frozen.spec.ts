import type { Page, Request } from "@playwright/test";
import { ratedFile } from "../evaluation/procedure/rated-project";
import { expect, test } from "./fixtures";

type JourneyStore = Parameters<Parameters<typeof test>[2]>[0]["store"];

const limitField = "Limit, to stay below";

const saving = (page: Page) => page.locator('[role="status"][data-saving]');

/** Opens a file on the first page; what is said where it is not opened is left to the caller. */
async function openFile(page: Page, file: unknown): Promise<void> {
  await page.goto("/");
  const buffer = Buffer.from(JSON.stringify(file));
  const sent = { name: "field.json", mimeType: "application/json", buffer };
  await page.getByLabel("Project file", { exact: true }).setInputFiles(sent);
  await page.getByRole("button", { name: "Open the file" }).click();
}

async function newProject(page: Page): Promise<string> {
  await openFile(page, ratedFile);
  await page.waitForURL(/\/project\/[^/]+$/);
  return new URL(page.url()).pathname;
}

async function freeze(page: Page, project: string): Promise<void> {
  await page.goto(`${project}/procedure`);
  await page.getByRole("button", { name: "Freeze the criteria" }).click();
  await expect(page.getByText(/^Criteria frozen on /).first()).toBeVisible();
}

const idOf = (project: string) => project.replace("/project/", "");

/** What the record says last, once it has as many refusals as expected; what is frozen has not moved. */
async function expectRefused(store: JourneyStore, project: string, count: number, kind = "requirements") {
  const id = idOf(project);
  await expect
    .poll(async () => (await store.record.list(id)).filter(({ action }) => action === "refuse").length)
    .toBe(count);
  const last = (await store.record.list(id)).findLast(({ action }) => action === "refuse");
  expect(last?.after).toMatchObject({ documents: expect.arrayContaining([expect.objectContaining({ kind })]) });
  const stands = await store.documents.read({ project: id, kind: "requirements", id: "requirements" });
  expect(stands?.body.impact.limit).toBe("165 g");
  expect(await store.record.verify(id)).toMatchObject({ kind: "intact" });
}

/** The request with which a page saves what is typed there. */
async function savingRequest(page: Page, field: string, text: string): Promise<Request> {
  const [request] = await Promise.all([
    page.waitForRequest((sent) => sent.method() === "POST" && "next-action" in sent.headers()),
    page.getByLabel(field).fill(text),
  ]);
  await expect(saving(page)).toHaveText(/^Saved at /);
  return request;
}

/** Sends a request of a page again, as it was or with another version in it. */
async function sentAgain(page: Page, request: Request, version: number | null = null): Promise<string> {
  const [where, ...rest] = JSON.parse(request.postData() ?? "[]");
  const data = JSON.stringify([version === null ? where : { ...where, version }, ...rest]);
  const { "content-length": _, ...headers } = await request.allHeaders();
  const kept = Object.fromEntries(Object.entries(headers).filter(([name]) => !name.startsWith(":")));
  const answer = await page.request.post(request.url(), { headers: kept, data });
  return answer.text();
}

const refusal = /Criteria, limits and weights can’t be changed: the project is at the stage “criteria frozen”/;

test("the form’s own action: a page that was open before the freeze is refused, its text is kept, the record says so", async ({
  page,
  store,
}) => {
  const project = await newProject(page);
  const before = await page.context().newPage();
  await before.goto(`${project}/requirements`);
  await expect(before.getByLabel(limitField)).toHaveValue("165 g");
  await freeze(page, project);
  await before.getByLabel(limitField).fill("190 g");
  await expect(saving(before)).toContainText("Not saved");
  await expect(before.getByText(refusal).first()).toBeVisible();
  await expect(before.getByLabel(limitField)).toHaveValue("190 g");
  await expectRefused(store, project, 1);
  await page.goto(`${project}/record?what=refusal`);
  await expect(page.getByText(/It would have changed: impact, limit[;.]/)).toBeVisible();
  await before.close();
});

test("a request that was sent before the freeze is refused when it is sent again, in its own version and in today’s", async ({
  page,
  store,
}) => {
  const project = await newProject(page);
  await page.goto(`${project}/requirements`);
  const request = await savingRequest(page, limitField, "190 g");
  await savingRequest(page, limitField, "165 g");
  await freeze(page, project);
  const id = idOf(project);
  const stands = await store.documents.read({ project: id, kind: "requirements", id: "requirements" });
  expect(await sentAgain(page, request)).toMatch(refusal);
  await expectRefused(store, project, 1);
  expect(await sentAgain(page, request, stands?.version ?? 0)).toMatch(refusal);
  await expectRefused(store, project, 2);
  expect(await sentAgain(page, request, 0)).toMatch(refusal);
  await expectRefused(store, project, 3);
  // the project was last changed by the freeze, not by what was refused
  const { changedAt } = (await store.projects.load(id))?.summary ?? {};
  const frozen = (await store.record.list(id)).findLast(({ kind }) => kind === "procedure");
  expect(changedAt).toBe(frozen?.at);
});

test("the field, the use and the conventions of cost are frozen as well; what else the brief holds is free", async ({
  page,
  store,
}) => {
  const project = await newProject(page);
  await page.goto(`${project}/brief`);
  const owner = page.getByLabel("Owner", { exact: true });
  const [request] = await Promise.all([
    page.waitForRequest((sent) => sent.method() === "POST" && "next-action" in sent.headers()),
    owner.fill("Another district"),
  ]);
  await expect(saving(page)).toHaveText(/^Saved at /);
  await freeze(page, project);
  await page.goto(`${project}/brief`);
  await owner.fill("The same district");
  await expect(saving(page)).toHaveText(/^Saved at /);

  const stands = await store.documents.read({ project: idOf(project), kind: "brief", id: "brief" });
  const [where, brief, ...rest] = JSON.parse(request.postData() ?? "[]");
  const headers = Object.fromEntries(
    Object.entries(await request.allHeaders()).filter(([name]) => !name.startsWith(":") && name !== "content-length"),
  );
  const changed = { ...brief, use: { ...brief.use, hoursPerYear: "3,000 h/year" } };
  const data = JSON.stringify([{ ...where, version: stands?.version }, changed, ...rest]);
  const answer = await (await page.request.post(request.url(), { headers, data })).text();
  expect(answer).toContain("Field, use and conventions of cost can’t be changed");
  await expectRefused(store, project, 1, "brief");
});

test("stages, sheets and seals are written by no form’s action, whoever sends it", async ({ page, store }) => {
  const project = await newProject(page);
  await page.goto(`${project}/requirements`);
  const request = await savingRequest(page, limitField, "190 g");
  await savingRequest(page, limitField, "165 g");
  await freeze(page, project);
  const id = idOf(project);
  const procedure = await store.documents.read({ project: id, kind: "procedure", id: "procedure" });
  const headers = Object.fromEntries(
    Object.entries(await request.allHeaders()).filter(([name]) => !name.startsWith(":") && name !== "content-length"),
  );
  const send = async (where: object, body: object) =>
    (
      await page.request.post(request.url(), { headers, data: JSON.stringify([{ project: id, ...where }, body]) })
    ).text();
  const thawed = await send({ kind: "procedure", id: "procedure", version: procedure?.version }, { steps: [] });
  expect(thawed).toContain("can’t be written as a document");
  await expectRefused(store, project, 1, "procedure");
  const contents = { kind: "open", sheet: { statement: { kind: "none" }, ratings: [] } };
  const forged = {
    evaluator: { id: "eve-okoro", name: "Eve Okoro" },
    handedInAt: "2026-11-25T10:00:00.000Z",
    contents,
  };
  const handedIn = await send({ kind: "scoresheet", id: "eve-okoro", version: 0 }, forged);
  expect(handedIn).toContain("can’t be written as a document");
  await expectRefused(store, project, 2, "scoresheet");
});

test("a project file that tells of the freeze with other criteria is not opened, and the record of the project says so", async ({
  page,
  store,
}) => {
  const project = await newProject(page);
  await freeze(page, project);
  const file = await (await page.request.get(`${project}/export`)).json();
  // other journeys make projects meanwhile, under other names
  const name: string = file.brief.name;
  const ofThisName = async () =>
    (await store.projects.list()).filter((one) => one.name === name && one.origin === "own").length;
  const projects = await ofThisName();
  const looser = structuredClone(file);
  looser.requirements.impact.limit = "190 g";
  await openFile(page, looser);
  const answer = page.getByRole("alert").filter({ hasText: "its criteria are not the ones that stand there" });
  await expect(answer).toBeVisible();
  await expectRefused(store, project, 1);
  const last = (await store.record.list(idOf(project))).at(-1);
  expect(last?.after).toMatchObject({ fields: ["impact, limit"] });

  const backdated = structuredClone(file);
  backdated.procedure.steps[0].at = "2026-01-05T10:00:00.000Z";
  await openFile(page, backdated);
  await expect(
    page.getByRole("alert").filter({ hasText: "tells of stages or amendments that it does not have" }),
  ).toBeVisible();
  await expectRefused(store, project, 2);
  expect(await ofThisName()).toBe(projects);

  // as it was saved it opens, as a project of its own that says where it comes from
  await openFile(page, file);
  await page.waitForURL(/\/project\/[^/]+$/);
  const line = page.getByRole("complementary", { name: "Stage and amendments" });
  await expect(line).toContainText("This project was opened from a file on");
  // and a copy that tells of no freeze may have any criteria
  const { procedure: _, ...copy } = looser;
  await openFile(page, copy);
  await page.waitForURL(/\/project\/[^/]+$/);
  await page.goto(`${new URL(page.url()).pathname}/requirements`);
  await expect(page.getByLabel(limitField)).toHaveValue("190 g");
  await expectRefused(store, project, 2);
});
