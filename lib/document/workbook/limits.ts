/**
 * What a workbook from outside may hold. A filled bid form has about 40 kB, 20 parts and 700 kB inflated; the limits leave
 * room for what other programs add and keep the time and memory of one file small. Common practice, no source.
 */
export const limits = {
  fileBytes: 1_000_000,
  parts: 100,
  inflatedBytes: 8_000_000,
  /** Inflated over packed, for parts above `ratioFrom` bytes. Text of a real sheet packs to a tenth to a fortieth. */
  ratio: 200,
  ratioFrom: 100_000,
  nesting: 40,
  sheets: 20,
  /** Cells with content; empty ones are passed over. */
  cells: 20_000,
  rows: 1000,
  columns: 50,
  merges: 1000,
  /** Characters in one cell, as the file format allows, and in all cells of a workbook together. */
  cellCharacters: 32_767,
  characters: 500_000,
} as const;

/** Bytes of the largest form that is read. */
export const formFileBytes: number = limits.fileBytes;
