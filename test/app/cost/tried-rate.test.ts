import { describe, expect, test } from "vitest";
import { readProjectFile } from "#lib/document";
import { evaluate } from "#lib/evaluation";
import demonstration from "../../../app/_demo/demonstration-project.json";
import { pricedBids } from "../../../app/project/[id]/cost/_components/priced-bid";
import { orderInWords, triedRate } from "../../../app/project/[id]/cost/_components/tried-rate";

const read = readProjectFile(JSON.stringify(demonstration));
if (!read.ok) throw new Error("the demonstration reads");
const { project } = read.value;
const evaluation = evaluate(project);
const bids = pricedBids(project, evaluation);
const tried = (text: string) => triedRate(text, bids, project.brief.money);

describe("triedRate", () => {
  test.each([0, 1, 2])("gives what the comparison rates of the totals give", (at) => {
    const rate = evaluation.bids[0]?.cost.atRates[at]?.rate ?? 0;
    const found = tried(`${rate * 100} %`);
    if (!found.ok) throw new Error(found.problem);
    for (const { bid, after } of found.value.rows) {
      const figure = bid.bid.cost.atRates[at]?.presentValue;
      expect(after).toBeCloseTo(
        figure?.kind === "known" ? figure.value : figure?.kind === "at-least" ? figure.low : 0,
        4,
      );
    }
  });

  test("says whether the order moves", () => {
    const [same, other] = [tried("3 %"), tried("15 %")];
    if (!same.ok || !other.ok) throw new Error("both rates read");
    expect(orderInWords(same.value)).toMatch(/^At 3 % the order by cost stays /);
    expect(orderInWords(other.value)).toMatch(/^At 15 % the order by cost /);
  });

  test.each([
    ["", "“” was read for the real rate; expected a share in per cent, for example “3 %”."],
    ["often", "“often” was read for the real rate; expected a share in per cent, for example “3 %”."],
    ["-100 %", "“-100 %” was read for the real rate; expected −50 % to 30 % a year."],
  ])("says what is the matter with “%s”", (text, problem) => expect(tried(text)).toEqual({ ok: false, problem }));
});
