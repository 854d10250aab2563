import { cookies, headers } from "next/headers";
import { notFound, redirect } from "next/navigation";
import { cache } from "react";
import { doorAt, type Editor, editorCookie, editorFromCookie, signedInEditor } from "#lib/access";
import { documentSchemas } from "#lib/evaluation";
import { type ReleasePart, releaseState } from "#lib/release";
import {
  environmentPeople,
  environmentStore,
  firstOrganisation,
  type People,
  type Scope,
  type SignedIn,
  tokenHash,
} from "#lib/store";
import { pathHeader } from "../_path-header";
import { installation } from "./installation";

/** Whoever a request comes from. */
export type Asker = Readonly<
  /** Somebody at this computer, under a name taken on trust. */
  | { kind: "local"; editor: Editor }
  | ({ kind: "person" } & SignedIn)
  /** Whoever follows a link for the public; `opens` is false on a page that was not released. */
  | { kind: "link"; project: string; label: string; parts: readonly ReleasePart[]; endsAt: string; opens: boolean }
  | { kind: "nobody" }
>;

/** Sign-in and organisations; there are none where nobody signs in. */
export async function people(): Promise<People> {
  const installed = installation();
  if (installed.mode === "local") notFound();
  return environmentPeople({ secret: installed.secret, address: installed.address });
}

/** Who asks, found out once a request. */
export const currentAsker = cache(async (): Promise<Asker> => {
  if (installation().mode === "local")
    return { kind: "local", editor: editorFromCookie((await cookies()).get(editorCookie)?.value) };
  const asked = await headers();
  const signedIn = await (await people()).accounts.signedIn(asked.get("cookie"));
  const link = await followedLink(asked.get(pathHeader) ?? "");
  if (link !== null && (signedIn === null || !(await reaches(signedIn, link.project)))) return link;
  return signedIn === null ? { kind: "nobody" } : { kind: "person", ...signedIn };
});

/** What a cookie of a followed link holds: project, id of the release, token. */
export const releaseCookie = "evenfield-released";

const schemas = documentSchemas;

async function followedLink(path: string): Promise<Extract<Asker, { kind: "link" }> | null> {
  const [project = "", id = "", token = ""] = ((await cookies()).get(releaseCookie)?.value ?? "").split(".");
  if (token === "" || path.split("/")[2] !== project) return null;
  const release = await openRelease({ project, id, token });
  if (release === null) return null;
  const { label, parts, endsAt } = release;
  const door = doorAt(path);
  const opens =
    door !== null && (door.address === "/project/[]" || (door.part !== undefined && parts.includes(door.part)));
  return { kind: "link", project, label, parts, endsAt, opens };
}

/** The release that a link names, if its token is right and it is still open. */
export async function openRelease({ project, id, token }: Readonly<{ project: string; id: string; token: string }>) {
  const store = await environmentStore({ schemas, scope: { kind: "project", project } });
  const held = await store.documents.read({ project, kind: "release", id });
  if (held === null || held.model.tokenHash !== tokenHash(token)) return null;
  return releaseState(held.model, new Date().toISOString()) === "open" ? held.model : null;
}

async function reaches({ person }: SignedIn, project: string): Promise<boolean> {
  const store = await environmentStore({ schemas, scope: { kind: "person", person: person.id } });
  return (await store.documents.read({ project, kind: "brief", id: "brief" })) !== null;
}

/** What whoever asks may reach at all. Whoever has not signed in is led to where they can. */
export async function currentScope(): Promise<Scope> {
  const asker = await currentAsker();
  switch (asker.kind) {
    case "local":
      return { kind: "organisation", organisation: firstOrganisation };
    case "person":
      return { kind: "person", person: asker.person.id };
    case "link":
      return asker.opens ? { kind: "project", project: asker.project } : notFound();
    case "nobody":
      return toSignIn();
  }
}

/** The person who has signed in; everybody else is led to where they can. */
export async function currentPerson(): Promise<SignedIn> {
  const asker = await currentAsker();
  if (asker.kind === "local") notFound();
  return asker.kind === "person" ? asker : toSignIn();
}

async function toSignIn(): Promise<never> {
  const path = (await headers()).get(pathHeader) ?? "/";
  redirect(path === "/" ? "/sign-in" : `/sign-in?to=${encodeURIComponent(path)}`);
}

/** Whoever asks as somebody who may change something; null for the reader of a public link, who may not. */
export async function askingEditor(): Promise<Editor | null> {
  const asker = await currentAsker();
  switch (asker.kind) {
    case "local":
      return asker.editor;
    case "person":
      return signedInEditor(
        asker.person,
        asker.organisations.filter(({ administers }) => administers).map(({ id }) => id),
      );
    case "link":
      return null;
    case "nobody":
      return toSignIn();
  }
}

/** The organisations in which whoever asks may begin a project. */
export async function ownOrganisations(): Promise<readonly Readonly<{ id: string; name: string }>[]> {
  const asker = await currentAsker();
  if (asker.kind === "local") return [{ id: firstOrganisation, name: "" }];
  return asker.kind === "person" ? asker.organisations.filter(({ administers }) => administers) : [];
}
