import type { Page } from "@playwright/test";
import { axeFindings, colours, standards, standardsButColours } from "./axe-findings";
import { demonstration, expect } from "./fixtures";
import { test } from "./one-profile";
import { isWholeWalk } from "./whole-walk";

/** Every page of the app; those of a project under its address. A new page is a line here. */
const pages = [
  "/",
  "/no-such-page",
  "/access",
  "project",
  "project/brief",
  "project/requirements",
  "project/specification",
  "project/specification/clauses",
  "project/specification/section",
  "project/specification/language",
  "project/specification/competition",
  "project/specification/versions",
  "project/procedure",
  "project/procedure/people",
  "project/procedure/released",
  "project/procedure/amend/requirements",
  "project/bids",
  "project/bids/bid-a",
  "project/bids/bid-a/import",
  "project/bids/bid-a/sealed-prices",
  "project/bids/bid-a/questions?answer=components-against-total:total-infill",
  "project/bid-form/import",
  "project/levelling",
  "project/side-by-side",
  "project/infill",
  "project/hardness",
  "project/cost",
  "project/cost/owners-figures",
  "project/cost/two-bids",
  "project/cost/uncertainty",
  "project/cost/conventions",
  "project/committee",
  "project/committee/scoresheet",
  "project/committee/consensus",
  "project/conflict/brief/brief",
  "project/evaluation",
  "project/evaluation/robustness",
  "project/recommendation",
  "project/recommendation/words",
  "project/submittals",
  "project/submittals/award",
  "project/submittals/deliveries",
  "project/promised",
  "project/submittals/substitutions",
  "project/submittals/substitutions/lighter-infill",
  "project/submittals/lines/tuft-bind-report",
  "project/field-tests",
  "project/field-tests/yearly-2030",
  "project/field-tests/yearly-2030/on-the-field",
  "project/field-tests/trace",
  "project/attachments",
  "project/record",
] as const;

// the pages are independent of each other, and there are many of them
test.describe.configure({ mode: "parallel" });

type Stop = Readonly<{ element: string; outlined: boolean }>;

let project = "";

test.beforeAll(async ({ browser }) => {
  project = await demonstration(browser);
});

const addressOf = (page: (typeof pages)[number]) => (page.startsWith("/") ? page : page.replace(/^project/, project));

/** Opens a page and waits until its script has taken over. */
async function open(page: Page, name: (typeof pages)[number], complaints: string[]): Promise<void> {
  await page.goto(addressOf(name), { waitUntil: "networkidle" });
  // the answer 404 is what this page is about, and Chromium notes it as an error
  if (name === "/no-such-page")
    complaints.splice(0, complaints.length, ...complaints.filter((text) => !/404/.test(text)));
}

/** How many stops are walked at either end of a long page. */
const stopsAtEnds = isWholeWalk ? Number.POSITIVE_INFINITY : 30;

/** Pages that show every kind of part there is: the colours of both schemes are looked at on these every day. */
const coloursEveryDay: ReadonlySet<string> = new Set([
  ...["/", "project/bids/bid-a", "project/side-by-side", "project/cost"],
  ...["project/evaluation", "project/field-tests/yearly-2030"],
]);

for (const name of pages) {
  test.describe(name, () => {
    // one opening serves all, because opening a page takes as long as looking at it
    test("axe finds nothing, it works by keyboard, and it fits 320 CSS pixels", async ({ page, complaints }) => {
      await open(page, name, complaints);
      await test.step("a way past the contents, a visible focus, no trap", () => walk(page));
      await test.step("axe", async () => {
        const looksAtColours = isWholeWalk || coloursEveryDay.has(name);
        expect(await axeFindings(page, looksAtColours ? standards : standardsButColours)).toEqual([]);
        if (!looksAtColours) return;
        await page.emulateMedia({ colorScheme: "dark" });
        // the colours are all that the scheme changes
        expect(await axeFindings(page, colours)).toEqual([]);
      });
      await test.step("320 CSS pixels", async () => {
        await page.setViewportSize({ width: 320, height: 640 });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      });
    });
  });
}

test("axe finds what is wrong where something is", async ({ page, complaints }) => {
  await open(page, "/no-such-page", complaints);
  await page.evaluate(() => document.querySelector("main")?.append(document.createElement("img")));
  expect(await axeFindings(page)).toEqual(["image-alt: img"]);
});

/** Walks the page by the Tab key from its first stop to its last, or at both ends of a long page. */
async function walk(page: Page): Promise<void> {
  await page.keyboard.press("Tab");
  await expect(page.getByRole("link", { name: "Skip to the content" })).toBeFocused();
  const controls = await page.evaluate(() => {
    const found = [
      ...document.querySelectorAll<HTMLElement>("a[href], button, input, select, textarea, summary, [tabindex='0']"),
    ].filter((element) => element.checkVisibility({ visibilityProperty: true }) && element.tabIndex >= 0);
    Object.assign(window, { controls: found });
    return found.length;
  });
  await page.evaluate(() => {
    const seen: { element: string; outlined: boolean }[] = [];
    Object.assign(window, { seen, left: false });
    document.addEventListener("focusout", ({ relatedTarget }) => {
      if (relatedTarget === null) Object.assign(window, { left: true });
    });
    document.addEventListener("focusin", ({ target }) => {
      if (!(target instanceof HTMLElement)) return;
      const { outlineStyle, outlineWidth } = getComputedStyle(target);
      seen.push({
        element: target.outerHTML.slice(0, 120),
        outlined: outlineStyle !== "none" && outlineWidth !== "0px",
      });
    });
  });
  let outOfPage = false;
  for (let pressed = 0; !outOfPage && pressed <= controls + 5; pressed += 1) {
    if (pressed === stopsAtEnds && controls > 3 * stopsAtEnds) {
      await page.evaluate((stops) => {
        (window as unknown as { controls: readonly HTMLElement[] }).controls.at(-stops)?.focus();
      }, stopsAtEnds);
    }
    await page.keyboard.press("Tab");
    if (pressed % 10 !== 9 && pressed < controls + 5) continue; // asking after each key takes most of the time
    outOfPage = await page.evaluate(() => (window as unknown as { left: boolean }).left);
  }
  const stops = await page.evaluate(() => (window as unknown as { seen: readonly Stop[] }).seen);
  expect(stops.length).toBeGreaterThan(0);
  expect(stops.filter(({ outlined }) => !outlined)).toEqual([]);
  // radio buttons of one group are one stop, so there may be fewer stops than controls
  expect(outOfPage, "Tab comes to the end of the page").toBe(true);
}
