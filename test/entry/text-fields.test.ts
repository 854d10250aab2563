import { expect, test } from "vitest";
import { idField, keptText, textField } from "#lib/entry";

const messageOf = (result: { error?: { issues: readonly { message: string }[] } | undefined }) =>
  result.error?.issues.map(({ message }) => message);

test("text keeps what was typed, without the white space around it", () => {
  expect(textField("a laboratory", 10).parse("  Fern  ")).toBe("Fern");
  expect(messageOf(textField("a laboratory", 1200).safeParse("x".repeat(1201)))).toEqual([
    "Expected a laboratory of at most 1,200 characters.",
  ]);
  expect(messageOf(textField("a laboratory", 10).safeParse(7))).toEqual(["Expected a laboratory as text."]);
});

test("text that may be left out is empty then, and an undefined one is not taken for it elsewhere", () => {
  expect(keptText("a note", 10).parse(undefined)).toBe("");
  expect(textField("a note", 10).safeParse(undefined).success).toBe(false);
});

test.each(["", "-first", "Upper", "two words", "x".repeat(65), "dot.", "é"])("“%s” is no id", (text) =>
  expect(messageOf(idField("sample-1").safeParse(text))).toEqual([
    "Expected an id of lower-case letters, digits and hyphens, for instance “sample-1”.",
  ]),
);

test.each(["a", "9", "pile-height-1", "x".repeat(64)])("“%s” is an id", (text) =>
  expect(idField("sample-1").parse(text)).toBe(text),
);
