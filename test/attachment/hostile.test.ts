import { describe, expect, test } from "vitest";
import { checkedContent, explainAttachment, safeName } from "#lib/attachment";
import { hostileAttachments, hostileNames } from "../faults/hostile-attachments";

describe("a hostile attachment is refused with a reason", () => {
  for (const { what, file, says } of hostileAttachments)
    test(what, () => {
      const checked = checkedContent(file);
      expect(checked.ok ? "kept" : explainAttachment(checked.problem)).toMatch(says);
    });
});

describe("a hostile name is made harmless", () => {
  for (const { what, sent, kept } of hostileNames) test(what, () => expect(safeName(sent, "pdf")).toBe(kept));
});
