import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { build } from "esbuild";
import { type Acknowledgement, acknowledgement, type WriterTask } from "./acknowledgement";

/** A process that writes without end. */
export type WritingProcess = Readonly<{
  /** What it has printed so far, whole lines alone. */
  lines: () => readonly Acknowledgement[];
  /** Waits for the next line that fits, of those printed after this call. */
  next: (fits: (line: Acknowledgement) => boolean, patience?: number) => Promise<Acknowledgement>;
  /** Kills it; its last lines have been read once this resolves. Throws where it had ended by itself. */
  kill: () => Promise<void>;
}>;

export const isSaved = (line: Acknowledgement): boolean => line.kind === "saved";

let built: Promise<string> | undefined;

/** The writer as one file: to start it from its sources takes three times as long, and it is started a thousand times. */
function builtWriter(): Promise<string> {
  built ??= (async () => {
    // within the folder of packages, so that those left out are found
    const outfile = join(
      import.meta.dirname,
      "../../node_modules/.cache/evenfield-faults",
      `writer-${process.pid}.mjs`,
    );
    await build({
      entryPoints: [new URL("./writer.ts", import.meta.url).pathname],
      ...{ bundle: true, platform: "node", format: "esm", outfile },
      external: ["better-sqlite3", "pg"],
    });
    return outfile;
  })();
  return built;
}

const running = new Set<ChildProcess>();
process.on("exit", () => {
  for (const child of running) child.kill("SIGKILL");
});

export async function startWriter(
  task: WriterTask,
  environment: Readonly<Record<string, string>> = {},
): Promise<WritingProcess> {
  const child = spawn(process.execPath, [await builtWriter(), JSON.stringify(task)], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, ...environment },
  });
  running.add(child);
  const closed = once(child, "close").then(() => running.delete(child));
  const lines: Acknowledgement[] = [];
  const waiting = new Set<() => void>();
  let rest = "";
  let complaint = "";
  // A chunk may end within a character; the stream's own decoder waits for the rest of it.
  child.stdout.setEncoding("utf8");
  child.stdout.on("data", (chunk: string) => {
    const whole = `${rest}${chunk}`.split("\n");
    rest = whole.pop() ?? "";
    for (const line of whole) lines.push(acknowledgement.parse(JSON.parse(line)));
    for (const look of waiting) look();
  });
  child.stderr.setEncoding("utf8");
  child.stderr.on("data", (chunk: string) => {
    complaint += chunk;
  });
  child.on("close", () => {
    for (const look of waiting) look();
  });
  const hasEnded = () => child.exitCode !== null || child.signalCode !== null;
  return {
    lines: () => lines,
    next(fits, patience = 30_000) {
      let from = lines.length;
      return new Promise((resolve, reject) => {
        const done = (settle: () => void) => {
          clearTimeout(timer);
          waiting.delete(look);
          settle();
        };
        const timer = setTimeout(() => {
          const last = JSON.stringify(lines.at(-1))?.slice(0, 300);
          done(() => reject(new Error(`nothing came for ${patience} ms; its last line was ${last}; ${complaint}`)));
        }, patience);
        const look = () => {
          const found = lines.slice(from).find(fits);
          from = lines.length;
          if (found) done(() => resolve(found));
          else if (hasEnded()) done(() => reject(new Error(`the writer ended by itself: ${complaint}`)));
        };
        waiting.add(look);
        if (hasEnded()) look();
      });
    },
    async kill() {
      child.kill("SIGKILL");
      await closed;
      if (child.signalCode !== "SIGKILL") throw new Error(`the writer ended by itself: ${complaint}`);
    },
  };
}
