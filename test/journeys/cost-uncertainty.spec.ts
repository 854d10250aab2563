import { demonstration, expect, test } from "./fixtures";

test("an owner's representative states a doubt, cancels a drawing, and gets the same figures from the same seed", async ({
  browser,
  page,
}) => {
  // a refused worker or script would be a complaint of the page, which fails the test
  const workers: string[] = [];
  page.on("worker", (worker) => workers.push(worker.url()));
  await page.goto(`${await demonstration(browser)}/cost/uncertainty`);

  await test.step("states a doubt", async () => {
    await page.getByRole("button", { name: "Add an uncertain figure" }).click();
    await expect(page.getByRole("textbox", { name: "What is uncertain" }).last()).toBeFocused();
    await page.keyboard.type("Prices of the first build");
    const stated = page.getByRole("group", { name: "Uncertain figure 8" });
    await stated.getByLabel("Which figure of them").selectOption("The price");
    await stated.getByLabel("Figures").fill("95 % / 100 % / 115 %");
    await page.getByLabel("How often to draw").fill("200,000");
    await expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);
  });

  await test.step("cancels", async () => {
    await page.getByRole("button", { name: "Draw 200,000 times" }).click();
    await page.getByRole("button", { name: "Cancel", exact: true }).click();
    await expect(page.getByText("Cancelled. Nothing was kept.")).toBeVisible();
  });

  const cancelled = workers.length; // one that ends at once may never be told of
  await test.step("draws twice and gets the same", async () => {
    await page.getByLabel("How often to draw").fill("5,000");
    const draw = page.getByRole("button", { name: "Draw 5,000 times" });
    await draw.click();
    await expect(page.getByText("Drawn 5,000 times with seed 2027.")).toBeVisible();
    await page.getByText("The figures behind this drawing: How far each cost may lie from the entered one").click();
    const figures = page.getByRole("table", { name: "Present value as drawn" });
    const first = await figures.textContent();
    expect(first).toMatch(/Bid A\$1,\d{3},\d{3}/);
    await draw.click();
    await expect(page.getByText("Drawn 5,000 times with seed 2027.")).toBeVisible();
    expect(await figures.textContent()).toBe(first);
  });

  await test.step("is told that the figures are out of date once something moves", async () => {
    await page.getByLabel("Seed").fill("7");
    await expect(page.getByText("Out of date.")).toBeVisible();
  });
  expect(workers).toHaveLength(cancelled + 2);
});
