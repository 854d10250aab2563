import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainPassword, passwordProblem } from "#lib/password";

const about = ["Dana Ruiz", "dana.ruiz@larkmoor.example", "evenfield"];
const kind = (password: string) => passwordProblem(password, about)?.kind ?? null;

// NIST SP 800-63B section 5.1.1.2: long, any characters, no rules of composition, compared with passwords that leaked.
describe("a password", () => {
  test.each([
    "clover meadow anvil tide",
    "ганок, ожина, ліхтар",
    "abcd efgh ijkl",
    "twelve chars",
    "🌿 twelve and a leaf",
  ])("“%s” serves", (password) => expect(kind(password)).toBeNull());
  test.each([
    ["elevenchars", "too-short"],
    ["ruiz", "too-short"],
    ["x".repeat(129), "too-long"],
    ["aaaaaaaaaaaa", "little-changes"],
    ["121212121212", "little-changes"],
    ["password2026!", "common"],
    ["1qaz2wsx3edc", "common"],
    ["footballfootball", "common"],
    ["Sunshine!!!!!", "common"],
    ["dana ruiz larkmoor", "says-who"],
    ["evenfieldevenfield", "says-who"],
  ])("“%s” does not: %s", (password, why) => expect(kind(password)).toBe(why));

  test("counts characters as people do and not bytes", () => {
    expect(kind("éééab cd ef")).toBe("too-short");
    expect(kind("ééé ab cd efg")).toBeNull();
  });

  test("whatever it is, is judged, and the sentence does not repeat it", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", minLength: 5, maxLength: 200 }), (password) => {
        const problem = passwordProblem(password, about);
        if (problem !== null && password.trim().length > 8) expect(explainPassword(problem)).not.toContain(password);
      }),
    );
  });
});
