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
  await page.goto("/access"); // a page of the site, from which the others are fetched
  const wanted = new Map<string, Set<string>>();
  for (const path of pages) {
    for (const address of await page.evaluate(linksToPlaces, `${project}/${path}`)) {
      const { pathname, hash } = new URL(address);
      wanted.set(pathname, (wanted.get(pathname) ?? new Set()).add(decodeURIComponent(hash.slice(1))));
    }
  }
  const lacking: string[] = [];
  for (const [pathname, places] of wanted) {
    const absent = await page.evaluate(placesNotAt, { address: pathname, places: [...places] });
    lacking.push(...absent.map((id) => `${pathname.replace(project, "…")}#${id}`));
  }
  expect([...wanted.values()].reduce((count, places) => count + places.size, 0)).toBeGreaterThan(40);
  expect(lacking).toEqual([]);
});

/** Addresses of the links of a page that name a place on this site, as the server writes the page. Runs in a page. */
async function linksToPlaces(address: string): Promise<readonly string[]> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  const read = new DOMParser().parseFromString(await answer.text(), "text/html");
  return [...read.querySelectorAll("a[href*='#']")]
    .map((link) => new URL(link.getAttribute("href") ?? "", answer.url))
    .filter(({ origin, hash }) => origin === location.origin && hash.length > 1)
    .map(({ href }) => href);
}

/** Which of the places a page does not have, as the server writes it. Runs in a page. */
async function placesNotAt({ address, places }: { address: string; places: readonly string[] }) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  const read = new DOMParser().parseFromString(await answer.text(), "text/html");
  return places.filter((place) => read.getElementById(place) === null);
}
