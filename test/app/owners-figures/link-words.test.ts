import { describe, expect, test } from "vitest";
import { linkInWords } from "../../../app/project/[id]/cost/owners-figures/_components/link-words";

describe("linkInWords", () => {
  test("tells the bids in which a link is set", () =>
    expect(
      linkInWords([
        { letter: "A", way: "computed" },
        { letter: "B", way: "computed" },
        { letter: "C", way: "off" },
        { letter: "D", way: "stated" },
      ]),
    ).toBe("worked out for bids A and B and stated for bid D"));

  test("is left off where no bid has it", () => expect(linkInWords([{ letter: "A", way: "off" }])).toBe("left off"));
});
