import { describe, expect, test } from "vitest";
import { freshId } from "../../../app/_components/form/fresh-id";

describe("freshId", () => {
  test("is the stem itself while nobody has it", () => expect(freshId("criterion", ["impact"])).toBe("criterion"));

  test("is the stem with the first number that is free", () =>
    expect(freshId("criterion", ["criterion", "criterion-1", "criterion-3"])).toBe("criterion-2"));
});
