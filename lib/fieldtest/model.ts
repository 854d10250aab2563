import type { MethodId } from "#lib/claim";
import type { ExactQuantity, PlainDate } from "#lib/quantity";

export type CampaignKind = "acceptance" | "yearly" | "other";
export type SurfaceMoisture = "dry" | "damp" | "wet" | "not-stated";

/** One spot on the field with its drops in the order they were made. */
export type TestLocation = Readonly<{
  id: string;
  label: string;
  /** Null where nobody noted where on the field it was. */
  x: ExactQuantity<"coordinate"> | null;
  y: ExactQuantity<"coordinate"> | null;
  /** Null for a drop that was not made or not kept. */
  drops: readonly [
    ExactQuantity<"impactLevel"> | null,
    ExactQuantity<"impactLevel"> | null,
    ExactQuantity<"impactLevel"> | null,
  ];
  note: string;
}>;

/** Depth of the infill at one spot. */
export type DepthReading = Readonly<{
  id: string;
  x: ExactQuantity<"coordinate">;
  y: ExactQuantity<"coordinate">;
  depth: ExactQuantity<"length">;
}>;

export type CampaignWeather = Readonly<{
  air: ExactQuantity<"temperature"> | null;
  surface: ExactQuantity<"temperature"> | null;
  moisture: SurfaceMoisture;
  description: string;
}>;

/** A round of tests on the finished field on one day. */
export type Campaign = Readonly<{
  id: string;
  kind: CampaignKind;
  date: PlainDate;
  laboratory: string;
  operator: string;
  equipment: string;
  calibrated: PlainDate | null;
  weather: CampaignWeather;
  method: MethodId;
  edition: string;
  /** Where coordinates are measured from. */
  origin: string;
  locations: readonly TestLocation[];
  depths: readonly DepthReading[];
  note: string;
}>;
