import { describe, expect, test } from "vitest";
import { type ProjectFile, priceLineLabels, projectFileSchema, resetPrices } from "#lib/evaluation";
import { resetName, resetWarnings, whyNotPaid } from "../../app/project/[id]/hardness/_components/reset-words";
import { workedProject } from "./worked-project";

type Prices = ProjectFile["bids"][number]["prices"];

const head = (id: string, label: string) => ({ id, label, givenBy: "bid" as const, document: "", page: "", note: "" });
const amount = { kind: "lump-sum", price: "$4,000" } as const;
const yearly: Prices[number] = {
  ...head("top-up", "Infill top-up"),
  ...{ kind: "yearly", category: "operation-and-maintenance", amount, from: "3", to: "", escalation: "" },
};
const cleaning: Prices[number] = {
  ...head("clean", "infill  TOP-UP"),
  ...{ kind: "periodic", category: "operation-and-maintenance", amount, every: "4 years", from: "", until: "12" },
  ...{ except: "", escalation: "", givenBy: "owner-estimate" as const },
};

function found(priceLine: string | undefined, year: string, ...prices: readonly Prices[]) {
  const [model] = workedProject.bids;
  if (model === undefined) throw new Error("the worked project has bids");
  const reset = { year, undone: "50 %", note: "", ...(priceLine === undefined ? {} : { priceLine }) };
  const project = projectFileSchema.parse({
    ...workedProject,
    requirements: {
      ...workedProject.requirements,
      impact: { ...workedProject.requirements.impact, outlook: { resets: [reset] } },
    },
    bids: prices.map((list, at) => ({ ...model, id: `bid-${at}`, letter: "ABC".charAt(at), prices: [...list] })),
  });
  const [priced] = resetPrices(project);
  if (priced === undefined) throw new Error("one reset is planned");
  return priced;
}

const letterOf = (bid: string) => "ABC".charAt(Number(bid.slice(4)));

describe("resetPrices", () => {
  // by hand: $4,000 a year from year 3, and $4,000 in years 4, 8 and 12
  test("gives what the line asks in the year of the reset, whatever the case of its name", () => {
    const priced = found("Infill top-up", "4", [yearly], [cleaning]);
    expect(priced.bids).toEqual([
      { bid: "bid-0", kind: "paid", cents: 400_000, givenBy: "bid" },
      { bid: "bid-1", kind: "paid", cents: 400_000, givenBy: "owner-estimate" },
    ]);
    expect(resetWarnings([priced], letterOf)).toEqual([]);
  });

  test("says where the line is missing or paid in other years", () => {
    const priced = found("Infill top-up", "5", [cleaning], [yearly], [{ ...yearly, label: "Brushing" }]);
    expect(priced.bids.map(({ kind }) => kind)).toEqual(["other-years", "paid", "no-line"]);
    expect(priced.bids.map((price) => whyNotPaid(price, 5))).toEqual([
      "paid in years 4, 8 and 12, not in year 5",
      null,
      "no price line of this name",
    ]);
    expect(resetWarnings([priced], letterOf)).toEqual([
      "The one at the end of year 5, “Infill top-up”, has no price line in bid C.",
      "The one at the end of year 5, “Infill top-up”, is paid in other years, or not at all, in bid A.",
    ]);
  });

  test("says that nothing pays for it where no line is chosen, as in what was stored before lines could be", () => {
    for (const priced of [found("", "5", [yearly]), found(undefined, "5", [yearly])]) {
      expect(priced.bids).toEqual([{ bid: "bid-0", kind: "not-priced" }]);
      expect(resetWarnings([priced], letterOf)).toEqual([
        "The one at the end of year 5 is tied to no price line: every bid is given its effect and none its cost.",
      ]);
      expect(resetName(priced)).toBe("Top-up or deep grooming, end of year 5, takes back 50 % of the change");
    }
  });

  test("does not look beyond the study", () => {
    const priced = found("Infill top-up", "35", [yearly]);
    expect(priced.bids[0]?.kind).toBe("after-study");
  });
});

test("priceLineLabels names each line once", () =>
  expect(
    priceLineLabels(
      projectFileSchema.parse({
        ...workedProject,
        bids: workedProject.bids.map((bid, at) => ({ ...bid, prices: at === 0 ? [yearly] : [cleaning] })),
      }).bids,
    ),
  ).toEqual(["Infill top-up"]));
