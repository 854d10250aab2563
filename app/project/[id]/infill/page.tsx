import Link from "next/link";
import { notFound } from "next/navigation";
import { listed } from "#lib/figure";
import { ChartFrame } from "../../../_components/chart/chart-frame";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { ComponentTable } from "./_components/component-table";
import { CrossSections } from "./_components/cross-sections";
import { drawnBids } from "./_components/drawn-bids";
import { FigureTable } from "./_components/figure-table";
import { massSummary, sectionSummary } from "./_components/infill-summary";
import { LayerTable } from "./_components/layer-table";
import { MassBars } from "./_components/mass-bars";
import { MassTable } from "./_components/mass-table";
import { TotalsAgainstSum } from "./_components/totals-against-sum";

export const metadata = { title: "Infill and mass" };

export default async function InfillPage({ params }: PageProps<"/project/[id]/infill">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadEvaluation(id), readersUnits()]);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const head = <PageHead {...pageOf("infill")} />;
  if (evaluation.bids.length === 0)
    return (
      <>
        {head}
        <p>
          There is no bid yet. <Link href={`/project/${id}/bids`}>Enter a bid</Link> with the components of its infill;
          this page then draws its build-up and adds up its mass.
        </p>
      </>
    );
  const bids = drawnBids(project, evaluation, units);
  const notDescribed = bids.filter(({ evaluation: { infill } }) => infill.unknownMaterials.length > 0);
  return (
    <>
      {head}
      <p>
        Infill is the loose material between the fibres. Its mass holds the carpet down and the fibres upright, and all
        of it has to be hauled, kept up and one day disposed of. More mass is not better by itself, and no figure here
        shows that a field stays in place in a flood.
      </p>
      {notDescribed.map(({ letter, evaluation: { infill } }) => (
        <p key={letter}>
          Bid {letter} names {listed(infill.unknownMaterials.map((material) => `“${material}”`))}, which neither the
          catalogue nor the brief describes, so its totals are not known.{" "}
          <Link href={`/project/${id}/brief#materials`}>Describe the material in the brief</Link> from the bidder’s data
          sheet: what it is made of, its loose density and the density of a grain.
        </p>
      ))}
      <h2>Build-up, drawn to one scale</h2>
      <ChartFrame
        title="Cross-sections of all bids"
        summary={sectionSummary(
          bids.map(({ letter, evaluation: { infill } }) => ({ letter, figure: infill.freePile })),
          units,
        )}
        breadth="broad"
        draw={(size) => <CrossSections sections={bids.map(({ section }) => section)} size={size} units={units} />}
        table={<LayerTable bids={bids} units={units} />}
      />
      <p className="small soft">
        All heights are to one scale, with the top of the carpet backing at 0. A dotted line marks the prepared base.
        Dashed lines marked low and high are the range of the infill depth, loose as poured, before it settles. The
        number of fibres is not to scale.
      </p>
      <h2>Mass on the whole field</h2>
      <ChartFrame
        title="Total infill mass by class of material"
        summary={massSummary(
          bids.map(({ letter, evaluation: { infill } }) => ({ letter, figure: infill.stabilisingMass })),
          units,
        )}
        draw={(size) => <MassBars bars={bids.map(({ bar }) => bar)} size={size} units={units} />}
        table={<MassTable bids={bids} units={units} />}
      />
      <h2>Figures side by side</h2>
      <FigureTable project={id} bids={bids} units={units} />
      <h3>What these figures mean, and what they do not</h3>
      <ul>
        <li>
          <strong>Mass per area</strong> is what presses on the carpet when it is dry. It says how firmly the carpet
          lies, not how the surface plays.
        </li>
        <li>
          <strong>Mineral share</strong> is the part that is sand or another mineral. It stays down in water and does
          not take up impact as elastic granules do.
        </li>
        <li>
          <strong>Submerged mass</strong> is what still presses on the carpet under water; below 0 the infill would lift
          on the whole. It compares bids. Friction and moving water are left out, so it is no proof against floods.
        </li>
        <li>
          <strong>Free pile</strong> is the fibre that stands above the infill. Infill settles in use, which leaves more
          of it free than a new field shows.
        </li>
        <li>
          <strong>Truck loads</strong> follow from a usual payload (common practice, no source). The hauler and the road
          limits decide.
        </li>
      </ul>
      <h2>Stated totals and what does not go together</h2>
      <TotalsAgainstSum project={id} bids={bids} units={units} />
      <h2>Component by component</h2>
      <ComponentTable project={id} bids={bids} units={units} />
    </>
  );
}
