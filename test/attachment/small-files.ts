import { zlibSync } from "fflate";

/** Bytes of a text of one-byte letters. */
export const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

export function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

type PdfParts = Readonly<{
  /** Entries added to the catalogue, such as an action on opening. */
  catalogue?: string;
  /** Further objects, numbered from 20 on. */
  objects?: readonly string[];
  trailer?: string;
  pages?: number;
}>;

/** A PDF as ISO 32000-1 7.5 has it, with one line of text on each page. */
export function pdf({ catalogue = "", objects = [], trailer = "", pages = 1 }: PdfParts = {}): Uint8Array {
  const places = new Map<number, number>();
  let out = "%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n";
  const add = (number: number, body: string) => {
    places.set(number, out.length);
    out += `${number} 0 obj\n${body}\nendobj\n`;
  };
  const kids = Array.from({ length: pages }, (_, index) => `${100 + 2 * index} 0 R`);
  add(1, `<< /Type /Catalog /Pages 2 0 R ${catalogue} >>`);
  add(2, `<< /Type /Pages /Kids [${kids.join(" ")}] /Count ${pages} >>`);
  add(3, "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>");
  for (let page = 0; page < pages; page += 1) {
    const drawn = `BT /F1 40 Tf 72 600 Td (Page ${page + 1}) Tj ET`;
    add(
      100 + 2 * page,
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents ${101 + 2 * page} 0 R /Resources << /Font << /F1 3 0 R >> >> >>`,
    );
    add(101 + 2 * page, `<< /Length ${drawn.length} >>\nstream\n${drawn}\nendstream`);
  }
  for (const [index, body] of objects.entries()) add(20 + index, body);
  const table = out.length;
  const rows = [...places].toSorted(([one], [other]) => one - other);
  out += "xref\n0 1\n0000000000 65535 f \n";
  for (const [number, place] of rows) out += `${number} 1\n${String(place).padStart(10, "0")} 00000 n \n`;
  out += `trailer\n<< /Size ${(rows.at(-1)?.[0] ?? 0) + 1} /Root 1 0 R ${trailer} >>\nstartxref\n${table}\n%%EOF\n`;
  return bytesOf(out);
}

/** An object stream around the given objects, packed by Flate, as the body of an object. @source ISO 32000-1 7.5.7 */
export function objectStream(
  objects: readonly string[],
  change: (dictionary: string) => string = (same) => same,
): string {
  let places = "";
  let texts = "";
  for (const [index, text] of objects.entries()) {
    places += `${50 + index} ${texts.length} `;
    texts += `${text} `;
  }
  const packed = String.fromCharCode(...zlibSync(bytesOf(places + texts)));
  const dictionary = `<< /Type /ObjStm /N ${objects.length} /First ${places.length} /Filter /FlateDecode /Length ${packed.length} >>`;
  return `${change(dictionary)}\nstream\n${packed}\nendstream`;
}

const chunk = (type: string, data: Uint8Array): Uint8Array => {
  const length = Uint8Array.from([data.length >>> 24, data.length >>> 16, data.length >>> 8, data.length]);
  return joined(length, bytesOf(type), data, new Uint8Array(4)); // nobody looks at the checksum
};

const big = (number: number) => [number >>> 24, (number >>> 16) & 255, (number >>> 8) & 255, number & 255];

/** A grey picture of the given size, as W3C PNG has it but for its checksums. */
export const png = (width = 2, height = 2): Uint8Array =>
  joined(
    Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", Uint8Array.from([...big(width), ...big(height), 8, 0, 0, 0, 0])),
    chunk("IDAT", zlibSync(new Uint8Array(Math.min(width + 1, 1000) * Math.min(height, 10)))),
    chunk("IEND", new Uint8Array(0)),
  );

/** A JPEG down to its markers, as ITU-T T.81 Annex B has it. */
export const jpeg = (width = 2, height = 2): Uint8Array =>
  joined(
    Uint8Array.from([0xff, 0xd8]),
    Uint8Array.from([0xff, 0xe0, 0, 16, ...bytesOf("JFIF\0"), 1, 1, 0, 0, 1, 0, 1, 0, 0]),
    Uint8Array.from([0xff, 0xff, 0xc0, 0, 11, 8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0]),
    Uint8Array.from([0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0x12, 0x34, 0xff, 0xd9]),
  );
