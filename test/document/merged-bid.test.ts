import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { claimSchema, type PropertyId, properties } from "#lib/claim";
import { type FilledForm, mergedBid, readBidForm, type Unmentioned } from "#lib/document";
import { type BidText, startingBid } from "#lib/evaluation";
import { expected, freeRow, typed } from "./form-files";

const idFor = (stem: string, taken: readonly string[]): string => {
  let number = 1;
  while (taken.includes(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
};

const laidOver = (bid: BidText, form: FilledForm, unmentioned: Unmentioned = "keep") =>
  mergedBid(bid, form, { ownMaterials: expected.ownMaterials, idFor, unmentioned });

function formOf(sheets: Parameters<typeof typed>[0]): FilledForm {
  const form = readBidForm(typed(sheets), expected);
  if (!form.ok) throw new Error(form.problem.kind);
  return form.value;
}

const full = {
  Instructions: { B7: "First bidder", B8: "Sand and cork" },
  Claims: {
    D2: "118 g",
    E2: "ASTM F1936",
    F2: "new",
    D3: "2-1/4 in",
    [`B${freeRow}`]: "G-max",
    [`D${freeRow}`]: "150 g",
    [`F${freeRow}`]: "year 5",
  },
  Infill: { B1: "In layers, one on the other", A4: "Cork", B4: "1 lb/ft²" },
  Prices: { A5: "Carpet", D5: "Once, at the base date", E5: "Investment", G5: "$4.85/ft²" },
};

const estimate: BidText["prices"][number] = {
  kind: "at-base-date",
  id: "groomer",
  label: "Carpet",
  givenBy: "owner-estimate",
  category: "owners-addition",
  amount: { kind: "lump-sum", price: "$18,500" },
};

describe("mergedBid", () => {
  test("adds all that a form says to a bid that says nothing", () => {
    const { bid, changes } = laidOver(startingBid("A", "Somebody"), formOf(full));
    expect(bid).toMatchObject({ letter: "A", bidder: "First bidder", system: "Sand and cork" });
    expect(bid.claims.map(({ id, figure }) => [id, figure])).toEqual([
      ["g-max-1", "118 g"],
      ["pile-height-1", "2-1/4 in"],
      ["g-max-2", "150 g"],
    ]);
    expect(changes.map(({ part, what, kind }) => [part, what, kind])).toEqual([
      ["The bid", "The bid", "changed"],
      ["Infill", "Cork", "added"],
      ["Claims", "G-max, new", "added"],
      ["Claims", "Pile height", "added"],
      ["Claims", "G-max, year 5", "added"],
      ["Prices", "Carpet", "added"],
    ]);
  });

  test("changes nothing when the same form comes again", () => {
    const once = laidOver(startingBid("A", "Somebody"), formOf(full)).bid;
    const again = laidOver(once, formOf(full));
    expect(again.bid).toEqual(once);
    expect(again.changes.every(({ kind }) => kind === "unchanged")).toBe(true);
  });

  test("shows one change where one cell differs, and keeps id and note", () => {
    const once = laidOver(startingBid("A", "Somebody"), formOf(full)).bid;
    const [first, ...others] = once.claims;
    if (first === undefined) throw new Error("no claim");
    const noted: BidText = { ...once, claims: [{ ...first, note: "Asked the bidder on Monday" }, ...others] };
    const again = laidOver(noted, formOf({ ...full, Claims: { ...full.Claims, D2: "120 g" } }));
    expect(again.changes.filter(({ kind }) => kind !== "unchanged")).toEqual([
      { part: "Claims", what: "G-max, new", kind: "changed", texts: [{ field: "Figure", from: "118 g", to: "120 g" }] },
    ]);
    expect(again.bid.claims[0]).toEqual({ ...first, figure: "120 g", note: "Asked the bidder on Monday" });
  });

  test("tells two claims of a property apart by their condition", () => {
    const once = laidOver(startingBid("A", "Somebody"), formOf(full)).bid;
    const swapped = formOf({
      ...full,
      Claims: {
        ...full.Claims,
        D2: "150 g",
        F2: "year 5",
        E2: "",
        [`D${freeRow}`]: "119 g",
        [`F${freeRow}`]: "new",
        [`E${freeRow}`]: "ASTM F1936",
      },
    });
    expect(laidOver(once, swapped).changes.filter(({ kind }) => kind !== "unchanged")).toEqual([
      { part: "Claims", what: "G-max, new", kind: "changed", texts: [{ field: "Figure", from: "118 g", to: "119 g" }] },
    ]);
  });

  test("keeps what the form leaves out, or takes it out, as asked; the owner's estimates stay either way", () => {
    const once = laidOver(startingBid("A", "Somebody"), formOf(full)).bid;
    const bid: BidText = { ...once, prices: [estimate, ...once.prices] };
    const less = formOf({ ...full, Claims: { D2: "118 g", E2: "ASTM F1936", F2: "new" }, Prices: {} });
    const gone = laidOver(bid, less).changes.filter(({ kind }) => kind === "gone");
    expect(gone.map(({ what }) => what)).toEqual(["Pile height", "G-max, year 5", "Carpet"]);
    expect(laidOver(bid, less, "keep").bid).toEqual(bid);
    const taken = laidOver(bid, less, "take-out").bid;
    expect(taken.claims.map(({ id }) => id)).toEqual(["g-max-1"]);
    expect(taken.prices).toEqual([estimate]);
  });

  test("leaves an owner's estimate alone that is called like a price of the form", () => {
    const bid: BidText = { ...startingBid("A", "First bidder"), prices: [estimate] };
    const { prices } = laidOver(bid, formOf(full)).bid;
    expect(prices).toEqual([estimate, expect.objectContaining({ givenBy: "bid", label: "Carpet" })]);
  });

  test("keeps the owner's rules for the study's end, and a life the form is silent on", () => {
    const chain: BidText["prices"][number] = {
      kind: "replacement-chain",
      id: "carpet",
      label: "Carpet",
      givenBy: "bid",
      amount: { kind: "per-area", price: "$4.00/ft²" },
      life: "8 years",
      lifeGivenBy: "owner-estimate",
      removal: { kind: "lump-sum", price: "$60,000" },
      removalGivenBy: "owner-estimate",
      removalAtStudyEnd: "full",
      residual: "none",
    };
    const bid: BidText = { ...startingBid("A", "First bidder"), prices: [chain] };
    const form = formOf({
      Prices: { A5: "Carpet", D5: "A part with a life, renewed until the study ends", G5: "$4.85/ft²" },
    });
    expect(laidOver(bid, form).bid.prices).toEqual([
      expect.objectContaining({ ...chain, amount: { kind: "per-area", price: "$4.85/ft²" } }),
    ]);
  });

  test("an id and a label of the same thing are no change", () => {
    const bid: BidText = {
      ...startingBid("A", "First bidder"),
      claims: [{ id: "seams", property: "Seam method", figure: "sewn", method: "", evidence: "Stated" }],
    };
    const label = properties.findIndex(({ id }) => id === "seam-method");
    expect(label).toBeGreaterThan(0);
    const form = formOf({ Claims: { [`B${freeRow}`]: "Seam method", [`D${freeRow}`]: "Sewn" } });
    expect(laidOver(bid, form).changes.map(({ kind }) => kind)).toEqual(["unchanged"]);
    expect(laidOver(bid, form).bid.claims).toEqual(bid.claims);
  });
});

/** Claims that the catalogue allows, each in a row of its own. */
const property = fc.constantFrom(...properties.map(({ id }): PropertyId => id));
const text = fc.string({ unit: "grapheme", maxLength: 40 }).map((each) => each.replace(/\p{C}/gu, "").trim());
const anyClaim = fc.record({
  property,
  words: text.filter((each) => each !== ""),
  document: text,
  page: text,
  condition: fc.constantFrom("new", "year 5", "18 months", "after 20,000 cycles", "not stated", "frozen"),
  evidence: fc.constantFrom("Stated", "Own test", "Accredited laboratory", "Field-tested", "Guaranteed"),
});

test("every claim of a form reaches the bid as typed, whatever it says", () => {
  const addressed = { property: "B", condition: "F", evidence: "G", document: "H", page: "I", words: "J" } as const;
  fc.assert(
    fc.property(fc.array(anyClaim, { maxLength: 12 }), (claims) => {
      const cells = claims.flatMap((claim, index) =>
        Object.entries(addressed).flatMap(([field, column]) => {
          const written = claim[field as keyof typeof addressed];
          return written === "" ? [] : [[`${column}${freeRow + 20 - index}`, written] as const];
        }),
      );
      const { bid } = laidOver(startingBid("A", "Somebody"), formOf({ Claims: Object.fromEntries(cells) }));
      const wanted = claims
        .toReversed()
        .map(({ evidence: _, ...claim }) => expect.objectContaining({ figure: "", method: "not-stated", ...claim }));
      expect(bid.claims).toEqual(wanted);
      for (const claim of bid.claims) expect(claimSchema.safeParse(claim).success).toBe(true);
    }),
    { numRuns: 25 },
  );
});
