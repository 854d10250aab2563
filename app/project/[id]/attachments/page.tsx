import Link from "next/link";
import { notFound } from "next/navigation";
import { fileKinds } from "#lib/attachment";
import { arePricesSealed } from "#lib/procedure";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { Scroller } from "../../../_components/scroller";
import { loadProject } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { fileAddress, viewAddress } from "../../../_file-addresses";
import { AfterRemoval } from "../_components/after-removal";
import { Upload } from "../_components/paper/upload";
import { pageOf } from "../_contents";
import { calledOf, ownerInWords, sizeInWords } from "./_files/attachment-words";
import { missingDocuments, namedPlaces, placesOf } from "./_files/named-places";
import { removeAttachment, restoreAttachment } from "./actions";
import styles from "./page.module.css";

export const metadata = { title: "Attachments" };

export default async function AttachmentsPage({ params, searchParams }: PageProps<"/project/[id]/attachments">) {
  const [{ id }, asked] = await Promise.all([params, searchParams]);
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project, documents } = loaded;
  const attachments = documents.attachments.map((each) => ({ id: each.id, ...each.model }));
  const held = await (await projectStore()).contents.held(id);
  const places = namedPlaces(project);
  const missing = missingDocuments(places, attachments);
  return (
    <>
      <PageHead {...pageOf("attachments")} />
      <AfterRemoval
        project={id}
        what="attachment"
        asked={asked}
        standing={attachments.map((each) => each.id)}
        restore={restoreAttachment}
        stays="Its file stays with the record and can be brought back."
      />
      {arePricesSealed(loaded.procedure) ? (
        <Caution>
          Prices of this project are sealed. Evenfield can’t read what stands in a PDF or a picture, so a paper that
          shows prices would show them to whoever opens it. Keep such papers elsewhere until prices are open, and add
          them then.
        </Caution>
      ) : null}
      <Upload project={id} owner={{ kind: "project" }} label="Add files" />
      {documents.attachments.length === 0 ? (
        <p>
          No file is kept yet. Add test reports, data sheets and photographs: what a bid or a submittal names then opens
          at its page with one click.
        </p>
      ) : (
        <Scroller label="Attachments">
          <table>
            <caption className="visually-hidden">Attachments</caption>
            <thead>
              <tr>
                <th scope="col">Document</th>
                <th scope="col">Of</th>
                <th scope="col">File</th>
                <th scope="col">Named</th>
                <th scope="col">Kept</th>
                <th scope="col" className="screen-only">
                  <span className="visually-hidden">What to do with it</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {documents.attachments.map(({ id: attachment, version, updatedBy, updatedAt, model }) => {
                const called = calledOf(model);
                const named = placesOf(attachment, places, attachments).length;
                return (
                  <tr key={attachment} id={attachment}>
                    <th scope="row" className={styles.called}>
                      <Link href={`/project/${id}/attachments/${attachment}`}>{called}</Link>
                    </th>
                    <td>{ownerInWords(model.of, project)}</td>
                    <td className={styles.file}>
                      {model.title === "" ? null : (
                        <>
                          {model.name}
                          <br />
                        </>
                      )}
                      {fileKinds[model.kind].label}, {sizeInWords(model.bytes)}
                      <br />
                      <code title={model.sha256}>SHA-256 {model.sha256.slice(0, 12)}…</code>
                    </td>
                    <td>{named === 0 ? "–" : named === 1 ? "once" : `${named} times`}</td>
                    <td>
                      {updatedAt.slice(0, 10)}
                      <br />
                      {updatedBy}
                    </td>
                    <td className="screen-only">
                      <div className={styles.commands}>
                        {held.has(model.sha256) ? (
                          <>
                            <a href={viewAddress(id, attachment)} target="_blank" rel="noopener">
                              Open<span className="visually-hidden"> {called} in another tab</span>
                            </a>
                            <a href={fileAddress(id, attachment)} download>
                              Save<span className="visually-hidden"> {called}</span>
                            </a>
                          </>
                        ) : (
                          <span className={styles.awaited}>The file is not here yet: add it above.</span>
                        )}
                        <form action={removeAttachment}>
                          <input type="hidden" name="project" value={id} />
                          <input type="hidden" name="attachment" value={attachment} />
                          <input type="hidden" name="version" value={version} />
                          <button type="submit" className="plain">
                            Remove<span className="visually-hidden"> {called}</span>
                          </button>
                        </form>
                      </div>
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </Scroller>
      )}
      {missing.length === 0 ? null : (
        <section aria-labelledby="missing" className="screen-only">
          <h2 id="missing">Named and not kept</h2>
          <p>Documents that claims rest on. Add one here, and every claim that names it opens it at its page.</p>
          <ul className={styles.missing}>
            {missing.map(({ owner, by, document, times }) => (
              <li key={`${by} ${document}`}>
                <Upload
                  project={id}
                  owner={owner}
                  title={document}
                  label={`${by}: ${document}, named ${times === 1 ? "once" : `${times} times`}`}
                  hint="said above"
                />
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
