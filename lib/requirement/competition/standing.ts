import { type GateRule, gateDecision, type Span } from "#lib/criteria";
import type { KnownSystem, LimitClause, LimitMove, Standing, StandingMatrix } from "./model";

/** Share of a limit that a move takes; of the new figure where the limit is nothing. */
function shareOf(from: number, to: number): number {
  const scale = Math.abs(from) || Math.abs(to);
  return scale === 0 ? 0 : Math.abs(to - from) / scale;
}

function moveTo(clause: string, rule: GateRule, { low, high }: Span): LimitMove | null {
  const move = (end: "low" | "high", from: number, to: number): LimitMove | null =>
    Number.isFinite(to) ? { clause, end, from, to, past: rule.kind === "below", share: shareOf(from, to) } : null;
  switch (rule.kind) {
    case "at-least":
      return move("low", rule.limit.value, low);
    case "at-most":
    case "below":
      return move("high", rule.limit.value, high);
    case "within":
      return low < rule.low.value ? move("low", rule.low.value, low) : move("high", rule.high.value, high);
  }
}

/** How one system stands at one clause. */
function standingAt({ id, limit }: LimitClause, { figures }: KnownSystem): Standing {
  const figure = figures[id];
  if (figure === undefined) return { kind: "not-known", relaxation: null };
  if (figure.kind === "answer") return figure.meets ? { kind: "meets" } : { kind: "fails", relaxation: null };
  if (limit === null) return { kind: "not-known", relaxation: null };
  const decision = gateDecision(limit, figure.span);
  switch (decision.kind) {
    case "meets":
      return { kind: "meets" };
    case "falls-short":
      return { kind: "fails", relaxation: moveTo(id, limit, figure.span) };
    case "not-decided":
      return { kind: "not-known", relaxation: moveTo(id, limit, figure.span) };
  }
}

/** Every clause against every system. */
export const standingMatrix = (clauses: readonly LimitClause[], systems: readonly KnownSystem[]): StandingMatrix =>
  clauses.map((clause) => systems.map((system) => standingAt(clause, system)));
