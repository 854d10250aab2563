import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { errorFacts, logLine } from "#lib/log";

const at = "2026-11-26T10:00:00.000Z";

describe("a line of the log", () => {
  test("is one line of JSON with time, level, event and facts", () => {
    expect(logLine(at, "request-failed", { route: "/project/[id]/brief", ms: 12, code: undefined })).toBe(
      '{"at":"2026-11-26T10:00:00.000Z","level":"error","event":"request-failed","route":"/project/[id]/brief","ms":12}',
    );
  });

  test("leaves out what is no name of something in the program, and says so", () => {
    const facts = { email: "ada@larkmoor.example", typed: "Two words", link: "/come-in/x?y=1", code: "23505" };
    expect(JSON.parse(logLine(at, "printed", facts))).toEqual({
      ...{ at, level: "warning", event: "printed", code: "23505", withheld: 3 },
    });
  });

  test("stays one line whatever the facts", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.oneof(fc.string(), fc.double(), fc.boolean())), (facts) => {
        const line = logLine(at, "printed", facts);
        expect(line).not.toMatch(/[\n\r\u2028\u2029]/);
        expect(JSON.parse(line)).toBeTypeOf("object");
      }),
    );
  });
});

describe("an error", () => {
  test("is told by its kind, code, digest and place, never by its message", () => {
    const refused = Object.assign(new TypeError("Key (email)=(ada@larkmoor.example) already exists."), {
      ...{ code: "23505", digest: "3258173340" },
      stack:
        "TypeError: …\n    at x (node_modules/pg/lib/client.js:1:2)\n    at y (/srv/evenfield/lib/store/accounts.ts:9:8)",
    });
    expect(errorFacts(refused)).toMatchObject({
      ...{ error: "TypeError", code: "23505", digest: "3258173340", where: "lib/store/accounts.ts:9:8" },
    });
    expect(JSON.stringify(errorFacts(refused))).not.toContain("ada");
  });

  test("names what caused it", () => {
    const cause = Object.assign(new RangeError("typed text"), { code: "ECONNRESET" });
    expect(errorFacts(new Error("outer", { cause }))).toMatchObject({
      causedBy: "RangeError",
      causeCode: "ECONNRESET",
    });
  });

  test("may be anything", () => {
    for (const thrown of [null, undefined, "ada@larkmoor.example", 7, {}])
      expect(JSON.stringify(errorFacts(thrown))).not.toContain("ada");
  });
});
