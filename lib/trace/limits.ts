/** What a file may hold. A drop lasts some hundredths of a second; these leave room for slow triggers and fast samplers. */
export const traceLimits = {
  characters: 8_000_000,
  columns: 64,
  fewestSamples: 20,
  mostSamples: 200_000,
  /** Lines of heading that are looked through for the first number. */
  headingLines: 200,
  slowestRate: 500,
  fastestRate: 10_000_000,
  /** In g; accelerometers for impact tests end far below. */
  strongestLevel: 10_000,
} as const;
