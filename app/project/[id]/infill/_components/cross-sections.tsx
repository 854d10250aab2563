import { type ScaleLinear, scaleLinear } from "d3-scale";
import { type In, inUnit, measured, type UnitSystem, unitFor } from "#lib/quantity";
import type { DrawingWidth } from "../../../../_components/chart/drawing-width";
import { spreadLabels } from "../../../../_components/chart/spread-labels";
import { wrappedWords } from "../../../../_components/chart/wrapped-words";
import styles from "./cross-sections.module.css";
import { FillPatterns } from "./fill-patterns";
import { SectionBuild } from "./section-build";
import { sectionLabels } from "./section-labels";
import { type SectionLayout, sectionExtent } from "./section-layout";

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

type Size = Readonly<{ width: number; plotHeight: number; axisWidth: number; perRow: number }>;

const sizes: Readonly<Record<DrawingWidth, Size>> = {
  wide: { width: 960, plotHeight: 320, axisWidth: 54, perRow: 4 },
  narrow: { width: 340, plotHeight: 220, axisWidth: 36, perRow: 2 },
};
const top = 52;
const lineHeight = 16;
const side = 34; // left of the block, for the marks of the depth range
const labelGap = 16;
const perLetter = 5.8;

const metres = (value: number): In<"m"> => measured("length", value);

type Vertical = ScaleLinear<number, number>;

/** The build-up of every bid, drawn to one scale: rows of four or two, the carpet backing at 0 on the depth scale. */
export function CrossSections({
  sections,
  size,
  units,
}: {
  sections: readonly DrawnSection[];
  size: DrawingWidth;
  units: UnitSystem;
}) {
  const { width, plotHeight, axisWidth, perRow } = sizes[size];
  const { lowest, highest } = sectionExtent(sections.map(({ layout }) => layout));
  const y = scaleLinear([lowest, Math.max(highest, lowest + 0.01)], [top + plotHeight, top]);
  const rows = Array.from({ length: Math.ceil(sections.length / perRow) }, (_, row) =>
    sections.slice(row * perRow, (row + 1) * perRow),
  );
  const columns = Math.min(perRow, sections.length);
  const room = (width - axisWidth) / columns;
  const linesBelow = (section: DrawnSection) => {
    const { depth, notes } = footLines(section, room);
    return depth.length + notes.length + (size === "wide" ? 0 : narrowKey(section, y, room, units).length);
  };
  const Section = size === "wide" ? WideSection : NarrowSection;
  return rows.map((row) => {
    const patterns = `fill-${row[0]?.letter}-${size}`;
    return (
      <svg
        key={row[0]?.letter}
        viewBox={`0 0 ${width} ${top + plotHeight + 30 + lineHeight * Math.max(...row.map(linesBelow))}`}
        role="img"
        aria-label={`Cross-sections of ${row.map(({ letter }) => `bid ${letter}`).join(", ")}, as listed in the table below`}
      >
        <FillPatterns id={patterns} />
        <DepthScale y={y} from={axisWidth} to={width} units={units} />
        {row.map((section, place) => (
          <Section
            key={section.letter}
            section={section}
            y={y}
            left={axisWidth + place * room}
            room={room}
            patterns={patterns}
            units={units}
          />
        ))}
      </svg>
    );
  });
}

function DepthScale({ y, from, to, units }: { y: Vertical; from: number; to: number; units: UnitSystem }) {
  const unit = unitFor("length", units);
  const [lowest = 0, highest = 0] = y.domain().map((end) => inUnit("length", metres(end), unit));
  const inReadersUnit = scaleLinear([lowest, highest], y.range());
  return (
    <g className={styles.scale}>
      {inReadersUnit.ticks(8).map((tick) => (
        <g key={tick}>
          <path
            d={`M${from - 6} ${inReadersUnit(tick)}H${to}`}
            className={tick === 0 ? styles.zero : styles.hairline}
          />
          <text x={from - 10} y={inReadersUnit(tick)} dy="0.32em" textAnchor="end">
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

type SectionProps = Readonly<{
  section: DrawnSection;
  y: Vertical;
  left: number;
  room: number;
  patterns: string;
  units: UnitSystem;
}>;

/** A section with its words beside it. */
function WideSection({ section, y, left, room, patterns, units }: SectionProps) {
  const x = left + side;
  const block = Math.min(150, room * 0.34);
  const edge = x + block;
  const [bottom = 0, top = 0] = y.range();
  const longest = Math.floor((room - side - block - labelGap) / perLetter);
  const labels = sectionLabels(section, y, units).map(({ at, what, amount, strong }) => ({
    at,
    strong,
    lines: what === "pile" ? [`${what} ${amount}`] : [...wrappedWords(what, longest), amount],
  }));
  const places = spreadLabels(
    labels.map(({ at }) => at),
    labels.map(({ lines }) => lines.length * lineHeight + 4),
    { from: top, to: bottom },
  );
  return (
    <g className={styles.section}>
      <SectionBuild {...section} y={y} x={x} block={block} patterns={patterns} />
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
      <Foot section={section} x={left + 6} y={bottom + 26} room={room} />
    </g>
  );
}

/** A section with numbers beside it and their words below, from the top to the bottom. */
function NarrowSection({ section, y, left, room, patterns, units }: SectionProps) {
  const x = left + side;
  const block = 68;
  const edge = x + block;
  const [bottom = 0, top = 0] = y.range();
  const labels = sectionLabels(section, y, units).toSorted((one, other) => one.at - other.at);
  const places = spreadLabels(
    labels.map(({ at }) => at),
    lineHeight + 2,
    { from: top, to: bottom },
  );
  return (
    <g className={styles.section}>
      <SectionBuild {...section} y={y} x={x} block={block} patterns={patterns} />
      {labels.map(({ at, what, strong }, place) => (
        <g key={`${what} ${at}`} className={strong ? styles.strong : undefined}>
          <path d={`M${edge + 8} ${at}L${edge + labelGap - 2} ${places[place]}`} className={styles.leader} />
          <text x={edge + labelGap} y={places[place]} dy="0.32em">
            {place + 1}
          </text>
        </g>
      ))}
      {narrowKey(section, y, room, units).map(({ words, strong, line }) => (
        <text
          key={line}
          x={left + 6}
          y={bottom + 26 + line * lineHeight}
          className={strong ? styles.strong : undefined}
        >
          {words}
        </text>
      ))}
      <Foot
        section={section}
        x={left + 6}
        y={bottom + 32 + narrowKey(section, y, room, units).length * lineHeight}
        room={room}
      />
    </g>
  );
}

/** The words of a narrow section, line by line. */
const narrowKey = (section: DrawnSection, y: Vertical, room: number, units: UnitSystem) =>
  sectionLabels(section, y, units)
    .toSorted((one, other) => one.at - other.at)
    .flatMap(({ what, amount, strong }, place) =>
      wrappedWords(`${place + 1}. ${what}, ${unbroken(amount)}`, lettersIn(room)).map((words) => ({ words, strong })),
    )
    .map((entry, line) => ({ ...entry, line }));

/** A figure keeps its unit on its line. */
const unbroken = (figure: string) => figure.replaceAll(" ", "\u00a0");

const lettersIn = (room: number) => Math.floor((room - 10) / perLetter);

/** The depth, then what is missing or does not go together, line by line. */
const footLines = ({ depth, notes }: DrawnSection, room: number) => ({
  depth: wrappedWords(depth === null ? "infill depth not known" : `infill ${unbroken(depth)} deep`, lettersIn(room)),
  notes: notes.flatMap((note) => wrappedWords(note, lettersIn(room))),
});

function Foot({ section, x, y, room }: { section: DrawnSection; x: number; y: number; room: number }) {
  const { depth, notes } = footLines(section, room);
  return [...depth, ...notes].map((words, line) => (
    <text key={words} x={x} y={y + line * lineHeight} className={line < depth.length ? styles.strong : styles.note}>
      {words}
    </text>
  ));
}
