import type { Bid, BidEvaluation, Project } from "#lib/evaluation";
import type { FieldOutline } from "#lib/field";
import { missingInfill, warrantyFacts } from "#lib/fieldtest";
import { type Figure, intervalOfFigure } from "#lib/figure";
import { failed, measured, succeeded, type UnitSystem } from "#lib/quantity";
import { FigureText } from "../../../../../_components/figure-text";
import { DepthMap, LevelMap } from "../../_components/maps-section";
import { PassTable } from "../../_components/pass-table";
import { Verdict } from "../../_components/verdict";
import { depthMap, levelMap } from "../../_tests/campaign-maps";
import { type ClauseChoice, clauseAsked, clauseChoice } from "../../_tests/clause-choice";
import { claimedDepth, depthWanted, infillChoice, topUps } from "../../_tests/infill-question";
import type { Asked } from "../../_tests/plan-choice";
import { guaranteeClause } from "../../_tests/promised-levels";
import { type ReadCampaign, requiredMethod } from "../../_tests/read-campaigns";
import styles from "./campaign-form.module.css";
import { MissingInfillSection } from "./missing-infill-section";
import { WarrantySection } from "./warranty-section";

type Facts = Readonly<{
  project: string;
  loaded: Project;
  bid: Bid | null;
  evaluated: BidEvaluation | undefined;
  area: Figure<"area">;
  read: ReadCampaign;
  outline: FieldOutline | null;
  asked: Asked;
  units: UnitSystem;
}>;

/** What the campaign shows, as last saved. */
export function Results(facts: Facts) {
  const { project, read, outline, units } = facts;
  const { reduced, notComparable } = read;
  const levels = outline === null ? null : levelMap(reduced, outline);
  return (
    <>
      <section aria-labelledby="results">
        <h2 id="results">Results as last saved</h2>
        <p>
          <strong>
            <Verdict of={notComparable === null ? reduced.verdict : "not-comparable"} />
          </strong>
        </p>
        {notComparable === null ? (
          reduced.statements.slice(0, -1).map((statement) => <p key={statement}>{statement}</p>)
        ) : (
          <p>The limit of the requirements is by another method. {notComparable}</p>
        )}
        {reduced.locations.length === 0 ? null : (
          <>
            <dl className={styles.levels}>
              <div>
                <dt>Mean of the locations</dt>
                <dd>
                  <FigureText project={project} of="mean of the locations" figure={reduced.mean} units={units} />
                </dd>
              </div>
              <div>
                <dt>Worst location</dt>
                <dd>
                  <FigureText project={project} of="worst location" figure={reduced.worst} units={units} />
                </dd>
              </div>
            </dl>
            <PassTable
              project={project}
              reduced={reduced}
              verdicts={notComparable === null ? "apply" : "not-comparable"}
              units={units}
            />
          </>
        )}
        {outline === null ? (
          <p>Only the area of the field is known, so no map can be drawn. Its shape is described in the brief.</p>
        ) : null}
        {levels === null || outline === null ? null : (
          <LevelMap map={levels} outline={outline} limit={reduced.against.limit} units={units} />
        )}
      </section>
      <Depths facts={facts} />
      <Warranty facts={facts} />
    </>
  );
}

function infillOf({ loaded, bid, evaluated, asked, units }: Facts) {
  const materials = topUps(bid, loaded.brief.ownMaterials);
  return { materials, choice: infillChoice(asked, { depth: claimedDepth(evaluated), materials, units }) };
}

function clauseOf({ loaded, bid, asked }: Facts): ClauseChoice {
  const guaranteed = guaranteeClause(bid, requiredMethod(loaded));
  const { limit, limitSource } = loaded.requirements.impact;
  return clauseChoice(
    asked,
    guaranteed === null
      ? { where: "requirements of the project", words: limitSource, limit: limit.asEntered }
      : { where: guaranteed.where, words: guaranteed.words, limit: `${guaranteed.limit} g` },
  );
}

function Depths({ facts }: { facts: Facts }) {
  const { project, area, read, outline, units } = facts;
  const depths = outline === null ? null : depthMap(read.reduced.campaign, outline);
  if (depths === null || outline === null) return null;
  const { materials, choice } = infillOf(facts);
  const wanted = depthWanted(choice.depth);
  const material = materials.find(({ id }) => id === choice.material) ?? materials[0];
  const known = intervalOfFigure(area);
  const found =
    wanted.ok && material !== undefined && known !== null
      ? missingInfill({
          depths,
          target: wanted.value,
          area: measured("area", (known.low + known.high) / 2),
          bulkDensity: material.bulkDensity,
          densitySource: material.source,
        })
      : null;
  return (
    <section aria-labelledby="depth-results">
      <h2 id="depth-results">Infill depth as last saved</h2>
      <DepthMap map={depths} outline={outline} wanted={wanted.ok ? wanted.value : null} units={units} />
      <MissingInfillSection
        project={project}
        choice={choice}
        clause={clauseOf(facts)}
        materials={materials}
        problem={wanted.ok ? null : wanted.problem}
        found={found}
        units={units}
      />
    </section>
  );
}

function Warranty({ facts }: { facts: Facts }) {
  const { reduced } = facts.read;
  if (reduced.verdict === "nothing-tested") return null;
  const choice = clauseOf(facts);
  const clause = clauseAsked(choice);
  return (
    <WarrantySection
      choice={choice}
      infill={infillOf(facts).choice}
      facts={clause.ok ? succeeded(warrantyFacts(reduced, clause.value)) : failed(clause.problem)}
    />
  );
}
