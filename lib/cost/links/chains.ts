import type { PriceLine } from "../model";

type Chain = PriceLine<"replacement-chain">;

const chainsOf = (lines: readonly PriceLine[]): readonly Chain[] =>
  lines.filter((line): line is Chain => line.kind === "replacement-chain");

const named = ({ id, label }: PriceLine, words: RegExp): boolean => words.test(`${id} ${label}`);

const shockLayerWords = /\b(shock|pad)\b/i;

/** The part that is the carpet: the one that says so, else the one that prices its removal. */
export const carpetChain = (lines: readonly PriceLine[]): Chain | null =>
  chainsOf(lines).find((line) => line.purpose === "removal-and-disposal") ??
  chainsOf(lines).find((line) => line.purpose === "" && named(line, /\b(carpet|turf)\b/i)) ??
  chainsOf(lines).find((line) => line.purpose === "" && line.removal !== null) ??
  null;

/** The part that is the shock layer. */
export const shockLayerChain = (lines: readonly PriceLine[]): Chain | null =>
  chainsOf(lines).find((line) => line.purpose === "shock-layer") ??
  chainsOf(lines).find((line) => line.purpose === "" && named(line, shockLayerWords)) ??
  null;
