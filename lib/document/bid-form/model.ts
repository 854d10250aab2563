import type { ClaimText } from "#lib/claim";
import type { BidText } from "#lib/evaluation";

/** What a form belongs to. The key is the id under which the project is stored. */
export type FormOwner = Readonly<{ key: string; name: string; owner: string }>;

/** A material that the owner's brief describes beside the catalogue. */
export type NamedMaterial = Readonly<{ id: string; label: string }>;

export type ComponentText = BidText["infill"]["components"][number];
export type PriceText = BidText["prices"][number];

/** One cell of a filled form: what was typed, how it was read and what is in the way of it. */
export type FormCell = Readonly<{
  sheet: string;
  /** "D5" */
  address: string;
  /** What its row is about: a property, a material, a price; empty where that is not known. */
  about: string;
  /** The heading above it, or the words beside it. */
  heading: string;
  text: string;
  /** How it was read, where that says more than the text does. */
  reading: string;
  /** A sentence; null where nothing is the matter. */
  problem: string | null;
}>;

/** What a filled form says, as text. Ids are the form's own until it is merged into a bid. */
export type FilledForm = Readonly<{
  bidder: string;
  system: string;
  /** Empty where the form says nothing of it. */
  placement: string;
  claims: readonly ClaimText[];
  components: readonly ComponentText[];
  prices: readonly PriceText[];
  /** The sum of the form in figures and in words; empty where it states none. */
  statedTotal: string;
  statedTotalInWords: string;
  /** Every filled entry cell, in the order of the sheets. */
  cells: readonly FormCell[];
  /** What else was found and not read, in sentences. */
  remarks: readonly string[];
}>;
