import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { actions, doorAt, doors } from "#lib/access";
import { actOfKind } from "../../lib/evaluation/procedure/closed-kinds";

const files = (readdirSync("app", { recursive: true }) as string[]).map((file) => file.replaceAll("\\", "/"));

test("every page and every file that is answered has one door, and every door has something behind it", () => {
  const behind = files
    .filter((file) => /(?:^|\/)(?:page\.tsx|route\.ts)$/.test(file))
    .map((file) => `/${file.replace(/\/?(?:page\.tsx|route\.ts)$/, "").replace(/\[[^\]]+\]/g, "[]")}`);
  expect(doors.map(({ address }) => address).toSorted()).toEqual(behind.toSorted());
});

test("every server action says what it asks, and nothing else does", () => {
  const exported = files
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => readFileSync(`app/${file}`, "utf8"))
    .filter((text) => /^"use server";/.test(text))
    .flatMap((text) => [...text.matchAll(/^export async function (\w+)/gm)].map(([, name]) => name));
  const listed = new Set(Object.keys(actions).map((key) => key.replace(/ \(.*$/, "")));
  expect([...listed].toSorted()).toEqual(exported.toSorted());
});

test("writing a document asks what its kind asks", () => {
  for (const [kind, act] of Object.entries(actOfKind)) {
    if (kind === "issue" || kind === "sealed-prices") continue; // given out or sealed by actions of their own
    expect([kind, actions[`saveDocument (${kind})`]]).toEqual([kind, act]);
  }
});

test("an address leads to its own door, a name before an id", () => {
  expect(doorAt("/project/abc/bids")?.address).toBe("/project/[]/bids");
  expect(doorAt("/project/abc/attachments/upload")?.asks).toBe("keep-papers");
  expect(doorAt("/project/abc/attachments/x1")?.address).toBe("/project/[]/attachments/[]");
  expect(doorAt("/project/abc/nowhere")).toBeNull();
  expect(doorAt("/project")).toBeNull();
});

test("nothing that is released is a page of the owner’s own papers, people or prices", () => {
  const released = doors.filter(({ part }) => part !== undefined);
  expect(released.length).toBeGreaterThan(8);
  for (const { address, asks, part } of released) {
    expect(asks).toBe("read");
    expect(address.startsWith(`/project/[]/${part}`), address).toBe(true);
  }
});
