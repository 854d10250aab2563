import type { Page } from "@playwright/test";
import { localEditor } from "#lib/access";
import type { documentSchemas, ProjectFile } from "#lib/evaluation";
import type { Store } from "#lib/store";
import demonstration from "../../app/_demo/demonstration-project.json" with { type: "json" };
import { expect, test } from "./fixtures";

const saved = (page: Page) => expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);
const criteriaOf = (page: Page) => page.getByRole("region", { name: "Criteria", exact: true });
const weightsOf = (page: Page) => page.getByRole("region", { name: "Weights", exact: true }).first();
const shareOf = (page: Page, criterion: string) =>
  weightsOf(page).getByRole("row", { name: new RegExp(`^${criterion}`) });

const { brief, requirements, bids } = demonstration as unknown as ProjectFile;

/** A project of the demonstration's bids, judged by impact as new, infill mass and annual cost only. */
async function threeCriteria(store: Store<typeof documentSchemas>): Promise<string> {
  const taken = ["impact-new", "stabilising-mass", "annual-cost"];
  const criteria = requirements.criteria.filter(({ id }) => taken.includes(id));
  const outcome = await store.projects.create(
    {
      ...{ name: "Three criteria", owner: brief.owner, origin: "own" },
      documents: [
        { kind: "brief", body: brief },
        { kind: "requirements", body: { ...requirements, criteria, clauses: [] } },
        ...bids.map(({ id, ...body }) => ({ kind: "bid", id, body }) as const),
      ],
    },
    localEditor,
  );
  if (outcome.kind !== "saved") throw new Error("the project was not stored");
  return `/project/${outcome.id}`;
}

test("an owner reaches a whole set of criteria in two choices, adds one of the library, and takes both back", async ({
  page,
}) => {
  await page.goto("/");
  await page.getByLabel("Name of the project").fill("A set in two choices");
  await page.getByLabel("Owner").fill("Test district");
  await page.getByRole("button", { name: "Start an empty project" }).click();
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Requirements" }).click();
  const criteria = criteriaOf(page);
  await criteria.getByRole("radio", { name: /^Several sports/ }).check();
  const row = page.getByRole("table", { name: "What it adds" }).getByRole("row", { name: /^Critical fall height/ });
  await expect(row).toContainText("1.3 m: World Rugby, Regulation 22. In full from: the owner’s.");
  await criteria.getByRole("button", { name: "Use these 23 criteria" }).click();
  await expect(criteria.getByText("Added 23 criteria of the profile “Several sports”.")).toBeVisible();
  await expect(shareOf(page, "Falls and impact")).toContainText("35 %");
  await expect(shareOf(page, "Sum")).toContainText("100 %");
  await saved(page);

  await criteria.getByRole("button", { name: "Undo" }).click();
  await expect(criteria.getByText("There are no criteria yet.", { exact: false })).toBeVisible();
  await criteria.getByRole("radio", { name: /^Several sports/ }).check();
  await criteria.getByRole("button", { name: "Use these 23 criteria" }).click();

  await criteria.getByText("Add from the library").click();
  const library = criteria.getByRole("region", { name: "Library: Falls and impact" });
  await expect(library.getByRole("listitem").filter({ hasText: /^Critical fall height in the list/ })).toBeVisible();
  await library.getByText("Head injury criterion in a fall from 1.3 m", { exact: true }).click();
  await expect(library.getByText("World Rugby, Regulation 22; as quoted in trade press.").last()).toBeVisible();
  const entry = library.getByRole("listitem").filter({ has: page.getByRole("button", { name: /Add this criterion/ }) });
  await expect(entry.getByText(/^It starts without weight, so that nothing you have weighed moves\./)).toBeVisible();
  await entry.getByRole("button", { name: /Add this criterion/ }).click();
  await expect(shareOf(page, "Head injury criterion")).toContainText("at most 1000");
  await expect(shareOf(page, "Head injury criterion")).toContainText("0 %");
  await expect(shareOf(page, "Falls and impact")).toContainText("35 %");
  await saved(page);

  await page.reload();
  await criteria.getByText("Start from a profile").click();
  await criteria.getByRole("radio", { name: /^Soccer/ }).check();
  await criteria.getByRole("button", { name: "Replace the 24 criteria that stand here" }).click();
  await expect(shareOf(page, "Ball roll")).toContainText("3 %");
  await criteria.getByRole("button", { name: "Undo" }).click();
  await expect(shareOf(page, "Ball roll")).toHaveCount(0);
  await expect(shareOf(page, "Head injury criterion")).toBeVisible();
  await saved(page);
});

test("an owner says what becomes of a figure that is shown by less than asked for, and the evaluation says it too", async ({
  page,
  store,
}) => {
  const address = await threeCriteria(store);
  // bid B states its level by its own test; a laboratory is asked for
  const outcomes = [
    [
      "Keep it open: it may be anything from worst to best",
      "value 0–100",
      "It may be worth anything from its worst to its best.",
    ],
    ["Keep it open and ask the bidder before deciding", "value 0–100", "The owner asks before deciding."],
    ["Count a less proven figure at a discount", "value 0–75", "It counts with 25 % of its points taken off."],
    ["Count it as the worst; it does not pass a gate", "value 0", "It counts as the worst."],
    ["The gate fails; its points stay open", "value 0–100", "The gate fails for want of proof."],
  ] as const;
  for (const [rule, value, words] of outcomes) {
    await page.goto(`${address}/requirements`);
    const criterion = criteriaOf(page).locator("#impact-new");
    await criterion.locator("summary").first().click();
    await criterion
      .getByLabel("A figure that is missing, shown by less or not comparable")
      .selectOption({ label: rule });
    if (rule.includes("discount")) await criterion.getByLabel("Part of the points taken off").fill("25 %");
    await page.getByRole("button", { name: "Save now" }).click();
    await saved(page);
    await page.goto(`${address}/evaluation`);
    const scores = page.getByRole("table", { name: "Figure, value from 0 to 100, and points added" });
    const cell = scores
      .getByRole("row", { name: /^Impact level as new/ })
      .getByRole("cell")
      .nth(1);
    await expect(cell).toContainText(value);
    await expect(cell).toContainText(words);
  }
  await expect(page.getByText("Fails a gate: Impact level as new.").first()).toBeVisible();
});

test("an owner rates by anchored levels, and sees the bids as marks on the line of a measured figure", async ({
  page,
  store,
}) => {
  const address = await threeCriteria(store);
  await page.goto(`${address}/requirements`);
  const criteria = criteriaOf(page);
  await criteria.getByText("Add from the library").click();
  const library = criteria.getByRole("region", { name: "Library: Warranty and references" });
  await library.getByText("What the warranty covers", { exact: true }).click();
  await expect(
    library.getByText("Fibre and seams are covered in full for the whole term", { exact: false }),
  ).toBeVisible();
  await library.getByRole("button", { name: /Add this criterion.*What the warranty covers/ }).click();
  const rating = criteria.locator("#warranty-substance");
  await rating.locator("summary").first().click();
  await expect(rating.getByLabel("Level 2")).toHaveValue("Fibre in full");
  await rating.getByLabel("scores, from 0 to 1").nth(1).fill("0.9");
  await expect(
    rating.getByText(/“Hardness too” comes after “Fibre in full” but is not worth more\./).first(),
  ).toBeVisible();
  await rating.getByLabel("scores, from 0 to 1").nth(1).fill("0.3");
  await rating.getByLabel("Weight in points").fill("5");
  // derived: 5 ÷ (25 + 10 + 20 + 5)
  await expect(shareOf(page, "What the warranty covers")).toContainText("8.33 %");
  await saved(page);
  await expect(rating.getByRole("img", { name: /^Value of What the warranty covers/ })).toBeVisible();

  const mass = criteria.locator("#stabilising-mass");
  await mass.locator("summary").first().click();
  // by hand: (9.5 − 1) ÷ (9 − 1) is above 1, and (3.2 − 1) ÷ 8 = 0.275
  await expect(mass.getByRole("img", { name: /^Value of Infill mass per area/ })).toBeVisible();
  await expect(mass.getByText("A 9.50 lb/ft²; B 3.20 lb/ft²;", { exact: false })).toBeVisible();

  await page.goto(`${address}/evaluation`);
  const scores = page.getByRole("table", { name: "Figure, value from 0 to 100, and points added" });
  await expect(scores.getByRole("row", { name: /^What the warranty covers/ })).toContainText("not decided");
});

test("an owner gives weights by swings, an order, pairs and headings", async ({ page, store }) => {
  const address = await threeCriteria(store);
  await page.goto(`${address}/requirements`);
  const weights = weightsOf(page);
  const [impact, mass, cost] = ["Impact level as new", "Infill mass per area", "Equivalent annual cost per area"];
  const shares = async (...expected: readonly string[]) => {
    for (const [at, criterion] of [impact, mass, cost].entries())
      await expect(shareOf(page, criterion)).toContainText(expected[at] ?? "");
  };

  await weights.getByLabel("How the weights come about").selectOption("swing");
  await expect(weights.getByText("Imagine a bid that has the worst figure everywhere.")).toBeVisible();
  await expect(weights.getByLabel(`Points for “${mass}”`)).toHaveAccessibleDescription(
    "The swing from 1 lb/ft² to 9 lb/ft².",
  );
  await weights.getByLabel(`Points for “${impact}”`).fill("90");
  await expect(
    weights
      .getByText("The highest swing has 90 points; expected 100 for the move from worst to best", { exact: false })
      .first(),
  ).toBeVisible();
  await weights.getByLabel(`Points for “${impact}”`).fill("100");
  await weights.getByLabel(`Points for “${mass}”`).fill("25");
  await weights.getByLabel(`Points for “${cost}”`).fill("75");
  await shares("50 %", "12.5 %", "37.5 %"); // points over their sum
  await saved(page);

  await weights.getByLabel("How the weights come about").selectOption("rank-order");
  await weights.getByLabel(`Place of “${impact}”`).fill("1");
  await weights.getByLabel(`Place of “${cost}”`).fill("2");
  await weights.getByLabel(`Place of “${mass}”`).fill("3");
  await shares("61.1 %", "11.1 %", "27.8 %"); // rank order centroid of three, Barron and Barrett 1996

  await weights.getByLabel("How the weights come about").selectOption("pairwise");
  await weights.getByLabel(`“${impact}” and “${mass}”`).selectOption("3");
  await weights.getByLabel(`“${impact}” and “${cost}”`).selectOption("5");
  await weights.getByLabel(`“${mass}” and “${cost}”`).selectOption("3");
  // the three-by-three case of the reference: 0.637, 0.258, 0.105, consistency ratio 0.0332
  await shares("63.7 %", "25.8 %", "10.5 %");
  await expect(
    weights.getByText(/^The judgements fit together well enough \(ratio 0\.033, at most 0\.1 is wanted\)\./),
  ).toBeVisible();
  await weights.getByLabel(`“${impact}” and “${cost}”`).selectOption("1/5");
  // by hand: (1/5) × (1/3) is 1/15; λ = 1 + t + 1/t with t = (0.2 ÷ 9)^⅓ is 4.838, so the ratio is 0.919 ÷ 0.58 = 1.6
  await expect(
    weights.getByText(/^The judgements contradict each other \(ratio 1\.6, at most 0\.1 is wanted\)\./),
  ).toContainText(
    `You said that “${impact}” is 3 times as important as “${mass}”; your other judgements together say that “${mass}” is 15 times as important as “${impact}”.`,
  );
  await weights.getByLabel(`“${impact}” and “${cost}”`).selectOption("9");
  await expect(weights.getByText("The judgements fit together exactly.")).toBeVisible();
  await saved(page);

  await weights.getByLabel("How the weights come about").selectOption("direct");
  for (const [at, [label, points]] of [["Surface", "60"] as const, ["Money", "40"] as const].entries()) {
    await weights.getByRole("button", { name: "Add a heading" }).click();
    await weights.getByLabel(`Heading ${at + 1}`, { exact: true }).fill(label);
    await weights.getByLabel(`Points of heading ${at + 1}`).fill(points);
  }
  for (const [id, heading] of [
    ["impact-new", "Surface"],
    ["stabilising-mass", "Surface"],
    ["annual-cost", "Money"],
  ] as const) {
    const criterion = criteriaOf(page).locator(`#${id}`);
    await criterion.locator("summary").first().click();
    await criterion.getByLabel("Heading", { exact: true }).selectOption({ label: heading });
  }
  // by hand: 60 % × 25 ÷ 35, 60 % × 10 ÷ 35, 40 %
  await shares("42.9 %", "17.1 %", "40 %");
  await expect(shareOf(page, "Surface")).toContainText("60 %");
  await saved(page);
  await page.goto(`${address}/evaluation`);
  const scores = page.getByRole("table", { name: "Figure, value from 0 to 100, and points added" });
  await expect(scores.getByRole("row", { name: new RegExp(`^${impact}`) })).toContainText("42.9 % of the weight");
});

test("two people weigh by themselves: their mean counts, and each one's order is shown apart", async ({
  page,
  store,
}) => {
  const address = await threeCriteria(store);
  await page.goto(`${address}/requirements`);
  const weights = weightsOf(page);
  await weights.getByLabel("How the weights come about").selectOption("several-people");
  const people = [
    ["Facilities", "0", "0", "100"],
    ["Athletics", "100", "0", "0"],
  ] as const;
  for (const [at, [person, impact, mass, cost]] of people.entries()) {
    await weights.getByRole("button", { name: "Add a person" }).click();
    await weights.getByLabel(`Name or office of person ${at + 1}`).fill(person);
    const own = weights
      .getByRole("group")
      .filter({ has: page.getByLabel(`Name or office of person ${at + 1}`) })
      .last();
    await own.getByLabel("Points for “Impact level as new”").fill(impact);
    await own.getByLabel("Points for “Infill mass per area”").fill(mass);
    await own.getByLabel("Points for “Equivalent annual cost per area”").fill(cost);
  }
  await expect(shareOf(page, "Impact level as new")).toContainText("50 %");
  await expect(weights.getByRole("columnheader", { name: "Facilities" })).toBeVisible();
  await saved(page);

  await page.goto(`${address}/evaluation`);
  const apart = page.getByRole("table", { name: "Place and points of each bid by each person’s own weights" });
  // bid A costs least, and bid C alone has the full value for its level: 77.5 and 100 of 100
  await expect(
    apart
      .getByRole("row", { name: /^Facilities/ })
      .getByRole("cell")
      .nth(0),
  ).toContainText("place 1");
  await expect(
    apart
      .getByRole("row", { name: /^Athletics/ })
      .getByRole("cell")
      .nth(2),
  ).toContainText("place 1");
  await expect(
    apart
      .getByRole("row", { name: /^Athletics/ })
      .getByRole("cell")
      .nth(2),
  ).toContainText("100 points");

  await page.goto(`${address}/requirements`);
  await weights.getByLabel("What is shown").selectOption("mean-only");
  await saved(page);
  await page.goto(`${address}/evaluation`);
  await expect(page.getByRole("heading", { name: "Scores", exact: true })).toBeVisible();
  await expect(apart).toHaveCount(0);
});
