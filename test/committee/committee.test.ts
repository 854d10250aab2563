import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Committee,
  committeeSchema,
  explainSheetGap,
  isExcused,
  isExtreme,
  notAgreed,
  type OpenSheet,
  openSheetsOf,
  ratedFigure,
  type Sheet,
  scoringOf,
  sheetGaps,
  sheetSchema,
  spreads,
  withoutExcused,
} from "#lib/committee";
import type { Criterion } from "#lib/criteria";
import { intervalOfFigure } from "#lib/figure";
import { committeePeople, ratedProject, sheetOf } from "../evaluation/procedure/rated-project";

const rated = ratedProject.requirements.criteria.filter(({ valueFunction }) => valueFunction.kind === "rating");
const [care] = rated as [Criterion, ...Criterion[]];
const bids = ratedProject.bids.map(({ id, letter }) => ({ id, letter }));
const none = { kind: "none" } as const;

const openSheet = (
  name: string,
  levels: readonly (number | null)[],
  statement: Sheet["statement"] = none,
): OpenSheet => ({
  ...{ evaluator: { id: name, name }, handedInAt: "2026-11-25T10:00:00.000Z" },
  sheet: {
    statement,
    ratings: levels.flatMap((level, index) =>
      level === null ? [] : [{ criterion: care.id, bid: bids[index]?.id ?? "", level: `level-${level}`, comment: "" }],
    ),
  },
});

const committee = (...sheets: readonly OpenSheet[]): Committee => ({
  ...{ opened: { at: "2026-11-25T11:00:00.000Z", by: { id: "dana-ruiz", name: "Dana Ruiz" }, key: "" } },
  ...{ sheets, agreed: [] },
});

const allBids = bids.map(({ id }) => id);

describe("a scoresheet", () => {
  test("wants a statement first", () => {
    const read = sheetSchema.safeParse({ statement: { kind: "not-stated" }, ratings: [] });
    expect(read.error?.issues[0]?.message).toBe("State first whether you have an interest in any of the bids.");
    const unnamed = sheetSchema.safeParse({ statement: { kind: "some-bids", bids: [], words: "" }, ratings: [] });
    expect(unnamed.error?.issues.map(({ message }) => message)).toEqual([
      "Mark the bids that the interest is in.",
      "Say in a few words what the interest is.",
    ]);
  });

  test("asks for a comment at the least and the greatest level, and at no other", () => {
    expect([1, 2, 3, 4, 5].filter((level) => isExtreme(care, `level-${level}`))).toEqual([1, 5]);
    const gaps = (level: string, comment: string) =>
      sheetGaps(sheetSchema.parse(sheetOf(level, comment, none)), rated, bids);
    expect(gaps("level-3", "")).toEqual([]);
    expect(gaps("level-5", "Plan, p. 3")).toEqual([]);
    expect(gaps("level-5", "  ")).toHaveLength(rated.length * bids.length);
    expect(gaps("level-1", "").map(explainSheetGap)[0]).toBe(
      "“Plan for care”, bid A: say what the level “Not covered” rests on. The least and the greatest level need a comment.",
    );
  });

  test("is complete without the bids that an interest excuses from, and leaves out what was chosen for them", () => {
    const statement = { kind: "some-bids" as const, bids: ["bid-a"], words: "A cousin." };
    const sheet = sheetSchema.parse(sheetOf("level-3", "", statement));
    const without = { ...sheet, ratings: sheet.ratings.filter(({ bid }) => bid !== "bid-a") };
    expect(sheetGaps(without, rated, bids)).toEqual([]);
    expect(withoutExcused(sheet).ratings.map(({ bid }) => bid)).not.toContain("bid-a");
    expect(allBids.filter((bid) => isExcused(statement, bid))).toEqual(["bid-a"]);
    const all = { statement: { kind: "all-bids", words: "A cousin." } as const, ratings: [] };
    expect(sheetGaps(all, rated, bids)).toEqual([]);
    const empty = sheetGaps({ statement: none, ratings: [] }, rated, bids);
    expect(empty.map(explainSheetGap)[0]).toBe("“Plan for care”: choose a level for bids A, B, C, D.");
  });

  test("is read by nobody while it is sealed", () => {
    const contents = { kind: "sealed", sealed: { algorithm: "AES-256-GCM", nonce: "", text: "" } } as const;
    const evaluator = { id: "eve-okoro", name: "Eve Okoro" };
    const handedIn = [{ evaluator, handedInAt: "2026-11-25T10:00:00.000Z", contents }];
    expect(openSheetsOf(handedIn)).toEqual([]);
    const scoring = scoringOf(committeePeople, handedIn, { opened: null });
    expect(scoring.stage).toBe("scoring");
    expect(scoring.awaited.map(({ name }) => name)).toEqual(["Sam Lind", "Kim Vale"]);
  });
});

describe("the consensus sheet", () => {
  // Ranks of wing, tail and bill length of twelve birds. Zar, Biostatistical Analysis, 5th edition 2010, example 20.5:
  // ranks and W with ties, 0.924, from memory; the rank sums below as a statistics program's manual prints them for it
  test("measures agreement by Kendall’s W with ties, as in a published example", () => {
    const ranks = [
      [4, 8.5, 10, 1.5, 3, 1.5, 7, 5, 8.5, 11, 6, 12],
      [5, 7, 11, 2.5, 5, 1, 5, 2.5, 9.5, 8, 9.5, 12],
      [5.5, 5.5, 9.5, 2, 3, 1, 8, 4, 11, 9.5, 7, 12],
    ];
    const sums = [14.5, 21, 30.5, 6, 11, 3.5, 20, 11.5, 29, 28.5, 22.5, 36];
    const birds = sums.map((_, index) => `bird-${index}`);
    // a level for every half rank, worth the more the higher the rank
    const levels = Array.from({ length: 24 }, (_, at) => ({
      ...{ id: `at-${(at + 1) / 2}`, label: `${at}`, description: "", value: at / 23 },
    }));
    const criterion = { ...care, valueFunction: { kind: "rating", levels } } as Criterion;
    const sheets = ranks.map((row, judge) => ({
      ...{ evaluator: { id: `judge-${judge}`, name: `Judge ${judge}` }, handedInAt: "2026-11-25T10:00:00.000Z" },
      sheet: {
        statement: none,
        ratings: row.map((rank, at) => ({
          criterion: care.id,
          bid: birds[at] ?? "",
          level: `at-${rank}`,
          comment: "",
        })),
      },
    }));
    const [spread] = spreads(committee(...sheets), [criterion], birds);
    expect(spread?.measuredOn).toBe(3);
    if (spread?.agreement.kind !== "measured") throw new Error("expected a measure");
    // the greatest level is the best, rank 1, where the example counts upwards
    expect(spread.agreement.meanRanks.map((rank) => 39 - 3 * rank)).toEqual(sums.map((sum) => expect.closeTo(sum, 9)));
    expect(spread.agreement.concordance).toBeCloseTo(0.924, 3);
  });

  test("measures on the sheets that rate every bid, and tells how many levels lie between", () => {
    const [spread] = spreads(
      committee(openSheet("eve", [4, 2, 3, 3]), openSheet("sam", [3, 2, 4, 1]), openSheet("kim", [5, 3, 3, null])),
      rated,
      allBids,
    );
    expect(spread?.measuredOn).toBe(2);
    expect(spread?.bids.map(({ apart }) => apart)).toEqual([2, 1, 1, 2]);
    expect(spread?.agreement).toMatchObject({ concordance: expect.closeTo((12 * 12.5) / (4 * 60 - 2 * 6), 12) });
  });

  test("keeps the same agreement in whatever order sheets and bids stand", () =>
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 4, maxLength: 4 }), {
          minLength: 2,
          maxLength: 5,
        }),
        (rows) => {
          const sheets = rows.map((row, index) => openSheet(`e${index}`, row));
          const [one] = spreads(committee(...sheets), rated, allBids);
          const [other] = spreads(committee(...sheets.toReversed()), rated, allBids.toReversed());
          expect(other?.agreement.kind).toBe(one?.agreement.kind);
          if (one?.agreement.kind !== "measured" || other?.agreement.kind !== "measured") return;
          expect(other.agreement.concordance).toBeCloseTo(one.agreement.concordance, 12);
          expect(one.agreement.concordance).toBeGreaterThanOrEqual(-1e-12);
          expect(one.agreement.concordance).toBeLessThanOrEqual(1 + 1e-12);
        },
      ),
    ));

  test("reads a value between levels as a share or a percentage, and wants a reason for any value", () => {
    const agreed = (level: string, between: string, reason = "As the plan shows.") =>
      committeeSchema.safeParse({ agreed: [{ criterion: care.id, bid: "bid-a", level, between, reason }] });
    expect(agreed("between", "60 %").data?.agreed[0]?.value).toEqual({ kind: "between", value: 0.6 });
    expect(agreed("between", "0.6").data?.agreed[0]?.value).toEqual({ kind: "between", value: 0.6 });
    for (const typed of ["", "6", "-0.1", "61 % or so", "150 %"])
      expect(agreed("between", typed).error?.issues[0]?.message).toContain(`The agreed value reads “${typed}”`);
    expect(agreed("level-3", "", " ").error?.issues[0]?.path).toEqual(["agreed", 0, "reason"]);
    expect(agreed("", "", "").data?.agreed[0]?.value).toBeNull();
  });
});

describe("the figure of a rated criterion", () => {
  const sheets = [openSheet("eve", [4, 2, 3, 3]), openSheet("sam", [3, 2, 4, 1])];

  test("is unknown before the sheets are open, then all that they span, then what was agreed", () => {
    const before = ratedFigure({ opened: null, sheets: [], agreed: [] }, care, "bid-a");
    expect(before).toMatchObject({ kind: "unknown" });
    expect(intervalOfFigure(ratedFigure(committee(...sheets), care, "bid-a"))).toEqual({ low: 0.5, high: 0.75 });
    const entry = { criterion: care.id, bid: "bid-a", reason: "As the plan shows.", dissent: "" };
    const agreed = { ...committee(...sheets), agreed: [{ ...entry, value: { kind: "between", value: 0.6 } as const }] };
    expect(intervalOfFigure(ratedFigure(agreed, care, "bid-a"))).toEqual({ low: 0.6, high: 0.6 });
    expect(notAgreed(agreed, rated, allBids)).toHaveLength(rated.length * allBids.length - 1);
  });

  test("lies within the ratings, and one more rating never narrows it", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 2, maxLength: 6 }), (levels) => {
        const all = levels.map((level, index) => openSheet(`e${index}`, [level]));
        const whole = intervalOfFigure(ratedFigure(committee(...all), care, "bid-a"));
        const fewer = intervalOfFigure(ratedFigure(committee(...all.slice(1)), care, "bid-a"));
        if (whole === null || fewer === null) throw new Error("expected figures");
        expect(whole.low).toBe(Math.min(...levels.map((level) => (level - 1) / 4)));
        expect(whole.low).toBeLessThanOrEqual(fewer.low);
        expect(whole.high).toBeGreaterThanOrEqual(fewer.high);
      }),
    ));

  test("counts no level that an amendment took out of the criterion", () => {
    const valueFunction = { ...care.valueFunction, levels: [] } as unknown as Criterion["valueFunction"];
    expect(ratedFigure(committee(...sheets), { ...care, valueFunction }, "bid-a").kind).toBe("unknown");
  });
});
