import { expect, test } from "vitest";
import { othersInWords } from "../../../app/project/[id]/_together/others-in-words";

const clock = (at: string) => at.slice(11, 16);

test("each person is named once, with the time they first came, and oneself last", () => {
  const others = [
    { name: "Me", since: "2026-11-25T08:00:00Z", isSame: true },
    { name: "Ada Brook", since: "2026-11-25T10:42:00Z", isSame: false },
    { name: "Ada Brook", since: "2026-11-25T09:05:00Z", isSame: false },
    { name: "Ben Hale", since: "2026-11-25T10:50:00Z", isSame: false },
  ];
  expect(othersInWords(others, clock)).toBe("Ada Brook, since 09:05; Ben Hale, since 10:50; you, in another window");
  expect(othersInWords([], clock)).toBe("");
});
