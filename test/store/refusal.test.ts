import { expect, test } from "vitest";
import { explainRecordFault, explainRefusal, explainSetBack } from "#lib/store";

test("a refusal says what was read and what to do", () => {
  expect(explainRefusal({ kind: "too-large", bytes: 600_001, limit: 524_288 })).toBe(
    "This takes 601 kB; up to 525 kB can be saved. Shorten the longest texts.",
  );
  expect(explainRefusal({ kind: "too-many-documents", documents: 201, limit: 200 })).toBe(
    "The project holds 201 documents; up to 200 can be saved at once.",
  );
  expect(explainRefusal({ kind: "text-not-storable", path: ["claims", "2", "words"], codePoint: 0 })).toBe(
    "The text in “claims › 2 › words” holds the invisible character U+0000, which cannot be saved. Type the text again.",
  );
});

test("a fault of the record says where it stops to hold", () => {
  expect([
    explainRecordFault({ kind: "entry-missing", seq: 3 }),
    explainRecordFault({ kind: "link-broken", seq: 3 }),
    explainRecordFault({ kind: "entry-altered", seq: 3 }),
    explainRecordFault({ kind: "entry-out-of-step", seq: 3 }),
    explainRecordFault({ kind: "head-differs", field: "head_seq" }),
    explainRecordFault({ kind: "project-differs", field: "removed_at" }),
    explainRecordFault({ kind: "document-differs", documentKind: "bid", id: "bid-a", field: "updated_by" }),
  ]).toStrictEqual([
    "Entry 3 is missing.",
    "Entry 3 does not follow on the entry before it: one of the two was exchanged.",
    "Entry 3 is not as it was written: its hash does not belong to what it says.",
    "Entry 3 starts from something else than the entries before it left.",
    "The project's head_seq is not that of its record: entries were cut off, or the project was altered.",
    "The project's removed_at is not what the record says last: it was altered past the record.",
    "The updated_by of bid “bid-a” is not what the record says last: it was altered past the record.",
  ]);
});

test("a record says where a clock was set back", () => {
  expect(explainSetBack([])).toBe("");
  expect(explainSetBack([7, 9, 12])).toBe(
    "Entry 7 and 2 others came with an earlier time than the entry before: the computer’s clock was set back. The numbers give the order.",
  );
});
