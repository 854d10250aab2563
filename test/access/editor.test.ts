import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cookieFromEditor, editorFromCookie, editorNamed, explainEditorName, localEditor } from "#lib/access";

const explained = (text: string) => {
  const named = editorNamed(text);
  return named.ok ? named.value.name : explainEditorName(named.problem);
};

describe("editorNamed", () => {
  test("takes a name without its outer spaces, composed", () => {
    expect(explained("  Zoe\u0308 O’Neill-Şahin  ")).toBe("Zoë O’Neill-Şahin");
    expect(explained("小林 さくら")).toBe("小林 さくら");
  });

  test("counts characters as people do, up to 80", () => {
    expect(explained("🌿".repeat(80))).toBe("🌿".repeat(80));
    expect(explained("a".repeat(81))).toBe("The name has 81 characters. Use at most 80.");
  });

  test("asks for a name where there is none", () => {
    expect(explained(" \t ")).toBe("Write the name that should stand beside your changes.");
  });

  test("refuses what cannot be seen on a page", () => {
    for (const hidden of ["\0", "\n", "\u202e", "\u200b", "\ud800", "\ue000"]) {
      expect(explained(`A${hidden}da`)).toBe(
        `“A${hidden}da” holds a character that cannot be seen on a page. Type the name again.`,
      );
    }
  });
});

describe("the editor's cookie", () => {
  test("gives back the name that was put in", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const named = editorNamed(text);
        fc.pre(named.ok);
        const value = cookieFromEditor(named.value);
        expect(value).toMatch(/^[\x21-\x7e]*$/);
        expect(value).not.toMatch(/[;, "\\]/);
        expect(editorFromCookie(value)).toStrictEqual(named.value);
      }),
    );
  });

  test("stands for the local editor where it is missing or holds no name", () => {
    for (const value of [undefined, "", "%20", "%00", "x".repeat(500)]) {
      expect(editorFromCookie(value)).toBe(localEditor);
    }
    expect(localEditor.name).toBe("local");
  });

  test("with a lone percent sign is the name as it stands", () => {
    expect(editorFromCookie("100 %").name).toBe("100 %");
  });
});
