import { demonstration, expect, test } from "./fixtures";

/** Pages whose workings and lists link to the place where something was entered, with what they ask for in the address. */
const pages = [
  "requirements",
  "bids/bid-a",
  "bids/bid-b",
  "bids/bid-c",
  "bids/bid-d",
  "levelling",
  "infill",
  "hardness",
  "cost",
  "cost/two-bids",
  "levelling",
  "cost/owners-figures",
  "evaluation",
  "side-by-side",
  "field-tests",
  "field-tests/yearly-2030",
];

test("every link to a place on a page finds that place", async ({ browser, page }) => {
  const project = await demonstration(browser);
  const wanted = new Map<string, Set<string>>();
  for (const path of pages) {
    await page.goto(`${project}/${path}`);
    for (const address of await page.evaluate(linksToPlaces)) {
      const { pathname, hash } = new URL(address);
      wanted.set(pathname, (wanted.get(pathname) ?? new Set()).add(decodeURIComponent(hash.slice(1))));
    }
  }
  const lacking: string[] = [];
  for (const [pathname, places] of wanted) {
    await page.goto(pathname);
    await page.locator("main").waitFor();
    const absent = await page.evaluate((ids) => ids.filter((id) => document.getElementById(id) === null), [...places]);
    lacking.push(...absent.map((id) => `${pathname.replace(project, "…")}#${id}`));
  }
  expect([...wanted.values()].reduce((count, places) => count + places.size, 0)).toBeGreaterThan(40);
  expect(lacking).toEqual([]);
});

/** Addresses of the links of this site that name a place. Runs in the page. */
const linksToPlaces = () =>
  [...document.querySelectorAll<HTMLAnchorElement>("a[href*='#']")]
    .map(({ href }) => href)
    .filter((href) => new URL(href).origin === location.origin && new URL(href).hash.length > 1);
