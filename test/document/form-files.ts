import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import { type PropertyId, properties } from "#lib/claim";
import { blankBidForm, type FormSetting } from "#lib/document";

export const setting: FormSetting = {
  owner: { key: "project-1", name: "High school field", owner: "Test district" },
  currency: "USD",
  wanted: ["g-max", "pile-height", "shock-layer"] satisfies readonly PropertyId[],
  ownMaterials: [{ id: "local-sand", label: "Sand from the river" }],
};

export const expected = { key: "project-1", ownMaterials: setting.ownMaterials };

export const blank = await blankBidForm(setting);

const parts = { Instructions: 1, Claims: 2, Infill: 3, Prices: 4, Lists: 5 } as const;
export type FormSheet = keyof typeof parts;
export const partOf = (sheet: FormSheet): string => `xl/worksheets/sheet${parts[sheet]}.xml`;

/** The first row of the claims that belongs to no property. */
export const freeRow = properties.length + 2;

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** The tags of a cell that holds typed text. */
export const textCell = (address: string, text: string): string =>
  `<c r="${address}" s="4" t="inlineStr"><is><t xml:space="preserve">${escaped(text)}</t></is></c>`;

/** A workbook with one of its parts rewritten, packed anew. */
export function rewritten(file: Uint8Array, part: string, change: (xml: string) => string): Uint8Array {
  const held = unzipSync(file);
  return packed({ ...held, [part]: strToU8(change(strFromU8(held[part] ?? new Uint8Array()))) });
}

/** Packs parts, always with the same date. */
export const packed = (held: Zippable): Uint8Array => zipSync(held, { mtime: new Date(2000, 0, 1) });

const cellPattern = (address: string) => new RegExp(`<c r="${address}"(?: [^>]*?)?(?:/>|>.*?</c>)`);

/** Puts the tags of cells in place of cells that the form has. */
export function withCells(file: Uint8Array, sheet: FormSheet, cells: Readonly<Record<string, string>>): Uint8Array {
  return rewritten(file, partOf(sheet), (xml) =>
    Object.entries(cells).reduce((now, [address, tags]) => {
      const pattern = cellPattern(address);
      if (!pattern.test(now)) throw new RangeError(`the form has no cell ${address}`);
      return now.replace(pattern, () => tags);
    }, xml),
  );
}

/** A form as somebody filled it. */
export const typed = (
  sheets: Readonly<Partial<Record<FormSheet, Readonly<Record<string, string>>>>>,
  file: Uint8Array = blank,
): Uint8Array =>
  Object.entries(sheets).reduce(
    (now, [sheet, cells]) =>
      withCells(
        now,
        sheet as FormSheet,
        Object.fromEntries(Object.entries(cells).map(([address, text]) => [address, textCell(address, text)])),
      ),
    file,
  );
