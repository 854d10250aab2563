// Speed as ratios within one run: `npm run bench`. Prints figures and judges nothing; the machine decides the rest.
import { evaluate } from "#lib/evaluation";
import { measureLargeTable } from "./large-table";
import { manyBids } from "./many-bids";
import { measureOutlooks } from "./outlook-bench";
import { measurePages } from "./pages";
import { workbookOf } from "./spreadsheet";

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

const rounds = 41;
const warmUp = 40;
const project = manyBids(20, 60);
const firstTime = timed(() => evaluate(project));
/** By itself, as a server does it: the spreadsheet engine beside it fills the memory that has to be swept. */
const told = () => timed(() => JSON.stringify(evaluate(project)));
const byItself = Array.from({ length: 200 }, () => timed(() => evaluate(project))).slice(100);
const everythingRead = Array.from({ length: 12 }, told).slice(4);
const workbook = workbookOf(project);
for (let round = 0; round < warmUp; round += 1) {
  evaluate(project);
  workbook.recalculate();
}
/** Some texts and groups are kept with the claims they were made of, so a project read anew takes longer. */
const pairs = Array.from({ length: rounds }, () => {
  const readAnew = manyBids(20, 60);
  return {
    ours: timed(() => evaluate(project)),
    anew: timed(() => evaluate(readAnew)),
    theirs: timed(() => workbook.recalculate()),
  };
});
const ours = median(pairs.map((pair) => pair.ours));
const fastest = Math.min(...pairs.map((pair) => pair.ours));
const anew = median(pairs.map((pair) => pair.anew));
const theirs = median(pairs.map((pair) => pair.theirs));
const ratio = median(pairs.map((pair) => pair.ours / pair.theirs));
console.log(
  "evaluate() of 20 bids × 60 claims, against a spreadsheet engine recalculating a simpler sheet of the same project",
);
console.log(
  `  evaluate ${ours.toFixed(1)} ms, spreadsheet ${theirs.toFixed(1)} ms, ratio ${ratio.toFixed(3)} (medians of ${rounds} pairs)\n  by itself, after a hundred rounds ${median(byItself).toFixed(1)} ms; fastest evaluate ${fastest.toFixed(1)} ms, on a project just read ${anew.toFixed(1)} ms, first of the process ${firstTime.toFixed(0)} ms\n  with all that is worked out on reading (workings, chances) read out as JSON ${median(everythingRead).toFixed(0)} ms\n`,
);

const { outlooks, rankings } = measureOutlooks();
console.log(
  `Outlook with chances of 20 bids × 30 years ${outlooks.toFixed(1)} ms; ranking what moves their first years ${rankings.toFixed(0)} ms (medians)\n`,
);

console.log("Pages of the demonstration project, as built; script is first-load JavaScript, gzipped");
const { empty, pages } = await measurePages();
console.log(
  `  ${"empty page".padEnd(16)} ${(empty.script / 1000).toFixed(1).padStart(6)} kB script  ${empty.milliseconds.toFixed(0).padStart(4)} ms`,
);
for (const { name, script, html, milliseconds } of pages) {
  const above = ((script - empty.script) / 1000).toFixed(1);
  const times = (milliseconds / empty.milliseconds).toFixed(1);
  console.log(
    `  ${name.padEnd(16)} ${(script / 1000).toFixed(1).padStart(6)} kB script (${above.padStart(5)} above empty)  ${(html / 1000).toFixed(0).padStart(4)} kB page  ${milliseconds.toFixed(0).padStart(4)} ms (× ${times} of empty)`,
  );
}

const [bids, claims] = [40, 120];
const table = await measureLargeTable(bids, claims);
if (table === null) console.log("\nThe table of many bids was not measured: no Chromium was found.");
else {
  const { html, cells, ours: own, plain } = table;
  console.log(
    `\nSide by side with ${bids} bids × ${claims} claims (${cells} cells), against a plain HTML table of the same texts`,
  );
  console.log(`  page ${(html / 1e6).toFixed(2)} MB, not compressed; usable after ${own.interactive.toFixed(0)} ms`);
  for (const [name, milliseconds] of Object.entries(own.each)) {
    const reference = plain.each[name as keyof typeof plain.each];
    console.log(
      `  ${name.padEnd(16)} ${milliseconds.toFixed(0).padStart(5)} ms  plain ${reference.toFixed(0).padStart(5)} ms  ratio ${(milliseconds / reference).toFixed(2)}`,
    );
  }
}
