import Link from "next/link";
import { notFound } from "next/navigation";
import { fileKinds } from "#lib/attachment";
import type { AttachmentText } from "#lib/evaluation";
import { draftOf } from "../../../../_data/draft-of";
import { loadProject } from "../../../../_data/load-project";
import { projectStore } from "../../../../_data/store";
import { fileAddress, viewAddress } from "../../../../_file-addresses";
import { DocumentLink } from "../../_components/paper/document-link";
import { Upload } from "../../_components/paper/upload";
import { calledOf, ownerInWords, sizeInWords } from "../_files/attachment-words";
import { namedPlaces, placesOf } from "../_files/named-places";
import styles from "../page.module.css";
import { AttachmentForm } from "./_components/attachment-form";

type Props = PageProps<"/project/[id]/attachments/[attachment]">;

export async function generateMetadata({ params }: Props) {
  const { id, attachment } = await params;
  const found = (await loadProject(id))?.documents.attachments.find((each) => each.id === attachment)?.model;
  return { title: found === undefined ? "No such attachment" : calledOf(found) };
}

export default async function AttachmentPage({ params }: Props) {
  const { id, attachment } = await params;
  const loaded = await loadProject(id);
  const stored = loaded?.documents.attachments.find((each) => each.id === attachment);
  if (loaded === null || stored === undefined) notFound();
  const { project, documents } = loaded;
  const { model } = stored;
  const attachments = documents.attachments.map((each) => ({ id: each.id, ...each.model }));
  const isHere = (await (await projectStore()).contents.held(id)).has(model.sha256);
  const where = { project: id, kind: "attachment", id: attachment } as const;
  const places = placesOf(attachment, namedPlaces(project), attachments);
  return (
    <>
      <header>
        <p>
          <Link href={`/project/${id}/attachments`} className="screen-only">
            Attachments
          </Link>
        </p>
        <h1>{calledOf(model)}</h1>
      </header>
      {isHere ? (
        <p className="row screen-only">
          <a href={viewAddress(id, attachment)} target="_blank" rel="noopener" className="button">
            Open in another tab
          </a>
          <a href={fileAddress(id, attachment)} download>
            Save the file
          </a>
        </p>
      ) : (
        <>
          <p>
            The project came from another computer and brought the name and the hash of this file, not the file itself.
            Add it, and its hash shows whether it is the same.
          </p>
          <Upload project={id} owner={model.of} label="Add the file" />
        </>
      )}
      <dl className={styles.facts}>
        <dt>File</dt>
        <dd>
          {model.name}, {fileKinds[model.kind].label}, {sizeInWords(model.bytes)}
        </dd>
        <dt>Of</dt>
        <dd>{ownerInWords(model.of, project)}</dd>
        <dt>SHA-256</dt>
        <dd>
          <code>{model.sha256}</code>
        </dd>
        <dt>Last changed</dt>
        <dd>
          {stored.updatedAt.slice(0, 10)} by {stored.updatedBy}
        </dd>
      </dl>
      <AttachmentForm
        where={where}
        version={stored.version}
        values={stored.body}
        draft={await draftOf<AttachmentText>(where)}
      />
      <section aria-labelledby="named">
        <h2 id="named">Where it is named</h2>
        {places.length === 0 ? (
          <p>Nothing names it yet. A claim whose document reads “{calledOf(model)}” would open it at its page.</p>
        ) : (
          <ul>
            {places.map(({ by, what, document, page, owner }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: one bid may say the same twice, and nothing moves here
              <li key={index}>
                {by}, {what}:{" "}
                <DocumentLink papers={{ project: id, attachments, owners: [owner] }} named={{ document, page }} />
              </li>
            ))}
          </ul>
        )}
      </section>
    </>
  );
}
