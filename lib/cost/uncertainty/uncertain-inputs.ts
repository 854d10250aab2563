import type { LinkId } from "../link-ids";
import { isSamePurpose } from "../links/same-purpose";
import { technicalLinks } from "../links/technical-links";
import type { PriceLine } from "../model";
import type { BidLines, LineInput } from "./lines-model";
import type { StatedTarget, StatedUncertainty } from "./stated-model";
import type { InputTarget, LinePart, LineRef } from "./targets";

/** The inputs that move something, and a sentence for each that does not. */
export type UncertainInputs = Readonly<{ inputs: readonly LineInput[]; notes: readonly string[] }>;

type Found = Readonly<{ target: InputTarget; base: number }>;

/**
 * What the owner says is uncertain, as inputs over the lines that count. Shares of an entered figure begin at 1, so that
 * with nothing drawn the costs are those of the page of totals.
 * @param realRate per year, as a fraction, at which the costs are discounted
 */
export function uncertainInputs(
  bids: readonly BidLines[],
  { inputs }: StatedUncertainty,
  realRate: number,
): UncertainInputs {
  const found = inputs.map((stated) => ({ stated, move: moveOf(stated.target, bids, realRate) }));
  return {
    inputs: found.flatMap(({ stated: { id, label, distribution, driver }, move }) =>
      move === null
        ? []
        : [{ id, label, distribution, ...move, driver: driver === "" ? null : { name: driver, share: 1 } }],
    ),
    notes: found.flatMap(({ stated: { label }, move }) =>
      move === null ? [`“${label}” moves no price that counts, so it is left out.`] : [],
    ),
  };
}

/** What a stated input moves in the lines of the bids, and the value it has as entered; null where it moves nothing. */
export function moveOf(target: StatedTarget, bids: readonly BidLines[], realRate: number): Found | null {
  switch (target.kind) {
    case "line":
      return inProportion(
        linesIn(bids, (line, bid) => bid === target.bid && isPart(line, target.part, target.line)),
        target.part,
      );
    case "category":
      return inProportion(
        linesIn(bids, (line) => line.kind !== "replacement-chain" && line.category === target.category),
        "price",
      );
    case "parts":
      return inProportion(
        linesIn(bids, (line) => isPart(line, target.part, line.id) && isChain(line)),
        target.part,
      );
    case "purpose":
      return inProportion(
        linesIn(bids, (line) => isSpentOn(line, target.purpose)),
        "price",
      );
    case "life": {
      const line = lineOf(bids, target);
      // a part that outlasts another has no life of its own to doubt
      if (line?.kind !== "replacement-chain" || line.reuse !== null) return null;
      return { target: { kind: "life", of: [{ bid: target.bid, line: target.line }] }, base: line.life.years };
    }
    case "growth": {
      const line = lineOf(bids, target);
      if (line === undefined || line.kind === "at-base-date") return null;
      const of = [{ bid: target.bid, line: target.line }];
      return { target: { kind: "escalation", of }, base: line.escalation?.value ?? 0 };
    }
    case "real-rate":
      return { target: { kind: "real-rate" }, base: realRate };
  }
}

/** The rule by which links know what a bid prices already, so that one thing is one thing in every bid. */
const isSpentOn = (line: PriceLine, purpose: LinkId): boolean =>
  line.purpose === purpose || (!isChain(line) && isSamePurpose(technicalLinks[purpose], line));

const isChain = ({ kind }: PriceLine) => kind === "replacement-chain";

/** Whether a line is the one named and has such a figure. */
function isPart(line: PriceLine, part: LinePart, id: string): boolean {
  if (line.id !== id) return false;
  switch (part) {
    case "price":
      return true;
    case "quantity":
    case "unit-price":
      return line.amount.kind === "per-unit";
    case "renewal-price":
      return isChain(line);
    case "removal-price":
      return line.kind === "replacement-chain" && line.removal !== null;
  }
}

const linesIn = (bids: readonly BidLines[], fits: (line: PriceLine, bid: string) => boolean): readonly LineRef[] =>
  bids.flatMap(({ bid, lines }) => lines.filter((line) => fits(line, bid)).map(({ id }) => ({ bid, line: id })));

const lineOf = (bids: readonly BidLines[], ref: LineRef): PriceLine | undefined =>
  bids.find(({ bid }) => bid === ref.bid)?.lines.find(({ id }) => id === ref.line);

const inProportion = (of: readonly LineRef[], part: LinePart): Found | null =>
  of.length === 0 ? null : { target: { kind: "amount", of, part, move: { kind: "in-proportion" } }, base: 1 };
