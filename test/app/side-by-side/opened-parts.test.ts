import { expect, test } from "vitest";
import { openedIn, placeIn } from "../../../app/project/[id]/side-by-side/_comparison/opened-parts";

const opened = (address: string) => [...openedIn(new URLSearchParams(address))];

test("an address opens what it names", () => expect(opened("open=3.1.0&open=4.0.why")).toEqual(["3.1.0", "4.0.why"]));

test("what is named twice is closed again", () =>
  expect(opened("open=3.1.0&open=4.0.why&open=3.1.0")).toEqual(["4.0.why"]));

test.each([
  ["12.3.working", { row: 12, bid: 3 }],
  ["12.3", null],
  ["a.b.c", null],
  ["-1.0.0", null],
  ["1.2.<b>", null],
])("%j stands for a place or none", (key, place) => expect(placeIn(key)).toEqual(place));
