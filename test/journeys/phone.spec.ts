import type { Page } from "@playwright/test";
import { demonstration, expect } from "./fixtures";
import { test } from "./one-profile";

// What a reader has in hand: a common phone, and the narrowest page that WCAG 2.2 (1.4.10) has in mind.
const widths = [360, 320] as const;
const pages = [
  "evaluation",
  "cost",
  "infill",
  "hardness",
  "promised",
  "field-tests",
  "field-tests/yearly-2030",
] as const;
/** Smaller words are hard to read at arm's length; common practice, no source. */
const leastSize = 11;

test.describe.configure({ mode: "parallel" });

let project = "";

test.beforeAll(async ({ browser }) => {
  project = await demonstration(browser);
});

type Word = Readonly<{ words: string; size: number; left: number; right: number; top: number; bottom: number }>;
type Drawing = Readonly<{ label: string; left: number; right: number; words: readonly Word[] }>;

/** Every drawing that is shown, with each line of words in it as it comes out on the screen. */
const drawings = (page: Page): Promise<readonly Drawing[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<SVGSVGElement>("main svg[role=img]")]
      .filter((svg) => svg.checkVisibility())
      .map((svg) => {
        const { left, right } = svg.getBoundingClientRect();
        const words = [...svg.querySelectorAll("text")].map((text) => {
          const box = text.getBoundingClientRect();
          const size = Number.parseFloat(getComputedStyle(text).fontSize) * (text.getScreenCTM()?.a ?? 0);
          const middle = (box.top + box.bottom) / 2; // lines of one text may stand closer than their boxes are tall
          const ends = { left: box.left, right: box.right, top: middle - size * 0.4, bottom: middle + size * 0.4 };
          return { words: text.textContent ?? "", size, ...ends };
        });
        return { label: svg.getAttribute("aria-label") ?? "", left, right, words };
      }),
  );

const covers = (one: Word, other: Word): boolean =>
  one.left < other.right - 1 && other.left < one.right - 1 && one.top < other.bottom - 1 && other.top < one.bottom - 1;

const onPairs = <T, R>(list: readonly T[], look: (one: T, other: T) => readonly R[]): readonly R[] =>
  list.flatMap((one, place) => list.slice(place + 1).flatMap((other) => look(one, other)));

for (const name of pages) {
  test(`${name}: on a phone every word of a drawing can be read, and captions without scrolling`, async ({ page }) => {
    await page.setViewportSize({ width: widths[0], height: 800 });
    await page.goto(`${project}/${name}`, { waitUntil: "networkidle" });
    for (const width of widths) {
      await page.setViewportSize({ width, height: 800 });
      await test.step(`drawings, ${width} pixels wide`, () => readsDrawings(page));
    }
    for (const summary of await page.getByText("The figures behind this drawing").all()) await summary.click();
    for (const width of widths) {
      await page.setViewportSize({ width, height: 800 });
      await test.step(`captions, ${width} pixels wide`, () => readsCaptions(page, width));
    }
  });
}

async function readsDrawings(page: Page): Promise<void> {
  const shown = await drawings(page);
  expect(shown.length).toBeGreaterThan(0);
  expect(new Set(shown.map(({ label }) => label)).size, "each drawing is shown once").toBe(shown.length);
  for (const { label, left, right, words } of shown) {
    expect(words.length, label).toBeGreaterThan(0);
    const cut = words.filter((word) => word.left < left - 1 || word.right > right + 1);
    expect(
      cut.map((word) => word.words),
      `${label}: runs over the edge`,
    ).toEqual([]);
    const small = words.filter(({ size }) => size < leastSize - 0.05);
    expect(
      small.map((word) => `${word.words}: ${word.size}`),
      `${label}: too small`,
    ).toEqual([]);
    const covered = onPairs(words, (one, other) => (covers(one, other) ? [`${one.words} | ${other.words}`] : []));
    expect(covered, `${label}: cover each other`).toEqual([]);
  }
}

async function readsCaptions(page: Page, width: number): Promise<void> {
  const captions = await page
    .locator("main caption:not(.visually-hidden):visible")
    .evaluateAll((all) =>
      all.map((caption) => ({ words: caption.textContent, right: caption.getBoundingClientRect().right })),
    );
  expect(captions.length).toBeGreaterThan(0);
  expect(captions.filter(({ right }) => right > width).map(({ words }) => words)).toEqual([]);
}

test("a price line on a phone is laid out in blocks and is still a row of a table", async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 800 });
  await page.goto(`${project}/cost`, { waitUntil: "networkidle" });
  const table = page.getByRole("table", { name: "Price lines of bid A" });
  await expect(table.getByRole("columnheader")).toHaveText([
    "Price line",
    "As entered",
    "Part",
    "Given by",
    "Present value",
  ]);
  const grooming = table.getByRole("row").filter({ has: page.getByRole("rowheader", { name: /^Grooming$/ }) });
  await expect(grooming.getByRole("cell")).toHaveText([/in each of the years/, "Price", /estimate|bid/, /^\$[\d,]+$/]);
  const region = page.getByRole("region", { name: "Price lines of bid A" });
  expect(await region.evaluate((it) => it.scrollWidth - it.clientWidth), "nothing lies to the right").toBe(0);
});

test("paper takes the wide drawing, however narrow the window was", async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 800 });
  await page.goto(`${project}/evaluation`, { waitUntil: "networkidle" });
  const boxes = () =>
    page
      .getByRole("img", { name: /^Total of each bid/ })
      .evaluateAll((all) => all.map((svg) => svg.getAttribute("viewBox")?.split(" ")[2]));
  expect(await boxes()).toEqual(["340"]);
  await page.emulateMedia({ media: "print" });
  expect(await boxes()).toEqual(["760"]);
});

test("paper shows the list of measured depths as a table, though it is closed on the screen", async ({ page }) => {
  await page.goto(`${project}/field-tests/yearly-2030`, { waitUntil: "networkidle" });
  const last = page.locator('input[name="depths.29.depth"]'); // on paper the column heads are the labels
  await expect(last).toBeHidden();
  await page.emulateMedia({ media: "print" });
  await expect(last).toBeVisible();
  await expect(page.getByRole("button", { name: "Remove depth 30" })).toBeHidden();
  await page.setViewportSize({ width: 640, height: 800 }); // narrower than the width at which a screen shows blocks
  await expect(page.getByRole("columnheader", { name: "Depth of infill" })).toBeVisible();
});
