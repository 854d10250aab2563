import { completeness, type Doer, type ProcedureText, type StageId } from "#lib/procedure";
import type { BidText } from "../../schema";
import { completenessFacts } from "../completeness-facts";
import {
  doerOf,
  lacks,
  locks,
  type ProjectAct,
  type StandingDocuments,
  type WrittenDocument,
  writes,
} from "../project-documents";
import { procedureIn } from "../standing-project";

type StepText = NonNullable<ProcedureText["steps"]>[number];

/** What moves a project to a stage. */
export type StageMove = Readonly<{ stage: Exclude<StageId, "draft">; note: string; bid: string }>;

/** What a bidder asks for, as it is sealed: text as entered. */
export type PricesText = Pick<BidText, "prices" | "statedTotal" | "statedTotalInWords">;

const procedureText = (standing: StandingDocuments): ProcedureText => standing("procedure")[0]?.body ?? {};

/** The procedure with one more step. */
const withStep = (standing: StandingDocuments, step: StepText): WrittenDocument => {
  const body = procedureText(standing);
  return { kind: "procedure", id: "procedure", body: { ...body, steps: [...(body.steps ?? []), step] } };
};

/**
 * Moves a project to its next stage, or back with a reason. Freezing remembers what the completeness check said; opening
 * prices writes what was sealed into the bids, and makes the key public.
 */
export const moveStage =
  (editor: Doer, { stage, note, bid }: StageMove): ProjectAct =>
  ({ standing, at, unseal, keyOf }) => {
    const step = { stage, at, by: doerOf(editor), note };
    if (stage === "awarded") return writes(withStep(standing, { ...step, bid }));
    if (stage === "frozen") {
      const notes = completeness(completenessFacts(standing));
      const accepted = notes.filter(({ verdict }) => verdict !== "complete").map(({ sentence }) => sentence);
      return writes(withStep(standing, { ...step, accepted }));
    }
    const { prices, steps } = procedureIn(standing);
    if (stage !== "prices-open" || prices !== "sealed" || steps.some((done) => done.stage === "prices-open"))
      return writes(withStep(standing, step));
    const opened = standing("sealed-prices").flatMap(({ id, model }): readonly WrittenDocument[] => {
      const entered = standing("bid").find((one) => one.id === id);
      if (entered === undefined) return []; // withdrawn meanwhile
      const sealed = unseal(locks.prices, id, model.contents) as PricesText;
      return [{ kind: "bid", id, body: { ...entered.body, ...sealed } }];
    });
    return writes(...opened, withStep(standing, { ...step, key: keyOf(locks.prices) }));
  };

/** Settles, while the project is a draft, whether prices are sealed. */
export const choosePrices =
  (prices: "open" | "sealed"): ProjectAct =>
  ({ standing }) =>
    procedureIn(standing).prices === prices
      ? lacks(prices === "sealed" ? "Prices are sealed already." : "Prices stand open already.")
      : writes({ kind: "procedure", id: "procedure", body: { ...procedureText(standing), prices } });

/** Locks the prices of a bid away; what was sealed for it before is sealed over. */
export const sealPrices =
  (editor: Doer, bid: string, prices: PricesText): ProjectAct =>
  ({ standing, at, seal }) =>
    standing("bid").every(({ id }) => id !== bid)
      ? lacks("This bid is no longer here.")
      : writes({
          kind: "sealed-prices",
          id: bid,
          body: { by: doerOf(editor), at, contents: seal(locks.prices, bid, prices) },
        });
