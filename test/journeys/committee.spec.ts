import type { Browser, BrowserContext, Page } from "@playwright/test";
import { projectFileSchema } from "#lib/evaluation";
import { committeePeople, ratedCriteria, ratedFile } from "../evaluation/procedure/rated-project";
import { looksWell } from "./axe-findings";
import { expect, test } from "./fixtures";

const labels = ratedCriteria.map(({ label }) => label);
const letters = ["A", "B", "C", "D"];
const [administrator, eve, sam, kim] = committeePeople.map(({ name }) => name) as [string, string, string, string];

/** The line that says what became of the last change. */
const saved = (page: Page) => expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);

/** A person at a browser of their own, with what their pages complain of. */
async function person(browser: Browser, complaints: string[]): Promise<Page> {
  const context: BrowserContext = await browser.newContext();
  const page = await context.newPage();
  page.on("pageerror", (problem) => complaints.push(problem.message));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  return page;
}

/** Opens a project file on the first page and gives the address of the project. */
async function opened(page: Page, file: unknown): Promise<string> {
  await page.goto("/");
  const buffer = Buffer.from(JSON.stringify(file));
  await page
    .getByLabel("Project file", { exact: true })
    .setInputFiles({ name: "field.json", mimeType: "application/json", buffer });
  await page.getByRole("button", { name: "Open the file" }).click();
  await page.waitForURL(/\/project\/[^/]+$/);
  return new URL(page.url()).pathname;
}

async function sayWhoIsHere(page: Page, project: string, name: string): Promise<void> {
  await page.goto(`${project}/procedure/people`);
  const here = page.getByRole("form", { name: "Who is at this keyboard" });
  const isListed = (await here.getByRole("option", { name, exact: true }).count()) > 0;
  await here.getByLabel("You are").selectOption(isListed ? name : "other");
  if (!isListed) await here.getByLabel("Name", { exact: true }).fill(name);
  await here.getByRole("button", { name: "This is who I am" }).click();
  await expect(page.getByRole("banner").getByRole("link", { name: `At this keyboard: ${name}` })).toBeVisible();
}

async function listPeople(page: Page, project: string): Promise<void> {
  await page.goto(`${project}/procedure/people`);
  for (const [index, { name, position, roles }] of committeePeople.entries()) {
    await page.getByRole("button", { name: "Add a person" }).click();
    await page.getByLabel(`Name of person ${index + 1}`).fill(name);
    await page.getByLabel(`Office of person ${index + 1}`).fill(position);
    const role = roles[0] === "evaluator" ? "Evaluator" : "Owner’s administrator";
    await page.getByRole("group", { name, exact: true }).getByRole("checkbox", { name: role }).check();
  }
  await saved(page);
}

/** Seals one sum for a bid, typed in on its page. */
async function sealPrice(page: Page, project: string, bid: string, amount: string): Promise<void> {
  await page.goto(`${project}/bids/${bid}/sealed-prices`);
  await page.getByRole("button", { name: "Once, at the base date" }).click();
  await page.getByLabel("What it is for").fill("The whole field");
  await page.getByLabel("Price: amount").fill(amount);
  await page.getByRole("button", { name: "Seal these prices" }).click();
  await expect(page.getByText("Sealed: 1 price line.")).toBeVisible();
  await expect(page.getByLabel("What it is for")).toHaveCount(0);
}

/** Levels by number, bid by bid, the same on both criteria; 0 leaves a bid out. */
async function rate(page: Page, chosen: readonly number[]): Promise<void> {
  for (const label of labels)
    for (const [index, letter] of letters.entries()) {
      if (chosen[index] === 0) continue;
      await page.getByLabel(`Level, “${label}”, bid ${letter}`).selectOption(`level-${chosen[index]}`);
    }
}

async function comment(page: Page, letter: string, words: string): Promise<void> {
  for (const label of labels) await page.getByLabel(`Comment, “${label}”, bid ${letter}`).fill(words);
}

const handIn = (page: Page) => page.getByRole("button", { name: "Hand in the scoresheet" }).click();
const handedIn = (page: Page) => expect(page.getByText("Your scoresheet is handed in and sealed.")).toBeVisible();

/** Takes the next step of the procedure, with a remark. */
async function step(page: Page, project: string, button: string, remark: string, award = ""): Promise<void> {
  await page.goto(`${project}/procedure`);
  const form = page.getByRole("form", { name: button });
  if (award !== "") await form.getByLabel("Award to").selectOption({ label: award });
  await form.getByRole("textbox").fill(remark);
  await form.getByRole("button", { name: button }).click();
  await expect(page.getByRole("form", { name: button })).toHaveCount(0);
  await expect(page.getByRole("table", { name: "Stages of the project" }).getByText(remark)).toBeVisible();
}

test("a committee of four: sealed prices, a frozen set of criteria, scores made alone, agreed values, an amendment, an award", async ({
  browser,
  page: unnamed,
  complaints,
}) => {
  test.setTimeout(600_000);
  await unnamed.goto("/");
  const owner = await person(browser, complaints);
  const project = await opened(owner, ratedFile);
  await sayWhoIsHere(owner, project, administrator);
  await listPeople(owner, project);

  await test.step("prices are sealed, and the completeness check is read before the criteria are frozen", async () => {
    await owner.goto(`${project}/procedure`);
    await owner.getByRole("button", { name: "Seal prices until they are opened" }).click();
    await expect(owner.getByRole("button", { name: "Leave prices open" })).toBeVisible();
    const checked = owner.getByRole("table", { name: "Completeness check" });
    await expect(checked.getByRole("row", { name: /^Ratings/ })).toContainText("3 evaluators rate “Plan for care”");
    await expect(checked.getByRole("row", { name: /^Limits/ })).toContainText("look at");
    await step(owner, project, "Freeze the criteria", "Board meeting in March.");
    const frozen = owner.getByRole("row", { name: /^Criteria frozen/ });
    await expect(frozen).toContainText(`by ${administrator}`);
    await frozen.getByText("What was seen then").click();
    await expect(frozen.getByText("These have no limit, so no bid can fail on them")).toBeVisible();
    await owner.goto(`${project}/requirements`);
    await expect(owner.getByText("What is frozen changes by an amendment with a reason").first()).toBeVisible();
    await expect(owner.getByLabel("Limit, to stay below")).toBeDisabled();
  });

  await test.step("prices are sealed bid by bid, and no page shows them", async () => {
    await sealPrice(owner, project, "bid-a", "$812,345");
    await sealPrice(owner, project, "bid-b", "$798,765");
    await owner.goto(`${project}/bids/bid-a`);
    await expect(owner.getByText("812,345")).toHaveCount(0);
    await owner.goto(`${project}/bids/bid-a/sealed-prices`);
    await looksWell(owner);
    await owner.goto(`${project}/procedure`);
    await expect(owner.getByText("Sealed prices are in for bids A and B. None are in for bids C and D.")).toBeVisible();
    await expect(owner.getByText(/^Sealed prices are opened once evaluators have agreed/)).toBeVisible();
    await owner.getByRole("button", { name: "Open the prices" }).click();
    await expect(owner.getByRole("alert").filter({ hasText: "Not done" })).toContainText("Still open");
  });

  const others = await Promise.all([eve, sam, kim].map(() => person(browser, complaints)));
  const [ofEve, ofSam, ofKim] = others as [Page, Page, Page];
  await test.step("three evaluators score alone: a statement first, a comment at the extremes", async () => {
    for (const [at, name] of [eve, sam, kim].entries()) {
      const seat = others[at] as Page;
      await sayWhoIsHere(seat, project, name);
      await seat.goto(`${project}/committee`);
      await seat.getByRole("link", { name: `Your scoresheet, ${name}` }).click();
      await expect(seat.getByText("The bids can be rated once you have made your statement.")).toBeVisible();
    }
    await ofEve.getByLabel("Your statement").selectOption("none");
    await rate(ofEve, [4, 2, 3, 3]);
    await handIn(ofEve);
    await handedIn(ofEve);

    await ofSam.getByLabel("Your statement").selectOption("none");
    await rate(ofSam, [3, 2, 4, 1]);
    await handIn(ofSam);
    const lacking = ofSam.getByRole("alert").filter({ hasText: "Not handed in" });
    await looksWell(ofSam);
    await expect(lacking).toContainText("bid D: say what the level “Not covered” rests on");
    await comment(ofSam, "D", "Quiet on watering, p. 12.");
    await handIn(ofSam);
    await handedIn(ofSam);

    await ofKim.getByLabel("Your statement").selectOption("some-bids");
    await ofKim.getByRole("checkbox", { name: /^Bid D/ }).check();
    await ofKim.getByLabel("What the interest is").fill("A cousin works there.");
    await expect(ofKim.getByText("You are excused from this bid.").first()).toBeVisible();
    await rate(ofKim, [5, 3, 3, 0]);
    await comment(ofKim, "A", "Two like fields, visited in May.");
  });

  await test.step("before all are in, nobody sees what another has put", async () => {
    for (const [seat, unseen] of [
      [owner, "Quiet on watering"],
      [ofEve, "Quiet on watering"],
      [ofKim, "Quiet on watering"],
    ] as const) {
      for (const path of ["committee", "committee/scoresheet", "committee/consensus", "evaluation", "record"]) {
        await seat.goto(`${project}/${path}`);
        expect(await seat.content(), `${path} for somebody else`).not.toContain(unseen);
      }
    }
    await owner.goto(`${project}/committee`);
    await expect(owner.getByText("2 of 3 sheets are handed in")).toBeVisible();
    await expect(owner.getByRole("button", { name: "Open the scoresheets" })).toHaveCount(0);
    await ofSam.goto(`${project}/committee/scoresheet`);
    await expect(ofSam.getByLabel(`Comment, “${labels[0]}”, bid D`)).toHaveValue("Quiet on watering, p. 12.");
    await ofKim.goto(`${project}/committee/scoresheet`);
    await expect(ofKim.getByLabel(`Comment, “${labels[0]}”, bid A`)).toHaveValue("Two like fields, visited in May.");
    await handIn(ofKim);
    await handedIn(ofKim);
  });

  await test.step("the sheets are opened together; the consensus sheet shows spread and agreement", async () => {
    await owner.goto(`${project}/committee`);
    await owner.getByRole("button", { name: "Open the scoresheets" }).click();
    await owner.getByRole("link", { name: "The consensus sheet" }).click();
    await expect(
      owner.getByText(`${kim}: an interest in bid D, and excused there: A cousin works there.`),
    ).toBeVisible();
    // ranks of two sheets that rate all four bids: 1, 4, 2.5, 2.5 and 2, 3, 1, 4; S = 12.5, T = 6
    // W = 12 · 12.5 ÷ (2² (4³ − 4) − 2 · 6), by the definition with ties
    const w = (12 * 12.5) / (4 * 60 - 2 * 6);
    await expect(owner.getByText(`Kendall’s W is ${w.toFixed(2)}`)).toHaveCount(labels.length);
    await expect(owner.getByText("Measured on the 2 sheets that rate every bid; ties share a rank.")).toHaveCount(2);
    const ratings = owner.getByRole("table", { name: `Ratings on ${labels[0]}` });
    const row = (letter: string) => ratings.getByRole("row", { name: new RegExp(`^${letter}, `) });
    await expect(row("A")).toContainText("2 levels apart: hear the reasons first");
    await expect(row("B")).toContainText("1 level apart");
    await expect(row("D")).toContainText(`${kim}: excused`);
    await expect(row("D")).toContainText("Quiet on watering, p. 12.");
  });

  await test.step("a value is agreed with its reason, and none without", async () => {
    const agree = (label: string, letter: string) =>
      owner.getByRole("region", { name: `Agreed on bid ${letter}, ${label}` });
    const first = agree(labels[0] as string, "A");
    await first.getByRole("combobox").selectOption("level-4");
    await expect(first.getByText("Say why the committee agreed on this value")).toBeVisible();
    for (const label of labels)
      for (const [at, letter] of letters.entries()) {
        const place = agree(label, letter);
        await place.getByRole("combobox").selectOption(letter === "C" ? "between" : `level-${4 - at}`);
        if (letter === "C") await place.getByLabel(/^Value from 0 to 1/).fill("60 %");
        await place.getByLabel(/^Reason/).fill(`Page ${at + 3} of the plan bears it out.`);
      }
    await agree(labels[0] as string, "B")
      .getByLabel(/^Dissent/)
      .fill("Sam Lind would go one level lower.");
    await saved(owner);
    await looksWell(owner);
    await owner.goto(`${project}/committee`);
    await looksWell(owner);
    await expect(owner.getByText("A value is agreed for every bid.")).toHaveCount(labels.length);
  });

  await test.step("prices are opened and stand in the bids; what was agreed before can’t be changed any more", async () => {
    await step(owner, project, "Open the prices", "In public, at noon.");
    await owner.goto(`${project}/bids/bid-a`);
    await expect(owner.getByLabel("Price: amount").first()).toHaveValue("$812,345");
    await owner.goto(`${project}/committee/consensus`);
    await expect(
      owner.getByRole("region", { name: `Agreed on bid A, ${labels[0]}` }).getByRole("combobox"),
    ).toBeDisabled();
    await ofEve.goto(`${project}/committee/scoresheet`);
    await expect(ofEve.getByText("The scoresheets are open and can’t be changed any more.")).toBeVisible();
  });

  await test.step("an amendment takes a reason and stands on later pages and documents", async () => {
    await owner.goto(`${project}/procedure/amend/requirements`);
    await owner.getByLabel("Limit, to stay below").fill("160 g");
    const listed = owner.getByRole("table", { name: "What the amendment changes" });
    await expect(listed.getByRole("row", { name: "impact, limit 165 g 160 g" })).toBeVisible();
    await looksWell(owner);
    const form = owner.getByRole("form", { name: "Record the amendment" });
    await form.getByRole("textbox", { name: "Reason" }).fill("The school’s insurer asks for it.");
    await form.getByRole("button", { name: "Record the amendment" }).click();
    await owner.waitForURL(/procedure#amendments$/);
    for (const path of ["evaluation", "recommendation", "committee", "bids/bid-a", "record"]) {
      await owner.goto(`${project}/${path}`);
      const line = owner.getByRole("complementary", { name: "Stage and amendments" });
      await expect(line).toContainText(`Amendment 1, `);
      await expect(line).toContainText("The school’s insurer asks for it.");
    }
    const file = await (await owner.request.get(`${project}/export`)).json();
    const read = projectFileSchema.parse(file);
    expect(read.requirements.impact.limit.asEntered).toBe("160 g");
    expect(read.procedure.amendments[0]?.changes).toEqual([{ field: "impact, limit", from: "165 g", to: "160 g" }]);
    const draft = await (await owner.request.get(`${project}/specification/files/draft.txt`)).text();
    expect(draft).toContain("The school’s insurer asks for it.");
    expect(draft).toContain("impact, limit: 165 g → 160 g");
  });

  await test.step("evaluated, recommended, awarded: an evaluator may not take these steps", async () => {
    await ofEve.goto(`${project}/procedure`);
    await expect(ofEve.getByText("This step is not yours to take")).toBeVisible();
    await expect(ofEve.getByRole("button", { name: "Close the evaluation" })).toHaveCount(0);
    await step(owner, project, "Close the evaluation", "Nothing is open.");
    await owner.goto(`${project}/bids/bid-a`);
    await expect(owner.getByLabel("Price: amount").first()).toBeDisabled();
    await step(owner, project, "The recommendation goes to the board", "For the meeting in May.");
    const chosen = `Bid B, ${ratedFile.bids[1]?.bidder}`;
    await step(owner, project, "Record the award", "Voted five to none.", chosen);
    await expect(owner.getByRole("row", { name: /^Awarded/ })).toContainText(chosen);
    await expect(owner.getByRole("link", { name: "Amend the requirements" })).toHaveCount(0);
    await owner.goto(`${project}/record`);
    await expect(owner.getByText("every one of them is as it was written")).toBeVisible();
    await looksWell(owner);
    await owner.goto(`${project}/procedure`);
    await looksWell(owner);
  });
  for (const seat of [owner, ...others]) await seat.context().close();
});
