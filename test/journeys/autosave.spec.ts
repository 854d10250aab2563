import { expect, startProject, test } from "./fixtures";

test("what is typed while an earlier text is on its way is not called saved with it", async ({ page }) => {
  await startProject(page, "Typing on");
  const status = page.locator('[role="status"][data-saving]');
  const owner = page.getByLabel("Owner", { exact: true });

  let letThrough = () => {};
  const held = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  let saves = 0;
  await page.route("**/brief", async (route) => {
    if (route.request().method() !== "POST") return route.continue();
    saves += 1;
    if (saves === 1) await held;
    return route.continue();
  });
  await owner.fill("First text");
  await expect(status).toHaveAttribute("data-saving", "saving");
  await owner.fill("Second text");
  await status.evaluate((line) => {
    new MutationObserver(() => {
      line.setAttribute("data-seen", `${line.getAttribute("data-seen") ?? ""} ${line.getAttribute("data-saving")}`);
    }).observe(line, { attributeFilter: ["data-saving"] });
  });
  letThrough();
  await expect(status).toHaveAttribute("data-saving", "saved");
  expect(saves).toBe(2);
  await expect(status).toHaveAttribute("data-seen", " typing saving saved");
  await page.reload();
  await expect(owner).toHaveValue("Second text");
});
