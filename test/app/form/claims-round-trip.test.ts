import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { claimSchema, methodOf, type Property, properties } from "#lib/claim";
import { claimsCsv, claimsOfBidsCsv, mergedBid, readBidForm } from "#lib/document";
import { type BidText, startingBid } from "#lib/evaluation";
import { type DimensionDefinition, dimensions } from "#lib/quantity";
import { freshId } from "../../../app/_components/form/fresh-id";
import { pastedBlock } from "../../../app/project/[id]/bids/[bid]/_components/pasted-claims";
import { expected, freeRow, typed } from "../../document/form-files";

type Claims = BidText["claims"];

/** What claims mean, without the ids and the order of a ledger. */
const meant = (claims: Claims) => claims.map((claim) => ({ ...claimSchema.parse(claim), id: "" }));

/** The claims that a text gives in the paste box. */
function pasted(text: string): Claims {
  const block = pastedBlock(text, null);
  if (block.kind !== "read") throw new Error(block.kind);
  return block.claims.map(({ claim }) => claim);
}

/** Figures as the trade writes them, in every unit that a property may have. */
function figureOf(property: Property): fc.Arbitrary<string> {
  if (property.kind === "words") return fc.constantFrom("as tested", "=see sheet", "-", "@home");
  if (property.kind === "choice") return fc.constantFrom(...property.choices.map(({ label }) => label));
  const { units }: DimensionDefinition = dimensions[property.dimension];
  const number = fc.integer({ min: 1, max: 900 });
  const written = fc.constantFrom(...Object.keys(units));
  return fc.tuple(fc.constantFrom("", "≥ ", "< "), number, written).map(([bound, figure, unit]) => {
    const text = unit.startsWith("$") ? `$${figure}${unit.slice(1)}` : `${figure} ${unit}`;
    return `${bound}${text}`.trim();
  });
}

const plainText = fc.string({ unit: "grapheme", maxLength: 30 }).map((text) => text.replace(/\p{C}/gu, "").trim());
const claim = fc.constantFrom(...properties).chain((property) =>
  fc
    .record({
      figure: figureOf(property),
      method: fc.constantFrom("not stated", ...property.methods.map((id) => methodOf(id).designation)),
      condition: fc.constantFrom("new", "year 5", "not stated"),
      evidence: fc.constantFrom("Stated", "Accredited laboratory", "Guaranteed"),
      document: plainText,
      page: plainText,
      words: plainText,
      testField: fc.constantFrom("", "North", "Field 2"),
      fieldCount: fc.constantFrom("", "1", "4"),
      spread: fc.constantFrom("", "5 %"),
    })
    .map((entered) => ({ property: property.label, ...entered })),
);
const readable = fc
  .array(claim, { maxLength: 10 })
  .map((claims) => claims.filter((each) => claimSchema.safeParse({ id: "x", ...each, note: "" }).success));

const columns = {
  property: "B",
  figure: "D",
  method: "E",
  condition: "F",
  evidence: "G",
  document: "H",
  page: "I",
  words: "J",
  testField: "P",
  fieldCount: "Q",
  spread: "R",
} as const;
type Entered = Readonly<Record<keyof typeof columns, string>>;

const cellsOf = (claims: readonly Entered[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    claims.flatMap((each, index) =>
      Object.entries(columns).flatMap(([field, column]) => {
        const text = each[field as keyof Entered];
        return text === "" ? [] : [[`${column}${freeRow + index}`, text] as const];
      }),
    ),
  );

describe("claims", () => {
  test("are the same from the form through the bid and the exported file back into a ledger", () => {
    let most = 0;
    fc.assert(
      fc.property(readable, (claims) => {
        most = Math.max(most, claims.length);
        const form = readBidForm(typed({ Claims: cellsOf(claims) }), expected);
        if (!form.ok) throw new Error(form.problem.kind);
        expect(form.value.cells.filter(({ problem }) => problem !== null)).toEqual([]);
        const { bid } = mergedBid(startingBid("A", "Somebody"), form.value, {
          ownMaterials: [],
          idFor: freshId,
          unmentioned: "keep",
        });
        const entered = claims.map((each) => ({ id: "x", ...each, note: "" }));
        expect(meant(bid.claims)).toEqual(meant(entered));
        if (claims.length > 0) expect(meant(pasted(claimsCsv(bid.claims)))).toEqual(meant(entered));
      }),
      { numRuns: 25 },
    );
    expect(most).toBeGreaterThan(4);
  });

  test("that begin like a formula are written with an apostrophe and read without it", () => {
    const claims: Claims = [
      {
        id: "drift",
        property: "g-max",
        figure: "118 g",
        method: "f1936",
        condition: "new",
        evidence: "stated",
        document: "=HYPERLINK(1)",
        page: "-0.5",
        words: "+ soft",
        note: "",
      },
    ];
    expect(claimsCsv(claims)).toBe(
      "\uFEFFProperty,Figure,Test method,Condition,Evidence,Document,Page,Words,Note,Edition,Date,Laboratory,Accreditation,Build,Field tested,Fields behind the figure,Standard deviation\r\nG-max,118 g,ASTM F1936,new,Stated,'=HYPERLINK(1),'-0.5,'+ soft,,,,,,,,,\r\n",
    );
    expect(meant(pasted(claimsCsv(claims)))).toEqual(meant(claims));
    // copied out of a spreadsheet the cells come with tabs between them
    expect(meant(pasted("Property\tFigure\tPage\r\nG-max\t118 g\t'-0.5"))).toEqual([
      expect.objectContaining({ page: "-0.5" }),
    ]);
  });

  test("of all bids stand behind letter and bidder", () => {
    const bid = startingBid("B", "Bidder, second");
    const claims: Claims = [{ id: "pile", property: "pile-height", figure: '2"', evidence: "stated" }];
    expect(claimsOfBidsCsv([startingBid("A", "First"), { ...bid, claims }])).toBe(
      '\uFEFFBid,Bidder,Property,Figure,Test method,Condition,Evidence,Document,Page,Words,Note,Edition,Date,Laboratory,Accreditation,Build,Field tested,Fields behind the figure,Standard deviation\r\nB,"Bidder, second",Pile height,"2""",not stated,,Stated,,,,,,,,,,,,\r\n',
    );
  });
});
