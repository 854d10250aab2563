import { describe, expect, test } from "vitest";
import { ofKind } from "../../../app/_components/form/of-kind";

describe("ofKind", () => {
  test("keeps a limit that both kinds of gate have", () =>
    expect(ofKind("at-most", { limit: "" }, { kind: "below", limit: "165 g" })).toEqual({
      kind: "at-most",
      limit: "165 g",
    }));

  test("leaves out what the new kind has no field for", () =>
    expect(ofKind("none", {}, { kind: "below", limit: "165 g" })).toEqual({ kind: "none" }));

  test("starts a field that nothing was typed for as the kind gives it", () =>
    expect(ofKind("sport", { sport: "lacrosse", runOff: "10 ft" }, { kind: "rectangle", length: "360 ft" })).toEqual({
      kind: "sport",
      sport: "lacrosse",
      runOff: "10 ft",
    }));

  test("keeps a field that was emptied on purpose empty", () =>
    expect(ofKind("sport", { runOff: "10 ft" }, { runOff: "" })).toEqual({ kind: "sport", runOff: "" }));
});
