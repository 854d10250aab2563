import { expect, test } from "vitest";
import { explainForm, readBidForm } from "#lib/document";
import { blank, expected } from "./form-files";
import { harmlessFiles, hostileFiles } from "./hostile-files";

test.each(hostileFiles.map(({ what, file, says }) => [what, file, says] as const))("refuses %s", (_, file, says) => {
  const form = readBidForm(file, expected);
  expect(form.ok ? "it was read" : explainForm(form.problem)).toMatch(says);
});

test.each(harmlessFiles.map(({ what, file }) => [what, file] as const))("reads a form that %s", (_, file) => {
  expect(readBidForm(file, expected)).toEqual(readBidForm(blank, expected));
});

test("refuses a form that breaks off, wherever it does", () => {
  for (let length = 0; length < blank.length; length += 211) {
    expect(readBidForm(blank.slice(0, length), expected).ok, `${length} bytes`).toBe(false);
  }
});
