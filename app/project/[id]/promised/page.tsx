import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { reviewedRequirements } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { impactCaution } from "#lib/impact";
import type { ContractText } from "#lib/submittal";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { documentStart } from "../../../_data/document-start";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { type ContractValues, filledContract } from "../submittals/_register/contract-values";
import { ChartSection } from "./_components/chart-section";
import { MeasuredForm } from "./_components/measured-form";
import { PromisedTable } from "./_components/promised-table";
import { FindingsSection } from "./_components/row-findings";
import { loadRows } from "./_rows/load-rows";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Promised against measured" };

const files = [
  { name: "promised.csv", label: "Table as CSV" },
  { name: "warranty-facts.docx", label: "Facts for a warranty notice, Word" },
  { name: "warranty-facts.pdf", label: "Facts for a warranty notice, PDF" },
  { name: "closeout-facts.docx", label: "Facts for the closeout report, Word" },
  { name: "closeout-facts.pdf", label: "Facts for the closeout report, PDF" },
] as const;

export default async function PromisedPage({ params }: PageProps<"/project/[id]/promised">) {
  const [{ id }, units] = await Promise.all([params, readersUnits()]);
  const loaded = await loadRows(id, units);
  if (loaded === null) notFound();
  const { project, documents, told, bid, bidAlone } = loaded;
  const measuredAlready = new Set(
    told.flatMap(({ row }) =>
      row.entries.some(({ column: { kind } }) => kind === "accepted" || kind === "year") ? [row.property] : [],
    ),
  );
  const proposed = reviewedRequirements(project.requirements).flatMap(({ isOn, subject }) =>
    isOn && subject?.property !== undefined && !measuredAlready.has(subject.property) ? [subject.property] : [],
  );
  return (
    <>
      <PageHead {...pageOf("promised")} />
      <Caution>{impactCaution}</Caution>
      {bid === null ? (
        <p>
          Nobody has said yet whose bid was taken, so nothing stands under Bid and Guaranteed.{" "}
          <Link href={`/project/${id}/submittals/award`}>Say it under Submittals</Link>.
        </p>
      ) : (
        <p>The bid that was taken is bid {bid.letter}. Figures by unlike methods stand in rows of their own.</p>
      )}
      {told.length === 0 ? (
        <p>Nothing is specified with a limit, submitted or measured yet.</p>
      ) : (
        <PromisedTable told={told} papers={{ project: id, attachments: project.attachments ?? [] }} />
      )}
      {bidAlone.length === 0 ? null : (
        <p className="soft">In the bid alone, neither specified nor submitted nor measured: {listed(bidAlone)}.</p>
      )}
      <FindingsSection told={told} />
      <ChartSection told={told} units={units} />
      <section aria-labelledby="take-along" className="screen-only">
        <h2 id="take-along">To take along</h2>
        <ul className={styles.files}>
          {files.map(({ name, label }) => (
            <li key={name}>
              <a className="button" href={`/project/${id}/promised/files/${name}`} download>
                {label}
              </a>
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="measured-on-the-field">
        <h2 id="measured-on-the-field">What else was measured</h2>
        <MeasuredForm
          start={
            await documentStart<ContractText, ContractValues>(
              { project: id, kind: "contract", id: "contract" },
              documents.contract,
              {},
              filledContract,
            )
          }
          proposed={[...new Set(proposed)]}
        />
      </section>
    </>
  );
}
