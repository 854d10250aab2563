/** How long askings of one kind took, and what went wrong with them. */
export type Askings = {
  readonly milliseconds: number[];
  readonly problems: string[];
};

export const noAskings = (): Askings => ({ milliseconds: [], problems: [] });

/** Asks once and notes how long the answer took to its last byte; its text, or null where it was not the wanted one. */
export async function asked(
  askings: Askings,
  address: string,
  init: RequestInit,
  wanted: readonly number[] = [200],
): Promise<string | null> {
  const began = performance.now();
  try {
    const answer = await fetch(address, { redirect: "manual", ...init });
    const text = await answer.text();
    askings.milliseconds.push(performance.now() - began);
    if (wanted.includes(answer.status)) return text;
    askings.problems.push(`${address}: ${answer.status} ${text.slice(0, 200)}`);
  } catch (problem) {
    askings.problems.push(`${address}: ${String(problem)}`);
  }
  return null;
}

/** The value below which a share of all lies, by the nearest rank. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}
