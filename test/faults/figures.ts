import { appendFileSync } from "node:fs";
import { expect } from "vitest";
import { totalsFile } from "./totals-file";

/** What a trial counted. */
export type Figures = {
  rounds: number;
  /** Rounds in which a process that was alive and writing was killed. */
  kills: number;
  acknowledged: number;
  lost: string[];
  brokenRecords: string[];
  /** Milliseconds. */
  slowestReopening: number;
};

export const noFigures = (): Figures => ({
  ...{ rounds: 0, kills: 0, acknowledged: 0, lost: [], brokenRecords: [], slowestReopening: 0 },
});

/** Prints one line, and fails where anything acknowledged is lost or a record does not hold. */
export function expectNothingLost(what: string, seed: number, figures: Figures, ...more: readonly string[]): void {
  const { rounds, kills, acknowledged, lost, brokenRecords, slowestReopening } = figures;
  const said = [
    `${rounds} rounds`,
    ...(kills > 0 ? [`${kills} kills`] : []),
    `${acknowledged} acknowledged writes`,
    `${lost.length} lost`,
    `${brokenRecords.length} broken records`,
    `slowest reopening ${Math.round(slowestReopening)} ms`,
    ...more,
    `seed ${seed}`,
  ];
  const line = `${what}: ${said.join(", ")}`;
  console.log(line);
  const total = process.env[totalsFile];
  if (total) {
    const counts = { rounds, kills, acknowledged, lost: lost.length, brokenRecords: brokenRecords.length };
    appendFileSync(total, `${JSON.stringify({ line, ...counts })}\n`);
  }
  expect({ lost, brokenRecords }).toStrictEqual({ lost: [], brokenRecords: [] });
}
