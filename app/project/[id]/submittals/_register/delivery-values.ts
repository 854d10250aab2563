import { type DeliveryText, type PlacedKind, placedKinds } from "#lib/submittal";

type TicketText = NonNullable<DeliveryText["tickets"]>[number];
type PlacedText = NonNullable<NonNullable<DeliveryText["placed"]>[PlacedKind]>;
type ReadingText = NonNullable<PlacedText["readings"]>[number];

export type TicketValues = Required<TicketText>;
export type ReadingValues = Required<ReadingText>;

/** Deliveries and placing as forms edit them: every field is there. */
export type DeliveryValues = Required<Omit<DeliveryText, "tickets" | "placed" | "leftOver" | "depths">> & {
  tickets: TicketValues[];
  leftOver: { component: string; mass: string }[];
  depths: string[];
  placed: Record<PlacedKind, { wanted: string; tolerance: string; readings: ReadingValues[] }>;
};

export const filledTicket = (ticket: TicketText): TicketValues => ({
  number: "",
  bags: "",
  moisture: "",
  moistureOf: "wet mass",
  ...ticket,
});

const filledReading = (reading: ReadingText): ReadingValues => ({ where: "", note: "", ...reading });

const usual: Readonly<Record<PlacedKind, Readonly<{ wanted: string; tolerance: string }>>> = {
  seams: { wanted: "0 in", tolerance: "1/16 in" },
  lines: { wanted: "4 in", tolerance: "1/8 in" },
  planarity: { wanted: "0 in", tolerance: "1/4 in" },
};

/** @param components ids of the infill of the bid that was taken, each with a field for what was left over */
export const filledDelivery =
  (components: readonly string[]) =>
  (delivery: DeliveryText): DeliveryValues => {
    const { tickets = [], leftOver = [], depths = [], placed = {} } = delivery;
    const lacking = components.filter((id) => leftOver.every(({ component }) => component !== id));
    return {
      massTolerance: delivery.massTolerance ?? "5 %",
      mostMoisture: delivery.mostMoisture ?? "6 %",
      depthWanted: delivery.depthWanted ?? "",
      averageTolerance: delivery.averageTolerance ?? "1/8 in",
      placeTolerance: delivery.placeTolerance ?? "1/4 in",
      straightedge: delivery.straightedge ?? "10 ft",
      tickets: tickets.map(filledTicket),
      leftOver: [...leftOver, ...lacking.map((component) => ({ component, mass: "0 lb" }))],
      depths: [...depths],
      placed: Object.fromEntries(
        (Object.keys(placedKinds) as PlacedKind[]).map((kind) => {
          const { wanted = usual[kind].wanted, tolerance = usual[kind].tolerance, readings = [] } = placed[kind] ?? {};
          return [kind, { wanted, tolerance, readings: readings.map(filledReading) }];
        }),
      ) as DeliveryValues["placed"],
    };
  };
