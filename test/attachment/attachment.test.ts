import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Attachment,
  attachmentNamed,
  attachmentSchema,
  checkedContent,
  contentDisposition,
  firstPage,
  safeName,
} from "#lib/attachment";
import { bytesOf, joined, jpeg, objectStream, pdf, png } from "./small-files";

const kindOf = (bytes: Uint8Array) => {
  const checked = checkedContent(bytes);
  return checked.ok ? checked.value : checked.problem;
};

describe("what is kept", () => {
  test("PDF, PNG and JPEG by their content", () => {
    expect(kindOf(pdf({ pages: 3 }))).toBe("pdf");
    expect(kindOf(png())).toBe("png");
    expect(kindOf(jpeg())).toBe("jpeg");
  });

  test("a PDF with packed objects, links to the web and to its own pages", () =>
    expect(
      kindOf(
        pdf({
          catalogue: "/OpenAction [100 0 R /Fit]",
          objects: [objectStream(["<< /S /URI /URI (https://field.example) >>", "<< /S /GoTo /D [100 0 R /Fit] >>"])],
        }),
      ),
    ).toBe("pdf"));

  test("a JPEG with what a telephone writes behind it", () =>
    expect(kindOf(joined(jpeg(), bytesOf("a second, smaller picture")))).toBe("jpeg"));

  test("any bytes are read to an answer", () => {
    const seeds = fc.constantFrom(pdf({ objects: [objectStream(["<< >>"])] }), png(), jpeg());
    const places = fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 8 });
    fc.assert(
      fc.property(seeds, places, fc.nat(), (seed, changes, end) => {
        const changed = seed.slice(0, seed.length - (end % 40));
        for (const [at, byte] of changes) changed[at % changed.length] = byte;
        expect(typeof checkedContent(changed).ok).toBe("boolean");
      }),
      { numRuns: 500 },
    );
  });
});

describe("the name of a file", () => {
  test("that does no harm stays as it is", () => {
    expect(safeName("Test report 14 – Größe (2).pdf", "pdf")).toBe("Test report 14 – Größe (2).pdf");
    expect(safeName("IMG_0023.JPG", "jpeg")).toBe("IMG_0023.jpg");
    expect(safeName("試験報告書.pdf", "pdf")).toBe("試験報告書.pdf");
  });

  test("is safe once and for all, whatever was sent", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (sent) => {
        const name = safeName(sent, "pdf");
        expect(name).toMatch(/^[^./\\<>:"|?*\p{Cc}\p{Cf}][^/\\<>:"|?*\p{Cc}\p{Cf}]*\.pdf$/u);
        expect(name.length).toBeLessThanOrEqual(120);
        expect(safeName(name, "pdf")).toBe(name);
      }),
      { numRuns: 300 },
    );
  });

  // RFC 6266 section 5 and RFC 8187 section 3.2.3 give these two letters, each encoded as UTF-8
  test("goes into the header in both spellings", () => {
    expect(contentDisposition("attachment", "€ rates.pdf")).toBe(
      "attachment; filename=\"_ rates.pdf\"; filename*=UTF-8''%E2%82%AC%20rates.pdf",
    );
    expect(contentDisposition("inline", "£ and € rates.pdf")).toContain(
      "filename*=UTF-8''%C2%A3%20and%20%E2%82%AC%20rates.pdf",
    );
    expect(contentDisposition("attachment", "a\"b';c%.pdf")).toBe(
      "attachment; filename=\"a_b';c_.pdf\"; filename*=UTF-8''a%22b%27%3Bc%25.pdf",
    );
  });
});

const kept = (name: string, change: Partial<Attachment> = {}): Attachment => ({
  ...{ name, title: "", of: { kind: "project" }, kind: "pdf", bytes: 9, sha256: "0".repeat(64), note: "" },
  ...change,
});

describe("the file that a document is", () => {
  const ofBid = (bid: string) => ({ kind: "bid", bid }) as const;
  const files = [
    kept("a.pdf", { title: "Laboratory report", of: ofBid("bid-a") }),
    kept("b.pdf", { title: "Laboratory report", of: ofBid("bid-b") }),
    kept("Test report no. 14.pdf"),
    kept("c.pdf", { title: "Data sheet" }),
    kept("data-sheet.pdf"),
  ];

  test("is looked for among the papers of the bid, then of the project", () => {
    expect(attachmentNamed(files, "laboratory  report", [ofBid("bid-b")])?.name).toBe("b.pdf");
    expect(attachmentNamed(files, "Test Report No 14", [ofBid("bid-b")])?.name).toBe("Test report no. 14.pdf");
    expect(attachmentNamed(files, "test report no. 14.PDF", [])?.name).toBe("Test report no. 14.pdf");
  });

  test("is not guessed where none or several have the name", () => {
    expect(attachmentNamed(files, "Laboratory report", [])).toBeNull();
    expect(attachmentNamed(files, "Data sheet", [])).toBeNull();
    expect(attachmentNamed(files, "", [])).toBeNull();
  });

  test("opens at the first page that is named", () => {
    expect(["12", "p. 12", "pp. 12–14", "", "ii", "0", "A-3"].map(firstPage)).toEqual([
      12,
      12,
      12,
      null,
      null,
      null,
      3,
    ]);
  });
});

test("what is known of a file is held to a safe name and a whole hash", () => {
  const messages = (change: object) =>
    attachmentSchema.safeParse({ ...kept("a.pdf"), ...change }).error?.issues.map(({ message }) => message) ?? [];
  expect(messages({})).toEqual([]);
  expect(messages({ name: "../a.pdf" })).toEqual([
    "The name of the file can’t be kept as it stands. Expected one such as “a.pdf”.",
  ]);
  expect(messages({ name: "a.exe" })).toEqual([
    "The name of the file can’t be kept as it stands. Expected one such as “a.exe.pdf”.",
  ]);
  expect(messages({ sha256: "abc" })).toEqual(["Expected a SHA-256 of 64 small hexadecimal digits."]);
});
