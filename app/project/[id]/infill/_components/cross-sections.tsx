import { type ScaleLinear, scaleLinear } from "d3-scale";
import { formatInterval, formatValue, type In, inUnit, measured, type UnitSystem, unitFor } from "#lib/quantity";
import { bidStroke } from "../../../../_components/bid-letter";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import { wrappedWords } from "../../../../_components/chart/wrapped-words";
import styles from "./cross-sections.module.css";
import { FilledBand, FillPatterns, fillOf } from "./fill-patterns";
import { type Band, type SectionLayout, sectionExtent } from "./section-layout";

/** One bid as it is drawn. `notes` stand under the drawing: what is missing, what does not go together. */
export type DrawnSection = Readonly<{
  letter: string;
  index: number;
  layout: SectionLayout;
  /** In words: "1.90–2.12 in"; null where it is not known. */
  depth: string | null;
  freePile: string | null;
  notes: readonly string[];
}>;

const width = 960;
const top = 52;
const plotHeight = 320;
const axisWidth = 54;
const perRow = 4;
const lineHeight = 15;
const side = 34; // left of the block, for the marks of the depth range
const labelGap = 16;

const metres = (value: number): In<"m"> => measured("length", value);

type Vertical = ScaleLinear<number, number>;

/** The build-up of every bid, drawn to one scale: rows of at most four, the carpet backing at 0 on the depth scale. */
export function CrossSections({ sections, units }: { sections: readonly DrawnSection[]; units: UnitSystem }) {
  const { lowest, highest } = sectionExtent(sections.map(({ layout }) => layout));
  const y = scaleLinear([lowest, Math.max(highest, lowest + 0.01)], [top + plotHeight, top]);
  const rows = Array.from({ length: Math.ceil(sections.length / perRow) }, (_, row) =>
    sections.slice(row * perRow, (row + 1) * perRow),
  );
  const columns = Math.min(perRow, sections.length);
  const foot = 40 + lineHeight * Math.max(0, ...sections.map(({ notes }) => notes.length));
  return rows.map((row) => (
    <svg
      key={row[0]?.letter}
      className={styles.row}
      viewBox={`0 0 ${width} ${top + plotHeight + foot}`}
      role="img"
      aria-label={`Cross-sections of ${row.map(({ letter }) => `bid ${letter}`).join(", ")}, as listed in the table below`}
    >
      <FillPatterns id={`fill-${row[0]?.letter}`} />
      <DepthScale y={y} units={units} />
      {row.map((section, place) => (
        <Section
          key={section.letter}
          section={section}
          y={y}
          left={axisWidth + (place * (width - axisWidth)) / columns}
          room={(width - axisWidth) / columns}
          patterns={`fill-${row[0]?.letter}`}
          units={units}
        />
      ))}
    </svg>
  ));
}

function DepthScale({ y, units }: { y: Vertical; units: UnitSystem }) {
  const unit = unitFor("length", units);
  const [lowest = 0, highest = 0] = y.domain().map((end) => inUnit("length", metres(end), unit));
  const inReadersUnit = scaleLinear([lowest, highest], y.range());
  return (
    <g className={styles.scale}>
      {inReadersUnit.ticks(8).map((tick) => (
        <g key={tick}>
          <path
            d={`M${axisWidth - 6} ${inReadersUnit(tick)}H${width}`}
            className={tick === 0 ? styles.zero : styles.hairline}
          />
          <text x={axisWidth - 10} y={inReadersUnit(tick)} dy="0.32em" textAnchor="end">
            {inReadersUnit.tickFormat(8)(tick)}
          </text>
        </g>
      ))}
      <text x="0" y={top - 34} className={styles.scaleName}>
        {unit}
      </text>
    </g>
  );
}

type Label = Readonly<{ at: number; lines: readonly string[]; strong: boolean }>;

function labelsOf(
  { layout, freePile }: DrawnSection,
  y: Vertical,
  longest: number,
  units: UnitSystem,
): readonly Label[] {
  const middle = (one: number, other: number) => (y(one) + y(other)) / 2;
  const bands = layout.bands.map(({ label, bottom, top: upper, thickness: { low, high } }: Band): Label => {
    const range = { low, high: high ?? metres(Number.POSITIVE_INFINITY) };
    return {
      at: middle(bottom, upper),
      lines: [...wrappedWords(label, longest), formatInterval("length", range, units)],
      strong: false,
    };
  });
  if (layout.pile === null) return bands;
  const pile: Label = {
    at: y(layout.pile),
    lines: [`pile ${formatValue("length", metres(layout.pile), units)}`],
    strong: false,
  };
  const free: readonly Label[] =
    freePile === null || layout.pile <= layout.surface
      ? []
      : [{ at: middle(layout.surface, layout.pile), lines: ["free pile", freePile], strong: true }];
  return [...bands, pile, ...free];
}

function Section({
  section,
  y,
  left,
  room,
  patterns,
  units,
}: {
  section: DrawnSection;
  y: Vertical;
  left: number;
  room: number;
  patterns: string;
  units: UnitSystem;
}) {
  const { letter, index, layout, depth, freePile, notes } = section;
  const { bands, base, surface, pile, shallowest, deepest } = layout;
  const x = left + side;
  const block = Math.min(150, room * 0.34);
  const edge = x + block;
  const labels = labelsOf(section, y, Math.floor((room - side - block - labelGap) / 6.2), units);
  const places = spreadLabels(
    labels.map(({ at }) => at),
    labels.map(({ lines }) => lines.length * lineHeight + 4),
    { from: top, to: top + plotHeight },
  );
  const below = top + plotHeight + 26;
  return (
    <g className={styles.section}>
      <rect x={x} y={top - 42} width="24" height="24" fill="none" stroke={bidStroke(index)} strokeWidth="2" />
      <text x={x + 12} y={top - 30} dy="0.34em" textAnchor="middle" fill={bidStroke(index)} className={styles.letter}>
        {letter}
      </text>
      {bands.map((band) => (
        <FilledBand
          key={`${band.label} ${band.bottom}`}
          id={patterns}
          fill={fillOf(band.classes)}
          x={x}
          width={block}
          y={y(band.top)}
          height={Math.max(0, y(band.bottom) - y(band.top))}
        />
      ))}
      {pile === null ? null : <Pile x={x} block={block} foot={y(0)} tip={y(pile)} />}
      <path d={`M${x - 6} ${y(0)}H${edge + 6}`} className={styles.backing} />
      <path d={`M${x - 12} ${y(base)}H${edge + 12}`} className={styles.base} />
      <DepthMark at={shallowest} word="low" y={y} x={x} edge={edge} />
      <DepthMark at={deepest} word="high" y={y} x={x} edge={edge} />
      {pile === null || freePile === null || pile <= surface ? null : (
        <path d={`M${edge + 3} ${y(pile)}h5V${y(surface)}h-5`} className={styles.bracket} />
      )}
      {labels.map(({ at, lines, strong }, place) => {
        const middle = places[place] ?? at;
        return (
          <g key={lines.join(" ")} className={strong ? styles.strong : undefined}>
            <path d={`M${edge + 8} ${at}L${edge + labelGap - 2} ${middle}`} className={styles.leader} />
            {lines.map((line, number) => (
              <text
                key={line}
                x={edge + labelGap}
                y={middle + (number - (lines.length - 1) / 2) * lineHeight}
                dy="0.32em"
              >
                {line}
              </text>
            ))}
          </g>
        );
      })}
      <text x={left + 6} y={below} className={styles.strong}>
        {depth === null ? "infill depth not known" : `infill ${depth} deep`}
      </text>
      {notes.map((note, number) => (
        <text key={note} x={left + 6} y={below + (number + 1) * lineHeight} className={styles.note}>
          {note}
        </text>
      ))}
    </g>
  );
}

function DepthMark({
  at,
  word,
  y,
  x,
  edge,
}: {
  at: number | null;
  word: string;
  y: Vertical;
  x: number;
  edge: number;
}) {
  if (at === null) return null;
  return (
    <g className={styles.mark}>
      <path d={`M${x - 5} ${y(at)}H${edge + 3}`} />
      <text x={x - 8} y={y(at)} dy={word === "low" ? "0.75em" : "-0.05em"} textAnchor="end">
        {word}
      </text>
    </g>
  );
}

const tuft = 13;

/** Blades in tufts of three, as tall as the pile: a picture of the height, not of the number of fibres. */
function Pile({ x, block, foot: bottom, tip }: { x: number; block: number; foot: number; tip: number }) {
  const tufts = Math.floor(block / tuft);
  const rise = bottom - tip;
  const blades = Array.from(
    { length: tufts },
    (_, place) => x + tuft * (place + 0.5) + (block - tufts * tuft) / 2,
  ).flatMap((stitch) =>
    [-4.2, 0.4, 4.6].map((lean) => `M${stitch} ${bottom}q${lean * 0.15} ${-rise * 0.6} ${lean} ${-rise}`),
  );
  return <path d={blades.join("")} className={styles.pile} />;
}
