import { scaleLinear } from "d3-scale";
import { curveStepAfter, line } from "d3-shape";
import type { costsAlong, ExploredTie } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { bidDash, bidStroke } from "../../../../../_components/bid-letter";
import { HorizontalAxis, VerticalAxis } from "../../../../../_components/chart/axes";
import type { DrawingWidth } from "../../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../../_components/chart/spread-labels";
import type { PricedBid } from "../../_components/priced-bid";
import styles from "./along-chart.module.css";
import { shownIn, toldAs } from "./tie-words";

type Along = ReturnType<typeof costsAlong>;
type Shown = Readonly<{
  along: Along;
  tie: ExploredTie;
  bids: readonly [PricedBid, PricedBid];
  currency: string;
}>;

const sizes: Readonly<Record<DrawingWidth, Readonly<{ width: number; height: number; left: number; right: number }>>> =
  {
    wide: { width: 760, height: 360, left: 92, right: 40 },
    narrow: { width: 340, height: 300, left: 80, right: 24 },
  };
const margin = { top: 34, bottom: 48 };

const tiesOf = ({ tied }: ExploredTie): readonly number[] => {
  if (tied.kind === "line") return tied.inside && tied.at !== null ? [tied.at] : [];
  return tied.kind === "crossings" ? tied.at : [];
};

/** What both bids cost along one input: a dashed rule stands at the entered value, a ring where the two cost the same. */
export function AlongChart({ along, tie, bids, currency, size }: Shown & { size: DrawingWidth }) {
  const { width, height, left, right } = sizes[size];
  const costAt = (value: number) =>
    along.reduce((near, point) => (Math.abs(point.value - value) < Math.abs(near.value - value) ? point : near));
  const costs = along.flatMap(({ first, second }) => [first, second]);
  const x = scaleLinear([tie.tied.from, tie.tied.to], [left, width - right]);
  // what lies far above the costs as entered, such as a life of one year, would press all else into one line
  const asEntered = costAt(tie.entered);
  const most = Math.min(Math.max(1, ...costs), 3 * Math.max(asEntered.first, asEntered.second, 1));
  const y = scaleLinear([Math.min(0, ...costs), most], [height - margin.bottom, margin.top])
    .nice(5)
    .clamp(true);
  const which = ["first", "second"] as const;
  const path = (of: (typeof which)[number]) => {
    const drawn = line<Along[number]>(
      ({ value }) => x(value),
      (point) => y(point[of]),
    );
    return (tie.toldIn === "years" ? drawn.curve(curveStepAfter) : drawn)([...along]) ?? "";
  };
  const last = along.at(-1);
  const labels = spreadLabels(
    which.map((of) => y(last?.[of] ?? 0)),
    17,
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="What both bids cost along this figure, as summed up above and listed in the table below"
    >
      <VerticalAxis
        scale={y}
        from={left}
        to={width - right}
        name="Present value"
        ticks={5}
        format={(cents) => formatMoney(cents, currency)}
      />
      <HorizontalAxis
        scale={x}
        y={height - margin.bottom}
        name={toldAs[tie.toldIn]}
        ticks={size === "wide" ? 7 : 4}
        format={(value) => (tie.toldIn === "years" ? String(value) : shownIn(tie.toldIn, value))}
      />
      <path className={styles.entered} d={`M${x(tie.entered)} ${margin.top}V${height - margin.bottom}`} />
      <text className={styles.words} x={x(tie.entered) + 5} y={height - margin.bottom - 7}>
        as entered
      </text>
      {bids.map(({ bid, index }, at) => (
        <g key={bid.id}>
          <path
            className={styles.line}
            d={path(which[at] ?? "first")}
            stroke={bidStroke(index)}
            strokeDasharray={bidDash(index)}
          />
          <text className={styles.letter} x={width - right + 8} y={labels[at]} dy="0.32em" fill={bidStroke(index)}>
            {bid.letter}
          </text>
        </g>
      ))}
      {tiesOf(tie).map((value) => (
        <circle key={value} className={styles.ring} cx={x(value)} cy={y(costAt(value).first)} r={7} />
      ))}
    </svg>
  );
}

/** The figures behind the drawing, thinned out. */
export function AlongTable({ along, tie, bids: [first, second], currency }: Shown) {
  const step = Math.max(1, Math.ceil(along.length / 17));
  return (
    <table>
      <caption>Present value of both bids along this figure</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          {[first, second].map(({ bid, isLeast }) => (
            <th key={bid.id} scope="col" className="number">
              Bid {bid.letter}
              {isLeast ? ", at least" : null}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {along
          .filter((_, at) => at % step === 0)
          .map((point) => (
            <tr key={point.value}>
              <th scope="row">{shownIn(tie.toldIn, point.value)}</th>
              <td className="number">{formatMoney(point.first, currency)}</td>
              <td className="number">{formatMoney(point.second, currency)}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
