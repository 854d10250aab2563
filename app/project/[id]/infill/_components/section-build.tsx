import type { ScaleLinear } from "d3-scale";
import { bidStroke } from "../../../../_components/bid-letter";
import styles from "./cross-sections.module.css";
import { FilledBand, fillOf } from "./fill-patterns";
import type { SectionLayout } from "./section-layout";

type Vertical = ScaleLinear<number, number>;

/** The build-up of one bid without its words: its letter, bands, pile, backing, base and the range of the depth. */
export function SectionBuild({
  letter,
  index,
  layout: { bands, base, surface, pile, shallowest, deepest },
  freePile,
  y,
  x,
  block,
  patterns,
}: {
  letter: string;
  index: number;
  layout: SectionLayout;
  freePile: string | null;
  y: Vertical;
  x: number;
  block: number;
  patterns: string;
}) {
  const edge = x + block;
  const top = Math.min(...y.range());
  return (
    <>
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
    </>
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
