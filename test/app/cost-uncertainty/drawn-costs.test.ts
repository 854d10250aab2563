import { describe, expect, test } from "vitest";
import { costOutcome, drawCosts, linesModel } from "#lib/cost";
import { type DrawingProgress, drawnToEnd } from "#lib/sampling";
import { answerOrder, type CostDrawingOrder } from "../../../app/project/[id]/cost/uncertainty/_drawing/drawing-order";
import { drawnCosts } from "../../../app/project/[id]/cost/uncertainty/_drawing/drawn-costs";
import { setting, workedBids, workedInputs } from "../../cost/uncertainty/worked";

const order: CostDrawingOrder = { bids: workedBids, inputs: workedInputs, setting, seed: 5, samples: 10_000 };
const directly = () => costOutcome(drawnToEnd(drawCosts(linesModel(workedBids, workedInputs, setting), order)));

/** A worker that does its work here, over copies of what is sent, as a browser's worker does. */
class WorkerHere extends EventTarget {
  ended = false;
  readonly #fails: string | null;
  constructor(fails: string | null = null) {
    super();
    this.#fails = fails;
  }
  #tell(data: unknown): void {
    if (!this.ended) this.dispatchEvent(Object.assign(new Event("message"), { data: structuredClone(data) }));
  }
  postMessage(sent: unknown): void {
    const copy = structuredClone(sent) as CostDrawingOrder;
    if (this.#fails !== null) this.#tell({ kind: "failed", message: this.#fails });
    else
      answerOrder(copy, (progress) => this.#tell({ kind: "progress", progress })).then((outcome) =>
        this.#tell({ kind: "done", outcome }),
      );
  }
  terminate(): void {
    this.ended = true;
  }
}
const asWorker = (worker: WorkerHere) => () => worker as unknown as Worker;
const nothing = { tell: () => {}, signal: null };

describe("drawnCosts", () => {
  test("gives the same without workers, with one, and by a script", async () => {
    const worker = new WorkerHere();
    const told: DrawingProgress[] = [];
    const following = { tell: (progress: DrawingProgress) => told.push(progress), signal: null };
    expect(await drawnCosts(order, following, asWorker(worker))).toEqual(directly());
    expect(told.map(({ done }) => done)).toEqual([4096, 8192, 10_000]);
    expect(worker.ended).toBe(true);
    expect(await drawnCosts(order, nothing, null)).toEqual(directly());
  });

  test("stops where it is when it is cancelled, with and without a worker", async () => {
    for (const worker of [new WorkerHere(), null]) {
      const control = new AbortController();
      const following = { tell: () => control.abort(new Error("cancelled")), signal: control.signal };
      await expect(drawnCosts(order, following, worker === null ? null : asWorker(worker))).rejects.toThrow(
        "cancelled",
      );
      if (worker !== null) expect(worker.ended).toBe(true);
    }
    const aborted = { tell: () => {}, signal: AbortSignal.abort(new Error("before it began")) };
    await expect(drawnCosts(order, aborted, asWorker(new WorkerHere()))).rejects.toThrow("before it began");
  });

  test("hands on why a worker failed", async () => {
    await expect(drawnCosts(order, nothing, asWorker(new WorkerHere("no memory left")))).rejects.toThrow(
      "no memory left",
    );
  });
});
