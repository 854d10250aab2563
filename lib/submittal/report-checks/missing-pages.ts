import { listed } from "#lib/figure";
import type { ReportCheck } from "./model";

/** Most pages that are named one by one. */
const mostNamed = 12;
/** Longest report that is looked at. */
const longest = 2000;

export const missingPages: ReportCheck = {
  id: "missing-pages",
  title: "Pages",
  find: ({ pagesStated, pagesPresent }) => {
    if (pagesStated === null) return [{ severity: "note", sentence: "The report does not say how many pages it has." }];
    const present = new Set(pagesPresent);
    const missing = Array.from({ length: Math.min(pagesStated, longest) }, (_, index) => index + 1).filter(
      (page) => !present.has(page),
    );
    if (missing.length === 0) return [];
    const named = missing.length <= mostNamed ? listed(missing.map(String)) : `${missing.length} of them`;
    const pages =
      missing.length === 1 ? `page ${named} is` : missing.length <= mostNamed ? `pages ${named} are` : `${named} are`;
    return [{ severity: "needs an answer", sentence: `The report has ${pagesStated} pages, and ${pages} missing.` }];
  },
};
