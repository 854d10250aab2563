import { readdirSync } from "node:fs";
import type { APIRequestContext, Page } from "@playwright/test";
import { unzipSync } from "fflate";
import { cookieFromEditor, type Editor, editorCookie, editorNamed } from "#lib/access";
import { choosePrices, handInSheet, moveStage, openSheets, type ProjectAct, sealPrices } from "#lib/evaluation";
import { pdf } from "../attachment/small-files";
import { committeePeople, onePrice, ratedFile, ratedToStore, sheetOf } from "../evaluation/procedure/rated-project";
import { expect, test } from "./fixtures";
import { isWholeWalk } from "./whole-walk";

type JourneyStore = Parameters<Parameters<typeof test>[2]>[0]["store"];

/** What must not be read before it is opened, in the ways in which it may be written. */
const ofPrices = ["7,654,321", "7654321", "Kestrel works"];
const ofSheets = ["quillwort reasons", "aunt at quillwort"];

const person = (index: number): Editor => {
  const named = editorNamed(committeePeople[index]?.name ?? "");
  if (!named.ok) throw new Error(named.problem.kind);
  return named.value;
};

async function done(store: JourneyStore, project: string, act: ProjectAct, editor: Editor): Promise<void> {
  expect(await store.documents.act(project, act, editor)).toMatchObject({ kind: "done" });
}

const sheet = (words: string) =>
  sheetOf("level-3", words, { kind: "some-bids", bids: ["bid-d"], words: "An aunt at quillwort." });

/** A frozen project with the sealed prices of one bid and one sheet handed in, by the acts that the pages use. */
async function sealedProject(store: JourneyStore): Promise<string> {
  const made = await store.projects.import(ratedToStore, person(0));
  if (made.kind !== "saved") throw new Error(made.kind);
  await done(store, made.id, choosePrices("sealed"), person(0));
  await done(store, made.id, moveStage(person(0), { stage: "frozen", note: "", bid: "" }), person(0));
  await done(store, made.id, sealPrices(person(0), "bid-a", onePrice("$7,654,321", "Kestrel works")), person(0));
  await done(store, made.id, handInSheet(person(1), sheet("My quillwort reasons.")), person(1));
  return made.id;
}

/** Every address under a project that gives something out, by the file that answers it. A new one is a line here. */
const addresses: Readonly<Record<string, readonly string[]>> = {
  "page.tsx": [""],
  "attachments/page.tsx": ["attachments"],
  "attachments/[attachment]/page.tsx": ["attachments/:paper"],
  "attachments/[attachment]/file/route.ts": ["attachments/:paper/file"],
  "attachments/[attachment]/view/route.ts": ["attachments/:paper/view"],
  "attachments/upload/route.ts": ["attachments/upload"],
  "audit-workbook/route.ts": ["audit-workbook"],
  "bid-form/route.ts": ["bid-form"],
  "bid-form/import/page.tsx": ["bid-form/import"],
  "bids/page.tsx": ["bids"],
  "bids/[bid]/page.tsx": ["bids/bid-a", "bids/no-such-bid"],
  "bids/[bid]/import/page.tsx": ["bids/bid-a/import"],
  "bids/[bid]/questions/page.tsx": ["bids/bid-a/questions"],
  "bids/[bid]/sealed-prices/page.tsx": ["bids/bid-a/sealed-prices"],
  "brief/page.tsx": ["brief"],
  "claims/route.ts": ["claims", "claims?bid=bid-a"],
  "committee/page.tsx": ["committee"],
  "committee/consensus/page.tsx": ["committee/consensus"],
  "committee/scoresheet/page.tsx": ["committee/scoresheet"],
  "conflict/[kind]/[document]/page.tsx": [
    "conflict/bid/bid-a",
    "conflict/scoresheet/any",
    "conflict/sealed-prices/bid-a",
  ],
  "cost/page.tsx": ["cost"],
  "cost/conventions/page.tsx": ["cost/conventions"],
  "cost/owners-figures/page.tsx": ["cost/owners-figures"],
  "cost/two-bids/page.tsx": ["cost/two-bids"],
  "cost/uncertainty/page.tsx": ["cost/uncertainty"],
  "evaluation/page.tsx": ["evaluation"],
  "evaluation/robustness/page.tsx": ["evaluation/robustness"],
  "export/route.ts": ["export"],
  "field-tests/page.tsx": ["field-tests"],
  "field-tests/[campaign]/page.tsx": ["field-tests/yearly-2030"],
  "field-tests/[campaign]/on-the-field/page.tsx": ["field-tests/yearly-2030/on-the-field"],
  "field-tests/trace/page.tsx": ["field-tests/trace"],
  "field-tests/worker/route.ts": ["field-tests/worker"],
  "hardness/page.tsx": ["hardness"],
  "infill/page.tsx": ["infill"],
  "levelling/page.tsx": ["levelling"],
  "procedure/page.tsx": ["procedure"],
  "procedure/amend/[document]/page.tsx": ["procedure/amend/requirements", "procedure/amend/brief"],
  "procedure/people/page.tsx": ["procedure/people"],
  "procedure/released/page.tsx": ["procedure/released"],
  "promised/page.tsx": ["promised"],
  "promised/files/[name]/route.ts": ["promised/files/promised.csv", "promised/files/closeout-facts.docx"],
  "recommendation/page.tsx": ["recommendation"],
  "recommendation/paper/route.ts": ["recommendation/paper?as=docx", "recommendation/paper?as=pdf"],
  "recommendation/words/page.tsx": ["recommendation/words"],
  "record/page.tsx": ["record", "record?what=scoresheet", "record?what=sealed-prices"],
  "record/export/route.ts": ["record/export"],
  "requirements/page.tsx": ["requirements"],
  "side-by-side/page.tsx": ["side-by-side"],
  "side-by-side/behind/route.ts": ["side-by-side/behind"],
  "specification/page.tsx": ["specification"],
  "specification/clauses/page.tsx": ["specification/clauses"],
  "specification/competition/page.tsx": ["specification/competition"],
  "specification/files/[name]/route.ts": ["specification/files/draft-with-notes.txt", "specification/files/draft.docx"],
  "specification/language/page.tsx": ["specification/language"],
  "specification/section/page.tsx": ["specification/section"],
  "specification/versions/page.tsx": ["specification/versions"],
  "submittals/page.tsx": ["submittals"],
  "submittals/award/page.tsx": ["submittals/award"],
  "submittals/deliveries/page.tsx": ["submittals/deliveries"],
  "submittals/lines/[line]/page.tsx": ["submittals/lines/tuft-bind-report"],
  "submittals/substitutions/page.tsx": ["submittals/substitutions"],
  "submittals/substitutions/[request]/page.tsx": ["submittals/substitutions/lighter-infill"],
  "together/route.ts": ["together"],
};

test("every address under a project is looked at here", () => {
  const folder = new URL("../../app/project/[id]/", import.meta.url);
  const answering = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) =>
    /(^|\/)(page\.tsx|route\.ts)$/.test(file),
  );
  expect(answering.sort()).toEqual(Object.keys(addresses).sort());
});

/** Whatever can be read of an answer: its text, and the texts of the parts of a file that is an archive. */
function readable(bytes: Buffer): string {
  const isArchive = bytes.subarray(0, 2).toString("latin1") === "PK";
  const parts = isArchive ? Object.values(unzipSync(new Uint8Array(bytes))).map((part) => Buffer.from(part)) : [bytes];
  return parts.map((part) => part.toString("utf8")).join("\n");
}

const everyWay = { page: {}, data: { rsc: "1" }, ahead: { rsc: "1", "next-router-prefetch": "1" } };

/** A page holds the data that it was drawn from, so on most days those are asked for apart by one person alone. */
const mostWays = isWholeWalk ? everyWay : { page: {} };
const waysOfOne = isWholeWalk ? everyWay : { page: {}, data: everyWay.data };

type Wish = Readonly<{ ways: Partial<typeof everyWay>; paths: readonly string[] }>;

/** Addresses whose answer holds one of some words, asked for as a page, as the data of a page, and ahead of a click. */
async function telling(
  asking: APIRequestContext,
  project: string,
  paper: string,
  words: readonly string[],
  { ways = mostWays, paths = Object.values(addresses).flat() }: Partial<Wish> = {},
) {
  const found: string[] = [];
  for (const path of paths)
    for (const [way, headers] of Object.entries(ways)) {
      const address = `/project/${project}/${path.replace(":paper", paper)}`.replace(/\/$/, "");
      const answer = await asking.get(address, { headers, failOnStatusCode: false });
      expect(answer.status(), `${way} of ${address}`).not.toBe(500);
      const text = readable(await answer.body());
      found.push(...words.filter((word) => text.includes(word)).map((word) => `${way} of ${path}: ${word}`));
    }
  return found;
}

/** Makes a browser that of a person. */
async function seat(page: Page, who: Editor | null): Promise<APIRequestContext> {
  await page.context().clearCookies();
  if (who !== null)
    await page
      .context()
      .addCookies([
        { name: editorCookie, value: cookieFromEditor(who), domain: "127.0.0.1", path: "/", sameSite: "Strict" },
      ]);
  return page.request;
}

test("no answer of any address holds sealed prices or a sheet before they are opened, whoever asks; afterwards they do", async ({
  page,
  store,
}) => {
  test.setTimeout(900_000);
  const project = await sealedProject(store);
  const sent = await (await seat(page, person(0))).post(`/project/${project}/attachments/upload`, {
    data: Buffer.from(pdf({ pages: 1 })),
    headers: {
      ...{ "content-type": "application/octet-stream", "sec-fetch-site": "same-origin" },
      "x-file-name": "report.pdf",
    },
  });
  const { id: paper } = await sent.json();

  for (const who of [person(0), person(2), null]) {
    const asking = await seat(page, who);
    const ways = who?.name === person(0).name ? waysOfOne : mostWays;
    expect(await telling(asking, project, paper, [...ofPrices, ...ofSheets], { ways }), who?.name ?? "nobody").toEqual(
      [],
    );
  }
  // whoever handed the sheet in reads their own again, on their sheet alone, and no price
  const own = await telling(await seat(page, person(1)), project, paper, [...ofPrices, ...ofSheets]);
  expect(own.filter((line) => !line.includes("committee/scoresheet"))).toEqual([]);

  for (const index of [2, 3])
    await done(store, project, handInSheet(person(index), sheet("Nothing else.")), person(index));
  await done(store, project, openSheets(person(0)), person(0));
  const asking = await seat(page, person(2));
  const ofOpened = await telling(asking, project, paper, [...ofPrices, ...ofSheets]);
  expect(ofOpened.filter((line) => ofPrices.some((word) => line.includes(word)))).toEqual([]);
  for (const path of ["page of committee/consensus", "page of export", "page of record/export"])
    expect(ofOpened).toContain(`${path}: quillwort reasons`);

  const agreed = ratedFile.requirements.criteria
    .filter(({ measure }) => measure === "evaluators-rating")
    .flatMap(({ id: criterion }) =>
      ratedFile.bids.map(({ id: bid }) => ({ criterion, bid, level: "level-3", reason: "As all have it." })),
    );
  const stands = await store.documents.read({ project, kind: "committee", id: "committee" });
  if (stands === null) throw new Error("expected a committee");
  const address = { project, kind: "committee", id: "committee", version: stands.version } as const;
  expect(await store.documents.replace(address, { ...stands.body, agreed }, person(0))).toMatchObject({
    kind: "saved",
  });
  await done(store, project, moveStage(person(0), { stage: "prices-open", note: "", bid: "" }), person(0));
  const paths = ["bids/bid-a", "export", "record/export", "audit-workbook"];
  const ofPriced = await telling(asking, project, paper, ofPrices, { paths });
  for (const path of paths)
    expect(
      ofPriced.some((line) => line.startsWith(`page of ${path}: `)),
      path,
    ).toBe(true);
});

test("a bid takes no price while prices are sealed, by the page, by a form or by a request of one’s own", async ({
  page,
  store,
}) => {
  const project = await sealedProject(store);
  await seat(page, person(0));
  await page.goto(`/project/${project}/attachments`);
  await expect(page.getByRole("complementary", { name: "Caution" })).toContainText("Keep such papers elsewhere");
  await page.goto(`/project/${project}/bids/bid-b`);
  await expect(page.getByRole("link", { name: "Enter and seal the prices of this bid" })).toBeVisible();
  await expect(page.getByLabel("Price: amount")).toHaveCount(0);
  // the request of the page’s own form, with a price put into it
  const [request] = await Promise.all([
    page.waitForRequest((sent) => sent.method() === "POST" && sent.url().includes("/bids/bid-b")),
    page.getByLabel("Kind of surface").fill("Any surface at all"),
  ]);
  await expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);
  const body = JSON.parse(request.postData() ?? "[]");
  body[0].version += 1;
  // on its way to an action, a text that begins with a dollar sign has two
  Object.assign(body[1], onePrice("$7,654,321", "Kestrel works"));
  const { "content-length": _, ...headers } = await request.allHeaders();
  const answer = await page.request.post(request.url(), {
    headers,
    data: JSON.stringify(body).replaceAll('"$7', '"$$$$7'),
  });
  const text = await answer.text();
  expect(text).toContain("Prices of this project are sealed until they are opened");
  const held = await store.documents.read({ project, kind: "bid", id: "bid-b" });
  expect(held?.body.prices).toEqual([]);
  const last = (await store.record.list(project)).at(-1);
  expect(last).toMatchObject({ action: "refuse", who: person(0).name });
  expect(JSON.stringify(last)).not.toMatch(/7,?654,?321|Kestrel/);
  expect(await store.drafts.read({ project, kind: "bid", id: "bid-b" }, person(0))).toBeNull();
});
