import { strToU8, unzipSync, zipSync } from "fflate";
import { blank, packed, partOf, rewritten, textCell } from "./form-files";

/** Files as somebody with bad intent, or a broken program, could send them, and what their refusal says. */
export type HostileFile = Readonly<{ what: string; file: Uint8Array; says: RegExp }>;

const held = unzipSync(blank);
const withPart = (name: string, content: Uint8Array): Uint8Array => packed({ ...held, [name]: content });
const zeros = (bytes: number) => new Uint8Array(bytes);

/** Changes bytes at places that are found by a signature, from the given occurrence on. */
function patched(file: Uint8Array, change: (view: DataView, bytes: Uint8Array) => void): Uint8Array {
  const copy = file.slice();
  change(new DataView(copy.buffer), copy);
  return copy;
}

const endOf = (view: DataView): number => view.byteLength - 22;
const centralOf = (view: DataView): number => view.getUint32(endOf(view) + 16, true);

/** The start of each entry of the central directory. */
function centralEntries(view: DataView): readonly number[] {
  const starts: number[] = [];
  let at = centralOf(view);
  while (at < endOf(view)) {
    starts.push(at);
    at += 46 + [28, 30, 32].reduce((sum, offset) => sum + view.getUint16(at + offset, true), 0);
  }
  return starts;
}

const nameAt = (bytes: Uint8Array, view: DataView, at: number): string =>
  new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + view.getUint16(at + 28, true)));

const entryNamed = (bytes: Uint8Array, view: DataView, name: string): number => {
  const found = centralEntries(view).find((at) => nameAt(bytes, view, at) === name);
  if (found === undefined) throw new RangeError(`no part ${name}`);
  return found;
};

const claims = partOf("Claims");
const claimsWith = (change: (xml: string) => string) => rewritten(blank, claims, change);
const inRow = (row: number, cells: string) => (xml: string) =>
  xml.replace("</sheetData>", `<row r="${row}">${cells}</row></sheetData>`);
const zip64 = 0xffffffff;

export const hostileFiles: readonly HostileFile[] = [
  { what: "an empty file", file: zeros(0), says: /^The file is empty\. Expected a workbook/ },
  { what: "plain text", file: strToU8("Pile height;2-1/4 in\r\n".repeat(50)), says: /^The file is not a workbook\./ },
  { what: "a page of the web", file: strToU8(`<html>${"<p>x".repeat(99)}`), says: /^The file is not a workbook\./ },
  {
    what: "an old binary workbook, or one that is locked",
    file: Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...zeros(600)]),
    says: /old binary kind \(\.xls\) or is locked with a password/,
  },
  {
    what: "a ZIP file of something else",
    file: packed({ "letter.txt": strToU8("Dear owner") }),
    says: /^The file is not a workbook\./,
  },
  {
    what: "a file beyond the limit",
    file: patched(zeros(1_000_001), (_, bytes) => bytes.set([0x50, 0x4b, 3, 4])),
    says: /^The file has 1,000,001 bytes; at most 1,000,000 are read\./,
  },
  {
    what: "a part that unpacks to 100 MB",
    file: withPart(claims, zeros(100_000_000)),
    says: /^The part “xl\/worksheets\/sheet2\.xml” unpacks to 100,000,000 bytes or more/,
  },
  {
    what: "parts that are small each and large together",
    file: packed({
      ...held,
      // numbers pack to about a quarter, so no part alone looks like a bomb
      ...Object.fromEntries(
        Array.from({ length: 30 }, (_, part) => [
          `xl/media/${part}.txt`,
          strToU8(Array.from({ length: 10_000 }, (_, at) => `${at % 977}`.padEnd(30, `${part}`)).join("")),
        ]),
      ),
    }),
    says: /far beyond a bid form/,
  },
  {
    what: "a part that unpacks to 50 MB and says 2 kB",
    file: patched(withPart(claims, zeros(50_000_000)), (view, bytes) =>
      view.setUint32(entryNamed(bytes, view, claims) + 24, 2000, true),
    ),
    says: /^The part “xl\/worksheets\/sheet2\.xml” unpacks to 2,000 bytes or more/,
  },
  {
    what: "two entries over the same packed bytes",
    file: patched(withPart("xl/worksheets/sheet9.xml", held[claims] ?? zeros(0)), (view, bytes) => {
      const [one, other] = [claims, "xl/worksheets/sheet9.xml"].map((name) => entryNamed(bytes, view, name));
      view.setUint32((other ?? 0) + 42, view.getUint32((one ?? 0) + 42, true), true);
    }),
    says: /^The file is damaged: its part “xl\/worksheets\/sheet9\.xml” is not where the file says/,
  },
  {
    what: "an entry whose packed bytes reach into the next part",
    file: patched(blank, (view, bytes) => {
      const at = entryNamed(bytes, view, "xl/styles.xml");
      view.setUint32(at + 20, view.getUint32(at + 20, true) + 400, true);
    }),
    says: /lie over each other/,
  },
  {
    what: "two parts of one name",
    file: (() => {
      const file = zipSync({ ...held, [`${claims.slice(0, -1)}X`]: strToU8("other") });
      return patched(file, (view, bytes) => {
        const at = entryNamed(bytes, view, `${claims.slice(0, -1)}X`);
        bytes[at + 46 + claims.length - 1] = "l".charCodeAt(0);
        bytes[view.getUint32(at + 42, true) + 30 + claims.length - 1] = "l".charCodeAt(0);
      });
    })(),
    says: /it holds two parts named “xl\/worksheets\/sheet2\.xml”/,
  },
  {
    what: "a hundred and one parts",
    file: packed({ ...held, ...Object.fromEntries(Array.from({ length: 101 }, (_, at) => [`x/${at}`, zeros(1)])) }),
    says: /^The file consists of 11\d parts; at most 100 are read\./,
  },
  {
    what: "a part that is locked",
    file: patched(blank, (view, bytes) => view.setUint16(entryNamed(bytes, view, claims) + 8, 1, true)),
    says: /^The part “xl\/worksheets\/sheet2\.xml” of the file is locked with a password\./,
  },
  {
    what: "a list of parts for huge files",
    file: patched(blank, (view) => view.setUint32(endOf(view) + 16, zip64, true)),
    says: /^The file is damaged: the list of its parts is not where the file says\./,
  },
  {
    what: "more parts in the list than there are",
    file: patched(blank, (view) => {
      view.setUint16(endOf(view) + 8, 90, true);
      view.setUint16(endOf(view) + 10, 90, true);
    }),
    says: /the list of its parts breaks off/,
  },
  {
    what: "bytes behind the end",
    file: Uint8Array.from([...blank, ...strToU8("more")]),
    says: /the list of its parts is missing at its end/,
  },
  {
    what: "a part with a changed byte",
    file: patched(blank, (view, bytes) => {
      const at = view.getUint32(entryNamed(bytes, view, claims) + 42, true) + 30 + claims.length + 500;
      bytes[at] = (bytes[at] ?? 0) ^ 1;
    }),
    says: /does not hold what its checksum says/,
  },
  {
    what: "a program",
    file: withPart("xl/vbaProject.bin", zeros(10)),
    says: /^The file holds a program \(“xl\/vbaProject\.bin”\)/,
  },
  {
    what: "the content type of a workbook with programs",
    file: rewritten(blank, "[Content_Types].xml", (xml) =>
      xml.replace(
        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
        "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
      ),
    ),
    says: /^The file holds a program \(“\/xl\/workbook\.xml”\)/,
  },
  {
    what: "a sheet of old macros",
    file: withPart("xl/macrosheets/sheet1.xml", strToU8("<x/>")),
    says: /^The file holds a program/,
  },
  {
    what: "a link to another workbook",
    file: withPart("xl/externalLinks/externalLink1.xml", strToU8("<externalLink/>")),
    says: /^The file draws on something outside itself \(“xl\/externalLinks\/externalLink1\.xml”\)/,
  },
  {
    what: "an embedded file",
    file: withPart("xl/embeddings/oleObject1.bin", zeros(10)),
    says: /^The file draws on something outside itself/,
  },
  {
    what: "a template on another machine",
    file: rewritten(blank, "xl/_rels/workbook.xml.rels", (xml) =>
      xml.replace(
        "</Relationships>",
        '<Relationship Id="r99" Type="http://x/relationships/attachedTemplate" Target="http://example.invalid/t" TargetMode="External"/></Relationships>',
      ),
    ),
    says: /^The file draws on something outside itself \(“http:\/\/example\.invalid\/t”\)/,
  },
  {
    what: "entities that grow",
    file: claimsWith((xml) =>
      xml.replace(
        "<worksheet",
        '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]><worksheet',
      ),
    ),
    says: /declares abbreviations of its own/,
  },
  {
    what: "tags within tags, ten thousand deep",
    file: claimsWith((xml) =>
      xml.replace("</sheetData>", `${"<a>".repeat(10_000)}${"</a>".repeat(10_000)}</sheetData>`),
    ),
    says: /^The file is damaged: its part “xl\/worksheets\/sheet2\.xml” is not well-formed text/,
  },
  {
    what: "a tag that never closes",
    file: claimsWith((xml) => xml.replace("</row>", "")),
    says: /not well-formed text/,
  },
  {
    what: "bytes that are no UTF-8",
    file: withPart(claims, Uint8Array.from([0x3c, 0xff, 0xfe])),
    says: /not well-formed text/,
  },
  {
    what: "another encoding than it says",
    file: claimsWith((xml) => xml.replace('encoding="UTF-8"', 'encoding="UTF-7"')),
    says: /not well-formed text/,
  },
  {
    what: "a cell in the last row of all",
    file: claimsWith(inRow(1_048_576, textCell("XFD1048576", "x"))),
    says: /^Sheet “Claims” goes on as far as cell XFD1048576\. At most 1,000 rows, 50 columns and 20,000 filled cells are read\.$/,
  },
  {
    what: "a cell far to the right",
    file: claimsWith(inRow(900, textCell("AZ900", "x"))),
    says: /goes on as far as cell AZ900/,
  },
  {
    what: "a cell outside every sheet",
    file: claimsWith(inRow(900, '<c r="ZZZZ900"/>')),
    says: /has a cell “ZZZZ900” out of its place/,
  },
  {
    what: "a cell in another row than it stands in",
    file: claimsWith(inRow(900, textCell("D3", "x"))),
    says: /has a cell “D3” out of its place/,
  },
  {
    what: "two cells of one address",
    file: claimsWith(inRow(900, textCell("D900", "2 in") + textCell("D900", "3 in"))),
    says: /sheet “Claims” has two cells D900/,
  },
  {
    what: "two sheets of one name",
    file: rewritten(blank, "xl/workbook.xml", (xml) => xml.replace('name="Lists"', 'name="claims"')),
    says: /it holds two sheets named “claims”/,
  },
  {
    what: "a text that is not among the shared ones",
    file: claimsWith(inRow(900, '<c r="D900" t="s"><v>99999</v></c>')),
    says: /has a cell D900 whose content can’t be found or read/,
  },
  {
    what: "a place before the first of the shared texts",
    file: claimsWith(inRow(900, '<c r="D900" t="s"><v>-1</v></c>')),
    says: /has a cell D900 whose content can’t be found or read/,
  },
  {
    what: "a number that is none",
    file: claimsWith(inRow(900, '<c r="D900"><v>1e999</v></c>')),
    says: /has a cell D900 whose content can’t be found or read/,
  },
  {
    what: "one long text in thousands of cells",
    file: (() => {
      const cells = Array.from({ length: 40 }, (_, row) => {
        const at = 200 + row;
        return `<row r="${at}"><c r="D${at}" t="s"><v>0</v></c></row>`;
      }).join("");
      const many = claimsWith((xml) => xml.replace("</sheetData>", `${cells}</sheetData>`));
      return rewritten(many, "xl/sharedStrings.xml", (xml) =>
        xml.replace(/<si>.*?<\/si>/, `<si><t>${"word ".repeat(6000)}</t></si>`),
      );
    })(),
    says: /^With sheet “Claims” the workbook holds more than 500,000 characters\./,
  },
  {
    what: "a text longer than a cell can hold",
    file: claimsWith(inRow(900, textCell("D900", "long ".repeat(7000)))),
    says: /^Cell D900 of sheet “Claims” has 35,000 characters; a cell holds at most 32,767\./,
  },
  {
    what: "a sheet that points out of the file",
    file: rewritten(blank, "xl/_rels/workbook.xml.rels", (xml) =>
      xml.replace('Target="worksheets/sheet2.xml"', 'Target="../../../etc/passwd"'),
    ),
    says: /its part “etc\/passwd” is missing/,
  },
];

/** Odd files that are no harm and read like any other. */
export const harmlessFiles: readonly Readonly<{ what: string; file: Uint8Array }>[] = [
  {
    what: "says that it has 1,048,576 rows and has none of them",
    file: claimsWith((xml) => xml.replace(/<dimension ref="[^"]*"/, '<dimension ref="A1:XFD1048576"')),
  },
  {
    what: "has an empty cell in the last row",
    file: claimsWith(inRow(1_048_576, '<c r="XFD1048576" s="1"/>')),
  },
  {
    what: "has a web link, as programs make of typed addresses",
    file: packed({
      ...held,
      "xl/worksheets/_rels/sheet2.xml.rels": strToU8(
        '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink" Target="mailto:a@example.invalid" TargetMode="External"/></Relationships>',
      ),
    }),
  },
  { what: "has its parts in another order", file: packed(Object.fromEntries(Object.entries(held).reverse())) },
  { what: "is not packed at all", file: zipSync(held, { level: 0, mtime: new Date(2000, 0, 1) }) },
];
