import type { Page } from "@playwright/test";
import { localEditor } from "#lib/access";
import { demonstration, expect, test } from "./fixtures";

const saved = (page: Page) => expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);

test("an owner's representative writes into the board's paper, and the paper tells whose words they are", async ({
  browser,
  page,
}) => {
  const address = await demonstration(browser);
  await page.goto(`${address}/recommendation`);
  await expect(page.getByText(/The paper reads at about school grade [1-9]\./)).toBeVisible();
  await page.getByRole("link", { name: "write in your own words" }).click();
  const gates = page.getByRole("region", { name: "The gates" });
  await gates.getByLabel("On paper: the gates").selectOption({ label: "Your words after the generated text" });
  await gates.getByLabel("Your words").fill("The trustees set these gates in March.");
  await page.getByRole("button", { name: "Add a view" }).click();
  await page.getByLabel("Name of person 1").fill("Member of the board");
  await page.getByLabel("View of person 1").fill("I would wait for the answers of bid A.");
  await saved(page);

  await page.getByRole("link", { name: "Back to the recommendation" }).click();
  await expect(page.getByText("In the owner’s words")).toBeVisible();
  await expect(page.getByText("The trustees set these gates in March.")).toBeVisible();
  await expect(page.getByText("Bids A and C pass every gate.", { exact: false })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Views that differ" })).toBeVisible();
  await expect(page.getByText("The figures have moved")).toHaveCount(0);
});

test("words that were written beside other figures say so until somebody says that they still hold", async ({
  browser,
  page,
  store,
}) => {
  const address = await demonstration(browser);
  await page.goto(`${address}/recommendation/words`);
  const gates = page.getByRole("region", { name: "The gates" });
  await gates.getByLabel("On paper: the gates").selectOption({ label: "Your words in place of the generated text" });
  await gates.getByLabel("Your words").fill("Two bids pass.");
  await saved(page);

  const project = address.replace("/project/", "");
  const bid = (await store.projects.load(project))?.documents.bid.find(({ id }) => id === "bid-d");
  if (bid === undefined) throw new Error("the demonstration has no bid D");
  const { version } = bid;
  const outcome = await store.documents.remove({ project, kind: "bid", id: "bid-d", version }, localEditor);
  expect(outcome.kind).toBe("saved");

  await page.goto(`${address}/recommendation`);
  await expect(page.getByText("The figures have moved since this was written.")).toBeVisible();
  await page.goto(`${address}/recommendation/words`);
  await gates.getByText("What the generated text said then").click();
  await expect(gates.getByText("Bids A and C pass every gate. Bids B and D leave a gate open.")).toBeVisible();
  await gates.getByRole("button", { name: "These words still hold" }).click();
  await saved(page);
  await page.goto(`${address}/recommendation`);
  await expect(page.getByText("Two bids pass.")).toBeVisible();
  await expect(page.getByText("The figures have moved")).toHaveCount(0);
});

test("the paper can be taken along as PDF and DOCX", async ({ browser, page, request }) => {
  const address = await demonstration(browser);
  await page.goto(`${address}/recommendation`);
  for (const [name, ending, start] of [
    ["PDF", "pdf", "%PDF-1.7"],
    ["DOCX", "docx", "PK"],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name, exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(`recommendation-stadium-field-replacement.${ending}`);
    const answer = await request.get(`${address}/recommendation/paper?as=${ending}`);
    expect(answer.headers()["cache-control"]).toBe("no-store");
    expect((await answer.body()).subarray(0, start.length).toString("latin1")).toBe(start);
  }
  expect((await request.get(`${address}/recommendation/paper?as=exe`)).status()).toBe(404);
});
