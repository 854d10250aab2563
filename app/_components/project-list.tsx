import Link from "next/link";
import type { ProjectPlace } from "#lib/store";
import { projectStore } from "../_data/store";
import { counted } from "./in-words";
import styles from "./project-list.module.css";

const pageSize = 50;

/** What the address of the first page asks for; what does not read asks for nothing. */
export type ProjectsAsked = Readonly<{ search: string; after: ProjectPlace | null }>;

export function projectsAsked(asked: Readonly<Record<string, unknown>>): ProjectsAsked {
  const search = typeof asked.search === "string" ? asked.search.trim().slice(0, 200) : "";
  const place = typeof asked.after === "string" ? /^(\d{4}-[\d:T.-]+Z)~([a-z0-9-]{1,64})$/.exec(asked.after) : null;
  return { search, after: place?.[1] && place[2] ? { changedAt: place[1], id: place[2] } : null };
}

const moment = (at: string) => new Date(at).toLocaleString("en-US", { dateStyle: "medium", timeStyle: "short" });

/** The address of the list from a place on, which stays where others save meanwhile. */
function addressOf(search: string, after?: ProjectPlace): string {
  const asked = new URLSearchParams({
    ...(search === "" ? {} : { search }),
    ...(after === undefined ? {} : { after: `${after.changedAt}~${after.id}` }),
  });
  return `/${asked.size === 0 ? "" : `?${asked}`}#projects`;
}

/** The projects that stand, the last changed first, a page at a time, and a search of them that works without script. */
export async function ProjectList({ asked: { search, after }, none }: { asked: ProjectsAsked; none: string }) {
  const { projects, found, more } = await (await projectStore()).projects.page({
    ...(search === "" ? {} : { search }),
    ...(after === null ? {} : { after }),
    limit: pageSize,
  });
  const last = projects.at(-1);
  if (found === 0 && search === "") return <p>{none}</p>;
  return (
    <>
      <search>
        <form action="/" className={styles.find}>
          <label htmlFor="project-search">Find a project</label>
          <span className={styles.entry}>
            <input id="project-search" type="search" name="search" defaultValue={search} maxLength={200} />
            <button type="submit">Find</button>
          </span>
        </form>
      </search>
      <p>
        {said(search, found)}
        {after === null ? "" : ` These are from before ${moment(after.changedAt)}.`}
        {search === "" && after === null ? null : (
          <>
            {" "}
            <Link href={addressOf(after === null ? "" : search)} prefetch={false}>
              {after === null ? "Show all projects" : "Back to the last changed"}
            </Link>
          </>
        )}
      </p>
      {projects.length === 0 ? null : (
        <div className="scroller">
          <table className={styles.projects}>
            <thead>
              <tr>
                <th scope="col">Project</th>
                <th scope="col">Owner</th>
                <th scope="col">Last change</th>
              </tr>
            </thead>
            <tbody>
              {projects.map(({ id, name, owner, changedAt }) => (
                <tr key={id}>
                  <th scope="row">
                    {/* fifty projects would be fetched ahead, each in full */}
                    <Link href={`/project/${id}`} prefetch={false}>
                      {name}
                    </Link>
                  </th>
                  <td>{owner}</td>
                  <td>{moment(changedAt)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {more && last ? (
        <p>
          <Link href={addressOf(search, last)} prefetch={false}>
            Older projects
          </Link>
        </p>
      ) : null}
    </>
  );
}

/** How many there are, and what to try where there is none. */
function said(search: string, found: number): string {
  if (search === "") return `${counted(found, "project", "projects")}, the last changed first.`;
  if (found > 0) return `${counted(found, "project has", "projects have")} “${search}” in name or owner.`;
  return `No project has “${search}” in name or owner. All words have to stand there; part of a word will do.`;
}
