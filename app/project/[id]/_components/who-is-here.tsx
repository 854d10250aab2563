import Link from "next/link";
import { localEditor } from "#lib/access";
import { roles } from "#lib/people";
import { currentActor } from "../../../_data/actor";
import type { Asker } from "../../../_data/asker";

/** Who is at the keyboard, as the record will name them, and the way to say otherwise or to their account. */
export async function WhoIsHere({ project, asker }: { project: string; asker: Asker }) {
  const { id, name, roles: held } = await currentActor(project);
  const who = id === localEditor.id ? "No name given" : name;
  const as = held.length === 0 ? "" : `, ${held.map((role) => roles[role].label).join(" and ")}`;
  if (asker.kind === "person")
    return (
      <p className="screen-only">
        <Link href="/account" prefetch={false}>
          <span className="visually-hidden">Signed in: </span>
          {who}
          {as}
        </Link>
      </p>
    );
  return (
    <p className="screen-only">
      <Link href={`/project/${project}/procedure/people`} prefetch={false}>
        <span className="visually-hidden">At this keyboard: </span>
        {who}
        {as}
      </Link>
    </p>
  );
}
