/** What one file and one project may hold. A scanned report of 100 pages has 5 to 20 MB. Common practice, no source. */
export const attachmentLimits = {
  fileBytes: 25 * 1024 * 1024,
  nameCharacters: 120,
  /** Files in one project. */
  files: 300,
  /** Pixels along one side of a picture, and in the whole; more is no photograph of paper. */
  pixelsAlong: 30_000,
  pixels: 200_000_000,
  /** Bytes to which the packed objects of one PDF may unpack, all together. */
  unpackedBytes: 32 * 1024 * 1024,
} as const;
