import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editorNamed, idOfName, localEditor } from "#lib/access";

const id = /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/;

describe("idOfName", () => {
  test("spells a plain name out", () => expect(idOfName("Dana Ruiz")).toBe("dana-ruiz"));

  test("takes case and spaces for one name", () => {
    expect(idOfName("  DANA   ruiz ")).toBe(idOfName("Dana Ruiz"));
    expect(idOfName("Zoe\u0308 Park")).toBe(idOfName("Zoë Park"));
  });

  test("tells names apart that would be spelled alike", () => {
    const names = ["Zoe Park", "Zoë Park", "Zoe-Park", "Zoe, Park", "小林 さくら", "小林 さく", "O’Neill", "O Neill"];
    expect(new Set(names.map(idOfName)).size).toBe(names.length);
  });

  test("gives nobody the id of those without a name", () => {
    expect(localEditor.id).toBe("local");
    expect(idOfName("Local")).not.toBe("local");
  });

  test("is an id whatever the name, and every editor has it", () =>
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 90 }), (text) => {
        const named = editorNamed(text);
        fc.pre(named.ok);
        expect(named.value.id).toMatch(id);
        expect(named.value.id).toBe(idOfName(named.value.name));
      }),
    ));
});
