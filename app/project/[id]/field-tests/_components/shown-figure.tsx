import { explainShortfall, type Figure, intervalOfFigure } from "#lib/figure";
import { formatInterval, type Shown } from "#lib/quantity";
import { ShowWorking } from "../../../../_components/working";

/** A figure in a unit that the trade prefers for it, or why there is none; its working one step away. */
export function ShownFigure({
  project,
  of,
  figure,
  shown,
}: {
  project: string;
  of: string;
  figure: Figure;
  shown: Shown;
}) {
  if (figure.kind === "unknown") return <span className="soft">Not known. {explainShortfall(figure.because)}</span>;
  const interval = intervalOfFigure(figure);
  return (
    <>
      <strong>{interval === null ? "not known" : formatInterval(figure.dimension, interval, shown)}</strong>
      <ShowWorking project={project} of={of} working={figure.working} />
    </>
  );
}
