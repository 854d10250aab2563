import Link from "next/link";
import type { UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import type { DrawnBid } from "./drawn-bids";
import styles from "./tables.module.css";

type Props = Readonly<{ project: string; units: UnitSystem }>;

const placements = {
  layered: "placed in layers, listed from the bottom to the top",
  blended: "mixed, so that fine grains can sit in the voids of coarse ones",
} as const;

function BidRows({ project, units, drawn }: Props & { drawn: DrawnBid }) {
  const { letter, index, bid, evaluation } = drawn;
  const { placement, components } = bid.infill;
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={4}>
          <div className={styles.inView}>
            <BidLetter letter={letter} index={index} /> {evaluation.bidder}:{" "}
            {components.length === 0 ? "no component is entered" : placements[placement]}
            {components.length === 0 ? (
              <>
                . <Link href={`/project/${project}/bids/${bid.id}`}>Enter the components</Link>
              </>
            ) : null}
          </div>
        </th>
      </tr>
      {components.map(({ id, material, arealDensity }) => {
        const figures = evaluation.infill.components.find((component) => component.id === id);
        const label = figures?.label ?? `“${material}”`;
        const of = `${label}, bid ${letter}`;
        return (
          <tr key={id}>
            <th scope="row">
              <Link href={`/project/${project}/bids/${bid.id}#${id}`} prefetch={false}>
                {label}
              </Link>
            </th>
            <td>{arealDensity.asEntered}</td>
            {figures === undefined ? (
              <td colSpan={2}>
                not known: <Link href={`/project/${project}/brief#materials`}>describe the material in the brief</Link>
              </td>
            ) : (
              <>
                <td>
                  <FigureText project={project} of={`mass of ${of}`} figure={figures.mass} units={units} />
                </td>
                <td>
                  <FigureText
                    project={project}
                    of={`submerged mass of ${of}`}
                    figure={figures.submerged}
                    units={units}
                  />
                </td>
              </>
            )}
          </tr>
        );
      })}
    </tbody>
  );
}

/** Every component of every bid with its mass on the field and what is left of it under water. */
export function ComponentTable({ bids, ...props }: Props & { bids: readonly DrawnBid[] }) {
  return (
    <Scroller label="Components of the infill, all bids">
      <table className={styles.components}>
        <caption className="visually-hidden">Components of the infill by bid</caption>
        <thead>
          <tr>
            <th scope="col">Component</th>
            <th scope="col">Mass per area, as entered</th>
            <th scope="col">Mass on the field</th>
            <th scope="col">Submerged, per area</th>
          </tr>
        </thead>
        {bids.map((drawn) => (
          <BidRows key={drawn.letter} drawn={drawn} {...props} />
        ))}
      </table>
    </Scroller>
  );
}
