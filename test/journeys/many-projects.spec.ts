import { localEditor } from "#lib/access";
import { documentSchemas } from "#lib/evaluation";
import { openStore } from "#lib/store";
import { axeFindings } from "./axe-findings";
import { expect, test } from "./fixtures";

// More projects than one page of the list holds, changed long ago, so that they stand behind those of other journeys.

test("somebody finds one project of many, by keyboard, without script too, and goes to older ones", async ({
  page,
  browser,
}) => {
  const folder = process.env.EVENFIELD_JOURNEYS_DATA ?? "";
  let second = 0;
  const now = () => new Date(Date.UTC(2001, 0, 1, 0, 0, second++)).toISOString();
  const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas, now });
  const made: string[] = [];
  for (let count = 1; count <= 53; count += 1) {
    const outcome = await store.projects.create(
      { name: `Quarry Meadow ${count}`, owner: "Señal district", origin: "own", documents: [] },
      localEditor,
    );
    if (outcome.kind === "saved") made.push(outcome.id);
  }
  try {
    await page.goto("/");
    const search = page.getByRole("searchbox", { name: "Find a project" });
    await search.fill("quarry SENAL");
    await search.press("Enter");
    const list = page.getByRole("region", { name: "Projects on this computer" });
    await expect(list).toContainText("53 projects have “quarry SENAL” in name or owner.");
    await expect(search).toHaveValue("quarry SENAL");
    await expect(list.getByRole("row")).toHaveCount(51);
    await expect(list.getByRole("row").nth(1)).toContainText("Quarry Meadow 53");
    await list.getByRole("link", { name: "Older projects" }).press("Enter");
    await expect(list.getByRole("row")).toHaveCount(4);
    await expect(list.getByRole("row").last()).toContainText("Quarry Meadow 1");
    await expect(list).toContainText("These are from before");
    await expect(list.getByRole("link", { name: "Older projects" })).toHaveCount(0);
    expect(await axeFindings(page, {})).toEqual([]);
    await list.getByRole("link", { name: "Back to the last changed" }).click();
    await expect(list.getByRole("row")).toHaveCount(51);
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);

    const plain = await browser.newContext({ javaScriptEnabled: false });
    const still = await plain.newPage();
    await still.goto("/");
    await still.getByRole("searchbox").fill("meadow 17");
    await still.getByRole("button", { name: "Find" }).click();
    const found = still.getByRole("link", { name: "Quarry Meadow 17" });
    await expect(found).toHaveAttribute("href", `/project/${made[16]}`);
    await still.goto("/?search=no+such+quarry");
    await expect(still.getByText("No project has “no such quarry” in name or owner.")).toBeVisible();
    await plain.close();
  } finally {
    for (const id of made) await store.projects.remove(id, localEditor);
    await store.close();
  }
});
