import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { earlierVersions } from "#lib/crosscheck";
import { type AnswerText, answeredBid, type BidText, bidSchema, startingBid } from "#lib/evaluation";

const pile = {
  id: "pile",
  property: "pile-height",
  figure: "2 in",
  method: "d5823",
  condition: "new",
  evidence: "stated",
};
const bid: BidText = { ...startingBid("A", "Bidder A"), claims: [pile, { ...pile, id: "other", figure: "3 in" }] };

const answer = (claims: AnswerText["claims"] = []): AnswerText => ({
  finding: "infill-buries-pile:pile",
  asked: "Please check both figures.",
  answer: "The pile is 2-1/4 in.",
  received: "2027-03-15",
  outcome: "settled",
  claims,
});

describe("recording an answer", () => {
  test("amends the claim and keeps what it said before", () => {
    const next = bidSchema.parse(
      answeredBid(bid, "answer", answer([{ id: "pile", fields: { figure: "2-1/4 in", method: "d5823" } }])),
    );
    expect(next.claims.map(({ value }) => (value.kind === "quantity" ? value.quantity.asEntered : ""))).toEqual([
      "2-1/4 in",
      "3 in",
    ]);
    expect(earlierVersions("pile", next.answers)).toEqual([{ claim: "pile", fields: { figure: "2 in" } }]);
    expect(earlierVersions("other", next.answers)).toEqual([]);
  });

  test("leaves the claims alone where the answer changes nothing", () => {
    const next = answeredBid(bid, "answer", answer([{ id: "pile", fields: { figure: "2 in" } }]));
    expect(next.claims).toEqual(bid.claims);
    expect(bidSchema.parse(next).answers[0]?.amended).toEqual([]);
  });

  test("says which field of the claim does not read", () => {
    const next = answeredBid(bid, "answer", answer([{ id: "pile", fields: { figure: "2 stone" } }]));
    const parsed = bidSchema.safeParse(next);
    expect(parsed.error?.issues.map(({ path }) => path.join("."))).toEqual(["claims.0.figure"]);
  });

  test("needs the words of the answer", () => {
    const parsed = bidSchema.safeParse(answeredBid(bid, "answer", { ...answer(), answer: " " }));
    expect(parsed.error?.issues.map(({ path, message }) => [path.join("."), message])).toEqual([
      ["answers.0.answer", "Enter what the bidder answered."],
    ]);
  });

  test("every earlier text of a claim can be read back, however often it changes", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 }), (inches) => {
        const figures = inches.map((inch) => `${inch} in`);
        const last = figures.reduce(
          (now, figure, at) => answeredBid(now, `answer-${at}`, answer([{ id: "pile", fields: { figure } }])),
          bid,
        );
        const read = bidSchema.parse(last);
        const earlier = earlierVersions("pile", read.answers).map(({ fields }) => fields.figure);
        const now = read.claims[0]?.value;
        const told = [...earlier, now?.kind === "quantity" ? now.quantity.asEntered : ""];
        const expected = ["2 in", ...figures].filter((figure, at, all) => figure !== all[at - 1]);
        expect(told).toEqual(expected);
      }),
    ));

  test("a bid that was stored before answers were recorded still reads", () => {
    const { answers: _none, ...before } = bid;
    expect(bidSchema.parse(before).answers).toEqual([]);
  });
});
