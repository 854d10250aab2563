import { formatMoney } from "#lib/quantity";
import { HorizontalAxis } from "../../../../_components/chart/axes";

type Axis = Omit<React.ComponentProps<typeof HorizontalAxis>, "name" | "format">;

/** The axis of costs at the foot of a drawing. */
export const CostAxis = ({ currency, ...axis }: Axis & { currency: string }) => (
  <HorizontalAxis {...axis} name="Present value" format={(cents) => formatMoney(cents, currency)} />
);
